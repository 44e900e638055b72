"""What is around a log: compressed files, archives, spreadsheets, column stores, JSON, a database.

Rules: nothing in a file is ever run or fetched; what is unpacked is limited in size and in ratio, so
that a small file cannot fill the memory.
"""

from typing import Any

import numpy as np
from attrs import evolve, field, frozen

from core.logs.table import Table
from core.problems import Problem, Severity

#: most bytes that are unpacked, and most unpacked bytes for each packed one beyond the first 64 MB
MOST_BYTES = 1 << 30
MOST_RATIO = 300
FREE_BYTES = 1 << 26


@frozen
class Item:
    """One log inside a file: text as bytes, or a table.

    ``label`` names it inside its container, ``""`` where the file is the log; ``above`` are the cells of the
    line above its headings.
    """

    content: bytes | Table = field(repr=False)
    label: str = ""
    encoding: str | None = None
    header_row: int | None = None
    is_1904: bool = False
    above: tuple[str, ...] = ()
    reasons: tuple[tuple[str, str], ...] = ()
    problems: tuple[Problem, ...] = ()


def open_container(
    data: bytes, name: str, depth: int = 0, encoding: str | None = None
) -> list[Item] | Problem:
    """The logs inside a file; a problem when it is packed in a way that cannot be used.

    Parameters
    ----------
    data : bytes
    name : str
        The file, for problems.
    depth : int
        Archives around it.
    encoding : str or None
        Of a text, where the user has chosen one.
    """
    from core.logs import archives, json_logs, pairs, sheets, stores

    if data.startswith(b"\x1f\x8b"):
        return archives.open_gzip(data, name, depth)
    if data.startswith(b"PK\x03\x04"):
        return (
            sheets.open_sheet(data, name)
            if sheets.is_zipped_sheet(data)
            else archives.open_zip(data, name, depth)
        )
    if data.startswith(b"\xd0\xcf\x11\xe0"):
        return sheets.open_sheet(data, name)
    if data.startswith((b"PAR1", b"ARROW1")) or stores.is_arrow_stream(data):
        return stores.open_columns(data, name)
    if data.startswith(b"SQLite format 3\x00"):
        return stores.open_database(data, name)
    head = data[:4096].lstrip(b"\xef\xbb\xbf \t\r\n")
    if head.startswith((b"{", b"[{", b"[ {", b"[\n", b"[\r", b"[[")) or (
        head.startswith(b"[") and b"{" in head
    ):
        return json_logs.open_json(data, name)
    if pairs.is_made_of_pairs(data):
        return pairs.open_pairs(data, name, encoding)
    return [Item(data)]


def is_text(head: bytes) -> bool:
    """Whether a file with this beginning is a text log with a cell for each column, and no container."""
    from core.logs import pairs

    magic = (
        b"\x1f\x8b",
        b"PK\x03\x04",
        b"\xd0\xcf\x11\xe0",
        b"PAR1",
        b"ARROW1",
        b"\xff\xff\xff\xff",
        b"SQLite format 3",
    )
    is_bare = not head.startswith(magic) and head.lstrip()[:1] not in (b"{", b"[")
    return is_bare and not pairs.is_made_of_pairs(head)


def table_of_arrow(arrow: Any) -> Table:
    """An Arrow table as a `Table`: nested fields become columns named ``outer.inner``."""
    import pyarrow as pa
    import pyarrow.compute as pc

    for _ in range(4):
        if not any(pa.types.is_struct(f.type) for f in arrow.schema):
            break
        arrow = arrow.flatten()
    names: list[str] = []
    columns: list[Any] = []
    for name, column in zip(arrow.schema.names, arrow.columns, strict=True):
        kind = column.type
        if pa.types.is_dictionary(kind):
            column = column.cast(kind.value_type)
            kind = column.type
        if pa.types.is_floating(kind) or pa.types.is_integer(kind) or pa.types.is_decimal(kind):
            columns.append(np.array(column.cast(pa.float64(), safe=False).to_numpy(), dtype=np.float64))
        elif pa.types.is_timestamp(kind):
            columns.append(column)
        elif pa.types.is_date(kind) or pa.types.is_time(kind):
            columns.append(column.cast(pa.string()))
        elif pa.types.is_duration(kind):
            scale = {"s": 1.0, "ms": 1e3, "us": 1e6, "ns": 1e9}[kind.unit]
            columns.append(np.array(column.cast(pa.int64()).to_numpy(), dtype=np.float64) / scale)
            name = f"{name} [s]"
        elif pa.types.is_string(kind) or pa.types.is_large_string(kind):
            columns.append(pc.cast(column, pa.string()))
        else:
            continue
        names.append(name)
    return Table(tuple(names), tuple(columns), arrow.num_rows, ((0, 1),))


def with_numbers(table: Table, wanted: list[bool]) -> tuple[Table, str]:
    """Parse text columns that should hold numbers; returns the decimal sign found in them too."""
    from core.logs import numbers

    columns, wrong, units = list(table.columns), dict(table.wrong), dict(table.units)
    texts = [
        c
        for c, w in zip(columns, wanted, strict=True)
        if w and c is not None and not isinstance(c, np.ndarray)
    ]
    sample = [str(x) for c in texts for x in c.slice(0, 2000).to_pylist() if x is not None]
    sign = numbers.decimal_of(sample)[0] if sample else "."
    other = "." if sign == "," else ","
    for i, (column, want) in enumerate(zip(table.columns, wanted, strict=True)):
        if not want or column is None or isinstance(column, np.ndarray):
            continue
        import pyarrow as pa

        if not pa.types.is_string(column.type):
            columns[i] = None
            continue
        cells = [str(x) for x in column.slice(0, 2000).to_pylist() if x is not None]
        is_other = bool(numbers.columns_of_other_sign([cells], sign))
        parsed = numbers.parse_column(column, other if is_other else sign)
        columns[i] = parsed.values
        bad = np.flatnonzero(parsed.verdicts >= numbers.INFINITE)
        if bad.size:
            wrong[i] = bad
        if parsed.units:
            units[i] = parsed.units[0][0]
    return evolve(table, columns=tuple(columns), wrong=wrong, units=units), sign


def refused(name: str, code: str, **facts: object) -> Problem:
    """An error about a container."""
    return Problem(code, Severity.ERROR, name, facts=facts)
