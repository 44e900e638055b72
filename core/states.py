"""Operating states of a machine, read from the power alone: off, standby, warm-up, processing, cooling.

The words are used in the sense of ISO 14955-1; cooling is our own word for what follows processing until the
machine is back at standby.
"""

from itertools import pairwise

import numpy as np

from core.activity import Activity, Stretch
from core.activity.rows import rows_of
from core.activity.warming import AROUND_S, warm_up_end_s
from core.results.values import State, StateSpan
from core.study import Boundary
from core.traces import Trace

__all__ = ["bounds", "states", "states_of_log", "warm_up_end"]

#: back at standby means within this many resolution steps of it, or this much
STANDBY_STEPS = 2.0
STANDBY_W = 1.0


def warm_up_end(trace: Trace, activity: Activity, start_s: float, end_s: float) -> float:
    """When warm-up ends in the run from `start_s` to `end_s`; `start_s` if it shows no warm-up. [s]

    Parameters
    ----------
    trace : Trace
    activity : Activity
        Of this trace.
    start_s, end_s : float
        Edges of the run, found or set by the user. [s]
    """
    for stretch in activity.stretches:
        if stretch.start_s == start_s and stretch.end_s == end_s:
            return max(start_s, stretch.warm_up_end_s)
    rows = rows_of(trace, start_s - AROUND_S, end_s + AROUND_S)
    return warm_up_end_s(
        rows, activity.standby_w or 0.0, activity.threshold_w, activity.quiet_w, start_s, end_s
    )


def states(trace: Trace, activity: Activity, start_s: float, end_s: float) -> tuple[StateSpan, ...]:
    """States of one run: warm-up, processing, and the cooling that follows it.

    Parameters
    ----------
    trace : Trace
    activity : Activity
        Of this trace.
    start_s, end_s : float
        Edges of the run, found or set by the user. [s]

    Returns
    -------
    tuple of StateSpan
        Without a warm-up where the run shows none, and without cooling where the log ends with the run.
    """
    warm_s = warm_up_end(trace, activity, start_s, end_s)
    cooled_s = _cooled_s(trace, activity, end_s)
    spans: list[tuple[State, float, float]] = [
        ("warm-up", start_s, warm_s),
        ("processing", warm_s, end_s),
        ("cooling", end_s, cooled_s),
    ]
    return tuple(StateSpan(state, a, b) for state, a, b in spans if b > a)


def bounds(
    trace: Trace, activity: Activity, start_s: float, end_s: float, boundary: Boundary
) -> tuple[float, float]:
    """From when to when a run counts under one of the three boundaries. [s]

    Parameters
    ----------
    trace : Trace
    activity : Activity
        Of this trace.
    start_s, end_s : float
        First heating and end of processing. [s]
    boundary : {"warm-up and processing", "processing only", "until cooled"}
    """
    if boundary == "processing only":
        return warm_up_end(trace, activity, start_s, end_s), end_s
    if boundary == "until cooled":
        return start_s, _cooled_s(trace, activity, end_s)
    return start_s, end_s


def states_of_log(trace: Trace, activity: Activity) -> tuple[StateSpan, ...]:
    """States of the whole log, without holes from its first sample to its last.

    Parameters
    ----------
    trace : Trace
    activity : Activity
        Of this trace.

    Returns
    -------
    tuple of StateSpan
        Heating with no processing counts as warm-up. Off is told from standby only where standby draws
        something the meter shows.
    """
    spans: list[StateSpan] = []
    at_s = 0.0
    for stretch in activity.stretches:
        spans += _idle(trace, activity, at_s, stretch.start_s)
        inside = _inside(trace, activity, stretch)
        spans += inside
        at_s = inside[-1].end_s
    spans += _idle(trace, activity, at_s, trace.end_s)
    return tuple(spans)


def _inside(trace: Trace, activity: Activity, stretch: Stretch) -> list[StateSpan]:
    if stretch.kind in ("heating", "hold test", "switch-on test"):
        return [StateSpan("warm-up", stretch.start_s, stretch.end_s)]
    return list(states(trace, activity, stretch.start_s, stretch.end_s))


def _idle(trace: Trace, activity: Activity, start_s: float, end_s: float) -> list[StateSpan]:
    """Off and standby between `start_s` and `end_s`."""
    if end_s <= start_s:
        return []
    first, last = np.searchsorted(trace.time_s, [start_s, end_s])
    off = trace.power_w[first:last] <= (activity.standby_w or 0.0) / 2
    if not activity.standby_w or not off.size:
        return [StateSpan("standby", start_s, end_s)]
    turns = np.flatnonzero(off[1:] != off[:-1]) + 1
    edges_s = [start_s, *trace.time_s[first + turns].tolist(), end_s]
    began_off = bool(off[0])
    return [
        StateSpan("off" if began_off == (i % 2 == 0) else "standby", a, b)
        for i, (a, b) in enumerate(pairwise(edges_s))
        if b > a
    ]


def _cooled_s(trace: Trace, activity: Activity, end_s: float) -> float:
    """When the machine is back at standby after `end_s`, heats again, or the log ends. [s]"""
    if activity.standby_w is None:
        return end_s
    latest_s = min((s.start_s for s in activity.stretches if s.start_s >= end_s), default=trace.end_s)
    first, last = np.searchsorted(trace.time_s, [end_s, latest_s])
    margin_w = max(STANDBY_STEPS * trace.resolution_w, STANDBY_W)
    back = np.flatnonzero(trace.power_w[first:last] <= activity.standby_w + margin_w)
    return float(trace.time_s[first + back[0]]) if back.size else max(end_s, latest_s)
