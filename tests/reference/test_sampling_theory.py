"""Sampling a switching load: the closed forms, and that this program's uncertainty agrees with what happens.

Sources are named at each check; the simulations are seeded.
"""

import math

import numpy as np
import pytest

from core.energy.integral import by_power_wh
from core.energy.lottery import lottery
from core.energy.sampling import RESOLVED, UNRESOLVED, factor, stretch_u_wh, switching
from core.energy.total import between
from core.study import Meter
from core.traces import F64, Trace
from core.uncertainty import u95_of


@pytest.mark.parametrize(("pulse_s", "variance_s2"), [(12, 216), (45, 225), (60, 0), (100, 200)])
def test_one_pulse_read_at_even_steps(pulse_s: float, variance_s2: float) -> None:
    # geometrical probability (P. A. P. Moran 1950; Kendall and Moran 1963; from memory): h2 f (1 - f).
    # A pulse of 3600 W has as many watt hours as the rows of the log give it seconds
    time = np.arange(0.0, 300.0, 30.0)
    read_s = np.empty(3000)
    for i, begin_s in enumerate(np.random.default_rng(int(pulse_s)).permutation(read_s.size) * (30 / 3000)):
        is_on = (time - 90 >= begin_s) & (time - 90 < begin_s + pulse_s)
        read_s[i] = by_power_wh(Trace.of(time, 3600.0 * is_on), 0, 270)
    assert float(read_s.mean()) == pytest.approx(pulse_s, rel=0.02)
    assert float(read_s.var()) == pytest.approx(variance_s2, rel=0.02, abs=0.5)


def ragged(on_s: float, off_s: float, cycles: int, rng: np.random.Generator, spread: float = 0.3) -> F64:
    """Moments at which a load goes on and off in turn, with lengths that scatter."""
    lengths = np.empty(2 * cycles)
    lengths[0::2] = off_s * rng.uniform(1 - spread, 1 + spread, cycles)
    lengths[1::2] = on_s * rng.uniform(1 - spread, 1 + spread, cycles)
    return np.cumsum(lengths)


def sampled(moments: F64, step_w: float, h_s: float, rng: np.random.Generator) -> tuple[Trace, float]:
    """The load sampled each `h_s` from a random phase on, and its exact energy over the trace. [Wh]"""
    time = np.arange(rng.uniform(0, h_s), moments[-1], h_s)
    power = step_w * (np.searchsorted(moments, time, side="right") % 2)
    edges = np.concatenate(([time[0]], moments[(moments > time[0]) & (moments < time[-1])], [time[-1]]))
    is_on = np.searchsorted(moments, (edges[:-1] + edges[1:]) / 2) % 2
    exact = float(np.dot(np.diff(edges), step_w * is_on)) / 3600
    return Trace.of(time - time[0], power, resolution_w=0.1), exact


def test_resolved_pulses() -> None:
    # mean of f (1 - f) is 1/6: u = S h sqrt(n / 6); 200 W, 30 s, 80 pulses: 6.09 Wh
    rng = np.random.default_rng(1)
    errors, claimed = [], []
    for _ in range(400):
        trace, exact = sampled(ragged(130, 170, 80, rng), 200, 30, rng)
        errors.append(float(np.trapezoid(trace.power_w, trace.time_s)) / 3600 - exact)
        claimed.append(stretch_u_wh(trace, 0, trace.time_s.size - 1))
    formula = 200 * 30 * math.sqrt(80 / 6) / 3600
    assert formula == pytest.approx(6.09, abs=5e-3)
    assert float(np.std(errors)) == pytest.approx(formula, rel=0.06)
    assert 0.9 < float(np.mean(claimed)) / float(np.std(errors)) < 1.6


def test_unresolved_pulses() -> None:
    # binomial: S h sqrt(N p (1 - p)); on 13 s, off 20 s, 80 cycles, 200 W, 30 s: 7.64 Wh (raised: cycle near
    # h)
    rng = np.random.default_rng(2)
    errors, claimed, naive = [], [], []
    for _ in range(400):
        trace, exact = sampled(ragged(13, 20, 80, rng), 200, 30, rng)
        errors.append(float(np.trapezoid(trace.power_w, trace.time_s)) / 3600 - exact)
        last = trace.time_s.size - 1
        claimed.append(max(stretch_u_wh(trace, 0, last), lottery(trace, 0, last).u_wh))
        naive.append(stretch_u_wh(trace, 0, last))
    p, count = 13 / 33, 80 * 33 / 30
    formula = 200 * 30 * math.sqrt(count * p * (1 - p)) / 3600
    assert formula == pytest.approx(7.64, abs=5e-2)
    assert 0.8 < float(np.std(errors)) / formula < 1.3
    assert 0.75 < float(np.mean(claimed)) / float(np.std(errors)) < 1.3
    # taken at its face, the drifting phase looks well resolved
    assert float(np.mean(naive)) < 0.5 * float(np.std(errors))


def test_lock_in() -> None:
    # by definition: a cycle of 30 s sampled each 30 s reads 0 or 1 in place of its share; no averaging helps
    time = np.arange(0.0, 3601, 30.0)
    for phase in (3.0, 20.0):
        power = np.where((time < 90) | ((time + phase) % 30 < 12), 300.0, 60.0)
        trace = Trace.of(time, power, resolution_w=0.1)
        read = float(np.trapezoid(trace.power_w, trace.time_s)) / 3600
        assert abs(read - (60 + 240 * 0.4)) > 80
    # the heater that the warm-up showed and the samples never meet again is doubted
    assert lottery(trace, 0, time.size - 1).hidden_u_wh * 1.96 > 240 * 0.25
    steady = Trace.of(time, np.full(time.size, 60.0), resolution_w=0.1)
    assert lottery(steady, 0, time.size - 1).hidden_u_wh == 0


@pytest.mark.parametrize("intervals", [1.0, 0.95, 1.05, 1 / 2, 1 / 3, 2.0])
def test_a_cycle_that_keeps_step_is_told(intervals: float) -> None:
    # by definition: a cycle within 10 % of the sampling, or a simple fraction of it, is met at few moments
    time = np.arange(0.0, 9000.0, 30.0)
    holds = (time >= 1200) & (time < 7800)
    for phase in (0.1, 0.45, 0.85):
        is_on = ((time / (30.0 * intervals) + phase) % 1 < 0.4) & holds
        warms_up = (time >= 600) & (time < 1200)
        power = np.where(warms_up, 300.0, np.where(holds, 60.0 + 240.0 * is_on, 5.0))
        energy = between(Trace.of(time, power, resolution_w=0.1), 600, 7800, Meter("m", "one", 0.0, 0.0))
        told = {problem.code for problem in energy.problems}
        assert told & {"energy.heater_unseen", "energy.sampling_lottery", "energy.in_step"}
        true_wh = (600 * 300 + 6600 * (60 + 0.4 * 240)) / 3600
        assert abs(energy.energy_wh - true_wh) <= u95_of(energy)


def test_random_telegraph() -> None:
    # exponential autocorrelation (A. Papoulis, from memory): mean over T of a load on 20 s, off 30 s on
    # average
    rng = np.random.default_rng(3)
    p, tau, total = 0.4, 12.0, 1800.0
    variance = 2 * p * (1 - p) * (tau / total) * (1 - tau / total * (1 - math.exp(-total / tau)))
    assert math.sqrt(variance) == pytest.approx(0.05638, abs=5e-5)
    means = []
    for _ in range(2500):
        lengths = np.empty(160)
        starts_on = rng.random() < p
        lengths[0::2] = rng.exponential(20 if starts_on else 30, 80)
        lengths[1::2] = rng.exponential(30 if starts_on else 20, 80)
        moments = np.minimum(np.concatenate(([0.0], np.cumsum(lengths))), total)
        on = np.diff(moments)[0 if starts_on else 1 :: 2].sum()
        means.append(on / total)
    assert float(np.std(means)) == pytest.approx(math.sqrt(variance), rel=0.06)


@pytest.mark.parametrize("h_s", [2.0, 8.0, 25.0, 60.0])
def test_telegraph_between_resolved_and_not(h_s: float) -> None:
    # the closed form of core.energy.sampling, derived from the same autocorrelation: what it claims is
    # what happens
    rng = np.random.default_rng(int(h_s))
    errors, claimed = [], []
    for _ in range(300):
        lengths = rng.exponential(25.0, 400) * np.tile([0.8, 1.2], 200)
        trace, exact = sampled(np.cumsum(lengths), 200, h_s, rng)
        errors.append(float(np.trapezoid(trace.power_w, trace.time_s)) / 3600 - exact)
        claimed.append(stretch_u_wh(trace, 0, trace.time_s.size - 1))
    assert float(np.mean(claimed)) == pytest.approx(float(np.std(errors)), rel=0.15)


def test_factor_at_its_ends() -> None:
    assert factor(0.0) == UNRESOLVED
    assert factor(0.9999) == pytest.approx(RESOLVED, rel=1e-3)
    values = [factor(r) for r in np.linspace(0, 1, 50)]
    assert values == sorted(values, reverse=True)


def test_correlated_samples() -> None:
    # AR(1): n_eff = n (1 - rho) / (1 + rho); var(mean) = s2/n (1 + 2 sum (1 - k/n) rho^k), exact 44.94
    n, rho = 400, 0.8
    exact = n / (1 + 2 * sum((1 - k / n) * rho**k for k in range(1, n)))
    assert n * (1 - rho) / (1 + rho) == pytest.approx(44.4, abs=0.05)
    assert exact == pytest.approx(44.94, abs=0.01)
    rng = np.random.default_rng(6)
    steps = rng.normal(0, 1, 20_000)
    series = np.empty_like(steps)
    level = 0.0
    for i, step in enumerate(steps):
        level = series[i] = rho * level + math.sqrt(1 - rho**2) * step
    # the autocorrelation that this program reads off the squared steps
    assert switching(series).autocorrelation == pytest.approx(rho, abs=0.03)


def test_rounding() -> None:
    # q / sqrt(12) for any busy signal
    rng = np.random.default_rng(7)
    signal = rng.normal(100, 30, 100_000)
    assert float(np.std(np.round(signal / 3) * 3 - signal)) == pytest.approx(0.2887 * 3, rel=0.01)
