"""Logs written more often than the meter measures: only the rows with a fresh value tell anything.

Such a logger repeats each value for some seconds. Taken at face value its rows are many and its steps look
resolved to a row; in truth the load is looked at once a hold, a change comes at any time within one, and the
lottery of pulses not met is that of the slower sampling.
"""

from functools import lru_cache

import numpy as np
from attrs import evolve

from core.traces import F64, Trace, step_extremes

#: fewer changes than this show no rhythm
FEWEST_CHANGES = 40
#: values held for longer than this many rows, or this long [s], are quiet and no rhythm
MOST_ROWS = 60
LONGEST_S = 60.0
#: this part of the distances from change to change are whole holds, and this part of them are single ones
WHOLE = 0.97
SINGLE = 0.25
#: rows that the rhythm is learnt from
ENOUGH_ROWS = 200_000


@lru_cache(maxsize=256)
def measured(trace: Trace) -> Trace:
    """`trace` with the rows alone in which the meter measured afresh; itself where each row is fresh.

    Parameters
    ----------
    trace : Trace
        Only a sampled one is looked at: a mean stands for its interval however often it is written, and an
        on-change log holds values by its nature.

    Returns
    -------
    Trace
        On the same clock, with the same gaps. Its intervals are those of the measuring.
    """
    rows = held_rows(trace)
    if rows < 2:
        return trace
    fresh = _fresh(trace.power_w, rows)
    time = trace.time_s[fresh]
    steps = np.diff(time)
    median, p95 = (float(v) for v in np.percentile(steps, (50, 95)))
    return evolve(
        trace,
        key=f"{trace.key}:each {rows}",
        time_s=time,
        power_w=trace.power_w[fresh],
        counter_wh=None if trace.counter_wh is None else trace.counter_wh[fresh],
        median_s=median,
        p95_s=p95,
        max_s=step_extremes(time)[1],
        temperatures_c={place: values[fresh] for place, values in trace.temperatures_c.items()},
    )


def held_rows(trace: Trace) -> int:
    """Rows that each measured value is written for; 1 where each row is fresh.

    Where the load moves a value changes at every measuring or nearly so: the distances between changes are
    then whole holds, most of them single ones. Where rows are missing the rhythm slips, which a few may.
    """
    if trace.kind != "sampled" or trace.time_s.size < 3 * FEWEST_CHANGES:
        return 1
    power = trace.power_w[:ENOUGH_ROWS]
    if np.count_nonzero(power[1:21] != power[:20]) > 11:
        return 1  # what most logs show at once
    apart = np.diff(np.flatnonzero(np.diff(power)))
    if apart.size < FEWEST_CHANGES:
        return 1
    most = min(MOST_ROWS, int(LONGEST_S / trace.median_s) if trace.median_s > 0 else MOST_ROWS)
    common = np.bincount(apart[apart <= most], minlength=2)
    rows = int(np.argmax(common))
    if rows < 2 or common[rows] < SINGLE * apart.size:
        return 1
    return rows if np.mean(apart % rows == 0) > WHOLE else 1


def _fresh(power_w: F64, rows: int) -> np.ndarray[tuple[int], np.dtype[np.intp]]:
    """Rows with a fresh value: where the power changes, and each `rows` from there on."""
    changed = np.r_[0, np.flatnonzero(np.diff(power_w)) + 1, power_w.size]
    since = np.arange(power_w.size) - np.repeat(changed[:-1], np.diff(changed))
    fresh = since % rows == 0
    if changed.size > 2:  # before the first change the rhythm runs backwards
        first = int(changed[1])
        fresh[:first] = (first - np.arange(first)) % rows == 0
    fresh[0] = fresh[-1] = True
    return np.flatnonzero(fresh)
