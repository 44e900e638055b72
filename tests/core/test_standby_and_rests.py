"""Standby by the steady rule, hours in states, the calendar, and what switching off would have saved."""

from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from core.activity import Activity, Stretch
from core.costs.standby import SHORTEST_S, hours_in_states, standby, standby_between
from core.costs.switch_off import MINUTES, Rest, rests_between, savings, together
from core.costs.weeks import weeks
from core.results.runs import seen
from core.results.standby import best_standby
from core.results.values import StateSpan
from core.study import Meter
from core.traces import Clock, Trace

METER = Meter("m1", "Meter")


def idle(watts: np.ndarray, step_s: float = 5.0) -> Trace:
    return Trace.of(np.arange(watts.size) * step_s, watts, resolution_w=0.1)


def activity(standby_w: float | None, *stretches: Stretch) -> Activity:
    return Activity(standby_w, standby_w, 20.0, 40.0, 0.1, stretches)


def noisy(watts: float, hours: float, seed: int = 1) -> np.ndarray:
    rng = np.random.default_rng(seed)
    return np.round(watts + 0.2 * rng.standard_normal(round(hours * 720)), 1)


def test_steady_watts_are_the_mean_not_the_lowest_level() -> None:
    # a display that lights up for 20 s in each minute: the mean is what a year of it costs
    watts = np.where(np.arange(1440) % 12 < 4, 7.0, 4.0)
    found = standby(idle(watts), activity(4.0), METER)
    assert found is not None
    assert found.is_steady
    assert found.power_w == pytest.approx(5.0, abs=0.05)
    # +-0.3 W and +-1 %, rectangular, are the least that is unsure
    least = 1.96 * np.hypot(0.3, 0.05) / np.sqrt(3)
    assert least * 0.99 <= found.u95_w < 2 * least


def test_a_short_stretch_gives_the_lowest_level_and_no_interval() -> None:
    trace = idle(noisy(4.0, SHORTEST_S / 3600 * 0.9))
    found = standby(trace, activity(3.7), METER)
    assert found is not None
    assert (found.power_w, found.u95_w, found.way) == (3.7, None, "lowest level")
    assert standby(trace, activity(None), METER) is None


def test_of_several_logs_a_steady_rest_counts_before_any_other() -> None:
    steady = seen(idle(noisy(4.0, 0.5)), activity(3.7))
    climbing = seen(idle(np.linspace(3.0, 9.0, 1440)), activity(3.0))
    short = seen(idle(noisy(4.5, 0.1)), activity(4.2))
    ways = [(short, METER), (None, METER), (climbing, METER), (steady, METER)]
    for many, way in ((4, "steady rest"), (3, "unsteady rest"), (1, "lowest level")):
        best = best_standby(ways[:many])
        assert best is not None
        assert (best[0].way, best[1]) == (way, many - 1)
    assert best_standby([(None, METER)]) is None


def test_fans_that_run_on_are_passed_over() -> None:
    watts = np.concatenate((noisy(9.0, 0.15), noisy(4.0, 1.0)))
    found = standby_between(idle(watts), 0.0, watts.size * 5.0 - 5.0, METER)
    assert found is not None
    assert found.is_steady
    assert found.power_w == pytest.approx(4.0, abs=0.05)


def test_watts_that_climb_are_told_as_not_steady() -> None:
    watts = np.linspace(3.0, 9.0, 1440)
    found = standby_between(idle(watts), 0.0, 1439 * 5.0, METER)
    assert found is not None
    assert not found.is_steady
    assert found.power_w == pytest.approx(6.0, abs=0.05)
    assert found.u95_w > 2.0


def test_of_several_rests_the_longest_steady_one_counts() -> None:
    watts = np.concatenate((noisy(6.0, 0.5), np.full(720, 100.0), noisy(4.0, 2.0)))
    trace = idle(watts)
    found = standby(trace, activity(4.0, Stretch(1800.0, 5400.0)), METER)
    assert found is not None
    assert found.power_w == pytest.approx(4.0, abs=0.05)


def test_hours_add_up_to_the_log() -> None:
    spans = [StateSpan("standby", 0, 1800), StateSpan("processing", 1800, 9000), StateSpan("off", 9000, 9900)]
    hours = hours_in_states(spans)
    assert (hours["standby"], hours["processing"], hours["off"], hours["cooling"]) == (0.5, 2.0, 0.25, 0.0)
    assert sum(hours.values()) == 9900 / 3600


class TestWeeks:
    def test_a_span_over_sunday_midnight_is_in_two_weeks(self) -> None:
        # 2026-06-21 is a Sunday
        start = datetime(2026, 6, 21, 22, tzinfo=UTC).timestamp()
        found = weeks(Clock("local", start), [StateSpan("standby", 0, 4 * 3600)])
        assert [week.monday for week in found] == [date(2026, 6, 15), date(2026, 6, 22)]
        assert [(b.start_h, b.end_h) for week in found for b in week.blocks] == [(166.0, 168.0), (0.0, 2.0)]

    @pytest.mark.parametrize(("day", "wall"), [("2026-10-25", [(144.0, 146.0), (145.0, 150.0)])])
    def test_an_hour_that_comes_twice_lies_over_itself(
        self, day: str, wall: list[tuple[float, float]]
    ) -> None:
        zone = ZoneInfo("Europe/London")
        start = datetime.fromisoformat(day).replace(tzinfo=zone).timestamp()
        found = weeks(Clock("absolute", start, zone="Europe/London"), [StateSpan("off", 0, 7 * 3600)], zone)
        assert [(b.start_h, b.end_h) for b in found[0].blocks] == wall

    def test_an_hour_that_is_left_out_is_a_hole(self) -> None:
        zone = ZoneInfo("Europe/London")
        start = datetime(2026, 3, 29, tzinfo=zone).timestamp()
        found = weeks(Clock("absolute", start), [StateSpan("off", 0, 4 * 3600)], zone)
        assert [(b.start_h, b.end_h) for b in found[0].blocks] == [(144.0, 145.0), (146.0, 149.0)]

    def test_elapsed_time_has_no_calendar(self) -> None:
        assert weeks(Clock("relative"), [StateSpan("off", 0, 3600)]) == ()


class TestSwitchingOff:
    trace = idle(np.full(7201, 6.0))  # ten hours at 6 W

    def test_saving_is_what_is_drawn_after_so_many_minutes(self) -> None:
        found = savings(self.trace, [Rest(0.0, 7200.0), Rest(10_000.0, 13_600.0)])
        assert found.idle_wh == pytest.approx(18.0)
        # after 30 min: 90 of 120 minutes and 30 of 60
        assert found.saved_after_wh(30) == pytest.approx(6.0 * (1.5 + 0.5))
        assert found.share_after(60) == pytest.approx(6.0 / 18.0)
        assert found.saved_after_wh(720) == 0.0
        assert (found.count, found.longest_s) == (2, 7200.0)

    def test_warming_up_again_is_taken_off_once_for_each_rest_that_is_long_enough(self) -> None:
        found = savings(self.trace, [Rest(0.0, 7200.0, 5.0), Rest(10_000.0, 11_000.0, 5.0)], (0, 30, 110))
        assert found.saved_after_wh(30) == pytest.approx(9.0 - 5.0)
        assert found.saved_after_wh(110) == pytest.approx(1.0 - 5.0)

    def test_a_warm_start_is_charged_what_its_warm_up_lacks(self) -> None:
        uses = [(1000.0, 3000.0, 30.0), (3600.0, 5000.0, 12.0), (5030.0, 6000.0, None)]
        rests = rests_between(uses, 36_000.0)
        # the third use began within the minute of a change of parts
        assert [(r.start_s, r.end_s, r.again_wh) for r in rests] == [
            (0.0, 1000.0, 0.0),
            (3000.0, 3600.0, 18.0),
            (6000.0, 36_000.0, 0.0),
        ]

    def test_logs_are_put_together(self) -> None:
        one = savings(self.trace, [Rest(0.0, 7200.0)])
        both = together([one, one])
        assert both.idle_wh == pytest.approx(2 * one.idle_wh)
        assert both.share_after(45) == pytest.approx(one.share_after(45) or 0.0)
        assert together([]).share_after(30) is None

    def test_the_saving_never_grows_with_the_wait_where_nothing_is_charged(self) -> None:
        rests = [Rest(0.0, 3000.0), Rest(5000.0, 30_000.0), Rest(31_000.0, 31_100.0)]
        saved = savings(self.trace, rests).saved_wh
        assert saved.size == len(MINUTES)
        assert (np.diff(saved) <= 1e-12).all()
