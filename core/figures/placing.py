"""Labels beside points so that none lies over another, over a point, or outside: plain numbers, no fonts.

Greedy and deterministic: labels are placed in the order given, each at the nearest free place around its
point; one that finds no place is left out (the caller says so). Optimal placing is NP-hard (J. Marks and
S. Shieber, "The computational complexity of cartographic label placement", 1991, from memory), and with the
few dozens of labels of a chart a greedy search rarely differs from it.
"""

import math

from attrs import frozen

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
    taken = list(obstacles)
    points = [Box(a.x - a.radius, a.y - a.radius, 2 * a.radius, 2 * a.radius) for a in anchors]
    leaders: list[tuple[float, float, float, float]] = []
    placed: list[Placed | None] = []
    for i, anchor in enumerate(anchors):
        blocked = taken + points
        others = points[:i] + points[i + 1 :]
        found = _first_free(anchor, bounds, blocked, [*leaders, *lines], others, _REACHES[:2])
        found = found or _first_free(anchor, bounds, blocked, leaders, others, _REACHES)
        placed.append(found)
        if found is not None:
            taken.append(found.box.grown(1.0))
            if found.leader is not None:
                leaders.append(found.leader)
    return tuple(placed)


def _first_free(
    anchor: Anchor,
    bounds: Box,
    blocked: list[Box],
    crossed: list[tuple[float, float, float, float]],
    others: list[Box],
    reaches: tuple[float, ...],
) -> Placed | None:
    for reach in reaches:
        for degrees in _DIRECTIONS:
            box = _beside(anchor, math.radians(degrees), anchor.radius + 3.0 + reach * anchor.height)
            if not bounds.holds(box) or any(box.overlaps(b) for b in blocked):
                continue
            if any(crosses(line, box) for line in crossed):
                continue
            if reach < _LEADER_FROM:
                return Placed(box, None)
            leader = _leader(anchor, box)
            # a line through another point or label would seem to belong to that one
            if not any(crosses(leader, b) for b in others) and not any(
                crosses(leader, b) for b in blocked if b not in others and not _touches(b, anchor)
            ):
                return Placed(box, leader)
    return None


def _touches(box: Box, anchor: Anchor) -> bool:
    return box.x <= anchor.x <= box.right and box.y <= anchor.y <= box.bottom


def _beside(anchor: Anchor, angle: float, distance: float) -> Box:
    """The label with its nearest edge or corner `distance` away from the point in a direction."""
    dx, dy = round(math.cos(angle), 9), round(math.sin(angle), 9)
    cx = anchor.x + dx * distance + _sign(dx) * anchor.width / 2
    cy = anchor.y + dy * distance + _sign(dy) * anchor.height / 2
    return Box(cx - anchor.width / 2, cy - anchor.height / 2, anchor.width, anchor.height)


def _sign(value: float) -> float:
    return 0.0 if abs(value) < 0.2 else math.copysign(1.0, value)


def _leader(anchor: Anchor, box: Box) -> tuple[float, float, float, float]:
    x = min(max(anchor.x, box.x), box.right)
    y = min(max(anchor.y, box.y), box.bottom)
    length = math.hypot(x - anchor.x, y - anchor.y) or 1.0
    share = anchor.radius / length
    return (anchor.x + (x - anchor.x) * share, anchor.y + (y - anchor.y) * share, x, y)


def crosses(line: tuple[float, float, float, float], box: Box) -> bool:
    """Whether a line runs through a box (touching its edge does not count)."""
    x1, y1, x2, y2 = line
    start, end = 0.0, 1.0
    for origin, step, low, high in (
        (x1, x2 - x1, box.x, box.right),
        (y1, y2 - y1, box.y, box.bottom),
    ):
        if abs(step) < 1e-12:
            if not low < origin < high:
                return False
            continue
        first, last = sorted(((low - origin) / step, (high - origin) / step))
        start, end = max(start, first), min(end, last)
    return end - start > 1e-9


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
