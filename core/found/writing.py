"""Numbers in the lines of an explanation: a few digits more than the answer, to be followed by hand."""

import math

from core.formatting import POINT, NumberLocale, duration, number, with_interval, with_unit
from core.language import tr
from core.quantities import BED_SHARE, Quantity
from core.results.values import Measured, RunResult

#: digits of the values in a formula
DIGITS = 4
MOST_DECIMALS = 6
#: what a meter that reads 1 % too high makes of a watt
TOO_HIGH = 1.01
#: a change smaller than this is that of rounding alone
NOTHING = 1e-9


def figures(value: float, digits: int = DIGITS, locale: NumberLocale = POINT) -> str:
    """A number with so many significant digits, or all digits before the mark.

    Examples
    --------
    >>> figures(21.3456), figures(0.012345, 2), figures(2274.0), figures(12345.6)
    ('21.35', '0.012', '2274', '12346')
    """
    if value == 0 or not math.isfinite(value):
        return number(value, 0, locale)
    decimals = digits - 1 - math.floor(math.log10(abs(value)))
    return number(value, min(max(decimals, 0), MOST_DECIMALS), locale)


def unit_of(quantity: Quantity) -> str:
    """The unit that follows a number, or what it counts."""
    return {"parts_per_kwh": tr("parts per kWh"), "bed_share": "%"}.get(quantity.key, quantity.unit)


def shown(value: Measured | None, quantity: Quantity, locale: NumberLocale = POINT) -> str:
    """A value with its interval and its unit."""
    if value is None:
        return tr("not known")
    text = with_interval(value.value, value.u95, quantity, locale)
    return f"{text} {unit_of(quantity)}" if quantity.unit == "" else with_unit(text, quantity)


def term(value: float, quantity: Quantity, locale: NumberLocale = POINT) -> str:
    """A value of the core as it stands in a formula, in the unit shown."""
    return f"{figures(value * quantity.factor, DIGITS, locale)} {unit_of(quantity)}"


def change(by: float, quantity: Quantity, locale: NumberLocale = POINT) -> str:
    """A change with its sign, or the word that there is none worth showing.

    Examples
    --------
    >>> from core.quantities import ENERGY
    >>> change(0.1234, ENERGY), change(-2.0, ENERGY), change(1e-9, ENERGY)
    ('+0.12 Wh', '−2.0 Wh', 'no change')
    """
    by *= quantity.factor
    least = 10.0 ** -(quantity.decimals + 1)
    if abs(by) < least / 2:
        return tr("no change")
    decimals = max(quantity.decimals, min(1 - math.floor(math.log10(abs(by))), quantity.decimals + 1))
    unit = tr("percentage points") if quantity is BED_SHARE else unit_of(quantity)
    return f"{'+' if by > 0 else ''}{number(by, decimals, locale)} {unit}"


def otherwise(what: str, by: float, unit: str, locale: NumberLocale = POINT) -> str:
    """What would come out otherwise: the change with its sign, or the word that there is none.

    Parameters
    ----------
    what : str
        What would be otherwise: "If the room had been 1 K warmer".
    by : float
        How far the number would move, in `unit`.
    unit : str
        May be empty.
    locale : NumberLocale

    Examples
    --------
    >>> otherwise("If so", 0.1234, "W"), otherwise("If so", -2345.6, "kWh"), otherwise("If so", 0.0, "W")
    ('If so: +0.12 W', 'If so: −2346 kWh', 'If so: no change')
    """
    return f"{what}: {signed(by, unit, locale)}"


def signed(by: float, unit: str, locale: NumberLocale = POINT) -> str:
    """A change with its sign and unit, or the word that there is none; two digits tell enough of it."""
    if abs(by) < NOTHING:
        return tr("no change")
    return f"{'+' if by > 0 else ''}{figures(by, 2, locale)} {unit}".rstrip()


def too_high(value: float, unit: str, locale: NumberLocale = POINT) -> str:
    """What a meter that reads 1 % too high would mean for a number in proportion to its readings."""
    return tr(
        "If the meter read 1 % too high: {change}", change=signed(value / TOO_HIGH - value, unit, locale)
    )


def when(run: RunResult, *, lasted: bool = True) -> str:
    """When a run began and how long it took; empty where no clock tells it."""
    if run.start is None:
        return ""
    took = tr(" for {seconds}", seconds=duration(run.seconds)) if lasted and run.seconds is not None else ""
    return f"{run.start[:16].replace('T', ' ')}{took}"
