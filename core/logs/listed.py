"""Logs that list the values of each moment below one another: ``Power: 62.3 W``, a block for each row.

Rules: a block begins with the first of the names that come often, or where a name comes again; what is said
seldom, before blocks or between them, holds until it is said anew. Rulers and titles between are nobody's.
"""

import re
from collections import Counter
from collections.abc import Sequence

import numpy as np
from attrs import evolve, frozen

from core.language import later, mark
from core.logs import text
from core.logs.cell_kinds import cell_kind
from core.logs.cells import table_of_cells
from core.logs.reading import REFUSED_KEPT
from core.logs.table import Broken
from core.logs.unpacked import Item, refused
from core.logs.words import meaning
from core.problems import Problem

_LOOKED_AT = 200
#: bytes and lines at the beginning that tell most other logs apart
_BEGINNING, _FIRST = 1000, 4
#: share of the lines that must be a name and its value, and blocks that there must be
_SHARE, _FEWEST = 0.6, 3
_MOST_NAMES = 100
_LOADS = frozenset({"power", "energy"})
_TIMES = frozenset({"time", "date", "clock time", "elapsed"})

_NAME = r"[^\W\d][^:=\t;,|{}\"'<>]{0,60}?"
_LINE = re.compile(rf"^\s*(?:[-*]\s+)?[\"']?({_NAME})[\"']?\s*(?::(?=\s|$)|=(?!=))\s*(.*?)\s*,?$")
#: more pairs in the value: a line of several
_MORE = re.compile(r"[^\W\d]\w*\s?=|[^\W\d]\w*:\s")
_RULER = re.compile(r"^\W*(?:[^\W\d_]+\s?)?(?:\#?\d+)?\W*$")
_BRACKETS = " []()<>=-*#\"'"


@frozen
class _Lines:
    """Pairs with the numbers of their lines, None where a ruler or a blank line parts blocks."""

    pairs: tuple[tuple[int, str, str], ...]
    odd: tuple[tuple[int, str], ...]


def is_listed(data: bytes) -> bool:
    """Whether a text, in whatever encoding, is such a log, by its beginning."""
    head = data[:_BEGINNING]
    if b":" not in head and b"=" not in head:
        return False
    if not any(map(_LINE.match, _lines_of(head)[:_FIRST])):
        return False
    lines = _lines_of(data[: text.HEAD])[:_LOOKED_AT]
    return _first_name(_parted(list(enumerate(lines, 1)))) is not None


def _lines_of(head: bytes) -> list[str]:
    """Lines that are not blank."""
    if b"\0" in head:
        head = text.decode(head, "").data
    return [x for x in head.decode("utf-8", "replace").splitlines() if x.strip()]


def open_listed(data: bytes, name: str, encoding: str | None) -> list[Item] | Problem:
    """The table that the blocks make: a column for each name, in the order in which names first come."""
    decoded = text.decode(data, name, encoding)
    whole = decoded.data.decode("utf-8", "replace")
    parted = _parted([(i, x) for i, x in enumerate(whole.split("\n"), 1) if x.strip()])
    first = _first_name(parted)
    names = list(dict.fromkeys(n for _, n, _ in parted.pairs))
    if first is None or len(names) > _MOST_NAMES:
        return refused(name, "log.no_table", first_line=whole[:120].split("\n")[0])
    rows, lines = _blocks(parted.pairs, first)
    table = table_of_cells(names, [[r.get(n) for r in rows] for n in names], np.array(lines, np.int64))
    broken = tuple(Broken(i, x[:300], "row.pairs") for i, x in parted.odd[:REFUSED_KEPT])
    table = evolve(table, broken=broken, broken_count=len(parted.odd))
    told_by = later(mark("{encoding}: {why}"), encoding=decoded.encoding, why=decoded.reason)
    reasons = (
        ("encoding", told_by),
        ("layout", "a block of lines for each row, each with a name and a value"),
    )
    return [Item(table, encoding=decoded.encoding, reasons=reasons, problems=decoded.problems)]


def _parted(lines: Sequence[tuple[int, str]]) -> _Lines:
    pairs: list[tuple[int, str, str]] = []
    odd: list[tuple[int, str]] = []
    for i, line in lines:
        match = _LINE.match(line)
        if match and not _MORE.search(match[2]):
            pairs.append((i, match[1].strip(), match[2].strip("\"'")))
            continue
        bare = line.strip(_BRACKETS + "\r")
        if cell_kind(bare) == "stamp":
            pairs.append((i, "time", bare))
        elif not _RULER.match(line.strip()):
            odd.append((i, line))
    return _Lines(tuple(pairs), tuple(odd))


def _first_name(lines: _Lines) -> str | None:
    """The name that begins each block; None when the lines are no such log."""
    counted = Counter(n for _, n, _ in lines.pairs)
    if not counted or len(lines.pairs) < _SHARE * (len(lines.pairs) + len(lines.odd)):
        return None
    most = max(counted.values())
    often = [n for n, count in counted.items() if count >= max(_FEWEST, 0.5 * most)]
    kinds: dict[str, Counter[str]] = {n: Counter() for n in often}
    for _, n, value in lines.pairs:
        if n in kinds:
            kinds[n][cell_kind(value)] += 1
    tells_time = any(
        k["stamp"] > 0.5 * counted[n] or (meaning(n).quantity in _TIMES and k["number"] > 0.5 * counted[n])
        for n, k in kinds.items()
    )
    tells_load = any(
        meaning(n).quantity in _LOADS and k["number"] > 0.5 * counted[n] for n, k in kinds.items()
    )
    return often[0] if tells_time and tells_load and len(often) > 1 else None


def _blocks(pairs: Sequence[tuple[int, str, str]], first: str) -> tuple[list[dict[str, str]], list[int]]:
    """Rows, and the line that each begins in."""
    counted = Counter(n for _, n, _ in pairs)
    seldom = {n for n, count in counted.items() if count < 0.5 * counted[first]}
    rows: list[dict[str, str]] = []
    lines: list[int] = []
    kept: dict[str, str] = {}
    row: dict[str, str] = {}
    for i, name, value in pairs:
        if name in seldom and meaning(name).quantity not in _LOADS | _TIMES:
            kept[name] = value
            if row:
                row.setdefault(name, value)
            continue
        if name == first or name in row:
            row = dict(kept)
            rows.append(row)
            lines.append(i)
        elif not rows:
            continue
        row[name] = value
    return rows, lines
