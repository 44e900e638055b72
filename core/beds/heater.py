"""The two levels of a run whose bed heater switches: with the heater off and with it on.

Theory. Between pulses the plug sees only what is not the bed: electronics, held hot end, motors, fans. In a
histogram of the processing part these rows make the lowest mode. Whether that mode is really the heater off,
and not a mixture made by a meter slower than the pulses, is told by the warm-up, where the heater was on
without a break: the step between the two levels must be about what the end of that plateau stands above the
lower one.
"""

import math

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from core.averages import average, counts_between, median, part_of, percentile
from core.beds.steps import Step, heater_step, without_heater
from core.energy.refresh import measured
from core.energy.timing import shortest_interval_s
from core.traces import F64, Trace

#: bins of the histogram that the lower mode is looked for in
BINS = 120
#: the lower mode lies in this part of the range
LOWER_PART = 0.45
#: rows this near to the lower mode are off: spreads, resolution steps, part of the range
OFF_SPREADS = 4.0
OFF_STEPS = 2.0
OFF_PART = 0.05
#: heaters of hot ends have no more than this; common practice, no source [W]
HOT_END_W = 90.0
#: rows crowd where they are this many times as dense as elsewhere between the levels
CROWDED = 2.0
#: a hot end that pulses is on for more than this part of the time
HOT_END_SHARE = 0.08
#: fewer rows than this part of all between the levels, and no pulse is cut by the meter's window
CLEAN = 0.01
#: fewer rows of processing than this show nothing
FEWEST_ROWS = 12
#: where no end of warm-up is known it lies in this first part of the run
EARLY = 0.4
#: cycle of a hot end that pulses, about; common practice, no source [s]
HOT_END_CYCLE_S = 4.0
#: a step smaller than this part of the warm-up's plateau is no full pulse
FULL_STEP = 0.72
#: a plateau this much lower than the step is not the heater's
NO_PLATEAU = 0.6
#: with fewer rows than this whose neighbours are off too, rows near the mode have to do
FEWEST_UNDISTURBED = 0.04
#: fewer rows between two with the heater off than this part of all say nothing of what is not the bed
FEWEST_INSIDE = 0.15
#: a plateau lies above this part of its top, and of its top's rise over the low level of what follows
PLATEAU_PART, PLATEAU_RISE = 0.6, 0.4
#: low level of a plateau: this percentile of its rows
LOW_OF_PLATEAU = 10
#: pulses with fewer rows than this between two changes are short
SHORT_ROWS = 3
#: fewer rows between plateau and processing show nothing of it
FEWEST_WAITING = 4
#: an unchanged value of an on-change log is spelt out for no longer than this many polls
LONGEST_HOLD = 600


@frozen(eq=False)
class Levels:
    """What the processing part of a run shows of a switching heater.

    Parameters
    ----------
    time_s, power_w : ndarray, shape (n,)
        Rows of processing, evenly spaced as the meter looked. [s], [W]
    is_off : ndarray of bool, shape (n,)
        Rows with the heater off; in an averaged log only those whose neighbours are off too.
    off_w, spread_w, step_w, reach_w : float
        Lower mode, its spread, and how far the upper level and the highest rows stand above it. [W]
    below_share : float
        Part of the rows so far below the lower mode that it cannot be the level with the heater off.
    low_share, off_share : float
        Part of the rows near the lower mode, and of those that count as off.
    quiet_share : float
        Part at the lower mode of those rows that lie between two with the heater off; 0 where those are few.
    confused_share : float
        Part of the rows that hold pieces of pulses where a hot end pulses as well: the two cannot be told
        apart.
    off_u_w : float
        Standard uncertainty of the level with the heater off, where only rows near the mode show it. [W]
    hot_end_w : float
        How far a hot end that pulses by itself lifts the mean of the off rows above the lower mode. [W]
    changes, reach_changes : int
        How often the power goes from one level to the other, and past half of the highest rows' reach.
    plateau_w : float or None
        End of the first full-power plateau of the warm-up; None where the run shows none. [W]
    plateau_low_w : float
        Low level of that plateau: without a hot end that is heated for a part of it only. [W]
    plateau_end_s : float
        Where it ends; the start of the run without one. [s]
    waiting_s, waiting_w : ndarray, shape (m,)
        What is not the bed's in the rows between the plateau and processing, while the machine waits for its
        bed or heats its hot end; a single row may be off by a piece of a pulse. [s], [W]
    """

    time_s: F64
    power_w: F64
    is_off: NDArray[np.bool_] = field(repr=False)
    off_w: float
    spread_w: float
    step_w: float
    reach_w: float
    below_share: float
    low_share: float
    off_share: float
    quiet_share: float
    confused_share: float
    off_u_w: float
    hot_end_w: float
    changes: int
    reach_changes: int
    plateau_w: float | None
    plateau_low_w: float
    plateau_end_s: float
    waiting_s: F64 = field(repr=False)
    waiting_w: F64 = field(repr=False)

    @property
    def are_pulses_short(self) -> bool:
        """Whether the heater is on or off for no longer than a sample or two at a time."""
        is_high = self.power_w > self.off_w + self.step_w / 2
        return self.power_w.size / max(self.changes, 1) < SHORT_ROWS or not is_high.any()


def rows_between(trace: Trace, start_s: float, end_s: float) -> tuple[F64, F64]:
    """Times [s] and powers [W] of the rows inside an interval; an on-change log is spelt out."""
    first = int(np.searchsorted(trace.time_s, start_s, side="left"))
    last = int(np.searchsorted(trace.time_s, end_s, side="left"))
    time, power = trace.time_s[first:last], trace.power_w[first:last]
    poll_s = shortest_interval_s(trace)
    if trace.kind != "on_change" or poll_s <= 0 or time.size < 2:
        return time, power
    holds = np.diff(time, append=end_s)
    repeats = np.clip(np.round(holds / poll_s), 1, LONGEST_HOLD).astype(np.int64)
    starts = np.repeat(np.cumsum(repeats) - repeats, repeats)
    return np.repeat(time, repeats) + poll_s * (np.arange(starts.size) - starts), np.repeat(power, repeats)


def lower_mode(power_w: F64, resolution_w: float) -> tuple[float, float]:
    """Most common level in the lower part of the range, and the spread of the rows around it. [W], [W]"""
    low, high = percentile(power_w, 1), percentile(power_w, 99)
    width = max(high - low, 4 * resolution_w, 1e-6)
    bottom = low - width * 0.02
    edges = np.linspace(bottom, low + width * LOWER_PART, int(BINS * LOWER_PART) + 1)
    counts = counts_between(np.sort(power_w), edges)
    smooth = np.convolve(counts, (0.25, 0.5, 0.25), mode="same")
    middle = float(edges[int(np.argmax(smooth))] + (edges[1] - edges[0]) / 2)
    near = power_w[np.abs(power_w - middle) <= max(0.06 * width, 2 * resolution_w)]
    if not near.size:
        return middle, 0.0
    mode = median(near)
    below = mode - near[near <= mode]
    # the lower side only: the upper one holds rows of the heater going on and off
    spread = math.sqrt(average(below**2)) if below.size else 0.0
    return mode, max(spread, resolution_w / 4)


def _changes(is_high: NDArray[np.bool_]) -> int:
    """How often neighbouring rows differ."""
    return int(np.count_nonzero(is_high[1:] != is_high[:-1]))


def _undisturbed(is_off: NDArray[np.bool_]) -> NDArray[np.bool_]:
    """Rows that are off and whose neighbours are off: a row beside a pulse may hold a piece of it."""
    inside = is_off.copy()
    inside[1:] &= is_off[:-1]
    inside[:-1] &= is_off[1:]
    return inside


@frozen
class _Crowd:
    """Rows above the lower mode: within a hot end's watts, and between that and the upper level.

    ``is_hot_end`` says whether the first crowd together, ``is_clean`` whether hardly any row lies between.
    ``smear`` is the part of all rows that hold pieces of pulses, were they spread over the whole step as they
    are where they can be told.
    """

    near_high_w: float
    is_hot_end: bool
    is_clean: bool
    smear: float


def _crowd(power_w: F64, off_w: float, step_w: float, reach_w: float) -> _Crowd:
    """What lies between the two levels.

    Pieces of short pulses lie anywhere up to the upper level. A hot end that pulses by itself makes a level
    of its own within its own watts, and belongs to what is not the bed.
    """
    above = power_w - off_w
    near_high = min(HOT_END_W, step_w / 2)
    upper = above[above > step_w / 2]
    foot = 0.95 * percentile(upper, 5) if upper.size else 0.0
    if near_high <= reach_w or foot <= near_high:
        return _Crowd(near_high, False, False, 0.0)
    lifted = int(np.count_nonzero((above > reach_w) & (above <= near_high)))
    crowd = lifted / (near_high - reach_w)
    is_often = lifted > HOT_END_SHARE * np.count_nonzero(above <= near_high)
    pieces = int(np.count_nonzero((above > near_high) & (above < foot)))
    smear = pieces / (foot - near_high)
    return _Crowd(
        near_high,
        bool(is_often and crowd > CROWDED * smear),
        pieces < CLEAN * above.size,
        smear * step_w / above.size,
    )


def levels(trace: Trace, start_s: float, warm_end_s: float, end_s: float) -> Levels | None:
    """The two levels of a run; None where processing has too few rows to show any.

    Parameters
    ----------
    trace : Trace
    start_s, warm_end_s, end_s : float
        Start of the run, end of its warm-up, end of processing. [s]
    """
    trace = measured(trace)
    plateau_w, plateau_low_w, plateau_end_s = _plateau(trace, start_s, warm_end_s, end_s)
    # a warm-up whose end was not seen must not pass for processing
    time, power = rows_between(trace, max(warm_end_s, plateau_end_s + trace.median_s / 2), end_s)
    if time.size < FEWEST_ROWS:
        return None
    off_w, spread_w = lower_mode(power, trace.resolution_w)
    top_w = percentile(power, 98)
    reach_w = max(OFF_SPREADS * spread_w, OFF_STEPS * trace.resolution_w, OFF_PART * (top_w - off_w))
    is_low = np.abs(power - off_w) <= reach_w
    upper = power[power > off_w + max((top_w - off_w) / 2, reach_w)]
    step_w = percentile(upper, 60) - off_w if upper.size else 0.0
    is_high = power > off_w + step_w / 2
    inside = _undisturbed(~is_high)
    crowd = _crowd(power, off_w, step_w, reach_w)
    # a value averaged for longer has a pulsing hot end in it with its mean already
    is_told = trace.kind != "averaged" or trace.median_s < HOT_END_CYCLE_S
    is_off = power <= off_w + (crowd.near_high_w if is_told and crowd.is_hot_end else reach_w)
    if not (is_told and crowd.is_clean):
        is_off &= inside
    off_u_w = 0.0
    if part_of(is_off) < FEWEST_UNDISTURBED:
        is_off = is_low
        if trace.kind == "averaged":
            # rows beside a pulse hold a piece of it more often than not: the mode itself is nearest
            is_off = np.abs(power - off_w) <= max(spread_w, trace.resolution_w)
            off_u_w = spread_w / math.sqrt(3)
    highest_w = percentile(power, 99.5)
    if plateau_w is not None and plateau_w - off_w < NO_PLATEAU * step_w:
        plateau_w = None  # the heater's warm-up is not in the log
    return Levels(
        time,
        power,
        is_off,
        off_w,
        spread_w,
        step_w,
        highest_w - off_w,
        part_of(power < off_w - max(HOT_END_W, reach_w)),
        part_of(is_low),
        part_of(is_off),
        part_of(is_low[inside]) if part_of(inside) > FEWEST_INSIDE else 0.0,
        crowd.smear if is_told and crowd.is_hot_end else 0.0,
        off_u_w,
        average(power[is_off]) - off_w if is_told and crowd.is_hot_end and is_off.any() else 0.0,
        _changes(is_high),
        _changes(power > (off_w + highest_w) / 2),
        plateau_w,
        plateau_low_w,
        plateau_end_s,
        *_waiting(trace, plateau_end_s, warm_end_s, power, FULL_STEP * step_w),
    )


def _waiting(
    trace: Trace, plateau_end_s: float, warm_end_s: float, processing_w: F64, least_w: float
) -> tuple[F64, F64]:
    """Rows between the plateau and processing without the heater: times [s] and powers [W]."""
    time, power = rows_between(trace, plateau_end_s + trace.median_s / 2, warm_end_s)
    if time.size < FEWEST_WAITING:
        return time[:0], power[:0]
    step = heater_step(processing_w, trace.resolution_w, least_w)
    if step is None:
        return time[:0], power[:0]
    if trace.kind == "averaged":
        # hardly a pulse is as long as the interval: only rows with no piece of one show what is not the bed
        is_off = _undisturbed(power <= step.middle_w)
        return time[is_off], power[is_off]
    is_below = power <= step.middle_w
    # what is not the bed draws less than in processing
    low_w = median(power[is_below]) if is_below.any() else step.middle_w - step.step_w / 2
    return time, without_heater(power, Step(step.step_w, low_w + step.step_w / 2))


def _plateau(
    trace: Trace, start_s: float, warm_end_s: float, end_s: float
) -> tuple[float | None, float, float]:
    """Level at the end, low level, and end of the first full-power plateau. [W], [W], [s]

    It is in the warm-up, or early in the run if that is unknown.
    """
    reach_s = min(end_s, warm_end_s + 3 * trace.median_s)
    if warm_end_s - start_s < trace.median_s:
        reach_s = start_s + EARLY * (end_s - start_s)
    time, power = rows_between(trace, start_s, reach_s)
    if time.size < 2 or power.max() <= 0:
        return None, 0.0, start_s
    # processing may draw more than half as much: the bed of a small heater that is driven evenly
    later = rows_between(trace, reach_s, end_s)[1]
    top_w, base_w = float(power.max()), percentile(later, 10) if later.size else 0.0
    is_high = power > max(PLATEAU_PART * top_w, base_w + PLATEAU_RISE * (top_w - base_w))
    if not is_high.any():
        return None, 0.0, start_s
    first = int(np.argmax(is_high))
    fall = np.flatnonzero(~is_high[first:])
    last = first + (int(fall[0]) if fall.size else time.size - first) - 1
    # one averaged row may hold both the rise and the fall
    if last <= first and (trace.median_s < 5 or trace.kind == "averaged"):
        return None, 0.0, start_s
    # the last row may hold the fall
    tail = power[max(first, last - 3) : last + 1]
    whole = power[first + 1 : last] if last > first + 1 else power[first : last + 1]
    end_w = median(tail) if tail.size > 2 else float(tail.max())
    return end_w, percentile(whole, LOW_OF_PLATEAU), float(time[last])
