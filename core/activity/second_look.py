"""What one log leaves open and other logs settle: which of several lengths of runs is the part.

First the logs of one machine are looked at together: a log of its own for every run is common, and so is one
for a hold test, in which a bed that is switched fast never rests and seems to move. Then machines: where a
machine made no length more often than all others, other machines say which of them is the part.
"""

from collections.abc import Hashable, Mapping, Sequence

import numpy as np
from attrs import evolve

from core.activity.grouping import BEGUN_UNSEEN, HOLD_S, grouped, with_parts
from core.activity.processing import BASE_PART
from core.activity.values import Activity, Stretch
from core.study import Kind

#: machines differ in speed: the part takes others within this much of a time (natural logarithm of the ratio)
SPEED_APART = 0.45
#: and the length chosen has to be nearer than the next best by this much
CLEARLY = 0.15
#: kinds in which a part was made, or begun
MADE: tuple[Kind, ...] = ("run", "other part", "broken off")

Groups = list[list[Stretch]]


def second_look(
    activities: Sequence[Activity], machines: Sequence[Hashable] | None = None
) -> tuple[Activity, ...]:
    """Choose between lengths of runs by what the other logs of a study say.

    Parameters
    ----------
    activities : sequence of Activity
        Of the logs of one study.
    machines : sequence of hashable, optional
        The machine of each log; left out, every log is of a machine of its own.

    Returns
    -------
    tuple of Activity
        In the same order. A log that is a machine's only one is changed only where its own runs leave the
        choice open.

    Notes
    -----
    Durations of different machines are compared without warm-up and pauses. A machine may be much faster than
    another, so a length is taken only when it is near what others take and clearly nearer than the others.
    """
    owners = list(range(len(activities))) if machines is None else list(machines)
    if len(owners) != len(activities):
        raise ValueError("each log needs a machine")
    logs = {owner: [a for a, o in zip(activities, owners, strict=True) if o == owner] for owner in owners}
    activities = _with_held(activities, owners, logs)
    logs = {owner: [a for a, o in zip(activities, owners, strict=True) if o == owner] for owner in owners}
    groups = {owner: _groups(of_machine) for owner, of_machine in logs.items()}
    settled = {owner: _settled_s(of_machine) for owner, of_machine in groups.items()}
    new: dict[int, Stretch] = {}
    for owner, of_machine in groups.items():
        others = [s for other, s in settled.items() if other != owner and s is not None]
        is_open = bool(of_machine) and settled[owner] is None
        chosen = _chosen(of_machine, float(np.median(others))) if is_open and others else None
        if chosen or len(logs[owner]) > 1:
            new |= _placed(chosen or of_machine, logs[owner], is_chosen=chosen is not None)
    return tuple(
        evolve(activity, stretches=tuple(new.get(id(s), s) for s in activity.stretches))
        for activity in activities
    )


def _with_held(
    activities: Sequence[Activity], owners: Sequence[Hashable], logs: Mapping[Hashable, list[Activity]]
) -> list[Activity]:
    """The logs with what rests far below the machine's runs in its other logs taken for heating alone."""
    limits_w = {owner: _least_base_w(of_machine) for owner, of_machine in logs.items() if len(of_machine) > 1}
    return [_held_told(a, limits_w.get(owner)) for a, owner in zip(activities, owners, strict=True)]


def _least_base_w(logs: Sequence[Activity]) -> float | None:
    """What a machine at work draws above standby at the least; None where its runs do not tell. [W]"""
    groups = _groups(logs)
    if _settled_s(groups) is None or len(groups[0]) < 2:
        return None
    run_ids = {id(run) for run in groups[0]}
    above_w = [
        run.base_w - log.standby_w
        for log in logs
        if log.standby_w is not None
        for run in log.stretches
        if id(run) in run_ids
    ]
    return BASE_PART * float(np.median(above_w)) if above_w else None


def _held_told(activity: Activity, least_w: float | None) -> Activity:
    """A log in which nothing comes near `least_w` above standby: its stretches are heating, or hold tests."""
    standby_w = activity.standby_w
    made = [s for s in activity.stretches if s.kind in MADE]
    if least_w is None or standby_w is None or not made:
        return activity
    if any(s.base_w - standby_w >= least_w for s in made):
        return activity  # it holds runs of its own, beside which the others were judged
    return evolve(activity, stretches=tuple(_heating(s) if s.kind in MADE else s for s in activity.stretches))


def _heating(stretch: Stretch) -> Stretch:
    kind: Kind = "hold test" if stretch.seconds >= HOLD_S else "heating"
    return evolve(stretch, kind=kind, why="run.far_below_the_runs", part="", sure=True)


def _placed(groups: Groups, logs: Sequence[Activity], *, is_chosen: bool) -> dict[int, Stretch]:
    """New stretches by the identity of the old ones."""
    placed = with_parts(groups)
    if is_chosen:
        placed = [evolve(s, why="", sure=True) if s.kind == "run" else s for s in placed]
    new = {id(old): s for old, s in zip((s for group in groups for s in group), placed, strict=True)}
    if groups:  # with whole runs at hand, one whose beginning was not seen is not needed
        for stretch in (s for log in logs for s in log.stretches if s.why in BEGUN_UNSEEN):
            new[id(stretch)] = evolve(stretch, kind="cut", part="", sure=True)
    return new


def _groups(activities: Sequence[Activity]) -> Groups:
    """Whole runs of one machine by part, the main part's first."""
    made = [
        s
        for activity in activities
        for s in activity.stretches
        if s.kind in MADE and s.why not in BEGUN_UNSEEN
    ]
    return [list(group) for group in grouped(made)]


def _settled_s(groups: Groups) -> float | None:
    """How long the part is processed where the machine's runs say by themselves which it is. [s]"""
    if not groups or any(len(group) >= len(groups[0]) for group in groups[1:]):
        return None
    return float(np.median([run.working_s for run in groups[0]]))


def _chosen(groups: Groups, reference_s: float) -> Groups | None:
    """`groups` with the part's first; None where the reference does not say which it is."""
    rivals = [group for group in groups if len(group) == len(groups[0])]
    apart = [abs(np.log(np.median([s.working_s for s in group]) / reference_s)) for group in rivals]
    order = np.argsort(apart)
    if apart[order[0]] > SPEED_APART or apart[order[1]] - apart[order[0]] < CLEARLY:
        return None
    best = rivals[int(order[0])]
    return [best, *(group for group in groups if group is not best)]
