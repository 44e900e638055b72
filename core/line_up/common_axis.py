"""Runs brought onto one axis of equal bins, with their energy kept: for differences and bands."""

import math
from collections.abc import Sequence

import numpy as np
from attrs import field, frozen

from core.line_up.strands import Anchor, Strand
from core.traces import F64

#: widths of a moving mean that a person may ask for [s]
WIDTHS_S = (10.0, 20.0, 30.0, 60.0, 120.0, 180.0, 300.0, 600.0, 1200.0, 1800.0, 3600.0)
#: the usual width is at least this part of the longest run: fine enough for a shape, wide enough for a bed's
#: heater that switches each minute to be seen as its mean
_PART_OF_RUN = 1 / 45
#: a bed held by a thermostat switches about once a minute (common practice, no source) [s]
_LEAST_JUDGING_S = 180.0
#: a bin that a run fills to less than this has no value
_FILLED = 0.5


@frozen
class Bins:
    """One value a bin of a common axis; bin `i` reaches from ``(first + i) * step`` to the next."""

    first: int
    step: float
    values: F64 = field(eq=False, repr=False)

    @property
    def places(self) -> F64:
        """Middles of the bins on the common axis."""
        return places(self.first, self.values.size, self.step)


def places(first: int, count: int, step: float) -> F64:
    """Middles of so many bins from the bin `first` on."""
    return np.asarray((first + np.arange(count, dtype=np.float64) + 0.5) * step)


def usual_width_s(given: Sequence[Strand]) -> float:
    """Width of the moving mean that suits these runs. [s]

    Examples
    --------
    >>> usual_width_s(())
    120.0
    """
    longest_s = max((s.seconds for s in given), default=3600.0)
    coarsest_s = max((s.trace.median_s for s in given), default=1.0)
    wished_s = max(longest_s * _PART_OF_RUN, 2.0 * coarsest_s)
    return next((w for w in WIDTHS_S if w >= wished_s), WIDTHS_S[-1])


def judging_width_s(given: Sequence[Strand]) -> float:
    """Width of the moving mean over which runs are judged, whatever is drawn. [s]

    Several cycles of a bed's heater must fall into it: when they begin is chance in every run.
    """
    return max(usual_width_s(given), _LEAST_JUDGING_S)


def power(strand: Strand, anchor: Anchor, step: float, smooth_s: float) -> Bins:
    """Mean power of a run in the bins of the common axis, of its moving mean if `smooth_s` is above 0.

    Parameters
    ----------
    strand : Strand
    anchor : Anchor
    step : float
        Width of a bin: seconds, or a share of the duration.
    smooth_s : float
        [s]

    Returns
    -------
    Bins
        [W]. The first and last bin hold the mean of the part that the run fills, NaN where that is less than
        half of it.
    """
    first, edges = _edges(strand, anchor, step)
    moments = np.clip(strand.moment_s(edges, anchor), strand.start_s, strand.end_s) - strand.start_s
    filled = np.diff(moments)
    is_filled = filled > _FILLED * _bin_s(strand, anchor, step)
    values = np.full(filled.size, np.nan)
    # neighbouring edges that fall together (beyond the run's ends) carry nothing
    kept = np.flatnonzero(filled > 0)
    if kept.size:
        inner = moments[kept[0] : kept[-1] + 2]
        values[kept[0] : kept[-1] + 1] = strand.course.mean_w(inner, smooth_s)
    values[~is_filled] = np.nan
    return Bins(first, step, values)


def running_energy(strand: Strand, anchor: Anchor, step: float) -> Bins:
    """Energy that a run has used in the middle of each bin, ending at the energy that counts. [Wh]"""
    first, edges = _edges(strand, anchor, step)
    middles = strand.moment_s((edges[:-1] + edges[1:]) / 2, anchor)
    values = strand.course.used_wh(middles - strand.start_s) * strand.closing
    values[(middles < strand.start_s) | (middles > strand.end_s)] = np.nan
    return Bins(first, step, values)


def stacked(rows: Sequence[Bins]) -> tuple[int, F64]:
    """Bins of one step as rows of one array, NaN where a row has none; and the first bin.

    Returns
    -------
    first : int
    values : ndarray, shape (len(rows), n)
    """
    first = min(r.first for r in rows)
    last = max(r.first + r.values.size for r in rows)
    values = np.full((len(rows), last - first), np.nan)
    for row, bins in zip(values, rows, strict=True):
        row[bins.first - first : bins.first - first + bins.values.size] = bins.values
    return first, values


def difference(bins: Bins, reference: Bins) -> Bins:
    """One run less another, NaN where only one of them is."""
    first, values = stacked((bins, reference))
    return Bins(first, bins.step, values[0] - values[1])


def _bin_s(strand: Strand, anchor: Anchor, step: float) -> float:
    return step * strand.seconds if anchor == "share of duration" else step


def _edges(strand: Strand, anchor: Anchor, step: float) -> tuple[int, F64]:
    low, high = strand.reach(anchor)
    first = math.floor(low / step + 1e-9)
    last = max(math.ceil(high / step - 1e-9), first + 1)
    return first, np.arange(first, last + 1, dtype=np.float64) * step
