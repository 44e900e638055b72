"""A year of one-second samples priced through both changes: ``pytest --benchmark-only`` with this file."""

from datetime import datetime
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from core.costs.rates import PriceBand, PriceList, Tariff
from core.costs.tariff import Cost, cost_of, steps_for
from core.traces import Clock, Trace

ZONE = "Europe/London"
BANDS = (PriceBand("night", 0.11, 30, 330), PriceBand("evening", 0.41, 16 * 60, 19 * 60, (0, 1, 2, 3, 4)))
MOST_S = 1.0


@pytest.fixture(scope="module")
def year() -> Trace:
    start = datetime(2026, 1, 1, tzinfo=ZoneInfo(ZONE)).timestamp()
    time_s = np.arange(365 * 86400 + 1, dtype=np.float64)
    power_w = 80 + 60 * np.sin(time_s / 7000) + 20 * ((time_s // 37) % 3)
    return Trace.of(time_s, power_w, key="year", clock=Clock("absolute", start, zone=ZONE), resolution_w=0.1)


def per_sample(trace: Trace, price: np.ndarray) -> float:
    """Every interval of the year at the price of its own second, and nothing else."""
    mean_w = (trace.power_w[1:] + trace.power_w[:-1]) / 2
    return float(np.dot(mean_w, price)) / 3.6e6


def wall_minutes(start_s: float, count: int) -> tuple[np.ndarray, np.ndarray]:
    """Minute of the day and weekday on the local clock, asked of the clock once a half hour."""
    halves = [datetime.fromtimestamp(start_s + at, ZoneInfo(ZONE)) for at in range(0, count, 1800)]
    minute = np.repeat([h.hour * 60 + h.minute for h in halves], 1800)
    return minute, np.repeat([h.weekday() for h in halves], 1800)


def test_bands_over_a_year_equal_the_sum_over_samples_and_take_less_than_a_second(
    benchmark: BenchmarkFixture, year: Trace
) -> None:
    tariff = Tariff("£", "bands", 0.30, BANDS, zone=ZONE)

    def priced() -> Cost:
        return cost_of(year, steps_for(tariff, None, year.clock, 0.0, year.end_s))

    cost = benchmark.pedantic(priced, rounds=5)
    assert year.clock.start_s is not None
    minute, weekday = wall_minutes(year.clock.start_s, year.time_s.size - 1)
    price = np.full(minute.size, 0.30)
    price[(minute >= 16 * 60) & (minute < 19 * 60) & (weekday < 5)] = 0.41
    price[(minute >= 30) & (minute < 330)] = 0.11
    assert cost.amount == pytest.approx(per_sample(year, price), rel=1e-9)
    assert benchmark.stats.stats.min <= MOST_S


def test_half_hourly_prices_over_a_year_do_too(benchmark: BenchmarkFixture, year: Trace) -> None:
    prices = 0.25 + 0.2 * np.sin(np.arange(17520) / 9.0)
    assert year.clock.start_s is not None
    listed = PriceList("p1", "year", year.clock.start_s, 1800.0, tuple(prices.tolist()))
    tariff = Tariff("£", "list", list_id="p1", zone=ZONE)

    def priced() -> Cost:
        return cost_of(year, steps_for(tariff, listed, year.clock, 0.0, year.end_s))

    cost = benchmark.pedantic(priced, rounds=5)
    assert cost.amount == pytest.approx(per_sample(year, np.repeat(prices, 1800)), rel=1e-9)
    assert cost.unpriced_wh == 0.0
    assert benchmark.stats.stats.min <= MOST_S
