"""What the switchings of a load look like in a log: a value in between, or none."""

import math
from collections.abc import Iterator

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


def switchings(power_w: F64, resolution_w: float) -> Switchings:
    """Look at every switching of a load between two levels.

    Levels are the low and the high rows of windows of about forty rows, so that they follow the load.
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
    lone_mixed, lone = _lone(power_w, max(0.25 * top, 20 * resolution_w, 8.0))
    return Switchings(lone_mixed, lone, mixed, mixed + clean, spread)


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


def _lone(power_w: F64, large_w: float) -> tuple[int, int]:
    """Lone switchings with a mixed value, and all of them."""
    if power_w.size < 6:
        return 0, 0
    a, b, c, d, e = (power_w[i : power_w.size - 4 + i] for i in range(5))
    leap = np.abs(d - b)
    calm = (np.abs(b - a) < 0.2 * leap) & (np.abs(e - d) < 0.2 * leap) & (leap > large_w)
    share = np.divide(c - b, d - b, out=np.full(c.shape, 0.5), where=leap > 0)
    mixed = int((calm & (share > 0.08) & (share < 0.92)).sum())
    leap = np.abs(c - b)
    direct = (np.abs(b - a) < 0.08 * leap) & (np.abs(d - c) < 0.08 * leap) & (leap > large_w)
    return mixed, mixed + int(direct.sum())
