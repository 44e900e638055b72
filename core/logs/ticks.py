"""What the ticks of a coarse counter say about the values beside them: means before a row, or instants.

Theory. A counter that shows whole steps ticks when the energy passes a multiple of its step, so between two
ticks lies a known energy, and it lies between what the rows inside say and what they say with the intervals
of either tick. Means add up to it but for rounding. Instants of a load that switches do not: an interval
over which the power changes by d was switched at any moment of the s seconds that were not measured, and is
unsure by d x s / sqrt(12) (a uniform distribution). How likely the ticks are under either is compared.
"""

from math import erf, sqrt

import numpy as np
from attrs import frozen

from core.traces import F64
from core.units import SECONDS_PER_HOUR

#: fewest stretches between ticks that are compared
_FEWEST = 4
#: fewest rows from tick to tick: a finer counter tells more by what it gains from row to row
_ROWS = 3
#: a sampling meter measures over about this long [s]; common practice, no source
WINDOW_S = 1.0
#: a counter and a power display of one meter agree this well; common practice, no source
_AGREE = 0.003
#: no stretch is held to be less likely than this: a lost row is no proof
_LEAST = 1e-4


@frozen
class TicksTold:
    """How much likelier the ticks are if values are means than if they are instants, as a natural logarithm.

    ``count`` is the number of stretches between ticks.
    """

    means: float
    count: int


def by_ticks(
    time_s: F64, power_w: F64, resolution_w: float, counter_wh: F64, breaks_s: tuple[float, ...] = ()
) -> TicksTold | None:
    """Hold the energy between ticks against the values; None where there are too few ticks.

    Parameters
    ----------
    time_s, power_w : ndarray, shape (n,)
        [s], [W]
    resolution_w : float
        Smallest step of the power reading. [W]
    counter_wh : ndarray, shape (n,)
        NaN where missing. [Wh]
    breaks_s : tuple of float
        Times of the rows before which the counter was reset. [s]

    Returns
    -------
    TicksTold or None
        None too where the counter ticks nearly every row.
    """
    known = np.isfinite(counter_wh)
    time_s, power_w, counter_wh = time_s[known], power_w[known], counter_wh[known]
    hours = np.diff(time_s) / SECONDS_PER_HOUR
    rise = np.diff(counter_wh)
    ticks = np.flatnonzero(rise > 0) + 1  # rows that show a new step
    if ticks.size <= _FEWEST:
        return None
    means = np.concatenate(([0.0], np.cumsum(power_w[1:] * hours)))
    instants = np.concatenate(([0.0], np.cumsum(0.5 * (power_w[1:] + power_w[:-1]) * hours)))
    unseen = np.maximum(hours - WINDOW_S / SECONDS_PER_HOUR, 0.0)
    switched = np.concatenate(([0.0], np.cumsum((np.diff(power_w) * unseen) ** 2 / 12)))
    rounded = np.concatenate(([0.0], np.cumsum((resolution_w * hours) ** 2 / 12)))
    a, b = ticks[:-1], ticks[1:]
    broken = np.searchsorted(time_s, np.asarray(breaks_s))
    good = np.searchsorted(broken, a, "right") == np.searchsorted(broken, b, "right")
    a, b = a[good], b[good]
    if a.size < _FEWEST or float(np.median(b - a)) < _ROWS:
        return None
    between = counter_wh[b] - counter_wh[a]
    scale_by = float(counter_wh[b[-1]] - counter_wh[a[0]])
    logs: list[float] = []
    for energy, extra in ((means, None), (instants, switched)):
        whole = float(energy[b[-1]] - energy[a[0]])
        scale = scale_by / whole if whole > 0 and abs(scale_by / whole - 1) < 0.03 else 1.0
        low, high = scale * (energy[b - 1] - energy[a]), scale * (energy[b] - energy[a - 1])
        spread = rounded[b] - rounded[a - 1] + (_AGREE * between) ** 2
        if extra is not None:
            spread = spread + extra[b] - extra[a - 1]
        logs.append(float(np.log(np.maximum(_within(low, high, between, np.sqrt(spread)), _LEAST)).sum()))
    return TicksTold(logs[0] - logs[1], int(a.size))


def _within(low: F64, high: F64, value: F64, spread: F64) -> F64:
    """Density of `value` where one that is uniform from `low` to `high` is blurred by `spread`."""
    root = sqrt(2.0)
    upper = np.array([erf(x) for x in ((value - low) / (root * spread)).tolist()])
    lower = np.array([erf(x) for x in ((value - high) / (root * spread)).tolist()])
    density: F64 = 0.5 * (upper - lower) / np.maximum(high - low, 1e-9)
    return density
