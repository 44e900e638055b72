"""How soon the comparison follows an edit: ``pytest --benchmark-only tests/benchmarks/test_compare.py``."""

from collections.abc import Callable
from itertools import count

import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from core import edits
from core.activity import find
from core.results.compare import compare, forget
from core.study import Study
from core.traces import Trace
from tests.core.benches import alike, bench, trace

#: an edit of one run must be answered within this [s]
AFTER_AN_EDIT_S = 0.05
#: all results from nothing, for the largest bench [s]
FROM_NOTHING_S = 2.0


def made(machines: int, runs: int) -> tuple[Study, dict[str, Trace]]:
    return bench(
        {
            f"Machine {i}": trace(alike(runs, level_w=60.0 + 2 * (i // 2), seed=i), seed=i)
            for i in range(machines)
        },
        meters=True,
    )


def coarse(machines: int, runs: int) -> tuple[Study, dict[str, Trace]]:
    """The same machines on meters with counters of 1 and 10 Wh that are read every 20 to 60 s."""

    def read_slowly(whole: Trace, i: int) -> Trace:
        every, q = (10, 15, 20, 30)[i % 4], (1.0, 10.0)[i // 4 % 2]
        used_wh = np.cumsum(whole.power_w) * whole.median_s / 3600
        # no two counters stand at the same part of their step
        counter_wh = np.floor((used_wh + 0.37 * (i + 1)) / q) * q
        return Trace.of(
            whole.time_s[::every],
            whole.power_w[::every],
            counter_wh=counter_wh[::every],
            counter_step_wh=q,
            key=f"{whole.key} each {every} {q}",
        )

    finely = (trace(alike(runs, level_w=60.0 + 2 * (i // 2), seed=i), seed=i) for i in range(machines))
    return bench({f"Machine {i}": read_slowly(each, i) for i, each in enumerate(finely)}, meters=True)


@pytest.mark.parametrize(("machines", "runs"), [(12, 10), (20, 50)])
def test_after_one_edge_has_moved(benchmark: BenchmarkFixture, machines: int, runs: int) -> None:
    study, traces = made(machines, runs)
    run = study.runs[runs]
    compare(study, traces)
    steps = count(1)

    def moved() -> tuple[tuple[Study, dict[str, Trace]], dict[str, object]]:
        # a place that the edge has not had yet, so that nothing is remembered of it
        return (edits.move_edges(study, run.id, run.start_s - 0.1 * next(steps), run.end_s).study, traces), {}

    benchmark.pedantic(compare, setup=moved, rounds=30)
    assert benchmark.stats.stats.median < AFTER_AN_EDIT_S


@pytest.mark.parametrize("make", [made, coarse], ids=["plain logs", "coarse counters"])
def test_from_nothing(
    benchmark: BenchmarkFixture, make: Callable[[int, int], tuple[Study, dict[str, Trace]]]
) -> None:
    study, traces = make(20, 50)
    # the runs were found when the logs were read, and are measured by a benchmark of their own
    activities = {log_id: find(each) for log_id, each in traces.items()}
    compare(study, traces, activities)
    benchmark.pedantic(compare, args=(study, traces, activities), setup=forget, rounds=3)
    assert benchmark.stats.stats.median < FROM_NOTHING_S
