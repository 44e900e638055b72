"""Rows above the values: headings, units, words that qualify headings; how they fit."""

from collections import Counter
from collections.abc import Sequence

from core.logs.cell_kinds import cell_kind
from core.logs.number_columns import counts_rows
from core.logs.words import meaning, unit_of

#: what a second line of headings may say besides a unit
_AGGREGATES = frozenset({"last", "first", "smp", "sum", "count", "instantaneous", "letzter", "dernier"})
_TIMES = frozenset({"time", "date", "clock time"})
_NUMBERS = frozenset(
    {"power", "energy", "voltage", "current", "temperature", "apparent power", "power factor"}
)
#: rows of values that headings are held against
_HELD_AGAINST = 50


def is_values(row: list[str]) -> bool:
    """Whether a row holds values rather than headings: a number or stamp, and at most words beside it."""
    kinds = [cell_kind(c) for c in row]
    good = sum(k in ("number", "stamp") for k in kinds)
    return good >= 1 and (good >= sum(k == "text" for k in kinds) or "stamp" in kinds)


def over_several(found: list[str], units: list[str]) -> list[str]:
    """Headings of which one stands over several columns of other units, the rest of them left empty."""
    out = list(found)
    for i in range(1, min(len(out), len(units))):
        if (
            not out[i]
            and out[i - 1]
            and units[i].strip()
            and units[i] != units[i - 1]
            and units[i - 1].strip()
        ):
            out[i] = out[i - 1]
    return out


def fit(row: list[str], width: int) -> list[str] | None:
    """`row` at `width` cells when only empty cells have to be added or dropped."""
    if len(row) == width:
        return row
    if len(row) == width + 1 and not row[-1].strip():
        return row[:width]
    if len(row) == width - 1 and len(row) > 1:
        return [*row, ""]
    return None


def is_units(row: list[str]) -> bool:
    """Whether a row holds the units of the headings above it."""
    cells = [c.strip().strip('"').strip(" []()") for c in row]
    full = [c for c in cells if c and c != "-"]
    known = [c for c in full if unit_of(c)[1] or c in ("%", "°C", "date", "time", "hh:mm:ss")]
    return bool(full) and len(known) >= max(1, len(full) - 1) and any(unit_of(c)[1] for c in full)


def is_qualifying(row: list[str]) -> bool:
    """Whether a row only says of each heading that it is a mean, a maximum or the like."""
    full = [c.strip().strip('"').strip(" []()") for c in row if c.strip()]
    return bool(full) and all(c in _AGGREGATES or meaning(c).statistic for c in map(str.casefold, full))


def heading_above(rows: list[list[str]], i: int, width: int) -> bool:
    """Whether one of the two rows above is a row of headings."""
    for j in range(i - 1, max(-1, i - 3), -1):
        above = fit(rows[j], width)
        if above is not None and not is_values(above):
            told = [meaning(c.strip('"')).quantity for c in above if unit_of(c.strip(" []()"))[1] == ""]
            if any(told):
                return True
    return False


def beside_row_names(names: Sequence[str], rows: Sequence[Sequence[str]]) -> list[str]:
    """Headings at the width of the rows, where they are one fewer: the first column or the last has none.

    Programs for statistics write the names of rows in a first column and leave its heading out. The
    cells tell which of the two it is: times stand below the word for a time, numbers below other words.

    Parameters
    ----------
    names : headings
    rows : rows of values, each of one cell more
    """
    columns = [list(c) for c in zip(*rows[:_HELD_AGAINST], strict=True)]
    if not columns or not any(c.strip(' "') for c in columns[-1]):
        return [*names, ""]
    before, after = _agreement(names, columns[1:]), _agreement(names, columns[:-1])
    first = [c.strip(' "') for c in columns[0]]
    is_counted = all(c.isdecimal() for c in first) and counts_rows([float(c) for c in first])
    return ["", *names] if before > after or (before == after and is_counted) else [*names, ""]


def _agreement(names: Sequence[str], columns: Sequence[Sequence[str]]) -> int:
    """Headings whose cells are of their kind, less those whose cells are not."""
    out = 0
    for name, cells in zip(names, columns, strict=True):
        quantity = meaning(name).quantity
        kind = Counter(cell_kind(c) for c in cells if c.strip()).most_common(1)
        if kind and quantity in _TIMES:
            out += {"stamp": 1, "number": 0}.get(kind[0][0], -1)
        elif kind and quantity in _NUMBERS:
            out += 1 if kind[0][0] == "number" else -1
    return out
