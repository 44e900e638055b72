"""Workbooks in the binary form of a spreadsheet, written record by record for the tests.

Numbers and lengths of records have seven bits a byte, lowest first; texts are a count of characters and
UTF-16 (Microsoft, [MS-XLSB], from memory).
"""

import io
import struct
import zipfile
from collections.abc import Mapping

Cell = str | float
Place = tuple[int, int]

_RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships"
_OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships"
_TYPES = (
    '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">'
    '<Default Extension="bin" ContentType="application/vnd.ms-excel.sheet.binary.macroEnabled.main"/>'
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>'
    "</Types>"
)


def _seven_bits(value: int) -> bytes:
    out = bytearray()
    while value > 0x7F:
        out.append(value & 0x7F | 0x80)
        value >>= 7
    return bytes([*out, value])


def _record(kind: int, body: bytes = b"") -> bytes:
    return _seven_bits(kind) + _seven_bits(len(body)) + body


def _text(text: str) -> bytes:
    return struct.pack("<I", len(text)) + text.encode("utf-16-le")


def _cell(column: int, value: Cell) -> bytes:
    place = struct.pack("<II", column, 0)
    if isinstance(value, str):
        return _record(6, place + _text(value))
    return _record(5, place + struct.pack("<d", value))


def _sheet(cells: Mapping[Place, Cell]) -> bytes:
    rows = sorted({row for row, _ in cells})
    columns = [column for _, column in cells]
    size = struct.pack("<IIII", rows[0], rows[-1], min(columns), max(columns))
    out = [_record(129), _record(148, size), _record(145)]
    for row in rows:
        out.append(_record(0, struct.pack("<IIHIHI", row, 0, 300, 0, 0, 0)))
        out += [_cell(c, v) for (r, c), v in sorted(cells.items()) if r == row]
    return b"".join([*out, _record(146), _record(130)])


def _relations(kind: str, target: str) -> str:
    relation = f'<Relationship Id="rId1" Type="{_OFFICE}/{kind}" Target="{target}"/>'
    return f'<?xml version="1.0"?><Relationships xmlns="{_RELATIONS}">{relation}</Relationships>'


def workbook(cells: Mapping[Place, Cell], is_1904: bool = False, relation: str = "rId1") -> bytes:
    """A workbook of one sheet, which it calls `relation`, with these cells, by (row, column) from 0."""
    flags = _record(153, struct.pack("<III", int(is_1904), 0, 0))
    bundle = _record(156, struct.pack("<II", 0, 1) + _text(relation) + _text("Log"))
    book = b"".join([_record(131), flags, _record(143), bundle, _record(144), _record(132)])
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("[Content_Types].xml", _TYPES)
        archive.writestr("_rels/.rels", _relations("officeDocument", "xl/workbook.bin"))
        archive.writestr("xl/workbook.bin", book)
        archive.writestr("xl/_rels/workbook.bin.rels", _relations("worksheet", "worksheets/sheet1.bin"))
        archive.writestr("xl/worksheets/sheet1.bin", _sheet(cells))
    return out.getvalue()
