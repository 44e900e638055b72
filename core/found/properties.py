"""How it was found whether a measure goes with a property: ranks, groups, the count of orders."""

import math

from core.formatting import POINT, NumberLocale, number, p_text
from core.found.values import Explanation, SourceLine
from core.found.writing import figures
from core.language import tr
from core.properties.rank_correlation import RankCorrelation, group_difference, spearman
from core.properties.table import written
from core.results.properties import FEWEST, Against, Point
from core.results.property_answer import CAUTION, headline, mean_text, measured_text, value_text
from core.stats import ALPHA

_TOPIC = "properties"
#: machines that are tried without, those that matter most
MOST_WITHOUT = 3


def property_found(found: Against, locale: NumberLocale = POINT) -> Explanation:
    """What stands behind a measure held against a property.

    Parameters
    ----------
    found : Against
    locale : NumberLocale

    Returns
    -------
    Explanation
    """
    return Explanation(
        title=tr("{name} against {title}", name=found.quantity.name, title=found.column.title),
        value_text=_value(found, locale),
        topic=_TOPIC,
        method=(headline(found, locale), *_method(found)),
        formula=_formula(found, locale),
        sources=tuple(
            SourceLine(
                f"{p.name}: {value_text(p, found.column, locale)}, "
                f"{measured_text(p, found.quantity, locale)}",
                p.run_id,
            )
            for p in found.points
        ),
        without_budget=tr(
            "A p has no interval: it is a count of the orders, or divisions, that machines could have had."
        ),
        sensitivity=_without(found, locale),
        surer=_surer(found),
        cautions=(f"{tr(CAUTION)}.", *_left(found)),
    )


def _without(found: Against, locale: NumberLocale) -> tuple[str, ...]:
    """What would be shown without each of the machines, tested again; those that matter most first."""
    base = found.p
    told = []
    for left in found.points if len(found.points) > FEWEST else ():
        rest = [p for p in found.points if p is not left]
        then = _tested_again(rest, found, locale)
        if then is not None:
            p, text = then
            moved = abs(p - base) if base is not None else 0.0
            told.append((moved, f"{tr('Without {name}', name=left.name)}: {text}"))
    told.sort(key=lambda line: -line[0])
    lines = tuple(text for _, text in told[:MOST_WITHOUT])
    return lines or (tr("With one machine less there would be too few to show anything."),)


def _tested_again(points: list[Point], found: Against, locale: NumberLocale) -> tuple[float, str] | None:
    measured = [p.measured.value for p in points]
    if found.column.kind == "number":
        rank = spearman([float(p.value) for p in points], measured)
        if rank is None:
            return None
        return rank.p, tr(
            "rank correlation {rho}, {p}", rho=number(rank.rho, 2, locale), p=p_text(rank.p, locale)
        )
    groups: dict[str, list[float]] = {}
    for point, value in zip(points, measured, strict=True):
        groups.setdefault(written(point.value).casefold(), []).append(value)
    if len(groups) != 2:
        return None
    contrast = group_difference(*groups.values())
    return None if contrast is None else (contrast.p, p_text(contrast.p, locale))


def _value(found: Against, locale: NumberLocale) -> str:
    if len(found.points) < FEWEST:
        return tr("too few machines")
    if found.rank is not None:
        return tr(
            "rank correlation {rho}, {p}",
            rho=number(found.rank.rho, 2, locale),
            p=p_text(found.rank.p, locale),
        )
    return tr("not tested") if found.contrast is None else p_text(found.contrast.p, locale)


def _method(found: Against) -> tuple[str, ...]:
    each = tr("A machine counts once, with the mean of its runs that count.")
    if found.column.kind == "number":
        ranked = tr(
            "Machines are ranked by the property and by the measure; equal ones share the mean of theirs."
        )
        if found.rank is not None and not found.rank.is_exact:
            return each, ranked, tr("With so many machines p comes from Student's t.")
        counted = tr(
            "p is the share of all orders of the machines whose ranks agree, or disagree, as much or more."
        )
        return each, ranked, counted
    interval = tr(
        "A group's interval is that of the mean of its machines by Student's t; one machine has none."
    )
    if found.contrast is None:
        return each, interval
    ways = tr(
        "p is the share of all ways to divide the machines into such groups whose means lie as far apart "
        "or farther."
    )
    return each, interval, ways


def _formula(found: Against, locale: NumberLocale) -> tuple[str, ...]:
    lines: list[str] = []
    if found.rank is not None and len(found.points) >= FEWEST:
        lines = _of_ranks(found, found.rank, locale)
    for group in found.groups:
        members = " + ".join(
            figures(p.measured.value * found.quantity.factor, locale=locale) for p in group.points
        )
        n = len(group.points)
        mean = mean_text(group, found.quantity, locale)
        lines.append(f"{group.title}: ({members}) / {n} = {mean}" if n > 1 else f"{group.title}: {mean}")
    if found.contrast is not None and len(found.points) >= FEWEST:
        ways = found.contrast.ways
        far, p = round(found.contrast.p * ways), p_text(found.contrast.p, locale)
        lines.append(tr("{far} of {ways} divisions lie as far apart: {p}", far=far, ways=ways, p=p))
    return tuple(lines)


def _of_ranks(found: Against, rank: RankCorrelation, locale: NumberLocale) -> list[str]:
    def r(value: float) -> str:
        return number(value, 1 if value % 1 else 0, locale)

    lines = [
        tr("{name}: ranks {a} and {b}", name=p.name, a=r(a), b=r(b))
        for p, a, b in zip(found.points, rank.ranks, rank.other_ranks, strict=True)
    ]
    squared = math.fsum((a - b) ** 2 for a, b in zip(rank.ranks, rank.other_ranks, strict=True))
    n = rank.n
    if len(set(rank.ranks)) == n == len(set(rank.other_ranks)):
        bottom = n * (n * n - 1)
        lines.append(
            tr(
                "rank correlation = 1 − 6 × {squared} / {bottom} = {rho}",
                squared=r(squared),
                bottom=bottom,
                rho=number(rank.rho, 3, locale),
            )
        )
    else:
        lines.append(tr("correlation of the ranks = {rho}", rho=number(rank.rho, 3, locale)))
    if rank.is_exact:
        orders = math.factorial(n)
        lines.append(
            tr(
                "{count} of {orders} orders go as far: {p}",
                count=round(rank.p * orders),
                orders=orders,
                p=p_text(rank.p, locale),
            )
        )
    return lines


def _surer(found: Against) -> tuple[str, ...]:
    test = found.rank or found.contrast
    wishes = []
    if test is not None and test.least_p >= ALPHA:
        if found.rank is not None:
            wishes.append(tr("More machines: with these no order at all could show a link."))
        else:
            wishes.append(tr("More machines: with these no division into groups at all could show a link."))
    lacking = len(found.no_property) + len(found.no_value)
    if lacking:
        wishes.append(
            tr(
                "Note the property, or measure, on {lacking:more machine|more machines} that is "
                "left out now.",
                lacking=lacking,
            )
        )
    wishes.append(tr("Change the one property on one machine and measure again: only that shows a cause."))
    return tuple(wishes)


def _left(found: Against) -> tuple[str, ...]:
    notes = [
        tr("Ranks take the means as they are: machines whose intervals overlap may belong in another order.")
    ]
    notes += [tr("{name}: the property is not noted.", name=name) for name in found.no_property]
    notes += [tr("{name}: the measure has no value.", name=name) for name in found.no_value]
    return tuple(notes)
