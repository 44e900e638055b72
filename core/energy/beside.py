"""What runs beside a run in its log: the heated stretches in which the counter's nearest ticks lie.

Theory. A coarse counter hardly moves while a machine idles, so the last tick before a run often lies in the
run before it, some minutes before that ended. Samples of a heater that switches tell little of so short a
tail, and where they chanced to meet it off, they do not even look unsure. But that run has ticks of its own:
they say what its power column is worth, as those inside the run do (`core.energy.settling`).
"""

import math
from functools import lru_cache

import numpy as np
from attrs import frozen

from core.averages import percentile
from core.energy.edges import Edge
from core.energy.integral import between_rows_wh
from core.energy.lottery import CLOSE_S, lottery
from core.energy.sampling import Roughness, path_u_wh, roughness
from core.energy.settling import Settled, settle
from core.energy.ticks import Used
from core.traces import Trace
from core.units import J_PER_WH

#: so many quiet rows in a row part one heated stretch from the next
QUIET_ROWS = 3
#: rows beside a run in which a heated stretch is looked for; more would cost time and hold none that matters
MOST_ROWS = 4000
#: a level below which hardly a sample of a heated stretch falls, and of idling: this percentile of them
LOW_PERCENT = 10
#: so few quiet rows tell how quiet it is where others would be of another run
FEWEST_QUIET = 4
#: levels of heated and idle rows that are not this many times apart cannot be told
APART = 1.6


@frozen
class Beside:
    """A heated stretch beside a run.

    Parameters
    ----------
    first_row, last_row : int
        Both heated.
    around : Roughness
        What the power does there between the samples.
    known : Settled or None
        What its own ticks say of the power column.
    """

    first_row: int
    last_row: int
    around: Roughness
    known: Settled | None

    def holds(self, row: int) -> bool:
        """Whether a row lies in the stretch."""
        return self.first_row <= row <= self.last_row

    def tells(self, first_row: int, last_row: int) -> Settled | None:
        """What its ticks say of the power column between two rows; None where they do not."""
        if self.known is None or first_row < self.known.first_row or last_row > self.last_row:
            return None
        return self.known

    def used(self, trace: Trace, first_row: int, last_row: int, gap_w: float) -> Used:
        """What was used between two rows of the stretch, with `gap_w` where nothing was logged."""
        sampled_wh = between_rows_wh(trace, first_row, last_row)
        known = self.tells(first_row, last_row)
        if known is not None:
            return known.used(float(trace.time_s[last_row] - trace.time_s[first_row]), sampled_wh)
        missed = lottery(trace, self.first_row, self.last_row).of_part(last_row - first_row)
        seen_wh = path_u_wh(trace, first_row, last_row, self.around, gap_w)
        chance_wh = max(seen_wh, missed.sampling_u_wh)
        return Used(sampled_wh, math.hypot(chance_wh, missed.in_step_u_wh, missed.hidden_u_wh))

    def at_start(self, trace: Trace) -> Used:
        """What was used from the row before the stretch to its first: it began anywhere between."""
        row = self.first_row - 1
        return _over_edge(trace, row, float(trace.power_w[self.first_row]), float(trace.power_w[row]))

    def at_end(self, trace: Trace) -> Used:
        """What was used from the last row of the stretch to the next: it ended anywhere between."""
        heated_w = self.around.mean_w if self.known is None else self.known.counter_w
        return _over_edge(trace, self.last_row, heated_w, float(trace.power_w[self.last_row + 1]))


def quiet_rows(trace: Trace, start: Edge, end: Edge, count: int) -> tuple[int, int]:
    """The first of the rows before a run, and the last of those after it, that tell how quiet it is there.

    Rows of another run close by are none of them, unless hardly any others are left.

    Parameters
    ----------
    trace : Trace
    start, end : Edge
        Of the run.
    count : int
        Rows on either side at the most.
    """
    low_w = percentile(trace.power_w[start.row_after : end.row_before + 1], LOW_PERCENT)
    first = max(start.row_before - count, 0)
    last = min(end.row_after + count, trace.time_s.size - 1)
    back = trace.power_w[first : start.row_before + 1][::-1]
    on = trace.power_w[end.row_after : last + 1]
    quiet = [
        int(np.argmax(np.append(rows_w > (rows_w[0] + low_w) / 2, True))) if rows_w.size else 0
        for rows_w in (back, on)
    ]
    return (
        start.row_before - quiet[0] + 1 if FEWEST_QUIET <= quiet[0] < back.size else first,
        end.row_after + quiet[1] - 1 if FEWEST_QUIET <= quiet[1] < on.size else last,
    )


def threshold_w(trace: Trace, first_row: int, last_row: int, beside_rows: int) -> float | None:
    """Power that tells heated rows from idle ones near a run; None where they are too alike, or all known.

    Parameters
    ----------
    trace : Trace
        Slow samples with a counter; for any other nothing need be told.
    first_row, last_row : int
        Rows inside the run.
    beside_rows : int
        Rows on either side that show how it idles.
    """
    if trace.kind != "sampled" or trace.counter_wh is None or trace.median_s < CLOSE_S:
        return None
    power = trace.power_w
    sides = (power[max(first_row - beside_rows, 0) : first_row], power[last_row + 1 :][:beside_rows])
    quiet_w = min((percentile(side, LOW_PERCENT) for side in sides if side.size), default=np.inf)
    low_w = percentile(power[first_row : last_row + 1], LOW_PERCENT)
    return (quiet_w + low_w) / 2 if low_w > APART * quiet_w else None


def before(trace: Trace, row: int, lowest_row: int, heated_w: float) -> Beside | None:
    """The last heated stretch that ends at or before a row, none of it before `lowest_row`."""
    lowest_row = max(lowest_row, row - MOST_ROWS)
    heated = lowest_row + np.flatnonzero(trace.power_w[lowest_row : row + 1] > heated_w)
    breaks = np.flatnonzero(heated[1:] - heated[:-1] > QUIET_ROWS)
    if not heated.size:
        return None
    first = int(heated[breaks[-1] + 1] if breaks.size else heated[0])
    return heated_stretch(trace, first, int(heated[-1]))


def after(trace: Trace, row: int, highest_row: int, heated_w: float) -> Beside | None:
    """The first heated stretch that begins at or after a row, none of it after `highest_row`."""
    highest_row = min(highest_row, row + MOST_ROWS)
    heated = row + np.flatnonzero(trace.power_w[row : highest_row + 1] > heated_w)
    breaks = np.flatnonzero(heated[1:] - heated[:-1] > QUIET_ROWS)
    if not heated.size:
        return None
    last = int(heated[breaks[0]] if breaks.size else heated[-1])
    return heated_stretch(trace, int(heated[0]), last)


def _over_edge(trace: Trace, row: int, heated_w: float, quiet_w: float) -> Used:
    """What was used from a row to the next, with the power idle in one part and heated in the other."""
    seconds = float(trace.time_s[row + 1] - trace.time_s[row])
    spread_w = abs(heated_w - quiet_w) / math.sqrt(12)
    return Used((heated_w + quiet_w) / 2 * seconds / J_PER_WH, spread_w * seconds / J_PER_WH)


@lru_cache(maxsize=8192)
def heated_stretch(trace: Trace, first_row: int, last_row: int) -> Beside | None:
    """A heated stretch with what its own ticks tell; None where it is too short to tell anything.

    Remembered, for it lies after one run and before another.
    """
    if last_row - first_row < QUIET_ROWS:
        return None
    around = roughness(trace, first_row, last_row)
    known = settle(trace, first_row, last_row, around)
    return Beside(first_row, last_row, around, known)
