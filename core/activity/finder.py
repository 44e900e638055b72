"""From a trace to its stretches: the steps in order."""

from collections.abc import Sequence

from attrs import evolve

from core.activity import stretches as heating
from core.activity.closing import last_working
from core.activity.grouping import judged
from core.activity.levels import (
    Levels,
    learn,
    noise_at_rest_w,
    refined,
    rests_at_standby,
    tolerance_w,
)
from core.activity.motion import movement, pauses, rest_step_w, sight_w
from core.activity.opening import opens_with_first_heating
from core.activity.processing import processing
from core.activity.rows import Rows, rows_of
from core.activity.scale import Weigh, scale
from core.activity.staircase import first_load_s
from core.activity.values import Activity, Stretch
from core.activity.waiting import with_waits
from core.activity.warming import warm_up_end_s
from core.language import mark, tr
from core.progress import Progress, part, silent
from core.traces import Gap, Trace

#: fewest rows that a log needs before anything can be learnt from it
FEWEST_ROWS = 12
#: movement has to be this many times as much as the noise to be seen through it: the root of the squares of
#: both is then `processing.MOVING_TIMES` the noise
NOISE_TIMES = 1.25
#: what is being done, for whoever watches
FINDING = mark("finding runs")


def find(trace: Trace, progress: Progress = silent) -> Activity:
    """Learn a trace's levels and find the stretches in which the machine worked.

    Parameters
    ----------
    trace : Trace
    progress : callable
        Told how far the work is; may raise `core.progress.Cancelled`.

    Returns
    -------
    Activity
        With no stretches where the log is too short, or never leaves idle.

    Notes
    -----
    No fixed watts decide: idle, processing and the threshold between them come from the trace. Seconds appear
    only where a person's hands or the physics of a heater set them (common practice, no source).
    """
    if trace.time_s.size < FEWEST_ROWS:
        return Activity(None, None, float("inf"), float("inf"), 0.0)
    progress(0.0, tr(FINDING))
    rows = rows_of(trace)
    levels = learn(rows, part(progress, 0.1, 0.6))
    is_unknown = levels.standby_w is None or levels.dark_part > 0 or not rests_at_standby(rows, levels)
    if is_unknown and (noise_w := noise_at_rest_w(rows)) > tolerance_w(rows):
        rows = evolve(rows, noise_w=noise_w)
        levels = learn(rows)
    levels = refined(rows, levels, heating.above(rows, levels))
    spans = heating.above(rows, levels)
    rest_w = rest_step_w(rows, levels)
    weigh = scale(trace)
    last_row = rows.time_s.size - 1
    found: list[Stretch] = []
    for number, (begin, last) in enumerate(spans.tolist()):
        progress(0.7 + 0.3 * number / len(spans), tr(FINDING))
        first = heating.first_heating(rows, levels, begin, last)
        is_whole = last < last_row
        worked = last_working(rows, levels, first, last) if is_whole else last
        stretch = _described(rows, levels, first, worked, weigh, trace.gaps)
        if found and stretch.start_s < found[-1].end_s:  # two edges within one averaged row
            start_s = found[-1].end_s
            stretch = evolve(stretch, start_s=start_s, warm_up_end_s=max(stretch.warm_up_end_s, start_s))
        if stretch.end_s <= stretch.start_s:  # one averaged row at the very beginning
            continue
        loads_s = first_load_s(rows, levels, first, worked, found[-1].end_s if found else 0.0)
        if first == 0 or not is_whole:
            why = "run.cut_at_start" if first == 0 else "run.cut_at_end"
            if first == 0 and opens_with_first_heating(rows, last, stretch.warm_up_end_s):
                why = "run.whole_log" if last == last_row else "run.begins_hot"
            stretch = evolve(stretch, kind="cut", why=why)
        elif loads_s is not None:
            stretch = evolve(stretch, start_s=loads_s, kind="switch-on test", why="run.loads_one_by_one")
        found.append(stretch)
    least_w = max(sight_w(trace), NOISE_TIMES * rest_w)

    def judge(stretches: Sequence[Stretch]) -> tuple[Stretch, ...]:
        idle_w = levels.idle_w or 0.0
        moves, at_base = processing(stretches, rest_w, levels.standby_w or 0.0, idle_w, least_w)
        return judged(stretches, moves, at_base, least_w)

    placed = judge(found)
    waited = with_waits(rows, levels, found, placed, weigh)
    return Activity(
        standby_w=levels.standby_w,
        idle_w=levels.idle_w,
        threshold_w=levels.threshold_w,
        processing_floor_w=levels.floor_w,
        quiet_w=rest_w,
        stretches=placed if waited is None else judge(waited),
    )


def _described(
    rows: Rows, levels: Levels, first: int, last: int, weigh: Weigh, gaps: Sequence[Gap]
) -> Stretch:
    """Rows `first` to `last` as a stretch, with all that tells what it is."""
    start_s, end_s = (_amid(at_s, gaps) for at_s in heating.edges(rows, first, last))
    warm_s = warm_up_end_s(
        rows, levels.standby_w or 0.0, levels.threshold_w, rest_step_w(rows, levels), start_s, end_s
    )
    seen = movement(rows, levels, first, last)
    still = pauses(rows, levels, seen, warm_s, last)
    if still:  # they are no part of what processing is known by
        seen = movement(rows, levels, first, last, still)
    energy_wh, energy_apart = weigh(start_s, end_s)
    return Stretch(
        start_s,
        end_s,
        energy_wh=energy_wh,
        energy_apart=energy_apart,
        warm_up_end_s=warm_s,
        processing_wh=weigh(warm_s, end_s)[0] - sum(weigh(a, min(b, end_s))[0] for a, b in still),
        paused_s=sum(b - a for a, b in still),
        base_w=seen.base_w,
        levels_w=seen.levels_w,
        rows=seen.rows,
        motion=seen.step_w,
    )


def _amid(at_s: float, gaps: Sequence[Gap]) -> float:
    """An edge that a gap hides: it lies anywhere in it, so nowhere less far off than in its middle. [s]"""
    return next(((gap.start_s + gap.end_s) / 2 for gap in gaps if gap.start_s <= at_s <= gap.end_s), at_s)
