"""Laws of energy: it adds up, knows no clock, scales with gain, and doubts gaps."""

import math
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from core.beds.share import share
from core.energy.integral import between_rows_wh
from core.energy.total import between, by_power_wh
from core.results.values import Energy
from core.study import Meter
from core.traces import Sampling, Trace
from core.uncertainty import mean_of, ratio, u95_of

METER = Meter("m", "bench meter")
KINDS: tuple[Sampling, ...] = ("sampled", "averaged", "on_change")


@st.composite
def traces(draw: st.DrawFn, with_counter: bool = False) -> Trace:
    """A heated part with a switching load, of any kind, step and size."""
    rng = np.random.default_rng(draw(st.integers(0, 2**32 - 1)))
    kind = draw(st.sampled_from(KINDS))
    step_s = draw(st.sampled_from((1.0, 2.0, 5.0)))
    rest_w = draw(st.floats(20, 120))
    heater_w = draw(st.floats(80, 900))
    time = np.cumsum(step_s * rng.uniform(0.9, 1.1, draw(st.integers(500, 900))))
    time -= time[0]
    heats = (time > time[-1] * 0.2) & (time < time[-1] * 0.9)
    on = (time % 41 < 13) & heats
    power = np.where(heats, rest_w, 5.0) + heater_w * on + rng.normal(0, 0.5, time.size)
    power = np.round(np.maximum(power, 0), 1)
    counter = None
    if with_counter:
        exact = np.concatenate(([0.0], np.cumsum(np.diff(time) * (power[1:] + power[:-1]) / 2))) / 3600
        counter = np.floor(exact / 0.1 + 1e-9) * 0.1
    return Trace.of(
        time, power, kind, counter, resolution_w=0.1, counter_step_wh=0.1 if with_counter else None
    )


def own_variance(energy: Energy) -> float:
    return sum(i.u_wh**2 for i in energy.influences if i.shared is None)


@given(trace=traces(), cuts=st.tuples(st.floats(0, 1), st.floats(0, 1), st.floats(0, 1)))
def test_energies_of_touching_intervals_add_up(trace: Trace, cuts: tuple[float, float, float]) -> None:
    a, b, c = sorted(cut * trace.end_s for cut in cuts)
    parts = by_power_wh(trace, a, b) + by_power_wh(trace, b, c)
    assert parts == pytest.approx(by_power_wh(trace, a, c), abs=1e-9)


@given(trace=traces(), cuts=st.tuples(st.floats(0, 1), st.floats(0, 1)))
def test_from_row_to_row_it_is_the_same(trace: Trace, cuts: tuple[float, float]) -> None:
    first, last = sorted(int(cut * (trace.time_s.size - 1)) for cut in cuts)
    cut = by_power_wh(trace, float(trace.time_s[first]), float(trace.time_s[last]))
    assert between_rows_wh(trace, first, last) == pytest.approx(cut, abs=1e-9)


@given(trace=traces(), at=st.lists(st.floats(0.01, 0.99), min_size=1, max_size=20, unique=True))
def test_rows_between_rows_that_tell_nothing_new_change_nothing(trace: Trace, at: list[float]) -> None:
    more_s = np.setdiff1d(np.array(at) * trace.end_s, trace.time_s)
    after = np.searchsorted(trace.time_s, more_s)
    # what stands between two rows by the kind of the log: a straight line, the mean of it all, or the last
    more_w = {
        "sampled": np.interp(more_s, trace.time_s, trace.power_w),
        "averaged": trace.power_w[after],
        "on_change": trace.power_w[after - 1],
    }[trace.kind]
    order = np.argsort(np.concatenate((trace.time_s, more_s)))
    time = np.concatenate((trace.time_s, more_s))[order]
    finer = Trace.of(time, np.concatenate((trace.power_w, more_w))[order], trace.kind, resolution_w=0.1)
    start_s, end_s = trace.end_s * 0.2, trace.end_s * 0.9
    whole_wh = by_power_wh(trace, start_s, end_s)
    assert by_power_wh(finer, start_s, end_s) == pytest.approx(whole_wh, abs=1e-9)


@given(trace=traces(), cut=st.floats(0.25, 0.85))
def test_a_run_measured_in_two_pieces_has_the_same_energy(trace: Trace, cut: float) -> None:
    edges_s = [trace.end_s * part for part in (0.2, cut, 0.9)]
    first, second = (between(trace, a, b, METER, rising_edges=False) for a, b in pairwise(edges_s))
    whole = between(trace, edges_s[0], edges_s[-1], METER, rising_edges=False)
    assert first.energy_wh + second.energy_wh == pytest.approx(whole.energy_wh, abs=1e-9)


@given(trace=traces(with_counter=True), by_s=st.floats(0.1, 1e6))
def test_shifting_the_clock_changes_nothing(trace: Trace, by_s: float) -> None:
    shifted = Trace.of(
        trace.time_s + by_s,
        trace.power_w,
        trace.kind,
        trace.counter_wh,
        resolution_w=0.1,
        counter_step_wh=0.1,
    )
    start_s, end_s = trace.end_s * 0.2, trace.end_s * 0.9
    here, there = between(trace, start_s, end_s, METER), between(shifted, start_s, end_s, METER)
    assert there.energy_wh == pytest.approx(here.energy_wh, rel=1e-6)
    assert own_variance(there) == pytest.approx(own_variance(here), rel=1e-2)


@given(trace=traces(with_counter=True), gain=st.floats(0.5, 2.0))
def test_gain_scales_the_energy_and_all_its_doubts(trace: Trace, gain: float) -> None:
    scaled = Trace.of(
        trace.time_s,
        trace.power_w * gain,
        trace.kind,
        None if trace.counter_wh is None else trace.counter_wh * gain,
        resolution_w=trace.resolution_w * gain,
        counter_step_wh=trace.counter_step_wh * gain,
    )
    start_s, end_s = trace.end_s * 0.2, trace.end_s * 0.9
    plain, more = between(trace, start_s, end_s, METER), between(scaled, start_s, end_s, METER)
    # whether a heater may have been missed is judged by the watts of heaters, which no gain moves
    assume([i.name for i in plain.influences] == [i.name for i in more.influences])
    assert more.energy_wh == pytest.approx(gain * plain.energy_wh, rel=1e-9)
    assert math.sqrt(own_variance(more)) == pytest.approx(gain * math.sqrt(own_variance(plain)), rel=1e-6)


@given(trace=traces(), other=traces(), gain=st.floats(0.98, 1.02))
def test_a_ratio_is_free_of_a_gain_that_both_share(trace: Trace, other: Trace, gain: float) -> None:
    def mean(of: Trace, times: float) -> object:
        scaled = Trace.of(of.time_s, of.power_w * times, of.kind, resolution_w=0.1)
        return mean_of([between(scaled, of.end_s * 0.2, of.end_s * 0.9, Meter("m", "one", 1.0, 0.0))])

    plain = ratio(mean(trace, 1.0), mean(other, 1.0))  # type: ignore[arg-type] # nested for brevity
    both = ratio(mean(trace, gain), mean(other, gain))  # type: ignore[arg-type]
    assert both.value == pytest.approx(plain.value, rel=1e-9)
    assert plain.u_shared == pytest.approx(0.0, abs=1e-9)


@given(trace=traces(), long_s=st.floats(40, 300), at=st.floats(0.35, 0.5))
def test_the_interval_grows_with_a_gap(trace: Trace, long_s: float, at: float) -> None:
    keep = (trace.time_s < trace.end_s * at) | (trace.time_s > trace.end_s * at + long_s)
    holed = Trace.of(trace.time_s[keep], trace.power_w[keep], trace.kind, resolution_w=0.1)
    start_s, end_s = trace.end_s * 0.2, trace.end_s * 0.9
    whole = between(trace, start_s, end_s, METER)
    assume(holed.gaps)
    doubted = between(holed, start_s, end_s, METER)
    assert doubted.gap_share > 0
    assert own_variance(doubted) > own_variance(whole)


@given(trace=traces(with_counter=True))
def test_the_counter_never_makes_it_less_sure(trace: Trace) -> None:
    start_s, end_s = trace.end_s * 0.2, trace.end_s * 0.9
    without = Trace.of(trace.time_s, trace.power_w, trace.kind, resolution_w=0.1)
    assert own_variance(between(trace, start_s, end_s, METER)) <= own_variance(
        between(without, start_s, end_s, METER)
    ) * (1 + 1e-9)


@st.composite
def oddities(draw: st.DrawFn) -> Trace:
    """Traces that no machine draws: few rows, uneven steps, nothing, far too much, less than nothing."""
    count = draw(st.sampled_from((2, 3, 5, 13, 40)))
    rng = np.random.default_rng(draw(st.integers(0, 2**32 - 1)))
    time = np.cumsum(rng.choice([0.1, 1, 1, 10, 60, 500], count))
    levels = draw(st.sampled_from(((0.0,), (5.0,), (0.0, 5.0, 60.0, 300.0), (-3.0, 0.0, 1e6))))
    power = rng.choice(np.array(levels), count)
    counter = None
    breaks: tuple[float, ...] = ()
    if draw(st.booleans()):
        counter = np.cumsum(rng.choice([0, 0, 0.1, 1, 50], count))
        counter[rng.random(count) < draw(st.sampled_from((0.0, 0.4)))] = np.nan
        breaks = tuple(float(b) for b in rng.choice(time - time[0], draw(st.integers(0, 2))) if b > 0)
    return Trace.of(time, power, draw(st.sampled_from(KINDS)), counter, counter_breaks_s=breaks)


@given(trace=oddities(), cuts=st.tuples(st.floats(0, 1), st.floats(0, 1)), is_run=st.booleans())
def test_no_trace_makes_it_stumble(trace: Trace, cuts: tuple[float, float], is_run: bool) -> None:
    start_s, end_s = sorted(cut * trace.end_s for cut in cuts)
    assume(end_s > start_s)
    energy = between(trace, start_s, end_s, METER, rising_edges=is_run)
    assert math.isfinite(energy.energy_wh)
    assert math.isfinite(u95_of(energy))
    bed = share(trace, start_s, (start_s + end_s) / 2, end_s, energy, 5.0)
    assert (bed.share is None) == (bed.why_not is not None)
