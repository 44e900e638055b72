"""Units and integration against definitions and closed forms."""

import math

import numpy as np
import pytest

from core.energy.integral import by_power_wh, mean_w
from core.traces import Trace
from core.units import ENERGY_IN_WH, HOURS_PER_YEAR, J_PER_WH, WH_PER_KWH


def test_a_kilowatt_hour() -> None:
    # SI Brochure, 9th edition: the hour is accepted for use with the SI; 1 kWh = 3.6 MJ
    joules = WH_PER_KWH * J_PER_WH
    assert joules == 3_600_000
    assert ENERGY_IN_WH["MJ"] * 3.6 == pytest.approx(1000.0, abs=1e-9)


def test_a_year_of_one_watt() -> None:
    # by definition; a leap year has 24 hours more
    assert pytest.approx(8.76, abs=1e-12) == HOURS_PER_YEAR / WH_PER_KWH
    assert pytest.approx(8.784, abs=1e-12) == (HOURS_PER_YEAR + 24) / WH_PER_KWH


def sine(end_s: float) -> Trace:
    time = np.arange(0.0, end_s + 0.5)
    return Trace.of(time, 100 + 50 * np.sin(2 * np.pi * time / 600))


def test_trapezoid_over_whole_periods() -> None:
    # closed form: the sine adds nothing
    assert by_power_wh(sine(3600), 0, 3600) == pytest.approx(100.0, abs=1e-9)


def test_trapezoid_over_part_of_a_period() -> None:
    # closed form: 25 Wh + (50 W * 600 s / (2 pi)) * 2 / 3600
    exact = 25 + 50 * 600 / (2 * math.pi) * (1 - math.cos(2 * math.pi * 900 / 600)) / 3600
    assert exact == pytest.approx(27.652582, abs=1e-6)
    assert by_power_wh(sine(900), 0, 900) == pytest.approx(exact, abs=1e-4)
    assert by_power_wh(sine(900), 0, 900) == pytest.approx(27.652558, abs=1e-6)


def test_trapezoid_of_a_decay() -> None:
    # closed form: the trapezoid of an exponential is too large by x coth x, x = step / (2 tau)
    time = np.arange(0.0, 3001, 30.0)
    trace = Trace.of(time, 200 * np.exp(-time / 300))
    exact = 200 * 300 * (1 - math.exp(-10)) / 3600
    x = 30 / 600
    assert exact == pytest.approx(16.665910, abs=1e-6)
    assert by_power_wh(trace, 0, 3000) / exact == pytest.approx(x / math.tanh(x), abs=1e-9)
    assert x / math.tanh(x) == pytest.approx(1.000833194, abs=1e-9)


def test_on_change_rows() -> None:
    # by definition: each value holds until the next
    time, power = [0, 600, 900, 1200, 1800], [100, 0, 100, 0, 0]
    assert by_power_wh(Trace.of(time, power, "on_change"), 0, 1800) == pytest.approx(25.0, abs=1e-9)
    # what a trapezoid would wrongly make of them
    assert by_power_wh(Trace.of(time, power), 0, 1800) == pytest.approx(16.667, abs=1e-3)


def test_averaged_rows() -> None:
    # by definition: each value stands for the interval before it
    trace = Trace.of([0, 60, 120, 180, 300], [0, 120, 60, 0, 30], "averaged")
    assert by_power_wh(trace, 0, 300) == pytest.approx(4.0, abs=1e-9)


def test_time_weighted_mean() -> None:
    # by definition: not the mean of the readings, 20 W
    assert mean_w(Trace.of([0, 10, 30], [10, 20, 30]), 0, 30) == pytest.approx(65 / 3, abs=1e-6)
