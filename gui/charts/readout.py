"""The small card that reads out a run beside the pointer."""

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFontMetricsF, QPainter

from core.figures.placing import Box
from gui.charts.scene import font_of
from gui.look import CORNER, S8, Look, Size


def readout_box(width: float, height: float, at: tuple[float, float], whole: Box, gap: float) -> Box:
    """Where the card lies: right of and above the place, or wherever there is room; never over the place."""
    x, y = at[0] + gap, at[1] - gap - height
    if x + width > whole.right:
        x = at[0] - gap - width
    if y < whole.y:
        y = at[1] + gap
    x = min(max(x, whole.x), max(whole.x, whole.right - width))
    y = min(max(y, whole.y), max(whole.y, whole.bottom - height))
    return Box(x, y, width, height)


def paint_readout(
    painter: QPainter, lines: tuple[str, ...], at: tuple[float, float], whole: Box, look: Look
) -> None:
    """Paint the card with the first line in bold."""
    fonts = [font_of(look, Size.TEXT, bold=i == 0) for i in range(len(lines))]
    metrics = [QFontMetricsF(font) for font in fonts]
    pad = look.px(S8)
    widest = max(m.horizontalAdvance(line) for m, line in zip(metrics, lines, strict=True))
    height = sum(m.height() for m in metrics)
    box = readout_box(widest + 2 * pad, height + pad, at, whole, look.px(12))
    painter.setPen(look.pen("muted", 1.0))
    painter.setBrush(look.color("card"))
    painter.drawRoundedRect(QRectF(box.x, box.y, box.width, box.height), CORNER, CORNER)
    y = box.y + pad / 2
    for line, font, metric in zip(lines, fonts, metrics, strict=True):
        painter.setFont(font)
        painter.setPen(look.color("ink"))
        painter.drawText(QPointF(box.x + pad, y + metric.ascent()), line)
        y += metric.height()
