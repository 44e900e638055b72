"""A run that waited is a run of the part, however hard its pause is to see; a longer part is none."""

import pytest

from core.activity import find
from tests.core.simulated import Control, MachineModel, MeterModel, Simulated, Task, simulate

REST = Task("idle", 900)
PART = Task("part", 1500)
PAUSED = Task("part", 1500, pause_at_s=800.0, pause_s=560.0)
EARLY = Task("part", 1500, pause_at_s=90.0, pause_s=560.0)
LONGER = Task("part", 2050)

NOISY = MeterModel(interval_s=2.0, noise_w=0.5)
MEANS = MeterModel(interval_s=5.0, averaging=True, noise_w=0.3)
ON_CHANGE = MeterModel(on_change_w=1.0)
CASES: list[tuple[Control, MeterModel]] = [
    ("thermostat", MEANS),
    ("thermostat", ON_CHANGE),
    ("slow pulses", NOISY),
    ("fast pulses", NOISY),
    ("fast pulses", ON_CHANGE),
    ("none", NOISY),
]


def simulated(control: Control, meter: MeterModel, odd: Task, seed: int) -> Simulated:
    tasks = (REST, PART, REST, odd, REST, PART, REST, PART, REST)
    return simulate(MachineModel(control=control, motors_moving_w=4.0), meter, tasks, seed)


@pytest.mark.parametrize(("control", "meter"), CASES)
@pytest.mark.parametrize("odd", [PAUSED, EARLY])
def test_a_run_that_waited_is_a_run_of_the_part(control: Control, meter: MeterModel, odd: Task) -> None:
    kinds = [s.kind for s in find(simulated(control, meter, odd, 5).trace).stretches]
    assert kinds == ["run"] * 4


@pytest.mark.parametrize(("control", "meter"), CASES)
def test_a_longer_part_is_another(control: Control, meter: MeterModel) -> None:
    kinds = [s.kind for s in find(simulated(control, meter, LONGER, 5).trace).stretches]
    assert kinds == ["run", "other part", "run", "run"]


def test_the_warm_up_of_a_run_that_waited_ends_before_it_waits() -> None:
    found = simulated("fast pulses", NOISY, PAUSED, 5)
    stretch = find(found.trace).stretches[1]
    assert stretch.warm_up_end_s == pytest.approx(found.truths[1].warm_up_end_s, abs=90)
    assert stretch.paused_s == pytest.approx(560, rel=0.2)


@pytest.mark.parametrize(("interval_s", "noise_w", "seed"), [(1.0, 0.23, 2), (5.0, 0.4, 0), (10.0, 0.5, 1)])
def test_motors_held_after_the_end_are_no_part_of_it_for_a_noisy_meter(
    interval_s: float, noise_w: float, seed: int
) -> None:
    machine = MachineModel(control="none", motors_held_w=9.0, held_after_s=1800.0)
    meter = MeterModel(interval_s=interval_s, noise_w=noise_w)
    rest, part = Task("idle", 1500), Task("part", 2400)
    found = simulate(machine, meter, (rest, part, rest, part, rest), seed)
    ends_s = [s.end_s for s in find(found.trace).stretches]
    assert ends_s == pytest.approx([t.end_s for t in found.parts], abs=interval_s)
