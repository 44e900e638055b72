"""The best way to each run's bed share: by holds, by a run with the bed off, by a meter on the bed."""

import json
import re

import numpy as np
import pytest
from attrs import evolve, frozen

from core import edits
from core.beds.area import BED_AREA
from core.found import explain
from core.json_answer import compared, dumps
from core.quantities import BED_SHARE
from core.results.bed_shares import choice
from core.results.compare import compare
from core.results.values import BedShare, Comparison, RunResult
from core.study import Source, Study
from core.traces import F64, Clock, Trace
from core.wording import sentence
from tests.core.held_beds import Bed

STANDBY_W, IDLE_S, PROCESSING_S = 5.0, 600, 3000
DIFFERENCE_K = 40.0


@frozen(eq=False)
class Day:
    """A simulated log: seconds, watts at the plug and of the bed, and (start, end) of what was done. [s]"""

    time_s: F64
    plug_w: F64
    bed_w: F64
    stretches: tuple[tuple[int, int], ...]

    def share(self, number: int) -> float:
        """True bed share of a stretch."""
        start, end = self.stretches[number]
        return float(self.bed_w[start:end].sum() / self.plug_w[start:end].sum())

    def trace(self, key: str, every: int = 2, *, of_bed: bool = False) -> Trace:
        """As a meter logs it, with clocks that can be compared."""
        power = np.round((self.bed_w if of_bed else self.plug_w)[::every], 1)
        return Trace.of(
            self.time_s[::every], power, key=f"{key} {of_bed}", clock=Clock("absolute", 1_790_000_000.0)
        )


def bed_in(bed: Bed, seconds: int, rng: np.random.Generator, unlike: float = 1.0) -> tuple[F64, int]:
    """Watts of a bed from cold for `seconds` once it is warm, and how long it warmed. [W], [s]"""
    watts: list[float] = []
    now_k, on, warm_s = 0.0, True, -1
    while warm_s < 0 or len(watts) < warm_s + seconds:
        lost_w = float(bed.loss_w(np.array(now_k))) * unlike
        if bed.fast:
            held = float(bed.loss_w(np.array(DIFFERENCE_K))) * unlike
            duty = held / bed.heater_w + 0.5 * (DIFFERENCE_K - now_k) + 0.01 * rng.normal()
            heat = bed.heater_w * min(1.0, max(0.0, duty))
        else:
            on = now_k < DIFFERENCE_K - 0.4 or (on and now_k <= DIFFERENCE_K + 0.4)
            heat = bed.heater_w * on
        now_k += (heat - lost_w) / bed.capacity_j_per_k
        watts.append(heat)
        if warm_s < 0 and now_k >= DIFFERENCE_K - 0.2:
            warm_s = len(watts)
    return np.array(watts), warm_s


def day(bed: Bed, plan: str, seed: int = 1, unlike: float = 1.0) -> Day:
    """A log of runs (r), runs with the bed off (o) and hold tests (h), each from cold."""
    rng = np.random.default_rng(seed)
    plug, beds, stretches = [np.full(IDLE_S, STANDBY_W)], [np.zeros(IDLE_S)], []
    for what in plan:
        if what == "o":
            heat, warm_s = np.zeros(PROCESSING_S + 60), 60
        else:
            heat, warm_s = bed_in(bed, PROCESSING_S, rng, unlike if what == "r" else 1.0)
        rest = np.zeros(heat.size)
        if what != "h":
            rest[warm_s - 60 : warm_s] = 45.0  # the hot end warms
            moves = np.repeat(rng.uniform(-6, 6, heat.size // 3 + 1), 3)[: heat.size]
            rest[warm_s:] = 40.0 + moves[warm_s:]
        start = sum(part.size for part in plug)
        stretches.append((start, start + heat.size))
        for column, level, power in ((plug, STANDBY_W, rest + heat), (beds, 0.0, heat)):
            column += [power + level, np.full(1200, level)]
    watts = np.concatenate(plug)
    watts = watts + rng.normal(0, 0.1, watts.size)
    return Day(np.arange(watts.size, dtype=np.float64), watts, np.concatenate(beds), tuple(stretches))


def study_of(made: Day, plan: str, key: str) -> tuple[Study, dict[str, Trace]]:
    """One machine, whose stretches are told as the plan has them."""
    found = tuple(edits.FoundRun(float(a), float(b)) for a, b in made.stretches)
    study = edits.import_logs(
        edits.new_study("s").study, [edits.NewLog((Source(key, "a.csv"),), "Alder", found)]
    ).study
    for run, what in zip(study.runs, plan, strict=True):
        if what == "h":
            study = edits.set_kind(study, run.id, "hold test").study
            study = edits.note_temperatures(study, run.id, 60.0, 20.0).study
        elif what == "o":
            study = edits.mark_bed_off(study, run.id).study
    study = edits.set_bed_c(study, 60.0).study
    study = edits.set_room_c(study, 20.0).study
    return study, {study.logs[0].id: made.trace(key)}


def runs(comparison: Comparison) -> tuple[RunResult, ...]:
    return comparison.machines[0].runs


def bed_of(run: RunResult) -> BedShare:
    assert run.bed is not None
    return run.bed


@pytest.mark.parametrize("unlike", [0.95, 1.0, 1.07])
def test_a_hold_test_tells_what_a_fast_switched_bed_hides(unlike: float) -> None:
    made = day(Bed(fast=True), "rrh", unlike=unlike)
    study, traces = study_of(made, "rrh", f"hold {unlike}")
    for number in (0, 1):
        found = bed_of(runs(compare(study, traces))[number])
        assert found.method == "hold test"
        assert found.share is not None
        assert found.share_u95 is not None
        assert abs(found.share - made.share(number)) <= found.share_u95
        assert found.share == pytest.approx(made.share(number) / unlike**0.6, abs=0.03)
        assert found.energy_wh == pytest.approx(
            found.share * (runs(compare(study, traces))[number].energy_wh or 0)
        )
    # processing only, and until cooled: each of its own energy
    for boundary in ("processing only", "until cooled"):
        changed = edits.set_boundary(study, boundary).study  # type: ignore[arg-type]  # a literal in a loop
        found = bed_of(runs(compare(changed, traces))[0])
        assert found.method == "hold test"
        assert found.share is not None
    assert compare(study, traces).machines[0].bed_share is not None


def test_without_the_hold_it_is_refused_and_with_no_temperature_it_says_what_is_missing() -> None:
    made = day(Bed(fast=True), "rh")
    study, traces = study_of(made, "rh", "no temperature")
    alone = edits.set_kind(study, study.runs[1].id, "nothing").study
    assert bed_of(runs(compare(alone, traces))[0]).share is None
    unknown = edits.set_bed_c(study, None).study
    run = runs(compare(unknown, traces))[0]
    assert bed_of(run).share is None
    assert "bed.no_temperature" in {p.code for p in run.problems}
    noted = edits.note_temperatures(unknown, study.runs[0].id, 60.0, 20.0).study
    assert bed_of(runs(compare(noted, traces))[0]).method == "hold test"


def test_a_run_with_the_bed_off_tells_the_others() -> None:
    made = day(Bed(fast=True), "rro")
    study, traces = study_of(made, "rro", "bed off")
    results = runs(compare(study, traces))
    assert not results[2].included
    assert results[2].bed is None
    for number in (0, 1):
        found = bed_of(results[number])
        assert found.method == "run with the bed off"
        assert found.share is not None
        assert found.share_u95 is not None
        assert abs(found.share - made.share(number)) <= found.share_u95
        assert found.share == pytest.approx(made.share(number), abs=0.02)
    assert len(compare(study, traces).machines[0].included) == 2


def test_a_meter_on_the_bed_is_best() -> None:
    made = day(Bed(fast=True), "rro")
    study, traces = study_of(made, "rro", "own meter")
    study = edits.import_logs(
        study, [edits.NewLog((Source("bed", "bed.csv"),), "Alder", (), study.machines[0].id)]
    ).study
    log = study.logs[-1]
    study = edits.mark_log_of_bed(study, log.id).study
    found = bed_of(runs(compare(study, {**traces, log.id: made.trace("own meter", of_bed=True)}))[0])
    assert found.method == "own meter"
    assert found.share == pytest.approx(made.share(0), abs=0.003)
    assert [way.method for way in found.others] == ["run with the bed off"]
    # a log that does not cover the run, or whose clock tells nothing, is no help
    short = made.trace("own meter", of_bed=True)
    cut = Trace.of(short.time_s[:200], short.power_w[:200], key="cut", clock=short.clock)
    assert bed_of(runs(compare(study, {**traces, log.id: cut}))[0]).method == "run with the bed off"
    timeless = evolve(short, key="timeless", clock=Clock("relative"))
    assert bed_of(runs(compare(study, {**traces, log.id: timeless}))[0]).method == "run with the bed off"


def test_a_fault_in_a_hold_test_does_not_cost_the_machine(monkeypatch: pytest.MonkeyPatch) -> None:
    from core.results import bed_shares

    def failing(*_: object) -> None:
        raise RuntimeError("made to fail")

    made = day(Bed(), "rh")
    study, traces = study_of(made, "rh", "fault")
    study = edits.set_property(study, study.machines[0].id, BED_AREA, 5.5).study
    monkeypatch.setattr(bed_shares, "_holds", failing)
    run = runs(compare(study, traces))[0]
    assert run.included
    assert bed_of(run).method == "heater switching"
    (fault,) = (p for p in run.problems if p.code == "bed.fault")
    assert "made to fail" in sentence(fault)
    monkeypatch.undo()
    monkeypatch.setattr(bed_shares, "by_hold", failing)
    study = edits.set_bed_c(study, 61.0).study
    assert "bed.fault" in {p.code for p in runs(compare(study, traces))[0].problems}


def test_ways_that_agree_are_kept_beside_the_surest() -> None:
    made = day(Bed(), "rrh")
    study, traces = study_of(made, "rrh", "agree")
    run = runs(compare(study, traces))[0]
    found = bed_of(run)
    assert found.method == "heater switching"
    assert [way.method for way in found.others] == ["hold test"]
    assert "bed.ways_disagree" not in {p.code for p in run.problems}


def test_the_better_ranked_of_two_that_disagree_is_told() -> None:
    hold = BedShare(0.40, 0.05, 20.0, "hold test")
    own = BedShare(0.55, 0.01, 27.0, "heater switching")
    chosen, problem = choice([hold, own])
    assert chosen.method == "hold test"
    assert chosen.others == (own,)
    assert problem is not None
    assert problem.code == "bed.ways_disagree"
    near = evolve(own, share=0.42)
    assert choice([hold, near]) == (evolve(near, others=(hold,)), None)
    refused = BedShare(None, None, None, "heater switching", at_least=0.2)
    assert choice([refused]) == (refused, None)
    assert choice([hold, refused]) == (hold, None)


def test_only_what_matters_computes_anything_again() -> None:
    made = day(Bed(fast=True), "rh")
    study, traces = study_of(made, "rh", "memo")
    before = compare(study, traces).machines[0]
    renamed = edits.rename_study(study, "another name").study
    assert compare(renamed, traces).machines[0] is before
    # the temperature of the test matters to machines with a hold test only
    assert compare(edits.set_bed_c(study, 61.0).study, traces).machines[0] is not before
    bare = edits.set_kind(study, study.runs[1].id, "nothing").study
    alone = compare(bare, traces).machines[0]
    assert compare(edits.set_bed_c(bare, 61.0).study, traces).machines[0] is alone


def test_how_it_was_found_puts_the_holds_watts_together() -> None:
    made = day(Bed(fast=True), "rrh")
    study, traces = study_of(made, "rrh", "explained")
    comparison = compare(study, traces)
    run = runs(comparison)[0]
    found = explain(comparison, study, traces, comparison.machines[0].machine_id, BED_SHARE.key, run.run_id)
    assert found is not None
    (text,) = (line for line in found.formula if line.startswith("bed = "))
    watts, hours, warm_wh, bed_wh = (float(n) for n in re.findall(r"\d+(?:\.\d+)?", text))
    assert "W held" in text
    assert watts * hours + warm_wh == pytest.approx(bed_wh, rel=0.01)
    assert bed_wh == pytest.approx(bed_of(run).energy_wh, rel=0.01)
    # the bed's share of the machine says the same way
    whole = explain(comparison, study, traces, comparison.machines[0].machine_id, BED_SHARE.key)
    assert whole is not None
    assert any("hold test" in line for line in whole.method)


def test_the_answer_for_scripts_lists_the_other_ways() -> None:
    made = day(Bed(), "rrh")
    study, traces = study_of(made, "rrh", "agree")
    answer = json.loads(dumps(compared(compare(study, traces), study, ())))
    bed = answer["machines"][0]["runs"][0]["bed"]
    assert bed["method"] == "heater switching"
    (other,) = bed["other_ways"]
    assert other["method"] == "hold test"
    assert abs(other["share"] - bed["share"]) < other["share_u95"] + bed["share_u95"]
