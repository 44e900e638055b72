"""Lays out energy against time, with lines of equal mean watts labelled inside the plot."""

from core.figures.placing import Anchor, Box, place
from core.figures.values import EnergyTimeFigure, PlaneMark, Point, WattLine
from core.language import tr
from gui.charts.scene import Hint, Item, Line, Marker, Ruler, Scene, Target, Text
from gui.look import Look

#: one tick label along the axes needs this much room, in text heights
_X_TICK_ROOM, _Y_TICK_ROOM = 3.4, 2.4
#: a plot with so much width and height can be read at ease, in text heights
_ROOMY = (18.0, 9.0)
#: where along a line its label may stand, best first, as shares of its length
_LABEL_SHARES = (0.93, 0.88, 0.97, 0.82, 0.76, 0.68, 0.6, 0.5, 0.4)


def lay_out_plane(figure: EnergyTimeFigure, area: Box, look: Look) -> Scene:
    """Place everything that energy against time shows inside `area`."""
    return _Plane(figure, area, look).scene()


class _Plane:
    def __init__(self, figure: EnergyTimeFigure, area: Box, look: Look) -> None:
        self._figure = figure
        self._area = area
        self._look = look
        self._ruler = Ruler(look)
        self._text = self._ruler.height()
        px = look.px
        y_ticks = figure.y.ticks()
        left = max(self._ruler.width(text) for _, text in y_ticks) + px(8)
        self._plot = Box(
            area.x + left,
            area.y + self._text + px(10),
            max(area.width - left - px(6), px(10)),
            max(area.height - 2 * self._text - px(18), px(10)),
        )
        self._items: list[Item] = []
        self._front: list[Item] = []
        self._targets: list[Target] = []
        self._hints: list[Hint] = []
        self._whiskers: list[tuple[float, float, float, float]] = []

    def scene(self) -> Scene:
        self._axes()
        size = self._look.px(12)
        for mark in self._figure.marks:
            self._mark(mark, size)
        taken = self._watt_labels(size)
        unnamed = self._names(size, taken)
        self._titles(unnamed)
        area, plot = self._area, self._plot
        is_roomy = plot.width >= _ROOMY[0] * self._text and plot.height >= _ROOMY[1] * self._text
        return Scene(
            area.right,
            area.bottom,
            (*self._items, *self._front),
            tuple(self._targets),
            tuple(self._hints),
            unnamed=unnamed,
            is_airy=not unnamed and is_roomy,
        )

    def _x(self, value: float) -> float:
        return self._plot.x + self._plot.width * value / self._figure.x.top

    def _y(self, value: float) -> float:
        return self._plot.bottom - self._plot.height * value / self._figure.y.top

    def _at(self, point: Point) -> tuple[float, float]:
        return self._x(point.x), self._y(point.y)

    def _axes(self) -> None:
        px, plot, text = self._look.px, self._plot, self._text
        most = max(2, min(6, int(plot.width / (_X_TICK_ROOM * text)) + 1))
        for value, label in self._figure.x.ticks(most):
            x = self._x(value)
            self._items.append(Line(x, plot.y, x, plot.bottom + px(3), "rule"))
            width = self._ruler.width(label)
            self._front.append(
                Text(Box(x - width / 2, plot.bottom + px(5), width, text), label, token="muted", full=label)
            )
        most = max(2, min(6, int(plot.height / (_Y_TICK_ROOM * text)) + 1))
        for value, label in self._figure.y.ticks(most):
            y = self._y(value)
            self._items.append(Line(plot.x - px(3), y, plot.right, y, "rule"))
            width = self._ruler.width(label)
            box = Box(plot.x - px(6) - width, y - text / 2, width, text)
            self._front.append(Text(box, label, token="muted", full=label))

    def _titles(self, unnamed: int) -> None:
        """The vertical axis is named above its end, the horizontal one below its own."""
        px, plot, area, text = self._look.px, self._plot, self._area, self._text
        title = f"{self._figure.y.title} ({self._figure.y.unit})"
        box = Box(area.x, area.y, area.width, text)
        self._front.append(Text(box, self._ruler.fitted(title, area.width, bold=True), bold=True, full=title))
        self._note(unnamed, area.width - self._ruler.width(title, bold=True) - px(16))
        title = f"{self._figure.x.title} ({self._figure.x.unit})"
        width = self._ruler.width(title, bold=True)
        place_at = Box(plot.right - width, plot.bottom + px(5), width, text)
        ticks = [t for t in self._front if isinstance(t, Text) and t.box.overlaps(place_at.grown(px(6)))]
        self._front = [t for t in self._front if t not in ticks]
        self._front.append(Text(place_at, title, bold=True, full=title))

    def _note(self, unnamed: int, room: float) -> None:
        """What the dashed lines are and how many names are missing, as far as there is room."""
        parts = [tr("dashed: equal mean power")] if self._figure.lines else []
        if unnamed:
            parts.insert(0, tr("no room for {names:name|names}", names=unnamed))
        while parts and self._ruler.width("; ".join(parts)) > room:
            parts.pop()
        if parts:
            note = "; ".join(parts)
            width = self._ruler.width(note)
            box = Box(self._area.right - width, self._area.y, width, self._text)
            self._front.append(Text(box, note, token="muted", full=note))

    def _mark(self, mark: PlaneMark, size: float) -> None:
        px = self._look.px
        style = self._look.machine(mark.slot)
        for dot in mark.dots:
            x, y = self._at(dot.at)
            self._front.append(Marker(x, y, px(6), mark.slot, hollow=not dot.included, dot=True))
            self._targets.append(Target(x, y, dot.run_id, mark.machine_id, "energy_wh"))
        x, y = self._at(mark.at)
        reach = 0.65 * size
        if mark.y_u95 is not None:
            low, high = self._y(max(0.0, mark.at.y - mark.y_u95)), self._y(mark.at.y + mark.y_u95)
            self._items.append(Line(x, low, x, high, style.line, 2.0, slot=mark.slot))
            self._whiskers.append((x, low, x, high))
            for end in (low, high):
                self._items.append(Line(x - reach, end, x + reach, end, style.line, 2.0, slot=mark.slot))
        if mark.x_u95 is not None:
            low, high = self._x(max(0.0, mark.at.x - mark.x_u95)), self._x(mark.at.x + mark.x_u95)
            if (
                high - low > 2 * reach
            ):  # else it hides behind the mark, and caps would only make it look toothed
                self._items.append(Line(low, y, high, y, style.line, 2.0, slot=mark.slot))
                self._whiskers.append((low, y, high, y))
                for end in (low, high):
                    cap = Line(end, y - reach, end, y + reach, style.line, 2.0, slot=mark.slot)
                    self._items.append(cap)
        self._front.append(Marker(x, y, size, mark.slot))
        self._targets.append(Target(x, y, "", mark.machine_id, "energy_wh"))

    def _watt_labels(self, size: float) -> list[Box]:
        """Draw the lines; each gets its label where it hides nothing, or is left away with it."""
        places = [self._at(m.at) for m in self._figure.marks]
        marks = [Box(x - size, y - size, 2 * size, 2 * size) for x, y in places]
        taken: list[Box] = []
        for line in self._figure.lines:
            box = self._watt_box(line, marks + taken)
            if box is None:
                continue
            end = self._at(line.end)
            self._items.append(Line(self._plot.x, self._plot.bottom, *end, "muted", 0.8, (5.0, 4.0)))
            self._front.append(Text(box, line.text, token="muted", full=line.text, halo=True))
            taken.append(box.grown(self._look.px(2)))
        return taken

    def _watt_box(self, line: WattLine, taken: list[Box]) -> Box | None:
        x0, y0 = self._plot.x, self._plot.bottom
        x1, y1 = self._at(line.end)
        width = self._ruler.width(line.text) + self._look.px(2)
        for share in _LABEL_SHARES:
            x, y = x0 + share * (x1 - x0), y0 + share * (y1 - y0)
            box = Box(x - width / 2, y - self._text / 2, width, self._text)
            if self._plot.holds(box) and not any(box.overlaps(b) for b in taken):
                return box
        return None

    def _names(self, size: float, taken: list[Box]) -> int:
        """Name the marks; how many found no room is returned."""
        px = self._look.px
        widest = max(self._plot.width * 0.3, self._text * 3)
        anchors, shown = [], []
        for mark in self._figure.marks:
            x, y = self._at(mark.at)
            text = self._ruler.fitted(mark.name, widest, bold=True)
            shown.append(text)
            anchors.append(Anchor(x, y, 0.75 * size, self._ruler.width(text, bold=True), self._text))
        dots = [
            Box(x - px(3), y - px(3), px(6), px(6))
            for m in self._figure.marks
            for d in m.dots
            for x, y in [self._at(d.at)]
        ]
        lines = (
            *((self._plot.x, self._plot.bottom, *self._at(line.end)) for line in self._figure.lines),
            *self._whiskers,
        )
        places = place(tuple(anchors), self._plot, (*taken, *dots), lines)
        for mark, text, found in zip(self._figure.marks, shown, places, strict=True):
            if found is None:
                continue
            if found.leader is not None:
                self._items.append(Line(*found.leader, "muted", 0.8, slot=mark.slot))
            self._front.append(Text(found.box, text, bold=True, full=mark.name, halo=True, slot=mark.slot))
            if text != mark.name:
                self._hints.append(Hint(found.box, mark.name))
        return sum(found is None for found in places)
