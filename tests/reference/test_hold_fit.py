"""The fit of held watts against published straight lines; the source stands beside each check."""

import math
from pathlib import Path

import numpy as np
import pytest
import scipy.stats

from core.beds.hold_fit import Point, fit

# JCGM 100:2008, Table H.6: thermometer readings and corrections [degC], read in the documentation of GTC
H3_T = (21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511)
H3_B = (-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160)


def test_h3_line_with_unknown_scatter() -> None:
    # JCGM 100:2008, H.3.3 and H.3.4; more digits computed afresh with two other programs
    line = fit([Point(t - 20, b) for t, b in zip(H3_T, H3_B, strict=True)])
    assert line.coefficients[0] == pytest.approx(-0.171203790131, abs=1e-9)
    assert line.coefficients[1] == pytest.approx(0.00218269773989, abs=1e-9)
    assert line.u(0) == pytest.approx(0.002877597835, abs=1e-9)
    assert line.u(1) == pytest.approx(0.0006679387732, abs=1e-9)
    assert line.covariance[0, 1] / (line.u(0) * line.u(1)) == pytest.approx(-0.930, abs=5e-4)
    assert line.chi_squared == pytest.approx(1.10096583e-4, rel=1e-8)
    assert (line.chi_squared / line.df) ** 0.5 == pytest.approx(0.003497563964, abs=1e-9)
    assert line.df == 9
    predicted = line.at(10)
    assert predicted.power_w == pytest.approx(-0.1493768127, abs=1e-9)
    assert predicted.u_w == pytest.approx(0.004138595753, abs=1e-9)
    # with the covariance forgotten it would be nearly twice that
    assert math.hypot(line.u(0), 10 * line.u(1)) == pytest.approx(0.00727, abs=1e-5)
    assert predicted.is_extrapolated  # 30 degC lies outside the readings
    # t of 9 degrees of freedom, JCGM 100:2008, Table G.2
    assert (predicted.high_w - predicted.power_w) / predicted.u_w == pytest.approx(2.26, abs=6e-3)


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
def test_weighted_line(
    y: tuple[float, ...],
    u: tuple[float, ...],
    a: tuple[float, float],
    b: tuple[float, float],
    cov: float,
    chi2: float,
) -> None:
    # examples of ISO/TS 28037:2010, clause 6, read in the documentation of GTC
    line = fit([Point(i, y_i, u_i) for i, (y_i, u_i) in enumerate(zip(y, u, strict=True), start=1)])
    assert (line.coefficients[0], line.u(0)) == pytest.approx(a, abs=6e-4)
    assert (line.coefficients[1], line.u(1)) == pytest.approx(b, abs=6e-4)
    assert line.covariance[0, 1] == pytest.approx(cov, abs=6e-4)
    assert line.chi_squared == pytest.approx(chi2, abs=6e-4)
    assert line.df == 4
    assert line.is_consistent


@pytest.mark.parametrize(
    ("y", "u", "u_read", "x", "u_x"),
    [
        ((3.3, 5.6, 7.1, 9.3, 10.7, 12.1), (0.5,) * 6, 0.5, 4.913279, 0.322036),
        ((3.2, 4.3, 7.6, 8.6, 11.7, 12.8), (0.5, 0.5, 0.5, 1, 1, 1), 1.0, 4.674256, 0.533181),
    ],
)
def test_weighted_line_read_backwards(
    y: tuple[float, ...], u: tuple[float, ...], u_read: float, x: float, u_x: float
) -> None:
    # the same examples at y = 10.5
    line = fit([Point(i, y_i, u_i) for i, (y_i, u_i) in enumerate(zip(y, u, strict=True), start=1)])
    assert line.difference_at(10.5, u_read) == pytest.approx((x, u_x), abs=6e-4)


def test_norris() -> None:
    # NIST StRD, linear regression, Norris: the file ships with scipy, certified values at its top
    path = Path(scipy.stats.__file__).parent / "tests" / "data" / "nist_linregress" / "Norris.dat"
    rows = np.loadtxt(path, skiprows=60)
    line = fit([Point(x, y) for y, x in rows.tolist()])
    assert line.coefficients[0] == pytest.approx(-0.262323073774029, rel=1e-8)
    assert line.u(0) == pytest.approx(0.232818234301152, rel=1e-8)
    assert line.coefficients[1] == pytest.approx(1.00211681802045, rel=1e-8)
    assert line.u(1) == pytest.approx(0.429796848199937e-3, rel=1e-8)
    assert (line.chi_squared / line.df) ** 0.5 == pytest.approx(0.884796396144373, rel=1e-8)
    assert line.df == 34
    about = float(((rows[:, 0] - rows[:, 0].mean()) ** 2).sum())
    assert 1 - line.chi_squared / about == pytest.approx(0.999993745883712, rel=1e-8)
    assert (about - line.chi_squared) / (line.chi_squared / line.df) == pytest.approx(
        5436385.54079785, rel=1e-8
    )
