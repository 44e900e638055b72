"""A coarse counter read slowly: its ticks tell together, and say what the power is worth between them."""

import numpy as np
import pytest

from core.energy import beside
from core.energy.sampling import roughness
from core.energy.settling import Settled, settle
from core.energy.ticks import Used
from core.energy.together import Told, begun_at_0, together
from core.energy.total import between
from core.energy.warm_up import warm_up
from core.study import Meter
from core.traces import F64, Trace

METER = Meter("m", "bench meter")
STEP_S = 0.5


def load(cycle_s: float, share: float, seconds: float = 7200.0, seed: int = 0) -> F64:
    """Power each half second: idle, a run with a heater of 260 W that switches, idle. [W]"""
    rng = np.random.default_rng(seed)
    time = np.arange(0, seconds, STEP_S)
    ragged = time + np.cumsum(rng.normal(0, 0.03, time.size))
    heater = 260.0 * (ragged % cycle_s < share * cycle_s)
    before, after = np.full(2400, 8.0), np.full(2400, 8.0)
    return np.concatenate((before, 60.0 + heater, after))


def metered(power: F64, interval_s: float, q: float, phase_s: float, offset_wh: float) -> Trace:
    time = np.arange(phase_s, power.size * STEP_S - 1, interval_s)
    used = np.concatenate(([0.0], np.cumsum(power) * STEP_S / 3600))
    counter = np.floor((np.interp(time, np.arange(used.size) * STEP_S, used) + offset_wh) / q) * q
    values = power[(time / STEP_S).astype(int)]
    return Trace.of(time, values, counter_wh=counter, counter_step_wh=q, resolution_w=0.1)


def test_ticks_that_all_say_the_same_are_no_surer_than_one() -> None:
    # 4 Wh from row to row and 12 Wh from tick to tick: every tick falls at the same place
    alone, u_alone = together(Told(120.0, Used(4.0, 0.0), 0.0, 0.0), (), 12.0)
    others = [Told(120.0 - 12.0 * n, Used(4.0, 0.0), 12.0 * n, 0.01) for n in (1, 2)]
    reading, u = together(Told(120.0, Used(4.0, 0.0), 0.0, 0.0), others, 12.0)
    assert reading == pytest.approx(alone, abs=0.02)
    assert u == pytest.approx(u_alone, rel=0.02)


def test_ticks_at_different_places_shut_out_what_cannot_be() -> None:
    # the neighbour says that at least 3 Wh were used since the tick, this one that at most 4 were
    others = [Told(111.0, Used(4.0, 0.0), 12.0, 0.01)]
    reading, u = together(Told(120.0, Used(4.0, 0.0), 0.0, 0.0), others, 12.0)
    assert reading == pytest.approx(123.5, abs=0.1)
    assert u == pytest.approx(1 / np.sqrt(12), rel=0.1)


def test_neighbours_that_cannot_be_right_are_passed_over() -> None:
    others = [Told(500.0, Used(4.0, 0.0), 12.0, 0.01)]
    asked = Told(120.0, Used(4.0, 0.0), 0.0, 0.0)
    assert together(asked, others, 12.0) == together(asked, (), 12.0)


def test_a_first_tick_tells_whether_a_counter_was_set_to_0() -> None:
    # 9.8 to 10.4 Wh were used by the first tick: just what is needed from 0
    reading, u = begun_at_0(Told(10.0, Used(0.6, 0.0), -10.4, 0.1), 10.0)
    assert reading < 0.3
    assert u < 0.3
    # 5.4 at the most: the counter stood at half a step
    reading, u = begun_at_0(Told(10.0, Used(0.6, 0.0), -5.4, 0.1), 10.0)
    assert reading == pytest.approx(4.9, abs=0.1)
    assert u == pytest.approx(0.6 / np.sqrt(12), abs=0.05)
    # nobody knows what was used: set to 0 or anywhere, at even odds
    reading, u = begun_at_0(Told(10.0, Used(5.0, 20.0), -8.0, 20.0), 10.0)
    assert 1.5 < reading < 3.5
    assert u > 2.5
    # more was used than can have been: it stands anywhere
    assert begun_at_0(Told(10.0, Used(0.1, 0.0), -30.0, 0.01), 10.0) == (5.0, 10.0 / np.sqrt(12))


def energies_in_a_row(pause_s: float, q: float, seed: int, begins_wh: float) -> list[tuple[float, float]]:
    """Error and own doubt of three runs with pauses between, read each 30 s. [Wh]"""
    rng = np.random.default_rng(seed)
    idle = np.full(round(pause_s / STEP_S), 9.0)
    made = [
        load(rng.uniform(25, 140), rng.uniform(0.25, 0.5), 2500.0, seed + n)[2400:-2400] for n in range(3)
    ]
    heating = np.full(200, 330.0)
    power = np.concatenate([idle, *(x for run in made for x in (heating, run, idle))])
    phase_s = rng.uniform(0, 30)
    trace = metered(power, 30.0, q, phase_s, begins_wh)
    found, at = [], idle.size
    for run in made:
        first, last = at * STEP_S - phase_s, (at + heating.size + run.size) * STEP_S - phase_s
        truth_wh = float(power[at : at + heating.size + run.size].sum()) * STEP_S / 3600
        at += heating.size + run.size + idle.size
        rows = [np.searchsorted(trace.time_s, t) for t in (first, last)]
        edges = [float(trace.time_s[r - 1] + trace.time_s[r]) / 2 for r in rows]
        energy = between(trace, *edges, METER)
        own = np.sqrt(sum(i.u_wh**2 for i in energy.influences if i.shared is None))
        found.append((energy.energy_wh - truth_wh, float(own)))
    return found


def test_a_run_close_by_does_not_make_the_quiet_between_uncertain() -> None:
    both = np.array([x for seed in range(12) for x in energies_in_a_row(200.0, 1.0, seed, 300.2 + seed)])
    assert np.median(both[:, 1]) < 0.4
    assert np.mean(np.abs(both[:, 0]) <= 1.96 * both[:, 1]) >= 0.86


@pytest.mark.parametrize("begins_wh", [0.0, 4.0])
def test_a_counter_that_begins_at_0(begins_wh: float) -> None:
    first = np.array([energies_in_a_row(400.0, 10.0, seed, begins_wh)[0] for seed in range(20)])
    assert np.median(first[:, 1]) < 2.0
    assert np.count_nonzero(np.abs(first[:, 0]) <= 1.96 * first[:, 1]) >= 17


def settled(interval_s: float, cycle_s: float, share: float) -> Settled:
    trace = metered(load(cycle_s, share), interval_s, 10.0, 3.0, 4.0)
    first, last = (int(np.searchsorted(trace.time_s, s)) for s in (1210.0, 8380.0))
    found = settle(trace, first, last, roughness(trace, first, last))
    assert found is not None
    return found


def test_samples_that_see_the_cycle_are_believed_and_a_lottery_is_not() -> None:
    seen, lottery = settled(10.0, 400.0, 0.4), settled(30.0, 21.0, 0.4)
    assert seen.weight > 0.8
    assert lottery.weight < 0.3
    assert lottery.counter_w == pytest.approx(60 + 0.4 * 260, rel=0.02)
    # far surer than a binomial lottery of the eight or so samples from tick to tick
    assert lottery.u_wh < 0.5 * 260 * 30 * np.sqrt(8 * 0.24) / 3600


def test_a_fine_counter_or_a_short_run_settles_nothing() -> None:
    trace = metered(load(21.0, 0.4), 30.0, 0.5, 3.0, 0.2)
    inner = roughness(trace, 45, 270)
    assert settle(trace, 45, 270, inner) is None
    coarse = metered(load(21.0, 0.4, 900.0), 30.0, 10.0, 3.0, 0.2)
    assert settle(coarse, 42, 68, inner) is None


@pytest.mark.parametrize("cycle_s", [21.0, 31.0, 47.0])
def test_the_interval_holds_at_thirty_seconds_with_a_counter_of_ten_watt_hours(cycle_s: float) -> None:
    rng = np.random.default_rng(int(cycle_s))
    errors, own = [], []
    for seed in range(30):
        power = load(cycle_s, rng.uniform(0.25, 0.55), rng.uniform(2500, 7000), seed)
        truth_wh = float(power[2400:-2400].sum()) * STEP_S / 3600
        phase_s = rng.uniform(0, 30)
        trace = metered(power, 30.0, 10.0, phase_s, rng.uniform(0, 10))
        start_s, end_s = 1200.0 + rng.uniform(-8, 8) - phase_s, (power.size - 2400) * STEP_S - phase_s
        energy = between(trace, start_s, end_s, METER)
        errors.append(energy.energy_wh - truth_wh)
        own.append(np.sqrt(sum(i.u_wh**2 for i in energy.influences if i.shared is None)))
    held = np.abs(errors) <= 1.96 * np.array(own)
    # of 30 that hold in 95 of 100 cases, fewer than 26 hold in 1 case of 60
    assert np.count_nonzero(held) >= 26
    # and an interval that always held would be too wide
    assert np.sqrt(np.mean((np.array(errors) / own) ** 2)) > 0.4


def test_a_tick_in_the_run_before_is_trusted_no_more_than_its_samples() -> None:
    # the only tick before the run lies in the run before it, with half a minute of heating after it
    rng = np.random.default_rng(5)
    errors, own = [], []
    for seed in range(12):
        run = load(23.0, 0.4, 3000.0, seed)
        power = np.concatenate((run[:-1800], run[1800:]))
        half = run.size - 1800
        truth_wh = float(power[half + 600 : -2400].sum()) * STEP_S / 3600
        phase_s = rng.uniform(0, 30)
        trace = metered(power, 30.0, 10.0, phase_s, rng.uniform(0, 10))
        start_s = (half + 600) * STEP_S - phase_s
        energy = between(trace, start_s, (power.size - 2400) * STEP_S - phase_s, METER)
        errors.append(energy.energy_wh - truth_wh)
        own.append(np.sqrt(sum(i.u_wh**2 for i in energy.influences if i.shared is None)))
    assert np.count_nonzero(np.abs(errors) <= 1.96 * np.array(own)) >= 10


def test_a_counter_that_stands_before_the_run_bounds_it() -> None:
    # idle draws far less than a step, so nothing ticks before the run
    rng = np.random.default_rng(8)
    errors, own = [], []
    for seed in range(30):
        power = load(29.0, rng.uniform(0.3, 0.5), rng.uniform(2000, 5000), seed)[1800:]
        truth_wh = float(power[600:-2400].sum()) * STEP_S / 3600
        phase_s = rng.uniform(0, 30)
        trace = metered(power, 30.0, 1.0, phase_s, rng.uniform(1, 2))
        start_s = 300.0 + rng.uniform(-14, 14) - phase_s
        energy = between(trace, start_s, (power.size - 2400) * STEP_S - phase_s, METER)
        errors.append(energy.energy_wh - truth_wh)
        own.append(np.sqrt(sum(i.u_wh**2 for i in energy.influences if i.shared is None)))
    assert np.count_nonzero(np.abs(errors) <= 1.96 * np.array(own)) >= 26
    # a first interval with its heater on, unseen, would leave well over half a watt-hour
    assert np.sqrt(np.mean(np.square(errors))) < 0.5


def test_a_counter_set_to_nothing_as_the_log_begins_bounds_nothing() -> None:
    power = load(29.0, 0.4, 3000.0)[1800:]
    unknown, from_zero = metered(power, 30.0, 1.0, 3.0, 5.0), metered(power, 30.0, 1.0, 3.0, 0.0)
    ends = (297.0, (power.size - 2400) * STEP_S - 3.0, METER)
    u_unknown, u_from_zero = (
        sum(i.u_wh**2 for i in between(trace, *ends).influences if i.shared is None)
        for trace in (unknown, from_zero)
    )
    assert u_unknown < u_from_zero


@pytest.mark.parametrize("cycle_s", [23.0, 31.0])
def test_the_tail_of_the_run_before_is_told_by_the_ticks_of_that_run(cycle_s: float) -> None:
    # idle draws too little for a tick between the runs, so the last one lies minutes before the first ended,
    # and samples that keep step with the heater may all meet it off in so short a tail
    rng = np.random.default_rng(14)
    errors, own = [], []
    for seed in range(30):
        run = load(cycle_s, rng.uniform(0.3, 0.5), rng.uniform(3500, 6000), seed)
        power = np.concatenate((run[:-1200], run[1200:]))
        # the heater is on without a break at first
        power[run.size : run.size + 480] = 320.0
        truth_wh = float(power[run.size : -2400].sum()) * STEP_S / 3600
        phase_s = rng.uniform(0, 30)
        trace = metered(power, 30.0, 10.0, phase_s, rng.uniform(0, 10))
        ends_s = run.size * STEP_S - phase_s, (power.size - 2400) * STEP_S - phase_s
        energy = between(trace, *ends_s, METER)
        errors.append(energy.energy_wh - truth_wh)
        own.append(np.sqrt(sum(i.u_wh**2 for i in energy.influences if i.shared is None)))
    assert np.count_nonzero(np.abs(errors) <= 1.96 * np.array(own)) >= 26
    # by the samples of the tail alone it is 2 Wh where they keep step with the heater
    assert np.sqrt(np.mean(np.square(errors))) < 0.9


def test_a_first_heating_without_a_break_hides_nothing() -> None:
    # the samples of the whole run are a lottery; eight that find the heater on are not
    rng = np.random.default_rng(15)
    power = load(23.0, 0.4, 3000.0)
    power[2400:2880] = 320.0
    trace = metered(power, 30.0, 10.0, 3.0, rng.uniform(0, 10))
    first, last = (int(np.searchsorted(trace.time_s, s)) for s in (1200.0, 4190.0))
    heating = warm_up(trace, first, last)
    assert 5 <= heating.last_row - first <= 8
    assert heating.around.mean_w == pytest.approx(320.0)
    assert warm_up(metered(load(23.0, 0.4, 3000.0), 30.0, 10.0, 3.0, 0.0), first, last).last_row < first


def test_levels_too_alike_tell_no_heated_stretch() -> None:
    trace = metered(load(23.0, 0.4, 3000.0), 30.0, 10.0, 3.0, 0.0)
    heated_w = beside.threshold_w(trace, 40, 139, 20)
    assert heated_w is not None
    assert 8.0 < heated_w < 60.0
    assert beside.threshold_w(trace, 60, 119, 20) is None


@pytest.mark.parametrize("off_s", [120.0, 400.0])
def test_a_heater_that_is_off_for_the_last_layers_is_not_taken_for_its_mean(off_s: float) -> None:
    rng = np.random.default_rng(9)
    errors, own = [], []
    for seed in range(30):
        power = load(rng.uniform(20, 50), rng.uniform(0.3, 0.5), rng.uniform(3500, 6000), 100 + seed)
        power[-2400 - int(off_s / STEP_S) : -2400] = 60.0
        truth_wh = float(power[2400:-2400].sum()) * STEP_S / 3600
        phase_s = rng.uniform(0, 20)
        trace = metered(power, 20.0, 10.0, phase_s, rng.uniform(0, 10))
        energy = between(trace, 1200 - phase_s, (power.size - 2400) * STEP_S - phase_s, METER)
        errors.append(energy.energy_wh - truth_wh)
        own.append(np.sqrt(sum(i.u_wh**2 for i in energy.influences if i.shared is None)))
    assert np.count_nonzero(np.abs(errors) <= 1.96 * np.array(own)) >= 26
    # by the mean from tick to tick it would be 2 Wh too much
    assert abs(np.mean(errors)) < 0.8


def test_a_few_ticks_tell_more_than_a_lottery_of_samples() -> None:
    trace = metered(load(23.0, 0.4, 1500.0), 30.0, 10.0, 3.0, 4.0)
    first, last = (int(np.searchsorted(trace.time_s, s)) for s in (1200.0, 2690.0))
    few = settle(trace, first, last, roughness(trace, first, last))
    assert few is not None
    assert few.counter_w == pytest.approx(60 + 0.4 * 260, rel=0.06)
    # not surer than many ticks are
    assert few.u_wh > 0.8 * settled(30.0, 23.0, 0.4).u_wh
