"""Simulated studies: what is planted is told of the right machine, and fair tests are not called unfair.

Flagged means: listed as a caution or as unfair, with the machine that it is planted on. The shares asked for
are 95 of 100 flagged and at most 5 of 100 fair tests called unfair; outliers and drifts are a matter of
chance and of few runs, so less is asked of them.
"""

import statistics
from collections import Counter
from functools import cache

import pytest

from core.results.compare import forget
from core.results.values import Comparison, Finding, MachineResult
from tests.core.fair_studies import Bench, Desk, Planted, bench, planted

SEEDS = range(45)
CODES: dict[Planted, str] = {
    "warm start": "fair.warm_start",
    "meter": "fair.meter_beyond",
    "bed": "fair.bed_temperature",
    "outlier": "fair.outlier",
    "drift": "fair.drift",
}


def odd_machine(comparison: Comparison, made: Bench) -> MachineResult:
    return next(m for m in comparison.machines if m.name == f"Machine {made.odd}")


def flagged(comparison: Comparison, made: Bench, what: Planted) -> Finding | None:
    odd = odd_machine(comparison, made).machine_id
    told = (f for f in comparison.fairness if f.problem.code == CODES[what] and f.level != "note")
    return next((f for f in told if odd in f.machine_ids), None)


def over_truth(finding: Finding, before: Comparison, after: Comparison, made: Bench) -> float:
    """What a finding could matter, over what was truly changed by planting it."""
    one, other = (odd_machine(c, made).energy_wh for c in (before, after))
    assert one is not None
    assert other is not None
    assert finding.matters_wh is not None
    return finding.matters_wh / abs(one.value - other.value)


@cache
def tally() -> tuple[Counter[str], dict[Planted, list[float]]]:
    """How many studies of each kind are flagged, how many fair ones called unfair, and how well in Wh."""
    found: Counter[str] = Counter()
    sizes: dict[Planted, list[float]] = {"warm start": [], "bed": []}
    for seed in SEEDS:
        fair, desk = bench(seed), Desk(seed)
        before = desk.comparison(fair)
        found["unfair"] += any(f.level == "unfair" for f in before.fairness)
        for what in CODES:
            made = planted(fair, what, seed)
            after = desk.comparison(made)
            told = flagged(after, made, what)
            found[what] += told is not None
            found[f"{what} before"] += flagged(before, made, what) is not None
            if told is not None and what in sizes:
                sizes[what].append(over_truth(told, before, after, made))
        forget()
    return found, sizes


def test_one_warm_start_is_flagged() -> None:
    assert tally()[0]["warm start"] >= 0.95 * len(SEEDS)


def test_a_meter_that_reads_three_percent_high_is_flagged_by_a_check_on_one_load() -> None:
    assert tally()[0]["meter"] >= 0.95 * len(SEEDS)


def test_a_machine_whose_bed_was_ten_kelvin_cooler_is_flagged() -> None:
    assert tally()[0]["bed"] >= 0.95 * len(SEEDS)


def test_fair_tests_are_hardly_ever_called_unfair() -> None:
    assert tally()[0]["unfair"] <= 0.05 * len(SEEDS)


def test_most_outliers_and_drifts_are_flagged() -> None:
    assert tally()[0]["outlier"] >= 0.7 * len(SEEDS)
    assert tally()[0]["drift"] >= 0.7 * len(SEEDS)


def test_what_is_flagged_was_not_there_before_it_was_planted() -> None:
    for what in CODES:
        assert tally()[0][f"{what} before"] <= 0.05 * len(SEEDS), what


def test_what_could_matter_is_what_was_changed() -> None:
    for what, sizes in tally()[1].items():
        assert statistics.median(sizes) == pytest.approx(1.0, abs=0.1), what
        assert sum(0.75 <= size <= 1.33 for size in sizes) >= 0.8 * len(sizes), what
