"""Logs in spreadsheets: xlsx, xlsm, xlsb, xls, ods.

Rules: read by a library that runs no formula, fetches nothing and resolves no outside entity.
"""

import io
import zipfile
import zlib
from typing import Any

import numpy as np
from attrs import evolve

from core.language import later, mark
from core.logs import binary_sheets, old_sheets, sections, turned
from core.logs.cell_kinds import cell_kind
from core.logs.cells import table_of_cells
from core.logs.extents import largest_area
from core.logs.titles import under_titles
from core.logs.unpacked import MOST_BYTES, MOST_PARTS, MOST_RATIO, Item, refused, too_many
from core.logs.words import meaning
from core.problems import Problem

#: a full column of a sheet twelve times
_MOST_CELLS = 13_000_000
_LOOKED_AT = 60
_UNPACKED = 1 << 29


def is_zipped_sheet(data: bytes) -> bool:
    """Whether a zip archive is a spreadsheet."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            names = set(archive.namelist())
    except (zipfile.BadZipFile, OSError, ValueError, NotImplementedError):
        return False
    return any(n.startswith("xl/") for n in names) or {"content.xml", "mimetype"} <= names


def open_sheet(data: bytes, name: str) -> list[Item] | Problem:
    """A table for each sheet that holds one."""
    is_zip = data.startswith(b"PK")
    if is_zip and _unpacked(data) > min(_UNPACKED, MOST_BYTES, (1 << 24) + MOST_RATIO * len(data)):
        return refused(name, "log.archive_too_large", limit_mb=_UNPACKED >> 20)
    if is_zip and largest_area(data, _MOST_CELLS) > _MOST_CELLS:
        return refused(name, "log.sheet_too_wide", limit=_MOST_CELLS)
    if is_zip and not _is_sound(data):
        return refused(name, "log.sheet_damaged", error=later(mark("a sheet of the workbook is missing")))
    try:
        rows_of = _rows_of_sheets(data) if is_zip else old_sheets.rows_of_sheets(data)
    except (KeyboardInterrupt, SystemExit, MemoryError, OSError):
        raise
    except BaseException as error:  # noqa: BLE001  its own error types, and panics, which are no Exception
        return refused(name, "log.sheet_damaged", error=later(str(error)[:160]))
    if len(rows_of) > MOST_PARTS:
        return too_many(name, len(rows_of))
    items = []
    for title, rows in rows_of:
        label = title if len(rows_of) > 1 else ""
        is_1904 = _is_1904(data) if is_zip else False
        found = [_of_section(p, label, is_1904) for p in sections.of_rows(rows)]
        found = found or [item_of(rows, label, "a spreadsheet", is_1904)]
        items += [item for item in found if item is not None]
    return items or refused(name, "log.no_rows", first_line="")


def _rows_of_sheets(data: bytes) -> list[tuple[str, list[list[Any]]]]:
    from python_calamine import CalamineWorkbook

    book = CalamineWorkbook.from_object(io.BytesIO(data))
    return [(t, book.get_sheet_by_name(t).to_python(skip_empty_area=False)) for t in book.sheet_names]


def _unpacked(data: bytes) -> int:
    """Bytes that the archive says it unpacks to, never less than its members' first words allow."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            return sum(m.file_size for m in archive.infolist())
    except (zipfile.BadZipFile, OSError, ValueError, NotImplementedError):
        return 0


def _is_sound(data: bytes) -> bool:
    """Whether a workbook, if it is a binary one, has all its sheets."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            if "xl/workbook.bin" not in archive.namelist():
                return True
            relations = archive.read("xl/_rels/workbook.bin.rels")
            return binary_sheets.names_all_sheets(archive.read("xl/workbook.bin"), relations)
    except (zipfile.BadZipFile, zlib.error, OSError, ValueError, NotImplementedError, LookupError, EOFError):
        return False


def _is_1904(data: bytes) -> bool:
    """Whether a workbook counts its days from 1904."""
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            names = archive.namelist()
            if "xl/workbook.bin" in names:
                return binary_sheets.counts_from_1904(archive.read("xl/workbook.bin"))
            if "xl/workbook.xml" not in names:
                return False
            with archive.open("xl/workbook.xml") as stream:
                head = stream.read(1 << 16)
    except (zipfile.BadZipFile, OSError, ValueError, NotImplementedError, KeyError):
        return False
    return b'date1904="1"' in head or b'date1904="true"' in head


def _of_section(part: sections.Section, label: str, is_1904: bool) -> Item | None:
    item = item_of(part.content, f"{label} {part.title}".strip(), "a spreadsheet", is_1904)
    if item is None:
        return None
    return evolve(item, lines_before=part.lines_before, reasons=(*item.reasons, sections.REASON))


def labelled(item: Item, label: str, problems: tuple[Problem, ...] = ()) -> Item:
    """A table of several under its name, with what was found on the way to it."""
    return evolve(item, label=label, problems=(*item.problems, *problems))


def item_of(rows: list[list[Any]], title: str, what: str, is_1904: bool = False) -> Item | None:
    """A sheet's rows of cells as a table; None when they hold no rows of values.

    Parameters
    ----------
    rows : list of list
        Numbers, texts, dates, times; None or "" where a cell is empty.
    title : str
        Of the sheet where there are several.
    what : str
        Where the rows come from, in words.
    is_1904 : bool
        Whether days are counted from 1904.
    """
    rows = turned.upright(rows) or [list(r) for r in rows]
    header, first = _find_headings(rows)
    if first is None:
        return None
    width = max(len(r) for r in rows[first : first + 200])
    names = [f"column {i + 1}" for i in range(width)]
    if header is not None:
        for i, cell in enumerate(rows[header][:width]):
            if str(cell).strip():
                names[i] = str(cell).strip()
        between = rows[header + 1 : first]
        if between:
            for i, cell in enumerate(between[0][:width]):
                if str(cell).strip():
                    names[i] = f"{names[i]} [{str(cell).strip().strip('[]()')}]"
    kept, lines = [], []
    for number, row in enumerate(rows[first:], first + 1):
        if any(c not in ("", None) for c in row):
            kept.append(row + [None] * (width - len(row)))
            lines.append(number)
    over = rows[header - 1] if header else []
    titles = [str(c) if isinstance(c, str) else "" for c in over[:width]]
    names = under_titles(names, titles) if len(over) <= width or not any(over[width:]) else names
    filled = [i for i in range(width) if any(r[i] not in ("", None) for r in kept[:500])]
    columns = [[r[i] for r in kept] for i in filled]
    table = table_of_cells([names[i] for i in filled], columns, np.array(lines, dtype=np.int64))
    why = (("layout", f"{what}{f', sheet {title}' if title else ''}"),)
    above = tuple(str(over[i]) if i < len(over) and over[i] is not None else "" for i in filled)
    return Item(table, title, None, None if header is None else header + 1, is_1904, above, why)


def _find_headings(rows: list[list[Any]]) -> tuple[int | None, int | None]:
    """(row of the headings, first row of values), from 0."""
    for i, row in enumerate(rows[:_LOOKED_AT]):
        if not _holds_values(row):
            continue
        following = rows[i + 1 : i + 6]
        if following and sum(map(_holds_values, following)) < len(following) / 2:
            continue
        for j in range(i - 1, max(-1, i - 4), -1):
            words = [str(c) for c in rows[j] if str(c).strip()]
            if words and (len(words) >= 2 or len(row) == 1) and not _only_units(words):
                return j, i
            if words and j == i - 1 and not _only_units(words):
                break
        return None, i
    return None, None


def _holds_values(row: list[Any]) -> bool:
    kinds = [c if isinstance(c, str) else "" for c in row]
    typed = sum(not isinstance(c, str | bool) and c is not None for c in row)
    typed += sum(bool(k.strip()) and cell_kind(k) in ("number", "stamp") for k in kinds)
    words = sum(bool(k.strip()) and cell_kind(k) == "text" for k in kinds)
    return typed >= 2 and typed >= words


def _only_units(words: list[str]) -> bool:
    return all(meaning(w).unit and not meaning(w).rest for w in words) and all(len(w) <= 6 for w in words)
