"""The Fairness page with a warm start on it, and the verbs of its tests."""

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QListWidget,
    QTableView,
)
from pytestqt.qtbot import QtBot

from core.study import Run
from gui.pages.fairness import FairnessPage
from tests.gui.driver import Driver, opened

TITLE = "Fairness"
WARM = "Warm start"


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
