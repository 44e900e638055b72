"""What holds for the runs and states of any trace, however strange."""

from itertools import pairwise

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from core.activity import find, second_look
from core.states import bounds, states, states_of_log
from core.study import BOUNDARIES
from core.traces import Trace

LEVELS_W = st.sampled_from([0.0, 0.1, 5.0, 12.0, 40.0, 60.0, 350.0, 1200.0])
PLATEAU = st.tuples(st.integers(1, 120), LEVELS_W, st.sampled_from([0.0, 0.05, 1.0, 30.0]))


@st.composite
def traces(draw: st.DrawFn) -> Trace:
    """Plateaus of any level and noise, of any kind of log, with gaps."""
    rng = np.random.default_rng(draw(st.integers(0, 1000)))
    plateaus = draw(st.lists(PLATEAU, min_size=1, max_size=12))
    power_w = np.concatenate([w + noise * rng.normal(size=n) for n, w, noise in plateaus])
    power_w = np.round(np.maximum(power_w, 0), draw(st.sampled_from([0, 1])))
    interval_s = draw(st.sampled_from([1.0, 10.0, 60.0]))
    steps_s = interval_s * np.where(
        rng.random(power_w.size) < 0.02, 40.0, rng.uniform(0.9, 1.1, power_w.size)
    )
    kind = draw(st.sampled_from(["sampled", "averaged", "on_change"]))
    return Trace.of(np.cumsum(steps_s), power_w, kind)


@settings(max_examples=100, deadline=None)
@given(traces())
def test_stretches_lie_in_the_log_one_after_another(trace: Trace) -> None:
    stretches = find(trace).stretches
    for stretch in stretches:
        assert 0 <= stretch.start_s <= stretch.warm_up_end_s <= stretch.end_s <= trace.end_s
        assert stretch.paused_s >= 0
        assert (stretch.kind == "run") <= (stretch.part == "A")
    for a, b in pairwise(stretches):
        assert a.end_s <= b.start_s


@settings(max_examples=100, deadline=None)
@given(traces())
def test_states_cover_any_log_without_holes(trace: Trace) -> None:
    activity = find(trace)
    spans = states_of_log(trace, activity)
    if trace.end_s > 0:
        assert spans[0].start_s == 0
        assert spans[-1].end_s == trace.end_s
    assert all(a.end_s == b.start_s for a, b in pairwise(spans))
    assert all(s.end_s > s.start_s for s in spans)


@settings(max_examples=100, deadline=None)
@given(traces(), st.floats(0, 1), st.floats(0, 1))
def test_any_edges_a_user_sets_have_states_and_bounds(trace: Trace, one: float, other: float) -> None:
    activity = find(trace)
    start_s, end_s = sorted((one * trace.end_s, other * trace.end_s))
    for span in states(trace, activity, start_s, end_s):
        assert start_s <= span.start_s < span.end_s <= trace.end_s
    for boundary in BOUNDARIES:
        a_s, b_s = bounds(trace, activity, start_s, end_s, boundary)
        assert start_s <= a_s <= b_s <= trace.end_s


@settings(max_examples=100, deadline=None)
@given(st.lists(traces(), max_size=4))
def test_a_second_look_keeps_edges_and_is_settled_by_itself(found: list[Trace]) -> None:
    activities = [find(trace) for trace in found]
    looked_at = second_look(activities)
    for before, after in zip(activities, looked_at, strict=True):
        assert [(s.start_s, s.end_s) for s in before.stretches] == [
            (s.start_s, s.end_s) for s in after.stretches
        ]
