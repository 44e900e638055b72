"""The comparison from a study and its traces."""

import gc
import math
import weakref

import pytest
from attrs import evolve

from core import edits
from core.activity import find
from core.figures.compare import shown_runs
from core.results.compare import ALL_PAIRS_UP_TO, compare, forget
from core.results.values import Comparison, MachineResult, Pair
from core.study import LoadCheck, Study
from core.traces import Trace
from core.wording import sentence
from tests.core.benches import alike, bench, trace, without


@pytest.fixture(scope="module")
def three() -> tuple[Study, dict[str, Trace]]:
    levels = {"Alder": 60.0, "Birch": 66.0, "Rowan": 90.0}
    return bench(
        {name: trace(alike(level_w=w, seed=i), seed=i) for i, (name, w) in enumerate(levels.items())}
    )


def of(comparison: Comparison, name: str) -> MachineResult:
    return next(m for m in comparison.machines if m.name == name)


def test_mean_is_that_of_the_runs_that_count(three: tuple[Study, dict[str, Trace]]) -> None:
    comparison = compare(*three)
    assert [m.name for m in comparison.machines] == ["Alder", "Birch", "Rowan"]
    for machine in comparison.machines:
        energies = [r.energy_wh for r in machine.included if r.energy_wh is not None]
        assert len(energies) == 4
        assert machine.energy_wh is not None
        assert machine.energy_wh.value == pytest.approx(math.fsum(energies) / 4)
        assert machine.parts_per_kwh is not None
        assert machine.parts_per_kwh.value == pytest.approx(1000 / machine.energy_wh.value)
        assert machine.mean_w is not None
        assert machine.seconds is not None
        assert machine.mean_w.value * machine.seconds.value / 3600 == pytest.approx(machine.energy_wh.value)
        for run in machine.included:
            assert run.energy_wh is not None
            assert run.seconds is not None
            assert run.mean_w == pytest.approx(run.energy_wh * 3600 / run.seconds)
            assert run.parts_per_kwh == pytest.approx(1000 / run.energy_wh)


def test_energy_of_a_run_is_the_area_under_its_power(three: tuple[Study, dict[str, Trace]]) -> None:
    study, traces = three
    run = of(compare(study, traces), "Alder").runs[0]
    each = next(iter(traces.values()))
    assert run.start_s is not None
    assert run.end_s is not None
    inside = (each.time_s >= run.start_s) & (each.time_s <= run.end_s)
    assert run.energy_wh == pytest.approx(float(each.power_w[inside].sum()) * 2.0 / 3600, rel=0.005)


def test_an_edit_of_one_run_computes_only_its_machine(three: tuple[Study, dict[str, Trace]]) -> None:
    study, traces = three
    before = compare(study, traces)
    run = study.runs[0]
    moved = edits.move_edges(study, run.id, run.start_s + 60, run.end_s).study
    after = compare(moved, traces)
    assert of(after, "Alder") is not of(before, "Alder")
    assert of(after, "Birch") is of(before, "Birch")
    assert of(after, "Rowan") is of(before, "Rowan")
    assert of(after, "Alder").runs[1:] == of(before, "Alder").runs[1:]
    assert of(after, "Alder").runs[0].decided_by_user
    back = compare(edits.hand_back(moved, run.id).study, traces)
    assert back == before


def test_left_out_runs_are_listed_with_their_reason(three: tuple[Study, dict[str, Trace]]) -> None:
    study, traces = three
    run = study.runs[1]
    left_out = edits.leave_out(study, run.id, "door was open").study
    machine = of(compare(left_out, traces), "Alder")
    assert len(machine.included) == 3
    assert machine.runs[1].why_excluded == "left out by hand: door was open"
    assert machine.runs[1].energy_wh is not None
    assert (
        compare(edits.include(left_out, run.id).study, traces).machines[0].energy_wh
        == of(compare(study, traces), "Alder").energy_wh
    )


def test_another_kind_does_not_count(three: tuple[Study, dict[str, Trace]]) -> None:
    study, traces = three
    changed = edits.set_kind(study, study.runs[0].id, "hold test").study
    run = of(compare(changed, traces), "Alder").runs[0]
    assert not run.included
    assert run.why_excluded == "a hold test: the bed was kept warm with no part made"
    assert run.bed is None
    assert run.left_out_by_user  # the program saw a run in it


def test_a_stretch_called_the_test_it_is_is_not_a_run_left_out_by_hand(
    three: tuple[Study, dict[str, Trace]],
) -> None:
    study, traces = three
    heating = evolve(study.runs[0], found_kind="heating", found_part="", found_why="")
    moved = edits.move_edges(
        evolve(study, runs=(heating, *study.runs[1:])), heating.id, heating.start_s, heating.end_s - 60
    ).study
    held = compare(edits.set_kind(moved, heating.id, "hold test").study, traces)
    run = of(held, "Alder").runs[0]
    assert not run.included
    assert not run.left_out_by_user
    assert run not in shown_runs(of(held, "Alder"))
    assert "1 other stretch found and not counted." in held.conditions
    assert "by hand" not in held.conditions


def test_a_run_with_the_bed_off_and_the_log_of_a_bed_alone_are_not_compared(
    three: tuple[Study, dict[str, Trace]],
) -> None:
    study, traces = three
    off = evolve(study, runs=(evolve(study.runs[0], set_bed_off=True), *study.runs[1:]))
    run = of(compare(off, traces), "Alder").runs[0]
    assert not run.included
    assert run.why_excluded == "made with the bed off: it tells the bed's part of the other runs"
    bed = evolve(study, logs=(evolve(study.logs[0], of_bed=True), *study.logs[1:]))
    assert of(compare(bed, traces), "Alder").runs == ()


def test_long_gaps_leave_a_run_out_unless_a_counter_or_the_user_says_otherwise() -> None:
    whole = trace(alike(3))
    start_s = 600 + 180 + 900.0
    holed = without(whole, start_s, start_s + 200)
    study, traces = bench({"Alder": whole})
    traces = dict.fromkeys(traces, holed)
    run = compare(study, traces).machines[0].runs[0]
    assert not run.included
    assert run.why_excluded is not None
    assert "gaps" in run.why_excluded
    insisted = edits.include(study, study.runs[0].id).study
    assert compare(insisted, traces).machines[0].runs[0].included
    counted = without(trace(alike(3), counter=True), start_s, start_s + 200)
    assert compare(study, dict.fromkeys(traces, counted)).machines[0].runs[0].included
    # a counter that was reset meanwhile has lost what was used in the gap
    assert counted.counter_wh is not None
    after_s = float(counted.time_s[counted.time_s >= start_s + 200][0])
    reset = evolve(
        counted,
        key="reset",
        counter_wh=counted.counter_wh - 3.0 * (counted.time_s >= after_s),
        counter_breaks_s=(after_s,),
    )
    run = compare(study, dict.fromkeys(traces, reset)).machines[0].runs[0]
    assert run.why_excluded is not None
    assert "gaps" in run.why_excluded


def test_a_log_that_is_not_read_yet_is_said_to_be(three: tuple[Study, dict[str, Trace]]) -> None:
    study, traces = three
    first = study.logs[0].id
    comparison = compare(study, {k: v for k, v in traces.items() if k != first})
    machine = comparison.machines[-1]
    assert machine.name == "Alder"
    assert machine.energy_wh is None
    assert {r.why_excluded for r in machine.runs} == {"its log has not been read"}
    assert machine.runs[0].energy_wh is None


def test_edges_outside_the_log_are_no_crash(three: tuple[Study, dict[str, Trace]]) -> None:
    study, traces = three
    end_s = traces[study.logs[0].id].end_s
    run = evolve(study.runs[0], set_start_s=end_s + 100, set_end_s=end_s + 200)
    comparison = compare(evolve(study, runs=(run, *study.runs[1:])), traces)
    outside = next(r for r in of(comparison, "Alder").runs if r.run_id == run.id)
    assert outside.why_excluded == "its edges leave nothing of the log between them"


def test_boundaries_nest(three: tuple[Study, dict[str, Trace]]) -> None:
    study, traces = three
    energies = []
    for boundary in ("processing only", "warm-up and processing", "until cooled"):
        run = compare(edits.set_boundary(study, boundary).study, traces).machines[0].runs[0]  # type: ignore[arg-type]
        assert run.energy_wh is not None
        energies.append(run.energy_wh)
        assert (run.start_s, run.end_s) == (study.runs[0].start_s, study.runs[0].end_s)
    assert energies == sorted(energies)
    # warm-up: 90 samples of 2 s at about 260 W
    assert energies[1] - energies[0] == pytest.approx(260 * 180 / 3600, rel=0.15)


def test_alike_machines_show_no_difference() -> None:
    study, traces = bench({"Birch": trace(alike(seed=1), seed=1), "Cedar": trace(alike(seed=2), seed=2)})
    (pair,) = compare(study, traces).pairs
    assert pair.shown is False
    assert pair.ratio_low is not None
    assert pair.ratio_high is not None
    assert pair.ratio_low < 1 < pair.ratio_high
    assert pair.needed_percent is not None


def test_a_difference_takes_both_the_repeats_and_the_ratio() -> None:
    levels = {"Alder": 60.0, "Birch": 62.0, "Cedar": 90.0}
    logs = {
        name: trace(alike(level_w=level_w, seed=seed), seed=seed)
        for seed, (name, level_w) in enumerate(levels.items())
    }
    study, traces = bench(logs, meters=True)
    pairs = compare(study, traces).pairs
    assert len(pairs) == 3
    for pair in pairs:
        assert pair.repeats_p is not None
        assert pair.ratio_p is not None
        assert pair.tested == 3
        assert pair.p == max(pair.repeats_p, pair.ratio_p)
        assert pair.shown is (pair.p < 0.05)
    assert pairs[-1].shown or pairs[1].shown


def test_one_run_each_is_not_judged() -> None:
    study, traces = bench({"Alder": trace(alike(1)), "Rowan": trace(alike(1, level_w=90.0), seed=1)})
    (pair,) = compare(study, traces).pairs
    assert pair.shown is None
    assert pair.p is None


def test_one_meter_cancels_and_two_do_not() -> None:
    traces = {"Alder": trace(alike(), seed=0), "Rowan": trace(alike(level_w=90.0), seed=1)}
    widths = []
    for meters in (False, True):
        (pair,) = compare(*bench(traces, meters=meters)).pairs
        assert pair.ratio_low is not None
        assert pair.ratio_high is not None
        widths.append((pair.ratio_high - pair.ratio_low) / pair.ratio)
    # two meters of +-1 % each: 1.96 x sqrt(2) x 1 % / sqrt(3) on either side, a little more for the offsets
    assert widths[1] ** 2 - widths[0] ** 2 == pytest.approx((2 * 1.96 * 2**0.5 * 0.01 / 3**0.5) ** 2, rel=0.3)


def test_a_same_load_check_narrows_and_corrects_the_ratio_of_two_meters() -> None:
    study, traces = bench(
        {
            "Alder": trace(alike(), seed=0, counter=True),
            "Rowan": trace(alike(level_w=90.0), seed=1, counter=True),
        },
        meters=True,
    )
    one, other = (log.meter_id for log in study.logs)

    def checked(reading: float, other_reading: float) -> Pair:
        check = LoadCheck("c1", one, other, reading, other_reading, "Wh", 1.0, 1.0, 36_000.0)
        (pair,) = compare(evolve(study, checks=(check,)), traces).pairs
        return pair

    (before,) = compare(study, traces).pairs
    alike_meters, unlike_meters = checked(1000.0, 1000.0), checked(1000.0, 1010.0)
    assert before.ratio_low is not None
    assert before.ratio_high is not None
    assert alike_meters.ratio_low is not None
    assert alike_meters.ratio_high is not None
    assert alike_meters.ratio == pytest.approx(before.ratio, rel=1e-6)
    narrowed = (alike_meters.ratio_high - alike_meters.ratio_low) / (before.ratio_high - before.ratio_low)
    assert narrowed < 0.75
    # the second meter reads 1 % more of the same load, so its machine uses that much less than it seems
    assert unlike_meters.ratio / before.ratio == pytest.approx(1.01, abs=0.001)


def test_a_check_of_powers_counts_too() -> None:
    study, traces = bench({"Alder": trace(alike()), "Rowan": trace(alike(), seed=1)}, meters=True)
    one, other = (log.meter_id for log in study.logs)
    check = LoadCheck("c1", one, other, 1000.0, 1005.0, "W", 0.1, 0.1)
    (before,), (after,) = compare(study, traces).pairs, compare(evolve(study, checks=(check,)), traces).pairs
    forwards = (before.machine_id, before.other_id) == (after.machine_id, after.other_id)
    shift = after.ratio / before.ratio if forwards else after.ratio * before.ratio
    assert abs(shift - 1) == pytest.approx(0.005, abs=0.001)


def test_typed_readings_alone_make_a_machine() -> None:
    study = edits.add_machine(edits.new_study("s").study, "Alder").study
    for energy_wh in (20.0, 22.0, 24.0):
        study = edits.add_typed(study, study.machines[0].id, energy_wh, seconds=1800, step_wh=1.0).study
    machine = compare(study, {}).machines[0]
    assert machine.energy_wh is not None
    assert machine.energy_wh.value == pytest.approx(22.0)
    # the spread of the three alone: 4.303 x 2 / sqrt(3) = 4.97; the part that the display explains has more
    # degrees of freedom, so a little less
    assert 4.0 < machine.energy_wh.u95 < 4.97
    assert machine.mean_w is not None
    assert machine.mean_w.value == pytest.approx(44.0)
    assert machine.runs[0].energy is not None
    step = next(i for i in machine.runs[0].energy.influences if i.name == "display step")
    assert step.u_wh == pytest.approx(1 / 6**0.5)


def test_typed_reading_left_out_or_empty() -> None:
    study = edits.add_machine(edits.new_study("s").study, "Alder").study
    study = edits.add_typed(study, study.machines[0].id, 0.0).study
    study = edits.add_typed(study, study.machines[0].id, 20.0).study
    study = edits.leave_out_typed(study, study.typed[1].id, "misread").study
    machine = compare(study, {}).machines[0]
    assert [r.why_excluded for r in machine.runs] == [
        "no energy: the two readings of the display are the same",
        "left out by hand: misread",
    ]
    assert machine.energy_wh is None


def test_many_machines_are_paired_with_the_best_and_their_neighbours() -> None:
    study = edits.new_study("s").study
    n = ALL_PAIRS_UP_TO + 5
    for i in range(n):
        study = edits.add_machine(study, f"Machine {i:02d}").study
        for k in range(2):
            study = edits.add_typed(study, study.machines[-1].id, 20.0 + i + 0.1 * k, seconds=1800).study
    pairs = compare(study, {}).pairs
    assert len(pairs) == (n - 1) + (n - 2)
    assert {p.machine_id for p in pairs[: n - 1]} == {study.machines[0].id}


def test_empty_study() -> None:
    comparison = compare(edits.new_study("s").study, {})
    assert comparison.machines == ()
    assert comparison.headline.startswith("Nothing to compare yet")


def test_forgetting_changes_no_answer(three: tuple[Study, dict[str, Trace]]) -> None:
    before = compare(*three)
    forget()
    assert compare(*three) == before


def test_a_fault_in_one_run_does_not_cost_the_others(three: tuple[Study, dict[str, Trace]]) -> None:
    study, traces = three
    first = study.logs[0].id
    # levels that no run finder gives: whatever then goes wrong stands for a fault of the program
    broken = evolve(find(traces[first]), standby_w="five", threshold_w="ten", processing_floor_w="twenty")
    # results are remembered by the trace, which these levels do not belong to
    forget()
    comparison = compare(study, traces, {first: broken})
    forget()
    assert [m.name for m in comparison.machines if m.energy_wh is not None] == ["Birch", "Rowan"]
    assert of(comparison, "Alder").standby_w is None
    told = [sentence(p) for p in comparison.problems if p.code == "standby.fault"]
    assert len(told) == 1
    assert told[0].startswith("The standby power of Alder is not known: the program itself failed on it (")
    for run in of(comparison, "Alder").runs:
        assert run.why_excluded is not None
        assert "the program itself failed on it (" in run.why_excluded


def test_a_study_that_was_closed_keeps_no_trace() -> None:
    study, traces = bench({"Alder": trace(alike(2, seed=71), seed=71, counter=True)})
    compare(study, traces)
    (held,) = (weakref.ref(each) for each in traces.values())
    traces.clear()
    forget()
    gc.collect()
    assert held() is None
