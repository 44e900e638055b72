"""The small card that reads out a run beside the pointer."""

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QFontMetricsF, QPainter

from core.figures.placing import Box
from gui.charts.scene import Ruler, font_of
from gui.look import CORNER, S8, Look, Size

#: a line is broken into no more pieces than this
_MOST_PIECES = 5


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


def in_width(lines: tuple[str, ...], width: float, look: Look) -> list[tuple[str, bool]]:
    """The lines as they are painted within a width, and whether each is bold."""
    ruler, placed = Ruler(look), []
    for i, line in enumerate(lines):
        fits = ruler.width(line, bold=i == 0) <= width
        pieces = (line,) if fits else ruler.wrapped(line, width, _MOST_PIECES, bold=i == 0)
        placed += [(piece, i == 0) for piece in pieces]
    return placed


def paint_readout(
    painter: QPainter, lines: tuple[str, ...], at: tuple[float, float], whole: Box, look: Look
) -> None:
    """Paint the card with the first line in bold; lines longer than the chart is wide are broken."""
    pad = look.px(S8)
    broken = in_width(lines, whole.width - 2 * pad, look)
    lines = tuple(line for line, _ in broken)
    fonts = [font_of(look, Size.TEXT, bold=is_bold) for _, is_bold in broken]
    metrics = [QFontMetricsF(font) for font in fonts]
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
