"""Columns of positions in a delimited log: their cells are personal with no word beside them."""

import re
from collections.abc import Iterator, Mapping
from typing import Final

from attrs import frozen

_NAMED: Final = re.compile(
    r"""["']?(?:gps[ _-]?)?(?:lat(?:itude)?|lon(?:gitude)?|lng)["']?(?:\s*[\[(].*)?""", re.IGNORECASE
)
_POSITION: Final = re.compile(r"-?\d{1,3}\.\d{2,}")
_DELIMITERS: Final = (",", ";", "\t", "|")
#: the headings are looked for in so many lines
_MOST_LINES_BEFORE: Final = 60


@frozen
class _Columns:
    delimiter: str
    line: int
    places: tuple[int, ...]
    count: int


def positions_in(text: str) -> Iterator[str]:
    r"""The positions in the columns that are called so.

    Examples
    --------
    >>> list(positions_in("time,lat,power\n1,48.137,48.137\n"))
    ['48.137']
    """
    found = _columns(text)
    if found is None:
        return
    for line in text.split("\n")[found.line + 1 :]:
        cells = line.split(found.delimiter)
        if len(cells) == found.count:
            yield from (m[0] for i in found.places if (m := _POSITION.fullmatch(cells[i].strip(" \"'\r"))))


def with_positions_in_columns(text: str, pseudonyms: Mapping[str, str]) -> str:
    r"""The text with the positions in such columns replaced.

    Examples
    --------
    >>> with_positions_in_columns("time,lat,power\n1,48.137,48.137\n", {"48.137": "0.001"})
    'time,lat,power\n1,0.001,48.137\n'
    """
    found = _columns(text)
    if found is None:
        return text
    lines = text.split("\n")
    for n in range(found.line + 1, len(lines)):
        cells = lines[n].split(found.delimiter)
        if len(cells) == found.count:
            for i in found.places:
                cells[i] = _POSITION.sub(lambda m: pseudonyms.get(m[0], m[0]), cells[i])
            lines[n] = found.delimiter.join(cells)
    return "\n".join(lines)


def _columns(text: str) -> _Columns | None:
    head = text[: 1 << 16].split("\n", _MOST_LINES_BEFORE)[:_MOST_LINES_BEFORE]
    for n, line in enumerate(head):
        for delimiter in _DELIMITERS:
            cells = line.split(delimiter)
            places = tuple(i for i, cell in enumerate(cells) if _NAMED.fullmatch(cell.strip()))
            if len(cells) > 1 and places:
                return _Columns(delimiter, n, places, len(cells))
    return None
