"""Logs in column stores (Parquet, Arrow) and in SQLite databases.

Rules: a database is opened from a copy in memory, read-only, and only its tables are looked at.
"""

import re
import sqlite3
from typing import Any

from core.logs.arrow_tables import table_of_arrow
from core.logs.cells import table_of_cells
from core.logs.unpacked import Item, refused
from core.logs.words import meaning
from core.problems import Problem

_MOST_ROWS = 60_000_000
_MOST_BYTES = 3 << 29
_TABLES = 200


def is_arrow_stream(data: bytes) -> bool:
    """Whether the bytes are an Arrow stream with its leading marker."""
    return data.startswith(b"\xff\xff\xff\xff") and len(data) > 16 and data[8:16].count(0) > 2


def open_columns(data: bytes, name: str) -> list[Item] | Problem:
    """A Parquet or Arrow file."""
    import pyarrow as pa
    from pyarrow import ipc, parquet

    try:
        if data.startswith(b"PAR1"):
            file = parquet.ParquetFile(pa.BufferReader(data))
            if file.metadata.num_rows > _MOST_ROWS or _unpacked(file.metadata) > _MOST_BYTES:
                return refused(name, "log.too_large", bytes=len(data))
            arrow, what = file.read(), "Parquet"
        else:
            opened = ipc.open_file if data.startswith(b"ARROW1") else ipc.open_stream
            arrow, what = opened(pa.BufferReader(data)).read_all(), "Arrow"
    except (pa.ArrowException, OSError, ValueError, KeyError) as error:
        return refused(name, "log.columns_damaged", error=str(error)[:160])
    return [Item(table_of_arrow(arrow), reasons=(("layout", f"{what}, with typed columns"),))]


def _unpacked(metadata: Any) -> int:
    return sum(metadata.row_group(i).total_byte_size for i in range(metadata.num_row_groups))


def open_database(data: bytes, name: str) -> list[Item] | Problem:
    """The tables of a SQLite file that have a column of time and one of power or energy."""
    items: list[Item] = []
    try:
        with _in_memory(data) as base:
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
                names = [str(r[1]) for r in base.execute(f"pragma table_info({quoted})")]
                if not _is_log(names):
                    continue
                rows = base.execute(f"select * from {quoted} limit {_MOST_ROWS}").fetchall()
                if not rows:
                    continue
                columns = [list(c) for c in zip(*rows, strict=True)]
                why = (("layout", f"a database, table {table}"),)
                items.append(Item(table_of_cells(names, columns), table, "utf-8", reasons=why))
    except (sqlite3.Error, ValueError, MemoryError) as error:
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
            # a damaged page must end as an error, not as a loop
            self._base.set_progress_handler(_Limit(), 1_000_000)
        except BaseException:
            self._base.close()
            raise
        return self._base

    def __exit__(self, *_: object) -> None:
        self._base.close()


class _Limit:
    """Stops a statement after a great many steps."""

    def __init__(self) -> None:
        self.calls = 0

    def __call__(self) -> int:
        self.calls += 1
        return int(self.calls > 5000)


def _is_log(names: list[str]) -> bool:
    said = [meaning(n) for n in names]
    timed = any(m.quantity in ("time", "date", "elapsed", "clock time") for m in said)
    timed = timed or any(re.search(r"time|date|stamp|ts$", n, re.IGNORECASE) for n in names)
    loaded = any(m.quantity in ("power", "energy", "value", "current") for m in said)
    return timed and loaded
