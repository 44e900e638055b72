"""How large an area the cells of a spreadsheet span, before anything is made of it.

Rules: the library that reads sheets makes room for the whole rectangle between the first and the last cell. A
single cell far out would take all memory; here only places are looked at.
"""

import io
import re
import zipfile
import zlib
from collections.abc import Iterator

from core.logs import binary_sheets

_CELL = re.compile(rb'\br="([A-Z]{1,3})(\d{1,7})"')
_OPEN_CELL = re.compile(rb"<table:(table-row|table-cell|covered-table-cell|table)\b([^>]*)>", re.IGNORECASE)
_REPEATED = re.compile(rb'number-(?:columns|rows)-repeated="(\d{1,12})"')
_CHUNK = 1 << 20
#: longest tag that may lie across two pieces
_OVERLAP = 4096


def largest_area(data: bytes, enough: int) -> int:
    """Cells of the largest rectangle that a sheet of the workbook spans.

    Parameters
    ----------
    data : bytes
        An xlsx, xlsm, xlsb or ods file; 0 for what is none of these, or too damaged to tell.
    enough : int
        A binary sheet is not looked at further once it is larger than this.
    """
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            names = archive.namelist()
            areas = [_open(archive, n) for n in names if n == "content.xml"]
            sheets = [n for n in names if n.startswith("xl/worksheets/")]
            areas += [_zipped(archive, n) for n in sheets if n.endswith(".xml")]
            areas += [binary_sheets.area(archive.read(n), enough) for n in sheets if n.endswith(".bin")]
    except (zipfile.BadZipFile, zlib.error, OSError, EOFError, ValueError, LookupError, RuntimeError):
        return 0
    return max(areas, default=0)


def _pieces(archive: zipfile.ZipFile, name: str) -> Iterator[bytes]:
    """A member in pieces that begin at a tag."""
    kept = b""
    with archive.open(name) as stream:
        while chunk := stream.read(_CHUNK):
            chunk = kept + chunk
            cut = chunk.rfind(b"<")
            cut = cut if cut > len(chunk) - _OVERLAP else len(chunk)
            kept = chunk[cut:]
            yield chunk[:cut]
    yield kept


def _zipped(archive: zipfile.ZipFile, name: str) -> int:
    top, bottom, left, right = 1 << 30, 0, 1 << 30, 0
    columns: dict[bytes, int] = {}
    for piece in _pieces(archive, name):
        for letters, digits in _CELL.findall(piece):
            if letters not in columns:
                columns[letters] = _column(letters)
            row = int(digits)
            top, bottom = min(top, row), max(bottom, row)
        left, right = min([left, *columns.values()]), max([right, *columns.values()])
    return max(0, bottom - top + 1) * max(0, right - left + 1)


def _column(letters: bytes) -> int:
    place = 0
    for letter in letters:
        place = 26 * place + letter - 64
    return place


def _open(archive: zipfile.ZipFile, name: str) -> int:
    """Area of an OpenDocument sheet; what is repeated without a value counts only before a value."""
    largest = rows = row_repeat = columns = widest = 0
    waiting = 0
    for piece in _pieces(archive, name):
        for kind, rest in _OPEN_CELL.findall(piece):
            found = _REPEATED.search(rest)
            repeat = int(found.group(1)) if found else 1
            if kind == b"table":
                rows = columns = widest = waiting = 0
            elif kind == b"table-row":
                waiting, columns, row_repeat = waiting + repeat, 0, repeat
            else:
                columns += repeat
                if b"value" in rest:
                    rows, waiting = rows + max(waiting, row_repeat), 0
                    row_repeat = 0
                    widest = max(widest, columns)
                    largest = max(largest, rows * widest)
    return largest
