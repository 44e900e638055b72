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
    summed_wh = np.r_[0.0, np.cumsum(_interval_ws(trace))] / SECONDS_PER_HOUR
    counted = None if trace.counter_wh is None else np.isfinite(trace.counter_wh)

    def weigh(start_s: float, end_s: float) -> tuple[float, float]:
        if trace.counter_wh is not None and counted is not None and counted.any():
            ends_wh = np.interp([start_s, end_s], time_s[counted], trace.counter_wh[counted])
            energy_wh = float(ends_wh[1] - ends_wh[0])
            if energy_wh > COUNTER_STEPS * trace.counter_step_wh:
                return energy_wh, 0.0
        energy_wh = float(np.diff(np.interp([start_s, end_s], time_s, summed_wh))[0])
        if trace.kind != "sampled":
            return energy_wh, 0.0
        first, last = np.searchsorted(time_s, [start_s, end_s])
        inside_w = power_w[first:last]
        if inside_w.size < 2 or inside_w.mean() <= 0:
            return energy_wh, 0.0
        return energy_wh, float(inside_w.std() / inside_w.mean() / np.sqrt(inside_w.size))

    return weigh


def _interval_ws(trace: Trace) -> F64:
    steps_s = np.diff(trace.time_s)
    if trace.kind == "sampled":
        return np.asarray(steps_s * (trace.power_w[1:] + trace.power_w[:-1]) / 2)
    return np.asarray(steps_s * (trace.power_w[1:] if trace.kind == "averaged" else trace.power_w[:-1]))
