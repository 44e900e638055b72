"""How many runs a difference takes: against simulations of the tests that judge it, and at the ends."""

import math

import numpy as np
import pytest

from core import edits
from core.plan.power import (
    Spread,
    floor,
    power,
    runs_for_any,
    runs_needed,
    smallest_shown,
    spread_interval,
    student_power,
)
from core.plan.scatter import scatter
from core.results.compare import compare, forget
from core.results.values import Energy, Influence
from core.stats import ALPHA, POWER, range_beyond
from core.study import Study

GAIN_U = 0.01 / math.sqrt(3)


@pytest.mark.parametrize(
    ("difference", "first", "other", "runs", "other_runs"),
    [(4.0, 1, 1, 2, 2), (3.0, 1, 1, 3, 3), (3.0, 1, 2, 3, 5), (1.2, 1, 0.3, 6, 6), (3.0, 1, 1, 2, 6)],
)
def test_the_chance_is_that_of_welch_s_test(
    difference: float, first: float, other: float, runs: int, other_runs: int
) -> None:
    from scipy.stats import ttest_ind

    rng = np.random.default_rng(5)
    one = rng.normal(0, first, (20_000, runs))
    two = rng.normal(difference, other, (20_000, other_runs))
    shown = (ttest_ind(one, two, axis=1, equal_var=False).pvalue < ALPHA).mean()
    # three standard deviations of the simulation
    assert power(difference, Spread(first, other), runs, other_runs) == pytest.approx(shown, abs=0.0106)


def test_the_chance_is_that_of_games_and_howell_s_test() -> None:
    rng = np.random.default_rng(6)
    spread, runs, groups = Spread(1.0, 2.0, groups=5, pairs=1), 5, 5
    one, two = rng.normal(0, 1, (1500, runs)), rng.normal(5, 2, (1500, runs))
    a, b = one.var(axis=1, ddof=1) / runs, two.var(axis=1, ddof=1) / runs
    df = (a + b) ** 2 / (a**2 + b**2) * (runs - 1)
    q = abs(one.mean(axis=1) - two.mean(axis=1)) / np.sqrt(a + b) * math.sqrt(2)
    shown = np.mean([range_beyond(*each) < ALPHA for each in zip(q, [groups] * 1500, df, strict=True)])
    assert power(5.0, spread, runs, runs) == pytest.approx(shown, abs=0.04)


def simulated(means: list[float], runs: int, spread: float, meters: int, rng: np.random.Generator) -> Study:
    """Readings of machines; each has a meter of its own where there are as many, else all have the first."""
    study = edits.new_study("s").study
    gains = 1 + rng.uniform(-0.01, 0.01, meters)
    for number in range(meters):
        study = edits.add_meter(study, f"Meter {number}").study
        study = edits.set_meter(study, study.meters[-1].id, gain_percent=1.0, offset_w=0.0).study
    for number, mean_wh in enumerate(means):
        study = edits.add_machine(study, f"Machine {number}").study
        at = number if meters == len(means) else 0
        for _ in range(runs):
            energy_wh = mean_wh * rng.normal(1, spread) * gains[at]
            study = edits.add_typed(
                study, study.machines[-1].id, energy_wh, step_wh=0.0, meter_id=study.meters[at].id
            ).study
    return study


@pytest.mark.parametrize(
    ("machines", "meters", "runs", "spread", "least", "most"),
    [
        (2, 1, 3, 0.02, 0.74, 0.86),
        (2, 2, 3, 0.01, 0.74, 0.86),
        (2, 2, 6, 0.01, 0.74, 0.86),
        # the adjustment for all pairs is taken at its hardest: a little more is shown than promised
        (5, 1, 4, 0.02, 0.75, 0.92),
        (5, 5, 6, 0.01, 0.74, 0.92),
    ],
)
def test_the_comparison_shows_the_smallest_difference_four_times_in_five(
    machines: int, meters: int, runs: int, spread: float, least: float, most: float
) -> None:
    shared = GAIN_U * math.sqrt(2) if meters > 1 else 0.0
    pairs = machines * (machines - 1) // 2
    apart = smallest_shown(Spread(spread, spread, shared, machines, pairs), runs, runs)
    means = [100 * (1 - apart / 2), *[100.0] * (machines - 2), 100 * (1 + apart / 2)]
    rng = np.random.default_rng(11)
    shown, count = 0, 300
    for _ in range(count):
        study = simulated(means, runs, spread, meters, rng)
        ends = {study.machines[0].id, study.machines[-1].id}
        pairs_found = compare(study, {}).pairs
        shown += any(p.shown is True and {p.machine_id, p.other_id} == ends for p in pairs_found)
        forget()
    assert least <= shown / count <= most


def test_no_number_of_runs_beats_two_meters() -> None:
    spread = Spread(0.01, 0.01, GAIN_U * math.sqrt(2))
    least = floor(spread)
    # 2.80 standard uncertainties: 1.96 for the level, 0.84 for the power
    assert least == pytest.approx(2.80158 * GAIN_U * math.sqrt(2), rel=1e-5)
    assert runs_needed(least, spread) is None
    assert runs_needed(1.05 * least, spread) is not None
    assert smallest_shown(spread, 4000, 4000) == pytest.approx(least, rel=2e-3)
    alone = runs_needed(1.05 * least, Spread(0.01, 0.01))
    with_meters = runs_needed(1.05 * least, spread)
    assert alone is not None
    assert with_meters is not None
    assert with_meters > alone


@pytest.mark.parametrize("groups", [2, 5])
def test_the_fewest_runs_are_enough_and_one_less_is_not(groups: int) -> None:
    rng = np.random.default_rng(3)
    for _ in range(60):
        first, other = np.abs(rng.normal(0.03, 0.02, 2))
        spread = Spread(first, other, rng.choice([0.0, 0.004]), groups, groups * (groups - 1) // 2)
        needed = runs_needed(0.05, spread)
        assert needed is not None
        assert power(0.05, spread, needed, needed) >= POWER
        assert needed == 2 or power(0.05, spread, needed - 1, needed - 1) < POWER


def test_runs_that_there_are_count() -> None:
    spread = Spread(0.03, 0.02)
    whole = runs_needed(0.05, spread)
    assert whole is not None
    assert runs_needed(0.05, spread, (4, 4)) == whole - 4
    assert runs_needed(0.05, spread, (40, 40)) == 0
    # with one run of a machine at least one more is needed before anything is judged
    assert runs_needed(0.5, spread, (1, 6)) == 1


def test_at_the_ends() -> None:
    assert runs_needed(0.1, Spread(0.0, 0.0)) == 2
    assert runs_needed(1.0, Spread(0.001, 0.001)) == 2
    assert runs_needed(0.0, Spread(1.0, 1.0)) is None
    assert runs_needed(0.1, Spread(100.0, 100.0)) is None
    assert smallest_shown(Spread(0.0, 0.0), 2, 2) == 0.0
    assert runs_for_any(0.0, 4) is None
    assert runs_for_any(1e6, 4) == 2
    with pytest.raises(ValueError, match="two runs"):
        power(1.0, Spread(1.0, 1.0), 1, 5)


def test_power_grows_with_runs_and_difference_and_falls_with_machines() -> None:
    spread = Spread(0.02, 0.03, 0.004)
    by_runs = [power(0.05, spread, n, n) for n in range(2, 30)]
    by_difference = [power(d, spread, 4, 4) for d in np.linspace(0, 0.3, 30)]
    by_groups = [power(0.08, Spread(0.02, 0.03, 0.0, g, g * (g - 1) // 2), 4, 4) for g in range(2, 13)]
    assert by_runs == sorted(by_runs)
    assert by_difference == sorted(by_difference)
    assert by_groups == sorted(by_groups, reverse=True)
    # with no difference at all one test in twenty at most says there is one
    assert power(0.0, Spread(0.02, 0.02), 12, 12) == pytest.approx(ALPHA, abs=0.004)


def test_student_s_power_is_that_of_statsmodels() -> None:
    from statsmodels.stats.power import TTestIndPower

    test = TTestIndPower()
    for effect, runs in ((0.3, 4), (1.0, 12), (2.5, 3), (4.0, 2)):
        assert student_power(effect, runs) == pytest.approx(test.power(effect, runs, ALPHA), abs=1e-9)


def test_a_spread_from_few_runs_is_itself_unsure() -> None:
    rng = np.random.default_rng(9)
    found = rng.normal(0, 1.0, (4000, 4)).std(axis=1, ddof=1)
    held = [low <= 1.0 <= high for low, high in (spread_interval(s, 3) for s in found)]
    assert np.mean(held) == pytest.approx(0.95, abs=0.012)


def test_runs_scatter_no_less_than_each_is_unsure() -> None:
    def run(energy_wh: float, own_wh: float) -> Energy:
        own = (Influence("display step", own_wh), Influence("meter gain", 0.5, "gain:m1"))
        return Energy(energy_wh, own, "typed")

    assert scatter([run(20.0, 0.4)]) is None
    assert scatter([run(20.0, 0.4), run(20.0, 0.4)]) == pytest.approx(0.02)
    assert scatter([run(18.0, 0.4), run(22.0, 0.4)]) == pytest.approx(math.sqrt(8) / 20)
