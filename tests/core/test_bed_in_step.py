"""Samples that keep step with the pulses of a bed: a wide interval, or no share but the reason."""

import numpy as np
import pytest

from core.beds.share import share
from core.results.values import BedShare
from core.traces import F64, Trace
from tests.core.test_bed import END_S, HEATER_W, METER, REST_W, STANDBY_W, START_S, WARM_S, fine

FINE_S = 0.05


def sampled(time_s: F64, power_w: F64, interval_s: float, first_s: float) -> Trace:
    """Instants of the power, with no counter."""
    moments = np.arange(first_s, time_s[-1], interval_s)
    return Trace.of(moments, np.round(power_w[np.searchsorted(time_s, moments)], 1), "sampled")


def share_of(trace: Trace, first_s: float) -> tuple[BedShare, float]:
    """The share by the trace, and the energy by it. [Wh]"""
    from core.energy.total import between

    edges = START_S - first_s, WARM_S - first_s, END_S - first_s
    energy = between(trace, edges[0], edges[2], METER)
    return share(trace, *edges, energy, STANDBY_W), energy.energy_wh


@pytest.mark.parametrize("cycle_s", [10.015, 20.02, 20.05])
@pytest.mark.parametrize("first_s", [3.0, 9.0, 14.0, 19.0])
def test_a_slow_beat_is_in_the_interval(cycle_s: float, first_s: float) -> None:
    # every 20 s or so the same moment of the cycle is met: on for an hour, or off
    on_s = 0.4 * cycle_s
    time, power, bed_wh = fine(on_s, cycle_s - on_s, heater_w=240.0)
    bed, _ = share_of(sampled(time, power, 20.0, first_s), first_s)
    truth = bed_wh / (float(power[(time >= START_S) & (time < END_S)].sum()) * FINE_S / 3600)
    if bed.share is None:
        assert bed.why_not is not None
    else:
        assert abs(bed.share - truth) <= (bed.share_u95 or 0.0)


def test_an_unsure_energy_lets_the_share_fall_further_than_it_rises() -> None:
    time, power, _ = fine(11.0, 17.3)
    trace = sampled(time, power, 30.0, 3.0)
    bed, energy_wh = share_of(trace, 3.0)
    assert bed.share is not None
    from_energy = sum(
        i.u_wh for i in bed.influences if i.name in ("energy of the run", "samples in step with the pulses")
    )
    least = 1 - (1 - bed.share) / (1 - 1.96 * from_energy / energy_wh)
    assert least < bed.share
    assert from_energy > 0.01 * energy_wh


def test_a_heater_met_too_seldom_is_refused() -> None:
    # short pulses that instants 5 s apart meet when they are off, but for one in fifty
    time, power, _ = fine(1.0, 1.5)
    trace = sampled(time, power, 5.0, 5.0)
    in_processing = (trace.time_s > WARM_S) & (trace.time_s < END_S - 60)
    missed = np.where(in_processing, REST_W + np.sin(trace.time_s), trace.power_w)
    for every, is_refused in ((50, True), (5, False)):
        seen = missed.copy()
        seen[np.flatnonzero(in_processing)[::every]] += HEATER_W
        bed, _ = share_of(Trace.of(trace.time_s, np.round(seen, 1), "sampled"), 5.0)
        assert (bed.share is None) == is_refused
        assert bed.why_not is None or bed.why_not.code == "bed.in_step"
