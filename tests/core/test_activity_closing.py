"""Motors held and fans running for a moment after the part are no processing; a bed at rest is."""

import numpy as np
import pytest

from core.activity.closing import last_working
from core.activity.levels import Levels
from core.activity.rows import rows_of
from core.traces import F64, Trace


def stretch(
    rest_w: float, rest_s: int, *, pulsing_w: float = 0.0, interval_s: int = 1, bed_to_s: float = 1800.0
) -> tuple[F64, F64]:
    """Half an hour at 60 W with a bed of 200 W until `bed_to_s`, then rest, then standby."""
    time = np.arange(0, 1800 + rest_s + 120, interval_s, dtype=float)
    bed = np.where((time % 40 < 14) & (time < bed_to_s), 200.0, 0.0)
    hot = np.where(time % 4 < 2, pulsing_w, 0.0)
    working = 60.0 + bed + hot + np.sin(time / 3.0)
    return time, np.where(time < 1800, working, np.where(time < 1800 + rest_s, rest_w, 8.0))


def end_s(time: F64, power: F64, last_s: float) -> float:
    rows = rows_of(Trace.of(time, power, resolution_w=0.1))
    levels = Levels(8.0, 8.0, 12.0, 50.0, 0.1, 0.0, np.zeros(rows.time_s.size, dtype=bool))
    last = int(np.searchsorted(time, last_s + 1e-6, side="right")) - 1
    return float(rows.time_s[last_working(rows, levels, 0, last)])


@pytest.mark.parametrize(("interval_s", "rest_s"), [(1, 30), (5, 30), (10, 60)])
def test_rest_after_the_part_is_left_out(interval_s: int, rest_s: int) -> None:
    time, power = stretch(22.0, rest_s, interval_s=interval_s)
    assert end_s(time, power, 1800 + rest_s - interval_s) == pytest.approx(1800 - interval_s)


def test_a_hot_end_that_pulses_is_not_missing_between_its_pulses() -> None:
    time, power = stretch(22.0, 30, pulsing_w=40.0)
    assert end_s(time, power, 1829) == pytest.approx(1800, abs=3)


def test_minutes_of_rest_as_high_as_between_pulses_are_left_out() -> None:
    time, power = stretch(58.0, 400, pulsing_w=40.0)
    assert end_s(time, power, 2199) == pytest.approx(1800, abs=3)


def test_pulses_that_samples_miss_for_a_while_are_met_within_a_longer_one() -> None:
    time, power = stretch(58.0, 400, interval_s=5)
    # a cycle of 6.6 s read each 5 s: off in up to three rows in a row
    power = power + np.where((time < 1800) & (time % 6.6 < 2.0), 40.0, 0.0)
    assert end_s(time, power, 2195) == pytest.approx(1800, abs=15)


def test_rest_that_falls_in_steps_is_left_out_whole() -> None:
    time, power = stretch(40.0, 200)
    power[(time >= 1900) & (time < 2000)] = 25.0
    assert end_s(time, power, 1999) == 1799


def test_a_bed_that_rests_before_the_end_is_still_processing() -> None:
    time, power = stretch(8.0, 0, bed_to_s=1700.0)
    assert end_s(time, power, 1799) == 1799


def test_a_bed_that_never_rested_before_is_no_hot_end_that_is_off() -> None:
    time, power = stretch(8.0, 0, interval_s=10, bed_to_s=1740.0)
    assert end_s(time, power, 1790) == 1790


def test_a_level_hardly_lower_is_still_processing() -> None:
    time, power = stretch(56.0, 30)
    assert end_s(time, power, 1829) == 1829


def test_rest_of_many_minutes_is_left_to_the_levels() -> None:
    time, power = stretch(22.0, 900)
    assert end_s(time, power, 2699) == 2699


@pytest.mark.parametrize(("interval_s", "rest_s"), [(30, 60), (60, 180)])
def test_slow_samples_show_rest_that_lies_below_all_of_processing(interval_s: int, rest_s: int) -> None:
    time, power = stretch(22.0, rest_s, interval_s=interval_s)
    assert end_s(time, power, 1800 + rest_s - interval_s) == 1800 - interval_s


def test_slow_samples_show_no_rest_that_lies_as_high_as_between_pulses() -> None:
    time, power = stretch(22.0, 60, interval_s=30)
    # a hot end that pulses is met off now and then
    power = power - np.where((time < 1800) & (time % 210 == 0), 36.0, 0.0)
    assert end_s(time, power, 1830) == 1830


def test_minutes_of_rest_are_not_measured_by_the_pulses_of_the_bed() -> None:
    # rest is long enough for a window of its length to hold a pulse of the bed wherever it lies
    time, power = stretch(22.0, 300)
    assert end_s(time, power, 2099) == pytest.approx(1799, abs=1)
