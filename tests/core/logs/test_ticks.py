"""What ticks of a coarse counter and values met nowhere else tell of means and instants."""

import numpy as np
import pytest

from core.logs.sampling import judge
from core.logs.single_values import single_values
from core.logs.ticks import by_ticks
from core.traces import F64


def _switched(seed: int, tenths: int = 400_000) -> F64:
    """The power of each tenth of a second: a heater that goes on and off at odd moments."""
    rng = np.random.default_rng(seed)
    power, level = np.empty(tenths), 60.0
    at = 0
    while at < tenths:
        until = at + int(rng.integers(300, 1500))
        power[at:until] = level
        at, level = until, 360.0 - level + 60.0
    return power


def _read(seed: int, interval_s: int, averaging: bool, step_wh: float) -> tuple[F64, F64, F64]:
    power = _switched(seed)
    rows = power.reshape(-1, 10 * interval_s)
    time_s = np.arange(1, rows.shape[0] + 1) * float(interval_s)
    values = rows.mean(axis=1) if averaging else rows[:, -1]
    counted = np.cumsum(rows.sum(axis=1)) / 36000
    return time_s, np.round(values), np.floor(counted / step_wh) * step_wh


@pytest.mark.parametrize("seed", [1, 2, 3])
@pytest.mark.parametrize("interval_s", [10, 20, 40])
@pytest.mark.parametrize("step_wh", [10.0, 50.0])
def test_a_coarse_counter_tells_means_from_instants(seed: int, interval_s: int, step_wh: float) -> None:
    for averaging in (True, False):
        time_s, power_w, counter_wh = _read(seed, interval_s, averaging, step_wh)
        told = by_ticks(time_s, power_w, 1.0, counter_wh)
        assert told is not None
        assert (told.means > 5) if averaging else (told.means < -5)
        kind = judge(time_s, power_w, 1.0, counter_wh).kind
        assert kind == ("averaged" if averaging else "sampled")


def test_few_ticks_tell_nothing() -> None:
    time_s, power_w, counter_wh = _read(1, 20, True, 1000.0)
    assert by_ticks(time_s, power_w, 1.0, counter_wh) is None


def test_a_counter_that_was_reset_is_held_against_nothing_there() -> None:
    time_s, power_w, counter_wh = _read(1, 20, True, 10.0)
    at = counter_wh.size // 2
    reset = counter_wh - np.where(np.arange(counter_wh.size) >= at, counter_wh[at], 0.0)
    told = by_ticks(time_s, power_w, 1.0, reset, (float(time_s[at]),))
    assert told is not None
    assert told.means > 5


@pytest.mark.parametrize("interval_s", [10, 20, 40])
@pytest.mark.parametrize("seed", [4, 5, 6])
def test_means_over_a_switching_are_met_nowhere_else(seed: int, interval_s: int) -> None:
    of_means = single_values(_read(seed, interval_s, True, 1.0)[1], 1.0)
    of_instants = single_values(_read(seed, interval_s, False, 1.0)[1], 1.0)
    assert of_means.unmatched >= 12
    assert of_means.share_of_switchings > 0.2
    assert of_instants.unmatched == 0


def test_a_load_without_levels_says_nothing_by_values_met_again() -> None:
    power_w = np.round(np.random.default_rng(8).uniform(20, 400, 900))
    reason = judge(np.arange(900) * np.float64(10.0), power_w, 1.0).reason
    assert "met nowhere" not in reason
