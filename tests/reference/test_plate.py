"""Heat loss of a hot horizontal plate against textbooks and tables; the source stands beside each check."""

import math

import pytest

from core.beds.heat import cooling_s
from core.beds.hold_fit import Point, fit
from core.beds.plate import (
    Air,
    Plate,
    air_at,
    exponent,
    loss,
    loss_ratio,
    nusselt,
    rayleigh,
)

#: air at a film temperature of 35 degC as printed in Y. A. Cengel, Heat Transfer, chapter 9
CENGEL_AIR = Air(conductivity=0.02625, viscosity=1.655e-5, prandtl=0.7268, expansion_per_k=0.003247)
#: a bed of 235 mm, 5.5225 dm2
BED = Plate(0.235, 0.235)


def test_mcadams() -> None:
    # documentation of the Python package ht (C. Bell), read: Pr 5.54, Gr 3.21e8, hot face up and down
    number = 5.54 * 3.21e8
    assert nusselt(number, up=True) == pytest.approx(181.73121274384457, rel=1e-9)
    assert nusselt(number, up=False) == pytest.approx(55.44564799362829, rel=1e-9)


def test_plate_of_a_textbook() -> None:
    # Cengel, Heat Transfer, solution 9-41, read: plate 24 x 20 cm at 50 degC in air of 20 degC
    plate = Plate(0.24, 0.20)
    number = rayleigh(plate, 50, 20, CENGEL_AIR)
    assert plate.length_m == pytest.approx(0.05455, abs=5e-6)
    assert number == pytest.approx(411_500, abs=200)  # printed with g 9.81; ours is 9.80665
    for up, nu, h in ((True, 13.68, 6.581), (False, 6.838, 3.291)):
        assert nusselt(number, up=up) == pytest.approx(nu, abs=5e-3)
        assert nusselt(number, up=up) * 0.02625 / plate.length_m == pytest.approx(h, abs=2e-3)


def test_heated_plate_of_a_textbook() -> None:
    # Cengel, printed answer to a problem on a plate of 16 x 20 cm, 20 W, emissivity 0.9, air at 20 degC,
    # surroundings at 17 degC, from memory: 46.8 degC, with the convection of a plate at 50 degC
    plate = Plate(0.16, 0.20)
    assumed = loss(plate, 50, 20, air=CENGEL_AIR)
    w_per_k = (assumed.up_w + assumed.down_w) / 30

    def lost_w(at_c: float) -> float:
        return w_per_k * (at_c - 20) + 2 * loss(plate, at_c, 20, surroundings_c=17).radiation_w

    assert lost_w(46.7) < 20 < lost_w(46.9)
    # with the convection of its own temperature it comes out a little warmer
    assert loss(plate, 47.1, 20, surroundings_c=17, air=CENGEL_AIR).total_w == pytest.approx(20, abs=0.05)


def test_board_of_a_textbook() -> None:
    # Cengel, chapter 9, solution read: a board of 15 x 20 cm loses 8 W from its upper face with h 6.696: 42.6
    def lost_w(at_c: float) -> float:
        one = loss(Plate(0.15, 0.20), at_c, 20, emissivity=0.8)
        return 6.696 * 0.03 * (at_c - 20) + one.radiation_w

    assert lost_w(42.5) < 8 < lost_w(42.7)


def test_large_plate_of_a_textbook() -> None:
    # Cengel, example 9-2, from memory: 0.6 x 0.6 m at 90 degC in 30 degC, one face: up 128 W, down 64.2 W,
    # radiation 182 W at emissivity 1
    air = Air(0.02808, 1.896e-5, 0.7202, 1 / 333)
    # it takes 0 degC for 273 K
    found = loss(Plate(0.6, 0.6), 89.85, 29.85, air=air, emissivity=1)
    assert found.rayleigh == pytest.approx(1.195e7, rel=2e-3)
    assert found.down_w == pytest.approx(64.2, abs=0.05)
    assert found.radiation_w == pytest.approx(182, abs=0.5)
    # the example stays with the laminar correlation a little past its range; ours changes there
    laminar_w = 2 * found.down_w
    assert laminar_w == pytest.approx(128, abs=0.5)
    assert found.up_w / laminar_w == pytest.approx(0.15 / 0.54 * found.rayleigh ** (1 / 12), rel=1e-9)


@pytest.mark.parametrize(
    ("kelvin", "conductivity", "viscosity", "prandtl"),
    [(300, 0.0263, 15.89e-6, 0.707), (350, 0.0300, 20.92e-6, 0.700)],
)
def test_air(kelvin: float, conductivity: float, viscosity: float, prandtl: float) -> None:
    # F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, Table A.4, from memory
    air = air_at(kelvin - 273.15)
    assert air.conductivity == pytest.approx(conductivity, rel=0.015)
    assert air.viscosity == pytest.approx(viscosity, rel=0.015)
    assert air.prandtl == pytest.approx(prandtl, rel=0.015)


# a bed of 235 mm in air and surroundings of 20 degC, emissivity 0.9: computed with another table of air
# (CoolProp 8.0.0). Columns: degC, Rayleigh, up, down, radiation of one face, both faces, W/dm2, W/K
FLOOR = [
    (40, 360_100, 6.62, 3.31, 6.29, 22.51, 4.08, 1.125),
    (50, 500_902, 10.93, 5.47, 9.92, 36.24, 6.56, 1.208),
    (60, 620_158, 15.59, 7.79, 13.90, 51.19, 9.27, 1.280),
    (70, 720_737, 20.50, 10.25, 18.26, 67.28, 12.18, 1.346),
    (80, 805_117, 25.62, 12.81, 23.02, 84.47, 15.30, 1.408),
    (90, 875_439, 30.92, 15.46, 28.20, 102.78, 18.61, 1.468),
    (100, 933_558, 36.36, 18.18, 33.83, 122.19, 22.13, 1.527),
    (110, 981_081, 41.93, 20.96, 39.92, 142.74, 25.85, 1.586),
]


@pytest.mark.parametrize("row", FLOOR, ids=lambda row: f"{row[0]} degC")
def test_floor_of_a_bed(row: tuple[float, ...]) -> None:
    bed_c, number, up_w, down_w, radiation_w, total_w, per_dm2, per_k = row
    found = loss(BED, bed_c, 20)
    assert found.rayleigh == pytest.approx(number, rel=5e-3)
    assert (found.up_w, found.down_w) == pytest.approx((up_w, down_w), rel=5e-3)
    assert found.radiation_w == pytest.approx(radiation_w, rel=5e-3)
    assert found.total_w == pytest.approx(total_w, rel=5e-3)
    assert found.w_per_dm2 == pytest.approx(per_dm2, rel=5e-3)
    assert found.total_w / (bed_c - 20) == pytest.approx(per_k, rel=5e-3)


def test_loss_is_not_in_proportion() -> None:
    # by the same table: the loss goes as the difference to the power of 1.23; a straight line through 40 to
    # 110 degC has slope 1.718 W/K and intercept -15.8 W, and is 18 % wrong at 40 degC
    assert exponent(40, 110, 20) == pytest.approx(1.23, abs=5e-3)
    points = [Point(row[0] - 20, loss(BED, row[0], 20).total_w) for row in FLOOR]
    line = fit(points)
    intercept_w, slope = line.coefficients
    assert slope == pytest.approx(1.718, rel=5e-3)
    assert intercept_w == pytest.approx(-15.8, abs=0.2)
    assert abs(line.at(20).power_w / points[0].power_w - 1) == pytest.approx(0.18, abs=0.01)
    # to the room itself nothing is lost, and the line is said not to reach so far
    assert line.at(0).is_extrapolated
    # through 50 to 80 degC alone it is within 1.6 %
    near = fit(points[1:5])
    wrong = [abs(near.at(p.difference_k).power_w / p.power_w - 1) for p in points[1:5]]
    assert max(wrong) == pytest.approx(0.016, abs=1e-3)


def test_ratios_by_the_plate_law() -> None:
    # by the same table: the floor at 45 degC is 29.21 W, 0.571 of that at 60 degC; at 50 degC 0.708
    assert loss(BED, 45, 20).total_w == pytest.approx(29.21, rel=5e-3)
    assert loss_ratio(60, 45, 20) == pytest.approx(0.571, abs=2e-3)
    assert loss_ratio(60, 50, 20) == pytest.approx(0.708, abs=2e-3)
    # and it hardly depends on the bed
    assert loss_ratio(60, 45, 20, Plate(0.40, 0.40)) == pytest.approx(0.571, abs=0.01)


def test_cooling_with_no_heating() -> None:
    # closed form, one constant k: from 60 to 45 degC in 20 degC with a time constant of 1000 s
    assert cooling_s(1000, 60, 45, 20) == pytest.approx(470.00, abs=5e-3)


def test_ordinary_beds() -> None:
    # common practice, no source: a bed of ordinary size at 60 degC takes about 70 Wh each hour, which is 1.4
    # times this floor; and bed watts rise about linearly with temperature: to 1.6 % over 50 to 80 degC
    assert 70 / loss(BED, 60, 20).total_w == pytest.approx(1.4, abs=0.05)
    low, high = loss(BED, 50, 20).total_w, loss(BED, 80, 20).total_w
    for bed_c in (55, 60, 65, 70, 75):
        straight_w = low + (high - low) * (bed_c - 50) / 30
        assert straight_w == pytest.approx(loss(BED, bed_c, 20).total_w, rel=0.03)


def test_a_cold_plate_is_refused() -> None:
    with pytest.raises(ValueError, match="loses nothing"):
        loss(BED, 15, 20)
    with pytest.raises(ValueError, match="difference"):
        loss_ratio(20, 40, 20)
    assert loss(BED, 20, 20).total_w == 0
    assert math.isclose(Plate.square(5.5225).width_m, 0.235)
