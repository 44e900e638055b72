"""Files of prices by date, well and badly written."""

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from core.costs.price_csv import MOST_BYTES, read_prices
from core.wording import sentence

BERLIN = ZoneInfo("Europe/Berlin")


def codes(data: str | bytes) -> list[str]:
    raw = data if isinstance(data, bytes) else data.encode()
    return [problem.code for problem in read_prices(raw, "prices.csv").problems]


def test_iso_with_offsets() -> None:
    text = "start,price\n2026-06-01T00:00:00+02:00,0.10\n2026-06-01T00:30:00+02:00,-0.02\n"
    found = read_prices(text.encode(), "prices.csv").listed
    assert found is not None
    assert (found.step_s, found.prices_per_kwh, found.is_local) == (1800.0, (0.10, -0.02), False)
    assert found.start_s == datetime(2026, 6, 1, tzinfo=BERLIN).timestamp()


def test_day_first_decimal_comma_two_columns_and_megawatt_hours() -> None:
    rows = [f"{d:02}.01.2026;{h:02}:00;{80 + h},5" for d in (9, 10) for h in range(24)]
    text = "\n".join(["Datum;Beginn;Preis [€/MWh]", *rows])
    found = read_prices(text.encode("cp1252"), "preise.csv").listed
    assert found is not None
    assert found.step_s == 3600.0
    assert found.is_local
    assert found.prices_per_kwh[0] == pytest.approx(0.0805)
    assert len(found.prices_per_kwh) == 48


def test_pence() -> None:
    text = "from,p/kWh\n2026-06-01 00:00,12.5\n2026-06-01 00:30,13.5\n"
    found = read_prices(text.encode(), "prices.csv").listed
    assert found is not None
    assert found.prices_per_kwh == (0.125, 0.135)


@pytest.mark.parametrize("day", ["2026-03-29", "2026-10-25"])
def test_local_hours_of_the_changed_days_follow_each_other(day: str) -> None:
    midnight = datetime.fromisoformat(day).replace(tzinfo=BERLIN)
    start = midnight.timestamp() - 3600
    hours = 26
    walls = [datetime.fromtimestamp(start + 3600 * i, BERLIN).replace(tzinfo=None) for i in range(hours)]
    text = "\n".join(f"{wall:%Y-%m-%d %H:%M},{i}" for i, wall in enumerate(walls))
    read = read_prices(text.encode(), "prices.csv", "Europe/Berlin")
    assert read.problems == ()
    assert read.listed is not None
    assert read.listed.start_s == start
    assert read.listed.prices_per_kwh == tuple(float(i) for i in range(hours))


def test_a_hole_stays_a_hole_and_is_told() -> None:
    text = "2026-06-01 00:00,0.1\n2026-06-01 01:00,0.2\n2026-06-01 02:00,0.3\n2026-06-01 04:00,0.5\n"
    read = read_prices(text.encode(), "prices.csv")
    assert read.listed is not None
    assert read.listed.prices_per_kwh == (0.1, 0.2, 0.3, None, 0.5)
    assert [p.code for p in read.problems] == ["prices.holes"]


def test_newest_first_is_put_in_order() -> None:
    start = datetime(2026, 6, 1)  # noqa: DTZ001  # a wall clock of no zone, as files have it
    rows = [f"{start + timedelta(hours=i):%Y-%m-%d %H:%M},{i}" for i in range(5)]
    read = read_prices("\n".join(reversed(rows)).encode(), "prices.csv")
    assert read.listed is not None
    assert read.listed.prices_per_kwh == (0.0, 1.0, 2.0, 3.0, 4.0)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("", "prices.no_text"),
        (b"\x00\x01\x02", "prices.no_text"),
        ("hello\nworld\n", "prices.none"),
        ("date,price\n", "prices.none"),
        ("2026-06-01T00:00+02:00,1\n2026-06-01T01:00,1\n", "prices.some_offsets"),
        ("2026-06-01 00:00,1\n2026-06-03 00:00,1\n", "prices.step"),
        ("2026-06-01 00:00,1\n2026-06-01 01:00,1\n2026-06-01 02:07,1\n2026-06-01 03:00,1", "prices.uneven"),
        ("31.02.2026 00:00,1\n31.02.2026 01:00,2\n", "prices.dates"),
        ("0001-01-01 00:00,1\n2026-06-01 00:00,1\n2026-06-01 01:00,1\n2026-06-01 02:00,1", "prices.too_long"),
    ],
)
def test_what_cannot_be_read_is_refused_with_a_reason(text: str | bytes, code: str) -> None:
    assert code in codes(text)
    data = text if isinstance(text, bytes) else text.encode()
    read = read_prices(data, "prices.csv")
    assert read.listed is None
    assert len(sentence(read.problems[0])) > 30


def test_odd_rows_are_told_with_their_number() -> None:
    text = "2026-06-01 00:00,0.1\n2026-06-01 01:00,n/a\n2026-06-01 02:00,0.3\n2026-06-01 03:00,0.3\n"
    read = read_prices(text.encode(), "prices.csv")
    assert [(p.code, p.row) for p in read.problems] == [("prices.row", 2), ("prices.holes", None)]


@pytest.mark.parametrize("minus", ["-", "\u2212"])
def test_a_price_below_zero_by_either_sign(minus: str) -> None:
    text = f"2026-06-01 00:00;0,10\n2026-06-01 01:00;{minus}0,02\n2026-06-01 02:00;+0,03\n"
    found = read_prices(text.encode(), "prices.csv").listed
    assert found is not None
    assert found.prices_per_kwh == (0.10, -0.02, 0.03)


def test_a_file_too_large_is_told_with_its_size() -> None:
    (problem,) = read_prices(b"x" * MOST_BYTES, "prices.csv").problems  # one cell, longer than any
    assert problem.code == "prices.none"
    (problem,) = read_prices(b"x" * (MOST_BYTES + 1_000_000), "prices.csv").problems
    assert f"has {round(MOST_BYTES / 1e6) + 1} MB" in sentence(problem)
