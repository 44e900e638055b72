"""Operating states and boundaries of simulated runs whose truth is known."""

from itertools import pairwise

import numpy as np
import pytest
from attrs import evolve

from core.activity import find
from core.states import bounds, states, states_of_log, warm_up_end
from tests.core.simulated import MachineModel, MeterModel, Order, Simulated, Task, simulate
from tests.core.test_activity import BEDS, DAY, METERS


@pytest.fixture(scope="module")
def made() -> Simulated:
    return simulate(MachineModel(), MeterModel(), DAY, seed=1)


def misses_s(bed: str, meter: str, order: Order) -> list[float]:
    made = simulate(evolve(BEDS[bed], order=order), METERS[meter], DAY, seed=4)
    activity = find(made.trace)
    return [
        abs(warm_up_end(made.trace, activity, part.start_s, part.end_s) - part.warm_up_end_s)
        for part in made.parts
    ]


@pytest.mark.parametrize("meter", ["1 s", "5 s"])
@pytest.mark.parametrize("bed", ["thermostat", "slow pulses", "no bed"])
@pytest.mark.parametrize("order", ["bed first", "together", "staged"])
def test_warm_up_ends_where_processing_begins(bed: str, meter: str, order: Order) -> None:
    assert max(misses_s(bed, meter, order)) <= max(15.0, 4 * METERS[meter].interval_s)


def test_warm_up_ends_near_where_processing_begins_whatever_the_bed_and_the_meter() -> None:
    orders: tuple[Order, ...] = ("bed first", "together", "staged")
    all_s = [s for bed in BEDS for meter in METERS for order in orders for s in misses_s(bed, meter, order)]
    assert np.median(all_s) <= 15
    assert np.percentile(all_s, 90) <= 120


def test_a_soak_belongs_to_the_warm_up() -> None:
    made = simulate(
        MachineModel(), MeterModel(), (Task("idle", 300), Task("part", 1800, soak_s=600), Task("idle", 300))
    )
    (part,) = made.parts
    assert part.warm_up_end_s - part.start_s > 600
    assert warm_up_end(made.trace, find(made.trace), part.start_s, part.end_s) == pytest.approx(
        part.warm_up_end_s, abs=10
    )


def test_states_of_a_run_follow_each_other(made: Simulated) -> None:
    activity = find(made.trace)
    run = activity.runs[0]
    spans = states(made.trace, activity, run.start_s, run.end_s)
    assert [s.state for s in spans] == ["warm-up", "processing", "cooling"]
    assert all(a.end_s == b.start_s for a, b in pairwise(spans))
    assert spans[-1].end_s - run.end_s == pytest.approx(MachineModel().held_after_s, abs=3)


def test_states_cover_the_whole_log(made: Simulated) -> None:
    spans = states_of_log(made.trace, find(made.trace))
    assert spans[0].start_s == 0
    assert spans[-1].end_s == made.trace.end_s
    assert all(a.end_s == b.start_s for a, b in pairwise(spans))


def test_a_machine_switched_off_at_the_plug_is_off() -> None:
    tasks = (Task("off", 300), *DAY, Task("off", 300))
    trace = simulate(MachineModel(), MeterModel(), tasks).trace
    spans = states_of_log(trace, find(trace))
    assert spans[0].state == spans[-1].state == "off"


@pytest.mark.parametrize("boundary", ["warm-up and processing", "processing only", "until cooled"])
def test_boundaries(made: Simulated, boundary: str) -> None:
    activity = find(made.trace)
    run = activity.runs[0]
    start_s, end_s = bounds(made.trace, activity, run.start_s, run.end_s, boundary)  # type: ignore[arg-type]
    assert (start_s > run.start_s) == (boundary == "processing only")
    assert (end_s > run.end_s) == (boundary == "until cooled")
