"""The level with the heater off by two ways that are misled by different things.

Theory. The first way (`core.beds.rest`) takes the mean of the rows that are off. The second takes the
heater's step off each row that is on (`core.beds.steps`) and then the mean of all rows: pieces of pulses
below the half make up for those above, and a hot end that pulses by itself is in it with its mean. Where the
two lie apart, one of them was misled by pieces of pulses or by the hot end.
"""

import numpy as np

from core.averages import average
from core.beds.heater import FULL_STEP, HOT_END_CYCLE_S, Levels
from core.beds.rest import followed
from core.beds.steps import heater_step, without_heater
from core.traces import Trace

#: rows well between the pulses are all alike where this part of them is at the lower mode
QUIET = 0.97


def apart_w(found: Levels, trace: Trace) -> float:
    """How far the two ways to the level with the heater off lie apart.

    Parameters
    ----------
    found : Levels
        Of a run.
    trace : Trace
        That they were found in.

    Returns
    -------
    float
        0 where there is nothing to doubt: all rows well between the pulses are alike. 0 as well where the
        second way has too few rows, and for means over the whole interval: hardly a pulse is as long as that,
        and the second way needs some that are. [W]
    """
    # rows further apart know nothing of their neighbours' pulses
    are_neighbours = trace.median_s < HOT_END_CYCLE_S / 2
    if trace.kind == "averaged" or (are_neighbours and found.quiet_share > QUIET):
        return 0.0
    full_w = 0.0 if found.plateau_w is None else FULL_STEP * (found.plateau_w - found.off_w)
    # two heights of pieces that the samples keep step with are no step of a heater
    least_w = full_w if found.step_w >= full_w else 0.0
    step = heater_step(found.power_w, trace.resolution_w, least_w)
    if step is None or not found.is_off.any():
        return 0.0
    middles_s, means_w, _ = followed(found)
    first_w = average(np.interp(found.time_s, middles_s, means_w))
    return abs(first_w - average(without_heater(found.power_w, step)))
