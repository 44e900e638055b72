"""Which runs are of one part: by duration and energy, of the whole and of the processing alone."""

import math
from collections.abc import Sequence

import numpy as np
from attrs import evolve

from core.activity.values import Stretch

#: runs of one part agree in duration and in energy within these (natural logarithm of the ratio)
SECONDS_APART = 0.13
ENERGY_APART = 0.18
#: pulses nearly in step with the sampling beat: energies scatter by several times what independent samples do
LOTTERY = 6.0
#: or in duration of processing alone, when one was soaked or began warm
PROCESSING_APART = 0.09
#: reasons of a run whose beginning the log all but shows: it is taken where there is no other
BEGUN_UNSEEN = ("run.begins_hot", "run.whole_log")
#: heating without processing that lasts this long is a hold test [s]
HOLD_S = 900.0

Groups = Sequence[Sequence[Stretch]]


def judged(
    stretches: Sequence[Stretch], moves: Sequence[bool], at_base: Sequence[bool]
) -> tuple[Stretch, ...]:
    """Say for every stretch whether it is a run, and of which part.

    Parameters
    ----------
    stretches : sequence of Stretch
        Of kind "run" where nothing else is known of them yet, as of those that the log cuts.
    moves, at_base : sequence of bool
        Whether each is processing, and whether it rests at the level of processing.
    """
    whole = [s for s, is_moving in zip(stretches, moves, strict=True) if is_moving and s.kind == "run"]
    if not whole:
        return tuple(
            evolve(s, kind="run", part="A", sure=False) if s.why in BEGUN_UNSEEN and is_moving else _unmade(s)
            for s, is_moving in zip(stretches, moves, strict=True)
        )
    main = grouped(whole)[0]
    # movement may be too faint to measure in one of several like runs
    whole += [
        s
        for s, is_moving, is_at_base in zip(stretches, moves, at_base, strict=True)
        if is_at_base and not is_moving and s.kind == "run" and any(agree(s, other) for other in main)
    ]
    placed = {(s.start_s, s.end_s): s for s in with_parts(grouped(whole))}
    return tuple(placed.get((s.start_s, s.end_s)) or _unmade(s) for s in stretches)


def _unmade(stretch: Stretch) -> Stretch:
    """A stretch in which no whole part was made."""
    if stretch.kind != "run":
        return evolve(stretch, part="")
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
    placed = [evolve(s, kind="run", part="A", why=why, sure=not rivalled) for s in main]
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
    limit = math.hypot(ENERGY_APART, LOTTERY * math.hypot(one.energy_apart, other.energy_apart))
    return (
        _apart(one.seconds, other.seconds) < SECONDS_APART and _apart(one.energy_wh, other.energy_wh) < limit
    ) or (
        _apart(one.processing_s, other.processing_s) < PROCESSING_APART
        and _apart(one.processing_wh, other.processing_wh) < limit
    )


def _apart(one: float, other: float) -> float:
    """Distance of two amounts as the logarithm of their ratio."""
    return abs(math.log(max(one, 1e-6) / max(other, 1e-6)))


def grouped(runs: Sequence[Stretch]) -> tuple[tuple[Stretch, ...], ...]:
    """Runs by part: the part with most runs first, ties to the longest."""
    left = list(runs)
    groups: list[tuple[Stretch, ...]] = []
    while left:
        circles = [tuple(other for other in left if agree(one, other)) for one in left]
        best = max(circles, key=lambda circle: (len(circle), sum(s.seconds for s in circle)))
        groups.append(best)
        left = [s for s in left if s not in best]
    return tuple(groups)
