"""Logs that repeat what the meter measured: only fresh rows count."""

import numpy as np
import pytest
from attrs import evolve

from core.activity import find
from core.energy.refresh import held_rows, measured
from core.energy.total import between
from core.study import Meter
from core.traces import Trace
from tests.core.simulated import MachineModel, MeterModel, Task, simulate

DAY = (Task("idle", 400), Task("part", 1800), Task("idle", 700), Task("part", 1800), Task("idle", 500))
METER = Meter("m", "bench meter", gain_percent=0.0, offset_w=0.0)


def written_often(slow: Trace, rows: int) -> Trace:
    """A trace whose every value a logger writes `rows` times at even times."""
    step_s = slow.median_s / rows
    counter = None if slow.counter_wh is None else np.repeat(slow.counter_wh, rows)
    power = np.repeat(slow.power_w, rows)
    return Trace.of(np.arange(power.size) * step_s, power, "sampled", counter, resolution_w=slow.resolution_w)


@pytest.mark.parametrize("rows", [2, 3, 5, 10])
def test_the_hold_is_found_and_undone(rows: int) -> None:
    slow = simulate(MachineModel(), MeterModel(5.0, jitter=0.0), DAY, seed=rows).trace
    quick = written_often(slow, rows)
    assert held_rows(quick) == rows
    assert measured(quick).median_s == pytest.approx(5.0)
    assert measured(quick).power_w.size == pytest.approx(slow.power_w.size, abs=2 + 0.01 * slow.power_w.size)


@pytest.mark.parametrize("resolution_w", [0.1, 1.0])
@pytest.mark.parametrize("interval_s", [1.0, 10.0])
def test_a_log_of_fresh_rows_is_left_as_it_is(interval_s: float, resolution_w: float) -> None:
    trace = simulate(MachineModel(), MeterModel(interval_s, resolution_w=resolution_w), DAY, seed=2).trace
    assert measured(trace) is trace


def test_a_row_that_is_missing_does_not_hide_the_hold() -> None:
    quick = written_often(simulate(MachineModel(), MeterModel(5.0, jitter=0.0), DAY, seed=4).trace, 5)
    kept = np.ones(quick.time_s.size, dtype=bool)
    kept[np.random.default_rng(1).integers(1, kept.size, 8)] = False
    assert held_rows(Trace.of(quick.time_s[kept], quick.power_w[kept])) == 5


@pytest.mark.parametrize("rows", [2, 5])
def test_energy_and_doubt_are_those_of_the_slower_measuring(rows: int) -> None:
    slow = simulate(MachineModel(), MeterModel(10.0, jitter=0.0), DAY, seed=6).trace
    quick = written_often(slow, rows)
    (run, *_), (same, *_) = find(slow).runs, find(quick).runs
    one = between(slow, run.start_s, run.end_s, METER)
    other = between(quick, same.start_s, same.end_s, METER)
    assert other.energy_wh == pytest.approx(one.energy_wh, rel=0.01)
    doubts = [np.sqrt(sum(i.u_wh**2 for i in e.influences)) for e in (one, other)]
    assert doubts[1] == pytest.approx(doubts[0], rel=0.2)


def test_means_and_changes_are_no_holds() -> None:
    quick = written_often(simulate(MachineModel(), MeterModel(5.0, jitter=0.0), DAY, seed=4).trace, 5)
    for kind in ("averaged", "on_change"):
        assert held_rows(evolve(quick, kind=kind)) == 1
