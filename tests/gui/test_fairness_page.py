"""The Fairness page after a test, used as a person does: read, select, leave out, accept, take back."""

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QLabel,
    QLineEdit,
    QListWidget,
    QPushButton,
    QScrollArea,
    QTableView,
)
from pytestqt.qtbot import QtBot

from core import edits
from core.study import Run
from gui.charts.view import ChartView
from gui.images import SIZES, render
from gui.pages.fairness import FairnessPage
from gui.widgets.reading_panel import ReadingPanel
from tests.gui.driver import Driver, opened

TITLE = "Fairness"
WARM = "Warm start"


def write_log(path: Path, warm_rows: tuple[int, ...], *, work_w: float = 60.0, seed: int = 1) -> Path:
    """A log of parts whose warm-ups have so many rows of 2 s each: few after a warm start."""
    random = np.random.default_rng(seed)
    rows = []
    for warm in warm_rows:
        bed = np.where(np.arange(600) % 25 < 8, 150.0, 0.0)
        part = work_w + 0.5 * random.normal() + bed + random.normal(0, 4.0, 600)
        rows += [4.0 + random.normal(0, 0.1, 300), np.full(warm, 210.0) + random.normal(0, 1.0, warm), part]
    power = np.round(np.concatenate([*rows, 4.0 + random.normal(0, 0.1, 300)]), 1)
    start = np.datetime64("2026-03-02T08:00:00")
    stamps = start + 2 * np.arange(power.size).astype("timedelta64[s]")
    lines = ["time,power (W)", *(f"{t}Z,{p}" for t, p in zip(stamps, power.tolist(), strict=True))]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path


@pytest.fixture
def user(qtbot: QtBot, tmp_path: Path) -> Iterator[Driver]:
    """Two machines, of which the first began its third run warm, and the Fairness page."""
    with opened(qtbot, tmp_path / "window") as driver:
        driver.drop(
            write_log(tmp_path / "Alder.csv", (90, 90, 25, 90)),
            write_log(tmp_path / "Rowan.csv", (90, 90, 90, 90), work_w=95.0, seed=2),
        )
        turn(driver)
        yield driver


def turn(user: Driver, title: str = TITLE) -> None:
    user.window.show_page(title)
    settle(user)


def settle(user: Driver) -> None:
    """Wait until what was asked for is computed and shown; showing it may ask for more."""
    for _ in range(3):
        user.settle()
        user.wait_until(lambda: not user.window.is_busy)


def page(user: Driver) -> FairnessPage:
    return user.widget(FairnessPage, "fairness_page")


def rows(user: Driver) -> list[tuple[str, ...]]:
    """What the table says, without its heading."""
    return page(user).table.model.rows[1:]


def names(user: Driver) -> list[str]:
    return [row[1] for row in rows(user)]


def select(user: Driver, name: str) -> None:
    """Click on the row of a point."""
    view = user.widget(QTableView, "findings_table")
    index = page(user).table.model.index(names(user).index(name), 1)
    QTest.mouseClick(
        view.viewport(),
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
        view.visualRect(index).center(),
    )
    settle(user)


def listed(user: Driver) -> str:
    """How the list of pages names the page."""
    pages = user.widget(QListWidget, "pages")
    return next(t for i in range(pages.count()) if (t := pages.item(i).text()).startswith(TITLE))


def press(user: Driver, name: str) -> None:
    user.click(name)
    settle(user)


def warm_run(user: Driver) -> Run:
    return user.study.runs_of(user.study.logs[0].id)[2]


def test_it_says_in_a_sentence_what_the_table_and_the_card_say_at_length(user: Driver) -> None:
    assert "a warm start (Alder, run 3), which could matter " in user.text("sentence")
    assert "Smallest difference shown: " in user.text("conditions")
    assert names(user)[0] == WARM
    assert rows(user)[0][0] == "Caution"
    assert user.text("finding_title") == "Warm start: Alder, run 3"
    assert user.text("finding_why").startswith("Alder, run 3: the warm-up took ")
    assert "mean of its other runs" in user.text("finding_matters")


def test_the_open_points_are_counted_in_the_page_list_on_every_page(user: Driver) -> None:
    open_points = len(rows(user))
    assert listed(user) == f"Fairness ({open_points})"
    turn(user, "Compare")
    user.session.apply(edits.leave_out(user.study, warm_run(user).id, "began warm"))
    settle(user)
    assert listed(user) == f"Fairness ({open_points - 1})"
    user.do("action_undo")
    settle(user)
    assert listed(user) == f"Fairness ({open_points})"


def test_arrow_keys_walk_the_table_and_the_chart_follows(user: Driver) -> None:
    view = user.widget(QTableView, "findings_table")
    chart = user.widget(ChartView, "fairness")
    first = chart.selected
    user.press(Qt.Key.Key_Down, view)
    assert user.text("finding_title").startswith(names(user)[1])
    user.press(Qt.Key.Key_Up, view)
    assert user.text("finding_title") == "Warm start: Alder, run 3"
    assert chart.selected == first


def test_a_bar_that_is_clicked_is_selected_in_the_table(user: Driver) -> None:
    chart = user.widget(ChartView, "fairness")
    user.widget(QScrollArea, "fairness_scroll").ensureWidgetVisible(chart)
    scene = chart.scene()
    assert scene is not None
    last = [t for t in scene.targets if t.run_id][-1]
    at = QPoint(round(last.x), round(last.y))
    QTest.mouseClick(chart, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, at)
    settle(user)
    row = user.widget(QTableView, "findings_table").currentIndex().row()
    assert user.session.comparison is not None
    assert user.session.comparison.open_findings[row].key == last.run_id


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


def test_the_compare_page_leads_here_and_greys_what_is_accepted(user: Driver) -> None:
    assert user.session.comparison is not None
    finding = next(f for f in user.session.comparison.fairness if f.problem.code == "fair.warm_start")
    user.session.apply(edits.accept_finding(user.study, finding, "by choice"))
    turn(user, "Compare")
    button = user.widget(QPushButton, "fairness_button")
    assert button.text().startswith(f"{len(user.session.comparison.open_findings)} point")
    press(user, "fairness_button")
    accepted = [x for x in user.window.findChildren(QLabel) if x.text().startswith("Accepted (by choice): ")]
    assert [x.property("role") for x in accepted if x.isVisible()] == ["muted"]
    press(user, "fairness_more")
    assert user.window.page is page(user)


def test_the_picture_and_the_list_are_copied(user: Driver) -> None:
    press(user, "copy")
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    assert WARM in data.text()


def test_the_picture_is_the_chart(user: Driver) -> None:
    chart = user.widget(ChartView, "fairness")
    assert chart.figure is not None
    picture = page(user).pictures.picture("Fairness", "wide")
    assert picture is not None
    image = render(picture.figure, SIZES["wide"], chart.look, picture.frame)
    assert (image.width(), image.height()) == (1920, 1080)


def test_a_file_open_for_reading_can_be_read_and_not_changed(user: Driver, tmp_path: Path) -> None:
    copy = tmp_path / "copy.samepart"
    assert user.session.file is not None
    assert user.session.file.save_copy(copy) is None
    with opened(user.qtbot, tmp_path / "other") as first:
        first.session.open(copy)
        settle(first)
        with opened(user.qtbot, tmp_path / "another") as second:
            second.session.open(copy)
            settle(second)
            turn(second)
            assert second.session.is_read_only
            assert names(second)[0] == WARM
            assert not second.widget(QPushButton, "finding_act").isEnabled()
            assert not second.widget(QPushButton, "finding_accept").isEnabled()


def test_nothing_is_said_of_an_empty_study(qtbot: QtBot, tmp_path: Path) -> None:
    with opened(qtbot, tmp_path / "window") as user:
        user.session.apply(edits.add_machine(user.study, "Alder"))
        user.do("action_type")
        turn(user)
        assert user.text("sentence").startswith("No run has been measured yet")
        assert listed(user) == TITLE


@pytest.mark.parametrize("zoom", [1.0, 1.5])
def test_no_word_is_cut_off_at_the_smallest_size(user: Driver, zoom: float) -> None:
    user.window.resize(1024, 700)
    user.appearance.set_zoom(zoom)
    select(user, WARM)
    shown: list[QAbstractButton | QLabel]
    shown = [w for w in page(user).findChildren(QAbstractButton) if w.isVisible()]
    shown += [w for w in page(user).findChildren(QLabel) if w.isVisible() and not w.wordWrap()]
    cut = [w.text() for w in shown if w.text() and w.width() < w.minimumSizeHint().width()]
    user.appearance.set_zoom(1.0)
    assert cut == []
