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
    return float(np.hypot(found.u_wh, found.hidden_u_wh))


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
    assert doubt_wh(run(1.0, 23.7, 0.37)) == 0
    assert doubt_wh(run(2.0, 41.3, 0.37)) == 0


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


def test_other_kinds_of_log_have_no_lottery() -> None:
    trace = run(30.0, 32.0, 0.37)
    for kind in ("averaged", "on_change"):
        assert doubt_wh(Trace.of(trace.time_s, trace.power_w, kind)) == 0
