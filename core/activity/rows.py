"""Rows of a trace as the run finder wants them: even enough that a window can be counted in rows.

An on-change log is silent while nothing changes, so windows counted in its rows mean nothing. Its values are
held onto a one-second grid; the middle of a long silence, which can only be quiet, is thinned out, so that a
log of months stays small.
"""

import math
from collections.abc import Callable, Iterator
from itertools import pairwise

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from core.energy.refresh import measured
from core.language import tr
from core.progress import Progress, silent
from core.traces import F64, Sampling, Trace

F32 = NDArray[np.float32]
Values = NDArray[np.float64] | NDArray[np.float32]

#: rows that are worked on at once
CHUNK = 1_000_000
#: rows that a quantile is taken of
SAMPLE = 500_000
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
        Time that each row stands for, in single precision. [s]
    interval_s : float
        Ordinary interval between rows. [s]
    window : int
        Rows of a window of `WINDOW_S`.
    step_w : float
        Resolution of the power. [W]
    kind : {"sampled", "averaged", "on_change"}
        What a value of the log stands for.
    noise_w : float
        How far power wanders in a window at rest by the meter's noise, where that was found to be much. [W]
    """

    time_s: F64
    power_w: F64
    weight_s: F32
    interval_s: float
    window: int
    step_w: float
    kind: Sampling
    noise_w: float = 0.0


def rows_of(trace: Trace, start_s: float = -math.inf, end_s: float = math.inf) -> Rows:
    """The rows of `trace` from `start_s` to `end_s`, an on-change trace held onto a grid of one second.

    Rows that only repeat what the meter measured before are left out.
    """
    trace = measured(trace)
    first, last = np.searchsorted(trace.time_s, [start_s, end_s])
    time_s, power_w, interval_s = trace.time_s[first:last], trace.power_w[first:last], trace.median_s
    longest_s = LONGEST_INTERVALS * interval_s
    if trace.kind == "on_change" and time_s.size > 1:
        time_s, power_w = _held(time_s, power_w)
        interval_s, longest_s = HELD_S, THINNED_S
    interval_s = interval_s or 1.0
    weight_s = np.full(time_s.size, interval_s, dtype=np.float32)
    steps_s = weight_s[1:] if trace.kind == "averaged" else weight_s[:-1]
    np.subtract(time_s[1:], time_s[:-1], out=steps_s, casting="same_kind")
    np.minimum(steps_s, np.float32(longest_s), out=steps_s)
    return Rows(
        time_s,
        power_w,
        weight_s,
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
        pieces.append(np.arange(head, tail, HELD_S))
        if last < time_s.size:
            pieces.append(np.arange(tail + THINNED_S, time_s[last] - SILENCE_S - HELD_S, THINNED_S))
    grid = np.unique(np.concatenate([*pieces, time_s]))
    return grid, power_w[np.searchsorted(time_s, grid, side="right") - 1]


def lowest(values: Values, window: int, progress: Progress = silent) -> F32:
    """Centred rolling minimum over `window` rows."""
    from scipy.ndimage import minimum_filter1d

    return _by_chunks(values, window, minimum_filter1d, progress)


def highest(values: Values, window: int, progress: Progress = silent) -> F32:
    """Centred rolling maximum over `window` rows."""
    from scipy.ndimage import maximum_filter1d

    return _by_chunks(values, window, maximum_filter1d, progress)


def chunks(rows: int) -> Iterator[tuple[int, int]]:
    """First row and end of each chunk of so many rows."""
    for first in range(0, rows, CHUNK):
        yield first, min(first + CHUNK, rows)


def _by_chunks(
    values: Values, window: int, rank: Callable[..., NDArray[np.float64]], progress: Progress
) -> F32:
    """A rolling filter in single precision, a chunk at a time: logs of a year need not be held twice."""
    result = np.empty(values.size, dtype=np.float32)
    for first, last in chunks(values.size):
        progress(first / values.size, tr("learning levels"))
        begin, end = max(first - window, 0), min(last + window, values.size)
        result[first:last] = rank(values[begin:end], window, mode="nearest")[first - begin : last - begin]
    return result


def widened(mask: NDArray[np.bool_], window: int) -> NDArray[np.bool_]:
    """True for every row of a centred window whose middle is True."""
    from scipy.ndimage import maximum_filter1d

    return np.asarray(maximum_filter1d(mask.view(np.uint8), window, mode="constant"), dtype=np.bool_)


def quantile(values: Values, weight_s: F32, q: float) -> float:
    """Quantile of `values` by time, of many rows by a regular sample of them."""
    if values.size > SAMPLE:
        stride = values.size // SAMPLE
        values, weight_s = values[::stride], weight_s[::stride]
    order = np.argsort(values)
    total = np.cumsum(weight_s[order], dtype=np.float64)
    return float(values[order[min(np.searchsorted(total, q * total[-1]), order.size - 1)]])


def spans(mask: NDArray[np.bool_]) -> NDArray[np.intp]:
    """First and last row of each stretch of True, shape (k, 2)."""
    padded = np.r_[False, mask, False]
    turns = np.flatnonzero(padded[1:] != padded[:-1])
    return np.column_stack([turns[::2], turns[1::2] - 1])
