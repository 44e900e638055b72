"""How it was found what all machines use doing nothing, and how long their logs show each state."""

import math

from core.costs.money import money, price_per_kwh
from core.formatting import NumberLocale, duration, number, percent, with_interval
from core.found import budgets
from core.found.cost_parts import TOPIC, dearer, logs, price_words, unknown
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, otherwise, too_high
from core.language import mark, tr
from core.quantities import STANDBY_KWH
from core.results.cost_answer import ESTIMATE
from core.results.cost_values import MachineCost, StandbyCost
from core.study import Study
from core.units import WH_PER_KWH

LOGGED, LONGEST = "hours", "longest"
_COUNTED = mark(
    "It is a time on the log's own clock: no reading makes it unsure, only where a change of state is "
    "placed, to a row of the log."
)


def total(result: StandbyCost, study: Study, locale: NumberLocale) -> Explanation | None:
    """What all machines use in a year while they do nothing; None where it is not known of any."""
    known = [m for m in result.machines if m.year_kwh is not None and m.standby is not None]
    if result.total_kwh is None or not known:
        return None
    kwh = with_interval(result.total_kwh.value, result.total_kwh.u95, STANDBY_KWH, locale)
    value = tr("{kwh} kWh", kwh=kwh)
    terms = " + ".join(figures(m.year_kwh.value, 3, locale) for m in known if m.year_kwh)
    said = [f"{terms} = {figures(result.total_kwh.value, 3, locale)} kWh"]
    if result.total_cost is not None:
        cost = money(result.total_cost.value, result.currency, locale, result.total_cost.u95)
        price = price_per_kwh(result.mean_per_kwh, result.currency, locale)
        said.append(tr("{kwh} kWh × {price} = {cost}", kwh=kwh, price=price, cost=cost))
        value = f"{value}, {cost}"
    if result.saved_share is not None:
        told = [
            f"{m.name} {percent(share, 0, locale)}"
            for m in known
            if m.tells_saving_after(result.costs.off_after_min)
            and (share := m.rests.share_after(result.costs.off_after_min)) is not None
        ]
        said.append(
            tr(
                "switched off after {minutes} min idle, weighted by their years: {shares}; together {share}",
                minutes=number(result.costs.off_after_min, 0, locale),
                shares=", ".join(told),
                share=percent(result.saved_share, 0, locale),
            )
        )
    lines = _budget(known, study, locale)
    off_kwh = -math.fsum(
        m.standby.power_w * m.count * result.year_hours / 24 / WH_PER_KWH for m in known if m.standby
    )
    return Explanation(
        tr("All machines: standby of a year"),
        value,
        TOPIC,
        method=(
            tr("The years of all machines whose standby is known, added up."),
            tr(
                "What one meter gives several machines adds up in full; what is each machine's own, in "
                "squares."
            ),
            *price_words(result, locale),
        ),
        formula=(*said, *budgets.combined(lines, result.total_kwh.u95, locale, "kWh")),
        sources=tuple(
            SourceLine(f"{m.name}: {number(m.year_kwh.value, 1, locale)} kWh") for m in known if m.year_kwh
        ),
        budget=lines,
        sensitivity=(
            *(
                otherwise(tr("Without {name}", name=m.name), -m.year_kwh.value, "kWh", locale)
                for m in sorted(known, key=lambda m: -(m.year_kwh.value if m.year_kwh else 0.0))[:3]
                if m.year_kwh
            ),
            otherwise(tr("If all were off for one hour more a day"), off_kwh, "kWh", locale),
            *dearer(result.total_kwh.value, result, locale),
            too_high(result.total_kwh.value, "kWh", locale),
        ),
        surer=(tr("State the hours for which it is really left on, in the form beside the charts."),),
        cautions=(tr(ESTIMATE),),
    )


def _budget(known: list[MachineCost], study: Study, locale: NumberLocale) -> tuple[BudgetLine, ...]:
    by_meter: dict[str, float] = {}
    parts: list[tuple[str, float, str, str]] = []
    for m in known:
        assert m.standby is not None
        factor = m.idle_hours * m.count / WH_PER_KWH
        meter_id = m.meter_id or ""
        by_meter[meter_id] = by_meter.get(meter_id, 0.0) + m.standby.by_meter_w * factor
        parts.append((m.name, m.standby.own_w * factor, "", tr("how far the means of the windows scatter")))
    for meter_id, u in by_meter.items():
        name = budgets.meter_name(f"gain:{meter_id}", study)
        shared = tr("every machine measured with {name}", name=name) if name else ""
        why = tr("its gain and its offset, which move all its readings alike")
        parts.append((tr("meter {name}", name=name), u, shared, why))
    return budgets.made([part for part in parts if part[1] > 0], locale, "kWh")


def hours(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """How long a machine's logs are, by state."""
    told = [f"{tr(state)} {number(time, 2, locale)} h" for state, time in m.hours if time > 0]
    return _time(
        m,
        tr("{name}: hours of log", name=m.name),
        f"{number(m.logged_hours, 1, locale)} h",
        tr("The states of all its logs, each from its levels, added up."),
        " + ".join(told) + f" = {number(m.logged_hours, 2, locale)} h",
    )


def hours_in(result: StandbyCost, m: MachineCost, state: str, locale: NumberLocale) -> Explanation:
    """How long a machine's logs show one state."""
    time = next((spent for known, spent in m.hours if known == state), 0.0)
    share = time / m.logged_hours if m.logged_hours else 0.0
    return _time(
        m,
        tr("{name}: hours of {state}", name=m.name, state=tr(state)),
        f"{number(time, 1, locale)} h",
        tr("The states are told by levels that are learnt from each log itself."),
        tr(
            "{time} h of {whole} h of log = {share}",
            time=number(time, 2, locale),
            whole=number(m.logged_hours, 2, locale),
            share=percent(share, 1, locale),
        ),
    )


def longest(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """The longest rest of a machine's logs."""
    title = tr("{name}: longest rest", name=m.name)
    if not m.rests.count:
        return unknown(title, m, tr("Its logs show no rest between runs."))
    return _time(
        m,
        title,
        duration(m.rests.longest_s),
        tr("A rest is a stretch with neither a run nor a test; the longest tells how far the logs reach."),
        tr(
            "{count:rest|rests}, {whole} together, {mean} each on average; the longest {longest}",
            count=m.rests.count,
            whole=duration(m.rests.seconds),
            mean=duration(m.rests.seconds / m.rests.count),
            longest=duration(m.rests.longest_s),
        ),
    )


def _time(m: MachineCost, title: str, value: str, method: str, formula: str) -> Explanation:
    return Explanation(
        title,
        value,
        TOPIC,
        method=(method,),
        formula=(formula,),
        sources=logs(m),
        without_budget=tr(_COUNTED),
        sensitivity=(tr("A change of state placed a minute later moves it by a minute."),),
        surer=(tr("A log of a week of ordinary use, so that the rests are those of your work."),),
    )
