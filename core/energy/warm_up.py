"""The first heating of a run, when its heater is on without a break and slow samples miss nothing.

A heater that later switches is a lottery for slow samples, and what a few of them may miss is judged by the
whole run. While the machine heats up there is nothing to miss: sample after sample finds the heater on. So
they do for a while where they keep step with a heater that switches; but that comes again later in the run,
and the counter then grows by less than they say.
"""

import numpy as np
from attrs import frozen

from core.averages import percentile
from core.energy.integral import between_rows_wh
from core.energy.lottery import CLOSE_S
from core.energy.sampling import Roughness, roughness
from core.traces import Trace

#: so many samples in a row that find the heater on are no chance
FEWEST_ROWS = 4
#: and so many times as many as are found later
LONGER = 2.0
#: what rounding of power and counter may add to what the place of a tick leaves open, in parts of that
MARGIN = 0.2


@frozen
class WarmUp:
    """Rows of a run up to ``last_row`` in which its heater is on without a break, and their roughness.

    A ``last_row`` before the run's first row: there is no such heating.
    """

    last_row: int
    around: Roughness


def warm_up(trace: Trace, first_row: int, last_row: int) -> WarmUp:
    """The first heating of a run.

    Parameters
    ----------
    trace : Trace
        For any but slow samples there is nothing to miss anyway.
    first_row, last_row : int
        Rows inside the run.

    Examples
    --------
    >>> watts = [300.0] * 8 + [60.0, 300.0] * 12
    >>> warm_up(Trace.of(range(0, 960, 30), watts), 0, 31).last_row
    6
    """
    power = trace.power_w[first_row : last_row + 1]
    none = WarmUp(first_row - 1, Roughness(0.0, 0.0, 1.0, 0.0, 0.0))
    if trace.kind != "sampled" or trace.median_s < CLOSE_S or power.size < FEWEST_ROWS:
        return none
    is_on = power > (percentile(power, 3) + float(power.max())) / 2
    rows = int(np.argmin(is_on)) if not is_on.all() else 0
    off = np.flatnonzero(~is_on)
    # where samples keep step with a heater, they find it on for as long in the midst of the run
    later = int(np.diff(np.append(off, is_on.size)).max()) - 1 if off.size else 0
    if rows < max(FEWEST_ROWS, LONGER * later):
        return none
    # the last one that finds it on may already be of a pulse
    last = first_row + rows - 2
    if not _agrees(trace, first_row, last):
        return none
    return WarmUp(last, roughness(trace, first_row, last))


def _agrees(trace: Trace, first_row: int, last_row: int) -> bool:
    """Whether a counter grew by what the samples say, as far as its ticks can tell."""
    if trace.counter_wh is None:
        return True
    known = first_row + np.flatnonzero(np.isfinite(trace.counter_wh[first_row : last_row + 1]))
    ticks = known[1:][np.diff(trace.counter_wh[known]) > 0]
    if ticks.size < 2:
        return True
    first, last = int(ticks[0]), int(ticks[-1])
    grown_wh = float(trace.counter_wh[last] - trace.counter_wh[first])
    # either tick came anywhere in the interval before its row
    open_wh = max(between_rows_wh(trace, row - 1, row) for row in (first, last))
    return abs(between_rows_wh(trace, first, last) - grown_wh) <= open_wh * (1 + MARGIN)
