"""What is told about the fairness of a test, and what is not."""

from collections.abc import Sequence

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.results.compare import compare
from core.results.fairness_runs import grubbs
from core.results.values import Finding
from core.study import Study
from core.traces import Trace
from core.wording import sentence
from tests.core.benches import Making, alike, bench, trace, without


def codes(findings: Sequence[Finding]) -> set[str]:
    return {f.problem.code for f in findings}


def told(study: Study, traces: dict[str, Trace], code: str) -> Finding:
    found = [f for f in compare(study, traces).fairness if f.problem.code == code]
    assert len(found) == 1
    return found[0]


def of_one(makings: list[Making], **more: object) -> tuple[Study, dict[str, Trace]]:
    return bench({"Alder": trace(makings, **more)})  # type: ignore[arg-type]  # passed on


def test_a_plain_test_has_nothing_against_it_but_the_unknown_meter() -> None:
    study, traces = bench({"Alder": trace(alike()), "Rowan": trace(alike(level_w=90.0), seed=1)})
    assert codes(compare(study, traces).fairness) == {"fair.accuracy"}
    stated = edits.set_meter(study, study.meters[0].id, gain_percent=0.5, offset_w=0.1).study
    assert compare(stated, traces).fairness == ()


def test_warm_start() -> None:
    makings = alike()
    makings[2] = evolve(makings[2], warm_up=25)
    finding = told(*of_one(makings), "fair.warm_start")
    assert sentence(finding.problem).startswith("Alder, run 3: the warm-up took ")
    # 65 samples of 2 s at about 180 W less than the others, a quarter of it in the mean
    assert finding.matters_wh == pytest.approx(65 * 2 * 260 / 3600 / 4, rel=0.5)


def test_soak() -> None:
    makings = alike()
    makings[1] = evolve(makings[1], warm_up=180)
    assert sentence(told(*of_one(makings), "fair.soak").problem).startswith("Alder, run 2:")


def test_two_runs_that_started_unlike() -> None:
    makings = [Making(warm_up=90), Making(warm_up=30)]
    study, traces = of_one(makings)
    assert "fair.warm_start" not in codes(compare(study, traces).fairness)
    assert "its other run" in sentence(told(study, traces, "fair.unlike_starts").problem)


def test_pause() -> None:
    makings = alike()
    makings[3] = evolve(makings[3], pause=120)
    finding = told(*of_one(makings), "fair.long")
    assert "run 4: processing took 10 % longer" in sentence(finding.problem)


def test_one_and_two_runs() -> None:
    assert "fair.one_run" in codes(compare(*of_one(alike(1))).fairness)
    assert "fair.few_runs" in codes(compare(*of_one(alike(2))).fairness)
    assert not {"fair.one_run", "fair.few_runs"} & codes(compare(*of_one(alike(3))).fairness)


def test_no_run_at_all() -> None:
    study, traces = bench({"Alder": trace(alike()), "Rowan": trace([])})
    assert told(study, traces, "fair.no_run").machine_ids == (study.machines[1].id,)


def test_outlier_by_the_named_rule() -> None:
    study = edits.add_machine(edits.new_study("s").study, "Alder").study
    for energy_wh in (50.0, 50.4, 50.2, 49.8, 58.0):
        study = edits.add_typed(study, study.machines[0].id, energy_wh, seconds=1800, step_wh=0.1).study
    finding = told(study, {}, "fair.outlier")
    # mean 51.68, standard deviation 3.5401: 6.32 / 3.5401 = 1.785; limit for five values 1.715
    assert "Grubbs' test: 1.79, limit 1.72" in sentence(finding.problem)
    assert finding.matters_wh == pytest.approx(58.0 / 5 + 200.4 / 5 - 200.4 / 4)


def test_grubbs_against_the_worked_example() -> None:
    """NIST/SEMATECH e-Handbook, 1.3.5.17.1 (from memory): G = 2.4687, two-sided limit 2.1266."""
    values = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]
    found = grubbs(values)
    assert found is not None
    assert found.index == 7
    assert found.statistic == pytest.approx(2.4687, abs=2e-4)
    assert found.limit == pytest.approx(2.1266, abs=2e-4)
    assert grubbs(values[:7]) is None
    assert grubbs([1.0, 1.0, 9.0]) is None
    assert grubbs([1.0] * 6) is None


def test_a_close_spread_makes_no_outlier_of_what_the_meter_cannot_tell() -> None:
    study = edits.add_machine(edits.new_study("s").study, "Alder").study
    for energy_wh in (50.0, 50.01, 50.02, 49.99, 50.3):
        study = edits.add_typed(study, study.machines[0].id, energy_wh, seconds=1800, step_wh=0.1).study
    assert "fair.outlier" not in codes(compare(study, {}).fairness)


def test_gaps() -> None:
    study, traces = of_one(alike())
    holed = without(next(iter(traces.values())), 1700.0, 1760.0)
    assert "run 1: 2." in sentence(told(study, dict.fromkeys(traces, holed), "fair.gaps").problem)


def test_edges_by_hand_and_runs_left_out() -> None:
    study, traces = of_one(alike())
    run = study.runs[0]
    moved = edits.move_edges(study, run.id, run.start_s + 4, run.end_s).study
    assert "the edges of 1 run were set by hand" in sentence(told(moved, traces, "fair.hand").problem)
    left_out = edits.leave_out(study, run.id, "").study
    assert sentence(told(left_out, traces, "fair.left_out").problem).startswith(
        "Alder: 1 run left out by hand"
    )


def test_two_meters() -> None:
    traces = {"Alder": trace(alike()), "Rowan": trace(alike(level_w=90.0), seed=1)}
    finding = told(*bench(traces, meters=True), "fair.meters")
    assert len(finding.machine_ids) == 2
    assert "fair.meters" not in codes(compare(*bench(traces)).fairness)


def test_only_meters_of_counted_runs_are_counted() -> None:
    study, by_log = bench(
        {"Alder": trace(alike()), "Rowan": trace(alike(level_w=90.0), seed=1), "rest": trace([])}, meters=True
    )
    rest = study.logs[-1]
    study = edits.move_log(study, rest.id, study.machines[0].id).study
    assert study.runs_of(rest.id) == ()
    text = sentence(told(study, by_log, "fair.meters").problem)
    assert text.startswith("The machines count as measured with 2 meters")
    assert "Meter of rest" not in sentence(told(study, by_log, "fair.accuracy").problem)


def test_meters_held_against_each_other() -> None:
    traces = {"Alder": trace(alike()), "Rowan": trace(alike(level_w=90.0), seed=1)}
    study, by_log = bench(traces, meters=True)
    one, other = (log.meter_id for log in study.logs)

    def checked(reading: float) -> tuple[Study, dict[str, Trace]]:
        return edits.add_load_check(study, one, other, reading, 1000.0, seconds=36_000.0).study, by_log

    close = compare(*checked(1004.0)).fairness
    assert "fair.meters_checked" in codes(close)
    assert codes(close).isdisjoint({"fair.meters", "fair.meter_beyond"})
    # 6 % apart: each is 3 % off, and their accuracy allows 1 %
    far = [f for f in compare(*checked(1060.0)).fairness if f.problem.code == "fair.meter_beyond"]
    assert len(far) == 2
    assert {f.level for f in far} == {"caution"}
    said = {sentence(f.problem) for f in far}
    assert any("too much" in text for text in said)
    assert any("too little" in text for text in said)
    # a third meter that no check knows
    third = edits.add_meter(checked(1004.0)[0], "Third").study
    third = edits.assign_meter(third, study.logs[0].id, third.meters[-1].id).study
    assert "fair.meters" in codes(compare(third, by_log).fairness)


def test_unlike_sampling() -> None:
    traces = {"Alder": trace(alike()), "Rowan": trace(alike(level_w=90.0), seed=1, step_s=10.0)}
    text = sentence(told(*bench(traces), "fair.sampling").problem)
    assert "Alder sampled every 2 s; Rowan sampled every 10 s" in text


def test_bed_temperatures_from_the_logs() -> None:
    traces = {}
    for i, (name, bed_c) in enumerate({"Alder": 60.0, "Rowan": 50.0}.items()):
        whole = trace(alike(), seed=i)
        column = np.full(whole.time_s.size, bed_c)
        traces[name] = trace(alike(), seed=i, temperatures_c={"bed": column})
    study, by_log = bench(traces)
    finding = told(study, by_log, "fair.bed_temperature")
    assert "at 50 °C on Rowan and at 60 °C on Alder" in sentence(finding.problem)
    # a plate's loss goes about as (T - room)^1.23: at 60 instead of 50 degC in 22 degC it is 1.456 times that
    rowan = next(m for m in compare(study, by_log).machines if m.name == "Rowan")
    assert rowan.energy_wh is not None
    assert rowan.bed_share is not None
    bed_wh = rowan.bed_share.value * rowan.energy_wh.value
    assert finding.matters_wh == pytest.approx(((38 / 28) ** 1.23 - 1) * bed_wh, rel=0.05)


def test_temperatures_that_were_noted_win_over_logged_ones() -> None:
    traces = {
        name: trace(
            alike(3), seed=i, temperatures_c={"bed": np.full(trace(alike(3), seed=i).time_s.size, 60.0)}
        )
        for i, name in enumerate(("Alder", "Rowan"))
    }
    study, by_log = bench(traces)
    assert not {"fair.bed_temperature", "fair.room_temperature"} & codes(compare(study, by_log).fairness)
    rowan = study.logs[1].id
    noted = tuple(evolve(r, bed_c=50.0, room_c=27.0) if r.log_id == rowan else r for r in study.runs)
    both = evolve(study, runs=tuple(evolve(r, room_c=r.room_c or 20.0) for r in noted))
    assert "at 50 °C on Rowan and at 60 °C on Alder" in sentence(
        told(both, by_log, "fair.bed_temperature").problem
    )
    assert "20 °C with Alder" in sentence(told(both, by_log, "fair.room_temperature").problem)


def test_weightiest_first() -> None:
    makings = alike()
    makings[2] = evolve(makings[2], warm_up=20)
    findings = compare(*of_one(makings)).fairness
    levels = [{"unfair": 0, "caution": 1, "note": 2}[f.level] for f in findings]
    assert levels == sorted(levels)


def test_a_machine_that_two_meters_measured_tells_them_apart() -> None:
    for factor, is_told in ((1.05, True), (1.0, False)):
        study, traces = bench(
            {"Alder": trace(alike(5)), "Again": _scaled(trace(alike(5, seed=1), seed=1), factor)}
        )
        one = study.machines[0]
        study = edits.add_meter(study, "Second meter").study
        study = edits.assign_meter(study, study.logs[1].id, study.meters[-1].id).study
        study = edits.move_log(study, study.logs[1].id, one.id).study
        found = [f for f in compare(study, traces).fairness if f.problem.code == "fair.meters_differ"]
        assert bool(found) is is_told
        if found:
            said = sentence(found[0].problem)
            assert said.startswith("Alder took ")
            assert " more by Second meter than by " in said
            assert " allows 2.0 %" in said
            assert found[0].level in ("caution", "unfair")


def _scaled(whole: Trace, factor: float) -> Trace:
    return Trace.of(
        whole.time_s, np.round(whole.power_w * factor, 1), whole.kind, None, key=f"{whole.key} times {factor}"
    )


def test_durations_that_spread_with_none_of_them_odd() -> None:
    makings = [Making(processing=rows) for rows in (1170, 1190, 1210, 1232)]
    finding = told(*of_one(makings), "fair.durations")
    assert finding.level == "note"
    assert "its runs took from " in sentence(finding.problem)
    assert "fair.durations" not in codes(compare(*of_one(alike())).fairness)
