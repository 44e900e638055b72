"""What makes a stretch of heating a run: what moves in it, and what others like it say."""

import pytest
from attrs import evolve

from core.activity import Stretch, find
from core.activity.grouping import FAINT, judged
from core.activity.processing import processing
from tests.core.simulated import MachineModel, MeterModel, Task, simulate


def stretch(
    start_s: float, seconds: float = 3600.0, energy_wh: float = 100.0, motion: float = 0.4
) -> Stretch:
    return Stretch(
        start_s,
        start_s + seconds,
        energy_wh=energy_wh,
        warm_up_end_s=start_s + 300.0,
        processing_wh=0.8 * energy_wh,
        base_w=50.0,
        motion=motion,
    )


def kinds(stretches: list[Stretch], moves: list[bool], at_base: list[bool] | None = None) -> list[str]:
    found = judged(stretches, moves, at_base or [True] * len(stretches), 0.1)
    return [s.kind for s in found]


def test_three_of_one_length_are_runs_though_nothing_is_seen_to_move() -> None:
    many = [stretch(0.0), stretch(5000.0, 3700.0), stretch(10_000.0, 3550.0, 103.0)]
    assert kinds(many, [False] * 3) == ["run"] * 3
    assert [s.why for s in judged(many, [False] * 3, [True] * 3, 0.1)] == [FAINT] * 3
    assert kinds(many[:2], [False] * 2) == ["hold test"] * 2


@pytest.mark.parametrize("seconds", [800.0, 1800.0])
def test_one_broken_off_early_does_not_hide_them(seconds: float) -> None:
    many = [stretch(0.0), stretch(5000.0), stretch(10_000.0), stretch(15_000.0, seconds, 40.0, 2.0)]
    assert kinds(many, [False] * 3 + [True]) == ["run"] * 3 + ["broken off"]


def test_holds_beside_a_longer_run_stay_holds() -> None:
    many = [stretch(0.0), stretch(5000.0), stretch(10_000.0), stretch(15_000.0, 6000.0, 200.0, 2.0)]
    assert kinds(many, [False] * 3 + [True]) == ["hold test"] * 3 + ["run"]


def test_a_run_that_rested_low_in_a_long_pause_counts_if_it_moves_as_much() -> None:
    many = [stretch(0.0, motion=2.0), stretch(5000.0, motion=2.1), stretch(10_000.0, motion=1.9)]
    assert kinds(many, [True, True, False], [True, True, False]) == ["run"] * 3
    still = evolve(many[2], motion=0.5, levels_w=())
    assert kinds([*many[:2], still], [True, True, False], [True, True, False])[2] != "run"


def test_what_moves_is_processing_though_fans_after_it_draw_more_than_its_base() -> None:
    moving = [stretch(0.0), stretch(5000.0)]
    assert processing(moving, 0.02, 8.0, 60.0, 0.01) == ([True, True], [True, True])
    held = [stretch(0.0, motion=0.02), stretch(5000.0, motion=0.02)]
    assert processing(held, 0.02, 8.0, 60.0, 0.01) == ([False, False], [False, False])


def test_a_long_pause_late_in_a_run_makes_no_other_part_of_it_and_no_hold_test() -> None:
    part, idle = Task("part", 1800.0), Task("idle", 900.0)
    paused = evolve(part, pause_at_s=900.0, pause_s=400.0)
    machine = MachineModel(motors_moving_w=12.0, part_fan_w=6.0, held_after_s=0.0)
    made = simulate(machine, MeterModel(2.0, averaging=True), (idle, part, idle, paused, idle, part, idle), 2)
    runs = [s for s in find(made.trace).stretches if s.kind == "run"]
    assert len(runs) == 3
    assert runs[1].paused_s == pytest.approx(400, abs=45)
    assert runs[1].base_w == pytest.approx(runs[0].base_w, rel=0.05)
