"""The Loads page, used as a person does: steps are named in lists, and what runs while idle is ticked."""

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QCheckBox, QComboBox
from pytestqt.qtbot import QtBot

from core import edits
from core.figures.curve_values import CurvesFigure
from core.figures.staircase import step_id
from core.figures.values import ComparisonFigure
from gui.charts.view import ChartView
from gui.images import SIZES, render
from gui.pages.loads import LoadsPage
from tests.core.stairs import EACH_S, staircase
from tests.gui.driver import Driver, write_log


def write_stairs(path: Path) -> Path:
    """A log of a switch-on test: a lamp of 4 W on, a camera of 2 W on, the lamp off."""
    trace = staircase([4.0, 2.0, -4.0])
    start = np.datetime64("2026-03-02T08:00:00")
    lines = ["time,power (W)"]
    for at_s, power_w in zip(trace.time_s.tolist(), trace.power_w.tolist(), strict=True):
        lines.append(f"{start + np.timedelta64(round(at_s), 's')}Z,{power_w:.1f}")
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path


class Bench(Driver):
    """A window whose Loads page is shown."""

    def fill(self, folder: Path) -> None:
        """One machine with a switch-on test."""
        self.drop(write_stairs(folder / "Alder.csv"))
        log = self.study.logs[0]
        end_s = self.session.traces[log.id].end_s
        self.session.apply(edits.draw_run(self.study, log.id, float(EACH_S), end_s, "switch-on test"))
        self.window.show_page("Loads")
        self.settle()

    def settle(self) -> None:
        """Wait until what was asked for is computed and shown; showing it may ask for more."""
        for _ in range(3):
            super().settle()
            self.wait_until(lambda: not self.window.is_busy)

    @property
    def page(self) -> LoadsPage:
        page = self.window.page
        assert isinstance(page, LoadsPage)
        return page

    def name(self, step: int, text: str) -> None:
        """Choose a load for a step."""
        choice = self.widget(QComboBox, f"step_{step}")
        index = choice.findText(text)
        assert index >= 0, text
        choice.setCurrentIndex(index)
        choice.activated.emit(index)
        self.settle()


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path) -> Iterator[Bench]:
    made = Bench(qtbot, tmp_path / "window")
    try:
        yield made
    finally:
        made.close()


def test_without_a_test_it_says_how_to_make_one(bench: Bench, tmp_path: Path) -> None:
    bench.drop(write_log(tmp_path / "Alder.csv", runs=1))
    bench.window.show_page("Loads")
    bench.settle()
    assert bench.text("sentence").startswith("No switch-on test yet")
    assert "never open it" in bench.text("conditions")
    assert not bench.page.rows.isVisible()


def test_steps_are_named_and_the_answer_follows(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    assert bench.text("sentence").startswith("2 steps up found on Alder")
    assert "2 steps up without a name" in bench.text("conditions")
    bench.name(1, "lamp")
    bench.name(2, "camera")
    said = bench.text("sentence")
    assert said.startswith("On Alder: lamp 4.0")
    assert "camera 2.0" in said
    assert bench.widget(QComboBox, "step_3").currentText() == "lamp (found)"
    assert "camera" in bench.text("idle_sentence")
    bench.do("action_undo")
    assert "camera" not in bench.text("sentence")


def test_what_runs_while_idle_is_ticked(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.name(1, "lamp")
    box = bench.widget(QCheckBox, "idle_lamp")
    assert not box.isChecked()
    box.click()
    bench.settle()
    assert "lamp (35 kWh a year)" in bench.text("idle_sentence")
    bench.do("action_undo")
    assert "lamp" not in bench.text("idle_sentence")


def test_it_is_explained_copied_and_saved(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.name(1, "lamp")
    bench.click("copy")
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasImage()
    assert "Lamp 4.0" in data.text()
    for purpose in SIZES:
        picture = bench.page.pictures.picture("Loads", purpose)
        assert picture is not None
        image = render(picture.figure, picture.size, picture.view.look, picture.frame)
        assert (image.width(), image.height()) == (picture.size.width, picture.size.height)
    bench.do("action_explain")
    assert bench.page.found.title.text().endswith("sum of the loads")
    bench.page.found.close_panel()


def point_of(chart: ChartView, run_id: str) -> QPoint:
    """Where a point of a chart lies."""
    scene = chart.scene()
    assert scene is not None
    target = next(t for t in scene.targets if t.run_id == run_id)
    return QPoint(round(target.x), round(target.y))


def test_the_test_is_drawn_with_its_steps_by_name(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.name(1, "lamp")
    figure = bench.page.stairs.figure
    assert isinstance(figure, CurvesFigure)
    assert [s.name.split(" +")[0].split(" \u2212")[0] for s in figure.spots][:2] == [
        "1: lamp",
        "2: not named",
    ]
    assert [s.is_counted for s in figure.spots] == [True, False, True]
    assert figure.spots[2].name.startswith("3: lamp")


def test_a_step_is_read_out_and_clicking_it_leads_to_its_name(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.name(1, "lamp")
    chart = bench.page.stairs
    second = step_id(bench.study.logs[0].id, 2)
    QTest.mouseMove(chart, point_of(chart, second))
    QTest.mouseClick(chart, Qt.MouseButton.LeftButton, pos=point_of(chart, second))
    bench.settle()
    assert chart.readout_lines()[0].startswith("Alder, step 2 at ")
    assert chart.readout_lines()[2] == "not named yet"
    assert bench.widget(QComboBox, "step_2").hasFocus()
    assert bench.session.selected is None  # a step is no run


def test_a_single_value_of_a_load_is_read_out(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    bench.name(1, "lamp")
    chart = bench.page.rows
    figure = chart.figure
    assert isinstance(figure, ComparisonFigure)
    lamp = next(m for m in figure.measures if m.key == "lamp")
    assert len(lamp.cells[0].dots) == 2  # turned on, and off again
    chart.select(lamp.cells[0].dots[1].run_id)
    chart.setFocus()
    assert chart.readout_lines()[0] == "Alder, lamp"
    assert chart.readout_lines()[2] == "by step 3"


def test_every_number_says_how_it_was_found(bench: Bench) -> None:
    bench.do("action_demo")
    bench.window.show_page("Loads")
    bench.settle()
    figure = bench.page.rows.figure
    assert isinstance(figure, ComparisonFigure)
    for measure in figure.measures:
        bench.page.rows.asked.emit(figure.rows[0].machine_id, "", measure.key)
        bench.settle()
        told = bench.page.found.explanation
        assert told is not None, measure.key
        mark = measure.cells[0].mark
        assert mark is not None
        assert told.value_text == f"{mark.text} W"
        assert told.formula
    bench.page.found.close_panel()


def test_every_control_has_a_name(bench: Bench, tmp_path: Path) -> None:
    bench.fill(tmp_path)
    for kind in (QComboBox, QCheckBox, ChartView):
        for widget in bench.page.findChildren(kind):
            assert widget.accessibleName(), widget.objectName()


def test_the_demo_answers(bench: Bench) -> None:
    bench.do("action_demo")
    bench.window.show_page("Loads")
    bench.settle()
    said = bench.text("sentence")
    assert said.startswith("On Hazel: bed holding")
    assert "stay unexplained" in said
    assert "fans that always run" in bench.text("idle_sentence")
