"""What lies where on a lane, and where an edge may go: plain geometry of stretches in time. No Qt."""

from typing import Final, Literal

import numpy as np

from core.figures.lanes import Block, LaneContent
from core.traces import Trace
from gui.charts.time_view import TimeView

Edge = Literal["start", "end"]

#: how near the pointer must be to an edge to take hold of it [px]
REACH_PX: Final = 6.0


def edge_at(
    content: LaneContent, view: TimeView, x: float, selected: str | None
) -> tuple[Block, Edge] | None:
    """The nearest edge within reach; that of the selected stretch where two touch."""
    near: list[tuple[bool, float, Block, Edge]] = []
    for block in content.blocks:
        for edge in ("start", "end"):
            distance = abs(view.x(edge_s(block, edge)) - x)
            if distance <= REACH_PX:
                near.append((block.run_id != selected, distance, block, edge))
    if not near:
        return None
    _, _, block, hit = min(near, key=lambda n: (n[0], n[1]))
    return block, hit


def block_at(content: LaneContent, at_s: float) -> Block | None:
    """The shortest stretch that holds this time."""
    holding = [b for b in content.blocks if b.start_s <= at_s <= b.end_s]
    return min(holding, key=lambda b: b.end_s - b.start_s, default=None)


def neighbour(content: LaneContent, selected: str | None, by: int) -> Block | None:
    """The stretch `by` places on; without a selection the first or the last one."""
    blocks = content.blocks
    if not blocks:
        return None
    place = next((i for i, b in enumerate(blocks) if b.run_id == selected), None)
    if place is None:
        return blocks[0] if by > 0 else blocks[-1]
    return blocks[min(max(place + by, 0), len(blocks) - 1)]


def edge_s(block: Block, edge: Edge) -> float:
    """Where an edge of a stretch lies. [s]"""
    return block.start_s if edge == "start" else block.end_s


def with_edge(block: Block, edge: Edge, at_s: float) -> tuple[float, float]:
    """Start and end of a stretch with one edge put elsewhere. [s]"""
    return (at_s, block.end_s) if edge == "start" else (block.start_s, at_s)


def allowed_s(trace: Trace, block: Block, edge: Edge, at_s: float) -> float:
    """The nearest place for an edge: inside the log, and on its own side of the other edge. [s]"""
    least_s = max(trace.median_s, 1e-3)
    at_s = min(at_s, block.end_s - least_s) if edge == "start" else max(at_s, block.start_s + least_s)
    return min(max(at_s, 0.0), trace.end_s)


def nudged_s(trace: Trace, at_s: float, samples: int) -> float:
    """The time so many samples on; from between two samples the first step goes to the nearer side. [s]"""
    time_s = trace.time_s
    if samples > 0:
        row = int(np.searchsorted(time_s, at_s, side="right")) + samples - 1
    else:
        row = int(np.searchsorted(time_s, at_s, side="left")) + samples
    return float(time_s[min(max(row, 0), time_s.size - 1)])


def power_at_w(trace: Trace, at_s: float) -> float | None:
    """What the log says of a moment: nearest sample, or the value that stands for it; None in a gap. [W]"""
    if any(gap.start_s < at_s < gap.end_s for gap in trace.gaps):
        return None
    time_s = trace.time_s
    after = int(np.searchsorted(time_s, at_s, side="left"))
    if trace.kind == "averaged":
        row = after
    elif trace.kind == "on_change":
        row = int(np.searchsorted(time_s, at_s, side="right")) - 1
    else:
        row = after
        if 0 < after < time_s.size and at_s - time_s[after - 1] < time_s[after] - at_s:
            row = after - 1
    return float(trace.power_w[min(max(row, 0), time_s.size - 1)])
