"""Edits of tariff, price lists and costs, and what they refuse."""

from pathlib import Path

import pytest

from core import edits
from core.costs.rates import Costs, MachineCosts, PriceBand, PriceList
from core.edits import Edit
from core.history import History
from core.store.file import StudyFile
from core.study import Study

NIGHT = PriceBand("  night ", 0.1, 22 * 60, 6 * 60, (6, 0, 0))
LIST = PriceList("", "June", 0.0, 1800.0, (0.1, None, -0.05))


@pytest.fixture
def study() -> Study:
    return edits.add_machine(edits.new_study("s").study, "Alder").study


def test_a_new_study_has_no_price(study: Study) -> None:
    assert study.costs == Costs()
    assert study.costs.tariff.price_per_kwh is None
    assert study.price_lists == ()


def test_tariff(study: Study) -> None:
    study = edits.set_currency(study, " zł ").study
    study = edits.set_price(study, 1.2).study
    study = edits.set_standing_charge(study, 0.4).study
    study = edits.set_price_zone(study, "Europe/Warsaw").study
    study = edits.set_bands(study, (NIGHT,)).study
    study = edits.set_priced_by(study, "bands").study
    tariff = study.costs.tariff
    assert (tariff.currency, tariff.price_per_kwh, tariff.standing_per_day) == ("zł", 1.2, 0.4)
    assert (tariff.priced_by, tariff.zone) == ("bands", "Europe/Warsaw")
    assert (tariff.bands[0].name, tariff.bands[0].weekdays) == ("night", (0, 6))


def test_price_lists(study: Study) -> None:
    study = edits.add_price_list(study, LIST).study
    study = edits.add_price_list(study, LIST).study
    assert [p.id for p in study.price_lists] == ["p1", "p2"]
    assert (study.costs.tariff.priced_by, study.costs.tariff.list_id) == ("list", "p2")
    study = edits.remove_price_list(study, "p1").study
    assert study.costs.tariff.list_id == "p2"
    study = edits.remove_price_list(study, "p2").study
    assert (study.costs.tariff.priced_by, study.costs.tariff.list_id) == ("single", None)


def test_costs_of_a_machine_are_kept_only_where_something_is_stated(study: Study) -> None:
    machine_id = study.machines[0].id
    study = edits.set_machine_cost(study, machine_id, "price", 500).study
    study = edits.set_machine_cost(study, machine_id, "count", 2).study
    assert study.costs.of(machine_id) == MachineCosts(machine_id, count=2, price=500.0)
    study = edits.set_machine_cost(study, machine_id, "price", None).study
    study = edits.set_machine_cost(study, machine_id, "count", 1).study
    assert study.costs.machines == ()


def test_a_field_that_is_typed_in_is_one_step(study: Study) -> None:
    history = History.start(Edit(study, "Start"))
    for price in (0.3, 0.31, 0.312):
        history = history.apply(edits.set_price(history.study, price))
    assert history.undo().study.costs.tariff.price_per_kwh is None


def test_all_of_it_is_saved_and_opened_again(study: Study, tmp_path: Path) -> None:
    study = edits.add_price_list(study, LIST).study
    study = edits.set_bands(study, (NIGHT,)).study
    study = edits.set_cost(study, "material_g", 120).study
    study = edits.set_co2_source(study, "the supplier's letter").study
    study = edits.set_machine_cost(study, study.machines[0].id, "life_hours", 4000).study
    path = tmp_path / "costs.samepart"
    file = StudyFile.create(path, History.start(Edit(study, "Start")))
    assert isinstance(file, StudyFile)
    file.close()
    again = StudyFile.open(path)
    assert isinstance(again, StudyFile)
    with again:
        assert again.history.study == study


@pytest.mark.parametrize("price", [float("nan"), float("inf")])
def test_a_price_is_finite(study: Study, price: float) -> None:
    with pytest.raises(ValueError, match="price_per_kwh"):
        edits.set_price(study, price)


def test_what_makes_no_sense_is_refused(study: Study) -> None:
    machine_id = study.machines[0].id
    with pytest.raises(ValueError, match="no price list"):
        edits.set_priced_by(study, "list")
    with pytest.raises(ValueError, match="no time zone"):
        edits.set_price_zone(study, "Middle/Earth")
    for band in (PriceBand("x", 1, 60, 60), PriceBand("x", 1, 0, 60, ()), PriceBand("x", 1, 0, 2000)):
        with pytest.raises(ValueError, match="a price band"):
            edits.set_bands(study, (band,))
    with pytest.raises(ValueError, match="failed_percent"):
        edits.set_cost(study, "failed_percent", 100)
    with pytest.raises(ValueError, match="print_hours"):
        edits.set_cost(study, "print_hours", None)
    with pytest.raises(ValueError, match="colour"):
        edits.set_cost(study, "colour", 1)
    with pytest.raises(ValueError, match="at least one machine"):
        edits.set_machine_cost(study, machine_id, "count", 0)
    with pytest.raises(ValueError, match="idle_hours"):
        edits.set_machine_cost(study, machine_id, "idle_hours", 9000)
    with pytest.raises(ValueError, match="no machine"):
        edits.set_machine_cost(study, "a9", "price", 1)
    with pytest.raises(ValueError, match="needs prices"):
        edits.add_price_list(study, PriceList("", "none", 0.0, 1800.0, ()))
