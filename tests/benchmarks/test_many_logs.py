"""What a log costs when there are many: ``pytest --benchmark-only tests/benchmarks/test_many_logs.py``."""

import pickle
import time
from collections.abc import Iterator
from concurrent.futures import Executor, ProcessPoolExecutor
from multiprocessing import get_context
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from core.analysis import analyse_file, find_logs
from core.comparing import gather
from core.parcels import packed
from core.results.compare import forget
from tests.core.benches import alike, trace
from tests.core.test_analysis import written

FEW, MANY = 50, 500
#: how much dearer a log may be among many than among few; the rest is the computer's own unrest
MOST_DEARER = 1.35


@pytest.fixture(scope="module")
def files(tmp_path_factory: pytest.TempPathFactory) -> list[Path]:
    """Logs of three runs each, at the same time on as many machines."""
    folder = tmp_path_factory.mktemp("many")
    return [
        written(folder / f"machine {i:03d}.csv", trace(alike(3, level_w=60.0 + i % 40, seed=i), seed=i))
        for i in range(MANY)
    ]


@pytest.fixture(scope="module", params=[1, 2])
def workers(request: pytest.FixtureRequest) -> Iterator[Executor]:
    with ProcessPoolExecutor(request.param, mp_context=get_context("spawn")) as executor:
        list(executor.map(time.sleep, [0.5] * request.param))  # started, all of them
        yield executor


def test_a_log_costs_the_same_among_few_and_many(benchmark: BenchmarkFixture, files: list[Path]) -> None:
    """From files to the comparison, by the clock of the process, which others on the computer do not move."""
    gather(files[:3]).comparison()  # what is loaded once is loaded now
    cost_ms: dict[int, float] = {}

    def all_of(count: int) -> None:
        forget()
        before = time.process_time()
        gather(files[:count]).comparison()
        cost_ms[count] = (time.process_time() - before) / count * 1000

    all_of(FEW)
    benchmark.pedantic(all_of, args=(MANY,), rounds=1)
    benchmark.extra_info |= {f"ms_a_log_of_{count}": round(cost, 2) for count, cost in cost_ms.items()}
    assert cost_ms[MANY] < MOST_DEARER * cost_ms[FEW]


def test_reading_500_logs_with_workers(
    benchmark: BenchmarkFixture, files: list[Path], workers: Executor
) -> None:
    found = benchmark.pedantic(find_logs, args=(files,), kwargs={"executor": workers}, rounds=2)
    assert len(found.logs) == MANY


def test_what_goes_over_the_wire(benchmark: BenchmarkFixture, files: list[Path]) -> None:
    """Bytes a row of a trace that a worker sends back, and what packing it costs."""
    (reading,) = analyse_file(files[0], files[0].name).reading.readings
    assert reading.trace is not None
    sent = benchmark(lambda trace: pickle.dumps(packed(trace), protocol=5), reading.trace)
    benchmark.extra_info["bytes_a_row"] = len(sent) / reading.trace.time_s.size
    benchmark.extra_info["bytes_a_row_as_it_is"] = (
        len(pickle.dumps(reading.trace, protocol=5)) / reading.trace.time_s.size
    )
    assert benchmark.extra_info["bytes_a_row"] < 4
