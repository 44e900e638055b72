"""Energy of a run, with what makes it unsure.

Two ways lead to it: the power column (`core.energy.integral`) and the energy counter read at its ticks
(`core.energy.ticks`). They are joined by what each is unsure of (`core.energy.chain`,
`core.energy.fusion`); where they disagree by more than both explain, that is said and the surer one is
taken. Meter gain and offset are shared by all runs of one meter, so they are kept apart under a shared
key: in a ratio of two machines on one meter they cancel.
"""

import math

import numpy as np
from attrs import frozen

from core.energy.beside import heated_stretch
from core.energy.chain import IN_STEP, SAMPLING, UNSEEN, blind, chain
from core.energy.edges import Edge, edge
from core.energy.fusion import COUNTER_STEP, Fused, fuse
from core.energy.integral import by_power_wh
from core.energy.lottery import lottery
from core.energy.refresh import measured
from core.energy.sampling import roughness
from core.energy.settling import settle
from core.energy.ticks import break_rows
from core.energy.timing import dead_band_w, shortest_interval_s, stamp_u_s
from core.language import mark
from core.problems import Problem
from core.results.values import Energy, Influence
from core.study import Meter
from core.traces import Gap, Trace
from core.uncertainty import NORMAL_95
from core.units import J_PER_WH

#: the ways an energy was found
BY_POWER, BY_COUNTER = "power", "counter with power at the edges"
#: of the time in gaps: above the first a caution, above the second a run is left out
GAP_CAUTION = 0.01
GAP_LIMIT = 0.05
#: half-width of the sampling part alone that is worth a caution [%]
LOTTERY_PERCENT = 2.0
#: the same of a heater that keeps step with the samples, which looks well resolved
IN_STEP_PERCENT = 0.5
#: the two ways disagree when they differ by more than this many combined standard uncertainties
DISAGREE = 3.0

__all__ = ["between", "by_counter_wh", "by_power_wh"]


@frozen
class _Ways:
    """The energy by the power column, by the counter, and by both joined; None without a counter."""

    power: Fused
    counter: Fused | None
    joined: Fused | None

    @property
    def disagree(self) -> bool:
        """Whether power and counter lie further apart than both explain."""
        if self.counter is None:
            return False
        apart_wh = abs(self.power.energy_wh - self.counter.energy_wh)
        return apart_wh > DISAGREE * math.hypot(self.power.u_wh, self.counter.u_wh)

    @property
    def taken(self) -> Fused:
        """Both joined; where they disagree one of them must be wrong, and the surer one is taken."""
        if self.joined is None:
            return self.power
        if self.counter is not None and self.disagree:
            return min(self.power, self.counter, key=lambda way: way.u_wh)
        return self.joined


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
    trace = measured(trace)
    start_s, end_s = _inside(trace, start_s, end_s)
    seconds = end_s - start_s
    found = _ways(trace, start_s, end_s, is_step=rising_edges)
    taken = found.taken
    is_counted = COUNTER_STEP in {i.name for i in taken.influences}
    gaps = [(g, max(min(g.end_s, end_s) - max(g.start_s, start_s), 0.0) / seconds) for g in trace.gaps]
    gap_share = math.fsum(share for _, share in gaps)
    untold = [share for gap, share in gaps if share > 0 and not (is_counted and _is_counted(trace, gap))]
    untold_gap_share = math.fsum(untold)
    shared = (
        Influence(
            mark("meter gain"), taken.energy_wh * meter.gain_percent / 100 / math.sqrt(3), f"gain:{meter.id}"
        ),
        Influence(
            mark("meter offset"), meter.offset_w / math.sqrt(3) * seconds / J_PER_WH, f"offset:{meter.id}"
        ),
    )
    return Energy(
        energy_wh=taken.energy_wh,
        influences=tuple(i for i in shared + taken.influences if i.u_wh > 0),
        method=BY_COUNTER if is_counted else BY_POWER,
        gap_share=gap_share,
        untold_gap_share=untold_gap_share,
        by_power_wh=found.power.energy_wh,
        by_counter_wh=None if found.counter is None else found.counter.energy_wh,
        problems=_problems(trace, found, gap_share, untold_gap_share),
    )


def forget() -> None:
    """Let go of what is remembered of rows of traces, and of the traces with it."""
    of_traces = (measured, stamp_u_s, shortest_interval_s, dead_band_w)
    for remembered in (*of_traces, lottery, roughness, settle, heated_stretch):
        remembered.cache_clear()


def by_counter_wh(trace: Trace, start_s: float, end_s: float) -> float | None:
    """Energy of an interval by the counter tied to its edges; None where there is no counter. [Wh]"""
    trace = measured(trace)
    start_s, end_s = _inside(trace, start_s, end_s)
    counter = _ways(trace, start_s, end_s, is_step=False).counter
    return None if counter is None else counter.energy_wh


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


def _ways(trace: Trace, start_s: float, end_s: float, *, is_step: bool) -> _Ways:
    """The energy by the power column, by the counter, and by both joined."""
    start = edge(trace, start_s, is_start=True, is_step=is_step)
    end = edge(trace, end_s, is_start=False, is_step=is_step)
    if end.row_before < start.row_after:
        return _Ways(_within_one_interval(trace, start, end), None, None)
    links = chain(trace, start, end)
    power = fuse(links.increments, (), links.first, links.last)
    assert power is not None, "nothing of the chain is left to a counter"
    if len(links.seen) < 2:
        return _Ways(power, None, None)
    unseen = blind(links)
    counter = fuse(unseen.increments, unseen.seen, unseen.first, unseen.last)
    return _Ways(power, counter, fuse(links.settled, links.seen, links.first, links.last))


def _within_one_interval(trace: Trace, start: Edge, end: Edge) -> Fused:
    """An interval with no row inside: the straight line, and all of it unsure."""
    energy_wh = by_power_wh(trace, start.at_s, end.at_s)
    spread_w = abs(float(trace.power_w[start.row_after] - trace.power_w[start.row_before]))
    u_wh = spread_w / math.sqrt(12) * (end.at_s - start.at_s) / J_PER_WH
    return Fused(energy_wh, (Influence(SAMPLING, u_wh),))


def _is_counted(trace: Trace, gap: Gap) -> bool:
    """Whether the counter was read before and after a gap and ran on over it; a reset loses what was used."""
    if trace.counter_wh is None:
        return False
    row_before = int(np.searchsorted(trace.time_s, gap.start_s, side="right")) - 1
    row_after = int(np.searchsorted(trace.time_s, gap.end_s, side="left"))
    known = np.flatnonzero(np.isfinite(trace.counter_wh))
    place = int(np.searchsorted(known, row_before, side="right"))
    if place == 0 or known[-1] < row_after:
        return False
    last = int(known[place - 1])
    following = int(known[np.searchsorted(known, row_after)])
    return not any(last < row <= following for row in break_rows(trace))


def _problems(trace: Trace, found: _Ways, gap_share: float, untold_gap_share: float) -> tuple[Problem, ...]:
    problems = []
    if untold_gap_share > GAP_CAUTION:
        code = "energy.gaps_many" if untold_gap_share > GAP_LIMIT else "energy.gaps"
        problems.append(Problem(code, facts={"percent": 100 * untold_gap_share}))
    elif gap_share > GAP_CAUTION:
        problems.append(Problem("energy.gaps_counted", facts={"percent": 100 * gap_share}))
    if found.counter is not None and found.disagree:
        facts = {
            "power_wh": found.power.energy_wh,
            "counter_wh": found.counter.energy_wh,
            "used": found.taken.energy_wh,
        }
        problems.append(Problem("energy.ways_disagree", facts=facts))
    if found.counter is None and found.taken.energy_wh > 0:
        to_percent = 100 * NORMAL_95 / found.taken.energy_wh
        percents = {i.name: to_percent * i.u_wh for i in found.taken.influences}
        if percents.get(UNSEEN, 0.0) > 0:
            facts = {"percent": percents[UNSEEN], "interval_s": trace.median_s}
            problems.append(Problem("energy.heater_unseen", facts=facts))
        elif percents.get(IN_STEP, 0.0) > max(IN_STEP_PERCENT, percents.get(SAMPLING, 0.0) / 2):
            percent = math.hypot(percents[IN_STEP], percents.get(SAMPLING, 0.0))
            facts = {"percent": percent, "interval_s": trace.median_s}
            problems.append(Problem("energy.in_step", facts=facts))
        elif percents.get(SAMPLING, 0.0) > LOTTERY_PERCENT:
            facts = {"percent": percents[SAMPLING], "interval_s": trace.median_s}
            problems.append(Problem("energy.sampling_lottery", facts=facts))
    return tuple(problems)
