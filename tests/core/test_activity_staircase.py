"""Switch-on tests and what must not be taken for one."""

import numpy as np

from core.activity import find
from core.traces import Trace
from tests.core.simulated import MachineModel, MeterModel, Task, simulate


def leading_up(*levels_w: float) -> Trace:
    """A run of a part after idle levels of four minutes each."""
    made = simulate(
        MachineModel(), MeterModel(), (Task("idle", 300), Task("part", 1500, homing_s=0), Task("idle", 600))
    )
    power_w = np.array(made.trace.power_w)
    rng = np.random.default_rng(0)
    stairs = np.concatenate([np.full(240, w) for w in levels_w]) + 0.05 * rng.normal(size=240 * len(levels_w))
    power_w = np.concatenate([np.round(stairs, 1), power_w[300:]])
    return Trace.of(np.arange(power_w.size, dtype=float), power_w)


def test_loads_turned_on_one_by_one_are_a_switch_on_test() -> None:
    (stretch,) = find(leading_up(9.2, 10.4, 13.0, 18.0)).stretches
    assert stretch.kind == "switch-on test"
    assert abs(stretch.start_s - 240) <= 20


def test_loads_that_open_the_stretch_themselves_belong_to_the_staircase() -> None:
    """4.5 W, 12 W, 38 W and at last a bed, three minutes each, then all off together."""
    rng = np.random.default_rng(3)
    levels_w = [8.0] * 600 + [12.5] * 180 + [24.5] * 180 + [62.5] * 180 + [292.5] * 180 + [8.0] * 900
    power_w = np.array(levels_w) + rng.normal(0.0, 0.05, len(levels_w))
    (stretch,) = find(Trace.of(np.arange(power_w.size, dtype=float), np.round(power_w, 1))).stretches
    assert stretch.kind == "switch-on test"
    assert abs(stretch.start_s - 600) <= 20


def test_one_step_up_before_a_run_is_no_switch_on_test() -> None:
    assert [s.kind for s in find(leading_up(9.2, 9.2, 18.0)).stretches] == ["run"]


def test_idle_that_falls_before_a_run_is_no_switch_on_test() -> None:
    assert [s.kind for s in find(leading_up(18.0, 13.0, 9.2)).stretches] == ["run"]


def test_switching_on_at_the_plug_is_no_load() -> None:
    assert [s.kind for s in find(leading_up(0.0, 9.2, 18.0)).stretches] == ["run"]


def test_a_standby_that_rises_in_steps_and_sinks_again_is_no_staircase() -> None:
    trace = leading_up(9.2, 9.2, 9.2, 9.2)
    saw_w = np.where(trace.time_s < 960, 1.5 * (1 - trace.time_s % 240 / 240), 0.0)
    stretches = find(Trace.of(trace.time_s, np.round(trace.power_w + saw_w, 1))).stretches
    assert [s.kind for s in stretches] == ["run"]
