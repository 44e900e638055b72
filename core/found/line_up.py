"""How the readings of runs lined up were found: a span of them, and what the sentence on top says of two."""

import math
from collections.abc import Sequence

from core.formatting import POINT, NumberLocale, duration, number, percent, with_interval
from core.found import budgets
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, otherwise, too_high
from core.language import tr
from core.line_up.answer import span_told
from core.line_up.headline import headline
from core.line_up.phases import Phases, phases
from core.line_up.spans import SpanReading, as_power, energy_within, read_span
from core.line_up.strands import Anchor, Strand, by_machine
from core.quantities import ENERGY, MEAN_W
from core.results.values import Comparison, Energy
from core.study import Study
from core.units import SECONDS_PER_HOUR

TOPIC = "mean-watts"
POWER, WH, SHARE, MINUTES = "mean_w", "energy_wh", "share", "minutes"
#: runs that are tried without
_MOST_WITHOUT = 3


def span_found(
    given: Sequence[Strand],
    anchor: Anchor,
    span: tuple[float, float],
    reading: SpanReading,
    key: str,
    study: Study,
    locale: NumberLocale = POINT,
) -> Explanation:
    """What stands behind one number of a marked span.

    Parameters
    ----------
    given : sequence of Strand
        All that are shown.
    anchor : Anchor
    span : tuple of float
        On the common axis.
    reading : SpanReading
        Of these strands, within the span.
    key : str
        `POWER`, `WH`, `SHARE` or `MINUTES`.
    study : Study
    locale : NumberLocale
    """
    members = [s for s in given if s.machine_id == reading.machine_id]
    if reading.run_id:
        members = [s for s in members if s.run_id == reading.run_id]
    parts = {r.run_id: r for r in read_span(members, anchor, *span) if r.run_id and r.energy_wh is not None}
    used = [s for s in members if s.run_id in parts]
    value, unit = _value(reading, key)
    lines = () if key == MINUTES else _budget(used, parts, anchor, span, key, study, locale)
    u95 = {POWER: reading.power_w, WH: reading.energy_wh}.get(key)
    half = None if u95 is None else u95.u95
    who = f"{reading.machine}, {reading.name}" if reading.run_id else reading.machine
    told = span_told(*span, anchor, locale)
    return Explanation(
        title=tr("{who}: {what} within {span}", who=who, what=_called(key), span=told),
        value_text=_told(reading, key, locale),
        topic=TOPIC,
        method=(
            tr("What the log says between the two ends of the span, on each run's own clock."),
            *(() if reading.run_id else (tr("Mean of the runs that reach into the span."),)),
        ),
        formula=(*_formula(reading, parts, key, locale), *budgets.combined(lines, half, locale, unit)),
        sources=tuple(_source(s, parts[s.run_id], key, locale) for s in used),
        budget=lines,
        without_budget=tr("It is a time between two marks, told as they were set.") if key == MINUTES else "",
        sensitivity=_moved(members, anchor, span, reading, key, value, unit, locale),
    )


def _called(key: str) -> str:
    return {
        POWER: tr("mean power"),
        WH: tr("energy"),
        SHARE: tr("share of the run"),
        MINUTES: tr("time read"),
    }[key]


def _value(reading: SpanReading, key: str) -> tuple[float, str]:
    """The number in the unit that it is shown in; not a number where the run is not there."""
    if key == POWER:
        return (math.nan if reading.power_w is None else reading.power_w.value), "W"
    if key == WH:
        return (math.nan if reading.energy_wh is None else reading.energy_wh.value), "Wh"
    if key == SHARE:
        return (math.nan if reading.share is None else 100 * reading.share), "%"
    return reading.seconds / 60, "min"


def _told(reading: SpanReading, key: str, locale: NumberLocale) -> str:
    if reading.power_w is None or reading.energy_wh is None or reading.share is None:
        return tr("not there")
    if key == POWER:
        return f"{with_interval(reading.power_w.value, reading.power_w.u95, MEAN_W, locale)} W"
    if key == WH:
        return f"{with_interval(reading.energy_wh.value, reading.energy_wh.u95, ENERGY, locale)} Wh"
    if key == SHARE:
        return percent(reading.share, 1, locale)
    return tr("{minutes} min", minutes=number(reading.seconds / 60, 1, locale))


def _formula(
    reading: SpanReading, parts: dict[str, SpanReading], key: str, locale: NumberLocale
) -> tuple[str, ...]:
    values = [_value(part, key)[0] for part in parts.values()]
    value, unit = _value(reading, key)
    if len(values) > 1 and key != SHARE:
        terms = " + ".join(figures(v, locale=locale) for v in values[:8]) + (" + …" if values[8:] else "")
        return (f"({terms}) ÷ {len(values)} = {figures(value, locale=locale)} {unit}",)
    energy_wh = math.nan if reading.energy_wh is None else reading.energy_wh.value
    if key == SHARE and reading.share:
        whole = figures(energy_wh / reading.share, locale=locale)
        return (f"{figures(energy_wh, locale=locale)} Wh / {whole} Wh = {percent(reading.share, 1, locale)}",)
    if key == POWER:
        hours = figures(reading.seconds / SECONDS_PER_HOUR, locale=locale)
        return (f"{figures(energy_wh, locale=locale)} Wh / {hours} h = {figures(value, locale=locale)} W",)
    return (f"{figures(value, locale=locale)} {unit}",)


def _budget(
    used: Sequence[Strand],
    parts: dict[str, SpanReading],
    anchor: Anchor,
    span: tuple[float, float],
    key: str,
    study: Study,
    locale: NumberLocale,
) -> tuple[BudgetLine, ...]:
    energies = [e for s in used for e in [_energy(s, parts[s.run_id], anchor, span, key)] if e is not None]
    if not energies:
        return ()
    from core.uncertainty import mean_of

    influences = mean_of(energies).influences if len(energies) > 1 else energies[0].influences
    factor, unit = 1.0, {POWER: "W", WH: "Wh"}.get(key, "%")
    if key == SHARE:
        whole = math.fsum(s.energy_wh for s in used) / len(used)
        factor = 100 / whole if whole > 0 else 0.0
    return budgets.lines(influences, study, locale, factor=factor, unit=unit)


def _energy(
    strand: Strand, part: SpanReading, anchor: Anchor, span: tuple[float, float], key: str
) -> Energy | None:
    import numpy as np

    from_s, to_s = (float(v) for v in strand.moment_s(np.array(sorted(span)), anchor))
    from_s, to_s = max(from_s, strand.start_s), min(to_s, strand.end_s)
    if to_s <= from_s or part.seconds <= 0:
        return None
    used = energy_within(strand.trace, from_s, to_s, strand.meter)
    return as_power(used, part.seconds) if key == POWER else used


def _source(strand: Strand, part: SpanReading, key: str, locale: NumberLocale) -> SourceLine:
    return SourceLine(f"{strand.machine}, {strand.name}: {_told(part, key, locale)}", strand.run_id)


def _moved(
    members: Sequence[Strand],
    anchor: Anchor,
    span: tuple[float, float],
    reading: SpanReading,
    key: str,
    value: float,
    unit: str,
    locale: NumberLocale,
) -> tuple[str, ...]:
    """The number read again in a span that ends later or begins later, and without single runs."""
    low, high = sorted(span)
    by, told = (0.01, tr("by 1 % of the run")) if anchor == "share of duration" else (30.0, duration(30.0))
    lines = []
    for what, then in (
        (tr("If the span ended later ({by})", by=told), (low, high + by)),
        (tr("If the span began later ({by})", by=told), (low + by, high)),
    ):
        if then[1] > then[0]:
            again = next((r for r in read_span(members, anchor, *then) if r.run_id == reading.run_id), None)
            if again is not None and again.energy_wh is not None:
                lines.append(otherwise(what, _value(again, key)[0] - value, unit, locale))
    if key in (POWER, WH):
        lines.append(too_high(value, unit, locale))
    if not reading.run_id and len(members) > 2:
        tried = []
        for left in members:
            rest = [s for s in members if s is not left]
            again = next((r for r in read_span(rest, anchor, low, high) if not r.run_id), None)
            if again is not None and again.energy_wh is not None:
                change = _value(again, key)[0] - value
                tried.append(
                    (abs(change), otherwise(tr("Without {name}", name=left.name), change, unit, locale))
                )
        lines += [text for _, text in sorted(tried, key=lambda t: -t[0])[:_MOST_WITHOUT]]
    return tuple(lines)


def phases_found(
    given: Sequence[Strand], comparison: Comparison, study: Study, locale: NumberLocale = POINT
) -> Explanation | None:
    """What stands behind the sentence on top: warm-up and processing of the machines it names.

    Parameters
    ----------
    given : sequence of Strand
        Those that count of what is shown, or all where none counts.
    comparison : Comparison
    study : Study
    locale : NumberLocale

    Returns
    -------
    Explanation or None
        None where no run gets through its warm-up.
    """
    grouped = [
        (members, p) for members in by_machine(given).values() for p in [phases(members)] if p is not None
    ]
    if not grouped:
        return None
    least, most = min(grouped, key=lambda g: g[1].energy_wh), max(grouped, key=lambda g: g[1].energy_wh)
    apart_wh = most[1].energy_wh - least[1].energy_wh
    two = [most] if len(grouped) == 1 else [most, least]
    lines = _of_phases(two, study, locale)
    title = (
        tr("{name}: warm-up and after it", name=most[1].machine)
        if len(two) == 1
        else tr(
            "{name} against {name_2}: warm-up and after it", name=most[1].machine, name_2=least[1].machine
        )
    )
    shown = f"{with_interval(most[1].after_w.value, most[1].after_w.u95, MEAN_W, locale)} W"
    if len(two) > 1:
        other = f"{with_interval(least[1].after_w.value, least[1].after_w.u95, MEAN_W, locale)} W"
        shown = tr(
            "{watts} against {other_watts}; {apart} Wh apart",
            watts=shown,
            other_watts=other,
            apart=number(apart_wh, 1, locale),
        )
    return Explanation(
        title=title,
        value_text=shown,
        topic=TOPIC,
        method=(
            headline(given, comparison, locale),
            tr("Each run is cut where its warm-up ends; both parts are means over the runs of a machine."),
        ),
        formula=tuple(_phase_line(p, locale) for _, p in two),
        sources=tuple(
            SourceLine(
                f"{s.machine}, {s.name}: {figures(s.energy_wh, locale=locale)} Wh, {duration(s.seconds)}",
                s.run_id,
            )
            for members, _ in two
            for s in members
        ),
        budget=lines,
        sensitivity=_phases_without(two, locale),
    )


def _phase_line(p: Phases, locale: NumberLocale) -> str:
    return tr(
        "{name}: {warm} Wh in {warm_time} of warm-up, then {watts} W × {hours} h = {after} Wh; together "
        "{all} Wh",
        name=p.machine,
        warm=figures(p.warm_wh, locale=locale),
        warm_time=duration(p.warm_s),
        watts=figures(p.after_wh * SECONDS_PER_HOUR / p.after_s if p.after_s else 0.0, locale=locale),
        hours=figures(p.after_s / SECONDS_PER_HOUR, locale=locale),
        after=figures(p.after_wh, locale=locale),
        all=figures(p.energy_wh, locale=locale),
    )


def _of_phases(
    two: Sequence[tuple[Sequence[Strand], Phases]], study: Study, locale: NumberLocale
) -> tuple[BudgetLine, ...]:
    """What makes the mean watts after warm-up of each machine unsure."""
    from core.uncertainty import mean_of

    parts = []
    for members, p in two:
        whole = [s for s in members if s.end_s > s.warm_s]
        after = [
            as_power(energy_within(s.trace, s.warm_s, s.end_s, s.meter), s.end_s - s.warm_s) for s in whole
        ]
        for line in budgets.lines(mean_of(after).influences, study, locale, unit="W"):
            name = line.title if len(two) == 1 else f"{line.title}, {p.machine}"
            parts.append((name, line.u, line.shared_with, line.why))
    return budgets.made(parts, locale, "W")


def _phases_without(two: Sequence[tuple[Sequence[Strand], Phases]], locale: NumberLocale) -> tuple[str, ...]:
    """Mean watts after warm-up without single runs, and with every run ending later."""
    from attrs import evolve

    lines = []
    for members, p in two:
        tried = []
        for left in members if len(members) > 1 else ():
            then = phases([s for s in members if s is not left])
            if then is not None:
                change = then.after_w.value - p.after_w.value
                what = tr("Without {name}", name=f"{left.machine}, {left.name}")
                tried.append((abs(change), otherwise(what, change, "W", locale)))
        lines += [text for _, text in sorted(tried, key=lambda t: -t[0])[:2]]
        later = phases([evolve(s, warm_s=s.warm_s + 30.0) for s in members if s.warm_s + 30.0 < s.end_s])
        if later is not None:
            what = tr("If the warm-up of {machine} ended 30 s later", machine=p.machine)
            lines.append(otherwise(what, later.after_w.value - p.after_w.value, "W", locale))
    return tuple(lines)
