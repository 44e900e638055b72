"""Runs whose movement is too faint to be measured, and stretches that only last as long as a run."""

import numpy as np
import pytest
from attrs import evolve

from core.activity import Stretch, find
from core.activity.likeness import alike, distance, levels_w
from tests.core.simulated import MachineModel, MeterModel, Task, simulate


def stretch(power_w: np.ndarray, seconds: float = 3600.0) -> Stretch:
    levels = levels_w(power_w, np.ones(power_w.size, dtype=np.float32))
    return Stretch(0.0, seconds, energy_wh=100.0, levels_w=levels, rows=power_w.size)


def drawn(seed: int, base_w: float = 60.0, on: float = 0.4, rows: int = 400) -> np.ndarray:
    """Two heaters that pulse by chance, on a base that moves."""
    rng = np.random.default_rng(seed)
    bed_w, hot_w = 240.0 * (rng.random(rows) < on), 45.0 * (rng.random(rows) < 0.75)
    return base_w - 40 + 3 * rng.random(rows) + bed_w + hot_w


@pytest.mark.parametrize("rows", [60, 400])
def test_two_of_the_same_are_alike_whatever_the_pulses_did(rows: int) -> None:
    found = [
        alike(stretch(drawn(2 * n, rows=rows)), stretch(drawn(2 * n + 1, rows=rows)), 0.1) for n in range(40)
    ]
    assert sum(found) >= 38


def test_the_same_pulses_on_a_lower_base_are_not_alike() -> None:
    assert not any(alike(stretch(drawn(n)), stretch(drawn(n + 50, base_w=48.0)), 0.1) for n in range(20))


def test_one_that_lasts_longer_is_not_alike() -> None:
    assert not alike(stretch(drawn(1)), stretch(drawn(2), seconds=4000.0), 0.1)


def test_what_a_coarse_meter_cannot_tell_apart_is_no_distance() -> None:
    one, other = stretch(np.full(100, 60.0)), stretch(np.full(100, 61.0))
    assert distance(one, other, 1.0) == 0.0
    assert distance(one, other, 0.1) > 0.8


# a hot end whose cycle is no part of the sampling's is met on or off by chance: a tenth of the rows, by which
# the level with all heaters off is told, may be either
PULSING = MachineModel(hot_end_pulses=True, hot_end_w=40.0, motors_moving_w=2.0)
DAY = (Task("idle", 900), Task("part", 5400), Task("idle", 1800))


@pytest.mark.parametrize("seed", range(4))
def test_like_runs_of_a_pulsing_hot_end_all_count_at_a_minute(seed: int) -> None:
    machine = evolve(PULSING, bed_w=150.0, hysteresis_k=0.2, hot_end_w=27.0, hot_end_k=0.12)
    made = simulate(machine, MeterModel(57.0, jitter=0.1), DAY * 4, seed=seed)
    kinds = [s.kind for s in find(made.trace).stretches]
    assert kinds == ["run"] * 4


def test_a_bed_held_as_long_as_a_run_takes_is_none() -> None:
    day = (*DAY * 2, Task("hold", 5700), Task("idle", 900))
    made = simulate(PULSING, MeterModel(10.0), day, seed=3)
    kinds = [s.kind for s in find(made.trace).stretches]
    assert kinds[:2] == ["run", "run"]
    assert set(kinds[2:]) <= {"heating", "hold test"}


def test_both_heaters_held_as_long_as_a_run_takes_is_none() -> None:
    day = (*DAY * 2, Task("preheat", 5400), Task("idle", 900))
    made = simulate(MachineModel(), MeterModel(10.0), day, seed=3)
    assert [s.kind for s in find(made.trace).stretches] == ["run", "run", "hold test"]


def test_a_meter_too_coarse_for_movement_does_not_say_that_nothing_moved() -> None:
    machine = MachineModel(motors_moving_w=0.8, part_fan_w=0.5, motors_held_w=1.0)
    day = (Task("idle", 900), Task("part", 3600), Task("idle", 900), Task("filament", 240), Task("idle", 900))
    made = simulate(machine, MeterModel(2.0, resolution_w=1.0), day, seed=3)
    run, other = find(made.trace).stretches
    assert run.kind == "run"
    assert (other.kind, other.why, other.sure) == ("heating", "run.movement_unseen", False)
