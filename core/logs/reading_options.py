"""The reading choices a person can make, as a table: name, what can be chosen, what was found."""

from collections.abc import Callable
from typing import Final, Literal

from attrs import evolve, frozen

from core.language import mark, tr
from core.logs.reading import Reading
from core.study import Choices, Negative
from core.traces import Sampling

DateOrder = Literal["dmy", "mdy", "ymd"]

_DELIMITERS: Final = {
    ",": mark("comma"),
    ";": mark("semicolon"),
    "\t": mark("tab"),
    "|": mark("bar"),
    " ": mark("spaces"),
}
_DECIMALS: Final = {".": mark("point, as in 12.5"), ",": mark("comma, as in 12,5")}
_ORDERS: Final[dict[DateOrder, str]] = {
    "dmy": mark("day, month, year"),
    "mdy": mark("month, day, year"),
    "ymd": mark("year, month, day"),
}
_SAMPLING: Final[dict[Sampling, str]] = {
    "sampled": mark("the instant"),
    "averaged": mark("the mean before it"),
    "on_change": mark("until the next one"),
}
_NEGATIVE: Final[dict[Negative, str]] = {
    "keep": mark("left as written"),
    "turn": mark("all signs turned round"),
    "size": mark("taken without their signs"),
    "zero": mark("taken as 0 W"),
}
_ENCODINGS: Final = ("utf-8", "utf-16", "cp1252", "cp1250", "cp1251", "latin-1", "shift_jis")
#: zones offered; any other IANA name can be typed in a study by another program
_ZONES: Final = (
    "UTC",
    *("Europe/London", "Europe/Lisbon", "Europe/Berlin", "Europe/Paris", "Europe/Madrid", "Europe/Rome"),
    *("Europe/Amsterdam", "Europe/Stockholm", "Europe/Warsaw", "Europe/Helsinki", "Europe/Athens"),
    *("America/New_York", "America/Chicago", "America/Denver", "America/Los_Angeles", "America/Sao_Paulo"),
    *("Asia/Kolkata", "Asia/Shanghai", "Asia/Tokyo", "Asia/Seoul", "Australia/Sydney", "Pacific/Auckland"),
)


@frozen
class Option:
    """One choice: ``entries`` are (text, value); ``found`` says in words what was found in a log.

    ``is_rare`` says that it is to be shown only where something was found.
    """

    name: str
    title: str
    entries: tuple[tuple[str, str], ...]
    found: Callable[[Reading], str | None]
    is_rare: bool = False


def _clock_words(reading: Reading) -> str | None:
    if reading.trace is None:
        return None
    clock = reading.trace.clock
    if clock.kind == "relative":
        return tr("elapsed time only")
    if clock.kind == "local":
        return tr("local, no zone stated")
    hours, minutes = divmod(abs(round(clock.offset_s / 60)), 60)
    sign = "-" if clock.offset_s < 0 else "+"
    return clock.zone or f"UTC{sign}{hours:02d}:{minutes:02d}"


def _decimal_words(reading: Reading) -> str | None:
    if reading.decimal is None:
        return None
    of_log = tr(_DECIMALS.get(reading.decimal, reading.decimal))
    others = [c for c in reading.columns if c.decimal]
    if not others:
        return of_log
    return tr(
        "{sign}; but {other} in {columns}",
        sign=of_log,
        other=tr(_DECIMALS[others[0].decimal or "."]),
        columns=", ".join(c.name for c in others),
    )


def _sampling_words(reading: Reading) -> str | None:
    return None if reading.trace is None else tr(_SAMPLING[reading.trace.kind])


def _negative_words(reading: Reading) -> str | None:
    why = dict(reading.reasons).get("negative", "")
    return tr(why).split(":")[0] if why else None


OPTIONS: Final = (
    Option(
        "sampling", mark("A value stands for"), tuple((t, k) for k, t in _SAMPLING.items()), _sampling_words
    ),
    Option(
        "negative",
        mark("Power below zero"),
        tuple((t, k) for k, t in _NEGATIVE.items()),
        _negative_words,
        is_rare=True,
    ),
    Option("zone", mark("Time zone"), tuple((z, z) for z in _ZONES), _clock_words),
    Option("date_order", mark("Order of a date"), tuple((t, k) for k, t in _ORDERS.items()), lambda _: None),
    Option(
        "decimal",
        mark("Decimal sign"),
        tuple((t, k) for k, t in _DECIMALS.items()),
        _decimal_words,
    ),
    Option(
        "delimiter",
        mark("Between columns"),
        tuple((t, k) for k, t in _DELIMITERS.items()),
        lambda r: None if r.delimiter is None else tr(_DELIMITERS.get(r.delimiter, repr(r.delimiter))),
    ),
    Option("encoding", mark("Encoding"), tuple((e, e) for e in _ENCODINGS), lambda r: r.encoding),
)


def chosen(choices: Choices, name: str) -> str | None:
    """The user's choice, or None where the program decides."""
    value = getattr(choices, name)
    return None if value is None else str(value)


def with_choice(choices: Choices, name: str, value: str | None) -> Choices:
    """The same choices with one changed, or handed back to the program with None.

    Raises
    ------
    ValueError
        If there is no such choice: the caller's mistake.
    """
    match name:
        case "encoding":
            return evolve(choices, encoding=value)
        case "delimiter":
            return evolve(choices, delimiter=value)
        case "decimal":
            return evolve(choices, decimal=value)
        case "zone":
            return evolve(choices, zone=value)
        case "date_order":
            return evolve(choices, date_order=next((o for o in _ORDERS if o == value), None))
        case "negative":
            return evolve(choices, negative=next((n for n in _NEGATIVE if n == value), None))
        case "sampling":
            return evolve(choices, sampling=next((s for s in _SAMPLING if s == value), None))
    raise ValueError(f"there is no reading choice {name!r}")
