"""Energy of a run: by power, by counter, over gaps, resets and missing rows."""

import numpy as np
import pytest

from core.energy.total import between, by_counter_wh, by_power_wh
from core.results.values import Energy
from core.study import Meter
from core.traces import Trace

METER = Meter("m", "bench meter")


def own_u_wh(energy: Energy) -> float:
    return float(np.sqrt(sum(i.u_wh**2 for i in energy.influences if i.shared is None)))


def heated_part(step_s: float = 1.0, counter_step_wh: float | None = None, gain: float = 1.0) -> Trace:
    """10 min at 6 W, 1 h at 200 W, 10 min at 6 W, with the counter that goes with it."""
    time = np.arange(0.0, 4800 + step_s / 2, step_s)
    exact = 6 * np.clip(time, 0, 600) + 200 * np.clip(time - 600, 0, 3600) + 6 * np.clip(time - 4200, 0, 600)
    power = np.where((time > 600) & (time <= 4200), 200.0, 6.0) * gain
    counter = None
    if counter_step_wh:
        counter = np.floor(exact * gain / 3600 / counter_step_wh + 1e-9) * counter_step_wh
    return Trace.of(time, power, counter_wh=counter, counter_step_wh=counter_step_wh, resolution_w=0.1)


def test_edges_are_steps_and_not_slopes() -> None:
    # half of the heater's first interval would be lost on a straight line from the last quiet sample
    energy = between(heated_part(30.0), 600, 4200, METER)
    assert energy.energy_wh == pytest.approx(200.0, abs=1e-9)
    assert by_power_wh(heated_part(30.0), 600, 4200) != pytest.approx(200.0, abs=1e-3)


def test_the_counter_is_taken_where_it_knows_more() -> None:
    trace = heated_part(30.0, counter_step_wh=0.1)
    energy = between(trace, 600, 4200, METER)
    assert energy.method == "counter with power at the edges"
    assert energy.energy_wh == pytest.approx(200.0, abs=0.1)
    assert own_u_wh(energy) < own_u_wh(between(heated_part(30.0), 600, 4200, METER))


def test_a_coarse_counter_is_tied_by_its_ticks() -> None:
    # the ticks pin a 10 Wh counter far better than 10 Wh / sqrt(6)
    energy = between(heated_part(1.0, counter_step_wh=10.0), 600, 4200, METER)
    assert energy.energy_wh == pytest.approx(200.0, abs=0.3)
    assert own_u_wh(energy) < 0.5


def test_a_reset_inside_the_run_costs_one_interval() -> None:
    trace = heated_part(10.0, counter_step_wh=0.1)
    assert trace.counter_wh is not None
    whole = trace.counter_wh.copy()
    row = int(np.searchsorted(trace.time_s, 2000.0))
    run_on = whole.copy()
    # made to run on from 0 at the reset: what was used between the last row and the reset is lost
    run_on[row:] = whole[row - 1] + (whole[row:] - whole[row])
    reset = Trace.of(
        trace.time_s,
        trace.power_w,
        counter_wh=run_on,
        counter_step_wh=0.1,
        resolution_w=0.1,
        counter_breaks_s=(2000.0,),
    )
    energy = between(reset, 600, 4200, METER)
    assert energy.by_counter_wh == pytest.approx(200.0, abs=0.15)
    assert abs(run_on[-1] - run_on[0] - (whole[-1] - whole[0])) > 0.3


def test_offset_and_gain_are_shared_by_the_meter() -> None:
    energy = between(heated_part(), 600, 4200, METER)
    shared = {i.shared: i.u_wh for i in energy.influences if i.shared}
    assert shared["gain:m"] == pytest.approx(200 * 0.01 / np.sqrt(3))
    assert shared["offset:m"] == pytest.approx(0.3 / np.sqrt(3))


def test_a_gap_is_bridged_by_the_minutes_beside_it_and_doubted() -> None:
    trace = heated_part(2.0)
    keep = (trace.time_s < 2000) | (trace.time_s > 2100)
    power = np.where(trace.time_s % 41.3 < 20, trace.power_w, np.minimum(trace.power_w, 60.0))
    gappy = Trace.of(trace.time_s[keep], power[keep], resolution_w=0.1)
    whole, holed = (
        between(Trace.of(trace.time_s, power, resolution_w=0.1), 600, 4200, METER),
        between(gappy, 600, 4200, METER),
    )
    assert holed.gap_share == pytest.approx(102 / 3600, abs=1e-3)
    assert [p.code for p in holed.problems] == ["energy.gaps"]
    assert abs(holed.energy_wh - whole.energy_wh) < 0.6
    assert own_u_wh(holed) > 2 * own_u_wh(whole)


def test_over_a_gap_the_counter_decides() -> None:
    trace = heated_part(2.0, counter_step_wh=0.1)
    assert trace.counter_wh is not None
    keep = (trace.time_s < 1500) | (trace.time_s > 2500)
    gappy = Trace.of(
        trace.time_s[keep],
        trace.power_w[keep],
        counter_wh=trace.counter_wh[keep],
        counter_step_wh=0.1,
        resolution_w=0.1,
    )
    energy = between(gappy, 600, 4200, METER)
    assert energy.method == "counter with power at the edges"
    assert energy.energy_wh == pytest.approx(200.0, abs=0.1)
    assert [p.code for p in energy.problems] == ["energy.gaps_counted"]
    assert (energy.gap_share > 0.25, energy.untold_gap_share) == (True, 0.0)
    without = Trace.of(trace.time_s[keep], trace.power_w[keep], resolution_w=0.1, key="no counter")
    alone = between(without, 600, 4200, METER)
    assert "energy.gaps_many" in [p.code for p in alone.problems]


@pytest.mark.parametrize("what", ["reset in the gap", "counter ends before it", "counter begins after it"])
def test_a_gap_that_the_counter_did_not_live_through_is_not_said_to_be_counted(what: str) -> None:
    trace = heated_part(2.0, counter_step_wh=0.1)
    assert trace.counter_wh is not None
    keep = (trace.time_s < 1500) | (trace.time_s > 2100)
    after = trace.time_s > 2100
    counter, breaks_s = trace.counter_wh.copy(), ()
    if what == "reset in the gap":
        # made to run on over the reset, it lacks what was used meanwhile
        counter[after] -= counter[after][0] - counter[trace.time_s < 1500][-1]
        breaks_s = (float(trace.time_s[after][0]),)
    elif what == "counter ends before it":
        counter[after] = np.nan
    else:
        counter[~after] = np.nan
    gappy = Trace.of(
        trace.time_s[keep],
        trace.power_w[keep],
        counter_wh=counter[keep],
        counter_step_wh=0.1,
        counter_breaks_s=breaks_s,
        resolution_w=0.1,
    )
    energy = between(gappy, 600, 4200, METER)
    assert energy.gap_share == energy.untold_gap_share == pytest.approx(602 / 3600, abs=1e-3)
    assert "energy.gaps_many" in [p.code for p in energy.problems]
    assert "energy.gaps_counted" not in [p.code for p in energy.problems]
    # the power is bridged, and doubted as far as it ranges
    assert energy.energy_wh == pytest.approx(200.0, abs=0.3)


def test_of_several_gaps_only_those_are_untold_over_which_the_counter_was_reset() -> None:
    trace = heated_part(2.0, counter_step_wh=0.1)
    assert trace.counter_wh is not None
    time = trace.time_s
    keep = ((time < 1500) | (time > 1560)) & ((time < 2500) | (time > 2700))
    counter = trace.counter_wh.copy()
    counter[time > 2700] -= 5.0
    gappy = Trace.of(
        time[keep],
        trace.power_w[keep],
        counter_wh=counter[keep],
        counter_step_wh=0.1,
        counter_breaks_s=(2702.0,),
        resolution_w=0.1,
    )
    energy = between(gappy, 600, 4200, METER)
    assert energy.gap_share == pytest.approx((64 + 204) / 3600, abs=1e-3)
    assert energy.untold_gap_share == pytest.approx(204 / 3600, abs=1e-3)


def test_two_ways_that_disagree_are_told() -> None:
    trace = heated_part(2.0, counter_step_wh=0.1)
    assert trace.counter_wh is not None
    wrong = Trace.of(
        trace.time_s, trace.power_w, counter_wh=trace.counter_wh * 1.05, counter_step_wh=0.1, resolution_w=0.1
    )
    assert "energy.ways_disagree" in [p.code for p in between(wrong, 600, 4200, METER).problems]
    assert between(trace, 600, 4200, METER).problems == ()


def test_missing_rows_of_an_averaged_log_are_doubted() -> None:
    rng = np.random.default_rng(12)
    time = np.arange(0.0, 3601, 10.0)
    power = np.where((time // 10) % 4 < 1, 200.0, 50.0)
    exact = between(Trace.of(time, power, "averaged", resolution_w=0.1), 10, 3600, METER, rising_edges=False)
    errors, at_face, claimed = [], [], []
    for _ in range(60):
        keep = np.ones(time.size, dtype=bool)
        keep[rng.choice(np.arange(2, time.size - 2), 12, replace=False)] = False
        holed = Trace.of(time[keep], power[keep], "averaged", resolution_w=0.1)
        energy = between(holed, 10, 3600, METER, rising_edges=False)
        errors.append(energy.energy_wh - exact.energy_wh)
        at_face.append(by_power_wh(holed, 10, 3600) - exact.energy_wh)
        claimed.append(own_u_wh(energy))
    assert np.std(errors) < 0.9 * np.std(at_face)
    assert 0.7 < np.mean(claimed) / np.std(errors) < 1.5


def test_no_counter_and_slow_samples_of_a_switching_load_are_told() -> None:
    rng = np.random.default_rng(3)
    time = np.arange(0.0, 3601, 30.0)
    power = np.where(rng.random(time.size) < 0.4, 300.0, 60.0)
    energy = between(Trace.of(time, power), 0, 3600, METER, rising_edges=False)
    assert "energy.sampling_lottery" in [p.code for p in energy.problems]
    assert own_u_wh(energy) > 0.04 * energy.energy_wh


def test_an_interval_that_leaves_the_trace_is_the_callers_mistake() -> None:
    with pytest.raises(ValueError, match="leaves the trace"):
        between(heated_part(), 600, 9000, METER)
    with pytest.raises(ValueError, match="needs a length"):
        between(heated_part(), 600, 600, METER)


def test_counter_alone() -> None:
    assert by_counter_wh(heated_part(1.0), 600, 4200) is None
    by_counter = by_counter_wh(heated_part(1.0, counter_step_wh=1.0), 600, 4200)
    assert by_counter == pytest.approx(200.0, abs=0.2)
