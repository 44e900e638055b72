"""The counter's readings and the power column joined: known answers of small chains."""

import numpy as np
import pytest

from core.energy.fusion import COUNTER_STEP, Fused, Increment, Seen, fuse
from core.results.values import Influence


def link(energy_wh: float, u_wh: float, is_known: bool = True) -> Increment:
    return Increment(energy_wh, (Influence("sampling", u_wh),), is_known)


def fused(*args: object) -> Fused:
    found = fuse(*args)  # type: ignore[arg-type] # handed on as they are
    assert found is not None
    return found


def test_without_a_counter_the_power_is_added_up() -> None:
    found = fused((link(1, 1.0), link(10, 3.0), link(2, 4.0)), (), 1, 3)
    assert found.energy_wh == pytest.approx(12.0)
    assert found.u_wh == pytest.approx(5.0)


def test_a_fine_counter_decides() -> None:
    found = fused((link(10, 3.0),), (Seen(0, 5000.0, 0.01, 0), Seen(1, 5012.0, 0.01, 0)), 0, 1)
    assert found.energy_wh == pytest.approx(12.0, abs=1e-3)
    assert {i.name: i.u_wh for i in found.influences}[COUNTER_STEP] == pytest.approx(0.01 * 2**0.5, rel=1e-3)


def test_two_ways_of_one_size_are_averaged() -> None:
    # power 10 +- 1 and counter 12 +- 1 (two readings of 1 / sqrt(2) each)
    found = fused((link(10, 1.0),), (Seen(0, 0.0, 0.5**0.5, 0), Seen(1, 12.0, 0.5**0.5, 0)), 0, 1)
    assert found.energy_wh == pytest.approx(11.0)
    assert found.u_wh == pytest.approx(0.5**0.5)


def test_a_reading_alone_tells_nothing() -> None:
    found = fused((link(10, 1.0),), (Seen(1, 500.0, 0.01, 0),), 0, 1)
    assert found.energy_wh == pytest.approx(10.0)
    assert found.u_wh == pytest.approx(1.0)


def test_a_reset_between_two_readings_tells_nothing_over_it() -> None:
    found = fused((link(10, 1.0),), (Seen(0, 500.0, 0.01, 0), Seen(1, 3.0, 0.01, 1)), 0, 1)
    assert found.energy_wh == pytest.approx(10.0)


def test_the_counter_alone_and_when_it_cannot_tell() -> None:
    links = (link(1, 0.1), link(99, 5.0, is_known=False), link(2, 0.1))
    seen = (Seen(1, 100.0, 0.2, 0), Seen(2, 120.0, 0.2, 0))
    found = fused(links, seen, 0, 3)
    assert found.energy_wh == pytest.approx(1 + 20 + 2)
    assert found.u_wh == pytest.approx((0.2**2 * 2 + 0.1**2 * 2) ** 0.5)
    assert fuse(links, seen[:1], 0, 3) is None


def test_what_it_claims_is_what_happens() -> None:
    rng = np.random.default_rng(9)
    doubts, noises = np.array([0.3, 0.5, 2.0, 0.4, 0.2]), np.array([0.1, 0.6, 0.6, 0.05])
    places = (0, 2, 3, 5)
    errors, claimed = [], 0.0
    for _ in range(4000):
        true = np.array([1.0, 2.0, 50.0, 2.0, 1.0])
        power = true + rng.normal(0, doubts)
        counter = 1e5 + np.concatenate(([0.0], np.cumsum(true)))
        seen = tuple(
            Seen(place, float(counter[place] + rng.normal(0, noise)), float(noise), 0)
            for place, noise in zip(places, noises, strict=True)
        )
        links = tuple(link(float(p), float(u)) for p, u in zip(power, doubts, strict=True))
        found = fused(links, seen, 1, 4)
        errors.append(found.energy_wh - 54.0)
        claimed = found.u_wh
    assert float(np.mean(errors)) == pytest.approx(0.0, abs=0.03)
    assert claimed == pytest.approx(float(np.std(errors)), rel=0.04)
    assert claimed < 0.5  # the power alone is unsure by more than 2
