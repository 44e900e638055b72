"""Rest at the end of a stretch: motors held and fans running after the last layer, too short to be learnt.

Rest of minutes makes an idle level of its own and lies below the threshold. Rest of half a minute does not,
and may lie above it; but nothing moves, the hot end is off, and what it holds is missing from every row.
"""

import numpy as np

from core.activity.levels import Levels, tolerance_w
from core.activity.rows import Rows, highest
from core.traces import F64

#: over this long, or this many rows, a hot end that pulses is on at least once; a mean always holds some [s]
PULSES_S = 12.0
PULSES_ROWS, MEAN_ROWS = 3, 2
#: where that is longer than this, any rest that shows is long enough to be learnt [s]
SHORT_S = 45.0
#: longer rest is learnt as an idle level [s]; rest takes no more than this part of a stretch
LONGEST_S = 150.0
LONGEST_PART = 0.2
#: rest lies lower than processing ever falls by this part of what processing then adds to idle
LOWER_PART = 0.2
#: single rows of processing hardly ever (this percentile) lie lower
HARDLY_EVER = 1.0
#: where pulses reach as low as rest, processing must step from row to row by this many times as much
STIRRING_TIMES = 3.0


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
    if levels.idle_w is None or window * rows.interval_s > SHORT_S:
        return last
    reach_s = min(LONGEST_S, LONGEST_PART * float(rows.time_s[last] - rows.time_s[first]))
    begin = int(np.searchsorted(rows.time_s, rows.time_s[last] - reach_s))
    middle = first + (begin - first) // 2
    if begin - middle < 4 * window or last - begin < window:
        return last
    near_w = rows.power_w[begin : last + 1]
    rest_w = float(np.median(near_w[-window:]))
    stirs = np.flatnonzero(np.abs(near_w - rest_w) > tolerance_w(rows))
    if not stirs.size or near_w.size - 1 - int(stirs[-1]) < window:
        return last
    worked = begin + int(stirs[-1])
    return worked if _is_rest(rows, levels.idle_w, rows.power_w[middle:begin], rest_w, window) else last


def _is_rest(rows: Rows, idle_w: float, working_w: F64, rest_w: float, window: int) -> bool:
    """Whether a still level is the machine at rest, by what it did before."""
    least_w = float(highest(working_w, window).min())
    margin_w = max(LOWER_PART * (least_w - idle_w), 2 * tolerance_w(rows))
    if rest_w > least_w - margin_w:
        return False
    if rest_w < float(np.percentile(working_w, HARDLY_EVER)) - margin_w:
        return True
    # a bed that rests at last is as still as that where no motor is seen to move
    return float(np.median(np.abs(np.diff(working_w)))) > STIRRING_TIMES * tolerance_w(rows)
