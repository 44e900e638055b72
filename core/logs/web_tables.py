"""Tables of HTML that are named as spreadsheets, as some meters' pages export them.

Rules: only the cells' text is taken, nothing is run or fetched; a page that is not named as a spreadsheet is
a page, and refused as one.
"""

import re
from html.parser import HTMLParser
from typing import Any

from core.logs import sheets, text
from core.logs.unpacked import Item

_NAMES = (".xls", ".xlsx", ".xlsm")
_OFFICE = b"urn:schemas-microsoft-com:office"
_TABLE = re.compile(rb"<table\b", re.IGNORECASE)
#: more than this is no export of a meter's page [bytes]
_MOST = 1 << 26
#: cells that one may stand over
_MOST_SPANNED = 100


def are_web_tables(data: bytes, name: str) -> bool:
    """Whether these are tables of HTML meant as a spreadsheet."""
    head = data[: text.HEAD]
    is_sheet = name.casefold().endswith(_NAMES) or _OFFICE in head
    return is_sheet and len(data) < _MOST and _TABLE.search(head) is not None


def open_web_tables(data: bytes, name: str) -> list[Item]:
    """The tables that hold rows of values; empty when none does."""
    decoded = text.decode(data, name)
    parser = _Tables()
    parser.feed(decoded.data.decode("utf-8", "replace"))
    parser.close()
    found = [
        item for rows in parser.tables if (item := sheets.item_of(rows, "", "an HTML table")) is not None
    ]
    if len(found) < 2:
        return found
    return [sheets.labelled(item, f"table {i}") for i, item in enumerate(found, 1)]


class _Tables(HTMLParser):
    """Rows of cells of each table; a table within a cell is a table of its own."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.tables: list[list[list[Any]]] = []
        self._open: list[list[list[Any]]] = []
        self._cell: list[str] | None = None
        self._span = 1

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag == "table":
            self._end_cell()
            self._open.append([])
            self.tables.append(self._open[-1])
        elif tag == "tr" and self._open:
            self._end_cell()
            self._open[-1].append([])
        elif tag in ("td", "th") and self._open and self._open[-1]:
            self._end_cell()
            self._cell = []
            span = dict(attrs).get("colspan") or "1"
            self._span = min(int(span), _MOST_SPANNED) if span.isdecimal() else 1
        elif tag == "br" and self._cell is not None:
            self._cell.append(" ")

    def handle_endtag(self, tag: str) -> None:
        if tag in ("td", "th", "tr", "table"):
            self._end_cell()
        if tag == "table" and self._open:
            self._open.pop()

    def handle_data(self, data: str) -> None:
        if self._cell is not None:
            self._cell.append(data)

    def _end_cell(self) -> None:
        if self._cell is None or not self._open or not self._open[-1]:
            return
        written = " ".join("".join(self._cell).split())
        self._open[-1][-1] += [written, *[""] * (self._span - 1)]
        self._cell = None
