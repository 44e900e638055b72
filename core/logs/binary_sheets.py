"""Records of a workbook in its binary form (xlsb): a number, a length, and so many bytes.

Numbers and lengths have seven bits a byte, lowest first. A row's record begins with its row, a cell's with
its column, the workbook's own properties with a word of flags (Microsoft, [MS-XLSB], from memory).

Rules: only places and flags are looked at; values are read by the library for sheets.
"""

import re
from collections.abc import Iterator

from core.language import mark

#: numbers of the records: a row, the last of the kinds of cell, properties of a workbook, a sheet in it
_ROW, _LAST_CELL, _PROPERTIES, _SHEET = 0, 11, 153, 156
_ID = re.compile(rb'\bId="([^"]*)"')


def _records(data: bytes) -> Iterator[tuple[int, int, int]]:
    """(number, first byte, length) of every record; raises `IndexError` where the last one is cut off."""
    at, end = 0, len(data)
    while at < end:
        kind = data[at]
        at += 1
        if kind & 0x80:
            kind = kind & 0x7F | data[at] << 7
            at += 1
        size, shift = data[at] & 0x7F, 7
        while data[at] & 0x80 and shift < 28:
            at += 1
            size |= (data[at] & 0x7F) << shift
            shift += 7
        at += 1
        yield kind, at, size
        at += size


def area(sheet: bytes, enough: int) -> int:
    """Cells of the rectangle that a binary sheet spans; looks no further beyond `enough`.

    Raises
    ------
    ValueError, IndexError
        If a record is damaged.
    """
    top, bottom, left, right = 1 << 30, -1, 1 << 30, -1
    found = 0
    for kind, at, size in _records(sheet):
        if kind > _LAST_CELL:
            continue
        if size < 4:
            raise ValueError(mark("a cell without a place"))
        place = int.from_bytes(sheet[at : at + 4], "little")
        if kind == _ROW:
            top, bottom = min(top, place), max(bottom, place)
        else:
            left, right = min(left, place), max(right, place)
        found = max(0, bottom - top + 1) * max(0, right - left + 1)
        if found > enough:
            break
    return found


def counts_from_1904(workbook: bytes) -> bool:
    """Whether a binary workbook says that it counts its days from 1904; False where it is damaged."""
    try:
        return any(kind == _PROPERTIES and workbook[at] & 1 for kind, at, size in _records(workbook) if size)
    except IndexError:
        return False


def names_all_sheets(workbook: bytes, relations: bytes) -> bool:
    """Whether all sheets of a binary workbook are among its relations; the sheets' library panics if not."""
    known = {match.decode("utf-8", "replace") for match in _ID.findall(relations)}
    try:
        return all(_relation(workbook, at) in known for kind, at, _ in _records(workbook) if kind == _SHEET)
    except (IndexError, UnicodeDecodeError):
        return False


def _relation(workbook: bytes, at: int) -> str:
    """What a sheet's record calls its relation: after two words, a count and letters of two bytes."""
    start, count = at + 12, int.from_bytes(workbook[at + 8 : at + 12], "little")
    return workbook[start : start + 2 * count].decode("utf-16-le")
