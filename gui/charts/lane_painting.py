"""Painting of one lane: its head, the trace, the stretches over it, and the time axis.

Plain QPainter: a raw trace needs a 1 px line without antialiasing and nothing of a plotting library, and a
hundred lanes must cost no more than the pixels they cover.
"""

import math

import numpy as np
from attrs import frozen
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF
from shiboken6 import VoidPtr

from core.energy.clock_ticks import moment, time_ticks
from core.figures.envelope import Envelope
from core.figures.lanes import LaneContent
from core.language import tr
from core.traces import F64, Trace
from gui.charts.time_view import TimeView
from gui.look import S4, S8, Look, marker_path

#: power axis of a log that never draws anything [W]
_LEAST_TOP_W = 10.0
BAND_PX = 5.0
_MOST_TICKS = 6


@frozen
class LaneGeometry:
    """Where the parts of a lane lie. [px]"""

    head: QRectF
    plot: QRectF
    axis: QRectF

    @classmethod
    def of(cls, width: float, height: float, look: Look) -> "LaneGeometry":
        """Share out a lane's rectangle."""
        metrics = QFontMetricsF(look.font())
        head_w = min(19.0 * metrics.averageCharWidth() + 2 * S8, 0.28 * width)
        ticks_w = metrics.horizontalAdvance("0000 W") + S8
        axis_h = metrics.height() + S4
        left, right, top = head_w + ticks_w, width - S8 - metrics.averageCharWidth(), float(S8)
        bottom = height - axis_h
        return cls(
            head=QRectF(S8, top, head_w - S8, bottom - top),
            plot=QRectF(left, top, max(right - left, 1.0), max(bottom - top, 1.0)),
            axis=QRectF(left, bottom, max(right - left, 1.0), axis_h),
        )


def power_top(trace: Trace) -> float:
    """Top of a lane's power axis: the highest value, rounded up to a number people count in. [W]"""
    highest = max(float(trace.power_w.max(initial=0.0)), _LEAST_TOP_W)
    scale = 10.0 ** math.floor(math.log10(highest))
    return next(
        scale * m for m in (1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0) if scale * m >= highest
    )


def paint_head(painter: QPainter, box: QRectF, content: LaneContent, look: Look) -> None:
    """The machine's marker and name, the file, and how many runs were found."""
    style = look.machine(content.slot)
    title, text = look.font(bold=True), look.font()
    line = QFontMetricsF(text).height()
    marker = 0.75 * line
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(box.left() + marker / 2 + 1, box.top() + line / 2)
    painter.setPen(look.pen("ink"))
    painter.setBrush(look.color(style.fill))
    painter.drawPath(marker_path(style.marker, marker))
    painter.restore()
    left = box.left() + marker + S8
    painter.setFont(title)
    painter.setPen(look.color("ink"))
    _elided(painter, QRectF(left, box.top(), box.right() - left, line), content.machine)
    painter.setFont(text)
    painter.setPen(look.color("muted"))
    y = box.top() + line + S4
    files = (
        content.files[0]
        if len(content.files) == 1
        else tr("{file} and {others} more", file=content.files[0], others=len(content.files) - 1)
    )
    for words in (files, content.summary):
        if y + line <= box.bottom() + S8:
            _elided(painter, QRectF(left, y, box.right() - left, line), words)
        y += line + 2


def paint_rules(
    painter: QPainter, geometry: LaneGeometry, view: TimeView, trace: Trace, top_w: float, look: Look
) -> None:
    """Power rules with their labels, gaps, and the time axis."""
    plot = geometry.plot
    painter.setFont(look.font())
    metrics = QFontMetricsF(painter.font())
    for share in (0.0, 0.5, 1.0):
        y = round(plot.bottom() - share * plot.height()) + 0.5
        painter.setPen(look.pen("rule"))
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y))
        if share == 0.5 and plot.height() < 4 * metrics.height():
            continue
        label = QRectF(plot.left() - 200, y - metrics.height() / 2, 200 - S4, metrics.height())
        label.moveTop(min(max(label.top(), plot.top() - S4), plot.bottom() - 0.75 * metrics.height()))
        painter.setPen(look.color("muted"))
        unit = " W" if share == 1.0 else ""
        painter.drawText(
            label, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, f"{top_w * share:g}{unit}"
        )
    _paint_gaps(painter, plot, view, trace, look)
    _paint_axis(painter, geometry, view, trace, look, metrics)


def _paint_axis(
    painter: QPainter,
    geometry: LaneGeometry,
    view: TimeView,
    trace: Trace,
    look: Look,
    metrics: QFontMetricsF,
) -> None:
    plot, axis = geometry.plot, geometry.axis
    room = metrics.horizontalAdvance("00:00:00") * 1.25
    ticks = time_ticks(
        trace.clock, view.start_s, view.end_s, max(2, min(_MOST_TICKS, int(plot.width() / room)))
    )
    free_from = axis.left() - S8
    # The day is said once at the left, unless a date stands among the ticks.
    if trace.clock.kind != "relative" and not any(t.is_date for t in ticks) and view.span_s < 86400:
        day = moment(trace.clock, view.start_s)[:-9]
        painter.setPen(look.color("muted"))
        width = metrics.horizontalAdvance(day)
        if width < axis.left() - geometry.head.left():
            painter.drawText(QPointF(axis.left() - width - S8, axis.top() + metrics.ascent() + S4), day)
    for tick in ticks:
        x = round(view.x(tick.at_s)) + 0.5
        painter.setPen(look.pen("rule"))
        painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom() + S4))
        width = metrics.horizontalAdvance(tick.label)
        left = min(x - width / 2, axis.right() + S8 - width)
        if left < free_from + S4:
            continue
        painter.setPen(look.color("ink" if tick.is_date else "muted"))
        painter.drawText(QPointF(left, axis.top() + metrics.ascent() + S4), tick.label)
        free_from = left + width + S4


def _paint_gaps(painter: QPainter, plot: QRectF, view: TimeView, trace: Trace, look: Look) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(look.color("rule"))
    brush = painter.brush()
    brush.setStyle(Qt.BrushStyle.BDiagPattern)
    painter.setBrush(brush)
    for gap in trace.gaps:
        if gap.end_s > view.start_s and gap.start_s < view.end_s:
            left, right = max(view.x(gap.start_s), plot.left()), min(view.x(gap.end_s), plot.right())
            if right - left >= 2:
                painter.drawRect(QRectF(left, plot.top(), right - left, plot.height()))
    painter.setBrush(Qt.BrushStyle.NoBrush)


def paint_trace(
    painter: QPainter, plot: QRectF, view: TimeView, drawn: Envelope, top_w: float, look: Look
) -> None:
    """The trace as a line one pixel wide."""
    x = view.left_px + (drawn.time_s - view.start_s) / view.span_s * view.width_px
    y = plot.bottom() - drawn.power_w / top_w * plot.height()
    # A point far outside would overflow the rasteriser's integers.
    x = np.clip(x, plot.left() - 16, plot.right() + 16)
    painter.save()
    painter.setClipRect(plot.adjusted(0, -1, 1, 1))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    pen = QPen(look.blend("muted", "card", 0.8))
    pen.setCosmetic(True)
    painter.setPen(pen)
    lifted = np.flatnonzero(np.isnan(drawn.time_s))
    for rows in np.split(np.arange(x.size), lifted):
        rows = rows[~np.isnan(drawn.time_s[rows])]
        if rows.size == 1:
            painter.drawPoint(QPointF(x[rows[0]], y[rows[0]]))
        elif rows.size:
            painter.drawPolyline(_polyline(x[rows], y[rows]))
    painter.restore()


def _polyline(x: F64, y: F64) -> QPolygonF:
    """Points as Qt keeps them, copied as a block: one by one they take longer than drawing them."""
    line = QPolygonF()
    line.resize(x.size)
    # The stubs of VoidPtr know only its short form, and those of data() only one point.
    block = VoidPtr(line.data(), 16 * x.size, True)  # type: ignore[call-arg, arg-type]
    memory = np.frombuffer(block, dtype=np.float64).reshape(-1, 2)  # type: ignore[call-overload]
    memory[:, 0], memory[:, 1] = x, y
    return line


def paint_readout(painter: QPainter, plot: QRectF, x: float | None, text: str, look: Look) -> None:
    """The line under the pointer and what the trace says there."""
    if x is not None:
        painter.setPen(look.pen("ink"))
        painter.drawLine(QPointF(round(x) + 0.5, plot.top()), QPointF(round(x) + 0.5, plot.bottom()))
    painter.setFont(look.font())
    metrics = QFontMetricsF(painter.font())
    width, height = metrics.horizontalAdvance(text) + 2 * S4, metrics.height() + 2
    left = plot.right() - width - S4 if x is None or x < plot.right() - width - S8 else plot.left() + S4
    box = QRectF(left, plot.bottom() - height - BAND_PX - 3, width, height)
    painter.fillRect(box, look.color("card", 0.92))
    painter.setPen(look.color("ink"))
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)


def paint_focus(painter: QPainter, plot: QRectF, look: Look) -> None:
    """The ring that says which lane the keyboard works on."""
    painter.setPen(look.pen("link", 2.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(plot.adjusted(-2, -2, 3, 3))


def _elided(painter: QPainter, box: QRectF, text: str) -> None:
    metrics = QFontMetricsF(painter.font())
    words = metrics.elidedText(text, Qt.TextElideMode.ElideMiddle, box.width())
    painter.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, words)
