"""What one log leaves open and the logs of other machines settle: which of several lengths is the part."""

from collections import defaultdict
from collections.abc import Sequence

import numpy as np
from attrs import evolve

from core.activity.grouping import with_parts
from core.activity.values import Activity, Stretch

#: machines differ in speed: the part takes others within this much of a time (natural logarithm of the ratio)
SPEED_APART = 0.45
#: and the length chosen has to be nearer than the next best by this much
CLEARLY = 0.15


def second_look(activities: Sequence[Activity]) -> tuple[Activity, ...]:
    """Choose between lengths of runs by what the part takes on other machines.

    Parameters
    ----------
    activities : sequence of Activity
        Of the machines of one study.

    Returns
    -------
    tuple of Activity
        In the same order. Only a log whose own runs leave the choice open is changed: one in which no length
        was made more often than all others.

    Notes
    -----
    Durations are compared without warm-up. A machine may be much faster than another, so a length is taken
    only when it is near what others take and clearly nearer than the other lengths.
    """
    references = [_settled_s(activity) for activity in activities]
    answers = []
    for i, activity in enumerate(activities):
        others = [s for j, s in enumerate(references) if j != i and s is not None]
        is_open = references[i] is None and bool(activity.runs)
        answers.append(_chosen(activity, float(np.median(others))) if is_open and others else activity)
    return tuple(answers)


def _parts(activity: Activity) -> list[list[Stretch]]:
    """Runs by part label, the main part's first."""
    groups: dict[str, list[Stretch]] = defaultdict(list)
    for stretch in activity.stretches:
        if stretch.kind in ("run", "other part", "broken off"):
            groups[stretch.part].append(stretch)
    return [groups[label] for label in sorted(groups)]


def _settled_s(activity: Activity) -> float | None:
    """How long the part is processed where the log itself says which it is. [s]"""
    runs = activity.runs
    if not runs or not all(run.sure for run in runs):
        return None
    return float(np.median([run.processing_s for run in runs]))


def _chosen(activity: Activity, reference_s: float) -> Activity:
    groups = _parts(activity)
    rivals = [group for group in groups if len(group) >= len(groups[0])]
    apart = [abs(np.log(np.median([s.processing_s for s in group]) / reference_s)) for group in rivals]
    order = np.argsort(apart)
    best = rivals[int(order[0])]
    if apart[order[0]] > SPEED_APART or (len(order) > 1 and apart[order[1]] - apart[order[0]] < CLEARLY):
        return activity
    rest = [group for group in groups if group is not best]
    settled = {(s.start_s, s.end_s): s for s in with_parts([best, *rest])}
    return evolve(
        activity,
        stretches=tuple(
            evolve(chosen, why="", sure=True) if chosen and chosen.kind == "run" else chosen or stretch
            for stretch in activity.stretches
            for chosen in [settled.get((stretch.start_s, stretch.end_s))]
        ),
    )
