"""What the user accepts of the fairness list: kept, told apart, and no longer held to once it changes."""

import json
import statistics

import pytest
from attrs import evolve

from core import edits, json_answer
from core.figures.fairness import MATTERS, fairness_figure
from core.found.fairness import explain_finding
from core.history import History
from core.problems import Problem
from core.results.compare import compare
from core.results.fairness_answer import (
    conditions,
    counted,
    findings_table,
    headline,
    held_against,
    line,
)
from core.results.fairness_points import POINTS, point_of
from core.results.table import fairness_table
from core.results.values import Comparison, Finding
from core.store.values import decode, encode
from core.study import Study
from core.traces import Trace
from core.wording import sentences
from tests.core.benches import alike, bench, trace

Bench = tuple[Study, dict[str, Trace]]


def warm_started() -> Bench:
    makings = alike()
    makings[2] = evolve(makings[2], warm_up=25)
    return bench({"Alder": trace(makings), "Rowan": trace(alike(level_w=90.0, seed=1), seed=1)})


def of(comparison: Comparison, code: str) -> Finding:
    return next(f for f in comparison.fairness if f.problem.code == code)


def test_an_accepted_point_stays_listed_and_is_not_counted() -> None:
    study, traces = warm_started()
    before = compare(study, traces)
    finding = of(before, "fair.warm_start")
    edit = edits.accept_finding(study, finding, "  the part needs no warm-up ")
    after = compare(edit.study, traces)
    assert [f.key for f in after.fairness] == [f.key for f in before.fairness]
    assert len(after.open_findings) == len(before.open_findings) - 1
    assert of(after, "fair.warm_start").accepted == "the part needs no warm-up"
    # nothing else of the comparison changes
    assert evolve(after, fairness=before.fairness) == before
    back = edits.take_back_acceptance(edit.study, finding.key).study
    assert compare(back, traces) == before


def test_accepting_is_one_step_that_can_be_undone_and_is_kept_in_the_file() -> None:
    study, traces = warm_started()
    finding = of(compare(study, traces), "fair.warm_start")
    history = History.start(edits.Edit(study, "Start")).apply(edits.accept_finding(study, finding, "why not"))
    assert decode(encode(history.study, Study), Study) == history.study
    assert history.undo().study == study


def test_a_graver_point_is_open_again_and_says_what_was_accepted() -> None:
    study, traces = warm_started()
    finding = of(compare(study, traces), "fair.warm_start")
    milder = evolve(finding, level="note")
    lapsed = of(compare(edits.accept_finding(study, milder, "too little").study, traces), "fair.warm_start")
    assert lapsed.is_open
    assert lapsed.lapsed == "too little"


def test_what_is_no_longer_found_is_told() -> None:
    study, traces = warm_started()
    finding = of(compare(study, traces), "fair.warm_start")
    accepted = edits.accept_finding(study, finding, "let it be").study
    gone = compare(edits.leave_out(accepted, finding.run_ids[0], "warm").study, traces)
    assert "fair.warm_start" not in {f.problem.code for f in gone.fairness}
    (before,) = gone.accepted_before
    assert before.why == "let it be"
    assert before.said.startswith("Alder, run 3: the warm-up took")
    # and counts as accepted again when the run is back
    back = compare(
        edits.include(edits.leave_out(accepted, finding.run_ids[0], "").study, finding.run_ids[0]).study,
        traces,
    )
    assert of(back, "fair.warm_start").accepted == "let it be"


def test_accepting_takes_a_reason_and_a_key() -> None:
    study, traces = warm_started()
    finding = of(compare(study, traces), "fair.warm_start")
    with pytest.raises(ValueError, match="reason"):
        edits.accept_finding(study, finding, "  ")
    with pytest.raises(ValueError, match="key"):
        edits.accept_finding(study, evolve(finding, key=""), "why")
    with pytest.raises(ValueError, match="nothing was accepted"):
        edits.take_back_acceptance(study, "fair.warm_start r9")


def test_every_finding_has_a_key_of_its_own() -> None:
    study, traces = warm_started()
    study = edits.add_typed(study, study.machines[0].id, 60.0, seconds=2500.0).study
    comparison = compare(study, traces)
    keys = [f.key for f in comparison.fairness]
    assert len(keys) == len(set(keys)) > 1
    assert all(key.startswith(f.problem.code) for key, f in zip(keys, comparison.fairness, strict=True))


def test_reports_and_files_tell_what_was_accepted() -> None:
    study, traces = warm_started()
    finding = of(compare(study, traces), "fair.warm_start")
    comparison = compare(edits.accept_finding(study, finding, "by choice").study, traces)
    answer = json.loads(json_answer.dumps(json_answer.compared(comparison, study, ())))
    told = {f["text"][:12]: f["accepted"] for f in answer["fairness"]}
    assert told["Alder, run 3"] == "by choice"
    assert None in told.values()
    assert {"level", "text", "machines"} <= set(answer["fairness"][0])
    assert "by choice" in {row[-1] for row in fairness_table(comparison).rows}
    assert line(of(comparison, "fair.warm_start")).startswith("caution, accepted (by choice): Alder")


def test_runs_are_planned_again_and_handed_back() -> None:
    study, traces = bench({"Alder": trace(alike(1)), "Rowan": trace(alike(level_w=90.0, seed=1), seed=1)})
    finding = of(compare(study, traces), "fair.one_run")
    once = edits.plan_again(study, finding).study
    assert [(e.machine_id, e.runs) for e in once.plan.extra] == [(finding.machine_ids[0], 2)]
    assert edits.plan_again(once, finding).study == once
    everybody = evolve(finding, machine_ids=tuple(m.id for m in study.machines))
    assert edits.plan_again(study, everybody).study == study
    run = study.runs_of(study.logs[1].id)[0]
    moved = edits.move_edges(study, run.id, run.start_s + 4, run.end_s).study
    by_hand = of(compare(moved, traces), "fair.hand")
    assert by_hand.run_ids == (run.id,)
    assert edits.hand_back_runs(moved, by_hand.run_ids).study == study


def test_one_run_is_held_against_the_spread_of_the_others() -> None:
    study, traces = bench({"Alder": trace(alike(1)), "Rowan": trace(alike(6, level_w=90.0, seed=1), seed=1)})
    comparison = compare(study, traces)
    finding = of(comparison, "fair.one_run")
    alder, rowan = (next(m for m in comparison.machines if m.name == n) for n in ("Alder", "Rowan"))
    energies = [r.energy_wh or 0.0 for r in rowan.included]
    # Student's t for 5 degrees of freedom, from a table
    expected = (
        2.5706 * statistics.stdev(energies) / statistics.fmean(energies) * (alder.included[0].energy_wh or 0)
    )
    assert finding.matters_wh == pytest.approx(expected, rel=1e-3)


def test_the_sentence_on_top() -> None:
    study, traces = warm_started()
    comparison = compare(study, traces)
    assert headline(comparison).startswith(
        "Nothing that was found makes this comparison unfair; one thing asks for caution: "
        "a warm start (Alder, run 3), which could matter "
    )
    assert "Smallest difference shown: " in conditions(comparison)
    assert conditions(comparison).endswith("temperature of the bed, the room or the nozzle.")
    grave = tuple(evolve(f, level="unfair") if f.level == "caution" else f for f in comparison.fairness)
    assert headline(evolve(comparison, fairness=grave)) == (
        "One thing makes this comparison unfair: a warm start (Alder, run 3)."
    )
    two = (*grave, evolve(grave[0], key="another"))
    assert headline(evolve(comparison, fairness=two)) == (
        "Two things make this comparison unfair: a warm start (twice)."
    )
    other = evolve(grave[0], problem=Problem("fair.drift"), run_ids=(), key="drift")
    assert headline(evolve(comparison, fairness=(grave[0], other))) == (
        "Two things make this comparison unfair: "
        "a warm start (Alder, run 3) and a drift from run to run (Alder)."
    )
    none = evolve(comparison, fairness=())
    assert headline(none) == "Nothing was found against this comparison."
    accepted = tuple(evolve(f, accepted="so be it") for f in comparison.fairness)
    assert headline(evolve(comparison, fairness=accepted)) == headline(none)
    assert " accepted." in conditions(evolve(comparison, fairness=accepted))


def test_the_words_count_what_is_open() -> None:
    study, traces = warm_started()
    comparison = compare(study, traces)
    assert counted(comparison.open_findings) == "2 open points of fairness: 1 caution, 1 note"


def test_the_table_and_the_figure_show_the_open_points_in_one_order() -> None:
    study, traces = warm_started()
    comparison = compare(study, traces)
    table = findings_table(comparison)
    assert [row[1] for row in table.rows] == [point_of(f).name for f in comparison.open_findings]
    figure = fairness_figure(comparison, study)
    assert figure is not None
    known = [f for f in comparison.open_findings if f.matters_wh is not None]
    assert [row.machine_id for row in figure.rows] == [f.key for f in known]
    (measure,) = figure.measures
    assert measure.key == MATTERS
    assert [c.mark.value for c in measure.cells if c.mark] == [f.matters_wh for f in known]
    assert [c.against for c in measure.cells] == [f.against_wh for f in known]
    # the dashed line is the difference of the two machines
    energies = [m.energy_wh.value for m in comparison.machines if m.energy_wh]
    assert measure.lines[0].value == pytest.approx(abs(energies[0] - energies[1]))
    assert measure.axis.top >= measure.lines[0].value
    assert fairness_figure(evolve(comparison, fairness=()), study) is None


def test_how_it_was_found() -> None:
    study, traces = warm_started()
    comparison = compare(study, traces)
    finding = of(comparison, "fair.warm_start")
    told = explain_finding(finding, comparison)
    assert told.title == "Warm start: Alder, run 3"
    assert told.value_text.startswith("Caution, could matter ")
    assert told.formula[0].startswith("mean of 4 runs: ")
    assert told.sources[0].run_id == finding.run_ids[0]
    assert len(told.sources) == 4
    assert "the machine's mean with this run" in held_against(finding, comparison)
    equal = evolve(finding, matters_wh=5.71, against_wh=5.68)  # no difference is seen in what is told
    assert "It could matter 5.7 Wh" in held_against(equal, comparison)
    assert "That is about 5.7 Wh, " in held_against(equal, comparison)


def test_every_point_has_a_sentence_and_every_sentence_a_point() -> None:
    codes = {c for c in sentences() if c.startswith(("fair.", "plausible."))}
    assert codes == set(POINTS)
    unknown = Finding("note", Problem("fair.of_a_later_version"), ())
    assert point_of(unknown).action == "accept"
