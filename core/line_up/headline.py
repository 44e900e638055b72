"""What runs lined up say in one sentence: when machines are warm, what they draw then, what that makes.

Rules: a difference in energy is claimed only where the comparison shows it.
"""

from collections.abc import Sequence
from typing import Final

from core.formatting import POINT, NumberLocale, duration, number, with_interval
from core.language import mark, tr
from core.line_up.phases import TOLD_S, Phases, phases, to_the_minute_s, told_s
from core.line_up.strands import Strand, by_machine
from core.quantities import MEAN_W
from core.results.values import Comparison, Pair

#: two means that differ by less than this part are called alike
_ALIKE: Final = 0.02
#: a part of a difference that is smaller than this is not told
_SMALL: Final = 0.1
#: lengths of time between these are told in minutes [s]
_IN_MINUTES_FROM, _IN_MINUTES_TO = 300.0, 5 * 3600.0
#: after when each was warm, by whether the one that needs most draws more and takes longer
_THEN: Final = {
    (1, 1): mark(
        "{warm}; {machine} then draws more ({watts} against {other_watts} W) and for longer ({times})"
    ),
    (1, 0): mark(
        "{warm}; {machine} then draws more ({watts} against {other_watts} W) for about as long ({times})"
    ),
    (1, -1): mark(
        "{warm}; {machine} then draws more ({watts} against {other_watts} W) but for a shorter time ({times})"
    ),
    (0, 1): mark(
        "{warm}; {machine} then draws about as much ({watts} against {other_watts} W) for longer ({times})"
    ),
    (0, 0): mark(
        "{warm}; {machine} then draws about as much ({watts} against {other_watts} W) for about as long "
        "({times})"
    ),
    (0, -1): mark(
        "{warm}; {machine} then draws about as much ({watts} against {other_watts} W) for a shorter time "
        "({times})"
    ),
    (-1, 1): mark(
        "{warm}; {machine} then draws less ({watts} against {other_watts} W) but for longer ({times})"
    ),
    (-1, 0): mark(
        "{warm}; {machine} then draws less ({watts} against {other_watts} W) for about as long ({times})"
    ),
    (-1, -1): mark(
        "{warm}; {machine} then draws less ({watts} against {other_watts} W) and for a shorter time ({times})"
    ),
}
#: the same, where no warm-up can be told
_ONCE_WARM: Final = {
    (1, 1): mark(
        "Once warm, {machine} draws more than {other} ({watts} against {other_watts} W) and for longer "
        "({times})"
    ),
    (1, 0): mark(
        "Once warm, {machine} draws more than {other} ({watts} against {other_watts} W) for about as "
        "long ({times})"
    ),
    (1, -1): mark(
        "Once warm, {machine} draws more than {other} ({watts} against {other_watts} W) but for a "
        "shorter time ({times})"
    ),
    (0, 1): mark(
        "Once warm, {machine} draws about as much as {other} ({watts} against {other_watts} W) for "
        "longer ({times})"
    ),
    (0, 0): mark(
        "Once warm, {machine} draws about as much as {other} ({watts} against {other_watts} W) for about "
        "as long ({times})"
    ),
    (0, -1): mark(
        "Once warm, {machine} draws about as much as {other} ({watts} against {other_watts} W) for a "
        "shorter time ({times})"
    ),
    (-1, 1): mark(
        "Once warm, {machine} draws less than {other} ({watts} against {other_watts} W) but for longer "
        "({times})"
    ),
    (-1, 0): mark(
        "Once warm, {machine} draws less than {other} ({watts} against {other_watts} W) for about as "
        "long ({times})"
    ),
    (-1, -1): mark(
        "Once warm, {machine} draws less than {other} ({watts} against {other_watts} W) and for a "
        "shorter time ({times})"
    ),
}


def headline(given: Sequence[Strand], comparison: Comparison, locale: NumberLocale = POINT) -> str:
    """What the runs that are shown say, in one sentence."""
    if not given:
        return tr("No runs are shown.")
    known = [p for members in by_machine(given).values() for p in [phases(members)] if p is not None]
    if not known:
        return tr("The runs that are shown never end their warm-up.")
    if len(known) == 1:
        return _one(known[0], locale)
    least, most = min(known, key=_energy), max(known, key=_energy)
    return _two(least, most, _pair(comparison, least.machine_id, most.machine_id), locale)


def _energy(phase: Phases) -> float:
    return phase.energy_wh


def _one(phase: Phases, locale: NumberLocale) -> str:
    runs = tr("one run only") if phase.runs == 1 else tr("{count:run|runs}", count=phase.runs)
    told = {
        "machine": phase.machine,
        "watts": with_interval(phase.after_w.value, phase.after_w.u95, MEAN_W, locale),
        "time": duration(told_s(phase.after_s)),
        "runs": runs,
    }
    if phase.warm_s < TOLD_S:
        return tr("{machine} draws {watts} W for {time} ({runs}); no warm-up counts or is seen.", **told)
    return tr(
        "{machine} is done with warm-up after {warm_time} and {warm} Wh; "
        "from then on it draws {watts} W for {time} ({runs}).",
        warm_time=duration(told_s(phase.warm_s)),
        warm=number(phase.warm_wh, 1, locale),
        **told,
    )


def _two(least: Phases, most: Phases, pair: Pair | None, locale: NumberLocale) -> str:
    """The machine that needs most against the one that needs least, by watts and time."""
    warm = _warm(least, most)
    watts = [with_interval(p.after_w.value, p.after_w.u95, MEAN_W, locale) for p in (most, least)]
    case = (_against(most.after_w.value, least.after_w.value), _against(most.after_s, least.after_s))
    what = tr(
        _THEN[case] if warm else _ONCE_WARM[case],
        warm=warm,
        machine=most.machine,
        other=least.machine,
        watts=watts[0],
        other_watts=watts[1],
        times=_lengths(most.after_s, least.after_s),
    )
    return what + _makes(least, most, pair, locale) + "."


def _warm(least: Phases, most: Phases) -> str:
    if min(least.warm_s, most.warm_s) < TOLD_S:
        return ""
    times = [duration(told_s(p.warm_s)) for p in (least, most)]
    if times[0] == times[1]:
        return tr(
            "{machine} and {other} are done with warm-up after {time}",
            machine=least.machine,
            other=most.machine,
            time=times[0],
        )
    return tr(
        "{machine} is done with warm-up after {time}, {other} after {other_time}",
        machine=least.machine,
        time=times[0],
        other=most.machine,
        other_time=times[1],
    )


def _lengths(one_s: float, other_s: float) -> str:
    """Two lengths of time against each other, in minutes where these are easy to compare."""
    if min(one_s, other_s) > _IN_MINUTES_FROM and max(one_s, other_s) < _IN_MINUTES_TO:
        return tr("{one} against {other} min", one=number(one_s / 60, 0), other=number(other_s / 60, 0))
    return tr(
        "{one} against {other}",
        one=duration(to_the_minute_s(one_s)),
        other=duration(to_the_minute_s(other_s)),
    )


def _makes(least: Phases, most: Phases, pair: Pair | None, locale: NumberLocale) -> str:
    """What it comes to, claimed as far as the comparison shows a difference."""
    apart_wh, after_wh = most.energy_wh - least.energy_wh, most.after_wh - least.after_wh
    decimals = 1 if apart_wh < 100 else 0
    apart = number(apart_wh, decimals, locale)
    if pair is not None and pair.shown is False:
        return tr("; no difference in what they need is shown ({apart} Wh apart)", apart=apart)
    unsure = "" if pair is not None and pair.shown else tr(", which too few runs show")
    warm_wh = apart_wh - after_wh
    if min(least.warm_s, most.warm_s) < TOLD_S or abs(warm_wh) < _SMALL * apart_wh:
        return tr(", and so needs {apart} Wh more{unsure}", apart=apart, unsure=unsure)
    part, warm = number(abs(after_wh), decimals, locale), number(abs(warm_wh), decimals, locale)
    if after_wh < 0:
        return tr(
            ", {part} Wh less; warm-up takes {warm} Wh more, which makes {apart} Wh more in all{unsure}",
            part=part,
            warm=warm,
            apart=apart,
            unsure=unsure,
        )
    if warm_wh < 0:
        return tr(
            ", {part} Wh more; warm-up takes {warm} Wh less, which makes {apart} Wh more in all{unsure}",
            part=part,
            warm=warm,
            apart=apart,
            unsure=unsure,
        )
    return tr(
        ", which makes {part} of the {apart} Wh that it needs more{unsure}",
        part=part,
        apart=apart,
        unsure=unsure,
    )


def _against(value: float, other: float) -> int:
    """1 if larger, -1 if smaller, 0 if about alike."""
    if abs(value - other) <= _ALIKE * max(abs(value), abs(other)):
        return 0
    return 1 if value > other else -1


def _pair(comparison: Comparison, one: str, other: str) -> Pair | None:
    return next((p for p in comparison.pairs if {p.machine_id, p.other_id} == {one, other}), None)
