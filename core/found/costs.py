"""How the numbers of standby and cost were found."""

from collections.abc import Callable

from core.costs.money import money, price_per_kwh
from core.costs.standby import STATES
from core.formatting import POINT, NumberLocale, duration, number, percent, with_interval
from core.found import budgets, cost_hours, cost_prints, cost_starts, standby
from core.found.cost_parts import TOPIC, dearer, logs, price_words, unknown
from core.found.values import BudgetLine, Explanation
from core.found.writing import figures, otherwise, too_high
from core.language import tr
from core.quantities import (
    PART_COST,
    PRINT_CO2,
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
from core.units import WH_PER_KWH

HOURS_PER_DAY = 24.0
#: key of what switching off saves, beside the keys of `core.quantities`
SAVED = "saved"
#: and of what all machines use while they do nothing
TOTAL = "total"


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
        Key of a quantity of the page, of a column of its tables, `SAVED`, or `TOTAL` for what all machines
        use together.
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
    if key == TOTAL:
        return cost_hours.total(result, study, locale)
    machine = next((m for m in result.machines if m.machine_id == machine_id), None)
    if machine is None:
        return None
    if key in STATES:
        return cost_hours.hours_in(result, machine, key, locale)
    return _BY_KEY[key](result, study, machine, locale)


def _standby(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    title = tr("{name}: standby power", name=m.name)
    if m.standby is None:
        return unknown(title, m, tr(standby.LONGER_LOG))
    found, meter_id = m.standby, m.meter_id
    lines = () if meter_id is None else _of_standby(m, study, 1.0, "W", locale)
    return Explanation(
        title,
        standby.value_text(found, locale),
        TOPIC,
        method=(
            *standby.method(found, locale),
            *(budgets.by_check(meter_id, study, locale) if meter_id is not None else ()),
        ),
        formula=standby.formula(found, lines, locale),
        sources=logs(m),
        budget=lines,
        without_budget=standby.without_budget(lines),
        sensitivity=standby.sensitivity(found, locale),
        surer=standby.surer(found),
        cautions=tuple(words for words in (limit_words(result.limits, locale),) if words),
    )


def _of_standby(
    m: MachineCost, study: Study, factor: float, unit: str, locale: NumberLocale
) -> tuple[BudgetLine, ...]:
    """The budget of a machine's standby power, times a factor."""
    if m.standby is None or m.meter_id is None:
        return ()
    return standby.budget(m.standby, checked_meter(study, m.meter_id), study, locale, factor, unit)


def _year(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    title = tr("{name}: standby of a year", name=m.name)
    if m.standby is None or m.year_kwh is None:
        return unknown(title, m, tr("No rest of it is long enough for a mean of its standby power."))
    many = f"{m.count} × " if m.count > 1 else ""
    watts = figures(m.standby.power_w, 3, locale)
    kwh = with_interval(m.year_kwh.value, m.year_kwh.u95, STANDBY_KWH, locale)
    said = [
        tr(
            "{many}{watts} W × {idle_hours} h / 1000 = {kwh} kWh",
            many=many,
            watts=watts,
            idle_hours=number(m.idle_hours, 0, locale),
            kwh=kwh,
        )
    ]
    value = tr("{kwh} kWh", kwh=kwh)
    factor = m.idle_hours * m.count / WH_PER_KWH
    lines = _of_standby(m, study, factor, "kWh", locale)
    if m.year_cost is not None:
        cost = money(m.year_cost.value, result.currency, locale, m.year_cost.u95)
        price = price_per_kwh(result.mean_per_kwh, result.currency, locale)
        said.append(tr("{kwh} kWh × {price} = {cost}", kwh=kwh, price=price, cost=cost))
        value = f"{value}, {cost}"
    per_watt = figures(m.idle_hours / WH_PER_KWH, 3, locale)
    kwh_an_hour = -m.standby.power_w * m.count * result.year_hours / HOURS_PER_DAY / WH_PER_KWH
    return Explanation(
        title,
        value,
        TOPIC,
        method=(
            tr(
                "Standby watts times the hours a year for which the machine stands switched on "
                "and does nothing."
            ),
            *price_words(result, locale),
        ),
        formula=(*said, *budgets.combined(lines, m.year_kwh.u95, locale, "kWh")),
        sources=logs(m),
        budget=lines,
        sensitivity=(
            tr("One watt more would be {per_watt} kWh more a year.", per_watt=per_watt),
            otherwise(tr("If it were off for one hour more a day"), kwh_an_hour, "kWh", locale),
            too_high(m.year_kwh.value, "kWh", locale),
            *dearer(m.year_kwh.value, result, locale),
        ),
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
        return unknown(title, m, tr("Its logs show no rest between runs."))
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
            *_saved_in_a_year(result, m, share, locale),
        ),
        sources=logs(m),
        without_budget=tr(
            "It has no interval: both energies come from one log, so the meter's gain drops out; what the "
            "rests of other weeks would be is not known."
        ),
        sensitivity=_other_minutes(m, minutes, share, locale),
        surer=(tr("A log of a week of ordinary use, so that the rests are those of your work."),),
        cautions=(tr(HOT), tr(ESTIMATE)),
    )


def _saved_in_a_year(
    result: StandbyCost, m: MachineCost, share: float, locale: NumberLocale
) -> tuple[str, ...]:
    """What the share would be of a year's standby, where the page tells it."""
    if m.year_kwh is None or not m.tells_saving_after(result.costs.off_after_min):
        return ()
    kwh = tr(
        "of a year's standby: {share} × {kwh} kWh = {saved} kWh",
        share=percent(share, 0, locale),
        kwh=figures(m.year_kwh.value, 3, locale),
        saved=figures(share * m.year_kwh.value, 3, locale),
    )
    if m.year_cost is None:
        return (kwh,)
    return (f"{kwh}, {money(share * m.year_cost.value, result.currency, locale)}",)


def _other_minutes(m: MachineCost, minutes: float, share: float, locale: NumberLocale) -> tuple[str, ...]:
    """The share for other waits, as the rests themselves tell it."""
    told = []
    for other in (minutes / 2, minutes * 2):
        then = m.rests.share_after(other)
        if then is not None:
            what = tr("If it were switched off after {minutes} min", minutes=number(other, 0, locale))
            told.append(otherwise(what, 100 * (then - share), tr("percentage points"), locale))
    return tuple(told)


_BY_KEY: dict[str, Callable[[StandbyCost, Study, MachineCost, NumberLocale], Explanation]] = {
    STANDBY_MEAN_W.key: _standby,
    STANDBY_KWH.key: _year,
    STANDBY_COST.key: _year,
    SAVED: _saved,
    PRINT_KWH.key: cost_prints.print_energy,
    PRINT_COST.key: cost_prints.print_energy,
    PRINT_PRICE.key: cost_prints.price,
    PART_COST.key: cost_prints.part,
    PRINT_CO2.key: cost_starts.co2,
    cost_prints.WARM_UP: cost_prints.warm_up,
    cost_prints.PROCESSING: cost_prints.processing,
    cost_prints.A_YEAR: cost_prints.a_year,
    cost_starts.START: cost_starts.start,
    cost_hours.LOGGED: cost_hours.hours,
    cost_hours.LONGEST: cost_hours.longest,
}


def of_saving(result: StandbyCost) -> str:
    """The machine whose saving is told first: by its rests, else one that has any; may be empty."""
    minutes = result.costs.off_after_min
    known = [m for m in result.machines if m.rests.share_after(minutes) is not None]
    telling = [m for m in known if m.year_kwh is not None and m.tells_saving_after(minutes)]
    return next((m.machine_id for m in (*telling, *known)), "")


def of_print(result: StandbyCost) -> str:
    """The machine whose print takes least, which the sentence names first; may be empty."""
    known = [m for m in result.machines if m.printed is not None]
    return min(known, key=lambda m: m.printed.energy.value).machine_id if known else ""  # type: ignore[union-attr]  # known ones were


def of_start(result: StandbyCost) -> str:
    """The machine for which the start matters most; may be empty."""
    known = [m for m in result.machines if m.starts is not None]
    return max(known, key=lambda m: m.starts.dearest[1] - m.starts.cheapest[1]).machine_id if known else ""  # type: ignore[union-attr]  # known ones have
