"""Logs written as XML: an element for each row, or a workbook of 2003.

Rules: elements become objects as JSON has them, names within names; no declaration of a document's kind is
followed and no entity replaced. What stands before a fault in the file is read, and the fault told.
"""

from typing import Any
from xml.parsers import expat

from core.logs import nested, sheets, text
from core.logs.cell_kinds import cell_kind
from core.logs.cells import table_of_cells
from core.logs.unpacked import Item
from core.problems import Problem, Severity

#: more has to be held as a whole than is sensible [bytes]
_MOST = 1 << 26
_DEEPEST = 30
_MOST_NAMES = 2000
#: rows that are asked whether they tell of a load
_LOOKED_AT = 100
_FORM = b"urn:schemas-microsoft-com:office:spreadsheet"
_Cells = list[list[Any]]


def is_xml(data: bytes) -> bool:
    """Whether the bytes begin as XML that is no page."""
    head = data[: text.HEAD]
    begins = head.lstrip(b"\xef\xbb\xbf \r\n").startswith((b"<?xml", b"<")) or head.startswith(
        (b"\xff\xfe<\0", b"\xfe\xff\0<")
    )
    return begins and len(data) < _MOST and not (text.is_page(head) and b"<?xml" not in head[:100])


def open_xml(data: bytes, name: str) -> list[Item]:
    """The rows inside; empty when there are none."""
    builder = _Builder()
    parser = expat.ParserCreate(namespace_separator=None)
    parser.buffer_text = True
    parser.StartElementHandler = builder.start
    parser.EndElementHandler = builder.end
    parser.CharacterDataHandler = builder.words
    parser.StartDoctypeDeclHandler = builder.refuse
    problems: tuple[Problem, ...] = ()
    try:
        parser.Parse(data.lstrip(), True)
    except (expat.ExpatError, ValueError):
        line = parser.CurrentLineNumber
        problems = (Problem("log.xml_damaged", Severity.CAUTION, name, line, {"line": line}),)
        builder.close()
    if _FORM in data[: text.HEAD]:
        return _sheets(builder.whole, problems)
    rows = nested.rows_of(builder.whole)
    names = list(dict.fromkeys(k for row in rows[:5000] for k in row))
    if len(rows) < 2 or not 1 < len(names) <= _MOST_NAMES:
        return []
    if not any(map(nested.is_load, names)) and not any(map(nested.tells_load, rows[:_LOOKED_AT])):
        return []
    table = table_of_cells(names, [[row.get(n) for row in rows] for n in names])
    return [Item(table, reasons=(("layout", "XML, an element for each row"),), problems=problems)]


class _Builder:
    """Elements as objects: those of one name within another as a list, one with words alone as its words."""

    def __init__(self) -> None:
        self.whole: dict[str, Any] = {}
        self._open: list[tuple[str, dict[str, Any], list[str]]] = [("", self.whole, [])]

    def start(self, name: str, attributes: dict[str, str]) -> None:
        if len(self._open) > _DEEPEST:
            msg = "too deep"
            raise ValueError(msg)
        inner = {_bare(k): _typed(v) for k, v in attributes.items() if not k.startswith("xmlns")}
        self._open.append((_bare(name), inner, []))

    def words(self, data: str) -> None:
        self._open[-1][2].append(data)

    def end(self, _: str) -> None:
        name, inner, words = self._open.pop()
        written = "".join(words).strip()
        value: Any = inner
        if not inner:
            value = _typed(written) if written else None
        elif written:
            inner.setdefault("value", _typed(written))
        _add(self._open[-1][1], name, value)

    def close(self) -> None:
        """End what a cut file left open, without the innermost, which is not whole."""
        if len(self._open) > 1:
            self._open.pop()
        while len(self._open) > 1:
            self.end("")

    def refuse(self, *_: object) -> None:
        msg = "a document of a declared kind"
        raise ValueError(msg)


def _add(outer: dict[str, Any], name: str, value: Any) -> None:
    known = outer.get(name)
    if name not in outer:
        outer[name] = value
    elif isinstance(known, list):
        known.append(value)
    else:
        outer[name] = [known, value]


def _bare(name: str) -> str:
    return name.rpartition(":")[2]


def _typed(written: str) -> Any:
    """Words as a number where they are one as JSON has it."""
    if cell_kind(written) != "number" or len(written) > 25:
        return written
    try:
        return float(written) if "." in written or "e" in written.casefold() else int(written)
    except ValueError:
        return written


def _sheets(whole: dict[str, Any], problems: tuple[Problem, ...]) -> list[Item]:
    """The sheets of a workbook: tables of rows of cells, whose places may be told where some are left out."""
    items = []
    found = _list(whole.get("Workbook", {}).get("Worksheet"))
    for sheet in found:
        rows: _Cells = []
        for row in _list((sheet.get("Table") or {}).get("Row")):
            _placed(rows, row, [_cells(row)])
        item = sheets.item_of(rows, str(sheet.get("Name", "")) if len(found) > 1 else "", "a workbook as XML")
        if item is not None:
            items.append(sheets.labelled(item, item.label, problems))
    return items


def _cells(row: Any) -> list[Any]:
    cells: list[Any] = []
    for cell in _list(row.get("Cell") if isinstance(row, dict) else None):
        data = cell.get("Data") if isinstance(cell, dict) else None
        value = data.get("value") if isinstance(data, dict) else data
        if isinstance(data, dict) and data.get("Type") in ("String", "DateTime"):
            value = None if value is None else str(value).removesuffix(".000")
        _placed(cells, cell, [value])
    return cells


def _placed(into: list[Any], element: Any, values: list[Any]) -> None:
    """Add values, at the place that the element tells where it tells one."""
    at = element.get("Index") if isinstance(element, dict) else None
    if isinstance(at, int) and len(into) < at <= 1 << 20:
        into += [[] if isinstance(values[0], list) else None] * (at - 1 - len(into))
    into += values


def _list(value: Any) -> list[Any]:
    return value if isinstance(value, list) else [] if value is None else [value]
