"""Sum, mean, part, variance, median and percentile of one column: NumPy's own numbers without their overhead.

NumPy's functions of these names look after axes, weights, other methods and subclasses first. A run asks for
dozens of them over some hundred rows, and then that takes several times as long as the numbers do. These
give the same to the last bit.
"""

import math

import numpy as np
from numpy.typing import NDArray

from core.traces import F64


def total(values: F64) -> float:
    """Sum, as `numpy.sum` has it.

    Parameters
    ----------
    values : ndarray, shape (n,)

    Examples
    --------
    >>> total(np.array([1.0, 2.0, 6.0]))
    9.0
    """
    return float(np.add.reduce(values))


def average(values: F64) -> float:
    """Mean, as `numpy.mean` has it.

    Parameters
    ----------
    values : ndarray, shape (n,)
        At least one.

    Examples
    --------
    >>> average(np.array([1.0, 2.0, 6.0]))
    3.0
    """
    return total(values) / values.size


def part_of(is_so: NDArray[np.bool_]) -> float:
    """Part of the rows of which something is so, 0 to 1: `numpy.mean` of them.

    Parameters
    ----------
    is_so : ndarray of bool, shape (n,)
        At least one.

    Examples
    --------
    >>> part_of(np.array([True, False, False, True]))
    0.5
    """
    return int(np.count_nonzero(is_so)) / is_so.size


def variance(values: F64) -> float:
    """Mean squared distance from the mean, as `numpy.var` has it.

    Parameters
    ----------
    values : ndarray, shape (n,)
        At least one.

    Examples
    --------
    >>> variance(np.array([1.0, 3.0]))
    1.0
    """
    apart = values - average(values)
    return average(apart * apart)


def median(values: F64) -> float:
    """Median, as `numpy.median` has it.

    Parameters
    ----------
    values : ndarray, shape (n,)
        At least one, all finite.

    Examples
    --------
    >>> median(np.array([4.0, 1.0, 2.0, 9.0]))
    3.0
    """
    return median_of_ordered(np.partition(values, ((values.size - 1) // 2, values.size // 2)))


def median_of_ordered(ordered: F64) -> float:
    """The same of values that are in order already, in their midst at least.

    Parameters
    ----------
    ordered : ndarray, shape (n,)
        At least one, rising.
    """
    low, high = float(ordered[(ordered.size - 1) // 2]), float(ordered[ordered.size // 2])
    return low if ordered.size % 2 else (low + high) / 2


def percentile(values: F64, percent: float) -> float:
    """Value that so many percent of the values lie below, as `numpy.percentile` has it.

    Parameters
    ----------
    values : ndarray, shape (n,)
        At least one, all finite.
    percent : float
        0 to 100.

    Examples
    --------
    >>> percentile(np.array([10.0, 30.0, 20.0]), 75)
    25.0
    """
    place = percent / 100 * (values.size - 1)
    low = math.floor(place)
    high = min(low + 1, values.size - 1)
    return percentile_of_ordered(np.partition(values, (low, high)), percent)


def percentile_of_ordered(ordered: F64, percent: float) -> float:
    """The same of values that are in order already, there at least.

    Parameters
    ----------
    ordered : ndarray, shape (n,)
        At least one, rising.
    percent : float
        0 to 100.
    """
    place = percent / 100 * (ordered.size - 1)
    low = math.floor(place)
    high = min(low + 1, ordered.size - 1)
    along, from_, to = place - low, float(ordered[low]), float(ordered[high])
    # from the nearer of the two, as NumPy rounds it
    return from_ + (to - from_) * along if along < 0.5 else to - (to - from_) * (1 - along)


def counts_between(ordered: F64, edges: F64) -> NDArray[np.intp]:
    """How many values lie from each edge to the next, as `numpy.histogram` has it.

    Parameters
    ----------
    ordered : ndarray, shape (n,)
        Rising.
    edges : ndarray, shape (m,)
        Rising, two at least; the last one belongs to the last bin.

    Returns
    -------
    ndarray, shape (m - 1,)

    Examples
    --------
    >>> counts_between(np.array([1.0, 2.0, 2.5, 3.0]), np.array([1.0, 2.0, 3.0])).tolist()
    [1, 3]
    """
    below = ordered.searchsorted(edges)
    below[-1] = ordered.searchsorted(edges[-1], side="right")
    return below[1:] - below[:-1]
