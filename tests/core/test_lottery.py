"""Slow samples of a switching load: an alias, a lock-in and a heater that is never met are doubted."""

import numpy as np
import pytest

from core.energy.lottery import lottery
from core.traces import F64, Trace


def run(
    interval_s: float, cycle_s: float, share: float, phase_s: float = 0.0, step_w: float = 300.0
) -> Trace:
    """An hour of a load that is on for `share` of each cycle, after a warm-up of 2 min."""
    time = np.arange(0.0, 3600.0 + interval_s / 2, interval_s)
    on = (time < 120) | ((time + phase_s) % cycle_s < share * cycle_s)
    return Trace.of(time, 60.0 + step_w * on, resolution_w=0.1)


def error_wh(trace: Trace, share: float, step_w: float = 300.0) -> float:
    later = trace.time_s >= 120
    read: F64 = trace.power_w[later]
    return (float(np.mean(read)) - 60.0 - share * step_w) * float(trace.time_s[-1] - 120) / 3600


def doubt_wh(trace: Trace) -> float:
    found = lottery(trace, 0, trace.time_s.size - 1)
    return float(np.hypot(max(found.sampling_u_wh, found.in_step_u_wh), found.hidden_u_wh))


@pytest.mark.parametrize(("interval_s", "cycle_s"), [(2.0, 4.0), (2.0, 6.0), (5.0, 10.0), (5.0, 20.0)])
def test_a_cycle_of_a_few_whole_intervals_is_doubted_by_what_it_can_miss(
    interval_s: float, cycle_s: float
) -> None:
    errors, doubts = [], []
    for phase_s in np.linspace(0, cycle_s, 23, endpoint=False):
        trace = run(interval_s, cycle_s, 0.37, float(phase_s))
        errors.append(error_wh(trace, 0.37))
        doubts.append(doubt_wh(trace))
    spread = float(np.sqrt(np.mean(np.square(errors))))
    assert spread > 10
    assert 0.4 * spread < float(np.median(doubts)) < 3 * spread


def test_a_cycle_that_drifts_through_the_samples_is_not_doubted() -> None:
    # hardly more than the rounding of each edge by itself leaves: step x interval x root (cycles / 6)
    assert doubt_wh(run(1.0, 23.7, 0.37)) < 1.1 * 300 * 1.0 * np.sqrt(3480 / 23.7 / 6) / 3600
    assert doubt_wh(run(2.0, 41.3, 0.37)) < 1.1 * 300 * 2.0 * np.sqrt(3480 / 41.3 / 6) / 3600


def test_a_cycle_near_the_interval_looks_resolved_and_is_doubted() -> None:
    # 32 s read each 30 s: on and off come in stretches of minutes
    trace = run(30.0, 32.0, 0.37)
    longest = max(len(s) for s in "".join("1" if p > 200 else "0" for p in trace.power_w).split("0"))
    assert longest >= 4
    assert doubt_wh(trace) > 9


def test_a_heater_never_met_again_is_doubted_and_a_machine_without_one_is_not() -> None:
    hidden = run(30.0, 30.0, 0.3, phase_s=15.0)
    assert float(np.mean(hidden.power_w[10:])) == pytest.approx(60.0)
    assert lottery(hidden, 0, hidden.time_s.size - 1).hidden_u_wh > 20
    assert doubt_wh(run(30.0, 30.0, 0.3, step_w=0.0)) == 0


def whole(interval_s: float, on_share: float, phase_s: float, *, is_even: bool = False) -> Trace:
    """Idle, a warm-up of 2 min, an hour of pulses as long as the interval (or as much, evenly), and idle."""
    time = np.arange(0.0, 4920.0, interval_s)
    heats = (time >= 600) & (time < 4320)
    warm = heats & (time < 720)
    pulses = (time + phase_s) % interval_s < on_share * interval_s
    bed = np.where(warm, 300.0, np.where(heats, 300.0 * on_share if is_even else 300.0 * pulses, 0.0))
    return Trace.of(time, np.where(heats, 45.0, 8.0) + bed, resolution_w=0.1)


def found_in(trace: Trace) -> tuple[float, float]:
    """The doubt of a hidden heater, and what the pulses were really wrong by, for a third on. [Wh]"""
    first, last = (int(np.searchsorted(trace.time_s, s)) for s in (600.0, 4320.0))
    later = (trace.time_s >= 720) & (trace.time_s < 4320)
    wrong_w = float(np.mean(trace.power_w[later])) - 45.0 - 100.0
    return lottery(trace, first, last - 1).hidden_u_wh, wrong_w


@pytest.mark.parametrize("interval_s", [5.0, 10.0, 30.0])
@pytest.mark.parametrize("phase_s", [0.0, 2.5])
def test_pulses_that_every_sample_meets_or_misses_are_doubted_as_far_as_they_are_wrong(
    interval_s: float, phase_s: float
) -> None:
    doubt_wh, wrong_w = found_in(whole(interval_s, 1 / 3, phase_s * interval_s / 5))
    assert abs(wrong_w) > 90
    assert 1.96 * doubt_wh > abs(wrong_w)


@pytest.mark.parametrize("interval_s", [2.0, 5.0, 10.0])
def test_a_heater_driven_evenly_is_not_taken_for_a_hidden_one(interval_s: float) -> None:
    doubt_wh, wrong_w = found_in(whole(interval_s, 1 / 3, 0.0, is_even=True))
    assert wrong_w == pytest.approx(0, abs=1)
    assert doubt_wh == 0


def test_a_large_heater_that_is_seldom_on_is_seen_all_the_same() -> None:
    time = np.arange(0.0, 4920.0, 5.0)
    heats = (time >= 600) & (time < 4320)
    on = heats & ((time < 700) | (time % 130 < 9))
    trace = Trace.of(time, np.where(heats, 45.0, 8.0) + 700.0 * on, resolution_w=0.1)
    assert found_in(trace)[0] == 0


def test_other_kinds_of_log_have_no_lottery() -> None:
    trace = run(30.0, 32.0, 0.37)
    for kind in ("averaged", "on_change"):
        assert doubt_wh(Trace.of(trace.time_s, trace.power_w, kind)) == 0
