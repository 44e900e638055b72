"""Where a run begins and ends between two rows, and the power on either side.

A run's edge is a step of power: the level outside holds up to the edge, the level inside from it. A straight
line from the last quiet sample to the first heating one would give half of the heater's first interval away.
"""

import math

import numpy as np
from attrs import frozen

from core.energy.timing import HOLE, shortest_interval_s
from core.traces import Trace

#: standard uncertainty of an edge's place in a row of an averaged log that holds it, in parts of the interval
MIXED_ROW_PLACE = 1 / math.sqrt(3)


@frozen
class Edge:
    """An edge of a run.

    Parameters
    ----------
    at_s : float
        [s]
    row_before, row_after : int
        Rows of the trace that bound it.
    before_w, after_w : float
        Power held from the row before up to the edge, and from the edge to the row after. [W]
    u_s : float
        Standard uncertainty of the place. [s]
    mixed_w : float or None
        Averaged logs: the level outside the run. The energy of the row that holds the edge is known as a
        whole, so a misplaced edge moves only these watts, from whichever side it is looked at. [W]
    """

    at_s: float
    row_before: int
    row_after: int
    before_w: float
    after_w: float
    u_s: float
    mixed_w: float | None = None


def edge(trace: Trace, at_s: float, *, is_start: bool, is_step: bool) -> Edge:
    """The edge of an interval at `at_s`.

    Parameters
    ----------
    trace : Trace
    at_s : float
        [s]
    is_start : bool
        Whether the interval begins here.
    is_step : bool
        Whether the power steps here (the edge of a run); otherwise the trace is followed as it is and the
        moment is taken as exact.
    """
    time, power = trace.time_s, trace.power_w
    row_before = _row_before(trace, at_s)
    row_after = min(row_before + 1, time.size - 1)
    if row_after == row_before:
        level = float(power[row_before])
        return Edge(at_s, row_before, row_after, level, level, 0.0)
    if row_before == 0 and at_s <= float(time[0]):
        is_step = False  # nothing is known of before the first row
    left_s, right_s = at_s - float(time[row_before]), float(time[row_after]) - at_s
    length_s = left_s + right_s
    before, after = float(power[row_before]), float(power[row_after])
    gap = next((g for g in trace.gaps if g.start_s <= at_s <= g.end_s), None)
    if is_step and gap is not None:
        if is_start:
            # a run begins with its first heating, at full power more likely than not
            after = (after + max(after, trace.top_w)) / 2
        return Edge(at_s, row_before, row_after, before, after, min(length_s, gap.seconds) / math.sqrt(12))
    if trace.kind == "on_change":
        # a change is reported at the poll after it; a change that took longer to come is no edge but a gap
        poll_s = shortest_interval_s(trace)
        if is_step and right_s <= poll_s * 1.5:
            return Edge(at_s, row_before, row_after, before, after, poll_s / math.sqrt(12))
        return Edge(at_s, row_before, row_after, before, before, 0.0)
    if trace.kind == "averaged" and length_s <= HOLE * trace.median_s:
        return _mixed(trace, at_s, row_before, left_s, right_s, is_start=is_start, is_step=is_step)
    if not is_step:
        here = before + (after - before) * left_s / length_s
        return Edge(at_s, row_before, row_after, (before + here) / 2, (here + after) / 2, 0.0)
    return Edge(at_s, row_before, row_after, before, after, length_s / math.sqrt(12))


def _row_before(trace: Trace, at_s: float) -> int:
    """Last row on the near side of a moment.

    A sample taken at the very moment belongs to the side whose level it shows.
    """
    time, power = trace.time_s, trace.power_w
    row = max(int(np.searchsorted(time, at_s, side="left")) - 1, 0)
    at = row + 1
    if trace.kind == "sampled" and at + 1 < time.size and float(time[at]) == at_s:
        is_like_before = abs(power[at] - power[row]) < abs(power[at] - power[at + 1])
        return at if is_like_before else row
    return row


def _mixed(
    trace: Trace,
    at_s: float,
    row_before: int,
    left_s: float,
    right_s: float,
    *,
    is_start: bool,
    is_step: bool,
) -> Edge:
    """An edge in a row of an averaged log: that row's energy is shared out by the level outside the run."""
    power = trace.power_w
    row_after = row_before + 1
    mixed = float(power[row_after])
    if not is_step:
        return Edge(at_s, row_before, row_after, mixed, mixed, 0.0, mixed)
    u_s = MIXED_ROW_PLACE * (left_s + right_s)
    if left_s <= 0 or right_s <= 0:
        # the very moment of a row: the neighbouring row may still hold some of the other side
        beyond = min(float(power[row_before]), mixed)
        return Edge(at_s, row_before, row_after, mixed, mixed, u_s, beyond)
    energy_j = mixed * (left_s + right_s)
    if is_start:
        outside = min(float(power[row_before]), mixed)
        before, after = outside, (energy_j - outside * left_s) / right_s
    else:
        outside = min(float(power[min(row_after + 1, power.size - 1)]), mixed)
        before, after = (energy_j - outside * right_s) / left_s, outside
    return Edge(at_s, row_before, row_after, before, after, u_s, outside)
