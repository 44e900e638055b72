"""Watts of a machine that does nothing, and the hours it spends in each operating state.

The steady rule: a stretch of standby of at least 15 minutes, of which the last day at most is looked at, cut
into windows of five minutes; steady from the first window on from which no window stands out and the means
of both halves agree (`core.beds.steady`). Where no stretch is so long there is only the level that the finder
of runs learnt from the log: the low end of what is drawn at rest, with no interval. The rule is the program's
own and claims no test after IEC 62301, which asks for a laboratory's supply and for better accuracy than a
plug-in meter has.
"""

import math
from collections.abc import Iterable

from attrs import frozen

from core.activity import Activity
from core.beds.steady import steady
from core.energy.integral import mean_w
from core.results.values import StandbyWay, State, StateSpan
from core.states import states_of_log
from core.study import Meter
from core.traces import Trace
from core.uncertainty import NORMAL_95, coverage_factor
from core.units import SECONDS_PER_DAY, SECONDS_PER_HOUR

#: shortest stretch from which standby watts are taken [s]
SHORTEST_S = 900.0
#: no more than this of a stretch is looked at, from its end [s]
LONGEST_S = SECONDS_PER_DAY
STATES: tuple[State, ...] = ("off", "standby", "warm-up", "processing", "cooling")


@frozen(cache_hash=True)
class Standby:
    """Standby power of a log.

    Parameters
    ----------
    power_w : float
        Mean of a stretch, or the level learnt from the log. [W]
    u95_w : float or None
        Half-width of its 95 % interval with the meter's gain and offset; None of a level learnt. [W]
    way : {"steady rest", "unsteady rest", "lowest level"}
        Whether the steady rule was met; else the mean of a whole stretch, or the level learnt.
    seconds : float
        How long a stretch it is the mean of; of a level, how long a log it was learnt from. [s]
    windows_w : tuple of float
        Means of the windows. [W]
    by_meter_w : float
        Standard uncertainty by the meter's gain and offset alone. [W]
    """

    power_w: float
    u95_w: float | None
    way: StandbyWay
    seconds: float
    windows_w: tuple[float, ...]
    by_meter_w: float

    @property
    def is_steady(self) -> bool:
        """Whether it is the mean of a stretch that met the steady rule."""
        return self.way == "steady rest"

    @property
    def own_w(self) -> float:
        """What the interval holds beside the meter's gain and offset, as a standard uncertainty. [W]"""
        if self.u95_w is None:
            return 0.0
        return math.sqrt(max(0.0, (self.u95_w / NORMAL_95) ** 2 - self.by_meter_w**2))

    @property
    def lowest_w(self) -> float:
        """Least mean of a window. [W]"""
        return min(self.windows_w, default=self.power_w)

    @property
    def highest_w(self) -> float:
        """Largest mean of a window. [W]"""
        return max(self.windows_w, default=self.power_w)


def standby(trace: Trace, activity: Activity, meter: Meter) -> Standby | None:
    """Standby power of a log, by the surest way that it allows; None where it shows no standby.

    Parameters
    ----------
    trace : Trace
    activity : Activity
        Of this trace.
    meter : Meter
    """
    if activity.standby_w is None:
        return None
    spans = [s for s in states_of_log(trace, activity) if s.state == "standby"]
    spans = [s for s in spans if s.end_s - s.start_s >= SHORTEST_S]
    found = [standby_between(trace, s.start_s, s.end_s, meter) for s in sorted(spans, key=_length)[-3:]]
    known = [s for s in found if s is not None]
    return surest(known) or _level(activity.standby_w, trace, meter)


def surest(known: Iterable[Standby]) -> Standby | None:
    """The one to go by: steady before not, a mean before a level, longer before shorter."""
    return max(known, key=lambda s: (s.is_steady, s.u95_w is not None, s.seconds), default=None)


def standby_between(trace: Trace, start_s: float, end_s: float, meter: Meter) -> Standby | None:
    """Mean power of a stretch in which a machine does nothing; None where it has too few rows. [s]"""
    start_s = max(start_s, end_s - LONGEST_S)
    found = steady(trace, start_s, end_s, meter)
    if found is None:
        return None
    is_steady = found.is_settled
    power_w = found.mean_w if is_steady else mean_w(trace, start_s, end_s)
    by_meter_w = _by_meter_w(power_w, meter)
    own_w = found.u_w if is_steady else _spread_w(found.windows_w)
    u_w = math.hypot(own_w, by_meter_w)
    df = math.inf if own_w == 0 else max(found.df, 1.0) * (u_w / own_w) ** 4
    return Standby(
        power_w=power_w,
        u95_w=coverage_factor(df) * u_w,
        way="steady rest" if is_steady else "unsteady rest",
        seconds=(found.end_s - found.start_s) if is_steady else end_s - start_s,
        windows_w=found.windows_w,
        by_meter_w=by_meter_w,
    )


def hours_in_states(spans: Iterable[StateSpan]) -> dict[State, float]:
    """Hours in each operating state. [h]

    Examples
    --------
    >>> hours_in_states([StateSpan("standby", 0, 7200)])["standby"]
    2.0
    """
    hours: dict[State, float] = dict.fromkeys(STATES, 0.0)
    for span in spans:
        hours[span.state] += (span.end_s - span.start_s) / SECONDS_PER_HOUR
    return hours


def _level(power_w: float, trace: Trace, meter: Meter) -> Standby:
    """The level that was learnt from a log with no rest long enough for a mean."""
    return Standby(power_w, None, "lowest level", trace.end_s, (), _by_meter_w(power_w, meter))


def _by_meter_w(power_w: float, meter: Meter) -> float:
    """Standard uncertainty by gain and offset, both taken for rectangular. [W]"""
    return math.hypot(power_w * meter.gain_percent / 100, meter.offset_w) / math.sqrt(3)


def _spread_w(windows_w: tuple[float, ...]) -> float:
    """What windows that do not agree leave open: a quarter of what lies between the extremes. [W]"""
    return (max(windows_w) - min(windows_w)) / 4 if windows_w else 0.0


def _length(span: StateSpan) -> float:
    return span.end_s - span.start_s
