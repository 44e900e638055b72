"""How the user's desktop writes numbers and money."""

from attrs import evolve
from PySide6.QtCore import QLocale

from core.formatting import NumberLocale


def screen_locale() -> NumberLocale:
    """How the user's locale writes numbers."""
    locale = QLocale()
    return NumberLocale(decimal=locale.decimalPoint(), group="")


def number_locale() -> NumberLocale:
    """How the user's locale writes numbers, with its sign between thousands."""
    locale = QLocale()
    return NumberLocale(locale.decimalPoint(), locale.groupSeparator())


def money_locale() -> NumberLocale:
    """How the user's locale writes numbers and where it puts a currency's sign."""
    sample = QLocale().toCurrencyString(1.0, "¤")
    return evolve(screen_locale(), money_first=sample.strip("\u200e\u200f ").startswith("¤"))
