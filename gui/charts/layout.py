"""A figure, a size and a look become a scene: the chart alone as on a page, or framed as a saved picture."""

from attrs import evolve, frozen

from core.figures.calendar_values import CalendarFigure
from core.figures.curve_values import CurvesFigure
from core.figures.line_up_values import LineUpFigure
from core.figures.placing import Box
from core.figures.values import ComparisonFigure, EnergyTimeFigure, Figure
from gui.charts.calendar import calendar_height, lay_out_calendar
from gui.charts.curves import curves_height, lay_out_curves
from gui.charts.line_up import lay_out_line_up, line_up_height
from gui.charts.plane import lay_out_plane
from gui.charts.rows import lay_out_rows, most_height, wished_height
from gui.charts.scene import Ruler, Scene, Text
from gui.look import Look, Size

_MARGIN = 12.0
_AIRY_DOWN_TO = 0.6
#: sizes of the headline, each with the most lines it may take
_HEADINGS = ((Size.TITLE, 2), (Size.LARGE, 3), (Size.TEXT, 6))


@frozen
class Frame:
    """What a saved picture carries around its chart: the headline above, conditions and source below."""

    title: bool = True
    conditions: bool = True


NO_FRAME = Frame(title=False, conditions=False)


def lay_out(figure: Figure, width: float, height: float, look: Look, frame: Frame = NO_FRAME) -> Scene:
    """Place a figure in `width` x `height` pixels of `look`."""
    margin = look.px(_MARGIN)
    inner = Box(margin, margin, max(width - 2 * margin, 1.0), max(height - 2 * margin, 1.0))
    head = _heading(figure, inner, look) if frame.title else ()
    foot = _footer(figure, inner, look) if frame.conditions else ()
    top = max((t.box.bottom for t in head), default=inner.y - margin) + margin
    bottom = min((t.box.y for t in foot), default=inner.bottom + margin) - margin
    area = Box(inner.x, top, inner.width, max(bottom - top, 1.0))
    if isinstance(figure, ComparisonFigure):
        scene = lay_out_rows(figure, area, look)
    elif isinstance(figure, LineUpFigure):
        scene = lay_out_line_up(figure, area, look)
    elif isinstance(figure, CurvesFigure):
        scene = lay_out_curves(figure, area, look)
    elif isinstance(figure, CalendarFigure):
        scene = lay_out_calendar(figure, area, look)
    else:
        scene = lay_out_plane(figure, area, look)
    return evolve(scene, width=width, height=height, items=(*scene.items, *head, *foot))


def frame_height(figure: Figure, width: float, look: Look, frame: Frame) -> float:
    """What a frame adds to the height of a chart of this width. [px]"""
    margin = look.px(_MARGIN)
    inner = Box(margin, margin, max(width - 2 * margin, 1.0), 1.0)
    height = 0.0
    for texts in (
        _heading(figure, inner, look) if frame.title else (),
        _footer(figure, inner, look) if frame.conditions else (),
    ):
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
    margin = 2 * look.px(_MARGIN)
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


def fitting_scale(figure: Figure, width: float, height: float, look: Look, frame: Frame) -> float:
    """The largest text, up to the scale of `look`, with which a saved picture shows everything.

    Values standing above their marks are worth smaller text, down to `_AIRY_DOWN_TO` of what was wished for;
    below that, rows with the value beside the mark are tried from the largest text on again. At least 1.
    """
    if isinstance(figure, EnergyTimeFigure | CurvesFigure | CalendarFigure):
        return look.scale
    steps = round((look.scale - 1.0) / 0.1)
    scales = [look.scale - 0.1 * i for i in range(steps)] + [1.0]
    scenes = {scale: lay_out(figure, width, height, look.scaled(scale), frame) for scale in scales}
    airy = (s for s in scales if scenes[s].is_airy and s >= _AIRY_DOWN_TO * look.scale)
    whole = (s for s in scales if scenes[s].is_whole)
    return next(airy, None) or next(whole, None) or 1.0


def _heading(figure: Figure, inner: Box, look: Look) -> tuple[Text, ...]:
    """The headline in the largest size in which it takes few lines."""
    ruler = Ruler(look)
    size, most = next(
        (
            (size, most)
            for size, most in _HEADINGS
            if len(ruler.wrapped(figure.headline, inner.width, most + 1, size, bold=True)) <= most
        ),
        _HEADINGS[-1],
    )
    lines = ruler.wrapped(figure.headline, inner.width, most, size, bold=True)
    height = ruler.height(size, bold=True)
    return tuple(
        Text(Box(inner.x, inner.y + i * height, inner.width, height), line, size, bold=True, full=line)
        for i, line in enumerate(lines)
    )


def _footer(figure: Figure, inner: Box, look: Look) -> tuple[Text, ...]:
    """Conditions on the left, source on the right; one under the other when they do not fit beside."""
    ruler = Ruler(look)
    size = Size.SMALL
    height = ruler.height(size)
    source = ruler.fitted(figure.source, inner.width, size)
    beside = inner.width - ruler.width(source, size) - look.px(24)
    lines: list[tuple[str, str]] = []
    if ruler.width(figure.conditions, size) <= beside:
        return (
            Text(
                Box(inner.x, inner.bottom - height, beside, height),
                figure.conditions,
                size,
                token="muted",
                full=figure.conditions,
            ),
            _right(source, inner, height, ruler, size),
        )
    lines = [(line, "muted") for line in ruler.wrapped(figure.conditions, inner.width, 3, size)]
    lines.append((source, "muted"))
    top = inner.bottom - len(lines) * height
    return tuple(
        Text(Box(inner.x, top + i * height, inner.width, height), text, size, token=token, full=text)
        for i, (text, token) in enumerate(lines)
    )


def _right(text: str, inner: Box, height: float, ruler: Ruler, size: Size) -> Text:
    width = ruler.width(text, size)
    return Text(
        Box(inner.right - width, inner.bottom - height, width, height), text, size, token="muted", full=text
    )
