"""Samples that may keep step with the pulses of a bed's heater, and so meet them too often or too seldom.

Theory. How long the heater was on is read off the part of the samples that met it on. Samples that fall
anywhere in a cycle are off by a binomial lottery, the same in each stretch of a run. Samples that keep step
meet one moment of the cycle, or a few, for a long while: then whole stretches show the heater on, or off, and
the parts of samples that met it on lie further apart from stretch to stretch than chance has them. Their
scatter is what the mean of all is unsure by. Once the samples never leave their moments nothing of this is
seen, but too few pulses may be: a bed that took long to warm up loses its heat no slower than a bed can, and
needs the heater for some part of the time at least.
"""

import math

import numpy as np
from numpy.typing import NDArray

from core.averages import part_of
from core.beds.heater import Levels
from core.units import J_PER_WH

#: stretches that a run is cut into
STRETCHES = 8
#: fewer rows than this in a stretch show nothing
FEWEST_ROWS = 6
#: a cycle with this many rows, and no longer than this, is seen as it is [s]
ROWS_A_CYCLE, LONGEST_CYCLE_S = 4, 150.0
#: shortest and longest time constant of a bed, heat capacity over loss; judgement, no source [s]
FASTEST_BED_S, SLOWEST_BED_S = 200.0, 3000.0
#: holding takes no less than this part of what a bed needs that cools no slower; a bed is cooler later in a
#: run than it was warmed to, and the warm-up may have heated more than the bed; judgement, no source
LEAST_PART = 0.5
#: a heater that is met so seldom is judged by its warm-up, one met more often is believed
SELDOM = 0.1


def unsure_wh(found: Levels, start_s: float, end_s: float) -> float:
    """Standard uncertainty of the bed's energy from samples that may keep step with its pulses. [Wh]

    Parameters
    ----------
    found : Levels
        Of a sampled log.
    start_s, end_s : float
        Start of the run and end of processing. [s]

    Returns
    -------
    float
        0 where the cycle is seen as it is, or too few rows tell. [Wh]
    """
    is_on = _is_on(found)
    if is_on.size < STRETCHES * FEWEST_ROWS or _is_resolved(found, is_on):
        return 0.0
    parts = np.array([part_of(part) for part in np.array_split(is_on, STRETCHES)])
    u_part = float(parts.std(ddof=1)) / math.sqrt(STRETCHES)
    if found.plateau_w is not None:
        met = part_of(is_on)
        most = _holding_part(found.plateau_end_s - start_s, FASTEST_BED_S)
        u_part = max(u_part, (met - most / 2) / math.sqrt(3) if met > most else 0.0)
    return u_part * found.step_w * (end_s - found.plateau_end_s) / J_PER_WH


def meets_too_few(found: Levels, start_s: float) -> bool:
    """Whether the samples met the heater on so seldom that the bed could not have kept warm.

    Parameters
    ----------
    found : Levels
        Of a sampled log.
    start_s : float
        Start of the run. [s]
    """
    if found.plateau_w is None:
        return False
    least = _holding_part(found.plateau_end_s - start_s, SLOWEST_BED_S)
    return bool(part_of(_is_on(found)) < min(LEAST_PART * least, SELDOM))


def _holding_part(warm_up_s: float, time_constant_s: float) -> float:
    """Part of the time at full power that holds a bed which full power for so long has warmed from cold."""
    return min(warm_up_s / (time_constant_s + warm_up_s / 2), 1.0)


def _is_on(found: Levels) -> NDArray[np.bool_]:
    return found.power_w > found.off_w + found.step_w / 2


def _is_resolved(found: Levels, is_on: NDArray[np.bool_]) -> bool:
    """Whether on and off follow each other as the heater of a bed lets them, with rows enough for each."""
    cycles = np.count_nonzero(is_on[1:] & ~is_on[:-1])
    if cycles == 0:
        return False
    cycle_s = float(found.time_s[-1] - found.time_s[0]) / cycles
    return bool(ROWS_A_CYCLE * cycles <= is_on.size and cycle_s <= LONGEST_CYCLE_S)
