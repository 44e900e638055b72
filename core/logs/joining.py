"""Files that continue one machine's log put together.

Rules: two machines logged one after another must not be joined, so likeness of form is never enough:
either the log names the machine, or power and counter go on where the other file stopped.
"""

import re
from collections import defaultdict
from collections.abc import Sequence
from pathlib import PurePath

import numpy as np

from core.logs.reading import Reading
from core.logs.words import plain
from core.problems import Problem, Severity
from core.traces import F64, Clock, Trace

#: a file continues another when it starts within this many intervals of its end
NEAR_INTERVALS = 6.0
#: and at the latest after this [s]
NEAR_S = 20.0
#: longest pause between files of one named machine that still make one log [s]
FAR_S = 400 * 86400.0
#: rows that are enough to see that two traces are not of one machine
_FEW_ROWS = 64


def join_readings(readings: Sequence[Reading]) -> tuple[tuple[Reading, ...], ...]:
    """Group readings that continue one machine's log, each group in order of time.

    Parameters
    ----------
    readings : sequence of Reading
        Those without a trace each stay alone.

    Returns
    -------
    tuple of tuple of Reading
        In the order in which the first of each group was given.
    """
    groups: list[list[Reading]] = []
    # only what has one form can continue each other, so that most of many machines' logs never meet
    of_form: dict[tuple[object, ...], list[list[Reading]]] = defaultdict(list)
    for reading in sorted(enumerate(readings), key=lambda p: (_start(p[1]), p[0])):
        one = reading[1]
        alike = of_form[_form(one)]
        home = next((g for g in alike if _continues(g, one)), None)
        if home is None:
            groups.append([one])
            alike.append(groups[-1])
        else:
            home.append(one)
    place = {id(r): i for i, r in enumerate(readings)}
    groups.sort(key=lambda g: min(place[id(r)] for r in g))
    return tuple(tuple(g) for g in groups)


def _start(reading: Reading) -> float:
    if reading.trace is None or reading.trace.clock.start_s is None:
        return float("inf")
    return reading.trace.clock.start_s


def _continues(group: list[Reading], new: Reading) -> bool:
    old = group[-1]
    a, b = old.trace, new.trace
    if a is None or b is None or a.clock.start_s is None or b.clock.start_s is None:
        return False
    if any(r.file == new.file for r in group):
        return False
    if a.kind != b.kind and "on_change" in (a.kind, b.kind) and min(_count(a), _count(b)) > 200:
        return False
    end = a.clock.start_s + a.end_s + sum(by for _, by in a.clock.shifts)
    pause = b.clock.start_s - end
    overlap = pause < 0
    if old.device is not None and old.is_named:
        return pause < FAR_S and (not overlap or _agree(a, b))
    if overlap:
        return _agree(a, b) and (_shared(a, b) >= 3 or _same_stem(old.file, new.file) or _level_goes_on(a, b))
    usual = max(a.median_s, b.median_s, a.p95_s if a.kind == "on_change" else 0.0)
    near = pause <= max(NEAR_INTERVALS * usual, NEAR_S)
    follows = pause < FAR_S and _same_but_date(old.file, new.file)
    if not near and not follows:
        return False
    counter = _counter_goes_on(a, b, pause)
    if counter is False:
        return False
    if near and (counter or _level_goes_on(a, b)):
        return True
    return (near and _same_stem(old.file, new.file)) or (counter is True and follows)


def _count(trace: Trace) -> int:
    return int(trace.time_s.size)


def _form(reading: Reading) -> tuple[object, ...]:
    """What files of one log have in common: columns by meaning and unit, signs, kind of clock, device."""
    columns = tuple((plain(c.name), c.quantity, c.unit) for c in reading.columns)
    clock = None if reading.trace is None else reading.trace.clock.kind
    device = None if reading.device is None else plain(reading.device)
    return reading.delimiter, reading.decimal, columns, clock, device


def _counter_goes_on(a: Trace, b: Trace, pause_s: float) -> bool | None:
    """Whether the second counter starts where the first stopped; None when it cannot tell."""
    if a.counter_wh is None or b.counter_wh is None:
        return None
    end, start = a.counter_wh[np.isfinite(a.counter_wh)], b.counter_wh[np.isfinite(b.counter_wh)]
    if not end.size or not start.size:
        return None
    last = float(end[-1]) if not a.counter_breaks_s else None
    step = max(a.counter_step_wh, b.counter_step_wh)
    if last is None or (last < 2 * step and float(start[0]) < 2 * step):
        return None
    most = 2.0 * max(a.top_w, b.top_w) * (pause_s + a.median_s) / 3600.0 + 2 * step
    return -2 * step <= float(start[0]) - last <= most


def _level_goes_on(a: Trace, b: Trace) -> bool:
    """Whether the load is running, and alike, on either side of the cut.

    Two machines at rest look the same, so a resting end proves nothing.
    """
    before, after = a.power_w[-40:], b.power_w[:40]
    rest = max(float(np.percentile(np.concatenate((a.power_w, b.power_w)), 5)), 0.0)
    top = max(a.top_w, b.top_w)
    busy = rest + 0.08 * (top - rest)
    if float(np.mean(before > busy)) < 0.5 or float(np.mean(after > busy)) < 0.5:
        return False
    low = (float(np.percentile(before, 20)), float(np.percentile(after, 20)))
    high = (float(np.percentile(before, 95)), float(np.percentile(after, 95)))
    scale = max(5.0, 0.25 * max(high))
    return abs(low[0] - low[1]) <= scale and abs(high[0] - high[1]) <= scale


def _shared(a: Trace, b: Trace) -> int:
    """Rows of the second trace that lie within the first."""
    shift = (b.clock.start_s or 0.0) - (a.clock.start_s or 0.0)
    return int(np.searchsorted(b.time_s, a.end_s - shift, "right"))


def _agree(a: Trace, b: Trace) -> bool:
    """Whether two traces say the same where they overlap."""
    assert a.clock.start_s is not None
    assert b.clock.start_s is not None
    shift = b.clock.start_s - a.clock.start_s
    tolerance_w = max(2 * a.resolution_w, 0.02 * a.top_w)

    def share(rows: slice) -> float:
        other = np.interp(b.time_s[rows] + shift, a.time_s, a.power_w)
        return float(np.mean(np.abs(other - b.power_w[rows]) <= tolerance_w))

    inside = _shared(a, b)
    # where nine rows of ten agree, it is not to be feared that half of those looked at first do not
    if inside > _FEW_ROWS and share(slice(0, inside, inside // _FEW_ROWS)) < 0.5:
        return False
    return inside > 0 and share(slice(0, inside)) > 0.9


_DAYS = r"mon(?:day)?|tue(?:sday)?|wed(?:nesday)?|thu(?:rsday)?|fri(?:day)?|sat(?:urday)?|sun(?:day)?"
_DATE = re.compile(rf"\d{{4,}}|(?<!\d)\d\d(?:\D\d\d)+(?!\d)|\b(?:{_DAYS})\b")
_COUNT = re.compile(r"\d+|part|teil|partie|parte|deel|[\s._()\-]+")


def _same_but_date(a: str, b: str) -> bool:
    """Whether file names differ in a date or a day of the week only."""
    first, second = (_DATE.sub("", plain(PurePath(n).stem)) for n in (a, b))
    return first == second and PurePath(a).stem != PurePath(b).stem


def _same_stem(a: str, b: str) -> bool:
    """Whether file names differ only in numbers, dates or days of the week."""
    first, second = (_COUNT.sub("", _DATE.sub("", plain(PurePath(n).stem))) for n in (a, b))
    return first == second


def join(group: Sequence[Reading]) -> Trace:
    """One trace out of readings that continue each other; what two of them hold is counted once.

    Parameters
    ----------
    group : sequence of Reading
        In order of time, each with a trace; all on one kind of clock.

    Returns
    -------
    Trace
        A pause between files is a gap; the counter runs on when the meter's own did.

    Raises
    ------
    ValueError
        If the group is empty or a reading has no trace.
    """
    traces = [r.trace for r in group if r.trace is not None]
    if not traces or len(traces) != len(group):
        raise ValueError("every reading of a group needs a trace")
    if len(traces) == 1:
        return traces[0]
    first = traces[0]
    times: list[F64] = [first.time_s]
    powers: list[F64] = [first.power_w]
    counters: list[F64 | None] = [first.counter_wh]
    breaks = list(first.counter_breaks_s)
    shifts = list(first.clock.shifts)
    places = {p: [v] for p, v in first.temperatures_c.items()}
    end_s = first.end_s
    for trace in traces[1:]:
        offset = (trace.clock.start_s or 0.0) - (first.clock.start_s or 0.0) - sum(by for _, by in shifts)
        if first.clock.kind != "local":
            offset = (trace.clock.start_s or 0.0) - (first.clock.start_s or 0.0)
        moved = trace.time_s + offset
        fresh = moved > end_s + (0.5 * trace.median_s if moved[0] <= end_s else 0.0)
        if not fresh.any():
            continue
        times.append(moved[fresh])
        powers.append(trace.power_w[fresh])
        counter = None if trace.counter_wh is None else trace.counter_wh[fresh]
        counter, broken = _run_on(counters, counter)
        if broken:
            breaks.append(float(moved[fresh][0]))
        breaks += [at + offset for at in trace.counter_breaks_s if at + offset > end_s]
        counters.append(counter)
        shifts += [(at + offset, by) for at, by in trace.clock.shifts if at + offset > end_s]
        for place in set(places) | set(trace.temperatures_c):
            before = sum(t.size for t in times[:-1])
            values = trace.temperatures_c.get(place)
            places.setdefault(place, [np.full(before, np.nan)]).append(
                np.full(int(fresh.sum()), np.nan) if values is None else values[fresh]
            )
        end_s = float(moved[-1])
    whole = None
    if all(c is not None for c in counters):
        whole = np.concatenate([c for c in counters if c is not None])
    clock = Clock(
        first.clock.kind, first.clock.start_s, first.clock.offset_s, first.clock.zone, tuple(shifts)
    )
    return Trace.of(
        np.concatenate(times), np.concatenate(powers), first.kind, whole,
        key="+".join(t.key for t in traces), clock=clock,
        counter_step_wh=max(t.counter_step_wh for t in traces), counter_breaks_s=tuple(breaks),
        resolution_w=max(t.resolution_w for t in traces),
        temperatures_c={p: np.concatenate(v) for p, v in places.items()},
    )  # fmt: skip


def _run_on(before: list[F64 | None], after: F64 | None) -> tuple[F64 | None, bool]:
    """The second counter made to go on from the first, and whether that hides a reset."""
    if after is None or before[-1] is None:
        return after, False
    old, new = before[-1][np.isfinite(before[-1])], after[np.isfinite(after)]
    if not old.size or not new.size or new[0] >= old[-1]:
        return after, False
    return after + float(old[-1]), True


def joined_problem(group: Sequence[Reading]) -> Problem | None:
    """A note that several files were taken for one log; None for a single file."""
    if len(group) < 2:
        return None
    names = ", ".join(PurePath(r.file).name for r in group)
    return Problem("log.joined", Severity.NOTE, group[0].file, facts={"files": names, "count": len(group)})
