"""Tables as values, and the files they are written to: CSV, Markdown, spreadsheet.

Rules: files hold the point as decimal mark and full precision, so that others can check the numbers;
text that a spreadsheet would take for a formula is made harmless.
"""

import csv
import io
from collections.abc import Sequence
from pathlib import Path
from typing import Literal

from attrs import frozen

Cell = str | float | int | bool | None

#: a spreadsheet takes text that begins with one of these for a formula (common practice, no source)
_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")


@frozen
class Column:
    """A column: its key in files, its title with unit for readers, and how its cells line up."""

    key: str
    title: str
    align: Literal["left", "right"] = "right"
    decimals: int | None = None


@frozen
class Table:
    """Rows under columns, with lines of text above and below."""

    title: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[Cell, ...], ...]
    notes: tuple[str, ...] = ()


def harmless(text: str) -> str:
    """Text that no spreadsheet runs: an apostrophe is put before what looks like a formula.

    Examples
    --------
    >>> harmless("=1+1")
    "'=1+1"
    >>> harmless("Alder")
    'Alder'
    """
    return f"'{text}" if text.lstrip(" ").startswith(_FORMULA_STARTS) else text


def to_csv(table: Table) -> str:
    """The table's rows as RFC 4180 text with keys as header; unknown is an empty cell."""
    out = io.StringIO()
    writer = csv.writer(out)
    writer.writerow([column.key for column in table.columns])
    for row in table.rows:
        writer.writerow([_plain(cell) for cell in row])
    return out.getvalue()


def _plain(cell: Cell) -> str:
    if cell is None:
        return ""
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    if isinstance(cell, str):
        return harmless(cell)
    return str(cell) if isinstance(cell, int) else format(cell, ".10g")


def to_markdown(table: Table) -> str:
    """The table as Markdown, rounded for reading, with its title and notes."""
    head = "| " + " | ".join(_escaped(c.title) for c in table.columns) + " |"
    rule = "| " + " | ".join("---:" if c.align == "right" else "---" for c in table.columns) + " |"
    body = [
        "| " + " | ".join(_escaped(shown(cell, c)) for cell, c in zip(row, table.columns, strict=True)) + " |"
        for row in table.rows
    ]
    notes = [f"\n{_escaped(note)}" for note in table.notes]
    return "\n".join([f"## {_escaped(table.title)}\n", head, rule, *body, *notes]) + "\n"


def _escaped(text: str) -> str:
    flat = " ".join(text.split())
    for sign in ("\\", "|", "<", "`", "*", "_", "["):
        flat = flat.replace(sign, "\\" + sign)
    return flat


def shown(cell: Cell, column: Column) -> str:
    """A cell as people read it, rounded to the column's digits."""
    from core.formatting import UNKNOWN, number

    if cell is None:
        return UNKNOWN
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    if isinstance(cell, str):
        return cell
    return number(float(cell), column.decimals if column.decimals is not None else 0)


def to_text(table: Table) -> str:
    """The table in columns of equal width, for a terminal."""
    cells = [[shown(cell, c) for cell, c in zip(row, table.columns, strict=True)] for row in table.rows]
    widths = [
        max([len(column.title), *(len(row[i]) for row in cells)]) for i, column in enumerate(table.columns)
    ]

    def line(texts: Sequence[str]) -> str:
        padded = (
            text.ljust(width) if column.align == "left" else text.rjust(width)
            for text, width, column in zip(texts, widths, table.columns, strict=True)
        )
        return "  ".join(padded).rstrip()

    return "\n".join([line([c.title for c in table.columns]), *(line(row) for row in cells)])


def write_spreadsheet(path: Path, tables: Sequence[Table]) -> None:
    """Write tables as the sheets of one workbook: numbers as numbers, text as text, never a formula or link.

    Raises
    ------
    OSError
        If the file cannot be written.
    """
    import xlsxwriter
    from xlsxwriter.exceptions import FileCreateError

    options = {"strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
    book = xlsxwriter.Workbook(str(path), options)
    bold = book.add_format({"bold": True, "bottom": 1})
    formats = {d: book.add_format({"num_format": "0." + "0" * d if d else "0"}) for d in range(7)}
    for table in tables:
        sheet = book.add_worksheet(_sheet_name(table.title, [s.get_name() for s in book.worksheets()]))
        for c, column in enumerate(table.columns):
            sheet.write_string(0, c, column.title, bold)
            sheet.set_column(c, c, max(10, len(column.title) + 2))
        for r, row in enumerate(table.rows, start=1):
            for c, (cell, column) in enumerate(zip(row, table.columns, strict=True)):
                _write_cell(sheet, r, c, cell, formats.get(column.decimals or 0))
        for i, note in enumerate(table.notes):
            sheet.write_string(len(table.rows) + 2 + i, 0, note)
        sheet.freeze_panes(1, 1)
    try:
        book.close()
    except FileCreateError as error:
        raise OSError(str(error)) from error


def _write_cell(sheet: object, row: int, column: int, cell: Cell, number_format: object) -> None:
    from xlsxwriter.worksheet import Worksheet

    assert isinstance(sheet, Worksheet)
    if cell is None:
        return
    if isinstance(cell, bool):
        sheet.write_string(row, column, "yes" if cell else "no")
    elif isinstance(cell, str):
        sheet.write_string(row, column, cell)
    else:
        sheet.write_number(row, column, cell, number_format)


def _sheet_name(title: str, taken: Sequence[str]) -> str:
    """A name a spreadsheet accepts: at most 31 characters, none of the forbidden ones, not used yet."""
    name = "".join("_" if c in "[]:*?/\\" else c for c in title).strip("'")[:31] or "Table"
    n = 2
    while name.casefold() in {t.casefold() for t in taken}:
        name = f"{name[:27]} {n}"
        n += 1
    return name
