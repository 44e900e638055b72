"""The beds of a study: what was held, at which temperatures, and what is told of each machine."""

import math
from datetime import UTC, datetime

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.beds.hold_fit import Point
from core.beds.model import BedModel
from core.beds.plate import Plate, loss
from core.beds.supply import bed_supply
from core.results.holds import beds
from core.study import Machine, Source, Study
from core.traces import Trace
from tests.core.held_beds import BEFORE_S, Bed
from tests.core.hold_studies import ROOM_C, held_study, with_areas

Made = tuple[Study, dict[str, Trace]]


@pytest.fixture(scope="module")
def made() -> Made:
    return held_study([("Alder", Bed(), (45.0, 60.0, 75.0)), ("Birch", Bed(slope_w_per_k=1.1), (60.0,))])


def test_watts_at_one_temperature_are_those_of_the_bed(made: Made) -> None:
    study, traces = made
    found = beds(study, traces)
    assert (found.bed_c, found.room_c) == (60.0, ROOM_C)
    for machine, slope in zip(found.machines, (1.35, 1.1), strict=True):
        assert machine.reference is not None
        assert abs(machine.reference.power_w - (-4 + 40 * slope)) < machine.reference.u95_w
        # the meter's unstated per cent alone leaves 1.13 % open
        assert 0.0113 < machine.reference.u95_w / machine.reference.power_w < 0.08
    assert [m.reference.how for m in found.machines if m.reference] == ["fit", "held"]


def test_the_slope_is_that_of_the_bed(made: Made) -> None:
    study, traces = made
    model = beds(study, traces).machines[0].model
    assert model is not None
    assert model.fit is not None
    assert abs(model.fit.coefficients[1] - 1.35) < model.fit.u95(1)


def test_heat_capacity_from_the_warm_up(made: Made) -> None:
    study, traces = made
    for machine in beds(study, traces).machines:
        assert machine.heat_capacity is not None
        assert machine.heat_capacity.u95 is not None
        assert abs(machine.heat_capacity.value - 420) < machine.heat_capacity.u95 < 60


def test_without_an_area_there_is_nothing_per_area(made: Made) -> None:
    study, traces = made
    assert all(m.w_per_dm2 is None and m.floor_w is None for m in beds(study, traces).machines)
    found = beds(with_areas(study, (5.0, 4.0)), traces)
    alder = found.machines[0]
    assert alder.w_per_dm2 is not None
    assert alder.reference is not None
    assert alder.w_per_dm2.value == pytest.approx(alder.reference.power_w / 5)
    assert alder.floor_w == pytest.approx(loss(Plate.square(5.0), 60.0, 20.0).total_w)
    at_60 = next(h for h in alder.held if h.bed_c == 60.0)
    assert at_60.floor_w == alder.floor_w
    assert at_60.bed_w is not None
    assert alder.floor_w is not None
    assert at_60.times_floor == pytest.approx(at_60.bed_w.value / alder.floor_w)


def test_faces_that_radiate_less_lose_less(made: Made) -> None:
    study, traces = made
    study = with_areas(study, (5.0, 4.0))
    dull = beds(study, traces).machines[0].floor_w
    bright = beds(edits.set_emissivity(study, 0.1).study, traces).machines[0].floor_w
    assert dull is not None
    assert bright is not None
    assert bright < 0.7 * dull


def test_read_at_another_temperature_and_room(made: Made) -> None:
    study, traces = made
    warmer = edits.set_bed_c(study, 70.0).study
    alder, birch = beds(warmer, traces).machines
    assert alder.reference is not None
    assert birch.reference is not None
    assert alder.reference.how == "fit"
    assert alder.reference.power_w == pytest.approx(-4 + 50 * 1.35, rel=0.02)
    assert birch.reference.how == "scaled"  # 60 alone was held
    assert birch.reference.u95_w > 0.02 * birch.reference.power_w
    cold = beds(edits.set_bed_c(study, 15.0).study, traces)
    assert not cold.known


def test_a_test_left_out_tells_nothing(made: Made) -> None:
    study, traces = made
    run = study.runs_of(study.logs[-1].id)[0]
    without = beds(edits.leave_out(study, run.id, "door open").study, traces).machines[1]
    assert (without.tests, without.held, without.model) == (0, (), None)


def test_a_temperature_nobody_knows() -> None:
    study, traces = held_study([("Alder", Bed(), (60.0,))])
    run = study.runs[0]
    bare = edits.note_temperatures(study, run.id, None, None).study
    held = beds(bare, traces).machines[0].held[0]
    assert (held.bed_known, held.bed_c, held.room_known) == ("unknown", None, "of the test")
    assert held.bed_w is not None
    assert beds(bare, traces).machines[0].model is None
    told = beds(edits.set_bed_c(bare, 60.0).study, traces).machines[0]
    assert told.held[0].bed_known == "of the test"
    assert told.model is not None


def _clocked(trace: Trace, hour: int, key: str, temperature_c: float | None = None) -> Trace:
    start_s = datetime(2026, 3, 2, hour, tzinfo=UTC).timestamp()
    columns = {} if temperature_c is None else {"bed": np.full(trace.time_s.size, temperature_c)}
    return evolve(
        trace, clock=evolve(trace.clock, start_s=start_s, kind="absolute"), temperatures_c=columns, key=key
    )


def test_temperature_from_another_log_of_the_same_time() -> None:
    study, traces = held_study([("Alder", Bed(), (60.0,))])
    study = edits.note_temperatures(study, study.runs[0].id, None, ROOM_C).study
    power = traces[study.logs[0].id]
    other = edits.NewLog((Source("other", "second meter.csv"),), "Alder", ())
    study = edits.import_logs(study, [other]).study
    study = edits.mark_log_of_bed(study, study.logs[-1].id).study

    def known(hour: int) -> tuple[str, float | None]:
        logs = {
            study.logs[0].id: _clocked(power, 9, "power"),
            study.logs[1].id: _clocked(power, hour, f"second {hour}", 61.5),
        }
        held = beds(study, logs).machines[0].held[0]
        return held.bed_known, held.bed_c

    assert known(9) == ("other log", 61.5)
    assert known(15) == ("unknown", None)  # it began hours later


def test_several_temperatures_in_one_test_are_told_apart() -> None:
    """One log, its own bed temperature beside the watts: 45, then 60 degC."""
    study, traces = held_study([("Alder", Bed(), (45.0, 60.0))])
    first, second = (traces[log.id] for log in study.logs)
    warm = second.power_w[second.time_s >= BEFORE_S]
    power = np.concatenate((first.power_w, warm))
    time_s = np.arange(power.size) * 2.0
    bed_c = np.concatenate(
        (
            np.where(first.time_s < BEFORE_S + 60, ROOM_C, 45.0),
            np.full(warm.size, 60.0),
        )
    )
    both = Trace.of(time_s, power, key="both", temperatures_c={"bed": bed_c})
    run = edits.FoundRun(float(BEFORE_S), both.end_s, "hold test", "", "")
    one = edits.set_room_c(edits.new_study("s").study, ROOM_C).study
    one = edits.import_logs(one, [edits.NewLog((Source("x", "both.csv"),), "Alder", (run,))]).study
    held = beds(one, {one.logs[0].id: both}).machines[0].held
    assert [round(h.bed_c or 0) for h in held] == [45, 60]
    assert [h.number for h in held] == [0, 1]
    for each, true_w in zip(held, (-4 + 25 * 1.35, -4 + 40 * 1.35), strict=True):
        assert each.bed_w is not None
        assert each.bed_w.value == pytest.approx(true_w, rel=0.05)


def test_a_log_that_is_not_read_costs_only_itself(made: Made) -> None:
    study, traces = made
    birch = study.logs[-1].id
    found = beds(study, {k: v for k, v in traces.items() if k != birch})
    assert [len(m.held) for m in found.machines] == [3, 0]
    assert found.machines[1].tests == 1


def test_a_model_joins_its_ends_without_a_jump() -> None:
    model = BedModel.of([Point(20, 24, 0.2, 8.0), Point(30, 37, 0.2, 8.0), Point(40, 50, 0.2, 8.0)], 0.006)
    for end in (20.0, 40.0):
        inside, outside = model.at(end), model.at(end + math.copysign(1e-6, end - 30))
        assert outside.power_w == pytest.approx(inside.power_w, rel=1e-5)
        assert (inside.how, outside.how) == ("fit", "scaled")
    assert model.at(60.0).u95_w > 2 * model.at(40.0).u95_w


def test_a_difference_of_one_bed_is_surer_than_its_watts() -> None:
    model = BedModel.of([Point(40, 50.0, 0.5, 10.0)], 0.006)
    first, later = model.at(40.0), model.at(35.0)
    apart = np.linalg.norm(first.parts - later.parts)
    assert apart < 0.6 * math.hypot(first.u_w, later.u_w)


@pytest.mark.parametrize("points", [[], [Point(-5.0, 3.0)]])
def test_a_model_of_nothing(points: list[Point]) -> None:
    with pytest.raises(ValueError, match="above room"):
        BedModel.of(points, 0.0)


@pytest.mark.parametrize(
    ("properties", "found"),
    [
        ((("Bed supply", "mains"),), "mains"),
        ((("supply of the bed", "Low voltage, 24 V"),), "low voltage"),
        ((("Bed supply", "unknown"),), None),
        ((("Supply", "mains"),), None),
        ((("Bed supply", 24.0),), None),
    ],
)
def test_how_a_bed_is_fed(properties: tuple[tuple[str, str | float | bool], ...], found: str | None) -> None:
    assert bed_supply(Machine("a1", "Alder", 0, properties)) == found
