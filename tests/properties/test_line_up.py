"""Laws of lining up, for runs of any length, sampling and kind of log."""

import numpy as np
import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st

from core.figures.line_up import line_up_figure
from core.line_up.answer import answer
from core.line_up.bands import leaves
from core.line_up.choices import ARRANGEMENTS, REPEATS, SHOWN, LineUp
from core.line_up.common_axis import judging_width_s, power
from core.line_up.spans import read_span
from core.line_up.strands import ANCHORS, Strand
from core.results.values import Comparison, StateSpan
from core.study import Meter, Study
from core.traces import Trace

COMPARISON = Comparison("part", "until cooled", (), (), (), (), "", "")
METER = Meter("m", "a meter")


@st.composite
def strands_of(draw: st.DrawFn) -> tuple[Strand, ...]:
    """A few runs of a few machines, of any odd shape."""
    made = []
    for place in range(draw(st.integers(1, 6))):
        rng = np.random.default_rng(draw(st.integers(0, 10_000)))
        rows = draw(st.integers(3, 60))
        time_s = np.concatenate(([0.0], np.cumsum(rng.uniform(0.5, draw(st.floats(1, 400)), rows - 1))))
        watts = np.round(rng.uniform(0, draw(st.sampled_from([0.0, 5.0, 2000.0])), rows), 1)
        trace = Trace.of(time_s, watts, draw(st.sampled_from(["sampled", "averaged", "on_change"])))
        edges = sorted(draw(st.tuples(st.floats(0, 0.45), st.floats(0.55, 1.0))))
        start_s, end_s = (float(e * trace.end_s) for e in edges)
        warm_s = start_s + draw(st.floats(0, 1)) * (end_s - start_s)
        made.append(
            Strand(
                f"r{place}",
                f"m{place % 2}",
                f"machine {place % 2}",
                f"run {place}",
                place % 2,
                trace,
                METER,
                start_s,
                end_s,
                warm_s,
                draw(st.floats(0, 50)),
                (StateSpan("warm-up", start_s, warm_s), StateSpan("processing", warm_s, end_s)),
                draw(st.booleans()),
            )
        )
    return tuple(made)


@settings(max_examples=150, deadline=None)
@given(
    runs=strands_of(),
    anchor=st.sampled_from(ANCHORS),
    arrangement=st.sampled_from(ARRANGEMENTS),
    shown=st.sampled_from(SHOWN),
    repeats=st.sampled_from(REPEATS),
    smooth_s=st.sampled_from([None, 0.0, 30.0, 3600.0]),
    zoom=st.none() | st.tuples(st.floats(-1, 0.4), st.floats(0.5, 2)),
)
def test_anything_can_be_lined_up(
    runs: tuple[Strand, ...],
    anchor: str,
    arrangement: str,
    shown: str,
    repeats: str,
    smooth_s: float | None,
    zoom: tuple[float, float] | None,
) -> None:
    choices = LineUp(anchor, arrangement, shown, repeats, smooth_s)  # type: ignore[arg-type]
    said = answer(runs, COMPARISON, choices)
    assert said.headline
    assert said.conditions
    whole = line_up_figure(runs, choices, said, Study("s"))
    if zoom is not None:
        low, high = whole.x.low / whole.factor, whole.x.high / whole.factor
        view = (low + zoom[0] * (high - low), low + zoom[1] * (high - low))
        whole = line_up_figure(runs, evolve(choices, view=view), said, Study("s"))
    assert whole.x.high > whole.x.low
    for panel in whole.panels:
        assert panel.y.high > panel.y.low
        for curve in (*panel.curves, *panel.hidden):
            assert curve.x.shape == curve.y.shape
        for row in panel.state_rows:
            assert all(low < high for _, low, high in row.spans)


@settings(max_examples=60, deadline=None)
@given(runs=strands_of(), cuts=st.tuples(st.floats(0, 0.3), st.floats(0.35, 0.6), st.floats(0.65, 1)))
def test_spans_that_touch_add_up(runs: tuple[Strand, ...], cuts: tuple[float, float, float]) -> None:
    low, middle, high = cuts
    first, second, both = (
        {r.run_id: r for r in read_span(runs, "share of duration", a, b) if r.run_id}
        for a, b in ((low, middle), (middle, high), (low, high))
    )
    for run in runs:
        parts = [each[run.run_id].energy_wh for each in (first, second, both)]
        assert all(p is not None for p in parts)
        one, other, whole = (p.value for p in parts if p is not None)
        # how energy lies within an averaged row or a gap is not known, so a cut there is a guess
        if run.trace.kind != "averaged" and not run.gaps:
            assert one + other == pytest.approx(whole, rel=1e-6, abs=1e-6)


@settings(max_examples=60, deadline=None)
@given(runs=strands_of(), gain=st.floats(0.2, 5), smooth_s=st.floats(0, 500))
def test_twice_the_watts_is_twice_the_curve(runs: tuple[Strand, ...], gain: float, smooth_s: float) -> None:
    run = runs[0]
    louder = evolve(
        run, trace=Trace.of(run.trace.time_s, run.trace.power_w * gain, run.trace.kind, key="louder")
    )
    step = run.seconds / 20
    plain, scaled = (power(each, "start", step, smooth_s).values for each in (run, louder))
    np.testing.assert_allclose(scaled, plain * gain, rtol=1e-6, atol=1e-4)


@settings(max_examples=40, deadline=None)
@given(runs=strands_of())
def test_the_order_of_runs_does_not_matter_to_who_leaves(runs: tuple[Strand, ...]) -> None:
    given_runs = [evolve(r, machine_id="m", machine="m") for r in runs]
    width_s = judging_width_s(given_runs)
    one = {(x.run_id, round(x.start, 6)) for x in leaves(given_runs, "start", width_s)}
    other = {(x.run_id, round(x.start, 6)) for x in leaves(given_runs[::-1], "start", width_s)}
    assert one == other
