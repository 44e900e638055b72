"""The window with 200 machines of 20 runs each: pages, scrolling, memory.

Run with ``pytest --benchmark-only tests/benchmarks/test_farm_window.py``. Times are those of the window's own
thread, so that what else the computer does is not counted.
"""

import gc
import sys
import time
from collections.abc import Iterator
from itertools import cycle, islice
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtWidgets import QAbstractScrollArea, QApplication
from pytest_benchmark.fixture import BenchmarkFixture
from pytestqt.qtbot import QtBot

from core import edits
from tests.core.benches import Making, trace
from tests.core.test_analysis import written
from tests.gui.driver import Driver, opened

MACHINES, RUNS = 200, 20
#: a page that has been seen is drawn again within this [s]
A_PAGE_S = 0.2
#: a frame of a display that shows sixty a second [s]
FRAME_S = 1 / 60
EDITS, PAGE_CHANGES = 500, 200
#: what an edit may leave behind: its step of the undo, and remembered results, which are bounded [MB]
AN_EDIT_MB = 0.25


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("farm")
    for i in range(MACHINES):
        rng = np.random.default_rng(i)
        makings = [Making(30, 300 + int(rng.integers(-2, 3)), level_w=60.0 + i % 40) for _ in range(RUNS)]
        written(folder / f"machine {i:03d}.csv", trace(makings, seed=i, step_s=8.0))
    return folder


@pytest.fixture
def farm(qtbot: QtBot, tmp_path: Path, logs: Path) -> Iterator[Driver]:
    with opened(qtbot, tmp_path) as user:
        user.window.resize(1440, 900)
        user.window.make_pages_ahead()  # as at the start of the program
        user.wait_until(lambda: not user.window.is_making_pages)
        user.window.add_paths([logs])
        user.qtbot.waitUntil(lambda: not user.window.is_busy, timeout=300_000)
        assert len(user.study.machines) == MACHINES
        assert len(user.study.runs) == MACHINES * RUNS
        yield user


def turn_to(user: Driver, title: str) -> float:
    """Turn to a page, and tell for how long the window's thread was at it. [s]"""
    before = time.thread_time()
    user.window.show_page(title)
    user.settle()
    user.wait_until(lambda: not user.window.is_busy)
    QApplication.processEvents()
    return time.thread_time() - before


def memory_mb() -> float:
    gc.collect()
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * 4096 / 1e6


def test_pages_are_drawn_and_scroll(benchmark: BenchmarkFixture, farm: Driver) -> None:
    took_s: dict[str, list[float]] = {title: [] for title in farm.titles}
    frame_s: dict[str, float] = {}

    def every_page() -> None:
        for title in farm.titles:
            took_s[title].append(turn_to(farm, title))
            for area in farm.window.findChildren(QAbstractScrollArea):
                bar = area.verticalScrollBar()
                if not area.isVisible() or not bar.maximum():
                    continue
                before = time.thread_time()
                for place in np.linspace(0, bar.maximum(), 60):
                    bar.setValue(int(place))
                    QApplication.processEvents()
                each = (time.thread_time() - before) / 60
                frame_s[title] = max(each, frame_s.get(title, 0.0))

    benchmark.pedantic(every_page, rounds=3)
    first = {title: round(1000 * times[0]) for title, times in took_s.items()}
    again = {title: round(1000 * min(times[1:])) for title, times in took_s.items()}
    frames = {title: round(1000 * each, 1) for title, each in frame_s.items()}
    benchmark.extra_info |= {"first_ms": first, "again_ms": again, "frame_ms": frames}
    assert all(each <= 1000 * A_PAGE_S for each in again.values()), again
    assert all(each <= 1000 * FRAME_S for each in frames.values()), frames


on_linux = pytest.mark.skipif(
    not sys.platform.startswith("linux"), reason="memory is read where Linux tells it"
)


@on_linux
def test_memory_after_page_changes(benchmark: BenchmarkFixture, farm: Driver) -> None:
    for title in [*farm.titles, *farm.titles]:  # what a page makes once is made now
        turn_to(farm, title)
    before = memory_mb()

    def turn_pages() -> None:
        for title in islice(cycle(farm.titles), PAGE_CHANGES):
            turn_to(farm, title)

    benchmark.pedantic(turn_pages, rounds=1)
    benchmark.extra_info |= {"before_mb": round(before), "more_mb": round(memory_mb() - before, 1)}
    assert benchmark.extra_info["more_mb"] < 5


@on_linux
def test_memory_after_edits(benchmark: BenchmarkFixture, farm: Driver) -> None:
    turn_to(farm, "Compare")
    before = memory_mb()
    runs = farm.study.runs

    def move_edges() -> None:
        for number in range(EDITS):
            run = farm.study.run(runs[(37 * number) % len(runs)].id)
            farm.session.apply(edits.move_edges(farm.study, run.id, run.start_s, run.end_s - 1))
            farm.session.seal()
            farm.settle()

    benchmark.pedantic(move_edges, rounds=1)
    benchmark.extra_info |= {"before_mb": round(before), "more_mb": round(memory_mb() - before, 1)}
    assert benchmark.extra_info["more_mb"] < EDITS * AN_EDIT_MB
