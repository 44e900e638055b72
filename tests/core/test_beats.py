"""A heater near the rhythm of the samples shows as beats; what beats leave open is told."""

import numpy as np
import pytest
from numpy.typing import NDArray

from core.energy.beats import by_chance_rows, few_beats_rows, in_step_rows
from core.energy.total import between
from core.study import Meter
from core.traces import Trace
from core.uncertainty import u95_of

#: no gain, no offset: what is left is the sampling
METER = Meter("m", "bench meter", 0.0, 0.0)


def regular(samples_a_beat: float, share: float, rows: int = 1300, phase: float = 0.0) -> NDArray[np.bool_]:
    return np.asarray((np.arange(rows) / samples_a_beat + phase) % 1.0 < share)


@pytest.mark.parametrize("beat", [7, 19, 40])
def test_beats_of_whole_samples_are_unsure_by_what_one_of_them_is(beat: int) -> None:
    errors, doubts = [], []
    rng = np.random.default_rng(beat)
    for _ in range(200):
        share, phase = rng.uniform(0.2, 0.8), rng.uniform()
        rows = beat * (1300 // beat)
        is_on = regular(beat, share, rows, phase)
        errors.append(np.count_nonzero(is_on) - share * rows)
        doubts.append(in_step_rows(is_on))
    spread = float(np.sqrt(np.mean(np.square(errors))))
    assert spread > 0.35 * 1300 / beat
    assert float(np.median(doubts)) == pytest.approx(spread, rel=0.15)


def test_beats_that_drift_through_the_samples_even_out() -> None:
    whole, drifting = in_step_rows(regular(19.0, 0.4)), in_step_rows(regular(19.382, 0.4))
    assert whole > 25
    assert drifting < whole / 8


def test_beats_of_unlike_length_are_not_in_step() -> None:
    rng = np.random.default_rng(3)
    lengths = rng.integers(4, 12, 200)
    is_on = np.repeat(np.arange(200) % 2 == 0, lengths)
    assert in_step_rows(is_on) == 0


def test_unlike_beats_are_unsure_by_their_scatter() -> None:
    # a drifting phase that also wanders: the share that is seen against the true one
    rng = np.random.default_rng(5)
    errors, doubts = [], []
    for _ in range(200):
        phase = rng.uniform() + np.cumsum(rng.normal(0.05, 0.04, 1300))
        is_on = phase % 1.0 < 0.4
        errors.append(np.count_nonzero(is_on) - 0.4 * 1300)
        doubts.append(by_chance_rows(is_on))
    spread = float(np.sqrt(np.mean(np.square(errors))))
    assert 0.8 * spread < float(np.median(doubts)) < 1.6 * spread


def test_alike_beats_leave_nothing_to_chance() -> None:
    assert by_chance_rows(regular(20, 0.4, 1300)) < 0.01 * 1300


def test_few_beats_err_as_one() -> None:
    # half on, then half off: it may as well have been all on or all off
    assert few_beats_rows(np.arange(100) < 50) == pytest.approx(100 * 0.5 / np.sqrt(2))
    assert few_beats_rows(np.ones(100, dtype=bool)) == 0


def run(rng: np.random.Generator, interval_s: float, cycle_s: float, jitter: float) -> tuple[Trace, float]:
    """A warm-up and two hours of a heater with irregular cycles; and the true energy. [Wh]"""
    share, step_w, end_s = rng.uniform(0.15, 0.7), rng.uniform(150, 350), 8000.0
    count = int(7000 / cycle_s * 1.3) + 300
    lengths = np.stack((share * cycle_s * np.ones(count), (1 - share) * cycle_s * np.ones(count)), axis=1)
    lengths = lengths.ravel() * rng.uniform(1 - jitter, 1 + jitter, 2 * count)
    edges = 1100 - rng.uniform(0, cycle_s) + np.concatenate(([0.0], np.cumsum(lengths)))
    time = np.arange(rng.uniform(0, interval_s), end_s + 600, interval_s)
    on = np.searchsorted(edges, time, side="right") % 2 == 1
    heats, works = (time >= 600) & (time < 1100), (time >= 1100) & (time < end_s)
    power = np.where(heats, 60 + step_w, np.where(works, 60 + step_w * on, 5.0))
    power = power + np.where(works, rng.normal(0, 1.5, time.size), 0.0)
    inside = np.clip(edges, 1100, end_s)
    on_s = float(np.sum(inside[1::2] - inside[:-1:2]))
    true_wh = (500 * (60 + step_w) + (end_s - 1100) * 60 + step_w * on_s) / 3600
    return Trace.of(time, np.round(power, 1), resolution_w=0.1), true_wh


@pytest.mark.parametrize("jitter", [0.0, 0.03, 0.1])
def test_intervals_hold_the_truth_for_cycles_near_the_interval(jitter: float) -> None:
    rng = np.random.default_rng(20261126)
    held = []
    for _ in range(120):
        interval_s = float(rng.choice([5.0, 10.0, 15.0]))
        trace, true_wh = run(rng, interval_s, interval_s * rng.uniform(0.94, 1.12), jitter)
        energy = between(trace, 600, 8000, METER)
        held.append(abs(energy.energy_wh - true_wh) <= u95_of(energy))
    # 95 of 100 expected; 120 runs scatter by 2 of 100
    assert np.mean(held) >= 0.91


def test_a_heater_in_step_is_said_in_words() -> None:
    rng = np.random.default_rng(8)
    trace, _ = run(rng, 10.0, 9.5, 0.0)
    energy = between(trace, 600, 8000, METER)
    assert "energy.in_step" in [problem.code for problem in energy.problems]
    assert "readings in step" in [influence.name for influence in energy.influences]


def test_a_true_slow_cycle_is_not_said_to_run_in_step() -> None:
    rng = np.random.default_rng(9)
    for _ in range(20):
        trace, _ = run(rng, 2.0, 47.0, 0.1)
        codes = [problem.code for problem in between(trace, 600, 8000, METER).problems]
        assert "energy.in_step" not in codes
