import math
from itertools import pairwise

import numpy as np
import pytest

from core.beds.cooler_bed import CoolerBed, cooler_bed
from core.beds.plate import loss_ratio

TAU_S, FIRST_C, LATER_C, ROOM_C = 900.0, 60.0, 45.0, 20.0


def made(until_s: float = 600.0, seconds: float = 7200.0) -> CoolerBed:
    """A bed that loses in proportion: 1.5 W/K."""
    return cooler_bed(
        60.0,
        37.5,
        first_c=FIRST_C,
        later_c=LATER_C,
        room_c=ROOM_C,
        tau_s=TAU_S,
        until_s=until_s,
        seconds=seconds,
    )


def test_against_a_step_by_step_simulation() -> None:
    """A bed of 1.5 W/K with a perfect controller, in steps of a tenth of a second."""
    now_c, used_j, off_s, step_s = FIRST_C, 0.0, 0.0, 0.1
    for i in range(72_000):
        target_c = FIRST_C if i * step_s < 600 else LATER_C
        lost_w = 1.5 * (now_c - ROOM_C)
        heat_w = lost_w if now_c <= target_c else 0.0
        off_s += step_s * (heat_w == 0)
        used_j += heat_w * step_s
        now_c += (heat_w - lost_w) * step_s / (1.5 * TAU_S)
    found = made()
    assert found.cooler_wh == pytest.approx(used_j / 3600, rel=2e-3)
    assert found.cooling_s == pytest.approx(off_s, rel=2e-3)


def test_what_it_saves() -> None:
    found = made()
    assert found.cooling_s == pytest.approx(TAU_S * math.log(40 / 25))
    by_hand = (60 * found.cooling_s + 22.5 * (6600 - found.cooling_s)) / 3600
    assert found.saved_wh == pytest.approx(by_hand)
    assert found.saved_share == pytest.approx(by_hand / 120)


def test_a_print_that_ends_before_the_bed_has_cooled() -> None:
    found = made(until_s=600.0, seconds=700.0)
    assert found.cooling_s == 100.0
    assert found.saved_wh == pytest.approx(60 * 100 / 3600)
    assert made(until_s=700.0, seconds=700.0).saved_wh == 0


def test_saves_more_the_earlier_and_the_longer() -> None:
    savings = [made(until_s=u).saved_wh for u in np.linspace(0, 7200, 20)]
    assert all(a >= b for a, b in pairwise(savings))
    assert made(seconds=36_000).saved_wh > made(seconds=3600).saved_wh


def test_over_a_long_print_it_saves_what_the_plate_law_says() -> None:
    # 60 to 45 degC in 20 degC: 0.571 of the loss is left
    left = loss_ratio(60, 45, 20)
    found = cooler_bed(
        70, 70 * left, first_c=60, later_c=45, room_c=20, tau_s=900, until_s=300, seconds=360_000
    )
    assert found.saved_share == pytest.approx(1 - left, abs=0.01)


@pytest.mark.parametrize(("until_s", "seconds"), [(-1.0, 100.0), (200.0, 100.0)])
def test_a_change_outside_the_print(until_s: float, seconds: float) -> None:
    with pytest.raises(ValueError, match="outside"):
        made(until_s, seconds)


def test_no_energy_no_share() -> None:
    assert CoolerBed(0.0, 0.0, 0.0).saved_share == 0.0
