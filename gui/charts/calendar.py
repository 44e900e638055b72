"""Lays out weeks of operating states: one row a week, states told by height, machines by colour and name."""

from core.costs.weeks import HOURS_PER_WEEK
from core.figures.calendar_values import CalendarFigure, CalendarRow
from core.figures.placing import Box
from core.language import mark, tr
from gui.charts.scene import Fill, Hint, Item, Line, Ruler, Scene, Text
from gui.look import Look

#: height of a row, and of the room between two machines, in text heights
_ROW, _APART = 1.5, 0.35
#: least height of a row, and from which on it is read at ease, in text heights
_LEAST_ROW, _ROOMY_ROW = 1.05, 1.35
#: rows do not grow beyond this many text heights for each unit of theirs
_MOST_UNIT = 3.0
#: share of a row's height that a state takes, and how dense its colour is
_HEIGHTS = {"off": 0.0, "standby": 0.22, "cooling": 0.45, "warm-up": 0.7, "processing": 1.0}
_DENSE = {"standby": 0.55, "cooling": 0.55, "warm-up": 0.75, "processing": 0.85}
#: share of the width that names may take
_NAMES = 0.2
#: names of the weekdays, for `tr`
DAYS = (
    mark("Monday"),
    mark("Tuesday"),
    mark("Wednesday"),
    mark("Thursday"),
    mark("Friday"),
    mark("Saturday"),
    mark("Sunday"),
)
_SHORT = (mark("Mon"), mark("Tue"), mark("Wed"), mark("Thu"), mark("Fri"), mark("Sat"), mark("Sun"))
_HOURS_PER_DAY = 24.0
#: the shortest stretch that is drawn [px]
_SHORTEST = 1.0


def calendar_height(figure: CalendarFigure, look: Look) -> float:
    """Height at which every week has its row. [px]"""
    text = Ruler(look).height()
    apart = sum(bool(row.name) for row in figure.rows[1:]) * _APART
    more = 1 if figure.unshown else 0
    return (len(figure.rows) * _ROW + apart + 2.6 + more) * text + look.px(8)


def lay_out_calendar(figure: CalendarFigure, area: Box, look: Look) -> Scene:
    """Place everything that the calendar shows inside `area`."""
    return _Calendar(figure, area, look).scene()


class _Calendar:
    def __init__(self, figure: CalendarFigure, area: Box, look: Look) -> None:
        self._figure, self._area, self._look = figure, area, look
        self._ruler = Ruler(look)
        self._text = self._ruler.height()
        self._items: list[Item] = []
        self._front: list[Item] = []
        self._hints: list[Hint] = []

    def scene(self) -> Scene:
        px, area = self._look.px, self._area
        top = area.y + self._legend() + 1.6 * self._text
        rows = self._that_fit(area.bottom - top)
        unshown = self._figure.unshown + len(self._figure.rows) - len(rows)
        wished = max((self._ruler.width(r.name, bold=True) for r in rows), default=0.0)
        weeks = max((self._ruler.width(r.week) for r in rows), default=0.0)
        names = min(wished, _NAMES * area.width)
        left = area.x + names + weeks + px(20)
        foot = self._text if unshown else 0.0
        plot = Box(left, top, max(area.right - left, px(10)), max(area.bottom - top - foot, px(10)))
        unit = min(plot.height / max(_units(rows), 1.0), _MOST_UNIT * self._text)
        y = plot.y
        for i, row in enumerate(rows):
            y += _APART * unit if i and row.name else 0.0
            self._row(row, Box(plot.x, y, plot.width, _ROW * unit), names)
            y += _ROW * unit
        self._days(Box(plot.x, plot.y, plot.width, y - plot.y))
        if unshown:
            text = tr("No room here for {weeks:more week|more weeks}; choose fewer machines", weeks=unshown)
            box = Box(area.x, area.bottom - self._text, area.width, self._text)
            self._front.append(Text(box, self._ruler.fitted(text, box.width), token="muted", full=text))
        is_whole = unshown == self._figure.unshown
        return Scene(
            area.right,
            area.bottom,
            (*self._items, *self._front),
            hints=tuple(self._hints),
            is_whole=is_whole,
            is_airy=is_whole and _ROW * unit >= _ROOMY_ROW * self._text,
        )

    def _that_fit(self, height: float) -> tuple[CalendarRow, ...]:
        """As many rows as can be told apart, from the first on, one at least."""
        rows, least = self._figure.rows, _LEAST_ROW * self._text / _ROW
        kept = len(rows)
        while kept > 1:
            is_part = kept < len(rows) or bool(self._figure.unshown)
            if _units(rows[:kept]) * least <= height - (self._text if is_part else 0.0):
                break
            kept -= 1
        return rows[:kept]

    def _legend(self) -> float:
        """A sample of each height with its name, in as many lines as it takes; their height is returned."""
        px, area, x, y = self._look.px, self._area, self._area.x, self._area.y
        height, width = 0.8 * self._text, px(14)
        for state, words in self._figure.legend:
            needs = width + px(6) + self._ruler.width(words)
            if x > area.x and x + needs > area.right:
                x, y = area.x, y + self._text
            base = y + 0.9 * self._text
            self._items.append(Line(x, base, x + width, base, "muted", 1.0))
            part = _HEIGHTS[state] * height
            if part > 0:
                box = Box(x, base - part, width, part)
                self._items.append(Fill(box, "muted", _DENSE[state]))
            at = Box(x + width + px(6), y, self._ruler.width(words), self._text)
            self._front.append(Text(at, words, token="muted", full=words))
            x += needs + px(16)
        return y + self._text - area.y

    def _days(self, plot: Box) -> None:
        px = self._look.px
        day_px = plot.width / len(DAYS)
        days, short = [tr(day) for day in DAYS], [tr(day) for day in _SHORT]
        widest = max(self._ruler.width(day) for day in days)
        for i, (day, brief) in enumerate(zip((*days, ""), (*short, ""), strict=True)):
            x = plot.x + i * day_px
            self._items.insert(0, Line(x, plot.y - px(3), x, plot.bottom, "rule", 1.0))
            words = day if widest < day_px - px(6) else brief if day_px > 2.4 * self._text else brief[:2]
            if words:
                at = Box(x + px(3), plot.y - px(3) - self._text, self._ruler.width(words), self._text)
                self._front.append(Text(at, words, token="muted", full=day))

    def _row(self, row: CalendarRow, box: Box, names: float) -> None:
        px = self._look.px
        base = box.bottom - px(2)
        height = 0.82 * box.height
        text_y = base - self._text + px(2)
        if row.name:
            shown = self._ruler.fitted(row.name, names, bold=True)
            at = Box(self._area.x, text_y, self._ruler.width(shown, bold=True), self._text)
            self._front.append(Text(at, shown, bold=True, full=row.name, slot=row.slot))
            self._hints.append(Hint(Box(self._area.x, box.y, names, box.height), row.name))
        width = self._ruler.width(row.week)
        week = Box(box.x - px(8) - width, text_y, width, self._text)
        self._front.append(Text(week, row.week, token="muted", full=row.week, slot=row.slot))
        fill = self._look.machine(row.slot).line
        for block in row.blocks:
            x = box.x + box.width * block.start_h / HOURS_PER_WEEK
            length = max(box.width * (block.end_h - block.start_h) / HOURS_PER_WEEK, px(_SHORTEST))
            self._items.append(Line(x, base, x + length, base, "muted", 1.0, slot=row.slot))
            part = _HEIGHTS[block.state] * height
            if part > 0:
                bar = Box(x, base - part, length, part)
                self._items.append(Fill(bar, fill, _DENSE[block.state], slot=row.slot))
            self._hints.append(
                Hint(Box(x, box.y, length, box.height), _words(block.state, block.start_h, block.end_h))
            )


def _units(rows: tuple[CalendarRow, ...]) -> float:
    """Height of rows with the room between machines, in units of which a row has `_ROW`."""
    return len(rows) * _ROW + sum(bool(row.name) for row in rows[1:]) * _APART


def _words(state: str, start_h: float, end_h: float) -> str:
    return tr("{state}, {start} to {end}", state=tr(state), start=_clock(start_h), end=_clock(end_h))


def _clock(hours: float) -> str:
    minutes = round(hours * 60)
    day, rest = divmod(minutes, round(_HOURS_PER_DAY * 60))
    if day == len(DAYS):
        day, rest = day - 1, round(_HOURS_PER_DAY * 60)
    return f"{tr(_SHORT[day])} {rest // 60:02}:{rest % 60:02}"
