"""Tables that lie on their side: a row for each quantity, a column for each moment.

Rules: a table is turned only where every row begins with a word, one row holds times, another a power or an
energy by its word, and there are more columns than rows; else it stays as it is.
"""

import csv
from collections.abc import Sequence
from typing import Any

from core.logs import text
from core.logs.cell_kinds import cell_kind
from core.logs.words import meaning

#: rows that a table on its side has at the most, and columns at least
_MOST_ROWS, _FEWEST_COLUMNS = 24, 8
_SHARE = 0.8
#: more is no such table [bytes]
_MOST = 1 << 26
_DELIMITERS = "\t;,|"
_LOADS = frozenset({"power", "energy"})
_TIMES = frozenset({"time", "date", "clock time", "elapsed"})


def rows_of_lying(data: bytes, name: str, encoding: str | None) -> tuple[list[list[Any]], text.Text] | None:
    """The upright rows of a text on its side, and how it was written; None where it does not lie."""
    first = data.find(b"\n")
    if (
        first < 0
        or len(data) > _MOST
        or data.count(b"\n", 0, 1 << 20) > _MOST_ROWS
        or b"\0" in data[: text.HEAD]
    ):
        return None
    if max(data.count(d.encode(), 0, 1 << 16) for d in _DELIMITERS) < _FEWEST_COLUMNS:
        return None
    decoded = text.decode(data, name, encoding)
    lines = decoded.data.decode("utf-8", "replace").splitlines()
    for delimiter in _DELIMITERS:
        try:
            found = upright(list(csv.reader(lines, delimiter=delimiter)))
        except csv.Error:
            continue
        if found is not None:
            return found, decoded
    return None


def upright(rows: Sequence[Sequence[Any]]) -> list[list[Any]] | None:
    """Rows of a table that lies on its side with a cell for each quantity; None where it does not lie.

    Examples
    --------
    >>> lying = [["t [s]", *"0123456789"], ["P [W]", *"5566778899"]]
    >>> upright(lying)[:2]
    [['t [s]', 'P [W]'], ['0', '5']]
    """
    full = [list(r) for r in rows if sum(map(_is_filled, r)) > 1]
    if not 2 <= len(full) <= _MOST_ROWS:
        return None
    width = max(len(r) for r in full)
    if width < max(_FEWEST_COLUMNS, len(full) + 1) or not all(_is_word(r[0]) for r in full):
        return None
    told = [meaning(str(r[0])).quantity for r in full]
    kinds = [[_kind(c) for c in r[1:] if _is_filled(c)] for r in full]
    are_times = [
        _share(k, "stamp") >= _SHARE or (q in _TIMES and _share(k, "number") >= _SHARE)
        for k, q in zip(kinds, told, strict=True)
    ]
    are_loads = [q in _LOADS and _share(k, "number") >= _SHARE for k, q in zip(kinds, told, strict=True)]
    if not any(are_times) or not any(are_loads):
        return None
    return [[r[i] if i < len(r) else None for r in full] for i in range(width)]


def _is_filled(cell: Any) -> bool:
    return cell is not None and str(cell).strip() != ""


def _is_word(cell: Any) -> bool:
    return isinstance(cell, str) and cell_kind(cell) == "text"


def _kind(cell: Any) -> str:
    if isinstance(cell, str):
        return cell_kind(cell)
    return "number" if isinstance(cell, int | float) and not isinstance(cell, bool) else "stamp"


def _share(kinds: list[str], kind: str) -> float:
    return kinds.count(kind) / max(1, len(kinds))
