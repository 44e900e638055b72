"""The bed's part of a run's energy from the run's own trace, where the heater is seen to switch (way 4).

What was drawn with the heater off is taken from the run's energy, which needs no pulse to be sampled well:
the loss of the supply is in it, falling watts of a warming heater do not matter, and an energy counter
helps. Where the heater is not seen to switch there is no share but the reason, and a bound where there is an
honest one. Ways 1 to 3, which are better where they can be had, are in `core.beds.ways`.
"""

import math

import numpy as np

from core.beds.heater import Levels, levels, rows_between
from core.energy.refresh import measured
from core.problems import Problem, Severity
from core.results.values import BedShare, Energy
from core.traces import F64, Trace
from core.uncertainty import NORMAL_95
from core.units import J_PER_WH

SWITCHING = "heater switching"

#: the level with the heater off is followed in windows of this length [s]
WINDOW_S = 240.0
#: during warm-up what is not the bed rises from standby to its level in processing: this part of the way,
#: with a rectangle of this half-width; judgement, no source
WARM_UP_PART, WARM_UP_DOUBT = 0.62, 0.38
#: what heating a hot end takes beyond holding it, at the plug, and the half-width of a rectangle around it:
#: 5 to 17 J/K heated by 150 to 230 K over a supply of 0.85 to 0.9, or one still warm from the run before;
#: judgement, no source [Wh]
HOT_END_WH, HOT_END_DOUBT_WH = 0.55, 0.5
#: how well the off rows of a window stand for the whole window, as part of what processing adds to standby
OFF_ROWS_DOUBT = 0.012
#: how well rows lifted by a pulsing hot end are told from pieces of the bed's pulses; judgement, no source
HOT_END_DOUBT = 0.25
#: no share is known better than this
FLOOR_SHARE = 0.002
#: refusals: fewest changes; smallest step in spreads; smallest share of off rows, and of undisturbed
#: averaged ones
FEWEST_CHANGES = 4
FEWEST_SPREADS = 4.0
FEWEST_OFF = 0.06
#: more rows than this that hold pieces of pulses, where a hot end pulses too, hide the level
MOST_CONFUSED = 0.25
#: more rows than this far below the lower mode, and the heater is not off there
FEWEST_BELOW = 0.005
#: a step smaller than this part of the warm-up's plateau is no full pulse
FULL_STEP = 0.72
#: a step smaller than this many times the rest of the machine may be the hot end's
BED_STEP = 1.3
#: a step smaller than this may be a hot end's, whose heaters have 25 to 80 W; common practice, no source [W]
HOT_END_W = 80.0
#: margins of the bound for fast-switched beds, in the lowest 20 s mean and in the median
BOUND_LOWEST, BOUND_TYPICAL = 1.06, 0.02
BOUND_S = 20.0
#: instants are taken together at least this many at a time: a few may all miss a hot end that pulses too
BOUND_ROWS = 16


def share(
    trace: Trace, start_s: float, warm_end_s: float, end_s: float, energy: Energy, standby_w: float | None
) -> BedShare:
    """The bed's part of a run from its own trace (way 4).

    Parameters
    ----------
    trace : Trace
    start_s, warm_end_s, end_s : float
        Start of the run, end of its warm-up, end of processing, on the trace's own clock. [s]
    energy : Energy
        Of the run.
    standby_w : float or None
        Level of the machine doing nothing; None where the log shows none. [W]

    Returns
    -------
    BedShare
        With a share, or with the reason why there is none and a bound where there is an honest one.
    """
    trace = measured(trace)
    if energy.energy_wh <= 0 or not start_s <= warm_end_s < end_s:
        return _refused("bed.no_energy")
    found = levels(trace, start_s, warm_end_s, end_s)
    if found is None:
        return _refused("bed.few_rows", rows=rows_between(trace, warm_end_s, end_s)[0].size)
    why_not = _why_not(trace, found, standby_w)
    if why_not is not None:
        low, high = _bound(found, trace, energy, end_s - start_s, standby_w)
        return BedShare(None, None, None, SWITCHING, why_not, low, high)
    return _switching(trace, found, start_s, end_s, energy, standby_w)


def _refused(code: str, **facts: object) -> BedShare:
    return BedShare(None, None, None, SWITCHING, Problem(code, Severity.NOTE, facts=facts))


def _why_not(trace: Trace, found: Levels, standby_w: float | None) -> Problem | None:
    """Why the share cannot be seen in this run; None where it can."""
    rest_w = found.off_w - (standby_w or 0.0)
    facts: dict[str, object] = {
        "step_w": found.step_w,
        "rest_w": rest_w,
        "off_w": found.off_w,
        "changes": found.changes,
        "interval_s": trace.median_s,
        "plateau_w": found.plateau_w or 0.0,
        "off_percent": 100 * found.off_share,
    }
    code = ""
    if found.step_w < FEWEST_SPREADS * found.spread_w or found.changes < FEWEST_CHANGES:
        code = "bed.not_switching"
    elif (found.plateau_w is not None and found.plateau_w - found.off_w < HOT_END_W) or (
        found.plateau_w is None and max(found.step_w, found.reach_w) < max(BED_STEP * rest_w, HOT_END_W)
    ):
        code = "bed.hot_end"
    elif found.low_share < FEWEST_OFF:
        code = "bed.never_off"
    elif found.confused_share > MOST_CONFUSED:
        code = "bed.too_fast"
    elif found.plateau_w is None and (trace.kind == "averaged" or _are_pulses_short(found)):
        code = "bed.no_plateau"
    elif found.plateau_w is not None and not _is_truly_off(found, found.plateau_w):
        code = "bed.averaged" if trace.kind == "averaged" else "bed.too_fast"
    elif max(found.step_w, found.reach_w) < max(BED_STEP * rest_w, HOT_END_W):
        code = "bed.hot_end"
    return Problem(code, Severity.NOTE, facts=facts) if code else None


def _is_truly_off(found: Levels, plateau_w: float) -> bool:
    """Whether the lower level is the heater off, and not a mixture that the meter's window made.

    Where the window is shorter than a cycle and still holds every off-time, the part p of the rows that show
    the lowest mixture and the reach between the lowest and the highest mixture, as part of the full step,
    add up to no more than 1 (p = (window - off) / cycle, reach <= 1 - p cycle / window); a longer window
    leaves even less.
    """
    full_w = plateau_w - found.off_w
    if full_w <= 0 or found.below_share > FEWEST_BELOW:
        return False
    return found.step_w >= FULL_STEP * full_w or found.low_share + found.reach_w / full_w > 1


def _are_pulses_short(found: Levels) -> bool:
    """Whether the heater is on or off for no longer than a sample or two at a time."""
    is_high = found.power_w > found.off_w + found.step_w / 2
    return found.power_w.size / max(found.changes, 1) < 3 or not is_high.any()


def _base(trace: Trace, found: Levels, start_s: float, end_s: float) -> tuple[F64, F64, float]:
    """The level with the heater off through the run: times [s], levels [W], and u of its mean [W]."""
    time, power = found.time_s[found.is_off], found.power_w[found.is_off]
    windows = np.floor((time - time[0]) / WINDOW_S).astype(np.int64)
    counts = np.bincount(windows)
    used = counts > 0
    middles = np.bincount(windows, time)[used] / counts[used]
    means = np.bincount(windows, power)[used] / counts[used]
    squares = np.bincount(windows, power**2)[used] / counts[used]
    variance = np.maximum(squares - means**2, 0) / counts[used]
    # windows with few off rows say little of their mean, and the line between windows less than its ends
    jumps = np.diff(means) ** 2 / 12 if means.size > 1 else np.zeros(1)
    u_w = math.sqrt(float(variance.mean() + jumps.mean()) / middles.size)
    return middles, means, u_w


def _switching(
    trace: Trace, found: Levels, start_s: float, end_s: float, energy: Energy, standby_w: float | None
) -> BedShare:
    """Way 4 for a run that shows its heater switching."""
    middles, means, u_base_w = _base(trace, found, start_s, end_s)
    is_after = found.is_off & (found.time_s > found.plateau_end_s)
    off_from_s = float(found.time_s[np.argmax(is_after)]) if is_after.any() else float(found.time_s[0])
    grid = np.linspace(off_from_s, end_s, 400)
    base_wh = float(np.trapezoid(np.interp(grid, middles, means), grid)) / J_PER_WH
    rest_w = found.off_w - (standby_w or 0.0)
    warm_up_h = (off_from_s - start_s) / J_PER_WH
    processing_h = (end_s - off_from_s) / J_PER_WH
    base_wh += ((standby_w or 0.0) + WARM_UP_PART * rest_w) * warm_up_h
    is_cold = found.plateau_w is not None
    base_wh += HOT_END_WH if is_cold else 0.0
    bed_wh = energy.energy_wh - base_wh
    part = bed_wh / energy.energy_wh
    own_wh = math.sqrt(sum(i.u_wh**2 for i in energy.influences if i.shared is None))
    terms_wh = (
        WARM_UP_DOUBT / math.sqrt(3) * rest_w * warm_up_h,
        HOT_END_DOUBT_WH / math.sqrt(3) if is_cold else 0.0,
        u_base_w * processing_h,
        OFF_ROWS_DOUBT * rest_w * processing_h,
        HOT_END_DOUBT / math.sqrt(3) * abs(found.hot_end_w) * processing_h,
        # the bed takes all of what the energy is wrong by, and the whole takes it too
        (1 - part) * own_wh,
        FLOOR_SHARE * energy.energy_wh,
    )
    u_share = math.sqrt(sum(u**2 for u in terms_wh)) / energy.energy_wh
    if not 0 < part < 1:
        return _refused("bed.no_sense", percent=100 * part)
    return BedShare(part, NORMAL_95 * u_share, bed_wh, SWITCHING)


def _bound(
    found: Levels, trace: Trace, energy: Energy, seconds: float, standby_w: float | None
) -> tuple[float | None, float | None]:
    """Bound on the share of a bed whose switching is too fast to be seen.

    The least that was drawn for 20 s is at least what is not the bed; the bed is the rest of the mean or
    more.
    """
    if found.plateau_w is None:
        return None, None
    mean_w = energy.energy_wh * J_PER_WH / seconds
    rows = max(1, round(BOUND_S / max(trace.median_s if trace.kind != "on_change" else 1.0, 1e-3)))
    if trace.kind == "sampled":
        rows = max(rows, BOUND_ROWS)
    if found.power_w.size < rows:
        return None, None
    sums = np.concatenate(([0.0], np.cumsum(found.power_w)))
    lowest_w = float(np.min(sums[rows:] - sums[:-rows])) / rows
    if found.plateau_w - lowest_w < HOT_END_W:
        # nothing as large as a bed's heater shows, not even in the warm-up
        return None, None
    typical_w = float(np.median(found.power_w))
    # samples that keep step with the pulses may seldom meet them: then their own mean is the fair one
    sampled_w = min(mean_w, energy.by_power_wh * J_PER_WH / seconds) if energy.by_power_wh else mean_w
    at_least = 1 - (BOUND_LOWEST * lowest_w + BOUND_TYPICAL * typical_w) / sampled_w
    at_most = 1 - (standby_w or 0.0) / mean_w
    return max(at_least, 0.0), min(max(at_most, 0.0), 1.0)
