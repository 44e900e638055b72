"""How it was found what a cooler bed saves: on one machine, as a share, in money, and on all together."""

import math
from collections.abc import Callable

from attrs import evolve

from core.beds.quantities import SAVED_SHARE, SAVED_WH
from core.formatting import POINT, NumberLocale, duration, number, percent
from core.found import budgets
from core.found.held_bed import sources_of_watts
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, otherwise, shown
from core.language import mark, tr
from core.results.bed_answer import LOOSE, money_text, saving_note, settled_text
from core.results.cooler_beds import Plan, Saving, Savings, savings
from core.results.holds import Beds, MachineBed
from core.results.values import Measured
from core.study import Study
from core.uncertainty import NORMAL_95
from core.units import SECONDS_PER_HOUR, WH_PER_KWH

_TOPIC = "bed"
WH, SHARE, MONEY = "saved_wh", "saved_percent", "saved_money"
_TAU = mark("time that the bed cools")
_UNLIKE = mark("bed held")
_BETTER = mark("Hold both temperatures for an hour, from cold: then both watts and the cooling are measured.")


def cooler_found(
    beds: Beds, plan: Plan, study: Study, machine_id: str, key: str, locale: NumberLocale = POINT
) -> Explanation | None:
    """What stands behind one number of the cooler bed.

    Parameters
    ----------
    beds : Beds
    plan : Plan
    study : Study
        Tells the price.
    machine_id : str
        Empty for one print on each machine.
    key : str
        `WH`, `SHARE` or `MONEY`.
    locale : NumberLocale

    Returns
    -------
    Explanation or None
        None where there is no such number.
    """
    found = savings(beds, plan)
    price = study.costs.tariff.price_per_kwh
    if key == MONEY and price is None:
        return None
    if not machine_id:
        return None if key == SHARE else _total(found, beds, study, key, locale)
    saving, bed = found.of(machine_id), beds.of(machine_id)
    if saving is None or bed is None:
        return None
    return _one(saving, bed, found, beds, study, key, locale)


def _one(
    saving: Saving, bed: MachineBed, found: Savings, beds: Beds, study: Study, key: str, locale: NumberLocale
) -> Explanation:
    plan, note = found.plan, saving_note(found, saving.machine_id)
    factor, unit = _scale(study, key)
    parts = saving.share_parts if key == SHARE else saving.parts_wh
    lines = _budget(bed, study, parts, factor, unit, locale)
    value = saving.saved_share if key == SHARE else saving.saved_wh
    u95 = None if value.u95 is None else value.u95 * factor

    def again(then: Savings) -> float | None:
        other = then.of(saving.machine_id)
        if other is None:
            return None
        return ((other.saved_share if key == SHARE else other.saved_wh).value) * factor

    return Explanation(
        title=tr("{name}: a cooler bed after the first layers", name=saving.name),
        value_text=_told(value, study, key, locale),
        topic=_TOPIC,
        method=(
            tr(
                "While the bed cools it takes nothing; from then on it takes the watts of the lower "
                "temperature. Against that stands a bed held at the first temperature to the end."
            ),
            tr("The watts are those that its hold tests tell; the cooling time follows from its warm-up."),
            tr("What moves both watts alike, such as the meter's gain, counts once."),
        ),
        formula=(
            *_formula(saving, plan, key, study, locale),
            *budgets.combined(lines, u95, locale, unit),
        ),
        sources=tuple(
            SourceLine(f"{number(h.bed_c, 1, locale)} °C: {settled_text(h)}", h.run_id, bed.counts(h))
            for h in bed.held
            if h.bed_c is not None
        ),
        budget=lines,
        sensitivity=_sensitivity(beds, plan, again, value.value * factor, unit, locale),
        surer=(tr(_BETTER),),
        cautions=(tr(LOOSE), *((note,) if note else ())),
    )


def _scale(study: Study, key: str) -> tuple[float, str]:
    """What turns an energy, or a share, into what is shown; and its unit."""
    if key == SHARE:
        return SAVED_SHARE.factor, "%"
    if key == MONEY:
        tariff = study.costs.tariff
        return (tariff.price_per_kwh or 0.0) / WH_PER_KWH, tariff.currency
    return 1.0, "Wh"


def _told(value: Measured, study: Study, key: str, locale: NumberLocale) -> str:
    factor, unit = _scale(study, key)
    if key == MONEY:
        u95 = None if value.u95 is None else value.u95 * factor
        return money_text(Measured(value.value * factor, u95), locale, unit)
    return shown(value, SAVED_SHARE if key == SHARE else SAVED_WH, locale)


def _formula(saving: Saving, plan: Plan, key: str, study: Study, locale: NumberLocale) -> tuple[str, ...]:
    def f(value: float) -> str:
        return figures(value, locale=locale)

    bed = saving.bed
    after_s = plan.print_s - plan.first_layers_s - bed.cooling_s
    lines = [
        tr(
            "held: {watts} W × {hours} h = {energy} Wh",
            watts=f(saving.first.power_w),
            hours=f(plan.print_s / SECONDS_PER_HOUR),
            energy=f(bed.held_wh),
        ),
        tr(
            "cooler: {first} W × {before} h + nothing for {cooling} + {later} W × {after} h = {energy} Wh",
            first=f(saving.first.power_w),
            before=f(plan.first_layers_s / SECONDS_PER_HOUR),
            cooling=duration(bed.cooling_s),
            later=f(saving.later.power_w),
            after=f(after_s / SECONDS_PER_HOUR),
            energy=f(bed.cooler_wh),
        ),
        f"{f(bed.held_wh)} Wh − {f(bed.cooler_wh)} Wh = {f(saving.saved_wh.value)} Wh",
    ]
    if key == SHARE:
        share = percent(saving.saved_share.value, 1, locale)
        lines.append(f"{f(saving.saved_wh.value)} Wh / {f(bed.held_wh)} Wh = {share}")
    if key == MONEY:
        per_wh, unit = _scale(study, key)
        money = figures(saving.saved_wh.value * per_wh, locale=locale)
        lines.append(f"{f(saving.saved_wh.value)} Wh × {f(per_wh * WH_PER_KWH)} {unit}/kWh = {money} {unit}")
    return tuple(lines)


def _budget(
    bed: MachineBed, study: Study, parts: tuple[float, ...], factor: float, unit: str, locale: NumberLocale
) -> tuple[BudgetLine, ...]:
    told = (
        *sources_of_watts(bed, study, locale),
        (_TAU, "", tr("how long the bed cools without heat is worked out from its heat capacity")),
        (_UNLIKE, "", tr(budgets.WHY["bed held"])),
    )
    made = [
        (name, abs(u) * factor, whom, why) for (name, whom, why), u in zip(told, parts, strict=False) if u
    ]
    return budgets.made(made, locale, unit)


def _sensitivity(
    beds: Beds,
    plan: Plan,
    again: Callable[[Savings], float | None],
    value: float,
    unit: str,
    locale: NumberLocale,
) -> tuple[str, ...]:
    """The saving worked out again under another plan."""
    tried = (
        (tr("If the bed became 1 K cooler still"), evolve(plan, later_c=plan.later_c - 1.0)),
        (tr("If the bed were held 1 K warmer first"), evolve(plan, first_c=plan.first_c + 1.0)),
        (tr("If the room had been 1 K warmer"), evolve(plan, room_c=plan.room_c + 1.0)),
        (
            tr("If the change came 10 min later"),
            evolve(plan, first_layers_s=plan.first_layers_s + 600.0),
        ),
        (tr("If the print took 1 h longer"), evolve(plan, print_s=plan.print_s + SECONDS_PER_HOUR)),
    )
    told = []
    for what, then in tried:
        if then.first_layers_s <= then.print_s and then.room_c < then.later_c <= then.first_c:
            other = again(savings(beds, then))
            if other is not None:
                told.append(otherwise(what, other - value, unit, locale))
    return tuple(told)


def _total(found: Savings, beds: Beds, study: Study, key: str, locale: NumberLocale) -> Explanation | None:
    total = found.total_wh
    if total is None:
        return None
    factor, unit = _scale(study, key)
    own: list[tuple[str, float, str, str]] = []
    gains: dict[frozenset[str], float] = {}
    for saving in found.machines:
        bed = beds.of(saving.machine_id)
        assert bed is not None
        assert bed.model is not None
        gain_wh = bed.model.gain_u * saving.saved_wh.value
        u_wh = (saving.saved_wh.u95 or 0.0) / NORMAL_95
        own.append(
            (saving.name, math.sqrt(max(u_wh**2 - gain_wh**2, 0.0)), "", tr("all that is its own of it"))
        )
        gains[bed.meter_ids] = gains.get(bed.meter_ids, 0.0) + gain_wh
    for meter_ids, u_wh in gains.items():
        names = ", ".join(budgets.meter_name(f"gain:{meter_id}", study) for meter_id in sorted(meter_ids))
        title = f"{tr('meter gain')}, {names}"
        own.append((title, u_wh, "", tr("of machines on one meter it adds up in full")))
    lines = budgets.made([(n, u * factor, s, w) for n, u, s, w in own if u > 0], locale, unit)
    terms = " + ".join(figures(s.saved_wh.value * factor, locale=locale) for s in found.machines)
    whole = f"{figures(total.value * factor, locale=locale)} {unit}"

    def again(then: Savings) -> float | None:
        return None if then.total_wh is None else then.total_wh.value * factor

    u95 = None if total.u95 is None else total.u95 * factor
    return Explanation(
        title=tr("One print on each: a cooler bed after the first layers"),
        value_text=_told(total, study, key, locale),
        topic=_TOPIC,
        method=(tr("What one print on each machine whose bed is known would save, added up."),),
        formula=(f"{terms} = {whole}", *budgets.combined(lines, u95, locale, unit)),
        sources=tuple(SourceLine(f"{s.name}: {shown(s.saved_wh, SAVED_WH, locale)}") for s in found.machines),
        budget=lines,
        sensitivity=_sensitivity(beds, found.plan, again, total.value * factor, unit, locale),
        surer=(tr(_BETTER),),
        cautions=(tr(LOOSE),),
    )
