"""Energy of an interval of a trace by its power column, and what each row of it stands for.

Rules: what one value stands for depends on the kind of log. A sampled value is the power at an instant
(trapezoid between values), an averaged value stands for the interval before it, a value of an on-change log
holds until the next. Only the rows that an interval touches are looked at, so a year of log costs nothing
here.
"""

import numpy as np
from attrs import frozen

from core.traces import F64, Trace, steps_of
from core.units import J_PER_WH


@frozen
class Pieces:
    """An interval of a trace cut at its rows: piece `i` lasts ``seconds[i]`` at a mean of ``mean_w[i]``.

    Parameters
    ----------
    start_s, seconds, mean_w : ndarray, shape (n,)
        [s], [s], [W]
    step_w : ndarray, shape (n,)
        How far the power moved between the rows that bound the piece (0 where a value simply holds). [W]
    """

    start_s: F64
    seconds: F64
    mean_w: F64
    step_w: F64

    @property
    def energy_wh(self) -> float:
        """All pieces together. [Wh]"""
        return float(np.dot(self.seconds, self.mean_w)) / J_PER_WH


EMPTY = Pieces(np.empty(0), np.empty(0), np.empty(0), np.empty(0))


def rows_around(trace: Trace, start_s: float, end_s: float) -> tuple[int, int]:
    """First and last row (both included) that bound the interval, kept inside the trace."""
    first = int(np.searchsorted(trace.time_s, start_s, side="right")) - 1
    last = int(np.searchsorted(trace.time_s, end_s, side="left"))
    return max(first, 0), min(last, trace.time_s.size - 1)


def pieces(trace: Trace, start_s: float, end_s: float) -> Pieces:
    """Cut an interval of a trace into the pieces between its rows.

    Parameters
    ----------
    trace : Trace
    start_s, end_s : float
        Interval on the trace's own clock; what lies before the first or after the last row holds their
        values. [s]

    Returns
    -------
    Pieces

    Examples
    --------
    >>> pieces(Trace.of([0, 10, 20], [100.0, 100.0, 40.0]), 0, 20).mean_w.tolist()
    [100.0, 70.0]
    """
    if end_s <= start_s or not trace.time_s.size:
        return EMPTY
    first, last = rows_around(trace, start_s, end_s)
    inner = trace.time_s[first : last + 1]
    inner = inner[(inner > start_s) & (inner < end_s)]
    times = np.concatenate(([start_s], inner, [end_s]))
    seconds = steps_of(times)
    middle = times[:-1] + seconds / 2
    if trace.kind == "sampled":
        powers = np.interp(times, trace.time_s[first : last + 1], trace.power_w[first : last + 1])
        return Pieces(times[:-1], seconds, (powers[1:] + powers[:-1]) / 2, steps_of(powers))
    if trace.kind == "averaged":
        rows = np.searchsorted(trace.time_s, middle, side="left")
    else:
        rows = np.searchsorted(trace.time_s, middle, side="right") - 1
    rows = np.clip(rows, 0, trace.time_s.size - 1)
    mean = trace.power_w[rows]
    return Pieces(times[:-1], seconds, mean, np.zeros_like(mean))


def by_power_wh(trace: Trace, start_s: float, end_s: float) -> float:
    """Energy of an interval by the power column alone. [Wh]

    Straight integration with nothing added at the edges, so intervals that touch add up exactly.

    Parameters
    ----------
    trace : Trace
    start_s, end_s : float
        [s]

    Examples
    --------
    >>> by_power_wh(Trace.of([0, 1800, 3600], [100.0, 100.0, 100.0]), 0, 3600)
    100.0
    """
    return pieces(trace, start_s, end_s).energy_wh


def between_rows_wh(trace: Trace, first_row: int, last_row: int) -> float:
    """Energy between two rows by the power column alone: what `by_power_wh` gives, without cutting rows. [Wh]

    Parameters
    ----------
    trace : Trace
    first_row, last_row : int

    Examples
    --------
    >>> between_rows_wh(Trace.of([0, 1800, 3600], [100.0, 100.0, 100.0]), 0, 2)
    100.0
    """
    if last_row <= first_row:
        return 0.0
    seconds = steps_of(trace.time_s[first_row : last_row + 1])
    power = trace.power_w[first_row : last_row + 1]
    if trace.kind == "sampled":
        return float(seconds.dot(power[1:]) + seconds.dot(power[:-1])) / 2 / J_PER_WH
    return float(seconds.dot(power[1:] if trace.kind == "averaged" else power[:-1])) / J_PER_WH


def mean_w(trace: Trace, start_s: float, end_s: float) -> float:
    """Time-weighted mean power of an interval. [W]

    Raises
    ------
    ValueError
        If the interval is empty.
    """
    if end_s <= start_s:
        raise ValueError("an interval needs a length")
    return by_power_wh(trace, start_s, end_s) * J_PER_WH / (end_s - start_s)
