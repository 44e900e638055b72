"""A run as a chain from tick to edge to tick: what the power column says was used between, and how surely.

`core.energy.fusion` joins the links with the counter's readings at the ticks; without ticks the chain is
the run alone.
"""

import math
from itertools import pairwise

import numpy as np
from attrs import evolve, field, frozen

from core.energy.bridges import bridges
from core.energy.edges import Edge
from core.energy.fusion import Increment, Seen
from core.energy.integral import between_rows_wh
from core.energy.lottery import Lottery, lottery
from core.energy.sampling import Roughness, holes_more_wh, part_u_wh, path_u_wh, resolution_u_wh, roughness
from core.energy.ticks import Tick, reading_at, ticks_near
from core.results.values import Influence
from core.traces import Trace
from core.units import J_PER_WH

#: names of the doubts
SAMPLING, RESOLUTION, BOUNDARY, GAPS = "sampling", "resolution", "boundary", "gaps"
#: of a heater that may keep step with the samples
UNSEEN = "unseen heater"
#: rows beside a run that tell how quiet it is there
OUTSIDE_ROWS = 20


@frozen
class Chain:
    """Links between nodes, where the counter is seen, the nodes of the edges, and links that span a reset."""

    increments: tuple[Increment, ...]
    seen: tuple[Seen, ...]
    first: int
    last: int
    resets: frozenset[int] = frozenset()


@frozen(eq=False)
class _Run:
    """A run inside its trace, and what the power does before, in and after it."""

    trace: Trace
    start: Edge
    end: Edge
    before: Roughness
    inner: Roughness
    after: Roughness
    missed: Lottery
    breaks: tuple[int, ...] = field(default=())

    @property
    def rows(self) -> int:
        """Intervals inside the run."""
        return max(self.end.row_before - self.start.row_after, 1)

    def around(self, row: int) -> Roughness:
        """What the power does near a row."""
        if row <= self.start.row_before:
            return self.before
        return self.after if row >= self.end.row_after else self.inner


def chain(trace: Trace, start: Edge, end: Edge) -> Chain:
    """The chain of a run.

    Parameters
    ----------
    trace : Trace
    start, end : Edge
        Of the run, with at least one row between them.
    """
    inner = roughness(trace, start.row_after, end.row_before)
    # whether a gap beside the run hides some of it, nobody can tell
    before = roughness(trace, start.row_before - OUTSIDE_ROWS, start.row_before)
    after = roughness(trace, end.row_after, end.row_after + OUTSIDE_ROWS)
    run = _Run(
        trace,
        start,
        end,
        evolve(before, gap_w=inner.gap_w),
        inner,
        evolve(after, gap_w=inner.gap_w),
        lottery(trace, start.row_after, end.row_before),
        _break_rows(trace),
    )
    ticks = _ticks(run)
    outer = [t for t in ticks if t.row <= start.row_before]
    inside = [t for t in ticks if start.row_after <= t.row <= end.row_before]
    beyond = [t for t in ticks if t.row >= end.row_after]
    nodes: list[Tick | Edge] = [*outer, start, *inside, end, *beyond]
    seen = []
    for place, node in enumerate(nodes):
        if isinstance(node, Tick):
            reading_wh, u_wh = reading_at(trace, node, run.around(node.row))
            segment = sum(row <= node.row for row in run.breaks)
            seen.append(Seen(place, reading_wh, u_wh, segment))
    increments = tuple(_increment(run, a, b) for a, b in pairwise(nodes))
    ends = [(_rows(a)[1], _rows(b)[0]) for a, b in pairwise(nodes)]
    resets = frozenset(k for k, (a, b) in enumerate(ends) if any(a < row <= b for row in run.breaks))
    return Chain(increments, tuple(seen), len(outer), len(outer) + 1 + len(inside), resets)


def blind(links: Chain) -> Chain:
    """The chain with what was used between ticks inside the run left to the counter, but over a reset."""
    is_inner = range(links.first + 1, links.last - 1) or range(links.first, links.last)
    increments = tuple(
        evolve(increment, is_known=place not in is_inner or place in links.resets)
        for place, increment in enumerate(links.increments)
    )
    return evolve(links, increments=increments)


def _break_rows(trace: Trace) -> tuple[int, ...]:
    """First rows after each reset of the counter."""
    return tuple(int(np.searchsorted(trace.time_s, at_s, side="left")) for at_s in trace.counter_breaks_s)


def _ticks(run: _Run) -> list[Tick]:
    """Ticks near the edges, and near every reset between them, by row; none that spans a reset."""
    if run.trace.counter_wh is None:
        return []
    start, end = run.start.row_before, run.end.row_after
    first_row = max((row for row in run.breaks if row <= start), default=0)
    last_row = min((row - 1 for row in run.breaks if row > end), default=run.trace.time_s.size - 1)
    places = (start, run.end.row_before, *(row for row in run.breaks if start < row <= end))
    found = {t.row: t for place in places for t in ticks_near(run.trace, place, first_row, last_row)}
    return [
        found[row] for row in sorted(found) if not any(found[row].previous < b <= row for b in run.breaks)
    ]


def _rows(node: Tick | Edge) -> tuple[int, int]:
    """The row at or before a node, and the row at or after it."""
    return (node.row, node.row) if isinstance(node, Tick) else (node.row_before, node.row_after)


def _increment(run: _Run, a: Tick | Edge, b: Tick | Edge) -> Increment:
    """What was used between two neighbouring nodes, by the power column."""
    first_row, last_row = _rows(a)[1], _rows(b)[0]
    energy_wh, doubts = 0.0, []
    if isinstance(a, Edge):
        seconds = float(run.trace.time_s[first_row]) - a.at_s
        energy_wh += a.after_w * seconds / J_PER_WH
        doubts += _edge_doubts(run, a, a.after_w, seconds, first_row)
    if isinstance(b, Edge):
        seconds = b.at_s - float(run.trace.time_s[last_row])
        energy_wh += b.before_w * seconds / J_PER_WH
        doubts += _edge_doubts(run, b, b.before_w, seconds, last_row)
    if last_row > first_row:
        is_inside = first_row >= run.start.row_after and last_row <= run.end.row_before
        path = _inside(run, first_row, last_row) if is_inside else _outside(run, first_row, last_row)
        energy_wh += path.energy_wh
        doubts += path.doubts
    return Increment(energy_wh, tuple(d for d in doubts if d.u_wh > 0))


def _edge_doubts(run: _Run, edge: Edge, level_w: float, seconds: float, row: int) -> list[Influence]:
    """Doubts of the part of an interval between an edge and a row, at `level_w`."""
    # an averaged row is known as a whole: a misplaced edge moves only the watts outside the run
    misplaced_w = level_w if edge.mixed_w is None else edge.mixed_w
    in_gap_s = seconds if any(g.start_s <= edge.at_s <= g.end_s for g in run.trace.gaps) else 0.0
    return [
        Influence(BOUNDARY, misplaced_w * edge.u_s / J_PER_WH),
        # the heater may have come on anywhere in the gap
        Influence(GAPS, run.inner.gap_w * in_gap_s / math.sqrt(12) / J_PER_WH),
        Influence(SAMPLING, part_u_wh(run.trace, run.around(row), seconds)),
    ]


def _outside(run: _Run, first_row: int, last_row: int) -> Increment:
    """Between two rows beside the run."""
    trace = run.trace
    energy_wh = between_rows_wh(trace, first_row, last_row)
    doubts = (
        Influence(SAMPLING, path_u_wh(trace, first_row, last_row, run.around(first_row))),
        Influence(RESOLUTION, resolution_u_wh(trace, first_row, last_row)),
    )
    return Increment(energy_wh, doubts)


def _inside(run: _Run, first_row: int, last_row: int) -> Increment:
    """Between two rows of the run: missing rows and gaps are made up for, and slow sampling is doubted."""
    trace = run.trace
    from_s, to_s = float(trace.time_s[first_row]), float(trace.time_s[last_row])
    bridged_wh, gap_u_wh = 0.0, 0.0
    gaps = tuple(g for g in trace.gaps if g.start_s >= from_s and g.end_s <= to_s)
    if gaps:
        inner = trace.power_w[run.start.row_after : run.end.row_before + 1]
        low_w, high_w = (float(w) for w in np.percentile(inner, [5, 95]))
        bridged_wh, gap_u_wh = bridges(trace, gaps, run.start.at_s, run.end.at_s, low_w, high_w)
    energy_wh = between_rows_wh(trace, first_row, last_row) + bridged_wh
    energy_wh += holes_more_wh(trace, first_row, last_row)
    part = math.sqrt((last_row - first_row) / run.rows)
    # over a gap the doubt is that of the gap
    sampling_wh = path_u_wh(trace, first_row, last_row, evolve(run.inner, gap_w=0.0))
    doubts = (
        Influence(SAMPLING, max(sampling_wh, run.missed.u_wh * part)),
        Influence(UNSEEN, run.missed.hidden_u_wh * part),
        Influence(RESOLUTION, resolution_u_wh(trace, first_row, last_row)),
        Influence(GAPS, gap_u_wh),
    )
    return Increment(energy_wh, doubts)
