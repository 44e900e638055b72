import math

import numpy as np
import pytest

from core.beds.from_holds import HeldBed, warm_up_wh, watts_at
from core.beds.hold import Hold
from core.beds.plate import Plate, loss, loss_ratio
from core.beds.steady import Steady
from core.uncertainty import NORMAL_95

PLATE = Plate(0.235, 0.235)


def held(bed_c: float, room_c: float | None = 20.0, *, w: float | None = None, first: bool = True) -> HeldBed:
    """A hold of a plate that loses what physics says, 6 W beside it."""
    watts = loss(PLATE, bed_c, 20).total_w if w is None else w
    steady = Steady(600.0, 3600.0, watts + 6.0, 0.4, 9.0, True, (watts + 6.0,) * 10, 300.0)
    warm_wh = 0.0045 * (bed_c - 20) * 60
    hold = Hold(0.0, 300.0, 3600.0, steady, 6.0, 0.05, warm_wh, 0.05, None, None, bed_c, room_c, first)
    return HeldBed(hold, bed_c, room_c)


def test_at_the_held_temperature() -> None:
    found = watts_at([held(60)], 60, 20)
    assert found is not None
    assert found.value == pytest.approx(loss(PLATE, 60, 20).total_w)
    # a run is not a hold: a rectangle of a tenth
    assert found.u95 is not None
    assert found.u95 == pytest.approx(NORMAL_95 * 0.1 / math.sqrt(3) * found.value, rel=0.05)


def test_one_hold_is_carried_to_another_temperature_by_the_plate_law() -> None:
    found = watts_at([held(60)], 50, 20)
    at_60 = watts_at([held(60)], 60, 20)
    assert found is not None
    assert at_60 is not None
    assert found.value == pytest.approx(at_60.value * loss_ratio(60, 50, 20))
    assert found.u95 is not None
    assert at_60.u95 is not None
    assert found.u95 / found.value > at_60.u95 / at_60.value


def test_several_holds_tell_between_them_and_the_plate_law_beyond() -> None:
    several = [held(45), held(60), held(75)]
    between = watts_at(several, 55, 20)
    beyond = watts_at(several, 95, 20)
    assert between is not None
    assert beyond is not None
    assert between.value == pytest.approx(loss(PLATE, 55, 20).total_w, rel=0.02)
    # a straight line through the holds would give 9 % less
    assert beyond.value == pytest.approx(loss(PLATE, 95, 20).total_w, rel=0.02)
    assert beyond.u95 is not None
    assert between.u95 is not None
    assert beyond.u95 / beyond.value > between.u95 / between.value


def test_a_warmer_room_takes_less() -> None:
    cool, warm = watts_at([held(60)], 60, 18), watts_at([held(60)], 60, 26)
    assert cool is not None
    assert warm is not None
    assert warm.value < cool.value


def test_a_room_that_nobody_noted_widens_the_interval() -> None:
    known, unknown = watts_at([held(60)], 60, 20), watts_at([held(60, None)], 60, None)
    assert known is not None
    assert unknown is not None
    assert unknown.value == pytest.approx(known.value)
    assert known.u95 is not None
    assert unknown.u95 is not None
    assert unknown.u95 > known.u95 * 1.2


def test_nothing_to_tell() -> None:
    assert watts_at([], 60, 20) is None
    assert watts_at([held(60)], 18, 20) is None


def test_warm_up_of_a_cold_run_is_that_of_the_hold() -> None:
    found = warm_up_wh([held(60)], 30.0, 50.0, 200.0, 100.0)
    assert found.value == pytest.approx(0.0045 * 30 * 60)


def test_warm_up_of_a_warm_start_is_no_more_than_it_drew() -> None:
    assert warm_up_wh([held(60)], 40.0, 50.0, 60.0, 2.0).value == 2.0


def test_a_soak_is_held_watts() -> None:
    # 300 s of the hold test's warm-up, then 900 s at 50 W
    soaked = warm_up_wh([held(60)], 40.0, 50.0, 1200.0, 100.0)
    assert soaked.value == pytest.approx(0.0045 * 40 * 60 + 50 * 900 / 3600)


def test_a_hold_that_began_warm_tells_no_warm_up() -> None:
    alone = warm_up_wh([held(60, first=False)], 40.0, 50.0, 300.0, 10.0)
    assert alone.value == pytest.approx(9.0)
    assert alone.u95 is not None
    assert alone.u95 == pytest.approx(NORMAL_95 * 1.0 / math.sqrt(3))
    assert warm_up_wh([held(60, first=False), held(60)], 40.0, 50.0, 300.0, 100.0).value == pytest.approx(
        10.8
    )


def test_the_interval_holds_what_a_run_does_unlike_a_hold() -> None:
    """Beds that take up to a tenth more or less in a run: covered more than 95 times of 100."""
    rng = np.random.default_rng(2)
    inside, count = 0, 400
    for _ in range(count):
        truth_w = loss(PLATE, 60, 20).total_w
        found = watts_at([held(60, w=truth_w + rng.normal(0, 0.4))], 60, 20)
        assert found is not None
        assert found.u95 is not None
        in_run_w = truth_w * (1 + rng.uniform(-0.1, 0.1))
        inside += abs(found.value - in_run_w) <= found.u95
    assert inside / count > 0.95
