"""The energy counter made to run on over resets, roll-overs and single bad values.

Rules: between two breaks the differences are the meter's own; over a break only what the counter shows
after it is added, and the break is kept, so that nobody takes it for knowledge.
"""

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from core.logs.table import I64
from core.problems import Problem, Severity
from core.traces import F64, smallest_step, step_extremes
from core.units import SECONDS_PER_HOUR

#: a smaller step up is never called a leap [Wh]
LEAST_LEAP_WH = 1000.0
_ROLL_OVERS = tuple(10.0**k for k in range(2, 10))


@frozen
class Stitched:
    """A counter that never falls; ``breaks_s`` are the times of the first row after each break. [Wh], [s]"""

    counter_wh: F64
    step_wh: float
    breaks_s: tuple[float, ...] = ()
    is_per_interval: bool = False
    problems: tuple[Problem, ...] = ()


def stitch(time_s: F64, counter: F64, unit_wh: float, power_w: F64 | None, file: str) -> Stitched | None:
    """Bring a counter to Wh and let it run on; None when it holds nothing.

    Parameters
    ----------
    time_s : ndarray, shape (n,)
        Strictly increasing. [s]
    counter : ndarray, shape (n,)
        As written; NaN where missing.
    unit_wh : float
        Watt hours per written unit.
    power_w : ndarray, shape (n,), or None
        To judge what a jump may be. [W]
    """
    if counter.size < 2:
        return None
    if np.isfinite(counter.sum()):
        values, times = counter, time_s
    else:
        known = np.isfinite(counter)
        values, times = counter[known], time_s[known]
    if values.size < 2:
        return None
    lowest, highest = step_extremes(values)
    step = smallest_step(values)
    if lowest >= 0 and highest <= LEAST_LEAP_WH / unit_wh:
        return Stitched(counter if unit_wh == 1.0 else counter * unit_wh, step * unit_wh)
    steps = np.diff(values)
    if lowest >= 0 and not _jumps(steps, times, unit_wh, power_w).any():
        return Stitched(counter * unit_wh, step * unit_wh)
    if (steps < 0).mean() > 0.1:
        return _per_interval(counter, unit_wh, step, file)
    good = _without_glitches(np.flatnonzero(np.isfinite(counter)), counter)
    values = counter[good]
    steps = np.diff(values)
    fell = np.flatnonzero(steps < 0)
    leapt = np.flatnonzero(_jumps(steps, time_s[good], unit_wh, power_w))
    add = np.zeros(values.size)
    breaks = []
    rolled = 0
    for i in fell.tolist():
        before, after = float(values[i]), float(values[i + 1])
        most = _most(time_s[good], i, unit_wh, power_w, step)
        gained = 0.0
        limit = next((r for r in _ROLL_OVERS if before <= r < 1.02 * before + 10 * step), None)
        if limit is not None and limit - before + after <= most:
            gained = limit - before + after
            rolled += 1
        elif after <= most:
            gained = after
        add[i + 1] += before - after + gained
        breaks.append(float(time_s[good[i + 1]]))
    for i in leapt.tolist():
        add[i + 1] -= float(steps[i])
        breaks.append(float(time_s[good[i + 1]]))
    out = np.full(counter.shape, np.nan)
    out[good] = np.maximum.accumulate((values + np.cumsum(add)) * unit_wh)
    problems = []
    if fell.size:
        facts = {"count": int(fell.size), "rolled": rolled}
        problems.append(Problem("log.counter_reset", Severity.NOTE, file, facts=facts))
    if leapt.size:
        problems.append(Problem("log.counter_leap", Severity.CAUTION, file, facts={"count": int(leapt.size)}))
    return Stitched(out, step * unit_wh, tuple(sorted(breaks)), False, tuple(problems))


def _most(time_s: F64, i: int, unit_wh: float, power_w: F64 | None, step: float) -> float:
    """The most that can have been counted over one interval, in written units."""
    highest = 3700.0 if power_w is None or not power_w.size else 2.0 * float(power_w.max()) + 20.0
    return highest * float(time_s[i + 1] - time_s[i]) / SECONDS_PER_HOUR / unit_wh + 3 * step


def _jumps(steps: F64, time_s: F64, unit_wh: float, power_w: F64 | None) -> NDArray[np.bool_]:
    """Steps up that no plug-in load explains: more than 40 A at 230 V for the whole interval."""
    highest = 9200.0
    if power_w is not None and power_w.size:
        highest = max(highest, 2.0 * float(power_w.max()))
    most = highest * np.diff(time_s) / SECONDS_PER_HOUR / unit_wh
    jumps: NDArray[np.bool_] = steps > most + max(LEAST_LEAP_WH / unit_wh, 3 * smallest_step(steps))
    return jumps


def _without_glitches(good: I64, counter: F64) -> I64:
    """Rows without single values that fall (or leap) and come back at once."""
    values = counter[good]
    if values.size < 4:
        return good
    before, here, after = values[:-2], values[1:-1], values[2:]
    odd = ((here < before) | (here > after)) & (after >= before)
    lone = odd & (np.abs(here - before) > 10 * np.maximum(after - before, smallest_step(values)))
    keep = np.ones(values.size, dtype=bool)
    keep[1:-1][lone] = False
    return good[keep]


def _per_interval(counter: F64, unit_wh: float, step: float, file: str) -> Stitched:
    """A column that falls again and again holds the energy of each interval."""
    total = np.cumsum(np.where(counter > 0, counter, 0.0)) * unit_wh
    note = Problem("log.energy_per_interval", Severity.NOTE, file)
    return Stitched(total, step * unit_wh, (), True, (note,))
