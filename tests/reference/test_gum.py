"""Uncertainty against JCGM 100:2008 (GUM) and NIST Technical Note 1297; its straight lines: test_hold_fit."""

import math

import numpy as np
import pytest
from GTC import ureal
from scipy.special import stdtrit

from core.energy.sampling import resolution_u_wh
from core.energy.total import between
from core.loads.same_load import reading_u_relative
from core.results.typed import typed_energy
from core.results.values import Energy, Influence
from core.study import Meter, TypedReading
from core.traces import Trace
from core.uncertainty import Inputs, Mean, coverage_factor, mean_of, ratio, standard_of, u95_of


def own(energy: Energy, name: str) -> float:
    """Standard uncertainty of one influence. [Wh]"""
    return next(i.u_wh for i in energy.influences if i.name == name)


def test_a_stated_accuracy_is_a_rectangle() -> None:
    # JCGM 100:2008, 4.3.7 (from memory): half-width a, u = a / sqrt(3); 100 Wh in an hour
    meter = Meter("m", "one", gain_percent=1.0, offset_w=1.0)
    trace = Trace.of(np.arange(0.0, 3601.0), np.full(3601, 100.0))
    typed = typed_energy(TypedReading("t", "a", "m", 100.0, seconds=3600.0), meter)
    for energy in (between(trace, 0, 3600, meter, rising_edges=False), typed):
        assert own(energy, "meter gain") == pytest.approx(0.577350, abs=1e-6)
        assert own(energy, "meter offset") == pytest.approx(0.577350, abs=1e-6)


def test_two_readings_of_a_display_are_a_triangle() -> None:
    # JCGM 100:2008, 4.3.9 (from memory): half-width a, u = a / sqrt(6)
    energy = typed_energy(TypedReading("t", "a", "m", 100.0, step_wh=1.0), Meter("m", "one"))
    assert own(energy, "display step") == pytest.approx(0.408248, abs=1e-6)
    assert reading_u_relative(100.0, math.inf, 1.0, 1.0) * 100 == pytest.approx(0.408248, abs=1e-6)


def test_one_reading_of_a_display_is_a_rectangle() -> None:
    # JCGM 100:2008, F.2.2.1 (from memory): resolution q, u = 0.29 q; here 1 W held for an hour
    trace = Trace.of([0.0, 3600.0], [100.0, 101.0], resolution_w=1.0)
    assert resolution_u_wh(trace, 0, 1) == pytest.approx(0.288675, abs=1e-6)


def test_two_counter_readings() -> None:
    # two independent rectangles make a triangle of half-width q: q / sqrt(6); by simulation
    rng = np.random.default_rng(1)
    starts = rng.uniform(0, 1000, 400_000)
    ends = starts + rng.uniform(30, 60, starts.size)
    for show in (np.floor, np.round):
        error = show(ends) - show(starts) - (ends - starts)
        assert float(np.std(error)) == pytest.approx(1 / math.sqrt(6), rel=5e-3)


def test_welch_satterthwaite_of_a_product() -> None:
    # JCGM 100:2008, G.4.1, example (from memory): 0.25, 0.57, 0.82 % from 10, 5, 15 values
    inputs = ureal(1, 0.0025, 9), ureal(1, 0.0057, 4), ureal(1, 0.0082, 14)
    u, df = standard_of(inputs[0] * inputs[1] * inputs[2])
    assert 100 * u == pytest.approx(1.03, abs=5e-3)
    assert df == pytest.approx(19.0, abs=0.05)
    assert coverage_factor(df) == pytest.approx(2.09, abs=5e-3)
    assert 100 * coverage_factor(df) * u == pytest.approx(2.2, abs=0.05)


def test_welch_satterthwaite_of_an_energy() -> None:
    # JCGM 100:2008, H.1.6: the gauge block; u taken unrounded (inputs read, results from memory)
    influences = tuple(
        Influence(name, u, None, df)
        for name, u, df in (("a", 25.0, 18), ("b", 9.7, 25.6), ("c", 2.9, 50), ("d", 16.6, 2))
    )
    u, df = standard_of(Inputs().energy(1000.0, influences))
    assert u == pytest.approx(32, abs=0.5)
    assert df == pytest.approx(16.7, abs=0.1)
    assert u95_of(Energy(1000.0, influences, "power")) == pytest.approx(coverage_factor(16.7) * u, rel=1e-3)
    # the t factor printed there is for 99 %
    assert float(stdtrit(16, 0.995)) == pytest.approx(2.92, abs=5e-3)
    assert float(stdtrit(16, 0.995)) * u == pytest.approx(93, abs=0.6)


def test_ratio_of_two_machines() -> None:
    # by definition: 84.0 and 70.0 Wh, 0.3 Wh each, gain +-1 %; one meter, then two
    def run(value_wh: float, meter: str) -> Mean:
        reading = TypedReading("t", "a", meter, value_wh, step_wh=0.3 * math.sqrt(6))
        return mean_of([typed_energy(reading, Meter(meter, "of one", gain_percent=1.0, offset_w=0.0))])

    one = ratio(run(84.0, "m"), run(70.0, "m"))
    two = ratio(run(84.0, "m"), run(70.0, "n"))
    assert (one.value, one.u) == pytest.approx((1.2, 0.006694), abs=1e-6)
    assert (two.value, two.u) == pytest.approx((1.2, 0.011867), abs=1e-6)


# JCGM 100:2008, Table G.2; the same table is B.1 of NIST Technical Note 1297 (1994), where it was read
T_TABLE = {
    1: (1.84, 6.31, 12.71, 13.97, 63.66, 235.80),
    2: (1.32, 2.92, 4.30, 4.53, 9.92, 19.21),
    3: (1.20, 2.35, 3.18, 3.31, 5.84, 9.22),
    4: (1.14, 2.13, 2.78, 2.87, 4.60, 6.62),
    5: (1.11, 2.02, 2.57, 2.65, 4.03, 5.51),
    9: (1.06, 1.83, 2.26, 2.32, 3.25, 4.09),
    19: (1.03, 1.73, 2.09, 2.14, 2.86, 3.45),
    50: (1.01, 1.68, 2.01, 2.05, 2.68, 3.16),
}


@pytest.mark.parametrize("df", sorted(T_TABLE))
def test_t_table(df: int) -> None:
    levels = (0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973)
    assert [float(stdtrit(df, (1 + p) / 2)) for p in levels] == pytest.approx(
        list(T_TABLE[df]), abs=6e-3, rel=1e-4
    )
    assert coverage_factor(df) == pytest.approx(T_TABLE[df][2], abs=6e-3)


def test_resolution_of_a_busy_signal() -> None:
    # JCGM 100:2008, F.2.2.1: rounding to q gives q / sqrt(12); by simulation
    rng = np.random.default_rng(4)
    power = rng.uniform(50, 250, 3601)
    rounded = np.round(power / 4) * 4
    assert float(np.std(rounded - power)) == pytest.approx(4 / math.sqrt(12), rel=0.02)
    trace = Trace.of(np.arange(3601.0), rounded, resolution_w=4.0)
    assert resolution_u_wh(trace, 0, 3600) == pytest.approx(4 / math.sqrt(12) * 60 / 3600, rel=0.05)
