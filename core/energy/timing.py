"""How well the stamps of a trace tell when its values were taken."""

import math
from functools import lru_cache

import numpy as np

from core.traces import F64, Trace

#: steps in which logs write their stamps; common practice, no source [s]
STAMP_STEPS_S = (60.0, 1.0, 0.1, 0.01)
#: an interval longer than this many median intervals lacks a row
HOLE = 1.5


@lru_cache(maxsize=256)
def stamp_u_s(trace: Trace) -> float:
    """Standard uncertainty of one stamp. [s]

    From the step in which the log writes them (step / sqrt(12)), and for an averaged log also from the
    scatter of its intervals: whether the meter's windows follow the scatter or stay even, nothing tells.

    Examples
    --------
    >>> round(stamp_u_s(Trace.of([0, 10, 21], [1, 1, 1])), 4)
    0.2887
    """
    time = trace.time_s[:2000]
    step_s = next((step for step in STAMP_STEPS_S if _is_multiple(time, step)), 0.0)
    scatter_s = 0.0
    if trace.kind == "averaged" and trace.median_s > 0:
        steps = np.diff(time)
        even = steps[np.abs(steps / trace.median_s - 1) < HOLE - 1]
        scatter_s = float(np.std(even)) / math.sqrt(2) if even.size > 1 else 0.0
    return max(step_s / math.sqrt(12), scatter_s)


def _is_multiple(time_s: F64, step_s: float) -> bool:
    off_s = np.abs(time_s / step_s - np.round(time_s / step_s)) * step_s
    return float(np.max(off_s, initial=0.0)) < 1e-4 * step_s + 1e-5


@lru_cache(maxsize=256)
def shortest_interval_s(trace: Trace) -> float:
    """Shortest interval that is common (5 % of the intervals): how often an on-change meter looks. [s]"""
    steps = np.diff(trace.time_s[:100_000])
    return float(np.percentile(steps, 5)) if steps.size else 0.0


@lru_cache(maxsize=256)
def dead_band_w(trace: Trace) -> float:
    """How far the power of an on-change log moves before it is reported: the smallest common change. [W]"""
    moves = np.abs(np.diff(trace.power_w[:100_000]))
    moves = moves[moves > 0]
    return float(np.percentile(moves, 3)) if moves.size else 0.0
