"""The Loads page, used as a person does: steps are named in lists, and what runs while idle is ticked."""

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QCheckBox, QComboBox, QDialog, QTextBrowser
from pytestqt.qtbot import QtBot

from core import edits
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
    dialog = next(d for d in bench.page.findChildren(QDialog) if d.isVisible())
    assert "switch-on test" in dialog.findChildren(QTextBrowser)[0].toPlainText()
    dialog.close()


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
