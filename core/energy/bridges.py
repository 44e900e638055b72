"""What a run drew while its log has a gap, when only the power column can say."""

import math

import numpy as np
from attrs import frozen

from core.energy.integral import by_power_wh
from core.energy.sampling import Roughness
from core.traces import Gap, Trace
from core.units import J_PER_WH

#: how far on either side of a gap the power is taken to be like that in it, at least [s]
REACH_S = 300.0
#: fewer rows than this beside a gap say nothing of it
FEWEST_ROWS = 6


@frozen
class HiddenEdge:
    """What is not known on one side of an edge that lies in a gap.

    Parameters
    ----------
    least_w, most_w : float
        Bounds of the watts that a misplaced edge moves. [W]
    range_w : float
        Range of the power that was drawn on this side. [W]
    """

    least_w: float
    most_w: float
    range_w: float

    def misplaced_w(self, level_w: float) -> float:
        """Watts that a misplaced edge moves, where the nearest row shows `level_w`. [W]"""
        return min(max(level_w, self.least_w), self.most_w)


def hidden_edge(inner: Roughness, outer_high_w: float, top_w: float, *, is_inside: bool) -> HiddenEdge:
    """Doubt on one side of an edge that lies in a gap.

    By definition the run is not on the outer side of its edge, wherever that is, so there it is as quiet as
    beside the gap. On the inner side single rows say little of what was drawn unseen.

    Parameters
    ----------
    inner : Roughness
        Of the run.
    outer_high_w : float
        The most that rows beside the run draw. [W]
    top_w : float
        The most that the machine draws, where the gap may hide a warm-up; else 0. [W]
    is_inside : bool
        Whether the side within the run is asked for.
    """
    range_w = max(inner.gap_w, top_w) - inner.mean_w if top_w > 0 else inner.gap_w
    if is_inside:
        return HiddenEdge(inner.mean_w, math.inf, range_w)
    return HiddenEdge(0.0, outer_high_w, min(outer_high_w, range_w))


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
