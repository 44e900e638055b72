"""The end of warm-up: bed and hot end have reached temperature and the part is begun.

Two things tell. The first heating ends: the full-power plateau of the bed's heater falls. Then motors move:
the small steps from row to row become those of processing and no longer those of rest; the level of the power
says the same, less clearly. Rows after the plateau are scored one after another: how much better are they
foretold by the warm-up so far than by the later part of the run? The end of warm-up is where the sum of the
scores is greatest. Foretelling each row only from those before it keeps a short warm-up from being fitted to
its own noise [1]_.

References
----------
.. [1] A. P. Dawid, "Present position and potential developments: some personal views: statistical theory: the
   prequential approach", J. R. Stat. Soc. A 147 (1984) 278-292. From memory.
"""

import math

import numpy as np
from numpy.typing import NDArray

from core.activity.motion import LEAST_STEP_W
from core.activity.rows import F32, Rows, quantile
from core.traces import F64

#: idle rows this long before and after a run show what rest looks like [s]
AROUND_S = 1200.0
#: processing is learnt from this last part of a run; warm-up ends before this part of it
LATE_PART = 0.5
LATEST_PART = 0.75
#: steps below this part of the run's base above standby are of motion, larger ones of heaters
SMALL_PART = 0.25
#: levels this part of the usual level above standby apart look alike: fans, first layers
SPREAD_PART = 0.15
#: weight of the level's score beside that of the step, and the bound of either
LEVEL_WEIGHT = 0.1
SCORE_BOUND = 2.5
#: what a warm-up is taken for before it is seen counts as much as this many rows of level and of step
LEVEL_ROWS = 3.0
STEP_ROWS = 60.0
#: warm-up goes on for about this long after its first heating, where nothing tells [s]
USUAL_S = 200.0
#: warm-up is over when the sum of scores has fallen this far below its greatest
FALLEN = 40.0
#: small steps are sorted by size into classes of doubling width
CLASSES = 12
#: fewest rows, and fewest small steps, to learn from
FEWEST = 8
#: levels are counted in bins half as wide as levels that look alike, and each is blurred over its neighbours
BLUR = np.exp(-0.5 * (np.arange(-6, 7) / 2.0) ** 2)
BLUR /= BLUR.sum()


def warm_up_end_s(
    rows: Rows, standby_w: float, threshold_w: float, rest_step_w: float, start_s: float, end_s: float
) -> float:
    """When warm-up ends in the run from `start_s` to `end_s`; `start_s` if it shows no warm-up. [s]

    Parameters
    ----------
    rows : Rows
        Of the run and some time around it.
    standby_w, threshold_w : float
        Idle, and what heating exceeds. [W]
    rest_step_w : float
        Mean step between neighbouring rows at rest. [W]
    start_s, end_s : float
        Edges of the run. [s]
    """
    first, last = (int(i) for i in np.searchsorted(rows.time_s, [start_s, end_s]))
    if last - first < FEWEST:
        return start_s
    time_s, power_w = rows.time_s[first:last], rows.power_w[first:last]
    weight_s = rows.weight_s[first:last]
    late = int(np.searchsorted(time_s, end_s - LATE_PART * (end_s - start_s)))
    if not FEWEST <= late + 1 <= power_w.size - FEWEST // 2:
        late = power_w.size // 2
    latest = int(np.searchsorted(time_s, start_s + LATEST_PART * (end_s - start_s)))
    base_w, typical_w = (quantile(power_w[late:], weight_s[late:], q) for q in (0.10, 0.30))
    earliest = _plateau_end(power_w, base_w, quantile(power_w, weight_s, 0.98), standby_w)
    level, usual = _levels(power_w, weight_s, late, typical_w - standby_w, rows.step_w)
    limit_w = max(SMALL_PART * (base_w - standby_w), 4 * rows.step_w)
    around_w = rows.power_w[_around(rows, first, last)]
    rest_w = np.diff(around_w)[around_w[1:] < threshold_w]
    step, moving, resting = _steps(
        power_w,
        late,
        limit_w,
        rest_w[np.abs(rest_w) < limit_w],
        max(rest_step_w, rows.step_w / 2, LEAST_STEP_W),
    )
    stop = max(latest, earliest)
    begins = earliest + _end_of_warm_up(
        level[earliest:stop], usual, step[earliest:stop], moving, resting, rows.interval_s / USUAL_S
    )
    if begins == 0:
        return start_s
    if begins >= time_s.size:
        return end_s
    if rows.kind == "averaged":
        return float(time_s[begins - 1])
    if rows.kind == "on_change":
        return float(time_s[begins])
    return float(time_s[begins - 1] + time_s[begins]) / 2


def _around(rows: Rows, first: int, last: int) -> NDArray[np.intp]:
    """Rows shortly before and after rows `first` to `last`."""
    reach = int(AROUND_S / rows.interval_s)
    after = min(rows.time_s.size, last + reach)
    return np.concatenate([np.arange(max(0, first - reach), first), np.arange(last, after)])


def _plateau_end(power_w: F64, base_w: float, top_w: float, standby_w: float) -> int:
    """First row after the first heating at full power; 0 where no heater stands out."""
    if top_w - base_w < 0.5 * (base_w - standby_w):
        return 0
    high = power_w > (top_w + base_w) / 2
    began = int(np.argmax(high))
    fell = np.flatnonzero(~high[began:])
    return began + int(fell[0]) if fell.size else 0


def _levels(
    power_w: F64, weight_s: F32, late: int, span_w: float, step_w: float
) -> tuple[NDArray[np.intp], F64]:
    """Bin of every row's level, and the share of each bin in processing."""
    bin_w = max(2.0 * step_w, SPREAD_PART * span_w, 0.5) / 2
    margin = BLUR.size // 2
    level = np.floor((power_w - power_w.min()) / bin_w).astype(np.intp) + margin
    bins = int(level.max()) + margin + 1
    usual = np.convolve(np.bincount(level[late:], weight_s[late:], minlength=bins), BLUR, mode="same")
    usual = usual / usual.sum() + 1e-3 / bins
    return level, np.asarray(usual / usual.sum())


def _steps(
    power_w: F64, late: int, limit_w: float, rest_w: F64, unit_w: float
) -> tuple[NDArray[np.intp], F64, F64]:
    """Class of every row's small step (-1: none), and the share of each class in processing and at rest."""
    step = np.full(power_w.size, -1, dtype=np.intp)
    steps_w = np.diff(power_w)
    small = np.flatnonzero(np.abs(steps_w) < limit_w)
    if small.size:
        step[small + 1] = _classes(_undrifted(steps_w[small]), unit_w)
    busy = step[late:][step[late:] >= 0]
    if busy.size < FEWEST:
        step[:] = -1
    quiet = _classes(rest_w, unit_w) if rest_w.size >= FEWEST else np.zeros(FEWEST, np.intp)
    return step, _shares(busy), _shares(quiet)


def _end_of_warm_up(
    level: NDArray[np.intp], usual: F64, step: NDArray[np.intp], moving: F64, resting: F64, cost: float
) -> int:
    """How many of the rows belong to the warm-up: where the sum of scores, each less `cost`, is greatest."""
    usual_share, moving_share = usual.tolist(), moving.tolist()
    blur = BLUR.tolist()
    half = len(blur) // 2
    level_rows = [LEVEL_ROWS * share for share in usual_share]
    step_rows = [STEP_ROWS * share for share in resting.tolist()]
    levels_seen, steps_seen = LEVEL_ROWS, STEP_ROWS
    total = greatest = 0.0
    rows = 0
    for i, (bin_, class_) in enumerate(zip(level.tolist(), step.tolist(), strict=True), start=1):
        score = math.log(level_rows[bin_] / levels_seen / usual_share[bin_])
        total += LEVEL_WEIGHT * min(max(score, -SCORE_BOUND), SCORE_BOUND) - cost
        for offset, share in enumerate(blur, start=bin_ - half):
            level_rows[offset] += share
        levels_seen += 1
        if class_ >= 0:
            score = math.log(step_rows[class_] / steps_seen / moving_share[class_])
            total += min(max(score, -SCORE_BOUND), SCORE_BOUND)
            step_rows[class_] += 1
            steps_seen += 1
        if total > greatest:
            greatest, rows = total, i
        elif total < greatest - FALLEN:
            break
    return rows


def _undrifted(steps_w: F64) -> F64:
    """Steps with the steady drift of a warming heater taken off."""
    from scipy.ndimage import median_filter

    return np.asarray(steps_w - median_filter(steps_w, 7, mode="nearest"))


def _classes(steps_w: F64, unit_w: float) -> NDArray[np.intp]:
    sizes = np.abs(steps_w) / unit_w
    doublings = np.ceil(np.log2(np.maximum(sizes, 0.25)) + 2)
    return np.asarray(np.clip(doublings, 0, CLASSES - 1), dtype=np.intp)


def _shares(classes: NDArray[np.intp]) -> F64:
    """Share of each class, none quite 0."""
    number = np.bincount(classes, minlength=CLASSES).astype(np.float64)
    return np.asarray((number + 0.3) / (number.sum() + 0.3 * CLASSES))
