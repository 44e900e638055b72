"""Every number in the window can be asked about, and what opens is complete.

The walk turns to every page of the demo, asks every chart for one value of each measure and one single value,
every table for one number of each column, and every sentence that holds a number. What people typed
themselves, and the cells of a file as they stand in it, are not asked about: nobody found them.
"""

import re
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
import shiboken6
from PySide6.QtWidgets import QLabel, QWidget
from pytestqt.qtbot import QtBot

from core.found.values import BudgetLine, Explanation, SourceLine
from gui.charts.view import ChartView
from gui.widgets.asking import AskingLabel
from gui.widgets.cooler_sliders import CoolerSliders
from gui.widgets.found_panel import FoundPanel
from gui.widgets.reading_panel import ReadingPanel
from gui.widgets.table_card import TableCard
from tests.gui.driver import Driver, opened
from tests.screens.render import pages

_FIGURE = re.compile(r"\d")
#: words with figures that tell no number that was found: what a field means, how a table is read
_NOTES = (
    "half the 95 % interval",
    "95 % intervals; the mean",
    "for the heat a plate must lose",
    "in the order of seed",
    "Dashed, for reference",
)
#: names of meters in the order of a plan
_TYPED_TABLES = ("plan_order",)


@pytest.fixture
def user(qtbot: QtBot, tmp_path: Path) -> Iterator[Driver]:
    with opened(qtbot, tmp_path) as driver:
        yield driver


def asks(page: QWidget, seen: set[str]) -> Iterator[tuple[str, Callable[[], object]]]:
    """What can be asked on a page, each measure once: what it is, and how."""
    for chart in (c for c in page.findChildren(ChartView) if c.isVisible() and c.figure is not None):
        scene = chart.scene()
        assert scene is not None
        for value in scene.values:
            if value.key not in seen:
                seen.add(value.key)
                ids = (value.machine_id, "", value.key)
                yield f"{chart.objectName()} {value.key}", lambda c=chart, i=ids: c.asked.emit(*i)
        for target in scene.targets[:1]:
            at = (target.machine_id, target.run_id, target.key)
            yield f"{chart.objectName()} point", lambda c=chart, i=at: c.asked.emit(*i)
    for table in (t for t in page.findChildren(TableCard) if t.isVisible()):
        if table.view.objectName() in _TYPED_TABLES:
            continue
        for column in range(table.model.columnCount()):
            cells = (table.model.index(row, column) for row in range(table.model.rowCount()))
            cell = next((c for c in cells if _FIGURE.search(str(c.data()))), None)
            key = "" if cell is None else table.key_of(cell)
            if cell is not None and key not in seen:
                seen.add(key)
                yield f"{table.view.objectName()} {key}", lambda t=table, c=cell: t.asked.emit(c)
    for label in page.findChildren(AskingLabel):
        if shiboken6.isValid(label) and label.isVisible() and _FIGURE.search(label.text()):
            yield f"“{label.text()[:60]}”", label.asked.emit


def silent_words(page: QWidget) -> list[str]:
    """Words with figures on a page that cannot be asked about, though they should."""
    kinds = (FoundPanel, CoolerSliders, ReadingPanel)
    aside = [part for kind in kinds for part in page.findChildren(kind)]
    return [
        label.text()
        for label in page.findChildren(QLabel)
        if label.isVisible()
        and not isinstance(label, AskingLabel)
        and label.property("role") != "heading"
        and _FIGURE.search(label.text())
        and not any(note in label.text() for note in _NOTES)
        and not any(part.isAncestorOf(label) for part in aside)
    ]


def test_every_number_of_the_window_is_explained(user: Driver) -> None:
    user.window.open_demo()
    user.settle()
    lacking: list[str] = []
    silent: list[str] = []
    asked = 0
    for name in pages(user.window):
        user.settle()
        page = user.window.page
        if page is None or name == "publish":
            continue  # it shows again what other pages say, and leads there
        if name == "line-up":
            page.findChildren(ChartView)[0].span_marked.emit((100.0, 700.0))  # type: ignore[attr-defined]  # its own view
            user.settle()
        silent += silent_words(page)
        panels = page.findChildren(FoundPanel)
        for what, ask in list(asks(page, set())):
            for panel in (p for p in panels if p.isVisible()):
                panel.show_topic("interval")  # it stays open, with no number in it
            ask()
            if user.jobs.running:  # most are told at once, and waiting takes time
                user.settle()
            told = next((p.explanation for p in panels if p.isVisible()), None)
            asked += 1
            if told is None:
                lacking.append(f"{name}: {what}: does not open")
            elif told.lacks:
                lacking.append(f"{name}: {what}: {told.title} lacks {', '.join(told.lacks)}")
    assert lacking == []
    assert silent == []
    assert asked > 90


@pytest.mark.parametrize("part", ["method", "formula", "sources", "budget", "sensitivity"])
def test_what_lacks_a_part_is_found_out(part: str) -> None:
    whole = {
        "method": ("It was added up.",),
        "formula": ("1 + 1 = 2 Wh",),
        "sources": (SourceLine("run 1"),),
        "budget": (BudgetLine("meter gain", 0.1, "0.1 Wh", 1.0),),
        "sensitivity": ("If it ended later: +0.1 Wh",),
    }
    assert Explanation("energy", "2.0 Wh", "energy", **whole).lacks == ()  # type: ignore[arg-type]  # each of its own type
    rest = {key: value for key, value in whole.items() if key != part}
    assert Explanation("energy", "2.0 Wh", "energy", **rest).lacks == (part,)  # type: ignore[arg-type]  # as above
    assert Explanation("energy", "not known", "energy", **rest).lacks == ()  # type: ignore[arg-type]  # as above


def test_a_reason_stands_in_for_a_budget() -> None:
    told = Explanation("p", "p = 0.03", "properties", without_budget="A p has no interval.")
    assert "budget" not in told.lacks
    assert "sensitivity" in told.lacks
