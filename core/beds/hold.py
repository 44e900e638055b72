"""Hold tests: what the bed alone takes to stay at a temperature, and what its warm-up took.

Rules: the watts are those of the settled part after the warm-up (`core.beds.steady`). What else the
machine draws is taken off: the level between pulses where the heater is seen to switch (the same moment
and state), else the level just before the test.

A log of several temperatures one after the other is cut where its own bed temperature says so.
"""

import math
from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from attrs import frozen

from core.activity.rows import spans
from core.beds.heater import FULL_STEP, Levels, levels, rows_between
from core.beds.share import FEWEST_OFF, FEWEST_SPREADS
from core.beds.steady import FEWEST_WINDOWS, Steady, steady, u_of_mean
from core.energy.integral import mean_w
from core.energy.total import between
from core.study import Meter
from core.traces import Trace
from core.units import J_PER_WH, SECONDS_PER_HOUR

#: the level before a test is read over this time, ending this long before it [s]
BEFORE_S, CLEAR_S = 300.0, 5.0
#: fewest changes of a heater that is seen to switch
FEWEST_CHANGES = 6
#: a held temperature moves by no more than this [K], for at least this long [s]
HELD_K = 2.0
HELD_S = 600.0
#: logged temperatures are looked at this often [s]
GRID_S = 15.0
#: the heater came on within this of where the bed is seen to leave a temperature [s]
AROUND_S = 90.0
SECONDS_PER_HALF_HOUR = SECONDS_PER_HOUR / 2


@frozen(cache_hash=True)
class Hold:
    """One temperature held.

    Parameters
    ----------
    start_s, warm_end_s, end_s : float
        Start of heating, end of warm-up (equal to the start where there is none), end. [s]
    steady : Steady
        At the plug, with all that the machine draws.
    base_w, base_u_w : float or None
        What is not the bed, and its standard uncertainty; None where the log does not show it. [W]
    warm_up_wh, warm_up_u_wh : float or None
        Energy of the bed in the warm-up, and its standard uncertainty without the meter's gain. [Wh]
    half_hour_w, full_hour_w : float or None
        Mean power of the first half hour and of the first hour from the start of heating on; None where the
        test is shorter. [W]
    bed_c, room_c : float or None
        Medians of the logged temperatures over the settled part. [degC]
    is_first : bool
        Whether it is the first temperature of its test; the bed then most likely began at room temperature.
    """

    start_s: float
    warm_end_s: float
    end_s: float
    steady: Steady
    base_w: float | None
    base_u_w: float | None
    warm_up_wh: float | None
    warm_up_u_wh: float | None
    half_hour_w: float | None
    full_hour_w: float | None
    bed_c: float | None
    room_c: float | None
    is_first: bool = True

    @property
    def bed_w(self) -> float | None:
        """Watts of the bed alone, held. [W]"""
        return None if self.base_w is None else self.steady.mean_w - self.base_w

    @property
    def bed_u_w(self) -> float | None:
        """Standard uncertainty of `bed_w` without the meter's gain; the offset cancels. [W]"""
        return None if self.base_u_w is None else math.hypot(self.steady.u_w, self.base_u_w)

    @property
    def warm_up_s(self) -> float:
        """Length of the warm-up. [s]"""
        return self.warm_end_s - self.start_s


def holds(trace: Trace, start_s: float, end_s: float, meter: Meter) -> tuple[Hold, ...]:
    """The temperatures held in a hold test, one after the other.

    Parameters
    ----------
    trace : Trace
    start_s, end_s : float
        Of the test. [s]
    meter : Meter

    Returns
    -------
    tuple of Hold
        Empty where the test is too short to hold a few windows.
    """
    found = (_hold(trace, a, b, start_s, meter) for a, b in _temperatures(trace, start_s, end_s))
    return tuple(hold for hold in found if hold is not None)


def _hold(trace: Trace, start_s: float, end_s: float, test_start_s: float, meter: Meter) -> Hold | None:
    warm_end_s = _warm_up_end_s(trace, start_s, end_s)
    settled = steady(trace, warm_end_s, end_s, meter)
    if settled is None:
        return None
    base_w, base_u_w = _base(trace, start_s, warm_end_s, end_s, test_start_s)
    warm_up_wh = warm_up_u_wh = None
    if base_w is not None and warm_end_s > start_s:
        whole = between(trace, start_s, warm_end_s, meter)
        warm_up_wh = whole.energy_wh - base_w * (warm_end_s - start_s) / J_PER_WH
        warm_up_u_wh = math.sqrt(sum(i.u_wh**2 for i in whole.influences if i.shared is None))
    return Hold(
        start_s=start_s,
        warm_end_s=warm_end_s,
        end_s=end_s,
        steady=settled,
        base_w=base_w,
        base_u_w=base_u_w,
        warm_up_wh=warm_up_wh,
        warm_up_u_wh=warm_up_u_wh,
        half_hour_w=_first_w(trace, start_s, end_s, SECONDS_PER_HALF_HOUR),
        full_hour_w=_first_w(trace, start_s, end_s, SECONDS_PER_HOUR),
        bed_c=logged_c(trace, "bed", settled.start_s, end_s),
        room_c=logged_c(trace, "room", settled.start_s, end_s),
        is_first=start_s == test_start_s,
    )


def _first_w(trace: Trace, start_s: float, end_s: float, seconds: float) -> float | None:
    """Mean power of the first `seconds`; None where there are not so many. [W]"""
    if end_s - start_s < seconds - trace.median_s:
        return None
    return mean_w(trace, start_s, min(start_s + seconds, end_s))


def _warm_up_end_s(trace: Trace, start_s: float, end_s: float) -> float:
    """Where the heater first lets go: the power falls below half-way from its peak to the held mean. [s]

    A switching heater falls to the base, a fast-switched one to its held mean.
    """
    time, power = rows_between(trace, start_s, end_s)
    if power.size < FEWEST_WINDOWS:
        return start_s
    held_w = mean_w(trace, (start_s + end_s) / 2, end_s)
    top_w = float(np.percentile(power, 99.5))
    if top_w <= held_w:
        return start_s
    high = power > (top_w + held_w) / 2
    begin = int(np.argmax(high))
    fall = np.flatnonzero(~high[begin:])
    if not high.any() or not fall.size:
        return start_s
    let_go_s = float(time[begin + fall[0]])
    later = high[begin + fall[0] :]
    if not later.any():
        return let_go_s
    # a pulse like those that hold the temperature is no warm-up
    row_s = float(time[-1] - time[0]) / (time.size - 1)
    pulses = (1 + int(np.count_nonzero(np.diff(later.astype(np.int8))))) / 2
    pulse_s = float(later.sum()) * row_s / pulses
    return let_go_s if let_go_s - float(time[begin]) > 2 * pulse_s + row_s else start_s


def _base(
    trace: Trace, start_s: float, warm_end_s: float, end_s: float, test_start_s: float
) -> tuple[float | None, float | None]:
    """What the machine draws beside the bed, and its standard uncertainty. [W], [W]"""
    found = levels(trace, start_s, warm_end_s, end_s)
    if (
        found is not None
        and found.changes >= FEWEST_CHANGES
        and found.step_w >= FEWEST_SPREADS * found.spread_w
        and found.low_share >= FEWEST_OFF
        and found.step_w >= _full_step_w(found, is_warming=warm_end_s > start_s)
    ):
        near_w = FEWEST_SPREADS * found.spread_w + trace.resolution_w
        off_w = found.power_w[np.abs(found.power_w - found.off_w) <= near_w]
        return float(off_w.mean()), math.hypot(u_of_mean(off_w), trace.resolution_w / math.sqrt(12))
    clear_s = test_start_s - CLEAR_S - trace.median_s
    _, before_w = rows_between(trace, clear_s - BEFORE_S, clear_s)
    if before_w.size < FEWEST_WINDOWS:
        return None, None
    base_w = float(np.median(before_w))
    spread_w = 1.4826 * float(np.median(np.abs(before_w - base_w)))
    return base_w, math.hypot(spread_w, trace.resolution_w / math.sqrt(12))


def _full_step_w(found: Levels, *, is_warming: bool) -> float:
    """Smallest step that is the whole heater, and no wandering of a fast-switched one. [W]

    With nothing else running, a heater takes more than all the rest; where a warm-up shows it at full power,
    more is known.
    """
    if not is_warming or found.plateau_w is None:
        return found.off_w
    return FULL_STEP * (found.plateau_w - found.off_w)


def logged_c(trace: Trace, place: str, start_s: float, end_s: float) -> float | None:
    """Median logged temperature of an interval; None where the log has none. [degC]"""
    column = trace.temperatures_c.get(place)
    if column is None:
        return None
    first, last = np.searchsorted(trace.time_s, (start_s, end_s))
    values = column[first:last][np.isfinite(column[first:last])]
    return float(np.median(values)) if values.size else None


def _temperatures(trace: Trace, start_s: float, end_s: float) -> Sequence[tuple[float, float]]:
    """The test cut into its temperatures: each from where the bed leaves the one before."""
    column = trace.temperatures_c.get("bed")
    whole = [(start_s, end_s)]
    if column is None or end_s - start_s < 2 * HELD_S:
        return whole
    known = np.isfinite(column)
    if known.sum() < FEWEST_WINDOWS:
        return whole
    grid_s = np.arange(start_s, end_s, GRID_S)
    bed_c = np.interp(grid_s, trace.time_s[known], column[known])
    reach = round(HELD_S / GRID_S)
    ahead = np.lib.stride_tricks.sliding_window_view(bed_c, reach)
    begins_held = ahead.max(axis=1) - ahead.min(axis=1) <= 2 * HELD_K
    levels_c = [
        (float(np.median(bed_c[a : b + reach])), float(grid_s[b + reach - 1]))
        for a, b in spans(begins_held).tolist()
    ]
    cuts = [
        _leaving_s(trace, end, is_rise=next_c > c)
        for (c, end), (next_c, _) in pairwise(levels_c)
        if abs(c - next_c) > HELD_K
    ]
    return list(pairwise([start_s, *cuts, end_s]))


def _leaving_s(trace: Trace, held_until_s: float, *, is_rise: bool) -> float:
    """When the bed leaves a temperature that it was held at: for a rise, where the heater came on for long.

    The logged temperature shows it only to some kelvin: the longest pulse near there began it. [s]
    """
    first, last = np.searchsorted(trace.time_s, (held_until_s - AROUND_S, held_until_s + AROUND_S))
    power = trace.power_w[first:last]
    if not is_rise or power.size < 2:
        return held_until_s
    pulses = spans(power > (float(power.min()) + float(power.max())) / 2)
    begins = [(begin - after, begin) for begin, after in pulses.tolist()]
    row = int(first) + min(begins)[1]
    return float(trace.time_s[max(row - 1, 0)] + trace.time_s[row]) / 2
