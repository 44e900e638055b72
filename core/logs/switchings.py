"""What the switchings of a load look like in a log: a value in between, or none."""

import math
from collections.abc import Collection, Iterator

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from core.traces import F64


@frozen
class Switchings:
    """What the switchings of a load look like in a log.

    ``lone`` switchings have two rows of one level on either side, ``cycled`` ones lie between the low and the
    high level of their surroundings; the mixed ones of either kind show a value in between. ``pulse_spread``
    is the spread of the energies of short pulses over their mean: an averaging meter loses nothing of a
    pulse, a sampling one catches it or not. It is infinite when there are too few pulses.
    """

    lone_mixed: int
    lone: int
    cycled_mixed: int
    cycled: int
    pulse_spread: float
    rest_mixed: int = 0
    rest: int = 0


#: a rest is longer than any heater lets go: so many rows, and so long [s]
_REST_ROWS, _REST_S = 4, 150.0
#: it steps by this part of the range of the power, or more
_REST_LEAP = 0.12
#: and lies no further than this part of it above the lowest values, or than motors that are held lift it [W];
#: common practice, no source
_REST_HIGH, _HELD_W = 0.15, 22.0

#: rows further apart than this show little of a warm-up [s]
_SLOW_S = 20.0
#: a value in between lies between these parts of a switching
_MIXED = (0.08, 0.92)
#: motors that move before anything heats draw less than this part of what then heats
_HOMING = 0.3


def switchings(power_w: F64, resolution_w: float, interval_s: float = math.inf) -> Switchings:
    """Look at every switching of a load between two levels.

    Levels are the low and the high rows of windows of about forty rows, so that they follow the load.

    Parameters
    ----------
    power_w : ndarray, shape (n,)
        [W]
    resolution_w : float
        Smallest step of the power reading. [W]
    interval_s : float
        From row to row. [s]
    """
    mixed = clean = 0
    pulses: list[float] = []
    top = float(np.percentile(power_w, 99)) - float(np.percentile(power_w, 1))
    least = max(0.2 * top, 15 * resolution_w, 8.0)
    for part in _windows(power_w):
        low, high = (float(v) for v in np.percentile(part, (15, 97)))
        if high - low < least:
            continue
        height = (part - low) / (high - low)
        m, c = _count(np.where(height < 0.15, 0, np.where(height > 0.85, 2, 1)))
        mixed += m
        clean += c
        pulses += _pulses(part - low, 0.12 * (float(part.max()) - low))
    energies = np.array(pulses)
    spread = float(energies.std() / energies.mean()) if energies.size >= 6 else math.inf
    mixed_at, clean_at = _lone(power_w, max(0.25 * top, 20 * resolution_w, 8.0))
    low_w = float(np.percentile(power_w, 5)) + min(_REST_HIGH * top, _HELD_W)
    rest_rows = max(_REST_ROWS, math.ceil(_REST_S / interval_s))
    leap_w = max(_REST_LEAP * top, 20 * resolution_w, 8.0)
    rest_mixed_at, rest_clean_at = (
        [at for at in found if _follows_rest(power_w, at, rest_rows, low_w)]
        for found in _lone(power_w, leap_w)
    )
    if interval_s >= _SLOW_S:
        # a warm-up is over within a few slow rows
        seen = {*rest_mixed_at, *(at + 1 for at in rest_clean_at)}
        begun_mixed, begun_clean = _begun(power_w, leap_w, rest_rows, low_w, seen)
        rest_mixed_at += begun_mixed
        rest_clean_at += begun_clean
    return Switchings(
        len(mixed_at),
        len(mixed_at) + len(clean_at),
        mixed,
        mixed + clean,
        spread,
        len(rest_mixed_at),
        len(rest_mixed_at) + len(rest_clean_at),
    )


def _windows(power_w: F64, size: int = 40) -> Iterator[F64]:
    for start in range(0, max(1, power_w.size - size // 2), size):
        yield power_w[start : start + size + 1]


def _count(level: NDArray[np.int_]) -> tuple[int, int]:
    """Switchings with one or two rows in between, and without; more rows are a level of their own."""
    starts = np.flatnonzero(np.concatenate(([True], np.diff(level) != 0)))
    lengths = np.diff(np.concatenate((starts, [level.size])))
    kinds = level[starts]
    inner = slice(1, -1)
    short = (kinds[inner] == 1) & (lengths[inner] <= 2)
    return int(lengths[inner][short].sum()), int((np.abs(np.diff(kinds)) == 2).sum())


def _pulses(above_w: F64, least_w: float) -> list[float]:
    """Sums over pulses of up to three rows with low rows on either side."""
    edges = np.flatnonzero(np.diff(np.concatenate(([0], (above_w > least_w).astype(np.int8), [0]))))
    return [
        float(above_w[a:b].sum())
        for a, b in zip(edges[::2].tolist(), edges[1::2].tolist(), strict=True)
        if a > 0 and b < above_w.size and b - a <= 3
    ]


def _lone(power_w: F64, large_w: float) -> tuple[list[int], list[int]]:
    """Rows at the middle of lone switchings with a mixed value; last rows before those without."""
    if power_w.size < 6:
        return [], []
    a, b, c, d, e = (power_w[i : power_w.size - 4 + i] for i in range(5))
    leap = np.abs(d - b)
    calm = (np.abs(b - a) < 0.2 * leap) & (np.abs(e - d) < 0.2 * leap) & (leap > large_w)
    share = np.divide(c - b, d - b, out=np.full(c.shape, 0.5), where=leap > 0)
    mixed = np.flatnonzero(calm & (share > _MIXED[0]) & (share < _MIXED[1])) + 2
    leap = np.abs(c - b)
    direct = (np.abs(b - a) < 0.08 * leap) & (np.abs(d - c) < 0.08 * leap) & (leap > large_w)
    return mixed.tolist(), (np.flatnonzero(direct) + 1).tolist()


def _begun(
    power_w: F64, leap_w: float, rows: int, low_w: float, seen: Collection[int]
) -> tuple[list[int], list[int]]:
    """First rows after a rest that lie below the next, and those that do not; none of those in `seen`.

    Heaters draw most when they are switched on, so an instant is no lower than what follows; a mean is, by
    the rest that it holds.
    """
    at = np.flatnonzero((power_w[:-1] <= low_w) & (power_w[1:] - power_w[:-1] > _MIXED[0] * leap_w)) + 1
    mixed: list[int] = []
    clean: list[int] = []
    for row in at.tolist():
        before_w, after_w = power_w[max(row - rows, 0) : row], power_w[row + 1 : row + 3]
        if row in seen or before_w.size < rows or after_w.size < 2 or not (before_w <= low_w).all():
            continue
        next_w = float(after_w[0] - before_w[-1])
        share = float(power_w[row] - before_w[-1]) / next_w if next_w > 0 else math.inf
        # what is far lower may be an instant of motors that move before anything heats
        if share > _HOMING and max(next_w, float(after_w[1] - before_w[-1])) > leap_w:
            (mixed if share < _MIXED[1] else clean).append(row)
    return mixed, clean


def _follows_rest(power_w: F64, at: int, rows: int, low_w: float) -> bool:
    """Whether the lower side of a switching at row `at` is a rest below `low_w` of so many rows."""
    before_w, after_w = power_w[max(at - rows, 0) : at], power_w[at + 2 : at + 2 + rows]
    if before_w.size < rows or after_w.size < rows:
        return False
    from_w, to_w = float(before_w[-1]), float(after_w[0])
    middle_w = min((from_w + to_w) / 2, low_w)
    return bool((before_w < middle_w).all() if from_w < to_w else (after_w < middle_w).all())
