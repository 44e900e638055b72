"""Budgets, means and ratios: what is shared cancels or adds by itself."""

import math
import time

import numpy as np
import pytest

from core.results.values import Energy, Influence, Measured
from core.uncertainty import REPEATS, Inputs, budget, coverage_factor, mean_of, ratio, standard_of, u95_of

GAIN = 0.01 / math.sqrt(3)


def energy(value_wh: float, own_wh: float = 0.0, meter: str = "m") -> Energy:
    influences = (Influence("meter gain", value_wh * GAIN, f"gain:{meter}"), Influence("sampling", own_wh))
    return Energy(value_wh, tuple(i for i in influences if i.u_wh), "power")


def test_one_run_has_its_own_interval_and_no_spread() -> None:
    mean = mean_of([energy(100.0, 0.5)])
    assert mean.spread_wh is None
    assert mean.energy_wh.u95 == pytest.approx(u95_of(energy(100.0, 0.5)))
    assert REPEATS not in [i.name for i in mean.influences]


@pytest.mark.parametrize("seed", range(20))
def test_the_interval_of_a_run_is_that_of_the_library_to_the_last_bit(seed: int) -> None:
    rng = np.random.default_rng(seed)
    sizes_wh = 10.0 ** rng.uniform(-6, 2, seed % 7)
    # two meters, one of them with a negative sensitivity
    keys = (f"gain:{seed}", None, f"offset:{seed}", None, None, None, None)
    signs = (1, 1, -1, 1, 1, 1, 1)
    influences = tuple(
        Influence(f"doubt {i}", sign * u_wh, key)
        for i, (u_wh, key, sign) in enumerate(zip(sizes_wh.tolist(), keys, signs, strict=False))
    )
    u_wh, df = standard_of(Inputs().energy(100.0, influences))
    assert u95_of(Energy(100.0, influences, "power")) == coverage_factor(df) * u_wh


@pytest.mark.parametrize("df", [3.0, math.inf])
def test_what_is_shared_within_a_run_adds_up_and_few_degrees_of_freedom_widen(df: float) -> None:
    twice = tuple(Influence("meter gain", 1.0, "gain:m", df) for _ in range(2))
    assert u95_of(Energy(100.0, twice, "power")) == pytest.approx(coverage_factor(df) * 2.0)


def test_the_meters_gain_is_not_lessened_by_repeats() -> None:
    mean = mean_of([energy(100.0)] * 50)
    assert mean.energy_wh.u95 == pytest.approx(1.96 * 100 * GAIN, rel=1e-4)


def test_own_influences_are_lessened_by_repeats() -> None:
    influences = {i.name: i.u_wh for i in mean_of([energy(100.0, 1.0)] * 4).influences}
    assert influences["sampling"] == pytest.approx(0.5)


def test_repeats_bring_their_degrees_of_freedom() -> None:
    runs = [Energy(value, (), "power") for value in (99.0, 101.0)]
    mean = mean_of(runs)
    assert mean.df == pytest.approx(1)
    assert mean.spread_wh == pytest.approx(math.sqrt(2))
    assert mean.energy_wh.u95 == pytest.approx(12.706 * 1.0, rel=1e-3)


def test_a_spread_that_the_measurement_explains_is_not_counted_twice() -> None:
    lucky = mean_of([energy(100.0, 1.0), energy(100.01, 1.0)])
    assert REPEATS not in [i.name for i in lucky.influences]
    wide = mean_of([energy(95.0, 1.0), energy(105.0, 1.0)])
    own = math.sqrt(sum(i.u_wh**2 for i in wide.influences if i.shared is None))
    assert own == pytest.approx(5.0)


def test_parts_per_kwh_is_of_the_mean() -> None:
    mean = mean_of([energy(80.0), energy(120.0)])
    assert mean.parts_per_kwh.value == pytest.approx(10.0)
    assert mean.parts_per_kwh.u95 == pytest.approx(10 * (mean.energy_wh.u95 or 0) / 100)


def test_gain_of_one_meter_cancels_in_a_ratio_and_two_gains_add() -> None:
    same = ratio(mean_of([energy(84.0, 0.3)]), mean_of([energy(70.0, 0.3)]))
    two = ratio(mean_of([energy(84.0, 0.3)]), mean_of([energy(70.0, 0.3, "other")]))
    assert same.u == pytest.approx(0.006694, abs=1e-6)
    assert two.u == pytest.approx(0.011867, abs=1e-6)
    assert same.u_shared == pytest.approx(0.0, abs=1e-12)
    assert two.u_shared == pytest.approx(1.2 * GAIN * math.sqrt(2), rel=1e-6)


def test_what_is_shown_and_what_is_not() -> None:
    shown = ratio(mean_of([energy(84.0, 0.3)]), mean_of([energy(70.0, 0.3)]))
    assert shown.is_shown
    assert shown.p < 1e-6
    hidden = ratio(mean_of([energy(70.5, 0.3)]), mean_of([energy(70.0, 0.3)]))
    assert not hidden.is_shown
    assert 0.05 < hidden.p < 1


def test_budget_shares_make_one() -> None:
    lines = budget(mean_of([energy(100.0, 0.4), energy(101.0, 0.4), energy(99.2, 0.4)]).influences)
    assert sum(line.share for line in lines) == pytest.approx(1.0)
    assert [line.u_wh for line in lines] == sorted((line.u_wh for line in lines), reverse=True)
    assert lines[0].name == "meter gain"
    assert lines[0].is_shared


def test_no_mean_of_nothing() -> None:
    with pytest.raises(ValueError, match="a mean needs a value"):
        mean_of([])


def test_coverage_factor_falls_with_the_degrees_of_freedom() -> None:
    assert coverage_factor(16) > coverage_factor(16.7) > coverage_factor(17) > coverage_factor(math.inf)
    assert coverage_factor(0.4) == coverage_factor(1.0)


def test_means_cover_when_runs_scatter() -> None:
    # 3 runs a machine, real scatter 0.8 Wh, measurement 0.3 Wh, and the meter's gain
    rng = np.random.default_rng(11)
    hits = 0
    for _ in range(400):
        gain = 1 + rng.uniform(-0.01, 0.01)
        values = (100 + rng.normal(0, 0.8, 3) + rng.normal(0, 0.3, 3)) * gain
        mean = mean_of([energy(float(v), 0.3) for v in values])
        hits += abs(mean.energy_wh.value - 100) <= (mean.energy_wh.u95 or 0)
    assert 0.92 <= hits / 400 <= 0.995


def test_twenty_machines_of_fifty_runs_are_quick() -> None:
    rng = np.random.default_rng(5)
    machines = [[energy(float(v), 0.2) for v in rng.normal(100 + k, 1, 50)] for k in range(20)]
    begin = time.perf_counter()
    means = [mean_of(runs) for runs in machines]
    for runs in machines:
        for run in runs:
            u95_of(run)
    pairs = [ratio(a, b) for i, a in enumerate(means) for b in means[i + 1 :]]
    assert len(pairs) == 190
    assert time.perf_counter() - begin < 2.0


def test_a_measured_value_is_normal_with_its_half_width() -> None:
    """A 95 % half-width is 1.96 standard uncertainties (JCGM 100:2008, G.3.4); none stated is none."""
    inputs = Inputs()
    u, df = standard_of(inputs.measured(Measured(40.0, 1.96)))
    assert u == pytest.approx(1.0, rel=1e-3)
    assert df == math.inf
    assert standard_of(inputs.measured(Measured(40.0, None)))[0] == 0.0
    both = inputs.measured(Measured(40.0, 1.96)) - inputs.measured(Measured(40.0, 1.96))
    assert standard_of(both)[0] == pytest.approx(math.sqrt(2), rel=1e-3)  # two values share nothing
    assert both.x == 0.0
