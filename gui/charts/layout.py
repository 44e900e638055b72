"""A figure, a size and a look become a scene: the chart alone as on a page, or framed as a saved picture."""

import math
from collections.abc import Callable

from attrs import evolve, frozen

from core.figures.calendar_values import CalendarFigure
from core.figures.curve_values import CurvesFigure
from core.figures.line_up_values import LineUpFigure
from core.figures.placing import Box
from core.figures.values import ComparisonFigure, Figure
from gui.charts.calendar import calendar_height, lay_out_calendar
from gui.charts.curves import curves_height, lay_out_curves
from gui.charts.framing import MARGIN, NO_FRAME, Frame, footer, heading
from gui.charts.line_up import lay_out_line_up, line_up_height
from gui.charts.plane import lay_out_plane
from gui.charts.row_heights import most_height, wished_height
from gui.charts.rows import lay_out_rows
from gui.charts.scene import Scene
from gui.look import Look

_AIRY_DOWN_TO = 0.6
#: each scale that is tried is so much of the one before
_STEP = 0.95


def lay_out(figure: Figure, width: float, height: float, look: Look, frame: Frame = NO_FRAME) -> Scene:
    """Place a figure in `width` x `height` pixels of `look`."""
    margin = look.px(MARGIN)
    inner = Box(margin, margin, max(width - 2 * margin, 1.0), max(height - 2 * margin, 1.0))
    head = heading(figure, inner, look, frame)
    foot = footer((figure,), inner, look, frame)
    top = max((t.box.bottom for t in head), default=inner.y - margin) + margin
    bottom = min((t.box.y for t in foot), default=inner.bottom + margin) - margin
    area = Box(inner.x, top, inner.width, max(bottom - top, 1.0))
    scene = lay_out_inside(figure, area, look)
    return evolve(scene, width=width, height=height, items=(*scene.items, *head, *foot))


def lay_out_inside(figure: Figure, area: Box, look: Look) -> Scene:
    """Place a figure inside a part of a picture, with nothing around it."""
    if isinstance(figure, ComparisonFigure):
        return lay_out_rows(figure, area, look)
    if isinstance(figure, LineUpFigure):
        return lay_out_line_up(figure, area, look)
    if isinstance(figure, CurvesFigure):
        return lay_out_curves(figure, area, look)
    if isinstance(figure, CalendarFigure):
        return lay_out_calendar(figure, area, look)
    return lay_out_plane(figure, area, look)


def frame_height(figure: Figure, width: float, look: Look, frame: Frame) -> float:
    """What a frame adds to the height of a chart of this width. [px]"""
    margin = look.px(MARGIN)
    inner = Box(margin, margin, max(width - 2 * margin, 1.0), 1.0)
    height = 0.0
    for texts in (heading(figure, inner, look, frame), footer((figure,), inner, look, frame)):
        if texts:
            height += max(t.box.bottom for t in texts) - min(t.box.y for t in texts) + margin
    return height


@frozen
class Room:
    """Width and height of a view: the least, those wished for, and the height beyond which nothing is won."""

    least: tuple[float, float]
    wished: tuple[float, float]
    most_height: float


def room_for(figure: Figure, look: Look) -> Room:
    """What room a figure needs on a page. [px]"""
    margin = 2 * look.px(MARGIN)
    if isinstance(figure, ComparisonFigure):
        wished = wished_height(figure, look) + margin
        return Room((look.px(420), wished), (look.px(760), wished), most_height(figure, look) + margin)
    if isinstance(figure, CalendarFigure):
        wished = calendar_height(figure, look) + margin
        return Room((look.px(300), wished), (look.px(560), wished), wished)
    if isinstance(figure, LineUpFigure):
        least, wished = (height + margin for height in line_up_height(figure, look))
        return Room((look.px(420), least), (look.px(760), wished), max(look.px(1400), wished))
    if isinstance(figure, CurvesFigure):
        least, wished = (height + margin for height in curves_height(figure, look))
        return Room((look.px(260), least), (look.px(480), wished), look.px(900) + margin)
    return Room(
        (look.px(260), look.px(200) + margin), (look.px(480), look.px(260) + margin), look.px(900) + margin
    )


def fitting_scale(
    figure: Figure, width: float, height: float, look: Look, frame: Frame, least: float = 1.0
) -> float:
    """The largest text, up to the scale of `look`, with which a saved picture shows everything.

    Values standing above their marks are worth smaller text, down to `_AIRY_DOWN_TO` of what was wished for;
    below that, rows with the value beside the mark are tried from the largest text on again, down to `least`.
    """

    def made(scale: float) -> Scene:
        return lay_out(figure, width, height, look.scaled(scale), frame)

    return largest_scale(made, look.scale, least)


def largest_scale(made: Callable[[float], Scene], wished: float, least: float) -> float:
    """The largest of some scales at which a scene is airy, or nothing is left away, or the least is.

    Parameters
    ----------
    made : callable
        Lays the scene out at a scale.
    wished, least : float
        From where to where scales are tried.
    """
    steps = max(0, math.ceil(math.log(wished / least) / -math.log(_STEP))) if wished > least else 0
    scales = [wished * _STEP**i for i in range(steps)] + [min(least, wished)]
    scenes: dict[float, Scene] = {}

    def scene(scale: float) -> Scene:
        if scale not in scenes:
            scenes[scale] = made(scale)
        return scenes[scale]

    airy = (s for s in scales if s >= _AIRY_DOWN_TO * wished and scene(s).is_airy)
    named = (s for s in scales if scene(s).is_whole and not scene(s).unnamed)
    found = next(airy, None) or next(named, None)

    def worth(scale: float) -> tuple[bool, int, float]:
        made_so = scene(scale)
        # where rows are left away, smaller text leaves fewer away
        return made_so.is_whole, -made_so.unnamed, scale if made_so.is_whole else -scale

    return found or max(scales, key=worth)
