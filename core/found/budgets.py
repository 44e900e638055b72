"""Uncertainty budgets in words: each line named, sized, and told what errs together with it."""

import math
from collections.abc import Sequence

from core.formatting import NumberLocale, number, percent
from core.found.values import BudgetLine
from core.found.writing import figures
from core.language import mark, tr
from core.results.checked_logs import factor_of
from core.results.values import Influence
from core.study import Study

#: what each influence is, in plain words
WHY: dict[str, str] = {
    mark("meter gain"): mark("the meter reads a little high or low, by the same percentage always"),
    mark("meter offset"): mark("the meter reads a few tenths of a watt too much or too little at any load"),
    mark("sampling"): mark(
        "between two readings nobody looked: a heater may have been on for longer or shorter"
    ),
    mark("unseen heater"): mark(
        "a heater may switch in step with the readings, so that all miss it or all meet it"
    ),
    mark("readings in step"): mark(
        "the readings keep step with the heater and meet it at the same few moments of its cycle"
    ),
    mark("boundary"): mark("the run begins and ends somewhere between two readings"),
    mark("resolution"): mark("the meter shows power in steps"),
    mark("gaps"): mark("stretches with no readings were bridged"),
    mark("counter step"): mark("the energy counter moves in steps"),
    mark("display step"): mark("the display shows energy in steps"),
    mark("level with the heater off"): mark("how well the level between the heater's pulses is followed"),
    mark("between the pulses"): mark(
        "the machine may draw more or less while the bed heats than between its pulses"
    ),
    mark("pulsing hot end"): mark(
        "the hot end pulses too, and its rows are told from pieces of the bed's pulses"
    ),
    mark("warm-up"): mark(
        "in the warm-up the heater is never seen off, so what else was drawn then is made up"
    ),
    mark("heat of the hot end"): mark("what the hot end took to heat up is not seen apart from the bed"),
    mark("energy of the run"): mark("the energy of the whole run is itself unsure"),
    mark("two levels"): mark("no share by the heater's switching is known better than this"),
    mark("bed held"): mark(
        "how the bed in a run differs from a bed held alone, and what its meter leaves open"
    ),
    mark("baseline of the hold"): mark("what the machine drew beside the held bed"),
    mark("warm-up of the bed"): mark(
        "what the bed took while it warmed up is carried over from the hold test"
    ),
    mark("unlike length"): mark(
        "a run with the bed off does not wait for the bed, so its length is made alike"
    ),
    mark("unlike run"): mark("how a run with the bed off differs from the others in all else"),
    mark("repeats"): mark("the runs differ from one another by more than their own measurement explains"),
}
#: lines smaller than this part of the variance are not worth a bar
LEAST_SHARE = 0.0005
#: stands for the keys of meters that a same-load check has tied together
CHECKED = "checked meters"


def lines(
    influences: Sequence[Influence],
    study: Study,
    locale: NumberLocale,
    *,
    factor: float = 1.0,
    unit: str = "Wh",
) -> tuple[BudgetLine, ...]:
    """The budget of an energy, or of what is that energy times `factor`, in `unit`; largest first."""
    from core.uncertainty import budget

    groups: dict[tuple[str, str | None], list[Influence]] = {}
    for influence in influences:
        groups.setdefault((influence.name, family(influence.shared)), []).append(influence)
    parts = []
    for (name, shared), group in groups.items():
        u = math.sqrt(math.fsum(line.u_wh**2 for line in budget(group))) * factor
        parts.append((name, u, shared_with(shared, study), why(name, shared, study)))
    return made(parts, locale, unit)


def family(key: str | None) -> str | None:
    """The influences that a person takes for one: a meter's own, or those of all meters that were checked."""
    return key if key is None or ":" in key else CHECKED


def made(
    parts: Sequence[tuple[str, float, str, str]], locale: NumberLocale, unit: str
) -> tuple[BudgetLine, ...]:
    """Lines from (name, standard uncertainty, what it is shared with, why), largest first."""
    total = math.fsum(u**2 for _, u, _, _ in parts)
    if total <= 0:
        return ()
    ordered = sorted(parts, key=lambda part: -abs(part[1]))
    return tuple(
        BudgetLine(
            name, abs(u), f"{figures(abs(u), 2, locale)} {unit}".strip(), u**2 / total, shared, why_text
        )
        for name, u, shared, why_text in ordered
    )


def gain_key(meter_id: str, study: Study) -> str:
    """The key of a meter's gain: its own, or that of all meters that a same-load check has tied together."""
    return f"gain:{meter_id}" if factor_of(study, meter_id) is None else CHECKED


def by_check(meter_id: str, study: Study, locale: NumberLocale) -> tuple[str, ...]:
    """What same-load checks made of watts read with a meter, in words; nothing where none tells of it."""
    factor = factor_of(study, meter_id)
    if factor is None:
        return ()
    return (
        tr(
            "Every reading of {whose} was multiplied by {factor}, as its same-load check says, and what the "
            "check leaves open of its gain takes the place of the stated accuracy.",
            whose=study.meter(meter_id).name,
            factor=figures(factor, 5, locale),
        ),
    )


def shared_with(key: str | None, study: Study) -> str:
    """Who errs together by this key of an influence."""
    if key == CHECKED:
        return tr("every run measured with the meters that were held against each other")
    name = meter_name(key, study)
    return tr("every run measured with {name}", name=name) if name else ""


def meter_name(key: str | None, study: Study) -> str:
    """The meter of a shared influence's key; empty where the key is none of a meter's."""
    meter_id = (key or "").partition(":")[2]
    return next((m.name for m in study.meters if m.id == meter_id), "")


def why(name: str, key: str | None, study: Study) -> str:
    """What an influence is; for a meter's also how large it is taken, and whether anybody stated that."""
    text = tr(WHY[name]) if name in WHY else ""
    meter_id = (key or "").partition(":")[2]
    meter = next((m for m in study.meters if m.id == meter_id), None)
    if meter is None or name not in ("meter gain", "meter offset"):
        return text
    size = (
        tr("±{gain_percent:g} % of reading", gain_percent=meter.gain_percent)
        if name == "meter gain"
        else tr("±{offset_w:g} W", offset_w=meter.offset_w)
    )
    if meter.stated:
        return f"{text} ({size})"
    return tr("{text} ({size}, assumed: nobody stated it)", text=text, size=size)


def combined(
    budget: Sequence[BudgetLine], u95: float | None, locale: NumberLocale, unit: str
) -> tuple[str, ...]:
    """How the lines of a budget make the interval.

    The factor is what the interval was widened by: Student's t at the effective degrees of freedom.
    """
    u = math.sqrt(math.fsum(line.u**2 for line in budget))
    if u <= 0 or u95 is None:
        return ()
    biggest = [f"{figures(line.u, 2, locale)}²" for line in budget if line.share_of_variance >= LEAST_SHARE][
        :5
    ]
    rest = " + …" if len(biggest) < len(budget) else ""
    root = tr(
        "u = √({biggest}{rest}) = {u} {unit}",
        biggest=" + ".join(biggest),
        rest=rest,
        u=figures(u, 3, locale),
        unit=unit,
    ).rstrip()
    k = number(u95 / u, 2, locale)
    half = f"{figures(u95, 3, locale)} {unit}".rstrip()
    return (
        root,
        tr("95 % interval: ± {k} × {u} = ± {half}", k=k, u=figures(u, 3, locale), half=half),
    )


def described(line: BudgetLine, locale: NumberLocale) -> str:
    """One line of a budget as text."""
    said = tr(
        "{name}: {uncertainty}, {share} of the variance",
        name=line.title,
        uncertainty=line.u_text,
        share=percent(line.share_of_variance, 0, locale),
    )
    if not line.shared_with:
        return said
    return tr("{said}; the same for {others}", said=said, others=line.shared_with)
