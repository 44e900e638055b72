"""Steps of a switch-on test: where loads were turned on and off, and by how many watts the power moved.

Theory of operation. Binary segmentation cuts the power into pieces of one level: the cut that explains most
is taken as long as it stands out of the noise of its own piece. Neighbours that differ by less than a display
or a drift can make are put together. Pieces that go up and down in turn are one plateau of a switching
heater, whose level is the mean over whole cycles. A step is the difference of two plateaus that follow each
other; the meter's offset cancels in it, its gain stays.

References
----------
.. [1] A. J. Scott and M. Knott, "A cluster analysis method for grouping means in the analysis of variance",
   Biometrics 30 (1974) 507-512: binary segmentation (from memory).
"""

import math
from itertools import pairwise

import numpy as np
from attrs import evolve, frozen

from core.beds.steady import THEORY_DF, u_of_mean
from core.energy.total import between
from core.loads.cycles import Piece, trains
from core.study import Meter
from core.traces import F64, Trace
from core.uncertainty import coverage_factor
from core.units import J_PER_WH

#: a level is held at least so long; a peak, which is a heater heating up, may be shorter [s]
LEVEL_S = 45.0
PEAK_S = 12.0
#: a level needs so many rows
LEVEL_ROWS = 4
#: a step is larger than this many resolution steps, and than this many times the noise of single rows
STEP_RESOLUTIONS = 1.5
STEP_NOISE = 1.5
#: levels this many standard uncertainties apart are two
APART_U = 3.0
#: and than this part of the level: slower drift makes as much
DRIFT_PART = 0.02
#: a cut stands out by so many standard deviations of its cusum; some hundred places are tried for each
CUT_TIMES = 6.0
#: time left out at each end of a plateau, where fans run up and means straddle the step [s]
EDGE_S = 4.0
#: a cut leaves so many rows on either side
_LEAST_ROWS = 2
#: so many means of parts of a plateau tell how sure its mean is
_PARTS = 8
#: so few rows between two levels straddle the step
_EDGE_ROWS = 3
#: a log with more rows in a test is averaged to so many
_MOST_ROWS = 20_000


@frozen
class Plateau:
    """A time in which nothing was turned on or off.

    Parameters
    ----------
    start_s, end_s : float
        On the log's clock. [s]
    mean_w, u_w : float
        Mean power and its standard uncertainty, without the meter's gain and offset. [W]
    df : float
        Degrees of freedom of `u_w`.
    low_w, low_u_w : float
        Level between a heater's pulses; equal to `mean_w` and `u_w` where nothing switches. [W]
    is_switching : bool
        Whether a heater goes on and off in it.
    """

    start_s: float
    end_s: float
    mean_w: float
    u_w: float
    df: float
    low_w: float
    low_u_w: float
    is_switching: bool = False


@frozen
class Step:
    """The power moved from one level to another.

    Parameters
    ----------
    at_s : float
        When, on the log's clock. [s]
    watts : float
        Up is above 0. [W]
    u_w : float
        Standard uncertainty, without the meter's gain. [W]
    df : float
        Its degrees of freedom.
    """

    at_s: float
    watts: float
    u_w: float
    df: float

    def u95_w(self, gain_u: float) -> float:
        """Half-width of the 95 % interval with a meter's gain of relative uncertainty `gain_u`. [W]"""
        return interval_w(self.watts, self.u_w, self.df, gain_u)


@frozen(cache_hash=True)
class Staircase:
    """Plateaus of a switch-on test, and the steps between them (one fewer)."""

    plateaus: tuple[Plateau, ...]
    steps: tuple[Step, ...]


def interval_w(watts: float, u_w: float, df: float, gain_u: float) -> float:
    """Half-width of the 95 % interval of watts whose meter's gain is as unsure as `gain_u`. [W]"""
    total_w = math.hypot(u_w, gain_u * watts)
    if total_w == 0:
        return 0.0
    effective = df * (total_w / u_w) ** 4 if u_w > 0 else math.inf
    return coverage_factor(effective) * total_w


def find_steps(trace: Trace, start_s: float, end_s: float, meter: Meter) -> Staircase:
    """Find the levels of an interval, and the steps between them.

    Parameters
    ----------
    trace : Trace
    start_s, end_s : float
        The test, with some time before the first load. [s]
    meter : Meter

    Returns
    -------
    Staircase
        Without plateaus where the interval has too few rows.
    """
    time_s, power_w = _rows(trace, max(start_s, 0.0), min(end_s, trace.end_s))
    if time_s.size < 2 * LEVEL_ROWS:
        return Staircase((), ())
    pieces = _pieces(time_s, power_w, trace.resolution_w)
    plateaus: list[Plateau] = []
    used = 0
    for first, last in trains(pieces):
        plateaus += _still(pieces[used:first], time_s, power_w, trace)
        plateaus.append(_switching(pieces[first : last + 1], trace, meter, time_s, power_w))
        used = last + 1
    plateaus += _still(pieces[used:], time_s, power_w, trace)
    levels = _lasting(plateaus, trace)
    return Staircase(levels, tuple(_step(a, b) for a, b in pairwise(levels)))


def _rows(trace: Trace, start_s: float, end_s: float) -> tuple[F64, F64]:
    """Rows of an interval at even times: those of an on-change log hold until the next."""
    first, last = np.searchsorted(trace.time_s, (start_s, end_s), side="left").tolist()
    step_s = max(trace.median_s, (end_s - start_s) / _MOST_ROWS)
    if trace.kind == "on_change":
        at_s = np.arange(max(start_s, 0.0), min(end_s, trace.end_s), max(1.0, (end_s - start_s) / _MOST_ROWS))
        rows = np.searchsorted(trace.time_s, at_s, side="right") - 1
        return at_s, trace.power_w[np.maximum(rows, 0)]
    time_s, power_w = trace.time_s[first:last], trace.power_w[first:last]
    many = max(1, math.ceil(step_s / trace.median_s)) if trace.median_s > 0 else 1
    if many > 1:
        whole = time_s.size // many * many
        time_s = time_s[:whole].reshape(-1, many).mean(axis=1)
        power_w = power_w[:whole].reshape(-1, many).mean(axis=1)
    return time_s, power_w


def _pieces(time_s: F64, power_w: F64, resolution_w: float) -> list[Piece]:
    """Pieces of one level each, from the first row to the last."""
    noise_w = _noise_w(power_w)
    least_w = max(STEP_RESOLUTIONS * resolution_w, STEP_NOISE * noise_w)
    sums = np.r_[0.0, np.cumsum(power_w - power_w[0])]
    cuts = {0, power_w.size}
    waiting = [(0, power_w.size)]
    while waiting:
        first, end = waiting.pop()
        cut = _cut(power_w, sums, first, end, noise_w, resolution_w)
        if cut is not None:
            cuts.add(cut)
            waiting += [(first, cut), (cut, end)]
    edges = sorted(cuts)
    found = [_piece(time_s, power_w, a, b) for a, b in pairwise(edges)]
    return _put_together(_without_edges(found), time_s, power_w, least_w)


def _noise_w(power_w: F64) -> float:
    """Standard deviation of single rows, by the median step between neighbours (factor of a normal one)."""
    steps = np.abs(np.diff(power_w))
    return float(np.median(steps)) / (0.6745 * math.sqrt(2.0)) if steps.size else 0.0


def _cut(power_w: F64, sums: F64, first: int, end: int, noise_w: float, resolution_w: float) -> int | None:
    """Where to cut rows `first` to `end`; None where nothing stands out."""
    count = end - first
    if count < 2 * _LEAST_ROWS:
        return None
    left = np.arange(_LEAST_ROWS, count - _LEAST_ROWS + 1)
    total = sums[end] - sums[first]
    below = sums[first + left] - sums[first]
    apart_w = np.abs(below / left - (total - below) / (count - left))
    cusum_w = apart_w * np.sqrt(left * (count - left) / count)
    best = int(np.argmax(cusum_w))
    own_w = max(noise_w, _noise_w(power_w[first:end]), resolution_w / math.sqrt(12.0))
    if cusum_w[best] < CUT_TIMES * own_w:
        return None
    return first + int(left[best])


def _piece(time_s: F64, power_w: F64, first: int, end: int) -> Piece:
    values = power_w[first:end]
    after_s = time_s[end] if end < time_s.size else time_s[-1] + (time_s[-1] - time_s[-2])
    return Piece(first, end, float(time_s[first]), float(after_s), float(np.median(values)))


def _without_edges(pieces: list[Piece]) -> list[Piece]:
    """A few rows on the way from one level to another are no level; they go to the one before."""
    kept = [pieces[0]]
    for i, piece in enumerate(pieces[1:], start=1):
        last = kept[-1]
        after = pieces[i + 1] if i + 1 < len(pieces) else None
        if after is not None and piece.end - piece.first <= _EDGE_ROWS:
            low_w, high_w = sorted((last.level_w, after.level_w))
            if low_w < piece.level_w < high_w:
                kept[-1] = evolve(last, end=piece.end, end_s=piece.end_s)
                continue
        kept.append(piece)
    return kept


def _put_together(pieces: list[Piece], time_s: F64, power_w: F64, least_w: float) -> list[Piece]:
    """Pieces whose neighbours differ by a step; chains of small differences are drift and one piece."""
    merged = [pieces[0]]
    last_w = pieces[0].level_w
    for piece in pieces[1:]:
        limit_w = max(least_w, DRIFT_PART * max(abs(piece.level_w), abs(last_w)))
        if abs(piece.level_w - last_w) <= limit_w:
            merged[-1] = _piece(time_s, power_w, merged[-1].first, piece.end)
        else:
            merged.append(piece)
        last_w = piece.level_w
    return merged


def _still(pieces: list[Piece], time_s: F64, power_w: F64, trace: Trace) -> list[Plateau]:
    """Plateaus in which nothing switches."""
    return [_level(p, time_s, power_w, trace) for p in pieces if p.end - p.first >= LEVEL_ROWS]


def _level(piece: Piece, time_s: F64, power_w: F64, trace: Trace) -> Plateau:
    seconds = piece.end_s - piece.start_s
    edge_s = min(EDGE_S, seconds / 5)
    rows = slice(
        int(np.searchsorted(time_s, piece.start_s + edge_s)),
        int(np.searchsorted(time_s, piece.end_s - edge_s)),
    )
    values = power_w[rows] if rows.stop - rows.start >= LEVEL_ROWS else power_w[piece.first : piece.end]
    parts = np.array_split(values, min(_PARTS, max(2, values.size // 2)))
    means = np.array([part.mean() for part in parts])
    u_w = u_of_mean(means)
    spread_w = float(values.std(ddof=1))
    if spread_w < trace.resolution_w / 2:  # too still to be smoothed by its own noise
        u_w = math.hypot(u_w, trace.resolution_w / math.sqrt(12.0))
    mean_w = float(values.mean())
    return Plateau(piece.start_s, piece.end_s, mean_w, u_w, means.size - 1.0, mean_w, u_w)


def _switching(pieces: list[Piece], trace: Trace, meter: Meter, time_s: F64, power_w: F64) -> Plateau:
    """A plateau of whole cycles of a heater; the mean runs from one switching on to another."""
    middle_w = (max(p.level_w for p in pieces) + min(p.level_w for p in pieces)) / 2
    on_s = [p.start_s for p in pieces if p.level_w > middle_w]
    half_s = trace.median_s / 2 if trace.kind == "sampled" else 0.0
    cycles = np.array(
        [
            between(trace, a - half_s, b - half_s, meter, rising_edges=False).energy_wh * J_PER_WH / (b - a)
            for a, b in pairwise(on_s)
        ]
    )
    whole = between(trace, on_s[0] - half_s, on_s[-1] - half_s, meter, rising_edges=False)
    per_hour = J_PER_WH / (on_s[-1] - on_s[0])
    own_w = math.sqrt(sum(i.u_wh**2 for i in whole.influences if i.shared is None)) * per_hour
    df = cycles.size - 1.0
    u_w = math.sqrt((df * u_of_mean(cycles) ** 2 + THEORY_DF * own_w**2) / (df + THEORY_DF))
    lows = [_level(p, time_s, power_w, trace) for p in pieces if p.level_w <= middle_w]
    low_w = np.array([p.mean_w for p in lows])
    low_u_w = max(u_of_mean(low_w), min(p.u_w for p in lows))
    return Plateau(
        start_s=pieces[0].start_s,
        end_s=pieces[-1].end_s,
        mean_w=whole.energy_wh * per_hour,
        u_w=u_w,
        df=df + THEORY_DF,
        low_w=float(low_w.mean()),
        low_u_w=low_u_w,
        is_switching=True,
    )


def _lasting(plateaus: list[Plateau], trace: Trace) -> tuple[Plateau, ...]:
    """Without what is on its way from one level to another: too short, and no peak of heating."""
    kept: list[Plateau] = []
    for i, plateau in enumerate(plateaus):
        seconds = plateau.end_s - plateau.start_s
        before_w = plateaus[i - 1].mean_w if i else math.inf
        after_w = plateaus[i + 1].mean_w if i + 1 < len(plateaus) else math.inf
        is_peak = plateau.mean_w > max(before_w, after_w)
        if seconds >= (PEAK_S if is_peak else LEVEL_S):
            kept.append(plateau)
    return tuple(_joined(kept, trace))


def _joined(plateaus: list[Plateau], trace: Trace) -> list[Plateau]:
    """One of two still neighbours that are one level again once what lay between them is gone."""
    kept: list[Plateau] = []
    for plateau in plateaus:
        last = kept[-1] if kept else None
        if last is not None and not (last.is_switching or plateau.is_switching):
            apart_w = abs(plateau.mean_w - last.mean_w)
            limit_w = max(STEP_RESOLUTIONS * trace.resolution_w, DRIFT_PART * abs(last.mean_w))
            if apart_w <= max(limit_w, APART_U * math.hypot(last.u_w, plateau.u_w)):
                longer = max((last, plateau), key=lambda p: p.end_s - p.start_s)
                kept[-1] = evolve(longer, start_s=last.start_s, end_s=plateau.end_s)
                continue
        kept.append(plateau)
    return kept


def _step(before: Plateau, after: Plateau) -> Step:
    """The step between two plateaus; of two that switch, by the level between the heater's pulses."""
    if before.is_switching and after.is_switching:
        a, b = (before.low_w, before.low_u_w), (after.low_w, after.low_u_w)
    else:
        a, b = (before.mean_w, before.u_w), (after.mean_w, after.u_w)
    u_w = math.hypot(a[1], b[1])
    shares = a[1] ** 4 / before.df + b[1] ** 4 / after.df
    df = u_w**4 / shares if shares > 0 else math.inf
    return Step(after.start_s, b[0] - a[0], u_w, df)
