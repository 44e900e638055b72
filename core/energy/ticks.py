"""Ticks of an energy counter: the rows at which its reading has just moved on.

Theory. A counter of step q that shows k q says only that the energy lies in [k q, (k + 1) q]. The row at
which it ticks says more: one row earlier the energy was still below k q, so it now lies within h = min(q,
energy of the last interval) above k q: the middle of that, u = h / sqrt(12). A tick outside a run is worth
more than one inside: the trace is quiet there, and where exactly the run's edge lies hardly matters.
"""

import math

import numpy as np
from attrs import frozen

from core.energy.integral import between_rows_wh
from core.energy.sampling import Roughness
from core.traces import Trace
from core.units import J_PER_WH

#: how many ticks on either side of an edge are used; more cost time and lie further away
TICKS = 3


@frozen
class Tick:
    """A row at which the counter has moved on since the row `previous`, by `step_wh` to `counter_wh`. [Wh]"""

    row: int
    previous: int
    counter_wh: float
    step_wh: float


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
        moved = np.flatnonzero(np.diff(counter[known]) > 0)
        split = int(np.searchsorted(known[moved + 1], row, side="right"))
        everything = low == first_row and high == last_row
        if everything or (split >= TICKS and moved.size - split >= TICKS):
            near = moved[max(0, split - TICKS) : split + TICKS]
            pairs = zip(known[near].tolist(), known[near + 1].tolist(), strict=True)
            return [Tick(b, a, float(counter[b]), float(counter[b] - counter[a])) for a, b in pairs]
        width *= 8


def reading_at(trace: Trace, tick: Tick, around: Roughness) -> tuple[float, float]:
    """The counter at a tick and its standard uncertainty. [Wh], [Wh]

    Parameters
    ----------
    trace : Trace
    tick : Tick
    around : Roughness
        What the power does between the samples there.
    """
    q = trace.counter_step_wh
    if tick.step_wh > 1.5 * q:
        # several steps at once: only the step itself is known
        return tick.counter_wh + q / 2, q / math.sqrt(12)
    from_s, to_s = float(trace.time_s[tick.previous]), float(trace.time_s[tick.row])
    most_wh = between_rows_wh(trace, tick.previous, tick.row)
    if trace.kind != "averaged":
        # a pulse may have come and gone between the two samples
        most_wh = max(most_wh, around.high_w * (to_s - from_s) / J_PER_WH)
    # rounding hides up to half a step of watts
    most_wh += trace.resolution_w / 2 * (to_s - from_s) / J_PER_WH
    h = min(q, most_wh)
    return tick.counter_wh + h / 2, h / math.sqrt(12)
