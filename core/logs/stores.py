"""Logs in column stores (Parquet, Arrow) and in SQLite databases.

Rules: a database is opened from a copy in memory, read-only, and only its tables are looked at.
"""

import re
import sqlite3
import time
from typing import Any

from core.logs.arrow_sizes import unpacked_bytes
from core.logs.arrow_tables import table_of_arrow
from core.logs.cells import joined, packed, table_of_cells
from core.logs.unpacked import Item, most_unpacked, refused, too_large
from core.logs.words import meaning
from core.problems import Problem

_MOST_BYTES = 3 << 29
_TABLES = 200
#: rows of a database taken at a time
_ROWS_AT_ONCE = 1 << 14
#: longest text or number of bytes in a cell of a database; no log has such
_LONGEST_CELL = 1 << 22
#: a database may take so long before its first row [s], and has to give so many rows a second from then on
_PATIENCE_S = 15.0
_LEAST_ROWS_A_SECOND = 20_000
#: operations of the database between two looks at the clock
_OPERATIONS = 2000


def is_arrow_stream(data: bytes) -> bool:
    """Whether the bytes are an Arrow stream with its leading marker."""
    return data.startswith(b"\xff\xff\xff\xff") and len(data) > 16 and data[8:16].count(0) > 2


def open_columns(data: bytes, name: str) -> list[Item] | Problem:
    """A Parquet or Arrow file."""
    import pyarrow as pa

    what = "Parquet" if data.startswith(b"PAR1") else "Arrow"
    limit = most_unpacked(len(data), _MOST_BYTES)
    try:
        arrow = (_parquet if what == "Parquet" else _arrow)(data, limit)
    except (pa.ArrowException, OSError, ValueError, KeyError) as error:
        return refused(name, "log.columns_damaged", error=str(error)[:160])
    if arrow is None:
        return too_large(name, limit)
    table = table_of_arrow(arrow)
    del arrow
    pa.default_memory_pool().release_unused()  # it keeps as much again as the table takes
    return [Item(table, reasons=(("layout", f"{what}, with typed columns"),))]


def _parquet(data: bytes, limit: int) -> Any:
    """Its columns, or None: a few equal values, however often they are repeated, take hardly a byte in it."""
    import pyarrow as pa
    from pyarrow import parquet

    file = parquet.ParquetFile(pa.BufferReader(data))
    metadata = file.metadata
    groups = (metadata.row_group(i).total_byte_size for i in range(metadata.num_row_groups))
    if max(sum(groups), metadata.num_rows * metadata.num_columns * 8) > limit:
        return None
    texts = [f.name for f in file.schema_arrow if _is_text(f.type)]
    if texts:  # each different text once, until it is known how much all of them are
        file = parquet.ParquetFile(pa.BufferReader(data), read_dictionary=texts)
    arrow = file.read()
    return arrow if _spelt_bytes(arrow) <= limit else None


def _arrow(data: bytes, limit: int) -> Any:
    """Its columns, or None: one batch of rows after the other, so that no more than the limit is unpacked."""
    import pyarrow as pa
    from pyarrow import ipc

    if unpacked_bytes(data, limit) > limit:
        return None
    source = pa.BufferReader(data)
    if data.startswith(b"ARROW1"):
        opened = ipc.open_file(source)
        schema, each = opened.schema, (opened.get_batch(i) for i in range(opened.num_record_batches))
    else:
        opened = ipc.open_stream(source)
        schema, each = opened.schema, iter(opened)
    batches, size = [], 0
    for batch in each:
        size += batch.nbytes  # again: a file may name one batch many times
        if size > limit:
            return None
        batches.append(batch)
    arrow = pa.Table.from_batches(batches, schema)
    return arrow if _spelt_bytes(arrow) <= limit else None


def _is_text(kind: Any) -> bool:
    import pyarrow as pa

    return bool(pa.types.is_string(kind) or pa.types.is_large_string(kind))


def _spelt_bytes(arrow: Any) -> int:
    """Bytes that the texts of a table take once each row has its own."""
    import pyarrow as pa
    import pyarrow.compute as pc

    return sum(
        pc.sum(pc.binary_length(chunk.dictionary).take(chunk.indices)).as_py() or 0
        for column in arrow.columns
        if pa.types.is_dictionary(column.type) and _is_text(column.type.value_type)
        for chunk in column.chunks
    )


def open_database(data: bytes, name: str) -> list[Item] | Problem:
    """The tables of a SQLite file that have a column of time and one of power or energy."""
    items: list[Item] = []
    taken = 0
    try:
        with _in_memory(data) as base:
            base.set_progress_handler(_Limit(), _OPERATIONS)
            tables = [
                r[0]
                for r in base.execute(
                    "select name from sqlite_master where type = 'table' limit ?", (_TABLES,)
                )
            ]
            for table in tables:
                if table.startswith("sqlite_"):
                    continue
                quoted = '"' + table.replace('"', '""') + '"'
                names = _columns_of(base, quoted)
                if not _is_log(names):
                    continue
                columns = _cells(base, quoted, names, _MOST_BYTES - taken)
                if columns is None:
                    return too_large(name, _MOST_BYTES)
                if not columns or not len(columns[0]):
                    continue
                taken += len(columns) * len(columns[0]) * 8
                why = (("layout", f"a database, table {table}"),)
                items.append(Item(table_of_cells(names, columns), table, "utf-8", reasons=why))
    except (sqlite3.Error, ValueError, MemoryError) as error:
        if getattr(error, "sqlite_errorcode", None) == sqlite3.SQLITE_INTERRUPT:
            return refused(name, "log.database_slow", seconds=f"{_PATIENCE_S:g}")
        return refused(name, "log.database_damaged", error=str(error)[:160])
    if not items:
        return refused(name, "log.database_foreign")
    if len(items) == 1:
        return [Item(items[0].content, "", "utf-8", reasons=items[0].reasons)]
    return items


class _in_memory:  # noqa: N801  a context manager reads like a function
    """A connection to a database given as bytes; closed at the end."""

    def __init__(self, data: bytes) -> None:
        self._data = data

    def __enter__(self) -> sqlite3.Connection:
        self._base = sqlite3.connect(":memory:")
        try:
            self._base.deserialize(self._data)
            self._base.execute("pragma query_only = on")
            self._base.execute("pragma trusted_schema = off")
            self._base.setlimit(sqlite3.SQLITE_LIMIT_LENGTH, _LONGEST_CELL)
        except BaseException:
            self._base.close()
            raise
        return self._base

    def __exit__(self, *_: object) -> None:
        self._base.close()


class _Limit:
    """Stops a statement that gives too few rows for its time: a damaged page, or a table made to be slow."""

    def __init__(self) -> None:
        self.until_s = time.monotonic() + _PATIENCE_S

    def __call__(self) -> int:
        return int(time.monotonic() > self.until_s)

    def given(self, rows: int) -> None:
        """Allow the time that so many more rows may take."""
        self.until_s += rows / _LEAST_ROWS_A_SECOND


def _columns_of(base: sqlite3.Connection, quoted: str) -> list[str]:
    """Names of the columns that a log may need.

    Columns of raw bytes are none. One that is worked out from others is one only where its heading speaks of
    a quantity: it costs what its author liked.
    """
    found = []
    for _, name, kind, _, _, _, hidden in base.execute(f"pragma table_xinfo({quoted})"):
        is_worked_out = hidden in (2, 3)
        if hidden == 1 or "BLOB" in str(kind).upper() or (is_worked_out and not meaning(name).quantity):
            continue
        found.append(str(name))
    return found


def _cells(base: sqlite3.Connection, quoted: str, names: list[str], most_bytes: int) -> list[Any] | None:
    """The columns of a table; None where it holds more than is read.

    They are packed a thousand rows or so at a time: as objects of the language they take ten times the room.
    """
    listed = ", ".join('"' + n.replace('"', '""') + '"' for n in names)
    limit = _Limit()
    base.set_progress_handler(limit, _OPERATIONS)
    parts: list[list[Any]] = [[] for _ in names]
    count = 0
    rows = base.execute(f"select {listed} from {quoted}")
    while some := rows.fetchmany(_ROWS_AT_ONCE):
        count += len(some)
        if count * len(names) * 8 > most_bytes:
            return None
        for part, cells in zip(parts, zip(*some, strict=True), strict=True):
            part.append(packed(cells))
        limit.given(len(some))
    return [joined(part) for part in parts]


def _is_log(names: list[str]) -> bool:
    said = [meaning(n) for n in names]
    timed = any(m.quantity in ("time", "date", "elapsed", "clock time") for m in said)
    timed = timed or any(re.search(r"time|date|stamp|ts$", n, re.IGNORECASE) for n in names)
    loaded = any(m.quantity in ("power", "energy", "value", "current") for m in said)
    return timed and loaded
