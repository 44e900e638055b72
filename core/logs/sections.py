"""Logs one below the other in one table: the same headings again, each time under a title of its own.

Rules: cut only where every line of these headings stands under a title, the first one perhaps not, and the
titles name things; headings that are merely repeated, as a logger does when it starts anew, cut nothing.
"""

import re
from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import Any, Final

from attrs import frozen

from core.logs.cell_kinds import cell_kind
from core.logs.words import meaning

#: why a log was cut
REASON: Final = ("layout", "logs below one another, each under a title")
#: lines at the beginning among which the headings are looked for
_LOOKED_AT = 40
#: a larger text is not looked through [bytes]
_MOST = 1 << 26
_LONGEST_TITLE = 80
#: lines above headings among which their title is looked for
_NEAR = 3
_DELIMITERS = ("\t", ";", ",", "|")
_LOADS = frozenset({"power", "energy"})


@frozen
class Section:
    """One of the logs: its title, the lines above it in the file, and what it is made of."""

    title: str
    lines_before: int
    content: Any


def of_text(data: bytes) -> list[Section]:
    """The logs below one another as texts; empty where there is one log.

    Parameters
    ----------
    data : bytes
        In an encoding that writes plain letters as ASCII does.
    """
    if len(data) > _MOST:
        return []
    head = data[: 1 << 14].split(b"\n")[:_LOOKED_AT]
    heading = next((x.strip() for x in head if _is_heading(_cells(x.decode("utf-8", "replace")))), None)
    if heading is None or data.count(heading) < 2:
        return []
    lines = data.split(b"\n")
    starts = [i for i, x in enumerate(lines) if x.strip() == heading]
    found = _cut(starts, lambda i: _cells(lines[i].decode("utf-8", "replace")))
    return [Section(title, a, b"\n".join(lines[a:b]) + b"\n") for title, a, b in _spans(found, len(lines))]


def of_rows(rows: Sequence[Sequence[Any]]) -> list[Section]:
    """The logs below one another in a sheet as rows of cells; empty where there is one log."""

    def words(i: int) -> list[str]:
        return [str(c).strip() for c in rows[i] if c is not None and str(c).strip()]

    first = next((i for i in range(min(len(rows), _LOOKED_AT)) if _is_heading(words(i))), None)
    if first is None:
        return []
    heading = list(rows[first])
    starts = [i for i in range(first, len(rows)) if list(rows[i]) == heading]
    found = _cut(starts, words)
    return [Section(title, a, [list(r) for r in rows[a:b]]) for title, a, b in _spans(found, len(rows))]


def _is_heading(cells: Sequence[str]) -> bool:
    return (
        len(cells) > 1
        and all(cell_kind(c) == "text" for c in cells)
        and any(meaning(c).quantity in _LOADS for c in cells)
    )


def _cells(line: str) -> list[str]:
    delimiter = next((d for d in _DELIMITERS if d in line), None)
    return [
        bare for c in (line.split(delimiter) if delimiter else [line]) if (bare := c.strip(" \"'=#-*\r\t"))
    ]


def _cut(starts: Sequence[int], cells: Any) -> list[tuple[str, int]]:
    """Titles, and the row that each log begins with; empty where the logs are no others."""
    found: list[tuple[str, int]] = []
    for start in starts:
        near = range(start - 1, max(-1, start - 1 - _NEAR), -1)
        above = next((i for i in near if cells(i)), None)
        title = "" if above is None else _title(cells(above))
        if not title and (found or above is not None):
            return []
        found.append((title, start if above is None else above))
    titles = {title for title, _ in found}
    return found if len(titles) == len(found) > 1 and _are_names(titles - {""}) else []


def _spans(found: Sequence[tuple[str, int]], stop: int) -> list[tuple[str, int, int]]:
    return [(t, a, b) for (t, a), (_, b) in pairwise([*found, ("", stop)])]


def _are_names(titles: Iterable[str]) -> bool:
    """Whether titles name things, and do not only count or date the beginnings of one."""
    words = {" ".join(re.findall(r"[^\W\d_]+", title)) for title in titles}
    return all(len(title) > 0 for title in words) and (
        len(words) == len(list(titles)) or meaning(next(iter(words))).quantity == "device"
    )


def _title(cells: Sequence[str]) -> str:
    """The words of a line that holds one cell; empty where it is a row of values or of several cells."""
    if len(cells) != 1 or len(cells[0]) > _LONGEST_TITLE or cell_kind(cells[0]) != "text":
        return ""
    word, _, name = cells[0].partition(":")
    return name.strip() if name.strip() and meaning(word).quantity == "device" else cells[0]
