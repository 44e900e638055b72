"""Uncertainty against JCGM 100:2008 (GUM), ISO/TS 28037 examples and NIST Technical Note 1297."""

import math

import numpy as np
import pytest
from GTC import get_covariance, type_a, type_b, ureal

from core.results.values import Energy, Influence
from core.traces import Trace
from core.uncertainty import coverage_factor, mean_of, ratio, u95_of

# JCGM 100:2008, Table H.6: thermometer readings and corrections [degC], read in the documentation of GTC
H3_T = (21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511)
H3_B = (-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160)


def test_h3_straight_line() -> None:
    # JCGM 100:2008, H.3.3: y1 -0.1712 (0.0029), y2 0.00218 (0.00067), r -0.930; more digits computed afresh
    fit = type_a.line_fit(np.array(H3_T) - 20, H3_B)
    assert fit.a_b[0].x == pytest.approx(-0.171203790131, abs=1e-9)
    assert fit.a_b[0].u == pytest.approx(0.002877597835, abs=1e-9)
    assert fit.a_b[1].x == pytest.approx(0.00218269773989, abs=1e-9)
    assert fit.a_b[1].u == pytest.approx(0.0006679387732, abs=1e-9)
    a, b = fit.a_b
    assert get_covariance(a, b) / (a.u * b.u) == pytest.approx(-0.930, abs=5e-4)
    assert math.sqrt(fit.ssr / 9) == pytest.approx(0.003497563964, abs=1e-9)
    assert a.df == 9


def test_h3_prediction_needs_the_covariance() -> None:
    # JCGM 100:2008, H.3.4: correction at 30 degC -0.1494, u 0.0041
    a, b = type_a.line_fit(np.array(H3_T) - 20, H3_B).a_b
    predicted = a + b * 10
    assert predicted.x == pytest.approx(-0.1493768127, abs=1e-9)
    assert predicted.u == pytest.approx(0.004138595753, abs=1e-9)
    assert math.hypot(a.u, 10 * b.u) == pytest.approx(0.00727, abs=1e-5)


@pytest.mark.parametrize(
    ("y", "u", "a", "b", "cov", "chi2"),
    [
        ((3.3, 5.6, 7.1, 9.3, 10.7, 12.1), (0.5,) * 6, (1.867, 0.465), (1.757, 0.120), -0.050, 1.665),
        (
            (3.2, 4.3, 7.6, 8.6, 11.7, 12.8),
            (0.5, 0.5, 0.5, 1, 1, 1),
            (0.885, 0.530),
            (2.057, 0.178),
            -0.082,
            4.131,
        ),
    ],
)
def test_weighted_line_with_known_variances(
    y: tuple[float, ...],
    u: tuple[float, ...],
    a: tuple[float, float],
    b: tuple[float, float],
    cov: float,
    chi2: float,
) -> None:
    # examples of ISO/TS 28037:2010 (clause 6), read in the documentation of GTC
    fit = type_a.line_fit_wls(range(1, 7), y, u)
    intercept, slope = fit.a_b
    assert (intercept.x, intercept.u) == pytest.approx(a, abs=6e-4)
    assert (slope.x, slope.u) == pytest.approx(b, abs=6e-4)
    assert get_covariance(intercept, slope) == pytest.approx(cov, abs=6e-4)
    assert fit.ssr == pytest.approx(chi2, abs=6e-4)


@pytest.mark.parametrize(
    ("y", "u", "u_read", "x", "u_x"),
    [
        ((3.3, 5.6, 7.1, 9.3, 10.7, 12.1), (0.5,) * 6, 0.5, 4.913279, 0.322036),
        ((3.2, 4.3, 7.6, 8.6, 11.7, 12.8), (0.5, 0.5, 0.5, 1, 1, 1), 1.0, 4.674256, 0.533181),
    ],
)
def test_reading_a_weighted_line_backwards(
    y: tuple[float, ...], u: tuple[float, ...], u_read: float, x: float, u_x: float
) -> None:
    # the same examples, read at y = 10.5
    intercept, slope = type_a.line_fit_wls(range(1, 7), y, u).a_b
    back = (ureal(10.5, u_read) - intercept) / slope
    assert back.x == pytest.approx(x, abs=6e-4)
    assert back.u == pytest.approx(u_x, abs=6e-4)


def test_shapes_of_ignorance() -> None:
    # JCGM 100:2008, 4.3.7, 4.3.9 and F.2.2.1 (from memory)
    assert type_b.uniform(1) == pytest.approx(0.577350, abs=1e-6)
    assert type_b.triangular(1) == pytest.approx(0.408248, abs=1e-6)
    assert type_b.uniform(0.5) == pytest.approx(0.288675, abs=1e-6)


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
    product = inputs[0] * inputs[1] * inputs[2]
    assert 100 * product.u == pytest.approx(1.03, abs=5e-3)
    assert product.df == pytest.approx(19.0, abs=0.05)
    assert coverage_factor(product.df) == pytest.approx(2.09, abs=5e-3)
    assert 100 * coverage_factor(product.df) * product.u == pytest.approx(2.2, abs=0.05)


def test_welch_satterthwaite_of_an_energy() -> None:
    # JCGM 100:2008, H.1.6: the gauge block; u taken unrounded (inputs read, results from memory)
    influences = tuple(
        Influence(name, u, None, df)
        for name, u, df in (("a", 25.0, 18), ("b", 9.7, 25.6), ("c", 2.9, 50), ("d", 16.6, 2))
    )
    mean = mean_of([Energy(1000.0, influences, "power")])
    u = math.sqrt(sum(i.u_wh**2 for i in influences))
    assert u == pytest.approx(31.7, abs=0.05)
    gtc = 0.0 * ureal(0, 1)
    for i in influences:
        gtc = gtc + ureal(0.0, i.u_wh, i.df)
    assert gtc.df == pytest.approx(16.7, abs=0.1)
    assert u95_of(Energy(1000.0, influences, "power")) == pytest.approx(coverage_factor(gtc.df) * u, rel=1e-9)
    # the t factor printed there is for 99 %
    from scipy.stats import t

    assert float(t.ppf(0.995, 16)) == pytest.approx(2.92, abs=5e-3)
    assert 2.92 * u == pytest.approx(93, abs=0.6)
    assert mean.runs == 1


def test_ratio_of_two_machines() -> None:
    # by definition: 84.0 and 70.0 Wh, 0.3 Wh each, gain +-1 %; one meter, then two
    def run(value: float, meter: str) -> Energy:
        gain = Influence("meter gain", value * 0.01 / math.sqrt(3), f"gain:{meter}")
        return Energy(value, (gain, Influence("sampling", 0.3)), "power")

    one = ratio(mean_of([run(84.0, "m")]), mean_of([run(70.0, "m")]))
    two = ratio(mean_of([run(84.0, "m")]), mean_of([run(70.0, "n")]))
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
    from scipy.stats import t

    levels = (0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973)
    assert [float(t.ppf((1 + p) / 2, df)) for p in levels] == pytest.approx(
        list(T_TABLE[df]), abs=6e-3, rel=1e-4
    )
    assert coverage_factor(df) == pytest.approx(T_TABLE[df][2], abs=6e-3)


def test_resolution_of_a_busy_signal() -> None:
    # JCGM 100:2008, F.2.2.1: rounding to q gives q / sqrt(12); by simulation
    from core.energy.sampling import resolution_u_wh

    rng = np.random.default_rng(4)
    power = rng.uniform(50, 250, 3601)
    rounded = np.round(power / 4) * 4
    assert float(np.std(rounded - power)) == pytest.approx(4 / math.sqrt(12), rel=0.02)
    trace = Trace.of(np.arange(3601.0), rounded, resolution_w=4.0)
    assert resolution_u_wh(trace, 0, 3600) == pytest.approx(4 / math.sqrt(12) * 60 / 3600, rel=0.05)
