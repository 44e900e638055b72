"""Time against RFC 3339, the time-zone database and the serials of spreadsheets."""

import io
from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from openpyxl import Workbook
from openpyxl.utils.datetime import CALENDAR_MAC_1904, CALENDAR_WINDOWS_1900

from core.logs import read_bytes
from core.logs.reading import Reading
from core.study import Choices
from core.traces import Clock


def read(stamps: Sequence[str], zone: str | None = None) -> Reading:
    """A small log with these stamps."""
    lines = ["time,power_w", *(f"{stamp},{10 + n % 3}.5" for n, stamp in enumerate(stamps))]
    (reading,) = read_bytes("\n".join(lines).encode(), "stamps.csv", Choices(zone=zone)).readings
    return reading


def start_of(stamps: Sequence[str]) -> float:
    trace = read(stamps).trace
    assert trace is not None
    assert trace.clock.start_s is not None
    return trace.clock.start_s


@pytest.mark.parametrize(
    ("zone", "hours_of_days"),
    [
        (
            "Europe/London",
            {date(2026, 3, 29): 23, date(2026, 10, 25): 25, date(2027, 3, 28): 23, date(2027, 10, 31): 25},
        ),
        ("Europe/Berlin", {date(2026, 3, 29): 23, date(2026, 10, 25): 25}),
        (
            "America/New_York",
            {date(2026, 3, 8): 23, date(2026, 11, 1): 25, date(2027, 3, 14): 23, date(2027, 11, 7): 25},
        ),
        (
            "Australia/Lord_Howe",
            {
                date(2026, 4, 5): 24.5,
                date(2026, 10, 4): 23.5,
                date(2027, 4, 4): 24.5,
                date(2027, 10, 3): 23.5,
            },
        ),
        ("Asia/Kolkata", {date(2026, 3, 29): 24, date(2026, 10, 25): 24}),
    ],
)
def test_hours_of_a_local_day(zone: str, hours_of_days: dict[date, float]) -> None:
    # IANA time-zone database: the clock that writes our stamps counts the hours of each day right
    for day, hours in hours_of_days.items():
        midnight = datetime(day.year, day.month, day.day, tzinfo=ZoneInfo(zone))
        clock = Clock("absolute", midnight.timestamp(), zone=zone)
        next_day = day + timedelta(days=1)
        assert clock.iso(0.0) == midnight.isoformat()
        assert (clock.iso(hours * 3600) or "").startswith(f"{next_day.isoformat()}T00:00:00")
        assert (clock.iso(hours * 3600 - 1) or "").startswith(f"{day.isoformat()}T23:59:59")


def test_the_repeated_hour() -> None:
    # IANA time-zone database: 2026-10-25 01:30 in London happens twice, 3600 s apart
    first = datetime(2026, 10, 25, 0, 30, tzinfo=UTC).timestamp()
    clock = Clock("absolute", first, zone="Europe/London")
    assert clock.iso(0) == "2026-10-25T01:30:00+01:00"
    assert clock.iso(3600) == "2026-10-25T01:30:00+00:00"


@pytest.mark.parametrize(
    ("stamps", "unix_s"),
    [
        (tuple(f"1985-04-12T23:20:{50 + k}.52Z" for k in range(6)), 482196050.52),
        (tuple(f"1996-12-19T16:39:{57 - k:02}-08:00" for k in (2, 1, 0)), 851042395.0),
        (tuple(f"1996-12-20T00:39:{57 - k:02}Z" for k in (2, 1, 0)), 851042395.0),
        (tuple(f"1937-01-01T12:00:{27 + k}.87+00:20" for k in range(6)), -1041337172.13),
        # RFC 3339, 5.6, note (from memory): a space may stand for the T
        (tuple(f"1985-04-12 23:20:{50 + k}.52Z" for k in range(6)), 482196050.52),
    ],
)
def test_rfc_3339(stamps: tuple[str, ...], unix_s: float) -> None:
    # RFC 3339, 5.8 (strings and instants read in a public test of these examples)
    assert start_of(stamps) == pytest.approx(unix_s, abs=1e-6)


def test_a_leap_second_is_a_refused_row() -> None:
    # RFC 3339, 5.8 (from memory): a lawful stamp that the calendar of this program does not have
    reading = read([f"1990-12-31T23:59:{s}Z" for s in (57, 58, 59, 60)] + ["1991-01-01T00:00:00Z"] * 1)
    assert reading.rows_refused == 1
    assert "23:59:60" in reading.refused[0].text


SERIALS = [
    (date(2011, 7, 5), 40729, 39267),
    (date(1998, 7, 5), 35981, 34519),
]


@pytest.mark.parametrize(("day", "of_1900", "of_1904"), SERIALS)
def test_serials_of_both_date_systems(day: date, of_1900: int, of_1904: int) -> None:
    # copies of two support articles of a spreadsheet's maker; the systems are always 1462 days apart
    midnight_s = datetime(day.year, day.month, day.day, tzinfo=UTC).timestamp()
    assert of_1900 - of_1904 == 1462
    assert start_of([f"{of_1900 + k / 86400:.10f}" for k in range(40)]) == pytest.approx(midnight_s, abs=1e-3)


def test_a_serial_with_a_time_of_day() -> None:
    # computed afresh: 2026-06-15 14:30:15; one second is 1.1574e-5 day
    wanted = datetime(2026, 6, 15, 14, 30, 15, tzinfo=UTC).timestamp()
    stamps = [f"{46188.604340277778 + k / 86400:.12f}" for k in range(40)]
    assert start_of(stamps) == pytest.approx(wanted, abs=1e-3)


@pytest.mark.parametrize(
    ("first", "is_1904", "wanted"),
    [
        # copies of two support articles of a spreadsheet's maker
        *((of_1900, False, day) for day, of_1900, _ in SERIALS),
        *((of_1904, True, day) for day, _, of_1904 in SERIALS),
        # computed afresh: 2026-06-15 14:30:15 in the second system
        (44726.6043402778, True, datetime(2026, 6, 15, 14, 30, 15, tzinfo=UTC)),
    ],
)
def test_serials_in_a_workbook(first: float, is_1904: bool, wanted: date) -> None:
    book = Workbook()
    book.epoch = CALENDAR_MAC_1904 if is_1904 else CALENDAR_WINDOWS_1900
    sheet = book.active
    sheet.append(["time", "power [W]"])
    for k in range(40):
        sheet.append([first + k / 86400, 10.5 + k % 3])
    stored = io.BytesIO()
    book.save(stored)
    (reading,) = read_bytes(stored.getvalue(), "log.xlsx").readings
    assert reading.trace is not None
    told = reading.trace.clock.iso(0.0)
    assert told == (
        wanted.strftime("%Y-%m-%dT%H:%M:%S") if isinstance(wanted, datetime) else f"{wanted}T00:00:00"
    )


def test_the_repeated_hour_in_a_log() -> None:
    # IANA time-zone database: a log by the clock of the wall goes through 01:30 twice, and on
    stamps = [f"2026-10-25 0{h}:{m:02}:00" for h in (0, 1, 1, 2) for m in range(60)]
    trace = read(stamps, "Europe/London").trace
    assert trace is not None
    assert trace.time_s.tolist() == [60.0 * k for k in range(240)]


def test_five_decimals_of_a_day_lose_seconds() -> None:
    # one second is 1.1574e-5 day: stamps of five decimals step by 0.864 s or twice that, but no row is lost,
    # and from end to end they are good to one such step
    reading = read([f"{46188.60434 + k / 86400:.5f}" for k in range(400)])
    assert reading.trace is not None
    assert reading.rows_read == 400
    assert set(np.round(np.diff(reading.trace.time_s), 3)) == {0.864, 1.728}
    assert reading.trace.end_s == pytest.approx(399.0, abs=0.864)
