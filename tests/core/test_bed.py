"""The bed's share: seen where the heater is seen to switch, refused with the reason where it is not."""

import math

import numpy as np
import pytest

from core.beds.share import share
from core.beds.ways import agreement, by_hold, by_own_meter, by_run_without
from core.energy.total import between
from core.results.values import BedShare, Energy, Influence, Measured
from core.study import Meter
from core.traces import F64, Sampling, Trace
from core.uncertainty import budget, coverage_factor

METER = Meter("m", "bench meter")
STANDBY_W, REST_W, HEATER_W = 6.0, 60.0, 300.0
START_S, WARM_S, END_S = 300.0, 540.0, 4500.0


def fine(
    on_s: float, off_s: float, hot_end_w: float = 0.0, heater_w: float = HEATER_W
) -> tuple[F64, F64, float]:
    """A run at 0.05 s: time, power at the plug, and the bed's energy. [s], [W], [Wh]"""
    time = np.arange(0.0, 4800.0, 0.05)
    heats = (time >= START_S) & (time < END_S)
    warm = heats & (time < WARM_S)
    on = warm | (heats & ((time - WARM_S) % (on_s + off_s) >= off_s))
    rest = np.where(heats, REST_W, STANDBY_W) - np.where(warm, 0.38 * (REST_W - STANDBY_W), 0)
    motion = np.where(heats & ~warm, 4 * np.sin(time / 3.1) + 2 * np.sin(time / 0.9), 0)
    hot = np.where(heats & ~warm & (time % 2.3 < 1.1), hot_end_w, 0)
    bed = heater_w * on
    return time, rest + motion + hot + bed, float(bed.sum()) * 0.05 / 3600


def metered(
    time: F64, power: F64, interval_s: float, kind: Sampling = "sampled", window_s: float = 0.5
) -> Trace:
    """The run as a meter logs it, with a counter of 0.1 Wh."""
    energy = np.concatenate(([0.0], np.cumsum(power) * 0.05))
    moments = np.arange(1.0 + interval_s, time[-1], interval_s)
    window = interval_s if kind == "averaged" else window_s
    at = np.interp(moments, np.append(time, time[-1] + 0.05), energy)
    before = np.interp(moments - window, np.append(time, time[-1] + 0.05), energy)
    counter = np.floor(at / 3600 / 0.1) * 0.1
    return Trace.of(moments, np.round((at - before) / window, 1), kind, counter, counter_step_wh=0.1)


def share_of(trace: Trace, moved_s: float) -> tuple[BedShare, Energy]:
    edges = START_S - moved_s, WARM_S - moved_s, END_S - moved_s
    energy = between(trace, edges[0], edges[2], METER)
    return share(trace, *edges, energy, STANDBY_W), energy


@pytest.mark.parametrize(
    ("interval_s", "kind", "on_s", "off_s"),
    [
        (1.0, "sampled", 9.0, 17.3),
        (2.0, "sampled", 9.0, 17.3),
        (10.0, "sampled", 9.0, 17.3),
        (1.0, "sampled", 2.2, 3.1),
        (2.0, "averaged", 9.0, 17.3),
        (10.0, "averaged", 14.0, 27.3),
    ],
)
def test_a_heater_that_is_seen_to_switch(
    interval_s: float, kind: Sampling, on_s: float, off_s: float
) -> None:
    time, power, bed_wh = fine(on_s, off_s)
    trace = metered(time, power, interval_s, kind)
    bed, energy = share_of(trace, 1.0 + interval_s)
    truth = bed_wh / energy.energy_wh
    assert bed.share is not None
    assert bed.share_u95 is not None
    assert bed.share == pytest.approx(truth, abs=0.02)
    assert abs(bed.share - truth) <= bed.share_u95
    assert bed.share_u95 < 0.05
    assert bed.method == "heater switching"
    assert bed.energy_wh == pytest.approx(bed_wh, rel=0.03)


def test_a_hot_end_that_pulses_too_belongs_to_the_rest() -> None:
    time, power, bed_wh = fine(9.0, 17.3, hot_end_w=40.0)
    bed, energy = share_of(metered(time, power, 1.0, window_s=0.25), 2.0)
    assert bed.share == pytest.approx(bed_wh / energy.energy_wh, abs=0.02)


@pytest.mark.parametrize(("interval_s", "kind"), [(1.0, "sampled"), (2.0, "averaged"), (10.0, "averaged")])
def test_pulses_shorter_than_the_meters_window_are_refused(interval_s: float, kind: Sampling) -> None:
    time, power, _ = fine(0.33, 0.57)
    bed, _ = share_of(metered(time, power, interval_s, kind, window_s=0.95), 1.0 + interval_s)
    assert bed.share is None
    assert bed.why_not is not None
    assert bed.why_not.code in ("bed.too_fast", "bed.not_switching", "bed.averaged")


def test_a_bound_for_fast_pulses_holds_the_truth() -> None:
    time, power, bed_wh = fine(0.33, 0.57)
    bed, energy = share_of(metered(time, power, 1.0, window_s=0.9), 2.0)
    truth = bed_wh / energy.energy_wh
    assert bed.at_least is not None
    assert bed.at_most is not None
    assert bed.at_least <= truth <= bed.at_most


@pytest.mark.parametrize("interval_s", [10.0, 20.0, 30.0])
def test_a_bound_holds_where_few_samples_miss_a_hot_end_or_keep_step_with_the_pulses(
    interval_s: float,
) -> None:
    # 2 s pulses met each 10, 20 or 30 s are met at a few moments of theirs alone
    time, power, bed_wh = fine(0.5, 1.5, hot_end_w=45.0)
    bed, energy = share_of(metered(time, power, interval_s, window_s=0.1), 1.0 + interval_s)
    assert bed.share is None
    assert bed.at_least is not None
    assert bed.at_most is not None
    assert bed.at_least <= bed_wh / energy.energy_wh <= bed.at_most


@pytest.mark.parametrize(("interval_s", "on_s", "off_s"), [(5.0, 4.2, 5.82), (10.0, 6.9, 9.15)])
def test_a_mixture_that_keeps_step_with_the_means_is_not_taken_for_the_heater_off(
    interval_s: float, on_s: float, off_s: float
) -> None:
    # hardly a window lies between two pulses, and most show the same two mixtures for minutes
    time, power, bed_wh = fine(on_s, off_s, heater_w=200.0)
    bed, energy = share_of(metered(time, power, interval_s, "averaged"), 1.0 + interval_s)
    truth = bed_wh / energy.energy_wh
    assert bed.share is None
    assert bed.at_least is not None
    assert 0 <= bed.at_least <= truth


@pytest.mark.parametrize("interval_s", [10.0, 30.0])
def test_rest_after_the_part_does_not_make_the_bound_larger_than_the_share(interval_s: float) -> None:
    # motors held with the hot end off, for half a minute that the run's end was found late by
    time, power, bed_wh = fine(0.33, 0.57)
    power = np.where((time >= END_S - 30) & (time < END_S), 15.0, power)
    bed, energy = share_of(metered(time, power, interval_s, "averaged"), 1.0 + interval_s)
    assert bed.at_least is not None
    assert bed.at_least <= bed_wh / energy.energy_wh


def test_a_small_bed_whose_heater_is_never_seen_off_gets_a_bound() -> None:
    time, power, bed_wh = fine(0.33, 0.57, heater_w=110.0)
    bed, energy = share_of(metered(time, power, 2.0, window_s=1.8), 3.0)
    assert bed.share is None
    assert bed.at_least is not None
    assert bed.at_most is not None
    assert bed.at_least <= bed_wh / energy.energy_wh <= bed.at_most


@pytest.mark.parametrize("is_bed_first", [True, False])
def test_the_order_of_heating_shows_in_the_plateau(is_bed_first: bool) -> None:
    time, power, _ = fine(9.0, 17.3)
    plateau = (time >= START_S) & (time < WARM_S)
    bed_w = np.where(plateau, HEATER_W, 0.0)
    hot_w = np.where(plateau & ((time >= WARM_S - 40) if is_bed_first else True), 38.0, 0.0)
    power = np.where(plateau, STANDBY_W + bed_w + hot_w, power)
    bed, energy = share_of(metered(time, power, 1.0, window_s=0.1), 2.0)
    processing = (time >= WARM_S) & (time < END_S)
    pulses = processing & ((time - WARM_S) % 26.3 >= 17.3)
    truth_wh = float((bed_w + HEATER_W * pulses).sum()) * 0.05 / 3600
    assert bed.energy_wh == pytest.approx(truth_wh, abs=0.8)
    assert abs((bed.share or 0.0) - truth_wh / energy.energy_wh) <= (bed.share_u95 or 0.0)


@pytest.mark.parametrize("interval_s", [1.0, 5.0])
def test_short_pulses_of_bed_and_hot_end_are_not_taken_apart(interval_s: float) -> None:
    time, power, bed_wh = fine(0.9, 1.17, hot_end_w=50.0)
    bed, energy = share_of(metered(time, power, interval_s, window_s=0.5), 1.0 + interval_s)
    assert bed.share is None
    assert bed.at_least is not None
    assert bed.at_most is not None
    assert bed.at_least <= bed_wh / energy.energy_wh <= bed.at_most


def test_a_pulsing_hot_end_is_no_bed() -> None:
    time, power, _ = fine(9.0, 17.3, hot_end_w=45.0, heater_w=0.0)
    bed, _ = share_of(metered(time, power, 1.0), 2.0)
    assert bed.share is None
    assert bed.why_not is not None


def test_a_steady_machine_is_refused() -> None:
    time, power, _ = fine(9.0, 17.3, heater_w=0.0)
    bed, _ = share_of(metered(time, power, 1.0), 2.0)
    assert bed.why_not is not None
    assert bed.why_not.code in ("bed.not_switching", "bed.hot_end")
    assert (bed.at_least, bed.at_most) == (None, None)


def test_a_handful_of_rows_is_refused() -> None:
    time, power, _ = fine(9.0, 17.3)
    trace = metered(time, power, 600.0)
    energy = between(trace, 0, trace.end_s, METER)
    bed = share(trace, 0, 600, trace.end_s, energy, STANDBY_W)
    assert bed.why_not is not None
    assert bed.why_not.code == "bed.few_rows"


def run(value_wh: float, own_wh: float = 0.2, meter: str = "m") -> Energy:
    gain = Influence("meter gain", value_wh * 0.01 / 3**0.5, f"gain:{meter}")
    return Energy(value_wh, (gain, Influence("sampling", own_wh)), "power")


def test_own_meter() -> None:
    two_channels = by_own_meter(run(100.0), run(60.0))
    two_meters = by_own_meter(run(100.0), run(60.0, meter="other"))
    assert two_channels.share == pytest.approx(0.6)
    assert (two_channels.share_u95 or 0) < (two_meters.share_u95 or 0)
    assert two_meters.share_u95 == pytest.approx(
        1.96 * 0.6 * (2 * (0.01 / 3**0.5) ** 2 + 0.002**2 + (0.2 / 60) ** 2) ** 0.5, rel=1e-3
    )


def test_run_with_the_bed_off() -> None:
    bed = by_run_without(run(100.0), run(45.0))
    assert bed.share == pytest.approx(0.55)
    assert bed.energy_wh == pytest.approx(55.0)
    assert bed.share_u95 == pytest.approx(1.96 * 0.002 * (1 + 0.45**2) ** 0.5, rel=1e-2)


def test_hold_test() -> None:
    bed = by_hold(run(100.0), Measured(70.0, 1.0), Measured(10.0, 0.5), 3600, Measured(8.0, 0.5))
    assert bed.share == pytest.approx(0.68)
    assert bed.share_u95 == pytest.approx(
        (1.0**2 + 0.5**2 + 0.5**2 + 0.68**2 * 1.2**2) ** 0.5 / 100, rel=0.05
    )


def test_two_ways_agree_or_not() -> None:
    near = agreement(by_run_without(run(100.0, 1.0), run(45.0, 1.0)), by_own_meter(run(100.0), run(56.0)))
    assert near is not None
    assert near.agree
    assert near.problem is None
    far = agreement(by_run_without(run(100.0), run(45.0)), by_own_meter(run(100.0), run(65.0)))
    assert far is not None
    assert far.problem is not None
    assert far.problem.code == "bed.ways_disagree"
    assert agreement(BedShare(None, None, None, "hold test"), by_own_meter(run(100.0), run(65.0))) is None


@pytest.mark.parametrize("way", ["own meter", "one meter, two channels", "bed off", "hold test", "switching"])
def test_the_influences_of_a_share_make_its_interval(way: str) -> None:
    energy = run(100.0, 0.8)
    if way == "own meter":
        bed = by_own_meter(energy, run(60.0, 0.5, meter="other"))
    elif way == "one meter, two channels":
        bed = by_own_meter(energy, run(60.0, 0.5))
    elif way == "bed off":
        bed = by_run_without(energy, run(45.0, 0.8))
    elif way == "hold test":
        bed = by_hold(energy, Measured(50.0, 1.2), Measured(4.0, 0.5), 3600.0, Measured(9.0, 2.0))
    else:
        time, power, _ = fine(9.0, 17.3)
        bed, energy = share_of(metered(time, power, 2.0), 3.0)
    assert bed.share_u95 is not None
    together = sum(line.u_wh**2 for line in budget(bed.influences))
    assert coverage_factor(math.inf) * math.sqrt(together) / energy.energy_wh == pytest.approx(
        bed.share_u95, rel=1e-6
    )


def test_a_gain_that_both_readings_share_cancels_in_the_influences() -> None:
    bed = by_own_meter(run(100.0), run(60.0))
    assert sum(i.u_wh for i in bed.influences if i.shared is not None) == pytest.approx(0.0, abs=1e-12)
