"""The step of a bed's heater and the level without it, where pulses are short and a hot end pulses too."""

import numpy as np
import pytest

from core.beds.steps import heater_step, without_heater
from core.traces import F64

REST_W, BED_W, HOT_W = 40.0, 250.0, 45.0


def rows(window_s: float, on_s: float, cycle_s: float, hot_part: float, seed: int) -> tuple[F64, float]:
    """Means over a window at moments that know nothing of the pulses, and the mean of what is not the bed."""
    rng = np.random.default_rng(seed)
    fine_s = 0.01
    time = np.arange(0, 6000, fine_s)
    bed = BED_W * (time % cycle_s < on_s)
    hot = HOT_W * (time % 3.7 < hot_part * 3.7)
    summed = np.concatenate(([0.0], np.cumsum(REST_W + bed + hot)))
    at = rng.integers(round(window_s / fine_s) + 1, time.size, 3000)
    mean = (summed[at] - summed[at - max(round(window_s / fine_s), 1)]) / max(round(window_s / fine_s), 1)
    return np.round(mean, 1), REST_W + float(hot.mean())


@pytest.mark.parametrize("window_s", [0.01, 0.2, 0.5])
@pytest.mark.parametrize(("on_s", "cycle_s"), [(0.9, 2.3), (1.5, 2.6), (4.0, 11.0)])
@pytest.mark.parametrize("hot_part", [0.0, 0.4, 0.65])
def test_the_level_without_the_heater_bears_pieces_and_a_hot_end(
    window_s: float, on_s: float, cycle_s: float, hot_part: float
) -> None:
    power, rest_w = rows(window_s, on_s, cycle_s, hot_part, 3)
    step = heater_step(power, 0.1)
    assert step is not None
    assert step.step_w == pytest.approx(BED_W, rel=0.03)
    assert without_heater(power, step).mean() == pytest.approx(rest_w, abs=0.03 * power.mean())


def test_a_step_is_no_smaller_than_the_heater_can_have() -> None:
    # samples that keep step with the pulses show two heights of them
    power = np.tile([40.0, 40.0, 40.0, 210.0, 40.0, 40.0, 380.0], 60)
    free, bounded = heater_step(power, 0.1), heater_step(power, 0.1, 300.0)
    assert free is not None
    assert bounded is not None
    assert bounded.step_w == pytest.approx(340.0, abs=3.0)


def test_a_level_without_another_has_no_step() -> None:
    assert heater_step(np.append(np.full(100, 40.0), 240.0), 0.1) is None


@pytest.mark.parametrize("wrong_w", [1e6, -1e6, 65_535.0])
def test_single_wrong_values_far_off_cost_no_time_and_leave_the_step(wrong_w: float) -> None:
    power_w = np.tile([40.0, 40.0, 60.0, 240.0, 240.0, 260.0], 100)
    power_w[[100, 400]] = wrong_w
    found = heater_step(power_w, 0.1)
    assert found is not None
    assert found.step_w == pytest.approx(200, abs=5)


def test_levels_a_million_watts_apart_cost_no_time() -> None:
    power_w = np.repeat([-3.0, 0.0, 1e6], [3000, 3000, 45])
    assert heater_step(power_w, 0.1) is not None
