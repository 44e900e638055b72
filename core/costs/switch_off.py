"""What switching a machine off after some idle minutes would have saved, by the rests that its log shows.

Theory of operation. A rest is a stretch of the log in which no part was made and no test run: everything the
machine drew in it from minute x on would not have been drawn, had it been switched off then. Against that
stands warming up again: where the next run began from a machine that was still warm, its warm-up took less
than the machine's largest one, and the whole difference is charged. That is more than switching off costs as
a rule, because a machine on standby cools too; so the saving is told with care. A rest at the end of the log
has no next run and is charged nothing.
"""

import math
from collections.abc import Sequence

import numpy as np
from attrs import field, frozen

from core.costs.tariff import energies_wh
from core.traces import F64, Trace, read_only
from core.units import SECONDS_PER_MINUTE

#: a rest shorter than this is a change of parts [s]
SHORTEST_REST_S = 60.0
#: minutes after which the saving is computed, when nobody asks for one: fine at first, coarse later
MINUTES: tuple[float, ...] = (
    *(float(m) for m in range(0, 60, 5)),
    *(float(m) for m in range(60, 240, 15)),
    *(float(m) for m in range(240, 721, 30)),
)


@frozen
class Rest:
    """A rest between two uses, or at an end of the log.

    Parameters
    ----------
    start_s, end_s : float
        [s]
    again_wh : float
        What warming up again is charged with, had it been switched off. [Wh]
    """

    start_s: float
    end_s: float
    again_wh: float = 0.0

    @property
    def seconds(self) -> float:
        """Length. [s]"""
        return self.end_s - self.start_s


@frozen(cache_hash=True)
class Rests:
    """All rests of a machine's logs, and what they hold after so many minutes.

    Parameters
    ----------
    count : int
    seconds : float
        Of all rests together. [s]
    longest_s : float
        [s]
    idle_wh : float
        Energy of all rests. [Wh]
    minutes, saved_wh : ndarray, shape (n,)
        Energy that switching off after so many minutes would have saved, warming up again taken off; negative
        where that costs more. [min], [Wh]
    """

    count: int = 0
    seconds: float = 0.0
    longest_s: float = 0.0
    idle_wh: float = 0.0
    minutes: F64 = field(factory=lambda: np.array(MINUTES), converter=read_only, eq=False, repr=False)
    saved_wh: F64 = field(factory=lambda: np.zeros(len(MINUTES)), converter=read_only, eq=False, repr=False)

    def saved_after_wh(self, minutes: float) -> float:
        """What switching off after so many minutes would have saved, by a line between those known. [Wh]"""
        return float(np.interp(minutes, self.minutes, self.saved_wh))

    def share_after(self, minutes: float) -> float | None:
        """The same as a share of what the rests took; None where they took nothing."""
        return self.saved_after_wh(minutes) / self.idle_wh if self.idle_wh > 0 else None


def rests_between(uses: Sequence[tuple[float, float, float | None]], end_s: float) -> tuple[Rest, ...]:
    """The rests of a log.

    Parameters
    ----------
    uses : sequence of (start_s, end_s, warm_up_wh or None)
        Runs and tests, with the energy of the warm-up where one was seen. [s], [s], [Wh]
    end_s : float
        End of the log. [s]

    Examples
    --------
    >>> rests_between([(600.0, 900.0, 8.0), (1500.0, 1900.0, 3.0)], 2400.0)
    (Rest(start_s=0.0, end_s=600.0, again_wh=0.0), Rest(start_s=900.0, end_s=1500.0, again_wh=5.0), \
Rest(start_s=1900.0, end_s=2400.0, again_wh=0.0))
    """
    cold_wh = max((wh for _, _, wh in uses if wh is not None), default=0.0)
    found: list[Rest] = []
    at_s = 0.0
    for start_s, until_s, warm_wh in sorted(uses, key=lambda use: use[0]):
        if start_s - at_s >= SHORTEST_REST_S:
            again_wh = 0.0 if warm_wh is None else max(0.0, cold_wh - warm_wh)
            found.append(Rest(at_s, start_s, again_wh))
        at_s = max(at_s, until_s)
    if end_s - at_s >= SHORTEST_REST_S:
        found.append(Rest(at_s, end_s))
    return tuple(found)


def savings(trace: Trace, rests: Sequence[Rest], minutes: Sequence[float] = MINUTES) -> Rests:
    """What switching off after so many minutes would have saved in one log.

    Parameters
    ----------
    trace : Trace
    rests : sequence of Rest
    minutes : sequence of float
        Rising. [min]
    """
    after_s = np.array(minutes) * SECONDS_PER_MINUTE
    idle_wh, saved_wh = 0.0, np.zeros(after_s.size)
    for rest in rests:
        is_reached = after_s < rest.seconds
        edges = np.concatenate(([rest.start_s], rest.start_s + after_s[is_reached], [rest.end_s]))
        parts = energies_wh(trace, edges)
        idle_wh += float(parts.sum())
        # what is drawn from each moment to the end of the rest
        later = np.cumsum(parts[1:][::-1])[::-1]
        saved_wh[is_reached] += later - rest.again_wh
    seconds = [rest.seconds for rest in rests]
    return Rests(
        len(rests), math.fsum(seconds), max(seconds, default=0.0), idle_wh, np.array(minutes), saved_wh
    )


def together(several: Sequence[Rests]) -> Rests:
    """The rests of several logs as one."""
    if not several:
        return Rests()
    return Rests(
        sum(r.count for r in several),
        math.fsum(r.seconds for r in several),
        max(r.longest_s for r in several),
        math.fsum(r.idle_wh for r in several),
        several[0].minutes,
        np.sum([r.saved_wh for r in several], axis=0),
    )
