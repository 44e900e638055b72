"""Ticks of an energy counter: the rows at which its reading has just moved on.

Theory. A counter of step q that shows k q says only that the energy lies in [k q, (k + 1) q]. The row at
which it ticks says more: one row earlier the energy was still below k q, so it now lies within h = min(q,
energy of the last interval) above k q: the middle of that, u = h / sqrt(12). A tick outside a run is worth
more than one inside: the trace is quiet there, and where exactly the run's edge lies hardly matters.
"""

import math

import numpy as np
from attrs import frozen

from core.energy.edges import Edge
from core.energy.integral import between_rows_wh
from core.energy.sampling import Roughness
from core.energy.timing import shortest_interval_s
from core.traces import Trace, steps_of
from core.units import J_PER_WH

#: how many ticks on either side of an edge are used; more cost time and lie further away
TICKS = 3
#: of a step of the counter, what is taken to be used where the power reads 0
UNSEEN_PART = 0.01


@frozen
class Tick:
    """A row at which the counter has moved on since the row `previous`, by `step_wh` to `counter_wh`. [Wh]"""

    row: int
    previous: int
    counter_wh: float
    step_wh: float


def standing(trace: Trace, first_row: int, last_row: int) -> list[Tick]:
    """The first and the last row of a stretch in which the counter is read and never moves.

    Between them nothing ticked, so at the first the counter lies above its step by at most what the later
    part of the stretch left of it, and at the last by at least what was used since the first.

    Parameters
    ----------
    trace : Trace
        With a counter.
    first_row, last_row : int
        Both included.
    """
    counter = trace.counter_wh
    assert counter is not None
    known = first_row + np.flatnonzero(np.isfinite(counter[first_row : last_row + 1]))
    rows = sorted({int(row) for row in known[[0, -1]]}) if known.size else []
    # that the counter stands tells of its step alone, like a jump over several of them
    return [Tick(row, row, float(counter[row]), math.inf) for row in rows]


@frozen
class Used:
    """What was used between two rows, and its standard uncertainty. [Wh]"""

    energy_wh: float
    u_wh: float


def ticks_near(trace: Trace, row: int, first_row: int, last_row: int) -> list[Tick]:
    """The ticks nearest to a row, up to `TICKS` on either side.

    Parameters
    ----------
    trace : Trace
        Without a counter there are none.
    row : int
    first_row, last_row : int
        Rows that may be used, both included.
    """
    counter = trace.counter_wh
    if counter is None or last_row < first_row:
        return []
    width = 64
    while True:
        low, high = max(first_row, row - width), min(last_row, row + width)
        known = low + np.flatnonzero(np.isfinite(counter[low : high + 1]))
        moved = np.flatnonzero(steps_of(counter[known]) > 0)
        split = int(np.searchsorted(known[moved + 1], row, side="right"))
        everything = low == first_row and high == last_row
        if everything or (split >= TICKS and moved.size - split >= TICKS):
            near = moved[max(0, split - TICKS) : split + TICKS]
            pairs = zip(known[near].tolist(), known[near + 1].tolist(), strict=True)
            return [Tick(b, a, float(counter[b]), float(counter[b] - counter[a])) for a, b in pairs]
        width *= 8


def ticks_around(trace: Trace, begin: Edge, finish: Edge, breaks: tuple[int, ...]) -> list[Tick]:
    """Ticks near the edges of a run, and near every reset between them, by row; none that spans a reset.

    On a side of the run where nothing ticks, the rows where the counter stands still take their place.

    Parameters
    ----------
    trace : Trace
    begin, finish : Edge
        Of the run.
    breaks : tuple of int
        First rows after each reset.
    """
    if trace.counter_wh is None:
        return []
    start, end = begin.row_before, finish.row_after
    first_row = max((row for row in breaks if row <= start), default=0)
    last_row = min((row - 1 for row in breaks if row > end), default=trace.time_s.size - 1)
    places = (start, finish.row_before, *(row for row in breaks if start < row <= end))
    found = {t.row: t for place in places for t in ticks_near(trace, place, first_row, last_row)}
    ticks = [found[row] for row in sorted(found) if not any(found[row].previous < b <= row for b in breaks)]
    # a counter that does not move in the run is broken, or too coarse to tell anything
    if not any(start < tick.row < end for tick in ticks):
        return ticks
    if ticks[0].row > start:
        begins_at_0 = trace.counter_wh[first_row] == 0
        ahead = [_set_to_0(first_row)] if begins_at_0 else standing(trace, first_row, start)
        ticks = [*ahead, *ticks]
    if ticks[-1].row < end:
        ticks = [*ticks, *standing(trace, end, last_row)]
    return ticks


def _set_to_0(row: int) -> Tick:
    """A counter that begins at 0: it may have been set to it, or else stand anywhere in its first step."""
    return Tick(row, row, 0.0, 0.0)


def break_rows(trace: Trace) -> tuple[int, ...]:
    """First rows after each reset of the counter."""
    return tuple(int(np.searchsorted(trace.time_s, at_s, side="left")) for at_s in trace.counter_breaks_s)


def reading_at(trace: Trace, tick: Tick, used: Used) -> tuple[float, float]:
    """The counter at a tick and its standard uncertainty. [Wh], [Wh]

    Parameters
    ----------
    trace : Trace
    tick : Tick
    used : Used
        Since the row before the tick.

    Notes
    -----
    The tick lies anywhere in what was used, and the more was used the likelier is a tick: so the energy since
    the tick is m2 / (2 m1) on average, and its square m3 / (3 m1), by the moments of what was used.
    """
    q = trace.counter_step_wh
    if tick.step_wh > 1.5 * q:
        # several steps at once: only the step itself is known
        return tick.counter_wh + q / 2, q / math.sqrt(12)
    used_wh, u_wh = min(max(used.energy_wh, 0.0), q), used.u_wh
    if used_wh <= 0:
        used_wh = max(u_wh, UNSEEN_PART * q)
    square = used_wh**2 + u_wh**2
    mean_wh = min(square / (2 * used_wh), q / 2)
    variance = used_wh**2 / 3 + u_wh**2 - mean_wh**2
    return tick.counter_wh + mean_wh, math.sqrt(min(max(variance, square / 12), q**2 / 12))


def used_before(trace: Trace, tick: Tick, around: Roughness, *, is_over_edge: bool = False) -> Used:
    """What was used since the row before a tick.

    Parameters
    ----------
    trace : Trace
    tick : Tick
    around : Roughness
        What the power does between the samples there.
    is_over_edge : bool
        Whether a run begins or ends in between, where the samples tell only the levels on both sides.
    """
    seconds = float(trace.time_s[tick.row] - trace.time_s[tick.previous])
    energy_wh = between_rows_wh(trace, tick.previous, tick.row)
    u_w = math.sqrt(around.factor * around.mean_square_step_w2)
    unseen_s = 0.0
    if trace.kind == "sampled":
        unseen_s = seconds
        if is_over_edge:
            outside_w = float(min(trace.power_w[tick.previous], trace.power_w[tick.row]))
            energy_wh = (around.mean_w + outside_w) / 2 * seconds / J_PER_WH
            u_w = math.hypot(u_w, (around.mean_w - outside_w) / math.sqrt(12))
        else:
            # what the two samples do not tell, the mean of the time around them does
            told = around.autocorrelation
            energy_wh = told * energy_wh + (1 - told) * around.mean_w * seconds / J_PER_WH
    elif trace.kind == "on_change":
        unseen_s = min(seconds, shortest_interval_s(trace))
    # rounding hides up to half a step of watts
    rounding_wh = trace.resolution_w / math.sqrt(12) * seconds / J_PER_WH
    return Used(energy_wh, math.hypot(u_w * unseen_s / J_PER_WH, rounding_wh))
