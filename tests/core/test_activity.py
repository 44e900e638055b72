"""Runs found in simulated traces whose truth is known."""

import numpy as np
import pytest
from attrs import evolve

from core.activity import find
from core.progress import Cancelled
from core.traces import Trace
from tests.core.simulated import MachineModel, MeterModel, Simulated, Task, simulate

DAY = (
    Task("idle", 400),
    Task("part", 1800),
    Task("idle", 700),
    Task("part", 1800),
    Task("idle", 500),
)

METERS = {
    "1 s": MeterModel(),
    "5 s": MeterModel(5.0),
    "10 s": MeterModel(10.0),
    "30 s": MeterModel(30.0),
    "mean of 10 s": MeterModel(10.0, averaging=True),
    "on change": MeterModel(on_change_w=1.0),
}
BEDS = {
    "thermostat": MachineModel(),
    "slow pulses": MachineModel(control="slow pulses"),
    "fast pulses": MachineModel(control="fast pulses", bed_w=700.0),
    "no bed": MachineModel(control="none"),
    "pulsing hot end": MachineModel(hot_end_pulses=True),
}


def assert_found(made: Simulated, tolerance_s: float) -> None:
    runs = [s for s in find(made.trace).stretches if s.kind == "run"]
    parts = made.parts
    assert len(runs) == len(parts)
    for run, part in zip(runs, parts, strict=True):
        assert run.start_s == pytest.approx(part.start_s, abs=tolerance_s)
        assert run.end_s == pytest.approx(part.end_s, abs=tolerance_s)


@pytest.mark.parametrize("meter", METERS)
@pytest.mark.parametrize("bed", BEDS)
def test_every_run_is_found_whatever_the_bed_and_the_meter(bed: str, meter: str) -> None:
    # held motors are told from a hot end that rests by being still for five rows
    machine = evolve(BEDS[bed], held_after_s=max(120.0, 10 * METERS[meter].interval_s))
    made = simulate(machine, METERS[meter], DAY, seed=1)
    assert_found(made, max(15.0, 2 * METERS[meter].interval_s))


@pytest.mark.parametrize("does", ["hold", "preheat", "filament"])
def test_heating_without_a_part_is_no_run(does: str) -> None:
    tasks = (*DAY, Task(does, 1500 if does == "hold" else 200), Task("idle", 400))  # type: ignore[arg-type]
    made = simulate(MachineModel(), MeterModel(), tasks, seed=2)
    stretches = find(made.trace).stretches
    assert [s.kind for s in stretches[:2]] == ["run", "run"]
    assert {s.kind for s in stretches[2:]} <= {"heating", "hold test"}


def test_a_part_of_another_length_is_another_part() -> None:
    tasks = (*DAY, Task("part", 4000, part="B"), Task("idle", 400))
    kinds = [s.kind for s in find(simulate(MachineModel(), MeterModel(5.0), tasks).trace).stretches]
    assert kinds == ["run", "run", "other part"]


def test_a_broken_off_run_is_not_counted() -> None:
    tasks = (*DAY, Task("part", 1800, stopped_after_s=500), Task("idle", 400))
    kinds = [s.kind for s in find(simulate(MachineModel(), MeterModel(5.0), tasks).trace).stretches]
    assert kinds == ["run", "run", "broken off"]


def test_a_log_that_starts_and_ends_in_mid_run_has_cut_runs() -> None:
    made = simulate(MachineModel(), MeterModel(), (*DAY, *DAY), seed=3)
    first, last = made.parts[0], made.parts[-1]
    inside = (made.trace.time_s > first.start_s + 900) & (made.trace.time_s < last.start_s + 900)
    trace = Trace.of(made.trace.time_s[inside], made.trace.power_w[inside])
    stretches = find(trace).stretches
    assert [s.kind for s in stretches] == ["cut", "run", "run", "cut"]
    assert stretches[0].why == "run.cut_at_start"
    assert stretches[-1].why == "run.cut_at_end"


def test_standby_is_the_lowest_idle_level() -> None:
    machine = MachineModel()
    standby_w = machine.board_w / machine.efficiency + machine.supply_w
    assert find(simulate(machine, MeterModel(), DAY).trace).standby_w == pytest.approx(standby_w, abs=0.2)


@pytest.mark.parametrize("rows", [0, 1, 2, 11])
def test_a_log_too_short_to_learn_from_has_no_stretches(rows: int) -> None:
    trace = Trace.of(np.arange(rows, dtype=float), np.full(rows, 5.0))
    activity = find(trace)
    assert activity.stretches == ()
    assert activity.standby_w is None


def test_a_log_of_standby_only_has_no_stretches() -> None:
    trace = simulate(MachineModel(), MeterModel(), (Task("idle", 4000),)).trace
    assert find(trace).stretches == ()


def test_a_log_of_constant_zero_has_no_stretches() -> None:
    assert find(Trace.of(np.arange(500.0), np.zeros(500))).stretches == ()


def test_finding_can_be_cancelled_and_says_how_far_it_is() -> None:
    trace = simulate(MachineModel(), MeterModel(), DAY).trace
    fractions: list[float] = []
    find(trace, lambda fraction, _: fractions.append(fraction))
    assert fractions == sorted(fractions)
    assert 0 <= fractions[0] < fractions[-1] <= 1

    def cancel(fraction: float, _: str) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        find(trace, cancel)


def test_a_pause_is_seen_and_does_not_make_another_part() -> None:
    paused = Task("part", 1800, pause_at_s=900, pause_s=400)
    made = simulate(MachineModel(), MeterModel(2.0), (*DAY, paused, Task("idle", 400)), seed=5)
    stretches = find(made.trace).stretches
    assert [s.kind for s in stretches] == ["run", "run", "run"]
    assert [s.paused_s for s in stretches[:2]] == [0, 0]
    assert stretches[2].paused_s == pytest.approx(400, abs=60)
