"""How far the energy of a sampled trace can be off because nobody looked between the samples.

Theory. A bed that switches is close to a random telegraph: two levels, exponential autocorrelation with the
time constant tau. For samples h apart (x = h / (2 tau)) the trapezoid rule then errs with the variance
``h^2 N sigma^2 (coth x - 1/x)``, and the mean squared step between neighbours is ``2 sigma^2 (1 - exp(-2
x))``. So the variance is ``c(r) * sum(step^2 h^2)``, where c depends only on the lag-1 autocorrelation r =
exp(-2 x): 1/12 when every pulse is resolved (each edge lies anywhere between two samples) and 1/2 when none
is (a binomial lottery). r is read off the trace itself: the mean squared step over two intervals is 1 + r
times that over one.
"""

import math
from functools import lru_cache

import numpy as np
from attrs import frozen

from core.averages import average, total
from core.energy.timing import HOLE, dead_band_w, shortest_interval_s, stamp_u_s
from core.traces import F64, GAP_INTERVALS, GAP_SECONDS, Trace, steps_of
from core.units import J_PER_WH

#: factor c when every edge is seen: an edge lies anywhere in its interval
RESOLVED = 1 / 12
#: factor c when the samples know nothing of each other
UNRESOLVED = 1 / 2
#: polls that are spelt out for one unchanged value of an on-change log; more of them tell nothing new
MAX_REPEATS = 20
#: what a reading of 0 W may hide: meters blank a watt or two; common practice, no source [W]
HIDDEN_U_W = 0.5


@frozen
class Switching:
    """What a sampled stretch says about the load that switches in it.

    Parameters
    ----------
    autocorrelation : float
        Of neighbouring samples, 0 to 1.
    factor : float
        c of the module's theory, from 1/12 to 1/2.
    """

    autocorrelation: float
    factor: float


@frozen
class Roughness:
    """What the power does between samples.

    Parameters
    ----------
    mean_square_step_w2, factor : float
        Mean squared step between neighbours [W2] and c of the module's theory.
    autocorrelation : float
        Of neighbouring samples, 0 to 1.
    mean_w, high_w : float
        Mean, and high level (95 %). [W]
    gap_w : float
        What may have been drawn where nothing was logged at all. [W]
    """

    mean_square_step_w2: float
    factor: float
    autocorrelation: float
    mean_w: float
    high_w: float
    gap_w: float = 0.0


def factor(autocorrelation: float) -> float:
    """Part of the squared steps that is error variance, for a lag-1 autocorrelation.

    Parameters
    ----------
    autocorrelation : float
        0 (samples independent) to 1 (every edge resolved).

    References
    ----------
    .. [1] A. Papoulis, *Probability, Random Variables and Stochastic Processes*, McGraw-Hill:
    autocorrelation of
       the random telegraph (from memory; the closed form above is derived from it).

    Examples
    --------
    >>> factor(0.0), round(factor(1.0), 6)
    (0.5, 0.083333)
    """
    if autocorrelation <= 1e-6:
        return UNRESOLVED
    if autocorrelation >= 1 - 1e-4:
        return RESOLVED
    x = -math.log(autocorrelation) / 2
    return (1 / math.tanh(x) - 1 / x) / (2 * (1 - autocorrelation))


def switching(power_w: F64) -> Switching:
    """How well the samples of a stretch resolve its switching.

    Parameters
    ----------
    power_w : ndarray, shape (n,)
        Evenly sampled. [W]
    """
    if power_w.size < 6:
        return Switching(0.0, UNRESOLVED)
    one = average(steps_of(power_w) ** 2)
    two = average((power_w[2:] - power_w[:-2]) ** 2)
    if one <= 0:
        return Switching(1.0, RESOLVED)
    r = min(max(two / one - 1, 0.0), 1.0)
    return Switching(r, factor(r))


def stretch_u_wh(trace: Trace, first_row: int, last_row: int, known_factor: float | None = None) -> float:
    """Standard uncertainty of the energy between two rows, from not looking between the rows. [Wh]

    Sampled: the random-telegraph formula of this module. Averaged: nothing is missed, but the stamps say
    only so well when a value's interval began. On-change: a change is reported at the poll after it,
    anywhere within the shortest interval of the log.
    """
    if last_row <= first_row:
        return 0.0
    power = trace.power_w[first_row : last_row + 1]
    seconds = steps_of(trace.time_s[first_row : last_row + 1])
    steps = steps_of(power)
    squares = float(steps.dot(steps))
    stamp_s = stamp_u_s(trace)
    if trace.kind == "averaged":
        holes = _hole_seconds(trace, seconds)
        lost = 1.5 * _factor(power, known_factor) * squares / steps.size * total(holes**2)
        return math.sqrt(squares * stamp_s**2 + lost) / J_PER_WH
    if trace.kind == "on_change":
        poll_s = shortest_interval_s(trace)
        c = _factor(_as_polled(trace, first_row, last_row), known_factor)
        return math.sqrt(squares * (c * poll_s**2 + stamp_s**2)) / J_PER_WH
    if trace.gaps:  # the stretch over a gap is accounted for as a gap
        seconds = np.where(seconds > max(GAP_INTERVALS * trace.median_s, GAP_SECONDS), 0.0, seconds)
    moved = steps * seconds
    variance = _factor(power, known_factor) * float(moved.dot(moved))
    return math.sqrt(variance + squares / 2 * stamp_s**2) / J_PER_WH


def _factor(power_w: F64, known: float | None) -> float:
    return switching(power_w).factor if known is None else known


def _as_polled(trace: Trace, first_row: int, last_row: int) -> F64:
    """The power each time the meter looked: an on-change log leaves out what it saw again. [W]"""
    power = trace.power_w[first_row : last_row + 1]
    poll_s = shortest_interval_s(trace)
    if trace.kind != "on_change" or poll_s <= 0:
        return power
    seconds = steps_of(trace.time_s[first_row : last_row + 1])
    repeats = np.minimum(np.maximum(np.round(seconds / poll_s), 1), MAX_REPEATS).astype(np.int64)
    return np.repeat(power[:-1], repeats)


def _hole_seconds(trace: Trace, seconds: F64) -> F64:
    """What the value of each interval of a regular averaged log does not stand for, as a row is missing. [s]

    Such a meter averages over its own fixed window; when a row is lost, the next one does not make up for it.
    """
    if trace.p95_s > HOLE * trace.median_s:
        return np.zeros_like(seconds)
    is_gap = seconds > max(GAP_INTERVALS * trace.median_s, GAP_SECONDS)
    return np.where((seconds > HOLE * trace.median_s) & ~is_gap, seconds - trace.median_s, 0.0)


def holes_more_wh(trace: Trace, first_row: int, last_row: int) -> float:
    """What missing rows of an averaged log add when each is taken as the mean of its neighbours. [Wh]"""
    if trace.kind != "averaged" or last_row <= first_row:
        return 0.0
    power = trace.power_w[first_row : last_row + 1]
    holes = _hole_seconds(trace, steps_of(trace.time_s[first_row : last_row + 1]))
    return float(np.dot(holes, power[:-1] - power[1:])) / 2 / J_PER_WH


@lru_cache(maxsize=8192)
def roughness(trace: Trace, first_row: int, last_row: int) -> Roughness:
    """What the power does between the samples of a stretch, as far as the samples tell."""
    power = trace.power_w[max(first_row, 0) : last_row + 1]
    if power.size < 2:
        level_w = float(power[0]) if power.size else 0.0
        return Roughness(0.0, UNRESOLVED, 1.0, level_w, level_w, level_w)
    steps = steps_of(power)
    seen = switching(_as_polled(trace, max(first_row, 0), last_row))
    rank = round(0.95 * (power.size - 1))
    high_w = float(np.partition(power, rank)[rank])
    mean_w = average(power)
    return Roughness(average(steps**2), seen.factor, seen.autocorrelation, mean_w, high_w, high_w)


def path_u_wh(
    trace: Trace, first_row: int, last_row: int, typical: Roughness, gap_w: float | None = None
) -> float:
    """Standard uncertainty of the power column between two rows, from sampling, stamps and gaps. [Wh]

    A handful of rows can miss every pulse, so they are never taken for calmer than the stretch they belong
    to. `gap_w` is what may have been drawn where nothing was logged, if not what `typical` says. [W]
    """
    if last_row <= first_row:
        return 0.0
    count = last_row - first_row
    local = stretch_u_wh(trace, first_row, last_row, typical.factor)
    stamp_s = stamp_u_s(trace)
    if trace.kind == "sampled":
        seconds = steps_of(trace.time_s[first_row : last_row + 1])
        squares = float(seconds.dot(seconds))
        usual = math.sqrt(typical.factor * typical.mean_square_step_w2 * squares) / J_PER_WH
    else:
        place_s = stamp_s
        if trace.kind == "on_change":
            place_s = math.hypot(stamp_s, shortest_interval_s(trace) * math.sqrt(typical.factor))
        usual = math.sqrt(typical.mean_square_step_w2 * count) * place_s / J_PER_WH
    # the stamps of the two rows themselves: a counter is read at the moment, not at its stamp
    ends = math.hypot(float(trace.power_w[first_row]), float(trace.power_w[last_row])) * stamp_s / J_PER_WH
    first_s, last_s = float(trace.time_s[first_row]), float(trace.time_s[last_row])
    unseen_s = math.hypot(*(g.seconds for g in trace.gaps if g.start_s >= first_s and g.end_s <= last_s))
    unseen_wh = (typical.gap_w if gap_w is None else gap_w) / math.sqrt(12) * unseen_s / J_PER_WH
    return math.hypot(max(local, usual), ends, unseen_wh)


def part_u_wh(trace: Trace, typical: Roughness, seconds: float) -> float:
    """Standard uncertainty of part of an interval in which one sample stands for all. [Wh]"""
    if trace.kind != "sampled":
        return 0.0
    return math.sqrt(typical.factor * typical.mean_square_step_w2) * seconds / J_PER_WH


def resolution_u_wh(trace: Trace, first_row: int, last_row: int) -> float:
    """Standard uncertainty from the power's rounding to its resolution. [Wh]

    Each reading is off by a rectangle of one resolution step; readings that repeat are off by the same
    amount, so a stretch of equal readings counts as one. An on-change value may drift by the meter's dead
    band unreported.

    References
    ----------
    .. [1] JCGM 100:2008, F.2.2.1: the resolution of a digital indication.
    """
    if last_row <= first_row or trace.resolution_w <= 0:
        return 0.0
    power = trace.power_w[first_row : last_row + 1]
    time = trace.time_s[first_row : last_row + 1]
    # a reading of 0 W may hide what lies below the meter's threshold
    hidden_s = total(steps_of(time)[power[1:] <= 0])
    changed_s = time[1:][power[1:] != power[:-1]]
    seconds = steps_of(np.concatenate((time[:1], changed_s, time[-1:])))
    step_w = (
        trace.resolution_w if trace.kind != "on_change" else max(trace.resolution_w, 2 * dead_band_w(trace))
    )
    rounding = step_w / math.sqrt(12) * math.sqrt(float(seconds.dot(seconds)))
    return math.hypot(rounding, HIDDEN_U_W * hidden_s) / J_PER_WH
