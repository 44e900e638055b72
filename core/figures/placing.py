"""Labels beside points so that none lies over another, over a point, or outside: plain numbers, no fonts.

Greedy and deterministic: labels are placed in the order given, each at the nearest free place around its
point; one that finds no place is left out (the caller says so). Optimal placing is NP-hard (J. Marks and
S. Shieber, "The computational complexity of cartographic label placement", 1991, from memory), and with the
few dozens of labels of a chart a greedy search rarely differs from it.
"""

import math
from collections.abc import Sequence

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

F64 = NDArray[np.float64]

#: directions tried around a point, best first: right, left, above, below, then between them [degrees]
_DIRECTIONS = (0, 180, 270, 90, 315, 45, 225, 135, 337, 22, 202, 157, 292, 247, 67, 112)
#: distances tried, as multiples of the label's height, nearest first
_REACHES = (0.0, 0.5, 1.0, 1.6, 2.4, 3.4, 4.6, 6.0)
#: from this distance on a line leads from the label to its point
_LEADER_FROM = 0.5


@frozen
class Box:
    """A rectangle; y grows downwards."""

    x: float
    y: float
    width: float
    height: float

    @property
    def right(self) -> float:
        """Right edge."""
        return self.x + self.width

    @property
    def bottom(self) -> float:
        """Lower edge."""
        return self.y + self.height

    def overlaps(self, other: "Box") -> bool:
        """Whether both cover some common area."""
        return (
            self.x < other.right and other.x < self.right and self.y < other.bottom and other.y < self.bottom
        )

    def holds(self, other: "Box", slack: float = 1e-6) -> bool:
        """Whether `other` lies wholly inside."""
        return (
            other.x >= self.x - slack
            and other.y >= self.y - slack
            and other.right <= self.right + slack
            and other.bottom <= self.bottom + slack
        )

    def grown(self, by: float) -> "Box":
        """The same with `by` more on each side."""
        return Box(self.x - by, self.y - by, self.width + 2 * by, self.height + 2 * by)


@frozen
class Anchor:
    """A point to be labelled: the half-width of what is drawn there, and the label's size."""

    x: float
    y: float
    radius: float
    width: float
    height: float


#: among more labels than this nobody could follow the lines to those that lie far off
_MOST_LED = 60


@frozen
class Placed:
    """Where a label lies, and from where to where a line leads to its point, if one is needed."""

    box: Box
    leader: tuple[float, float, float, float] | None


def place(
    anchors: tuple[Anchor, ...],
    bounds: Box,
    obstacles: tuple[Box, ...] = (),
    lines: tuple[tuple[float, float, float, float], ...] = (),
) -> tuple[Placed | None, ...]:
    """Find a place for each label.

    Parameters
    ----------
    anchors : tuple of Anchor
        In order of importance.
    bounds : Box
        Labels stay inside.
    obstacles : tuple of Box
        What no label may lie over. The points themselves need not be given.
    lines : tuple of (x1, y1, x2, y2)
        Lines that labels lie over only where there is no other place near their point.

    Returns
    -------
    tuple of Placed or None
        One for each anchor; None where there is no room.

    Examples
    --------
    >>> place((Anchor(50, 50, 5, 20, 10),), Box(0, 0, 100, 100))[0].box
    Box(x=58.0, y=45.0, width=20, height=10)
    """
    points = _array([Box(a.x - a.radius, a.y - a.radius, 2 * a.radius, 2 * a.radius) for a in anchors])
    taken = _array(obstacles)
    leaders = np.empty((0, 4))
    near_lines = np.array(lines, dtype=np.float64).reshape(-1, 4)
    placed: list[Placed | None] = []
    for i, anchor in enumerate(anchors):
        others = np.delete(points, i, axis=0)
        space = _Space(bounds, np.vstack([taken, points]), np.vstack([taken, others]))
        found = _first_free(anchor, space, np.vstack([leaders, near_lines]), _REACHES[:2])
        if found is None and len(anchors) <= _MOST_LED:
            found = _first_free(anchor, space, leaders, _REACHES)
        placed.append(found)
        if found is not None:
            taken = np.vstack([taken, _array([found.box.grown(1.0)])])
            if found.leader is not None:
                leaders = np.vstack([leaders, [found.leader]])
    return tuple(placed)


@frozen(eq=False)
class _Space:
    """What is in the way of a label, and of its leader: rows of left, top, right, bottom."""

    bounds: Box
    blocked: F64
    not_own: F64


def _array(boxes: Sequence[Box]) -> F64:
    return np.array([(b.x, b.y, b.right, b.bottom) for b in boxes], dtype=np.float64).reshape(-1, 4)


def _first_free(anchor: Anchor, space: _Space, crossed: F64, reaches: tuple[float, ...]) -> Placed | None:
    distances = np.array(reaches)
    boxes = _candidates(anchor, anchor.radius + 3.0 + distances * anchor.height)
    bounds, slack = space.bounds, 1e-6
    inside = (
        (boxes[:, 0] >= bounds.x - slack)
        & (boxes[:, 1] >= bounds.y - slack)
        & (boxes[:, 2] <= bounds.right + slack)
        & (boxes[:, 3] <= bounds.bottom + slack)
    )
    blocked = space.blocked[:, None, :]
    overlaps = (
        (boxes[:, 0] < blocked[..., 2])
        & (blocked[..., 0] < boxes[:, 2])
        & (boxes[:, 1] < blocked[..., 3])
        & (blocked[..., 1] < boxes[:, 3])
    ).any(axis=0)
    free = inside & ~overlaps & ~_crossings(crossed, boxes).any(axis=0)
    for k in np.flatnonzero(free):
        left, top, _, _ = (float(v) for v in boxes[k])
        box = Box(left, top, anchor.width, anchor.height)
        if reaches[k // len(_DIRECTIONS)] < _LEADER_FROM:
            return Placed(box, None)
        leader = _leader(anchor, box)
        # a line through another point or label would seem to belong to that one
        not_own = space.not_own[~_contains(space.not_own, anchor)]
        if not _crossings(np.array([leader]), not_own).any():
            return Placed(box, leader)
    return None


def _candidates(anchor: Anchor, distances: F64) -> F64:
    """Boxes with their nearest edge or corner at the distances, in every direction, nearest first."""
    angles = np.radians(_DIRECTIONS)
    dx, dy = np.round(np.cos(angles), 9), np.round(np.sin(angles), 9)
    side_x = np.where(np.abs(dx) < 0.2, 0.0, np.sign(dx)) * anchor.width / 2
    side_y = np.where(np.abs(dy) < 0.2, 0.0, np.sign(dy)) * anchor.height / 2
    left = (anchor.x + distances[:, None] * dx + side_x - anchor.width / 2).ravel()
    top = (anchor.y + distances[:, None] * dy + side_y - anchor.height / 2).ravel()
    return np.column_stack([left, top, left + anchor.width, top + anchor.height])


def _contains(boxes: F64, anchor: Anchor) -> NDArray[np.bool_]:
    return (
        (boxes[:, 0] <= anchor.x)
        & (anchor.x <= boxes[:, 2])
        & (boxes[:, 1] <= anchor.y)
        & (anchor.y <= boxes[:, 3])
    )


def _leader(anchor: Anchor, box: Box) -> tuple[float, float, float, float]:
    x = min(max(anchor.x, box.x), box.right)
    y = min(max(anchor.y, box.y), box.bottom)
    length = math.hypot(x - anchor.x, y - anchor.y) or 1.0
    share = anchor.radius / length
    return (anchor.x + (x - anchor.x) * share, anchor.y + (y - anchor.y) * share, x, y)


def crosses(line: tuple[float, float, float, float], box: Box) -> bool:
    """Whether a line runs through a box (touching its edge does not count)."""
    return bool(_crossings(np.array([line]), _array([box]))[0, 0])


def _crossings(lines: F64, boxes: F64) -> NDArray[np.bool_]:
    """Which lines run through which boxes, by clipping each line to the two slabs of each box.

    The slab method is common practice in ray tracing, no source. Returns shape (lines, boxes).
    """
    start = np.zeros((len(lines), len(boxes)))
    end = np.ones_like(start)
    for axis in (0, 1):
        origin = lines[:, axis, None]
        step = lines[:, axis + 2, None] - origin
        low, high = boxes[None, :, axis], boxes[None, :, axis + 2]
        is_flat = np.abs(step) < 1e-12
        divisor = np.where(is_flat, 1.0, step)
        one, other = (low - origin) / divisor, (high - origin) / divisor
        missed = is_flat & ~((low < origin) & (origin < high))
        start = np.maximum(start, np.where(is_flat, start, np.minimum(one, other)))
        end = np.where(missed, -1.0, np.minimum(end, np.where(is_flat, end, np.maximum(one, other))))
    return np.asarray(end - start > 1e-9)


def swarm(places: tuple[float, ...], size: float, lanes: int) -> tuple[int, ...]:
    """Which lane each dot lies in so that dots lie beside rather than over each other.

    Parameters
    ----------
    places : tuple of float
        Where the dots lie along the axis.
    size : float
        Diameter of a dot, in the same unit.
    lanes : int
        How many lanes there are; with too few, dots share the lane in which they overlap least.

    Returns
    -------
    tuple of int
        Lane of each dot, from 0.

    Examples
    --------
    >>> swarm((1.0, 1.2, 5.0), 1.0, 3)
    (0, 1, 0)
    """
    lane_of = [0] * len(places)
    last = [-math.inf] * max(lanes, 1)
    for i in sorted(range(len(places)), key=lambda k: (places[k], k)):
        free = [lane for lane, at in enumerate(last) if places[i] - at >= size]
        lane = free[0] if free else min(range(len(last)), key=lambda k: (last[k], k))
        lane_of[i] = lane
        last[lane] = places[i]
    return tuple(lane_of)
