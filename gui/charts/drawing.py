"""Painting a laid out chart: the one way for the window, for saved pictures and for the clipboard."""

from collections.abc import Callable, Iterator
from functools import lru_cache
from typing import Final

import numpy as np
from attrs import evolve
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPaintEngine, QPainter, QPainterPath, QPen

from core.figures.placing import Box
from core.traces import F64
from gui.charts.clipping import area_inside, inside
from gui.charts.scene import Area, Fill, Item, Line, Marker, Scene, Stroke, Text, font_of
from gui.look import Look, MachineStyle, Size, marker_path

#: lines and halos reach this far beyond their places [px at scale 1]
_EDGE = 4.0
#: pixels of a curve are painted in pieces of so many points; lines of one pixel take Qt far less each
_PIECE, _THIN_PIECE = 48, 192


def paint(painter: QPainter, scene: Scene, look: Look, within: Box | None = None) -> None:
    """Paint a scene with its top left at the painter's origin. The background is the caller's.

    Of a scene that is much higher than what is visible, only what reaches into `within` need be painted.
    """
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
    brush = _Brush(painter, look)
    edge = look.px(_EDGE)
    for item in scene.items:
        if within is None or _reaches(item, within.y - edge, within.bottom + edge):
            brush.paint(item)


def _reaches(item: Item, top: float, bottom: float) -> bool:
    """Whether any of an item is between two heights; of what has no simple outline it is taken to be."""
    if isinstance(item, Text | Fill):
        return item.box.y <= bottom and item.box.bottom >= top
    if isinstance(item, Marker):
        return item.y - item.size <= bottom and item.y + item.size >= top
    if isinstance(item, Line):
        return min(item.y1, item.y2) <= bottom and max(item.y1, item.y2) >= top
    return True


@lru_cache(maxsize=256)
def _marker(marker: str, size: float) -> QPainterPath:
    return marker_path(marker, size)


class _Brush:
    """Paints items, making each pen, colour and font once: there are a dozen for a thousand items."""

    def __init__(self, painter: QPainter, look: Look) -> None:
        self._painter = painter
        self._look = look
        self._pens: dict[tuple[str, float, tuple[float, ...]], QPen] = {}
        self._colors: dict[tuple[str, float], QColor] = {}
        self._fonts: dict[tuple[Size, bool], tuple[QFont, QFontMetricsF]] = {}
        self._styles: dict[int, MachineStyle] = {}
        self._is_drawing = painter.paintEngine().type() != QPaintEngine.Type.Raster
        self._dots = painter.deviceTransform().m11()  # of a screen, to a pixel of the scene

    def paint(self, item: Item) -> None:
        _WAYS[type(item)](self, item)

    def _pen(self, color: str, width: float, dash: tuple[float, ...] = ()) -> QPen:
        key = (color, width, dash)
        if key not in self._pens:
            self._pens[key] = self._look.pen(color, width, dash)
        return self._pens[key]

    def _color(self, name: str, alpha: float = 1.0) -> QColor:
        key = (name, alpha)
        if key not in self._colors:
            self._colors[key] = self._look.color(name, alpha)
        return self._colors[key]

    def _font(self, size: Size, bold: bool) -> tuple[QFont, QFontMetricsF]:
        key = (size, bold)
        if key not in self._fonts:
            font = font_of(self._look, size, bold)
            self._fonts[key] = (font, QFontMetricsF(font))
        return self._fonts[key]

    def _text(self, item: Text) -> None:
        font, metrics = self._font(item.size, item.bold)
        width = metrics.horizontalAdvance(item.text)
        left = {
            "left": item.box.x,
            "center": item.box.x + (item.box.width - width) / 2,
            "right": item.box.right - width,
        }[item.align]
        baseline = item.box.y + (item.box.height - metrics.height()) / 2 + metrics.ascent()
        if item.halo and not self._look.is_clear:
            grown = item.box.grown(self._look.px(1))
            self._painter.fillRect(_rect(grown), self._color("card", 0.85))
        self._painter.setFont(font)
        is_faded = item.token == "ink" and self._look.is_faded(item.slot)
        self._painter.setPen(self._color("muted" if is_faded else item.token))
        self._painter.drawText(QPointF(left, baseline), item.text)

    def _line(self, item: Line) -> None:
        self._painter.setPen(self._pen(item.color, item.width, item.dash))
        self._painter.drawLine(QPointF(item.x1, item.y1), QPointF(item.x2, item.y2))

    def _fill(self, item: Fill) -> None:
        self._painter.setPen(self._pen(item.outline, 1.0) if item.outline else QPen(Qt.PenStyle.NoPen))
        self._painter.setBrush(self._color(item.color, item.alpha))
        self._painter.drawRect(_rect(item.box))

    def _marker(self, item: Marker) -> None:
        if item.slot not in self._styles:
            self._styles[item.slot] = self._look.machine(item.slot)
        style = self._styles[item.slot]
        if item.hollow:
            pen, fill = self._pen(style.line, 1.4), self._color("card", 0.0 if self._look.is_clear else 1.0)
        elif item.dot:
            pen, fill = self._pen("card", 0.6), self._color(style.line)
        else:
            pen, fill = self._pen("ink", 1.0), self._color(style.fill)
        painter = self._painter
        painter.setPen(pen)
        painter.setBrush(fill)
        if item.dot:
            painter.drawEllipse(QPointF(item.x, item.y), item.size / 2, item.size / 2)
        else:
            painter.drawPath(_marker(style.marker, item.size).translated(item.x, item.y))

    def _stroke(self, item: Stroke) -> None:
        pen = QPen(self._pen(item.color, item.width, item.dash))
        pen.setColor(self._color(item.color, item.alpha))
        pen.setJoinStyle(Qt.PenJoinStyle.BevelJoin)
        self._painter.setRenderHint(QPainter.RenderHint.Antialiasing, not item.fine)
        for path in self._pieces(item):
            self._painter.strokePath(path, pen)
        self._painter.setRenderHint(QPainter.RenderHint.Antialiasing)

    def _pieces(self, item: Stroke) -> Iterator[QPainterPath]:
        """A curve in one piece for files of drawings, in short ones for pixels.

        While Qt paints one piece nothing else of the program runs, in whichever thread; and a long restless
        curve takes longer in one. Dashes go on from piece to piece only in one.
        """
        length = _THIN_PIECE if self._look.px(item.width) * self._dots <= 1.0 else _PIECE
        if self._is_drawing or item.dash or item.xs.size <= length:
            yield stroke_path(item)
            return
        xs, ys = _seen_of(item)  # once for all pieces: most of what that costs is a cost of each call
        for piece in _cut(xs.size, length):
            yield stroke_path(evolve(item, xs=xs[piece], ys=ys[piece], clip=None))

    def _area(self, item: Area) -> None:
        # so faint an edge needs no smoothing, which would take ten times as long
        self._painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        color = self._color(item.color, item.alpha)
        if self._is_drawing:
            self._painter.fillPath(area_path(item), color)
        else:
            xs, tops, bottoms = _seen_area_of(item)
            for piece in _cut(xs.size, _PIECE):
                part = evolve(item, xs=xs[piece], tops=tops[piece], bottoms=bottoms[piece], clip=None)
                self._painter.fillPath(area_path(part), color)
        self._painter.setRenderHint(QPainter.RenderHint.Antialiasing)


# In a table of bound methods the brush would hold itself, and with itself the painter, beyond its time.
_WAYS: Final[dict[type, Callable[..., None]]] = {
    Text: _Brush._text,
    Line: _Brush._line,
    Fill: _Brush._fill,
    Marker: _Brush._marker,
    Stroke: _Brush._stroke,
    Area: _Brush._area,
}


def _cut(points: int, length: int) -> Iterator[slice]:
    """Pieces of a curve, each with the last point of the one before."""
    for first in range(0, max(points - 1, 1), length):
        yield slice(first, first + length + 1)


def load_paths() -> None:
    """Load what makes paths of curves, which takes longer than most pictures, before one is waited for."""
    import pyqtgraph.functions  # noqa: F401


def _seen_of(item: Stroke) -> tuple[F64, F64]:
    """The points of a curve within its clip."""
    return (item.xs, item.ys) if item.clip is None else inside(item.xs, item.ys, item.clip)


def _seen_area_of(item: Area) -> tuple[F64, F64, F64]:
    """The two edges of an area within its clip."""
    if item.clip is None:
        return item.xs, item.tops, item.bottoms
    return area_inside(item.xs, item.tops, item.bottoms, item.clip)


def stroke_path(item: Stroke) -> QPainterPath:
    """The curve as a path."""
    from pyqtgraph.functions import arrayToQPath

    xs, ys = _seen_of(item)
    if xs.size < 2:
        return QPainterPath()
    path: QPainterPath = arrayToQPath(xs, ys, connect="finite")
    return path


def area_path(item: Area) -> QPainterPath:
    """What lies between two curves as a closed path."""
    from pyqtgraph.functions import arrayToQPath

    xs, tops, bottoms = _seen_area_of(item)
    if xs.size < 2:
        return QPainterPath()
    around = np.concatenate((xs, xs[::-1]))
    path: QPainterPath = arrayToQPath(around, np.concatenate((tops, bottoms[::-1])), connect="all")
    path.closeSubpath()
    return path


def _rect(box: Box) -> QRectF:
    return QRectF(box.x, box.y, box.width, box.height)
