"""Names of curves in a margin beside their plot, one to a line, each led to by a line from its curve."""

from collections.abc import Sequence
from typing import Final

from attrs import frozen

from core.figures.placing import Box
from gui.charts.scene import Item, Line, Marker, Ruler, Text
from gui.look import Look

#: a curve that ends within this part of the axis before its border ends at the border
NEAR_BORDER: Final = 0.08
#: a margin for names takes no more than this part of the chart
_WIDEST: Final = 0.22
#: longer names may be shortened anywhere [letters]
_ORDINARY: Final = 16


@frozen
class CurveEnd:
    """Where a curve ends, and whose it is. [px]"""

    x: float
    y: float
    name: str
    slot: int


def margin_width(names: Sequence[str], width: float, look: Look) -> float:
    """Width of a margin that holds these names beside a chart of a width; 0 without names. [px]"""
    if not names:
        return 0.0
    ruler = Ruler(look)
    return min(max(ruler.width(name, bold=True) for name in names) + look.px(34), _WIDEST * width)


def lines_beside(box: Box, look: Look) -> int:
    """How many names have room one under another beside a plot."""
    return max(1, int(box.height / Ruler(look).height()))


def cut_names(ends: Sequence[CurveEnd], margin: float, look: Look) -> int:
    """How many names of ordinary length would have to be shortened."""
    ruler, room = Ruler(look), margin - look.px(32)
    return sum(len(end.name) <= _ORDINARY and ruler.width(end.name, bold=True) > room for end in ends)


def names_beside(
    box: Box, ends: Sequence[CurveEnd], margin: float, look: Look, *, marks_ends: bool = True
) -> list[Item]:
    """Names at the right of a plot, spread so that each has a line of its own; as many as have room.

    ``marks_ends``: whether the end of each curve is marked too, where marks could not be taken for points.
    """
    px, ruler = look.px, Ruler(look)
    text = ruler.height()
    kept = sorted(ends[: lines_beside(box, look)], key=lambda end: end.y)
    ys = spread([end.y for end in kept], text, box.y + text / 2, box.bottom - text / 2)
    left = box.right + px(28)
    items: list[Item] = []
    for end, label_y in zip(kept, ys, strict=True):
        name = ruler.fitted(end.name, margin - px(32), bold=True)
        at = Box(left, label_y - text / 2, ruler.width(name, bold=True), text)
        items += [
            Line(end.x + px(5), end.y, left - px(16), label_y, "muted", 0.8, slot=end.slot),
            *([Marker(end.x, end.y, px(7), end.slot)] if marks_ends else []),
            Marker(left - px(9), label_y, px(9), end.slot),  # lines may cross; the mark tells them apart
            Text(at, name, bold=True, full=end.name, slot=end.slot),
        ]
    return items


def spread(places: list[float], apart: float, low: float, high: float) -> list[float]:
    """Rising places moved as little as it takes to lie `apart` from each other, between `low` and `high`.

    The sum of the squares of the moves is the least there is: less the distances that they must keep, the
    places need only rise, which is isotonic regression; neighbours that are too near are pooled to their mean
    (R. E. Barlow and others, *Statistical Inference under Order Restrictions*, Wiley, 1972, from memory).

    Examples
    --------
    >>> spread([1.0, 1.5, 9.0], 2.0, 0.0, 10.0)
    [0.25, 2.25, 9.0]
    """
    pools: list[tuple[float, int]] = []
    for i, at in enumerate(places):
        mean, size = at - i * apart, 1
        while pools and pools[-1][0] > mean:
            before, many = pools.pop()
            mean, size = (before * many + mean * size) / (many + size), many + size
        pools.append((mean, size))
    end = high - (len(places) - 1) * apart
    free = [max(min(mean, end), low) for mean, size in pools for _ in range(size)]
    return [at + i * apart for i, at in enumerate(free)]
