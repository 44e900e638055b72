"""Words of a chart of rows that may find no place in a column: what signs mean, what is not shown."""

from collections.abc import Iterable

from core.figures.values import Measure
from gui.charts.scene import Ruler

#: a note under the rows takes no more lines than this
_MOST_LINES = 3


def note_lines(text: str, width: float, ruler: Ruler) -> tuple[str, ...]:
    """A note broken into the lines it takes, begun with a capital."""
    return ruler.wrapped(text[0].upper() + text[1:], width, _MOST_LINES)


def under_title(measure: Measure, room: float, ruler: Ruler) -> str:
    """The unit of a column and what its signs mean, as far as there is room for it."""
    unit = measure.axis.unit
    legends = [f"{unit}, {words}" for words in (measure.legend, measure.legend_short) if words]
    return next((words for words in (*legends, unit) if ruler.width(words) <= room), unit)


def unsaid(columns: Iterable[tuple[Measure, float]], ruler: Ruler) -> list[str]:
    """What the signs of columns mean whose headings have no room to say it."""
    return [m.legend for m, room in columns if m.legend and under_title(m, room, ruler) == m.axis.unit]
