"""How it was found how many repeats a planned test needs, what its runs would show, and what meters hide."""

import math

from attrs import evolve

from core.formatting import POINT, NumberLocale, number
from core.found import budgets
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import otherwise
from core.language import mark, tr
from core.plan.power import NORMAL_POWER
from core.plan.repeats import PairRepeats, Repeats, repeats
from core.plan.words import share
from core.results.values import Comparison
from core.stats import ALPHA
from core.study import Study

_TOPIC = "interval"
#: numbers of runs whose difference is written out
_MOST_TOLD = 8
_METHOD = (
    mark(
        "A difference counts as shown where two tests say so: that of the repeats alone, and that of the "
        "ratio with what the meters leave open, adjusted for the number of pairs."
    ),
    mark("Told is what is shown four times in five, over the spreads that runs happen to show."),
    mark("More runs lessen what differs from run to run; what the meters leave open stays."),
)


def repeats_found(
    found: Repeats, study: Study, comparison: Comparison | None, locale: NumberLocale = POINT
) -> Explanation | None:
    """What stands behind the number of repeats; None with fewer than two machines.

    Parameters
    ----------
    found : Repeats
    study : Study
        The one whose plan it is.
    comparison : Comparison or None
    locale : NumberLocale
    """
    pair = found.pair
    if pair is None:
        return None
    lines = _budget(found, pair, locale)
    return Explanation(
        title=tr("{name} and {name_2}: how many repeats", name=pair.first.name, name_2=pair.other.name),
        value_text=_more(pair, found, locale),
        topic=_TOPIC,
        method=tuple(tr(words) for words in _METHOD),
        formula=(*_spread(found, locale), *_shown(pair, locale), *_floors(pair, locale)),
        sources=tuple(
            SourceLine(
                tr(
                    "{name}: {runs:run|runs}, scatter {spread}",
                    name=m.name,
                    runs=m.runs,
                    spread=tr("not known") if m.spread is None else share(m.spread, locale),
                )
            )
            for m in found.machines
        ),
        budget=lines,
        without_budget="" if lines else tr("So few runs leave nothing to be told apart."),
        sensitivity=_otherwise(found, study, comparison, locale),
        surer=(tr("Repeat each machine: the scatter is known the better the more runs there are."),),
        cautions=(tr("It takes the scatter so far for that of the runs to come."),),
    )


def _more(pair: PairRepeats, found: Repeats, locale: NumberLocale) -> str:
    wanted = share(found.difference, locale)
    if pair.more is None:
        return tr("no number of runs shows {wanted}", wanted=wanted)
    return tr("{count:more run|more runs} of each for {wanted}", count=pair.more, wanted=wanted)


def _spread(found: Repeats, locale: NumberLocale) -> tuple[str, ...]:
    told = share(found.spread, locale)
    if found.is_stated:
        return (tr("scatter, as you stated it: {spread}", spread=told),)
    if found.is_assumed:
        return (tr("scatter, assumed: {spread}", spread=told),)
    known = [m for m in found.machines if m.spread is not None]
    terms = " + ".join(f"{m.runs - 1} × {number(100 * (m.spread or 0.0), 2, locale)}²" for m in known)
    return (f"√(({terms}) ÷ {found.spread_df}) = {told}",)


def _shown(pair: PairRepeats, locale: NumberLocale) -> tuple[str, ...]:
    told = [
        tr("{count:run|runs} of each: {difference}", count=n, difference=share(value, locale))
        for n, value in zip(pair.runs, pair.among_all, strict=True)
    ][:_MOST_TOLD]
    lines = [tr("smallest difference shown: {each}", each="; ".join(told))]
    if pair.now is not None:
        lines.append(tr("by the runs so far: {difference}", difference=share(pair.now, locale)))
    if pair.planned is not None:
        lines.append(tr("with those of the plan: {difference}", difference=share(pair.planned, locale)))
    return tuple(lines)


def _floors(pair: PairRepeats, locale: NumberLocale) -> tuple[str, ...]:
    return (
        tr(
            "hidden by the meters: {planned} as planned, {apart} with a meter for each, {together} with one "
            "for both",
            planned=share(pair.floor, locale),
            apart=share(pair.floor_apart, locale),
            together=share(pair.floor_together, locale),
        ),
    )


def _budget(found: Repeats, pair: PairRepeats, locale: NumberLocale) -> tuple[BudgetLine, ...]:
    """What the ratio of the two is unsure by after the runs of the plan: repeats, and meters.

    The smallest difference shown is some multiple of it, the floor that of the meters' part alone.
    """
    from scipy.special import ndtri

    pairs = max(len(found.machines) * (len(found.machines) - 1) // 2, 1)
    times = float(-ndtri(ALPHA / 2 / pairs)) + NORMAL_POWER
    runs = [m.runs + m.planned_runs for m in (pair.first, pair.other)]
    if min(runs) < 1:
        return ()
    spreads = [
        found.spread if m.spread is None or found.is_stated else m.spread for m in (pair.first, pair.other)
    ]
    by_runs = math.hypot(*(s / math.sqrt(n) for s, n in zip(spreads, runs, strict=True)))
    parts = [
        (
            "repeats",
            100 * by_runs,
            "",
            tr("scatter from run to run, over the root of the runs so far and planned"),
        ),
        (
            mark("meters"),
            100 * pair.floor / times,
            tr("both machines as far as they share a meter"),
            tr("gains and offsets of the meters as planned"),
        ),
    ]
    return budgets.made([part for part in parts if part[1] > 0], locale, "%")


def _otherwise(
    found: Repeats, study: Study, comparison: Comparison | None, locale: NumberLocale
) -> tuple[str, ...]:
    """The number of runs worked out again for other differences and scatters."""
    assert found.pair is not None
    ids = found.pair.first.machine_id, found.pair.other.machine_id
    wanted, scatter = 100 * found.difference, 100 * found.spread
    tried = [
        (
            tr("If {percents} % were to be shown", percents=number(percents, 1, locale)),
            evolve(study.plan, difference_percent=percents),
        )
        for percents in (wanted / 2, wanted * 2)
    ]
    tried += [
        (
            tr("If runs scattered by {percents} %", percents=number(percents, 1, locale)),
            evolve(study.plan, spread_percent=percents),
        )
        for percents in (scatter / 2, scatter * 2)
        if percents > 0
    ]
    told = []
    for what, plan in tried:
        then = repeats(evolve(study, plan=plan), comparison, ids).pair
        if then is None:
            continue
        if then.more is None:
            told.append(f"{what}: {tr('no number of runs shows it')}")
        elif found.pair.more is None:
            told.append(f"{what}: {tr('{count:more run|more runs} of each', count=then.more)}")
        else:
            told.append(otherwise(what, float(then.more - found.pair.more), tr("runs of each"), locale))
    return tuple(told)
