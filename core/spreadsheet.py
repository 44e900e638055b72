"""Tables as the sheets of one workbook: numbers as numbers, text as text, never a formula or a link."""

import io
from collections.abc import Sequence
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Final

from core.tables import Cell, Column, Table, is_formula, shown

if TYPE_CHECKING:
    from xlsxwriter.format import Format
    from xlsxwriter.workbook import Workbook
    from xlsxwriter.worksheet import Worksheet

#: digits after the mark that a number format can have
_MOST_DECIMALS: Final = 6
#: widths of columns, in characters
_NARROWEST, _WIDEST = 9, 60
#: written into every workbook, so that the same tables make the same bytes
_MADE: Final = datetime(1980, 1, 1)  # noqa: DTZ001  # no moment: a mark that none is meant


def spreadsheet_bytes(tables: Sequence[Table]) -> bytes:
    """The workbook of the tables, one sheet each; the same tables make the same bytes.

    Parameters
    ----------
    tables : sequence of Table
        Numbers keep their full precision and show their column's digits. Text that looks like a formula is
        marked as text, so that it stays text also when its cell is edited.
    """
    import xlsxwriter

    out = io.BytesIO()
    options = {
        "in_memory": True,
        "strings_to_formulas": False,
        "strings_to_urls": False,
        "strings_to_numbers": False,
    }
    book = xlsxwriter.Workbook(out, options)
    book.set_properties({"created": _MADE})
    formats = _Formats(book)
    for table in tables:
        sheet = book.add_worksheet(_sheet_name(table.title, [s.get_name() for s in book.worksheets()]))
        _fill(sheet, table, formats)
    book.close()
    return out.getvalue()


def write_spreadsheet(path: Path, tables: Sequence[Table]) -> None:
    """Write the tables as a workbook.

    Raises
    ------
    OSError
        If the file cannot be written.
    """
    path.write_bytes(spreadsheet_bytes(tables))


class _Formats:
    """The few formats of a workbook."""

    def __init__(self, book: "Workbook") -> None:
        self.head = book.add_format({"bold": True, "bottom": 1, "text_wrap": True, "valign": "bottom"})
        self.text = book.add_format({"valign": "top", "text_wrap": True})
        self.quoted = book.add_format({"valign": "top", "text_wrap": True, "quote_prefix": True})
        self.note = book.add_format({"italic": True})
        self._numbers = [
            book.add_format({"num_format": "0." + "0" * d if d else "0", "valign": "top"})
            for d in range(_MOST_DECIMALS + 1)
        ]

    def number(self, column: Column) -> "Format":
        return self._numbers[min(max(column.decimals or 0, 0), _MOST_DECIMALS)]


def _fill(sheet: "Worksheet", table: Table, formats: _Formats) -> None:
    for c, column in enumerate(table.columns):
        sheet.write_string(0, c, column.title, formats.head)
        sheet.set_column(c, c, _width(column, [row[c] for row in table.rows]))
    for r, row in enumerate(table.rows, start=1):
        for c, (cell, column) in enumerate(zip(row, table.columns, strict=True)):
            _write_cell(sheet, r, c, cell, column, formats)
    for i, note in enumerate(table.notes):
        sheet.write_string(
            len(table.rows) + 2 + i, 0, note, formats.quoted if is_formula(note) else formats.note
        )
    sheet.freeze_panes(1, 1)


def _write_cell(sheet: "Worksheet", row: int, at: int, cell: Cell, column: Column, formats: _Formats) -> None:
    if cell is None:
        return
    if isinstance(cell, bool):
        sheet.write_string(row, at, shown(cell, column), formats.text)
    elif isinstance(cell, str):
        sheet.write_string(row, at, cell, formats.quoted if is_formula(cell) else formats.text)
    else:
        sheet.write_number(row, at, cell, formats.number(column))


def _width(column: Column, cells: Sequence[Cell]) -> int:
    """Wide enough for the longest cell, within reason; a long heading wraps instead."""
    longest_word = max((len(word) for word in column.title.split()), default=0)
    longest_cell = max((len(shown(cell, column)) for cell in cells), default=0)
    return min(max(_NARROWEST, longest_word + 1, longest_cell + 1), _WIDEST)


def _sheet_name(title: str, taken: Sequence[str]) -> str:
    """A name a spreadsheet accepts: at most 31 characters, none of the forbidden ones, not used yet."""
    name = "".join("_" if c in "[]:*?/\\" or ord(c) < 32 else c for c in title).strip("'")[:31].strip("'")
    name = name or "Table"
    n = 2
    while name.casefold() in {t.casefold() for t in taken}:
        name = f"{name[:27]} {n}"
        n += 1
    return name
