"""What one value of a log stands for: the instant, the interval before it, or all time until the next.

Theory. Three witnesses, the surest first, none of them a name:

- *Time.* A log written on change is uneven in time, and a value is repeated only after a long silence.
  Changes that are too small to be written leave a floor below which there are none. A meter's noise has no
  floor: of changes spread like noise, one in forty is less than a quarter of what one in ten is less than.
- *The counter.* What it gains in an interval is regressed on the power at either end of the interval. An
  averaging meter gives coefficients near 1 and 0, a sampling one near 1/2 and 1/2 (or any equal pair where
  the load switches faster than it is sampled), a log on change 0 and 1.
- *Switchings.* While a heater goes on and off, an averaging meter shows a mixed value in nearly every
  interval in which it switches; a sampling one only when the moment of measuring falls on the edge.
"""

import math
from collections.abc import Iterator

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from core.language import later, mark
from core.traces import F64, Sampling, some_steps
from core.units import SECONDS_PER_HOUR

#: below this the two readings of a value cannot be told apart, and it does not matter [s]
SHORT_S = 1.5
#: a sampling meter measures over about this long [s]; common practice, no source
WINDOW_S = 1.0
#: share of intervals far from the usual one from which a log may be written on change
_UNEVEN = 0.04
#: ... or, with a floor below its changes, from which; and the most changes that may lie below the floor
_UNEVEN_WITH_FLOOR, _BELOW_FLOOR, _FLOOR_ROWS = 0.01, 0.004, 200
#: share of mixed values among lone switchings from which a meter averages
_LONE = 0.62
#: ... unless, in cycles, fewer than this are mixed
_LONE_CYCLED = 0.35
#: share of mixed values in cycles from which it averages, when the energies of pulses agree this well
_CYCLED = 0.27
_SAME_PULSES = 0.2
#: a regression that is less sure than this (standard error of the difference) is not heard
_SURE = 0.2


@frozen
class Judged:
    """The kind of a log, the reason in words, and whether the log could tell."""

    kind: Sampling
    reason: str
    is_sure: bool = True


def judge(
    time_s: F64,
    power_w: F64,
    resolution_w: float,
    counter_wh: F64 | None = None,
    breaks_s: tuple[float, ...] = (),
) -> Judged:
    """Decide the kind of a log.

    Parameters
    ----------
    time_s, power_w : ndarray, shape (n,)
        [s], [W]
    resolution_w : float
        Smallest step of the power reading. [W]
    counter_wh : ndarray, shape (n,), optional
        Energy counter, NaN where missing. [Wh]
    breaks_s : tuple of float
        Times of the rows before which the counter was reset. [s]
    """
    if time_s.size < 9:
        return Judged(
            "sampled", later(mark("too few rows to tell; values are taken as of the instant")), False
        )
    picked = some_steps(time_s)
    median = float(np.median(picked))
    uneven = float((np.abs(picked - median) > 0.5 * median).mean())
    if uneven >= _UNEVEN_WITH_FLOOR and _has_floor(power_w):
        why = later(
            mark(
                "on change: {percent} % of intervals are far from the usual {seconds} s, and hardly any "
                "change is small, as if those were left out"
            ),
            percent=f"{100 * uneven:.3g}",
            seconds=f"{median:.3g}",
        )
        return Judged("on_change", why)
    if uneven >= _UNEVEN:
        changed = _written_on_change(np.diff(time_s), power_w, resolution_w, median, uneven)
        if changed is not None:
            return changed
    if median < SHORT_S:
        why = later(
            mark("a value each {seconds} s: taken as of the instant, which at this pace is the same"),
            seconds=f"{median:.3g}",
        )
        return Judged("sampled", why)
    if counter_wh is not None:
        told = _by_counter(time_s, power_w, counter_wh, breaks_s)
        if told is not None:
            return told
    return _by_switchings(power_w, median, resolution_w)


def _written_on_change(
    steps: F64, power_w: F64, resolution_w: float, median: float, uneven: float
) -> Judged | None:
    change = np.abs(np.diff(power_w))
    differs = change > 0.5 * max(resolution_w, 1e-9)
    silence = _silence(steps)
    short, long = steps < 0.6 * silence, (steps > 0.9 * silence) & (steps < 1.2 * silence)
    if short.sum() < 8:
        return None
    repeats = 1.0 - float(differs[short].mean())
    after_silence = 1.0 - float(differs[long].mean()) if long.sum() >= 3 else 0.0
    text = later(
        mark(
            "on change: {percent} % of intervals are far from the usual {seconds} s, and {others} % of rows "
            "that follow soon bring another value"
        ),
        percent=f"{100 * uneven:.3g}",
        seconds=f"{median:.3g}",
        others=f"{100 * (1 - repeats):.4g}",
    )
    if long.sum() >= 3 and repeats < 0.3 and after_silence > max(3 * repeats, 0.1):
        return Judged("on_change", text)
    quiet = long.sum() >= 3 and float(np.median(change[long])) < float(np.percentile(change[short], 25))
    if repeats < 0.03 and (quiet or uneven > 0.3):
        return Judged("on_change", text, uneven > 0.3)
    return None


def _has_floor(power_w: F64) -> bool:
    """Whether small changes are missing that noise would bring."""
    change = np.abs(np.diff(power_w))
    if change.size < _FLOOR_ROWS:
        return False
    usual = float(np.percentile(change, 10))
    return usual > 0 and float((change < 0.25 * usual).mean()) < _BELOW_FLOOR


def _silence(steps: F64) -> float:
    """The longest interval that recurs: the sign of life of a log on change, if it gives one. [s]"""
    high = steps[steps > np.percentile(steps, 50)]
    if high.size < 4:
        return float(np.percentile(steps, 99))
    ordered = np.sort(high)[::-1]
    recurs = ordered[2:] >= 0.9 * ordered[:-2]
    return float(ordered[int(np.argmax(recurs))]) if recurs.any() else float(np.percentile(steps, 99))


def _by_counter(time_s: F64, power_w: F64, counter_wh: F64, breaks_s: tuple[float, ...]) -> Judged | None:
    """Regress what the counter gained on the power at either end; None where that is not sure enough."""
    steps, gained = np.diff(time_s), np.diff(counter_wh)
    use = np.isfinite(gained) & (steps < 3 * float(np.median(steps)))
    for at in breaks_s:
        use[max(0, int(np.searchsorted(time_s, at)) - 1)] = False
    hours = steps / SECONDS_PER_HOUR
    x = np.column_stack((power_w[1:] * hours, power_w[:-1] * hours, hours))[use]
    if x.shape[0] < 30:
        return None
    y = gained[use]
    normal = x.T @ x
    try:
        inverse = np.linalg.inv(normal)
    except np.linalg.LinAlgError:
        return None
    found = inverse @ (x.T @ y)
    rest = y - x @ found
    variance = float(rest @ rest) / (x.shape[0] - 3)
    spread = variance * float(inverse[0, 0] + inverse[1, 1] - 2 * inverse[0, 1])
    sure = math.sqrt(spread) if spread > 0 else math.inf
    now, before = float(found[0]), float(found[1])
    if not sure < _SURE:
        return None
    text = later(
        mark("the counter follows {now} of the power at an interval's end and {before} of that before"),
        now=f"{now:.2f}",
        before=f"{before:.2f}",
    )
    if now - before > 0.5 * (1.0 + max(0.2, min(1.0, WINDOW_S / float(np.median(steps))))) and now > 0.7:
        return Judged("averaged", later(mark("averaged: {why}"), why=text))
    if before - now > 0.5 and before > 0.7:
        return Judged("on_change", later(mark("each value holds until the next: {why}"), why=text))
    return Judged("sampled", later(mark("sampled: {why}"), why=text))


def _by_switchings(power_w: F64, median_s: float, resolution_w: float) -> Judged:
    seen = switchings(power_w, resolution_w)
    least = max(_CYCLED, 0.2 + 0.8 * WINDOW_S / median_s)
    text = later(
        mark(
            "{lone_mixed} of {lone} lone switchings and {cycled_mixed} of {cycled} in cycles show a value in "
            "between"
        ),
        lone_mixed=seen.lone_mixed,
        lone=seen.lone,
        cycled_mixed=seen.cycled_mixed,
        cycled=seen.cycled,
    )
    if seen.lone < 3 and seen.cycled < 6:
        why = later(mark("hardly any switching to tell by; values are taken as of the instant"))
        return Judged("sampled", why, False)
    lone = seen.lone_mixed / (seen.lone + 1) if seen.lone >= 3 else math.nan
    cycled = seen.cycled_mixed / seen.cycled if seen.cycled >= 6 else math.nan
    if lone > _LONE and not cycled < _LONE_CYCLED:
        return Judged("averaged", later(mark("averaged: {why}"), why=text), seen.lone >= 8)
    if cycled > least and seen.cycled >= 12 and seen.pulse_spread < _SAME_PULSES:
        why = later(
            mark("averaged: {why}, and the pulses' energies differ by only {percent} %"),
            why=text,
            percent=f"{100 * seen.pulse_spread:.0f}",
        )
        return Judged("averaged", why, True)
    return Judged("sampled", later(mark("sampled: {why}"), why=text), seen.lone + seen.cycled >= 12)


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
