"""What explanations try: a run left out, another boundary, more runs; as the study so changed would say."""

import math

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.found import RATIO, explain
from core.found.surer import with_runs
from core.found.writing import change
from core.quantities import ENERGY
from core.results.compare import compare
from core.results.values import Comparison
from core.uncertainty import mean_of, ratio
from tests.core import explained
from tests.core.explained import Bench, asked, last_number, line, of

# pytest looks for a fixture by its name in the file of the test
three, compared = explained.three, explained.compared


def test_a_mean_without_one_run_is_the_mean_of_the_others(three: Bench, compared: Comparison) -> None:
    machine = of(compared, "Rowan")
    found = asked(three, compared, machine, "energy_wh")
    energies = {run.name: run.energy_wh or 0.0 for run in machine.runs}
    mean = sum(energies.values()) / 4
    by_size = sorted(energies, key=lambda name: -abs(energies[name] - mean))
    for name in by_size[:3]:
        without = (sum(energies.values()) - energies[name]) / 3
        assert line(found.sensitivity, f"Without {name}").endswith(change(without - mean, ENERGY))


def test_a_run_left_out_is_tried_and_listed(three: Bench) -> None:
    study, traces = three
    run_id = of(compare(study, traces), "Alder").runs[2].run_id
    study = edits.leave_out(study, run_id, "door was open").study
    comparison = compare(study, traces)
    machine = of(comparison, "Alder")
    found = asked((study, traces), comparison, machine, "energy_wh")
    out = next(s for s in found.sources if s.run_id == run_id)
    assert not out.counts
    assert out.text.endswith("not counted: left out by hand: door was open")
    assert machine.energy_wh is not None
    left_out = machine.runs[2].energy_wh or 0.0
    by = (3 * machine.energy_wh.value + left_out) / 4 - machine.energy_wh.value
    assert line(found.sensitivity, "With run 3 counted too").endswith(change(by, ENERGY))
    own = asked((study, traces), comparison, machine, "energy_wh", run_id)
    assert own.cautions[0] == "It does not count in the comparison: left out by hand: door was open."


def test_the_other_boundaries_are_those_of_the_study_compared_so(three: Bench, compared: Comparison) -> None:
    study, traces = three
    found = asked(three, compared, of(compared, "Alder"), "energy_wh")
    other = compare(edits.set_boundary(study, "processing only").study, traces)
    energy = of(other, "Alder").energy_wh
    assert energy is not None
    assert line(found.sensitivity, "Counting processing only") == (
        f"Counting processing only: {energy.value:.1f} Wh"
    )


def test_a_log_read_for_the_other_thing_it_may_hold(three: Bench, compared: Comparison) -> None:
    study, traces = three
    machine = of(compared, "Alder")
    run = machine.runs[0]
    found = asked(three, compared, machine, "energy_wh", run.run_id)
    means = {key: evolve(each, kind="averaged", key=f"{key} of means") for key, each in traces.items()}
    then = of(compare(study, means), "Alder").runs[0].energy_wh
    assert then is not None
    assert run.energy_wh is not None
    told = line(found.sensitivity, "If the log held means of intervals")
    assert told.endswith(change(then - run.energy_wh, ENERGY))


def test_a_stretch_that_made_no_part_is_not_told_as_a_run(three: Bench) -> None:
    study, traces = three
    run_id = of(compare(study, traces), "Alder").runs[0].run_id
    study = edits.set_kind(study, run_id, "hold test").study
    comparison = compare(study, traces)
    found = asked((study, traces), comparison, of(comparison, "Alder"), "energy_wh", run_id)
    assert "It is no run of a part (hold test)" in " ".join(found.method)
    assert not any("processing" in text for text in found.formula)
    parts = asked((study, traces), comparison, of(comparison, "Alder"), "parts_per_kwh", run_id)
    assert (parts.value_text, parts.method) == ("not known", ("It made no whole part.",))
    assert found.cautions[0].startswith("It does not count in the comparison: a hold test")


def test_as_many_runs_as_there_are_give_the_interval_there_is(compared: Comparison) -> None:
    for machine in compared.machines:
        assert machine.energy_wh is not None
        again = with_runs(machine.influences, 4, 4)
        assert again == pytest.approx(machine.energy_wh.u95, rel=1e-3)
        more = [with_runs(machine.influences, 4, n) for n in (8, 40, 4000)]
        assert more == sorted(more, reverse=True)
        shared = math.hypot(*(i.u_wh for i in machine.influences if i.shared))
        assert more[-1] == pytest.approx(1.96 * shared, rel=0.01)


def test_meters_held_against_each_other_correct_and_narrow(three: Bench) -> None:
    study, traces = three
    before = compare(study, traces)
    alder = study.logs_of(of(before, "Alder").machine_id)[0].meter_id
    birch = study.logs_of(of(before, "Birch").machine_id)[0].meter_id
    study = edits.add_load_check(study, alder, birch, 1000.0, 1010.0, seconds=3600.0).study
    comparison = compare(study, traces)
    machine = of(comparison, "Alder")
    run = machine.runs[0]
    found = asked((study, traces), comparison, machine, "energy_wh", run.run_id)
    told = line(found.formula, "corrected by the same-load check")
    assert last_number(told) == pytest.approx(run.energy_wh, abs=6e-3)
    raw = of(before, "Alder").runs[0].energy_wh
    assert raw is not None
    assert run.energy_wh is not None
    assert run.energy_wh > raw
    gain = next(b for b in found.budget if b.name == "meter gain")
    assert "held against each other" in gain.shared_with
    assert sum(b.name == "meter gain" for b in found.budget) == 1
    assert line(found.sensitivity, "If the run started one sample").endswith(": no change")
    against = explain(
        comparison, study, traces, machine.machine_id, RATIO, other_id=of(comparison, "Birch").machine_id
    )
    assert against is not None
    means = [
        mean_of([r.energy for r in of(comparison, name).included if r.energy is not None])
        for name in ("Alder", "Birch")
    ]
    assert math.hypot(*(b.u for b in against.budget)) == pytest.approx(ratio(*means).u)


def test_a_better_way_to_the_bed_s_share_is_named_beside_the_others(three: Bench) -> None:
    study, traces = three
    machine = of(compare(study, traces), "Alder")
    last = machine.runs[3]
    log_id = study.logs_of(machine.machine_id)[0].id
    each = traces[log_id]
    in_last = (each.time_s > last.start_s) & (each.time_s < last.end_s)
    cold = evolve(
        each, power_w=np.where(in_last, each.power_w.clip(max=75.0), each.power_w), key="last run cold"
    )
    traces = {**traces, log_id: cold}
    study = edits.mark_bed_off(study, last.run_id).study
    comparison = compare(study, traces)
    run = of(comparison, "Alder").runs[0]
    assert run.bed is not None
    assert {way.method for way in (run.bed, *run.bed.others)} == {"run with the bed off", "heater switching"}
    found = asked((study, traces), comparison, of(comparison, "Alder"), "bed_share", run.run_id)
    assert run.bed.share is not None
    assert last_number(line(found.formula, "share =")) == pytest.approx(100 * run.bed.share, abs=0.06)
    other = run.bed.others[0]
    assert line(found.formula, "other ways").startswith(f"other ways: {other.method} ")
    words = "switches on and off" if run.bed.method == "heater switching" else "once with the bed off"
    assert words in found.method[0]


def test_a_ratio_with_one_run_is_not_judged(three: Bench) -> None:
    study, traces = three
    for run in of(compare(study, traces), "Alder").runs[1:]:
        study = edits.leave_out(study, run.run_id, "").study
    comparison = compare(study, traces)
    found = asked((study, traces), comparison, of(comparison, "Alder"), RATIO)
    assert any("cannot be judged" in text for text in found.method)
    energy = asked((study, traces), comparison, of(comparison, "Alder"), "energy_wh")
    assert any(text.startswith("One run only") for text in energy.cautions)
    assert energy.surer[0].startswith("More runs")
