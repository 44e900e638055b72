"""Slow sampling of a bed that switches: when the samples of a run know less than they seem to.

Theory. A thermostat goes through its cycle in half a minute or so, and samples about as far apart meet it at
a phase that drifts slowly: on and off then come in long stretches that look well resolved and are not (an
alias). What the energy can be off by is the binomial lottery S h sqrt(N p (1 - p)). Two things tell an alias
from a true cycle: few samples a cycle, and a cycle too long for a bed, whose time constant of some minutes
would let it cool through any hysteresis. Worse, a cycle that keeps step with the samples (lock-in) can hide
the heater for a whole run, or show it on at every sample. Then only the warm-up tells that there is one: its
length bounds what holding can take, and its level tells what a heater that never seems to rest may add.
"""

import math
from functools import lru_cache

import numpy as np
from attrs import evolve, frozen

from core.averages import median, part_of, percentile, variance
from core.energy.beats import FEWEST_BEATS, by_chance_rows, few_beats_rows, in_step_rows
from core.traces import F64, Trace, steps_of
from core.units import J_PER_WH

#: fewer rows than this say nothing of a cycle
FEWEST_ROWS = 12
#: a cycle of more whole intervals than this is met often enough
MOST_MOMENTS = 6
#: means at the moments of a locked cycle lie this many times further apart (in variance) than chance has
#: them ...
LOCKED = 6.0
#: ... and by this part of the variance of the power
LOCKED_PART = 0.03
#: samples a cycle that a true cycle needs at least
SAMPLES_A_CYCLE = 4
#: longest cycle believed of a bed's heater, when samples are closer than SLOW_S, and when not [s]
LONGEST_CYCLE_S = (600.0, 150.0)
#: samples further apart than this can keep step with a thermostat [s]
SLOW_S = 12.0
#: samples closer than this resolve any thermostat; common practice, no source [s]
CLOSE_S = 4.0
#: samples closer than this meet no cycle that the meter itself, which takes its values over a second or so,
#: would not even out; common practice, no source [s]
BEATS_S = 1.5
#: this many cycles of a heater that is seldom on are no accident
SEEN_CYCLES = 8
#: cycles that tell by themselves what their sum is unsure by
MANY_BEATS = 20
#: an on-share below this is too little to hold a bed
HARDLY_ON = 0.10
#: hot ends have no more than this; common practice, no source [W]
HOT_END_W = 90.0
#: and with fans and motors they hold this much, mostly; judgement, no source [W]
REST_W = 75.0
#: what draws this many times as much above idle in a warm-up is a bed
BED_TIMES = 1.5
#: rows on either side of a run that show idle, and rows at its start that show its first heating
IDLE_ROWS, HEATING_ROWS = 40, 5
#: a heater that is driven evenly shows this many samples at least between full power and its later level
EVEN_ROWS = 3
#: a level that samples hardly ever fall below: this percentile of them
LOW_PERCENT = 15
#: part of the step above the low level from which a sample shows some of the heater
BETWEEN = 0.25
#: where a hot end reaches further, from this part of the step
NEARLY_HALF = 0.45
#: a hot end that pulses moves the level by this part of the most it has
PULSING_PART = 0.7
#: shortest time constant of a bed that is believed; judgement, no source [s]
FASTEST_BED_S = 200.0
#: a step of this many base levels is a bed heater's, not the hot end's or the motors'
BED_STEP = 1.0


@frozen
class Lottery:
    """What slow sampling may have missed.

    Parameters
    ----------
    u_wh : float
        Binomial lottery; 0 where the cycle is resolved. [Wh]
    hidden_u_wh : float
        Of a heater that keeps step with the samples; 0 where there is no sign of one. [Wh]
    rows, alike_rows : float
        Rows that this is for, and how many neighbours on average show the heater alike: an alias is wrong in
        the same way for so long.
    beats_u_wh : float
        By how unlike the beats of on and off are, if they are an alias. [Wh]
    in_step_u_wh : float
        Of a strictly regular cycle whose edges all the samples round alike. [Wh]
    row_wh : float
        What one row is unsure by, whether the heater was on. [Wh]
    """

    u_wh: float = 0.0
    hidden_u_wh: float = 0.0
    rows: float = 1.0
    alike_rows: float = 1.0
    beats_u_wh: float = 0.0
    in_step_u_wh: float = 0.0
    row_wh: float = math.inf

    @property
    def sampling_u_wh(self) -> float:
        """What chance leaves open. [Wh]"""
        return max(self.u_wh, self.beats_u_wh)

    def of_part(self, rows: int) -> "Lottery":
        """The same for so many neighbouring rows of them.

        Over fewer rows than are alike all err together; over more, what is too much and what is too little
        take turns. What keeps step errs the same way throughout.
        """
        err_as = max(rows, min(rows, self.alike_rows) ** 2)
        part = min(rows / self.rows, 1.0)
        return Lottery(
            u_wh=self.u_wh * min(math.sqrt(err_as / self.rows), 1.0),
            hidden_u_wh=self.hidden_u_wh * part,
            rows=rows,
            alike_rows=self.alike_rows,
            beats_u_wh=min(self.beats_u_wh * math.sqrt(part), rows * self.row_wh),
            in_step_u_wh=self.in_step_u_wh * part,
            row_wh=self.row_wh,
        )


@lru_cache(maxsize=8192)
def lottery(trace: Trace, first_row: int, last_row: int) -> Lottery:
    """What the samples of a run may have missed of a switching bed.

    Parameters
    ----------
    trace : Trace
        Sampled; for other kinds there is no such lottery.
    first_row, last_row : int
        Rows inside the run.

    Returns
    -------
    Lottery

    References
    ----------
    .. [1] Binomial sampling of a two-level load, and lock-in of a cycle with the samples: by definition.
    """
    power = trace.power_w[first_row : last_row + 1]
    h_s = trace.median_s
    if trace.kind != "sampled" or h_s <= 0 or power.size < FEWEST_ROWS:
        return Lottery()
    low, high = percentile(power, 3), float(power.max())
    is_on = power > (low + high) / 2
    plateau = int(np.argmin(is_on)) if is_on[0] and not is_on.all() else 0
    rest, rest_on = power[plateau:], is_on[plateau:]
    step_wh = (high - low) * h_s / J_PER_WH
    in_step_wh = max(_locked_u_wh(trace, first_row, last_row), step_wh * in_step_rows(rest_on))
    found = Lottery(rows=float(power.size - 1), in_step_u_wh=in_step_wh)
    is_large = rest.size >= FEWEST_ROWS / 2 and high - low >= BED_STEP * max(low, 1.0)
    if h_s < CLOSE_S:
        rows = by_chance_rows(rest_on) if is_large and h_s >= BEATS_S else 0.0
        return evolve(found, beats_u_wh=step_wh * rows)
    idle_w = _idle_w(trace, first_row, last_row)
    met_wh = _always_met_u_wh(trace, first_row, last_row, idle_w)
    if not is_large:
        return evolve(found, hidden_u_wh=met_wh)
    seconds = h_s * rest.size
    share = (float(np.count_nonzero(rest_on)) + 1) / (rest.size + 2)
    deviation_w = max(math.sqrt(variance(rest)), (high - low) * math.sqrt(share * (1 - share)))
    row_wh = deviation_w * h_s / J_PER_WH
    cycles = int(np.count_nonzero(rest_on[1:] & ~rest_on[:-1]))
    is_resolved = _is_resolved(cycles, rest.size, h_s)
    hidden_u_wh = 0.0
    warm_up_s = plateau * h_s
    most = min(warm_up_s / (FASTEST_BED_S + warm_up_s / 2), 1.0)
    # a large heater that is seldom on is seen all the same where its cycle is resolved
    is_seen = h_s <= SLOW_S and cycles >= SEEN_CYCLES and is_resolved
    if plateau >= 1 and not is_seen and _is_hidden(rest, low, high, idle_w, h_s):
        hidden_u_wh = (high - low) * max(most - share, 0.0) * seconds / math.sqrt(3) / J_PER_WH
    beats_rows = by_chance_rows(rest_on)
    if not is_resolved and cycles <= FEWEST_BEATS and not hidden_u_wh:
        beats_rows = few_beats_rows(rest_on)
    return evolve(
        found,
        u_wh=0.0 if is_resolved or cycles >= MANY_BEATS else row_wh * math.sqrt(rest.size),
        hidden_u_wh=max(hidden_u_wh, met_wh),
        alike_rows=rest_on.size / (1 + np.count_nonzero(rest_on[1:] != rest_on[:-1])),
        beats_u_wh=step_wh * beats_rows,
        row_wh=row_wh,
    )


def _is_hidden(rest: F64, low: float, high: float, idle_w: float, h_s: float) -> bool:
    """Whether a heater that was on in the warm-up may since have kept out of the samples' way."""
    step = high - low
    # pulses shorter than the meter's own window show as levels in between: those are no sign of a hidden
    # heater; but a hot end that pulses by itself reaches as high
    is_up = rest > low + max(BETWEEN * step, min(HOT_END_W, NEARLY_HALF * step))
    if part_of(is_up) >= HARDLY_ON:
        return False
    # nor is a level that a hot end and motors alone do not reach
    if median(rest) - idle_w > REST_W:
        return False
    # and a base that can fall further still holds a heater that is driven evenly
    if median(rest) - percentile(rest, 3) >= max(BETWEEN * step / 2, PULSING_PART * HOT_END_W):
        return False
    # which comes down by degrees
    is_between = is_up & (rest < high - BETWEEN * step)
    return bool(h_s > SLOW_S or np.count_nonzero(is_between) < EVEN_ROWS)


def _idle_w(trace: Trace, first_row: int, last_row: int) -> float:
    """The lower of the levels before and after a run; infinite where the log shows neither. [W]"""
    power = trace.power_w
    before = power[max(first_row - IDLE_ROWS, 0) : first_row]
    around = (before, power[last_row + 1 : last_row + 1 + IDLE_ROWS])
    return min((median(side) for side in around if side.size), default=math.inf)


def _always_met_u_wh(trace: Trace, first_row: int, last_row: int, idle_w: float) -> float:
    """Standard uncertainty from a heater that every sample may have met: it never seems to rest. [Wh]"""
    power = trace.power_w
    heating_w = median(power[first_row : first_row + HEATING_ROWS])
    level_w = percentile(power[first_row : last_row + 1], LOW_PERCENT)
    if heating_w - idle_w <= BED_TIMES * HOT_END_W or level_w < heating_w - HOT_END_W / 2:
        return 0.0
    seconds = float(trace.time_s[last_row] - trace.time_s[first_row])
    return (heating_w - idle_w) * seconds / math.sqrt(3) / J_PER_WH


def _is_resolved(cycles: int, rows: int, h_s: float) -> bool:
    """Whether on and off follow each other as a bed's heater could."""
    if cycles == 0:
        return True
    cycle_s = h_s * rows / cycles
    longest_s = LONGEST_CYCLE_S[0] if h_s < SLOW_S else LONGEST_CYCLE_S[1]
    return SAMPLES_A_CYCLE * h_s <= cycle_s <= longest_s


def _locked_u_wh(trace: Trace, first_row: int, last_row: int) -> float:
    """Standard uncertainty from a cycle that is a few whole intervals long. [Wh]

    Then only k moments of the cycle are ever met. If the means of the samples taken at each of them stay
    apart over the whole run (with no lock they drift through the cycle and even out), the share of a pulse
    among k moments is off by up to one of them: variance f (1 - f) / k^2, 1 / (6 k^2) on average, of the
    squared step.
    """
    time = trace.time_s[first_row : last_row + 1]
    power = trace.power_w[first_row : last_row + 1]
    # the start is left out: a warm-up is no cycle
    time, power = time[time.size // 5 :], power[power.size // 5 :]
    number = np.concatenate(([0], np.cumsum(np.round(steps_of(time) / trace.median_s)))).astype(np.int64)
    spread_w2 = variance(power)
    u_w = 0.0
    for moments in range(2, MOST_MOMENTS + 1):
        moment = number % moments
        counts = np.bincount(moment, minlength=moments)
        if spread_w2 <= 0 or counts.min() < FEWEST_ROWS:
            break
        means = np.bincount(moment, power, minlength=moments) / counts
        apart = variance(means)
        by_chance = spread_w2 * (moments - 1) / power.size
        if apart > max(LOCKED * by_chance, LOCKED_PART * spread_w2):
            u_w = max(u_w, float(np.ptp(means)) / (moments * math.sqrt(6)))
    return u_w * float(time[-1] - time[0]) / J_PER_WH
