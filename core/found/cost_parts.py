"""What the explanations of standby and cost share: logs, the price in words, and another price."""

from core.costs.money import price_per_kwh
from core.formatting import NumberLocale, number
from core.found.values import Explanation, SourceLine
from core.found.writing import otherwise
from core.language import tr
from core.results.cost_values import MachineCost, StandbyCost

TOPIC = "standby-cost"
#: what a kilowatt hour would cost more [currency]
_MORE = 0.01


def price_words(result: StandbyCost, locale: NumberLocale) -> tuple[str, ...]:
    """Where the price is from; nothing where none is known."""
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


def dearer(kwh: float, result: StandbyCost, locale: NumberLocale) -> tuple[str, ...]:
    """What a price that is a hundredth higher at all times would make of an energy."""
    if result.mean_per_kwh is None:
        return ()
    what = tr(
        "If a kilowatt hour cost {more} {currency} more",
        more=number(_MORE, 2, locale),
        currency=result.currency,
    )
    return (otherwise(what, kwh * _MORE, result.currency, locale),)


def unknown(title: str, machine: MachineCost, needs: str) -> Explanation:
    """A number that is not there, and what would give it."""
    return Explanation(title, tr("not known"), TOPIC, surer=(needs,), sources=logs(machine))


def logs(machine: MachineCost) -> tuple[SourceLine, ...]:
    """The logs of a machine; typed readings have none."""
    if not machine.files:
        return (SourceLine(tr("readings of a display")),)
    return tuple(SourceLine(name) for name in machine.files)
