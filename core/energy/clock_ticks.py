"""Where a time axis gets its ticks and how they are written: by the log's own wall clock, or by elapsed time.

Rules: ticks stand at round times of the wall clock, through both changes of a year; the date is written where
it changes; 24-hour clock, day before month.
"""

import math
from datetime import UTC, datetime, timedelta, timezone
from typing import Final
from zoneinfo import ZoneInfo

from attrs import frozen

from core.language import mark, tr
from core.traces import Clock
from core.units import SECONDS_PER_DAY, SECONDS_PER_HOUR, SECONDS_PER_MINUTE

_EPOCH: Final = datetime(1970, 1, 1, tzinfo=UTC)
_MONTHS: Final = (
    *(mark("Jan"), mark("Feb"), mark("Mar"), mark("Apr"), mark("May"), mark("Jun")),
    *(mark("Jul"), mark("Aug"), mark("Sep"), mark("Oct"), mark("Nov"), mark("Dec")),
)
_DAY, _HOUR, _MINUTE = SECONDS_PER_DAY, SECONDS_PER_HOUR, SECONDS_PER_MINUTE
#: distances between ticks that people count in [s]
_STEPS: Final = (
    *(0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30),
    *(_MINUTE * n for n in (1, 2, 5, 10, 15, 30)),
    *(_HOUR * n for n in (1, 2, 3, 6, 12)),
    *(_DAY * n for n in (1, 2, 7, 14)),
)
#: and, beyond those, in months
_MONTH_STEPS: Final = (1, 2, 3, 6, 12, 24, 60, 120)
_LONGEST_MONTH_S: Final = 31 * _DAY


@frozen
class Tick:
    """A tick at `at_s` of the trace; `is_date` where the label is a date among times. [s]"""

    at_s: float
    label: str
    is_date: bool = False


def time_ticks(clock: Clock, start_s: float, end_s: float, most: int) -> tuple[Tick, ...]:
    """Ticks between two times of a trace.

    Parameters
    ----------
    clock : Clock
    start_s, end_s : float
        Visible part on the trace's own clock, ``start_s < end_s``. [s]
    most : int
        At most so many, at least 1.

    Examples
    --------
    >>> [t.label for t in time_ticks(Clock("relative"), 0, 7200, 5)]
    ['0:00', '0:30', '1:00', '1:30', '2:00']
    """
    if not start_s < end_s or most < 1:
        raise ValueError("ticks need start_s < end_s and room for one")
    if clock.kind == "relative" or clock.start_s is None:
        return _elapsed(start_s, end_s, most)
    span_s = end_s - start_s
    step_s = next((s for s in _STEPS if span_s / s < most), None)
    if step_s is None:
        walls = _month_walls(clock, start_s, end_s, most)
    else:
        first, last = _wall_s(clock, start_s), _wall_s(clock, end_s)
        # Weeks begin on Monday; day 0 of Unix time was a Thursday.
        origin = 4 * _DAY if step_s >= 7 * _DAY else 0.0
        low, high = math.ceil((first - origin) / step_s), math.floor((last - origin) / step_s)
        walls = [origin + step_s * n for n in range(low, high + 1)]
    ticks = []
    for wall in walls:
        at_s = _trace_s(clock, wall)
        if at_s is not None and start_s <= at_s <= end_s:
            ticks.append(_wall_tick(at_s, wall, step_s))
    return tuple(ticks)


def moment(clock: Clock, at_s: float, *, seconds: bool = True) -> str:
    """One time of a trace in words: date and wall clock, or elapsed time.

    Examples
    --------
    >>> moment(Clock("local", 0.0), 3661.0)
    '1 Jan 1970 01:01:01'
    >>> moment(Clock("relative"), 3661.0)
    '1:01:01'
    """
    if clock.kind == "relative" or clock.start_s is None:
        return _clock_text(at_s, 1.0 if seconds else _MINUTE)
    at = _EPOCH + timedelta(seconds=round(_wall_s(clock, at_s)))
    time = f"{at:%H:%M:%S}" if seconds else f"{at:%H:%M}"
    return tr("{day} {month} {year} {time}", day=at.day, month=_month(at), year=at.year, time=time)


def _month(at: datetime) -> str:
    return tr(_MONTHS[at.month - 1])


def _wall_s(clock: Clock, at_s: float) -> float:
    """The wall clock, as seconds since 1970 read as if it were UTC. [s]"""
    start_s = clock.start_s or 0.0
    if clock.kind == "local":
        return start_s + at_s + sum(by for at, by in clock.shifts if at <= at_s)
    instant = _EPOCH + timedelta(seconds=start_s + at_s)
    zone = ZoneInfo(clock.zone) if clock.zone else timezone(timedelta(seconds=clock.offset_s))
    offset = instant.astimezone(zone).utcoffset() or timedelta(0)
    return start_s + at_s + offset.total_seconds()


def _trace_s(clock: Clock, wall_s: float) -> float | None:
    """The first time of the trace at which the wall clock shows `wall_s`; None in an hour left out."""
    guess = wall_s - (_wall_s(clock, 0.0))
    for by in (_wall_s(clock, guess) - wall_s, _HOUR, -_HOUR, 0.0):
        at_s = guess - by
        if abs(_wall_s(clock, at_s) - wall_s) < 1e-3:
            return at_s
    return None


def _month_walls(clock: Clock, start_s: float, end_s: float, most: int) -> list[float]:
    span_s = end_s - start_s
    fitting = (m for m in _MONTH_STEPS if span_s / (m * _LONGEST_MONTH_S) < most - 1)
    months = next(fitting, _MONTH_STEPS[-1])
    first = _EPOCH + timedelta(seconds=_wall_s(clock, start_s))
    last = _EPOCH + timedelta(seconds=_wall_s(clock, end_s))
    low = math.ceil((first.year * 12 + first.month - 1) / months)
    high = (last.year * 12 + last.month - 1) // months
    walls = []
    for n in range(low, high + 1):
        year, month = divmod(n * months, 12)
        walls.append((datetime(year, month + 1, 1, tzinfo=UTC) - _EPOCH).total_seconds())
    return walls


def _wall_tick(at_s: float, wall_s: float, step_s: float | None) -> Tick:
    at = _EPOCH + timedelta(seconds=round(wall_s, 3))
    if step_s is None:
        return Tick(at_s, str(at.year) if at.month == 1 else _month(at), is_date=at.month == 1)
    if step_s >= _DAY or (at.hour, at.minute, at.second, at.microsecond) == (0, 0, 0, 0):
        return Tick(at_s, tr("{day} {month}", day=at.day, month=_month(at)), is_date=step_s < _DAY)
    if step_s >= _MINUTE:
        return Tick(at_s, f"{at:%H:%M}")
    return Tick(at_s, f"{at:%H:%M:%S}" + (f".{at.microsecond // 100_000}" if step_s < 1 else ""))


def _elapsed(start_s: float, end_s: float, most: int) -> tuple[Tick, ...]:
    span_s = end_s - start_s
    days = 10.0 ** math.ceil(math.log10(max(span_s / _DAY / most, 1.0)))
    step_s = next((s for s in _STEPS if span_s / s < most), days * _DAY)
    low, high = math.ceil(start_s / step_s), math.floor(end_s / step_s)
    return tuple(Tick(n * step_s, _clock_text(n * step_s, step_s)) for n in range(low, high + 1))


def _clock_text(at_s: float, step_s: float) -> str:
    """Elapsed time as h:mm, h:mm:ss or days."""
    if step_s >= _DAY:
        return tr("{days} d", days=f"{at_s / _DAY:g}")
    tenths = round(abs(at_s) * 10)
    whole, tenth = divmod(tenths, 10)
    hours, rest = divmod(whole, 3600)
    text = f"{hours}:{rest // 60:02d}"
    if step_s < _MINUTE:
        text += f":{rest % 60:02d}" + (f".{tenth}" if step_s < 1 else "")
    return text if at_s >= 0 else f"-{text}"
