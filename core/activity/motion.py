"""Whether a stretch of heating is processing: what moves, and whether the hot end is held with the motors on.

While a part is made the motors never draw the same power twice in a row; while something is only heated the
power is still, apart from heaters that switch. So the small steps between neighbouring rows tell, and heater
steps, which are much larger, are left out.
"""

import numpy as np
from attrs import frozen

from core.activity.levels import Levels
from core.activity.likeness import levels_w
from core.activity.rows import Rows, quantile, spans
from core.traces import F64, Trace

#: small steps are those below this part of the stretch's base above standby
SMALL_PART = 0.25
#: length of the windows in which movement is looked for [s], and fewest small steps in one
MOVING_S = 90.0
SPARSE_S = 400.0
MOVING_STEPS = 4
#: windows with that many have to make up this part of a stretch to be looked at one by one
ENOUGH_WINDOWS = 0.2
#: a stretch with fewer small steps than this says nothing
FEWEST_STEPS = 8
#: the base is read in this last part of a stretch, where warming up is over
LATE_PART = 0.6


#: a pause is this many windows of this length [s] in which steps are no more than these times those at rest,
#: or this part of those where the stretch moves
PAUSE_WINDOWS = 3
PAUSE_WINDOW_S = 30.0
PAUSE_TIMES = 1.6
PAUSE_PART = 0.3
#: windows in which a heater stirs what rests: so many of them between still ones do not end a pause
PAUSE_STIRRED = 2
#: and pauses take no more than this part of a stretch
PAUSES_PART = 0.6
#: an on-change meter's threshold is this percentile of the changes it wrote: the others are its sign of life
SIGHT_PERCENT = 10
#: rest is taken to move by no less than this from row to row [W]
LEAST_STEP_W = 0.01


#: spans of time [s]
Pauses = tuple[tuple[float, float], ...]


@frozen
class Movement:
    """What a stretch shows.

    Parameters
    ----------
    base_w : float
        Level that the stretch rests at between the pulses of the bed's heater. [W]
    step_w : float
        Mean small step between neighbouring rows where the stretch moves most; NaN where too few show it. [W]
    levels_w : tuple of float
        Levels of the later part, see `core.activity.likeness`. [W]
    rows : int
        Rows of the later part.
    """

    base_w: float
    step_w: float
    levels_w: tuple[float, ...]
    rows: int


def movement(rows: Rows, levels: Levels, first: int, last: int, pauses: Pauses = ()) -> Movement:
    """Look at rows `first` to `last`, those in `pauses` left out."""
    kept = np.ones(last + 1 - first, dtype=bool)
    for start_s, end_s in pauses:
        begin, stop = np.searchsorted(rows.time_s, (start_s, end_s)) - first
        kept[max(begin, 0) : stop] = False
    power_w = rows.power_w[first : last + 1][kept]
    time_s = rows.time_s[first : last + 1][kept]
    late = int(np.searchsorted(time_s, time_s[-1] - LATE_PART * (time_s[-1] - time_s[0])))
    late_w, late_s = power_w[late:], rows.weight_s[first : last + 1][kept][late:]
    base_w = quantile(late_w, late_s, 0.10)
    limit_w = small_step_w(rows, levels, base_w)
    after = int(np.argmax(power_w < base_w + 2 * limit_w))  # the first heating is a plateau of its own
    step_w = _moving_step_w(rows, time_s[after:], power_w[after:], limit_w)
    return Movement(base_w, step_w, levels_w(late_w, late_s), late_w.size)


def pauses(rows: Rows, levels: Levels, seen: Movement, warm_up_end_s: float, last: int) -> Pauses:
    """When nothing moves for long between the end of warm-up and row `last`. [s]

    None where movement cannot be seen window by window: in on-change logs, and under heaters that switch from
    row to row.
    """
    first = int(np.searchsorted(rows.time_s, warm_up_end_s))
    length_s = max(PAUSE_WINDOW_S, (MOVING_STEPS + 1) * rows.interval_s)
    if rows.kind == "on_change" or not np.isfinite(seen.step_w) or last - first < 2 * MOVING_STEPS:
        return ()
    steps_w = np.abs(np.diff(rows.power_w[first : last + 1]))
    small = steps_w < small_step_w(rows, levels, seen.base_w)
    window = ((rows.time_s[first + 1 : last + 1] - rows.time_s[first]) // length_s).astype(np.intp)
    number = np.bincount(window, small)
    size_w = np.bincount(window, np.where(small, steps_w, 0.0))
    limit_w = max(PAUSE_TIMES * rest_step_w(rows, levels), PAUSE_PART * seen.step_w)
    still = (number >= MOVING_STEPS) & (size_w < limit_w * number)
    if limit_w > 0.7 * seen.step_w or still.mean() > 0.5:
        return ()
    joined: list[list[int]] = []
    for start, stop in spans(still).tolist():
        if joined and start - joined[-1][1] - 1 <= min(PAUSE_STIRRED, joined[-1][1] - joined[-1][0] + 1):
            joined[-1][1] = stop
        else:
            joined.append([start, stop])
    begin_s = float(rows.time_s[first])
    long = [(start, stop) for start, stop in joined if stop - start + 1 >= PAUSE_WINDOWS]
    if sum(stop - start + 1 for start, stop in long) > PAUSES_PART * still.size:
        return ()  # it is the heater that makes what moves elsewhere
    return tuple((begin_s + start * length_s, begin_s + (stop + 1) * length_s) for start, stop in long)


def small_step_w(rows: Rows, levels: Levels, base_w: float) -> float:
    """Steps below this are of motion and noise; larger ones are of heaters. [W]"""
    return max(SMALL_PART * (base_w - (levels.standby_w or 0.0)), 4 * rows.step_w)


def rest_step_w(rows: Rows, levels: Levels) -> float:
    """Mean step between neighbouring rows at rest, no less than the resolution allows to see. [W]"""
    return max(levels.quiet_w, rows.step_w / 40, LEAST_STEP_W)


def sight_w(trace: Trace) -> float:
    """Smallest change that the meter shows: its resolution, or what an on-change log writes a row for. [W]"""
    if trace.kind != "on_change":
        return trace.resolution_w
    changes_w = np.abs(np.diff(trace.power_w))
    changes_w = changes_w[changes_w > trace.resolution_w / 2]
    return float(np.percentile(changes_w, SIGHT_PERCENT)) if changes_w.size else trace.resolution_w


def _moving_step_w(rows: Rows, time_s: F64, power_w: F64, limit_w: float) -> float:
    """Upper quartile over windows of the mean small step, steady drift taken off."""
    steps_w = np.diff(power_w)
    small = np.abs(steps_w) < limit_w
    if small.sum() < FEWEST_STEPS:
        return float("nan")
    length_s = max(SPARSE_S if rows.kind == "on_change" else MOVING_S, 2 * MOVING_STEPS * rows.interval_s)
    window = ((time_s[1:] - time_s[0]) // length_s).astype(np.intp)
    number = np.bincount(window, small)
    size_w = np.bincount(window, np.where(small, np.abs(steps_w), 0.0))
    drift_w = np.abs(np.bincount(window, np.where(small, steps_w, 0.0)))
    if rows.kind == "on_change":  # a window may hold a single change, which is no drift
        drift_w[:] = 0.0
    enough = number >= MOVING_STEPS
    if enough.mean() < ENOUGH_WINDOWS:  # heater steps everywhere: too few rows to tell drift from movement
        return float(size_w.sum() / number.sum())
    mean_w = (size_w[enough] - drift_w[enough]) / number[enough]
    return float(np.percentile(mean_w, 75))
