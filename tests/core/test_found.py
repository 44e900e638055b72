"""How a number was found, in words that hold its own values."""

import pytest
from attrs import evolve

from core.figures.found import how_found
from core.formatting import NumberLocale
from core.quantities import BED_SHARE, DURATION, ENERGY, MEAN_W, PARTS_PER_KWH, QUANTITIES, Quantity
from core.results.values import Influence
from tests.comparisons import make


def test_a_mean_is_written_out_with_its_runs() -> None:
    _, comparison = make(3, 3, left_out=False)
    machine = comparison.machines[0]
    found = how_found(comparison, machine.machine_id)
    assert found is not None
    assert found.title == f"Energy per part, {machine.name}"
    terms = " + ".join(f"{r.energy_wh:.2f}" for r in machine.runs)
    assert found.steps[0].startswith(f"Mean of 3 runs: ({terms}) / 3 = ")
    assert found.steps[1] == "Runs: run 1, run 2, run 3."


def test_many_runs_are_counted_rather_than_listed() -> None:
    _, comparison = make(2, 20, left_out=False)
    found = how_found(comparison, comparison.machines[0].machine_id)
    assert found is not None
    assert "… 14 more" in found.steps[0]
    assert found.steps[1].endswith("run 6, 14 more.")


def test_the_budget_adds_up_and_names_what_would_help() -> None:
    _, comparison = make(2, 3, left_out=False)
    machine = evolve(
        comparison.machines[0],
        influences=(Influence("meter gain", 0.1, "gain:k"), Influence("repeats", 0.3, df=2)),
    )
    found = how_found(evolve(comparison, machines=(machine,)), machine.machine_id)
    assert found is not None
    assert [bar.name for bar in found.budget] == ["repeats", "meter gain"]
    assert [bar.share for bar in found.budget] == pytest.approx([0.9, 0.1])
    assert found.budget[0].text == "0.300 Wh, 90 %"
    assert found.steps[-1] == "What would narrow it most: more runs of the part."


@pytest.mark.parametrize("quantity", [PARTS_PER_KWH, MEAN_W, DURATION, BED_SHARE])
def test_every_measure_of_a_machine_has_its_formula(quantity: Quantity) -> None:
    _, comparison = make(3, 3)
    machine = comparison.machines[0]
    found = how_found(comparison, machine.machine_id, "", quantity)
    assert found is not None
    assert found.steps[0].count("=") >= 1
    assert "?" not in found.steps[0]


def test_parts_per_kwh_are_of_the_mean_not_the_mean_of_ratios() -> None:
    _, comparison = make(2, 3)
    found = how_found(comparison, comparison.machines[0].machine_id, "", PARTS_PER_KWH)
    assert found is not None
    assert found.steps[0].startswith("1000 Wh / mean energy = 1000 Wh / ")


@pytest.mark.parametrize("quantity", QUANTITIES[:5])
def test_every_measure_of_a_run_is_explained(quantity: Quantity) -> None:
    _, comparison = make(3, 3)
    run = comparison.machines[0].runs[0]
    found = how_found(comparison, run.machine_id, run.run_id, quantity)
    assert found is not None
    assert run.name in found.title
    assert found.steps
    assert bool(found.budget) == (quantity in (ENERGY, PARTS_PER_KWH, MEAN_W))


def test_a_run_that_does_not_count_says_so_first() -> None:
    _, comparison = make(3, 3)
    run = next(r for m in comparison.machines for r in m.runs if not r.included)
    found = how_found(comparison, run.machine_id, run.run_id)
    assert found is not None
    assert found.steps[0] == "Not counted: door was open."


def test_what_cannot_be_seen_says_why() -> None:
    _, comparison = make(5, 3)
    machine = next(m for m in comparison.machines if m.bed_share is None)
    found = how_found(comparison, machine.machine_id, "", BED_SHARE)
    assert found is not None
    assert found.value == "not known"
    assert found.steps == ("The bed's part cannot be seen in these logs.",)


def test_numbers_follow_the_locale() -> None:
    _, comparison = make(2, 3)
    found = how_found(comparison, comparison.machines[0].machine_id, locale=NumberLocale(","))
    assert found is not None
    assert "." not in found.value
    assert "," in found.value


def test_nobody_is_found_for_a_stranger() -> None:
    _, comparison = make(2, 3)
    assert how_found(comparison, "nobody") is None
    assert how_found(comparison, "m0", "nobody") is None
