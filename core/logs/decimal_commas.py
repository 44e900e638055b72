"""Rows whose cells are parted by commas although the numbers in them have decimal commas, and no quotes.

Rules: the headings say how many numbers were cut in two; which ones is decided only when a single way fits
all rows and agrees best with what fractions look like. Otherwise the log is refused: a guess here would be
silently wrong by powers of ten.
"""

import re
from collections import Counter
from collections.abc import Iterable, Sequence
from itertools import combinations

from attrs import frozen

from core.language import later, mark
from core.logs.cell_kinds import cell_kind
from core.logs.words import meaning

#: the mark between cells once numbers are whole again
MARK = "\t"
_LOOKED_AT = 300
_MOST_HEADINGS = 16
#: most ways of joining that are tried
_MOST_WAYS = 3000
_SHARE = 0.6
_INTEGER = re.compile(r"[+\-−]?(?:0|[1-9]\d*)")
_HEAD = re.compile(r"[+\-−]?\d+")
_FRACTION = re.compile(r"\d{1,9}")
_MISSING = re.compile(r"-*|nan|null|n/a", re.IGNORECASE)
#: distinct first digits that show a column to hold fractions
_DIGITS = 6
_FEWEST_ROWS = 8
_NUMBERS = frozenset(
    {"power", "energy", "voltage", "current", "temperature", "apparent power", "reactive power",
     "power factor", "frequency"}
)  # fmt: skip


@frozen
class Cut:
    """How the cells of a full row make its columns: ``spans`` holds 1 or 2 cells for each column."""

    spans: tuple[int, ...]
    widths: tuple[int, ...]
    reason: str

    def whole(self, text: str) -> str:
        """The text with whole numbers and cells parted by `MARK`; rows that fit no way keep their cells."""
        return "\n".join(self._line(x) for x in text.split("\n"))

    def _line(self, line: str) -> str:
        cells = [c.strip() for c in line.replace(MARK, " ").split(",")]
        spans: Sequence[int] | None = self.spans
        missing = sum(self.spans) - len(cells)
        if missing:
            ways = [w for w in _fewer(self.spans, missing) if _fits(w, cells, self.widths)]
            spans = ways[0] if len(ways) == 1 else None
        if spans is None or '"' in line or not _fits(spans, cells, self.widths):
            return MARK.join(cells)
        return MARK.join(_joined(cells, spans))


def find(lines: Sequence[str], later: Sequence[str]) -> Cut | str | None:
    """How numbers were cut in two by the commas between cells.

    Parameters
    ----------
    lines : list of str
        The first lines of the file, in order.
    later : list of str
        Lines from the middle and the end.

    Returns
    -------
    Cut, str or None
        None where cells are parted properly. The text of a row where numbers were cut, but which is unclear.
    """
    full = [x for x in (*lines, *later) if x.strip()][:_LOOKED_AT]
    if not full or sum('"' in x or ";" in x or "\t" in x or "|" in x for x in full) > 0.1 * len(full):
        return None
    rows = [[c.strip() for c in x.split(",")] for x in full]
    of_values = [i for i, r in enumerate(rows) if _is_values(r)]
    if not of_values:
        return None
    first = of_values[0]
    counted = Counter(len(rows[i]) for i in of_values)
    width, count = counted.most_common(1)[0]
    body = [rows[i] for i in of_values if len(rows[i]) == width]
    if len(body) < _FEWEST_ROWS or count < _SHARE * sum(counted.values()):
        return None
    if any("." in c and cell_kind(c) == "number" for r in body for c in r):
        return None
    head = next((r for r in reversed(rows[:first]) if len(r) > 1), None)
    while head and not head[-1]:
        head = head[:-1]
    if head is None:
        return _without_headings(body, width)
    if not 1 < len(head) < width or len(head) > _MOST_HEADINGS or width > 2 * len(head):
        return None
    return _with_headings(head, body, width, full[first])


def _is_values(row: Sequence[str]) -> bool:
    kinds = [cell_kind(c) for c in row]
    return sum(k in ("number", "stamp") for k in kinds) >= max(2, sum(k == "text" for k in kinds))


def _with_headings(
    head: Sequence[str], body: Sequence[Sequence[str]], width: int, shown: str
) -> Cut | str | None:
    quantities = [meaning(h).quantity for h in head]
    if not set(quantities) & _NUMBERS:
        return None
    cut = width - len(head)
    ways: list[tuple[int, tuple[int, ...]]] = []
    for n, picked in enumerate(combinations(range(len(head)), cut)):
        if n > _MOST_WAYS:
            return shown
        spans = tuple(2 if i in picked else 1 for i in range(len(head)))
        if all(_fits(spans, r, None) for r in body) and _agrees(spans, quantities, body):
            ways.append((_proofs(spans, body), spans))
    if not ways:
        return None
    best = max(score for score, _ in ways)
    if best < max(1, cut / 2):  # rather columns that have no heading
        return None
    left = [spans for score, spans in ways if score == best]
    if len(left) > 1:
        return shown
    names = ", ".join(f"'{h}'" for h, s in zip(head, left[0], strict=True) if s == 2)
    why = later(
        mark(
            "comma, between the cells too: {headings} headings over {width} cells, so {columns} were cut "
            "in two"
        ),
        headings=len(head),
        width=width,
        columns=names,
    )
    return Cut(left[0], _widths(left[0], body), why)


def _without_headings(body: Sequence[Sequence[str]], width: int) -> Cut | None:
    """A stamp and pairs of cells that are all halves of numbers; None where anything speaks against it."""
    lead = next((i for i, c in enumerate(body[0]) if cell_kind(c) == "number"), width)
    if lead == 0 or (width - lead) % 2 or width == lead:
        return None
    spans = (1,) * lead + (2,) * ((width - lead) // 2)
    if not all(_fits(spans, r, None) for r in body) or _proofs(spans, body) < len(spans) - lead:
        return None
    why = later(
        mark(
            "comma, between the cells too: every second number has as many digits in all rows, "
            "as fractions do"
        )
    )
    return Cut(spans, _widths(spans, body), why)


def _fits(spans: Sequence[int], cells: Sequence[str], widths: Sequence[int] | None) -> bool:
    """Whether cells can be joined so; `widths` are the most digits that fractions have."""
    if len(cells) != sum(spans):
        return False
    at = 0
    for i, span in enumerate(spans):
        if span == 2:
            if not _HEAD.fullmatch(cells[at]) or not _FRACTION.fullmatch(cells[at + 1]):
                return False
            if widths is not None and len(cells[at + 1]) > widths[i]:
                return False
        elif widths is not None and widths[i] and not _INTEGER.fullmatch(cells[at]):
            return False
        at += span
    return True


def _agrees(spans: Sequence[int], quantities: Sequence[str], body: Sequence[Sequence[str]]) -> bool:
    """Whether columns of numbers hold whole numbers where they were not cut, and no zeros before them."""
    at = 0
    for span, quantity in zip(spans, quantities, strict=True):
        cells = [r[at] for r in body]
        is_whole = all(_INTEGER.fullmatch(c) or _MISSING.fullmatch(c) for c in cells)
        if span == 1 and quantity in _NUMBERS and not is_whole:
            return False
        at += span
    return True


def _proofs(spans: Sequence[int], body: Sequence[Sequence[str]]) -> int:
    """How many fractions look like some: of one length, with zeros before them or digits of all kinds."""
    found, at = 0, 0
    for span in spans:
        if span == 2:
            cells = [r[at + 1] for r in body]
            digits = {c[0] for c in cells}
            is_even = len({len(c) for c in cells}) == 1
            has_zeros = any(len(c) > 1 and c[0] == "0" for c in cells)
            found += is_even and (has_zeros or len(digits) >= _DIGITS)
        at += span
    return found


def _widths(spans: Sequence[int], body: Sequence[Sequence[str]]) -> tuple[int, ...]:
    out, at = [], 0
    for span in spans:
        out.append(max(len(r[at + 1]) for r in body) if span == 2 else 0)
        at += span
    return tuple(out)


def _fewer(spans: Sequence[int], missing: int) -> Iterable[tuple[int, ...]]:
    """The ways in which a row can have lost `missing` fractions."""
    cut = [i for i, s in enumerate(spans) if s == 2]
    if not 0 < missing <= len(cut):
        return
    for lost in combinations(cut, missing):
        yield tuple(1 if i in lost else s for i, s in enumerate(spans))


def _joined(cells: Sequence[str], spans: Sequence[int]) -> list[str]:
    out, at = [], 0
    for span in spans:
        out.append(",".join(cells[at : at + span]))
        at += span
    return out
