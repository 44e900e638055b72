"""The Logs page by what a user does on it."""

import math
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QDoubleSpinBox,
    QLineEdit,
    QMenu,
    QPushButton,
    QToolButton,
)

from tests.gui.driver import Driver, opened, write_log


@pytest.fixture
def user(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as driver:
        driver.drop(write_log(tmp_path / "alder.csv"))
        driver.window.activateWindow()
        yield driver


def turn_wheel(user: Driver, at_s: float, notches: int, modifier=Qt.KeyboardModifier.NoModifier) -> None:
    lane = user.lane()
    point = QPointF(user.point(lane, at_s))
    event = QWheelEvent(
        point, lane.mapToGlobal(point), QPoint(), QPoint(0, 120 * notches), Qt.MouseButton.NoButton, modifier,
        Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(lane, event)
    user.settle()


def test_dragging_an_edge_moves_it_and_is_one_undo_step(user: Driver):
    run, steps = user.run(), len(user.session.history.past)
    user.drag(user.lane(), run.end_s, run.end_s - 200)
    moved = user.run()
    assert moved.end_s == pytest.approx(run.end_s - 200, abs=user.lane().view.span_s / 500)
    assert moved.start_s == run.start_s
    assert moved.is_moved
    assert len(user.session.history.past) == steps + 1
    user.do("action_undo")
    assert user.run() == run


def test_the_answer_follows_a_moved_edge(user: Driver):
    run = user.run()
    before = user.session.results[run.id]
    user.drag(user.lane(), run.end_s, run.end_s - 300)
    after = user.session.results[run.id]
    assert before.energy_wh is not None
    assert after.energy_wh is not None
    assert after.energy_wh < before.energy_wh


def test_two_drags_are_two_steps(user: Driver):
    steps = len(user.session.history.past)
    run = user.run()
    user.drag(user.lane(), run.end_s, run.end_s - 200)
    user.drag(user.lane(), user.run().end_s, run.end_s - 300)
    assert len(user.session.history.past) == steps + 2


def test_an_edge_cannot_be_dragged_over_the_other_one(user: Driver):
    run = user.run()
    user.drag(user.lane(), run.start_s, run.end_s + 500)
    assert user.run().start_s < user.run().end_s == run.end_s


def test_arrow_keys_choose_stretches_and_move_an_edge_by_a_sample(user: Driver):
    lane = user.lane()
    lane.setFocus()
    user.press(Qt.Key.Key_Right, lane)
    assert user.session.selected == user.run(0).id
    user.press(Qt.Key.Key_Right, lane)
    run = user.run(1)
    assert user.session.selected == run.id
    steps = len(user.session.history.past)
    user.press(Qt.Key.Key_Return, lane)
    user.press(Qt.Key.Key_Return, lane)
    assert lane.edge == "end"
    user.press(Qt.Key.Key_Left, lane)
    user.press(Qt.Key.Key_Left, lane)
    moved = user.run(1)
    assert 2.0 <= run.end_s - moved.end_s <= 4.0
    assert moved.end_s % 2.0 == pytest.approx(0.0)
    assert len(user.session.history.past) == steps + 1
    user.press(Qt.Key.Key_Escape, lane)
    assert lane.edge is None


def test_delete_leaves_a_run_out_and_asks_why_in_place(user: Driver):
    run = user.run()
    user.click_lane(user.lane(), (run.start_s + run.end_s) / 2)
    user.press(Qt.Key.Key_Delete, user.lane())
    field = user.widget(QLineEdit, "stretch_why")
    assert field.hasFocus()
    user.write("stretch_why", "door was open")
    left_out = user.run()
    assert not left_out.included
    assert left_out.why_left_out == "door was open"
    assert "1 of them left out" in user.text("sentence")
    user.do("action_undo")
    assert user.run() == run
    user.do("action_redo")
    user.click("stretch_include")
    assert user.run().included


def test_a_name_given_with_f2_is_shown_on_the_lane(user: Driver):
    user.session.select(user.run().id)
    user.press(Qt.Key.Key_F2, user.lane())
    user.write("stretch_name", "first clip")
    assert user.run().name == "first clip"
    content = user.lane().content
    assert content is not None
    assert content.blocks[0].label == "first clip"


def test_a_stretch_is_split_and_joined(user: Driver):
    run = user.run()
    user.session.select(run.id)
    user.do("stretch_action_split")
    first, second = user.run(0), user.run(1)
    assert (first.start_s, second.end_s) == (run.start_s, run.end_s)
    assert first.end_s == second.start_s
    user.do("stretch_action_join")
    assert (user.run(0).start_s, user.run(0).end_s) == (run.start_s, run.end_s)


def test_what_a_stretch_is_can_be_said_and_handed_back(user: Driver):
    user.session.select(user.run().id)
    user.settle()
    kind = user.widget(QComboBox, "stretch_kind")
    kind.setCurrentIndex(kind.findData("hold test"))
    kind.activated.emit(kind.currentIndex())
    user.settle()
    assert user.run().kind == "hold test"
    assert not user.run().included
    user.click("stretch_hand_back")
    assert user.run().kind == "run"


def test_shift_and_drag_marks_a_new_stretch(user: Driver):
    count = len(user.study.runs)
    user.drag(user.lane(), 20, 400, Qt.KeyboardModifier.ShiftModifier)
    assert len(user.study.runs) == count + 1
    assert user.session.selected == user.run(0).id
    assert user.run(0).end_s - user.run(0).start_s == pytest.approx(380, abs=30)


def test_the_wheel_zooms_time_about_the_pointer_and_double_click_shows_the_whole(user: Driver):
    lane, run = user.lane(), user.run(1)
    before = lane.view.x(run.start_s)
    turn_wheel(user, run.start_s, 8)
    assert lane.view.span_s < 0.25 * lane.view.whole_s
    assert lane.view.x(run.start_s) == pytest.approx(before, abs=2)
    turn_wheel(user, run.start_s, 400)
    assert lane.view.span_s == pytest.approx(1.0)
    user.qtbot.mouseDClick(lane, Qt.MouseButton.LeftButton, pos=user.point(lane, lane.view.start_s))
    assert lane.view.is_whole
    turn_wheel(user, run.start_s, -20)
    assert lane.view.is_whole


def test_dragging_the_ground_moves_along_within_the_data(user: Driver):
    lane = user.lane()
    turn_wheel(user, lane.view.whole_s / 2, 6)
    middle = (lane.view.start_s + lane.view.end_s) / 2
    start = lane.view.start_s
    user.drag(lane, middle, middle - lane.view.span_s / 4)
    assert lane.view.start_s > start
    for _ in range(12):
        user.drag(lane, lane.view.end_s - 1, lane.view.start_s + 1)
    assert lane.view.end_s == pytest.approx(lane.view.whole_s)


def test_reading_choices_can_be_corrected_and_handed_back(user: Driver):
    combo = user.widget(QComboBox, "reading_sampling")
    assert combo.currentText().endswith("(found)")
    combo.setCurrentIndex(combo.findData("averaged"))
    combo.activated.emit(combo.currentIndex())
    user.settle()
    log = user.study.logs[0]
    assert log.sources[0].choices.sampling == "averaged"
    assert user.session.traces[log.id].kind == "averaged"
    assert user.widget(QComboBox, "reading_sampling").currentText().endswith("(set by you)")
    user.do("action_undo")
    assert user.session.traces[log.id].kind == "sampled"


def test_a_choice_that_cannot_work_changes_nothing_and_says_why(user: Driver):
    before = user.study
    combo = user.widget(QComboBox, "reading_delimiter")
    combo.setCurrentIndex(combo.findData("|"))
    combo.activated.emit(combo.currentIndex())
    user.settle()
    assert user.study is before
    assert user.session.problems


def test_a_screen_reader_is_told_what_is_selected(user: Driver):
    lane = user.lane()
    assert lane.accessibleName() == "Log of Alder, 3 runs"
    user.session.select(user.run().id)
    assert "run 1, run, " in lane.accessibleDescription()
    assert "counted" in lane.accessibleDescription()


def test_readings_of_a_display_are_typed_in_without_any_log(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as user:
        user.click("welcome_typed")
        for machine, before, after in (("Hazel", 100.0, 100.4), ("Rowan", 7.0, 7.5)):
            user.widget(QComboBox, "typed_machine").setEditText(machine)
            user.widget(QDoubleSpinBox, "typed_before").setValue(before)
            user.widget(QDoubleSpinBox, "typed_after").setValue(after)
            user.widget(QDoubleSpinBox, "typed_minutes").setValue(70)
            user.click("typed_add")
        assert [m.name for m in user.study.machines] == ["Hazel", "Rowan"]
        assert [t.energy_wh for t in user.study.typed] == pytest.approx([400.0, 500.0])
        assert user.study.typed[0].seconds == 4200
        assert user.study.typed[0].step_wh == 10.0
        names = [user.study.meter(t.meter_id).name for t in user.study.typed]
        assert names == ["Meter of Hazel", "Meter of Rowan"]
        meter = user.widget(QComboBox, "typed_meter")
        meter.setCurrentText("Meter of Hazel")
        user.widget(QDoubleSpinBox, "typed_after").setValue(8.0)
        user.click("typed_add")
        user.do("action_undo")
        assert meter.currentText() == "Meter of Hazel"
        assert user.text("sentence") == "2 runs of the part typed in."


def test_a_reading_that_runs_backward_is_refused_with_the_reason(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as user:
        user.click("welcome_typed")
        user.widget(QComboBox, "typed_machine").setEditText("Hazel")
        user.widget(QDoubleSpinBox, "typed_before").setValue(3.0)
        user.click("typed_add")
        assert user.study.typed == ()
        assert "must be higher" in user.text("typed_why_not")


def test_longer_words_on_the_buttons_leave_room_for_the_reading_panel(user: Driver):
    user.window.resize(1024, 700)
    for name in ("leave_out", "split", "join", "whole"):
        user.widget(QToolButton, f"button_{name}").setText("as long as in another language")
    user.settle()
    user.window.resize(1030, 700)
    user.settle()
    assert user.widget(QToolButton, "button_panel").isEnabled()
    user.widget(QComboBox, "reading_meter")


def test_one_meter_can_be_given_to_all_logs_at_once(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as user:
        user.drop(write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", seed=2))
        user.window.show_page("Logs")
        user.settle()
        assert len({log.meter_id for log in user.study.logs}) == 2
        user.click("meter_for_all")
        assert {log.meter_id for log in user.study.logs} == {user.study.meters[0].id}
        assert len(user.study.meters) == 1
        assert not [w for w in user.window.findChildren(QPushButton, "meter_for_all") if w.isVisible()]


def test_the_accuracy_of_a_meter_can_be_stated(user: Driver):
    spin = user.widget(QDoubleSpinBox, "meter_gain")
    assert spin.value() == 1.0
    run = user.session.results[user.run().id]
    spin.setValue(3.0)
    user.settle()
    meter = user.study.meter(user.study.logs[0].meter_id)
    assert (meter.gain_percent, meter.stated) == (3.0, True)
    wider = user.session.results[user.run().id]
    assert run.energy_u95_wh is not None
    assert wider.energy_u95_wh is not None
    assert run.energy_wh is not None
    # limits of ±3 % in place of ±1 %, each a rectangular distribution
    gained_wh = math.sqrt(wider.energy_u95_wh**2 - run.energy_u95_wh**2)
    assert gained_wh == pytest.approx(1.96 * math.sqrt((0.03**2 - 0.01**2) / 3) * run.energy_wh, rel=0.05)


def test_a_machine_is_renamed_on_its_lane(user: Driver):
    lane = user.lane()
    QTest.mouseDClick(lane, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, QPoint(40, 20))
    user.write("machine_name", "Alder two")
    assert user.study.machines[0].name == "Alder two"


def test_the_wheel_over_a_closed_list_changes_no_choice(user: Driver):
    combo = user.widget(QComboBox, "reading_sampling")
    before = combo.currentIndex()
    point = QPointF(5, 5)
    event = QWheelEvent(
        point, combo.mapToGlobal(point), QPoint(), QPoint(0, -120), Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(combo, event)
    assert combo.currentIndex() == before


def test_a_machine_gets_another_marker_and_keeps_it(user: Driver, tmp_path: Path):
    user.drop(write_log(tmp_path / "birch.csv", seed=2))
    user.window.show_page("Logs")
    user.settle()
    log = user.study.logs[1]
    user.lane(1).head_menu_wanted.emit(log.id, QPoint(10, 10))
    menu = user.window.findChild(QMenu, "log_menu")
    assert menu is not None
    markers = menu.findChild(QMenu)
    assert markers is not None
    markers.actions()[0].trigger()
    menu.close()
    user.settle()
    assert [(m.name, m.slot) for m in user.study.machines] == [("Alder", 1), ("Birch", 0)]
    content = user.lane(1).content
    assert content is not None
    assert content.slot == 0


def test_a_log_is_removed_and_comes_back(user: Driver):
    log = user.study.logs[0]
    user.lane().head_menu_wanted.emit(log.id, QPoint(10, 10))
    menu = user.window.findChild(QMenu, "log_menu")
    assert menu is not None
    next(a for a in menu.actions() if a.text() == "Remove this log").trigger()
    menu.close()
    user.settle()
    assert user.study.logs == ()
    assert user.window.page is None
    user.do("action_undo")
    assert user.study.logs == (log,)
    assert user.lane().content is not None


def test_found_runs_are_told_from_the_users_own(user: Driver):
    content = user.lane().content
    assert content is not None
    assert not any(block.is_decided for block in content.blocks)
    user.drag(user.lane(), user.run().end_s, user.run().end_s - 200)
    content = user.lane().content
    assert content is not None
    assert [block.is_decided for block in content.blocks] == [True, False, False]
    assert user.text("stretch_facts").endswith("Edges set by hand")


def test_a_lane_is_copied_as_picture_and_numbers(user: Driver):
    user.lane().setFocus()
    user.press(Qt.Key.Key_C, user.lane(), Qt.KeyboardModifier.ControlModifier)
    copied = QApplication.clipboard().mimeData()
    assert copied.hasImage()
    lines = [line.split("\t") for line in copied.text().splitlines()]
    assert len(lines) == 4
    first = dict(zip(lines[0], lines[1], strict=True))
    assert (first["machine"], first["kind"], first["counted"]) == ("Alder", "run", "yes")
    assert first["start"].startswith("2026-03-02T08:")
    assert float(first["seconds"]) == pytest.approx(1320, abs=5)
    result = user.session.results[user.run().id]
    assert float(first["energy_wh"]) == pytest.approx(result.energy_wh, rel=1e-5)
