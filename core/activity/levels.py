"""Levels of a trace: where idle ends and where processing begins, learnt from the trace itself.

While a machine processes, its hot end is held: that power is in every row of processing and in no idle row.
So the time-weighted histogram of power has a gap between the highest idle level (standby, held motors, fans)
and the lowest level of processing, and a threshold in that gap tells the two apart whatever the bed does.
"""

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from core.activity.rows import F32, Rows, chunks, highest, lowest, quantile, spans, widened
from core.progress import Progress, part, silent
from core.traces import F64

#: at rest the power moves by less than this many resolution steps, or this much, within a window
QUIET_STEPS = 1.7
QUIET_W = 0.8
#: a meter whose noise reaches further than this within a window is not known [W]; judgement, no source
MOST_NOISE_W = 4.0
#: the lowest windows, as part of the time, show where a noisy log rests ...
LOWEST_TIME = 0.03
#: ... when all else lies at least so many times as high
APART_TIMES = 2.0
#: this part of the rows near standby is at rest where the meter's noise is known; judgement, no source
RESTING_PART = 0.8
#: a plateau above this part of the least of processing is no idle, unless the log begins or ends with one
IDLE_PART = 0.65
#: rows that may exceed the top of a trace
FEW_ROWS = 3
#: a quiet row is a plateau of a heater when it lies above this part of the top
TOP_PART = 0.6
#: 0 W is the idle level when it takes this part of the quiet time and the next level is this part of the top
ZERO_TIME = 0.05
ZERO_TOP = 0.15
#: the threshold lies no further than this above idle: no hot end at work is held with less. [W]
HOT_END_W = 15.0
#: stretches of at least this part of the longest are processing more often than not ...
LONG_PART = 0.4
#: ... and what follows them within this time is idle [s]
AFTER_S = 90.0

#: a bed's heater lets go for less than this long, so what rests longer is the machine [s]
LONG_REST_S = 300.0


@frozen(eq=False)
class Levels:
    """Levels of a trace. [W]

    Parameters
    ----------
    standby_w, idle_w : float or None
        Lowest and highest idle level; None where the trace shows no idle.
    threshold_w : float
    floor_w : float
        What processing hardly ever falls below.
    quiet_w : float
        Mean step between neighbouring rows at rest.
    dark_part : float
        Part of the time at 0 W.
    quiet : ndarray of bool, shape (n,)
        Rows at rest.
    """

    standby_w: float | None
    idle_w: float | None
    threshold_w: float
    floor_w: float
    quiet_w: float
    dark_part: float
    quiet: NDArray[np.bool_]


def tolerance_w(rows: Rows) -> float:
    """How far power may wander within a window and still be at rest. [W]"""
    return max(QUIET_STEPS * rows.step_w, QUIET_W, rows.noise_w)


def noise_at_rest_w(rows: Rows) -> float:
    """How far power wanders in the windows of a rest, by nothing but the meter's noise.

    Wanted where nothing rests by the tolerance for a good meter, or only a machine that is switched off: 0 W
    has no noise. The lowest windows are a rest, and not processing between the pulses of a bed, when the
    low ends of all the others lie far above them.

    Parameters
    ----------
    rows : Rows

    Returns
    -------
    float
        0 where the lowest windows are no rest. [W]
    """
    high_w, low_w = highest(rows.power_w, rows.window), lowest(rows.power_w, rows.window)
    on = low_w > 0
    if not on.any():
        return 0.0
    is_dark = not bool(on.all())
    lowest_of_all = on & (high_w <= quantile(high_w[on], rows.weight_s[on], LOWEST_TIME))
    level_w = float(np.median(rows.power_w[lowest_of_all]))
    wanders = np.abs(high_w - low_w) < MOST_NOISE_W
    resting = wanders & (high_w < level_w + MOST_NOISE_W) & (low_w > level_w - MOST_NOISE_W)
    # windows over an edge belong to neither
    others = (low_w > level_w + MOST_NOISE_W) & ~resting
    if not others.any() or rows.weight_s[resting].sum() < LOWEST_TIME * rows.weight_s[on].sum():
        return 0.0
    # held motors and fans after the end are no processing, and may be a part of the others
    longest_s = max((float(rows.weight_s[a : b + 1].sum()) for a, b in spans(resting).tolist()), default=0.0)
    is_apart = quantile(low_w[others], rows.weight_s[others], 0.25) > APART_TIMES * max(level_w, MOST_NOISE_W)
    # what never rests but at 0 W may process for as long without moving further than noise does
    if not is_apart and (is_dark or longest_s < LONG_REST_S):
        return 0.0
    # a window that wanders just so far still rests
    return float(np.percentile((high_w - low_w)[resting], 95)) + rows.step_w / 2


def rests_at_standby(rows: Rows, levels: Levels) -> bool:
    """Whether what lies near standby is at rest, mostly: else the meter is noisier than was thought."""
    if levels.standby_w is None:
        return False
    near = np.abs(rows.power_w - levels.standby_w) < MOST_NOISE_W / 2
    near_s = float(rows.weight_s[near].sum())
    return float(rows.weight_s[near & levels.quiet].sum()) >= RESTING_PART * near_s


def learn(rows: Rows, progress: Progress = silent) -> Levels:
    """Learn the levels of `rows`."""
    power_w, weight_s = rows.power_w, rows.weight_s
    low_w = lowest(power_w, rows.window, part(progress, 0.0, 0.4))
    allowed_w = tolerance_w(rows)
    top_w = _nearly_highest_w(power_w)
    still = highest(power_w, rows.window, part(progress, 0.4, 0.8)) - low_w < allowed_w
    dark_part = float(weight_s[power_w <= 0].sum() / weight_s.sum())
    is_flat = top_w - float(power_w.min()) < HOT_END_W and weight_s[still].sum() > 0.5 * weight_s.sum()
    if is_flat or top_w < HOT_END_W:  # nothing heats
        idle_w = quantile(power_w, weight_s, 0.05)
        return Levels(idle_w, top_w, top_w + HOT_END_W, top_w, _mean_step(power_w, still), dark_part, still)
    still &= power_w < TOP_PART * top_w
    quiet_w = _mean_step(power_w, still)
    quiet = widened(still, rows.window) & (power_w < TOP_PART * top_w)
    low_w = highest(low_w, rows.window, part(progress, 0.8, 1.0))
    at_ends = bool(quiet[: rows.window].any() or quiet[-rows.window :].any())
    standby_w = _standby_w(power_w, weight_s, quiet, top_w, allowed_w, rows.window)
    if standby_w is None:
        floor_w = quantile(power_w, weight_s, 0.02)
        return Levels(None, None, floor_w / 4, floor_w, quiet_w, dark_part, quiet)
    above = ~quiet & (low_w > standby_w + max(2 * allowed_w, 0.02 * (top_w - standby_w)))
    if not above.any():
        return Levels(
            standby_w,
            standby_w,
            standby_w + max(2 * allowed_w, 0.5 * (top_w - standby_w)),
            top_w,
            quiet_w,
            dark_part,
            quiet,
        )
    floor_w = quantile(low_w[above], weight_s[above], 0.25)
    middle_w = standby_w + (floor_w - standby_w) / 2
    upper = ~quiet & (power_w > middle_w)
    floor_w = quantile(power_w[upper], weight_s[upper], 0.03)
    resting = quiet & (power_w < floor_w - allowed_w)
    idle_w = float(power_w[resting].max()) if resting.any() else standby_w
    if standby_w > IDLE_PART * floor_w and not at_ends:  # a bed that is held, not a machine at rest
        return Levels(None, None, floor_w / 4, floor_w, quiet_w, dark_part, quiet)
    threshold_w = _lowest_wide_gap(rows, idle_w, floor_w)
    return Levels(standby_w, idle_w, threshold_w, floor_w, quiet_w, dark_part, quiet)


def refined(rows: Rows, levels: Levels, atoms: NDArray[np.intp]) -> Levels:
    """`levels` with the idle level taken from what follows long stretches of heating.

    A hot end held on its own is as quiet as held motors, and would pass for an idle level; but only what is
    seen right after processing is sure to be idle.

    Parameters
    ----------
    atoms : ndarray of int, shape (k, 2)
        First and last row of each stretch above the threshold of `levels`, short dips bridged.
    """
    if levels.idle_w is None or levels.standby_w is None or not atoms.size:
        return levels
    near_w = levels.standby_w + max(2 * QUIET_W, 2 * rows.step_w)
    seconds = rows.time_s[atoms[:, 1]] - rows.time_s[atoms[:, 0]]
    after_s = max(AFTER_S, rows.window * rows.interval_s)
    followed_by_w, ended_by_w = [], []
    for i in np.flatnonzero(seconds >= LONG_PART * seconds.max()).tolist():
        first = int(atoms[i, 1]) + 1
        next_first = int(atoms[i + 1, 0]) if i + 1 < len(atoms) else rows.time_s.size
        stop = int(np.searchsorted(rows.time_s, rows.time_s[first - 1] + after_s, side="right"))
        dip_w = rows.power_w[first:next_first]
        after_w = rows.power_w[first:stop]
        below = after_w < levels.threshold_w
        resting_w = after_w[levels.quiet[first:stop] & below]
        if resting_w.size:
            followed_by_w.append(float(resting_w.max()))
        elif below.all() and after_w.size > 2:  # too few rows to be seen at rest
            followed_by_w.append(float(np.median(after_w[1:])))
        else:
            continue
        if next_first == rows.time_s.size or float(dip_w.min()) <= near_w:
            ended_by_w.append(followed_by_w[-1])
    if not followed_by_w:
        return levels
    # a pause rests at a higher level than idle, and goes back up without having been at standby
    idle_w = max(ended_by_w) if ended_by_w else min(followed_by_w)
    if idle_w >= levels.idle_w:
        return levels
    threshold_w = _lowest_wide_gap(rows, idle_w, levels.floor_w)
    return evolve(levels, idle_w=idle_w, threshold_w=min(threshold_w, levels.threshold_w))


def _nearly_highest_w(power_w: F64) -> float:
    """Power that a few rows exceed: one wild row sets no scale. [W]"""
    best_w = [np.sort(power_w[first:last])[-FEW_ROWS - 1 :] for first, last in chunks(power_w.size)]
    highest_w = np.sort(np.concatenate(best_w))
    return float(highest_w[max(highest_w.size - 1 - FEW_ROWS, 0)])


def _mean_step(power_w: F64, rows: NDArray[np.bool_]) -> float:
    """Mean step from row to row between neighbours of which both are among `rows`. [W]"""
    total_w, number = 0.0, 0
    for first, last in chunks(power_w.size):
        both = rows[first + 1 : last] & rows[first : last - 1]
        total_w += float(np.abs(np.diff(power_w[first:last])[both]).sum())
        number += int(np.count_nonzero(both))
    return total_w / number if number else 0.0


def _standby_w(
    power_w: F64,
    weight_s: F32,
    quiet: NDArray[np.bool_],
    top_w: float,
    allowed_w: float,
    window: int,
) -> float | None:
    """The lowest idle plateau; 0 for a machine that draws nothing the meter shows, None without one."""
    if not quiet.any():
        return None
    at_rest = power_w[quiet]
    weight = weight_s[quiet]
    on = at_rest > 0
    zero_share = float(weight[~on].sum() / weight.sum())
    if not on.any():
        return 0.0
    lowest_w = quantile(at_rest[on], weight[on], 0.05)
    if zero_share > ZERO_TIME and lowest_w > ZERO_TOP * top_w:
        return 0.0
    near = np.abs(power_w - lowest_w) < allowed_w
    resting = near & quiet
    at_ends = resting[:window].any() or resting[-window:].any()
    if weight_s[resting].sum() < 0.5 * weight_s[near].sum() and not at_ends:
        # a few rows that happen to agree, while the power passes by
        return 0.0 if zero_share > ZERO_TIME else None
    return lowest_w


def _lowest_wide_gap(rows: Rows, idle_w: float, floor_w: float) -> float:
    """Middle of the lowest wide gap of the histogram of power between `idle_w` and `floor_w`."""
    inside = (rows.power_w > idle_w) & (rows.power_w < floor_w)
    power_w = rows.power_w[inside]
    order = np.argsort(power_w)
    power_w, weight_s = power_w[order], rows.weight_s[inside][order]
    allowed_s = max(0.0015 * float(rows.weight_s.sum()), 3 * rows.interval_s)
    marks = np.r_[idle_w, power_w, floor_w]
    total_s = np.r_[0.0, np.cumsum(weight_s), float(weight_s.sum())]
    # the widest gap that begins at each mark and holds no more than `allowed_s`
    ends = np.searchsorted(total_s, total_s + allowed_s, side="right") - 1
    ends = np.minimum(np.maximum(ends, np.arange(marks.size)), marks.size - 1)
    half_w = np.minimum((marks[ends] - marks) / 2, HOT_END_W)
    first = int(np.flatnonzero(half_w >= 0.5 * half_w.max())[0])
    return float(marks[first] + half_w[first])
