"""Steps of switch-on tests: found where they are, with watts whose intervals hold the truth."""

import numpy as np
import pytest

from core.loads.steps import find_steps
from core.study import Meter
from core.traces import Sampling, Trace
from tests.core.stairs import EACH_S, STANDBY_W, heater, made, staircase

METER = Meter("m", "Meter", gain_percent=1.0)


@pytest.mark.parametrize("kind", ["sampled", "averaged"])
def test_steps_up_and_down_are_found_where_they_are(kind: Sampling) -> None:
    moves_w = [0.7, 4.0, 2.5, -4.0, 9.0, -0.7]
    found = find_steps(staircase(moves_w, kind=kind), 0.0, 1e9, METER)
    assert [s.at_s for s in found.steps] == pytest.approx([EACH_S * (i + 1) for i in range(6)], abs=3.0)
    assert [s.watts for s in found.steps] == pytest.approx(moves_w, abs=0.1)
    assert found.plateaus[0].mean_w == pytest.approx(STANDBY_W, abs=0.05)


def test_the_intervals_hold_the_truth_in_about_95_of_100() -> None:
    """The gain of each meter is drawn too, from the distribution that its accuracy states."""
    rng = np.random.default_rng(7)
    moves_w = [0.9, 2.2, 0.6, -2.2, 5.5]
    held = tried = 0
    for seed in range(120):
        gain = 1 + rng.uniform(-0.01, 0.01)
        trace = staircase([gain * w for w in moves_w], seed, noise_w=0.15)
        found = find_steps(trace, 0.0, 1e9, METER)
        assert len(found.steps) == len(moves_w), seed
        for step, watts in zip(found.steps, moves_w, strict=True):
            held += abs(step.watts - watts) <= step.u95_w(0.01 / 3**0.5)
            tried += 1
    assert 0.92 <= held / tried <= 0.985


def test_noise_alone_has_no_steps() -> None:
    wrong = [
        s for seed in range(40) for s in find_steps(staircase([], seed, each_s=1500), 0, 1e9, METER).steps
    ]
    assert not wrong


def test_a_heater_heats_up_and_is_held() -> None:
    rng = np.random.default_rng(2)
    power_w = np.r_[np.full(240, 5.0), 5.0 + heater(25.0, 150.0), np.full(240, 5.0)]
    found = find_steps(made(power_w + 0.06 * rng.standard_normal(power_w.size)), 0.0, 1e9, METER)
    assert [p.is_switching for p in found.plateaus] == [False, False, True, False]
    assert found.steps[0].watts == pytest.approx(150.0, abs=0.2)
    held_w = found.steps[0].watts + found.steps[1].watts
    assert held_w == pytest.approx(25.0, abs=1.0)


def test_a_load_turned_on_while_a_heater_switches() -> None:
    rng = np.random.default_rng(3)
    cycles = heater(25.0, 150.0, heating_s=90, cycles=12)
    later = np.arange(cycles.size) >= 90 + 6 * 60
    power_w = np.r_[np.full(240, 5.0), 5.0 + cycles + 8.0 * later]
    found = find_steps(made(power_w + 0.06 * rng.standard_normal(power_w.size)), 0.0, 1e9, METER)
    assert found.steps[-1].watts == pytest.approx(8.0, abs=0.1)
    assert [p.is_switching for p in found.plateaus[-2:]] == [True, True]


def test_a_coarse_display_widens_the_interval() -> None:
    fine, coarse = (staircase([6.3], noise_w=0.02, resolution_w=r) for r in (0.1, 1.0))
    a, b = (find_steps(t, 0.0, 1e9, METER).steps[0] for t in (fine, coarse))
    assert abs(b.watts - 6.3) <= b.u95_w(0.0)
    assert b.u_w > 4 * a.u_w


def test_rows_only_on_change() -> None:
    trace = Trace.of([0, 200, 400, 600, 800], [3.0, 5.0, 9.0, 5.0, 5.0], "on_change", resolution_w=0.1)
    found = find_steps(trace, 0.0, 800.0, METER)
    assert [s.watts for s in found.steps] == pytest.approx([2.0, 4.0, -4.0], abs=0.01)


def test_too_few_rows_have_no_steps() -> None:
    assert find_steps(Trace.of([0.0, 1.0], [3.0, 9.0]), 0.0, 1.0, METER).plateaus == ()
