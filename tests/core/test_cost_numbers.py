"""Numbers of standby and cost against arithmetic done another way: by hand, by brute force."""

import math
from datetime import UTC, date
from itertools import pairwise

import numpy as np
import pytest

from core.costs.money import decimals_of, money
from core.costs.print_cost import Course, LongPrint, by_start, long_print
from core.costs.rates import PriceBand, Tariff
from core.costs.standby import LONGEST_S, standby_between
from core.costs.switch_off import SHORTEST_REST_S, Rests, rests_between
from core.costs.tariff import Steps, cost_of, energies_wh, steps_between
from core.costs.weeks import weeks
from core.formatting import NumberLocale
from core.results.values import Energy, Measured, StateSpan
from core.study import Meter
from core.traces import Clock, Trace
from core.uncertainty import coverage_factor

DAY_S = 86_400.0
POINT = NumberLocale()


def idle(watts: np.ndarray, step_s: float = 5.0) -> Trace:
    return Trace.of(np.arange(watts.size) * step_s, watts, resolution_w=0.1)


@pytest.mark.parametrize(("gain_percent", "offset_w"), [(2.0, 0.0), (0.0, 0.4), (3.0, 0.4)])
def test_standby_that_never_changes_is_unsure_by_its_meter_alone(
    gain_percent: float, offset_w: float
) -> None:
    """Rectangular limits of gain and offset, a / sqrt(3) each (JCGM 100:2008, 4.3.7), added as squares."""
    found = standby_between(
        idle(np.full(1440, 40.0)), 0.0, 7195.0, Meter("m", "Meter", gain_percent, offset_w)
    )
    assert found is not None
    by_hand = math.sqrt((40.0 * gain_percent / 100) ** 2 / 3 + offset_w**2 / 3)
    assert found.by_meter_w == pytest.approx(by_hand, rel=1e-12)
    assert found.u95_w == pytest.approx(coverage_factor(math.inf) * by_hand, rel=0.02)


def test_standby_that_does_not_settle_is_unsure_by_its_windows() -> None:
    """A quarter of what lies between the extremes, with the meter's part; freedom by Welch-Satterthwaite."""
    end_s = 1439 * 5.0
    found = standby_between(idle(np.linspace(3.0, 9.0, 1440)), 0.0, end_s, Meter("m", "Meter", 1.0, 0.3))
    assert found is not None
    assert not found.is_steady
    assert found.seconds == pytest.approx(end_s)
    own_w = (max(found.windows_w) - min(found.windows_w)) / 4
    assert (found.lowest_w, found.highest_w) == (min(found.windows_w), max(found.windows_w))
    by_meter_w = math.hypot(0.01 * found.power_w, 0.3) / math.sqrt(3)
    u_w = math.hypot(own_w, by_meter_w)
    factors = found.u95_w / u_w
    # with the fewest and with endless degrees of freedom
    assert coverage_factor(math.inf) <= factors <= coverage_factor(1.0 * (u_w / own_w) ** 4) * (1 + 1e-12)


def test_a_meter_s_part_makes_the_factor_smaller() -> None:
    """The surer the windows against the meter, the more freedom the sum has, until the factor is 1.96."""
    watts = np.linspace(3.0, 9.0, 1440)
    factors = []
    for offset_w in (0.0, 3.0, 30.0):
        found = standby_between(idle(watts), 0.0, 7195.0, Meter("m", "Meter", 0.0, offset_w))
        assert found is not None
        own_w = (found.highest_w - found.lowest_w) / 4
        factors.append(found.u95_w / math.hypot(own_w, found.by_meter_w))
    assert factors[0] > factors[1] > factors[2]
    assert factors[2] == pytest.approx(1.96, abs=0.01)


def test_of_a_long_rest_only_its_last_day_is_looked_at() -> None:
    step_s = 60.0
    rows = round(2 * LONGEST_S / step_s)
    watts = np.where(np.arange(rows) < rows // 3, 20.0, 4.0)
    found = standby_between(idle(watts, step_s), 0.0, (rows - 1) * step_s, Meter("m", "Meter"))
    assert found is not None
    assert found.power_w == pytest.approx(4.0)
    assert found.seconds <= LONGEST_S


PRINTED = LongPrint(4 * 3600.0, Measured(430.0, None), 50.0, 900.0, 101.333, 4)
NIGHT = Tariff("€", "bands", 0.30, (PriceBand("night", 0.10, 60, 420),), zone="UTC")


def brute_force(printed: LongPrint, steps: Steps, start_s: float) -> float | None:
    """Cost of a print, second by second; None where a second has no price."""
    seconds = np.arange(start_s + 0.5, start_s + printed.seconds, 1.0)
    places = np.searchsorted(steps.edges_s, seconds, "right") - 1
    if places.min() < 0 or places.max() >= steps.prices_per_kwh.size:
        return None
    prices = steps.prices_per_kwh[places]
    warm_w = printed.warm_up_wh * 3600 / printed.warm_up_s if printed.warm_up_s else 0.0
    watts = np.where(seconds - start_s < printed.warm_up_s, warm_w, printed.processing_w)
    return None if np.isnan(prices).any() else float((prices * watts).sum() / 3.6e6)


@pytest.mark.parametrize("warm_up_s", [0.0, 1.0, 900.0])
def test_starts_against_second_by_second(warm_up_s: float) -> None:
    """Starts whose print meets an hour with no price are left out of the mean of their time."""
    printed = LongPrint(4 * 3600.0, Measured(430.0, None), 50.0 if warm_up_s else 0.0, warm_up_s, 101.0, 4)
    whole = steps_between(NIGHT, None, UTC, 0.0, 4 * DAY_S)
    edges = np.concatenate((whole.edges_s, [DAY_S + 5 * 3600.0, DAY_S + 6 * 3600.0]))
    edges = np.unique(edges)
    middle = (edges[:-1] + edges[1:]) / 2
    prices = whole.prices_per_kwh[np.searchsorted(whole.edges_s, middle, "right") - 1].copy()
    prices[(middle > DAY_S + 5 * 3600.0) & (middle < DAY_S + 6 * 3600.0)] = np.nan
    steps = Steps(edges, prices)
    midnights = [i * DAY_S for i in range(5)]
    found = by_start(printed, steps, midnights)
    assert found is not None
    assert found.hours[0] == 0.0
    assert found.hours.size == 48
    for hour, amount in zip(found.hours.tolist()[::5], found.amounts.tolist()[::5], strict=True):
        tried = [brute_force(printed, steps, at + hour * 3600) for at in midnights[:-1]]
        known = [cost for cost in tried if cost is not None]
        assert amount == pytest.approx(sum(known) / len(known), rel=1e-6)


def test_a_print_that_ends_with_the_prices_is_known_to_its_end() -> None:
    steps = Steps(np.array([0.0, 12 * 3600.0, DAY_S, 28 * 3600.0 - 1800.0]), np.array([0.3, 0.1, 0.3]))
    found = by_start(PRINTED, steps, [0.0, DAY_S])
    assert found is not None
    assert found.amounts[-1] == pytest.approx(brute_force(PRINTED, steps, 23.5 * 3600))
    shorter = Steps(steps.edges_s - np.array([0.0, 0.0, 0.0, 60.0]), steps.prices_per_kwh)
    assert by_start(PRINTED, shorter, [0.0, DAY_S]) is None


def test_a_course_with_no_warm_up_goes_by_its_watts_alone() -> None:
    flat = Course(Energy(100.0, (), "power"), 0.0, 0.0, 3600.0)
    assert flat.processing_w == 100.0
    assert flat.energy_wh(0.0) == 0.0
    assert flat.energy_wh(7200.0) == 200.0
    only_warm = Course(Energy(30.0, (), "power"), 30.0, 300.0, 300.0)
    assert only_warm.processing_w == 0.0
    assert only_warm.energy_wh(300.0) == 30.0
    assert long_print([only_warm], 3600.0) is None


@pytest.mark.parametrize("kind", ["sampled", "averaged", "on_change"])
def test_energy_between_edges_is_that_of_a_fine_sum(kind: str) -> None:
    time_s = np.array([0.0, 10.0, 25.0, 60.0])
    power_w = np.array([0.0, 100.0, 40.0, 200.0])
    trace = Trace.of(time_s, power_w, kind)  # type: ignore[arg-type]  # one of the three
    edges_s = np.array([0.0, 4.0, 10.0, 12.0, 30.0, 60.0])
    fine_s = np.arange(0.0, 60.0, 0.001) + 0.0005
    if kind == "sampled":
        watts = np.interp(fine_s, time_s, power_w)
    elif kind == "averaged":
        watts = power_w[np.searchsorted(time_s, fine_s)]
    else:
        watts = power_w[np.searchsorted(time_s, fine_s, "right") - 1]
    by_sum = [watts[(fine_s >= a) & (fine_s < b)].sum() * 0.001 / 3600 for a, b in pairwise(edges_s)]
    assert energies_wh(trace, edges_s) == pytest.approx(by_sum, rel=1e-4)


def test_energy_of_no_trace_to_speak_of_is_none_for_each_step() -> None:
    for rows in ([], [5.0]):
        trace = Trace.of(np.arange(len(rows), dtype=float), rows)
        assert energies_wh(trace, np.array([0.0, 1.0, 2.0])).tolist() == [0.0, 0.0]
        assert energies_wh(trace, np.array([])).tolist() == []


def test_cost_at_one_price_is_energy_times_price() -> None:
    trace = Trace.of([0.0, 3600.0], [500.0, 500.0])
    assert cost_of(trace, Steps(np.array([0.0, 3600.0]), np.array([0.4]))).amount == pytest.approx(0.2)


def test_rests_lie_between_uses_and_tell_what_warming_again_costs() -> None:
    short = SHORTEST_REST_S
    uses = [(1000.0 + short, 2000.0 + short, 3.0), (0.0, 1000.0, 8.0), (2000.0 + 1.5 * short, 9000.0, None)]
    rests = rests_between(uses, 9000.0 + 2 * short)
    assert [(r.start_s, r.end_s, r.again_wh) for r in rests] == [
        (1000.0, 1000.0 + short, 5.0),
        (9000.0, 9000.0 + 2 * short, 0.0),
    ]
    assert rests_between([], short) != ()
    assert rests_between([], short / 2) == ()


def test_a_share_of_nothing_is_not_told() -> None:
    assert Rests().share_after(30.0) is None
    saved = Rests(idle_wh=200.0, minutes=np.array([10.0, 20.0]), saved_wh=np.array([50.0, 30.0]))
    assert saved.share_after(15.0) == pytest.approx(0.2)


def test_a_week_is_cut_at_monday_and_moved_by_the_shifts_of_a_local_clock() -> None:
    # Sunday 21 June 2026, 22:00 on the wall; the wall clock is set forward by an hour after 30 minutes
    start_s = 1_782_079_200.0
    clock = Clock("local", start_s, shifts=((1800.0, 3600.0),))
    found = weeks(clock, [StateSpan("standby", 0.0, 1800.0), StateSpan("processing", 1800.0, 7200.0)])
    assert [week.monday for week in found] == [date(2026, 6, 15), date(2026, 6, 22)]
    told = [[(b.state, b.start_h, b.end_h) for b in week.blocks] for week in found]
    assert told == [
        [("standby", 166.0, 166.5), ("processing", 167.5, 168.0)],
        [("processing", 0.0, 1.0)],
    ]


@pytest.mark.parametrize("clock", [Clock("relative"), Clock("relative", 5.0), Clock("local", None)])
def test_a_log_of_elapsed_time_has_no_weeks(clock: Clock) -> None:
    assert weeks(clock, [StateSpan("standby", 0.0, 1800.0)]) == ()


def test_no_spans_make_no_weeks() -> None:
    assert weeks(Clock("local", 0.0), []) == ()


@pytest.mark.parametrize(
    ("amount", "currency", "decimals"),
    [
        (10.0, "JPY", 0), (9.99, "JPY", 1), (0.5, "JPY", 2), (10.0, "€", 2), (0.0, "€", 2), (0.0, "JPY", 0),
        (math.inf, "€", 2), (-41.4, "€", 2), (0.0064, "€", 4), (-0.0064, "€", 4),
    ],
)  # fmt: skip
def test_as_many_decimals_as_a_price_needs(amount: float, currency: str, decimals: int) -> None:
    assert decimals_of(amount, currency) == decimals


@pytest.mark.parametrize(
    ("text", "amount", "more"),
    [
        ("0.00 €", -0.0, {}),
        ("0.00 €", 0.0, {"u95": 0.0}),
        ("−1.50 €", -1.5, {}),
        ("−0.361 ± 0.005 €", -0.3612, {"u95": 0.0046}),
        ("2 €", 1.5, {"decimals": 0}),
        ("0.0 €", -0.01, {"decimals": 1}),
        ("–", None, {}),
    ],
)
def test_an_amount_in_words(text: str, amount: float | None, more: dict[str, float]) -> None:
    assert money(amount, "€", POINT, **more) == text  # type: ignore[arg-type]  # numbers for the options


def test_an_interval_follows_the_reader_s_signs() -> None:
    comma = NumberLocale(decimal=",")
    assert money(0.3612, "€", comma, 0.0046) == "0,361 ± 0,005 €"
