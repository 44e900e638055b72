"""Whether the heater of a run was switched off before its end: what the last samples say against the others.

Where slow samples are a lottery, the mean power from tick to tick tells more of a run's last minutes than the
few samples in them, unless the heater is off by then, as for last layers on a bed that may cool. Samples that
find it off to the end are a sign of that in so far as they seldom do for so long elsewhere in the run,
whether by chance or as they keep step with its cycle.
"""

import math

import numpy as np
from attrs import frozen

from core.averages import percentile
from core.energy.edges import Edge
from core.energy.integral import between_rows_wh
from core.energy.settling import Settled
from core.energy.ticks import Used
from core.traces import Trace
from core.units import J_PER_WH

#: runs in which the heater is switched off before the end; judgement, no source
EXPECTED = 0.05


@frozen
class SwitchedOff:
    """The row from which on the heater is not found on any more, and how likely it was switched off then."""

    row: int
    chance: float


def switched_off(trace: Trace, first_row: int, last_row: int) -> SwitchedOff:
    """Whether the heater was switched off before the end of a run.

    Parameters
    ----------
    trace : Trace
    first_row, last_row : int
        Rows inside the run, after its first heating.

    Examples
    --------
    >>> watts = [60.0, 300.0, 60.0] * 20
    >>> switched_off(Trace.of(range(0, 1800, 30), watts), 0, 59).chance < 0.1
    True
    >>> found = switched_off(Trace.of(range(0, 1800, 30), watts[:-9] + [60.0] * 9), 0, 59)
    >>> found.row, found.chance > 0.5
    (50, True)
    """
    power = trace.power_w[first_row : last_row + 1]
    is_on = power > (percentile(power, 3) + float(power.max())) / 2
    on = np.flatnonzero(is_on)
    rows = power.size - 1 - int(on[-1]) if on.size else 0
    if rows == 0 or on.size == power.size:
        return SwitchedOff(last_row, 0.0)
    # how many stretches of so many rows are off elsewhere
    off = np.diff(np.concatenate(([-1], on))) - 1
    places = max(int(on[-1]) + 2 - rows, 1)
    alike = int(np.maximum(off - rows + 1, 0).sum())
    # one that was not seen may still come: those that overlap tell little more than one
    by_chance = (alike + 1) / (places + rows)
    return SwitchedOff(last_row - rows + 1, EXPECTED / (EXPECTED + (1 - EXPECTED) * by_chance))


def more_at_end(trace: Trace, first_row: int, end: Edge, known: Settled) -> Used:
    """What to add, below 0, to the end of a run from a row on, as its heater may have been off by then.

    Parameters
    ----------
    trace : Trace
    first_row : int
        At or after the first row of `known`.
    end : Edge
    known : Settled
        By which the end of the run is told if the heater switched to the last.
    """
    off = switched_off(trace, known.first_row, end.row_before)
    row = max(first_row, off.row)
    rest_s = end.at_s - float(trace.time_s[end.row_before])
    seen_wh = between_rows_wh(trace, row, end.row_before) + end.before_w * rest_s / J_PER_WH
    told_wh = known.used(end.at_s - float(trace.time_s[row]), seen_wh).energy_wh
    more_wh = seen_wh - told_wh
    return Used(off.chance * more_wh, math.sqrt(off.chance * (1 - off.chance)) * abs(more_wh))
