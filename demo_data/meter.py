"""An invented plug-in meter: gain, resolution, period, counter, and what one logged value stands for."""

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from demo_data.machine import F64, STEP_S


@dataclass(frozen=True)
class Meter:
    """A meter: its true gain and offset, which nobody on the bench knows, and its stated accuracy."""

    name: str
    gain: float
    offset_w: float
    stated_percent: float
    stated_w: float


@dataclass(frozen=True)
class Setting:
    """How a meter was set for one log."""

    kind: Literal["sampled", "averaged", "on_change"]
    period_s: float
    resolution_w: float
    counter_step_wh: float
    counter_start_wh: float


@dataclass(frozen=True)
class Logged:
    """Rows of a log before they are written: time [s], power [W], counter [Wh], step of the simulation."""

    time_s: F64
    power_w: F64
    counter_wh: F64
    step: NDArray[np.int64]


def read_meter(meter: Meter, setting: Setting, plug_w: F64) -> Logged:
    """What `meter` logs of the true power `plug_w`, given one value a step of the simulation.

    A sampled value is the mean of the second before it: the shortest window an ordinary meter works with.
    An on-change log holds a row when the reading moved by 0.4 W and 1.5 %, and one a minute in any case.
    """
    shown_w = np.maximum(0.0, plug_w * meter.gain + np.where(plug_w > 0.0, meter.offset_w, 0.0))
    run_on_ws = np.concatenate([[0.0], np.cumsum(shown_w * STEP_S)])
    period = round(setting.period_s / STEP_S)
    window = period if setting.kind == "averaged" else round(1.0 / STEP_S)
    ends = np.arange(max(period, window), plug_w.size + 1, period)
    mean_w = (run_on_ws[ends] - run_on_ws[ends - window]) / (window * STEP_S)
    power = np.round(mean_w / setting.resolution_w) * setting.resolution_w
    counter = setting.counter_start_wh + run_on_ws[ends] / 3600.0
    counter = np.round(np.floor(counter / setting.counter_step_wh) * setting.counter_step_wh, 6)
    rows = np.arange(ends.size)
    if setting.kind == "on_change":
        rows = _changes(power, round(60.0 / setting.period_s))
    time = ends[rows] * STEP_S
    return Logged(np.asarray(time, dtype=np.float64), power[rows], counter[rows], ends[rows])


def _changes(power_w: F64, heartbeat_rows: int) -> NDArray[np.int64]:
    kept = [0]
    values = power_w.tolist()
    last = values[0]
    for row, value in enumerate(values):
        if abs(value - last) >= max(0.4, 0.015 * last) or row - kept[-1] >= heartbeat_rows:
            kept.append(row)
            last = value
    return np.asarray(kept, dtype=np.int64)
