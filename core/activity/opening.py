"""Logs that open while the machine already heats: has the run just begun, or is it under way?

A run that has just begun shows its first heating: a heater at full power for longer than nearly all of its
later pulses. A run under way does not, nor does one whose first heating is over and that waits for warmth.
"""

import numpy as np

from core.activity.rows import Rows, spans

#: the rest of a first heating has to last this long to be known for one [s]
SEEN_S = 20.0
#: in at least this many rows
SEEN_ROWS = 4
#: and this many times as long as nearly all later pulses
LONGER = 1.5
#: a heater at full power stays above this part of the power that the log opens with
STAYS = 0.75


def opens_with_first_heating(rows: Rows, last: int, warm_up_end_s: float) -> bool:
    """Whether the stretch from the first row to row `last` shows the rest of its first heating."""
    time_s, power_w = rows.time_s[: last + 1], rows.power_w[: last + 1]
    if rows.interval_s > SEEN_S or warm_up_end_s - time_s[0] < SEEN_S:
        return False
    opening_w = float(np.median(power_w[:3]))
    high = spans(power_w > STAYS * opening_w)
    if not high.size or high[0, 0] != 0 or high[0, 1] + 1 < SEEN_ROWS:
        return False
    if opening_w <= np.percentile(power_w, 60):
        return False
    lengths_s = time_s[high[:, 1]] - time_s[high[:, 0]] + rows.interval_s
    later_s = float(np.percentile(lengths_s[1:], 95)) if len(high) > 1 else 0.0
    longest_s = 0.5 * float(time_s[-1] - time_s[0])
    return bool(max(SEEN_S, LONGER * later_s) < lengths_s[0] < longest_s)
