"""Lines of words and an object, as brokers and programs write: ``09:36:00 shop/plug {"power": 62.3}``.

Rules: the object is JSON, or printed; what stands before it is cut into a stamp and the rest. Lines whose
object is cut are set aside with their numbers.
"""

import json
from itertools import islice
from typing import Any

import numpy as np
from attrs import evolve

from core.language import later, mark
from core.logs import nested, pairs, printed, text
from core.logs.cell_kinds import cell_kind
from core.logs.cells import table_of_cells
from core.logs.reading import REFUSED_KEPT
from core.logs.table import Broken
from core.logs.unpacked import Item, refused
from core.problems import Problem

#: lines that are looked at, and the share of them that must end with an object
_LOOKED_AT, _SHARE = 100, 0.8
#: the first object is no further on [bytes]
_BEGINNING = 2000
_LONGEST = 1 << 16
_MOST_NAMES = 2000


def are_objects_in_lines(data: bytes) -> bool:
    """Whether most of the first lines are words with an object at the end."""
    head = data[: text.HEAD]
    if b"{" not in head[1:_BEGINNING] or head.lstrip(b"\xef\xbb\xbf \r\n").startswith(b"{"):
        return False
    lines = [x for x in islice(head.decode("utf-8", "replace").splitlines(), _LOOKED_AT) if x.strip()]
    taken = sum(bool(x.find("{") > 0 and _taken_apart(x)) for x in lines[1:])
    return len(lines) > 1 and taken >= _SHARE * (len(lines) - 1)


def open_objects(data: bytes, name: str, encoding: str | None) -> list[Item] | Problem:
    """The table of such lines: a column for each key, and those of what stands before the objects."""
    decoded = text.decode(data, name, encoding)
    rows: list[dict[str, Any]] = []
    numbers: list[int] = []
    broken: list[Broken] = []
    count = 0
    for i, line in enumerate(decoded.data.decode("utf-8", "replace").split("\n"), 1):
        if not line.strip():
            continue
        found = _taken_apart(line)
        if not rows and not found and "{" not in line and not numbers:
            continue  # headings
        rows += found
        numbers += [i] * len(found)
        if not found:
            count += 1
            if len(broken) < REFUSED_KEPT:
                broken.append(Broken(i, line[:300], "row.json"))
    rows, numbers = _of_meters(rows, numbers)
    names = sorted(dict.fromkeys(k for row in rows for k in row), key=lambda n: not n.startswith("column "))
    if not names or len(names) > _MOST_NAMES:
        return refused(name, "log.json_no_rows")
    table = table_of_cells(names, [[row.get(n) for row in rows] for n in names], np.array(numbers, np.int64))
    table = evolve(table, broken=tuple(broken), broken_count=count)
    told_by = later(mark("{encoding}: {why}"), encoding=decoded.encoding, why=decoded.reason)
    reasons = (("encoding", told_by), ("layout", "lines of words and an object"))
    return [Item(table, encoding=decoded.encoding, reasons=reasons, problems=decoded.problems)]


def _of_meters(rows: list[dict[str, Any]], numbers: list[int]) -> tuple[list[dict[str, Any]], list[int]]:
    """Rows of what tells a load anywhere: topics of other things are no machines."""

    def topic(row: dict[str, Any]) -> tuple[Any, ...]:
        return tuple(row.get(f"column {i}") for i in range(1, 4) if not _is_stamp(row.get(f"column {i}")))

    loads = {topic(row) for row in rows if nested.tells_load(row)}
    kept = [i for i, row in enumerate(rows) if not loads or topic(row) in loads]
    return [rows[i] for i in kept], [numbers[i] for i in kept]


def _is_stamp(cell: Any) -> bool:
    return isinstance(cell, str) and cell_kind(cell) in ("stamp", "number")


def _taken_apart(line: str) -> list[dict[str, Any]]:
    """The rows of one line; empty where it holds no object."""
    at = line.find("{")
    if at < 0 or len(line) > _LONGEST:
        return []
    written = line[at:].strip().rstrip(",;").rstrip("'\"")
    if '""' in written and line[at - 1 : at] == '"':  # quotes within those of a cell
        written = written.replace('""', '"')
    if written[1:].lstrip().startswith("'"):
        written = printed.as_json(written)
    try:
        value = json.loads(written)
    except (ValueError, RecursionError):
        return []
    if not isinstance(value, dict) or not value:
        return []
    before = {f"column {i}": cell for i, cell in enumerate(pairs.lead(line[:at].strip().strip("'\"")), 1)}
    return [{**before, **row} for row in nested.opened(value)]
