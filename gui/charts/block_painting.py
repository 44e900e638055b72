"""Painting of the stretches on a lane: ground under the trace; outline, states, handles and name over it.

The ground is opaque and lies under the trace: a translucent one over it costs forty times as much, and greys
the trace.
"""

from typing import Final

from attrs import frozen
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter

from core.figures.lanes import Block
from core.language import tr
from core.results.values import StateSpan
from gui.charts.lane_hits import Edge
from gui.charts.lane_painting import BAND_PX
from gui.charts.time_view import TimeView
from gui.look import S4, Look

_HANDLE_PX: Final = 7.0
#: share of the machine's colour in the ground of a stretch that counts
_TINT, _TINT_MARKED = 0.20, 0.32


@frozen
class ShownBlock:
    """A stretch as it is drawn just now: an edge under the pointer runs ahead of the study. [s]"""

    block: Block
    start_s: float
    end_s: float
    is_selected: bool = False
    is_hovered: bool = False
    edge: Edge | None = None


def paint_block_ground(
    painter: QPainter, plot: QRectF, view: TimeView, shown: ShownBlock, slot: int, look: Look
) -> None:
    """The ground of a stretch: tinted if it counts; marked if it is selected or under the pointer."""
    box = _box(plot, view, shown)
    if box is None:
        return
    is_marked = shown.is_selected or shown.is_hovered
    ground = box.toAlignedRect().intersected(plot.toAlignedRect())
    if shown.block.is_included:
        fill = look.machine(slot).fill
        painter.fillRect(ground, look.blend(fill, "card", _TINT_MARKED if is_marked else _TINT))
    elif is_marked:
        painter.fillRect(ground, look.blend("selection", "card", 0.6))


def paint_block(
    painter: QPainter, plot: QRectF, view: TimeView, shown: ShownBlock, slot: int, look: Look
) -> None:
    """What lies over the trace: dashed where the program decided, solid where the user did."""
    box = _box(plot, view, shown)
    if box is None:
        return
    block = shown.block
    line = look.machine(slot).line if block.kind == "run" else "muted"
    painter.save()
    painter.setClipRect(plot.adjusted(-1, 0, 2, 1))
    pen = look.pen("link" if shown.is_selected else line, 2.0 if shown.is_selected else 1.0)
    if not block.is_decided:
        pen.setDashPattern([4.0, 3.0])
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(box)
    for span in block.states:
        _paint_state(painter, plot, view, span, line, look)
    if shown.is_selected:
        _paint_handles(painter, box, shown.edge, look)
    _paint_label(painter, box.intersected(plot), block, look)
    painter.restore()


def _box(plot: QRectF, view: TimeView, shown: ShownBlock) -> QRectF | None:
    """Where a stretch lies, or None if it cannot be seen."""
    left = max(view.x(shown.start_s), plot.left() - 4)
    right = min(view.x(shown.end_s), plot.right() + 4)
    if right < plot.left() or left > plot.right():
        return None
    return QRectF(round(left) + 0.5, plot.top() + 0.5, max(round(right - left), 1.0), plot.height() - 1)


def _paint_state(
    painter: QPainter, plot: QRectF, view: TimeView, span: StateSpan, line: str, look: Look
) -> None:
    left, right = max(view.x(span.start_s), plot.left()), min(view.x(span.end_s), plot.right())
    if right <= left or span.state in ("off", "standby"):
        return
    band = QRectF(left, plot.bottom() - BAND_PX, right - left, BAND_PX)
    if span.state == "processing":
        painter.fillRect(band, look.color(line))
    else:
        brush = painter.brush()
        brush.setColor(look.color(line))
        brush.setStyle(
            Qt.BrushStyle.Dense4Pattern if span.state == "warm-up" else Qt.BrushStyle.Dense6Pattern
        )
        painter.fillRect(band, brush)
    painter.fillRect(QRectF(right - 1, band.top() - 2, 1, BAND_PX + 2), look.color(line))


def _paint_handles(painter: QPainter, box: QRectF, edge: Edge | None, look: Look) -> None:
    painter.setPen(look.pen("card"))
    for name, x in (("start", box.left()), ("end", box.right())):
        grip = QRectF(x - _HANDLE_PX / 2, box.center().y() - 11, _HANDLE_PX, 22)
        if edge == name:
            grip.adjust(-2, -4, 2, 4)
        painter.setBrush(look.color("link"))
        painter.drawRoundedRect(grip, 3, 3)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _paint_label(painter: QPainter, box: QRectF, block: Block, look: Look) -> None:
    painter.setFont(look.font())
    metrics = QFontMetricsF(painter.font())
    text = (
        block.label
        if block.is_included or block.kind != "run"
        else tr("{label}, left out", label=block.label)
    )
    room = box.width() - 2 * S4
    if metrics.horizontalAdvance(text) > room:
        text = block.label
    width = metrics.horizontalAdvance(text)
    if width > room:
        return
    under = QRectF(box.left() + S4 - 2, box.top() + 3, width + 4, metrics.height())
    painter.fillRect(under, look.color("card"))
    painter.setPen(look.color("ink" if block.is_included else "muted"))
    painter.drawText(
        under.adjusted(2, 0, 0, 0), Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, text
    )
