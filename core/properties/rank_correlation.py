"""Whether one row of values rises with another: rank correlation and a difference of groups, with exact p.

Theory of operation. With few machines no distribution need be assumed: under no link every order of the
second row is as likely as any other, so p is the share of all orders that lie as far from none as what was
seen, or farther [1]_. Ties take the mean of their ranks; sums of twice the ranks are whole numbers, so that
equal orders are counted as equal. With more machines Student's t stands in for the count [2]_.

References
----------
.. [1] M. G. Kendall, *Rank Correlation Methods*, Griffin, 1948 (from memory).
.. [2] C. Spearman's coefficient tested by t with n - 2 degrees of freedom: M. G. Kendall and A. Stuart, *The
   Advanced Theory of Statistics*, vol. 2, Griffin, sec. 31.19 (from memory).
"""

import itertools
import math
from collections.abc import Sequence
from functools import lru_cache

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from core.traces import F64

#: up to so many values all orders are counted: 9! are 362 880
MOST_COUNTED = 9
#: up to so many divisions into two groups are counted, else so many are drawn
MOST_DIVISIONS = 200_000


@frozen
class RankCorrelation:
    """Spearman's coefficient of `n` pairs.

    Parameters
    ----------
    rho : float
        From -1 to 1.
    p : float
        Chance of as much or more, either way, were there no link.
    least_p : float
        The smallest p that these ranks allow in any order.
    n : int
    is_exact : bool
        Whether all orders were counted.
    ranks, other_ranks : tuple of float
        Those of both rows, ties with their mean.
    """

    rho: float
    p: float
    least_p: float
    n: int
    is_exact: bool
    ranks: tuple[float, ...]
    other_ranks: tuple[float, ...]


@frozen
class GroupDifference:
    """The means of two groups held against each other by all ways to divide the machines so.

    ``p`` is the share of the ways whose means lie as far apart or farther; ``least_p`` the smallest there is;
    ``ways`` how many were counted.
    """

    difference: float
    p: float
    least_p: float
    ways: int


def ranks_of(values: Sequence[float]) -> F64:
    """Ranks from 1, ties with the mean of theirs.

    Examples
    --------
    >>> ranks_of([10.0, 30.0, 10.0, 40.0]).tolist()
    [1.5, 3.0, 1.5, 4.0]
    """
    _, place, count = np.unique(np.asarray(values, dtype=np.float64), return_inverse=True, return_counts=True)
    found: F64 = (np.cumsum(count) - (count - 1) / 2)[place]
    return found


def spearman(values: Sequence[float], others: Sequence[float]) -> RankCorrelation | None:
    """Spearman's rank correlation of pairs, with its p.

    Parameters
    ----------
    values, others : sequence of float
        As many of each, finite.

    Returns
    -------
    RankCorrelation or None
        None with fewer than three pairs, or where either row has one value only.

    Raises
    ------
    ValueError
        If there are more of one than of the other: the caller's mistake.

    Examples
    --------
    >>> found = spearman([1, 2, 3, 4, 5], [2, 1, 4, 3, 5])
    >>> round(found.rho, 6), round(found.p, 6)
    (0.8, 0.133333)
    """
    if len(values) != len(others):
        raise ValueError("each value needs its pair")
    n = len(values)
    a, b = ranks_of(values), ranks_of(others)
    if n < 3 or np.ptp(a) == 0 or np.ptp(b) == 0:
        return None
    rho = float(np.corrcoef(a, b)[0, 1])
    if n <= MOST_COUNTED:
        p, least_p = _counted(a, b)
    else:
        p, least_p = _by_t(rho, n), 0.0
    ranks = (tuple(a.tolist()), tuple(b.tolist()))
    return RankCorrelation(min(max(rho, -1.0), 1.0), p, least_p, n, n <= MOST_COUNTED, *ranks)


def group_difference(first: Sequence[float], second: Sequence[float]) -> GroupDifference | None:
    """Mean of the first group less that of the second, and how rare so much is by chance.

    Parameters
    ----------
    first, second : sequence of float

    Returns
    -------
    GroupDifference or None
        None where a group is empty, or there are too many ways to divide the values to count.

    Examples
    --------
    >>> found = group_difference([1.0, 2.0], [5.0, 6.0, 7.0])
    >>> found.difference, found.p, found.ways
    (-4.5, 0.1, 10)
    """
    values = np.array([*first, *second], dtype=np.float64)
    size, n = len(first), len(first) + len(second)
    if not 0 < size < n or math.comb(n, size) > MOST_DIVISIONS:
        return None
    chosen = np.array(list(itertools.combinations(range(n), size)), dtype=np.intp)
    sums = values[chosen].sum(axis=1)
    # of all divisions the distance of the sum from its mean tells the order of the distances of the means
    apart = np.abs(sums - values.sum() * size / n)
    slack = 1e-9 * max(float(np.abs(values).max()), 1e-300)
    p = float(np.mean(apart >= apart[0] - slack))
    least = float(np.mean(apart >= apart.max() - slack))
    difference = float(values[:size].mean() - values[size:].mean())
    return GroupDifference(difference, p, least, int(chosen.shape[0]))


def _counted(a: F64, b: F64) -> tuple[float, float]:
    """p, and the smallest p that there is, by all orders."""
    doubled, others = (np.rint(2 * ranks).astype(np.int64) for ranks in (a, b))
    sums = others[_orders(a.size)] @ doubled
    apart = np.abs(a.size * sums - int(doubled.sum()) * int(others.sum()))
    seen = apart[0]  # the first order is the one that was seen
    return float(np.mean(apart >= seen)), float(np.mean(apart >= apart.max()))


@lru_cache(maxsize=8)
def _orders(n: int) -> NDArray[np.int8]:
    """All orders of `n` places, the given one first; shape (n!, n)."""
    orders = np.zeros((1, 1), dtype=np.int8)
    for size in range(2, n + 1):
        grown = np.empty((size * orders.shape[0], size), dtype=np.int8)
        for place in range(size):  # the largest number last comes first, which keeps the given order there
            block = grown[place * orders.shape[0] : (place + 1) * orders.shape[0]]
            at = size - 1 - place
            block[:, :at], block[:, at], block[:, at + 1 :] = orders[:, :at], size - 1, orders[:, at:]
        orders = grown
    return orders


def _by_t(rho: float, n: int) -> float:
    from scipy.special import stdtr

    if abs(rho) >= 1:
        return 0.0
    t = rho * math.sqrt((n - 2) / (1 - rho**2))
    return float(2 * stdtr(n - 2, -abs(t)))
