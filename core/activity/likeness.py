"""Whether two stretches drew alike from beginning to end: told from how their later power is distributed.

Movement may be too faint to measure, and the lowest level is no steady sign where a hot end pulses by itself:
whether a tenth of the rows find both heaters off is then chance. All levels together are steadier. A bed held
with the hot end cold rests lower, and so does one held with the motors off: their distributions lie apart
over half of the rows or more.
"""

import math

import numpy as np

from core.activity.rows import F32
from core.activity.values import Stretch
from core.traces import F64

#: the distribution is read at these parts of the time
PARTS = np.arange(0.05, 0.96, 0.05)
#: like stretches last as long within this (natural logarithm of the ratio): runs of one part hardly vary
SECONDS_APART = 0.05
#: largest distance between two distributions of the same thing: what wanders from run to run, and what
#: chance adds (5 % point of Kolmogorov and Smirnov's two-sample test, 1.36, from memory)
WANDERS = 0.15
BY_CHANCE = 1.36
#: pulses leave each row less to say than a row drawn by itself: no more than so many count
MOST_ROWS = 400


def levels_w(power_w: F64, weight_s: F32) -> tuple[float, ...]:
    """The power at each of `PARTS` of the time, rows of given weights. [W]"""
    order = np.argsort(power_w)
    total_s = np.cumsum(weight_s[order], dtype=np.float64)
    at = np.minimum(np.searchsorted(total_s, PARTS * total_s[-1]), order.size - 1)
    return tuple(power_w[order[at]].tolist())


def alike(one: Stretch, other: Stretch, resolution_w: float) -> bool:
    """Whether two stretches are of one kind: they last as long and draw alike.

    Parameters
    ----------
    one, other : Stretch
        With `levels_w`.
    resolution_w : float
        Levels nearer than this are the same. [W]
    """
    if not one.levels_w or not other.levels_w:
        return False
    if abs(math.log(one.seconds / other.seconds)) > SECONDS_APART:
        return False
    rows = min(one.rows, other.rows, MOST_ROWS)
    return distance(one, other, resolution_w) < WANDERS + BY_CHANCE * math.sqrt(2 / max(rows, 1))


def distance(one: Stretch, other: Stretch, resolution_w: float) -> float:
    """Largest difference between the parts of the time below any level, 0 to 1."""
    return max(_beyond(one, other, resolution_w), _beyond(other, one, resolution_w))


def _beyond(one: Stretch, other: Stretch, resolution_w: float) -> float:
    """How far the parts at the levels of `one` lie outside those of `other` at the same level."""
    of_one, of_other = np.array(one.levels_w), np.array(other.levels_w)
    step = PARTS[0]
    # as many of the other's levels lie below, give or take what falls between two levels
    least = step * np.searchsorted(of_other, of_one - resolution_w, side="left")
    most = step * (np.searchsorted(of_other, of_one + resolution_w, side="right") + 1)
    return float(np.max(np.maximum(np.maximum(least - PARTS, PARTS - most), 0.0)))
