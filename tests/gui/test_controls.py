"""Conditions of a run, logs of a bed and checks of meters, by what a user does in the window."""

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QCheckBox, QLabel, QListWidget, QMenu, QPushButton

from core.figures.readout import readout
from core.quantities import BED_SHARE
from core.results.values import MachineResult
from gui.widgets.choice import Choice
from gui.widgets.number_field import NumberField
from tests.gui.driver import Driver, opened, write_log

#: watts of the made-up machine: idle, at work without the bed, and its bed while it is on
IDLE_W, WORK_W, BED_W = 4.0, 60.0, 150.0


def write_bed_log(path: Path, beds: str, *, of_bed: bool = False, celsius: bool = True) -> Path:
    """A log each 2 s of runs with the bed on (1), with it off (0), and of hold tests (h), each after a rest.

    The bed is switched so fast that no run's own trace shows it: its watts are what it needs on average.
    """
    random = np.random.default_rng(3)
    parts: list[np.ndarray] = []
    bed_parts: list[np.ndarray] = []
    for bed in beds:
        held = 0.0 if bed == "0" else 50.0
        warm = np.full(60, 0.0 if bed == "0" else BED_W)
        layers = 20.0 * np.sin(np.arange(660) / 7.0) + random.normal(0, 6.0, 660)
        work = np.zeros(660) if bed == "h" else WORK_W + layers
        bed_w = np.concatenate((np.zeros(300), warm, held + np.zeros(600)))
        rest = np.concatenate((np.zeros(300), work))
        wander = np.where(bed_w > 0, random.normal(0, 3.0, bed_w.size), 0.0)
        bed_parts.append(bed_w + wander)
        parts.append(IDLE_W + rest + random.normal(0, 0.3, rest.size))
    bed_w = np.concatenate((*bed_parts, np.zeros(300)))
    power = bed_w + np.concatenate((*parts, np.full(300, IDLE_W)))
    rows = np.maximum(bed_w if of_bed else power, 0.0)
    start = np.datetime64("2026-03-02T08:00:00")
    stamps = start + 2 * np.arange(power.size).astype("timedelta64[s]")
    bed_c = np.where(bed_w > 0, 60.0, 25.0)
    head = "time,power (W)" + (",bed temperature (C)" if celsius else "")
    lines = [
        f"{t}Z,{p:.1f}" + (f",{c:.1f}" if celsius else "")
        for t, p, c in zip(stamps, rows.tolist(), bed_c.tolist(), strict=True)
    ]
    path.write_text("\n".join((head, *lines)) + "\n", encoding="utf-8")
    return path


@pytest.fixture
def user(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as driver:
        driver.window.activateWindow()
        yield driver


def choose(user: Driver, place: int) -> str:
    user.window.show_page("Logs")
    user.session.select(user.run(place).id)
    user.settle()
    return user.run(place).id


def machine(user: Driver, place: int = 0) -> MachineResult:
    comparison = user.session.comparison
    assert comparison is not None
    machine_id = user.study.machines[place].id
    return next(m for m in comparison.machines if m.machine_id == machine_id)


def test_a_run_with_the_bed_off_tells_the_bed_of_the_others(user: Driver, tmp_path: Path):
    user.drop(write_bed_log(tmp_path / "alder.csv", "1110", celsius=False))
    assert machine(user).bed_share is None
    last = choose(user, 3)
    box = user.widget(QCheckBox, "stretch_bed_off")
    assert not box.isChecked()
    user.click("stretch_bed_off")
    assert user.study.run(last).set_bed_off
    told = machine(user)
    assert [run.bed.method for run in told.included if run.bed] == ["run with the bed off"] * 3
    assert told.bed_share is not None
    first = told.included[0]
    without = user.session.results[last]
    assert not without.included
    assert first.energy_wh is not None
    assert without.energy_wh is not None
    assert told.bed_share.value == pytest.approx(1 - without.energy_wh / first.energy_wh, abs=0.02)
    user.window.show_page("Compare")
    user.settle()
    comparison = user.session.comparison
    assert comparison is not None
    assert "found by: run with the bed off" in readout(comparison, first.run_id, BED_SHARE)
    user.do("action_undo")
    assert not user.study.run(last).set_bed_off
    assert machine(user).bed_share is None
    user.do("action_redo")
    assert machine(user).bed_share is not None
    choose(user, 3)
    user.click("stretch_hand_back")
    assert not user.study.run(last).set_bed_off


def test_the_temperature_of_the_log_stands_behind_the_field(user: Driver, tmp_path: Path):
    user.drop(write_bed_log(tmp_path / "alder.csv", "11"))
    run_id = choose(user, 0)
    bed, room = (user.widget(NumberField, f"stretch_{name}_c") for name in ("bed", "room"))
    assert (bed.text(), bed.placeholderText()) == ("", "60 by the log")
    assert (room.text(), room.placeholderText()) == ("", "not known")
    steps = len(user.session.history.past)
    user.write("stretch_bed_c", "62,5")
    user.write("stretch_room_c", "21")
    assert (user.study.run(run_id).bed_c, user.study.run(run_id).room_c) == (62.5, 21.0)
    assert len(user.session.history.past) == steps + 2
    assert bed.text() == "62.5"
    assert bed.toolTip().startswith("Set by you")
    user.do("action_undo")
    assert (user.study.run(run_id).bed_c, user.study.run(run_id).room_c) == (62.5, None)
    assert room.text() == ""
    bed.selectAll()
    user.press(Qt.Key.Key_Delete, bed)
    user.press(Qt.Key.Key_Return, bed)
    assert user.study.run(run_id).bed_c is None
    assert bed.placeholderText() == "60 by the log"


def test_what_is_no_temperature_is_refused_with_the_reason(user: Driver, tmp_path: Path):
    user.drop(write_bed_log(tmp_path / "alder.csv", "11"))
    run_id = choose(user, 0)
    before = user.study
    for text in ("warm", "nan", "1e3", "900"):
        user.write("stretch_bed_c", text)
        assert user.study is before
        assert text in user.text("stretch_why_not")
    user.press(Qt.Key.Key_Escape, user.widget(NumberField, "stretch_bed_c"))
    assert user.widget(NumberField, "stretch_bed_c").text() == ""
    assert not user.window.findChild(QLabel, "stretch_why_not").isVisible()
    user.write("stretch_bed_c", "61")
    assert user.study.run(run_id).bed_c == 61.0
    choose(user, 1)
    assert user.widget(NumberField, "stretch_bed_c").text() == ""


def test_the_temperatures_of_the_test_count_where_a_run_has_none(user: Driver, tmp_path: Path):
    user.drop(write_bed_log(tmp_path / "alder.csv", "11", celsius=False))
    choose(user, 0)
    user.write("bed_c", "65")
    user.write("room_c", "19,5")
    assert (user.study.bed_c, user.study.room_c) == (65.0, 19.5)
    assert user.widget(NumberField, "stretch_bed_c").placeholderText() == "65 of the test"
    assert user.widget(NumberField, "stretch_room_c").placeholderText() == "19.5 of the test"
    user.window.show_page("Compare")
    user.settle()
    assert "room at 20 °C" in user.text("conditions")
    user.write("room_c", "mild")
    assert "mild" in user.text("side_why_not")
    assert user.study.room_c == 19.5
    user.do("action_undo")
    assert (user.study.bed_c, user.study.room_c) == (65.0, None)


def with_two_meters(user: Driver, folder: Path) -> None:
    """Two machines, each with a meter of its own, as is taken where nobody says otherwise."""
    user.drop(write_log(folder / "alder.csv"), write_log(folder / "birch.csv", seed=2, processing_w=90.0))
    user.window.show_page("Logs")
    user.settle()
    assert len(user.study.meters) == 2


def half_width(user: Driver) -> float:
    comparison = user.session.comparison
    assert comparison is not None
    (pair,) = comparison.pairs
    assert pair.ratio_low is not None
    assert pair.ratio_high is not None
    return (pair.ratio_high - pair.ratio_low) / 2


def type_check(user: Driver, first: str, second: str, minutes: str, note: str = "") -> None:
    user.write("check_reading", first)
    user.write("check_other_reading", second)
    user.write("check_minutes", minutes)
    if note:
        user.write("check_note", note)
    user.click("check_add")


def test_a_load_check_narrows_the_ratio_and_says_what_it_tells(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as user:
        with_two_meters(user, tmp_path)
        user.click("checks_button")
        assert "approved" in user.text("check_caution")
        plain = half_width(user)
        type_check(user, "412,30", "410.10", "180", "an old lamp")
        (check,) = user.study.checks
        assert (check.reading, check.other_reading, check.seconds) == (412.3, 410.1, 10_800.0)
        assert (check.step, check.note) == (0.01, "an old lamp")
        # the rest of the interval is what a thermostat in step with the readings leaves open
        assert half_width(user) < 0.9 * plain
        listed = user.widget(QListWidget, "checks_list")
        assert "412.30 Wh" in listed.item(0).text()
        listed.setCurrentRow(0)
        user.settle()
        assert "On one load" in user.text("check_says")
        assert "without a check" in user.text("check_says")
        # a coarse display tells less
        user.write("check_reading", "412")
        user.write("check_other_reading", "410")
        narrow = half_width(user)
        user.click("check_add")
        assert user.study.checks[0].step == 1.0
        assert len(user.study.checks) == 1
        assert narrow < half_width(user) < plain
        user.do("action_undo")
        assert user.study.checks == (check,)
        assert half_width(user) == pytest.approx(narrow)
    with opened(qtbot, tmp_path) as user:
        assert user.study.checks == (check,)
        assert half_width(user) == pytest.approx(narrow)
        user.window.show_page("Logs")
        user.settle()
        user.click("checks_button")
        user.widget(QListWidget, "checks_list").setCurrentRow(0)
        user.settle()
        user.click("check_remove")
        assert user.study.checks == ()
        assert half_width(user) == pytest.approx(plain)


def test_a_check_that_cannot_be_is_refused_with_the_reason(user: Driver, tmp_path: Path):
    with_two_meters(user, tmp_path)
    user.click("checks_button")
    before = user.study
    for first, second, minutes, why in (
        ("0", "410", "180", "more than 0"),
        ("412", "", "180", "more than 0"),
        ("412", "0.410", "180", "too far apart"),
        ("412", "410", "", "how many minutes"),
    ):
        for name in ("check_reading", "check_other_reading", "check_minutes"):
            user.widget(NumberField, name).clear()
        type_check(user, first, second, minutes)
        assert why in user.text("check_why_not")
    other = user.widget(Choice, "check_other")
    other.setCurrentIndex(0)
    type_check(user, "412", "410", "180")
    assert "two different meters" in user.text("check_why_not")
    assert user.study is before


def test_powers_take_no_time(user: Driver, tmp_path: Path):
    with_two_meters(user, tmp_path)
    user.click("checks_button")
    unit = user.widget(Choice, "check_unit")
    unit.setCurrentIndex(unit.findData("W"))
    unit.activated.emit(unit.currentIndex())
    user.settle()
    user.write("check_reading", "60.2")
    user.write("check_other_reading", "60.0")
    user.click("check_add")
    (check,) = user.study.checks
    assert (check.unit, check.seconds, check.step) == ("W", None, 0.1)


def test_one_meter_cannot_be_checked_and_that_is_said(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "alder.csv"))
    user.click("checks_button")
    assert "one meter" in user.text("check_one_meter")
    assert not any(b.isVisible() for b in user.window.findChildren(QPushButton, "check_add"))


def test_a_log_of_the_bed_alone_tells_the_bed_of_the_runs(user: Driver, tmp_path: Path):
    user.drop(
        write_bed_log(tmp_path / "alder.csv", "111", celsius=False),
        write_bed_log(tmp_path / "bed.csv", "111", of_bed=True, celsius=False),
    )
    user.window.show_page("Logs")
    user.session.select(user.study.runs_of(user.study.logs[1].id)[0].id)
    user.settle()
    assert not user.widget(QCheckBox, "meter_of_bed").isEnabled()
    machine_of = user.widget(Choice, "reading_machine")
    machine_of.setCurrentIndex(machine_of.findData(user.study.machines[0].id))
    machine_of.activated.emit(machine_of.currentIndex())
    user.settle()
    assert len(user.study.machines) == 1
    user.click("meter_of_bed")
    assert user.study.logs[1].of_bed
    told = machine(user)
    assert [run.bed.method for run in told.included if run.bed] == ["own meter"] * 3
    content = user.lane(1).content
    assert content is not None
    assert (content.blocks, content.summary) == ((), "the bed alone")
    assert "1 log is of a bed alone" in user.text("sentence")
    log = user.study.logs[1]
    user.lane(1).head_menu_wanted.emit(log.id, QPoint(10, 10))
    menu = user.window.findChild(QMenu, "log_menu")
    assert menu is not None
    action = next(a for a in menu.actions() if a.objectName() == "log_of_bed")
    assert action.isChecked()
    action.trigger()
    menu.close()
    user.settle()
    assert not user.study.logs[1].of_bed
    user.do("action_undo")
    assert user.study.logs[1].of_bed


def test_what_was_noted_is_there_after_reopening(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as user:
        user.drop(write_bed_log(tmp_path / "alder.csv", "1110", celsius=False))
        choose(user, 3)
        user.click("stretch_bed_off")
        choose(user, 0)
        user.write("stretch_bed_c", "61")
        user.write("room_c", "19")
        kept, share = user.study, machine(user).bed_share
    with opened(qtbot, tmp_path) as user:
        assert user.study == kept
        assert machine(user).bed_share == share
        choose(user, 0)
        assert user.widget(NumberField, "stretch_bed_c").text() == "61"
        assert user.widget(NumberField, "room_c").text() == "19"
        for _ in range(3):
            user.do("action_undo")
        assert not any(run.set_bed_off or run.bed_c for run in user.study.runs)
        assert user.study.room_c is None


def test_a_check_is_typed_with_the_keyboard_alone(user: Driver, tmp_path: Path):
    with_two_meters(user, tmp_path)
    button = user.widget(QPushButton, "checks_button")
    button.setFocus()
    user.press(Qt.Key.Key_Space, button)
    texts = {
        "check_reading": "60.2",
        "check_other_reading": "60.4",
        "check_minutes": "90",
        "check_note": "lamp",
    }
    for _ in range(12):
        user.press(Qt.Key.Key_Tab)
        focus = QApplication.focusWidget()
        assert focus is not None
        QTest.keyClicks(focus, texts.pop(focus.objectName(), ""))
        if focus.objectName() == "check_add":
            user.press(Qt.Key.Key_Space, focus)
            break
    assert texts == {}
    (check,) = user.study.checks
    assert (check.reading, check.other_reading, check.seconds, check.note) == (60.2, 60.4, 5400.0, "lamp")


def test_a_study_that_can_only_be_read_is_left_alone(user: Driver, tmp_path: Path):
    user.drop(write_bed_log(tmp_path / "alder.csv", "11"))
    path = user.session.path
    assert path is not None
    with opened(user.qtbot, tmp_path / "second") as other:
        other.session.open(path)
        other.settle()
        assert other.session.is_read_only
        before = other.study
        choose(other, 0)
        assert not other.widget(NumberField, "stretch_bed_c").isEnabled()
        assert not other.widget(QCheckBox, "stretch_bed_off").isEnabled()
        other.write("room_c", "19")
        assert other.study is before
