from datetime import UTC, datetime

import pytest

from core.energy.clock_ticks import moment, time_ticks
from core.traces import Clock


def unix(*parts):
    return datetime(*parts, tzinfo=UTC).timestamp()


def labels(clock, start_s, end_s, most):
    return [t.label for t in time_ticks(clock, start_s, end_s, most)]


def test_ticks_stand_at_round_times_of_the_wall_clock():
    clock = Clock("local", unix(2026, 3, 2, 8, 7, 13))
    assert labels(clock, 0, 3600, 5) == ["08:15", "08:30", "08:45", "09:00"]


def test_the_date_is_written_where_it_changes():
    clock = Clock("local", unix(2026, 3, 2, 20))
    assert labels(clock, 0, 8 * 3600, 5) == ["20:00", "22:00", "3 Mar", "02:00", "04:00"]


def test_an_offset_is_used_for_absolute_clocks():
    clock = Clock("absolute", unix(2026, 3, 2, 8), offset_s=3600.0)
    assert labels(clock, 0, 7200, 3) == ["09:00", "10:00", "11:00"]


def test_the_hour_left_out_in_spring_gets_no_tick_and_later_ticks_stay_round():
    clock = Clock("absolute", unix(2026, 3, 29, 0), zone="Europe/Berlin")
    assert labels(clock, 0, 4 * 3600 - 1, 8) == [
        "01:00",
        "01:30",
        "03:00",
        "03:30",
        "04:00",
        "04:30",
        "05:00",
        "05:30",
    ]
    assert [t.at_s for t in time_ticks(clock, 0, 4 * 3600 - 1, 8)] == [1800.0 * n for n in range(8)]


def test_a_local_clock_put_forward_keeps_round_ticks():
    clock = Clock("local", unix(2026, 3, 29, 1), shifts=((3600.0, 3600.0),))
    assert labels(clock, 0, 3 * 3600, 4) == ["01:00", "03:00", "04:00", "05:00"]


@pytest.mark.parametrize("span_s", [0.5, 7, 90, 4000, 90_000, 2e6, 4e7, 4e8])
@pytest.mark.parametrize("clock", [Clock("relative"), Clock("local", unix(2025, 11, 5, 7, 3))])
def test_there_are_some_ticks_and_never_too_many(span_s, clock):
    ticks = time_ticks(clock, 3.0, 3.0 + span_s, 6)
    assert 1 <= len(ticks) <= 7
    assert len({t.label for t in ticks}) == len(ticks)
    assert all(3.0 <= t.at_s <= 3.0 + span_s for t in ticks)


def test_a_year_is_counted_in_months():
    clock = Clock("local", unix(2025, 11, 5))
    assert labels(clock, 0, 365 * 86400, 8) == ["2026", "Mar", "May", "Jul", "Sep", "Nov"]


def test_a_moment_in_words():
    assert moment(Clock("local", unix(2026, 3, 2, 8, 7, 13)), 60) == "2 Mar 2026 08:08:13"
    assert moment(Clock("relative"), 3725.2) == "1:02:05"
