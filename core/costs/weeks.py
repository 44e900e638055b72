"""The calendar of a log: its operating states on the local clock, week by week.

Theory of operation. A span is cut where the local clock is put and where a week begins, a Monday at midnight;
between two cuts local time runs on evenly. An hour that comes twice is drawn over itself, as on a wall clock.
"""

from collections.abc import Iterable
from datetime import UTC, date, datetime, timedelta, tzinfo
from itertools import pairwise

import numpy as np
from attrs import frozen

from core.costs.tariff import turns_between
from core.results.values import State, StateSpan
from core.traces import Clock
from core.units import SECONDS_PER_DAY, SECONDS_PER_HOUR

_WEEK_S = 7 * SECONDS_PER_DAY
HOURS_PER_WEEK = 168.0
#: the first Monday of Unix time, 5 January 1970 [s]
_FIRST_MONDAY_S = 4 * SECONDS_PER_DAY


@frozen
class Block:
    """A stretch in one state, in hours after Monday's midnight. [h]"""

    state: State
    start_h: float
    end_h: float


@frozen
class Week:
    """A calendar week by its Monday, and what a machine did in it."""

    monday: date
    blocks: tuple[Block, ...]


def weeks(clock: Clock, spans: Iterable[StateSpan], zone: tzinfo | None = None) -> tuple[Week, ...]:
    """The spans of a log on the local clock.

    Parameters
    ----------
    clock : Clock
        Of the trace.
    spans : iterable of StateSpan
        On the trace's clock. [s]
    zone : tzinfo, optional
        Whose clock is meant, for a log that states instants; one with a local clock is taken as it is.

    Returns
    -------
    tuple of Week
        By date; none where the log tells elapsed time only.
    """
    spans = tuple(spans)
    if clock.kind == "relative" or clock.start_s is None or not spans:
        return ()
    start_s, end_s = spans[0].start_s, spans[-1].end_s
    if clock.kind == "absolute" and zone is not None:
        first = clock.start_s + start_s
        turns = [at - clock.start_s for at in turns_between(zone, first, clock.start_s + end_s)]
    else:
        turns = [at for at, _ in clock.shifts]
    cuts = np.array(sorted(turns))
    found: dict[int, list[Block]] = {}
    for span in spans:
        inner = cuts[(cuts > span.start_s) & (cuts < span.end_s)].tolist()
        for a, b in pairwise([span.start_s, *inner, span.end_s]):
            wall_s = _wall_s(clock, zone, (a + b) / 2) - (a + b) / 2
            _add(found, span.state, a + wall_s, b + wall_s)
    return tuple(
        Week(_day(_FIRST_MONDAY_S + n * _WEEK_S), tuple(blocks)) for n, blocks in sorted(found.items())
    )


def _add(found: dict[int, list[Block]], state: State, start_s: float, end_s: float) -> None:
    """A stretch of the wall clock, cut where weeks begin."""
    at_s = start_s
    while at_s < end_s:
        number = int((at_s - _FIRST_MONDAY_S) // _WEEK_S)
        monday_s = _FIRST_MONDAY_S + number * _WEEK_S
        until_s = min(end_s, monday_s + _WEEK_S)
        block = Block(state, (at_s - monday_s) / SECONDS_PER_HOUR, (until_s - monday_s) / SECONDS_PER_HOUR)
        found.setdefault(number, []).append(block)
        at_s = until_s


def _wall_s(clock: Clock, zone: tzinfo | None, at_s: float) -> float:
    """The wall clock at a moment of the trace, read as if it were UTC. [s]"""
    assert clock.start_s is not None
    if clock.kind == "local":
        return clock.start_s + at_s + sum(by for at, by in clock.shifts if at <= at_s)
    if zone is None:
        return clock.start_s + at_s + clock.offset_s
    offset = datetime.fromtimestamp(clock.start_s + at_s, zone).utcoffset() or timedelta(0)
    return clock.start_s + at_s + offset.total_seconds()


def _day(wall_s: float) -> date:
    return (datetime(1970, 1, 1, tzinfo=UTC) + timedelta(seconds=wall_s)).date()
