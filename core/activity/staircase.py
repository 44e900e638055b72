"""Switch-on tests: loads turned on one after another, which shows as a staircase before the heating."""

import numpy as np

from core.activity.levels import Levels
from core.activity.rows import Rows
from core.traces import F64

#: a load is left on at least this long before the next [s]
STEP_S = 100.0
#: the time before a stretch in which loads may have been turned on [s]
BEFORE_S = 3600.0
#: fewest loads before the heaters
LOADS = 2
#: a step up is this many times what rest moves by, and at least this many resolution steps
STEP_TIMES = 5.0
STEP_STEPS = 3.0
#: more in an on-change log, where noise comes in held steps
HELD_STEPS = 12.0
#: a heater is large that lifts the power to this part of the most that the stretch draws, above standby
LARGE_PART = 0.25
#: length of the means that are compared [s]
MEAN_S = 20.0
#: means of which a level is made; `STEP_S` is as long
LEVEL_MEANS = 5


def first_load_s(rows: Rows, levels: Levels, first: int, last: int, not_before_s: float) -> float | None:
    """When the first load of a staircase before the heating of rows `first` to `last` was turned on. [s]

    None without one. Loads that lift the power above the threshold open a stretch, so the staircase may reach
    into it, up to the first of the large heaters.

    After a run motors let go and fans stop, so idle falls; before one it rises for a homing move at most.
    Only a person who turns on loads one by one makes it rise in steps that last.
    """
    over_w = rows.power_w[first : last + 1] - (levels.standby_w or 0.0)
    first += int(np.argmax(over_w > LARGE_PART * over_w.max()))
    begin_s = max(not_before_s, float(rows.time_s[first]) - BEFORE_S)
    begin = int(np.searchsorted(rows.time_s, begin_s))
    off = np.flatnonzero(rows.power_w[begin:first] <= 0)
    if off.size:  # being switched on at the plug is no load
        begin += int(off[-1]) + 1
    mean_w, at_s = _means(rows, begin, first)
    if mean_w.size < (LOADS + 1) * STEP_S / MEAN_S or rows.interval_s > MEAN_S:
        return None
    steps = HELD_STEPS if rows.kind == "on_change" else STEP_STEPS
    least_w = max(STEP_TIMES * levels.quiet_w, steps * rows.step_w)
    rises = np.flatnonzero(np.diff(mean_w) > least_w)
    falls = np.flatnonzero(np.diff(mean_w) < -least_w)
    if falls.size:
        rises = rises[rises > falls[-1]]
    # a mean that holds the step itself makes two rises of one
    rises = rises[np.r_[True, np.diff(rises) > 1]] if rises.size else rises
    rises_s = at_s[rises + 1]
    lasting = np.diff(np.r_[rises_s, rows.time_s[first]]) >= STEP_S
    if lasting.size < LOADS or not lasting.all():
        return None
    # a standby that flickers rises now and then, too, but gets nowhere
    before_w = float(np.median(mean_w[: rises[0] + 1][-LEVEL_MEANS:]))
    if float(np.median(mean_w[-LEVEL_MEANS:])) - before_w < LOADS * least_w:
        return None
    return float(rises_s[0])


def _means(rows: Rows, begin: int, end: int) -> tuple[F64, F64]:
    """Means over `MEAN_S`, and when each begins, from row `begin` to row `end`."""
    time_s, power_w = rows.time_s[begin:end], rows.power_w[begin:end]
    if not time_s.size:
        return np.empty(0), np.empty(0)
    place = ((time_s - time_s[0]) // MEAN_S).astype(np.intp)
    number = np.bincount(place)
    full = number > 0
    mean_w = np.bincount(place, power_w)[full] / number[full]
    return mean_w, time_s[0] + MEAN_S * np.flatnonzero(full)
