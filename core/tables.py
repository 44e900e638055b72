"""Tables as values, and the text they become: CSV, Markdown, HTML, a terminal's.

Rules: files hold the point as decimal mark and full precision, so that others can check the numbers;
text that a spreadsheet would take for a formula is made harmless.
"""

import csv
import io
import re
from collections.abc import Sequence
from html import escape
from typing import Literal

from attrs import frozen

from core.language import tr

Cell = str | float | int | bool | None

#: a spreadsheet takes text that begins with one of these for a formula, in some languages also the wide forms
#: (common practice, no source)
_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "\n", "\uff1d", "\uff0b", "\uff0d", "\uff20")
#: and where a semicolon or a tab parts cells, what follows one begins a cell
_CELL_INSIDE = re.compile(r"(?<=\S)([;\t\r\n]\s*)(?=[=+\-@])")
_MADE_HARMLESS = re.compile(r"(?<=\S)([;\t\r\n]\s*)'(?=[=+\-@])")


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
    >>> harmless("Alder;=1+1")
    "Alder;'=1+1"
    """
    inside = _CELL_INSIDE.sub(r"\1'", text)
    return f"'{inside}" if is_formula(text) else inside


def as_written(text: str) -> str:
    """Text of a file as it was before `harmless`.

    Examples
    --------
    >>> as_written("'=1+1"), as_written("'tis"), as_written("Alder;'=1+1")
    ('=1+1', "'tis", 'Alder;=1+1')
    """
    outside = text[1:] if text.startswith("'") and is_formula(text[1:]) else text
    return _MADE_HARMLESS.sub(r"\1", outside)


def is_formula(text: str) -> bool:
    """Whether a spreadsheet might run the text, also after the blanks that it strips."""
    return text.startswith(_FORMULA_STARTS) or text.lstrip().startswith(_FORMULA_STARTS)


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


def to_markdown(table: Table, level: int = 2) -> str:
    """The table as Markdown, rounded for reading, with its notes under a heading of this level."""
    head = "| " + " | ".join(_escaped(c.title) for c in table.columns) + " |"
    rule = "| " + " | ".join("---:" if c.align == "right" else "---" for c in table.columns) + " |"
    body = [
        "| " + " | ".join(_escaped(shown(cell, c)) for cell, c in zip(row, table.columns, strict=True)) + " |"
        for row in table.rows
    ]
    notes = [f"\n{_escaped(note)}" for note in table.notes]
    return "\n".join([f"{'#' * level} {_escaped(table.title)}\n", head, rule, *body, *notes]) + "\n"


def to_html(table: Table) -> str:
    """The table as HTML, rounded for reading, every text escaped; notes stand below it."""
    head = "".join(
        f'<th scope="col" class="{c.align}" align="{c.align}">{escape(c.title)}</th>' for c in table.columns
    )
    body = "\n".join(f"<tr>{_html_row(row, table.columns)}</tr>" for row in table.rows)
    title = f"<caption>{escape(table.title)}</caption>\n"
    notes = "".join(f"\n<p>{escape(note)}</p>" for note in table.notes)
    return f"<table>\n{title}<thead><tr>{head}</tr></thead>\n<tbody>\n{body}\n</tbody>\n</table>{notes}"


def _html_row(row: Sequence[Cell], columns: Sequence[Column]) -> str:
    # the attribute beside the class: mail programs, spreadsheets and rich text know no style sheet of ours
    return "".join(
        f'<td class="{c.align}" align="{c.align}">{escape(shown(cell, c))}</td>'
        for cell, c in zip(row, columns, strict=True)
    )


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
        return tr("yes") if cell else tr("no")
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
