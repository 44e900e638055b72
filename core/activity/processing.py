"""Whether a stretch is processing or only heating: by what moves, and by the level it rests at."""

import math
from collections.abc import Sequence

import numpy as np

from core.activity.values import Stretch

#: movement is clear when steps are this many times those at rest, more times in a stretch too short to
#: outweigh what a heater does when it is switched on and off [s] ...
MOVING_TIMES = 1.6
SHORT_TIMES = 2.5
LONG_S = 900.0
#: ... of a long one fewer where rest itself steps by so much from row to row: then that is the meter's noise,
#: which is the same everywhere and leaves little room for motors above it [W]
NOISY_TIMES = 1.25
NOISY_W = 0.4
#: ... and this part of those of the stretch that moves most
MOVING_PART = 0.35
#: among stretches of at least this part of the longest
COUNTED_PART = 0.5
#: where movement cannot be seen, a stretch shorter than this is heating [s]
UNSEEN_S = 300.0
#: a meter that shows no change smaller than this may be blind to movement [W]
BLIND_W = 0.9
#: a base below this part of the moving stretches' base (both above standby) is no processing
BASE_PART = 0.72


def processing(
    stretches: Sequence[Stretch], rest_step_w: float, standby_w: float, idle_w: float, sight_w: float
) -> tuple[list[bool], list[bool]]:
    """Whether each stretch is processing, and whether its base is as high as where something moves.

    Parameters
    ----------
    stretches : sequence of Stretch
        With `base_w` and `motion` set.
    rest_step_w : float
        Mean step between neighbouring rows at rest. [W]
    standby_w, idle_w : float
        Lowest and highest idle level. [W]
    sight_w : float
        Smallest change that the meter shows. [W]

    Returns
    -------
    moves, at_base : list of bool
        By stretch.
    """
    seen = [s for s in stretches if math.isfinite(s.motion)]
    longest_s = max((s.seconds for s in seen), default=0.0)
    most_w = max((s.motion for s in seen if s.seconds >= COUNTED_PART * longest_s), default=0.0)
    long_times = NOISY_TIMES if rest_step_w >= NOISY_W else MOVING_TIMES
    limits_w = [
        max(MOVING_PART * most_w, (long_times if s.seconds >= LONG_S else SHORT_TIMES) * rest_step_w)
        for s in stretches
    ]
    moving = [s for s, limit_w in zip(stretches, limits_w, strict=True) if s.motion >= limit_w]
    blind = not moving and sight_w > BLIND_W
    reference_w = _typical_base_w(moving or stretches) - standby_w
    # fans after the end may draw as much as lies between the pulses of a hot end that moves things
    held = [
        (s.base_w > idle_w or s.motion >= limit_w) and s.base_w - standby_w >= BASE_PART * reference_w
        for s, limit_w in zip(stretches, limits_w, strict=True)
    ]
    moves = [
        at_base and (s.motion >= limit_w or (s.seconds >= UNSEEN_S and (blind or math.isnan(s.motion))))
        for s, at_base, limit_w in zip(stretches, held, limits_w, strict=True)
    ]
    return moves, held


def _typical_base_w(stretches: Sequence[Stretch]) -> float:
    """Median base by time; 0 of none. [W]"""
    if not stretches:
        return 0.0
    order = sorted(stretches, key=lambda s: s.base_w)
    total_s = np.cumsum([s.seconds for s in order])
    return order[int(np.searchsorted(total_s, total_s[-1] / 2))].base_w
