"""Numbers as people read them: the only place that rounds.

Rules: a number is rounded by its uncertainty and never shows more digits than that allows; the number
locale comes in as a value, so that files stay with the point while the screen follows its user.
"""

import math
from datetime import date

from attrs import frozen

from core.language import mark, tr
from core.quantities import Quantity

#: the sign between a value and its interval
PLUS_MINUS = "\u00b1"
NO_BREAK = "\N{NO-BREAK SPACE}"
#: shown where a value is not known
UNKNOWN = "\u2013"
_MINUS = "\u2212"
_MAX_DECIMALS = 6
_NUMBERS = (
    mark("one"), mark("two"), mark("three"), mark("four"), mark("five"), mark("six"), mark("seven"),
    mark("eight"), mark("nine"), mark("ten"),
)  # fmt: skip
_MONTHS = (
    mark("January"), mark("February"), mark("March"), mark("April"), mark("May"), mark("June"), mark("July"),
    mark("August"), mark("September"), mark("October"), mark("November"), mark("December"),
)  # fmt: skip


@frozen
class NumberLocale:
    """How numbers are written: the decimal mark, what parts thousands, and where a currency's sign stands."""

    decimal: str = "."
    group: str = ""
    money_first: bool = False


POINT = NumberLocale()


@frozen
class Rounded:
    """A number with the digits that are worth showing."""

    value: float
    u95: float | None
    decimals: int


def rounded(value: float, u95: float | None, decimals: int) -> Rounded:
    """Round a value by its uncertainty.

    The uncertainty keeps two digits where they read 10 to 35, else one (the rule of the Particle Data
    Group's reviews [1]_, here from memory); so never more than the two digits that the GUM allows [2]_.

    Parameters
    ----------
    value : float
    u95 : float or None
        Half-width of the interval; None or 0 leaves `decimals` digits.
    decimals : int
        Digits after the mark where no uncertainty decides.

    References
    ----------
    .. [1] Particle Data Group, *Review of Particle Physics*, introduction, section on rounding.
    .. [2] JCGM 100:2008, *Guide to the expression of uncertainty in measurement*, 7.2.6.

    Examples
    --------
    >>> rounded(21.3456, 0.81, 1)
    Rounded(value=21.3, u95=0.8, decimals=1)
    >>> rounded(21.3456, 0.98, 1)
    Rounded(value=21.3, u95=1.0, decimals=1)
    """
    if u95 is None or not math.isfinite(u95) or u95 <= 0:
        return Rounded(round(value, decimals), None, decimals)
    exponent = math.floor(math.log10(u95))
    leading = round(u95 / 10 ** (exponent - 2))  # three digits, 100 to 1000
    if leading >= 1000:
        leading, exponent = leading // 10, exponent + 1
    # above 0.95 the one digit reads 1.0: the next power of ten, with two digits
    digits = min(1 - exponent if leading < 355 else -exponent, _MAX_DECIMALS)
    return Rounded(round(value, digits), round(u95, digits), max(0, digits))


def number(value: float | None, decimals: int, locale: NumberLocale = POINT) -> str:
    """A number with so many digits after the mark.

    Examples
    --------
    >>> number(1234.5, 1, NumberLocale(",", "."))
    '1.234,5'
    """
    if value is None or not math.isfinite(value):
        return UNKNOWN
    text = f"{abs(value):,.{decimals}f}"
    whole, _, rest = text.partition(".")
    whole = whole.replace(",", locale.group)
    # a negative number that rounds to nothing is written without its sign
    sign = _MINUS if value < 0 and float(text.replace(",", "")) != 0 else ""
    return f"{sign}{whole}{locale.decimal}{rest}" if rest else f"{sign}{whole}"


def decimals_written(value: float, most: int) -> int | None:
    """How many decimals write a value in full; None where `most` are not enough.

    Examples
    --------
    >>> decimals_written(0.3175, 6), decimals_written(30.0, 6), decimals_written(1 / 3, 6)
    (4, 0, None)
    """
    text = f"{value:.{most}f}"
    return len(text.rstrip("0").partition(".")[2]) if math.isclose(float(text), value) else None


def p_text(p: float, locale: NumberLocale = POINT) -> str:
    """A p with two digits, never as nothing, and in one piece where a line is broken.

    Examples
    --------
    >>> [p_text(p).replace(NO_BREAK, " ") for p in (0.6833, 0.01667, 0.0000551)]
    ['p = 0.68', 'p = 0.017', 'p < 0.001']
    """
    sign, text = (
        ("<", number(0.001, 3, locale)) if p < 0.001 else ("=", number(p, 2 if p >= 0.1 else 3, locale))
    )
    return f"p{NO_BREAK}{sign}{NO_BREAK}{text}"


def with_interval(
    value: float | None, u95: float | None, quantity: Quantity, locale: NumberLocale = POINT
) -> str:
    """A value of the core with its interval, in the unit of its quantity but without the unit's name.

    Examples
    --------
    >>> from core.quantities import DURATION
    >>> with_interval(2274.0, 24.0, DURATION)
    '37.9 ± 0.4'
    """
    if value is None or not math.isfinite(value):
        return UNKNOWN
    shown = rounded(
        value * quantity.factor, None if u95 is None else u95 * quantity.factor, quantity.decimals
    )
    text = number(shown.value, shown.decimals, locale)
    if shown.u95 is None:
        return text
    return f"{text} {PLUS_MINUS} {number(shown.u95, shown.decimals, locale)}"


def value_alone(
    value: float | None, u95: float | None, quantity: Quantity, locale: NumberLocale = POINT
) -> str:
    """A value of the core rounded by its interval, with neither the interval nor the unit."""
    return with_interval(value, u95, quantity, locale).split(f" {PLUS_MINUS} ")[0]


def with_unit(text: str, quantity: Quantity) -> str:
    """A number's text with the unit of its quantity."""
    return f"{text} {quantity.unit}" if quantity.unit and text != UNKNOWN else text


def percent(share: float, decimals: int = 0, locale: NumberLocale = POINT) -> str:
    """A share as a percentage with its sign.

    Examples
    --------
    >>> percent(0.352)
    '35 %'
    """
    return f"{number(100.0 * share, decimals, locale)} %"


def duration(seconds: float) -> str:
    """A length of time in the two units that matter.

    Examples
    --------
    >>> duration(45), duration(2274), duration(7500), duration(200000)
    ('45 s', '37 min 54 s', '2 h 5 min', '2 d 7 h')
    """
    whole = round(seconds)
    for size, name, small, small_name in (
        (86400, "d", 3600, "h"),
        (3600, "h", 60, "min"),
        (60, "min", 1, "s"),
    ):
        if whole >= size:
            rest = (whole % size) // small
            return f"{whole // size} {name} {rest} {small_name}" if rest else f"{whole // size} {name}"
    return f"{whole} s"


def count(n: int, singular: str, plural: str | None = None) -> str:
    """A number of things, with the word in the right form.

    Examples
    --------
    >>> count(1, "run"), count(4, "run"), count(0, "log")
    ('1 run', '4 runs', 'no logs')
    """
    word = singular if n == 1 else (plural or singular + "s")
    return f"{n or 'no'} {word}"


def in_words(n: int) -> str:
    """A number of things up to ten as a word.

    Examples
    --------
    >>> in_words(4), in_words(11)
    ('four', '11')
    """
    return tr(_NUMBERS[n - 1]) if 0 < n <= len(_NUMBERS) else str(n)


def day(of: date) -> str:
    """A date with its month as a word.

    Examples
    --------
    >>> from datetime import date
    >>> day(date(2025, 5, 9))
    '9 May 2025'
    """
    return tr("{day} {month} {year}", day=str(of.day), month=tr(_MONTHS[of.month - 1]), year=str(of.year))


def capitalised(text: str) -> str:
    """A text with a capital letter at its start, the rest as it is: other languages have capitals inside.

    Examples
    --------
    >>> capitalised("room of Alder")
    'Room of Alder'
    """
    return text[:1].upper() + text[1:]


def listed(words: tuple[str, ...] | list[str]) -> str:
    """Words as a list in a sentence.

    Examples
    --------
    >>> listed(["Alder"]), listed(["Alder", "Birch"]), listed(["Alder", "Birch", "Rowan"])
    ('Alder', 'Alder and Birch', 'Alder, Birch and Rowan')
    """
    if len(words) < 2:
        return "".join(words)
    return tr("{words} and {last}", words=", ".join(words[:-1]), last=words[-1])


def one_of(words: tuple[str, ...] | list[str]) -> str:
    """Words of which one is meant, as a list in a sentence.

    Examples
    --------
    >>> one_of(["fan"]), one_of(["fan", "light", "pump"])
    ('fan', 'fan, light or pump')
    """
    if len(words) < 2:
        return "".join(words)
    return tr("{words} or {last}", words=", ".join(words[:-1]), last=words[-1])
