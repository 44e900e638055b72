"""Time columns as seconds: which form, day-first or month-first, which kind of clock.

Rules: decided from the whole column, never from one row. Seconds are Unix time where the instant is
known, the wall clock read as if it were UTC where it is not, and elapsed time otherwise.
"""

import re
from collections.abc import Sequence
from typing import Any, Literal
from zoneinfo import ZoneInfo

import numpy as np
from attrs import evolve, frozen

from core.language import later, mark
from core.logs import counted_stamps, spans_of_time, stamps, yearless, zone_letters
from core.logs.reading import CHOSEN, NO_CHOICES
from core.logs.stamps import Group, Shape
from core.problems import Problem, Severity
from core.study import Choices
from core.traces import F64, ClockKind, evenly

#: years that a log can be of; the rest is a mistyped or an unset clock
FIRST_YEAR, LAST_YEAR = 1990, 2100
FIRST_S, LAST_S = 631152000.0, 4102444800.0
#: 2010 to 2040: when two-digit fields could be anything, a log is rather from then [s]
_RECENT_S = (1262304000.0, 2208988800.0)
_EARLIEST_S, _LATEST_S = -2208988800.0, 7258118400.0
#: a heading that says what the fields of a clock are
_MINUTES = re.compile(r"\bm{1,3}(?:in)?:s{1,3}", re.IGNORECASE)
_ORDERS = {"ymd": (0, 1, 2), "dmy": (2, 1, 0), "mdy": (2, 0, 1)}
_ORDER_NAMES = {"ymd": mark("year, month, day"), "dmy": mark("day first"), "mdy": mark("month first")}


@frozen
class Clocked:
    """A time column as seconds, NaN where a stamp could not be read.

    ``tick_s`` is the smallest step the stamps can show (60 when they are cut to the minute);
    ``is_time_of_day`` says that only a clock time without a date is known. [s]
    """

    seconds: F64
    kind: ClockKind
    reason: str
    tick_s: float = 0.0
    offset_s: float = 0.0
    zone: str | None = None
    is_time_of_day: bool = False
    problems: tuple[Problem, ...] = ()


@frozen
class Hints:
    """What else is known about the stamps of a file."""

    file: str = ""
    quantity: str = ""
    unit: str = ""
    decimal: str = "."
    zone: str | None = None
    is_1904: bool = False
    preamble_date_s: float | None = None
    heading: str = ""
    choices: Choices = NO_CHOICES
    interval_s: float | None = None
    start_s: float | None = None


NO_HINTS = Hints()


def from_timestamps(column: Any, hints: Hints, offset_s: float | None = None) -> Clocked:
    """An Arrow timestamp column; `offset_s` is what its first row stated, None for a local clock."""
    import pyarrow as pa

    zone = column.type.tz
    factor = {"s": 1.0, "ms": 1e3, "us": 1e6, "ns": 1e9}[column.type.unit]
    whole = column.cast(pa.int64())
    values = whole.to_numpy(zero_copy_only=False) if isinstance(whole, pa.Array) else whole.to_numpy()
    seconds = sane(np.asarray(values, dtype=np.float64) / factor)
    if zone is None and offset_s is None:
        return zoned(Clocked(seconds, "local", "date and time of no stated zone", tick_of(seconds)), hints)
    from core.logs.zones import is_zone

    named = zone if zone not in (None, "UTC") and is_zone(str(zone)) else None
    return Clocked(
        seconds, "absolute", "instants with their offset from UTC", tick_of(seconds), offset_s or 0.0, named
    )


def from_text(column: Any, hints: Hints) -> Clocked:
    """Written stamps in any form `core.logs.stamps` understands."""
    counted = counted_stamps.seconds_of(column)
    if counted is not None:
        moments = sane(counted[0])
        return Clocked(moments, "absolute", "milliseconds since 1970", tick_of(moments), counted[1])
    spans = spans_of_time.beginnings(column)
    if spans is not None:
        began = from_text(spans, hints)
        return evolve(began, reason=f"{began.reason}; each row counts from where its span begins")
    without_year = yearless.seconds_of(column)
    if without_year is not None:
        told = Problem("log.no_year", Severity.NOTE, hints.file)
        why = "dates without a year"
        return Clocked(without_year, "relative", why, tick_of(without_year), problems=(told,))
    count = len(column)
    found = [(g, s) for g in stamps.groups(column) if (s := stamps.understand(g.skeleton)) is not None]
    seconds = np.full(count, np.nan)
    if not found:
        return Clocked(seconds, "relative", "no stamp of the time column could be read")
    dated = sum(g.rows.size for g, s in found if s.date)
    undated = sum(g.rows.size for g, s in found if not s.date)
    if undated > dated:
        return _undated([(g, s) for g, s in found if not s.date], seconds, hints)
    found = [(g, s) for g, s in found if s.date]
    order, why, doubt = _order(found, count, hints)
    offsets = np.full(count, np.nan)
    for group, shape in found:
        seconds[group.rows] = _dated(group, shape, order)
        written = stamps.offset_seconds(group, shape)
        if written is not None:
            offsets[group.rows] = written
    problems = (*doubt, *zone_letters.doubts((s.letters for _, s in found), hints.file))
    seconds = sane(seconds)
    sample = found[0][0]
    text = f"{why}: {bytes(sample.matrix[0]).decode('utf-8', 'replace').strip()}"
    tick = _tick_of(found, seconds)
    with_offset = np.isfinite(offsets) & np.isfinite(seconds)
    if with_offset.sum() > 0.5 * np.isfinite(seconds).sum():
        seconds = np.where(with_offset, seconds - np.where(with_offset, offsets, 0.0), np.nan)
        first = float(offsets[np.flatnonzero(with_offset)[0]])
        return Clocked(
            seconds, "absolute", text + ", offset from UTC stated", tick, first, None, False, problems
        )
    return zoned(Clocked(seconds, "local", text, tick, problems=problems), hints)


def settled_order(cells: Sequence[str], hints: Hints) -> Literal["dmy", "mdy", "ymd"] | None:
    """Order of day and month when a sample of stamps leaves no doubt about it; None when it does.

    Needed to turn a long column into seconds block by block, before all of it has been seen.
    """
    import pyarrow as pa

    column = pa.array([c.strip() or None for c in cells], type=pa.string())
    found = [(g, s) for g in stamps.groups(column) if (s := stamps.understand(g.skeleton)) is not None]
    if not found or any(not s.date for _, s in found):
        return None
    if spans_of_time.beginnings(column) is not None:
        return None
    order, _, doubt = _order(found, len(column), hints)
    if doubt or zone_letters.doubts((s.letters for _, s in found), ""):
        return None
    return "dmy" if order == "dmy" else "mdy" if order == "mdy" else "ymd"


def _dated(group: Group, shape: Shape, order: str) -> F64:
    """Seconds of one group: midnight of its date and the time of day."""
    fields = [stamps.digits(group.matrix, span) for span in shape.date]
    if shape.is_of_weeks:
        return stamps.midnight_of_week(*fields) + stamps.seconds_of_day(group, shape)
    if len(fields) == 2 and not shape.month_word:
        return stamps.midnight_of_day(*fields) + stamps.seconds_of_day(group, shape)
    if shape.month_word:
        wide = [b - a for a, b in shape.date]
        at, day = (0, fields[1]) if wide[0] == 4 else (1, fields[0])
        month = np.full(day.shape, shape.month_word, dtype=np.int64)
    else:
        at, m, d = _ORDERS["ymd" if _is_year_first(shape) else order]
        month, day = fields[m], fields[d]
    is_short = shape.date[at][1] - shape.date[at][0] <= 2 and not shape.era
    year = stamps.of_century(fields[at]) if is_short else fields[at] + shape.era
    same = year * 10000 + month * 100 + day
    changes = np.flatnonzero(np.diff(same)) + 1
    if changes.size < same.size // 8:  # a date stands for many rows: work it out once each
        starts = np.concatenate(([0], changes))
        days = stamps.midnight(year[starts], month[starts], day[starts])
        base = np.repeat(days, np.diff(np.concatenate((starts, [same.size]))))
    else:
        base = stamps.midnight(year, month, day)
    return base + stamps.seconds_of_day(group, shape)


def _is_year_first(shape: Shape) -> bool:
    return bool(shape.date) and (shape.date[0][1] - shape.date[0][0] == 4 or shape.era > 0)


def _order(
    found: Sequence[tuple[Group, Shape]], count: int, hints: Hints
) -> tuple[str, str, tuple[Problem, ...]]:
    """Day-first, month-first or year-first, with the reason, and a problem when both remain possible."""
    open_groups = [(g, s) for g, s in found if not s.month_word and not _is_year_first(s)]
    if not open_groups:
        return "ymd", "year first" if not found[0][1].month_word else "the month is a word", ()
    if hints.choices.date_order:
        return hints.choices.date_order, CHOSEN, ()
    total = sum(g.rows.size for g, _ in open_groups)
    four = all(s.date[2][1] - s.date[2][0] == 4 for _, s in open_groups)
    fits: dict[str, F64] = {}
    for order in ("dmy", "mdy") if four else ("dmy", "mdy", "ymd"):
        out = np.full(count, np.nan)
        for group, shape in open_groups:
            out[group.rows] = _dated(group, shape, order)
        good = np.isfinite(out)
        if (
            good.sum() >= 0.97 * total
            and 0.97 * good.sum() <= ((out[good] >= FIRST_S) & (out[good] <= LAST_S)).sum()
        ):
            fits[order] = out[good]
    if not fits:
        return "dmy", "no order of day and month fits", ()
    if len(fits) == 1:
        order = next(iter(fits))
        return order, f"{_ORDER_NAMES[order]}: the only order that gives real dates in all rows", ()
    backward = {o: _unevenness(v) for o, v in fits.items()}
    best = min(backward.values())
    left = [o for o in fits if backward[o] <= best * 1.5 + 1e-9]
    if len(left) == 1:
        why = f"{_ORDER_NAMES[left[0]]}: only so does time run forward in even steps"
        taken = {"taken": later(_ORDER_NAMES[left[0]])}
        return left[0], why, (Problem("log.date_order_by_steps", Severity.NOTE, hints.file, facts=taken),)
    recent = [o for o in left if _RECENT_S[0] <= float(np.median(fits[o])) <= _RECENT_S[1]]
    order, why = _habit(recent or left, open_groups, hints)
    sample = bytes(open_groups[0][0].matrix[0]).decode("utf-8", "replace").strip()
    facts: dict[str, object] = {"taken": later(_ORDER_NAMES[order]), "sample": sample, "why": why}
    return (
        order,
        f"{_ORDER_NAMES[order]}: {why}",
        (Problem("log.date_order_doubtful", Severity.CAUTION, hints.file, facts=facts),),
    )


def _unevenness(seconds: F64) -> float:
    """Total way of the clock over its net way: 1 for a clock that runs one way; plus days jumped over."""
    steps = np.diff(seconds)
    if not steps.size:
        return 0.0
    way = float(np.abs(steps).sum())
    usual = float(np.median(np.abs(steps)))
    return float((np.abs(steps) > max(40 * usual, 20 * 86400.0)).sum()) * 10 + way / 86400.0


def _habit(left: list[str], found: Sequence[tuple[Group, Shape]], hints: Hints) -> tuple[str, str]:
    shape = found[0][1]
    separator = found[0][0].skeleton.strip().lstrip("0")[:1]
    if "mdy" in left and separator == "/" and shape.half >= 0 and hints.decimal == ".":
        return "mdy", later(mark("with slashes and a 12 h clock the month usually comes first"))
    if "dmy" in left:
        return "dmy", later(mark("the usual order with this separator and a 24 h clock"))
    return left[0], later(mark("the first order that fits"))


def _undated(found: Sequence[tuple[Group, Shape]], seconds: F64, hints: Hints) -> Clocked:
    for group, shape in found:
        seconds[group.rows] = stamps.seconds_of_day(group, shape)
    finite = seconds[np.isfinite(seconds)]
    tick = _tick_of(found, seconds)
    if all(s.is_of_hour for _, s in found) and _wraps(finite, 1800.0):
        seconds = _running_on(seconds, 3600.0)
        told = Problem("log.hours_lost", Severity.CAUTION, hints.file)
        return Clocked(seconds, "relative", "minutes and seconds without the hour", tick, problems=(told,))
    if any(s.is_duration for _, s in found):
        return Clocked(seconds, "relative", "elapsed time as a duration", tick)
    starts_at_zero = bool(finite.size) and finite[0] < 2.0 and any(s.half < 0 for _, s in found)
    beyond = bool(finite.size) and float(finite.max()) >= 86400
    if _MINUTES.search(hints.heading):
        return Clocked(
            seconds / 60, "relative", "elapsed minutes and seconds, as the heading says", tick / 60
        )
    if hints.quantity == "elapsed" or beyond or (starts_at_zero and not _wraps(finite)):
        if found[0][1].second is None and (hints.quantity == "elapsed" or beyond) and _rather_minutes(finite):
            doubt = Problem("log.minutes_or_hours", Severity.CAUTION, hints.file)
            return Clocked(
                seconds / 60, "relative", "elapsed minutes and seconds", tick / 60, problems=(doubt,)
            )
        return Clocked(seconds, "relative", "elapsed hours, minutes, seconds", tick)
    seconds = _running_on(seconds, 86400.0)
    if hints.preamble_date_s is not None:
        out = Clocked(
            seconds + hints.preamble_date_s, "local", "time of day; the date stands above the headings", tick
        )
        return zoned(out, hints)
    note = Problem("log.time_of_day_only", Severity.NOTE, hints.file)
    return Clocked(
        seconds, "relative", "time of day without a date", tick, is_time_of_day=True, problems=(note,)
    )


def _wraps(finite: F64, by_s: float = 43200.0) -> bool:
    return bool((np.diff(finite) < -by_s).any())


def _running_on(seconds: F64, lap_s: float) -> F64:
    """Clock times that begin anew after each lap, made to run on. [s]"""
    out = seconds.copy()
    good = np.flatnonzero(np.isfinite(seconds))
    if good.size:
        out[good] += np.cumsum(np.concatenate(([0.0], np.diff(seconds[good]) < -lap_s / 2))) * lap_s
    return out


def _rather_minutes(finite: F64) -> bool:
    """Whether h:mm is really m:ss: read as h:mm the usual step would be a minute or more every row."""
    steps = np.diff(finite)
    return bool(steps.size) and float(np.median(steps)) >= 60.0 and float(finite.max()) > 86400.0


def zoned(clocked: Clocked, hints: Hints) -> Clocked:
    """A wall clock becomes an instant when a zone is stated or chosen."""
    zone = hints.choices.zone or hints.zone
    if zone is None or clocked.kind != "local":
        return clocked
    from core.logs.zones import fixed_offset_s, is_zone, utc_of

    offset_s = fixed_offset_s(zone)
    if offset_s is not None:
        seconds = clocked.seconds - offset_s
        reason = f"{clocked.reason}, {zone} stated"
        return evolve(clocked, seconds=seconds, kind="absolute", offset_s=offset_s, reason=reason)
    if not is_zone(zone):
        problem = Problem("log.zone_unknown", Severity.CAUTION, hints.file, facts={"zone": zone})
        return evolve(clocked, problems=(*clocked.problems, problem))
    seconds = utc_of(clocked.seconds, ZoneInfo(zone))
    return evolve(
        clocked, seconds=seconds, kind="absolute", zone=zone, reason=f"{clocked.reason}, zone {zone} stated"
    )


def _tick_of(found: Sequence[tuple[Group, Shape]], seconds: F64) -> float:
    shape = found[0][1]
    if shape.fraction is not None:
        return max(10.0 ** -(shape.fraction[1] - shape.fraction[0]), tick_of(seconds))
    return 60.0 if shape.second is None else tick_of(seconds)


def sane(seconds: F64) -> F64:
    """Dated stamps with NaN where no log can be from: an unset or mistyped clock.

    Years before 1900 and after 2200 never count; beyond 1990 to 2100 only when most rows are there (a clock
    that was never set begins in 1970).
    """
    if not seconds.size:
        return seconds
    low, high = float(np.fmin.reduce(seconds)), float(np.fmax.reduce(seconds))
    if low >= FIRST_S and high <= LAST_S:
        return seconds
    inside = (seconds >= FIRST_S) & (seconds <= LAST_S)
    if inside.sum() < 0.5 * np.isfinite(seconds).sum():
        inside = (seconds >= _EARLIEST_S) & (seconds <= _LATEST_S)
    return np.where(inside, seconds, np.nan)


def tick_of(seconds: F64) -> float:
    """The largest of 60, 1, 0.1, 0.01, 0.001 s that all stamps are whole multiples of."""
    picked = evenly(seconds, 4000)
    finite = picked[np.isfinite(picked)]
    for tick in (60.0, 1.0, 0.1, 0.01, 0.001):
        ratio = finite / tick
        if finite.size and bool((np.abs(ratio - np.round(ratio)) < 1e-3).all()):
            return tick
    return 1e-6


def date_in(lines: Sequence[str]) -> float | None:
    """Midnight of a date written in lines above the headings, None when there is none. [s]"""
    for line in lines:
        match = _DATE.search(line)
        if match is None:
            continue
        year, month, day = (
            (match.group(g) for g in ("y", "m", "d"))
            if match.group("y")
            else (match.group("y2"), match.group("m2"), match.group("d2"))
        )
        at = stamps.midnight(*(np.array([int(x)]) for x in (year, month, day)))
        if np.isfinite(at[0]):
            return float(at[0])
    return None


_DATE = re.compile(
    r"\b(?P<y>\d{4})[-/.](?P<m>\d\d?)[-/.](?P<d>\d\d?)\b|\b(?P<d2>\d\d?)\.(?P<m2>\d\d?)\.(?P<y2>\d{4})\b"
)
