"""Which stretches are runs of the part and which something else: by movement, then by duration and energy."""

import math
from collections.abc import Sequence

import numpy as np
from attrs import evolve

from core.activity.values import Stretch

#: movement is clear when steps are this many times those at rest, more times in a stretch too short to
#: outweigh what a heater does when it is switched on and off [s] ...
MOVING_TIMES = 1.6
SHORT_TIMES = 2.5
LONG_S = 900.0
#: ... and this part of those of the stretch that moves most
MOVING_PART = 0.35
#: among stretches of at least this part of the longest
COUNTED_PART = 0.2
#: where movement cannot be seen, a stretch shorter than this is heating [s]
UNSEEN_S = 300.0
#: a meter that shows no change smaller than this may be blind to movement [W]
BLIND_W = 1.5
#: a base below this part of the moving stretches' base (both above standby) is no processing
BASE_PART = 0.72
#: runs of one part agree in duration and in energy within these (natural logarithm of the ratio)
SECONDS_APART = 0.13
ENERGY_APART = 0.18
#: pulses nearly in step with the sampling beat: energies scatter by several times what independent samples do
LOTTERY = 6.0
#: or in duration of processing alone, when one was soaked or began warm
PROCESSING_APART = 0.09
#: heating without processing that lasts this long is a hold test [s]
HOLD_S = 900.0


def judged(
    stretches: Sequence[Stretch], rest_step_w: float, standby_w: float, idle_w: float, sight_w: float
) -> tuple[Stretch, ...]:
    """Say for every stretch whether it is processing, a run, and of which part.

    Parameters
    ----------
    stretches : sequence of Stretch
        With kind "run" or "cut" from the finder, `base_w` and `motion` set.
    rest_step_w : float
        Mean step between neighbouring rows at rest. [W]
    standby_w, idle_w : float
        Lowest and highest idle level. [W]
    sight_w : float
        Smallest change that the meter shows. [W]
    """
    processing, held = _processing(stretches, rest_step_w, standby_w, idle_w, sight_w)
    whole = [s for s, moves in zip(stretches, processing, strict=True) if moves and s.kind == "run"]
    main = (*grouped(whole), ())[0]
    # movement may be too faint to measure in one of several like runs
    for i, stretch in enumerate(stretches):
        if not processing[i] and held[i] and stretch.kind == "run" and any(agree(stretch, s) for s in main):
            processing[i] = True
            whole.append(stretch)
    groups = grouped(whole)
    main = (*groups, ())[0]
    result = []
    for stretch, moves in zip(stretches, processing, strict=True):
        if stretch.kind != "run":
            result.append(evolve(stretch, part=""))
        elif not moves:
            long = stretch.seconds >= HOLD_S
            result.append(
                evolve(
                    stretch,
                    kind="hold test" if long else "heating",
                    why="run.held_without_processing" if long else "run.heated_without_processing",
                    part="",
                )
            )
        else:
            result.append(_placed(stretch, main, groups))
    return tuple(result)


def _placed(stretch: Stretch, main: Sequence[Stretch], groups: Sequence[Sequence[Stretch]]) -> Stretch:
    number = next(i for i, group in enumerate(groups) if stretch in group)
    if number == 0:
        return evolve(stretch, part="A")
    label = chr(ord("A") + min(number, 25))
    typical_s = float(np.median([s.seconds for s in main]))
    alone = len(groups[number]) == 1
    if alone and stretch.seconds < typical_s * math.exp(-SECONDS_APART):
        sure = len(main) > 1
        return evolve(stretch, kind="broken off", why="run.shorter_than_the_part", part=label, sure=sure)
    return evolve(stretch, kind="other part", why="run.another_part", part=label, sure=len(main) > 1)


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


def _processing(
    stretches: Sequence[Stretch], rest_step_w: float, standby_w: float, idle_w: float, sight_w: float
) -> tuple[list[bool], list[bool]]:
    """Whether each stretch is processing, and whether its base is as high as where something moves."""
    seen = [s for s in stretches if math.isfinite(s.motion)]
    longest_s = max((s.seconds for s in seen), default=0.0)
    most_w = max((s.motion for s in seen if s.seconds >= COUNTED_PART * longest_s), default=0.0)
    limits_w = [
        max(MOVING_PART * most_w, (MOVING_TIMES if s.seconds >= LONG_S else SHORT_TIMES) * rest_step_w)
        for s in stretches
    ]
    moving = [s for s, limit_w in zip(stretches, limits_w, strict=True) if s.motion >= limit_w]
    blind = not moving and sight_w > BLIND_W
    reference_w = _typical_base_w(moving or stretches) - standby_w
    held = [s.base_w > idle_w and s.base_w - standby_w >= BASE_PART * reference_w for s in stretches]
    processing = [
        at_base and (s.motion >= limit_w or (s.seconds >= UNSEEN_S and (blind or math.isnan(s.motion))))
        for s, at_base, limit_w in zip(stretches, held, limits_w, strict=True)
    ]
    return processing, held


def _typical_base_w(stretches: Sequence[Stretch]) -> float:
    """Median base by time; 0 of none. [W]"""
    if not stretches:
        return 0.0
    order = sorted(stretches, key=lambda s: s.base_w)
    total_s = np.cumsum([s.seconds for s in order])
    return order[int(np.searchsorted(total_s, total_s[-1] / 2))].base_w
