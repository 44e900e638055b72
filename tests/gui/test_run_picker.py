"""The list of runs to line up: machines of a farm are folded, boxes tick one run or all of a machine."""

from attrs import evolve
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QTreeWidgetItem
from pytestqt.qtbot import QtBot

from core.results.values import Comparison
from gui.look import current
from gui.widgets.run_picker import RunPicker
from tests.comparisons import make

ON, OFF, PARTLY = Qt.CheckState.Checked, Qt.CheckState.Unchecked, Qt.CheckState.PartiallyChecked


def shown(qtbot: QtBot, machines: int, runs: int) -> tuple[RunPicker, Comparison]:
    picker = RunPicker()
    qtbot.addWidget(picker)
    _, comparison = make(machines, runs, left_out=False)
    picker.show_runs(comparison, None, {})
    picker.resize(240, 500)
    picker.show()
    return picker, comparison


def top(picker: RunPicker, place: int) -> QTreeWidgetItem:
    found = picker.topLevelItem(place)
    assert found is not None
    return found


def row(picker: RunPicker, run_id: str) -> QTreeWidgetItem:
    found = picker.row_of(run_id)
    assert found is not None
    return found


def click_box(picker: RunPicker, item: QTreeWidgetItem) -> None:
    """Click on the box at the beginning of a row."""
    place = picker.visualItemRect(item)
    spot = QPoint(place.x() + round(0.7 * current().text_px), place.center().y())
    QTest.mouseClick(picker.viewport(), Qt.MouseButton.LeftButton, pos=spot)


def test_the_runs_of_a_farm_are_listed_when_a_machine_is_opened(qtbot: QtBot) -> None:
    picker, comparison = shown(qtbot, 3, 20)
    assert [top(picker, place).childCount() for place in range(3)] == [0, 0, 0]
    assert [top(picker, place).checkState(0) for place in range(3)] == [ON, ON, ON]
    picker.setCurrentItem(top(picker, 1))
    QTest.keyClick(picker, Qt.Key.Key_Right)
    runs = comparison.machines[1].runs
    assert [top(picker, 1).child(k).text(0) for k in range(20)] == [run.name for run in runs]
    assert picker.visualItemRect(top(picker, 1).child(0)).isValid()
    assert top(picker, 2).childCount() == 0


def test_few_runs_are_seen_at_once_and_what_was_opened_stays_open(qtbot: QtBot) -> None:
    few, _ = shown(qtbot, 3, 4)
    assert top(few, 0).isExpanded()
    many, comparison = shown(qtbot, 3, 20)
    top(many, 1).setExpanded(True)
    many.show_runs(evolve(comparison, machines=comparison.machines[1:]), None, {})
    assert [top(many, place).isExpanded() for place in (0, 1)] == [True, False]
    assert top(many, 0).childCount() == 20
    many.show_runs(evolve(comparison, machines=()), None, {})
    assert (many.topLevelItemCount(), many.ticked) == (0, frozenset())


def test_a_machine_s_box_shows_some_and_ticks_all(qtbot: QtBot) -> None:
    picker, comparison = shown(qtbot, 2, 20)
    told: list[frozenset[str] | None] = []
    picker.chosen.connect(told.append)
    every = {run.run_id for machine in comparison.machines for run in machine.runs}
    first = top(picker, 0)
    first.setExpanded(True)
    click_box(picker, row(picker, "r0-3"))
    assert first.checkState(0) == PARTLY
    click_box(picker, first)
    assert first.checkState(0) == row(picker, "r0-3").checkState(0) == ON
    click_box(picker, first)
    assert first.checkState(0) == row(picker, "r0-3").checkState(0) == OFF
    second = every - {run.run_id for run in comparison.machines[0].runs}
    assert told == [every - {"r0-3"}, None, second]
    assert picker.ticked == second


def test_the_box_of_a_machine_that_was_never_opened_ticks_its_runs(qtbot: QtBot) -> None:
    picker, comparison = shown(qtbot, 2, 30)
    click_box(picker, top(picker, 1))
    assert picker.ticked == {run.run_id for run in comparison.machines[0].runs}
    assert row(picker, "r1-7").checkState(0) == OFF
    picker.show_runs(comparison, {"r1-7"}, {})
    assert row(picker, "r1-7").checkState(0) == ON
    assert [top(picker, place).checkState(0) for place in (0, 1)] == [OFF, PARTLY]


def test_what_is_said_of_a_run_is_told_and_taken_back(qtbot: QtBot) -> None:
    picker, comparison = shown(qtbot, 2, 30)
    picker.show_runs(comparison, None, {"r1-1": "from 3 to 5 min"})
    item, name = row(picker, "r1-1"), comparison.machines[1].runs[1].name
    assert (item.text(0), item.toolTip(0)) == (f"{name}  ◂ leaves", "from 3 to 5 min")
    picker.show_runs(comparison, None, {"r1-1": "from 4 to 5 min"})
    assert item.toolTip(0) == "from 4 to 5 min"
    picker.show_runs(comparison, None, {})
    assert (item.text(0), item.toolTip(0)) == (name, "")


def test_only_what_a_person_picks_is_told(qtbot: QtBot) -> None:
    picker, _ = shown(qtbot, 2, 30)
    told: list[str] = []
    picker.picked.connect(told.append)
    picker.select("r1-2")
    assert picker.currentItem() is row(picker, "r1-2")
    assert top(picker, 1).isExpanded()  # what is chosen elsewhere is seen here
    QTest.keyClick(picker, Qt.Key.Key_Down)
    assert told == ["r1-3"]
    picker.select(None)
    assert picker.currentItem() is None
    picker.setCurrentItem(top(picker, 0))
    picker.select(None)
    assert picker.currentItem() is top(picker, 0)  # keys go on from there
