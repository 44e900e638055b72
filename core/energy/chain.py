"""A run as a chain from tick to edge to tick: what the power column says was used between, and how surely.

`core.energy.fusion` joins the links with the counter's readings at the ticks; without ticks the chain is
the run alone.
"""

import math
from bisect import bisect
from collections.abc import Iterator, Sequence
from itertools import groupby, pairwise

import numpy as np
from attrs import evolve, field, frozen

from core.averages import percentile
from core.energy import beside
from core.energy.beside import Beside
from core.energy.bridges import bridges, hidden_edge
from core.energy.edges import Edge
from core.energy.fusion import Increment, Seen
from core.energy.integral import between_rows_wh
from core.energy.lottery import Lottery, lottery
from core.energy.sampling import Roughness, holes_more_wh, part_u_wh, path_u_wh, resolution_u_wh, roughness
from core.energy.settling import Settled, settle
from core.energy.switched_off import more_at_end
from core.energy.ticks import Tick, Used, break_rows, ticks_around, used_before
from core.energy.together import Told, begun_at_0, together
from core.energy.warm_up import WarmUp, warm_up
from core.language import mark
from core.results.values import Influence
from core.traces import Trace
from core.units import J_PER_WH

#: names of the doubts
SAMPLING, RESOLUTION, BOUNDARY, GAPS = mark("sampling"), mark("resolution"), mark("boundary"), mark("gaps")
#: of a heater that may keep step with the samples
UNSEEN = mark("unseen heater")
#: of a heater that keeps step with the samples and is met at the same few moments of its cycle
IN_STEP = mark("readings in step")
#: rows beside a run that tell how quiet it is there
OUTSIDE_ROWS = 20


@frozen
class Chain:
    """Links between nodes, where the counter is seen, the nodes of the edges, and links that span a reset.

    ``settled`` are the links with what the ticks inside the run say of the power column.
    """

    increments: tuple[Increment, ...]
    seen: tuple[Seen, ...]
    first: int
    last: int
    resets: frozenset[int] = frozenset()
    settled: tuple[Increment, ...] = ()


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
    warm_up: WarmUp
    breaks: tuple[int, ...] = field(default=())
    beside: tuple[Beside, ...] = field(default=())

    def around(self, row: int) -> Roughness:
        """What the power does near a row: in the run, beside it, or further away, as in the run before."""
        if self.start.row_after <= row <= self.end.row_before:
            return self.inner if row > self.warm_up.last_row else self.warm_up.around
        for stretch in self.beside:
            if stretch.holds(row):
                return stretch.around
        if row < self.start.row_before - OUTSIDE_ROWS or row > self.end.row_after + OUTSIDE_ROWS:
            return roughness(self.trace, row - OUTSIDE_ROWS, row + OUTSIDE_ROWS)
        return self.before if row <= self.start.row_before else self.after

    def is_over_edge(self, tick: Tick) -> bool:
        """Whether an edge of the run lies between the rows of a tick."""
        edges = (self.start.row_after, self.end.row_after)
        return any(tick.previous < row <= tick.row for row in edges)


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
    first_before, last_after = beside.quiet_rows(trace, start, end, OUTSIDE_ROWS)
    before = roughness(trace, first_before, start.row_before)
    after = roughness(trace, end.row_after, last_after)
    run = _Run(
        trace,
        start,
        end,
        evolve(before, gap_w=inner.gap_w),
        inner,
        evolve(after, gap_w=inner.gap_w),
        lottery(trace, start.row_after, end.row_before),
        warm_up(trace, start.row_after, end.row_before),
        break_rows(trace),
    )
    ticks = ticks_around(trace, start, end, run.breaks)
    run = evolve(run, beside=_beside(run, ticks))
    outer = [t for t in ticks if t.row <= start.row_before]
    inside = [t for t in ticks if start.row_after <= t.row <= end.row_before]
    beyond = [t for t in ticks if t.row >= end.row_after]
    nodes: list[Tick | Edge] = [*outer, start, *inside, end, *beyond]
    since = max((row for row in run.breaks if row <= end.row_before), default=0)
    known = settle(trace, max(start.row_after, since), end.row_before, inner)
    increments = tuple(_increment(run, a, b) for a, b in pairwise(nodes))
    ends = [(_rows(a)[1], _rows(b)[0]) for a, b in pairwise(nodes)]
    resets = frozenset(k for k, (a, b) in enumerate(ends) if any(a < row <= b for row in run.breaks))
    settled = increments
    if known is not None and inside:
        settled = tuple(
            _settled(run, a, b, link, known) if isinstance(a, Tick) else link
            for link, (a, b) in zip(increments, pairwise(nodes), strict=True)
        )
    used = [_used_before(run, node, known) if isinstance(node, Tick) else None for node in nodes]
    seen = [
        _seen(run, nodes, used, settled, asked, others)
        for asked, others in _groups(run, nodes, len(outer), len(outer) + 1 + len(inside))
    ]
    return Chain(increments, tuple(seen), len(outer), len(outer) + 1 + len(inside), resets, settled)


def _groups(
    run: _Run, nodes: Sequence[Tick | Edge], first: int, last: int
) -> Iterator[tuple[int, tuple[int, ...]]]:
    """Ticks that tell of one place together: the node nearest to it, and its neighbours.

    The places are the edges of the run and the resets of the counter; ticks inside the run, or inside the
    part of it between two resets, tell of the nearer end.
    """
    segments = [bisect(run.breaks, node.row) if isinstance(node, Tick) else 0 for node in nodes]
    for region in (range(first), range(first + 1, last), range(last + 1, len(nodes))):
        for _, same in groupby(region, key=segments.__getitem__):
            group = tuple(same)
            is_inside = first < group[0] < last
            half = len(group) // 2 if is_inside else 0 if group[0] < first else len(group)
            if half:
                yield group[0], group[1:half]
            if half < len(group):
                yield group[-1], group[half:-1]


def _seen(
    run: _Run,
    nodes: Sequence[Tick | Edge],
    used: Sequence[Used | None],
    links: Sequence[Increment],
    asked: int,
    others: tuple[int, ...],
) -> Seen:
    """The counter at the node `asked`, from the tick there and those at `others`."""
    q = run.trace.counter_step_wh

    def told(place: int) -> Told:
        tick, since = nodes[place], used[place]
        assert isinstance(tick, Tick)
        assert since is not None
        between = links[min(place, asked) : max(place, asked)]
        on_wh = sum(link.energy_wh for link in between) * (1 if place < asked else -1)
        # several steps at once: only the step itself is known
        is_jump = tick.step_wh > 1.5 * q
        on_u_wh = math.sqrt(sum(link.variance for link in between))
        return Told(tick.counter_wh, Used(q, 0.0) if is_jump else since, on_wh, on_u_wh)

    tick = nodes[asked]
    assert isinstance(tick, Tick)
    if tick.step_wh == 0:
        following = next(k for k in range(asked + 1, len(nodes)) if isinstance(nodes[k], Tick))
        reading_wh, u_wh = begun_at_0(told(following), q)
    else:
        reading_wh, u_wh = together(told(asked), [told(place) for place in others], q)
    return Seen(asked, reading_wh, u_wh, bisect(run.breaks, tick.row))


def blind(links: Chain) -> Chain:
    """The settled chain with what was used between ticks in the run left to the counter, but over a reset."""
    is_inner = range(links.first + 1, links.last - 1) or range(links.first, links.last)
    increments = tuple(
        Increment(link.energy_wh, link.doubts, is_known=place not in is_inner or place in links.resets)
        for place, link in enumerate(links.settled)
    )
    return evolve(links, increments=increments)


def _beside(run: _Run, ticks: Sequence[Tick]) -> tuple[Beside, ...]:
    """The heated stretches beside the run in which, or beyond which, ticks lie."""
    trace, start, end = run.trace, run.start.row_before, run.end.row_after
    if not ticks or (ticks[0].row > start and ticks[-1].row < end):
        return ()
    heated_w = beside.threshold_w(trace, run.start.row_after, run.end.row_before, OUTSIDE_ROWS)
    if heated_w is None:
        return ()
    lowest = max((row for row in run.breaks if row <= start), default=0)
    highest = min((row - 1 for row in run.breaks if row > end), default=trace.time_s.size - 1)
    found = []
    if ticks[0].row <= start:
        found.append(beside.before(trace, start, lowest, heated_w))
    if ticks[-1].row >= end:
        found.append(beside.after(trace, end, highest, heated_w))
    return tuple(
        stretch
        for stretch in found
        if stretch is not None and ticks[0].row <= stretch.last_row and stretch.first_row <= ticks[-1].row
    )


def _used_before(run: _Run, tick: Tick, known: Settled | None) -> Used:
    """What was used since the row before a tick."""
    is_over_edge = run.is_over_edge(tick)
    if known is not None and tick.previous >= known.first_row and tick.row <= run.end.row_before:
        return known.used_before(run.trace, tick, run.inner)
    for stretch in run.beside:
        told = stretch.tells(tick.previous, tick.row)
        if told is not None:
            return told.used_before(run.trace, tick, stretch.around)
    around = run.around(tick.row)
    if is_over_edge:
        around = run.warm_up.around if tick.row == run.start.row_after else run.inner
    return used_before(run.trace, tick, around, is_over_edge=is_over_edge)


def _rows(node: Tick | Edge) -> tuple[int, int]:
    """The row at or before a node, and the row at or after it."""
    return (node.row, node.row) if isinstance(node, Tick) else (node.row_before, node.row_after)


def _increment(run: _Run, a: Tick | Edge, b: Tick | Edge, known: Settled | None = None) -> Increment:
    """What was used between two neighbouring nodes, by the power column and what is known of it."""
    first_row, last_row = _rows(a)[1], _rows(b)[0]
    energy_wh, doubts = 0.0, []
    if isinstance(a, Edge):
        seconds = float(run.trace.time_s[first_row]) - a.at_s
        energy_wh += a.after_w * seconds / J_PER_WH
        sampling_wh = part_u_wh(run.trace, run.around(first_row), seconds)
        doubts += _edge_doubts(run, a, a.after_w, seconds, sampling_wh, is_inside=a is run.start)
    if isinstance(b, Edge):
        seconds = b.at_s - float(run.trace.time_s[last_row])
        level_w, sampling_wh = b.before_w, part_u_wh(run.trace, run.around(last_row), seconds)
        if known is not None and b is run.end and last_row >= known.first_row:
            level_w, sampling_wh = known.level(level_w, seconds)
        energy_wh += level_w * seconds / J_PER_WH
        doubts += _edge_doubts(run, b, level_w, seconds, sampling_wh, is_inside=b is run.end)
    if last_row > first_row:
        is_inside = first_row >= run.start.row_after and last_row <= run.end.row_before
        path = (
            _inside(run, first_row, last_row) if is_inside else _outside(run, run.beside, first_row, last_row)
        )
        if known is not None and is_inside and first_row >= known.first_row:
            path = _as_told(run, first_row, last_row, path, known)
        energy_wh += path.energy_wh
        doubts += path.doubts
    if known is not None and b is run.end and first_row >= known.first_row:
        more = more_at_end(run.trace, first_row, b, known)
        energy_wh += more.energy_wh
        doubts.append(Influence(SAMPLING, more.u_wh))
    return Increment(energy_wh, tuple(d for d in doubts if d.u_wh > 0))


def _settled(run: _Run, a: Tick, b: Tick | Edge, link: Increment, known: Settled) -> Increment:
    """The link from a tick to the next node, with what the ticks inside the run say of it."""
    if b is run.end:
        return _increment(run, a, b, known)
    first_row, last_row = a.row, _rows(b)[0]
    is_inside = first_row >= run.start.row_after and last_row <= run.end.row_before
    if not is_inside or first_row < known.first_row:
        return link
    return _as_told(run, first_row, last_row, link, known)


def _as_told(run: _Run, first_row: int, last_row: int, path: Increment, known: Settled) -> Increment:
    """Between two rows of the run, as its ticks tell what the samples there are worth."""
    seconds = float(run.trace.time_s[last_row] - run.trace.time_s[first_row])
    told = known.used(seconds, path.energy_wh)
    others = tuple(d for d in path.doubts if d.name not in (SAMPLING, UNSEEN, IN_STEP))
    sampling = (Influence(SAMPLING, told.u_wh),) if told.u_wh > 0 else ()
    return Increment(told.energy_wh, (*sampling, *others))


def _edge_doubts(
    run: _Run, edge: Edge, level_w: float, seconds: float, sampling_wh: float, *, is_inside: bool
) -> list[Influence]:
    """Doubts of the part of an interval between an edge and a row, at `level_w`."""
    # an averaged row is known as a whole: a misplaced edge moves only the watts outside the run
    misplaced_w = level_w if edge.mixed_w is None else edge.mixed_w
    gap_wh = 0.0
    if any(g.start_s <= edge.at_s <= g.end_s for g in run.trace.gaps):
        outer = run.before if edge is run.start else run.after
        top_w = run.trace.top_w if edge is run.start else 0.0
        hidden = hidden_edge(run.inner, outer.high_w, top_w, is_inside=is_inside)
        misplaced_w = hidden.misplaced_w(misplaced_w)
        gap_wh = hidden.range_w * seconds / math.sqrt(12) / J_PER_WH
    return [
        Influence(BOUNDARY, misplaced_w * edge.u_s / J_PER_WH),
        Influence(GAPS, gap_wh),
        Influence(SAMPLING, sampling_wh),
    ]


def _outside(run: _Run, heated: Sequence[Beside], first_row: int, last_row: int) -> Increment:
    """Between two rows beside the run, with these heated stretches there."""
    for stretch in heated:
        if first_row <= stretch.last_row and stretch.first_row <= last_row:
            return _over_beside(run, heated, first_row, last_row, stretch)
    trace = run.trace
    energy_wh = between_rows_wh(trace, first_row, last_row)
    around = run.before if last_row <= run.start.row_before else run.after
    gap_w = around.gap_w
    if last_row - first_row >= OUTSIDE_ROWS:
        # a long way may reach into the run before or after
        around = roughness(trace, first_row, last_row)
    sampling_wh = path_u_wh(trace, first_row, last_row, around, gap_w)
    doubts = (
        Influence(SAMPLING, math.hypot(sampling_wh, _busy_u_wh(run, first_row, last_row))),
        Influence(RESOLUTION, resolution_u_wh(trace, first_row, last_row)),
    )
    return Increment(energy_wh, doubts)


def _over_beside(
    run: _Run, heated: Sequence[Beside], first_row: int, last_row: int, stretch: Beside
) -> Increment:
    """Between two rows beside the run, some of them in a heated stretch."""
    from_row, to_row = max(first_row, stretch.first_row), min(last_row, stretch.last_row)
    parts = [stretch.used(run.trace, from_row, to_row, run.inner.gap_w)]
    others = [other for other in heated if other is not stretch]
    if first_row < from_row:
        rest = _outside(run, others, first_row, from_row - 1)
        parts += [stretch.at_start(run.trace), Used(rest.energy_wh, math.sqrt(rest.variance))]
    if to_row < last_row:
        rest = _outside(run, others, to_row + 1, last_row)
        parts += [stretch.at_end(run.trace), Used(rest.energy_wh, math.sqrt(rest.variance))]
    sampling = Influence(SAMPLING, math.hypot(*(part.u_wh for part in parts)))
    rounding = Influence(RESOLUTION, resolution_u_wh(run.trace, first_row, last_row))
    return Increment(sum(part.energy_wh for part in parts), (sampling, rounding))


def _busy_u_wh(run: _Run, first_row: int, last_row: int) -> float:
    """What rows beside the run may hide that belong to another run, with a heater that switches. [Wh]"""
    trace = run.trace
    if trace.kind != "sampled":
        return 0.0
    power = trace.power_w[first_row : last_row + 1]
    quiet_w = min(run.before.mean_w, run.after.mean_w)
    busy = int(np.count_nonzero(power > (quiet_w + run.inner.mean_w) / 2))
    # two levels of power at even odds, and rows that know nothing of each other
    spread_w = (run.inner.high_w - quiet_w) / 2 * math.sqrt(2 * run.inner.factor)
    return spread_w * trace.median_s * math.sqrt(busy) / J_PER_WH


def _inside(run: _Run, first_row: int, last_row: int) -> Increment:
    """Between two rows of the run: missing rows and gaps are made up for, and slow sampling is doubted."""
    trace = run.trace
    from_s, to_s = float(trace.time_s[first_row]), float(trace.time_s[last_row])
    bridged_wh, gap_u_wh = 0.0, 0.0
    gaps = tuple(g for g in trace.gaps if g.start_s >= from_s and g.end_s <= to_s)
    if gaps:
        inner = trace.power_w[run.start.row_after : run.end.row_before + 1]
        low_w, high_w = percentile(inner, 5), percentile(inner, 95)
        bridged_wh, gap_u_wh = bridges(trace, gaps, run.start.at_s, run.end.at_s, low_w, high_w)
    energy_wh = between_rows_wh(trace, first_row, last_row) + bridged_wh
    energy_wh += holes_more_wh(trace, first_row, last_row)
    # a heater that is on without a break hides nothing between the samples
    warm_row = min(max(first_row, run.warm_up.last_row), last_row)
    missed = run.missed.of_part(last_row - warm_row)
    # over a gap the doubt is that of the gap
    warm_wh = path_u_wh(trace, first_row, warm_row, run.warm_up.around, gap_w=0.0)
    sampling_wh = path_u_wh(trace, warm_row, last_row, run.inner, gap_w=0.0)
    sampling_wh = math.hypot(warm_wh, max(sampling_wh, missed.sampling_u_wh))
    # both ways doubt the same edges: the larger is the doubt
    in_step_wh = math.sqrt(max(missed.in_step_u_wh**2 - sampling_wh**2, 0.0))
    doubts = (
        Influence(SAMPLING, sampling_wh),
        Influence(IN_STEP, in_step_wh),
        Influence(UNSEEN, missed.hidden_u_wh),
        Influence(RESOLUTION, resolution_u_wh(trace, first_row, last_row)),
        Influence(GAPS, gap_u_wh),
    )
    return Increment(energy_wh, doubts)
