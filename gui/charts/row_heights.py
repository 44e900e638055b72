"""How high a chart of rows wants to be: for reading at ease, and at most."""

import math
from typing import Final

from core.figures.values import ComparisonFigure
from gui.charts.scene import Ruler
from gui.look import Look

#: a row taller than this keeps its content together in its middle, in text heights
GROUP: Final = 4.2
#: up to so many machines rows of this height are wished for, in text heights
_WISHED_ROWS = ((6, 3.1), (14, 2.45), (math.inf, 1.45))


def wished_height(figure: ComparisonFigure, look: Look) -> float:
    """Height for reading at ease: airy rows for a few machines, lines of text for a farm. [px]"""
    text = Ruler(look).height()
    rows = max(1, len(figure.rows))
    row = next(height for most, height in _WISHED_ROWS if rows <= most)
    return overhead(text, look) + rows * row * text


def most_height(figure: ComparisonFigure, look: Look) -> float:
    """Height beyond which rows would only drift apart. [px]"""
    text = Ruler(look).height()
    return overhead(text, look) + max(1, len(figure.rows)) * 1.6 * GROUP * text


def overhead(text: float, look: Look) -> float:
    """Height of headings above and ticks below the rows. [px]"""
    return 2 * text + look.px(12) + text + look.px(6)
