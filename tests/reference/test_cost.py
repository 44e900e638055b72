"""Cost over the changed days of a year and of a long print; the source stands beside each check."""

from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from core.costs.print_cost import Course, long_print
from core.costs.rates import PriceBand, Tariff
from core.costs.tariff import cost_of, steps_for, year_steps
from core.results.values import Energy
from core.traces import Clock, Trace

BANDS = Tariff("", "bands", 0.30, (PriceBand("night", 0.10, 0, 420),))


def day_trace(zone: str, day: date, watts: float = 100.0) -> Trace:
    """A constant load through one local day."""
    first = datetime(day.year, day.month, day.day, tzinfo=ZoneInfo(zone))
    after = day + timedelta(days=1)
    last = datetime(after.year, after.month, after.day, tzinfo=ZoneInfo(zone))
    seconds = last.timestamp() - first.timestamp()
    clock = Clock("absolute", first.timestamp(), zone=zone)
    return Trace.of([0.0, seconds], [watts, watts], clock=clock)


def test_a_day_of_25_hours() -> None:
    # 100 W through 2026-10-25 in London, 0.10/kWh before 07:00 local time, else 0.30: 8 h and 17 h.
    # Our own arithmetic over the IANA time-zone database; with the hour forgotten it would be 0.58
    trace = day_trace("Europe/London", date(2026, 10, 25))
    assert trace.end_s == 25 * 3600
    cost = cost_of(trace, steps_for(BANDS, None, trace.clock, 0.0, trace.end_s))
    assert cost.amount == pytest.approx(0.59, abs=1e-12)


@pytest.mark.parametrize(
    ("zone", "day", "cheap_h", "dear_h"),
    [
        # hours of local days by the IANA time-zone database
        ("Europe/London", date(2026, 3, 29), 6, 17),
        ("Europe/London", date(2026, 6, 15), 7, 17),
        ("Europe/Berlin", date(2026, 10, 25), 8, 17),
        ("America/New_York", date(2026, 3, 8), 6, 17),
        ("America/New_York", date(2026, 11, 1), 8, 17),
        ("Australia/Lord_Howe", date(2026, 4, 5), 7.5, 17),
        ("Australia/Lord_Howe", date(2026, 10, 4), 6.5, 17),
        ("Asia/Kolkata", date(2026, 3, 29), 7, 17),
    ],
)
def test_days_of_any_length(zone: str, day: date, cheap_h: float, dear_h: float) -> None:
    trace = day_trace(zone, day)
    cost = cost_of(trace, steps_for(BANDS, None, trace.clock, 0.0, trace.end_s))
    assert cost.amount == pytest.approx(0.1 * (0.10 * cheap_h + 0.30 * dear_h), abs=1e-12)


def test_a_year_of_one_watt_at_one_price() -> None:
    # 8760 h: 8.76 kWh; 8784 h in a leap year: 8.784 kWh (our own arithmetic)
    single = Tariff("", price_per_kwh=1.0)
    for year, kwh in ((2026, 8.76), (2028, 8.784)):
        steps = year_steps(single, None, ZoneInfo("Europe/London"), year)
        hours = (steps.edges_s[-1] - steps.edges_s[0]) / 3600
        assert hours / 1000 * (steps.mean_per_kwh or 0.0) == pytest.approx(kwh, abs=1e-9)


def test_a_print_of_ten_hours() -> None:
    # common practice, no source: ten hours of printing take about 1 to 1.5 kWh. A bed that is held at 60 degC
    # with 70 W (common practice, no source) is about half the draw; 40 Wh warm it up
    part = Course(Energy(40.0 + 120.0 * 57 / 60, (), "power"), 40.0, 180.0, 3600.0)
    printed = long_print([part], 36_000.0)
    assert printed is not None
    assert 1000 < printed.energy.value < 1500


def test_a_print_of_ten_hours_by_a_published_line() -> None:
    # Hopkins, Jiang, Brooks 2021, read in a source that cites it: E[MJ] = -0.056 + t[min] (7e-6 T_nozzle +
    # 89e-6 T_bed); at 205 and 60 degC 97 Wh for 1 h and 1.11 kWh for 10 h. Runs of one and of two hours on
    # that line, taken apart and made ten hours long, come out on it
    def line_wh(minutes: float) -> float:
        return (-0.056 + minutes * (7e-6 * 205 + 89e-6 * 60)) * 1e6 / 3600

    assert line_wh(60) == pytest.approx(97, abs=1)
    offset_wh = line_wh(0.0)
    runs = [Course(Energy(line_wh(m), (), "power"), offset_wh, 0.0, m * 60) for m in (60.0, 120.0)]
    printed = long_print(runs, 36_000.0)
    assert printed is not None
    assert printed.energy.value == pytest.approx(1110, rel=0.01)
