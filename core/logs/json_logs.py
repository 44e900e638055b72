"""Logs written as JSON: an object a line, or an array of objects.

Rules: Arrow reads regular lines; odd lines are looked at one by one and set aside with their numbers.
"""

import json
import re
from typing import Any

from attrs import evolve

from core.logs import nested, printed, text
from core.logs.arrow_tables import table_of_arrow
from core.logs.reading import REFUSED_KEPT
from core.logs.table import Broken, Table
from core.logs.unpacked import Item, refused
from core.problems import Problem

#: deeper nesting than this is no log
DEEPEST = 40
#: what may stand between objects, and so many objects are a log
_BETWEEN = re.compile(r"[\s,;\x1e]*")
_FEWEST = 3
#: lines from whose values it is told which of them are times
_FIRST_LINES = 1 << 16
#: most bytes of an array of objects, which has to be read whole
MOST_ARRAY = 1 << 28


def open_json(data: bytes, name: str) -> list[Item] | Problem:
    """The table inside JSON lines or a JSON array of objects."""
    decoded = text.decode(data, name)
    body = decoded.data.strip()
    if printed.is_printed(body):
        body = printed.as_json(body.decode("utf-8", "replace")).encode()
    why = ("layout", "JSON, an object for each row")
    if body.startswith(b"["):
        table = _array(body, name)
    else:
        first = body.split(b"\n", 1)[0].rstrip()
        is_lines = first.endswith(b"}") and len(first) < len(body)
        quick = _lines_by_arrow(body) if is_lines else None
        table = quick if quick is not None else _lines(body, name) if is_lines else _single(body, name)
    if isinstance(table, Problem):
        return table
    return [Item(table, encoding=decoded.encoding, reasons=(why,), problems=decoded.problems)]


def _single(body: bytes, name: str) -> Table | Problem:
    """One JSON value over the whole text."""
    rows = _whole(body, name)
    if isinstance(rows, Problem):
        by_line = _one_after_another(body, name) or _lines(body, name)
        return by_line if isinstance(by_line, Table) else rows
    return _of_rows(rows, name)


def _one_after_another(body: bytes, name: str) -> Table | None:
    """Objects over several lines each, with nothing between them; None where they are none."""
    if len(body) > MOST_ARRAY:
        return None
    written = body.decode("utf-8", "replace")
    decoder = json.JSONDecoder()
    rows: list[dict[str, Any]] = []
    numbers: list[int] = []
    at, line, objects = 0, 1, 0
    while at < len(written):
        try:
            value, end = decoder.raw_decode(written, at)
        except (ValueError, RecursionError):
            break
        found = nested.opened(value) if isinstance(value, dict) else []
        rows += found
        numbers += [line] * len(found)
        objects += 1
        after = _BETWEEN.match(written, end)
        stop = after.end() if after else end
        line += written.count("\n", at, stop)
        at = stop
    if objects < _FEWEST:
        return None
    table = _of_rows(rows, name)
    if isinstance(table, Problem):
        return None
    import numpy as np

    rest = (Broken(line, written[at : at + 300], "row.json"),) if at < len(written) else ()
    return evolve(table, lines=((0, np.array(numbers)),), broken=rest, broken_count=len(rest))


def _lines_by_arrow(body: bytes) -> Table | None:
    import pyarrow as pa
    from pyarrow import json as arrow_json

    try:
        first = body[: body.find(b"\n", _FIRST_LINES) + 1] or body
        if nested.can_be_opened(json.loads(first[: first.find(b"\n")])):
            return None
        told = arrow_json.read_json(pa.BufferReader(first), arrow_json.ReadOptions(use_threads=False))
        arrow = arrow_json.read_json(
            pa.BufferReader(body),
            read_options=arrow_json.ReadOptions(block_size=1 << 22, use_threads=len(body) > 1 << 20),
            parse_options=arrow_json.ParseOptions(
                newlines_in_values=False, explicit_schema=_with_stamps_as_text(told.schema)
            ),
        )
    except (pa.ArrowInvalid, pa.ArrowNotImplementedError, ValueError, RecursionError):
        return None
    if arrow.num_rows != body.count(b"\n") + 1:
        return None
    return table_of_arrow(arrow)


def _with_stamps_as_text(schema: Any) -> Any:
    """The time columns of a schema as text: Arrow would drop the offset from UTC that stamps state."""
    import pyarrow as pa

    def plain(kind: Any) -> Any:
        if pa.types.is_timestamp(kind):
            return pa.string()
        if pa.types.is_struct(kind):
            return pa.struct([pa.field(f.name, plain(f.type)) for f in kind])
        return kind

    fields = [(f.name, f.type, plain(f.type)) for f in schema]
    return pa.schema([(name, kind) for name, was, kind in fields if kind != was])


def _lines(body: bytes, name: str) -> Table | Problem:
    rows: list[dict[str, Any]] = []
    numbers: list[int] = []
    broken: list[Broken] = []
    count = 0
    for i, line in enumerate(body.split(b"\n"), 1):
        if not line.strip():
            continue
        try:
            value = json.loads(line) if line.count(b"{") + line.count(b"[") <= DEEPEST * 8 else None
        except (ValueError, RecursionError):
            value = None
        if isinstance(value, dict):
            found = nested.opened(value)
            rows += found
            numbers += [i] * len(found)
            continue
        count += 1
        if len(broken) < REFUSED_KEPT:
            broken.append(Broken(i, line[:300].decode("utf-8", "replace"), "row.json"))
    if not rows:
        whole = _whole(body, name)
        return whole if not isinstance(whole, list) else _of_rows(whole, name)
    table = _of_rows(rows, name)
    if isinstance(table, Problem):
        return table
    import numpy as np

    return evolve(table, lines=((0, np.array(numbers)),), broken=tuple(broken), broken_count=count)


def _whole(body: bytes, name: str) -> list[dict[str, Any]] | Problem:
    """One object that holds the rows in one of its lists, or columns as lists."""
    if len(body) > MOST_ARRAY:
        return refused(name, "log.too_large", bytes=len(body))
    try:
        value = json.loads(body)
    except (ValueError, RecursionError):
        return refused(name, "log.json_damaged")
    return nested.rows_of(value) or refused(name, "log.json_no_rows")


def _array(body: bytes, name: str) -> Table | Problem:
    if len(body) > MOST_ARRAY:
        return refused(name, "log.too_large", bytes=len(body))
    try:
        value = json.loads(body)
    except (ValueError, RecursionError):
        # an array of objects cut short: take the objects that are whole
        lines = body.lstrip(b"[").replace(b"},", b"}\n")
        table = _lines(lines, name) if b"}" in lines and body.count(b"[") < DEEPEST else None
        return table if isinstance(table, Table) else refused(name, "log.json_damaged")
    rows = nested.rows_of(value)
    return _of_rows(rows, name) if rows else refused(name, "log.json_no_rows")


def _of_rows(rows: list[dict[str, Any]], name: str) -> Table | Problem:
    from core.logs.cells import table_of_cells

    names = list(dict.fromkeys(k for row in rows[:5000] for k in row))
    if not names or len(names) > 2000:
        return refused(name, "log.json_no_rows")
    return table_of_cells(names, [[row.get(n) for row in rows] for n in names])
