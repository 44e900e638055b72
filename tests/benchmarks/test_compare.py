"""How soon the comparison follows an edit: ``pytest --benchmark-only tests/benchmarks/test_compare.py``."""

from itertools import count

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


def test_from_nothing(benchmark: BenchmarkFixture) -> None:
    study, traces = made(20, 50)
    # the runs were found when the logs were read, and are measured by a benchmark of their own
    activities = {log_id: find(each) for log_id, each in traces.items()}
    compare(study, traces, activities)
    benchmark.pedantic(compare, args=(study, traces, activities), setup=forget, rounds=3)
    assert benchmark.stats.stats.median < FROM_NOTHING_S
