"""A lane as it looks: one log with its stretches, in a window of time. It knows no pointer and no key."""

from typing import Literal

from attrs import frozen
from PySide6.QtCore import QEvent, QPointF, QRectF, QSize
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
    QFontMetrics,
    QHelpEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QToolTip, QWidget

from core.energy.clock_ticks import moment
from core.figures.envelope import Envelope, envelope
from core.figures.lanes import Block, LaneContent
from core.formatting import duration, number
from core.language import tr
from core.traces import Trace
from gui import look
from gui.charts import lane_hits as hits
from gui.charts import lane_painting as painting
from gui.charts.block_painting import ShownBlock, paint_block, paint_block_ground
from gui.charts.lane_hits import Edge
from gui.charts.time_view import TimeView
from gui.look import Look


@frozen
class Drag:
    """What the pointer is doing while its button is down."""

    what: Literal["pan", "edge", "draw"]
    from_x: float
    view: TimeView
    run_id: str = ""
    edge: Edge = "start"
    at_s: float = 0.0


class LaneView(QWidget):
    """Shows one log, the selected stretch, and what the pointer is just doing."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
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
        self._drag: Drag | None = None
        self._waiting = tr("reading the log")
        self._shown: tuple[object, ...] | None = None
        self._measured: tuple[tuple[int, int, Look], painting.LaneGeometry] | None = None

    def show_content(
        self, content: LaneContent, trace: Trace | None, selected: str | None, waiting: str = ""
    ) -> None:
        """Show a log; `waiting` says why there is no trace yet."""
        if (content, trace, selected, waiting) == self._shown:
            return
        self._shown = content, trace, selected, waiting
        is_other = self._trace is None or trace is None or trace.key != self._trace.key
        self._content, self._trace = content, trace
        self._waiting = waiting or tr("reading the log")
        if is_other and trace is not None:
            self._top_w = painting.power_top(trace)
            self._view = self._view.of_length(trace.end_s)
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
        plot, view, slot = place.plot, self._view, self._content.slot
        shown = [self._shown_block(block) for block in self._content.blocks]
        shown.sort(key=lambda each: each.is_selected)
        painter.fillRect(plot, self._look.color("card"))
        for each in shown:
            paint_block_ground(painter, plot, view, each, slot, self._look)
        painting.paint_rules(painter, place, view, self._trace, self._top_w, self._look)
        painting.paint_trace(painter, plot, view, self._envelope(plot), self._top_w, self._look)
        for each in shown:
            paint_block(painter, plot, view, each, slot, self._look)
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
            at = moment(trace.clock, at_s)
            words = tr("start {at}", at=at) if drag.edge == "start" else tr("end {at}", at=at)
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
            power_w = hits.power_at_w(trace, at_s)
            watts = (
                tr("no samples") if power_w is None else f"{number(power_w, 0 if power_w >= 100 else 1)} W"
            )
            block = self._block_at(at_s)
            words = f"{moment(trace.clock, at_s)}  {watts}" + (f"  {block.label}" if block else "")
            painting.paint_readout(painter, plot, self._pointer.x(), words, self._look)

    def _envelope(self, plot: QRectF) -> Envelope:
        assert self._trace is not None
        columns = max(1, round(plot.width() * self.devicePixelRatioF()))
        asked = (self._trace.key, self._view.start_s, self._view.end_s, columns)
        if self._drawn is None or self._drawn[0] != asked:
            self._drawn = asked, envelope(self._trace, self._view.start_s, self._view.end_s, columns)
        return self._drawn[1]

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

    def _shown_block(self, block: Block) -> ShownBlock:
        """A stretch as it is drawn: an edge under the pointer follows it before the study does."""
        drag, is_selected = self._drag, block.run_id == self._selected
        start_s, end_s = block.start_s, block.end_s
        if drag is not None and drag.what == "edge" and drag.run_id == block.run_id:
            start_s, end_s = hits.with_edge(block, drag.edge, drag.at_s)
        edge = self._edge if is_selected else None
        return ShownBlock(block, start_s, end_s, is_selected, block.run_id == self._hovered, edge)

    @property
    def _selected_block(self) -> Block | None:
        return self._content.block(self._selected) if self._content else None

    def _block_at(self, at_s: float) -> Block | None:
        return hits.block_at(self._content, at_s) if self._content else None

    def _is_seen(self, block: Block) -> bool:
        return block.end_s > self._view.start_s and block.start_s < self._view.end_s

    def _say(self) -> None:
        """Keep what a screen reader says up to date."""
        if self._content is None:
            return
        machine, summary = self._content.machine, self._content.summary
        self.setAccessibleName(tr("Log of {machine}, {summary}", machine=machine, summary=summary))
        block = self._content.block(self._selected)
        words = tr("No stretch selected")
        if block is not None:
            said = [block.label, tr(block.kind), duration(block.end_s - block.start_s)]
            said.append(tr("counted") if block.is_included else tr("not counted"))
            if self._edge is not None:
                is_start = self._edge == "start"
                said.append(tr("arrow keys move its start") if is_start else tr("arrow keys move its end"))
            words = ", ".join(said)
        self.setAccessibleDescription(words)
        QAccessible.updateAccessibility(QAccessibleEvent(self, QAccessible.Event.DescriptionChanged))
