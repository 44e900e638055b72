"""Invented repeats of one part: warm-up at full power, then a bed held by a thermostat."""

import numpy as np

from core.line_up.strands import Strand
from core.results.values import StateSpan
from core.study import Meter
from core.traces import F64, Trace

METER = Meter("m", "a meter")
STANDBY_S = 120.0


def power(rng: np.random.Generator, *, warm_s: float, after_s: float, base_w: float = 25.0) -> F64:
    """Watts each second: standby, warm-up, processing with a bed of 120 W that switches, standby."""
    bed_on = np.zeros(round(after_s))
    at = rng.uniform(0, 40)
    while at < after_s:
        length = rng.uniform(9, 13)
        bed_on[round(at) : round(at + length)] = 1.0
        at += length + rng.uniform(28, 36)
    warm = np.full(round(warm_s), 165.0) + rng.normal(0, 1, round(warm_s))
    work = base_w + rng.normal(0, 2, round(after_s)) + 120.0 * bed_on
    idle = np.full(round(STANDBY_S), 4.0)
    return np.concatenate([idle, warm, work, idle])


def strand(watts: F64, warm_s: float, name: str = "run 1", machine: str = "Alder", slot: int = 0) -> Strand:
    """A strand of such a log, its edges and the end of warm-up known exactly."""
    trace = Trace.of(np.arange(watts.size, dtype=float), watts, "on_change", resolution_w=0.1)
    start_s, end_s = STANDBY_S, watts.size - STANDBY_S
    return Strand(
        run_id=f"{machine} {name}",
        machine_id=machine,
        machine=machine,
        name=name,
        slot=slot,
        trace=trace,
        meter=METER,
        start_s=start_s,
        end_s=end_s,
        warm_s=start_s + warm_s,
        energy_wh=float(watts[int(start_s) : int(end_s)].sum()) / 3600,
        states=(
            StateSpan("warm-up", start_s, start_s + warm_s),
            StateSpan("processing", start_s + warm_s, end_s),
        ),
    )


def repeats(
    seed: int,
    runs: int = 5,
    machine: str = "Alder",
    slot: int = 0,
    after_s: float = 2000.0,
    base_w: float = 25.0,
) -> list[Strand]:
    """Repeats that differ by chance alone."""
    rng = np.random.default_rng(seed)
    made = []
    for i in range(runs):
        warm_s = round(90 + 3 * rng.standard_normal())
        length_s = after_s * (1 + 0.003 * rng.standard_normal())
        watts = power(rng, warm_s=warm_s, after_s=length_s, base_w=base_w)
        made.append(strand(watts, warm_s, f"run {i + 1}", machine, slot))
    return made
