"""A measure against a property in words: what the machines show, how sure, and what it does not mean."""

from collections.abc import Sequence

from core.beds.area import is_bed_area
from core.formatting import (
    PLUS_MINUS,
    POINT,
    UNKNOWN,
    NumberLocale,
    capitalised,
    listed,
    number,
    p_text,
    rounded,
    with_interval,
    with_unit,
)
from core.language import WRITTEN_IN, mark, spoken, tr
from core.properties.table import Column, written
from core.quantities import Quantity
from core.results.properties import BED_W_PER_DM2, FEWEST, Against, Group, Point
from core.stats import ALPHA
from core.study import Study
from core.tables import Cell, Table
from core.tables import Column as TableColumn

#: of so many groups the means are told in the sentence on top
_MOST_TOLD = 3
#: and of so many machines that are left out the names
_MOST_LEFT = 4
HOW_TO = mark(
    "Write into the table below what you know of the machines: in a cell, or paste cells copied from a "
    "spreadsheet. Columns of your own can be added: age, enclosure, motion system, noise."
)
CAUTION = mark(
    "Machines differ in many things at once: this shows no cause, "
    "and of many properties tried one fits by chance"
)


def headline(found: Against, locale: NumberLocale = POINT) -> str:
    """What the machines show of the two, in one sentence."""
    measure, title = found.quantity.name, found.column.title
    n = len(found.points)
    if n == 0:
        return tr(
            "No machine has both a value of {measure} and of {property}.",
            measure=_low(measure),
            property=_low(title),
        )
    if n < FEWEST:
        return tr(
            "{count:machine|machines} {count:~has|have} both {measure} and {property}: "
            "too few to show a link.",
            count=n,
            measure=_low(measure),
            property=_low(title),
        )
    if found.column.kind == "number":
        return _of_numbers(found, locale)
    return _of_groups(found, locale)


def conditions(found: Against, study: Study, locale: NumberLocale = POINT) -> str:
    """The line under it: how it was tested, who is left out, and that it shows no cause."""
    parts = [_test(found, locale)] if len(found.points) >= FEWEST else []
    if found.no_property:
        parts.append(
            tr(
                "{property} not noted: {machines}",
                property=_low(found.column.title),
                machines=_few(found.no_property),
            )
        )
    if found.no_value:
        parts.append(
            tr(
                "no value of {measure}: {machines}",
                measure=_low(found.quantity.name),
                machines=_few(found.no_value),
            )
        )
    if found.quantity == BED_W_PER_DM2 and is_bed_area(found.column.name):
        parts.append(tr("watts per area are divided by the area, which alone makes them fall with it"))
    if study.invented:
        parts.append(tr("invented data"))
    if found.points:
        parts.append(tr(CAUTION))
    said = [capitalised(part) for part in parts if part]
    return f"{'. '.join(said)}." if said else ""


def mean_text(group: Group, quantity: Quantity, locale: NumberLocale = POINT) -> str:
    """The mean of a group with its interval and unit; the mean keeps its digits, however wide it is."""
    text = with_interval(group.mean, None, quantity, locale)
    if group.u95 is not None:
        u95 = rounded(group.u95 * quantity.factor, group.u95 * quantity.factor, 0)
        text += f" {PLUS_MINUS} {number(u95.value, max(0, u95.decimals), locale)}"
    return with_unit(text, quantity)


def _mean(group: Group, quantity: Quantity, locale: NumberLocale) -> str:
    return with_unit(with_interval(group.mean, None, quantity, locale), quantity)


def measured_text(point: Point, quantity: Quantity, locale: NumberLocale = POINT) -> str:
    """A machine's value with its interval and unit."""
    return with_unit(with_interval(point.measured.value, point.measured.u95, quantity, locale), quantity)


def value_text(point: Point, column: Column, locale: NumberLocale = POINT) -> str:
    """A machine's property with its unit."""
    text = written(point.value, locale)
    return f"{text} {column.unit}" if column.unit else text


def point_readout(found: Against, run_id: str, locale: NumberLocale = POINT) -> tuple[str, ...]:
    """What is read out at a machine's point, as lines; empty where there is none."""
    point = next((p for p in found.points if p.run_id == run_id), None)
    if point is None:
        return ()
    lines = [
        point.name,
        f"{found.quantity.name}: {measured_text(point, found.quantity, locale)}",
        f"{found.column.title}: {value_text(point, found.column, locale)}",
    ]
    if found.rank is not None:
        place = found.points.index(point)
        ranks = (found.rank.ranks[place], found.rank.other_ranks[place])
        across, up = (number(r, 1 if r % 1 else 0, locale) for r in ranks)
        lines.append(
            tr("rank {across} across, {up} up, of {count}", across=across, up=up, count=len(found.points))
        )
    return tuple(lines)


def against_table(found: Against, locale: NumberLocale = POINT) -> Table:
    """One row a machine: its property and its value."""
    unit = f" [{found.quantity.unit}]" if found.quantity.unit else ""
    columns = (
        TableColumn("machine", tr("Machine"), "left"),
        TableColumn("property", found.column.heading, "right" if found.column.kind == "number" else "left"),
        TableColumn("value", f"{found.quantity.name}{unit}"),
    )
    rows: list[tuple[Cell, ...]] = [
        (
            p.name,
            written(p.value, locale),
            with_interval(p.measured.value, p.measured.u95, found.quantity, locale),
        )
        for p in found.points
    ]
    rows += [(name, UNKNOWN, UNKNOWN) for name in (*found.no_property, *found.no_value)]
    return Table(
        tr("{measure} and {property}", measure=found.quantity.name, property=_low(found.column.title)),
        columns,
        tuple(rows),
    )


def _of_numbers(found: Against, locale: NumberLocale) -> str:
    measure, title, n = found.quantity.name, _low(found.column.title), len(found.points)
    rank = found.rank
    if rank is None:
        if len({p.value for p in found.points}) == 1:
            return tr(
                "All {count} machines have the same {property}: it cannot tell why they differ.",
                count=n,
                property=title,
            )
        return tr(
            "All {count} machines have the same {measure}: there is no difference to explain.",
            count=n,
            measure=_low(measure),
        )
    told = tr(
        "rank correlation {rho}, {p}, {count} machines",
        rho=_signed(rank.rho, locale),
        p=p_text(rank.p, locale),
        count=n,
    )
    if found.is_shown:
        facts = {"measure": measure, "property": title, "told": told}
        if rank.rho > 0:
            return tr("{measure} rises with {property} ({told}).", **facts)
        return tr("{measure} falls with {property} ({told}).", **facts)
    if rank.least_p >= ALPHA:
        return tr(
            "{count} machines cannot show a link between {measure} and {property}: "
            "even in perfect order p would be {p}.",
            count=n,
            measure=_low(measure),
            property=title,
            p=number(rank.least_p, 2, locale),
        )
    return tr(
        "No link shown between {measure} and {property} ({told}).",
        measure=_low(measure),
        property=title,
        told=told,
    )


def _of_groups(found: Against, locale: NumberLocale) -> str:
    measure, title, n = found.quantity.name, _low(found.column.title), len(found.points)
    if len(found.groups) == 1:
        return tr(
            "All {count} machines have the same {property} ({value}): it cannot tell why they differ.",
            count=n,
            property=title,
            value=found.groups[0].title,
        )
    if all(len(g.points) == 1 for g in found.groups):
        return tr(
            "Each of the {count} machines has a {property} of its own: groups need two machines or more.",
            count=n,
            property=title,
        )
    if len(found.groups) > _MOST_TOLD:
        low, high = found.groups[0], found.groups[-1]
        return tr(
            "{measure} by {property}: from {low} ({low_group}) to {high} ({high_group}), {count} groups.",
            measure=measure,
            property=title,
            low=_mean(low, found.quantity, locale),
            low_group=low.title,
            high=_mean(high, found.quantity, locale),
            high_group=high.title,
            count=len(found.groups),
        )
    told = listed(
        [
            tr(
                "{group} {mean} ({count:machine|machines})",
                group=g.title,
                mean=_mean(g, found.quantity, locale),
                count=len(g.points),
            )
            for g in found.groups
        ]
    )
    test = found.contrast
    if test is None:
        return tr("{measure} by {property}: {told}.", measure=measure, property=title, told=told)
    if found.is_shown:
        low, high = found.groups
        return tr(
            "{measure} is lower with {property} {low_group} than with {high_group}: {told}; {p}.",
            measure=measure,
            property=title,
            low_group=low.title,
            high_group=high.title,
            told=told,
            p=p_text(test.p, locale),
        )
    if test.least_p >= ALPHA:
        return tr(
            "{measure} by {property}: {told}; with groups so small no difference could be shown "
            "(p is {p} at best).",
            measure=measure,
            property=title,
            told=told,
            p=number(test.least_p, 2, locale),
        )
    return tr(
        "No difference shown by {property}: {told}; {p}.",
        property=title,
        told=told,
        p=p_text(test.p, locale),
    )


def _test(found: Against, locale: NumberLocale) -> str:
    n = len(found.points)
    if found.rank is not None and found.rank.is_exact:
        return tr("Spearman's rank correlation, p by all orders of {count} machines", count=n)
    if found.rank is not None:
        return tr(
            "Spearman's rank correlation, p by Student's t with {count} degrees of freedom", count=n - 2
        )
    if found.contrast is not None:
        ways = number(found.contrast.ways, 0, locale)
        return tr(
            "Difference of the two means, p by all {ways} ways to divide {count} machines so",
            ways=ways,
            count=n,
        )
    return ""


def _signed(rho: float, locale: NumberLocale) -> str:
    return ("+" if rho > 0 else "") + number(rounded(rho, None, 2).value, 2, locale)


def _few(names: Sequence[str]) -> str:
    return listed(list(names)) if len(names) <= _MOST_LEFT else tr("{count} machines", count=len(names))


def _low(text: str) -> str:
    """A title inside a sentence: a word of capitals keeps them, and so does another language."""
    if spoken() != WRITTEN_IN:
        return text
    return text if len(text) > 1 and text[1].isupper() else text[:1].lower() + text[1:]
