"""Times written as plain numbers: Unix time, days of a spreadsheet, digits of a date, elapsed time.

Rules: decided from the size of the middle value and of the usual step, and from the unit in the heading.
"""

import re

import numpy as np

from core.logs import stamps
from core.logs.clock import FIRST_S, FIRST_YEAR, LAST_S, LAST_YEAR, Clocked, Hints, sane, tick_of, zoned
from core.logs.words import meaning
from core.logs.zones import is_zone
from core.problems import Problem, Severity
from core.traces import F64, ClockKind, evenly

_UNIX_FORMS = (
    (1.0, "Unix seconds"),
    (1e3, "Unix milliseconds"),
    (1e6, "Unix microseconds"),
    (1e9, "Unix nanoseconds"),
)
#: a heading that states one of these units means no longer one
_STATED = {"ms": 1e3, "us": 1e6, "ns": 1e9}
_ELAPSED = {"s": 1.0, "ms": 1e-3, "us": 1e-6, "ns": 1e-9, "min": 60.0, "h": 3600.0, "d": 86400.0}
#: days from 1899-12-30 and 1904-01-01 to 1970-01-01
_SERIAL_1900, _SERIAL_1904 = 25569.0, 24107.0
#: Julian dates of the years that logs can be of, and of 1970-01-01
_JULIAN, _JULIAN_1970 = (2447892.5, 2488069.5), 2440587.5
#: days since the year 0, as programs for mathematics count: of the years of logs, and of 1970-01-01
_YEAR_0, _YEAR_0_1970 = (726834.0, 767376.0), 719529.0
#: ticks of 100 ns: how many at 1970-01-01; from the year 1 on a clock of no stated zone, from 1601 in UTC
_TICKS: tuple[tuple[float, ClockKind, str], ...] = (
    (621355968e9, "local", "ticks of 100 ns since the year 1"),
    (116444736e9, "absolute", "ticks of 100 ns since 1601"),
)
#: of a year before, no log counts in nanoseconds or ticks [s since 1970]
_TICKS_FROM_S = 946684800.0
#: days since 1858-11-17 at 1970-01-01, and the headings that name them: the numbers alone might be serials
_MODIFIED_1970 = 40587.0
_MODIFIED = re.compile(r"\bmjd\b|modified julian")
#: of YYMMDDhhmmss: below are YYYYMMDDhhmm, above Unix milliseconds
_SHORT_YEARS = (22e10, 60e10)
#: a shorter step is none of a clock that counts in seconds or hours so far on [d]
_SHORTEST_D = 0.02
#: a larger number is no time, in nanoseconds or otherwise
_LARGEST = 5e18


def _finite(values: F64) -> F64:
    is_finite = np.isfinite(values)
    return values if bool(is_finite.all()) else values[is_finite]


def from_numbers(values: F64, hints: Hints) -> Clocked:
    """Unix time, spreadsheet serials, digits such as 20250623093600, or elapsed time."""
    finite = _finite(values)
    if finite.size and max(float(finite.max()), -float(finite.min())) > _LARGEST:
        values = np.where(np.abs(values) <= _LARGEST, values, np.nan)
        finite = _finite(values)
    if not finite.size:
        return Clocked(values, "relative", "no number in the time column")
    middle = float(np.median(evenly(finite)))
    compact = _compact(values, middle)
    if compact is not None:
        compact = sane(compact)
        return zoned(
            Clocked(compact, "local", "digits of year, month, day, hour, minute", tick_of(compact)), hints
        )
    ticks = _ticks(values, middle, hints)
    if ticks is not None:
        return ticks
    zone = hints.choices.zone
    coarsest = _STATED.get(hints.unit, 1.0)
    for factor, name in _UNIX_FORMS:
        if factor >= coarsest and FIRST_S * factor <= middle <= LAST_S * factor:
            seconds = values / factor
            seconds[~((seconds > FIRST_S) & (seconds < LAST_S))] = np.nan
            return Clocked(
                seconds,
                "absolute", f"{name}: the middle value {middle:.0f} is a moment of our time so",
                tick_of(seconds),
                zone=zone if zone and is_zone(zone) else None,
            )  # fmt: skip
    if _JULIAN[0] <= middle <= _JULIAN[1] and (np.diff(finite) < 1.0).all():
        seconds = np.round((values - _JULIAN_1970) * 86400.0, 1)
        return Clocked(sane(seconds), "absolute", "Julian dates: days since noon of -4712-01-01", 0.1)
    if _YEAR_0[0] <= middle <= _YEAR_0[1] and _is_in_days(finite, hints):
        seconds = sane(np.round((values - _YEAR_0_1970) * 86400.0, 3))
        return zoned(Clocked(seconds, "local", "days since the year 0", tick_of(seconds)), hints)
    if _MODIFIED.search(hints.heading.casefold()):
        seconds = sane(np.round((values - _MODIFIED_1970) * 86400.0, 3))
        return Clocked(seconds, "absolute", "modified Julian dates: days since 1858-11-17", tick_of(seconds))
    if _is_serial(finite, hints):
        origin = _SERIAL_1904 if hints.is_1904 else _SERIAL_1900
        seconds = sane(np.round((values - origin) * 86400.0, 3))
        why = f"days since {'1904-01-01' if hints.is_1904 else '1899-12-30'}, as spreadsheets count"
        return zoned(Clocked(seconds, "local", why, tick_of(seconds)), hints)
    return _elapsed(values, hints)


def _ticks(values: F64, middle: float, hints: Hints) -> Clocked | None:
    """Counts of 100 ns from far back; None where they would be of no log's time."""
    for at_1970, kind, why in _TICKS if hints.unit == "" else ():
        if _TICKS_FROM_S <= (middle - at_1970) / 1e7 <= LAST_S:
            seconds = sane(np.round((values - at_1970) / 1e7, 3))
            return zoned(Clocked(seconds, kind, why, tick_of(seconds)), hints)
    return None


def _elapsed(values: F64, hints: Hints) -> Clocked:
    unit = hints.unit if hints.unit in _ELAPSED else ""
    why = f"elapsed time in {unit}, as the heading says"
    if meaning(hints.heading).quantity == "row number":
        return _by_rows(values, hints)
    if not unit:
        steps = np.diff(values[np.isfinite(values)])
        step = float(np.median(steps[steps > 0])) if (steps > 0).any() else 1.0
        whole = bool(np.all(values[np.isfinite(values)] % 1 == 0))
        unit = "ms" if whole and step >= 200 and "min" not in hints.unit else "s"
        why = f"elapsed time, taken as {unit} from its usual step of {step:.4g}"
        if step < 0.02 and not whole:
            unit, why = "h", f"elapsed time, taken as hours from its usual step of {step:.4g}"
    seconds = values * _ELAPSED[unit]
    return _begun(seconds, why, hints)


def _begun(elapsed_s: F64, why: str, hints: Hints) -> Clocked:
    """Elapsed time, as a wall clock where the lines above the headings say when it began."""
    if hints.start_s is None:
        return Clocked(elapsed_s, "relative", why, tick_of(elapsed_s))
    seconds = elapsed_s + hints.start_s
    told = Clocked(seconds, "local", f"{why}; its beginning stands above the headings", tick_of(seconds))
    return zoned(told, hints)


def _by_rows(values: F64, hints: Hints) -> Clocked:
    """Rows that are only numbered, at the interval that the lines above the headings state."""
    finite = values[np.isfinite(values)]
    if hints.interval_s is not None:
        why = f"rows are numbered and {hints.interval_s:g} s apart, as the lines above the headings say"
        return _begun((values - finite[0]) * hints.interval_s, why, hints)
    doubt = Problem("log.rows_counted", Severity.CAUTION, hints.file, facts={"column": hints.heading})
    return Clocked(values, "relative", "rows are numbered; each is taken as a second", 1.0, problems=(doubt,))


def _is_in_days(finite: F64, hints: Hints) -> bool:
    """Whether numbers go in so small steps, and are so large, that they can only be days with fractions."""
    steps = np.abs(np.diff(finite[:20000]))
    steps = steps[steps > 0]
    return hints.unit in ("", "d") and bool(steps.size) and float(np.median(steps)) < _SHORTEST_D


def _is_serial(finite: F64, hints: Hints) -> bool:
    if hints.unit in _ELAPSED and hints.unit != "d":
        return False
    middle = float(np.median(finite))
    if not 30000 <= middle <= 75000:
        return False
    steps = np.abs(np.diff(finite[:20000]))
    steps = steps[steps > 0]
    return not steps.size or float(np.median(steps)) < 0.5 or hints.quantity == "date"


def _compact(values: F64, middle: float) -> F64 | None:
    """Numbers that are YYYYMMDDhhmm[ss] or YYMMDDhhmmss; None when they are not."""
    if _SHORT_YEARS[0] <= middle < _SHORT_YEARS[1]:
        found = _compact(values + 20e12, middle + 20e12)
        return found if found is not None and np.isfinite(found[np.isfinite(values)]).all() else None
    if not (FIRST_YEAR * 1e10 <= middle < LAST_YEAR * 1e10 or FIRST_YEAR * 1e8 <= middle < LAST_YEAR * 1e8):
        return None
    has_seconds = middle >= 1e12
    whole = np.where(np.isfinite(values), values, 0).astype(np.int64)
    second = whole % 100 if has_seconds else np.zeros_like(whole)
    whole = whole // 100 if has_seconds else whole
    minute, hour = whole % 100, whole // 100 % 100
    day, month, year = whole // 10000 % 100, whole // 1000000 % 100, whole // 100000000
    out = stamps.midnight(year, month, day) + hour * 3600.0 + minute * 60.0 + second
    out[(hour > 23) | (minute > 59) | (second > 59)] = np.nan
    return out if np.isfinite(out).mean() > 0.95 else None
