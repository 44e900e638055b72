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
_ROLL_OVERS = tuple(10.0**k for k in range(2, 12))


@frozen
class Stitched:
    """A counter that never falls; ``breaks_s`` are the times of the first row after each break. [Wh], [s]"""

    counter_wh: F64
    step_wh: float
    breaks_s: tuple[float, ...] = ()
    is_per_interval: bool = False
    problems: tuple[Problem, ...] = ()


def stitch(
    time_s: F64, counter_wh: F64, power_w: F64 | None, file: str, gains_wh: tuple[float, float]
) -> Stitched | None:
    """Let a counter run on; None when it holds nothing.

    Parameters
    ----------
    time_s : ndarray, shape (n,)
        Strictly increasing. [s]
    counter_wh : ndarray, shape (n,)
        As read; NaN where missing. [Wh]
    power_w : ndarray, shape (n,), or None
        To judge what a jump may be. [W]
    file : str
        Name for problems.
    gains_wh : tuple of float
        Smallest and largest step of the counter, NaN or infinite where a value is missing. [Wh]
    """
    if counter_wh.size < 2:
        return None
    values, times, (lowest, highest) = counter_wh, time_s, gains_wh
    if not np.isfinite(gains_wh).all():
        known = np.isfinite(counter_wh)
        values, times = counter_wh[known], time_s[known]
        if values.size < 2:
            return None
        lowest, highest = step_extremes(values)
    step = smallest_step(values)
    if lowest >= 0 and highest <= LEAST_LEAP_WH:
        return Stitched(counter_wh, step)
    steps = np.diff(values)
    if lowest >= 0 and not _jumps(steps, times, power_w).any():
        return Stitched(counter_wh, step)
    if (steps < 0).mean() > 0.1:
        return _per_interval(counter_wh, step, file)
    good = _without_glitches(np.flatnonzero(np.isfinite(counter_wh)), counter_wh)
    values = counter_wh[good]
    steps = np.diff(values)
    fell = np.flatnonzero(steps < 0)
    leapt = np.flatnonzero(_jumps(steps, time_s[good], power_w))
    add = np.zeros(values.size)
    breaks = []
    rolled = 0
    for i in fell.tolist():
        before, after = float(values[i]), float(values[i + 1])
        most = _most(time_s[good], i, power_w, step)
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
    out = np.full(counter_wh.shape, np.nan)
    out[good] = np.maximum.accumulate(values + np.cumsum(add))
    problems = []
    if fell.size:
        facts = {"count": int(fell.size), "rolled": rolled}
        problems.append(Problem("log.counter_reset", Severity.NOTE, file, facts=facts))
    if leapt.size:
        problems.append(Problem("log.counter_leap", Severity.CAUTION, file, facts={"count": int(leapt.size)}))
    return Stitched(out, step, tuple(sorted(breaks)), False, tuple(problems))


def _most(time_s: F64, i: int, power_w: F64 | None, step: float) -> float:
    """The most that can have been counted over one interval. [Wh]"""
    highest = 3700.0 if power_w is None or not power_w.size else 2.0 * float(power_w.max()) + 20.0
    return highest * float(time_s[i + 1] - time_s[i]) / SECONDS_PER_HOUR + 3 * step


def _jumps(steps: F64, time_s: F64, power_w: F64 | None) -> NDArray[np.bool_]:
    """Steps up that no plug-in load explains: more than 40 A at 230 V for the whole interval."""
    highest = 9200.0
    if power_w is not None and power_w.size:
        highest = max(highest, 2.0 * float(power_w.max()))
    most = highest * np.diff(time_s) / SECONDS_PER_HOUR
    jumps: NDArray[np.bool_] = steps > most + max(LEAST_LEAP_WH, 3 * smallest_step(steps))
    return jumps


def _without_glitches(good: I64, counter_wh: F64) -> I64:
    """Rows without single values that fall (or leap) and come back at once."""
    values = counter_wh[good]
    if values.size < 4:
        return good
    before, here, after = values[:-2], values[1:-1], values[2:]
    odd = ((here < before) | (here > after)) & (after >= before)
    lone = odd & (np.abs(here - before) > 10 * np.maximum(after - before, smallest_step(values)))
    keep = np.ones(values.size, dtype=bool)
    keep[1:-1][lone] = False
    return good[keep]


def _per_interval(counter_wh: F64, step: float, file: str) -> Stitched:
    """A column that falls again and again holds the energy of each interval."""
    total = np.cumsum(np.where(counter_wh > 0, counter_wh, 0.0))
    note = Problem("log.energy_per_interval", Severity.NOTE, file)
    return Stitched(total, step, (), True, (note,))
