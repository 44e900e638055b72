"""What can be done about a point of fairness, each in one step that can be undone."""

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QLineEdit,
    QPushButton,
    QTableView,
)
from pytestqt.qtbot import QtBot

from core import edits
from gui.charts.view import ChartView
from gui.widgets.reading_panel import ReadingPanel
from tests.gui import fairness_user
from tests.gui.driver import Driver, opened
from tests.gui.fairness_user import (
    WARM,
    listed,
    names,
    page,
    press,
    rows,
    select,
    settle,
    turn,
    warm_run,
    write_log,
)

# pytest looks for a fixture by its name in the file of the test
user = fairness_user.user


def test_leaving_the_run_out(user: Driver) -> None:
    select(user, WARM)
    assert user.widget(QPushButton, "finding_act").text() == "Leave the run out"
    press(user, "finding_act")
    assert warm_run(user).set_included is False
    assert warm_run(user).why_left_out == "a warm start"
    assert WARM not in names(user)
    assert "Ctrl+Z" in user.text("message")
    user.do("action_undo")
    settle(user)
    assert WARM in names(user)


def test_delete_leaves_the_run_out_and_nothing_else(user: Driver) -> None:
    view = user.widget(QTableView, "findings_table")
    select(user, "Accuracy not stated")
    user.press(Qt.Key.Key_Delete, view)
    settle(user)
    assert all(run.set_included is None for run in user.study.runs)
    select(user, WARM)
    user.press(Qt.Key.Key_Delete, view)
    settle(user)
    assert warm_run(user).set_included is False


def test_accepting_with_a_reason_and_taking_it_back(user: Driver) -> None:
    before = len(rows(user))
    select(user, WARM)
    press(user, "finding_accept")
    field = user.widget(QLineEdit, "finding_reason")
    assert field.hasFocus() or user.window.focusWidget() is field
    assert not user.widget(QPushButton, "finding_keep").isEnabled()
    QTest.keyClicks(field, "the part is made warm as a rule")
    user.press(Qt.Key.Key_Return, field)
    settle(user)
    assert WARM not in names(user)
    assert listed(user) == f"Fairness ({before - 1})"
    (said,) = page(user).accepted.texts
    assert said == "Caution. Warm start, Alder, run 3: “the part is made warm as a rule”"
    assert user.study.accepted[0].why == "the part is made warm as a rule"
    press(user, "take_back_0")
    assert names(user)[0] == WARM
    assert not page(user).accepted.isVisible()
    assert user.study.accepted == ()


def test_escape_closes_the_field_for_the_reason(user: Driver) -> None:
    select(user, WARM)
    press(user, "finding_accept")
    user.press(Qt.Key.Key_Escape, user.widget(QLineEdit, "finding_reason"))
    assert user.widget(QPushButton, "finding_accept").isVisible()
    assert user.study.accepted == ()


def test_what_is_accepted_and_no_longer_found_can_be_forgotten(user: Driver) -> None:
    assert user.session.comparison is not None
    finding = next(f for f in user.session.comparison.fairness if f.problem.code == "fair.warm_start")
    accepted = edits.accept_finding(user.study, finding, "let it be").study
    user.session.apply(edits.leave_out(accepted, warm_run(user).id, "gone"))
    settle(user)
    assert page(user).accepted.texts == ("No longer found. Accepted before: “let it be”",)
    press(user, "take_back_0")
    assert user.study.accepted == ()


def test_a_run_that_is_touched_is_shown_on_the_logs_page(user: Driver) -> None:
    select(user, WARM)
    press(user, f"finding_run_{warm_run(user).id}")
    assert user.window.page is not None
    assert user.window.page.title == "Logs"
    assert user.session.selected == warm_run(user).id


def test_how_it_was_found(user: Driver) -> None:
    select(user, WARM)
    press(user, "how_found")
    assert user.text("found_title") == "Warm start: Alder, run 3"
    assert user.text("found_value").startswith("Caution, could matter ")
    user.press(Qt.Key.Key_Escape, page(user).found)
    assert page(user).found.isHidden()


def test_temperatures_are_noted_for_all_runs_of_a_machine_at_once(user: Driver) -> None:
    first, second = user.study.logs
    user.write("condition_1_nozzle_c", "210")
    user.write("condition_2_nozzle_c", "235,5")
    settle(user)
    assert {r.nozzle_c for r in user.study.runs_of(first.id)} == {210.0}
    assert {r.nozzle_c for r in user.study.runs_of(second.id)} == {235.5}
    assert "Nozzle temperature" in names(user)
    select(user, "Nozzle temperature")
    assert "at 210 °C on Alder and at 236 °C on Rowan" in user.text("finding_why")
    field = user.widget(QLineEdit, "condition_2_nozzle_c")
    field.setFocus()
    field.selectAll()
    user.press(Qt.Key.Key_Delete, field)
    user.press(Qt.Key.Key_Return, field)
    settle(user)
    assert {r.nozzle_c for r in user.study.runs_of(second.id)} == {None}
    assert "Not noted" in names(user)
    user.write("condition_2_nozzle_c", "hot")
    assert "cannot be used" in user.text("conditions_why_not")


def test_the_nozzle_of_a_single_run_is_noted_on_the_logs_page(user: Driver) -> None:
    for log in user.study.logs:
        user.session.apply(edits.note_machine(user.study, log.machine_id, "nozzle_c", 210.0))
    settle(user)
    select(user, WARM)
    press(user, f"finding_run_{warm_run(user).id}")
    user.write("stretch_nozzle_c", "240")
    settle(user)
    assert warm_run(user).nozzle_c == 240.0
    turn(user)
    select(user, "Run's temperature")
    assert "Alder, run 3: the nozzle was at 240 °C against 210 °C" in user.text("finding_why")
    user.do("action_undo")
    settle(user)
    assert warm_run(user).nozzle_c == 210.0


def test_beds_at_two_temperatures_lead_to_the_comparison_like_for_like(user: Driver) -> None:
    study = user.study
    for log, bed_c in zip(study.logs, (60.0, 50.0), strict=True):
        for run in study.runs_of(log.id):
            study = edits.note_temperatures(study, run.id, bed_c, None).study
    user.session.apply(edits.Edit(study, "Note temperatures"))
    settle(user)
    select(user, "Bed temperature")
    assert "at 50 °C on Rowan and at 60 °C on Alder" in user.text("finding_why")
    press(user, "finding_act")
    assert user.window.page is not None
    assert user.window.page.title == "Compare"
    assert user.widget(ChartView, "like_for_like").isVisible()


def test_meters_lead_to_the_form_of_the_meter(user: Driver) -> None:
    select(user, "Accuracy not stated")
    press(user, "finding_act")
    assert user.window.page is not None
    assert user.window.page.title == "Logs"
    assert user.widget(ReadingPanel, "reading_panel").isVisible()


def test_few_runs_are_added_to_the_plan(qtbot: QtBot, tmp_path: Path) -> None:
    with opened(qtbot, tmp_path / "window") as user:
        user.drop(
            write_log(tmp_path / "Alder.csv", (90,)),
            write_log(tmp_path / "Rowan.csv", (90, 90, 90), work_w=95.0, seed=2),
        )
        turn(user)
        select(user, "One run only")
        press(user, "finding_act")
        assert page(user).plan.isVisible()
        (extra,) = user.study.plan.extra
        assert (extra.machine_id, extra.runs) == (user.study.machines[0].id, 2)
        press(user, "fairness_face_after")
        assert user.text("finding_title") == "One run only: Alder"


def test_edges_set_by_hand_are_handed_back(user: Driver) -> None:
    run = warm_run(user)
    user.session.apply(edits.move_edges(user.study, run.id, run.start_s + 6, run.end_s))
    settle(user)
    select(user, "Edges by hand")
    press(user, "finding_act")
    assert not warm_run(user).is_moved
    assert "Edges by hand" not in names(user)


def test_a_soak_leads_to_comparing_processing_only(qtbot: QtBot, tmp_path: Path) -> None:
    with opened(qtbot, tmp_path / "window") as user:
        user.drop(
            write_log(tmp_path / "Alder.csv", (90, 90, 200, 90)),
            write_log(tmp_path / "Rowan.csv", (90, 90, 90, 90), work_w=95.0, seed=2),
        )
        turn(user)
        select(user, "Soak of the bed")
        press(user, "finding_act")
        assert user.study.boundary == "processing only"
        if "Soak of the bed" in names(user):
            select(user, "Soak of the bed")
            press(user, "finding_act")
            assert "already" in user.text("message")
