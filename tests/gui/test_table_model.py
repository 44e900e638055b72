"""A table of the core in a view: text, alignment, and numbers lined up on their marks."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.modeltest import ModelTester
from pytestqt.qtbot import QtBot

from core.results.table import readable_table
from core.tables import Column, Table
from gui.appearance import Appearance
from gui.models.table import EM_SPACE, FIGURE_SPACE, PUNCTUATION_SPACE, TableModel, line_up, two_lines
from gui.widgets.table_card import TableCard
from tests.comparisons import make


def from_right(texts: tuple[str, ...], sign: str) -> set[int]:
    """How far from the right edge `sign` first stands in the texts that have it."""
    return {len(t) - t.index(sign) for t in texts if sign in t}


def test_marks_and_signs_stand_under_each_other() -> None:
    lined = line_up(("20.66 ± 0.26", "7.1 ± 12", "–", "130", "33.40 ± 1.12"))
    assert len(from_right(lined, "±")) == 1
    assert len(from_right(lined, ".")) == 1
    bare = [t.replace(FIGURE_SPACE, "").replace(PUNCTUATION_SPACE, "").strip() for t in lined]
    assert [t.replace(" ", "") for t in bare] == ["20.66±0.26", "7.1±12", "–", "130", "33.40±1.12"]


def test_a_decimal_comma_is_a_mark_too() -> None:
    assert line_up(("1,25", "10,5"), ",") == ("1,25", f"10,5{FIGURE_SPACE}")


def test_nothing_is_padded_when_all_are_alike() -> None:
    assert line_up(("4", "3")) == ("4", "3")


def test_titles_break_where_the_longer_line_is_shortest() -> None:
    assert two_lines("Parts per kWh") == "Parts\nper kWh"
    assert two_lines("Duration [min]") == "Duration\n[min]"


def test_the_model_is_a_proper_model(qtmodeltester: ModelTester) -> None:
    model = TableModel()
    qtmodeltester.check(model)
    model.show_table(readable_table(make(5, 4)[1]))
    qtmodeltester.check(model)


def test_cells_are_read_aloud_with_their_column(qapp: object) -> None:
    model = TableModel()
    columns = (Column("machine", "Machine", "left"), Column("e", "Energy [Wh]", decimals=1))
    model.show_table(Table("t", columns, (("Alder", 21.44), ("Birch", None))))
    assert model.rows == [("Machine", "Energy [Wh]"), ("Alder", "21.4"), ("Birch", "–")]
    cell = model.index(0, 1)
    assert model.data(cell, Qt.ItemDataRole.AccessibleTextRole) == "Energy [Wh]: 21.4"
    assert model.data(cell, Qt.ItemDataRole.TextAlignmentRole) & Qt.AlignmentFlag.AlignRight
    assert model.headerData(1, Qt.Orientation.Horizontal) == "Energy\n[Wh]"
    assert model.data(cell, Qt.ItemDataRole.DecorationRole) is None


def test_an_empty_table_has_columns_and_no_rows(qapp: object) -> None:
    model = TableModel()
    model.show_table(Table("t", (Column("a", "A"),), ()))
    assert (model.rowCount(), model.columnCount()) == (0, 1)


def test_a_card_of_the_width_it_wishes_for_shows_every_column(qtbot: QtBot, qapp: QApplication) -> None:
    appearance = Appearance(qapp, "light")  # its style sheet draws the frames
    card = TableCard("table", "Table")
    qtbot.addWidget(card)
    card.show_table(readable_table(make()[1]), "")
    with qtbot.waitExposed(card):
        card.show()
    card.resize(card.wished_width, 300)
    qtbot.waitUntil(lambda: card.view.horizontalScrollBar().maximum() == 0)
    card.resize(card.wished_width - 20, 300)
    qtbot.waitUntil(lambda: card.view.horizontalScrollBar().maximum() > 0)
    appearance.deleteLater()


def test_words_after_numbers_keep_their_distance_and_are_copied_without_it(qtbot: QtBot) -> None:
    columns = (
        Column("machine", "Machine", "left"),
        Column("against_wh", "Held against [Wh]"),
        Column("action", "What to do", "left"),
    )
    model = TableModel()
    model.show_table(Table("Points", columns, (("Alder", 1.0, "let it cool"),)))
    assert [model.index(0, i).data() for i in (0, 2)] == ["Alder", f"{EM_SPACE}let it cool"]
    head = model.headerData(2, Qt.Orientation.Horizontal)
    assert head == f"{EM_SPACE}What\n{EM_SPACE}to do"
    assert model.rows[1][2] == "let it cool"
