"""How many repeats it takes: the smallest difference that is shown, against the runs of each machine."""

import numpy as np

from core.figures.compare import source_of
from core.figures.curve_values import CurvesFigure, Reading, Trend
from core.figures.line_up_values import Scale
from core.figures.ticks import axis_end
from core.formatting import POINT, NumberLocale
from core.language import tr
from core.plan.repeats import PairRepeats, Repeats
from core.plan.words import conditions, headline, share
from core.study import Study

#: the chart reaches so many times the difference looked for, and so many times the lowest floor
_ROOM, _OVER_FLOOR = 4.0, 1.3
#: steps of a curve from one number of runs to the next
_BETWEEN = 24


def repeats_figure(found: Repeats, study: Study, locale: NumberLocale = POINT) -> CurvesFigure | None:
    """Curves of two machines by themselves and among all, and what the meters hide; None with one machine."""
    pair = found.pair
    if pair is None:
        return None
    machines, last = len(found.machines), float(pair.runs[-1])
    top = axis_end((max(100 * _ROOM * found.difference, 100 * _OVER_FLOOR * pair.floor_apart),))
    runs = tuple(float(n) for n in pair.runs)
    names = tr("{machine} and {other}", machine=pair.first.name, other=pair.other.name)
    trends = []
    if machines > 2:
        trends.append(Trend(runs, _percent(pair.alone), name=tr("these two alone")))
    fine = tuple(np.linspace(runs[0], last, _BETWEEN * (len(runs) - 1) + 1).tolist())
    trends.append(
        Trend(
            fine,
            _between(fine, runs, pair.among_all),
            name=names if machines == 2 else tr("among {count} machines", count=machines),
            low=_between(fine, runs, pair.low),
            high=_between(fine, runs, pair.high),
        )
    )
    for value, name in _levels(found, pair, locale):
        # drawn from right to left, so that its name stands where the curves are high above it
        trends.append(Trend((last, runs[0]), (100 * value, 100 * value), name=name, is_dashed=True))
    return CurvesFigure(
        headline=headline(found, locale),
        conditions=conditions(found, locale),
        source=source_of(study),
        x=Scale(tr("Runs of each machine, in all"), tr("runs"), runs[0], last, locale),
        y=Scale(tr("Smallest difference shown between {names}", names=names), "%", 0.0, top, locale),
        trends=tuple(trends),
        note=tr("band: 95 % interval of the scatter") if pair.low else "",
        facts=_facts(found, pair, locale),
        readings=tuple(
            Reading(float(n), 100 * among, _lines(found, pair, i, locale))
            for i, (n, among) in enumerate(zip(pair.runs, pair.among_all, strict=True))
        ),
    )


def _between(
    fine: tuple[float, ...], runs: tuple[float, ...], values: tuple[float, ...]
) -> tuple[float, ...]:
    """A curve in so small steps that it leaves the chart where it crosses its upper edge."""
    return tuple(np.interp(fine, runs, _percent(values)).tolist()) if values else ()


def _percent(values: tuple[float, ...]) -> tuple[float, ...]:
    return tuple(100 * value for value in values)


def _levels(found: Repeats, pair: PairRepeats, locale: NumberLocale) -> list[tuple[float, str]]:
    """What is looked for, and what is hidden with a meter for each."""
    return [
        (pair.floor_apart, tr("two meters hide {share}", share=share(pair.floor_apart, locale))),
        (found.difference, tr("looked for, {share}", share=share(found.difference, locale))),
    ]


def _lines(found: Repeats, pair: PairRepeats, i: int, locale: NumberLocale) -> tuple[str, ...]:
    """One number of runs read out."""
    n = pair.runs[i]
    so_far = min(pair.first.runs, pair.other.runs)
    lines = [
        tr(
            "{count:run|runs} of each of {machine} and {other}",
            count=n,
            machine=pair.first.name,
            other=pair.other.name,
        )
    ]
    if len(found.machines) > 2:
        lines.append(
            tr(
                "among {count} machines: {share} is shown",
                count=len(found.machines),
                share=share(pair.among_all[i], locale),
            )
        )
        lines.append(tr("were they alone: {share}", share=share(pair.alone[i], locale)))
    else:
        lines.append(tr("{share} is shown", share=share(pair.among_all[i], locale)))
    if pair.low:
        low, high = share(pair.low[i], locale), share(pair.high[i], locale)
        lines.append(
            tr(
                "by the interval of the scatter: {low} to {high}",
                low=low.removesuffix(" %"),
                high=high,
            )
        )
    if so_far >= 2 and n == so_far:
        lines.append(tr("as many as there are"))
    return tuple(lines)


def _facts(found: Repeats, pair: PairRepeats, locale: NumberLocale) -> tuple[str, ...]:
    """The curves in numbers, and the floors."""
    facts = [
        tr("{count:run|runs} of each: {share}", count=n, share=share(value, locale))
        for n, value in zip(pair.runs, pair.among_all, strict=True)
    ]
    facts.append(tr("hidden by a meter for each: {share}", share=share(pair.floor_apart, locale)))
    facts.append(tr("hidden by one meter for both: {share}", share=share(pair.floor_together, locale)))
    facts.append(tr("hidden by the meters as planned: {share}", share=share(pair.floor, locale)))
    return tuple(facts)
