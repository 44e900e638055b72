"""How long logs take to be read: ``pytest --benchmark-only tests/benchmarks/test_reading.py``.

Times are held against Arrow's own reader on the same file in the same minutes, turn by turn, best of several,
so that the figure means the same on any computer. The year of seconds (1 GB) runs with
``SAMEPART_LONG_BENCHMARKS=1``.
"""

import os
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pyarrow as pa
import pyarrow.compute as pc
import pytest
from pyarrow import csv
from pytest_benchmark.fixture import BenchmarkFixture

from core.logs import Reading, numbers, read_path
from core.logs.cell_kinds import cell_kind
from core.logs.growth import added, read_added
from core.study import Choices
from tests.core.logs.corpus import load, plain

ROWS = 2_600_000
YEAR_ROWS = 31_500_000
TURNS = 15
#: the largest shares of Arrow's own time
ISO_SHARE = 1.5
LOCAL_SHARE = 2.0
#: the largest share of the processors' time for reading a whole log that it takes to read it on by an hour
GROWN_SHARE = 0.6
#: for each small log [s]
SMALL_S = 0.025
#: peak memory for a year of seconds [bytes]
PEAK_BYTES = 2.5 * 2**30
#: a user who cancels waits no longer [s]
SILENCE_S = 0.5


def columns(rows: int, first: int = 0) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Stamps, powers [W] and counter [kWh] of a heater that goes on and off."""
    index = np.arange(first, first + rows)
    stamps = np.datetime64("2025-01-01T00:00:00") + index.astype("timedelta64[s]")
    power_w = np.where(index // 20 % 3 == 0, 250.0, 60.0) + np.round(np.sin(index * 0.7), 1)
    return stamps, np.round(power_w, 1), np.round(index * 0.0343 / 1000, 3)


def write_iso(path: Path, rows: int) -> None:
    with path.open("wb") as sink:
        for first in range(0, rows, ROWS):
            stamps, power_w, kwh = columns(min(ROWS, rows - first), first)
            table = pa.table(
                {"time": pa.array(stamps, pa.timestamp("s")), "power_w": power_w, "energy_kwh": kwh}
            )
            csv.write_csv(table, sink, csv.WriteOptions(include_header=first == 0, quoting_style="none"))


@pytest.fixture(scope="module")
def iso(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("iso") / "month.csv"
    write_iso(path, ROWS)
    return path


@pytest.fixture(scope="module")
def local(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("local") / "month.csv"
    stamps, power_w, kwh = columns(ROWS)
    written = pc.strftime(pa.array(stamps, pa.timestamp("s")), format="%d.%m.%Y %H:%M:%S").to_pylist()
    with path.open("w") as out:
        out.write("Datum;Leistung (W);Energie (kWh)\n")
        out.writelines(
            f"{t};{p:.1f};{c:.3f}\n".replace(".", ",").replace(",", ".", 2)
            for t, p, c in zip(written, power_w, kwh, strict=True)
        )
    return path


def in_turn(
    first: Callable[[], object],
    second: Callable[[], object],
    clock: Callable[[], float] = time.perf_counter,
) -> tuple[float, float]:
    """Best times of two functions run by turns. [s]"""
    best = [float("inf"), float("inf")]
    for _ in range(TURNS):
        for i, work in enumerate((first, second)):
            started = clock()
            work()
            best[i] = min(best[i], clock() - started)
    return best[0], best[1]


def forget() -> None:
    """Let cells be looked at anew, as those of a log that is read for the first time."""
    for remembered in (cell_kind, numbers.parse, numbers._sign_shown):
        remembered.cache_clear()


def test_a_month_of_iso_stamps(benchmark: BenchmarkFixture, iso: Path) -> None:
    def ours() -> None:
        forget()
        read_path(iso)

    plain_s, ours_s = in_turn(lambda: csv.read_csv(iso), ours)
    benchmark.extra_info["share of Arrow's time"] = round(ours_s / plain_s, 2)
    found = benchmark.pedantic(read_path, args=(iso,), rounds=1)
    assert found.readings[0].rows_read == ROWS
    assert ours_s <= ISO_SHARE * plain_s


def test_a_month_of_local_stamps(benchmark: BenchmarkFixture, local: Path) -> None:
    def by_arrow() -> None:
        table = csv.read_csv(
            local,
            parse_options=csv.ParseOptions(delimiter=";"),
            convert_options=csv.ConvertOptions(decimal_point=","),
        )
        pc.strptime(table.column(0), format="%d.%m.%Y %H:%M:%S", unit="s")

    plain_s, ours_s = in_turn(by_arrow, lambda: read_path(local))
    benchmark.extra_info["share of Arrow's time"] = round(ours_s / plain_s, 2)
    found = benchmark.pedantic(read_path, args=(local,), rounds=1)
    assert found.readings[0].rows_read == ROWS
    assert found.readings[0].trace is not None
    assert found.readings[0].trace.max_s == 1.0
    assert ours_s <= LOCAL_SHARE * plain_s


def test_a_month_that_grew_by_an_hour(benchmark: BenchmarkFixture, iso: Path, tmp_path: Path) -> None:
    data = iso.read_bytes()
    path = tmp_path / "month.csv"
    path.write_bytes(data[: data.rfind(b"\n", 0, len(data) - 3600 * 31) + 1])
    before = read_path(path)
    path.write_bytes(data)

    def grown() -> tuple[Reading, ...] | None:
        more = added(path, before.digest, before.size)
        assert more is not None
        return read_added(path, more, before.readings, Choices())

    whole_s, grown_s = in_turn(lambda: read_path(path), grown, time.process_time)
    benchmark.extra_info["share of reading whole"] = round(grown_s / whole_s, 2)
    found = benchmark.pedantic(grown, rounds=1)
    assert found is not None
    assert found[0].rows_read == ROWS
    assert grown_s <= GROWN_SHARE * whole_s


def test_small_logs(benchmark: BenchmarkFixture, tmp_path: Path) -> None:
    paths = [tmp_path / f"{i}.csv" for i in range(100)]
    for i, path in enumerate(paths):
        path.write_text(plain(load(rows=1000, seed=i)))
    benchmark.pedantic(lambda: [read_path(p) for p in paths], rounds=3, warmup_rounds=1)
    assert benchmark.stats.stats.min / len(paths) <= SMALL_S


_MEASURED = """
import resource, sys, time
from pathlib import Path
from core.logs import read_path
def worked():
    used = resource.getrusage(resource.RUSAGE_SELF)
    return used.ru_utime + used.ru_stime
beats = [time.perf_counter()]
before = worked()
found = read_path(Path(sys.argv[1]), progress=lambda fraction, text: beats.append(time.perf_counter()))
print(found.readings[0].rows_read, worked() - before, max(b - a for a, b in zip(beats, beats[1:])),
      resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024)
"""


@pytest.mark.skipif("SAMEPART_LONG_BENCHMARKS" not in os.environ, reason="writes and reads 1 GB")
def test_a_year_of_seconds(benchmark: BenchmarkFixture, tmp_path: Path, iso: Path) -> None:
    year = tmp_path / "year.csv"
    write_iso(year, YEAR_ROWS)

    def measured(path: Path) -> tuple[int, float, float, float]:
        """Rows, time of the processors (what others do beside does not count), silence, memory."""
        out = subprocess.run(
            [sys.executable, "-c", _MEASURED, str(path)], check=True, capture_output=True, text=True
        )
        rows, seconds, silence, peak = out.stdout.split()
        return int(rows), float(seconds), float(silence), float(peak)

    month_s = min(measured(iso)[1] for _ in range(3))
    rows, year_s, silence_s, peak = benchmark.pedantic(measured, args=(year,), rounds=1)
    benchmark.extra_info["peak GB"] = round(peak / 2**30, 2)
    benchmark.extra_info["longest silence [s]"] = round(silence_s, 3)
    assert rows == YEAR_ROWS
    assert silence_s <= SILENCE_S
    assert peak <= PEAK_BYTES
    assert year_s <= 1.1 * YEAR_ROWS / ROWS * month_s
