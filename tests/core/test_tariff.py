"""Prices over time, and the cost of an interval of a trace, against sums written out by hand."""

from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.costs.rates import PriceBand, PriceList, Tariff
from core.costs.tariff import cost_of, energies_wh, steps_between, steps_for, year_steps
from core.energy.integral import by_power_wh
from core.traces import Clock, Sampling, Trace

LONDON = ZoneInfo("Europe/London")
NIGHT = PriceBand("night", 0.10, 0, 420)


def banded(*bands: PriceBand, zone: str | None = "Europe/London") -> Tariff:
    return Tariff("£", "bands", 0.30, bands or (NIGHT,), zone=zone)


def unix(text: str, zone: ZoneInfo = LONDON) -> float:
    return datetime.fromisoformat(text).replace(tzinfo=zone).timestamp()


def constant(clock: Clock, hours: float, watts: float = 100.0) -> Trace:
    return Trace.of([0, hours * 3600], [watts, watts], clock=clock)


def test_a_night_band_on_an_ordinary_day() -> None:
    steps = steps_between(banded(), None, LONDON, unix("2026-06-15"), unix("2026-06-16"))
    assert np.diff(steps.edges_s).tolist() == [7 * 3600, 17 * 3600]
    assert steps.mean_per_kwh == pytest.approx((7 * 0.1 + 17 * 0.3) / 24)


def test_a_band_over_midnight_belongs_to_the_day_on_which_it_begins() -> None:
    friday_night = PriceBand("Friday night", 0.05, 22 * 60, 6 * 60, (4,))
    # 2026-06-19 is a Friday
    steps = steps_between(banded(friday_night), None, LONDON, unix("2026-06-19"), unix("2026-06-21"))
    cheap = steps.prices_per_kwh == 0.05
    assert cheap.sum() == 1
    start = datetime.fromtimestamp(steps.edges_s[:-1][cheap][0], LONDON)
    assert (start.weekday(), start.hour) == (4, 22)
    assert np.diff(steps.edges_s)[cheap].tolist() == [8 * 3600]


def test_weekdays_and_the_first_of_several_bands() -> None:
    weekend = PriceBand("weekend", 0.20, 0, 1440, (5, 6))
    tariff = banded(weekend, NIGHT)
    saturday = steps_between(tariff, None, LONDON, unix("2026-06-20"), unix("2026-06-21"))
    assert saturday.prices_per_kwh.tolist() == [0.20]


@pytest.mark.parametrize(
    ("zone", "day", "hours"),
    [
        ("Europe/London", "2026-03-29", 23.0),
        ("Europe/London", "2026-10-25", 25.0),
        ("Australia/Lord_Howe", "2026-04-05", 24.5),
        ("Australia/Lord_Howe", "2026-10-04", 23.5),
        ("America/New_York", "2026-11-01", 25.0),
    ],
)
def test_a_band_across_the_change_equals_asking_the_clock_each_minute(
    zone: str, day: str, hours: float
) -> None:
    tz = ZoneInfo(zone)
    bands = (PriceBand("small hours", 0.1, 75, 150), PriceBand("late", 0.2, 22 * 60 + 30, 60))
    start = unix(day, tz)
    end = start + hours * 3600
    assert end == unix((datetime.fromisoformat(day) + timedelta(days=1)).date().isoformat(), tz)
    steps = steps_between(banded(*bands, zone=zone), None, tz, start, end)
    minutes = np.arange(start, end, 60) + 30
    priced = steps.prices_per_kwh[np.searchsorted(steps.edges_s, minutes, side="right") - 1]
    wanted = []
    for at in minutes.tolist():
        wall = datetime.fromtimestamp(at, tz)
        minute = wall.hour * 60 + wall.minute
        wanted.append(0.1 if 75 <= minute < 150 else 0.2 if minute >= 22 * 60 + 30 or minute < 60 else 0.3)
    assert priced.tolist() == wanted


def test_hours_of_years() -> None:
    for year, hours in ((2026, 8760), (2028, 8784)):
        edges = year_steps(banded(), None, LONDON, year).edges_s
        assert edges[-1] - edges[0] == hours * 3600


def test_a_list_prices_its_own_dates_and_no_others() -> None:
    start = unix("2026-06-15")
    listed = PriceList("p1", "June", start, 1800.0, (0.1, -0.02, None, 0.4))
    tariff = Tariff("£", "list", list_id="p1", zone="Europe/London")
    trace = constant(Clock("absolute", start - 1800, zone="Europe/London"), 3.0)
    cost = cost_of(trace, steps_for(tariff, listed, trace.clock, 0, trace.end_s))
    assert cost.amount == pytest.approx(0.05 * (0.1 - 0.02 + 0.4), abs=1e-12)
    assert cost.unpriced_wh == pytest.approx(150.0)
    assert cost.energy_wh == pytest.approx(300.0)


def test_a_local_list_takes_the_zone_it_is_used_in() -> None:
    wall = datetime(2026, 6, 15, tzinfo=UTC).timestamp()
    listed = PriceList("p1", "June", wall, 3600.0, (0.1, 0.2), is_local=True)
    tariff = Tariff("£", "list", list_id="p1", zone="Europe/London")
    steps = steps_between(tariff, listed, LONDON, unix("2026-06-15"), unix("2026-06-15T02:00"))
    assert steps.prices_per_kwh.tolist() == [0.1, 0.2]


def test_a_local_clock_with_no_zone_is_followed_as_the_log_saw_it() -> None:
    # the wall clock is put back at 02:00, an hour and a half after the log began at 00:30
    wall = datetime(2026, 10, 25, 0, 30, tzinfo=UTC).timestamp()
    clock = Clock("local", wall, shifts=((5400.0, -3600.0),))
    trace = constant(clock, 9.0)
    cost = cost_of(trace, steps_for(banded(zone=None), None, clock, 0, trace.end_s))
    # 07:00 on the wall is 7.5 h after the start
    assert cost.amount == pytest.approx(0.1 * (7.5 * 0.1 + 1.5 * 0.3), abs=1e-12)
    assert cost.amount == pytest.approx(
        cost_of(trace, steps_for(banded(), None, Clock("local", wall), 0, trace.end_s)).amount, abs=1e-12
    )


def test_elapsed_time_has_a_single_price_only() -> None:
    trace = constant(Clock("relative"), 1.0)
    assert cost_of(trace, steps_for(banded(), None, trace.clock, 0, 3600)).unpriced_wh == pytest.approx(100.0)
    single = Tariff("€", price_per_kwh=0.30)
    assert cost_of(trace, steps_for(single, None, trace.clock, 0, 3600)).amount == pytest.approx(0.03)


def test_no_price_is_not_free() -> None:
    trace = constant(Clock("relative"), 1.0)
    cost = cost_of(trace, steps_for(Tariff(), None, trace.clock, 0, 3600))
    assert cost.amount == 0.0
    assert cost.unpriced_wh == pytest.approx(100.0)


KINDS: tuple[Sampling, ...] = ("sampled", "averaged", "on_change")


@given(
    kind=st.sampled_from(KINDS),
    steps=st.lists(st.floats(0.5, 50.0), min_size=2, max_size=30),
    seed=st.integers(0, 1000),
    cuts=st.lists(st.floats(-0.2, 1.2), min_size=2, max_size=12, unique=True),
)
def test_energies_between_edges_are_those_of_the_integral(
    kind: Sampling, steps: list[float], seed: int, cuts: list[float]
) -> None:
    time = np.concatenate(([0.0], np.cumsum(steps)))
    trace = Trace.of(time, np.random.default_rng(seed).uniform(0, 300, time.size), kind)
    edges = np.sort(np.array(cuts)) * time[-1]
    found = energies_wh(trace, edges)
    for energy, a, b in zip(found, edges[:-1].tolist(), edges[1:].tolist(), strict=True):
        assert energy == pytest.approx(by_power_wh(trace, a, b), abs=1e-9)


@pytest.mark.parametrize("first_day", [date(2026, 3, 22), date(2026, 10, 18)])
def test_a_fortnight_of_seconds_over_each_change_equals_the_sum_over_samples(first_day: date) -> None:
    # the clock goes forward on 2026-03-29 and back on 2026-10-25 (time-zone database); the price of every
    # second is asked of the local clock at its half hour, and nothing else is added up
    zone = ZoneInfo("Europe/London")
    start_s = datetime(first_day.year, first_day.month, first_day.day, tzinfo=zone).timestamp()
    time_s = np.arange(14 * 86_400 + 1, dtype=np.float64)
    power_w = 80 + 60 * np.sin(time_s / 7000) + 20 * ((time_s // 37) % 3)
    both_changes = Trace.of(time_s, power_w, clock=Clock("absolute", start_s, zone=zone.key))
    evening = PriceBand("evening", 0.41, 16 * 60, 19 * 60, (0, 1, 2, 3, 4))
    tariff = Tariff("", "bands", 0.30, (PriceBand("night", 0.11, 30, 330), evening), zone=zone.key)
    cost = cost_of(both_changes, steps_for(tariff, None, both_changes.clock, 0.0, both_changes.end_s))
    price = []
    for half_hour in range(0, 14 * 86_400, 1800):
        at = datetime.fromtimestamp(start_s + half_hour, zone)
        minute = at.hour * 60 + at.minute
        is_evening = 16 * 60 <= minute < 19 * 60 and at.weekday() < 5
        price.append(0.11 if 30 <= minute < 330 else 0.41 if is_evening else 0.30)
    per_sample_w = (power_w[1:] + power_w[:-1]) / 2
    expected = float(np.dot(per_sample_w, np.repeat(price, 1800))) / 3.6e6
    assert cost.amount == pytest.approx(expected, rel=1e-9)
