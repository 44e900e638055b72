"""How quickly a lane follows the wheel, and a dropped log gets onto the page.

Run with ``pytest tests/benchmarks/test_logs_page.py --benchmark-only``.
"""

import time

import numpy as np
import pytest
from PySide6.QtWidgets import QApplication

from core.figures.lanes import Block, LaneContent
from core.traces import Clock, Trace
from gui.charts.traces import Lane
from tests.gui.driver import opened, write_log

_MONTH_ROWS = 2_600_000
#: a frame of a display that shows thirty a second [s]
_FRAME_S = 0.033


@pytest.fixture(scope="module")
def month() -> Trace:
    """A month of one-second samples of a machine that is never still."""
    random = np.random.default_rng(7)
    power_w = 60.0 + 150.0 * (np.arange(_MONTH_ROWS) % 61 < 20) + random.normal(0, 5, _MONTH_ROWS)
    return Trace.of(np.arange(_MONTH_ROWS, dtype=np.float64), power_w, clock=Clock("absolute", 1.77e9))


def test_zooming_a_month_of_seconds(benchmark, qtbot, month):
    blocks = tuple(
        Block(f"r{i}", 20_000.0 * i, 20_000.0 * i + 9_000, "run", f"run {i}", True, False) for i in range(130)
    )
    lane = Lane()
    qtbot.addWidget(lane)
    lane.resize(1400, 140)
    lane.show_content(LaneContent("g1", "a1", "Alder", 0, ("alder.csv",), blocks), month, None)
    lane.show()
    QApplication.processEvents()
    factors = iter([0.8] * 60 + [1.25] * 60)

    def frame() -> None:
        lane.zoom(next(factors), 0.37)
        lane.repaint()

    benchmark.pedantic(frame, rounds=120, warmup_rounds=0)
    assert float(np.quantile(benchmark.stats.stats.data, 0.95)) < _FRAME_S


def test_an_edge_moved_shows_on_its_lane_at_once(benchmark, qtbot, tmp_path):
    with opened(qtbot, tmp_path) as user:
        user.drop(write_log(tmp_path / "alder.csv", runs=8))
        run = user.run()
        ends = iter(np.linspace(run.end_s - 1, run.end_s - 200, 60))

        def move() -> None:
            user.lane().edges_moved.emit(run.id, run.start_s, float(next(ends)))
            QApplication.processEvents()

        benchmark.pedantic(move, rounds=50, warmup_rounds=0)
        user.settle()
        assert float(np.median(benchmark.stats.stats.data)) < 0.05


def test_the_window_answers_while_a_log_is_read(benchmark, qtbot, tmp_path):
    """The longest time that the event loop was away while twenty logs came in; one number, one round."""
    logs = [write_log(tmp_path / f"machine {i}.csv", seed=i) for i in range(20)]
    away_s: list[float] = []
    with opened(qtbot, tmp_path) as user:
        user.drop(write_log(tmp_path / "first.csv", seed=99))  # what is loaded once is loaded now

        def read() -> None:
            user.session.add_logs(logs)
            last = time.perf_counter()
            while user.jobs.running:
                QApplication.processEvents()
                now = time.perf_counter()
                away_s.append(now - last)
                last = now
                time.sleep(0.001)

        benchmark.pedantic(read, rounds=1, warmup_rounds=0)
        user.settle()
    benchmark.extra_info["longest_away_s"] = max(away_s)
    assert float(np.quantile(away_s, 0.99)) < 0.05
