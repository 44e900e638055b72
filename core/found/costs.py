"""How the numbers of standby and cost were found."""

from collections.abc import Callable

from core.costs.money import money, price_per_kwh
from core.formatting import POINT, NumberLocale, duration, number, percent, with_interval
from core.found import budgets, standby
from core.found.values import Explanation, SourceLine
from core.found.writing import figures
from core.language import tr
from core.quantities import (
    PART_COST,
    PRINT_COST,
    PRINT_KWH,
    PRINT_PRICE,
    STANDBY_COST,
    STANDBY_KWH,
    STANDBY_MEAN_W,
)
from core.results.checked_logs import checked_meter
from core.results.cost_answer import ESTIMATE, HOT, limit_words
from core.results.cost_values import MachineCost, StandbyCost
from core.study import Study
from core.units import SECONDS_PER_HOUR, WH_PER_KWH

#: key of what switching off saves, beside the keys of `core.quantities`
SAVED = "saved"
TOPIC = "standby-cost"


def explain_cost(
    result: StandbyCost, study: Study, machine_id: str, key: str, locale: NumberLocale = POINT
) -> Explanation | None:
    """Say how a number of the page was found.

    Parameters
    ----------
    result : StandbyCost
    study : Study
        The one that was priced.
    machine_id : str
    key : str
        Key of a quantity of the page, or `SAVED`.
    locale : NumberLocale

    Returns
    -------
    Explanation or None
        None when the result has no such machine.

    Raises
    ------
    KeyError
        If the page has no such number: the caller's mistake.
    """
    machine = next((m for m in result.machines if m.machine_id == machine_id), None)
    return None if machine is None else _BY_KEY[key](result, study, machine, locale)


def _standby(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    title = tr("{name}: standby power", name=m.name)
    if m.standby is None:
        return _unknown(title, m, tr(standby.LONGER_LOG))
    found, meter_id = m.standby, m.meter_id
    return Explanation(
        title,
        standby.value_text(found, locale),
        TOPIC,
        method=(
            *standby.method(found, locale),
            *(budgets.by_check(meter_id, study, locale) if meter_id is not None else ()),
        ),
        sources=_logs(m),
        budget=()
        if meter_id is None
        else standby.budget(found, checked_meter(study, meter_id), study, locale),
        surer=standby.surer(found),
        cautions=tuple(words for words in (limit_words(result.limits, locale),) if words),
    )


def _year(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    title = tr("{name}: standby of a year", name=m.name)
    if m.standby is None or m.year_kwh is None:
        return _unknown(title, m, tr("No rest of it is long enough for a mean of its standby power."))
    many = f"{m.count} × " if m.count > 1 else ""
    watts = figures(m.standby.power_w, 3, locale)
    kwh = with_interval(m.year_kwh.value, m.year_kwh.u95, STANDBY_KWH, locale)
    lines = [
        tr(
            "{many}{watts} W × {idle_hours} h / 1000 = {kwh} kWh",
            many=many,
            watts=watts,
            idle_hours=number(m.idle_hours, 0, locale),
            kwh=kwh,
        )
    ]
    value = tr("{kwh} kWh", kwh=kwh)
    if m.year_cost is not None:
        cost = money(m.year_cost.value, result.currency, locale, m.year_cost.u95)
        price = price_per_kwh(result.mean_per_kwh, result.currency, locale)
        lines.append(tr("{kwh} kWh × {price} = {cost}", kwh=kwh, price=price, cost=cost))
        value = f"{value}, {cost}"
    per_watt = figures(m.idle_hours / WH_PER_KWH, 3, locale)
    return Explanation(
        title,
        value,
        TOPIC,
        method=(
            tr(
                "Standby watts times the hours a year for which the machine stands switched on "
                "and does nothing."
            ),
            *_price_words(result, locale),
        ),
        formula=tuple(lines),
        sources=_logs(m),
        sensitivity=(tr("One watt more would be {per_watt} kWh more a year.", per_watt=per_watt),),
        surer=(tr("State the hours for which it is really left on, in the form beside the charts."),)
        if m.idle_hours == result.year_hours
        else (),
        cautions=(tr(ESTIMATE),),
    )


def _saved(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    minutes = result.costs.off_after_min
    title = tr(
        "{name}: switched off after {minutes} min idle", name=m.name, minutes=number(minutes, 0, locale)
    )
    share = m.rests.share_after(minutes)
    if share is None:
        return _unknown(title, m, tr("Its logs show no rest between runs."))
    saved_wh, idle_wh = m.rests.saved_after_wh(minutes), m.rests.idle_wh
    return Explanation(
        title,
        tr("{share} of what the rests took", share=percent(share, 0, locale)),
        TOPIC,
        method=(
            tr(
                "Its logs show {count:rest|rests}, {seconds} together, the longest {longest_s}: "
                "stretches with neither a run nor a test.",
                count=m.rests.count,
                seconds=duration(m.rests.seconds),
                longest_s=duration(m.rests.longest_s),
            ),
            tr(
                "What was drawn in each rest after those minutes would have been saved. Where "
                "the next run began from a warm machine, what its warm-up lacks against the "
                "largest one is taken off: that is the most that warming up again can cost."
            ),
        ),
        formula=(
            tr(
                "{saved_wh} Wh / {idle_wh} Wh = {share}",
                saved_wh=figures(saved_wh, 3, locale),
                idle_wh=figures(idle_wh, 3, locale),
                share=percent(share, 0, locale),
            ),
        ),
        sources=_logs(m),
        surer=(tr("A log of a week of ordinary use, so that the rests are those of your work."),),
        cautions=(tr(HOT), tr(ESTIMATE)),
    )


def _print(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    hours = number(result.costs.print_hours, 1, locale)
    title = tr("{name}: a print of {hours} h", name=m.name, hours=hours)
    if m.printed is None:
        return _unknown(title, m, tr("It needs one run of the part at least that counts."))
    p = m.printed
    u95 = None if p.energy.u95 is None else p.energy.u95 / WH_PER_KWH
    kwh = with_interval(p.energy.value / WH_PER_KWH, u95, PRINT_KWH, locale)
    rest_h = max(0.0, p.seconds - p.warm_up_s) / SECONDS_PER_HOUR
    lines = [
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
        lines.append(tr("{kwh} kWh × {price} = {cost}", kwh=kwh, price=price, cost=cost))
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
            *_price_words(result, locale),
        ),
        formula=tuple(lines),
        sources=_logs(m),
        sensitivity=(
            tr(
                "Each hour more takes {processing_w} kWh more.",
                processing_w=figures(p.processing_w / WH_PER_KWH, 3, locale),
            ),
        ),
        surer=(
            tr("A run as long as the print: other parts may move faster, cool more, or heat the bed less."),
        ),
        cautions=(tr("It holds for prints like the test part, with the same temperatures."),),
    )


def _price(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    title = tr(
        "{name}: price of a print of {print_hours} h",
        name=m.name,
        print_hours=number(result.costs.print_hours, 1, locale),
    )
    total, share = m.price.total, m.price.electricity_share
    if total is None or share is None:
        return _unknown(title, m, tr("It needs a price of electricity and one run that counts."))
    said = [
        f"{name}: {money(part, result.currency, locale)}"
        for name, part in (
            ("electricity", m.price.electricity),
            ("material", m.price.material),
            ("wear", m.price.wear),
            (tr("purchase spread over its life"), m.price.purchase),
            (tr("prints that fail"), m.price.failed),
        )
        if part is not None
    ]
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
        cautions=(tr(ESTIMATE),),
    )


def _part(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    title = tr("{name}: electricity of one {part}", name=m.name, part=result.part)
    if m.part_cost is None:
        return _unknown(title, m, tr("No run that counts was made at a time whose price is known."))
    cost = money(m.part_cost.value, result.currency, locale, m.part_cost.u95)
    bands = result.costs.tariff.priced_by != "single"
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
        sources=_logs(m),
        surer=(tr("More runs; a meter of better stated accuracy."),),
        cautions=(tr("Runs made at other times of the day would have cost something else."),)
        if bands
        else (),
    )


def _price_words(result: StandbyCost, locale: NumberLocale) -> tuple[str, ...]:
    if result.mean_per_kwh is None:
        return ()
    price = price_per_kwh(result.mean_per_kwh, result.currency, locale)
    kind = result.costs.tariff.priced_by
    if kind == "single":
        return (tr("Price: {price}, as you stated it.", price=price),)
    if kind == "bands":
        return (
            tr(
                "Price: {price}, the mean over the {year_hours} h of {year}.",
                price=price,
                year_hours=number(result.year_hours, 0, locale),
                year=result.year,
            ),
        )
    return (tr("Price: {price}, the mean over all dates of the list.", price=price),)


def _unknown(title: str, machine: MachineCost, needs: str) -> Explanation:
    return Explanation(title, tr("not known"), TOPIC, surer=(needs,), sources=_logs(machine))


def _logs(machine: MachineCost) -> tuple[SourceLine, ...]:
    return tuple(SourceLine(name) for name in machine.files)


_BY_KEY: dict[str, Callable[[StandbyCost, Study, MachineCost, NumberLocale], Explanation]] = {
    STANDBY_MEAN_W.key: _standby,
    STANDBY_KWH.key: _year,
    STANDBY_COST.key: _year,
    SAVED: _saved,
    PRINT_KWH.key: _print,
    PRINT_COST.key: _print,
    PRINT_PRICE.key: _price,
    PART_COST.key: _part,
}
