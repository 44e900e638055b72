"""Laws of the comparison and of rounding, whatever the numbers."""

import math
import random

import pytest
from attrs import evolve
from hypothesis import given
from hypothesis import strategies as st

from core import edits
from core.formatting import PLUS_MINUS, rounded, with_interval
from core.quantities import ENERGY
from core.results.compare import compare
from core.study import Study

energies = st.lists(st.lists(st.floats(5.0, 500.0), min_size=1, max_size=5), min_size=1, max_size=5)


def typed(machines: list[list[float]]) -> Study:
    """A study of typed readings: machine i made the parts of list i."""
    study = edits.new_study("s").study
    for i, readings in enumerate(machines):
        study = edits.add_machine(study, f"Machine {i}").study
        for energy_wh in readings:
            study = edits.add_typed(study, study.machines[-1].id, energy_wh, seconds=3600, step_wh=0.01).study
    return study


@given(energies)
def test_means_lie_among_their_runs_and_best_comes_first(machines: list[list[float]]) -> None:
    comparison = compare(typed(machines), {})
    means = [m.energy_wh.value for m in comparison.machines if m.energy_wh is not None]
    assert means == sorted(means)
    for machine in comparison.machines:
        assert machine.energy_wh is not None
        assert machine.parts_per_kwh is not None
        readings = [r.energy_wh for r in machine.runs if r.energy_wh is not None]
        assert min(readings) - 1e-9 <= machine.energy_wh.value <= max(readings) + 1e-9
        assert machine.energy_wh.value * machine.parts_per_kwh.value == pytest.approx(1000)
        assert machine.energy_wh.u95 is not None
        assert machine.energy_wh.u95 > 0


@given(energies, st.randoms(use_true_random=False))
def test_the_order_of_machines_and_readings_is_no_matter(
    machines: list[list[float]], chance: random.Random
) -> None:
    study = typed(machines)
    shuffled = evolve(
        study,
        machines=tuple(chance.sample(study.machines, len(study.machines))),
        typed=tuple(chance.sample(study.typed, len(study.typed))),
    )
    before, after = compare(study, {}), compare(shuffled, {})
    assert after.headline == before.headline
    for a, b in zip(after.machines, before.machines, strict=True):
        assert a.machine_id == b.machine_id
        assert a.energy_wh is not None
        assert b.energy_wh is not None
        assert a.energy_wh.value == pytest.approx(b.energy_wh.value)


@given(energies)
def test_a_difference_is_claimed_only_where_it_is_shown(machines: list[list[float]]) -> None:
    comparison = compare(typed(machines), {})
    claims = " less than " in comparison.headline
    assert claims <= any(pair.shown for pair in comparison.pairs)
    for pair in comparison.pairs:
        assert pair.ratio_low is not None
        assert pair.ratio_high is not None
        assert pair.ratio_low <= pair.ratio <= pair.ratio_high
        if pair.shown:
            # adjusting for several pairs only makes a claim harder
            assert pair.ratio_low > 1 or pair.ratio_high < 1


@given(energies, st.floats(0.1, 10.0))
def test_a_gain_common_to_all_changes_no_ratio(machines: list[list[float]], gain: float) -> None:
    before = compare(typed(machines), {})
    after = compare(typed([[e * gain for e in readings] for readings in machines]), {})
    ratios = {(p.machine_id, p.other_id): p.ratio for p in before.pairs}
    for pair in after.pairs:
        known = ratios.get((pair.machine_id, pair.other_id))
        other = ratios.get((pair.other_id, pair.machine_id))
        assert pair.ratio == pytest.approx(known if known is not None else 1 / (other or math.nan))


@given(st.floats(-1e6, 1e6), st.floats(1e-5, 1e5))
def test_rounding_loses_less_than_the_uncertainty_leaves_open(value: float, u95: float) -> None:
    shown = rounded(value, u95, 1)
    assert shown.u95 is not None
    assert abs(shown.value - value) <= 0.5 * u95 * (1 + 1e-6)
    assert abs(shown.u95 - u95) <= 0.15 * u95


@given(st.floats(-1e6, 1e6), st.floats(1e-5, 1e5))
def test_value_and_interval_have_equally_many_decimals(value: float, u95: float) -> None:
    text, interval = with_interval(value, u95, ENERGY).split(f" {PLUS_MINUS} ")
    assert len(text.partition(".")[2]) == len(interval.partition(".")[2])
