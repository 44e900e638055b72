"""The answer of a line-up in words: when machines are warm, what they draw from then on, what that makes.

Rules: made of the runs that are shown; a difference in energy is claimed only where the comparison shows it.
"""

import math
from collections.abc import Sequence

from attrs import frozen

from core.formatting import POINT, NumberLocale, count, duration, listed, number, with_interval
from core.line_up.bands import LEAST_RUNS, Leave, leaves
from core.line_up.choices import LineUp
from core.line_up.common_axis import judging_width_s, usual_width_s
from core.line_up.spans import as_power, energy_within, mean_measured
from core.line_up.strands import Anchor, Strand, by_machine
from core.quantities import MEAN_W
from core.results.values import Comparison, Measured, Pair

#: a moment found in a trace is no surer than this, and told no finer [s]
_TOLD_S = 5.0
#: two means that differ by less than this part are called alike
_ALIKE = 0.02
#: a part of a difference that is smaller than this is not told
_SMALL = 0.1
#: lengths of time between these are told in minutes [s]
_IN_MINUTES_FROM, _IN_MINUTES_TO = 300.0, 5 * 3600.0


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


def _fact(phase: "Phases", locale: NumberLocale) -> str:
    watts = with_interval(phase.after_w.value, phase.after_w.u95, MEAN_W, locale)
    return (
        f"{phase.machine} ({count(phase.runs, 'run')}): warm-up {duration(_told(phase.warm_s))}, "
        f"{number(phase.warm_wh, 1, locale)} Wh; then {watts} W for {duration(_told(phase.after_s))}, "
        f"{number(phase.after_wh, 1, locale)} Wh"
    )


@frozen
class Phases:
    """The runs of one machine before and after the end of warm-up, as means.

    ``warm_s`` and ``warm_wh`` are 0 where no warm-up is seen; ``after_w`` is the mean power from then on.
    """

    machine_id: str
    machine: str
    runs: int
    warm_s: float
    warm_wh: float
    after_s: float
    after_wh: float
    after_w: Measured

    @property
    def energy_wh(self) -> float:
        """Both together. [Wh]"""
        return self.warm_wh + self.after_wh


def phases(given: Sequence[Strand]) -> Phases | None:
    """Means of one machine's runs before and after the end of warm-up; None without a run that gets there."""
    whole = [s for s in given if s.end_s > s.warm_s]
    if not whole:
        return None
    n = len(whole)
    after = [energy_within(s.trace, s.warm_s, s.end_s, s.meter) for s in whole]
    after_wh = math.fsum(e.energy_wh for e in after) / n
    return Phases(
        machine_id=whole[0].machine_id,
        machine=whole[0].machine,
        runs=n,
        warm_s=math.fsum(s.warm_s - s.start_s for s in whole) / n,
        warm_wh=math.fsum(s.energy_wh for s in whole) / n - after_wh,
        after_s=math.fsum(s.end_s - s.warm_s for s in whole) / n,
        after_wh=after_wh,
        after_w=mean_measured([as_power(e, s.end_s - s.warm_s) for e, s in zip(after, whole, strict=True)]),
    )


def headline(given: Sequence[Strand], comparison: Comparison, locale: NumberLocale = POINT) -> str:
    """What the runs that are shown say, in one sentence."""
    if not given:
        return "No runs are shown."
    known = [p for members in by_machine(given).values() for p in [phases(members)] if p is not None]
    if not known:
        return "The runs that are shown never end their warm-up."
    if len(known) == 1:
        return _one(known[0], locale)
    least, most = min(known, key=_energy), max(known, key=_energy)
    return _two(least, most, _pair(comparison, least.machine_id, most.machine_id), locale)


def _energy(phase: Phases) -> float:
    return phase.energy_wh


def _one(phase: Phases, locale: NumberLocale) -> str:
    runs = "one run only" if phase.runs == 1 else f"{phase.runs} runs"
    watts = with_interval(phase.after_w.value, phase.after_w.u95, MEAN_W, locale)
    draws = f"draws {watts} W for {duration(_told(phase.after_s))}"
    if phase.warm_s < _TOLD_S:
        return f"{phase.machine} {draws} ({runs}); no warm-up counts or is seen."
    warm_wh = number(phase.warm_wh, 1, locale)
    return (
        f"{phase.machine} has done with warm-up after {duration(_told(phase.warm_s))} and {warm_wh} Wh; "
        f"from then on it {draws} ({runs})."
    )


def _two(least: Phases, most: Phases, pair: Pair | None, locale: NumberLocale) -> str:
    """The machine that needs most against the one that needs least, by watts and time."""
    warm = _warm(least, most)
    watts = [with_interval(p.after_w.value, p.after_w.u95, MEAN_W, locale) for p in (most, least)]
    more_power = _against(most.after_w.value, least.after_w.value)
    longer = _against(most.after_s, least.after_s)
    draws = {1: "draws more", 0: "draws about as much", -1: "draws less"}[more_power]
    lasts = {1: "longer", 0: "about as long", -1: "a shorter time"}[longer]
    joined = "but for" if more_power * longer < 0 else "and for" if more_power and longer else "for"
    who = f"{warm}; {most.machine} then" if warm else f"Once warm, {most.machine}"
    than = "" if warm else f" {'than' if more_power else 'as'} {least.machine}"
    times = _lengths(most.after_s, least.after_s)
    what = f"{who} {draws}{than} ({watts[0]} against {watts[1]} W) {joined} {lasts} ({times})"
    return what + _makes(least, most, pair, locale) + "."


def _warm(least: Phases, most: Phases) -> str:
    if min(least.warm_s, most.warm_s) < _TOLD_S:
        return ""
    times = [duration(_told(p.warm_s)) for p in (least, most)]
    if times[0] == times[1]:
        return f"{least.machine} and {most.machine} have done with warm-up after {times[0]}"
    return f"{least.machine} has done with warm-up after {times[0]}, {most.machine} after {times[1]}"


def _lengths(one_s: float, other_s: float) -> str:
    """Two lengths of time against each other, in minutes where these are easy to compare."""
    if min(one_s, other_s) > _IN_MINUTES_FROM and max(one_s, other_s) < _IN_MINUTES_TO:
        return f"{number(one_s / 60, 0)} against {number(other_s / 60, 0)} min"
    return f"{duration(_minute(one_s))} against {duration(_minute(other_s))}"


def _makes(least: Phases, most: Phases, pair: Pair | None, locale: NumberLocale) -> str:
    """What it comes to, claimed as far as the comparison shows a difference."""
    apart_wh, after_wh = most.energy_wh - least.energy_wh, most.after_wh - least.after_wh
    decimals = 1 if apart_wh < 100 else 0
    apart = number(apart_wh, decimals, locale)
    if pair is not None and pair.shown is False:
        return f"; no difference in what they need is shown ({apart} Wh apart)"
    unsure = "" if pair is not None and pair.shown else ", which too few runs show"
    warm_wh = apart_wh - after_wh
    if min(least.warm_s, most.warm_s) < _TOLD_S or abs(warm_wh) < _SMALL * apart_wh:
        return f", and so needs {apart} Wh more{unsure}"
    part, warm = number(abs(after_wh), decimals, locale), number(abs(warm_wh), decimals, locale)
    if after_wh < 0:
        return f", {part} Wh less; warm-up takes {warm} Wh more, which makes {apart} Wh more in all{unsure}"
    if warm_wh < 0:
        return f", {part} Wh more; warm-up takes {warm} Wh less, which makes {apart} Wh more in all{unsure}"
    return f", which makes {part} of the {apart} Wh that it needs more{unsure}"


def _against(value: float, other: float) -> int:
    """1 if larger, -1 if smaller, 0 if about alike."""
    if abs(value - other) <= _ALIKE * max(abs(value), abs(other)):
        return 0
    return 1 if value > other else -1


def _told(seconds: float) -> float:
    return round(seconds / _TOLD_S) * _TOLD_S if seconds < 600 else _minute(seconds)


def _minute(seconds: float) -> float:
    return round(seconds / 60) * 60.0 if seconds >= 60 else seconds


def _pair(comparison: Comparison, one: str, other: str) -> Pair | None:
    return next((p for p in comparison.pairs if {p.machine_id, p.other_id} == {one, other}), None)


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
    runs = count(len(given), "run")
    of = f" of {count(len(groups), 'machine')}" if len(groups) > 1 else ""
    lined = "by share of duration" if anchor == "share of duration" else f"at the {anchor}"
    smoothed = f"moving mean over {duration(smooth_s)}, energy kept" if smooth_s > 0 else "power as logged"
    told = [f"{comparison.boundary.capitalize()}; {runs}{of}, lined up {lined}; {smoothed}."]
    few = [members[0].machine for members in groups.values() if len(members) < LEAST_RUNS]
    if few and len(few) < len(groups):
        told.append(f"{listed(few)}: too few runs here to say which one is odd.")
    if not_shown:
        told.append(f"{count(not_shown, 'more run')} can be ticked in the list.")
    if without_trace:
        told.append(f"{count(without_trace, 'typed reading')} without a trace cannot be lined up.")
    return " ".join(told)


def leave_told(leave: Leave, strand: Strand, anchor: Anchor, locale: NumberLocale = POINT) -> str:
    """Where a run leaves its own machine's band, and by how much.

    Examples
    --------
    A run that started warm: ``"Birch, run 3 leaves its band from 0 s to 3 min: 20 W less, 1.0 Wh less"``.
    """
    more = "more" if leave.by_w > 0 else "less"
    energy = number(abs(leave.energy_wh), 1 if abs(leave.energy_wh) >= 1 else 2, locale)
    return (
        f"{strand.label} leaves its band {span_told(leave.start, leave.end, anchor, locale)}: "
        f"{more_told(leave, locale)}, {energy} Wh {more}"
    )


def more_told(leave: Leave, locale: NumberLocale = POINT) -> str:
    """By how many watts a run lies above or below its machine's median."""
    watts = number(abs(leave.by_w), 0 if abs(leave.by_w) >= 10 else 1, locale)
    return f"{watts} W {'more' if leave.by_w > 0 else 'less'}"


def span_told(low: float, high: float, anchor: Anchor, locale: NumberLocale = POINT) -> str:
    """A span of the common axis in words."""
    if anchor == "share of duration":
        return f"from {number(100 * low, 0, locale)} to {number(100 * high, 0, locale)} % of its duration"
    if anchor == "end":
        return f"from {duration(-low)} to {duration(max(-high, 0.0))} before the end"
    if anchor == "end of warm-up" and low < 0:
        until = f"{duration(-high)} before" if high < 0 else f"{duration(high)} after"
        return f"from {duration(-low)} before to {until} the end of warm-up"
    after = " after warm-up" if anchor == "end of warm-up" else ""
    return f"from {duration(low)} to {duration(high)}{after}"


def total_told(leaving: int, given: Sequence[Strand]) -> str:
    """How many runs leave the band of their own machine, of those that can be judged."""
    judged = sum(len(m) for m in by_machine(given).values() if len(m) >= LEAST_RUNS)
    if not judged:
        return ""
    if not leaving:
        return f"None of {count(judged, 'run')} leaves its band"
    leaves = "leaves its band" if leaving == 1 else "leave their band"
    return f"{leaving} of {count(judged, 'run')} {leaves}"
