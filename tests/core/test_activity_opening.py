"""Logs of a single run that begin hot, end at once, or show no idle at all."""

import pytest

from core.activity import Activity, find
from core.traces import Trace
from tests.core.simulated import MachineModel, MeterModel, Task, simulate
from tests.core.test_activity import BEDS


def cut_out(bed: str, from_start_s: float, after_end_s: float) -> Activity:
    """A log of one run from `from_start_s` after its start to `after_end_s` after its end."""
    made = simulate(
        BEDS[bed], MeterModel(), (Task("idle", 400), Task("part", 1800), Task("idle", 700)), seed=1
    )
    (part,) = made.parts
    time_s = made.trace.time_s
    kept = (time_s >= part.start_s + from_start_s) & (time_s <= part.end_s + after_end_s)
    return find(Trace.of(time_s[kept], made.trace.power_w[kept]))


@pytest.mark.parametrize("bed", ["thermostat", "slow pulses", "pulsing hot end"])
def test_a_log_that_begins_while_warming_up_has_a_run_that_is_not_sure(bed: str) -> None:
    (run,) = cut_out(bed, 20, 300).stretches
    assert (run.kind, run.why, run.sure) == ("run", "run.begins_hot", False)
    assert run.start_s == 0


@pytest.mark.parametrize("bed", ["thermostat", "slow pulses", "fast pulses", "pulsing hot end"])
def test_a_log_with_no_idle_is_one_run_that_is_not_sure(bed: str) -> None:
    activity = cut_out(bed, 1, -1)
    (run,) = activity.stretches
    assert activity.standby_w is None
    assert (run.kind, run.why, run.sure) == ("run", "run.whole_log", False)


@pytest.mark.parametrize("bed", BEDS)
@pytest.mark.parametrize("after_end_s", [-1, 300])
def test_a_log_that_begins_in_mid_run_has_no_run(bed: str, after_end_s: float) -> None:
    assert [s.kind for s in cut_out(bed, 900, after_end_s).stretches] == ["cut"]


def test_a_run_that_begins_hot_is_cut_where_the_log_has_whole_runs() -> None:
    tasks = (Task("part", 1800, homing_s=0), Task("idle", 700), Task("part", 1800), Task("idle", 700))
    made = simulate(MachineModel(), MeterModel(), tasks)
    assert [s.kind for s in find(made.trace).stretches] == ["cut", "run"]
