"""The Line-up page with two machines on it, for its tests."""

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QTreeWidgetItem
from pytestqt.qtbot import QtBot

from core.figures.line_up_values import LineUpFigure
from gui.charts.scene import Plot
from gui.pages.line_up import LineUpPage
from tests.gui.driver import Driver, opened, write_log

ON, OFF = Qt.CheckState.Checked, Qt.CheckState.Unchecked


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
        item = self.page.picker.row_of(run_id)
        assert item is not None, run_id
        return item

    def tick(self, run_id: str, state: Qt.CheckState) -> None:
        self.item(run_id).setCheckState(0, state)
        self.settle()


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> list[Path]:
    folder = tmp_path_factory.mktemp("logs")
    return [
        write_log(folder / "Alder.csv", runs=4, processing_w=40.0, minutes=14),
        write_log(folder / "Rowan.csv", runs=3, processing_w=25.0, minutes=24, seed=2),
    ]


@pytest.fixture
def bench(qtbot: QtBot, tmp_path: Path, logs: list[Path]) -> Iterator[Bench]:
    with opened(qtbot, tmp_path / "place") as driver:
        yield Bench(driver, logs)
