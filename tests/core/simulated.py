"""A small seeded model of a heated machine and of a plug-in meter: traces whose truth is known.

A bed of two bodies (heater plate and top), a hot end, fans, motors and a supply with losses are stepped
through time; a meter then reads the power at the plug the way meters do: instants, means, or only changes,
rounded. The numbers are of the order that such machines have (common practice, no source).
"""

from collections.abc import Callable, Sequence
from math import inf
from typing import Literal

import numpy as np
from attrs import evolve, frozen
from numpy.random import Generator
from numpy.typing import NDArray

from core.traces import Trace

#: time step of the model [s]
STEP_S = 0.5
ROOM_C = 22.0

Control = Literal["none", "thermostat", "slow pulses", "fast pulses"]
Order = Literal["together", "bed first", "staged"]
Does = Literal["idle", "off", "part", "hold", "preheat", "filament", "motors held"]


@frozen
class MachineModel:
    """A machine; powers are on the supply's output side unless `bed_mains`. [W], [J/K], [W/K], [s]"""

    control: Control = "thermostat"
    order: Order = "together"
    bed_w: float = 300.0
    bed_falls_per_k: float = 0.0
    bed_mains: bool = False
    heater_c: float = 200.0
    top_c: float = 250.0
    couple_k: float = 40.0
    bed_k: float = 1.1
    hysteresis_k: float = 0.4
    pulse_s: float = 6.0
    hot_end_w: float = 40.0
    hot_end_c: float = 12.0
    hot_end_k: float = 0.10
    hot_end_pulses: bool = False
    board_w: float = 5.0
    standby_zero: bool = False
    hot_end_fan_w: float = 1.2
    part_fan_w: float = 4.0
    motors_held_w: float = 8.0
    motors_moving_w: float = 7.0
    held_after_s: float = 120.0
    efficiency: float = 0.87
    supply_w: float = 3.5
    layer_s: float = 40.0


@frozen
class MeterModel:
    """A meter. `on_change_w` above 0 logs only changes of that size, or after `heartbeat_s`.

    `counter_from_wh` is what the counter had counted when the log began.
    """

    interval_s: float = 1.0
    jitter: float = 0.03
    averaging: bool = False
    on_change_w: float = 0.0
    heartbeat_s: float = 60.0
    resolution_w: float = 0.1
    noise_w: float = 0.08
    gain: float = 1.0
    counter_step_wh: float = 0.0
    counter_from_wh: float = 0.0


@frozen
class Task:
    """Something the machine does. For a part: `seconds` of processing; else in all. [s], [degC]"""

    does: Does
    seconds: float
    bed_c: float = 60.0
    hot_end_to_c: float = 210.0
    first_layer_k: float = 0.0
    soak_s: float = 0.0
    homing_s: float = 20.0
    pause_at_s: float = inf
    pause_s: float = 0.0
    part: str = "A"
    stopped_after_s: float = inf


@frozen
class Truth:
    """What really happened in one task that heats."""

    does: Does
    part: str
    start_s: float
    warm_up_end_s: float
    end_s: float
    energy_wh: float
    bed_wh: float
    complete: bool


@frozen(eq=False)
class Simulated:
    """A trace and the truth behind it, on the trace's clock; `power_w` by `STEP_S` is the exact power."""

    trace: Trace
    truths: tuple[Truth, ...]
    power_w: NDArray[np.float64]

    @property
    def parts(self) -> tuple[Truth, ...]:
        """The complete parts."""
        return tuple(t for t in self.truths if t.does == "part" and t.complete)


class _Plant:
    """The machine while it is stepped: temperatures, and what each moment drew."""

    def __init__(self, model: MachineModel) -> None:
        self.model = model
        self.heater_c = self.top_c = self.hot_c = ROOM_C
        self.bed_on = False
        self.duty_sum = 0.0
        self.bed: list[float] = []
        self.hot: list[float] = []
        self.flags: list[tuple[float, ...]] = []

    @property
    def now(self) -> int:
        return len(self.bed)

    def run(
        self,
        seconds: float,
        *,
        bed_c: float = 0.0,
        hot_c: float = 0.0,
        held: bool = False,
        moving: float = 0.0,
        fan: float = 0.0,
        powered: bool = True,
        until: Callable[[], bool] | None = None,
    ) -> None:
        """Step for `seconds`, or until `until` holds."""
        busy = float(held or bed_c > 0 or hot_c > 0)
        flags = (float(held), moving, fan, float(powered), busy)
        for _ in range(round(seconds / STEP_S)):
            self._step(bed_c if powered else 0.0, hot_c if powered else 0.0)
            self.flags.append(flags)
            if until is not None and until():
                return

    def _step(self, bed_c: float, hot_c: float) -> None:
        m = self.model
        full_w = m.bed_w * (1 - m.bed_falls_per_k * (self.heater_c - ROOM_C))
        part = self._bed_part(bed_c) if m.control != "none" and bed_c > 0 else 0.0
        bed_w = part * full_w
        flow_w = m.couple_k * (self.heater_c - self.top_c)
        self.heater_c += (bed_w - flow_w - 0.4 * m.bed_k * (self.heater_c - ROOM_C)) / m.heater_c * STEP_S
        self.top_c += (flow_w - 0.6 * m.bed_k * (self.top_c - ROOM_C)) / m.top_c * STEP_S
        hot_w = 0.0
        if hot_c > 0:
            need_w = m.hot_end_k * (hot_c - ROOM_C) + 0.6 * m.hot_end_c * (hot_c - self.hot_c)
            if m.hot_end_pulses and abs(hot_c - self.hot_c) < 5:
                on_s = 4.0 * need_w / m.hot_end_w
                hot_w = m.hot_end_w if (self.now * STEP_S) % 4.0 < on_s else 0.0
            else:
                hot_w = min(max(need_w, 0.0), m.hot_end_w)
        self.hot_c += (hot_w - m.hot_end_k * (self.hot_c - ROOM_C)) / m.hot_end_c * STEP_S
        self.bed.append(bed_w)
        self.hot.append(hot_w)

    def _bed_part(self, bed_c: float) -> float:
        """Part of the step that the bed's heater is on."""
        m = self.model
        miss_k = bed_c - self.top_c
        if m.control == "thermostat":
            if abs(miss_k) > m.hysteresis_k:
                self.bed_on = miss_k > 0
            return float(self.bed_on)
        if abs(miss_k) < 3:
            self.duty_sum = min(max(self.duty_sum + 0.004 * miss_k * STEP_S, 0.0), 1.0)
        duty = min(max(0.25 * miss_k + self.duty_sum, 0.0), 1.0)
        if m.control == "fast pulses":
            return duty
        return float((self.now * STEP_S) % m.pulse_s < duty * m.pulse_s)


def simulate(machine: MachineModel, meter: MeterModel, tasks: Sequence[Task], seed: int = 0) -> Simulated:
    """Let `machine` do `tasks` one after another and read it with `meter`."""
    rng = np.random.default_rng(seed)
    plant = _Plant(machine)
    marks: list[tuple[Task, int, int, int, bool]] = []
    for task in tasks:
        _do(plant, task, marks)
    bed = np.array(plant.bed)
    power_w = _at_plug(plant, bed, rng)
    time_s = np.arange(power_w.size) * STEP_S
    trace, first_s = _read(time_s, power_w, meter, rng)
    total_ws = np.r_[0.0, np.cumsum(power_w) * STEP_S]
    bed_ws = np.r_[0.0, np.cumsum(bed / (1.0 if machine.bed_mains else machine.efficiency)) * STEP_S]
    truths = tuple(
        Truth(
            task.does,
            task.part,
            a * STEP_S - first_s,
            w * STEP_S - first_s,
            b * STEP_S - first_s,
            (total_ws[b] - total_ws[a]) / 3600,
            (bed_ws[b] - bed_ws[a]) / 3600,
            complete,
        )
        for task, a, w, b, complete in marks
    )
    return Simulated(trace, truths, power_w)


def _do(plant: _Plant, task: Task, marks: list[tuple[Task, int, int, int, bool]]) -> None:
    m = plant.model
    if task.does in ("idle", "off", "motors held"):
        plant.run(task.seconds, powered=task.does != "off", held=task.does == "motors held")
        return
    bed_c = task.bed_c if m.control != "none" else 0.0
    if task.does == "part" and task.homing_s:
        plant.run(task.homing_s, held=True, moving=0.6)
    start = plant.now
    held = task.does == "part"
    if task.does == "hold":
        plant.run(task.seconds, bed_c=bed_c)
        marks.append((task, start, start, plant.now, False))
        return
    if task.does == "filament":
        plant.run(task.seconds, hot_c=task.hot_end_to_c)
        marks.append((task, start, start, plant.now, False))
        return
    first_c = bed_c + task.first_layer_k if bed_c else 0.0
    _warm_up(plant, first_c, task.hot_end_to_c, m.order)
    if task.does == "preheat":
        plant.run(task.seconds, bed_c=bed_c, hot_c=task.hot_end_to_c)
        marks.append((task, start, plant.now, plant.now, False))
        return
    if task.soak_s:
        plant.run(task.soak_s, bed_c=first_c, hot_c=task.hot_end_to_c)
    warm = plant.now
    done_s = 0.0
    until_s = min(task.seconds, task.stopped_after_s)
    while done_s < until_s:
        if done_s >= task.pause_at_s:
            plant.run(task.pause_s, bed_c=bed_c, hot_c=task.hot_end_to_c, held=True)
            task = evolve(task, pause_at_s=inf)
        first_layers = done_s < 3 * m.layer_s
        step_s = min(m.layer_s, until_s - done_s)
        plant.run(
            step_s,
            bed_c=first_c if first_layers else bed_c,
            hot_c=task.hot_end_to_c,
            held=held,
            moving=1.0,
            fan=0.0 if first_layers else 1.0,
        )
        done_s += step_s
    end = plant.now
    marks.append((task, start, warm, end, until_s == task.seconds))
    plant.run(m.held_after_s, held=True)


def _warm_up(plant: _Plant, bed_c: float, hot_c: float, order: Order) -> None:
    def bed_ready() -> bool:
        return bed_c == 0 or plant.top_c >= bed_c - 0.5

    def both_ready() -> bool:
        return bed_ready() and plant.hot_c >= hot_c - 2

    if order == "bed first" and bed_c:
        plant.run(7200, bed_c=bed_c, until=bed_ready)
    if order == "staged" and bed_c:
        plant.run(7200, bed_c=bed_c, hot_c=150.0, until=bed_ready)
    plant.run(7200, bed_c=bed_c, hot_c=hot_c, until=both_ready)


def _at_plug(plant: _Plant, bed: NDArray[np.float64], rng: Generator) -> NDArray[np.float64]:
    m = plant.model
    held, moving, fan, powered, busy = np.array(plant.flags).T
    hot = np.array(plant.hot)
    wander = _wander(rng, bed.size)
    output = (
        m.board_w
        + hot
        + np.where(hot > 0, m.hot_end_fan_w, 0.0)
        + m.motors_held_w * held
        + m.motors_moving_w * moving * np.clip(0.7 + wander, 0.0, 1.6)
        + m.part_fan_w * fan
    )
    if not m.bed_mains:
        output = output + bed
    plug = output / m.efficiency + m.supply_w
    if m.bed_mains:
        plug = plug + bed
    if m.standby_zero:
        plug = np.where(busy > 0, plug, 0.0)
    return np.asarray(plug * powered)


def _wander(rng: Generator, size: int) -> NDArray[np.float64]:
    """What motors do from moment to moment: two random walks that return, fast and slow."""
    from scipy.signal import lfilter

    total = np.zeros(size)
    for seconds, spread in ((1.5, 0.12), (15.0, 0.15)):
        keep = np.exp(-STEP_S / seconds)
        total += spread * np.sqrt(1 - keep**2) * lfilter([1.0], [1.0, -keep], rng.normal(size=size))
    return total


def _read(
    time_s: NDArray[np.float64], power_w: NDArray[np.float64], meter: MeterModel, rng: Generator
) -> tuple[Trace, float]:
    number = int(time_s[-1] / meter.interval_s)
    at = (np.arange(1, number) + rng.normal(0, meter.jitter, number - 1).clip(-0.3, 0.3)) * meter.interval_s
    energy_ws = np.r_[0.0, np.cumsum(power_w) * STEP_S]
    counted = np.interp(at, np.r_[time_s, time_s[-1] + STEP_S], energy_ws) * meter.gain
    if meter.averaging:
        value = np.diff(counted, prepend=np.nan) / np.diff(at, prepend=np.nan)
        value[0] = power_w[0]
    else:
        value = power_w[np.clip((at / STEP_S).astype(int), 0, power_w.size - 1)] * meter.gain
    noisy = value * (1 + 0.0005 * rng.normal(size=value.size)) + meter.noise_w * rng.normal(size=value.size)
    value = np.where(value > 0, np.maximum(noisy, 0.0), 0.0)
    value = np.round(value / meter.resolution_w) * meter.resolution_w
    kind: Literal["sampled", "averaged", "on_change"] = "averaged" if meter.averaging else "sampled"
    if meter.on_change_w > 0:
        kept = _changes(at, value, meter)
        at, value, counted = at[kept], value[kept], counted[kept]
        kind = "on_change"
    counter = None
    if meter.counter_step_wh:
        step = meter.counter_step_wh
        total_wh = (counted - counted[0]) / 3600 + meter.counter_from_wh
        counter = np.maximum.accumulate(np.floor(total_wh / step + 1e-9) * step)
    trace = Trace.of(
        at - at[0],
        value,
        kind,
        counter,
        counter_step_wh=meter.counter_step_wh if counter is not None else None,
        resolution_w=meter.resolution_w,
    )
    return trace, float(at[0])


def _changes(at: NDArray[np.float64], value: NDArray[np.float64], meter: MeterModel) -> list[int]:
    kept = [0]
    for i in range(1, value.size):
        if abs(value[i] - value[kept[-1]]) >= meter.on_change_w or at[i] - at[kept[-1]] >= meter.heartbeat_s:
            kept.append(i)
    return kept
