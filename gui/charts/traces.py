"""A lane: one log with its stretches, to be looked at closely and corrected by pointer or keyboard."""

from typing import Final, Literal

import numpy as np
from attrs import frozen
from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
    QContextMenuEvent,
    QFocusEvent,
    QFontMetrics,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QLineEdit, QSizePolicy, QToolTip, QWidget

from core.clock_ticks import moment
from core.envelope import Envelope, envelope
from core.formatting import duration, number
from core.lanes import Block, LaneContent
from core.traces import Trace
from gui import look
from gui.charts import lane_hits as hits
from gui.charts import lane_painting as painting
from gui.charts.lane_hits import Edge
from gui.charts.time_view import TimeView
from gui.look import S4, Look

#: what one notch of the wheel, or one press of a key, zooms by
ZOOM_STEP: Final = 0.8
#: steps that Shift makes of one
SHIFT_STEPS: Final = 10


@frozen
class _Drag:
    """What the pointer is doing while its button is down."""

    what: Literal["pan", "edge", "draw"]
    from_x: float
    view: TimeView
    run_id: str = ""
    edge: Edge = "start"
    at_s: float = 0.0


class Lane(QWidget):
    """Shows one log; says what the user wants changed and changes nothing itself."""

    run_picked = Signal(object)  # run id, or None
    edges_moved = Signal(str, float, float)  # run id, start, end [s]
    stretch_drawn = Signal(str, float, float)  # log id, start, end [s]
    zoomed_together = Signal(float, float)  # factor, share of the width
    menu_wanted = Signal(object, object)  # global position, time [s]
    head_menu_wanted = Signal(str, object)  # log id, global position
    machine_renamed = Signal(str, str)  # log id, name
    edge_left = Signal()  # a move of an edge is finished
    opened = Signal(str)  # log id: the lane has the focus
    neighbour_wanted = Signal(int)  # 1 for the lane below, -1 for the one above

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._look = look.current()
        self._content: LaneContent | None = None
        self._trace: Trace | None = None
        self._top_w = 1.0
        self._view = TimeView.whole(1.0)
        self._drawn: tuple[object, Envelope] | None = None
        self._selected: str | None = None
        self._edge: Edge | None = None
        self._hovered: str | None = None
        self._pointer: QPointF | None = None
        self._drag: _Drag | None = None
        self._waiting = "reading the log"
        self._shown: tuple[object, ...] | None = None
        self._name: QLineEdit | None = None
        self._measured: tuple[tuple[int, int, Look], painting.LaneGeometry] | None = None

    # what it shows

    def show_content(
        self, content: LaneContent, trace: Trace | None, selected: str | None, waiting: str = ""
    ) -> None:
        """Show a log; `waiting` says why there is no trace yet."""
        if (content, trace, selected, waiting) == self._shown:
            return
        self._shown = content, trace, selected, waiting
        is_other = self._trace is None or trace is None or trace.key != self._trace.key
        self._content, self._trace = content, trace
        self._waiting = waiting or "reading the log"
        if is_other and trace is not None:
            self._top_w = painting.power_top(trace)
            self._view = TimeView.whole(trace.end_s)
            self._drawn = None
        self._place()
        if content.block(self._selected) is None:
            self._selected = self._edge = None
        self.select(selected)
        self._say()
        self.update()

    def select(self, run_id: str | None) -> None:
        """Mark a stretch as selected, if it is on this lane."""
        block = self._content.block(run_id) if self._content else None
        chosen = block.run_id if block else None
        if chosen != self._selected:
            self._selected, self._edge = chosen, None
            if block is not None and not self._is_seen(block):
                self._view = self._view.including(block.start_s)
            self._say()
            self.update()

    @property
    def content(self) -> LaneContent | None:
        """The log that is shown."""
        return self._content

    @property
    def view(self) -> TimeView:
        """The visible part of it."""
        return self._view

    @property
    def edge(self) -> Edge | None:
        """The edge that the arrow keys move."""
        return self._edge

    def middle_s(self) -> float:
        """Time under the pointer, or in the middle of what is visible. [s]"""
        plot = self._geometry().plot
        if self._pointer is not None and plot.contains(self._pointer):
            return self._view.at(self._pointer.x())
        return (self._view.start_s + self._view.end_s) / 2

    def zoom(self, factor: float, share: float = 0.5) -> None:
        """Zoom about a point given as a share of the visible width."""
        self._set_view(self._view.zoomed(factor, self._view.start_s + share * self._view.span_s))

    def show_whole(self) -> None:
        """Return to the whole log."""
        if self._trace is not None:
            self._set_view(self._view.zoomed(1e12, 0.0))

    def show_stretch(self, run_id: str) -> None:
        """Look closely at one stretch."""
        block = self._content.block(run_id) if self._content else None
        if block is not None:
            self._set_view(self._view.showing(block.start_s, block.end_s))

    def edit_name(self) -> None:
        """Let the user write the machine's name where it stands."""
        if self._content is None:
            return
        if self._name is None:
            self._name = QLineEdit(self)
            self._name.setObjectName("machine_name")
            self._name.setAccessibleName("Name of the machine")
            self._name.editingFinished.connect(self._rename)
        head = self._geometry().head
        self._name.setGeometry(head.toRect().adjusted(-S4, -S4, 0, 0))
        self._name.setFixedHeight(self._name.sizeHint().height())
        self._name.setText(self._content.machine)
        self._name.show()
        self._name.setFocus()
        self._name.selectAll()

    def _rename(self) -> None:
        if self._name is None or self._name.isHidden() or self._content is None:
            return
        self._name.hide()
        if self._name.text() != self._content.machine:
            self.machine_renamed.emit(self._content.log_id, self._name.text())

    # painting

    def sizeHint(self) -> QSize:
        line = QFontMetrics(self._look.font()).height()
        return QSize(60 * line, 7 * line)

    def minimumSizeHint(self) -> QSize:
        line = QFontMetrics(self._look.font()).height()
        return QSize(24 * line, 6 * line)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._content is None:
            return
        painter = QPainter(self)
        place = self._geometry()
        painting.paint_head(painter, place.head, self._content, self._look)
        if self._trace is None or not self._trace.time_s.size:
            painter.fillRect(place.plot, self._look.color("card"))
            painting.paint_readout(painter, place.plot, None, self._waiting, self._look)
            painter.end()
            return
        painting.paint_ground(painter, place, self._view, self._trace, self._top_w, self._look)
        painting.paint_trace(
            painter, place.plot, self._view, self._envelope(place.plot), self._top_w, self._look
        )
        for block in sorted(self._content.blocks, key=lambda b: b.run_id == self._selected):
            start_s, end_s = self._edges(block)
            painting.paint_block(
                painter,
                place.plot,
                self._view,
                block,
                self._content.slot,
                self._look,
                start_s=start_s,
                end_s=end_s,
                is_selected=block.run_id == self._selected,
                is_hovered=block.run_id == self._hovered,
                edge=self._edge if block.run_id == self._selected else None,
            )
        self._paint_live(painter, place.plot)
        if self.hasFocus():
            painting.paint_focus(painter, place.plot, self._look)
        painter.end()

    def _paint_live(self, painter: QPainter, plot: QRectF) -> None:
        drag, trace = self._drag, self._trace
        if trace is None or self._pointer is None:
            return
        if drag is not None and drag.what == "edge":
            at_s = drag.at_s
            words = f"{drag.edge} {moment(trace.clock, at_s)}"
            painting.paint_readout(painter, plot, self._view.x(at_s), words, self._look)
        elif drag is not None and drag.what == "draw":
            a, b = sorted((drag.at_s, self._view.at(drag.from_x)))
            painter.fillRect(
                QRectF(self._view.x(a), plot.top(), self._view.x(b) - self._view.x(a), plot.height()),
                self._look.color("selection", 0.7),
            )
            painting.paint_readout(painter, plot, self._view.x(drag.at_s), duration(b - a), self._look)
        elif drag is None and plot.contains(self._pointer):
            at_s = self._view.at(self._pointer.x())
            row = int(np.clip(np.searchsorted(trace.time_s, at_s) - 1, 0, trace.time_s.size - 1))
            watts = number(float(trace.power_w[row]), 0 if trace.power_w[row] >= 100 else 1)
            block = self._block_at(at_s)
            words = f"{moment(trace.clock, at_s)}  {watts} W" + (f"  {block.label}" if block else "")
            painting.paint_readout(painter, plot, self._pointer.x(), words, self._look)

    def _envelope(self, plot: QRectF) -> Envelope:
        assert self._trace is not None
        columns = max(1, round(plot.width() * self.devicePixelRatioF()))
        asked = (self._trace.key, self._view.start_s, self._view.end_s, columns)
        if self._drawn is None or self._drawn[0] != asked:
            self._drawn = asked, envelope(self._trace, self._view.start_s, self._view.end_s, columns)
        return self._drawn[1]

    # pointer

    def mousePressEvent(self, event: QMouseEvent) -> None:
        place = self._geometry()
        x = event.position().x()
        if event.button() != Qt.MouseButton.LeftButton or not place.plot.adjusted(-8, 0, 8, 20).contains(
            event.position()
        ):
            super().mousePressEvent(event)
            return
        hit = self._edge_at(x) if place.plot.adjusted(-8, 0, 8, 0).contains(event.position()) else None
        if event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self._drag = _Drag("draw", x, self._view, at_s=self._view.at(x))
        elif hit is not None:
            block, edge = hit
            self._pick(block.run_id)
            self._edge = edge
            self._drag = _Drag("edge", x, self._view, block.run_id, edge, hits.edge_s(block, edge))
        else:
            self._drag = _Drag("pan", x, self._view)
        self.update()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._pointer = event.position()
        x = event.position().x()
        drag = self._drag
        if drag is None:
            self._hover(event.position())
        elif drag.what == "pan":
            self._set_view(drag.view.moved((drag.from_x - x) / drag.view.width_px * drag.view.span_s))
            self.setCursor(Qt.CursorShape.ClosedHandCursor)
        else:
            at_s = self._clamped(self._view.at(x))
            block = self._content.block(drag.run_id) if self._content else None
            if block is not None and self._trace is not None:
                at_s = hits.allowed_s(self._trace, block, drag.edge, at_s)
            self._drag = _Drag(drag.what, drag.from_x, drag.view, drag.run_id, drag.edge, at_s)
        self.update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        drag, self._drag = self._drag, None
        if drag is None or event.button() != Qt.MouseButton.LeftButton:
            super().mouseReleaseEvent(event)
            return
        x = event.position().x()
        was_click = abs(x - drag.from_x) < 4
        if drag.what == "edge" and not was_click:
            block = self._content.block(drag.run_id) if self._content else None
            if block is not None:
                self.edges_moved.emit(drag.run_id, *hits.with_edge(block, drag.edge, drag.at_s))
                self.edge_left.emit()
        elif drag.what == "draw" and not was_click and self._content is not None:
            a, b = sorted((drag.at_s, self._clamped(self._view.at(drag.from_x))))
            self.stretch_drawn.emit(self._content.log_id, a, b)
        elif drag.what == "pan" and was_click:
            block = self._block_at(self._view.at(x))
            self._pick(block.run_id if block else None)
        self._hover(event.position())
        self.update()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        if self._geometry().head.contains(event.position()):
            self.edit_name()
            return
        block = self._block_at(self._view.at(event.position().x()))
        if self._view.is_whole and block is not None:
            self.show_stretch(block.run_id)
        else:
            self.show_whole()

    def wheelEvent(self, event: QWheelEvent) -> None:
        plot = self._geometry().plot
        if self._trace is None or not plot.adjusted(0, 0, 0, 20).contains(event.position()):
            event.ignore()  # over the head the wheel scrolls the lanes
            return
        turn = event.angleDelta()
        if abs(turn.x()) > abs(turn.y()) and not event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self._set_view(self._view.moved(-turn.x() / 1200.0 * self._view.span_s))
        else:
            notches = (turn.y() or turn.x()) / 120.0
            factor, share = ZOOM_STEP**notches, (event.position().x() - plot.left()) / plot.width()
            if event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
                self.zoomed_together.emit(factor, share)
            else:
                self.zoom(factor, share)
        event.accept()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        at_s = (
            self._view.at(event.pos().x())
            if event.reason() == QContextMenuEvent.Reason.Mouse
            else self.middle_s()
        )
        if self._content is not None and self._geometry().head.contains(QPointF(event.pos())):
            self.head_menu_wanted.emit(self._content.log_id, event.globalPos())
            return
        block = self._block_at(at_s)
        if block is not None:
            self._pick(block.run_id)
        self.menu_wanted.emit(event.globalPos(), at_s)

    def leaveEvent(self, event: QEvent) -> None:
        self._pointer = self._hovered = None
        self.update()
        super().leaveEvent(event)

    # keyboard

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, shift = event.key(), bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        sideways = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}.get(Qt.Key(key))
        if sideways is not None:
            if self._edge is not None:
                self._nudge(sideways * (SHIFT_STEPS if shift else 1))
            elif shift:
                self._set_view(self._view.moved(0.1 * sideways * self._view.span_s))
            else:
                block = hits.neighbour(self._content, self._selected, sideways) if self._content else None
                if block is not None:
                    self._pick(block.run_id)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._selected is not None:
            self._edge = "start" if self._edge is None else "end" if self._edge == "start" else None
            self.edge_left.emit()
        elif key == Qt.Key.Key_Escape and (self._drag or self._edge or self._selected):
            if self._drag is None and self._edge is None:
                self._pick(None)
            self._drag = self._edge = None
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self._zoom_about_selected(ZOOM_STEP)
        elif key == Qt.Key.Key_Minus:
            self._zoom_about_selected(1 / ZOOM_STEP)
        elif key == Qt.Key.Key_0:
            self.show_whole()
        elif key in (Qt.Key.Key_Up, Qt.Key.Key_Down):
            self.neighbour_wanted.emit(1 if key == Qt.Key.Key_Down else -1)
        else:
            super().keyPressEvent(event)
            return
        self._say()
        self.update()

    def focusInEvent(self, event: QFocusEvent) -> None:
        if self._content is not None:
            self.opened.emit(self._content.log_id)
        self.update()
        super().focusInEvent(event)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        if self._edge is not None:
            self._edge = None
            self.edge_left.emit()
        self.update()
        super().focusOutEvent(event)

    # the widget's own affairs

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._place()
        super().resizeEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        if event.type() in (
            QEvent.Type.PaletteChange,
            QEvent.Type.FontChange,
            QEvent.Type.ApplicationFontChange,
        ):
            self._look = look.current()
            self._place()
            self.updateGeometry()
            self.update()
        super().changeEvent(event)

    def event(self, event: QEvent) -> bool:
        if (
            event.type() == QEvent.Type.ToolTip
            and isinstance(event, QHelpEvent)
            and self._content is not None
        ):
            if self._geometry().head.contains(QPointF(event.pos())):
                QToolTip.showText(
                    event.globalPos(), "\n".join((self._content.machine, *self._content.files)), self
                )
            return True
        return super().event(event)

    def _geometry(self) -> painting.LaneGeometry:
        asked = (self.width(), self.height(), self._look)
        if self._measured is None or self._measured[0] != asked:
            self._measured = asked, painting.LaneGeometry.of(*asked)
        return self._measured[1]

    def _place(self) -> None:
        plot = self._geometry().plot
        self._view = self._view.placed(plot.left(), plot.width())

    def _set_view(self, view: TimeView) -> None:
        if view != self._view:
            self._view = view
            self.update()

    def _edges(self, block: Block) -> tuple[float, float]:
        """Where a block is drawn: an edge under the pointer follows it before the study does."""
        drag = self._drag
        if drag is None or drag.what != "edge" or drag.run_id != block.run_id:
            return block.start_s, block.end_s
        return hits.with_edge(block, drag.edge, drag.at_s)

    @property
    def _selected_block(self) -> Block | None:
        return self._content.block(self._selected) if self._content else None

    def _block_at(self, at_s: float) -> Block | None:
        return hits.block_at(self._content, at_s) if self._content else None

    def _edge_at(self, x: float) -> tuple[Block, Edge] | None:
        return hits.edge_at(self._content, self._view, x, self._selected) if self._content else None

    def _hover(self, point: QPointF) -> None:
        plot = self._geometry().plot
        inside = plot.adjusted(-8, 0, 8, 0).contains(point)
        block = self._block_at(self._view.at(point.x())) if inside else None
        self._hovered = block.run_id if block else None
        if inside and self._edge_at(point.x()) is not None:
            self.setCursor(Qt.CursorShape.SizeHorCursor)
        elif block is not None:
            self.setCursor(Qt.CursorShape.PointingHandCursor)
        else:
            self.unsetCursor()

    def _pick(self, run_id: str | None) -> None:
        self.select(run_id)
        self.run_picked.emit(run_id)

    def _nudge(self, samples: int) -> None:
        """Move the chosen edge by so many samples."""
        block, trace = self._selected_block, self._trace
        if block is None or self._edge is None or trace is None:
            return
        nudged_s = hits.nudged_s(trace, hits.edge_s(block, self._edge), samples)
        nudged_s = hits.allowed_s(trace, block, self._edge, nudged_s)
        self._view = self._view.including(nudged_s)
        self.edges_moved.emit(block.run_id, *hits.with_edge(block, self._edge, nudged_s))

    def _clamped(self, at_s: float) -> float:
        return min(max(at_s, 0.0), self._trace.end_s if self._trace is not None else at_s)

    def _is_seen(self, block: Block) -> bool:
        return block.end_s > self._view.start_s and block.start_s < self._view.end_s

    def _zoom_about_selected(self, factor: float) -> None:
        block = self._selected_block
        if block is None:
            self.zoom(factor)
        else:
            about_s = hits.edge_s(block, self._edge or "start")
            self._set_view(self._view.including(about_s).zoomed(factor, about_s))

    def _say(self) -> None:
        """Keep what a screen reader says up to date."""
        if self._content is None:
            return
        self.setAccessibleName(f"Log of {self._content.machine}, {self._content.summary}")
        block = self._content.block(self._selected)
        words = "No stretch selected"
        if block is not None:
            words = f"{block.label}, {block.kind}, {duration(block.end_s - block.start_s)}"
            words += ", counted" if block.is_included else ", not counted"
            words += f", arrow keys move its {self._edge}" if self._edge else ""
        self.setAccessibleDescription(words)
        QAccessible.updateAccessibility(QAccessibleEvent(self, QAccessible.Event.DescriptionChanged))
