"""The ways to a bed's share and their refusals, as the pointer reads them out and a reader is told."""

import math
import re

import pytest

from core import edits
from core.figures.readout import readout
from core.found import explain
from core.found.values import Explanation
from core.quantities import BED_SHARE
from core.results.compare import compare
from core.results.values import Comparison
from core.study import Study
from core.traces import Trace
from core.uncertainty import coverage_factor
from tests.core.held_beds import Bed
from tests.core.test_bed_shares import day, study_of


def made(plan: str, key: str) -> tuple[Study, dict[str, Trace]]:
    return study_of(day(Bed(fast=True), plan), plan, key)


def told(study: Study, traces: dict[str, Trace], comparison: Comparison) -> Explanation:
    found = explain(comparison, study, traces, study.machines[0].id, "bed_share", study.runs[0].id)
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("plan", "way"), [("rro", "run with the bed off"), ("rrh", "hold test"), ("rroh", "run with the bed off")]
)
def test_the_way_is_named(plan: str, way: str) -> None:
    study, traces = made(plan, f"named {plan}")
    comparison = compare(study, traces)
    lines = readout(comparison, study.runs[0].id, BED_SHARE)
    assert re.fullmatch(r"Bed share: [\d.]+ ± [\d.]+ %", lines[1])
    assert f"found by: {way}" in lines
    assert ("also by hold test: " in "\n".join(lines)) == (plan == "rroh")


def test_arithmetic_with_the_bed_off_comes_out() -> None:
    study, traces = made("rro", "arithmetic")
    comparison = compare(study, traces)
    (line, *_) = told(study, traces, comparison).formula
    used, rest, bed = (float(x) for x in re.findall(r"([\d.]+) Wh", line))
    assert used - rest == pytest.approx(bed, abs=0.02)
    without_wh = comparison.machines[0].runs[2].energy_wh
    # the run with the bed on warms up longer than the other
    assert without_wh == pytest.approx(rest, rel=0.05)


def test_what_a_share_is_unsure_of_is_told_by_its_way() -> None:
    for plan, words in (("rro", "with the bed off differs"), ("rrh", "a bed held alone")):
        study, traces = made(plan, f"unsure {plan}")
        comparison = compare(study, traces)
        found = explain(comparison, study, traces, study.machines[0].id, "bed_share")
        assert found is not None
        assert any(words in line.why for line in found.budget), found.budget


def test_a_refusal_is_read_out_with_its_bound_and_its_reason() -> None:
    study, traces = made("rr", "refused")
    lines = readout(compare(study, traces), study.runs[0].id, BED_SHARE)
    assert re.match(r"Bed share: (at least|at most|not known)", lines[1])
    reason = " ".join(lines[2:])
    assert reason.startswith("The bed's part")
    assert "hold test" in reason
    assert max(len(line) for line in lines) <= 64


def test_a_missing_temperature_is_read_out() -> None:
    study, traces = made("rh", "missing")
    unknown = edits.set_bed_c(study, None).study
    lines = readout(compare(unknown, traces), study.runs[0].id, BED_SHARE)
    assert "note that of the run" in " ".join(lines)


def test_a_run_with_the_bed_off_says_what_it_is_for() -> None:
    study, traces = made("rro", "itself")
    lines = readout(compare(study, traces), study.runs[2].id, BED_SHARE)
    assert lines[1] == "Bed share: not known"
    assert "made with the bed off" in " ".join(lines)


@pytest.mark.parametrize(
    ("plan", "words"),
    [("rro", r"run 3: 3\d\.\d+ Wh with the bed off"), ("rrh", r"hold test 1: \d\d\.\d W on average .*")],
)
def test_the_stretches_that_told_the_share_are_among_its_sources(plan: str, words: str) -> None:
    study, traces = made(plan, f"sources {plan}")
    lines = told(study, traces, compare(study, traces)).sources
    assert [line.run_id for line in lines if re.fullmatch(words, line.text)] == [study.runs[2].id]
    assert not lines[-1].counts
    machine = explain(compare(study, traces), study, traces, study.machines[0].id, "bed_share")
    assert machine is not None
    assert sum(line.run_id == study.runs[2].id for line in machine.sources) == 1


def test_one_watt_of_a_hold_makes_the_share_larger() -> None:
    study, traces = made("rrh", "one watt")
    comparison = compare(study, traces)
    (line,) = (x for x in told(study, traces, comparison).sensitivity if "1 W more" in x)
    run = comparison.machines[0].runs[0]
    assert run.bed is not None
    assert run.energy_wh is not None
    terms = dict(run.bed.terms)
    expected = 100 * terms["processing_s"] / 3600 / run.energy_wh
    assert line == f"If the bed had held with 1 W more: +{expected:.2f} percentage points"


@pytest.mark.parametrize(
    ("plan", "way", "named"),
    [
        ("rro", "run with the bed off", "unlike run"),
        ("rrh", "hold test", "bed held"),
    ],
)
def test_the_budget_of_a_run_s_share_makes_its_interval(plan: str, way: str, named: str) -> None:
    study, traces = made(plan, f"budget {plan}")
    comparison = compare(study, traces)
    run = next(r for r in comparison.machines[0].runs if r.run_id == study.runs[0].id)
    assert run.bed is not None
    assert run.bed.method == way
    found = told(study, traces, comparison)
    assert run.bed.share_u95 is not None
    u = math.hypot(*(line.u for line in found.budget))
    assert coverage_factor(math.inf) * u == pytest.approx(100 * run.bed.share_u95, rel=0.01)
    assert sum(b.share_of_variance for b in found.budget) == pytest.approx(1.0)
    assert named in [b.name for b in found.budget]
    assert all(b.why for b in found.budget)
    assert "95 % interval" in found.formula[-1]


def test_the_budget_of_a_machine_keeps_its_runs_own_doubts_whole() -> None:
    study, traces = made("rrh", "budget of a machine")
    comparison = compare(study, traces)
    machine = comparison.machines[0]
    found = explain(comparison, study, traces, machine.machine_id, "bed_share")
    assert found is not None
    own = [line.u for line in found.budget if line.name != "repeats"]
    halves = [100 * r.bed.share_u95 for r in machine.included if r.bed is not None and r.bed.share_u95]
    assert len(halves) == 2
    assert coverage_factor(math.inf) * math.hypot(*own) == pytest.approx(sum(halves) / 2, rel=0.01)
    shares = [100 * r.bed.share for r in machine.included if r.bed is not None and r.bed.share is not None]
    repeats = next(line.u for line in found.budget if line.name == "repeats")
    assert repeats == pytest.approx(abs(shares[0] - shares[1]) / 2)  # of two values, u of the mean
