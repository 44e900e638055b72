"""The Line-up page, used as a person does: by pointing, by keys, and read as text."""

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QGuiApplication, QImage, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QDialog,
    QDoubleSpinBox,
    QLabel,
    QPushButton,
    QTreeWidgetItem,
)
from pytestqt.qtbot import QtBot

from core import edits
from core.figures.line_up_values import LineUpFigure
from gui.charts.scene import Plot
from gui.pages.line_up import LineUpPage
from tests.gui.driver import Driver, opened, write_log

ON, OFF = Qt.CheckState.Checked, Qt.CheckState.Unchecked


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> list[Path]:
    folder = tmp_path_factory.mktemp("logs")
    return [
        write_log(folder / "Alder.csv", runs=4, processing_w=40.0, minutes=14),
        write_log(folder / "Rowan.csv", runs=3, processing_w=25.0, minutes=24, seed=2),
    ]


class Bench:
    """A window that shows two machines lined up."""

    def __init__(self, driver: Driver, logs: list[Path]) -> None:
        self.driver = driver
        driver.drop(*logs)
        driver.window.show_page("Line-up")
        self.settle()
        page = driver.window.page
        assert isinstance(page, LineUpPage)
        self.page = page

    def settle(self) -> None:
        """Wait until what was asked for is computed and shown; showing it may ask for more."""
        for _ in range(3):
            self.driver.settle()
            self.driver.wait_until(lambda: not self.driver.window.is_busy)

    @property
    def figure(self) -> LineUpFigure:
        assert self.page.chart.line_up is not None
        return self.page.chart.line_up

    @property
    def runs(self) -> list[str]:
        return [run.id for run in self.driver.study.runs if run.included]

    def plot(self, place: int = 0) -> Plot:
        scene = self.page.chart.scene()
        assert scene is not None
        return scene.plots[place]

    def point(self, value: float, place: int = 0) -> QPoint:
        plot = self.plot(place)
        return QPoint(round(plot.x(value)), round(plot.box.y + plot.box.height / 2))

    def on_curve(self, run_id: str) -> QPoint:
        """A place on the curve of a run that is not on that of another."""
        scene = self.page.chart.scene()
        assert scene is not None
        curve = next(c for c in scene.curves if c.run_id == run_id)
        for row in np.flatnonzero(np.isfinite(curve.ys))[::-1]:
            spot = QPoint(round(curve.xs[row]), round(curve.ys[row]))
            target = self.page.chart.target_at(spot.x(), spot.y())
            if target is not None and target.run_id == run_id:
                return spot
        raise AssertionError(f"{run_id} lies under the others")

    def drag(self, start: QPoint, end: QPoint) -> None:
        chart, left, plain = self.page.chart, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
        QTest.mousePress(chart, left, plain, start)
        for share in (0.4, 0.8, 1.0):
            QTest.mouseMove(chart, start + (end - start) * share)
            QApplication.processEvents()
        QTest.mouseRelease(chart, left, plain, end)
        self.settle()

    def choose(self, name: str, text: str) -> None:
        """Choose an entry of a list by keys: its first letters are typed."""
        combo = self.driver.widget(QComboBox, name)
        combo.setFocus()
        QTest.keyClicks(combo, text)
        QTest.keyClick(combo, Qt.Key.Key_Return)
        combo.activated.emit(combo.currentIndex())
        self.settle()

    def item(self, run_id: str) -> QTreeWidgetItem:
        tree = self.page.picker
        tops = [tree.topLevelItem(i) for i in range(tree.topLevelItemCount())]
        items = [top.child(k) for top in tops if top is not None for k in range(top.childCount())]
        return next(i for i in items if i.data(0, Qt.ItemDataRole.UserRole) == run_id)

    def tick(self, run_id: str, state: Qt.CheckState) -> None:
        self.item(run_id).setCheckState(0, state)
        self.settle()


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path, logs: list[Path]) -> Iterator[Bench]:
    with opened(qtbot, tmp_path / "place") as driver:
        yield Bench(driver, logs)


def test_the_page_stands_between_logs_and_compare(bench: Bench) -> None:
    titles = bench.driver.titles
    assert titles.index("Logs") < titles.index("Line-up") < titles.index("Compare")


def test_the_answer_names_both_machines_with_their_watts(bench: Bench) -> None:
    said = bench.page.top.sentence.text()
    assert "Alder" in said
    assert "Rowan then draws less (" in said
    assert "but for longer (24 against 14 min)" in said
    assert bench.page.top.conditions.text().startswith("Warm-up and processing; 7 runs of 2 machines")
    assert list(bench.figure.run_ids) == bench.runs
    assert bench.figure.headline == said


def test_every_run_lies_over_the_others_with_bands_and_states(bench: Bench) -> None:
    power, energy = (row[0] for row in bench.figure.rows)
    assert (power.y.unit, energy.y.unit) == ("W", "Wh")
    assert {c.run_id for c in power.curves} == {*bench.runs, ""}
    assert len(power.ribbons) == 2
    assert [state for state, _, _ in power.state_rows[0].spans] == ["warm-up", "processing"]
    comparison = bench.driver.session.comparison
    assert comparison is not None
    ends = {c.run_id: c.y[np.isfinite(c.y)][-1] for c in energy.curves}
    for run in (r for m in comparison.machines for r in m.included):
        assert run.energy_wh is not None
        assert ends[run.run_id] == pytest.approx(run.energy_wh, rel=0.02)


@pytest.mark.parametrize(("text", "rows"), [("Machine", 2), ("Run under", 7), ("Difference", 2), ("Over", 2)])
def test_runs_are_arranged_as_chosen(bench: Bench, text: str, rows: int) -> None:
    bench.choose("arrangement", text)
    assert len(bench.figure.rows) == rows
    bench.page.grab()


def test_a_difference_is_from_the_run_that_is_chosen(bench: Bench) -> None:
    bench.choose("arrangement", "Difference")
    combo = bench.driver.widget(QComboBox, "reference")
    reference = combo.itemData(5)
    combo.setCurrentIndex(5)
    combo.activated.emit(5)
    bench.settle()
    (power,), (energy,) = bench.figure.rows
    assert {c.run_id for c in power.curves} == {*bench.runs} - {reference}
    assert power.y.title == f"Power, more than {combo.itemText(5)}"
    assert energy.y.low < 0 < energy.y.high


@pytest.mark.parametrize(("text", "unit"), [("Share", "%"), ("End of", "min"), ("End", "min")])
def test_runs_are_lined_up_as_chosen(bench: Bench, text: str, unit: str) -> None:
    bench.choose("anchor", text)
    assert bench.figure.x.unit == unit
    assert bench.figure.choices.anchor in bench.page.top.conditions.text()


def test_smoothing_is_shown_and_can_be_switched_off(bench: Bench) -> None:
    assert "moving mean over" in bench.page.top.conditions.text()
    bench.choose("smooth", "Not")
    assert "power as logged" in bench.page.top.conditions.text()
    curve = bench.figure.rows[0][0].curves[0]
    assert float(np.nanmax(curve.y)) > 180  # the bed's pulses are there
    assert bench.figure.is_as_logged


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
    top = bench.page.picker.topLevelItem(1)
    assert top is not None
    top.setCheckState(0, OFF)
    bench.settle()
    assert {s.machine for s in bench.figure.strands} == {"Alder"}
    top.setCheckState(0, ON)
    bench.settle()
    assert list(bench.figure.run_ids) == bench.runs


def test_a_run_is_left_out_from_here_with_its_reason(bench: Bench) -> None:
    run_id = bench.runs[1]
    bench.driver.session.select(run_id)
    QTest.keyClick(bench.page.chart, Qt.Key.Key_Delete)
    bench.settle()
    bench.driver.write("left_out_reason", "the door was open")
    bench.settle()
    run = bench.driver.study.run(run_id)
    assert (run.included, run.why_left_out) == (False, "the door was open")
    assert run_id not in bench.figure.run_ids
    assert "(not counted)" in bench.item(run_id).text(0)
    bench.tick(run_id, ON)
    assert run_id in bench.figure.run_ids
    curve = next(c for c in bench.figure.rows[0][0].curves if c.run_id == run_id)
    assert not curve.included
    assert curve.name == "Alder, run 2 (not counted)"
    bench.driver.do("action_undo")
    bench.settle()
    assert bench.driver.study.run(run_id).included


def test_the_picture_and_its_numbers_are_copied(bench: Bench) -> None:
    bench.driver.click("copy")
    bench.settle()
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    assert "Alder (4 runs): warm-up" in data.text()
    bench.drag(bench.point(5.0), bench.point(8.0))
    bench.driver.click("copy")
    bench.settle()
    assert "Rowan, mean of 3 runs" in QGuiApplication.clipboard().mimeData().text()


def test_the_picture_is_saved_with_its_numbers(bench: Bench, tmp_path: Path) -> None:
    picture = bench.page.pictures.picture("Line-up", "wide")
    assert picture is not None
    for name in ("line-up.png", "line-up.svg"):
        bench.page.pictures.write(picture, tmp_path / name)
    image = QImage(str(tmp_path / "line-up.png"))
    assert (image.width(), image.height()) == (1920, 1080)
    assert "Rowan (3 runs): warm-up" in image.text("Source")
    assert "Rowan" in (tmp_path / "line-up.svg").read_text(encoding="utf-8")


def test_an_odd_run_is_pointed_out_where_it_leaves(qtbot: QtBot, tmp_path: Path, logs: list[Path]) -> None:
    header, *rows = logs[0].read_text(encoding="utf-8").splitlines()
    runs = 300 + 60 + 14 * 30
    first = 2 * runs + 300 + 60 + 100  # in the third run
    for i in range(first, first + 150):
        stamp, watts = rows[i].split(",")
        rows[i] = f"{stamp},{float(watts) + 30:.1f}"
    odd = tmp_path / "Alder.csv"
    odd.write_text("\n".join([header, *rows]) + "\n", encoding="utf-8")
    with opened(qtbot, tmp_path / "place") as driver:
        bench = Bench(driver, [odd])
        button = driver.widget(QPushButton, "leaves_button")
        assert button.text() == "1 of 4 runs leaves its band ▾"
        driver.click("leaves_button")
        (told,) = bench.page.leaves.texts
        assert told.startswith("Alder, run 3 leaves its band from ")
        assert told.endswith(" Wh more")
        assert "◂ leaves" in bench.item(bench.runs[2]).text(0)
        (excursion,) = bench.figure.rows[0][0].excursions
        assert excursion.low < 200 * 2 / 60 + 2 < excursion.high
        qtbot.mouseClick(bench.page.leaves._lines[0], Qt.MouseButton.LeftButton)
        assert driver.session.selected == bench.runs[2]


def test_of_a_farm_only_some_runs_are_shown_until_others_are_ticked(
    bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("gui.pages.line_up.MOST_SHOWN", 3)
    bench.driver.window.show_page("Compare")
    bench.settle()
    bench.driver.window.show_page("Line-up")
    bench.settle()
    assert list(bench.figure.run_ids) == bench.runs[:3]
    assert "4 more runs can be ticked in the list." in bench.page.top.conditions.text()
    assert bench.page.picker.ticked == set(bench.runs[:3])
    bench.tick(bench.runs[5], ON)
    assert set(bench.figure.run_ids) == {*bench.runs[:3], bench.runs[5]}
    bench.page._on_chosen(None)
    bench.settle()
    assert list(bench.figure.run_ids) == bench.runs[:3]


def test_no_two_controls_share_a_key(bench: Bench) -> None:
    texts = [label.text() for label in bench.page.bar.findChildren(QLabel)]
    texts += [button.text() for button in bench.page.bar.findChildren(QAbstractButton)]
    texts += [action.text() for action in bench.driver.window.menuBar().actions() if action.isVisible()]
    keys = [text[text.index("&") + 1].lower() for text in texts if "&" in text]
    assert len(keys) > 10
    assert sorted(keys) == sorted(set(keys))


def test_without_a_run_the_page_says_what_to_do(qtbot: QtBot, tmp_path: Path) -> None:
    with opened(qtbot, tmp_path / "place") as driver:
        study = edits.add_machine(driver.study, "Alder").study
        typed = edits.add_typed(study, study.machines[0].id, 21.0, seconds=2000)
        driver.session.apply(edits.Edit(typed.study, "Type"))
        driver.settle()
        driver.window.show_page("Line-up")
        driver.settle()
        page = driver.window.page
        assert isinstance(page, LineUpPage)
        assert page.top.sentence.text() == "There is nothing to line up"
        assert "Drop a meter log" in page.top.conditions.text()
        assert not page.chart.isVisible()


def test_a_log_without_a_run_leads_to_the_logs_page(qtbot: QtBot, tmp_path: Path) -> None:
    idle = tmp_path / "Alder.csv"
    rows = [f"2026-03-02T08:{m:02d}:{s:02d}Z,4.{s % 3}" for m in range(40) for s in range(0, 60, 5)]
    idle.write_text("\n".join(["time,power (W)", *rows]) + "\n", encoding="utf-8")
    with opened(qtbot, tmp_path / "place") as driver:
        driver.drop(idle)
        driver.window.show_page("Line-up")
        driver.settle()
        page = driver.window.page
        assert isinstance(page, LineUpPage)
        assert page.top.sentence.text() == "No complete run of the part was found"
        assert "Logs page" in page.top.conditions.text()


def test_the_page_says_how_it_is_read(bench: Bench) -> None:
    bench.driver.click("explain_line_up")
    bench.settle()
    dialog = bench.page.findChild(QDialog)
    assert dialog is not None
    assert dialog.windowTitle() == "Line-up"
    dialog.close()


def test_another_study_starts_with_nothing_chosen(bench: Bench) -> None:
    bench.drag(bench.point(5.0), bench.point(8.0))
    bench.tick(bench.runs[0], OFF)
    bench.driver.do("action_new")
    bench.settle()
    assert bench.page.chart.line_up is None or not bench.page.chart.isVisible()
    assert bench.page._choices.span is None


def test_everything_is_redrawn_in_the_dark(bench: Bench) -> None:
    light = bench.page.chart.grab().toImage()
    bench.driver.appearance.set_theme("dark")
    bench.settle()
    dark = bench.page.chart.grab().toImage()
    assert light.pixelColor(3, 3).lightness() > 200 > 80 > dark.pixelColor(3, 3).lightness()
    bench.driver.appearance.set_theme("light")


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
