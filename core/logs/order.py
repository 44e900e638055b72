"""Times put in order: newest first, unsorted, clocks put forward or back, several rows with one stamp.

Rules: no row is dropped unless it repeats another one exactly; everything done is reported.
"""

from datetime import UTC, datetime, timedelta
from itertools import pairwise

import numpy as np
from attrs import frozen

from core.logs.table import I64
from core.problems import Problem, Severity
from core.traces import F64, ClockKind, evenly

_HOUR = 3600.0
_PASSES = 40
_BLOCK = 1 << 15
#: rows further apart than this meet a full hour only now and then [s]
_SLOW_S = 600.0


@frozen
class Ordered:
    """Rows to take, in order (None: all, as they are), and their times, strictly increasing. [s]"""

    rows: I64 | None
    seconds: F64
    shifts: tuple[tuple[float, float], ...] = ()
    problems: tuple[Problem, ...] = ()


def put_in_order(
    seconds: F64, values: F64, kind: ClockKind, tick_s: float, file: str, extremes_s: tuple[float, float]
) -> Ordered:
    """Order finite times.

    Parameters
    ----------
    seconds : ndarray, shape (n,)
        Finite, as in the file. [s]
    values : ndarray, shape (n,)
        The powers, to tell repeated rows from several readings within one tick.
    kind : {"absolute", "local", "relative"}
    tick_s : float
        Smallest step that the stamps can show. [s]
    file : str
        Name for problems.
    extremes_s : tuple of float
        Smallest and largest step of `seconds`. [s]
    """
    shortest, longest = extremes_s
    if shortest > 0 and (kind != "local" or longest <= 0.5 * _HOUR):
        return Ordered(None, seconds)
    rows = np.arange(seconds.size)
    problems: list[Problem] = []
    shifts: list[tuple[float, float]] = []
    steps = np.diff(seconds)
    if shortest <= 0:
        if (steps < 0).sum() > 0.8 * (steps != 0).sum() and (steps != 0).any():
            rows, seconds, steps = rows[::-1], seconds[::-1], -steps[::-1]
            problems.append(Problem("log.newest_first", Severity.NOTE, file))
        if kind == "local":
            seconds, shifts = _put_back(seconds)
        elif kind == "relative":
            seconds, starts = _restarts(seconds)
            if starts:
                problems.append(
                    Problem("log.clock_restarts", Severity.CAUTION, file, facts={"count": starts})
                )
        steps = np.diff(seconds)
        if float(steps.min()) < 0:
            back = int((steps < 0).sum())
            order = np.argsort(seconds, kind="stable")
            rows, seconds = rows[order], seconds[order]
            steps = np.diff(seconds)
            problems.append(Problem("log.unsorted", Severity.CAUTION, file, facts={"count": back}))
    if kind == "local" and steps.size and float(steps.max()) > 0.5 * _HOUR:
        seconds, forward = _put_forward(seconds)
        shifts += forward
        steps = np.diff(seconds)
    if steps.size and float(steps.min()) <= 0:
        rows, seconds, more = _one_stamp_each(rows, seconds, values, tick_s, file)
        problems += more
        rows, seconds = _strictly(rows, seconds)
    for at, by in shifts:
        facts = {"hours": by / _HOUR, "at": _wall(at)}
        problems.append(Problem("log.clock_put", Severity.NOTE, file, facts=facts))
    first = float(seconds[0]) if seconds.size else 0.0
    return Ordered(rows, seconds, tuple((at - first, by) for at, by in sorted(shifts)), tuple(problems))


def _wall(at_s: float) -> str:
    return (datetime(1970, 1, 1, tzinfo=UTC) + timedelta(seconds=round(at_s))).strftime("%Y-%m-%d %H:%M:%S")


def _usual(steps: F64) -> float:
    picked = evenly(steps)
    ahead = picked[picked > 0]
    return float(np.median(ahead)) if ahead.size else 1.0


def _long(steps: F64) -> float:
    """A long but ordinary interval: a log on change is silent for up to its heartbeat. [s]"""
    ordinary = np.abs(evenly(steps))
    ordinary = ordinary[ordinary < 0.25 * _HOUR]
    return float(np.percentile(ordinary, 99)) if ordinary.size else 0.0


def _put_back(seconds: F64) -> tuple[F64, list[tuple[float, float]]]:
    """Undo a wall clock put back by an hour: a step back of about an hour, once in a season."""
    steps = np.diff(seconds)
    usual = _usual(steps)
    slack = max(8 * usual, 120.0, 1.2 * _long(steps))
    back = np.flatnonzero(steps < -0.99 * usual)
    hours = [int(i) for i in back if abs(steps[i] + _HOUR) <= slack]
    if not back.size and usual == _HOUR:
        back = np.flatnonzero(steps == 0)
        hours = [int(i) for i in back if _is_hour_again(seconds, int(i))]
    if len(hours) != back.size or not hours:
        return seconds, []
    if any(seconds[b] - seconds[a] < 60 * 86400 for a, b in pairwise(hours)):
        return seconds, []
    out = seconds.copy()
    shifts = []
    for i in hours:
        out[i + 1 :] += _HOUR
        shifts.append((float(out[i + 1]), -_HOUR))
    return out, shifts


def _put_forward(seconds: F64) -> tuple[F64, list[tuple[float, float]]]:
    """Undo a wall clock put forward: an hour missing at a full hour of a Sunday night in spring or autumn.

    Europe changes at 1 to 3 o'clock, the Americas at 2, Australia at 2 in October: always early on a Sunday.
    """
    steps = np.diff(seconds)
    usual = _usual(steps)
    is_slow = usual > _SLOW_S
    if usual == _HOUR:
        return _hour_left_out(seconds, steps)
    if usual > 0.5 * _HOUR:
        return seconds, []
    slack = 5.0 if is_slow else max(3 * usual, 5.0, 1.2 * _long(steps))
    shifts = []
    out = seconds
    for i in np.flatnonzero(np.abs(steps - _HOUR - usual) <= slack)[:50].tolist():
        before = datetime(1970, 1, 1, tzinfo=UTC) + timedelta(seconds=float(seconds[i]))
        # the next row would have come with the full hour, or a little after it
        is_off = (
            (float(seconds[i]) + usual) % _HOUR >= usual
            if is_slow
            else (float(seconds[i]) + slack) % _HOUR > 2 * slack
        )
        if before.weekday() != 6 and (before + timedelta(seconds=slack)).weekday() != 6:
            continue
        if before.month not in (3, 4, 8, 9, 10, 11) or before.hour not in (23, 0, 1, 2) or is_off:
            continue
        if any(s > 0.5 * _HOUR for s in steps[max(0, i - 20) : i]):
            continue
        out = out.copy()
        out[i + 1 :] -= _HOUR
        shifts.append((float(out[i + 1]), _HOUR))
    return out, shifts


def _is_night_of_change(at_s: float, months: tuple[int, ...]) -> bool:
    """Whether a moment is a full hour early on a Sunday of these months."""
    at = datetime(1970, 1, 1, tzinfo=UTC) + timedelta(seconds=at_s)
    return at.weekday() == 6 and at.month in months and at.hour <= 3 and at_s % _HOUR == 0


def _is_hour_again(seconds: F64, i: int) -> bool:
    """Whether rows `i` and `i + 1` of an hourly log have one stamp as the clock was put back between them."""
    around = np.diff(seconds[max(0, i - 3) : i + 5])
    return _is_night_of_change(float(seconds[i]), (3, 4, 9, 10, 11)) and int((around != _HOUR).sum()) == 1


def _hour_left_out(seconds: F64, steps: F64) -> tuple[F64, list[tuple[float, float]]]:
    """Undo a clock put forward in an hourly log: one hour left out, early on a Sunday, alone."""
    odd = np.flatnonzero(steps != _HOUR)
    shifts = []
    out = seconds
    for i in odd[:50].tolist():
        if steps[i] != 2 * _HOUR or not _is_night_of_change(float(seconds[i + 1]), (3, 4, 8, 9, 10, 11)):
            continue
        if np.abs(odd - i).astype(np.int64)[odd != i].min(initial=99) <= 20:
            continue
        out = out.copy()
        out[i + 1 :] -= _HOUR
        shifts.append((float(out[i + 1]), _HOUR))
    return out, shifts


def _restarts(seconds: F64) -> tuple[F64, int]:
    """Join stretches of elapsed time that each begin near zero: later ones follow after one interval."""
    steps = np.diff(seconds)
    usual = _usual(steps)
    starts = np.flatnonzero((steps < -2 * usual) & (seconds[1:] <= max(3 * usual, 2.0)))
    if not starts.size or starts.size != (steps < 0).sum() or starts.size > 50:
        return seconds, 0
    out = seconds.copy()
    for i in starts.tolist():
        out[i + 1 :] += out[i] + usual - out[i + 1]
    return out, int(starts.size)


def _one_stamp_each(
    rows: I64, seconds: F64, values: F64, tick_s: float, file: str
) -> tuple[I64, F64, list[Problem]]:
    """Give every row a time of its own."""
    steps = np.diff(seconds)
    equal = steps == 0
    usual = (float(seconds[-1]) - float(seconds[0])) / max(1, steps.size)
    problems = []
    median = _usual(steps)
    if tick_s < 0.34 * min(usual, median) * 1.0001:
        same = np.flatnonzero(equal & (values[rows[1:]] == values[rows[:-1]])) + 1
        keep = np.ones(rows.size, dtype=bool)
        keep[same] = False
        if same.size:
            facts: dict[str, object] = {"count": int(same.size)}
            problems.append(Problem("log.repeated_rows", Severity.NOTE, file, facts=facts))
        rows, seconds = rows[keep], seconds[keep]
        other = np.flatnonzero(np.diff(seconds) == 0)
        if other.size:
            facts = {"count": int(other.size)}
            problems.append(Problem("log.two_values_one_time", Severity.CAUTION, file, facts=facts))
            keep = np.ones(rows.size, dtype=bool)
            keep[other] = False
            rows, seconds = rows[keep], seconds[keep]
        return rows, seconds, problems
    most = int(np.diff(np.flatnonzero(np.concatenate(([True], ~equal, [True])))).max())
    severity = Severity.CAUTION if most > 3 else Severity.NOTE
    facts = {"count": int(equal.sum()), "most": most, "tick_s": tick_s}
    problems.append(Problem("log.stamps_cut", severity, file, facts=facts))
    return rows, spread(seconds, tick_s), problems


def _strictly(rows: I64, seconds: F64) -> tuple[I64, F64]:
    """Without the few rows whose times, after all, a float cannot tell from the one before."""
    first = seconds[0] if seconds.size else 0.0
    ahead = np.diff(np.maximum.accumulate(seconds - first), prepend=-1.0) > 0
    return (rows, seconds) if bool(ahead.all()) else (rows[ahead], seconds[ahead])


def spread(seconds: F64, tick_s: float) -> F64:
    """Spread rows over the tick that their stamp was cut to, as evenly as the stamps allow.

    Each row lies somewhere in [stamp, stamp + tick). Rows of one stamp are first placed evenly in it;
    then every row moves to the middle of its neighbours, as far as its own tick allows, a number of
    times: the most even times that agree with every stamp.

    Parameters
    ----------
    seconds : ndarray, shape (n,)
        Never falling. [s]
    tick_s : float
        [s]

    Returns
    -------
    ndarray, shape (n,)
        Strictly increasing. [s]
    """
    starts = np.flatnonzero(np.concatenate(([True], np.diff(seconds) != 0)))
    counts = np.diff(np.concatenate((starts, [seconds.size])))
    place = np.arange(seconds.size) - np.repeat(starts, counts)
    even = (place + 0.5) / np.repeat(counts, counts)
    base = float(seconds[0])
    near_s = 4 * max(tick_s, (float(seconds[-1]) - base) / max(1, seconds.size - 1))
    out = np.empty(seconds.size)
    # a pass moves a row by its neighbours, so rows further off than there are passes have no say in it
    for begin in range(0, seconds.size, _BLOCK):
        end = min(begin + _BLOCK, seconds.size)
        around = slice(max(begin - _PASSES - 1, 0), end + _PASSES + 1)
        low = seconds[around] - base
        first = low + tick_s * even[around]
        inner = slice(begin - around.start, end - around.start)
        out[begin:end] = 0.98 * _evened(low, first, tick_s, near_s)[inner] + 0.02 * first[inner] + base
    return out


def _evened(low: F64, first: F64, tick_s: float, near_s: float) -> F64:
    """Times moved to the middle of their neighbours, each within the tick that begins at its stamp."""
    high = low + tick_s * 0.999
    times = first.copy()
    near = np.diff(low) <= near_s
    movable = np.flatnonzero(near[:-1] & near[1:]) + 1
    if movable.size == low.size - 2:
        for _ in range(_PASSES):
            times[1:-1] = np.clip(0.5 * (times[:-2] + times[2:]), low[1:-1], high[1:-1])
    else:
        for _ in range(_PASSES):
            times[movable] = np.clip(
                0.5 * (times[movable - 1] + times[movable + 1]), low[movable], high[movable]
            )
    return times
