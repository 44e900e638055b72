"""Logs that open while the machine already heats: has the run just begun, or is it under way?

A run that has just begun shows its first heating: a heater at full power for longer than nearly all of its
later pulses, or a power that is still before it moves. A run under way shows neither.
"""

import numpy as np

from core.activity.levels import tolerance_w
from core.activity.rows import Rows, spans

#: the rest of a first heating has to last this long to be known for one [s]
SEEN_S = 20.0
#: in at least this many rows
SEEN_ROWS = 4
#: and this many times as long as nearly all later pulses
LONGER = 1.5
#: a heater at full power stays above this part of the power that the log opens with
STAYS = 0.75
#: how far a power that is still may wander, in what is allowed to a quiet window
STILL_TIMES = 3.0


def opens_with_first_heating(rows: Rows, last: int, warm_up_end_s: float) -> bool:
    """Whether the stretch from the first row to row `last` shows the rest of its first heating."""
    time_s, power_w = rows.time_s[: last + 1], rows.power_w[: last + 1]
    warm_rows = int(np.searchsorted(time_s, warm_up_end_s))
    if rows.interval_s > SEEN_S or warm_rows < SEEN_ROWS or warm_up_end_s - time_s[0] < SEEN_S:
        return False
    opening_w = float(np.median(power_w[:3]))
    high = spans(power_w > STAYS * opening_w)
    lengths_s = time_s[high[:, 1]] - time_s[high[:, 0]] + rows.interval_s
    if high[0, 0] == 0 and opening_w > np.percentile(power_w, 60):
        later_s = float(np.percentile(lengths_s[1:], 95)) if len(high) > 1 else 0.0
        if high[0, 1] + 1 >= SEEN_ROWS and lengths_s[0] >= SEEN_S and lengths_s[0] > LONGER * later_s:
            return bool(lengths_s[0] < 0.5 * (time_s[-1] - time_s[0]))
    wander_w = STILL_TIMES * tolerance_w(rows)
    head = max(int(np.searchsorted(time_s, time_s[0] + SEEN_S, side="right")), SEEN_ROWS)
    return bool(np.ptp(power_w[:head]) < wander_w)
