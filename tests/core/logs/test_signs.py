"""Powers below zero: what they are is decided from their shape and the counter, said, and can be chosen."""

import numpy as np
import pytest
from numpy.typing import NDArray

from core.logs import Reading, read_bytes
from core.study import Choices
from tests.core.logs.corpus import load, stamp

TRUTH = load()
F64 = NDArray[np.float64]


def read(power_w: F64, counter_wh: F64 | None = None, head: str = "W", **chosen: object) -> Reading:
    rows = [f"time,{head}" + ("" if counter_wh is None else ",Wh")]
    for i, value in enumerate(power_w):
        cells = [stamp(10.0 * i, "%Y-%m-%d %H:%M:%S"), f"{value:.1f}"]
        rows.append(",".join(cells if counter_wh is None else [*cells, f"{counter_wh[i]:.2f}"]))
    found = read_bytes("\n".join(rows).encode(), "log.csv", Choices(**chosen))  # type: ignore[arg-type]
    (reading,) = found.readings
    return reading


def power_of(reading: Reading) -> F64:
    assert reading.trace is not None
    return reading.trace.power_w


def codes(reading: Reading) -> set[str]:
    return {p.code for p in reading.problems}


def counted(power_w: F64) -> F64:
    return np.r_[0.0, np.cumsum(0.5 * (power_w[1:] + power_w[:-1]) * 10.0 / 3600)]


@pytest.mark.parametrize("head", ["W", "power"])
def test_a_meter_the_wrong_way_round_is_turned_and_said(head: str) -> None:
    reading = read(-TRUTH.power_w, head=head)
    np.testing.assert_allclose(power_of(reading), TRUTH.power_w)
    assert "log.power_turned" in codes(reading)
    assert dict(reading.reasons)["negative"].startswith("turned round: 100 %")
    assert reading.energy_used_wh == pytest.approx(TRUTH.counter_wh[-1], rel=1e-3)


def test_a_few_milliwatts_below_zero_are_not_turned() -> None:
    assert "log.power_turned" not in codes(read(-TRUTH.power_w, head="mW"))


@pytest.mark.parametrize("way", ["rises", "falls", "stands still"])
def test_the_counter_beside_it_is_used_as_it_runs(way: str) -> None:
    wh = counted(TRUTH.power_w)
    column = {"rises": wh, "falls": 5000.0 - wh, "stands still": 0.0 * wh + 812.4}[way]
    reading = read(-TRUTH.power_w, column)
    np.testing.assert_allclose(power_of(reading), TRUTH.power_w)
    assert reading.energy_used_wh == pytest.approx(wh[-1], rel=2e-3)
    assert (reading.energy_by_counter_wh is None) == (way == "stands still")


def test_a_few_values_of_noise_are_kept_and_said() -> None:
    rng = np.random.default_rng(5)
    power_w = np.where(np.arange(240) < 80, rng.normal(0, 0.5, 240), 120.0)
    reading = read(power_w)
    np.testing.assert_allclose(power_of(reading), power_w, atol=0.051)
    assert codes(reading) == {"log.negative_noise"}


def test_a_power_that_flows_back_is_kept_with_a_caution() -> None:
    power_w = TRUTH.power_w.copy()
    power_w[100:140] = -85.0
    reading = read(power_w)
    np.testing.assert_allclose(power_of(reading), power_w)
    assert "log.negative_power" in codes(reading)


def test_a_counter_that_leaves_it_out_is_told() -> None:
    power_w = TRUTH.power_w.copy()
    power_w[100:140] = -185.0
    reading = read(power_w, counted(np.maximum(power_w, 0.0)))
    assert "log.power_back" in codes(reading)


def test_signs_that_the_counter_knows_nothing_of_are_dropped() -> None:
    signs = np.where(np.arange(240) % 5 == 0, -1.0, 1.0)
    reading = read(TRUTH.power_w * signs, counted(TRUTH.power_w))
    np.testing.assert_allclose(power_of(reading), TRUTH.power_w)
    assert "log.power_sizes" in codes(reading)


@pytest.mark.parametrize("choice", ["keep", "turn", "size", "zero"])
def test_the_choice_is_followed(choice: str) -> None:
    written = -TRUTH.power_w
    written[:30] = 4.0
    reading = read(written, negative=choice)
    expected = {
        "keep": written, "turn": -written, "size": np.abs(written), "zero": np.maximum(written, 0.0)
    }  # fmt: skip
    np.testing.assert_allclose(power_of(reading), expected[choice])
    assert ("negative", "chosen by hand") in reading.reasons
