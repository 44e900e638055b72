"""Laws of hold tests: any trace is answered, and what is known of it scales and shifts with it."""

import numpy as np
import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st

from core.beds.hold import holds
from core.study import Meter
from core.traces import Sampling, Trace
from tests.core.held_beds import BEFORE_S, Bed, simulated

METER = Meter("m", "a meter")


@st.composite
def traces(draw: st.DrawFn) -> Trace:
    """Any trace at all: levels, steps and gaps anywhere, with a bed temperature that may be missing."""
    rows = draw(st.integers(2, 400))
    rng = np.random.default_rng(draw(st.integers(0, 2**32)))
    steps = rng.choice([0.5, 1.0, 10.0, 400.0], rows, p=[0.3, 0.4, 0.29, 0.01])
    levels = np.array(draw(st.lists(st.floats(0, 2500), min_size=1, max_size=6)))
    power = np.round(np.repeat(rng.choice(levels, rows // 7 + 1), 7)[:rows] + rng.normal(0, 1, rows), 1)
    bed_c = np.where(
        rng.random(rows) < 0.2, np.nan, np.repeat(rng.uniform(15, 90, rows // 50 + 1), 50)[:rows]
    )
    kind: Sampling = draw(st.sampled_from(["sampled", "averaged", "on_change"]))
    known = {"bed": bed_c} if draw(st.booleans()) else {}
    return Trace.of(np.cumsum(steps), np.maximum(power, 0), kind, temperatures_c=known)


@settings(max_examples=150, deadline=None)
@given(traces(), st.floats(0, 0.5), st.floats(0.5, 1.0))
def test_any_stretch_is_answered(trace: Trace, start: float, end: float) -> None:
    for hold in holds(trace, start * trace.end_s, end * trace.end_s, METER):
        assert np.isfinite(hold.steady.mean_w)
        assert hold.steady.u_w >= 0
        assert hold.start_s <= hold.warm_end_s <= hold.end_s
        assert hold.bed_w is None or np.isfinite(hold.bed_w)


@settings(max_examples=15, deadline=None)
@given(st.integers(0, 10_000), st.floats(0.2, 5.0), st.floats(1.0, 5000.0))
def test_scaling_power_scales_watts_and_shifting_time_changes_nothing(
    seed: int, factor: float, shift_s: float
) -> None:
    (trace,), _, _ = simulated(Bed(), np.array([40.0]), 2400, seed=seed)
    start_s, end_s = BEFORE_S - 1.0, BEFORE_S + 2390.0
    (plain,) = holds(trace, start_s, end_s, METER)
    louder = Trace.of(
        trace.time_s,
        trace.power_w * factor,
        key=f"louder {seed} {factor}",
        resolution_w=trace.resolution_w * factor,
    )
    (scaled,) = holds(louder, start_s, end_s, METER)
    assert scaled.bed_w == pytest.approx((plain.bed_w or 0) * factor, rel=1e-6)
    assert scaled.warm_up_wh == pytest.approx((plain.warm_up_wh or 0) * factor, rel=1e-6)
    # an earlier beginning of the log moves all times alike
    later = np.concatenate(([0.0], trace.time_s + shift_s))
    moved = Trace.of(later, np.concatenate((trace.power_w[:1], trace.power_w)), key=f"moved {seed} {shift_s}")
    (found,) = holds(moved, start_s + shift_s, end_s + shift_s, METER)
    assert found.bed_w == pytest.approx(plain.bed_w, abs=2 * (plain.bed_u_w or 0))
    assert found.steady.mean_w == pytest.approx(plain.steady.mean_w, rel=1e-9)


def test_a_trace_is_never_changed() -> None:
    (trace,), _, _ = simulated(Bed(), np.array([40.0]), 1500, seed=1)
    before = evolve(trace, power_w=trace.power_w.copy())
    holds(trace, BEFORE_S - 1.0, BEFORE_S + 1490.0, METER)
    assert np.array_equal(before.power_w, trace.power_w)
