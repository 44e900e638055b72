"""How long finding runs takes; run with ``pytest tests/benchmarks --benchmark-only``."""

import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from core.activity import find
from core.traces import Trace
from tests.core.simulated import MachineModel, MeterModel, Task, simulate

ROWS = 2_600_000


@pytest.fixture(scope="module")
def month() -> Trace:
    """A month of one-second samples: 2.6 million rows with a run every few hours."""
    tasks = (
        Task("idle", 4000),
        Task("part", 7200),
        Task("idle", 5000),
        Task("part", 7200),
        Task("idle", 9000),
    )
    power_w = np.resize(simulate(MachineModel(), MeterModel(), tasks).trace.power_w, ROWS)
    return Trace.of(np.arange(ROWS, dtype=float), power_w)


def test_runs_of_a_month_of_seconds(benchmark: BenchmarkFixture, month: Trace) -> None:
    activity = benchmark.pedantic(find, args=(month,), rounds=3, warmup_rounds=1)
    assert len(activity.runs) > 100
    assert benchmark.stats.stats.min < 2.6  # a second for a million rows
