"""What the machines of a study cost: the answer in words and in numbers, from made traces."""

from datetime import datetime
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from core import edits
from core.costs.rates import PriceBand, PricedBy, PriceList
from core.energy.integral import by_power_wh
from core.figures.standby_cost import (
    calendar_figure,
    print_figure,
    print_sentence,
    saving_figure,
    standby_figure,
    starts_figure,
)
from core.found import explain
from core.found.costs import SAVED, explain_cost
from core.results.compare import compare
from core.results.cost_answer import NOTHING, limit_words, saving_sentence
from core.results.cost_tables import hours_table, print_note, print_table
from core.results.cost_values import MachineCost, StandbyCost
from core.results.costs import forget, standby_cost
from core.results.table import readable_table
from core.results.values import Measured
from core.study import Study
from core.traces import Clock, Trace
from tests.core.benches import STANDBY_W, alike, bench, trace

Bench = tuple[Study, dict[str, Trace]]
ZONE = ZoneInfo("Europe/Berlin")
START_S = datetime(2026, 3, 4, 5, tzinfo=ZONE).timestamp()


def long_rest(seed: int, level_w: float = 60.0, hours: float = 9.0) -> Trace:
    """A machine that made four parts and was then left on for hours."""
    made = trace(alike(seed=seed, level_w=level_w), seed=seed)
    rng = np.random.default_rng(seed)
    rest = np.round(STANDBY_W + rng.normal(0, 0.1, round(hours * 1800)), 1)
    power_w = np.concatenate((made.power_w, rest))
    clock = Clock("absolute", START_S, zone="Europe/Berlin")
    return Trace.of(np.arange(power_w.size) * 2.0, power_w, key=f"rest {seed} {level_w} {hours}", clock=clock)


@pytest.fixture(scope="module")
def two() -> Bench:
    study, traces = bench({"Alder": long_rest(1), "Birch": long_rest(2, 80.0)})
    study = edits.set_currency(study, "€").study
    return edits.set_price(study, 0.30).study, traces


def answer(given: Bench) -> StandbyCost:
    return standby_cost(*given, year=2026)


def of(result: StandbyCost, name: str) -> MachineCost:
    return next(m for m in result.machines if m.name == name)


def test_a_year_of_standby(two: Bench) -> None:
    result = answer(two)
    for machine in result.machines:
        assert machine.standby is not None
        assert machine.standby.is_steady
        assert machine.standby.power_w == pytest.approx(STANDBY_W, abs=0.02)
        assert machine.year_kwh is not None
        assert machine.year_kwh.value == pytest.approx(STANDBY_W * 8.76, rel=0.005)
    assert result.total_kwh is not None
    assert result.total_cost is not None
    assert result.total_cost.value == pytest.approx(result.total_kwh.value * 0.30)
    # both were measured with one meter, whose error does not average out
    one = result.machines[0].year_kwh
    assert one is not None
    assert one.u95 is not None
    assert result.total_kwh.u95 == pytest.approx(2 * one.u95, rel=0.02)
    assert result.headline.startswith(
        "Left on all year and doing nothing, the two machines use 88 ± 6 kWh: 26.3 ± 1.8 € at 0.30 €/kWh; "
        "switching off after 30 min idle saves 8"
    )
    assert result.saved_share == pytest.approx(0.86, abs=0.06)


def test_own_hours_and_several_machines_of_a_kind(two: Bench) -> None:
    study, traces = two
    study = edits.set_machine_cost(study, study.machines[0].id, "count", 3).study
    study = edits.set_machine_cost(study, study.machines[0].id, "idle_hours", 1000).study
    study = edits.set_machine_cost(study, study.machines[1].id, "idle_hours", 500).study
    result = answer((study, traces))
    assert [m.year_kwh.value if m.year_kwh else None for m in result.machines] == pytest.approx(
        [3 * STANDBY_W, 0.5 * STANDBY_W], rel=0.005
    )
    assert result.headline.startswith("Doing nothing for the hours you stated, the four machines use")


def test_a_leap_year_is_longer(two: Bench) -> None:
    assert standby_cost(*two, year=2028).year_hours == 8784


def test_with_no_price_there_is_no_cost(two: Bench) -> None:
    study, traces = two
    result = answer((edits.set_price(study, None).study, traces))
    assert result.total_kwh is not None
    assert result.total_cost is None
    assert result.mean_per_kwh is None
    assert "No price is set." in result.conditions
    assert "€" not in result.headline
    assert all(
        m.print_cost is None and m.price.total is None and m.part_cost is None for m in result.machines
    )


def test_a_part_costs_its_energy_at_the_price(two: Bench) -> None:
    study, traces = two
    comparison = compare(study, traces)
    result = answer(two)
    for machine in comparison.machines:
        cost = of(result, machine.name).part_cost
        assert cost is not None
        assert machine.energy_wh is not None
        assert machine.energy_wh.u95 is not None
        assert cost.value == pytest.approx(machine.energy_wh.value / 1000 * 0.30)
        assert cost.u95 == pytest.approx(machine.energy_wh.u95 / 1000 * 0.30)


def test_bands_price_each_run_when_it_was_made(two: Bench) -> None:
    study, traces = two
    study = edits.set_bands(study, (PriceBand("early", 0.10, 0, 6 * 60 + 10),)).study
    study = edits.set_priced_by(study, "bands").study
    study = edits.set_price_zone(study, "Europe/Berlin").study
    result = answer((study, traces))
    log = study.logs[0]
    wanted = []
    turn_s = datetime(2026, 3, 4, 6, 10, tzinfo=ZONE).timestamp() - START_S
    for run in study.runs_of(log.id):
        if run.kind == "run":
            inside = sorted((run.start_s, min(max(turn_s, run.start_s), run.end_s), run.end_s))
            early = by_power_wh(traces[log.id], inside[0], inside[1])
            late = by_power_wh(traces[log.id], inside[1], inside[2])
            wanted.append((0.10 * early + 0.30 * late) / 1000)
    cost = of(result, "Alder").part_cost
    assert cost is not None
    assert len(wanted) == 4
    # the run's energy is told with care at its edges, so it is not the bare integral
    assert cost.value == pytest.approx(np.mean(wanted), rel=5e-3)
    assert result.mean_per_kwh == pytest.approx((0.10 * 370 + 0.30 * 1070) / 1440, rel=1e-3)
    assert "on average" in result.headline
    starts = of(result, "Alder").starts
    assert starts is not None
    assert starts.cheapest[1] < starts.dearest[1]


def test_a_list_that_does_not_reach_the_runs_leaves_them_unpriced(two: Bench) -> None:
    study, traces = two
    listed = PriceList("", "May", START_S + 90 * 86_400, 3600.0, tuple([0.2] * 480))
    result = answer((edits.add_price_list(study, listed).study, traces))
    machine = result.machines[0]
    assert machine.part_cost is None
    assert machine.unpriced_share == 1.0
    assert result.mean_per_kwh == pytest.approx(0.2)
    assert result.total_cost is not None


def test_a_standing_charge_stays_apart(two: Bench) -> None:
    study, traces = two
    before = answer(two)
    result = answer((edits.set_standing_charge(study, 0.50).study, traces))
    assert result.standing_year == pytest.approx(182.5)
    assert result.total_cost == before.total_cost
    assert [m.price for m in result.machines] == [m.price for m in before.machines]
    assert "Standing charge apart: 182.50 € a year." in result.conditions


def test_rests_that_are_too_short_say_nothing_about_switching_off(two: Bench) -> None:
    study, traces = two
    result = answer((edits.set_cost(study, "off_after_min", 700).study, traces))
    assert result.saved_share is None
    assert "no rest in the logs lasts 1400 min, so switching off cannot be judged" in result.headline


def test_only_some_machines_tell_a_saving() -> None:
    given = bench({"Alder": long_rest(3), "Birch": trace(alike(seed=4), seed=4)})
    result = standby_cost(*given, year=2026)
    assert [m.tells_saving_after(30) for m in result.machines] == [True, False]
    # the rests of Birch, 13 min each, are too short for the steady rule as well
    assert result.headline.startswith("Left on all year and doing nothing, Alder uses 43.8 ± 3.0 kWh;")
    assert "No rest of a quarter of an hour, so no year of it: Birch." in result.conditions
    birch = result.machines[1]
    assert birch.standby is not None
    assert birch.standby.way == "lowest level"
    assert birch.year_kwh is None


def test_comparison_and_costs_tell_one_standby_power() -> None:
    study, traces = bench({"Alder": long_rest(3), "Birch": trace(alike(seed=4), seed=4)})
    compared, costs = compare(study, traces), standby_cost(study, traces, year=2026)
    told = {row[0]: str(row[-1]) for row in readable_table(compared).rows}
    for machine in costs.machines:
        own = next(m for m in compared.machines if m.machine_id == machine.machine_id)
        assert machine.standby is not None
        assert own.standby_w == Measured(machine.standby.power_w, machine.standby.u95_w)
        shown = explain_cost(costs, study, machine.machine_id, "standby_mean_w")
        asked = explain(compared, study, traces, machine.machine_id, "standby_w")
        assert shown is not None
        assert asked is not None
        assert (shown.value_text, shown.budget) == (asked.value_text, asked.budget)
    assert told["Alder"] == "5.00 ± 0.34"
    assert told["Birch"].endswith("(lowest)")


def test_no_standby_and_no_logs() -> None:
    short = bench({"Alder": trace(alike(seed=5), seed=5)})
    assert "standby is not known" in standby_cost(*short, year=2026).headline
    empty = edits.new_study("empty").study
    assert standby_cost(empty, {}, year=2026).headline == NOTHING


def test_carbon_dioxide_only_by_the_users_own_factor(two: Bench) -> None:
    study, traces = two
    assert all(m.co2_g is None for m in answer(two).machines)
    result = answer((edits.set_cost(study, "co2_g_per_kwh", 350).study, traces))
    for machine in result.machines:
        assert machine.printed is not None
        assert machine.co2_g == pytest.approx(machine.printed.energy.value * 0.35)


def test_the_print_keeps_warm_up_and_processing_apart(two: Bench) -> None:
    for machine, level_w in zip(answer(two).machines, (60.0, 80.0), strict=True):
        printed = machine.printed
        assert printed is not None
        assert printed.warm_up_s == pytest.approx(180, abs=30)
        assert printed.processing_w == pytest.approx(level_w + 0.3 * 150, rel=0.02)
        assert printed.energy.value == pytest.approx(
            printed.warm_up_wh + printed.processing_w * (36_000 - printed.warm_up_s) / 3600, rel=1e-9
        )


def test_reference_lines_judge_nothing(two: Bench) -> None:
    words = limit_words(answer(two).limits)
    assert "0.50 W standby" in words
    assert "2023/826" in words
    assert "9 May 2025" in words
    for word in ("compl", "fail", "meets", "exceed"):
        assert word not in words.lower()


def test_it_is_all_let_go() -> None:
    forget()


def test_hours_of_printing_leave_less_to_stand_idle(two: Bench) -> None:
    study, traces = two
    for machine in study.machines:
        study = edits.set_machine_cost(study, machine.id, "printing_hours", 1000).study
    result = answer((study, traces))
    assert result.headline.startswith("Left on all year between prints")
    for each in result.machines:
        assert each.idle_hours == 7760
        assert each.printed is not None
        assert each.printing_kwh is not None
        assert each.printing_cost is not None
        # a hundred prints of ten hours
        assert each.printing_kwh.value == pytest.approx(each.printed.energy.value / 10)
        assert each.printing_cost.value == pytest.approx(each.printing_kwh.value * 0.30)


def test_what_switching_off_saves_is_told_in_kilowatt_hours_and_money(two: Bench) -> None:
    result = answer(two)
    alder = of(result, "Alder")
    share = alder.rests.share_after(30)
    assert share is not None
    assert alder.year_kwh is not None
    words = saving_sentence(result)
    assert f"Alder {share * alder.year_kwh.value:.0f} of {alder.year_kwh.value:.0f} kWh" in words
    assert "€" in words
    assert saving_sentence(answer((edits.set_cost(two[0], "off_after_min", 700).study, two[1]))) == ""


def test_tables_have_a_row_a_machine_and_no_column_for_what_nobody_stated(two: Bench) -> None:
    study, traces = two
    result = answer(two)
    hours = hours_table(result)
    assert [row[0] for row in hours.rows] == ["Alder", "Birch"]
    assert "off" not in [column.key for column in hours.columns]
    assert "5.0" in str(hours.rows[0])
    keys = [column.key for column in print_table(result).columns]
    assert keys == ["machine", "warm_up_wh", "processing_w", "print_kwh", "electricity"]
    study = edits.set_cost(study, "failed_percent", 10).study
    study = edits.set_cost(study, "co2_g_per_kwh", 400).study
    study = edits.set_machine_cost(study, study.machines[0].id, "printing_hours", 100).study
    more = answer((study, traces))
    keys = [column.key for column in print_table(more).columns]
    assert keys[4:] == ["electricity", "failed", "price", "printing_kwh", "printing_cost", "print_co2"]
    assert "its source was not named" in print_note(more)
    named = answer((edits.set_co2_source(study, "the supplier's label of 2025").study, traces))
    assert "the supplier's label of 2025" in print_note(named)


def test_a_price_that_holds_more_of_one_machine_than_of_another_says_so(two: Bench) -> None:
    study, traces = two
    for machine, alone in zip(study.machines, (True, False), strict=True):
        study = edits.set_machine_cost(study, machine.id, "price", 600).study
        study = edits.set_machine_cost(study, machine.id, "life_hours", 6000).study
        said = print_note(answer((study, traces)))
        assert ("Purchase is in the price of Alder alone." in said) is alone
        assert "Wear" not in said


@pytest.mark.parametrize("way", ["single", "bands"])
def test_every_number_of_the_page_says_how_it_was_found(two: Bench, way: PricedBy) -> None:
    study, traces = two
    study = edits.set_bands(study, (PriceBand("early", 0.10, 0, 370),)).study
    study = edits.set_priced_by(study, way).study
    study = edits.set_cost(study, "material_g", 100).study
    study = edits.set_cost(study, "material_per_kg", 20).study
    result = answer((study, traces))
    for figure in (standby_figure(result, study), print_figure(result, study)):
        for measure in figure.measures:
            told = explain_cost(result, study, result.machines[0].machine_id, measure.key)
            assert told is not None
            assert told.value_text != "not known"
            assert told.method
    saved = explain_cost(result, study, result.machines[0].machine_id, SAVED)
    assert saved is not None
    assert any("cooling fan" in caution for caution in saved.cautions)
    assert explain_cost(result, study, "nobody", SAVED) is None


def test_figures_hold_the_numbers_of_the_result(two: Bench) -> None:
    study, _ = two
    result = answer(two)
    standby = standby_figure(result, study)
    power = standby.measures[0]
    assert [cell.mark.value for cell in power.cells if cell.mark] == [
        m.standby.power_w for m in result.machines if m.standby
    ]
    assert [line.value for line in power.lines] == [0.5, 0.5, 0.8, 2.0]
    saving = saving_figure(result, study)
    assert saving is not None
    assert [trend.name for trend in saving.trends[1:]] == ["Alder", "Birch"]
    weeks = calendar_figure(result, study)
    assert weeks is not None
    assert [(row.name, row.week) for row in weeks.rows] == [("Alder", "2 Mar"), ("Birch", "2 Mar")]
    assert starts_figure(result, study) is None
    assert calendar_figure(result, study, "nobody") is None
    assert "A print of 10 h takes" in print_sentence(result)
