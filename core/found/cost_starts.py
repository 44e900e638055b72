"""How it was found when a print costs least, and the carbon dioxide that it stands for."""

from core.costs.money import money, price_per_kwh
from core.formatting import NumberLocale, number
from core.found import budgets
from core.found.cost_parts import TOPIC, logs, price_words, unknown
from core.found.cost_prints import LIKE, NEEDS_RUN
from core.found.values import Explanation
from core.found.writing import figures, otherwise, too_high
from core.language import tr
from core.quantities import PRINT_CO2
from core.results.cost_values import MachineCost, StandbyCost
from core.study import Study
from core.units import WH_PER_KWH

START = "cheapest start"


def co2(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """Carbon dioxide of a print by the user's own factor."""
    title = tr("{name}: CO₂ of a print", name=m.name)
    per_kwh = result.costs.co2_g_per_kwh
    if m.co2_g is None or m.printed is None or per_kwh is None:
        return unknown(title, m, tr(NEEDS_RUN))
    kwh = m.printed.energy.value / WH_PER_KWH
    lines = budgets.lines(m.printed.influences, study, locale, factor=per_kwh / WH_PER_KWH, unit="g")
    return Explanation(
        title,
        f"{number(m.co2_g, PRINT_CO2.decimals, locale)} g",
        TOPIC,
        method=(
            tr(
                "Energy of the print times the factor that you stated ({source}).",
                source=result.costs.co2_source or tr("its source was not named"),
            ),
        ),
        formula=(
            tr(
                "{energy} kWh × {factor} g/kWh = {grams} g",
                energy=figures(kwh, locale=locale),
                factor=figures(per_kwh, locale=locale),
                grams=figures(m.co2_g, locale=locale),
            ),
        ),
        sources=logs(m),
        budget=lines,
        without_budget="" if lines else tr("Nothing is known of what makes its energy unsure."),
        sensitivity=(
            otherwise(tr("If the factor were 10 g/kWh higher"), 10.0 * kwh, "g", locale),
            too_high(m.co2_g, "g", locale),
        ),
    )


def start(result: StandbyCost, study: Study, m: MachineCost, locale: NumberLocale) -> Explanation:
    """The cheapest time of day to start a print, against the dearest."""
    title = tr("{name}: when to start a print", name=m.name)
    if m.starts is None or m.printed is None:
        return unknown(title, m, tr("It needs prices that change over the day and one run that counts."))
    starts = m.starts
    (at, least), (late, most) = starts.cheapest, starts.dearest
    per_wh = least / m.printed.energy.value if m.printed.energy.value > 0 else 0.0
    lines = budgets.lines(m.printed.influences, study, locale, factor=abs(per_wh), unit=result.currency)
    told = []
    for by_h in (1.0, 2.0, -1.0):
        place = min(range(len(starts.hours)), key=lambda i: abs(float(starts.hours[i]) - (at + by_h) % 24.0))
        what = tr("If it started at {time}", time=_clock(float(starts.hours[place])))
        told.append(otherwise(what, float(starts.amounts[place]) - least, result.currency, locale))
    return Explanation(
        title,
        tr(
            "{time}: {money}, against {most} at {late}",
            time=_clock(at),
            money=money(least, result.currency, locale),
            most=money(most, result.currency, locale),
            late=_clock(late),
        ),
        TOPIC,
        method=(
            tr(
                "Every half hour of the day is tried as a start, on every day that has prices to the end of "
                "the print: warm-up and processing are priced by the price of their own time."
            ),
            *price_words(result, locale),
        ),
        formula=(
            tr(
                "{energy} kWh at {price} on average over the print = {money}",
                energy=figures(m.printed.energy.value / WH_PER_KWH, locale=locale),
                price=price_per_kwh(per_wh * WH_PER_KWH, result.currency, locale),
                money=money(least, result.currency, locale),
            ),
        ),
        sources=logs(m),
        budget=lines,
        without_budget="" if lines else tr("Nothing is known of what makes its energy unsure."),
        sensitivity=tuple(told),
        cautions=(tr(LIKE),),
    )


def _clock(hours: float) -> str:
    """A time of day."""
    return f"{int(hours):02d}:{round(hours % 1 * 60):02d}"
