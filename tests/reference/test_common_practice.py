"""What is said of the energy of material-extrusion machines, against this program's formulas and bounds.

Plausible ranges, not targets: published figures name their paper, the rest is common practice, no source.
"""

import numpy as np
import pytest

from core.beds.hold import holds
from core.beds.plate import Plate, loss
from core.results.plausible import BED_SHARE, HOLD_TIMES, MEAN_W
from core.study import Meter
from core.units import J_PER_WH, SECONDS_PER_HOUR, SECONDS_PER_MINUTE, WH_PER_KWH, mean_w
from tests.core.held_beds import BEFORE_S, Bed, simulated


def _published_wh(hours: float, nozzle_c: float = 205, bed_c: float = 60) -> float:
    """E [MJ] = -0.056 + t [min] (7e-6 T_nozzle + 89e-6 T_bed).

    N. Hopkins, L. Jiang, H. Brooks, 2021, machines measured at 1 Hz; read in a public source that cites it
    (its printed unit can only mean MJ per degC and minute).
    """
    minutes = hours * SECONDS_PER_HOUR / SECONDS_PER_MINUTE
    return (-0.056 + minutes * (7e-6 * nozzle_c + 89e-6 * bed_c)) * 1e6 / J_PER_WH


def test_published_line_of_hopkins_and_others() -> None:
    assert _published_wh(1) == pytest.approx(97, abs=0.5)
    assert _published_wh(10) / WH_PER_KWH == pytest.approx(1.11, abs=5e-3)
    # its slope: 113 W, of which 89 W or 79 % go with the bed's temperature
    power_w = mean_w(_published_wh(11) - _published_wh(10), SECONDS_PER_HOUR)
    bed_w = mean_w(_published_wh(11) - _published_wh(11, bed_c=0), 11 * SECONDS_PER_HOUR)
    assert power_w == pytest.approx(113, abs=0.5)
    assert bed_w == pytest.approx(89, abs=0.5)
    assert bed_w / power_w == pytest.approx(0.79, abs=5e-3)
    # published machines raise no eyebrow here
    assert MEAN_W[0] < power_w < MEAN_W[1]
    assert BED_SHARE[0] < bed_w / power_w < BED_SHARE[1]


def test_a_print_of_ten_hours() -> None:
    # common practice, no source: ten hours take about 1 to 1.5 kWh
    assert 1.0 < _published_wh(10) / WH_PER_KWH < 1.5
    for kwh in (1.0, 1.5):
        assert MEAN_W[0] < mean_w(kwh * WH_PER_KWH, 10 * SECONDS_PER_HOUR) < MEAN_W[1]


def test_half_the_draw_is_the_bed() -> None:
    # common practice, no source: at 60 degC the bed is about half the draw. With 70 W for the bed (1.4 times
    # what a bed of 235 mm must lose) a machine then draws about 140 W
    floor_w = loss(Plate(0.235, 0.235), 60, 20).total_w
    assert HOLD_TIMES[0] < 70 / floor_w < HOLD_TIMES[1]
    assert BED_SHARE[0] < 0.5 < BED_SHARE[1]
    assert MEAN_W[0] < 70 / 0.5 < MEAN_W[1]


def test_fifty_degrees_instead_of_sixty() -> None:
    # Zakaria, Mativenga, 2025, read in a trade journal's summary: it nearly halves the total. The loss of a
    # plate alone gives 29 % off the bed's part: the half is not to be expected
    less = 1 - loss(Plate(0.235, 0.235), 50, 20).total_w / loss(Plate(0.235, 0.235), 60, 20).total_w
    assert less == pytest.approx(0.29, abs=0.01)


def test_half_an_hour_of_holding_against_a_full_hour() -> None:
    # common practice, no source: held for half an hour or for an hour, the mean watts are nearly the same
    (trace,), _, _ = simulated(Bed(), np.array([40.0]), 3900, seed=9)
    (hold,) = holds(trace, BEFORE_S - 1.0, BEFORE_S + 3890.0, Meter("m", "a meter"))
    warm = hold.warm_end_s
    halves = [
        float(trace.power_w[(trace.time_s >= warm) & (trace.time_s < warm + s)].mean()) for s in (1800, 3600)
    ]
    assert halves[0] == pytest.approx(halves[1], rel=0.03)
    # from the start of heating on, the warm-up still shows in half an hour
    assert hold.half_hour_w is not None
    assert hold.full_hour_w is not None
    assert hold.half_hour_w / hold.full_hour_w > 1.02
