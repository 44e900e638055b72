"""An invented machine as physics: a bed and a hot end that warm, lose heat and are controlled; motors; fans.

Rules: only ``+ - * /`` in the loop, so that every computer with IEEE arithmetic makes the same numbers;
chance comes from the generator that is passed in. Everything is in s, W, J, degC.
"""

from dataclasses import dataclass, field
from typing import Literal

import numpy as np
from numpy.typing import NDArray

F64 = NDArray[np.float64]
#: step of the simulation [s]
STEP_S = 0.5
HOT_END_C = 210.0
FAN_OFF_BELOW_C = 50.0
#: how long a breath of moving air lasts: it keeps a thermostat from ticking like a clock [s]
GUST_S = 15.0


@dataclass(frozen=True)
class Machine:
    """What an invented machine is made of. Powers are at the load; the supply's loss is added at the plug.

    ``bed_w`` is the heater's power at 20 degC and falls with ``bed_rise_per_k`` (copper: 0.0039 per K).
    The bed loses ``dT * (bed_loss_w_per_k + bed_loss_w_per_k2 * dT)``: faster than in proportion, because
    both free convection and radiation grow with the difference.
    """

    name: str
    standby_w: float
    supply_efficiency: float
    bed_supply: Literal["low voltage", "mains"]
    bed_control: Literal["thermostat", "fast pulses"]
    bed_dm2: float
    bed_w: float
    bed_rise_per_k: float
    bed_j_per_k: float
    bed_loss_w_per_k: float
    bed_loss_w_per_k2: float
    bed_band_k: float
    bed_sensor_s: float
    hot_w: float
    hot_j_per_k: float
    hot_loss_w_per_k: float
    plastic_w: float
    motors_held_w: float
    motors_moving_w: float
    hot_fan_w: float
    part_fan_w: float
    layers: int
    layer_s: float
    bed_first: bool
    spread_energy: float
    spread_time: float

    @property
    def bed_efficiency(self) -> float:
        """Of the bed's supply: a bed fed from the mains has none in between."""
        return 1.0 if self.bed_supply == "mains" else self.supply_efficiency


@dataclass
class Asked:
    """What the machine is told to do for a while; None and False mean off."""

    bed_c: float | None = None
    hot_c: float | None = None
    motors: bool = False
    part_fan: bool = False
    hot_fan: bool = False


@dataclass
class Bench:
    """One machine running: its temperatures now, and everything it drew so far.

    ``plug_w``, ``heater_w`` (the bed at the plug) and ``bed_c`` hold one value a step.
    """

    machine: Machine
    rng: np.random.Generator
    room_c: float = 20.5
    room_k_per_h: float = 0.12
    plug_w: list[float] = field(default_factory=list)
    heater_w: list[float] = field(default_factory=list)
    bed_c: list[float] = field(default_factory=list)
    draught: float = 1.0
    effort: float = 1.0
    _bed: float = 0.0
    _sensor: float = 0.0
    _hot: float = 0.0
    _bed_on: bool = False
    _gust: float = 0.0

    def __post_init__(self) -> None:
        self._bed = self._sensor = self._hot = self.room_c

    @property
    def now_s(self) -> float:
        """Time since the start. [s]"""
        return len(self.plug_w) * STEP_S

    @property
    def bed_now_c(self) -> float:
        """Bed temperature now. [degC]"""
        return self._bed

    def room_now_c(self) -> float:
        """Room temperature now: it creeps up over the day. [degC]"""
        return self.room_c + self.room_k_per_h * self.now_s / 3600.0

    def wait(self, seconds: float, asked: Asked | None = None) -> None:
        """Let `seconds` pass."""
        self._advance(round(seconds / STEP_S), asked or Asked(), None, None)

    def until_ready(self, asked: Asked, limit_s: float = 1800.0) -> None:
        """Heat until the bed and the hot end that were asked for are at temperature."""
        end = self.now_s + limit_s
        while self.now_s < end and not self._ready(asked):
            self._advance(1, asked, None, None)

    def until_cool(self, bed_c: float, at_least_s: float, limit_s: float = 5400.0) -> None:
        """Wait in standby until the bed is below `bed_c`, and at least `at_least_s`."""
        start = self.now_s
        while self.now_s - start < at_least_s or (self._bed > bed_c and self.now_s - start < limit_s):
            self.wait(10.0)

    def process(self, asked: Asked, motion: F64, flow: F64) -> None:
        """Make a part: motors and plastic follow `motion` and `flow`, shares of full, one value a step."""
        self._advance(motion.size, asked, motion.tolist(), flow.tolist())

    def _ready(self, asked: Asked) -> bool:
        bed = asked.bed_c is None or self._sensor >= asked.bed_c - 0.3
        return bed and (asked.hot_c is None or self._hot >= asked.hot_c - 2.0)

    def _advance(
        self, steps: int, asked: Asked, motion: list[float] | None, flow: list[float] | None
    ) -> None:
        m = self.machine
        noise = self.rng.normal(0.0, 1.0, steps).tolist()
        gusts = self.rng.normal(0.0, 1.0, steps).tolist()
        for i in range(steps):
            room = self.room_now_c()
            bed_heat = self._bed_heat(asked.bed_c, room, noise[i])
            above = self._bed - room
            self._gust += 0.02 * gusts[i] - self._gust * STEP_S / GUST_S
            loss = above * (m.bed_loss_w_per_k + m.bed_loss_w_per_k2 * above) * (self.draught + self._gust)
            self._bed += (bed_heat - loss) * STEP_S / m.bed_j_per_k
            self._sensor += (self._bed - self._sensor) * STEP_S / m.bed_sensor_s
            plastic = m.plastic_w * flow[i] * self.effort if flow else 0.0
            hot_heat = self._hot_heat(asked.hot_c, room, plastic, noise[i])
            hot_loss = (self._hot - room) * m.hot_loss_w_per_k * (self.effort if asked.part_fan else 1.0)
            self._hot += (hot_heat - hot_loss - plastic) * STEP_S / m.hot_j_per_k
            load = hot_heat
            if asked.motors:
                load += m.motors_held_w + (m.motors_moving_w * motion[i] * self.effort if motion else 0.0)
            if asked.part_fan:
                load += m.part_fan_w
            if asked.hot_fan or self._hot > FAN_OFF_BELOW_C:
                load += m.hot_fan_w
            bed_plug = bed_heat / m.bed_efficiency
            self.heater_w.append(bed_plug)
            self.plug_w.append(m.standby_w + 0.06 * noise[i] + load / m.supply_efficiency + bed_plug)
            self.bed_c.append(self._bed)

    def _bed_heat(self, target_c: float | None, room_c: float, noise: float) -> float:
        m = self.machine
        if target_c is None:
            self._bed_on = False
            return 0.0
        full = m.bed_w / (1.0 + m.bed_rise_per_k * (self._bed - 20.0))
        if m.bed_control == "thermostat":
            if self._sensor < target_c - m.bed_band_k:
                self._bed_on = True
            elif self._sensor > target_c + m.bed_band_k:
                self._bed_on = False
            return full if self._bed_on else 0.0
        above = target_c - room_c
        held = above * (m.bed_loss_w_per_k + m.bed_loss_w_per_k2 * above)
        duty = held / full + 0.25 * (target_c - self._sensor) + 0.015 * noise
        return full * min(1.0, max(0.0, duty))

    def _hot_heat(self, target_c: float | None, room_c: float, plastic_w: float, noise: float) -> float:
        m = self.machine
        if target_c is None:
            return 0.0
        held = (target_c - room_c) * m.hot_loss_w_per_k + plastic_w
        heat = held + 3.0 * (target_c - self._hot) + 0.25 * noise
        return min(m.hot_w, max(0.0, heat))


def part_profile(machine: Machine, seed: int) -> tuple[F64, F64]:
    """Motion and flow of the test part on `machine` at speed 1, one value a step: the same each time.

    Each layer starts with its outline (slow), goes on with its inside (fast, more plastic) and ends
    with a travel.
    """
    rng = np.random.default_rng(seed)
    motion: list[F64] = []
    flow: list[F64] = []
    for layer in range(machine.layers):
        seconds = machine.layer_s * (1.5 if layer == 0 else rng.uniform(0.85, 1.15))
        steps = max(8, round(seconds / STEP_S))
        outline = round(0.4 * steps)
        travel = max(2, round(0.06 * steps))
        inside = steps - outline - travel
        motion.append(np.concatenate([np.full(outline, 0.75), np.full(inside, 1.2), np.full(travel, 1.5)]))
        flow.append(np.concatenate([np.full(outline, 0.85), np.full(inside, 1.2), np.full(travel, 0.1)]))
    return np.concatenate(motion), np.concatenate(flow)


def with_moves(profile: F64, speed: float, rng: np.random.Generator) -> F64:
    """`profile` made `speed` times as fast, with the starts and stops of single moves laid over it."""
    steps = round(profile.size / speed)
    index = np.minimum((np.arange(steps) * speed).astype(np.int64), profile.size - 1)
    moves = np.repeat(rng.uniform(0.55, 1.45, steps // 3 + 1), 3)[:steps]
    return np.asarray(profile[index] * moves, dtype=np.float64)
