"""Rows of a trace as the run finder wants them: even enough that a window can be counted in rows.

An on-change log is silent while nothing changes, so windows counted in its rows mean nothing. Its values are
held onto a one-second grid; the middle of a long silence, which can only be quiet, is thinned out, so that a
log of months stays small.
"""

import math
from itertools import pairwise

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from core.traces import F64, Sampling, Trace

#: the time over which something is quiet or not [s]
WINDOW_S = 45.0
#: fewest rows of a window
WINDOW_ROWS = 4
#: spacing of the grid that on-change values are held onto [s]
HELD_S = 1.0
#: a silence keeps the full grid this long at either end, and one row in `THINNED_S` between [s]
SILENCE_S = 120.0
THINNED_S = 60.0
#: a row stands for no more than this many ordinary intervals, whatever gap follows it
LONGEST_INTERVALS = 5.0


@frozen(eq=False)
class Rows:
    """Power by time with the time each row stands for.

    Parameters
    ----------
    time_s, power_w : ndarray, shape (n,)
        [s], [W]
    weight_s : ndarray, shape (n,)
        Time that each row stands for. [s]
    interval_s : float
        Ordinary interval between rows. [s]
    window : int
        Rows of a window of `WINDOW_S`.
    step_w : float
        Resolution of the power. [W]
    kind : {"sampled", "averaged", "on_change"}
        What a value of the log stands for.
    """

    time_s: F64
    power_w: F64
    weight_s: F64
    interval_s: float
    window: int
    step_w: float
    kind: Sampling


def rows_of(trace: Trace, start_s: float = -math.inf, end_s: float = math.inf) -> Rows:
    """The rows of `trace` from `start_s` to `end_s`, an on-change trace held onto a grid of one second."""
    first, last = np.searchsorted(trace.time_s, [start_s, end_s])
    time_s, power_w, interval_s = trace.time_s[first:last], trace.power_w[first:last], trace.median_s
    longest_s = LONGEST_INTERVALS * interval_s
    if trace.kind == "on_change" and time_s.size > 1:
        time_s, power_w = _held(time_s, power_w)
        interval_s, longest_s = HELD_S, THINNED_S
    interval_s = interval_s or 1.0
    steps_s = np.minimum(np.diff(time_s), longest_s)
    weight_s = np.r_[interval_s, steps_s] if trace.kind == "averaged" else np.r_[steps_s, interval_s]
    return Rows(
        time_s,
        power_w,
        weight_s[: time_s.size],
        interval_s,
        max(WINDOW_ROWS, round(WINDOW_S / interval_s)),
        trace.resolution_w,
        trace.kind,
    )


def _held(time_s: F64, power_w: F64) -> tuple[F64, F64]:
    """On-change values held onto a one-second grid that keeps every row of the log."""
    silences = np.flatnonzero(np.diff(time_s) > 2 * SILENCE_S + THINNED_S)
    edges = np.r_[0, silences + 1, time_s.size]
    pieces: list[NDArray[np.float64]] = []
    for first, last in pairwise(edges.tolist()):
        a, b = time_s[first], time_s[last - 1]
        head = a if first == 0 else a - SILENCE_S
        tail = b if last == time_s.size else b + SILENCE_S
        pieces.append(np.arange(head, tail + HELD_S / 2, HELD_S))
        if last < time_s.size:
            pieces.append(np.arange(tail + THINNED_S, time_s[last] - SILENCE_S - HELD_S, THINNED_S))
    grid = np.unique(np.concatenate([*pieces, time_s]))
    return grid, power_w[np.searchsorted(time_s, grid, side="right") - 1]


def rolling(values: F64, window: int) -> tuple[F64, F64]:
    """Centred rolling minimum and maximum over `window` rows."""
    from scipy.ndimage import maximum_filter1d, minimum_filter1d

    return (
        minimum_filter1d(values, window, mode="nearest"),
        maximum_filter1d(values, window, mode="nearest"),
    )


def widened(mask: NDArray[np.bool_], window: int) -> NDArray[np.bool_]:
    """True for every row of a centred window whose middle is True."""
    from scipy.ndimage import maximum_filter1d

    return np.asarray(maximum_filter1d(mask, window, mode="constant"), dtype=np.bool_)


def quantile(values: F64, weight_s: F64, q: float) -> float:
    """Quantile of `values` by time."""
    order = np.argsort(values, kind="stable")
    total = np.cumsum(weight_s[order])
    return float(values[order[min(np.searchsorted(total, q * total[-1]), order.size - 1)]])


def spans(mask: NDArray[np.bool_]) -> NDArray[np.intp]:
    """First and last row of each stretch of True, shape (k, 2)."""
    padded = np.r_[False, mask, False]
    turns = np.flatnonzero(padded[1:] != padded[:-1])
    return np.column_stack([turns[::2], turns[1::2] - 1])
