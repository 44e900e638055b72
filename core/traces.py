"""A trace: power against time as read from a meter log, with the energy counter when there is one.

Rules: columns are NumPy arrays and read-only; ``key`` (digest of the bytes, the reading choices, the device)
is the identity, so traces can be compared, hashed and remembered by what they came from.
"""

from collections.abc import Mapping
from datetime import UTC, datetime, timedelta, timezone
from functools import cached_property
from typing import Literal
from zoneinfo import ZoneInfo

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from core.units import SECONDS_PER_HOUR

F64 = NDArray[np.float64]
Sampling = Literal["sampled", "averaged", "on_change"]
ClockKind = Literal["absolute", "local", "relative"]

#: a gap in a sampled or averaged log is longer than this many median intervals ...
GAP_INTERVALS = 5.0
#: ... and longer than this [s]
GAP_SECONDS = 30.0
#: times what an on-change log holds in a silence; a counter that gained more has seen what the log has not
UNEXPLAINED = 1.5
#: ... by so many of its steps, too
UNSEEN_STEPS = 3.0


def read_only(values: object) -> F64:
    """`values` as a float64 array that nobody can change."""
    array = np.ascontiguousarray(values, dtype=np.float64)
    if array.flags.writeable:
        array = array.view()
        array.flags.writeable = False
    return array


def _read_only_or_none(values: object) -> F64 | None:
    return None if values is None else read_only(values)


@frozen
class Clock:
    """What a log's time stamps are tied to.

    Parameters
    ----------
    kind : {"absolute", "local", "relative"}
        absolute: an instant (an offset or zone is stated, or the stamp is a Unix time); local: a wall clock
        of no stated zone; relative: elapsed time only.
    start_s : float or None
        First stamp. Absolute: seconds of Unix time. Local: the wall clock read as if it were UTC. [s]
    offset_s : float
        Offset from UTC to write an absolute stamp with, as the log states it at its first row. [s]
    zone : str or None
        IANA name when the log or the user states one.
    shifts : tuple of (at_s, by_s)
        Local clocks only: at `at_s` of the trace the wall clock was put by `by_s` (+3600 in spring).
    """

    kind: ClockKind
    start_s: float | None = None
    offset_s: float = 0.0
    zone: str | None = None
    shifts: tuple[tuple[float, float], ...] = ()

    def iso(self, at_s: float) -> str | None:
        """ISO 8601 stamp of `at_s` seconds after the first sample; None for elapsed time."""
        if self.kind == "relative" or self.start_s is None:
            return None
        epoch = datetime(1970, 1, 1, tzinfo=UTC)
        instant = epoch + timedelta(seconds=round(self.start_s + at_s, 3))
        if self.kind == "absolute":
            zone = ZoneInfo(self.zone) if self.zone else timezone(timedelta(seconds=self.offset_s))
            return instant.astimezone(zone).isoformat()
        wall = instant + timedelta(seconds=sum(by for at, by in self.shifts if at <= at_s))
        return wall.replace(tzinfo=None).isoformat()


@frozen
class Gap:
    """A stretch with no samples. [s]"""

    start_s: float
    end_s: float

    @property
    def seconds(self) -> float:
        """Length. [s]"""
        return self.end_s - self.start_s


@frozen
class Trace:
    """Power against time of one machine.

    Parameters
    ----------
    key : str
        Identity: what was read and how.
    time_s : ndarray, shape (n,)
        Seconds after the first sample, strictly increasing, starting with 0. [s]
    power_w : ndarray, shape (n,)
        Power at the plug, finite. [W]
    kind : {"sampled", "averaged", "on_change"}
        What one value stands for: the instant, the interval before it, or all time until the next.
    counter_wh : ndarray, shape (n,), or None
        The meter's energy counter made to run on over resets and roll-overs: never falling, NaN where the log
        has none. [Wh]
    counter_step_wh : float
        Smallest step of the counter. [Wh]
    counter_breaks_s : tuple of float
        Times before which a reset happened: over them the counter knows less than its step. [s]
    resolution_w : float
        Smallest step of the power reading. [W]
    median_s, p95_s, max_s : float
        Intervals between samples. [s]
    gaps : tuple of Gap
    clock : Clock
    temperatures_c : mapping of str to ndarray
        Logged temperatures by place (``"bed"``, ``"hot end"``, ``"room"``), NaN where missing. [degC]
    """

    key: str
    time_s: F64 = field(converter=read_only, eq=False, repr=False)
    power_w: F64 = field(converter=read_only, eq=False, repr=False)
    kind: Sampling = field(default="sampled", eq=False)
    counter_wh: F64 | None = field(default=None, converter=_read_only_or_none, eq=False, repr=False)
    counter_step_wh: float = field(default=0.0, eq=False)
    counter_breaks_s: tuple[float, ...] = field(default=(), eq=False)
    resolution_w: float = field(default=0.0, eq=False)
    median_s: float = field(default=0.0, eq=False)
    p95_s: float = field(default=0.0, eq=False)
    max_s: float = field(default=0.0, eq=False)
    gaps: tuple[Gap, ...] = field(default=(), eq=False, repr=False)
    clock: Clock = field(default=Clock("relative"), eq=False)
    temperatures_c: Mapping[str, F64] = field(factory=dict, eq=False, repr=False)

    @property
    def end_s(self) -> float:
        """Time of the last sample. [s]"""
        return float(self.time_s[-1]) if self.time_s.size else 0.0

    @cached_property
    def top_w(self) -> float:
        """The largest power. [W]"""
        return float(self.power_w.max()) if self.power_w.size else 0.0

    @classmethod
    def of(
        cls,
        time_s: object,
        power_w: object,
        kind: Sampling = "sampled",
        counter_wh: object = None,
        *,
        key: str = "",
        clock: Clock | None = None,
        counter_step_wh: float | None = None,
        counter_breaks_s: tuple[float, ...] = (),
        resolution_w: float | None = None,
        temperatures_c: Mapping[str, F64] | None = None,
        steps_s: tuple[float, float] | None = None,
    ) -> "Trace":
        """Make a trace from clean columns, working out intervals, gaps, resolution and counter step.

        Parameters
        ----------
        time_s, power_w : array_like, shape (n,)
            Strictly increasing times and finite powers. [s], [W]
        kind : {"sampled", "averaged", "on_change"}
        counter_wh : array_like, shape (n,), optional
            Never falling where not NaN. [Wh]
        steps_s : tuple of float, optional
            Smallest and largest step of `time_s`, where they are known already. [s]

        Raises
        ------
        ValueError
            If the shapes differ or time does not run forward.

        Examples
        --------
        >>> Trace.of([0, 10, 20], [5, 5, 6]).median_s
        10.0
        """
        time = read_only(time_s)
        power = read_only(power_w)
        if time.ndim != 1 or time.shape != power.shape:
            raise ValueError("time_s and power_w must be columns of one length")
        shortest, longest = step_extremes(time) if steps_s is None else steps_s
        if shortest <= 0:
            raise ValueError("time_s must be strictly increasing")
        counter = _read_only_or_none(counter_wh)
        median, p95 = (
            (float(v) for v in np.percentile(some_steps(time), (50, 95))) if time.size > 1 else (0.0, 0.0)
        )
        start = time if not time.size or time[0] == 0 else time - time[0]
        return cls(
            key=key or _made_key(time, power, kind, counter, temperatures_c or {}),
            time_s=start,
            power_w=power,
            kind=kind,
            counter_wh=counter,
            counter_step_wh=(smallest_step(counter) if counter is not None else 0.0)
            if counter_step_wh is None
            else counter_step_wh,
            counter_breaks_s=counter_breaks_s,
            resolution_w=smallest_step(power) if resolution_w is None else resolution_w,
            median_s=median,
            p95_s=p95,
            max_s=longest,
            gaps=_gaps(start, kind, median, longest) or _counted_gaps(start, power, kind, counter),
            clock=clock or Clock("relative"),
            temperatures_c=dict(temperatures_c or {}),
        )


def _made_key(
    time: F64, power: F64, kind: Sampling, counter: F64 | None, temperatures_c: Mapping[str, F64]
) -> str:
    """An identity of what no file gave: results are remembered by it, so all that they depend on is in it."""
    beside = tuple((name, np.asarray(column).tobytes()) for name, column in sorted(temperatures_c.items()))
    counted = b"" if counter is None else counter.tobytes()
    return f"made:{hash((time.tobytes(), power.tobytes(), kind, counted, beside))}"


#: values that are enough for a quantile or a resolution; longer columns are looked at evenly
ENOUGH = 100_000
#: values worked on at a time where a whole column of intermediate values would only fill memory
_STRETCH = 1 << 16
#: values that show whether the same ones recur
_LOOKED_AT = 2000
#: steps that a display may count in
_DISPLAY_STEPS = tuple(m * 10.0**k for k in range(4, -7, -1) for m in (5.0, 2.0, 1.0))


def evenly(values: F64, enough: int = ENOUGH) -> F64:
    """About `enough` values spread evenly over a longer column (all of a shorter one)."""
    return values[:: _every(values.size, enough)]


def _every(size: int, enough: int) -> int:
    """An odd stride, so that columns that go up and down by turns are seen from both sides."""
    return 1 if size < 2 * enough else (size // enough) | 1


def step_extremes(values: F64) -> tuple[float, float]:
    """Smallest and largest step between neighbours, without a column of steps; (inf, 0) for one value."""
    low, high = np.inf, 0.0 if values.size < 2 else -np.inf
    for start in range(0, values.size - 1, _STRETCH):
        steps = np.diff(values[start : start + _STRETCH + 1])
        low, high = min(low, float(steps.min())), max(high, float(steps.max()))
    return low, high


def steps_of(values: F64) -> F64:
    """Steps between neighbours: `numpy.diff` of one column, without what that costs for a short one."""
    steps: F64 = values[1:] - values[:-1]
    return steps


def some_steps(values: F64, enough: int = ENOUGH) -> F64:
    """Steps between neighbours, evenly picked from a longer column."""
    every = _every(values.size, enough)
    return values[1::every] - values[:-1:every]


def smallest_step(values: F64) -> float:
    """Smallest step between readings: the resolution of a display. 0 when all are alike.

    A display counts in steps of 1, 2 or 5 times a power of ten; where no such step fits, the smaller of the
    differences between distinct readings stand for it.

    Examples
    --------
    >>> smallest_step(np.array([0.0, 0.4, 1.0, 1.2]))
    0.2
    """
    picked = evenly(values)
    picked = picked[np.isfinite(picked)]
    if not picked.size:
        return 0.0
    distinct = _distinct(np.round(picked, 7))
    if distinct.size < 2:
        return 0.0
    steps = np.diff(distinct)
    shown = distinct[:: max(1, distinct.size // 4000)]
    scale = 1e-7 + 1e-9 * float(np.abs(shown).max())
    for step in _DISPLAY_STEPS:
        if step > float(steps.min()) * 1.001 + scale:
            continue
        if step < 20 * scale:
            break
        ratio = (shown - shown[0]) / step
        if bool((np.abs(ratio - np.round(ratio)) * step < scale).all()):
            return step
    return float(np.percentile(steps, 5)) if steps.size > 20 else float(steps.min())


def _distinct(values: F64) -> F64:
    """Distinct values in rising order: `numpy.unique`, quicker for a counter or few values that recur."""
    if bool((values[1:] < values[:-1]).any()):
        if values.size < 2 * _LOOKED_AT or np.unique(values[:_LOOKED_AT]).size > _LOOKED_AT // 4:
            found: F64 = np.unique(values)
            return found
        import pyarrow as pa

        values = np.sort(pa.array(values).unique().to_numpy())
    return values[np.concatenate(([True], values[1:] != values[:-1]))]


def _gaps(time_s: F64, kind: Sampling, median_s: float, longest_s: float) -> tuple[Gap, ...]:
    """Intervals that are too long to be ordinary sampling.

    An on-change log is silent while nothing changes; there a gap is longer than its heartbeat, taken as the
    longest interval that recurs (seen at least three times within 10 %).
    """
    if time_s.size < 2:
        return ()
    if kind == "on_change":
        limit = heartbeat_s(np.diff(time_s))
        if limit is None:
            return ()
        limit *= 1.5
    else:
        limit = max(GAP_INTERVALS * median_s, GAP_SECONDS)
    if longest_s <= limit:
        return ()
    rows = np.flatnonzero(np.diff(time_s) > limit)
    return tuple(Gap(float(time_s[i]), float(time_s[i + 1])) for i in rows)


def _counted_gaps(time_s: F64, power_w: F64, kind: Sampling, counter_wh: F64 | None) -> tuple[Gap, ...]:
    """Silences of an on-change log in which more was counted than the value that was held explains."""
    if kind != "on_change" or counter_wh is None or time_s.size < 2:
        return ()
    seconds = steps_of(time_s)
    long = np.flatnonzero(seconds > GAP_SECONDS)
    held_wh = power_w[long] * seconds[long] / SECONDS_PER_HOUR
    more_wh = counter_wh[long + 1] - counter_wh[long] - held_wh
    is_more = more_wh > (UNEXPLAINED - 1) * held_wh + UNSEEN_STEPS * smallest_step(counter_wh)
    # what came unseen drew about what comes after it: somewhere in twice as long it began
    unseen_s = 2 * more_wh / np.maximum(power_w[long + 1], 1.0) * SECONDS_PER_HOUR
    begin_s = np.maximum(time_s[long], time_s[long + 1] - unseen_s)
    ends = zip(begin_s[is_more].tolist(), time_s[long + 1][is_more].tolist(), strict=True)
    return tuple(Gap(begin, end) for begin, end in ends if end - begin > GAP_SECONDS)


def heartbeat_s(steps_s: F64) -> float | None:
    """The longest interval that recurs in an on-change log: its sign of life. None when none does. [s]"""
    if steps_s.size < 3:
        return None
    kept = min(steps_s.size, 20_000)
    longest = np.sort(np.partition(steps_s, steps_s.size - kept)[-kept:])[::-1]
    recurs = longest[2:] >= 0.9 * longest[:-2]
    return float(longest[int(np.argmax(recurs))]) if recurs.any() else None
