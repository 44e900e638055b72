"""Drift, rests and dates: what the order and the times of the runs could have done."""

import numpy as np
import pytest
from attrs import evolve

from core import edits
from core.results.compare import compare
from core.results.fairness_order import line_through
from core.results.values import Finding
from core.study import Study
from core.traces import Clock, Trace
from core.wording import sentence
from tests.core.benches import Making, alike, bench, trace, without

DAY_S = 86_400.0


def told(study: Study, traces: dict[str, Trace], code: str) -> list[Finding]:
    return [f for f in compare(study, traces).fairness if f.problem.code == code]


def test_a_line_through_one_group_against_scipy() -> None:
    from scipy.stats import linregress

    values = [50.0, 50.4, 51.1, 51.2, 52.3]
    known, ours = linregress(range(5), values), line_through([values])
    assert ours is not None
    assert ours.slope == pytest.approx(known.slope)
    assert ours.p == pytest.approx(known.pvalue)


def test_a_common_slope_against_least_squares_with_a_level_for_each_group() -> None:
    """The same slope and p by ordinary least squares with dummies (statsmodels)."""
    import statsmodels.api as sm

    groups = [[1.0, 1.02, 1.05, 1.05], [0.99, 1.03, 1.02], [0.97, 1.0, 1.02, 1.01, 1.05]]
    y = np.concatenate([np.array(g) for g in groups])
    x = np.concatenate([np.arange(len(g)) for g in groups])
    level = np.repeat(np.eye(3), [len(g) for g in groups], axis=0)
    known = sm.OLS(y, np.column_stack([x, level])).fit()
    ours = line_through(groups)
    assert ours is not None
    assert ours.slope == pytest.approx(known.params[0])
    assert ours.p == pytest.approx(known.pvalues[0])


def test_too_few_values_make_no_line() -> None:
    assert line_through([[1.0, 2.0]]) is None
    assert line_through([[1.0], [2.0]]) is None
    assert line_through([]) is None


def rising(by_w: float, seed: int = 0) -> list[Making]:
    return [evolve(m, level_w=60.0 + by_w * i) for i, m in enumerate(alike(6, seed=seed))]


def test_a_machine_that_takes_more_from_run_to_run() -> None:
    study, traces = bench({"Alder": trace(rising(3.0)), "Birch": trace(alike(6, seed=3), seed=1)})
    (finding,) = told(study, traces, "fair.drift")
    assert sentence(finding.problem).startswith("Alder: its runs took more and more in the order of making, ")
    # 3 W more in each of six parts of 2400 s: half the rise of 15 W over 40 min
    assert finding.matters_wh == pytest.approx(15 / 2 * 2400 / 3600, rel=0.15)
    assert len(finding.run_ids) == 6


def test_a_drift_that_all_machines_share_is_told_once() -> None:
    machines = {n: trace(rising(1.2, seed=i), seed=i) for i, n in enumerate(("Alder", "Birch", "Rowan"))}
    study, traces = bench(machines)
    codes = {f.problem.code for f in compare(study, traces).fairness}
    assert len(codes & {"fair.drift", "fair.common_drift"}) == 1


def test_runs_that_scatter_make_no_drift() -> None:
    study, traces = bench({n: trace(alike(6, seed=i), seed=i) for i, n in enumerate(("Alder", "Birch"))})
    assert not told(study, traces, "fair.drift")
    assert not told(study, traces, "fair.common_drift")


def test_rests_of_unlike_length() -> None:
    makings = alike(4)
    quick = trace(makings, seed=1)
    # the rests of 800 s are cut to 200 s
    ends = [s.end_s for s in _runs_of(quick)]
    for end_s in reversed(ends[:-1]):
        quick = _shortened(quick, end_s + 100.0, end_s + 700.0)
    study, traces = bench({"Alder": trace(makings), "Birch": quick})
    (finding,) = told(study, traces, "fair.rests")
    assert "Birch rested 3 min 20 s and Alder 13 min 20 s" in _rounded(sentence(finding.problem))
    assert finding.level in ("note", "caution")
    assert finding.matters_wh is not None
    # by hand: warm-ups of 13 Wh, exp(-200/1200) - exp(-800/1200) = 0.33 of them, in 3 of 4 runs;
    # where a warm-up ends is found to some samples only
    assert finding.matters_wh == pytest.approx(13 * 0.333 * 0.75, rel=0.15)


def _runs_of(whole: Trace) -> list[edits.FoundRun]:
    from core.activity import find

    return [edits.FoundRun(s.start_s, s.end_s) for s in find(whole).stretches]


def _shortened(whole: Trace, start_s: float, end_s: float) -> Trace:
    """The trace with a stretch taken out and the rest moved up."""
    cut = without(whole, start_s, end_s)
    time_s = np.where(cut.time_s >= end_s, cut.time_s - (end_s - start_s) + 2.0, cut.time_s)
    return Trace.of(time_s, cut.power_w, cut.kind, None, key=f"{cut.key} shortened")


def _rounded(text: str) -> str:
    """Durations to the next 20 s, because the edges are found to a sample or two."""
    import re

    def to_20(match: re.Match[str]) -> str:
        return f"{match[1]} min {round(int(match[2]) / 20) * 20} s"

    return re.sub(r"(\d+) min (\d+) s", to_20, text)


def test_tests_weeks_apart_with_nothing_known_of_the_room() -> None:
    machines = {
        name: trace(alike(seed=i), seed=i, clock=Clock("local", 1_790_000_000.0 + 50 * DAY_S * i))
        for i, name in enumerate(("Alder", "Rowan"))
    }
    study, traces = bench(machines)
    (finding,) = told(study, traces, "fair.far_apart")
    assert "50 days apart" in sentence(finding.problem)
    assert not told(edits.set_room_c(study, 21.0).study, traces, "fair.far_apart")
