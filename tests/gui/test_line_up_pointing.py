"""The Line-up page by mouse and keys: spans, looking closer, runs selected and ticked."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QDoubleSpinBox,
    QLabel,
)

from tests.gui import line_up_bench
from tests.gui.line_up_bench import OFF, ON, Bench

# pytest looks for a fixture by its name in the file of the test
logs, bench = line_up_bench.logs, line_up_bench.bench


def test_a_dragged_span_is_read_for_every_run(bench: Bench) -> None:
    bench.drag(bench.point(5.0), bench.point(10.0))
    span = bench.figure.choices.span
    assert span is not None
    assert span == pytest.approx((300, 600), abs=15)
    rows = bench.page.table.model.rows
    assert [row[0] for row in rows[1:3]] == ["Alder, mean of 4 runs", "Rowan, mean of 3 runs"]
    assert len(rows) == 1 + 2 + 7
    assert all("±" in row[1] for row in rows[1:])
    alder, rowan = (float(row[1].split(" ")[0]) for row in rows[1:3])
    assert alder - rowan == pytest.approx(15, abs=3)
    assert bench.page.table.isVisible()
    QTest.keyClick(bench.page.chart, Qt.Key.Key_Escape)
    bench.settle()
    assert bench.figure.span is None
    assert not bench.page.table.isVisible()


def test_a_span_can_be_typed(bench: Bench) -> None:
    for name, value in (("span_from", 2.0), ("span_to", 4.0)):
        field = bench.driver.widget(QDoubleSpinBox, name)
        field.setFocus()
        field.selectAll()
        QTest.keyClicks(field, f"{value:.2f}")
        QTest.keyClick(field, Qt.Key.Key_Return)
        bench.settle()
    assert bench.figure.choices.span == pytest.approx((120, 240))
    bench.driver.click("clear_span")
    bench.settle()
    assert bench.figure.choices.span is None


def test_the_wheel_looks_closer_and_a_double_click_shows_everything(bench: Bench) -> None:
    chart = bench.page.chart
    whole = bench.figure.x.high - bench.figure.x.low
    at = QPointF(bench.point(10.0))
    for turned, closer in ((120, True), (120, True), (-1200, False)):
        none = Qt.KeyboardModifier.NoModifier
        event = QWheelEvent(
            at, chart.mapToGlobal(at), QPoint(), QPoint(0, turned), Qt.MouseButton.NoButton, none,
            Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        QApplication.sendEvent(chart, event)
        bench.settle()
        shown = bench.figure.x.high - bench.figure.x.low
        assert (shown < whole * 0.9) is closer
        assert bench.plot().low <= 10.0 <= bench.plot().high
    QTest.keyClick(chart, Qt.Key.Key_Plus)
    QTest.keyClick(chart, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    assert bench.figure.choices.view is not None
    assert bench.figure.x.low > 0
    QTest.mouseDClick(chart, Qt.MouseButton.LeftButton, pos=bench.point(12.0))
    bench.settle()
    assert bench.figure.choices.view is None


def test_looking_closer_stays_within_the_runs(bench: Bench) -> None:
    chart = bench.page.chart
    low, high = bench.figure.x.low, bench.figure.x.high
    for _ in range(4):
        QTest.keyClick(chart, Qt.Key.Key_Plus)
    for _ in range(20):
        QTest.keyClick(chart, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert bench.figure.x.low == pytest.approx(low)
    for _ in range(60):
        QTest.keyClick(chart, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    assert bench.figure.x.high == pytest.approx(high)
    QTest.keyClick(chart, Qt.Key.Key_0)
    assert (bench.figure.x.low, bench.figure.x.high) == (low, high)


def test_a_run_that_is_clicked_is_selected_on_every_page_and_read_out(bench: Bench) -> None:
    chart, run_id = bench.page.chart, bench.runs[1]
    spot = bench.on_curve(run_id)
    QTest.mouseClick(chart, Qt.MouseButton.LeftButton, pos=spot)
    assert bench.driver.session.selected == run_id
    assert bench.page.picker.currentItem() is bench.item(run_id)
    QTest.mouseMove(chart, spot)
    lines = chart.readout_lines()
    assert lines[0] == "Alder, run 2"
    assert lines[1].startswith("at ")
    assert lines[-1].endswith(" Wh so far")
    bench.page.grab()


def test_keys_walk_the_runs_and_machines(bench: Bench) -> None:
    chart = bench.page.chart
    chart.setFocus()
    for key, place in (("Right", 0), ("Right", 1), ("Down", 5), ("Left", 4), ("Up", 0)):
        QTest.keyClick(chart, getattr(Qt.Key, f"Key_{key}"))
        assert bench.driver.session.selected == bench.runs[place]
    assert chart.readout_lines()[0] == "Alder, run 1"
    assert "Alder, run 1" in chart.accessibleDescription()


def test_a_run_picked_in_the_list_is_selected(bench: Bench) -> None:
    bench.page.picker.setCurrentItem(bench.item(bench.runs[4]))
    assert bench.driver.session.selected == bench.runs[4]
    assert bench.page.chart.selected == bench.runs[4]


def test_runs_are_chosen_by_their_boxes(bench: Bench) -> None:
    first = bench.runs[0]
    bench.tick(first, OFF)
    assert list(bench.figure.run_ids) == bench.runs[1:]
    for run_id in bench.runs[1:]:
        bench.tick(run_id, OFF)
    assert bench.page.top.sentence.text() == "No runs are chosen"
    assert not bench.page.chart.isVisible()
    bench.tick(first, ON)
    assert list(bench.figure.run_ids) == [first]
    assert "(one run only)" in bench.page.top.sentence.text()


def test_a_machine_s_box_ticks_all_of_its_runs(bench: Bench) -> None:
    picker = bench.page.picker
    picker.setCurrentItem(picker.topLevelItem(1))
    QTest.keyClick(picker, Qt.Key.Key_Space)
    bench.settle()
    assert {s.machine for s in bench.figure.strands} == {"Alder"}
    QTest.keyClick(picker, Qt.Key.Key_Space)
    bench.settle()
    assert list(bench.figure.run_ids) == bench.runs


def test_no_two_controls_share_a_key(bench: Bench) -> None:
    texts = [label.text() for label in bench.page.bar.findChildren(QLabel)]
    texts += [button.text() for button in bench.page.bar.findChildren(QAbstractButton)]
    texts += [action.text() for action in bench.driver.window.menuBar().actions() if action.isVisible()]
    keys = [text[text.index("&") + 1].lower() for text in texts if "&" in text]
    assert len(keys) > 10
    assert sorted(keys) == sorted(set(keys))


def test_tab_goes_through_the_controls_as_they_are_read(bench: Bench) -> None:
    window = bench.driver.window
    window.activateWindow()
    bench.page.bar.anchor.setFocus()
    reached = []
    for _ in range(14):
        QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Tab)
        focused = QApplication.focusWidget()
        assert focused is not None
        reached.append(focused.objectName())
    wanted = ["shown", "arrangement", "repeats", "smooth", "fit_processing", "span_from", "span_to"]
    assert reached[: len(wanted)] == wanted
    assert reached.index("save_picture") < reached.index("copy") < reached.index("line_up")
    assert reached.index("line_up") < reached.index("run_picker")


def test_every_control_has_a_name_for_a_screen_reader(bench: Bench) -> None:
    for control in (*bench.page.bar.controls, bench.page.picker, bench.page.chart):
        if control.isVisible():
            told = control.accessibleName() or getattr(control, "text", str)()
            assert told, control.objectName()
