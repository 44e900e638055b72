"""Painting a laid out chart: the one way for the window, for saved pictures and for the clipboard."""

from functools import singledispatch

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen

from core.figures.placing import Box
from gui.charts.scene import Fill, Item, Line, Marker, Scene, Text, font_of
from gui.look import Look, marker_path


def paint(painter: QPainter, scene: Scene, look: Look) -> None:
    """Paint a scene with its top left at the painter's origin. The background is the caller's."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.TextAntialiasing)
    for item in scene.items:
        _paint(item, painter, look)


@singledispatch
def _paint(item: Item, painter: QPainter, look: Look) -> None:
    raise TypeError(f"no way to paint {type(item).__name__}")


@_paint.register
def _(item: Text, painter: QPainter, look: Look) -> None:
    font = font_of(look, item.size, item.bold)
    painter.setFont(font)
    metrics = QFontMetricsF(font)
    width = metrics.horizontalAdvance(item.text)
    left = {
        "left": item.box.x,
        "center": item.box.x + (item.box.width - width) / 2,
        "right": item.box.right - width,
    }[item.align]
    baseline = item.box.y + (item.box.height - metrics.height()) / 2 + metrics.ascent()
    if item.halo:
        grown = item.box.grown(look.px(1))
        painter.fillRect(_rect(grown), look.color("card", 0.85))
    painter.setPen(look.color(item.token))
    painter.drawText(QPointF(left, baseline), item.text)


@_paint.register
def _(item: Line, painter: QPainter, look: Look) -> None:
    painter.setPen(look.pen(item.color, item.width, item.dash))
    painter.drawLine(QPointF(item.x1, item.y1), QPointF(item.x2, item.y2))


@_paint.register
def _(item: Fill, painter: QPainter, look: Look) -> None:
    painter.setPen(look.pen(item.outline, 1.0) if item.outline else QPen(Qt.PenStyle.NoPen))
    painter.setBrush(look.color(item.color, item.alpha))
    painter.drawRect(_rect(item.box))


@_paint.register
def _(item: Marker, painter: QPainter, look: Look) -> None:
    style = look.machine(item.slot)
    painter.save()
    painter.translate(item.x, item.y)
    if item.hollow:
        painter.setPen(look.pen(style.line, 1.4))
        painter.setBrush(look.color("card"))
    elif item.dot:
        painter.setPen(look.pen("card", 0.6))
        painter.setBrush(look.color(style.line))
    else:
        painter.setPen(look.pen("ink", 1.0))
        painter.setBrush(look.color(style.fill))
    painter.drawPath(marker_path("circle" if item.dot else style.marker, item.size))
    painter.restore()


def _rect(box: Box) -> QRectF:
    return QRectF(box.x, box.y, box.width, box.height)
