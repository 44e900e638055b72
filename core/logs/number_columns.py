"""What columns of numbers look like: counted rows or days, a current, the power of another machine.

Rules: only values are looked at; a column's heading is asked elsewhere.
"""

from collections.abc import Sequence
from itertools import pairwise

from core.logs import numbers

#: values that are looked at one by one
_LOOKED_AT = 200
#: rows that must be numbered one by one before a column is held to do nothing else
_FEWEST_NUMBERED = 8
#: highest power over that of standby at least, and of one machine over that of another at most
_SWING, _LIKE = 4.0, 8.0


def count_days(cells: Sequence[str]) -> bool:
    """Whether cells count days: small whole numbers that never fall, and grow by one."""
    values = [numbers.parse(c, ".")[0] for c in cells[:_LOOKED_AT] if c.strip()]
    return (
        bool(values)
        and all(v in range(1000) for v in values)
        and all(b - a in (0, 1) for a, b in pairwise(values))
    )


def rises(cells: Sequence[str]) -> bool:
    """Whether each value is larger than the one before."""
    values = [numbers.parse(c, ".")[0] for c in cells[:200]]
    return len(values) > 2 and all(b > a for a, b in pairwise(values))


def counts_rows(values: list[float]) -> bool:
    """Whether a column numbers its rows; an energy never grows by just one each time."""
    return len(values) >= _FEWEST_NUMBERED and all(b - a == 1.0 for a, b in pairwise(values[:_LOOKED_AT]))


def is_power_too(power: Sequence[str], other: Sequence[str], decimal: str) -> bool:
    """Whether cells are the powers of another machine: written alike, of like size, with a standby too.

    Parameters
    ----------
    power, other : cells
    decimal : {".", ","}
    """
    a, b = finite(power, decimal), finite(other, decimal)
    if not a or len(b) < 0.5 * len(a) or min(a) < 0 or min(b) < 0:
        return False
    places = [max(len(c.strip().rpartition(decimal)[2]) * (decimal in c) for c in x) for x in (power, other)]
    low, high = sorted((max(a), max(b)))
    swings = all(max(v) > _SWING * sorted(v)[len(v) // 20] for v in (a, b))
    return places[0] == places[1] and high <= _LIKE * low and swings


def finite(cells: Sequence[str], decimal: str) -> list[float]:
    """Values of the cells that are numbers."""
    return [v for v, _, verdict in (numbers.parse(c, decimal) for c in cells) if verdict == numbers.FINE]


def is_current(values: list[float], all_values: list[list[float]]) -> bool:
    """Whether a column is the current of another that is a power: what there is a mains voltage between."""
    return any(
        len(other) == len(values) > 1
        and min(values) >= 0.0
        and sum(40.0 <= p <= 270.0 * i + 1.0 for p, i in zip(other, values, strict=True) if i > 0.05)
        > 0.8 * max(1, sum(i > 0.05 for i in values))
        and sum(values) > 0
        and 40.0 <= sum(other) / sum(values) <= 260.0
        for other in all_values
        if other is not values
    )
