"""Energy of stretches, good enough to tell parts apart. Results are worked out elsewhere, with intervals."""

from collections.abc import Callable

import numpy as np

from core.traces import F64, Trace
from core.units import SECONDS_PER_HOUR

#: the counter weighs a stretch that spans at least this many of its steps
COUNTER_STEPS = 20.0


#: from start and end to energy and its relative standard deviation. [s], [Wh]
Weigh = Callable[[float, float], tuple[float, float]]


def scale(trace: Trace) -> Weigh:
    """A function from start and end to energy and its relative standard deviation. [s], [Wh]

    The counter where it is fine enough; else the power, whose samples of a switching heater are a lottery.
    """
    time_s, power_w = trace.time_s, trace.power_w
    ticks_s = ticks_wh = np.empty(0)
    if trace.counter_wh is not None:
        counted = np.isfinite(trace.counter_wh)
        ticks_s, ticks_wh = time_s, trace.counter_wh
        if not counted.all():
            ticks_s, ticks_wh = time_s[counted], ticks_wh[counted]

    def weigh(start_s: float, end_s: float) -> tuple[float, float]:
        if ticks_s.size:
            energy_wh = _at(end_s, ticks_s, ticks_wh) - _at(start_s, ticks_s, ticks_wh)
            if energy_wh > COUNTER_STEPS * trace.counter_step_wh:
                return energy_wh, 0.0
        first, last = np.searchsorted(time_s, [start_s, end_s])
        inside_w = power_w[first:last]
        energy_wh = float(_interval_ws(trace, int(first), int(last)).sum()) / SECONDS_PER_HOUR
        if trace.kind != "sampled" or inside_w.size < 2 or inside_w.mean() <= 0:
            return energy_wh, 0.0
        return energy_wh, float(inside_w.std() / inside_w.mean() / np.sqrt(inside_w.size))

    return weigh


def _at(moment_s: float, time_s: F64, values: F64) -> float:
    """`values` at a moment, on the line between its neighbours; only they are looked at."""
    right = min(max(int(np.searchsorted(time_s, moment_s)), 1), time_s.size - 1)
    pair = slice(right - 1, right + 1)
    return float(np.interp(moment_s, time_s[pair], values[pair]))


def _interval_ws(trace: Trace, first: int, last: int) -> F64:
    """Energy of each interval between rows `first` and `last`. [W s]"""
    steps_s = np.diff(trace.time_s[first : last + 1])
    power_w = trace.power_w[first : last + 1]
    if trace.kind == "sampled":
        return np.asarray(steps_s * (power_w[1:] + power_w[:-1]) / 2)
    return np.asarray(steps_s * (power_w[1:] if trace.kind == "averaged" else power_w[:-1]))
