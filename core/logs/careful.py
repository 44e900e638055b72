"""Lines of a block looked at one by one: regular rows kept, odd ones set aside with the reason."""

from attrs import frozen

from core.logs.sniff import LONGEST_LINE, Form, split, unwrapped
from core.logs.table import Broken
from core.logs.words import meaning

_SHOWN = 300
_LOADS = ("power", "energy")


@frozen
class Rows:
    """Regular rows with their line in the block (from 0), and what was set aside; `total` lines in all.

    ``is_over`` says that other headings follow, with a table of their own below them.
    """

    kept: list[bytes]
    lines: list[int]
    broken: list[Broken]
    repeated: int
    total: int
    is_over: bool = False


def regular_rows(block: bytes, form: Form, is_over: bool = False) -> Rows:
    """Sort the lines of a block; where the table `is_over`, none of them is a row.

    Rows with one empty cell too many lose it; runs of spaces become tabs; repeated headings are counted.
    """
    delimiter = form.delimiter
    sign = delimiter.encode()
    filling = b"\t" if delimiter == " " else sign
    width = len(form.names)
    heading = None if form.header_line is None else form.names
    kept: list[bytes] = []
    lines: list[int] = []
    broken: list[Broken] = []
    repeated = 0
    raw = block.split(b"\n")
    if raw and not raw[-1]:
        raw.pop()
    for i, text in enumerate(raw):
        text = text.rstrip(b"\r")
        if not text.strip():
            continue
        if form.is_wrapped:
            text = unwrapped(text.decode("utf-8", "replace")).encode()
        if len(text) > LONGEST_LINE:
            broken.append(_broken(i, text, "row.too_long", bytes=len(text)))
            continue
        count, text = _cells(text, delimiter, sign)
        if count == width + 1 and text.endswith(sign):
            count, text = width, text[: -len(sign)]
        elif count in form.shorter and not is_over:
            count, text = width, text + filling * (width - count)
        if is_over:
            broken.append(_broken(i, text, "row.other_table"))
        elif count != width:
            broken.append(_broken(i, text, "row.cells", cells=count, usual=width))
        elif heading is not None and _is_heading(text, heading, "\t" if delimiter == " " else delimiter):
            is_over = _is_other_heading(text, heading, "\t" if delimiter == " " else delimiter)
            repeated += not is_over
            if is_over:
                broken.append(_broken(i, text, "row.other_table"))
        else:
            kept.append(text)
            lines.append(i)
    return Rows(kept, lines, broken, repeated, len(raw), is_over)


def _cells(text: bytes, delimiter: str, sign: bytes) -> tuple[int, bytes]:
    """Count of cells, and the line as Arrow reads it."""
    if delimiter == " ":
        cells = text.split()
        if b'"' in text:  # spaces within quotes part nothing
            cells = [c.encode() for c in split(text.decode("utf-8", "replace"), delimiter)]
        return len(cells), b"\t".join(cells)
    if b'"' in text:
        parts = split(text.decode("utf-8", "replace"), delimiter)
        return len(parts), sign.join(_quoted(c, delimiter) for c in parts)
    return text.count(sign) + 1, text


def _broken(line: int, text: bytes, code: str, **facts: object) -> Broken:
    return Broken(line, text[:_SHOWN].decode("utf-8", "replace"), code, tuple(sorted(facts.items())))


def _is_heading(text: bytes, heading: tuple[str, ...], delimiter: str) -> bool:
    first = heading[0].split(" [")[0]
    if not text[:200].decode("utf-8", "replace").lstrip('"# ').startswith(first[:20]):
        return False
    cells = [c.strip('"') for c in split(text.decode("utf-8", "replace"), delimiter)]
    same = sum(h == c or h.startswith(c + " [") for h, c in zip(heading, cells, strict=False))
    return same >= len(cells) / 2


def _is_other_heading(text: bytes, heading: tuple[str, ...], delimiter: str) -> bool:
    """Whether headings name other quantities than those at the top: another table begins."""
    cells = [c.strip('"') for c in split(text.decode("utf-8", "replace"), delimiter)]
    told = [(meaning(h).quantity, meaning(c).quantity) for h, c in zip(heading, cells, strict=False)]
    return any(a in _LOADS and b in _LOADS and a != b for a, b in told)


def _quoted(cell: str, delimiter: str) -> bytes:
    if delimiter in cell or '"' in cell:
        cell = '"' + cell.replace('"', '""') + '"'
    return cell.encode()
