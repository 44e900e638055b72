"""The card of the beds: its lines are made some at a time, and all of them are there in the end."""

from PySide6.QtWidgets import QApplication, QComboBox, QLabel
from pytestqt.qtbot import QtBot

from core.formatting import POINT
from core.study import Machine, Study
from gui.widgets.bed_properties import BedProperties
from gui.widgets.number_field import NumberField


def study(count: int) -> Study:
    return Study(id="s", machines=tuple(Machine(f"m{i}", f"machine {i}", i) for i in range(count)))


def lines(card: BedProperties) -> int:
    return sum(c.objectName().startswith("bed_supply_m") for c in card.findChildren(QComboBox))


def test_a_farm_gets_its_lines_in_turns_and_each_works(qtbot: QtBot) -> None:
    card = BedProperties(POINT)
    qtbot.addWidget(card)
    card.show_study(study(30))
    card.show()
    assert 0 < lines(card) < 30
    qtbot.waitUntil(lambda: lines(card) == 30)
    assert card.findChild(NumberField, "bed_area_m29") is not None
    heard: list[tuple[str, object]] = []
    card.area_set.connect(lambda machine_id, area: heard.append((machine_id, area)))
    field = card.findChild(NumberField, "bed_area_m29")
    assert field is not None
    field.setFocus()
    field.insert("5.5")
    field.editingFinished.emit()
    assert heard == [("m29", 5.5)]


def test_a_study_that_changes_while_lines_are_made_is_shown_as_it_is_now(qtbot: QtBot) -> None:
    card = BedProperties(POINT)
    qtbot.addWidget(card)
    card.show_study(study(30))
    card.show_study(study(3))
    card.show()
    qtbot.waitUntil(lambda: lines(card) == 3)
    names = [label.text() for label in card.findChildren(QLabel) if label.text().startswith("machine")]
    assert sorted(names) == ["machine 0", "machine 1", "machine 2"]


def test_lines_wait_while_nobody_sees_them(qtbot: QtBot) -> None:
    card = BedProperties(POINT)
    qtbot.addWidget(card)
    card.show_study(study(30))
    before = lines(card)
    QApplication.processEvents()
    assert lines(card) == before
    card.show()
    qtbot.waitUntil(lambda: lines(card) == 30)
