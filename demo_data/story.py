"""The invented bench: five machines of the Tidewater tool library, two meters, and what each day brought."""

from dataclasses import dataclass

import numpy as np

from demo_data.machine import F64, HOT_END_C, STEP_S, Asked, Bench, Machine, part_profile, with_moves
from demo_data.meter import Meter

LIBRARY = "Tidewater tool library"
PART = "hose clip"
BED_C = 60.0

METERS = {
    "Meter 1": Meter("Meter 1", gain=1.0032, offset_w=0.05, stated_percent=1.0, stated_w=0.3),
    "Meter 2": Meter("Meter 2", gain=0.9959, offset_w=-0.04, stated_percent=1.0, stated_w=0.3),
}

ALDER = Machine(
    name="Alder", standby_w=3.2, supply_efficiency=0.88, bed_supply="low voltage", bed_control="thermostat",
    bed_dm2=1.0, bed_w=80.0, bed_rise_per_k=0.0, bed_j_per_k=150.0, bed_loss_w_per_k=0.205,
    bed_loss_w_per_k2=0.0021, bed_band_k=0.35, bed_sensor_s=6.0, hot_w=48.0, hot_j_per_k=16.0,
    hot_loss_w_per_k=0.026, plastic_w=2.2, motors_held_w=1.2, motors_moving_w=2.2, hot_fan_w=0.5,
    part_fan_w=1.3, layers=42, layer_s=51.9, bed_first=False, spread_energy=0.030, spread_time=0.003,
)  # fmt: skip
BIRCH = Machine(
    name="Birch", standby_w=2.6, supply_efficiency=0.86, bed_supply="low voltage", bed_control="thermostat",
    bed_dm2=0.92, bed_w=104.0, bed_rise_per_k=0.0039, bed_j_per_k=160.0, bed_loss_w_per_k=0.170,
    bed_loss_w_per_k2=0.0019, bed_band_k=0.35, bed_sensor_s=4.0, hot_w=36.0, hot_j_per_k=15.0,
    hot_loss_w_per_k=0.0185, plastic_w=0.8, motors_held_w=0.9, motors_moving_w=1.1, hot_fan_w=0.6,
    part_fan_w=0.9, layers=42, layer_s=82.0, bed_first=True, spread_energy=0.022, spread_time=0.003,
)  # fmt: skip
CEDAR = Machine(
    name="Cedar", standby_w=4.3, supply_efficiency=0.87, bed_supply="low voltage", bed_control="thermostat",
    bed_dm2=0.62, bed_w=96.0, bed_rise_per_k=0.0039, bed_j_per_k=110.0, bed_loss_w_per_k=0.117,
    bed_loss_w_per_k2=0.00137, bed_band_k=0.40, bed_sensor_s=4.0, hot_w=38.0, hot_j_per_k=17.0,
    hot_loss_w_per_k=0.0195, plastic_w=0.8, motors_held_w=1.1, motors_moving_w=1.2, hot_fan_w=0.6,
    part_fan_w=0.8, layers=42, layer_s=88.4, bed_first=True, spread_energy=0.008, spread_time=0.003,
)  # fmt: skip
HAZEL = Machine(
    name="Hazel", standby_w=3.0, supply_efficiency=0.88, bed_supply="mains", bed_control="thermostat",
    bed_dm2=1.15, bed_w=150.0, bed_rise_per_k=0.0, bed_j_per_k=240.0, bed_loss_w_per_k=0.220,
    bed_loss_w_per_k2=0.0022, bed_band_k=1.00, bed_sensor_s=5.0, hot_w=40.0, hot_j_per_k=18.0,
    hot_loss_w_per_k=0.0185, plastic_w=0.75, motors_held_w=0.6, motors_moving_w=0.9, hot_fan_w=0.6,
    part_fan_w=0.8, layers=42, layer_s=95.5, bed_first=True, spread_energy=0.015, spread_time=0.003,
)  # fmt: skip
ROWAN = Machine(
    name="Rowan", standby_w=2.6, supply_efficiency=0.87, bed_supply="low voltage", bed_control="fast pulses",
    bed_dm2=1.05, bed_w=84.0, bed_rise_per_k=0.0039, bed_j_per_k=180.0, bed_loss_w_per_k=0.190,
    bed_loss_w_per_k2=0.0022, bed_band_k=0.0, bed_sensor_s=4.0, hot_w=36.0, hot_j_per_k=16.0,
    hot_loss_w_per_k=0.0165, plastic_w=0.6, motors_held_w=0.6, motors_moving_w=0.75, hot_fan_w=0.5,
    part_fan_w=0.8, layers=42, layer_s=116.3, bed_first=True, spread_energy=0.006, spread_time=0.006,
)  # fmt: skip
MACHINES = (ALDER, BIRCH, CEDAR, HAZEL, ROWAN)


@dataclass(frozen=True)
class Stretch:
    """What truly happened between two steps of the simulation.

    ``warm_up_end`` is the step at which processing began, for a run.
    """

    kind: str
    name: str
    start: int
    end: int
    warm_up_end: int | None = None
    bed_start_c: float | None = None
    bed_set_c: float | None = None
    remark: str = ""


def make_part(bench: Bench, number: int, *, share: float = 1.0, remark: str = "") -> Stretch:
    """One run of the part, from homing to the motors' release; `share` below 1 breaks it off there."""
    machine, rng = bench.machine, bench.rng
    bench.draught = 1.0 + machine.spread_energy * 1.3 * float(rng.normal())
    bench.effort = 1.0 + machine.spread_energy * float(rng.normal())
    speed = 1.0 + machine.spread_time * float(rng.normal())
    bench.wait(9.0, Asked(motors=True))
    start, bed_start_c = len(bench.plug_w), bench.bed_now_c
    if machine.bed_first:
        bench.until_ready(Asked(bed_c=BED_C, motors=True))
    bench.until_ready(Asked(bed_c=BED_C, hot_c=HOT_END_C, motors=True))
    processing = len(bench.plug_w)
    seed = sum(machine.name.encode())
    motion, flow = (
        with_moves(p, speed, np.random.default_rng(seed + number)) for p in part_profile(machine, seed)
    )
    steps, first_layer = round(share * motion.size), round(1.5 * machine.layer_s / STEP_S)
    asked = Asked(bed_c=BED_C, hot_c=HOT_END_C, motors=True, hot_fan=True)
    bench.process(asked, motion[:first_layer], flow[:first_layer])
    asked.part_fan = True
    bench.process(asked, motion[first_layer:steps], flow[first_layer:steps])
    end = len(bench.plug_w)
    bench.wait(150.0, Asked(motors=True))
    bench.draught = 1.0
    kind = "run" if share == 1.0 else "broken off"
    return Stretch(kind, f"{machine.name} {number}", start, end, processing, bed_start_c, BED_C, remark)


def day_of_parts(bench: Bench, parts: tuple[tuple[float, float, str], ...]) -> list[Stretch]:
    """A day: standby, then parts given as (pause before in s or 0 for until cool, share made, remark)."""
    bench.wait(480.0)
    stretches = []
    for number, (pause_s, share, remark) in enumerate(parts, start=1):
        if number > 1 and pause_s:
            bench.wait(pause_s)
        elif number > 1:
            bench.until_cool(bench.room_now_c() + 4.5, at_least_s=float(bench.rng.integers(600, 840)))
        stretches.append(make_part(bench, number, share=share, remark=remark))
    bench.until_cool(bench.room_now_c() + 6.0, at_least_s=720.0)
    return stretches


def hold(bench: Bench, bed_c: float, seconds: float) -> Stretch:
    """The bed held at `bed_c` for `seconds` from cold or from the last hold, nothing else running."""
    start, bed_start_c = len(bench.plug_w), bench.bed_now_c
    bench.until_ready(Asked(bed_c=bed_c))
    ready = len(bench.plug_w)
    bench.wait(seconds, Asked(bed_c=bed_c))
    return Stretch(
        "hold test",
        f"{bench.machine.name} {bed_c:g} degC",
        start,
        len(bench.plug_w),
        ready,
        bed_start_c,
        bed_c,
    )


def holds(bench: Bench, levels: tuple[tuple[float, float], ...]) -> list[Stretch]:
    """Standby, then the bed held at each (degC, s) in turn, then cooling."""
    bench.wait(600.0)
    stretches = [hold(bench, bed_c, seconds) for bed_c, seconds in levels]
    bench.until_cool(bench.room_now_c() + 6.0, at_least_s=900.0)
    return stretches


def switch_on(bench: Bench) -> list[Stretch]:
    """Loads turned on one after another, each for four minutes on top of those before it."""
    bench.wait(300.0)
    asked = Asked()
    first = len(bench.plug_w)
    stretches = []
    for load in ("hot-end fan", "part fan", "motors holding", "hot end", "bed"):
        start = len(bench.plug_w)
        asked.hot_fan = True
        asked.part_fan = asked.part_fan or load == "part fan"
        asked.motors = asked.motors or load == "motors holding"
        asked.hot_c = HOT_END_C if load == "hot end" else asked.hot_c
        asked.bed_c = BED_C if load == "bed" else asked.bed_c
        bench.wait(240.0 if load in ("hot-end fan", "part fan", "motors holding") else 480.0, asked)
        stretches.append(Stretch("load", load, start, len(bench.plug_w)))
    whole = Stretch("switch-on test", f"{bench.machine.name} switch-on", first, len(bench.plug_w))
    bench.until_cool(bench.room_now_c() + 6.0, at_least_s=600.0)
    return [whole, *stretches]


def standby_week(machine: Machine, rng: np.random.Generator) -> F64:
    """Plug power of a week of doing nothing, one value a step. [W]

    The screen sleeps except for a few minutes around opening hours; each hour the machine looks for news.
    """
    seconds = np.arange(round(7 * 86400 / STEP_S)) * STEP_S
    hour = seconds / 3600.0 % 24.0
    awake = (hour > 9.0) & (hour < 17.5) & (seconds % 5400.0 < 600.0)
    asking = seconds % 3600.0 < 45.0
    slow = np.repeat(rng.normal(0.0, 0.05, seconds.size // 1200 + 1), 1200)[: seconds.size]
    power_w = machine.standby_w + slow + np.where(awake, 0.9, 0.0) + np.where(asking, 0.7, 0.0)
    return np.asarray(power_w, dtype=np.float64)
