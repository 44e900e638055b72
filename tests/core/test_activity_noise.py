"""Runs in logs of noisy meters: a rest is found by its noise, and processing is never taken for one."""

import numpy as np
import pytest
from attrs import evolve

from core.activity import find
from core.activity.levels import noise_at_rest_w
from core.activity.rows import rows_of
from core.traces import Trace
from tests.core.simulated import MachineModel, MeterModel, Task, simulate
from tests.core.test_activity import BEDS, DAY, assert_found


def noisy(trace: Trace, sd_w: float, seed: int) -> Trace:
    """The trace as a meter with normal noise of `sd_w` shows it, in tenths of a watt."""
    noise_w = np.random.default_rng(seed).normal(0.0, sd_w, trace.power_w.size)
    return Trace.of(trace.time_s, np.round(trace.power_w + noise_w, 1), resolution_w=0.1)


@pytest.mark.parametrize("sd_w", [0.3, 0.6])
@pytest.mark.parametrize("interval_s", [1.0, 2.0, 5.0, 10.0])
@pytest.mark.parametrize("bed", BEDS)
def test_every_run_is_found_under_noise(bed: str, interval_s: float, sd_w: float) -> None:
    if bed == "pulsing hot end" and sd_w > 0.5:
        pytest.skip("pulses this faint and held motors cannot be told apart under so much noise")
    machine = evolve(BEDS[bed], held_after_s=120.0)
    made = simulate(machine, MeterModel(interval_s), DAY, seed=5)
    assert_found(evolve(made, trace=noisy(made.trace, sd_w, 6)), max(15.0, 2 * interval_s))


@pytest.mark.parametrize("bed", BEDS)
def test_runs_are_found_that_draw_little_more_than_a_high_standby_under_noise(bed: str) -> None:
    machine = evolve(BEDS[bed], supply_w=16.0, motors_moving_w=4.0, hot_end_w=30.0)
    made = simulate(machine, MeterModel(2.0), DAY, seed=11)
    assert_found(evolve(made, trace=noisy(made.trace, 0.35, 12)), 15.0)


@pytest.mark.parametrize("bed", BEDS)
def test_processing_alone_is_no_rest(bed: str) -> None:
    made = simulate(BEDS[bed], MeterModel(2.0), (Task("part", 5000),), seed=7)
    rows = rows_of(noisy(made.trace, 0.3, 8))
    middle = rows_of(noisy(made.trace, 0.3, 8), float(rows.time_s[-1]) * 0.4, float(rows.time_s[-1]) * 0.7)
    assert noise_at_rest_w(middle) == 0.0


def test_the_noise_of_a_rest_is_its_range_in_a_window() -> None:
    made = simulate(MachineModel(), MeterModel(2.0), DAY, seed=9)
    found_w = noise_at_rest_w(rows_of(noisy(made.trace, 0.6, 10)))
    # the range of 22 normal values has a mean of 3.8 and hardly ever exceeds 5.5 standard deviations
    assert 3.8 * 0.6 < found_w < 5.5 * 0.6


@pytest.mark.parametrize("pulses", [False, True])
@pytest.mark.parametrize("fan_w", [1.0, 5.0])
def test_parts_are_no_hold_tests_and_hold_tests_no_parts_under_noise(fan_w: float, pulses: bool) -> None:
    part, idle = Task("part", 3000.0), Task("idle", 700.0)
    machine = MachineModel(part_fan_w=fan_w, motors_moving_w=6.0, hot_end_pulses=pulses, hot_end_w=35.0)
    tasks = (idle, part, idle, Task("hold", 2400.0), idle, part, idle)
    for seed in range(3):
        made = simulate(machine, MeterModel(1.0, noise_w=0.6), tasks, seed)
        kinds = [s.kind for s in find(made.trace).stretches if s.seconds > 1500]
        assert kinds.count("run") == 2
        assert "other part" not in kinds


@pytest.mark.parametrize("bed", ["thermostat", "no bed"])
def test_runs_between_which_a_machine_is_switched_off_are_found_under_noise(bed: str) -> None:
    part, idle, off = Task("part", 2400.0), Task("idle", 300.0), Task("off", 400.0)
    made = simulate(BEDS[bed], MeterModel(1.0, averaging=True), (idle, part, idle, off, idle, part, idle), 3)
    noise_w = np.random.default_rng(4).normal(0.0, 0.3, made.trace.power_w.size)
    power_w = np.where(made.trace.power_w > 0, np.round(made.trace.power_w + noise_w, 1), 0.0)
    found = find(Trace.of(made.trace.time_s, power_w, "averaged", resolution_w=0.1))
    runs = [s for s in found.stretches if s.kind == "run"]
    assert len(runs) == len(made.parts)
    for run, truth in zip(runs, made.parts, strict=True):
        assert run.start_s == pytest.approx(truth.start_s, abs=30)
        assert run.end_s == pytest.approx(truth.end_s, abs=15)
