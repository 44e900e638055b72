"""The bed's part of a run's energy from the run's own trace, where the heater is seen to switch (way 4).

What was drawn with the heater off is taken from the run's energy, which needs no pulse to be sampled well:
the loss of the supply is in it, falling watts of a warming heater do not matter, and an energy counter
helps. Where the heater is not seen to switch there is no share but the reason, and a bound where there is an
honest one. Ways 1 to 3, which are better where they can be had, are in `core.beds.ways`.
"""

import math

import numpy as np

from core.averages import average, part_of
from core.beds.heater import FULL_STEP, Levels, levels, rows_between
from core.beds.in_step import meets_too_few, unsure_wh
from core.beds.rest import WINDOW_S, rest
from core.beds.two_levels import apart_w
from core.energy.refresh import measured
from core.language import mark
from core.problems import Problem, Severity
from core.results.values import BedShare, Energy, Influence
from core.traces import Trace
from core.uncertainty import NORMAL_95
from core.units import J_PER_WH

SWITCHING = "heater switching"

#: no share is known better than this
FLOOR_SHARE = 0.002
#: refusals: fewest changes; smallest step in spreads; smallest share of off rows, and of undisturbed
#: averaged ones
FEWEST_CHANGES = 4
FEWEST_SPREADS = 4.0
FEWEST_OFF = 0.06
#: more rows than this that hold pieces of pulses, where a hot end pulses too, hide the level
MOST_CONFUSED = 0.25
#: rows between a hot end's watts and the second of these parts of the step hold pieces of pulses; so many of
#: them, and so many rows further below the lower mode than the first part, where pulses are short, and what
#: pulses is not sure
PIECES = (0.12, 0.8)
MANY_PIECES, FEW_LOWER = 0.08, 0.03
#: two ways to the level with the heater off that lie further apart than this part of the mean power, and it
#: is not seen; nearer ones are as unsure as this part of the distance. Found on simulated runs
MOST_APART, APART_DOUBT = 0.04, 0.8
#: more rows than this far below the lower mode, and the heater is not off there
FEWEST_BELOW = 0.005
#: margin of the largest part of the rows that a mixture takes, for cycles that are not all alike; judgement
MIXTURE_MARGIN = 1.2
#: highest rows that reach less than this part of it tell of no bed: a hot end is as rarely off
LEAST_REACH = 0.5
#: a step smaller than this many times the rest of the machine may be the hot end's
BED_STEP = 1.3
#: a step smaller than this may be a hot end's, whose heaters have 25 to 80 W; common practice, no source [W]
HOT_END_W = 80.0
#: a hot end with fans and motors draws less than this many times a hot end's heater; judgement, no source
HOT_END_WITH_FANS = 1.5
#: what is not the bed draws no more on average than this many times the lowest 20 s mean of all, and of each
#: few minutes; judgement, no source
BOUND_LOWEST, BOUND_FOLLOWED = 1.25, 1.08
BOUND_S = 20.0
#: instants are taken together at least this many at a time: a few may all miss a hot end that pulses too
BOUND_ROWS = 40
#: rows this near to the edges of processing may hold something else: an edge is found to about a row, and a
#: machine that has just ended may rest for as long as nobody touches it; common practice, no source [s]
BOUND_EDGE_S, BOUND_EDGE_ROWS = 60.0, 2


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
    why_not, doubt_w = _why_not(trace, found, standby_w), 0.0
    if why_not is None:
        doubt_w = apart_w(found, trace)
        why_not = _why_mixed(found, doubt_w) or _why_not_counted(trace, found, start_s, energy)
    if why_not is not None:
        low, high = _bound(found, trace, energy, end_s - start_s, standby_w)
        return BedShare(None, None, None, SWITCHING, why_not, low, high)
    return _switching(trace, found, start_s, end_s, energy, standby_w, doubt_w)


def _refused(code: str, **facts: object) -> BedShare:
    return BedShare(None, None, None, SWITCHING, Problem(code, Severity.NOTE, facts=facts))


def _why_not(trace: Trace, found: Levels, standby_w: float | None) -> Problem | None:
    """Why the share cannot be seen in this run; None where it can."""
    rest_w = found.off_w - (standby_w or 0.0)
    code = ""
    if found.step_w < FEWEST_SPREADS * found.spread_w or found.changes < FEWEST_CHANGES:
        code = "bed.not_switching"
    elif (found.plateau_w is not None and found.plateau_w - found.off_w < HOT_END_W) or (
        found.plateau_w is None and max(found.step_w, found.reach_w) < max(BED_STEP * rest_w, HOT_END_W)
    ):
        code = "bed.hot_end"
    elif found.low_share < FEWEST_OFF:
        code = "bed.never_off"
    elif found.confused_share > MOST_CONFUSED or (trace.kind != "averaged" and _is_muddled(found)):
        code = "bed.too_fast"
    elif found.plateau_w is None and (trace.kind == "averaged" or found.are_pulses_short):
        code = "bed.no_plateau"
    elif found.plateau_w is not None and not _is_truly_off(trace, found, found.plateau_w, standby_w):
        code = "bed.averaged" if trace.kind == "averaged" else "bed.too_fast"
    elif max(found.step_w, found.reach_w) < max(BED_STEP * rest_w, HOT_END_W):
        code = "bed.hot_end"
    if not code:
        return None
    facts: dict[str, object] = {
        "step_w": found.step_w,
        "rest_w": rest_w,
        "off_w": found.off_w,
        "changes": found.changes,
        "interval_s": trace.median_s,
        "plateau_w": found.plateau_w or 0.0,
        "off_percent": 100 * found.off_share,
    }
    return Problem(code, Severity.NOTE, facts=facts)


def _why_mixed(found: Levels, doubt_w: float) -> Problem | None:
    """Why two ways to see the level say that pulses of several heaters are mixed; None where they agree."""
    if doubt_w <= MOST_APART * average(found.power_w):
        return None
    return Problem("bed.mixed", Severity.NOTE)


def _why_not_counted(trace: Trace, found: Levels, start_s: float, energy: Energy) -> Problem | None:
    """Why the samples do not say how long the heater was on; None where they do, or a counter does."""
    if not _is_by_samples(trace, energy) or not meets_too_few(found, start_s):
        return None
    facts = {"interval_s": trace.median_s, "warm_up_s": found.plateau_end_s - start_s}
    return Problem("bed.in_step", Severity.NOTE, facts=facts)


def _is_by_samples(trace: Trace, energy: Energy) -> bool:
    """Whether the energy comes from instants alone."""
    return trace.kind == "sampled" and energy.by_counter_wh is None


def _is_truly_off(trace: Trace, found: Levels, plateau_w: float, standby_w: float | None) -> bool:
    """Whether the lower level is the heater off, and not a mixture that the meter's window made.

    A window w that is longer than every off-time b sees the lowest mixture in no more than p = (w - b) / c of
    the rows, c the cycle, and the highest rows stand above it by r = b / w of the full step or less where the
    on-time is longer than w, by r = (c - w) / w where it is not. Either way p <= (1 - r) / (1 + r): more rows
    than that at the lower level, and it is the heater off.
    """
    full_w = plateau_w - found.off_w
    if full_w <= 0 or found.below_share > FEWEST_BELOW:
        return False
    if trace.kind != "averaged" and found.step_w >= FULL_STEP * full_w:
        return True
    if found.reach_changes < FEWEST_CHANGES or found.reach_w < LEAST_REACH * full_w:
        return False
    if trace.kind == "averaged":
        # measured from the lower level itself, a mixture would pass for a full step
        full_w = plateau_w - (standby_w or 0.0)
        reach = min(found.reach_w / full_w, 1.0)
        return found.low_share > MIXTURE_MARGIN * (1 - reach) / (1 + reach)
    return found.low_share + found.reach_w / full_w > 1


def _is_muddled(found: Levels) -> bool:
    """Whether pulses of the bed hardly longer than a value, and those of a hot end, cannot be told apart.

    Many rows then hold pieces of pulses, and the off rows have a level of their own further up or further
    down.
    """
    above_w = found.power_w - found.off_w
    # further up than a hot end alone reaches
    foot_w = min(HOT_END_W, PIECES[1] * found.step_w / 2)
    is_piece = (above_w > foot_w) & (above_w < PIECES[1] * found.step_w)
    if not found.are_pulses_short or part_of(is_piece) < MANY_PIECES:
        return False
    lower = part_of(above_w < -PIECES[0] * found.step_w)
    return bool(found.hot_end_w != 0 or lower > FEW_LOWER)


def _switching(
    trace: Trace,
    found: Levels,
    start_s: float,
    end_s: float,
    energy: Energy,
    standby_w: float | None,
    doubt_w: float,
) -> BedShare:
    """Way 4 for a run that shows its heater switching; `doubt_w` is how far two ways to see it are apart."""
    other = rest(found, start_s, end_s, standby_w, is_averaged=trace.kind == "averaged")
    bed_wh = energy.energy_wh - other.energy_wh
    part = bed_wh / energy.energy_wh
    own_wh = math.sqrt(sum(i.u_wh**2 for i in energy.influences if i.shared is None))
    met_wh = unsure_wh(found, start_s, end_s) if _is_by_samples(trace, energy) else 0.0
    from_energy_wh = _by_energy_wh(energy.energy_wh, part, own_wh)
    # what the energy is unsure by has the usual lottery of pulses in it already
    in_step_wh = _by_energy_wh(energy.energy_wh, part, max(met_wh, own_wh))
    apart_wh = doubt_w * (end_s - found.plateau_end_s) / J_PER_WH
    # the rest of the machine may have been on for the whole of a gap that hides the start, or for none of it
    hidden_s = next((g.seconds for g in trace.gaps if g.start_s <= start_s <= g.end_s), 0.0)
    hidden_wh = found.off_w * hidden_s / math.sqrt(12) / J_PER_WH
    doubts = (
        *other.doubts,
        Influence(mark("level by two ways"), APART_DOUBT * apart_wh),
        Influence(mark("energy of the run"), from_energy_wh),
        Influence(mark("gaps"), hidden_wh),
        Influence(mark("samples in step with the pulses"), math.sqrt(in_step_wh**2 - from_energy_wh**2)),
        Influence(mark("two levels"), FLOOR_SHARE * energy.energy_wh),
    )
    doubts = tuple(d for d in doubts if d.u_wh > 0)
    u_share = math.sqrt(sum(d.u_wh**2 for d in doubts)) / energy.energy_wh
    if not 0 < part < 1:
        return _refused("bed.no_sense", percent=100 * part)
    return BedShare(part, NORMAL_95 * u_share, bed_wh, SWITCHING, influences=doubts)


def _by_energy_wh(energy_wh: float, part: float, own_wh: float) -> float:
    """What an unsure energy of the run gives the share, as standard uncertainty times the energy. [Wh]

    The bed takes all of what the energy is wrong by, and the whole takes it too. A share falls faster with
    a smaller energy than it rises with a larger one, but to no less than nothing: what goes further counts.
    """
    unsure_wh, rest_wh = NORMAL_95 * own_wh, (1 - part) * energy_wh
    least_wh = energy_wh - unsure_wh
    fall = part if least_wh <= rest_wh else rest_wh / least_wh - (1 - part)
    rise = (1 - part) - rest_wh / (energy_wh + unsure_wh)
    return max(fall, rise) / NORMAL_95 * energy_wh


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
    edge_s = max(BOUND_EDGE_S, BOUND_EDGE_ROWS * trace.median_s)
    is_inner = found.time_s <= found.time_s[-1] - edge_s
    time_s, power_w = found.time_s[is_inner], found.power_w[is_inner]
    if power_w.size < rows:
        return None, None
    sums = np.concatenate(([0.0], np.cumsum(power_w)))
    means_w = (sums[rows:] - sums[:-rows]) / rows
    lowest_w = float(means_w.min())
    # what is not the bed changes as the part grows: the least of each few minutes follows it
    windows = np.floor((time_s[: means_w.size] - time_s[0]) / WINDOW_S).astype(np.int64)
    starts = np.flatnonzero(np.diff(windows, prepend=-1))
    followed_w = average(np.minimum.reduceat(means_w, starts))
    if (
        found.plateau_w - lowest_w < HOT_END_W
        and found.plateau_w - (standby_w or 0.0) < HOT_END_WITH_FANS * HOT_END_W
    ):
        # nothing as large as a bed's heater shows, not even in the warm-up
        return None, None
    # samples that keep step with the pulses may seldom meet them: then their own mean is the fair one
    sampled_w = min(mean_w, energy.by_power_wh * J_PER_WH / seconds) if energy.by_power_wh else mean_w
    rest_w = min(BOUND_LOWEST * lowest_w, BOUND_FOLLOWED * followed_w)
    at_least = 1 - rest_w / sampled_w
    at_most = 1 - (standby_w or 0.0) / mean_w
    return max(at_least, 0.0), min(max(at_most, 0.0), 1.0)
