"""Values that differ from both neighbours: whether they are levels of the load or lie anywhere between.

Theory. An instant of a load that switches is always one of its levels, however short it was there, so that a
value that stands alone in time is met again nearby. A mean over an interval in which the load switched lies
anywhere between the levels (uniformly, if the moment of switching has nothing to do with the clock of the
meter), so it is met again only by chance. The chance is the part of the range that is near some value.
"""

import numpy as np
from attrs import frozen

from core.traces import F64

#: rows that are looked at together, so that levels may wander
_WINDOW = 120
#: values this near each other are one level, and neighbours this far apart are two, of the range
_SAME, _APART = 0.02, 0.08
#: ... and so many times what the power steps by, usually, where it does not leap
_STIRS = 3.0
#: ... in steps of the display
_SAME_STEPS, _APART_STEPS = 2.0, 4.0
#: most of the range that may be near a value, lest nothing be told from little
_MOST_NEAR = 0.98


@frozen
class SingleValues:
    """How many values differ from both neighbours, and how many of these are met nowhere near.

    Of ``count`` values ``unmatched`` are like no other of their surroundings; ``expected`` would be, if they
    lay anywhere. ``switchings`` is how often the power went from level to level where any were looked at.
    """

    count: int
    unmatched: int
    expected: float
    switchings: int

    @property
    def share(self) -> float:
        """Unmatched values for each expected one: about 1 of means, about 0 of instants."""
        return self.unmatched / self.expected if self.expected > 0 else 0.0

    @property
    def share_of_switchings(self) -> float:
        """Unmatched values for each switching that would show one: of means about 1."""
        shown = self.switchings * self.expected / self.count if self.count else 0.0
        return self.unmatched / shown if shown > 0 else 0.0


def single_values(power_w: F64, resolution_w: float) -> SingleValues:
    """Look at every value that differs from both neighbours.

    Parameters
    ----------
    power_w : ndarray, shape (n,)
        [W]
    resolution_w : float
        Smallest step of the power reading. [W]

    Returns
    -------
    SingleValues
    """
    top = float(np.percentile(power_w, 99)) - float(np.percentile(power_w, 1))
    least = max(0.2 * top, 15 * resolution_w, 8.0)
    count = unmatched = switchings = 0
    expected = 0.0
    for start in range(0, max(1, power_w.size - _WINDOW // 2), _WINDOW):
        part = power_w[start : start + _WINDOW]
        low, high = (float(v) for v in np.percentile(part, (3, 97)))
        if high - low < least:
            continue
        steps = np.diff(part)
        leaps = np.abs(steps) > max(_APART_STEPS * resolution_w, _APART * (high - low))
        # a switching seen in two steps, by a value in between, is one
        goes_on = leaps[1:] & leaps[:-1] & (steps[1:] * steps[:-1] > 0)
        switchings += int(leaps.sum() - goes_on.sum())
        alone = np.flatnonzero(leaps[:-1] & leaps[1:]) + 1
        if not alone.size:
            continue
        # motors stir a level by as much from row to row as they do from one visit of it to the next
        stirs = _STIRS * float(np.median(np.abs(steps[~leaps]))) if not leaps.all() else 0.0
        same = max(_SAME_STEPS * resolution_w, _SAME * (high - low), stirs)
        apart = np.diff(np.sort(np.clip(part, low, high)))
        near = min(_MOST_NEAR, float(np.minimum(apart, 2 * same).sum()) / (high - low))
        distance = np.abs(part[alone][:, None] - part[None, :])
        distance[np.arange(alone.size), alone] = np.inf
        count += int(alone.size)
        unmatched += int((distance.min(axis=1) > same).sum())
        expected += alone.size * (1.0 - near)
    return SingleValues(count, unmatched, expected, switchings)
