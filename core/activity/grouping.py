"""Which runs are of one part: by duration and energy, of the whole and of the processing alone."""

import math
from collections.abc import Sequence

import numpy as np
from attrs import evolve
from numpy.typing import NDArray

from core.activity.likeness import alike
from core.activity.processing import BLIND_W
from core.activity.values import Stretch
from core.study import Kind
from core.traces import F64

#: runs of one part agree in duration and in energy within these (natural logarithm of the ratio)
SECONDS_APART = 0.13
ENERGY_APART = 0.18
#: pulses nearly in step with the sampling beat: energies scatter by several times what independent samples do
LOTTERY = 6.0
#: or in duration of work alone, when one was soaked, began warm or paused
PROCESSING_APART = 0.09
#: reasons of a run whose beginning the log all but shows: it is taken where there is no other
BEGUN_UNSEEN = ("run.begins_hot", "run.whole_log")
#: reason of a run that is taken for one because it is like the others
FAINT = "run.like_the_others"
#: heating without processing that lasts this long is a hold test [s]
HOLD_S = 900.0

#: movement of a run that rested lower, in a long pause, over that of the others
AS_MUCH = 0.8

#: as many stretches alike are runs, though nothing is seen to move; judgement, no source
MADE_TIMES = 3

Groups = Sequence[Sequence[Stretch]]


def judged(
    stretches: Sequence[Stretch], moves: Sequence[bool], at_base: Sequence[bool], sight_w: float
) -> tuple[Stretch, ...]:
    """Say for every stretch whether it is a run, and of which part.

    Parameters
    ----------
    stretches : sequence of Stretch
        Of kind "run" where nothing else is known of them yet, as of those that the log cuts.
    moves, at_base : sequence of bool
        Whether each is processing, and whether it rests at the level of processing.
    sight_w : float
        Smallest change that the meter shows: movement below it cannot be told from none. [W]
    """

    def unmade(stretch: Stretch) -> Stretch:
        return _unmade(stretch, is_blind=sight_w > BLIND_W and not stretch.motion > sight_w)

    whole = [s for s, is_moving in zip(stretches, moves, strict=True) if is_moving and s.kind == "run"]
    whole += _made_alike(stretches, moves, at_base)
    if not whole:
        return tuple(
            evolve(s, kind="run", part="A", sure=False) if s.why in BEGUN_UNSEEN and is_moving else unmade(s)
            for s, is_moving in zip(stretches, moves, strict=True)
        )
    if len(whole) == 1 and _is_outlasted(whole[0], stretches, moves):
        short = evolve(whole[0], kind="broken off", why="run.shorter_than_one_cut", part="B", sure=False)
        return tuple(short if s is whole[0] else unmade(s) for s in stretches)
    main = grouped(whole)[0]
    # movement may be too faint to measure in one of several like runs
    whole += [
        evolve(s, why=FAINT, sure=False)
        for s, is_moving, is_at_base in zip(stretches, moves, at_base, strict=True)
        if not is_moving
        and s.kind == "run"
        and not any(s.start_s == other.start_s for other in whole)
        and (
            any(agree(s, other) and (is_at_base or s.motion > AS_MUCH * other.motion) for other in main)
            or any(agree(s, other) and alike(s, other, sight_w) for other in whole)
        )
    ]
    placed = {(s.start_s, s.end_s): s for s in with_parts(grouped(whole))}
    return tuple(placed.get((s.start_s, s.end_s)) or unmade(s) for s in stretches)


def _made_alike(
    stretches: Sequence[Stretch], moves: Sequence[bool], at_base: Sequence[bool]
) -> list[Stretch]:
    """Stretches in which nothing is seen to move, too many of one length to be anything but runs.

    Nobody holds a bed three times over as long as makes parts, to within the spread of runs, and makes none
    that lasts longer.
    """
    still = [
        s
        for s, is_moving, is_at_base in zip(stretches, moves, at_base, strict=True)
        if is_at_base and not is_moving and s.kind == "run" and s.seconds >= HOLD_S
    ]
    alike_ = grouped(still)[0] if still else ()
    longest_s = max(
        (s.seconds for s, is_moving in zip(stretches, moves, strict=True) if is_moving), default=0.0
    )
    if len(alike_) < MADE_TIMES or longest_s > min(s.seconds for s in alike_):
        return []
    return [evolve(s, why=FAINT, sure=False) for s in alike_]


def _is_outlasted(run: Stretch, stretches: Sequence[Stretch], moves: Sequence[bool]) -> bool:
    """Whether a later run that the log cuts was longer by then.

    After a run that was broken off the part is made again, so the only whole run may have been broken off.
    """
    return any(
        is_moving and s.why == "run.cut_at_end" and s.working_s > math.exp(SECONDS_APART) * run.working_s
        for s, is_moving in zip(stretches, moves, strict=True)
    )


def _unmade(stretch: Stretch, *, is_blind: bool) -> Stretch:
    """A stretch in which no whole part was made, or none that can be seen."""
    if stretch.kind != "run":
        return evolve(stretch, part="")
    if is_blind:
        kind: Kind = "hold test" if stretch.seconds >= HOLD_S else "heating"
        return evolve(stretch, kind=kind, why="run.movement_unseen", part="", sure=False)
    if stretch.seconds >= HOLD_S:
        return evolve(stretch, kind="hold test", why="run.held_without_processing", part="")
    return evolve(stretch, kind="heating", why="run.heated_without_processing", part="")


def with_parts(groups: Groups) -> list[Stretch]:
    """The runs of `groups`, the main part's first, each with its kind, reason and part label."""
    if not groups:
        return []
    main, others = groups[0], groups[1:]
    rivalled = any(len(group) >= len(main) for group in others)
    why = "run.one_of_several_lengths" if rivalled else ""
    placed = [
        evolve(
            s,
            kind="run",
            part="A",
            why=why or (s.why if s.why == FAINT else ""),
            sure=not why and s.why != FAINT,
        )
        for s in main
    ]
    typical_s = float(np.median([s.seconds for s in main]))
    for number, group in enumerate(others, start=1):
        label = chr(ord("A") + min(number, 25))
        for stretch in group:
            short = len(group) == 1 and stretch.seconds < typical_s * math.exp(-SECONDS_APART)
            placed.append(
                evolve(
                    stretch,
                    kind="broken off" if short else "other part",
                    why="run.shorter_than_the_part" if short else "run.another_part",
                    part=label,
                    sure=len(group) < len(main) and not short,
                )
            )
    return placed


def agree(one: Stretch, other: Stretch) -> bool:
    """Whether two runs can be of one part."""
    return bool(_agreeing(_measures([one]), _measures([other]))[0])


def grouped(runs: Sequence[Stretch]) -> tuple[tuple[Stretch, ...], ...]:
    """Runs by part: the part with most runs first, ties to the longest."""
    measures = _measures(runs)
    seconds = np.array([s.seconds for s in runs])
    left = np.arange(len(runs))
    groups: list[tuple[Stretch, ...]] = []
    while left.size:
        best, best_rank = left[:0], (0, 0.0)
        for i in left:
            circle = left[_agreeing(measures[:, [i]], measures[:, left])]
            rank = (circle.size, float(seconds[circle].sum()))
            if rank > best_rank:
                best, best_rank = circle, rank
        groups.append(tuple(runs[i] for i in best))
        left = np.setdiff1d(left, best, assume_unique=True)
    return tuple(groups)


def _measures(runs: Sequence[Stretch]) -> F64:
    """Logarithms of what is compared, one column a run, and how far the sampling may throw its energy."""
    rows = [[s.seconds, s.energy_wh, s.working_s, s.processing_wh] for s in runs]
    logarithms = np.log(np.maximum(np.array(rows, dtype=np.float64).reshape(-1, 4), 1e-6)).T
    return np.vstack([logarithms, [s.energy_apart for s in runs]])


def _agreeing(one: F64, others: F64) -> NDArray[np.bool_]:
    """Whether each of `others` can be of one part with `one`."""
    seconds, energy, processing, processing_energy = np.abs(others[:4] - one[:4])
    limit = np.hypot(ENERGY_APART, LOTTERY * np.hypot(others[4], one[4]))
    return np.asarray(
        ((seconds < SECONDS_APART) & (energy < limit))
        | ((processing < PROCESSING_APART) & (processing_energy < limit))
    )
