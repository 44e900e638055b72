"""Containers whose few bytes stand for a great many are refused by size, before they fill the memory."""

import bz2
import gzip
import io
import lzma
import sqlite3
import zipfile
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pyarrow as pa
import pytest
import xlsxwriter
from pyarrow import ipc, parquet

from core.logs import FileReading, read_bytes, stores
from core.logs.arrow_sizes import unpacked_bytes
from core.problems import Severity

START_S = 1_750_671_360


def refused(found: FileReading) -> str:
    assert not found.readings
    (error,) = [p for p in found.problems if p.severity is Severity.ERROR]
    return error.code


def readings(rows: int) -> pa.Table:
    power_w = np.round(60 + 40 * np.sin(np.arange(rows) / 50), 1)
    return pa.table({"time": START_S + np.arange(rows), "power_w": power_w})


def as_arrow(table: pa.Table, codec: str | None = None, is_file: bool = True) -> bytes:
    out = io.BytesIO()
    options = ipc.IpcWriteOptions(compression=codec)
    with (ipc.new_file if is_file else ipc.new_stream)(out, table.schema, options=options) as to:
        to.write_table(table)
    return out.getvalue()


def as_parquet(table: pa.Table, times: int = 1) -> bytes:
    out = io.BytesIO()
    with parquet.ParquetWriter(out, table.schema) as to:
        for _ in range(times):
            to.write_table(table)
    return out.getvalue()


@pytest.fixture
def limits(monkeypatch: pytest.MonkeyPatch) -> None:
    """Half a megabyte is a great deal."""
    monkeypatch.setattr(stores, "_MOST_BYTES", 1 << 19)


def zipped(data: bytes) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("log.csv", data)
    return out.getvalue()


@pytest.mark.parametrize(
    ("pack", "size_mb"), [(zipped, 200), (gzip.compress, 200), (bz2.compress, 80), (lzma.compress, 80)]
)
def test_an_archive_of_one_letter_over_and_over(pack: Callable[[bytes], bytes], size_mb: int) -> None:
    assert refused(read_bytes(pack(b"0" * (size_mb << 20)), "bomb.csv")) == "log.archive_too_large"


class TestArrow:
    @pytest.mark.parametrize("codec", [None, "zstd", "lz4"])
    @pytest.mark.parametrize("is_file", [True, False])
    def test_the_size_told_beforehand_is_the_size_unpacked(self, codec: str | None, is_file: bool) -> None:
        texts = pa.array(["on", "off", None, "on"] * 500)
        table = readings(2000).append_column("state", texts).append_column("again", texts.dictionary_encode())
        told = unpacked_bytes(as_arrow(table, codec, is_file), 1 << 40)
        assert table.nbytes <= told <= table.nbytes + 64 * (len(table.schema) * 3)

    @pytest.mark.parametrize("is_file", [True, False])
    def test_zeros_that_were_packed_small(self, is_file: bool) -> None:
        zeros = pa.table({"time": np.zeros(6_000_000), "power_w": np.zeros(6_000_000)})
        data = as_arrow(zeros, "zstd", is_file)
        assert len(data) < 100_000
        before = pa.total_allocated_bytes()
        assert refused(read_bytes(data, "zeros.arrow")) == "log.too_large_unpacked"
        assert pa.total_allocated_bytes() - before < 10_000_000

    def test_one_batch_named_many_times(self, limits: None) -> None:
        """The footer of a file may point to the same rows again and again."""
        batch = readings(10_000).to_batches()[0]
        out = io.BytesIO()
        with ipc.new_file(out, batch.schema) as to:
            for _ in range(5):
                to.write_batch(batch)
        assert refused(read_bytes(out.getvalue(), "again.arrow")) == "log.too_large_unpacked"

    def test_damaged_sizes_are_told_and_not_believed(self) -> None:
        data = bytearray(as_arrow(readings(1000), "zstd", is_file=False))
        rng = np.random.default_rng(20250623)
        for _ in range(150):
            at = int(rng.integers(8, len(data)))
            before, data[at] = data[at], int(rng.integers(0, 256))
            found = read_bytes(bytes(data), "damaged.arrow")
            assert found.readings or refused(found)
            data[at] = before

    @pytest.mark.parametrize("is_file", [True, False])
    def test_an_honest_log_is_read(self, is_file: bool) -> None:
        found = read_bytes(as_arrow(readings(5000), "zstd", is_file), "log.arrow")
        assert found.readings[0].trace.time_s.size == 5000


class TestParquet:
    def test_equal_rows_over_and_over(self) -> None:
        equal = pa.table({"time": np.full(1_000_000, START_S), "power_w": np.full(1_000_000, 5.0)})
        data = as_parquet(equal, 12)
        assert len(data) < 200_000
        assert refused(read_bytes(data, "equal.parquet")) == "log.too_large_unpacked"

    def test_one_long_text_over_and_over(self) -> None:
        long = pa.array(["2025-06-23 09:36:00" + "x" * 100_000])
        table = pa.table({"time": long.take(pa.array(np.zeros(3000, int))), "power_w": np.full(3000, 5.0)})
        assert refused(read_bytes(as_parquet(table), "long.parquet")) == "log.too_large_unpacked"

    def test_an_honest_log_is_read_and_its_memory_given_back(self) -> None:
        before = pa.total_allocated_bytes()
        found = read_bytes(as_parquet(readings(50_000)), "log.parquet")
        assert found.readings[0].trace.time_s.size == 50_000
        assert pa.total_allocated_bytes() == before

    def test_columns_are_limited_like_rows(self, limits: None) -> None:
        table = readings(1000)
        for i in range(80):
            table = table.append_column(f"note {i}", pa.nulls(1000, pa.float64()))
        assert refused(read_bytes(as_parquet(table), "wide.parquet")) == "log.too_large_unpacked"


def database(tmp_path: Path, *statements: str, rows: int = 300) -> bytes:
    path = tmp_path / "log.db"
    with sqlite3.connect(path) as base:
        for statement in statements:
            base.execute(statement)
        if rows:
            base.executemany(
                "insert into log (time, power_w) values (?, ?)",
                [(START_S + i, 50.0 + i % 7) for i in range(rows)],
            )
    base.close()
    return path.read_bytes()


class TestDatabases:
    def test_a_column_that_is_worked_out_at_length_is_left_alone(self, tmp_path: Path) -> None:
        data = database(
            tmp_path,
            "create table log (time integer, power_w real,"
            " note text generated always as (hex(zeroblob(5000000))) virtual)",
            rows=3,
        )
        found = read_bytes(data, "log.db")
        assert found.readings[0].trace.time_s.size == 3

    def test_a_quantity_worked_out_from_others_is_read(self, tmp_path: Path) -> None:
        data = database(
            tmp_path,
            "create table log (time integer, power_mw real generated always as (power_w * 1000) virtual,"
            " power_w real)",
        )
        (reading,) = read_bytes(data, "log.db").readings
        assert reading.trace.power_w[1] == 51.0

    def test_bytes_in_a_column_of_their_own_are_left_alone(self, tmp_path: Path) -> None:
        data = database(tmp_path, "create table log (time integer, picture blob, power_w real)")
        (reading,) = read_bytes(data, "log.db").readings
        assert reading.trace.time_s.size == 300

    def test_a_table_that_gives_hardly_a_row_in_its_time(
        self, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setattr(stores, "_PATIENCE_S", 0.05)
        monkeypatch.setattr(stores, "_OPERATIONS", 1)
        data = database(
            tmp_path,
            "create table log (time integer, power_w real,"
            " energy_wh real generated always as (length(hex(zeroblob(1900000 + power_w))) + time) virtual)",
            rows=200,
        )
        assert refused(read_bytes(data, "slow.db")) == "log.database_slow"

    def test_more_rows_than_are_read(self, tmp_path: Path, limits: None) -> None:
        data = database(tmp_path, "create table log (time integer, power_w real)", rows=40_000)
        assert refused(read_bytes(data, "long.db")) == "log.too_large_unpacked"

    def test_views_and_triggers_are_never_run(self, tmp_path: Path) -> None:
        data = database(
            tmp_path,
            "create table log (time integer, power_w real)",
            "create view power as with recursive n(time) as (select 1 union all select time + 1 from n)"
            " select time, time * 1.0 as power_w from n",
        )
        assert len(read_bytes(data, "log.db").readings) == 1

    def test_texts_and_numbers_in_one_column_stay_what_they_are(self, tmp_path: Path) -> None:
        data = database(tmp_path, "create table log (time integer, power_w)", rows=0)
        with sqlite3.connect(":memory:") as base:
            base.deserialize(data)
            some = [5.0, "6.5", None, "unavailable", 7] * 8000
            base.executemany("insert into log values (?, ?)", [(START_S + i, p) for i, p in enumerate(some)])
            base.commit()
            data = base.serialize()
        (reading,) = read_bytes(data, "log.db").readings
        assert reading.trace.power_w[:3].tolist() == [5.0, 6.5, 7.0]


class TestManyParts:
    def test_a_workbook_of_very_many_sheets(self) -> None:
        out = io.BytesIO()
        with xlsxwriter.Workbook(out) as book:
            for i in range(1001):
                sheet = book.add_worksheet(f"sheet {i}")
                for row, cells in enumerate((["time", "power_w"], [1, 2.0], [2, 3.0])):
                    sheet.write_row(row, 0, cells)
        assert refused(read_bytes(out.getvalue(), "many.xlsx")) == "log.too_many_parts"

    def test_an_archive_of_very_many_files(self) -> None:
        out = io.BytesIO()
        with zipfile.ZipFile(out, "w") as archive:
            for i in range(1001):
                archive.writestr(f"{i}.csv", "time,power_w\n1,2\n2,3\n")
        assert refused(read_bytes(out.getvalue(), "many.zip")) == "log.too_many_parts"
