"""The energy counter of a trace read at a moment between its ticks.

Theory. A counter of step q that shows k q says only that the energy lies in [k q, (k + 1) q]. The row v at
which it ticks says more: one row earlier the energy was still below k q, so it now lies within h = min(q,
energy of the last interval) above k q: the middle of that, u = h / sqrt(12). From the tick to any other
moment the power column carries on, and the uncertainty of that short stretch is added. A tick outside the
run is worth more than one inside: the trace is quiet there, and where exactly the run's edge lies hardly
matters.
"""

import math

import numpy as np
from attrs import frozen

from core.edges import Edge
from core.integral import by_power_wh
from core.sampling import Roughness, part_u_wh, path_u_wh
from core.traces import F64, Trace
from core.units import J_PER_WH

#: how many ticks on either side of an edge are tried; more cost time and lie further away
TICKS = 6


@frozen
class Tie:
    """The counter at a moment, with what its tick, the way to it and the edge's place make unsure. [Wh]"""

    counter_wh: float
    tick_u_wh: float
    path_u_wh: float
    edge_u_wh: float

    @property
    def u_wh(self) -> float:
        """All of it. [Wh]"""
        return math.hypot(self.tick_u_wh, self.path_u_wh, self.edge_u_wh)


def tie(
    trace: Trace, edge: Edge, before: Roughness, after: Roughness, first_row: int, last_row: int
) -> Tie | None:
    """The counter at an edge of a run, from the best tick near it.

    Parameters
    ----------
    trace : Trace
        With a counter.
    edge : Edge
    before, after : Roughness
        What the power does between samples on either side of the edge.
    first_row, last_row : int
        Rows that may be used (both included): nothing beyond a reset.

    Returns
    -------
    Tie or None
        None when the counter has no reading there.
    """
    counter = trace.counter_wh
    if counter is None or last_row < first_row:
        return None
    q = trace.counter_step_wh
    ties = []
    for previous, row in _ticks(counter, edge.row_before, first_row, last_row):
        side = before if row <= edge.row_before else after
        h = _tick_width_wh(trace, float(counter[row] - counter[previous]), previous, row, side)
        ties.append(_tied(trace, edge, row, float(counter[row]) + h / 2, h / math.sqrt(12), side))
    for row, side in ((edge.row_before, before), (edge.row_after, after)):
        if first_row <= row <= last_row and np.isfinite(counter[row]):
            ties.append(_tied(trace, edge, row, float(counter[row]) + q / 2, q / math.sqrt(12), side))
    return min(ties, key=lambda t: t.u_wh, default=None)


def _tick_width_wh(trace: Trace, step_wh: float, previous: int, row: int, side: Roughness) -> float:
    """How far above its reading the counter can be at a tick: a step, or what the last interval can hold."""
    if step_wh > 1.5 * trace.counter_step_wh:
        return trace.counter_step_wh
    seconds = float(trace.time_s[row] - trace.time_s[previous])
    power_wh = by_power_wh(trace, float(trace.time_s[previous]), float(trace.time_s[row]))
    # a pulse may have come and gone between the two samples, and rounding hides up to half a step of watts
    if trace.kind != "averaged":
        power_wh = max(power_wh, side.high_w * seconds / J_PER_WH)
    power_wh += trace.resolution_w / 2 * seconds / J_PER_WH
    return min(trace.counter_step_wh, power_wh)


def _ticks(counter_wh: F64, row: int, first_row: int, last_row: int) -> list[tuple[int, int]]:
    """(Row before, row) of the ticks nearest to `row`: rows at which the counter has just moved on."""
    width = 64
    while True:
        low, high = max(first_row, row - width), min(last_row, row + width)
        known = low + np.flatnonzero(np.isfinite(counter_wh[low : high + 1]))
        moved = np.flatnonzero(np.diff(counter_wh[known]) > 0)
        split = int(np.searchsorted(known[moved + 1], row, side="right"))
        everything = low == first_row and high == last_row
        if everything or (split >= TICKS and moved.size - split >= TICKS):
            near = moved[max(0, split - TICKS) : split + TICKS]
            return list(zip(known[near].tolist(), known[near + 1].tolist(), strict=True))
        width *= 8


def _tied(trace: Trace, edge: Edge, row: int, at_row_wh: float, tick_u_wh: float, side: Roughness) -> Tie:
    """Carry a counter reading from its row to the edge by the power column."""
    before = row <= edge.row_before
    if before:
        near_s = float(trace.time_s[edge.row_before])
        whole = by_power_wh(trace, float(trace.time_s[row]), near_s)
        whole += edge.before_w * (edge.at_s - near_s) / J_PER_WH
        path = path_u_wh(trace, row, edge.row_before, side)
    else:
        near_s = float(trace.time_s[edge.row_after])
        whole = -by_power_wh(trace, near_s, float(trace.time_s[row]))
        whole -= edge.after_w * (near_s - edge.at_s) / J_PER_WH
        path = path_u_wh(trace, edge.row_after, row, side)
    # from a tick outside the run only the quiet watts can be misplaced by an edge that is
    misplaced_w = edge.before_w if before else edge.after_w
    if edge.mixed_w is not None:
        misplaced_w = edge.mixed_w
    unseen = part_u_wh(trace, side, abs(edge.at_s - near_s))
    return Tie(at_row_wh + whole, tick_u_wh, math.hypot(path, unseen), misplaced_w * edge.u_s / J_PER_WH)
