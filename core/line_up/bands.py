"""The band in which a machine's repeats lie, and the runs that leave it.

Theory of operation: runs are compared bin by bin with the median of their machine's runs, which one odd run
hardly moves. Half the width of the band is twice a robust standard deviation: the median distance from the
median, of all runs and of the bins around, scaled to what it would be for the normal distribution. Looking at
the bins around makes the band follow where runs differ by nature (the end of warm-up) without letting one odd
run widen it. A run leaves its band where it stays outside for long enough, far enough and with enough energy
that chance hardly does it; the three limits were set on simulated repeats.
"""

import math
from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from attrs import field, frozen
from numpy.lib.stride_tricks import sliding_window_view

from core.line_up.common_axis import Bins, places, power, running_energy, stacked
from core.line_up.strands import Anchor, Strand
from core.traces import F64
from core.units import J_PER_WH

#: two runs differ from each other: which of them is the odd one cannot be told
LEAST_RUNS = 3
#: half-width of the band in robust standard deviations
HALF_WIDTH = 2.0
#: a run that leaves is this many standard deviations away somewhere ...
LEAVING = 4.5
#: ... uses this part of its energy more or less there ...
LEAVING_SHARE = 0.01
#: ... and stays outside for this part of the moving mean's width
LEAVING_WIDTHS = 0.5
#: of the axis, around a bin, from which its width is learnt
_AROUND = 0.06
#: the band is never narrower than this part of the median (or than the meter shows)
_LEAST_PART = 0.01
#: nor than this, where a dead log shows nothing at all
_LEAST = 1e-6
#: bins of the moving mean's width in which runs are judged
BINS_IN_WIDTH = 4
#: standard deviation over the median distance from the median, of n normal values pooled over many draws;
#: own simulation (the tests draw it again). They begin large because the median run has no distance.
_SCALE = {2: 2.10, 3: 3.19, 4: 2.06, 5: 2.04, 6: 1.90, 7: 1.81, 8: 1.78, 9: 1.72, 10: 1.70}
#: 1 / 0.6745 of the normal distribution, to which that tends
_SCALE_OF_MANY = 1.4826


@frozen
class Band:
    """Median and spread of a machine's runs on the common axis; NaN where fewer than half of them are."""

    machine_id: str
    slot: int
    runs: int
    places: F64 = field(eq=False, repr=False)
    median: F64 = field(eq=False, repr=False)
    low: F64 = field(eq=False, repr=False)
    high: F64 = field(eq=False, repr=False)


@frozen
class Leave:
    """Where a run leaves the band of its own machine.

    Parameters
    ----------
    start, end : float
        On the common axis.
    seconds : float
        [s]
    by_w : float
        Mean distance from the median there. [W]
    energy_wh : float
        What that amounts to. [Wh]
    """

    run_id: str
    start: float
    end: float
    seconds: float
    by_w: float
    energy_wh: float


def step_for(given: Sequence[Strand], anchor: Anchor, smooth_s: float) -> float:
    """Width of the bins in which runs smoothed over `smooth_s` are judged, in the axis' own unit."""
    step_s = max(smooth_s, 1.0) / BINS_IN_WIDTH
    if anchor != "share of duration":
        return step_s
    longest_s = max((s.seconds for s in given), default=step_s)
    return 1.0 / max(4, math.ceil(longest_s / step_s))


def power_band(given: Sequence[Strand], anchor: Anchor, step: float, smooth_s: float) -> Band:
    """Median and spread of the power of one machine's runs. [W]

    Parameters
    ----------
    given : sequence of Strand
        Two or more, of one machine.
    anchor : Anchor
    step : float
        Width of a bin of the common axis.
    smooth_s : float
        Width of the moving mean. [s]

    Raises
    ------
    ValueError
        If there are fewer than two.
    """
    return _band(given, [power(s, anchor, step, smooth_s) for s in given])[0]


def energy_band(given: Sequence[Strand], anchor: Anchor, step: float) -> Band:
    """Median and spread of the running energy of one machine's runs. [Wh]"""
    return _band(given, [running_energy(s, anchor, step) for s in given])[0]


def leaves(given: Sequence[Strand], anchor: Anchor, smooth_s: float) -> tuple[Leave, ...]:
    """Where the runs of one machine leave its band, by run and place.

    Parameters
    ----------
    given : sequence of Strand
        Of one machine; of fewer than three nothing is said.
    anchor : Anchor
        How they are lined up: a run may leave the band in one way of lining up and not in another.
    smooth_s : float
        Width of the moving mean over which they are judged, above 0. [s]
    """
    if len(given) < LEAST_RUNS:
        return ()
    step = step_for(given, anchor, smooth_s)
    band, apart, deviation = _band(given, [power(s, anchor, step, smooth_s) for s in given])
    found: list[Leave] = []
    for strand, row in zip(given, apart, strict=True):
        bin_s = step * (strand.seconds if anchor == "share of duration" else 1.0)
        for first, last in _outside(row / deviation):
            excess_w = row[first:last]
            seconds = bin_s * excess_w.size
            energy_wh = float(excess_w.sum()) * bin_s / J_PER_WH
            if (
                float(np.abs(excess_w / deviation[first:last]).max()) >= LEAVING
                and abs(energy_wh) >= LEAVING_SHARE * strand.energy_wh
                and seconds >= LEAVING_WIDTHS * smooth_s
            ):
                start = float(band.places[first]) - step / 2
                leave = Leave(
                    strand.run_id,
                    start,
                    start + step * excess_w.size,
                    seconds,
                    float(excess_w.mean()),
                    energy_wh,
                )
                found.append(leave)
    return tuple(found)


def _band(given: Sequence[Strand], rows: Sequence[Bins]) -> tuple[Band, F64, F64]:
    """The band, how far each run is from its median, and the standard deviation."""
    if len(given) < 2:
        raise ValueError("a band needs two runs")
    first, values = stacked(rows)
    known = np.isfinite(values).sum(axis=0) >= max(2, math.ceil(len(given) / 2))
    columns = np.flatnonzero(known)
    middles = places(first, values.shape[1], rows[0].step)
    median = np.full(values.shape[1], np.nan)
    deviation = np.full(values.shape[1], np.nan)
    if columns.size:
        inner = slice(columns[0], columns[-1] + 1)
        median[inner] = _median(values[:, inner])
        distance = np.abs(values[:, inner] - median[inner])
        least = np.maximum(
            _LEAST_PART * np.abs(median[inner]),
            max(_LEAST, *(s.trace.resolution_w / math.sqrt(12) for s in given)),
        )
        deviation[inner] = np.maximum(_deviation(distance), least)
    machine = given[0]
    half = HALF_WIDTH * deviation
    band = Band(machine.machine_id, machine.slot, len(given), middles, median, median - half, median + half)
    return band, values - median, deviation


def _median(values: F64) -> F64:
    """Median of each column over the runs that are there."""
    ordered = np.sort(values, axis=0)  # NaN last
    count = np.isfinite(values).sum(axis=0)
    columns = np.arange(values.shape[1])
    low = ordered[np.maximum((count - 1) // 2, 0), columns]
    high = ordered[np.minimum(count // 2, np.maximum(count - 1, 0)), columns]
    return np.asarray((low + high) / 2)


def _deviation(distance: F64) -> F64:
    """Robust standard deviation at each bin, learnt from the bins around it, shape (n,)."""
    runs, size = distance.shape
    around = 2 * round(_AROUND * size / 2) + 1
    half = around // 2
    padded = np.pad(distance, ((0, 0), (half, half)), mode="symmetric")
    # neighbouring windows share nearly all of their bins: every few of them say enough
    looked_at = np.unique(np.r_[0 : size : max(1, around // 8), size - 1])
    windows = sliding_window_view(padded, around, axis=1)[:, looked_at]
    pooled = np.moveaxis(windows, 1, 0).reshape(looked_at.size, -1)
    found = scale_of(runs) * _median(np.ascontiguousarray(pooled.T))
    return np.interp(np.arange(size), looked_at, found)


def scale_of(runs: int) -> float:
    """Standard deviation over the median distance from the median, for so many runs."""
    return _SCALE.get(runs) or _SCALE_OF_MANY * (1 + 1.25 / runs)


def _outside(deviations: F64) -> list[tuple[int, int]]:
    """Stretches of bins (first, beyond last) outside the band on one side of it."""
    with np.errstate(invalid="ignore"):
        side = np.where(deviations > HALF_WIDTH, 1, np.where(deviations < -HALF_WIDTH, -1, 0))
    turns = np.flatnonzero(np.diff(side)) + 1
    edges = [0, *turns.tolist(), side.size]
    return [(a, b) for a, b in pairwise(edges) if side[a]]
