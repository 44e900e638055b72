"""A measure against a property, used as a person does: chosen, typed, pasted, asked, undone."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from core import edits
from core.beds.area import BED_AREA
from core.figures.curve_values import CurvesFigure
from core.properties.table import columns_of, value_of
from gui.pages.compare import ComparePage
from gui.widgets.property_grid import PropertyGrid
from tests.gui.driver import Driver

CTRL = Qt.KeyboardModifier.ControlModifier
ENERGIES = {"Alder": 21.0, "Birch": 25.0, "Cedar": 26.5, "Hazel": 31.0, "Rowan": 33.5}


class Bench(Driver):
    """A window with five machines of which readings were typed, on the Compare page."""

    def fill(self) -> None:
        study = self.study
        for name, energy in ENERGIES.items():
            study = edits.add_machine(study, name).study
            for i in range(3):
                added = edits.add_typed(
                    study, study.machines[-1].id, energy + 0.1 * i, seconds=3000, step_wh=0.1
                )
                study = added.study
        study = edits.add_property_column(study, "Age (years)", "number").study
        self.session.apply(edits.Edit(study, "Fill"))
        self.session.seal()
        self.window.show_page("Compare")
        self.settle()
        choice = self.widget(QComboBox, "compare_view")
        choice.setFocus()
        QTest.keyClicks(choice, "Ag")
        self.settle()

    @property
    def page(self) -> ComparePage:
        page = self.window.page
        assert isinstance(page, ComparePage)
        return page

    @property
    def grid(self) -> PropertyGrid:
        return self.widget(PropertyGrid, "property_grid")

    @property
    def sentence(self) -> str:
        return self.page.top.sentence.text()

    def go_to(self, machine: int, name: str) -> None:
        self.grid.setFocus()
        self.grid.go_to(machine, [c.name for c in columns_of(self.study)].index(name))

    def paste(self, text: str) -> None:
        QGuiApplication.clipboard().setText(text)
        self.press(Qt.Key.Key_V, self.grid, CTRL)

    def type_into(self, text: str) -> str:
        """Type into the current cell: the first key opens its field, whose name is returned."""
        QTest.keyClicks(self.grid, text[0])
        editor = QApplication.focusWidget()
        assert isinstance(editor, QLineEdit)
        name = editor.accessibleName()
        QTest.keyClicks(editor, text[1:])
        QTest.keyClick(editor, Qt.Key.Key_Return)
        self.settle()
        return name

    def column(self, name: str) -> list[object]:
        return [value_of(m, name) for m in self.study.machines]

    def choose(self, name: str, text: str) -> None:
        """Choose in a list as the mouse does."""
        box = self.widget(QComboBox, name)
        box.setCurrentIndex(box.findText(text))
        box.activated.emit(box.currentIndex())
        self.settle()


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path) -> Iterator[Bench]:
    made = Bench(qtbot, tmp_path / "window")
    try:
        made.fill()
        yield made
    finally:
        made.close()


def test_nothing_is_claimed_of_machines_of_which_nothing_is_noted(bench: Bench) -> None:
    assert bench.page.properties.isVisible()
    assert not bench.page.rows.isVisible()
    assert bench.sentence.startswith("No machine has both a value of energy per part and of")
    assert bench.page.properties.chart.figure is None


def test_typing_fills_a_cell_and_undo_empties_it(bench: Bench) -> None:
    bench.go_to(1, "Age (years)")
    assert bench.type_into("3.5") == "Birch, Age (years)"
    assert bench.column("Age (years)") == [None, 3.5, None, None, None]
    bench.press(Qt.Key.Key_Z, bench.window, CTRL)
    assert bench.column("Age (years)") == [None] * 5


def test_a_pasted_column_becomes_a_chart_and_a_sentence(bench: Bench) -> None:
    bench.go_to(0, "Age (years)")
    bench.paste("1\n2\n3\n4\n5\n")
    assert bench.column("Age (years)") == [1.0, 2.0, 3.0, 4.0, 5.0]
    bench.choose("property_column", "Age (years)")
    assert bench.sentence.startswith("Energy per part rises with age (rank correlation +1.00")
    assert "shows no cause" in bench.page.top.conditions.text()
    figure = bench.page.properties.chart.figure
    assert isinstance(figure, CurvesFigure)
    assert [s.name for s in figure.spots] == list(ENERGIES)
    bench.press(Qt.Key.Key_Z, bench.window, CTRL)
    assert bench.column("Age (years)") == [None] * 5


def test_a_table_with_names_brings_new_columns_in_one_step(bench: Bench) -> None:
    bench.paste("Machine\tMotion\nRowan\tcrossed belts\nAlder\tmoving bed\n")
    assert bench.column("Motion") == ["moving bed", None, None, None, "crossed belts"]
    bench.press(Qt.Key.Key_Z, bench.window, CTRL)
    assert "Motion" not in [c.name for c in columns_of(bench.study)]


def test_a_cell_that_cannot_be_used_is_told_and_nothing_changes(bench: Bench) -> None:
    before = bench.study
    bench.go_to(2, "Age (years)")
    bench.paste("old")
    assert "Cedar, Age (years): “old” is no number" in bench.page.message.text()
    bench.go_to(2, BED_AREA)
    bench.type_into("-3")
    assert "no area of a bed" in bench.page.message.text()
    assert bench.study is before


def test_delete_empties_the_chosen_cells_and_copy_takes_them_along(bench: Bench) -> None:
    bench.go_to(0, "Age (years)")
    bench.paste("1\n2\n3\n4\n5\n")
    bench.grid.selectAll()
    bench.press(Qt.Key.Key_C, bench.grid, CTRL)
    lines = QGuiApplication.clipboard().text().split("\n")
    assert lines[0].startswith("Machine\tBed area (dm²)\tBed supply\tAge (years)")
    assert lines[2] == "Birch\t\t\t2"
    bench.press(Qt.Key.Key_Delete, bench.grid)
    assert bench.column("Age (years)") == [None] * 5
    bench.paste("\n".join(lines))
    assert bench.column("Age (years)") == [1.0, 2.0, 3.0, 4.0, 5.0]


def test_a_column_is_added_renamed_and_removed_by_keys(bench: Bench) -> None:
    field = bench.widget(QLineEdit, "property_name")
    field.setFocus()
    QTest.keyClicks(field, "Noise at standby")
    bench.write("property_unit", "dB")
    assert [c.name for c in columns_of(bench.study)][-1] == "Noise at standby (dB)"
    assert bench.widget(QLineEdit, "rename_property").text() == "Noise at standby (dB)"
    bench.write("rename_property", "Noise (dB)")
    assert [c.name for c in columns_of(bench.study)][-1] == "Noise (dB)"
    bench.click("remove_property")
    assert [c.name for c in columns_of(bench.study)][-1] == "Age (years)"
    assert "Ctrl+Z" in bench.page.message.text()


def test_a_name_that_is_taken_is_refused_in_place(bench: Bench) -> None:
    before = bench.study
    bench.write("property_name", "bed area")
    assert "write into that one" in bench.page.message.text()
    bench.go_to(0, "Age (years)")
    bench.write("rename_property", "Bed supply")
    assert "already" in bench.page.message.text()
    assert bench.widget(QLineEdit, "rename_property").text() == "Age (years)"
    assert bench.study is before


def test_the_columns_of_the_beds_stay_as_they_are(bench: Bench) -> None:
    bench.go_to(0, BED_AREA)
    assert not bench.widget(QPushButton, "remove_property").isEnabled()
    assert not bench.widget(QLineEdit, "rename_property").isEnabled()


def test_a_unit_is_asked_for_numbers_only(bench: Bench) -> None:
    assert bench.page.properties.card.unit.isVisible()
    bench.choose("property_kind", "Yes or no")
    assert not bench.page.properties.card.unit.isVisible()


def test_points_are_walked_by_keys_and_read_out(bench: Bench) -> None:
    bench.go_to(0, "Age (years)")
    bench.paste("1\n2\n3\n4\n5\n")
    bench.choose("property_column", "Age (years)")
    chart = bench.page.properties.chart
    chart.setFocus()
    bench.press(Qt.Key.Key_Down, chart)
    bench.press(Qt.Key.Key_Down, chart)
    assert chart.readout_lines()[0] == "Birch"
    assert chart.readout_lines()[2] == "Age: 2 years"
    bench.press(Qt.Key.Key_F1, chart)
    assert bench.page.found.explanation is not None
    assert bench.page.found.explanation.title.startswith("Birch")


def test_how_it_was_found_shows_the_ranks_and_follows_the_choice(bench: Bench) -> None:
    bench.go_to(0, "Age (years)")
    bench.paste("2\n1\n3\n4\n5\n")
    bench.choose("property_column", "Age (years)")
    bench.click("how_found")
    told = bench.page.found.explanation
    assert told is not None
    assert told.title == "Energy per part against Age"
    assert "rank correlation = 1 − 6 × 2 / 120 = 0.900" in [line.replace(",", ".") for line in told.formula]
    assert any("10 of 120 orders" in line for line in told.formula)
    bench.choose("property_measure", "Mean power")
    told = bench.page.found.explanation
    assert told is not None
    assert told.title == "Mean power against Age"


def test_copying_takes_the_chart_and_its_numbers(bench: Bench) -> None:
    bench.go_to(0, "Age (years)")
    bench.paste("1\n2\n3\n4\n5\n")
    bench.choose("property_column", "Age (years)")
    bench.click("copy")
    text = QGuiApplication.clipboard().text()
    assert text.startswith("Machine\tAge (years)\tEnergy per part [Wh]\nAlder\t1\t21")
    assert QGuiApplication.clipboard().mimeData().hasImage()


def test_another_study_begins_with_its_own_choice(bench: Bench) -> None:
    bench.go_to(0, "Age (years)")
    bench.paste("1\n2\n3\n4\n5\n")
    bench.choose("property_measure", "Duration")
    page = bench.page
    assert bench.session.new_study()
    bench.settle()
    assert page.properties.found is None
    bench.fill()
    assert page.properties.measure.currentText() == "Energy per part"


def test_the_chart_that_is_shown_can_be_published(bench: Bench) -> None:
    bench.go_to(0, "Age (years)")
    bench.paste("1\n2\n3\n4\n5\n")
    bench.choose("property_column", "Age (years)")
    bench.choose("property_measure", "Duration")
    bench.do("add_against_property_to_publish")
    assert bench.study.publishing.keys == ("against-seconds-age-years",)
