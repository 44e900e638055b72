"""The user's verbs for tests of the window: press what a user presses, read what a user reads."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TypeVar

import numpy as np
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QAction, QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog, QLabel, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from core.study import Run, Study
from gui.app import build, open_last
from gui.appearance import Appearance
from gui.charts.traces import Lane
from gui.jobs import Jobs
from gui.main_window import MainWindow
from gui.session import Session
from gui.settings import Settings

_PATIENCE_MS = 20_000
W = TypeVar("W", bound=QWidget)


class Driver:
    """One window with a session of its own, kept in a folder of the test."""

    def __init__(self, qtbot: QtBot, folder: Path) -> None:
        self.qtbot = qtbot
        folder.mkdir(exist_ok=True)
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        self.settings = Settings(folder / "settings.ini")
        self.jobs = Jobs()
        self.appearance = Appearance(app, "light")
        self.window: MainWindow
        self.session: Session
        self.window, self.session = build(self.settings, self.jobs, self.appearance, folder / "studies")
        open_last(self.session, self.settings)
        self.window.resize(1280, 800)
        self.window.show()
        self.settle()

    # what the user does

    def drop(self, *paths: Path) -> None:
        """Drop files on the window and wait until all is read and computed."""
        data = QMimeData()
        data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
        at, copy = self.window.rect().center(), Qt.DropAction.CopyAction
        button, modifier = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
        # Qt finds a drop's target through the window system, which a test has not.
        entering = QDragEnterEvent(at, copy, data, button, modifier)
        self.window.dragEnterEvent(entering)
        assert entering.isAccepted()
        self.window.dropEvent(QDropEvent(QPointF(at), copy, data, button, modifier))
        self.settle()

    def press(
        self,
        key: Qt.Key,
        widget: QWidget | None = None,
        modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier,
    ) -> None:
        """Press a key on a widget, or on whatever has the focus."""
        QTest.keyClick(widget or QApplication.focusWidget() or self.window, key, modifier)
        self.settle()

    def click(self, name: str) -> None:
        """Click a control."""
        self.qtbot.mouseClick(self.widget(QWidget, name), Qt.MouseButton.LeftButton)
        self.settle()

    def write(self, name: str, text: str) -> None:
        """Write into a field, in place of what is there, and leave it."""
        field = self.widget(QLineEdit, name)
        field.setFocus()
        field.selectAll()
        QTest.keyClicks(field, text)
        QTest.keyClick(field, Qt.Key.Key_Return)
        self.settle()

    def do(self, name: str) -> None:
        """Call an action of a menu."""
        action = self.window.findChild(QAction, name)
        assert action is not None, name
        assert action.isEnabled(), f"{name} is disabled"
        action.trigger()
        self.settle()

    def choose_file(self, path: Path) -> None:
        """Answer the open file dialog."""
        dialog = next(d for d in self.window.findChildren(QFileDialog, "file_dialog") if d.isVisible())
        dialog.fileSelected.emit(str(path))
        dialog.close()
        self.settle()

    def drag(
        self,
        lane: Lane,
        from_s: float,
        to_s: float,
        modifier: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier,
    ) -> None:
        """Drag on a lane from one time to another."""
        start, end = self.point(lane, from_s), self.point(lane, to_s)
        left = Qt.MouseButton.LeftButton
        QTest.mousePress(lane, left, modifier, start)
        for share in (0.3, 0.6, 1.0):
            between = start + (end - start) * share
            QTest.mouseMove(lane, between)
            QApplication.processEvents()
        QTest.mouseRelease(lane, left, modifier, end)
        self.settle()

    def click_lane(self, lane: Lane, at_s: float) -> None:
        """Click on a lane at a time."""
        QTest.mouseClick(
            lane, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, self.point(lane, at_s)
        )
        self.settle()

    def settle(self) -> None:
        """Wait until nothing is being read or computed and the visible page shows it."""
        while True:
            self.wait_until(lambda: not self.jobs.running)
            for _ in range(5):
                QApplication.processEvents()
            if not self.jobs.running:  # what was shown may have set off what takes longer
                return

    def wait_until(self, is_so: Callable[[], bool]) -> None:
        """Wait for a condition, never for a time."""
        self.qtbot.waitUntil(is_so, timeout=_PATIENCE_MS)

    # what the user reads

    @property
    def study(self) -> Study:
        """The study as it is."""
        return self.session.study

    @property
    def titles(self) -> tuple[str, ...]:
        """The titles of all pages that the window has, in the order of its list."""
        return self.window.titles

    def run(self, place: int = 0) -> Run:
        """A run of the study, by its place in the first log."""
        return self.study.runs_of(self.study.logs[0].id)[place]

    def lane(self, place: int = 0) -> Lane:
        """A lane of the Logs page."""
        found = self.window.findChild(Lane, f"lane_{self.study.logs[place].id}")
        assert found is not None
        return found

    def text(self, name: str) -> str:
        """What a label says."""
        return self.widget(QLabel, name).text()

    def widget(self, kind: type[W], name: str) -> W:
        """A visible control by its name."""
        found = [w for w in self.window.findChildren(kind, name) if w.isVisible()]
        assert found, f"no visible {name}"
        return found[0]

    def point(self, lane: Lane, at_s: float) -> QPoint:
        """Where a time lies on a lane."""
        return QPoint(round(lane.view.x(at_s)), lane.height() // 3)

    def close(self) -> None:
        """Close the window as a user does."""
        self.window.close()
        self.window.deleteLater()


@contextmanager
def opened(qtbot: QtBot, folder: Path) -> Iterator[Driver]:
    """A window that is closed at the end."""
    driver = Driver(qtbot, folder)
    try:
        yield driver
    finally:
        driver.close()


def write_log(
    path: Path, *, runs: int = 3, processing_w: float = 60.0, minutes: float = 20.0, seed: int = 1
) -> Path:
    """A log of a machine that makes the same part a few times: ISO clock, watts each 2 s.

    A made-up machine: 4 W idle, a bed of 150 W that is heated up for two minutes and then switched by a
    thermostat, and motors.
    """
    random = np.random.default_rng(seed)
    idle, whole = 300, round(minutes * 30)
    rows: list[np.ndarray] = []
    for _ in range(runs):
        rows.append(4.0 + random.normal(0, 0.1, idle))
        warm = np.full(60, 210.0) + random.normal(0, 1.0, 60)
        row = np.arange(whole)
        bed = np.where(row % 25 < 8, 150.0, 0.0)
        rows.append(np.concatenate((warm, processing_w + bed + random.normal(0, 4.0, whole))))
    rows.append(4.0 + random.normal(0, 0.1, idle))
    power = np.round(np.concatenate(rows), 1)
    start = np.datetime64("2026-03-02T08:00:00")
    stamps = start + 2 * np.arange(power.size).astype("timedelta64[s]")
    lines = ["time,power (W)", *(f"{t}Z,{p}" for t, p in zip(stamps, power.tolist(), strict=True))]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path
