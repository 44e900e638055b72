"""Like for like: steps by hold tests and by the plate law, what stays, and who changes places."""

import math

import numpy as np
import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st

from core.beds.hold_fit import Point
from core.beds.like_for_like import (
    Conditions,
    Step,
    adjusted,
    by_duration,
    by_holds,
    by_plate_law,
    mean_steps,
)
from core.beds.model import BedModel
from core.beds.plate import loss_ratio
from core.figures.waterfall import like_figure, waterfall_figure
from core.found.like import like_found
from core.results.like_answer import conditions, headline, like_note, like_table, step_text
from core.results.like_for_like import Adjusted, Given, LikeForLike, Swap, _swaps, like_for_like
from core.results.like_for_like import given as given_of
from core.results.values import BedShare, Measured, StateSpan
from core.study import Log, Run
from core.traces import Trace
from tests.comparisons import make

LINE = BedModel.of([Point(20, 24.0, 0.1), Point(30, 37.0, 0.1), Point(40, 50.0, 0.1)], 0.005)
CAPACITY = Measured(360.0, 20.0)
WARM = Conditions(60.0, 20.0, 20.0)
HOUR_S = 3600.0


def changes(steps: tuple[Step, ...]) -> list[float]:
    return [s.change_wh for s in steps]


def test_the_same_conditions_change_nothing() -> None:
    steps = by_holds(LINE, CAPACITY, WARM, WARM, HOUR_S)
    assert changes(steps) == [0.0, 0.0, 0.0]
    assert adjusted(Measured(100.0, 2.0), steps) == Measured(100.0, 2.0)


def test_a_cooler_bed_needs_less_by_the_line_and_by_its_warm_up() -> None:
    """50 in place of 60 degC: 13 W less for an hour, and 360 J/K x 10 K = 1 Wh less to warm."""
    bed, room, start = by_holds(LINE, CAPACITY, WARM, Conditions(50.0, 20.0, 20.0), HOUR_S)
    assert bed.change_wh == pytest.approx(-14.0)
    assert (room.change_wh, start.change_wh) == (0.0, 0.0)
    assert bed.u_wh > 0


def test_a_warm_start_costs_its_heat() -> None:
    """A bed that began at 45 in place of 20 degC saved 25 K x 360 J/K = 2.5 Wh."""
    own = Conditions(60.0, 20.0, 45.0)
    *_, start = by_holds(LINE, CAPACITY, own, WARM, HOUR_S)
    assert start.change_wh == pytest.approx(2.5)
    assert changes(by_holds(LINE, CAPACITY, own, WARM, HOUR_S))[:2] == [0.0, 0.0]


def test_a_colder_room_is_a_step_of_its_own() -> None:
    own = Conditions(60.0, 30.0, 30.0)
    bed, room, start = by_holds(LINE, CAPACITY, own, WARM, HOUR_S)
    assert bed.change_wh == 0.0
    assert room.change_wh == pytest.approx(13.0)
    assert start.change_wh == pytest.approx(1.0)


@given(st.floats(45, 60), st.floats(15, 25), st.floats(45, 60), st.floats(15, 25), st.floats(15, 40))
@settings(max_examples=60, deadline=None)
def test_there_and_back_is_nothing(
    bed_c: float, room_c: float, to_c: float, to_room: float, at_c: float
) -> None:
    here, there = Conditions(bed_c, room_c, at_c), Conditions(to_c, to_room, to_room)
    out = math.fsum(changes(by_holds(LINE, CAPACITY, here, there, HOUR_S)))
    back = math.fsum(changes(by_holds(LINE, CAPACITY, there, here, HOUR_S)))
    assert out == pytest.approx(-back, abs=1e-9)


def test_the_plate_law_scales_the_beds_energy_alone() -> None:
    bed, room = by_plate_law(40.0, 1.0, WARM, Conditions(50.0, 20.0, 20.0))
    assert bed.change_wh == pytest.approx(40.0 * (loss_ratio(60, 50, 20) - 1))
    assert room.change_wh == pytest.approx(0.0, abs=1e-9)
    farther = by_plate_law(40.0, 1.0, WARM, Conditions(40.0, 20.0, 20.0))[0]
    assert farther.u_wh > bed.u_wh


def test_holds_and_plate_law_agree_on_a_bed_that_is_a_plate() -> None:
    watts = [50.0 * loss_ratio(60, 20 + k, 20) for k in (20.0, 30.0, 40.0)]
    points = [Point(k, w, 0.2) for k, w in zip((20.0, 30.0, 40.0), watts, strict=True)]
    to = Conditions(50.0, 20.0, 20.0)
    held = by_holds(BedModel.of(points, 0.0), Measured(1.0, None), WARM, to, HOUR_S)[0]
    law = by_plate_law(50.0, 0.0, WARM, to)[0]
    assert held.change_wh == pytest.approx(law.change_wh, rel=0.05)


def test_the_interval_of_the_change_holds_the_truth() -> None:
    """Lines refitted to holds that scatter: the 95 % interval holds the true change in at least 93 of 100."""
    rng = np.random.default_rng(8)
    to, true_wh, held = Conditions(50.0, 20.0, 20.0), -13.0, 0
    for _ in range(200):
        points = [Point(k, 1.3 * k - 2 + 0.4 * rng.standard_normal(), 0.4) for k in (20.0, 30.0, 40.0)]
        step = by_holds(BedModel.of(points, 0.0), Measured(1e-9, None), WARM, to, HOUR_S)[0]
        held += abs(step.change_wh - true_wh) <= 1.96 * step.u_wh
    assert held >= 186


def test_uncertainties_of_the_steps_are_added() -> None:
    steps = (Step("bed", -10.0, 1.0), Step("room", 1.0, 0.5))
    found = adjusted(Measured(50.0, 4.0), steps)
    assert found.value == 41.0
    assert found.u95 == pytest.approx(math.hypot(4.0, 1.959964 * 1.5), rel=1e-5)


def test_the_mean_of_runs_is_no_surer_than_their_model() -> None:
    each = ((Step("bed", -10.0, 1.0),), (Step("bed", -12.0, 3.0),))
    assert mean_steps(each) == (Step("bed", -11.0, 2.0),)


def test_a_bed_no_warmer_than_the_room_is_the_callers_mistake() -> None:
    with pytest.raises(ValueError, match="not heated"):
        Conditions(20.0, 20.0, 20.0)


def machine(name: str, measured_wh: float, adjusted_wh: float | None, u95: float = 1.0) -> Adjusted:
    return Adjusted(
        machine_id=name,
        name=name,
        slot=0,
        measured_wh=Measured(measured_wh, u95),
        adjusted_wh=None if adjusted_wh is None else Measured(adjusted_wh, u95),
        steps=() if adjusted_wh is None else (Step("bed", adjusted_wh - measured_wh, 0.1),),
        how=None if adjusted_wh is None else "hold test",
        run_id="r",
        why_not="" if adjusted_wh is not None else "a hold test would tell",
    )


def made(*machines: Adjusted) -> LikeForLike:
    return LikeForLike(WARM, machines, _swaps(machines))


def test_machines_that_change_places_are_named() -> None:
    found = made(machine("Alder", 40.0, 50.0), machine("Birch", 45.0, 42.0))
    assert found.swaps == (Swap("Alder", "Birch", is_sure=True),)
    assert headline(found) == (
        "Made like for like, Alder and Birch change places: Birch 42.0 ± 1.0 Wh, Alder 50.0 ± 1.0 Wh."
    )
    assert [m.name for m in found.known] == ["Birch", "Alder"]


def test_a_change_of_places_within_the_intervals_says_so() -> None:
    found = made(machine("Alder", 40.0, 43.0), machine("Birch", 42.0, 42.5))
    assert "Alder and Birch change places, though within what their intervals" in headline(found)


def test_no_change_of_places_is_an_answer() -> None:
    found = made(machine("Alder", 40.0, 41.0), machine("Birch", 45.0, 46.0))
    assert headline(found) == "Made like for like, no two machines change places."


def test_a_machine_without_data_stays_and_is_told_what_would_help() -> None:
    lacking = evolve(machine("Rowan", 30.0, None), why_not="a hold test would tell")
    found = made(machine("Alder", 40.0, 41.0), machine("Birch", 45.0, 46.0), lacking)
    assert [row[0] for row in like_table(found).rows] == ["Alder", "Birch", "Rowan"]
    assert like_table(found).rows[-1][-1] == "not adjusted"
    assert "Rowan: a hold test would tell." in like_note(found)


def test_a_fall_is_written_with_a_true_minus() -> None:
    assert step_text(Step("bed", -2.5, 0.25)) == "\u22122.5 ± 0.5"


def near_ties(bed_c: float) -> Given:
    """Two invented machines of nearly one energy, of which the second spends far more of it on its bed."""
    study, comparison = make(2, 3, left_out=False, unseen=False)
    shares = (0.3, 0.7)
    machines = tuple(
        evolve(
            m,
            energy_wh=Measured(30.0 + i, 0.4),
            runs=tuple(
                evolve(
                    r, energy_wh=30.0 + i, bed=BedShare(share, 0.01, share * (30.0 + i), "heater switching")
                )
                for r in m.runs
            ),
        )
        for (i, m), share in zip(enumerate(comparison.machines), shares, strict=True)
    )
    study = evolve(study, bed_c=bed_c, room_c=20.0)
    return given_of(study, evolve(comparison, machines=machines), {})


def test_it_says_at_which_bed_temperature_two_would_change_places() -> None:
    """By the plate law 0.7 x 31 - 0.3 x 30 = 12.7 Wh more bed energy outweigh 1 Wh from a fall of 8 % on."""
    from_ = near_ties(60.0)
    found = like_for_like(from_)
    assert not found.swaps
    falls_at = next(c for c in range(60, 40, -1) if 12.7 * (1 - loss_ratio(60.0, c, 20.0)) > 1.0)
    assert found.change_c == falls_at
    assert found.changing == Swap("Alder", "Birch", is_sure=False)
    assert f"With beds at {falls_at} °C Alder and Birch would, within what their" in headline(found)
    there = like_for_like(from_, float(falls_at))
    assert [(s.first_name, s.then_name) for s in there.swaps] == [("Alder", "Birch")]
    assert (there.change_c, there.changing) == (None, None)
    assert not like_for_like(from_, falls_at + 1.0).swaps


def test_both_energies_are_drawn_in_columns_of_one_width_and_axis() -> None:
    from_ = near_ties(60.0)
    measured, adjusted_ = like_figure(like_for_like(from_, 50.0), from_.study).measures
    assert measured.axis.top == adjusted_.axis.top
    assert 0 not in (measured.rank, adjusted_.rank)  # the first of a table is wider


def test_the_steps_lead_from_one_end_to_the_other_without_a_break() -> None:
    from_ = near_ties(60.0)
    found = like_for_like(from_, 50.0)
    one = found.known[0]
    figure = waterfall_figure(one, found, from_.study)
    assert figure is not None
    lines = [t for t in figure.trends if t.is_dashed]
    assert lines[0].y[0] == one.measured_wh.value
    assert one.adjusted_wh is not None
    assert lines[-1].y[0] == pytest.approx(one.adjusted_wh.value)
    bars = [t for t in figure.trends if t.low]
    assert [b.high[0] - b.low[0] for b in bars] == pytest.approx([abs(s.change_wh) for s in one.steps])
    for before, bar, after in zip(lines[:-1], bars, lines[1:], strict=True):
        assert {before.y[0], after.y[0]} == {bar.low[0], bar.high[0]}
    assert all(figure.y.low < v < figure.y.high for line in lines for v in line.y)
    ends = [s.y + sign * (s.u95 or 0.0) for s in figure.spots for sign in (-1, 1)]
    assert all(figure.y.low <= v <= figure.y.high for v in ends)


def test_a_machine_s_steps_are_told_with_its_own_conditions_and_budget() -> None:
    from_ = near_ties(60.0)
    found = like_for_like(from_, 50.0)
    machine = found.known[0]
    told = like_found(found, machine.machine_id)
    assert told is not None
    assert machine.adjusted_wh is not None
    assert told.value_text.startswith(f"{machine.adjusted_wh.value:.1f}")
    assert "bed 50 °C, room 20 °C" in told.method[0]
    assert [line.run_id for line in told.sources] == [r for r, _ in machine.own]
    assert "bed 60 °C" in told.sources[0].text
    assert {line.name for line in told.budget} == {"measured value", "steps"}
    assert sum(line.share_of_variance for line in told.budget) == pytest.approx(1.0)
    assert like_found(found, "nobody") is None


def test_a_machine_left_as_measured_is_told_why() -> None:
    found = made(machine("Alder", 40.0, None))
    told = like_found(found, "Alder")
    assert told is not None
    assert told.value_text == "not adjusted"
    assert told.method == ("It stays as measured: a hold test would tell.",)


def test_a_longer_run_adds_its_watts_of_processing() -> None:
    step = by_duration(30.0, 3600.0, 5400.0, 45.0, 0.9)
    assert step.change_wh == pytest.approx(15.0)
    both = adjusted(Measured(45.0, 1.959964 * 0.9), (step,))
    assert both.value == pytest.approx(60.0)
    assert both.u95 == pytest.approx(1.959964 * 0.9 * 60 / 45, rel=1e-5)  # as unsure as before, in proportion
    shorter = by_duration(30.0, 3600.0, 1800.0, 45.0, 0.9)
    assert shorter.change_wh == pytest.approx(-15.0)
    assert shorter.u_wh > 0


def with_traces(from_: Given, watts: tuple[float, float]) -> Given:
    """The same with logs: each machine's processing at a constant power, 1000 to 4600 s."""
    machines, logs, runs, traces = [], [], [], {}
    for m, power_w in zip(from_.comparison.machines, watts, strict=True):
        log_id = f"g {m.machine_id}"
        time_s = np.arange(0.0, 6000.0, 10.0)
        traces[log_id] = Trace.of(time_s, np.full(time_s.size, power_w), key=log_id)
        logs.append(Log(log_id, m.machine_id, "meter", ()))
        results = []
        for r in m.runs:
            runs.append(Run(r.run_id, log_id, 900.0, 4600.0))
            results.append(evolve(r, states=(StateSpan("processing", 1000.0, 4600.0),)))
        machines.append(evolve(m, runs=tuple(results)))
    study = evolve(from_.study, logs=tuple(logs), runs=tuple(runs))
    return given_of(study, evolve(from_.comparison, machines=tuple(machines)), traces)


def test_at_one_length_the_machine_with_more_watts_needs_more() -> None:
    from_ = with_traces(near_ties(60.0), (29.0, 25.0))
    assert not like_for_like(from_).swaps
    found = like_for_like(from_, None, None, 7200.0)
    changes_wh = {m.name: m.steps[-1].change_wh for m in found.machines}
    assert changes_wh == pytest.approx({"Alder": 29.0, "Birch": 25.0})
    assert [m.steps[-1].condition for m in found.machines] == ["duration", "duration"]
    assert [(s.first_name, s.then_name) for s in found.swaps] == [("Alder", "Birch")]
    assert "processing for 2 h each" in conditions(found)
    assert "Duration [Wh]" in [c.title for c in like_table(found).columns]
    assert "Duration [Wh]" not in [c.title for c in like_table(like_for_like(from_)).columns]
    cooler = like_for_like(from_, 50.0, None, 7200.0)
    assert all(
        c.steps[-1].change_wh < m.steps[-1].change_wh
        for c, m in zip(cooler.machines, found.machines, strict=True)
    )  # the added time is at the cooler bed's watts


def test_without_a_log_the_duration_stays_and_it_is_said() -> None:
    found = like_for_like(near_ties(60.0), None, None, 7200.0)
    assert all(m.steps[-1].condition != "duration" for m in found.machines)
    assert "Duration not adjusted: no log shows its processing" in like_note(found)


def test_where_the_warm_up_is_not_counted_its_heat_has_no_part() -> None:
    own, common = Conditions(60.0, 20.0, 45.0), Conditions(50.0, 20.0, 20.0)
    bed, _, start = by_holds(LINE, CAPACITY, own, common, HOUR_S, has_warm_up=False)
    assert bed.change_wh == pytest.approx(-13.0)
    assert start.change_wh == 0.0


def test_where_many_change_places_the_new_order_is_told() -> None:
    found = made(machine("Alder", 20.0, 40.0), machine("Birch", 25.0, 24.0), machine("Cedar", 26.0, 23.0))
    said = "from the least energy up it is Cedar, Birch and Alder: 3 pairs of machines change places."
    assert headline(found) == f"Made like for like, {said}"
