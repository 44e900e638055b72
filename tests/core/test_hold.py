import json
import math
from pathlib import Path

import numpy as np
import pytest

from core.beds.heat import cooling_s, heat_capacity_j_per_k, time_constant_s
from core.beds.hold import Hold, holds
from core.beds.hold_fit import Point, fit, line_or_curve
from core.beds.plate import Plate, loss
from core.beds.steady import steady
from core.logs import read_path
from core.study import Meter
from core.traces import Trace
from tests.core.held_beds import BEFORE_S, Bed, simulated

METER = Meter("m", "a meter")
DIFFERENCES_K = (20.0, 30.0, 40.0, 50.0, 60.0)
DEMO = Path(__file__).parents[2] / "demo_data"


def series_of(bed: Bed, tests: int, seed: int, every: int = 2, seconds: int = 3600) -> list[list[Hold]]:
    """`tests` series of hold tests, each of all differences, with what was held as its log."""
    differences = np.tile(DIFFERENCES_K, tests)
    traces, means, _ = simulated(bed, differences, seconds, seed, every)
    found = []
    for trace, mean in zip(traces, means.tolist(), strict=True):
        (hold,) = holds(trace, BEFORE_S - 1.0, BEFORE_S + seconds - every - 1.0, METER)
        found.append((hold, mean))
    size = len(DIFFERENCES_K)
    return [[_with_difference(*pair) for pair in found[i : i + size]] for i in range(0, len(found), size)]


def _with_difference(hold: Hold, difference_k: float) -> Hold:
    from attrs import evolve

    return evolve(hold, bed_c=20.0 + difference_k, room_c=20.0)


def point(hold: Hold) -> Point:
    assert hold.bed_w is not None
    assert hold.bed_c is not None
    assert hold.room_c is not None
    return Point(hold.bed_c - hold.room_c, hold.bed_w, hold.bed_u_w, hold.steady.df)


def test_interval_of_the_slope_holds_the_truth_as_often_as_it_says() -> None:
    held = predicted = settled = 0
    count = 150
    for fast in (False, True):
        bed = Bed(fast=fast)
        for series in series_of(bed, count, seed=11 + fast):
            line = fit([point(hold) for hold in series])
            held += abs(line.coefficients[1] - bed.slope_w_per_k) <= line.u95(1)
            at_40 = line.at(40)
            predicted += at_40.low_w <= bed.intercept_w + 40 * bed.slope_w_per_k <= at_40.high_w
            settled += sum(hold.steady.is_settled for hold in series)
    assert 0.93 <= held / (2 * count) <= 0.985  # 95 within what 300 draws scatter
    assert 0.93 <= predicted / (2 * count) <= 0.985
    assert settled / (2 * count * len(DIFFERENCES_K)) > 0.98


def test_interval_of_a_fit_to_points_of_known_uncertainty() -> None:
    rng = np.random.default_rng(5)
    x = np.array([25.0, 30, 40, 50])
    u = np.array([0.2, 0.3, 0.5, 0.8])
    held = new = 0
    count = 3000
    for _ in range(count):
        y = -4 + 1.35 * x + rng.normal(0, u)
        line = fit([Point(*values) for values in zip(x.tolist(), y.tolist(), u.tolist(), strict=True)])
        held += abs(line.coefficients[1] - 1.35) <= line.u95(1)
        measured = line.at(45, new_u_w=0.6)
        new += measured.low_w <= -4 + 1.35 * 45 + rng.normal(0, 0.6) <= measured.high_w
    # a chance of 1 in 20 that the points are called inconsistent and the interval widened
    assert 0.94 <= held / count <= 0.97
    assert 0.94 <= new / count <= 0.97


def test_bed_watts_and_warm_up() -> None:
    bed = Bed()
    traces, _, warm_wh = simulated(bed, np.array([40.0, 60.0]), 3600, seed=3)
    for trace, wanted_wh in zip(traces, warm_wh.tolist(), strict=True):
        (hold,) = holds(trace, BEFORE_S - 1.0, BEFORE_S + 3590.0, METER)
        assert hold.base_w == pytest.approx(bed.base_w, abs=0.1)
        assert hold.warm_up_wh is not None
        assert hold.warm_up_u_wh is not None
        # 220 W and samples 2 s apart: each edge is known to 0.06 Wh
        assert hold.warm_up_wh == pytest.approx(wanted_wh, abs=0.25)
        assert hold.half_hour_w is not None
        assert hold.full_hour_w is None  # the log ends a little before the hour
        # the warm-up lifts the half hour above the steady watts
        assert hold.half_hour_w > hold.steady.mean_w


def test_half_hour_against_full_hour() -> None:
    (trace,), _, _ = simulated(Bed(), np.array([40.0]), 3700, seed=4)
    (hold,) = holds(trace, BEFORE_S - 1.0, BEFORE_S + 3697.0, METER)
    assert hold.half_hour_w is not None
    assert hold.full_hour_w is not None
    assert hold.steady.mean_w < hold.full_hour_w < hold.half_hour_w
    # common practice, no source: the warm-up matters little over an hour
    assert hold.full_hour_w == pytest.approx(hold.steady.mean_w, rel=0.15)


def test_heat_capacity_from_the_warm_up() -> None:
    bed = Bed()
    series = series_of(bed, 4, seed=8)
    for hold in (hold for one in series for hold in one):
        found = heat_capacity_j_per_k(hold, from_c=20.0, room_c=20.0)
        assert found is not None
        # on the way up the bed is warmed a band's width above its mean
        assert found[0] == pytest.approx(bed.capacity_j_per_k, abs=2 * found[1] + 12)


def test_a_start_that_still_drifts_is_cut_off() -> None:
    time = np.arange(0, 3600, 5.0)
    rng = np.random.default_rng(2)
    power = 50 + 20 * np.exp(-time / 400) + rng.normal(0, 1, time.size)
    found = steady(Trace.of(time, power), 0, 3595, METER)
    assert found is not None
    assert found.is_settled
    assert found.start_s > 300
    assert found.mean_w == pytest.approx(50, abs=0.5)


def test_what_never_settles_is_said_to() -> None:
    time = np.arange(0, 3600, 5.0)
    power = 50 + time / 100 + np.random.default_rng(2).normal(0, 1, time.size)
    found = steady(Trace.of(time, power), 0, 3595, METER)
    assert found is not None
    assert not found.is_settled


def test_too_short_for_any_answer() -> None:
    trace = Trace.of(np.arange(0, 200, 2.0), np.full(100, 40.0))
    assert steady(trace, 0, 198, METER) is None
    assert holds(trace, 0, 198, METER) == ()


def test_no_level_before_a_fast_switched_bed_means_no_bed_watts() -> None:
    (trace,), _, _ = simulated(Bed(fast=True), np.array([40.0]), 3000, seed=6)
    late = Trace.of(trace.time_s[trace.time_s > BEFORE_S + 300], trace.power_w[trace.time_s > BEFORE_S + 300])
    (hold,) = holds(late, 0.0, late.end_s, METER)
    assert hold.bed_w is None
    assert hold.warm_up_wh is None
    assert hold.warm_up_s == 0


def test_temperatures_one_after_the_other() -> None:
    """The demo's log of four temperatures against what its generator knows."""
    (reading,) = read_path(DEMO / "logs" / "Birch hold test.csv").readings
    assert reading.trace is not None
    truth = json.loads((DEMO / "truth.json").read_text())
    log = next(log for log in truth["logs"] if log["file"] == "Birch hold test.csv")
    meter = next(m for m in truth["meters"] if m["name"] == log["meter"])
    wanted = [s for s in log["stretches"] if s["kind"] == "hold test"]
    found = holds(reading.trace, wanted[0]["start_s"], wanted[-1]["end_s"], METER)
    assert len(found) == len(wanted)
    for hold, stretch in zip(found, wanted, strict=True):
        assert hold.start_s == pytest.approx(stretch["start_s"], abs=3)
        assert hold.warm_end_s == pytest.approx(stretch["warm_up_end_s"], abs=12)
        assert hold.bed_c == pytest.approx(stretch["bed_set_c"], abs=1)
        assert hold.room_c == pytest.approx(log["room_c"], abs=0.3)
        assert hold.bed_w is not None
        assert hold.bed_u_w is not None
        assert hold.bed_w / meter["gain"] == pytest.approx(stretch["bed_steady_w"], abs=3 * hold.bed_u_w)
    line = fit([point(hold) for hold in found])
    assert line.at(30).is_extrapolated is False
    assert line.at(15).is_extrapolated is True


def test_the_plate_law_bends_a_line() -> None:
    plate = Plate(0.235, 0.235)
    points = [Point(d, loss(plate, 20 + d, 20).total_w, 0.2) for d in (20.0, 35, 50, 65, 80)]
    line = fit(points)
    assert line.coefficients[0] < 0  # physics, and no fault
    assert not line.is_consistent
    curve = line_or_curve(points)
    assert curve.is_curve
    assert curve.at(42).power_w == pytest.approx(loss(plate, 62, 20).total_w, rel=0.01)
    with pytest.raises(ValueError, match="backwards"):
        curve.difference_at(50)
    # over a narrow range, or by a coarser measurement, a line will do
    assert not line_or_curve(points[1:4]).is_curve
    coarse = [Point(p.difference_k, p.power_w, 3.0) for p in points]
    assert not line_or_curve(coarse).is_curve


def test_uncertain_temperatures_widen_the_line() -> None:
    points = [Point(d, -4 + 1.35 * d, 0.2) for d in (20.0, 30, 40, 50)]
    blurred = [Point(p.difference_k, p.power_w, 0.2, u_k=0.5) for p in points]
    ratio = fit(blurred).u(1) / fit(points).u(1)
    assert ratio == pytest.approx(math.hypot(0.2, 1.35 * 0.5) / 0.2, rel=1e-6)


def test_the_meter_errs_alike_at_all_points() -> None:
    points = [Point(d, -4 + 1.35 * d, 0.01) for d in (20.0, 30, 40, 50)]
    line = fit(points, gain_u=0.005, offset_u_w=0.2)
    assert line.at(40).u_w == pytest.approx(math.hypot(0.005 * 50, 0.2), rel=0.01)
    assert line.u(1) == pytest.approx(0.005 * 1.35, rel=0.01)


def test_cooling() -> None:
    # closed form: 60 to 45 degC in 20 degC with tau 1000 s takes 1000 ln(40/25) s
    assert cooling_s(1000, 60, 45, 20) == pytest.approx(470.00, abs=5e-3)
    assert time_constant_s(420, 1.4) == pytest.approx(300)
    assert cooling_s(1000, 60, 60, 20) == 0
    for never_c in (20, 15, 61):
        with pytest.raises(ValueError, match="never passes"):
            cooling_s(1000, 60, never_c, 20)


def test_too_few_temperatures() -> None:
    with pytest.raises(ValueError, match="more temperatures"):
        fit([Point(40, 50, 1), Point(40, 51, 1)])


def _logged(trace: Trace, way: str) -> Trace:
    """The trace as another meter logs it."""
    if way == "on change":
        kept = np.r_[True, np.diff(trace.power_w) != 0]
        return Trace.of(trace.time_s[kept], trace.power_w[kept], "on_change", key=f"{trace.key} {way}")
    kind, seconds = way.split()
    size = int(seconds)
    rows = trace.time_s.size // size * size
    if kind == "sampled":
        return Trace.of(trace.time_s[:rows:size], trace.power_w[:rows:size], key=f"{trace.key} {way}")
    ends = trace.time_s[:rows].reshape(-1, size)[:, -1]
    means = trace.power_w[:rows].reshape(-1, size).mean(axis=1)
    return Trace.of(ends, means, "averaged", key=f"{trace.key} {way}")


@pytest.mark.parametrize("fast", [False, True])
@pytest.mark.parametrize(
    "way", ["on change", "sampled 1", "sampled 10", "averaged 5", "averaged 10", "averaged 60"]
)
def test_however_the_meter_logs(way: str, fast: bool) -> None:
    bed = Bed(fast=fast)
    traces, means, warm_wh = simulated(bed, np.array([30.0, 40.0, 60.0]), 3600, seed=5, every=1)
    for trace, mean, warm in zip(traces, means.tolist(), warm_wh.tolist(), strict=True):
        logged = _logged(trace, way)
        (hold,) = holds(logged, BEFORE_S - 1.0, min(BEFORE_S + 3590.0, logged.end_s), METER)
        assert hold.base_w == pytest.approx(bed.base_w, abs=0.2)
        assert hold.bed_w is not None
        assert hold.bed_u_w is not None
        wanted_w = bed.intercept_w + bed.slope_w_per_k * mean
        assert abs(hold.bed_w - wanted_w) < max(4 * hold.bed_u_w, 0.02 * wanted_w)
        assert hold.warm_up_wh is not None
        # a fast-switched bed takes its time over the last kelvin; a slow log does not show where it ends
        assert hold.warm_up_wh == pytest.approx(warm, abs=0.15 * warm + 0.7)
