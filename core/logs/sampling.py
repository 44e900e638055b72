"""What one value of a log stands for: the instant, the interval before it, or all time until the next.

Rules: decided by how machines and meters work, never by names. A log written on change is uneven in time and
its neighbouring values differ; an averaging meter shows a mixed value in nearly every interval in which a heater
switches, a sampling one hardly ever.
"""

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from core.traces import F64, Sampling

#: below this the two readings of a value cannot be told apart, and it does not matter [s]
SHORT_S = 1.5


@frozen
class Judged:
    """The kind of a log, the reason in words, and whether the log could tell."""

    kind: Sampling
    reason: str
    is_sure: bool = True


def judge(time_s: F64, power_w: F64, resolution_w: float) -> Judged:
    """Decide the kind of a log.

    Parameters
    ----------
    time_s, power_w : ndarray, shape (n,)
        [s], [W]
    resolution_w : float
        Smallest step of the power reading. [W]
    """
    steps = np.diff(time_s)
    if steps.size < 8:
        return Judged("sampled", "too few rows to tell; values are taken as of the instant", False)
    changed = _written_on_change(steps, power_w, resolution_w)
    if changed is not None:
        return changed
    return _averaged_or_sampled(steps, power_w, resolution_w)


def _written_on_change(steps: F64, power_w: F64, resolution_w: float) -> Judged | None:
    median = float(np.median(steps))
    differs = np.abs(np.diff(power_w)) > 0.5 * max(resolution_w, 1e-9)
    uneven = float((np.abs(steps - median) > 0.5 * median).mean())
    if uneven < 0.03:
        return None
    longest = float(np.percentile(steps, 99))
    short = steps < 0.6 * longest
    if short.sum() < 8:
        return None
    differing = float(differs[short].mean())
    if differing < 0.97:
        return None
    if uneven < 0.15 and float(differs.mean()) > 0.97 and not _rests(steps, differs, longest):
        return None
    return Judged(
        "on_change",
        f"on change: {100 * uneven:.3g} % of intervals are far from the usual {median:.3g} s, and "
        f"{100 * differing:.4g} % of rows that follow soon bring another value",
    )


def _rests(steps: F64, differs: NDArray[np.bool_], longest: float) -> bool:
    """Whether rows that repeat a value come at the end of a long silence (a sign of life)."""
    same = ~differs
    return bool(same.any()) and float(np.median(steps[same])) > 0.6 * longest


def _averaged_or_sampled(steps: F64, power_w: F64, resolution_w: float) -> Judged:
    median = float(np.median(steps))
    if median < SHORT_S:
        return Judged(
            "sampled", f"a value each {median:.3g} s: taken as of the instant, which at this pace is the same"
        )
    mixed, edges = mixed_share(power_w, resolution_w)
    if edges < 4:
        return Judged("sampled", "hardly any switching to tell by; values are taken as of the instant", False)
    text = f"in {100 * mixed:.3g} % of {edges} switchings a value in between was logged"
    if mixed > 0.6:
        return Judged("averaged", f"averaged: {text}", edges >= 8)
    return Judged("sampled", f"sampled: {text}", edges >= 8)


def mixed_share(power_w: F64, resolution_w: float) -> tuple[float, int]:
    """Share of large switchings with one value in between, and how many switchings there were.

    A switching is a change of level between two rows that are each like their other neighbour.
    """
    if power_w.size < 6:
        return 0.0, 0
    span = float(np.percentile(power_w, 98) - np.percentile(power_w, 2))
    large = max(0.25 * span, 20 * resolution_w, 8.0)
    flat = 0.2
    a, b, c, d, e = (power_w[i : power_w.size - 4 + i] for i in range(5))
    # one row between two levels: a ~ b | c | d ~ e
    leap = np.abs(d - b)
    calm = (np.abs(b - a) < flat * leap) & (np.abs(e - d) < flat * leap) & (leap > large)
    share = np.divide(c - b, d - b, out=np.full(c.shape, 0.5), where=leap > 0)
    between = calm & (share > 0.08) & (share < 0.92)
    # no row between: b | c with a ~ b and c ~ d
    leap2 = np.abs(c - b)
    direct = (np.abs(b - a) < 0.08 * leap2) & (np.abs(d - c) < 0.08 * leap2) & (leap2 > large)
    total = int(between.sum() + direct.sum())
    return (float(between.sum()) / total if total else 0.0), total
