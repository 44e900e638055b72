"""Rest at the end of a stretch that is no idle level: motors held and fans running after the last layer.

Rest of minutes that lies below all of processing is learnt as an idle level. Rest of half a minute, or as
high as what lies between the pulses of a heater, is not; but nothing moves, the hot end is off, and what it
holds is missing from every row.
"""

import numpy as np

from core.activity.levels import QUIET_W, Levels, tolerance_w
from core.activity.rows import Rows, highest, lowest, spans, widened
from core.traces import F64

#: over this long, or this many rows, a hot end that pulses is on at least once; a mean always holds some [s]
PULSES_S = 12.0
PULSES_ROWS, MEAN_ROWS = 3, 2
#: where that is longer than this, any rest that shows is long enough to be learnt [s]
SHORT_S = 45.0
#: rest takes no more than this long [s], and this part of a stretch
LONGEST_S = 900.0
LONGEST_PART = 0.2
#: rest lies lower than processing ever falls by this part of what processing then adds to idle
LOWER_PART = 0.2
#: where rows are few, processing is known by no fewer than so many, after this first part of a stretch
FEWEST_WORKING = 8
WARMING_PART = 0.25
#: single rows of processing hardly ever (this percentile) lie lower
HARDLY_EVER = 1.0
#: where pulses reach as low as rest, processing must step from row to row by so many times what is
#: quiet, and what the rest itself does
STIRRING_TIMES, NOISE_TIMES = 3.0, 5.0
#: ... in this part of the rows, so that a bed that switches now and then is not enough
STIRRING_PERCENT = 75


def last_working(rows: Rows, levels: Levels, first: int, last: int) -> int:
    """Last row of the stretch `first` to `last` in which the machine works.

    Parameters
    ----------
    rows : Rows
    levels : Levels
    first, last : int
        Both included.

    Returns
    -------
    int
        `last` itself where no rest is seen.
    """
    fewest = MEAN_ROWS if rows.kind == "averaged" else PULSES_ROWS
    window = max(fewest, round(PULSES_S / rows.interval_s))
    if levels.idle_w is None:
        return last
    if window * rows.interval_s > SHORT_S:
        return _last_high(rows, levels.idle_w, first, last)
    reach_s = min(LONGEST_S, LONGEST_PART * float(rows.time_s[last] - rows.time_s[first]))
    begin = int(np.searchsorted(rows.time_s, rows.time_s[last] - reach_s))
    middle = first + (begin - first) // 2
    if begin - middle < 4 * window or last - begin < window:
        return last
    working_w = rows.power_w[middle:begin]
    worked = last
    for start, stop in reversed(_still(rows.power_w[begin : last + 1], window, tolerance_w(rows))):
        follows = worked - (begin + stop) < window
        still_w = rows.power_w[begin + start : begin + stop + 1]
        if start == 0 or not follows or not _is_rest(rows, levels.idle_w, working_w, still_w, window):
            break
        worked = begin + start - 1
    return worked


def _last_high(rows: Rows, idle_w: float, first: int, last: int) -> int:
    """Last row that is not lower than nearly all before it, where rows are few and far between.

    Rest of minutes is a few of them only, too few to be seen at rest and learnt.
    """
    begin = first + round(WARMING_PART * (last - first))
    reach = int(np.searchsorted(rows.time_s, rows.time_s[last] - LONGEST_S))
    until = max(reach, last - round(LONGEST_PART * (last - first)))
    working_w = np.sort(rows.power_w[begin:until])
    if working_w.size < FEWEST_WORKING:
        return last
    # one row may hold anything
    lowest_w = float(working_w[1])
    limit_w = lowest_w - max(LOWER_PART * (lowest_w - idle_w), 2 * tolerance_w(rows))
    high = np.flatnonzero(rows.power_w[until : last + 1] >= limit_w)
    return until + int(high[-1]) if high.size else last


def _still(power_w: F64, window: int, allowed_w: float) -> list[tuple[int, int]]:
    """First and last row of each level at which nothing moves for `window` rows."""
    window |= 1  # an even window has no middle, and would shift what it finds by a row
    wander_w = highest(power_w, window) - lowest(power_w, window)
    pieces = []
    for start, stop in spans(widened(wander_w < 2 * allowed_w, window)).tolist():
        steps = start + 1 + np.flatnonzero(np.abs(np.diff(power_w[start : stop + 1])) > 2 * allowed_w)
        pieces += list(zip([start, *steps.tolist()], [*(steps - 1).tolist(), stop], strict=True))
    return pieces


def _is_rest(rows: Rows, idle_w: float, working_w: F64, still_w: F64, window: int) -> bool:
    """Whether a still stretch is the machine at rest, by what it did before."""
    rest_w = float(np.median(still_w))
    # pulses that the samples miss for a while are met within a longer one
    window = max(window, min(still_w.size // 2, working_w.size // 4))

    def below_w(level_w: float) -> float:
        return level_w - max(LOWER_PART * (level_w - idle_w), 2 * tolerance_w(rows))

    if rest_w > below_w(float(highest(working_w, window).min())):
        return False
    if rest_w < below_w(float(np.percentile(working_w, HARDLY_EVER))):
        return True
    # a bed that rests at last is as still as that where no motor is seen to move
    step_w = float(np.median(np.abs(np.diff(still_w))))
    stirs_w = float(np.percentile(np.abs(np.diff(working_w)), STIRRING_PERCENT))
    return stirs_w > max(STIRRING_TIMES * QUIET_W, NOISE_TIMES * step_w)
