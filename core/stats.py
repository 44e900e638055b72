"""Tests and intervals between machines.

Thin layers over scipy, so that one file says which test is meant. The spread of the runs is
all that these tests know; what two meters add is in `core.uncertainty.ratio`.
"""

import math
from collections.abc import Sequence
from functools import lru_cache

import numpy as np
from attrs import frozen

from core.traces import F64

#: two-sided level of all tests and intervals
ALPHA = 0.05
#: chance of showing a difference that is there
POWER = 0.80
#: more runs than this nobody makes; beyond it the answer is "too many"
MOST_RUNS = 1000
#: points of the studentized range's two integrals, and how many spreads the inner one reaches to either side
SPREAD_POINTS, VALUE_POINTS = 48, 64
FARTHEST = 8.0


@frozen
class Interval:
    """A mean with the half-width of its 95 % interval and the standard deviation it comes from."""

    mean: float
    half_width: float
    standard_deviation: float
    df: float


@frozen
class Difference:
    """Mean of the first group minus mean of the second, with its 95 % interval and its test."""

    difference: float
    low: float
    high: float
    statistic: float
    df: float
    p: float

    @property
    def is_shown(self) -> bool:
        """Whether the interval leaves 0 out."""
        return not self.low <= 0 <= self.high


def _columns(groups: Sequence[Sequence[float]]) -> list[F64]:
    columns = [np.asarray(group, dtype=np.float64) for group in groups]
    if any(column.size < 2 for column in columns):
        raise ValueError("each group needs two values or more")
    return columns


def t_interval(values: Sequence[float]) -> Interval:
    """95 % interval of a mean by Student's t.

    Parameters
    ----------
    values : sequence of float
        At least two.

    Raises
    ------
    ValueError
        With fewer than two values there is no spread.

    Examples
    --------
    >>> round(t_interval([1.0, 2.0, 3.0]).half_width, 3)
    2.484
    """
    from scipy.special import stdtrit

    (column,) = _columns([values])
    deviation = float(column.std(ddof=1))
    df = column.size - 1
    half = float(stdtrit(df, 1 - ALPHA / 2)) * deviation / math.sqrt(column.size)
    return Interval(float(column.mean()), half, deviation, df)


def welch(first: Sequence[float], second: Sequence[float]) -> Difference:
    """Welch's test of two groups whose spreads may differ.

    References
    ----------
    .. [1] B. L. Welch, "The generalization of 'Student's' problem when several different population
    variances are
       involved", Biometrika 34 (1947) 28-35.
    """
    from scipy.special import stdtr, stdtrit

    a, b = _columns([first, second])
    difference, u, df = _welch_terms(a, b)
    half = float(stdtrit(df, 1 - ALPHA / 2)) * u if u > 0 else 0.0
    t = difference / u if u > 0 else math.copysign(math.inf, difference) if difference else 0.0
    p = float(2 * stdtr(df, -abs(t))) if u > 0 else float(difference == 0)
    return Difference(difference, difference - half, difference + half, t, df, p)


def _welch_terms(a: F64, b: F64) -> tuple[float, float, float]:
    """Difference of means, its standard error, and Welch's degrees of freedom."""
    va, vb = a.var(ddof=1) / a.size, b.var(ddof=1) / b.size
    if va + vb > 0:
        df = (va + vb) ** 2 / (va**2 / (a.size - 1) + vb**2 / (b.size - 1))
    else:
        df = a.size + b.size - 2.0
    return float(a.mean() - b.mean()), math.sqrt(va + vb), float(df)


@lru_cache(maxsize=65_536)
def repeats_p(first: tuple[float, ...], second: tuple[float, ...], groups: int) -> float:
    """Chance of two groups lying as far apart as they do, were there no difference, by the repeats alone.

    Welch's test where the two are all there are; Games and Howell's where they are two of more, which is
    adjusted for all pairs by itself.

    Parameters
    ----------
    first, second : tuple of float
        At least two values each.
    groups : int
        Groups that are compared with each other, these two among them.

    References
    ----------
    .. [1] P. A. Games and J. F. Howell, "Pairwise multiple comparison procedures with unequal N's and/or
       variances", Journal of Educational Statistics 1 (1976) 113-125.
    """
    if groups <= 2:
        return welch(first, second).p
    a, b = _columns([first, second])
    difference, u, df = _welch_terms(a, b)
    if u <= 0:
        return float(difference == 0)
    return range_beyond(abs(difference) / u * math.sqrt(2), groups, df)


@lru_cache(maxsize=8)
def _nodes(count: int) -> tuple[F64, F64]:
    """Points in 0 to 1 and their weights for an integral by Gauss and Legendre."""
    points, weights = np.polynomial.legendre.leggauss(count)
    return (points + 1) / 2, weights / 2


def range_beyond(q: float, groups: int, df: float) -> float:
    """Chance of a studentized range beyond `q`.

    The double integral of the definition on fixed points, some hundred times as quick as an adaptive one: the
    inner over the lowest value, the outer over the quantiles of the estimated spread.

    Parameters
    ----------
    q : float
    groups : int
    df : float
        Degrees of freedom of the spread.

    Examples
    --------
    >>> round(range_beyond(3.877, 3, 10.0), 3)
    0.05
    """
    from scipy.special import gammaincinv, ndtr

    # the square keeps points near 0, where the spread of few degrees of freedom changes most
    at, weight = _nodes(SPREAD_POINTS)
    spread = np.sqrt(gammaincinv(df / 2, at**2) * 2 / df)
    weight = weight * 2 * at
    z, z_weight = _nodes(VALUE_POINTS)
    z = (2 * z - 1) * FARTHEST
    density = groups * np.exp(-(z**2) / 2) / math.sqrt(2 * math.pi) * 2 * FARTHEST * z_weight
    # all others between the lowest value and so far above it
    inside = (ndtr(z[None, :] + q * spread[:, None]) - ndtr(z)[None, :]) ** (groups - 1) @ density
    return float(min(max(weight @ (1 - inside), 0.0), 1.0))


def holm(p_values: Sequence[float]) -> tuple[float, ...]:
    """Values of p adjusted for several claims on one page, in the order given.

    References
    ----------
    .. [1] S. Holm, "A simple sequentially rejective multiple test procedure", Scandinavian Journal of
    Statistics 6
       (1979) 65-70.

    Examples
    --------
    >>> holm([0.01, 0.04, 0.03])
    (0.03, 0.06, 0.06)
    """
    count = len(p_values)
    adjusted = [0.0] * count
    highest = 0.0
    for rank, index in enumerate(sorted(range(count), key=lambda i: p_values[i])):
        highest = max(highest, min(1.0, (count - rank) * p_values[index]))
        adjusted[index] = round(highest, 15)
    return tuple(adjusted)
