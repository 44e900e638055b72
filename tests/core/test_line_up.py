"""Runs lined up: energy is kept by bins and by smoothing, spans are read, and words follow the numbers."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.energy.integral import by_power_wh, pieces
from core.line_up import answer, common_axis, spans
from core.line_up.course import Course
from core.line_up.headline import headline
from core.line_up.phases import phases
from core.line_up.strands import ANCHORS, Anchor, Strand, by_machine, first_strands, strands
from core.results.values import Comparison, Pair
from core.traces import Sampling, Trace
from tests.comparisons import make
from tests.core.lined_up import STANDBY_S, repeats, strand

KINDS: tuple[Sampling, ...] = ("sampled", "averaged", "on_change")


def energy_wh(strand: Strand, bins: common_axis.Bins, anchor: Anchor) -> float:
    """Energy of bins, the first and last of which the run may fill only in part."""
    edges = strand.moment_s((bins.first + np.arange(bins.values.size + 1)) * bins.step, anchor)
    seconds = np.diff(np.clip(edges, strand.start_s, strand.end_s))
    return float(np.nansum(bins.values * seconds)) / 3600


# the course of a run


@given(
    watts=st.lists(st.floats(0, 500), min_size=3, max_size=40),
    kind=st.sampled_from(KINDS),
    smooth_s=st.floats(0, 400),
    seed=st.integers(0, 1000),
)
def test_smoothing_keeps_the_energy(watts: list[float], kind: Sampling, smooth_s: float, seed: int) -> None:
    steps = np.random.default_rng(seed).uniform(0.5, 20, len(watts) - 1)
    trace = Trace.of(np.concatenate(([0.0], np.cumsum(steps))), watts, kind)
    course = Course.of(pieces(trace, 0, trace.end_s))
    edges = np.linspace(0, trace.end_s, 17)
    plain_wh = float(np.dot(course.mean_w(edges), np.diff(edges))) / 3600
    smooth_wh = float(np.dot(course.mean_w(edges, smooth_s), np.diff(edges))) / 3600
    assert plain_wh == pytest.approx(by_power_wh(trace, 0, trace.end_s), abs=1e-9)
    assert smooth_wh == pytest.approx(plain_wh, abs=1e-7)


@pytest.mark.parametrize("kind", KINDS)
def test_a_course_knows_the_energy_at_any_moment(kind: Sampling) -> None:
    trace = Trace.of([0, 10, 25, 30, 60], [10.0, 50.0, 20.0, 80.0, 80.0], kind)
    course = Course.of(pieces(trace, 5, 55))
    for at_s in (0.0, 3.0, 12.5, 20.0, 49.0, 50.0):
        expected_wh = by_power_wh(trace, 5, 5 + at_s) if at_s else 0.0
        assert course.used_wh(np.array([at_s]))[0] == pytest.approx(expected_wh, abs=1e-12)


def test_a_moving_mean_is_the_mean_of_what_lies_around() -> None:
    trace = Trace.of(np.arange(101.0), np.where(np.arange(101) < 50, 0.0, 100.0), "on_change")
    course = Course.of(pieces(trace, 0, 100))
    at_the_step, before, after = course.mean_w(np.array([49.999, 50.001, 50.002, 50.003]), 20.0)
    assert at_the_step == pytest.approx(50.0, abs=0.02)
    far = course.mean_w(np.array([30.0, 35.0, 65.0, 70.0]), 20.0)
    assert far[0] == pytest.approx(0.0, abs=1e-6)
    assert far[2] == pytest.approx(100.0, abs=1e-6)
    assert before <= after


def test_a_run_is_not_smoothed_over_more_than_itself() -> None:
    trace = Trace.of([0, 50, 100], [0.0, 100.0, 0.0])
    course = Course.of(pieces(trace, 0, 100))
    assert course.mean_w(np.array([0.0, 50.0, 100.0]), 1e6).sum() == pytest.approx(100.0)


def test_a_course_needs_a_length() -> None:
    with pytest.raises(ValueError, match="length"):
        Course.of(pieces(Trace.of([0, 1], [1.0, 1.0]), 1, 1))


# the common axis


@pytest.mark.parametrize("anchor", ANCHORS)
@pytest.mark.parametrize("smooth_s", [0.0, 60.0])
def test_bins_of_every_axis_keep_the_energy(anchor: Anchor, smooth_s: float) -> None:
    for run in repeats(7, runs=2):
        step = 0.01 if anchor == "share of duration" else 7.0
        bins = common_axis.power(run, anchor, step, smooth_s)
        # at most the two bins that the run fills to less than half are without a value
        missing = np.isnan(bins.values).sum()
        assert missing <= 2
        assert energy_wh(run, bins, anchor) == pytest.approx(run.course.energy_wh, rel=0.006 * (1 + missing))
        whole = common_axis.power(run, anchor, run.seconds / 64 if step == 7.0 else 1 / 64, smooth_s)
        if anchor in ("start", "share of duration"):
            assert energy_wh(run, whole, anchor) == pytest.approx(run.course.energy_wh, rel=1e-9)


@pytest.mark.parametrize(
    ("anchor", "low", "high"),
    [("start", 0, 600), ("end of warm-up", -100, 500), ("end", -600, 0), ("share of duration", 0, 1)],
)
def test_a_run_lies_where_it_is_lined_up(anchor: Anchor, low: float, high: float) -> None:
    run = strand(np.full(840, 50.0), 100.0)
    assert run.reach(anchor) == (low, high)
    assert run.moment_s(np.array([low, high]), anchor) == pytest.approx([STANDBY_S, 720.0])


def test_running_energy_ends_at_the_energy_that_counts() -> None:
    from attrs import evolve

    run = evolve(repeats(3, runs=1)[0], energy_wh=30.0)  # as a counter might say
    bins = common_axis.running_energy(run, "start", 1.0)
    known = bins.values[np.isfinite(bins.values)]
    assert known[-1] == pytest.approx(30.0, rel=2e-3)
    assert (np.diff(known) >= 0).all()


def test_a_difference_is_known_only_where_both_runs_are() -> None:
    long, short = strand(np.full(840, 50.0), 10.0), strand(np.full(640, 30.0), 10.0)
    apart = common_axis.difference(
        common_axis.power(long, "start", 10.0, 0.0), common_axis.power(short, "start", 10.0, 0.0)
    )
    known = np.isfinite(apart.values)
    assert apart.values[known] == pytest.approx(20.0)
    assert apart.places[known][-1] == pytest.approx(395.0)


def test_the_usual_width_grows_with_runs_and_with_slow_logs() -> None:
    short, long = repeats(1, runs=1, after_s=500), repeats(1, runs=1, after_s=9000)
    assert common_axis.usual_width_s(short) < common_axis.usual_width_s(long)
    assert common_axis.usual_width_s([]) in common_axis.WIDTHS_S


# which runs


def test_runs_come_in_the_comparison_s_order_and_typed_readings_stay_away() -> None:
    study, comparison = make(3, 2, left_out=False)
    traces = {g.id: Trace.of(np.arange(0, 20_000.0, 5), np.full(4000, 60.0)) for g in study.logs}
    lined_up = strands(study, comparison, traces)
    assert [s.run_id for s in lined_up] == [r.run_id for m in comparison.machines for r in m.runs]
    assert strands(study, comparison, traces, chosen={"r1-0"})[0].machine == comparison.machines[1].name
    assert strands(study, comparison, {}) == ()
    assert list(by_machine(lined_up)) == [m.machine_id for m in comparison.machines]
    for most in (0, 4, 6, 9):
        first, more = first_strands(study, comparison, traces, most)
        assert (first, more) == (lined_up[:most], max(0, len(lined_up) - most))


@pytest.mark.parametrize(
    ("boundary", "low", "high"),
    [("warm-up and processing", 100, 500), ("processing only", 160, 500), ("until cooled", 100, 800)],
)
def test_what_counts_of_a_run_follows_the_boundary(boundary: str, low: float, high: float) -> None:
    from attrs import evolve

    from core.results.values import StateSpan

    study, comparison = make(1, 1, left_out=False)
    machine = comparison.machines[0]
    spans_of_run = (
        StateSpan("warm-up", 100, 160),
        StateSpan("processing", 160, 500),
        StateSpan("cooling", 500, 800),
    )
    run = evolve(machine.runs[0], start_s=100.0, end_s=500.0, states=spans_of_run)
    made = evolve(comparison, machines=(evolve(machine, runs=(run,)),), boundary=boundary)
    traces = {g.id: Trace.of(np.arange(1000.0), np.full(1000, 60.0)) for g in study.logs}
    found = strands(study, made, traces)[0]
    assert (found.start_s, found.end_s, found.warm_s) == (low, high, 160)


# spans


def test_a_span_is_read_for_each_run_and_each_machine() -> None:
    runs = [
        *repeats(2, runs=3),
        *repeats(4, runs=1, machine="Rowan", slot=1, after_s=600),
    ]
    read = spans.read_span(runs, "end of warm-up", 1000.0, 200.0)
    assert [(r.machine, r.name, r.runs) for r in read] == [
        ("Alder", "", 3),
        ("Alder", "run 1", 1),
        ("Alder", "run 2", 1),
        ("Alder", "run 3", 1),
        ("Rowan", "run 1", 1),
    ]
    mean, *alder, rowan = read
    for run, row in zip(runs, (*alder, rowan), strict=True):
        assert row.energy_wh is not None
        assert row.power_w is not None
        until_s = min(run.warm_s + 1000, run.end_s)
        assert row.seconds == pytest.approx(until_s - run.warm_s - 200)
        true_wh = by_power_wh(run.trace, run.warm_s + 200, until_s)
        assert row.energy_wh.value == pytest.approx(true_wh, abs=3 * row.energy_wh.u95)  # type: ignore[operator]
        assert row.power_w.value == pytest.approx(row.energy_wh.value * 3600 / row.seconds)
        assert row.share == pytest.approx(row.energy_wh.value / run.energy_wh)
    assert mean.energy_wh is not None
    assert mean.energy_wh.value == pytest.approx(np.mean([r.energy_wh.value for r in alder if r.energy_wh]))


def test_a_run_that_does_not_reach_into_a_span_has_no_values_there() -> None:
    (run,) = repeats(2, runs=1)
    (row,) = spans.read_span([run], "start", 5000, 6000)
    assert (row.seconds, row.power_w, row.energy_wh, row.share) == (0.0, None, None, None)


def test_the_whole_run_has_the_whole_share() -> None:
    (run,) = repeats(2, runs=1)
    (row,) = spans.read_span([run], "share of duration", 0.0, 1.0)
    assert row.share == pytest.approx(1.0, abs=2e-3)


# words


def lined(*, shown: bool | None) -> tuple[list[Strand], Comparison]:
    runs = [
        *repeats(2, runs=3, after_s=1500, base_w=40),
        *repeats(4, runs=3, machine="Rowan", slot=1, after_s=3600, base_w=15),
    ]
    pair = Pair("Alder", "Rowan", 0.7, 0.65, 0.75, 0.01, shown)
    return runs, Comparison("part", "warm-up and processing", (), (pair,), (), (), "", "")


def test_the_sentence_says_why_the_machine_that_draws_more_needs_less() -> None:
    said = headline(*lined(shown=True))
    assert said.startswith("Alder and Rowan are done with warm-up after 1 min 30 s; Rowan then draws less (")
    assert "but for longer (60 against 25 min)" in said
    runs, _ = lined(shown=True)
    apart_wh = np.mean([s.energy_wh for s in runs[3:]]) - np.mean([s.energy_wh for s in runs[:3]])
    assert f"needs {apart_wh:.1f} Wh more." in said


def test_no_difference_is_claimed_that_is_not_shown() -> None:
    assert "no difference in what they need is shown" in headline(*lined(shown=False))
    assert "which too few runs show" in headline(*lined(shown=None))


def test_one_machine_is_told_with_its_watts_and_interval() -> None:
    runs, comparison = lined(shown=True)
    assert "±" in headline(runs[:3], comparison)
    assert "(3 runs)" in headline(runs[:3], comparison)
    assert "(one run only)" in headline(runs[:1], comparison)
    assert headline([], comparison) == "No runs are shown."


def test_a_run_without_warm_up_says_so() -> None:
    from attrs import evolve

    runs, comparison = lined(shown=True)
    cold = [evolve(s, warm_s=s.start_s) for s in runs]
    assert "no warm-up counts or is seen" in headline(cold[:3], comparison)
    assert headline(cold, comparison).startswith("Once warm, Rowan draws less")


def test_phases_add_up_to_the_run() -> None:
    runs, _ = lined(shown=True)
    found = phases(runs[:3])
    assert found is not None
    assert found.energy_wh == pytest.approx(np.mean([s.energy_wh for s in runs[:3]]))
    assert found.after_w.value == pytest.approx(found.after_wh * 3600 / found.after_s, rel=0.01)


def test_conditions_say_how_the_runs_were_lined_up_and_smoothed() -> None:
    runs, comparison = lined(shown=True)
    said = answer.conditions(runs[:4], comparison, "end of warm-up", 60.0, without_trace=2)
    assert said == (
        "Warm-up and processing; 4 runs of 2 machines, lined up at the end of warm-up; "
        "moving mean over 1 min, energy kept. Rowan: too few runs here to say which one is odd. "
        "2 typed readings without a trace cannot be lined up."
    )
    assert "power as logged" in answer.conditions(runs, comparison, "share of duration", 0.0)


@pytest.mark.parametrize(
    ("anchor", "low", "high", "said"),
    [
        ("start", 0, 150, "from 0 s to 2 min 30 s"),
        ("end of warm-up", -60, -30, "from 1 min before to 30 s before the end of warm-up"),
        ("end of warm-up", 60, 120, "from 1 min to 2 min after warm-up"),
        ("end", -120, 0, "from 2 min to 0 s before the end"),
        ("share of duration", 0.1, 0.25, "from 10 to 25 % of its duration"),
    ],
)
def test_a_span_in_words(anchor: Anchor, low: float, high: float, said: str) -> None:
    assert answer.span_told(low, high, anchor) == said
