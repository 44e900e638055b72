"""The step of a bed's heater from the distribution of all rows, whatever else pulses beside it.

Theory. With the heater on every row lies one step higher than it would with the heater off. So the rows above
the middle look like those below, shifted by the step, hot end and all: the step is the shift at which the two
are most alike. Pieces of pulses, which lie anywhere between, are alike at no shift.
"""

import numpy as np
from attrs import frozen

from core.averages import average, counts_between, median_of_ordered, percentile_of_ordered
from core.traces import F64

#: the histograms' bin is this part of the range, and no finer than this [W]
BIN_PART, FINEST_W = 1 / 200, 0.5
#: a histogram is smoothed by a bell curve of this width, in bins, as far as this
SMOOTH_BINS, SMOOTH_REACH = 2.0, 6
BELL = np.exp(-((np.arange(-SMOOTH_REACH, SMOOTH_REACH + 1) / SMOOTH_BINS) ** 2) / 2)
#: rows this near to a level, as part of the step, belong to it
NEAR_PART = 0.06
#: the middle between the levels is found anew so often at most
ROUNDS = 4
#: fewer rows above or below show no shape to compare
FEWEST_ROWS = 40
#: most classes on either side of the middle, and a third of the most of all
MOST_BINS = 4096


@frozen
class Step:
    """The step of a heater, and the middle between the levels without it and with it. [W]"""

    step_w: float
    middle_w: float


def heater_step(power_w: F64, resolution_w: float, least_w: float = 0.0) -> Step | None:
    """Step of the heater in rows that show it on and off.

    Parameters
    ----------
    power_w : ndarray, shape (n,)
        Rows of processing, evenly spaced. [W]
    resolution_w : float
        Smallest step of the meter's power. [W]
    least_w : float
        Smallest step that the heater can have. [W]

    Returns
    -------
    Step or None
        None where too few rows lie above or below.

    Examples
    --------
    >>> import numpy as np
    >>> found = heater_step(np.tile([40.0, 40.0, 60.0, 240.0, 240.0, 260.0], 20), 1.0)
    >>> round(found.step_w), round(found.middle_w)
    (200, 140)
    """
    # in order, the rows below the middle are the first ones, and their median is in their midst
    ordered_w = np.sort(power_w)
    low_w, high_w = percentile_of_ordered(ordered_w, 2), percentile_of_ordered(ordered_w, 98)
    width_w = max(resolution_w, (high_w - low_w) * BIN_PART, FINEST_W)
    found = Step(0.0, (low_w + high_w) / 2)
    for _ in range(ROUNDS):
        split = int(ordered_w.searchsorted(found.middle_w, side="right"))
        below, above = ordered_w[:split], ordered_w[split:]
        if min(below.size, above.size) < FEWEST_ROWS:
            return None
        before_w, below_w = found.middle_w, median_of_ordered(below)
        shift_w = _shift_w(below, above, width_w, least_w)
        step_w = _as_a_mean_w(power_w, before_w, below_w, shift_w)
        # pieces of pulses lift the rows below as much as they lower those above
        found = Step(step_w, (below_w + median_of_ordered(above)) / 2)
        if abs(found.middle_w - before_w) < width_w / 2:
            break
    return found


def without_heater(power_w: F64, step: Step) -> F64:
    """Powers of the rows with the heater's step taken off those above the middle, shape (n,). [W]

    A pulse that a meter averages over a window becomes a trapezoid, whose area is its height times the time
    that it spends above half its height, however long the window. So the mean of the rows that are left is
    right though single rows with pieces of pulses are not.
    """
    return power_w - step.step_w * (power_w > step.middle_w)


def _as_a_mean_w(power_w: F64, middle_w: float, low_w: float, shift_w: float) -> float:
    """The shift by the means of the rows around it: the watts of a heater fall as it warms. [W]"""
    near_w, is_above = NEAR_PART * shift_w, power_w > middle_w
    from_low_w = power_w - low_w
    low = power_w[(np.abs(from_low_w) <= near_w) & ~is_above]
    high = power_w[(np.abs(from_low_w - shift_w) <= near_w) & is_above]
    return average(high) - average(low) if low.size and high.size else shift_w


def _shift_w(below_w: F64, above_w: F64, width_w: float, least_w: float) -> float:
    """Shift at which the rows above, in order, look most like those below. [W]"""
    # a single wrong value far off would make as many classes as there are watts up to it
    lowest_w = max(below_w[0], below_w[-1] - MOST_BINS * width_w)
    highest_w = min(above_w[-1], above_w[0] + MOST_BINS * width_w)
    width_w = max(width_w, (highest_w - lowest_w) / (3 * MOST_BINS))
    reach_w = SMOOTH_REACH * width_w
    edges = np.arange(lowest_w - reach_w, highest_w + reach_w, width_w)
    low, high = (np.convolve(counts_between(rows, edges), BELL, mode="same") for rows in (below_w, above_w))
    alike = np.correlate(high, low, mode="full")
    lowest = min(max(low.size - 1 + int(least_w / width_w), 0), alike.size - 1)
    best = lowest + int(np.argmax(alike[lowest:]))
    shift = float(best - (low.size - 1))
    if 0 < best < alike.size - 1:
        left, top, right = alike[best - 1 : best + 2]
        bend = float(left - 2 * top + right)
        # the top of the parabola through three neighbours
        shift += float(left - right) / (2 * bend) if bend < 0 else 0.0
    return shift * width_w
