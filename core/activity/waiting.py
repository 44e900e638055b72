"""Runs that waited: as long as the others of their part once one still stretch is taken out.

A pause is hard to see where the meter is slow or noisy, or a heater switches from row to row: window by
window, too few small steps show whether anything moves. But a run that is longer than the others of its
machine says by itself how long the pause would have been. So the question is easier: is there one stretch of
that length in which the motors hardly stir, or the machine draws less than it ever does at work? What is left
must then be as long as the others and take as much energy; a longer part does not hold such a stretch.
"""

from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from attrs import evolve, frozen

from core.activity.levels import Levels, tolerance_w
from core.activity.likeness import PARTS
from core.activity.motion import movement, rest_step_w, small_step_w
from core.activity.rows import Rows
from core.activity.scale import Weigh
from core.activity.values import Stretch
from core.traces import F64

#: a shorter wait [s], or one of a smaller part of a run, lets it agree with the others as it is
SHORTEST_S = 90.0
SHORTEST_PART = 0.05
#: a longer one is no pause but another part [s], and so is one that is longer than the run without it
LONGEST_S = 3600.0
#: of the length that is to be explained, so much is looked at: the rest is what runs differ by
INNER_PART = 0.85
#: moments at which it is looked for, to each length of it
MOMENTS = 10
#: nothing is told from fewer rows of it, or fewer small steps
FEWEST_ROWS = 4
FEWEST_STEPS = 6
#: it holds this part, at most, of the movement above rest that the run has otherwise ...
STILL_PART = 0.4
#: ... by as many standard errors; a step from row to row spreads by this part of the mean step
SURE_TIMES = 4.0
STEP_SPREAD = 0.85
#: ... and where steps are rare, as in a log on change, their number spreads too
RARE_SPREAD = 1.3
#: or its low rows (this quantile), or its mean, lie lower than elsewhere by so many times what they wander
#: there, and by what fans and motors that stand still save at the least [W]; common practice, no source
LOW = 0.15
LOW_LEVEL = int(np.argmin(np.abs(PARTS - LOW)))
WANDER_TIMES = 3.0
SAVED_W = 3.0
#: a warm-up that is longer than the others' by this part of the wait holds some of the processing before it
WARM_PART = 0.3
#: kinds of stretches that may be runs that waited
ASKED = ("run.another_part", "run.held_without_processing", "run.movement_unseen")


@frozen
class _Course:
    """Rows of a stretch after its first heating; `steps_w` are the small steps to each row, others NaN."""

    time_s: F64
    power_w: F64
    steps_w: F64


def with_waits(
    rows: Rows, levels: Levels, found: Sequence[Stretch], judged: Sequence[Stretch], weigh: Weigh
) -> list[Stretch] | None:
    """The stretches with the pauses of those that are too long for the main part; None where there is none.

    Parameters
    ----------
    rows : Rows
    levels : Levels
    found, judged : sequence of Stretch
        As they were found, and as they were then taken.
    weigh : callable
        Energy between two moments.
    """
    main = [s for s in judged if s.kind == "run" and s.part == "A"]
    if len(main) < 2:
        return None
    usual_s, warm_s = (
        float(np.median(lengths))
        for lengths in ([s.seconds for s in main], [s.seconds - s.processing_s for s in main])
    )
    base_w = float(np.median([s.base_w for s in main]))
    others_w = np.array([s.levels_w[LOW_LEVEL] for s in main if s.levels_w])
    waited, is_any = list(found), False
    for place, stretch in enumerate(judged):
        more_s = stretch.seconds - usual_s
        if stretch.why not in ASKED or not max(SHORTEST_S, SHORTEST_PART * usual_s) < more_s:
            continue
        if more_s > min(LONGEST_S, usual_s):
            continue
        wait = _wait(rows, levels, stretch, more_s, warm_s, base_w, others_w)
        if wait is not None:
            waited[place] = _without(rows, levels, found[place], wait, warm_s, weigh)
            is_any = True
    return waited if is_any else None


def _without(
    rows: Rows, levels: Levels, stretch: Stretch, wait: tuple[float, float], usual_s: float, weigh: Weigh
) -> Stretch:
    """The stretch as it is known by its rows beside the wait; `usual_s` is the warm-up of the others."""
    first, last = np.searchsorted(rows.time_s, (stretch.start_s, stretch.end_s)).tolist()
    seen = movement(rows, levels, first, max(last - 1, first), (wait,))
    warm_s = min(stretch.warm_up_end_s, wait[0])
    if stretch.seconds - stretch.processing_s > usual_s + WARM_PART * (wait[1] - wait[0]):
        # what rests in the midst of a run is easily taken for the end of its warm-up
        warm_s = min(warm_s, stretch.start_s + usual_s)
    return evolve(
        stretch,
        warm_up_end_s=warm_s,
        processing_wh=weigh(warm_s, stretch.end_s)[0] - weigh(*wait)[0],
        paused_s=wait[1] - wait[0],
        base_w=seen.base_w,
        levels_w=seen.levels_w,
        rows=seen.rows,
        motion=seen.step_w,
    )


def _wait(
    rows: Rows,
    levels: Levels,
    stretch: Stretch,
    more_s: float,
    warm_s: float,
    base_w: float,
    others_w: F64,
) -> tuple[float, float] | None:
    """The stretch of `more_s` in which the machine waited. [s]"""
    from_s = stretch.start_s + warm_s
    first, last = np.searchsorted(rows.time_s, (from_s, stretch.end_s)).tolist()
    time_s, power_w = rows.time_s[first:last], rows.power_w[first:last]
    if time_s.size < 4 * FEWEST_ROWS:
        return None
    steps_w = np.abs(np.diff(power_w, prepend=power_w[0]))
    steps_w[0] = np.nan
    steps_w[steps_w >= small_step_w(rows, levels, base_w)] = np.nan
    course = _Course(time_s, power_w, steps_w)
    inner_s = INNER_PART * more_s
    margin_s = (more_s - inner_s) / 2
    starts_s = np.arange(from_s + margin_s, stretch.end_s - inner_s, inner_s / MOMENTS)
    spans = [np.searchsorted(time_s, (at, at + inner_s)) for at in starts_s.tolist()]
    pieces = [(int(a), int(b)) for a, b in spans if b - a >= FEWEST_ROWS]
    if not pieces:
        return None
    best = _stillest(course, pieces, rest_step_w(rows, levels)) or _lowest(
        course, pieces, max(2 * tolerance_w(rows), SAVED_W), others_w
    )
    if best is None:
        return None
    begin_s = max(float(time_s[best[0]]) - margin_s, stretch.start_s)
    return begin_s, min(begin_s + more_s, stretch.end_s)


def _stillest(course: _Course, pieces: list[tuple[int, int]], rest_w: float) -> tuple[int, int] | None:
    """The piece in which the motors stir least, where that is hardly at all."""
    is_small = np.isfinite(course.steps_w)
    number = np.r_[0, np.cumsum(is_small)]
    # a value that is held from row to row says nothing by itself
    part = float(np.count_nonzero(course.steps_w[is_small])) / max(int(number[-1]), 1)
    spread = STEP_SPREAD if part > 0.5 else RARE_SPREAD
    total_w = np.r_[0.0, np.cumsum(np.where(is_small, course.steps_w, 0.0))]
    told = []
    for first, last in pieces:
        inside = int(number[last] - number[first])
        outside = int(number[-1]) - inside
        if min(inside, outside) < FEWEST_STEPS:
            continue
        inside_w = float(total_w[last] - total_w[first])
        mean_w, other_w = inside_w / inside, float(total_w[-1] - inside_w) / outside
        # the root of a count spreads by a half, whatever the count
        errors = 2 / spread * (part * inside) ** 0.5 * (1 - (mean_w / other_w) ** 0.5) if other_w > 0 else 0.0
        if mean_w - rest_w < STILL_PART * (other_w - rest_w) and errors > SURE_TIMES:
            told.append((mean_w, first, last))
    return min(told)[1:] if told else None


def _lowest(
    course: _Course, pieces: list[tuple[int, int]], least_w: float, others_w: F64
) -> tuple[int, int] | None:
    """The piece that draws least, where that is less than the run ever does elsewhere for as long.

    Low rows tell beside a heater that switches, means beside one whose power wanders. A piece lies as low as
    its highest third: first layers without a fan last for a part of it only. Where the run has no room for as
    long elsewhere, the low rows of the others, `others_w`, tell.
    """
    thirds = [
        [course.power_w[a:b] for a, b in pairwise(np.linspace(first, last, 4).round().astype(int).tolist())]
        for first, last in pieces
    ]
    lows_w = np.array([max(float(np.quantile(third, LOW)) for third in piece) for piece in thirds])
    means_w = np.array([max(float(third.mean()) for third in piece) for piece in thirds])
    for levels_w, of_others_w in ((lows_w, others_w), (means_w, others_w[:0])):
        first, last = pieces[int(np.argmin(levels_w))]
        beside_w = levels_w[np.array([b <= first or a >= last for a, b in pieces])]
        if beside_w.size < MOMENTS:
            beside_w = of_others_w
        if beside_w.size < 2:
            continue
        usual_w = float(np.median(beside_w))
        wander_w = max(usual_w - float(beside_w.min()), float(np.percentile(np.abs(beside_w - usual_w), 90)))
        if usual_w - float(levels_w.min()) > max(WANDER_TIMES * wander_w, least_w):
            return first, last
    return None
