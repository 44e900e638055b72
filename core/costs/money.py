"""Amounts of money as people read them, in any currency.

Rules: the currency's sign stands where the reader's locale puts it; small amounts keep two digits that count,
because a part may cost less than a hundredth of the unit.
"""

import math

from core.formatting import PLUS_MINUS, UNKNOWN, NumberLocale, decimals_written, number, rounded

#: currencies that are counted in whole units (ISO 4217, minor unit 0; from memory)
_WHOLE = frozenset({"JPY", "¥", "円", "KRW", "₩", "VND", "₫", "CLP", "ISK", "HUF", "Ft"})
_MOST_DECIMALS = 6
#: an amount at least this large needs no more than the currency's own decimals
_ORDINARY = 0.1


def decimals_of(amount: float, currency: str) -> int:
    """Decimals with which an amount is written.

    Examples
    --------
    >>> decimals_of(41.4, "€"), decimals_of(0.0064, "€"), decimals_of(41.4, "JPY")
    (2, 4, 0)
    """
    usual = 0 if currency in _WHOLE else 2
    size = abs(amount)
    if size >= (10.0 if usual == 0 else _ORDINARY) or size == 0 or not math.isfinite(size):
        return usual
    return min(_MOST_DECIMALS, max(usual, 1 - math.floor(math.log10(size))))


def money(
    amount: float | None,
    currency: str,
    locale: NumberLocale,
    u95: float | None = None,
    decimals: int | None = None,
) -> str:
    """An amount with its currency, and with its interval where there is one.

    Parameters
    ----------
    amount : float or None
        [currency]
    currency : str
        Any symbol or code; may be empty.
    locale : NumberLocale
    u95 : float, optional
        Half-width of the 95 % interval. [currency]
    decimals : int, optional
        To write several amounts alike.

    Examples
    --------
    >>> money(41.4, "€", NumberLocale()), money(-1.5, "$", NumberLocale(money_first=True))
    ('41.40 €', '−$1.50')
    >>> money(0.3612, "€", NumberLocale(), 0.0046)
    '0.361 ± 0.005 €'
    """
    if amount is None or not math.isfinite(amount):
        return UNKNOWN
    if u95 is not None and u95 > 0:
        shown = rounded(amount, u95, decimals_of(amount, currency))
        half = number(shown.u95, shown.decimals, locale)
        digits = f"{number(abs(shown.value), shown.decimals, locale)} {PLUS_MINUS} {half}"
        is_negative = shown.value < 0
    else:
        shown_decimals = decimals_of(amount, currency) if decimals is None else decimals
        digits = number(abs(amount), shown_decimals, locale)
        is_negative = amount < 0 and any(c in "123456789" for c in digits)
    sign = "\u2212" if is_negative else ""
    if not currency:
        return f"{sign}{digits}"
    if not locale.money_first:
        return f"{sign}{digits} {currency}"
    gap = " " if currency[-1].isalpha() else ""
    return f"{sign}{currency}{gap}{digits}"


def price_per_kwh(price: float | None, currency: str, locale: NumberLocale) -> str:
    """A price with its unit, in the decimals in which it was stated; a mean as any other amount.

    Examples
    --------
    >>> price_per_kwh(0.3, "€", NumberLocale()), price_per_kwh(0.3175, "€", NumberLocale())
    ('0.30 €/kWh', '0.3175 €/kWh')
    """
    if price is None:
        return UNKNOWN
    stated = decimals_written(price, _MOST_DECIMALS) or 0
    return f"{money(price, currency, locale, decimals=max(decimals_of(price, currency), stated))}/kWh"
