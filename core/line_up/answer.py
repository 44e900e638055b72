"""The answer of a line-up in words: when machines are warm, what they draw from then on, what that makes.

Rules: made of the runs that are shown; a difference in energy is claimed only where the comparison shows it.
"""

from collections.abc import Sequence
from typing import Final

from attrs import frozen

from core.formatting import POINT, NumberLocale, capitalised, duration, listed, number, with_interval
from core.language import mark, tr
from core.line_up.bands import LEAST_RUNS, Leave, leaves
from core.line_up.choices import LineUp
from core.line_up.common_axis import judging_width_s, usual_width_s
from core.line_up.headline import headline
from core.line_up.phases import Phases, phases, told_s
from core.line_up.strands import Anchor, Strand, by_machine
from core.quantities import MEAN_W
from core.results.values import Comparison

#: where the runs meet
_LINED_UP: Final = {
    "start": mark("at the start"),
    "end of warm-up": mark("at the end of warm-up"),
    "end": mark("at the end"),
    "share of duration": mark("by share of duration"),
}


@frozen
class Answer:
    """What is said about the runs that are shown.

    ``smooth_s`` is the width over which their power is smoothed where none was asked for, 0 where it is not;
    ``facts`` has a clause a machine: its numbers, for a picture's description. [s]
    """

    headline: str
    conditions: str
    smooth_s: float
    leaves: tuple[Leave, ...] = ()
    facts: tuple[str, ...] = ()


def answer(
    given: Sequence[Strand],
    comparison: Comparison,
    choices: LineUp,
    locale: NumberLocale = POINT,
    *,
    without_trace: int = 0,
    not_shown: int = 0,
) -> Answer:
    """Everything that is said about runs lined up as chosen.

    Parameters
    ----------
    given : sequence of Strand
        Those that are shown; judged are those that count.
    comparison : Comparison
    choices : LineUp
    locale : NumberLocale
    without_trace : int
        Runs that count but are only readings of a display.
    not_shown : int
        Runs that count and are not shown because they are too many.
    """
    smooth_s = usual_width_s(given) if choices.smooth_s is None else choices.smooth_s
    counted = [s for s in given if s.included]
    width_s = judging_width_s(counted)
    return Answer(
        headline=headline(counted or given, comparison, locale),
        conditions=conditions(
            given, comparison, choices.anchor, smooth_s, without_trace=without_trace, not_shown=not_shown
        ),
        smooth_s=smooth_s,
        leaves=tuple(
            leave
            for members in by_machine(counted).values()
            for leave in leaves(members, choices.anchor, width_s)
        ),
        facts=tuple(
            _fact(found, locale)
            for members in by_machine(given).values()
            for found in [phases(members)]
            if found is not None
        ),
    )


def _fact(phase: Phases, locale: NumberLocale) -> str:
    watts = with_interval(phase.after_w.value, phase.after_w.u95, MEAN_W, locale)
    return tr(
        "{machine} ({runs:run|runs}): warm-up {warm_s}, {warm_wh} Wh; then {watts} W for "
        "{after_s}, {after_wh} Wh",
        machine=phase.machine,
        runs=phase.runs,
        warm_s=duration(told_s(phase.warm_s)),
        warm_wh=number(phase.warm_wh, 1, locale),
        watts=watts,
        after_s=duration(told_s(phase.after_s)),
        after_wh=number(phase.after_wh, 1, locale),
    )


def conditions(
    given: Sequence[Strand],
    comparison: Comparison,
    anchor: Anchor,
    smooth_s: float,
    *,
    without_trace: int = 0,
    not_shown: int = 0,
) -> str:
    """How the runs are lined up and what was done to them, in one line.

    Parameters
    ----------
    given : sequence of Strand
        Those that are shown.
    comparison : Comparison
    anchor : Anchor
    smooth_s : float
        0 for the power as it was logged. [s]
    without_trace : int
        Runs that count but are only readings of a display.
    not_shown : int
        Runs that count and are not shown because they are too many.
    """
    if not given:
        return ""
    groups = by_machine(given)
    runs = tr("{count:run|runs}", count=len(given))
    if len(groups) > 1:
        runs = tr("{runs} of {count:machine|machines}", runs=runs, count=len(groups))
    smoothed = (
        tr("moving mean over {width}, energy kept", width=duration(smooth_s))
        if smooth_s > 0
        else tr("power as logged")
    )
    told = [
        tr(
            "{boundary}; {runs}, lined up {where}; {smoothed}.",
            boundary=capitalised(tr(comparison.boundary)),
            runs=runs,
            where=tr(_LINED_UP[anchor]),
            smoothed=smoothed,
        )
    ]
    few = [members[0].machine for members in groups.values() if len(members) < LEAST_RUNS]
    if few and len(few) < len(groups):
        told.append(tr("{machines}: too few runs here to say which one is odd.", machines=listed(few)))
    if not_shown:
        told.append(tr("{not_shown:more run|more runs} can be ticked in the list.", not_shown=not_shown))
    if without_trace:
        told.append(
            tr(
                "{without_trace:typed reading|typed readings} without a trace cannot be lined up.",
                without_trace=without_trace,
            )
        )
    return " ".join(told)


def leave_told(leave: Leave, strand: Strand, anchor: Anchor, locale: NumberLocale = POINT) -> str:
    """Where a run leaves its own machine's band, and by how much.

    Examples
    --------
    A run that started warm: ``"Birch, run 3 leaves its band from 0 s to 3 min: 20 W less, 1.0 Wh less"``.
    """
    energy = number(abs(leave.energy_wh), 1 if abs(leave.energy_wh) >= 1 else 2, locale)
    told = {
        "run": strand.label,
        "span": span_told(leave.start, leave.end, anchor, locale),
        "power": more_told(leave, locale),
        "energy": energy,
    }
    if leave.by_w > 0:
        return tr("{run} leaves its band {span}: {power}, {energy} Wh more", **told)
    return tr("{run} leaves its band {span}: {power}, {energy} Wh less", **told)


def more_told(leave: Leave, locale: NumberLocale = POINT) -> str:
    """By how many watts a run lies above or below its machine's median."""
    watts = number(abs(leave.by_w), 0 if abs(leave.by_w) >= 10 else 1, locale)
    return tr("{watts} W more", watts=watts) if leave.by_w > 0 else tr("{watts} W less", watts=watts)


def span_told(low: float, high: float, anchor: Anchor, locale: NumberLocale = POINT) -> str:
    """A span of the common axis in words."""
    if anchor == "share of duration":
        return tr(
            "from {low} to {high} % of its duration",
            low=number(100 * low, 0, locale),
            high=number(100 * high, 0, locale),
        )
    if anchor == "end":
        return tr("from {low} to {high} before the end", low=duration(-low), high=duration(max(-high, 0.0)))
    if anchor == "end of warm-up" and low < 0:
        before, until = duration(-low), duration(abs(high))
        if high < 0:
            return tr("from {low} before to {high} before the end of warm-up", low=before, high=until)
        return tr("from {low} before to {high} after the end of warm-up", low=before, high=until)
    if anchor == "end of warm-up":
        return tr("from {low} to {high} after warm-up", low=duration(low), high=duration(high))
    return tr("from {low} to {high}", low=duration(low), high=duration(high))


def total_told(leaving: int, given: Sequence[Strand]) -> str:
    """How many runs leave the band of their own machine, of those that can be judged."""
    judged = sum(len(m) for m in by_machine(given).values() if len(m) >= LEAST_RUNS)
    if not judged:
        return ""
    if not leaving:
        return tr("None of {judged:run|runs} leaves its band", judged=judged)
    if leaving == 1:
        return tr("1 of {judged:run|runs} leaves its band", judged=judged)
    return tr("{leaving} of {judged:run|runs} leave their band", leaving=leaving, judged=judged)
