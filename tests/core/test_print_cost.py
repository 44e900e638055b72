"""The energy and the price of a print, and when in the day to start it."""

from datetime import UTC

import numpy as np
import pytest

from core.costs.money import decimals_of, money, price_per_kwh
from core.costs.print_cost import Course, LongPrint, by_start, long_print, price_of
from core.costs.rates import Costs, MachineCosts, PriceBand, Tariff
from core.costs.tariff import Steps, cost_of, steps_between
from core.formatting import NumberLocale
from core.results.values import Energy, Influence, Measured
from core.traces import Trace

DAY_S = 86_400.0


def course(warm_wh: float, warm_s: float, watts: float, seconds: float, gain: float = 0.01) -> Course:
    whole = warm_wh + watts * (seconds - warm_s) / 3600
    return Course(
        Energy(whole, (Influence("meter gain", whole * gain, "gain:m1"),), "power"), warm_wh, warm_s, seconds
    )


def test_a_longer_print_has_one_warm_up_and_more_processing() -> None:
    one = course(30.0, 300.0, 100.0, 3900.0)
    assert one.processing_w == pytest.approx(100.0)
    assert one.energy_wh(36_000.0) == pytest.approx(30.0 + 100.0 * 35_700 / 3600)
    assert one.energy_wh(3900.0) == pytest.approx(one.energy.energy_wh)
    assert one.energy_wh(150.0) == pytest.approx(15.0)


def test_its_interval_keeps_the_meter_shared_and_the_spread_of_the_runs() -> None:
    alike = long_print([course(30, 300, 100, 3900)] * 4, 36_000.0)
    assert alike is not None
    assert alike.energy.u95 == pytest.approx(1.96 * 0.01 * alike.energy.value, rel=1e-3)
    apart = long_print([course(30, 300, 100 + 5 * i, 3900) for i in range(4)], 36_000.0)
    assert apart is not None
    assert apart.energy.u95 is not None
    assert apart.energy.u95 > 2 * (alike.energy.u95 or 0.0)
    assert (apart.warm_up_wh, apart.warm_up_s, apart.runs) == (30.0, 300.0, 4)


def test_no_run_makes_no_print() -> None:
    assert long_print([], 36_000.0) is None


def test_the_price_holds_only_what_was_stated() -> None:
    bare = price_of(0.40, Costs(), MachineCosts("a1"))
    assert bare.total == 0.40
    assert bare.electricity_share == 1.0
    assert (bare.material, bare.wear, bare.purchase, bare.failed) == (None, None, None, None)
    assert price_of(None, Costs(failed_percent=5.0), MachineCosts("a1")).total is None


def test_wear_and_purchase_are_spread_over_their_hours() -> None:
    costs = Costs(print_hours=10.0, material_g=250.0, material_per_kg=24.0)
    machine = MachineCosts("a1", price=600.0, life_hours=6000.0, wear_price=20.0, wear_hours=400.0)
    price = price_of(0.5, costs, machine)
    assert (price.material, price.wear, price.purchase) == (6.0, 0.5, 1.0)
    assert price.total == 8.0
    assert price.electricity_share == pytest.approx(0.5 / 8.0)


def test_a_print_that_fails_half_the_time_costs_twice() -> None:
    price = price_of(1.0, Costs(failed_percent=50.0), MachineCosts("a1"))
    assert price.total == pytest.approx(2.0)
    assert price.electricity_share == pytest.approx(1.0)


PRINTED = LongPrint(4 * 3600.0, Measured(430.0, None), 50.0, 900.0, 101.333, 4)


def test_the_cheapest_start_is_found_by_trying_every_half_hour_on_a_trace() -> None:
    tariff = Tariff("€", "bands", 0.30, (PriceBand("night", 0.10, 60, 420),), zone="UTC")
    steps = steps_between(tariff, None, UTC, 0.0, 14 * DAY_S)
    found = by_start(PRINTED, steps, [i * DAY_S for i in range(14)])
    assert found is not None
    warm_w = PRINTED.warm_up_wh * 3600 / PRINTED.warm_up_s
    trace = Trace.of([0, 900.0, 4 * 3600.0], [0.0, warm_w, PRINTED.processing_w], "averaged")
    for hour, amount in zip(found.hours.tolist(), found.amounts.tolist(), strict=True):
        start = 3 * DAY_S + hour * 3600
        part = steps_between(tariff, None, UTC, start, start + PRINTED.seconds)
        moved = Steps(part.edges_s - start, part.prices_per_kwh)
        assert amount == pytest.approx(cost_of(trace, moved).amount, rel=1e-9)
    assert 1.0 <= found.cheapest[0] <= 3.0
    assert found.cheapest[1] < 0.5 * found.dearest[1]
    # the mean over all starts is the mean price, whatever the course of the print
    wh = PRINTED.warm_up_wh + PRINTED.processing_w * (PRINTED.seconds - PRINTED.warm_up_s) / 3600
    assert found.amounts.mean() == pytest.approx(wh / 1000 * (steps.mean_per_kwh or 0.0), rel=1e-9)


def test_one_price_has_no_best_time() -> None:
    steps = Steps(np.array([0.0, 7 * DAY_S]), np.array([0.30]))
    assert by_start(PRINTED, steps, [i * DAY_S for i in range(7)]) is None


def test_starts_whose_end_has_no_price_are_not_guessed() -> None:
    steps = Steps(np.array([0.0, 12 * 3600.0, DAY_S]), np.array([0.30, 0.10]))
    assert by_start(PRINTED, steps, [0.0, DAY_S]) is None


@pytest.mark.parametrize(
    ("amount", "currency", "locale", "text"),
    [
        (41.4, "€", NumberLocale(), "41.40 €"),
        (41.4, "€", NumberLocale(","), "41,40 €"),
        (41.4, "$", NumberLocale(money_first=True), "$41.40"),
        (41.4, "CHF", NumberLocale(money_first=True), "CHF 41.40"),
        (1234.5, "zł", NumberLocale(",", " "), "1 234,50 zł"),
        (4120.4, "JPY", NumberLocale(), "4120 JPY"),
        (0.00644, "€", NumberLocale(), "0.0064 €"),
        (-0.02, "£", NumberLocale(money_first=True), "\u2212£0.020"),
        (0.0, "€", NumberLocale(), "0.00 €"),
        (None, "€", NumberLocale(), "\u2013"),
        (5.0, "", NumberLocale(), "5.00"),
    ],
)
def test_money(amount: float | None, currency: str, locale: NumberLocale, text: str) -> None:
    assert money(amount, currency, locale) == text


def test_money_with_its_interval_shows_no_more_than_it_allows() -> None:
    assert money(0.36123, "€", NumberLocale(), 0.0121) == "0.361 ± 0.012 €"
    assert decimals_of(0.00012, "€") == 5
    assert price_per_kwh(0.3, "€", NumberLocale()) == "0.30 €/kWh"
    # as a bill states it
    assert price_per_kwh(0.3175, "€", NumberLocale()) == "0.3175 €/kWh"
    # a mean over hours of several prices
    assert price_per_kwh(0.3175 / 0.9, "€", NumberLocale()) == "0.35 €/kWh"
