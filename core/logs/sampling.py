"""What one value of a log stands for: the instant, the interval before it, or all time until the next.

Theory. Five witnesses, the surest first, none of them a name:

- *Time.* A log written on change is uneven in time, and a value is repeated only after a long silence.
  Changes that are too small to be written leave a floor below which there are none. A meter's noise has no
  floor: of changes spread like noise, one in forty is less than a quarter of what one in ten is less than.
- *The counter.* What it gains in an interval is regressed on the power at either end of the interval. An
  averaging meter gives coefficients near 1 and 0, a sampling one near 1/2 and 1/2 (or any equal pair where
  the load switches faster than it is sampled), a log on change 0 and 1. A counter too coarse for that still
  ticks, and the energy between ticks tells means from instants (`core.logs.ticks`).
- *Values met again.* An instant of a load that switches is one of its levels, which are met again nearby; a
  mean over a switching is not (`core.logs.single_values`).
- *Edges of rest.* A machine that begins to heat after a rest, or ends, switches once and for long: whatever
  its heaters then do in step with the rows, an averaging meter shows a value in between there, mostly.
- *Switchings.* While a heater goes on and off, an averaging meter shows a mixed value in nearly every
  interval in which it switches; a sampling one only when the moment of measuring falls on the edge.
"""

import math

import numpy as np
from attrs import frozen

from core.language import later, mark
from core.logs.single_values import SingleValues, single_values
from core.logs.switchings import Switchings, switchings
from core.logs.ticks import WINDOW_S, TicksTold, by_ticks
from core.traces import F64, Sampling, some_steps
from core.units import SECONDS_PER_HOUR

#: below this the two readings of a value cannot be told apart, and it does not matter [s]
SHORT_S = 1.5
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
#: ticks are heard where one kind is this much likelier than another, as a natural logarithm: 150 times
_TICKS_SURE = 5.0
#: ... and overrule a regression where they are surer than this
_TICKS_OVERRULE = 20.0
#: ... and where one is this much less likely, switchings do not outvote them
_TICKS_LEAN = 2.0
#: how often an averaging meter shows a value in between at the edge of a rest; a sampling one as often as the
#: edge falls into the time that it measures, and as heaters take time of their own to come on
_REST_MEANS, _REST_INSTANTS = 0.72, 0.1
#: heard where means are this much likelier than instants, as a natural logarithm (50 times), or instants than
#: means (20 times): an interval that is too wide does less harm than one that is too narrow
_REST_SURE = (4.0, 3.0)
#: ... and where instants are this much likelier, nothing that a heater in step can bring about outvotes them
_REST_LEAN = 1.0
#: values that differ from both neighbours: fewest that tell, fewest unmatched ones, as many as these for each
#: switching that would show one, and the most of all, beyond which the load has no levels; it has none either
#: where fewer than `_TELLING` of them could be told from values nearby
_SINGLE, _UNMATCHED, _UNMATCHED_SHARE, _MOST_UNMATCHED = 12, 5, 0.2, 0.5
_TELLING = 0.1
#: ... and below this share they are levels, surely; so they are where so few lone switchings are mixed
_MATCHED, _FEW_LONE = 0.05, 0.35
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
    if counter_wh is None:
        return _by_switchings(power_w, median, resolution_w, 0.0)
    told = _by_counter(time_s, power_w, counter_wh, breaks_s)
    # a sampling meter that measures for half the time adds up nearly as means do
    is_slow = median >= 3 * WINDOW_S
    ticks = by_ticks(time_s, power_w, resolution_w, counter_wh, breaks_s) if is_slow else None
    by_them = None if ticks is None else _as_ticks_say(ticks)
    if told is None:
        means = 0.0 if ticks is None else ticks.means
        return by_them or _by_switchings(power_w, median, resolution_w, means)
    if by_them is not None and ticks is not None and abs(ticks.means) > _TICKS_OVERRULE:
        return told if told.kind in ("on_change", by_them.kind) else by_them
    return told


def _as_ticks_say(ticks: TicksTold) -> Judged | None:
    """The kind under which the ticks are far likelier than under the other; None where neither is."""
    if ticks.means > _TICKS_SURE:
        why = mark(
            "averaged: the values add up to the energy in {count} stretches between ticks of the counter"
        )
        return Judged("averaged", later(why, count=ticks.count))
    if ticks.means < -_TICKS_SURE:
        why = mark(
            "sampled: the values do not add up to the energy in {count} stretches between ticks of the "
            "counter, as means would"
        )
        return Judged("sampled", later(why, count=ticks.count))
    return None


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


def _by_switchings(power_w: F64, median_s: float, resolution_w: float, likelier: float) -> Judged:
    """What the values tell without a counter; `likelier` is what its ticks say of means against instants."""
    single = single_values(power_w, resolution_w)
    seen = switchings(power_w, resolution_w, median_s)
    by_rest = _rest_tells(seen, median_s)
    is_told = by_rest > _REST_SURE[0] or by_rest < -_REST_SURE[1]
    if is_told and likelier * by_rest >= 0:
        return _as_rest_says(seen, by_rest)
    may_be_means = by_rest > -_REST_LEAN
    told = _by_single_values(single, median_s) if may_be_means else None
    if told is not None:
        return told
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
    least = max(_CYCLED, 0.2 + 0.8 * WINDOW_S / median_s)
    if may_be_means and lone > _LONE and not cycled < _LONE_CYCLED and likelier > -_TICKS_LEAN:
        if seen.lone >= 8:
            return Judged("averaged", later(mark("averaged: {why}"), why=text))
        return Judged("averaged", later(mark("averaged, by little to tell: {why}"), why=text), False)
    if cycled > least and seen.cycled >= 12 and seen.pulse_spread < _SAME_PULSES:
        why = later(
            mark("averaged: {why}, and the pulses' energies differ by only {percent} %"),
            why=text,
            percent=f"{100 * seen.pulse_spread:.0f}",
        )
        return Judged("averaged", why, True)
    are_levels = single.count >= _SINGLE and single.share_of_switchings < _MATCHED
    if are_levels or (seen.lone >= 8 and lone < _FEW_LONE):
        return Judged("sampled", later(mark("sampled: {why}"), why=text))
    doubtful = mark(
        "taken as of the instant, which leaves energies less certain, as nothing tells for sure: {why}"
    )
    return Judged("sampled", later(doubtful, why=text), False)


def _rest_tells(seen: Switchings, median_s: float) -> float:
    """How much likelier means are than instants by the edges of rests, as a natural logarithm."""
    instants = min(_REST_INSTANTS + WINDOW_S / median_s, _REST_MEANS)
    clean = seen.rest - seen.rest_mixed
    return seen.rest_mixed * math.log(_REST_MEANS / instants) + clean * math.log(
        (1 - _REST_MEANS) / (1 - instants)
    )


def _as_rest_says(seen: Switchings, likelier: float) -> Judged:
    facts = {"mixed": seen.rest_mixed, "count": seen.rest}
    if likelier > 0:
        why = mark(
            "averaged: {mixed} of {count} times that the machine began to heat after a rest, or ended, show "
            "a value in between"
        )
        return Judged("averaged", later(why, **facts))
    why = mark(
        "sampled: only {mixed} of {count} times that the machine began to heat after a rest, or ended, show "
        "a value in between"
    )
    return Judged("sampled", later(why, **facts))


def _by_single_values(single: SingleValues, median_s: float) -> Judged | None:
    """Averaged, where values that differ from both neighbours are rarely met again; None where they are."""
    if single.unmatched < _UNMATCHED or single.count < _SINGLE:
        return None
    if single.unmatched > _MOST_UNMATCHED * single.count or single.expected < _TELLING * single.count:
        return None  # a load that has no levels to be met again
    # of a sampling meter, so many switchings fall into the time that it measures
    by_chance = WINDOW_S / median_s
    if single.share_of_switchings < max(_UNMATCHED_SHARE, 1.3 * by_chance):
        return None
    why = later(
        mark(
            "averaged: {unmatched} of {count} values that differ from both neighbours are met nowhere near; "
            "of instants nearly all would be"
        ),
        unmatched=single.unmatched,
        count=single.count,
    )
    return Judged("averaged", why)
