"""The end of warm-up: bed and hot end have reached temperature and the part is begun.

Two things tell, and a run shows at least one of them. The first heating ends: the full-power plateau of the
bed's heater falls. Then the power starts to look like processing: its level is one that the rest of the run
has, and its small steps are those of moving motors and no longer those of rest. Rows are scored for both, and
the end of warm-up is where the sum of scores of all that follows is greatest.
"""

import numpy as np
from numpy.typing import NDArray

from core.activity.rows import Rows, quantile
from core.traces import F64

#: idle rows this long before and after a run show what rest looks like [s]
AROUND_S = 1200.0
#: processing is learnt from this last part of a run; warm-up ends before this part of it
LATE_PART = 0.5
LATEST_PART = 0.75
#: steps below this part of the run's base above standby are of motion, larger ones of heaters
SMALL_PART = 0.25
#: one row's score for its level, and for its small step, lies within these
LEVEL_SCORE = (-1.0, 1.0)
STEP_SCORE = (-2.0, 2.5)
#: small steps are sorted by size into classes of doubling width
CLASSES = 12
#: fewest small steps to learn from
FEWEST = 8


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
    latest = int(np.searchsorted(time_s, start_s + LATEST_PART * (end_s - start_s)))
    if not FEWEST <= late + 1 <= power_w.size - FEWEST // 2:
        late = power_w.size // 2
    base_w = quantile(power_w[late:], weight_s[late:], 0.10)
    earliest = _plateau_end(power_w, base_w, quantile(power_w, weight_s, 0.98), standby_w)
    score = _level_score(power_w, weight_s, late, base_w - standby_w, rows.step_w)
    around = rows.power_w[_around(rows, first, last)]
    limit_w = max(SMALL_PART * (base_w - standby_w), 4 * rows.step_w)
    rest_w = np.diff(around)[around[1:] < threshold_w]
    unit_w = max(rest_step_w, rows.step_w / 2)
    score += _step_score(power_w, late, limit_w, rest_w[np.abs(rest_w) < limit_w], unit_w)
    sums = np.r_[0.0, np.cumsum(score)]
    begins = earliest + int(np.argmin(sums[earliest : max(latest, earliest) + 1]))
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


def _level_score(power_w: F64, weight_s: F64, late: int, span_w: float, step_w: float) -> F64:
    """How much more likely each row's level is in processing than anywhere in the run's range (logarithm)."""
    from scipy.ndimage import gaussian_filter1d

    bin_w = max(step_w, 0.015 * span_w, 0.25)
    spread_bins = max(2.0 * step_w, 0.06 * span_w) / bin_w
    margin = int(4 * spread_bins) + 2
    place = np.floor((power_w - power_w.min()) / bin_w).astype(np.intp) + margin
    density = np.bincount(place[late:], weight_s[late:], minlength=int(place.max()) + margin + 1)
    density = gaussian_filter1d(density / density.sum(), spread_bins, mode="constant")
    even = 1.0 / (place.max() - margin + 1)
    return np.asarray(np.clip(np.log(density[place] / even + 1e-9), *LEVEL_SCORE))


def _step_score(power_w: F64, late: int, limit_w: float, rest_w: F64, unit_w: float) -> F64:
    """How much more likely each row's small step is in processing than at rest (logarithm)."""
    score = np.zeros(power_w.size)
    steps_w = np.diff(power_w)
    small = np.flatnonzero(np.abs(steps_w) < limit_w)
    busy = small >= late
    if busy.sum() < FEWEST:
        return score
    sizes = _classes(_undrifted(steps_w[small]), unit_w)
    quiet = _classes(rest_w, unit_w) if rest_w.size >= FEWEST else np.zeros(FEWEST, np.intp)
    ratio = np.log(_shares(sizes[busy]) / _shares(quiet))
    ratio[2:] = np.maximum.accumulate(ratio[2:])  # a larger step never speaks less for movement
    score[small + 1] = np.clip(ratio[sizes], *STEP_SCORE)
    return score


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
