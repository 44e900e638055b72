"""How the numbers of a print were found: its energy, warm-up and processing, and its price."""

from attrs import evolve

from core.costs.money import money, price_per_kwh
from core.costs.print_cost import price_of
from core.formatting import NumberLocale, duration, number, percent, with_interval
from core.found import budgets
from core.found.cost_parts import TOPIC, dearer, logs, price_words, unknown
from core.found.values import Explanation
from core.found.writing import figures, otherwise, too_high
from core.language import mark, tr
from core.quantities import PRINT_KWH
from core.results.cost_answer import ESTIMATE
from core.results.cost_values import MachineCost, StandbyCost
from core.study import Study
from core.uncertainty import NORMAL_95
from core.units import SECONDS_PER_HOUR, WH_PER_KWH

WARM_UP, PROCESSING, A_YEAR = "warm_up_wh", "processing_w", "printing_kwh"
NEEDS_RUN = mark("It needs one run of the part at least that counts.")
_APART = mark("{runs:run|runs} of the {part} taken apart into warm-up and processing; the mean of both.")
_IN_ALL = mark("By itself it has no interval: it is a part of the print's energy, and that has one.")
LIKE = mark("It holds for prints like the test part, with the same temperatures.")
#: what is stated is tried so much higher
_TENTH = 1.1


def print_energy(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """Energy of a print of some hours, and its electricity."""
    hours = number(result.costs.print_hours, 1, locale)
    title = tr("{name}: a print of {hours} h", name=m.name, hours=hours)
    if m.printed is None:
        return unknown(title, m, tr(NEEDS_RUN))
    p = m.printed
    u95 = None if p.energy.u95 is None else p.energy.u95 / WH_PER_KWH
    value_kwh = p.energy.value / WH_PER_KWH
    kwh = with_interval(value_kwh, u95, PRINT_KWH, locale)
    rest_h = max(0.0, p.seconds - p.warm_up_s) / SECONDS_PER_HOUR
    lines = budgets.lines(p.influences, study, locale, factor=1 / WH_PER_KWH, unit="kWh")
    said = [
        tr(
            "{warm_up_wh} Wh + {processing_w} W × {rest_h} h = {kwh} kWh",
            warm_up_wh=figures(p.warm_up_wh, 3, locale),
            processing_w=figures(p.processing_w, 4, locale),
            rest_h=number(rest_h, 2, locale),
            kwh=kwh,
        )
    ]
    value = tr("{kwh} kWh", kwh=kwh)
    if m.print_cost is not None:
        cost = money(m.print_cost.value, result.currency, locale, m.print_cost.u95)
        price = price_per_kwh(result.mean_per_kwh, result.currency, locale)
        said.append(tr("{kwh} kWh × {price} = {cost}", kwh=kwh, price=price, cost=cost))
        value = f"{value}, {cost}"
    return Explanation(
        title,
        value,
        TOPIC,
        method=(
            tr(
                "{runs:run|runs} of the {part} taken apart: the warm-up once, then processing at "
                "the runs' mean watts for the rest of the print.",
                runs=p.runs,
                part=result.part,
            ),
            *price_words(result, locale),
        ),
        formula=(*said, *budgets.combined(lines, u95, locale, "kWh")),
        sources=logs(m),
        budget=lines,
        sensitivity=(
            tr(
                "Each hour more takes {processing_w} kWh more.",
                processing_w=figures(p.processing_w / WH_PER_KWH, 3, locale),
            ),
            too_high(value_kwh, "kWh", locale),
            *dearer(value_kwh, result, locale),
        ),
        surer=(
            tr("A run as long as the print: other parts may move faster, cool more, or heat the bed less."),
        ),
        cautions=(tr(LIKE),),
    )


def warm_up(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """Energy of the warm-up of a print."""
    title = tr("{name}: warm-up of a print", name=m.name)
    if m.printed is None or m.printed.warm_up_s <= 0:
        return unknown(title, m, tr(NEEDS_RUN))
    p = m.printed
    longer_wh = p.processing_w * 30.0 / SECONDS_PER_HOUR
    return Explanation(
        title,
        f"{number(p.warm_up_wh, 1, locale)} Wh",
        TOPIC,
        method=(tr(_APART, runs=p.runs, part=result.part),),
        formula=(
            tr(
                "mean of {runs:run|runs}: {energy} Wh in {time}",
                runs=p.runs,
                energy=figures(p.warm_up_wh, 3, locale),
                time=duration(p.warm_up_s),
            ),
        ),
        sources=logs(m),
        without_budget=tr(_IN_ALL),
        sensitivity=(
            otherwise(tr("If it were counted 30 s longer"), longer_wh, "Wh", locale),
            too_high(p.warm_up_wh, "Wh", locale),
        ),
    )


def processing(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """Mean power of a print after its warm-up."""
    title = tr("{name}: processing of a print", name=m.name)
    if m.printed is None:
        return unknown(title, m, tr(NEEDS_RUN))
    p = m.printed
    rest_h = max(0.0, p.seconds - p.warm_up_s) / SECONDS_PER_HOUR
    hours = number(result.costs.print_hours, 1, locale)
    return Explanation(
        title,
        f"{number(p.processing_w, 1, locale)} W",
        TOPIC,
        method=(tr(_APART, runs=p.runs, part=result.part),),
        formula=(
            tr(
                "mean of {runs:run|runs} = {watts} W",
                runs=p.runs,
                watts=figures(p.processing_w, locale=locale),
            ),
        ),
        sources=logs(m),
        without_budget=tr(_IN_ALL),
        sensitivity=(
            otherwise(
                tr("If it drew 1 W more, in a print of {hours} h", hours=hours),
                rest_h / WH_PER_KWH,
                "kWh",
                locale,
            ),
            too_high(p.processing_w, "W", locale),
        ),
    )


def price(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """All that a print costs."""
    title = tr(
        "{name}: price of a print of {print_hours} h",
        name=m.name,
        print_hours=number(result.costs.print_hours, 1, locale),
    )
    total, share = m.price.total, m.price.electricity_share
    if total is None or share is None:
        return unknown(title, m, tr("It needs a price of electricity and one run that counts."))
    said = [
        f"{name}: {money(part_of, result.currency, locale)}"
        for name, part_of in (
            (tr("electricity"), m.price.electricity),
            (tr("material"), m.price.material),
            (tr("wear"), m.price.wear),
            (tr("purchase spread over its life"), m.price.purchase),
            (tr("prints that fail"), m.price.failed),
        )
        if part_of is not None
    ]
    u = 0.0
    if m.print_cost is not None and m.print_cost.u95 is not None:
        failed = (result.costs.failed_percent or 0.0) / 100
        u = m.print_cost.u95 / NORMAL_95 / (1 - failed)
    unsure = (tr("electricity"), u, "", tr("what makes the print's energy unsure; what you stated is exact"))
    lines = budgets.made([unsure] if u > 0 else [], locale, result.currency)
    return Explanation(
        title,
        tr(
            "{money}, {share} of it electricity",
            money=money(total, result.currency, locale),
            share=percent(share, 1, locale),
        ),
        TOPIC,
        method=(
            tr(
                "Electricity as measured, beside what you stated: material by weight, wear and "
                "purchase spread over their hours, and prints that fail spread over those that "
                "do not."
            ),
            tr("What nobody stated is left out, not taken as free: no work, no rent, no profit."),
        ),
        formula=(*said, tr("together: {money}", money=money(total, result.currency, locale))),
        sources=logs(m),
        budget=lines,
        without_budget="" if lines else tr("Its electricity has no interval, and what you stated is exact."),
        sensitivity=_stated_higher(result, m, total, locale),
        cautions=(tr(ESTIMATE),),
    )


def _stated_higher(
    result: StandbyCost, m: MachineCost, total: float, locale: NumberLocale
) -> tuple[str, ...]:
    """The price worked out again with each thing that was stated, and the electricity, a tenth higher."""
    costs, machine, electricity = result.costs, result.costs.of(m.machine_id), m.price.electricity
    tried = [(tr("If electricity cost 10 % more"), (electricity or 0.0) * _TENTH, costs, machine)]
    if costs.material_per_kg is not None:
        then = evolve(costs, material_per_kg=costs.material_per_kg * _TENTH)
        tried.append((tr("If the material cost 10 % more"), electricity or 0.0, then, machine))
    if costs.failed_percent is not None:
        then = evolve(costs, failed_percent=costs.failed_percent + 1.0)
        tried.append((tr("If 1 of 100 prints more failed"), electricity or 0.0, then, machine))
    if machine.wear_price is not None:
        other = evolve(machine, wear_price=machine.wear_price * _TENTH)
        tried.append((tr("If its wear cost 10 % more"), electricity or 0.0, costs, other))
    if machine.life_hours is not None:
        other = evolve(machine, life_hours=machine.life_hours * _TENTH)
        tried.append((tr("If it lasted 10 % longer"), electricity or 0.0, costs, other))
    told = []
    for what, power, then, other in tried:
        found = price_of(power, then, other).total
        if found is not None:
            told.append(otherwise(what, found - total, result.currency, locale))
    return tuple(told)


def part(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """Electricity of one part."""
    title = tr("{name}: electricity of one {part}", name=m.name, part=result.part)
    if m.part_cost is None or m.part_wh is None or m.part_wh.value <= 0:
        return unknown(title, m, tr("No run that counts was made at a time whose price is known."))
    cost = money(m.part_cost.value, result.currency, locale, m.part_cost.u95)
    bands = result.costs.tariff.priced_by != "single"
    kwh = m.part_wh.value / WH_PER_KWH
    per_wh = m.part_cost.value / m.part_wh.value
    lines = budgets.lines(m.part_influences, study, locale, factor=abs(per_wh), unit=result.currency)
    return Explanation(
        title,
        cost,
        TOPIC,
        method=(
            tr(
                "Mean over the runs that count, each priced by what it drew at each moment, not "
                "by a mean price."
            )
            if bands
            else tr("Mean energy of the runs that count, times the price."),
        ),
        formula=(
            tr(
                "{energy} Wh / 1000 × {price} = {cost}",
                energy=figures(m.part_wh.value, locale=locale),
                price=price_per_kwh(per_wh * WH_PER_KWH, result.currency, locale),
                cost=money(m.part_cost.value, result.currency, locale),
            ),
            *budgets.combined(lines, m.part_cost.u95, locale, result.currency),
        ),
        sources=logs(m),
        budget=lines,
        without_budget="" if lines else tr("Nothing is known of what makes its energy unsure."),
        sensitivity=(
            too_high(m.part_cost.value, result.currency, locale),
            *dearer(kwh, result, locale),
        ),
        surer=(tr("More runs; a meter of better stated accuracy."),),
        cautions=(tr("Runs made at other times of the day would have cost something else."),)
        if bands
        else (),
    )


def a_year(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """Energy and cost of a year of such prints."""
    title = tr("{name}: a year of prints", name=m.name)
    if m.printing_kwh is None or m.printed is None or m.printing_hours is None:
        return unknown(title, m, tr("State how many hours a year it prints, in the form beside the charts."))
    prints = m.count * m.printing_hours * SECONDS_PER_HOUR / m.printed.seconds
    kwh = m.printing_kwh.value
    factor = prints / WH_PER_KWH
    lines = budgets.lines(m.printed.influences, study, locale, factor=factor, unit="kWh")
    value = tr("{kwh} kWh", kwh=number(kwh, 0, locale))
    if m.printing_cost is not None:
        value = f"{value}, {money(m.printing_cost.value, result.currency, locale)}"
    return Explanation(
        title,
        value,
        TOPIC,
        method=(tr("As many prints of that length as the hours of a year hold, one warm-up each."),),
        formula=(
            tr(
                "{prints} prints × {energy} kWh = {kwh} kWh",
                prints=figures(prints, locale=locale),
                energy=figures(m.printed.energy.value / WH_PER_KWH, locale=locale),
                kwh=figures(kwh, locale=locale),
            ),
            *budgets.combined(lines, m.printing_kwh.u95, locale, "kWh"),
        ),
        sources=logs(m),
        budget=lines,
        without_budget="" if lines else tr("Nothing is known of what makes its energy unsure."),
        sensitivity=(
            otherwise(tr("If it printed 10 % more"), 0.1 * kwh, "kWh", locale),
            too_high(kwh, "kWh", locale),
            *dearer(kwh, result, locale),
        ),
        cautions=(tr(LIKE),),
    )
