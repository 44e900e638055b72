"""Handing the user's decisions on when a log is read again and its stretches are found anew.

Theory: the stretch found now is the one found before if they share at least half of the shorter of the two,
best agreement first. A stretch that is found no more stays if the user decided something about it, and
nothing is added where the user has drawn the edges by hand.
"""

import math
from collections.abc import Sequence

from attrs import evolve, frozen

from core.edits.runs import is_decided, is_drawn
from core.study import Kind, Run


@frozen
class FoundRun:
    """A stretch as the program found it in a log.

    Parameters
    ----------
    start_s, end_s : float
        On the log's own clock, ``start_s < end_s``. [s]
    kind : Kind
    part : str
        Runs of one part share it.
    why : str
        Code of the reason when it is no run of the part.
    """

    start_s: float
    end_s: float
    kind: Kind = "run"
    part: str = "A"
    why: str = ""

    def __attrs_post_init__(self) -> None:
        if not (math.isfinite(self.start_s) and math.isfinite(self.end_s) and self.start_s < self.end_s):
            raise ValueError(f"a stretch from {self.start_s} to {self.end_s} s is empty")


def matched(
    old: Sequence[Run], found: Sequence[FoundRun], shift_s: float = 0.0
) -> tuple[tuple[Run, ...], tuple[FoundRun, ...]]:
    """Share out what was found between the stretches there are and new ones.

    Parameters
    ----------
    old : sequence of Run
        The stretches of the log so far.
    found : sequence of FoundRun
        The stretches of the log as it is read now.
    shift_s : float
        What to add to the times in `old`. [s]

    Returns
    -------
    kept : tuple of Run
        Those of `old` that stay, in their order, with the new findings under the user's decisions.
    fresh : tuple of FoundRun
        What belongs to none of them.
    """
    shifted = [_shifted(run, shift_s) for run in old]
    pairs = sorted(
        (-_agreement(run, new), i, j)
        for i, run in enumerate(shifted)
        for j, new in enumerate(found)
        if _covers_half(_basis(run), (new.start_s, new.end_s))
    )
    partner: dict[int, int] = {}
    for _, i, j in pairs:
        if i not in partner and j not in partner.values():
            partner[i] = j
    kept = []
    for i, run in enumerate(shifted):
        if i in partner:
            kept.append(_refound(run, found[partner[i]]))
        elif is_drawn(run):
            kept.append(run)
        elif is_decided(run) or run.name or run.bed_c is not None or run.room_c is not None:
            kept.append(_as_drawn(run))
    by_hand = [(run.start_s, run.end_s) for run in kept if run.is_moved]
    taken = set(partner.values())
    fresh = tuple(
        new
        for j, new in enumerate(found)
        if j not in taken and not any(_lies_in((new.start_s, new.end_s), stretch) for stretch in by_hand)
    )
    return tuple(kept), fresh


def _basis(run: Run) -> tuple[float, float]:
    """The edges to compare with: what the program found, or what the user drew."""
    if run.found_start_s is None or run.found_end_s is None:
        return run.start_s, run.end_s
    return run.found_start_s, run.found_end_s


def _overlap_s(a: tuple[float, float], b: tuple[float, float]) -> float:
    return max(0.0, min(a[1], b[1]) - max(a[0], b[0]))


def _covers_half(a: tuple[float, float], b: tuple[float, float]) -> bool:
    return _overlap_s(a, b) >= 0.5 * min(a[1] - a[0], b[1] - b[0])


def _lies_in(inner: tuple[float, float], outer: tuple[float, float]) -> bool:
    return _overlap_s(inner, outer) >= 0.5 * (inner[1] - inner[0])


def _agreement(run: Run, new: FoundRun) -> float:
    """Common part over the whole of both, 0 to 1."""
    a = _basis(run)
    common_s = _overlap_s(a, (new.start_s, new.end_s))
    return common_s / ((a[1] - a[0]) + (new.end_s - new.start_s) - common_s)


def _shifted(run: Run, shift_s: float) -> Run:
    def shift(at_s: float | None) -> float | None:
        return None if at_s is None else at_s + shift_s

    if shift_s == 0:
        return run
    return evolve(
        run,
        found_start_s=shift(run.found_start_s),
        found_end_s=shift(run.found_end_s),
        set_start_s=shift(run.set_start_s),
        set_end_s=shift(run.set_end_s),
    )


def _refound(run: Run, new: FoundRun) -> Run:
    refound = evolve(
        run,
        found_start_s=float(new.start_s),
        found_end_s=float(new.end_s),
        found_kind=new.kind,
        found_part=new.part,
        found_why=new.why,
    )
    if refound.start_s < refound.end_s:
        return refound
    # One edge is the user's and the program's other edge has moved past it: the user's stretch stays whole.
    return evolve(refound, set_start_s=run.start_s, set_end_s=run.end_s)


def _as_drawn(run: Run) -> Run:
    return evolve(
        run,
        found_start_s=None,
        found_end_s=None,
        set_start_s=run.start_s,
        set_end_s=run.end_s,
        set_kind=run.kind,
    )
