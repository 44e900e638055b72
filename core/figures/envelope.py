"""A trace as few points as a screen can show, with no spike lost.

Rules: where several samples fall into one column of pixels, the lowest and the highest of them are drawn;
where there are few, the samples themselves are given, joined as their kind demands. A gap wider than a column
stays open.
"""

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from core.traces import F64, Sampling, Trace

#: below this many samples a column of pixels the samples themselves are drawn
SPARSE = 2


@frozen
class Envelope:
    """Points of a line to draw; NaN in both columns lifts the pen.

    ``time_s``, ``power_w`` : ndarray, shape (k,). [s], [W]
    ``is_reduced`` : whether several samples stand behind a point.
    """

    time_s: F64 = field(eq=False, repr=False)
    power_w: F64 = field(eq=False, repr=False)
    is_reduced: bool


def envelope(trace: Trace, start_s: float, end_s: float, columns: int) -> Envelope:
    """The part of a trace between two times, for a picture `columns` pixels wide.

    Parameters
    ----------
    trace : Trace
    start_s, end_s : float
        On the trace's own clock, ``start_s < end_s``. One sample beyond either end is kept so that the line
        reaches the border. [s]
    columns : int
        Width of the picture, at least 1. [px]

    Returns
    -------
    Envelope
        At most about four points a column.

    Examples
    --------
    >>> envelope(Trace.of([0, 10, 20], [5, 9, 5]), 0, 20, 100).power_w
    array([5., 9., 5.])
    """
    if columns < 1 or not start_s < end_s:
        raise ValueError("an envelope needs at least one column and start_s < end_s")
    first = max(0, int(np.searchsorted(trace.time_s, start_s, side="right")) - 1)
    last = min(trace.time_s.size, int(np.searchsorted(trace.time_s, end_s, side="left")) + 1)
    time_s, power_w = trace.time_s[first:last], trace.power_w[first:last]
    is_reduced = time_s.size > SPARSE * columns
    gaps = _open_gaps(trace, time_s, (end_s - start_s) / columns if is_reduced else 0.0)
    if is_reduced:
        rows = _extreme_rows(time_s, power_w, columns)
        seen = np.searchsorted(time_s, gaps.ravel())
        kind: Sampling = "sampled"  # between columns a plain line is as good as a step
        if trace.kind == "on_change":
            # but for a value that was held longer: no slope may join what was before it with what came after
            kind = trace.kind
            held = np.flatnonzero(np.diff(time_s) > (end_s - start_s) / columns)
            seen = np.concatenate((seen, held, held + 1))
        rows = np.unique(np.concatenate((rows, seen)))
        time_s, power_w = time_s[rows], power_w[rows]
    else:
        kind = trace.kind
    breaks = np.searchsorted(time_s, gaps[:, 1])
    time_s, power_w, breaks = _stepped(time_s, power_w, kind, breaks)
    return Envelope(np.insert(time_s, breaks, np.nan), np.insert(power_w, breaks, np.nan), is_reduced)


def _extreme_rows(time_s: F64, power_w: F64, columns: int) -> NDArray[np.intp]:
    from tsdownsample import MinMaxDownsampler

    # The library needs two columns, gives rows as unsigned integers, and its classes have no types.
    rows = MinMaxDownsampler().downsample(time_s, power_w, n_out=2 * max(columns, 2))  # type: ignore[no-untyped-call]
    return np.concatenate(([0, time_s.size - 1], rows.astype(np.intp)))


def _open_gaps(trace: Trace, time_s: F64, narrowest_s: float) -> F64:
    """Start and end of the gaps between these samples that are wide enough to be seen, shape (k, 2). [s]"""
    gaps = np.array([(gap.start_s, gap.end_s) for gap in trace.gaps], dtype=np.float64).reshape(-1, 2)
    if not gaps.size or not time_s.size:
        return gaps
    seen = (gaps[:, 0] >= time_s[0]) & (gaps[:, 1] <= time_s[-1])
    kept: F64 = gaps[seen & (gaps[:, 1] - gaps[:, 0] > narrowest_s)]
    return kept


def _stepped(
    time_s: F64, power_w: F64, kind: Sampling, breaks: NDArray[np.intp]
) -> tuple[F64, F64, NDArray[np.intp]]:
    """Corners of the staircase that averaged and on-change values are; none over a gap."""
    if kind == "sampled" or time_s.size < 2:
        return time_s, power_w, breaks
    times, powers = np.empty(2 * time_s.size - 1), np.empty(2 * time_s.size - 1)
    times[::2], powers[::2] = time_s, power_w
    times[1::2] = time_s[1:] if kind == "on_change" else time_s[:-1]
    powers[1::2] = power_w[:-1] if kind == "on_change" else power_w[1:]
    times[2 * breaks - 1] = powers[2 * breaks - 1] = np.nan
    return times, powers, np.empty(0, dtype=np.intp)
