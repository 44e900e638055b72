"""Edits of stretches of a log: where they begin and end, what they are, whether they count.

Theory: a field that the user decided holds a value, one that the program decides holds None (see
`core.study.Run`). So every edit here sets such fields, and `hand_back` empties them.
"""

from collections.abc import Sequence

from attrs import evolve

from core.edits.edit import (
    Edit,
    checked_number,
    found,
    next_number,
    replaced,
    title,
    without,
)
from core.language import tr
from core.study import KINDS, Kind, Run, Study

#: stretches of these kinds are makings of a part or pieces of one; joined by hand they become a run
_PIECES: tuple[Kind, ...] = ("run", "other part", "broken off", "cut")


def move_edges(study: Study, run_id: str, start_s: float, end_s: float) -> Edit:
    """Put the edges of a stretch somewhere else; an edge that does not move stays the program's.

    Parameters
    ----------
    study : Study
    run_id : str
    start_s, end_s : float
        On the log's own clock, ``start_s < end_s``. [s]

    Returns
    -------
    Edit
        Merges with the move before it, so that a drag is one step.

    Raises
    ------
    ValueError
        If there is no such run or the stretch would be empty.
    """
    run = _run(study, run_id)
    start_s, end_s = _checked_stretch(start_s, end_s)
    moved = evolve(
        run,
        set_start_s=run.set_start_s if start_s == run.start_s else start_s,
        set_end_s=run.set_end_s if end_s == run.end_s else end_s,
    )
    return _edit(
        study,
        moved,
        tr("Move an edge of {title}", title=title(study, run)),
        f"edges {run_id}",
    )


def hand_back(study: Study, run_id: str) -> Edit:
    """Give every decision about a stretch back to the program; its name and notes stay.

    Pieces that the user cut off it (or drew inside it) go, since the whole stretch is the program's again. A
    stretch that the user drew keeps its edges and kind: the program has none to put in their place.
    """
    run = _run(study, run_id)
    label = tr("Hand {title} back to the program", title=title(study, run))
    if is_drawn(run):
        return _edit(study, evolve(run, set_included=None, why_left_out="", set_bed_off=False), label)
    bare = evolve(
        run,
        set_start_s=None,
        set_end_s=None,
        set_kind=None,
        set_included=None,
        why_left_out="",
        set_bed_off=False,
    )
    inside = [
        other.id
        for other in study.runs
        if other.log_id == run.log_id
        and other.id != run.id
        and is_drawn(other)
        and _overlap_s(bare, other) > (other.end_s - other.start_s) / 2
    ]
    return Edit(evolve(study, runs=without(replaced(study.runs, bare), inside)), label)


def set_kind(study: Study, run_id: str, kind: Kind) -> Edit:
    """Say what a stretch is; what is no run of the part stops counting."""
    run = _run(study, run_id)
    included = None if kind != "run" and run.set_included else run.set_included
    changed = evolve(run, set_kind=_checked_kind(kind), set_included=included)
    return _edit(study, changed, tr("Say that {title} is: {kind}", title=title(study, run), kind=tr(kind)))


def leave_out(study: Study, run_id: str, why: str) -> Edit:
    """Leave a run out of the comparison, with the user's reason.

    The reason may be empty at first: typing it merges with leaving out.
    """
    run = _run(study, run_id)
    changed = evolve(run, set_included=False, why_left_out=" ".join(why.split()))
    return _edit(
        study,
        changed,
        tr("Leave out {title}", title=title(study, run)),
        f"leave out {run_id}",
    )


def include(study: Study, run_id: str) -> Edit:
    """Count a stretch, whatever the program thinks of it."""
    run = _run(study, run_id)
    return _edit(
        study, evolve(run, set_included=True, why_left_out=""), tr("Include {title}", title=title(study, run))
    )


def rename_run(study: Study, run_id: str, name: str) -> Edit:
    """Give a stretch a name; with an empty one it is called by its number again."""
    run = _run(study, run_id)
    changed = evolve(run, name=" ".join(name.split()))
    return _edit(study, changed, tr("Rename {title}", title=title(study, run)), f"run name {run_id}")


def split_run(study: Study, run_id: str, at_s: float) -> Edit:
    """Cut a stretch in two; the later piece is a new stretch that the user drew.

    Parameters
    ----------
    study : Study
    run_id : str
    at_s : float
        Where to cut, inside the stretch. [s]

    Raises
    ------
    ValueError
        If `at_s` is not inside the stretch.
    """
    run = _run(study, run_id)
    if not run.start_s < at_s < run.end_s:
        raise ValueError(f"{at_s} s is not inside {run.start_s} to {run.end_s} s")
    at_s = float(at_s)
    later = evolve(
        run,
        id=_next_id(study),
        found_start_s=None,
        found_end_s=None,
        found_why="",
        set_start_s=at_s,
        set_end_s=run.end_s,
        set_kind=run.kind,
        name="",
    )
    runs = (*replaced(study.runs, evolve(run, set_end_s=at_s)), later)
    return Edit(evolve(study, runs=runs), tr("Split {title}", title=title(study, run)))


def can_join(study: Study, run_ids: Sequence[str]) -> bool:
    """Whether these stretches are several, of one log, with no other stretch between them."""
    if len(set(run_ids)) < 2:
        return False
    runs = [_run(study, run_id) for run_id in run_ids]
    if len({run.log_id for run in runs}) > 1:
        return False
    places = [i for i, run in enumerate(study.runs_of(runs[0].log_id)) if run.id in run_ids]
    return places[-1] - places[0] == len(places) - 1


def join_runs(study: Study, run_ids: Sequence[str]) -> Edit:
    """Make one stretch of several that follow each other; it keeps the identity of the first.

    Pieces of a part (also broken-off ones: a power cut in the middle looks like that) become a run; other
    stretches keep the kind of the first.

    Raises
    ------
    ValueError
        Unless `can_join`.
    """
    if not can_join(study, run_ids):
        raise ValueError("only stretches of one log that follow each other can be joined")
    runs = sorted((_run(study, run_id) for run_id in set(run_ids)), key=lambda run: (run.start_s, run.id))
    first = runs[0]
    kinds = {run.kind for run in runs}
    kind: Kind = "run" if kinds <= set(_PIECES) else first.kind
    end_s = max(run.end_s for run in runs)
    joined = evolve(
        first,
        set_end_s=first.set_end_s if end_s == first.end_s else end_s,
        set_kind=first.set_kind if kind == first.kind else kind,
        set_included=None,
        why_left_out="",
    )
    rest = without(study.runs, (run.id for run in runs[1:]))
    return Edit(
        evolve(study, runs=replaced(rest, joined)),
        tr("Join {number} stretches of {place}", number=len(runs), place=_place(study, first)),
    )


def draw_run(study: Study, log_id: str, start_s: float, end_s: float, kind: Kind = "run") -> Edit:
    """Mark a stretch that the program did not find.

    Parameters
    ----------
    study : Study
    log_id : str
    start_s, end_s : float
        On the log's own clock, ``start_s < end_s``. [s]
    kind : Kind

    Raises
    ------
    ValueError
        If there is no such log or kind, or the stretch is empty.
    """
    found(study.logs, log_id, "log")
    start_s, end_s = _checked_stretch(start_s, end_s)
    drawn = Run(
        id=_next_id(study), log_id=log_id, set_start_s=start_s, set_end_s=end_s, set_kind=_checked_kind(kind)
    )
    return Edit(
        evolve(study, runs=(*study.runs, drawn)), tr("Mark a stretch of {place}", place=_place(study, drawn))
    )


def remove_run(study: Study, run_id: str) -> Edit:
    """Take a stretch away.

    One that the user drew goes. One that the program found stays as "nothing": reading its log again would
    find it again, and the decision must outlast that.
    """
    run = _run(study, run_id)
    label = tr("Remove {title}", title=title(study, run))
    if is_drawn(run):
        return Edit(evolve(study, runs=without(study.runs, [run_id])), label)
    return _edit(study, evolve(run, set_kind="nothing", set_included=None, why_left_out=""), label)


def is_drawn(run: Run) -> bool:
    """Whether the stretch is the user's own, with nothing that the program found under it."""
    return run.found_start_s is None or run.found_end_s is None


def is_decided(run: Run) -> bool:
    """Whether the user has decided anything about the stretch that can be handed back.

    The edges and the kind of a stretch that the user drew cannot.
    """
    counts = run.set_included is not None or run.why_left_out != "" or run.set_bed_off
    return counts or (not is_drawn(run) and (run.is_moved or run.set_kind is not None))


def _run(study: Study, run_id: str) -> Run:
    return found(study.runs, run_id, "run")


def _next_id(study: Study) -> str:
    return f"r{next_number(study.runs, 'r')}"


def _place(study: Study, run: Run) -> str:
    return study.machine(study.log(run.log_id).machine_id).name


def _edit(study: Study, run: Run, label: str, merge_key: str | None = None) -> Edit:
    return Edit(evolve(study, runs=replaced(study.runs, run)), label, merge_key)


def _overlap_s(a: Run, b: Run) -> float:
    return max(0.0, min(a.end_s, b.end_s) - max(a.start_s, b.start_s))


def _checked_stretch(start_s: float, end_s: float) -> tuple[float, float]:
    start_s, end_s = checked_number(start_s, "start_s"), checked_number(end_s, "end_s")
    if start_s >= end_s:
        raise ValueError(f"a stretch from {start_s} to {end_s} s is empty")
    return start_s, end_s


def _checked_kind(kind: Kind) -> Kind:
    if kind not in KINDS:
        raise ValueError(f"there is no kind {kind!r}")
    return kind
