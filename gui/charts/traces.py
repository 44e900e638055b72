"""A lane that can be worked on: looked at closely and corrected, by pointer or keyboard."""

from typing import Final

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QFocusEvent, QKeyEvent, QMouseEvent, QWheelEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from core.figures.lanes import Block
from core.language import tr
from gui.charts import lane_hits as hits
from gui.charts.lane_hits import Edge
from gui.charts.lane_view import Drag, LaneView
from gui.look import S4

#: what one notch of the wheel, or one press of a key, zooms by
ZOOM_STEP: Final = 0.8
#: steps that Shift makes of one
SHIFT_STEPS: Final = 10


class Lane(LaneView):
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
        self._name: QLineEdit | None = None

    def edit_name(self) -> None:
        """Let the user write the machine's name where it stands."""
        if self._content is None:
            return
        if self._name is None:
            self._name = QLineEdit(self)
            self._name.setObjectName("machine_name")
            self._name.setAccessibleName(tr("Name of the machine"))
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
            self._drag = Drag("draw", x, self._view, at_s=self._view.at(x))
        elif hit is not None:
            block, edge = hit
            self._pick(block.run_id)
            self._edge = edge
            self._drag = Drag("edge", x, self._view, block.run_id, edge, hits.edge_s(block, edge))
        else:
            self._drag = Drag("pan", x, self._view)
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
            self._drag = Drag(drag.what, drag.from_x, drag.view, drag.run_id, drag.edge, at_s)
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

    # what both do

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

    def _zoom_about_selected(self, factor: float) -> None:
        block = self._selected_block
        if block is None:
            self.zoom(factor)
        else:
            about_s = hits.edge_s(block, self._edge or "start")
            self._set_view(self._view.including(about_s).zoomed(factor, about_s))
