"""Heat and warm-up of a bed, and its settled watts, against numbers worked out by hand."""

import math

import numpy as np
import pytest
from attrs import evolve

from core.beds.from_holds import HOT_END_PART, WARM_UP_DOUBT, HeldBed, warm_up_wh
from core.beds.heat import WARMING_DOUBT, WARMING_PART, cooling_s, heat_capacity_j_per_k, time_constant_s
from core.beds.hold import Hold
from core.beds.steady import Steady, steady, u_of_mean
from core.study import Meter
from core.traces import Trace
from core.uncertainty import NORMAL_95

METER = Meter("m", "bench meter")
# 100 W held at 60 degC in a room of 20 degC, after 25 +- 1 Wh in 400 s
HELD = Steady(400.0, 4000.0, 106.0, 0.4, 9.0, True, (106.0,) * 12, 300.0)
HOLD = Hold(0.0, 400.0, 4000.0, HELD, 6.0, 0.05, 25.0, 1.0, None, None, 60.0, 20.0, True)


@pytest.mark.parametrize(
    ("from_c", "part"),
    [
        (20.0, WARMING_PART),
        # half warm: half of what is missing to the held watts is lost from the beginning
        (40.0, WARMING_PART + (1 - WARMING_PART) / 2),
        # a bed cooler than the room begins with no loss
        (15.0, WARMING_PART),
    ],
)
def test_heat_that_a_bed_takes_up(from_c: float, part: float) -> None:
    assert HOLD.bed_w == pytest.approx(100.0)
    found = heat_capacity_j_per_k(HOLD, from_c, 20.0)
    assert found is not None
    value, u = found
    rise_k = 60.0 - from_c
    assert value == pytest.approx((25.0 * 3600 - part * 100.0 * 400) / rise_k)
    assert u == pytest.approx(math.hypot(WARMING_DOUBT / math.sqrt(3) * 40_000, 3600.0) / rise_k)


@pytest.mark.parametrize(
    "unknown",
    [evolve(HOLD, warm_up_wh=None), evolve(HOLD, warm_up_u_wh=None), evolve(HOLD, bed_c=None)],
)
def test_heat_needs_the_warm_up_and_the_bed(unknown: Hold) -> None:
    assert heat_capacity_j_per_k(unknown, 20.0, 20.0) is None
    assert heat_capacity_j_per_k(HOLD, 60.0, 20.0) is None


def test_a_bed_that_cools_by_itself() -> None:
    assert time_constant_s(1500.0, 2.5) == 600.0
    assert cooling_s(600.0, 60.0, 40.0, 20.0) == pytest.approx(600.0 * math.log(2))
    assert cooling_s(600.0, 60.0, 60.0, 20.0) == 0.0
    for never in (20.0, 60.1):
        with pytest.raises(ValueError, match="never passes"):
            cooling_s(600.0, 60.0, never, 20.0)


@pytest.mark.parametrize(
    ("difference_k", "seconds", "above_wh", "value_wh"),
    [
        (40.0, 400.0, 50.0, 25.0),
        # half as far takes half, in half the time; what it took longer stands at the held 50 W
        (20.0, 200.0, 50.0, 12.5),
        (20.0, 920.0, 50.0, 12.5 + 50.0 * 720 / 3600),
        # never more than was drawn
        (40.0, 400.0, 11.0, 11.0),
    ],
)
def test_a_warm_up_after_that_of_a_hold(
    difference_k: float, seconds: float, above_wh: float, value_wh: float
) -> None:
    found = warm_up_wh([HeldBed(HOLD, 60.0, 20.0)], difference_k, 50.0, seconds, above_wh)
    assert found.value == pytest.approx(value_wh)
    assert found.u95 == pytest.approx(NORMAL_95 * math.hypot(WARM_UP_DOUBT / math.sqrt(3) * value_wh, 1.0))


def test_without_a_hold_the_hot_end_has_a_part_of_the_warm_up() -> None:
    found = warm_up_wh([], 40.0, 50.0, 400.0, 30.0)
    assert found.value == pytest.approx((1 - HOT_END_PART) * 30.0)
    assert found.u95 == pytest.approx(NORMAL_95 * HOT_END_PART / math.sqrt(3) * 30.0)


def test_what_is_not_settled_yet_is_left_out() -> None:
    time = np.arange(0.0, 3601.0, 1.0)
    # 200 W for the first 300 s, then 100 W with a little noise
    power = np.where(time < 300, 200.0, 100.0) + np.random.default_rng(4).normal(0, 0.5, time.size)
    found = steady(Trace.of(time, power, resolution_w=0.1), 0.0, 3600.0, METER)
    assert found is not None
    assert found.is_settled
    assert found.start_s == 300.0
    assert found.end_s == 3600.0
    assert found.mean_w == pytest.approx(100.0, abs=0.1)
    # the scatter is that of the windows that are kept alone
    assert found.u_w < 0.2
    kept = round((found.end_s - found.start_s) / found.window_s)
    assert found.df >= kept - 1
    assert len(found.windows_w) == round(3600.0 / found.window_s)
    assert max(found.windows_w) == pytest.approx(200.0, abs=0.5)


def test_two_high_windows_at_the_start_are_left_out_together() -> None:
    time = np.arange(0.0, 3601.0, 5.0)
    power = np.where(time < 600.0, 200.0, 100.0) + 0.05 * np.sin(time)
    found = steady(Trace.of(time, power), 0.0, 3600.0, METER)
    assert found is not None
    assert found.is_settled
    assert found.start_s == pytest.approx(600.0, abs=1.0)
    assert found.mean_w == pytest.approx(100.0, abs=0.1)


def test_what_never_settles_is_told_with_all_its_scatter() -> None:
    time = np.arange(0.0, 3601.0, 1.0)
    found = steady(Trace.of(time, 50.0 + time / 10, resolution_w=0.1), 0.0, 3600.0, METER)
    assert found is not None
    assert not found.is_settled
    assert found.start_s == pytest.approx(0.0, abs=found.window_s)
    assert found.mean_w == pytest.approx(230.0, rel=0.05)
    assert found.u_w > 20.0


def test_too_short_for_windows() -> None:
    time = np.arange(0.0, 31.0, 1.0)
    assert steady(Trace.of(time, np.full(31, 50.0)), 0.0, 30.0, METER) is None


def test_doubt_of_a_mean_by_its_scatter() -> None:
    assert u_of_mean(np.array([1.0, 3.0, 5.0])) == pytest.approx(2.0 / math.sqrt(3))
    assert u_of_mean(np.array([4.0])) == 0.0
