"""Which bed loses most for its size, how they are fed, and the sentences that say so."""

import re

import pytest
from attrs import evolve

from core import edits
from core.beds.hold_fit import Point
from core.beds.model import BedModel
from core.formatting import NumberLocale
from core.results import bed_answer
from core.results.bed_compared import by_area, pairs_with_first, supplies
from core.results.cooler_beds import plan_of, savings
from core.results.holds import Beds, MachineBed, beds
from core.study import CoolerPlan
from tests.core.held_beds import Bed
from tests.core.hold_studies import held_study, with_areas

STUDY = edits.new_study("s").study


def bed(
    name: str,
    power_w: float,
    *,
    u_w: float = 0.4,
    meter: str = "",
    supply: str = "",
    area: float | None = 5.0,
) -> MachineBed:
    model = BedModel.of([Point(40.0, power_w, u_w, 40.0)], 0.0058)
    return MachineBed(
        machine_id=name,
        name=name,
        slot=0,
        area_dm2=area,
        supply="mains" if supply == "mains" else "low voltage" if supply else None,
        tests=1,
        held=(),
        model=model,
        reference=model.at(40.0),
        meter_ids=frozenset({meter or name}),
        heat_capacity=None,
        floor_w=None,
    )


def of(*machines: MachineBed) -> Beds:
    return Beds(machines, 60.0, 20.0, 0.9)


def test_the_bed_that_loses_most_for_its_size() -> None:
    found = of(bed("Hazel", 40.0), bed("Alder", 60.0), bed("Cedar", 30.0, area=2.0))
    assert [m.name for m in by_area(found)] == ["Cedar", "Alder", "Hazel"]
    said = bed_answer.headline(found)
    assert said.startswith("For its size the bed of Cedar loses most: 15.0 ± ")
    assert "W/dm² held at 60 °C, 88 % more than Hazel (95 % interval" in said


def test_beds_that_are_not_told_apart() -> None:
    found = of(bed("Alder", 51.0, u_w=2.0), bed("Birch", 50.0, u_w=2.0))
    assert bed_answer.headline(found).startswith("No difference shown between the beds of Alder and Birch")
    third = of(*found.machines, bed("Hazel", 30.0))
    said = bed_answer.headline(third)
    assert "more than Hazel" in said
    assert said.endswith("Birch is not told apart from it.")
    assert "most" not in said


def test_one_meter_s_gain_drops_out_of_a_ratio() -> None:
    one, other = bed("Alder", 51.0, u_w=0.01, meter="m"), bed("Birch", 50.0, u_w=0.01, meter="m")
    apart = evolve(other, meter_ids=frozenset({"other"}))
    widths = [pairs_with_first((one, b))[0] for b in (other, apart)]
    assert widths[0].high - widths[0].low < widths[1].high - widths[1].low


def test_more_claims_need_more() -> None:
    pair = pairs_with_first((bed("Alder", 52.0), bed("Birch", 50.0)))[0]
    several = pairs_with_first((bed("Alder", 52.0), *(bed(f"B{i}", 50.0) for i in range(8))))
    assert all(p.p > pair.p for p in several)


def test_mains_against_low_voltage() -> None:
    found = of(bed("Hazel", 44.0, supply="mains"), bed("Alder", 50.0, supply="low"))
    told = supplies(found)
    assert told.efficiency == pytest.approx(0.88)
    assert told.low is not None
    assert told.high is not None
    assert told.low < 0.88 < told.high
    said = bed_answer.supply_sentence(found)
    assert said.startswith("Mains (Hazel) against low voltage (Alder): per area 88 % of the watts")
    assert "2 beds cannot show it" in said


def test_unlike_beds_of_one_group_widen_the_interval() -> None:
    mains = bed("Hazel", 44.0, supply="mains")
    alike = supplies(of(mains, bed("A", 50.0, supply="low"), bed("B", 50.0, supply="low")))
    unlike = supplies(of(mains, bed("A", 40.0, supply="low"), bed("B", 60.0, supply="low")))
    widths = [s.high - s.low for s in (alike, unlike) if s.high is not None and s.low is not None]
    assert widths[1] > 3 * widths[0]


def test_no_efficiency_without_two_measurements() -> None:
    alone = of(bed("Alder", 50.0, supply="low"), bed("Hazel", 44.0, supply="mains", area=None))
    assert supplies(alone).efficiency is None
    assert "one fed from the mains" in bed_answer.supply_sentence(alone)
    assert bed_answer.supply_sentence(of(bed("Alder", 50.0))) == ""


def test_without_areas_watts_are_told() -> None:
    one = bed_answer.headline(of(bed("Alder", 50.0, area=None)))
    assert one.startswith("Held at 60 °C, the bed of Alder takes 50.0 ± ")
    two = bed_answer.headline(of(bed("Alder", 50.0, area=None), bed("Birch", 30.0, area=None)))
    assert "that of Birch 30.0 ± " in two


def test_no_hold_test_says_how_to_make_one() -> None:
    empty = beds(STUDY, {})
    assert bed_answer.headline(empty).startswith(bed_answer.NOTHING)
    assert "for an hour" in bed_answer.conditions(empty, STUDY)


def test_tests_that_are_too_short_are_not_called_missing() -> None:
    short = evolve(bed("Alder", 50.0), held=(), model=None, reference=None)
    assert bed_answer.headline(of(short)).startswith("The hold tests are too short")


def test_a_test_of_unknown_temperature_asks_for_it() -> None:
    study, traces = held_study([("Alder", Bed(), (60.0,))])
    unknown = study
    for run in study.runs:
        unknown = edits.note_temperatures(unknown, run.id, None, None).study
    assert bed_answer.headline(beds(unknown, traces)).startswith(
        "Hold tests were found, but nobody noted at which temperature"
    )
    said = bed_answer.conditions(beds(unknown, traces), unknown)
    assert said.startswith("1 hold test at temperatures that nobody noted; ")
    known = edits.set_bed_c(unknown, 60.0).study
    assert bed_answer.headline(beds(known, traces)).startswith("Held at 60 °C, the bed of Alder takes")


def test_conditions_name_what_is_missing() -> None:
    study, traces = held_study([("Alder", Bed(), (60.0,)), ("Birch", Bed(), (60.0,))], seconds=2400)
    run = study.runs_of(study.logs[1].id)[0]
    study = edits.set_kind(study, run.id, "nothing").study
    said = bed_answer.conditions(beds(study, traces), study)
    assert said.startswith("1 hold test at 60 °C; compared at 60 °C in a room of 20.0 °C; steady: ")
    assert "no hold test: Birch" in said


def test_what_is_saved() -> None:
    known = of(bed("Alder", 50.0))
    found = savings(known, plan_of(CoolerPlan(), known))
    said = bed_answer.saving_sentence(found, "Alder", price_per_kwh=0.3, currency="€")
    saving = found.machines[0]
    numbers = [float(n) for n in re.findall(r"\d+(?:\.\d+)?", said)]
    assert numbers[:3] == [50.0, 60.0, 10.0]
    assert numbers[3] == pytest.approx(saving.saved_wh.value, abs=1)
    assert said.endswith("€.")
    assert "10 h on Alder" in said
    assert "Beyond the held" in bed_answer.saving_note(found, "Alder")
    assert "No warm-up" in bed_answer.saving_note(found, "Alder")
    assert "known once a hold test" in bed_answer.saving_sentence(found, "Rowan")
    same = savings(known, plan_of(CoolerPlan(later_c=60.0), known))
    assert "nothing is saved" in bed_answer.saving_sentence(same, "Alder")
    least = savings(known, plan_of(CoolerPlan(later_c=30.0, least_c=45.0), known))
    assert "stopped at your limit" in bed_answer.saving_note(least, "Alder")


def test_numbers_follow_the_locale() -> None:
    comma = NumberLocale(",", "")
    known = of(bed("Alder", 50.0), bed("Birch", 33.0))
    found = savings(known, plan_of(CoolerPlan(), known))
    for said in (
        bed_answer.headline(known, comma),
        bed_answer.saving_sentence(found, "Alder", comma),
        bed_answer.conditions(known, STUDY, comma),
    ):
        assert not re.search(r"\d\.\d", said)


def test_when_it_was_steady() -> None:
    study, traces = held_study([("Alder", Bed(), (60.0,))], seconds=2400)
    held = beds(study, traces).machines[0].held[0]
    assert re.match(
        r"settled .* after heating began, by \d+ windows of \d min", bed_answer.settled_text(held)
    )
    restless = evolve(held, hold=evolve(held.hold, steady=evolve(held.hold.steady, is_settled=False)))
    assert bed_answer.settled_text(restless).startswith("not settled within")


def test_a_study_s_areas_reach_the_sentence() -> None:
    study, traces = held_study(
        [("Alder", Bed(), (60.0,)), ("Birch", Bed(slope_w_per_k=0.9), (60.0,))], seconds=2400
    )
    study = with_areas(study, (5.0, 5.0))
    assert "W/dm²" in bed_answer.headline(beds(study, traces))
