"""Energy of a run, with what makes it unsure.

Two ways lead to it: the power column (`core.integral`) and the energy counter tied to the run's edges
(`core.ticks`). The one with the smaller uncertainty is taken; where they disagree by more than both explain,
that is said. Meter gain and offset are shared by all runs of one meter, so they are kept apart under a
shared key: in a ratio of two machines on one meter they cancel.
"""

import math

import numpy as np
from attrs import evolve, frozen

from core.edges import Edge, edge
from core.integral import by_power_wh
from core.lottery import lottery
from core.problems import Problem
from core.results.values import Energy, Influence
from core.sampling import holes_more_wh, resolution_u_wh, roughness, stretch_u_wh
from core.study import Meter
from core.ticks import Tie, tie
from core.traces import Gap, Trace
from core.uncertainty import NORMAL_95
from core.units import J_PER_WH

#: of the time in gaps: above the first a caution, above the second a run is left out
GAP_CAUTION = 0.01
GAP_LIMIT = 0.05
#: half-width of the sampling part alone that is worth a caution [%]
LOTTERY_PERCENT = 2.0
#: name of the influence of a heater that may keep step with the samples
UNSEEN = "unseen heater"
#: rows beside a run that tell how quiet it is there
OUTSIDE_ROWS = 20
#: the two ways disagree when they differ by more than this many combined standard uncertainties
DISAGREE = 3.0

__all__ = ["between", "by_counter_wh", "by_power_wh"]


@frozen
class _Way:
    """One way to the energy: the value and its own influences (those of the meter come later)."""

    energy_wh: float
    influences: tuple[Influence, ...]

    @property
    def u_wh(self) -> float:
        return math.sqrt(sum(i.u_wh**2 for i in self.influences))


def between(trace: Trace, start_s: float, end_s: float, meter: Meter, *, rising_edges: bool = True) -> Energy:
    """Energy of an interval of a trace, with the influences that make it unsure.

    Parameters
    ----------
    trace : Trace
    start_s, end_s : float
        Interval on the trace's own clock. [s]
    meter : Meter
        Its accuracy; gain and offset come out as influences shared by all that it measured.
    rising_edges : bool
        True for a run: the power steps at both edges, whose places are only known to the sampling. False for
        an interval cut out of a longer state (a hold test, a span the user marked): the moments are exact.

    Returns
    -------
    Energy

    Raises
    ------
    ValueError
        If the interval is empty or leaves the trace: the caller's mistake.

    Examples
    --------
    >>> trace = Trace.of([0, 1800, 3600], [100.0, 100.0, 100.0])
    >>> round(between(trace, 0, 3600, Meter("m", "a meter"), rising_edges=False).energy_wh, 6)
    100.0
    """
    start_s, end_s = _inside(trace, start_s, end_s)
    first, last = _edges(trace, start_s, end_s, is_step=rising_edges)
    gaps = tuple(g for g in trace.gaps if g.end_s > start_s and g.start_s < end_s)
    gap_s = sum(min(g.end_s, end_s) - max(g.start_s, start_s) for g in gaps)
    power = _by_power(trace, first, last, gaps)
    counter = _by_counter(trace, first, last)
    taken = power if counter is None or power.u_wh <= counter.u_wh else counter
    seconds = end_s - start_s
    shared = (
        Influence(
            "meter gain", taken.energy_wh * meter.gain_percent / 100 / math.sqrt(3), f"gain:{meter.id}"
        ),
        Influence("meter offset", meter.offset_w / math.sqrt(3) * seconds / J_PER_WH, f"offset:{meter.id}"),
    )
    return Energy(
        energy_wh=taken.energy_wh,
        influences=tuple(i for i in shared + taken.influences if i.u_wh > 0),
        method="power" if taken is power else "counter with power at the edges",
        gap_share=gap_s / seconds,
        by_power_wh=power.energy_wh,
        by_counter_wh=None if counter is None else counter.energy_wh,
        problems=_problems(trace, power, counter, taken, gap_s / seconds),
    )


def by_counter_wh(trace: Trace, start_s: float, end_s: float) -> float | None:
    """Energy of an interval by the counter tied to its edges; None where there is no counter. [Wh]"""
    start_s, end_s = _inside(trace, start_s, end_s)
    way = _by_counter(trace, *_edges(trace, start_s, end_s, is_step=False))
    return None if way is None else way.energy_wh


def _inside(trace: Trace, start_s: float, end_s: float) -> tuple[float, float]:
    """The interval kept inside the trace; a margin of one interval of sampling is forgiven."""
    if not end_s > start_s:
        raise ValueError("an interval needs a length")
    margin_s = max(trace.median_s, 1.0) * 1.01
    if start_s < -margin_s or end_s > trace.end_s + margin_s:
        raise ValueError("the interval leaves the trace")
    start_s, end_s = max(start_s, 0.0), min(end_s, trace.end_s)
    if not end_s > start_s:
        raise ValueError("the interval leaves the trace")
    return start_s, end_s


def _edges(trace: Trace, start_s: float, end_s: float, *, is_step: bool) -> tuple[Edge, Edge]:
    return (
        edge(trace, start_s, is_start=True, is_step=is_step),
        edge(trace, end_s, is_start=False, is_step=is_step),
    )


def _by_power(trace: Trace, start: Edge, end: Edge, gaps: tuple[Gap, ...]) -> _Way:
    """Energy by the power column, with steps at the edges."""
    if end.row_before < start.row_after:
        return _within_one_interval(trace, start, end)
    time = trace.time_s
    inner_start_s, inner_end_s = float(time[start.row_after]), float(time[end.row_before])
    energy_wh = by_power_wh(trace, inner_start_s, inner_end_s)
    energy_wh += holes_more_wh(trace, start.row_after, end.row_before)
    energy_wh += start.after_w * (inner_start_s - start.at_s) / J_PER_WH
    energy_wh += end.before_w * (end.at_s - inner_end_s) / J_PER_WH
    outside = (start.mixed_w, end.mixed_w)
    levels = (start.after_w, end.before_w)
    boundary = math.hypot(
        *(
            (level if mixed is None else mixed) * e.u_s
            for level, mixed, e in zip(levels, outside, (start, end), strict=True)
        )
    )
    missed = lottery(trace, start.row_after, end.row_before)
    bridged_wh, gap_u_wh = _bridges(trace, start, end, gaps)
    return _Way(
        energy_wh + bridged_wh,
        (
            Influence("sampling", max(stretch_u_wh(trace, start.row_after, end.row_before), missed.u_wh)),
            Influence(UNSEEN, missed.hidden_u_wh),
            Influence("boundary", boundary / J_PER_WH),
            Influence("resolution", resolution_u_wh(trace, start.row_after, end.row_before)),
            Influence("gaps", gap_u_wh),
        ),
    )


def _within_one_interval(trace: Trace, start: Edge, end: Edge) -> _Way:
    """An interval with no row inside: the straight line, and all of it unsure."""
    energy_wh = by_power_wh(trace, start.at_s, end.at_s)
    spread_w = abs(float(trace.power_w[start.row_after] - trace.power_w[start.row_before]))
    u_wh = spread_w / math.sqrt(12) * (end.at_s - start.at_s) / J_PER_WH
    return _Way(energy_wh, (Influence("sampling", u_wh),))


def _bridges(trace: Trace, start: Edge, end: Edge, gaps: tuple[Gap, ...]) -> tuple[float, float]:
    """What the local means say a gap holds more than the straight line over it, and the doubt. [Wh], [Wh]

    The straight line joins two single samples, and with a bed that switches these are two tosses of a coin;
    the mean of the minutes on either side is a better guess of the same thing. The doubt is the whole range
    of power that the run shows, as a rectangle.
    """
    time, power = trace.time_s, trace.power_w
    more_wh = variance = 0.0
    inner = power[start.row_after : end.row_before + 1]
    for gap in gaps:
        low_s, high_s = max(gap.start_s, start.at_s), min(gap.end_s, end.at_s)
        seconds = high_s - low_s
        low, high = np.percentile(inner, [5, 95]) if inner.size else (0.0, 0.0)
        variance += ((high - low) / math.sqrt(12) * seconds / J_PER_WH) ** 2
        reach_s = max(seconds, 300.0)
        around = (time > low_s - reach_s) & (time < high_s + reach_s)
        around &= (time >= start.at_s) & (time <= end.at_s)
        if gap.start_s >= start.at_s and gap.end_s <= end.at_s and np.count_nonzero(around) >= 6:
            local_w = _mean_without_gap(trace, gap, start.at_s, end.at_s, reach_s)
            more_wh += local_w * seconds / J_PER_WH - by_power_wh(trace, low_s, high_s)
    return more_wh, math.sqrt(variance)


def _mean_without_gap(trace: Trace, gap: Gap, start_s: float, end_s: float, reach_s: float) -> float:
    """Mean power of the minutes before and after a gap, inside the run. [W]"""
    parts = (
        (max(gap.start_s - reach_s, start_s), gap.start_s),
        (gap.end_s, min(gap.end_s + reach_s, end_s)),
    )
    energy_wh = sum(by_power_wh(trace, a, b) for a, b in parts if b > a)
    return energy_wh * J_PER_WH / sum(max(b - a, 0.0) for a, b in parts)


def _by_counter(trace: Trace, start: Edge, end: Edge) -> _Way | None:
    """Energy by the counter: ticks tied to the edges, resets stepped over by the power column."""
    if trace.counter_wh is None or end.row_before <= start.row_before:
        return None
    breaks = np.searchsorted(trace.time_s, np.asarray(trace.counter_breaks_s, dtype=np.float64), side="left")
    last_row = trace.time_s.size - 1
    inside = [int(r) for r in breaks if start.row_before < r <= end.row_after]
    outer_first = max([int(r) for r in breaks if r <= start.row_before], default=0)
    outer_last = min([int(r) - 1 for r in breaks if r > end.row_after], default=last_row)
    firsts, lasts = [outer_first, *inside], [*(r - 1 for r in inside), outer_last]
    inner = roughness(trace, start.row_after, end.row_before)
    # whether a gap beside the run hides some of it, nobody can tell
    sides = (
        evolve(roughness(trace, start.row_before - OUTSIDE_ROWS, start.row_before), gap_w=inner.gap_w),
        evolve(roughness(trace, end.row_after, end.row_after + OUTSIDE_ROWS), gap_w=inner.gap_w),
    )
    energy_wh, step_variance, path_variance, edge_variance = 0.0, 0.0, 0.0, 0.0
    for number, (first_row, last_row_of) in enumerate(zip(firsts, lasts, strict=True)):
        head = start if number == 0 else _at_row(trace, first_row)
        tail = end if number == len(firsts) - 1 else _at_row(trace, last_row_of)
        before = sides[0] if head is start else inner
        after = sides[1] if tail is end else inner
        ties = (
            tie(trace, head, before, inner, first_row, last_row_of),
            tie(trace, tail, inner, after, first_row, last_row_of),
        )
        if ties[0] is None or ties[1] is None:
            return None
        energy_wh += ties[1].counter_wh - ties[0].counter_wh
        step_variance += sum(t.tick_u_wh**2 for t in ties if isinstance(t, Tie))
        path_variance += sum(t.path_u_wh**2 for t in ties if isinstance(t, Tie))
        edge_variance += sum(t.edge_u_wh**2 for t in ties if isinstance(t, Tie))
        if number:
            last_seen, first_seen = lasts[number - 1], first_row
            energy_wh += by_power_wh(trace, float(trace.time_s[last_seen]), float(trace.time_s[first_seen]))
            path_variance += stretch_u_wh(trace, last_seen, first_seen) ** 2
    return _Way(
        energy_wh,
        (
            Influence("counter step", math.sqrt(step_variance)),
            Influence("sampling", math.sqrt(path_variance)),
            Influence("boundary", math.sqrt(edge_variance)),
        ),
    )


def _at_row(trace: Trace, row: int) -> Edge:
    level = float(trace.power_w[row])
    return Edge(float(trace.time_s[row]), row, row, level, level, 0.0)


def _problems(
    trace: Trace, power: _Way, counter: _Way | None, taken: _Way, gap_share: float
) -> tuple[Problem, ...]:
    found: list[Problem] = []
    if gap_share > GAP_CAUTION:
        code = "energy.gaps_many" if gap_share > GAP_LIMIT else "energy.gaps"
        found.append(Problem(code, facts={"percent": 100 * gap_share, "by_counter": taken is counter}))
    if counter is not None:
        apart_wh = abs(power.energy_wh - counter.energy_wh)
        if apart_wh > DISAGREE * math.hypot(power.u_wh, counter.u_wh):
            facts = {"power_wh": power.energy_wh, "counter_wh": counter.energy_wh, "used": taken.energy_wh}
            found.append(Problem("energy.ways_disagree", facts=facts))
    if counter is None and taken.energy_wh > 0:
        u_wh = {i.name: i.u_wh for i in taken.influences}
        percent = 100 * NORMAL_95 * u_wh["sampling"] / taken.energy_wh if "sampling" in u_wh else 0.0
        if u_wh.get(UNSEEN, 0.0) > 0:
            share = 100 * NORMAL_95 * u_wh[UNSEEN] / taken.energy_wh
            found.append(
                Problem("energy.heater_unseen", facts={"percent": share, "interval_s": trace.median_s})
            )
        elif percent > LOTTERY_PERCENT:
            facts = {"percent": percent, "interval_s": trace.median_s}
            found.append(Problem("energy.sampling_lottery", facts=facts))
    return tuple(found)
