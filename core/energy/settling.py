"""How well the power column tells what was used between the ticks of a coarse counter, by those ticks.

Theory. A coarse counter leaves some minutes between its last tick and the end of a run to the power column.
How far that is off there, nobody can tell from the power alone: samples that keep step with a heater are
wrong in the same way for minutes. But the ticks inside the run have just told it, some dozens of times. From
one tick to the next the counter grew by G in the time T, and the samples make it S. Both have a mean power;
G - P T is foretold by b (S - Ps T), b by least squares: near 1 where the samples see the heater's cycle, near
0 where they are a lottery and the mean power of the run knows better. What is left over is the doubt.
"""

import math
from functools import lru_cache

import numpy as np
from attrs import frozen

from core.averages import average
from core.energy.integral import between_rows_wh
from core.energy.lottery import CLOSE_S
from core.energy.sampling import Roughness
from core.energy.ticks import Tick, Used, reading_at, used_before
from core.traces import F64, Trace, steps_of
from core.units import J_PER_WH

#: of a run, this first part is left out: in a warm-up the power is not like later
WARM_UP_PART = 0.25
#: fewer steps from tick to tick than this tell nothing
FEWEST_STEPS = 3
#: with ticks closer than this many rows, little is left to the power column
FEWEST_ROWS = 4
#: ticks that are looked at; the nearest to the end of the run tell enough
MOST_STEPS = 24
#: less time than this part of a step from tick to tick is not foretold better
LEAST_TIME = 0.25
#: so many steps is what the samples' own likeness lets expect of them worth; judgement, no source
EXPECTED_STEPS = 2.0
#: and with few steps, of what leaves the moment of a tick open at least this part, shared by their number
FEW_OWN = 1.0
#: how much wider few steps leave it (Student's t for 95 % over that of the normal), by their number
WIDER = (0.0, 0.0, 0.0, 2.2, 1.62, 1.42, 1.31, 1.25, 1.21, 1.18, 1.0)
#: of the scatter, at least this part is the power column's and not that of the ticks
LEAST_OWN = 0.1


@frozen
class Settled:
    """What the ticks of a run say of its power column.

    Parameters
    ----------
    first_row : int
        From here on.
    counter_w, sampled_w : float
        Mean power by the counter and by the samples. [W]
    weight : float
        What a deviation of the samples from their mean counts, 0 to 1.
    seconds, u_wh : float
        Mean time from tick to tick, and standard uncertainty of what is foretold for so long. [s], [Wh]
    """

    first_row: int
    counter_w: float
    sampled_w: float
    weight: float
    seconds: float
    u_wh: float

    def used(self, seconds: float, sampled_wh: float) -> Used:
        """What was used in `seconds` for which the samples say `sampled_wh`."""
        mean_wh = self.counter_w * seconds / J_PER_WH
        energy_wh = mean_wh + self.weight * (sampled_wh - self.sampled_w * seconds / J_PER_WH)
        return Used(energy_wh, self.u_wh * math.sqrt(max(seconds / self.seconds, LEAST_TIME)))

    def level(self, sampled_w: float, seconds: float) -> tuple[float, float]:
        """Power of `seconds` for which one sample stands, and u of what was used in them. [W], [Wh]"""
        level_w = self.counter_w + self.weight * (sampled_w - self.sampled_w)
        return level_w, self.u_wh * math.sqrt(seconds / self.seconds)

    def used_before(self, trace: Trace, tick: Tick, inner: Roughness) -> Used:
        """What was used since the row before a tick, no less surely than its samples tell."""
        seconds = float(trace.time_s[tick.row] - trace.time_s[tick.previous])
        told = self.used(seconds, between_rows_wh(trace, tick.previous, tick.row))
        return Used(told.energy_wh, min(told.u_wh, used_before(trace, tick, inner).u_wh))


@lru_cache(maxsize=8192)
def settle(trace: Trace, first_row: int, last_row: int, inner: Roughness) -> Settled | None:
    """What the ticks inside a run say of its power column; None where too few, or too close, to say anything.

    Parameters
    ----------
    trace : Trace
        Sampled, with a counter.
    first_row, last_row : int
        Rows inside the run, with no reset between.
    inner : Roughness
        What the power does there between the samples.
    """
    counter = trace.counter_wh
    if counter is None or trace.kind != "sampled" or trace.median_s < CLOSE_S:
        return None
    begin = first_row + round(WARM_UP_PART * (last_row - first_row))
    known = begin + np.flatnonzero(np.isfinite(counter[begin : last_row + 1]))
    moved = np.flatnonzero(steps_of(counter[known]) > 0)[-MOST_STEPS - 1 :]
    if moved.size < FEWEST_STEPS + 1 or known[moved[-1]] - known[moved[0]] < FEWEST_ROWS * (moved.size - 1):
        return None
    ticks = [
        Tick(b, a, float(counter[b]), float(counter[b] - counter[a]))
        for a, b in zip(known[moved].tolist(), known[moved + 1].tolist(), strict=True)
    ]
    rows = np.array([tick.row for tick in ticks])
    power, time = (column[rows[0] : rows[-1] + 1] for column in (trace.power_w, trace.time_s))
    steps_wh = (power[1:] + power[:-1]) * steps_of(time) / 2 / J_PER_WH
    sampled_wh = np.add.reduceat(steps_wh, rows[:-1] - rows[0])
    found = _fitted(
        trace, ticks, [used_before(trace, t, inner) for t in ticks], sampled_wh, inner.autocorrelation
    )
    # what is known of the power column tells more of the moment of each tick
    return _fitted(
        trace, ticks, [found.used_before(trace, t, inner) for t in ticks], sampled_wh, inner.autocorrelation
    )


def _fitted(trace: Trace, ticks: list[Tick], used: list[Used], sampled_wh: F64, told: float) -> Settled:
    """The power column against the ticks, when `used` was used since the row before each."""
    pairs = zip(ticks, used, strict=True)
    readings_wh, noises_wh = np.array([reading_at(trace, tick, since) for tick, since in pairs]).T
    seconds = steps_of(trace.time_s[[tick.row for tick in ticks]])
    grown_wh = steps_of(readings_wh)
    counter_w = float(grown_wh.sum() / seconds.sum()) * J_PER_WH
    sampled_w = float(sampled_wh.sum() / seconds.sum()) * J_PER_WH
    above_wh = grown_wh - counter_w * seconds / J_PER_WH
    seen_wh = sampled_wh - sampled_w * seconds / J_PER_WH
    squares = float(seen_wh @ seen_wh)
    count = grown_wh.size
    # what the samples' own likeness lets expect counts as some steps more
    expected = EXPECTED_STEPS / count * squares
    weight = (float(seen_wh @ above_wh) + expected * told) / (squares + expected) if squares > 0 else 0.0
    weight = min(max(weight, 0.0), 1.0)
    left_wh = above_wh - weight * seen_wh
    noise = average(noises_wh**2)
    scatter = float(left_wh @ left_wh) / (count - 1 - count / (count + EXPECTED_STEPS))
    own = max(scatter - 2 * noise, LEAST_OWN * scatter)
    own = WIDER[min(count, len(WIDER) - 1)] ** 2 * max(own, FEW_OWN * noise / count)
    return Settled(ticks[0].row, counter_w, sampled_w, weight, average(seconds), math.sqrt(own))
