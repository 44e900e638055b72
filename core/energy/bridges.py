"""What a run drew while its log has a gap, when only the power column can say."""

import math

import numpy as np

from core.energy.integral import by_power_wh
from core.traces import Gap, Trace
from core.units import J_PER_WH

#: how far on either side of a gap the power is taken to be like that in it, at least [s]
REACH_S = 300.0
#: fewer rows than this beside a gap say nothing of it
FEWEST_ROWS = 6


def bridges(
    trace: Trace, gaps: tuple[Gap, ...], start_s: float, end_s: float, low_w: float, high_w: float
) -> tuple[float, float]:
    """What the local means say gaps hold more than the straight lines over them, and the doubt. [Wh], [Wh]

    The straight line joins two single samples, and with a bed that switches these are two tosses of a coin;
    the mean of the minutes on either side is a better guess of the same thing. The doubt is the whole range
    of power that the run shows, as a rectangle.

    Parameters
    ----------
    trace : Trace
    gaps : tuple of Gap
        Inside the run.
    start_s, end_s : float
        Edges of the run: what lies outside tells nothing of what happened inside. [s]
    low_w, high_w : float
        Range of power of the run. [W]
    """
    more_wh = variance = 0.0
    for gap in gaps:
        variance += ((high_w - low_w) / math.sqrt(12) * gap.seconds / J_PER_WH) ** 2
        reach_s = max(gap.seconds, REACH_S)
        sides = (
            (max(gap.start_s - reach_s, start_s), gap.start_s),
            (gap.end_s, min(gap.end_s + reach_s, end_s)),
        )
        rows = sum(np.diff(np.searchsorted(trace.time_s, side))[0] for side in sides)
        seconds = sum(max(b - a, 0.0) for a, b in sides)
        if rows >= FEWEST_ROWS and seconds > 0:
            local_w = sum(by_power_wh(trace, a, b) for a, b in sides if b > a) * J_PER_WH / seconds
            more_wh += local_w * gap.seconds / J_PER_WH - by_power_wh(trace, gap.start_s, gap.end_s)
    return more_wh, math.sqrt(variance)
