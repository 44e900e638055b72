"""The chart of runs lined up, worked by pointer and keys: hover reads a run, dragging marks a span.

The wheel looks closer in time, never beyond the runs; a double click shows everything again. Hover and
selection are painted over the chart and are in no saved picture, except the span that is read: it is part of
the figure.
"""

from collections.abc import Iterator

import numpy as np
from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPen, QWheelEvent
from PySide6.QtWidgets import QWidget

from core.figures.line_up import whole_view
from core.figures.line_up_readout import at_place
from core.figures.line_up_values import LineUpFigure
from core.figures.placing import Box
from core.formatting import NumberLocale
from core.line_up.strands import by_machine
from gui.charts.drawing import stroke_path
from gui.charts.readout import paint_readout
from gui.charts.scene import Plot, Scene, Stroke, Target
from gui.charts.view import ChartView

#: how near the pointer must be to a curve to read it [px at scale 1]
_REACH = 18.0
#: a press that moves less than this is a click [px at scale 1]
_CLICK = 4.0
#: one step of looking closer, and of moving along, as a part of the view
_ZOOM, _PAN = 1.25, 0.2
#: the closest look, as a part of everything
_CLOSEST = 1 / 2000
_KEY = "power_w"


class LineUpView(ChartView):
    """Shows a line-up."""

    span_marked = Signal(object)  # (from, to) on the common axis, or None
    view_changed = Signal(object)  # (from, to) on the common axis, or None for everything

    def __init__(self, name: str, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(name, parent)
        self._locale = locale
        self._pressed_x: float | None = None
        self._pressed_plot: Plot | None = None
        self._drawn_to_x: float | None = None

    @property
    def line_up(self) -> LineUpFigure | None:
        """What is shown."""
        return self._figure if isinstance(self._figure, LineUpFigure) else None

    # where things are

    def plot_at(self, x: float, y: float) -> Plot | None:
        """The plot at a place; its borders count in both directions, so that edges are easily reached."""
        scene = self.scene()
        slack = self._look.px(8)
        plots = () if scene is None else scene.plots
        return next(
            (
                p
                for p in plots
                if p.box.x - slack <= x <= p.box.right + slack
                and p.box.y - slack <= y <= p.box.bottom + slack
            ),
            None,
        )

    def target_at(self, x: float, y: float) -> Target | None:
        """The run whose curve passes nearest to a place, if one is near."""
        scene, reach = self.scene(), self._look.px(_REACH)
        if scene is None or self.plot_at(x, y) is None:
            return None
        best, target = reach, None
        for curve in scene.curves:
            at_y = _height(curve, x)
            if at_y is not None and abs(at_y - y) < best:
                best, target = abs(at_y - y), Target(x, at_y, curve.run_id, curve.machine_id, _KEY)
        return target

    def readout_lines(self) -> tuple[str, ...]:
        target, figure = self._shown_target(), self.line_up
        plot = None if target is None else self.plot_at(target.x, target.y)
        if target is None or figure is None or plot is None:
            return ()
        return at_place(figure, target.run_id, plot.value(target.x), self._locale)

    def _shown_target(self) -> Target | None:
        """What the pointer is at; with the keyboard the chosen run, in the middle of what is shown of it."""
        if self._hovered is not None:
            return self._hovered
        if not self._selected or not self.hasFocus():
            return None  # before the scene is asked for: it costs, and may be wanted at another size soon
        scene = self.scene()
        if scene is None:
            return None
        curve = next((c for c in scene.curves if c.run_id == self._selected and c.clip is not None), None)
        if curve is None or curve.clip is None:
            return None
        seen = np.isfinite(curve.ys) & (curve.xs >= curve.clip.x) & (curve.xs <= curve.clip.right)
        rows = np.flatnonzero(seen)
        if not rows.size:
            return None
        middle = rows[rows.size // 2]
        x, y = float(curve.xs[middle]), float(curve.ys[middle])
        return Target(x, y, curve.run_id, curve.machine_id, _KEY)

    def _runs_by_machine(self) -> Iterator[tuple[str, ...]]:
        figure = self.line_up
        for members in by_machine(figure.strands).values() if figure is not None else ():
            yield tuple(s.run_id for s in members)

    # painting

    def _paint_states(self, painter: QPainter, scene: Scene) -> None:
        look = self._look
        hovered = None if self._hovered is None else self._hovered.run_id
        for curve in scene.curves:
            if curve.run_id in (self._selected, hovered) and curve.clip is not None:
                width = 2.6 if curve.run_id == self._selected else 1.8
                painter.save()
                painter.setClipRect(_rect(curve.clip))
                painter.strokePath(stroke_path(curve), look.pen("card", width + 2.0))
                painter.strokePath(stroke_path(curve), QPen(look.pen(curve.color, width)))
                painter.restore()
        if self._pressed_x is not None and self._drawn_to_x is not None:
            left, right = sorted((self._pressed_x, self._drawn_to_x))
            for plot in scene.plots:
                if plot.low == scene.plots[0].low and (
                    self._column_of(plot) == self._column_of(self._pressed_plot)
                ):
                    painter.fillRect(
                        QRectF(left, plot.box.y, right - left, plot.box.height), look.color("link", 0.15)
                    )
        if self.hasFocus():
            painter.setPen(look.pen("link", 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))
        target, lines = self._shown_target(), self.readout_lines()
        if target is not None and lines and self._drawn_to_x is None:
            painter.setPen(look.pen("ink", 1.4))
            painter.setBrush(look.color("card"))
            painter.drawEllipse(QPointF(target.x, target.y), look.px(4), look.px(4))
            whole = Box(0, 0, self.width(), self.height())
            paint_readout(painter, lines, (target.x, target.y), whole, look)

    def _column_of(self, plot: Plot | None) -> float:
        return -1.0 if plot is None else plot.box.x

    # pointer

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton:
            super().mousePressEvent(event)
            return
        x, y = event.position().x(), event.position().y()
        self._pressed_plot = self.plot_at(x, y)
        self._pressed_x = None if self._pressed_plot is None else _clamped(x, self._pressed_plot)
        self._drawn_to_x = None

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        x = event.position().x()
        if self._pressed_x is None or self._pressed_plot is None:
            super().mouseMoveEvent(event)
            in_plot = self.plot_at(x, event.position().y()) is not None
            self.setCursor(Qt.CursorShape.CrossCursor if in_plot else Qt.CursorShape.ArrowCursor)
            return
        if self._drawn_to_x is not None or abs(x - self._pressed_x) > self._look.px(_CLICK):
            self._drawn_to_x = _clamped(x, self._pressed_plot)
            self._hovered = None
            self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        plot, start, end = self._pressed_plot, self._pressed_x, self._drawn_to_x
        self._pressed_plot = self._pressed_x = self._drawn_to_x = None
        if event.button() != Qt.MouseButton.LeftButton:
            super().mouseReleaseEvent(event)
            return
        figure = self.line_up
        if plot is not None and start is not None and end is not None and figure is not None:
            low, high = sorted((plot.value(start) / figure.factor, plot.value(end) / figure.factor))
            self.span_marked.emit((low, high))
        else:
            target = self.target_at(event.position().x(), event.position().y())
            self._pick(None if target is None else target.run_id)
        self.update()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        self.view_changed.emit(None)

    def wheelEvent(self, event: QWheelEvent) -> None:
        plot = self.plot_at(event.position().x(), event.position().y())
        turned = event.angleDelta().y()
        if plot is None or not turned:
            event.ignore()
            return
        about = (_clamped(event.position().x(), plot) - plot.box.x) / plot.box.width
        self._zoom(_ZOOM ** (-turned / 120), about)
        event.accept()

    # closer and along

    def _zoom(self, factor: float, about: float = 0.5) -> None:
        figure = self.line_up
        if figure is None:
            return
        low, high = figure.x.low / figure.factor, figure.x.high / figure.factor
        whole = whole_view(figure.strands, figure.choices.anchor)
        length = min(max((high - low) * factor, (whole[1] - whole[0]) * _CLOSEST), whole[1] - whole[0])
        self._show(low + (high - low - length) * about, length, whole)

    def _pan(self, by: float) -> None:
        figure = self.line_up
        if figure is not None:
            low, high = figure.x.low / figure.factor, figure.x.high / figure.factor
            whole = whole_view(figure.strands, figure.choices.anchor)
            self._show(low + by * (high - low), high - low, whole)

    def _show(self, low: float, length: float, whole: tuple[float, float]) -> None:
        """Show so much, kept inside the runs."""
        low = min(max(low, whole[0]), whole[1] - length)
        is_whole = length >= (whole[1] - whole[0]) * (1 - 1e-9)
        self.view_changed.emit(None if is_whole else (low, low + length))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, is_shifted = event.key(), bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        figure = self.line_up
        if key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self._zoom(1 / _ZOOM)
        elif key == Qt.Key.Key_Minus:
            self._zoom(_ZOOM)
        elif key == Qt.Key.Key_0:
            self.view_changed.emit(None)
        elif is_shifted and key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            self._pan(_PAN if key == Qt.Key.Key_Right else -_PAN)
        elif key == Qt.Key.Key_Escape and figure is not None and figure.span is not None:
            self.span_marked.emit(None)
        else:
            super().keyPressEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        if self._pressed_x is None:
            super().leaveEvent(event)


def _clamped(x: float, plot: Plot) -> float:
    return min(max(x, plot.box.x), plot.box.right)


def _rect(box: Box) -> QRectF:
    return QRectF(box.x, box.y, box.width, box.height)


def _height(curve: Stroke, x: float) -> float | None:
    """Where a curve passes at a place, if it does and is seen there. [px]"""
    clip = curve.clip
    if (
        clip is None
        or curve.xs.size < 2
        or not max(clip.x, curve.xs[0]) <= x <= min(clip.right, curve.xs[-1])
    ):
        return None
    row = min(int(np.searchsorted(curve.xs, x)), curve.xs.size - 1)
    y = float(np.interp(x, curve.xs[max(row - 1, 0) : row + 1], curve.ys[max(row - 1, 0) : row + 1]))
    return y if clip.y <= y <= clip.bottom else None
