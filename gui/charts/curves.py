"""Lays out curves with their bands and measured points, and beneath them what is left beside a curve."""

from itertools import pairwise

import numpy as np

from core.figures.curve_values import Between, CurvesFigure, Spot, Trend
from core.figures.line_up_values import Scale
from core.figures.placing import Anchor, Box, place
from core.language import tr
from core.traces import F64
from gui.charts.margin_names import NEAR_BORDER, CurveEnd, cut_names, lines_beside, margin_width, names_beside
from gui.charts.scene import Area, Hint, Item, Line, Marker, Ruler, Scene, Stroke, Target, Text
from gui.look import Look

#: one tick label along the axes needs this much room, in text heights
_X_TICK_ROOM, _Y_TICK_ROOM = 3.4, 2.2
#: share of the height that what is left beside the curve takes, and its least height in text heights
_REST_SHARE, _LEAST_REST = 0.28, 3.0
#: below this height there is no room for it, in text heights
_REST_FROM = 17.0
#: of so many points of a curve labels keep away
_KEPT_CLEAR = 24
_MARK = 9.0
#: a plot with so much width and height can be read at ease, in text heights
_ROOMY = (18.0, 8.0)
#: names of so many letters, with a value at their end, are not shortened while a picture's text can shrink
_ORDINARY = 28
#: from so many machines on whose curves end together, names stand in a margin
_HEAP = 3


def lay_out_curves(figure: CurvesFigure, area: Box, look: Look) -> Scene:
    """Place everything that the figure shows inside `area`."""
    return _Curves(figure, area, look).scene()


def curves_height(figure: CurvesFigure, look: Look) -> tuple[float, float]:
    """The least height of the chart, and that wished for. [px]"""
    text = Ruler(look).height()
    return (_REST_FROM * text, 26 * text) if figure.rest is not None else (11 * text, 16 * text)


class _Plane:
    """A plot and its scales."""

    def __init__(self, box: Box, x: Scale, y: Scale) -> None:
        self.box, self._x, self._y = box, x, y

    def xs(self, values: F64) -> F64:
        return self.box.x + self.box.width * (values - self._x.low) / (self._x.high - self._x.low)

    def ys(self, values: F64) -> F64:
        return self.box.bottom - self.box.height * (values - self._y.low) / (self._y.high - self._y.low)

    def x(self, value: float) -> float:
        return float(self.xs(np.array(value)))

    def y(self, value: float) -> float:
        return float(self.ys(np.array(value)))


class _Curves:
    def __init__(self, figure: CurvesFigure, area: Box, look: Look) -> None:
        self._figure, self._area, self._look = figure, area, look
        self._ruler = Ruler(look)
        self._text = self._ruler.height()
        self._behind: list[Item] = []
        self._items: list[Item] = []
        self._front: list[Item] = []
        self._targets: list[Target] = []
        self._hints: list[Hint] = []
        self._shortened = 0

    def scene(self) -> Scene:
        px, text, area, figure = self._look.px, self._text, self._area, self._figure
        foot, head = 2 * text + px(8), text + px(8)
        room = area.height - foot - head
        rest = figure.rest if area.height >= _REST_FROM * text else None
        rest_height = max(_REST_SHARE * room, _LEAST_REST * text) if rest is not None else 0.0
        between = text + px(16) if rest is not None else 0.0
        scales = (figure.y, rest.y) if rest is not None else (figure.y,)
        left = max(self._ruler.width(t) for s in scales for _, t in s.ticks(6)) + px(10)
        ending = self._ending_together()
        margin = margin_width([t.name for t in ending], area.width, self._look)
        width = max(area.width - left - (margin or px(10)), px(10))
        height = max(room - rest_height - between, px(10))
        plane = _Plane(Box(area.x + left, area.y + head, width, height), figure.x, figure.y)
        self._grid(plane, figure.y)
        unnamed = self._draw(plane, ending, margin)
        self._title(figure.y, plane.box.y - px(6) - text, figure.note, unnamed)
        bottom = plane
        if rest is not None:
            top = plane.box.bottom + between
            bottom = _Plane(Box(plane.box.x, top, width, rest_height), figure.x, rest.y)
            self._grid(bottom, rest.y)
            self._title(rest.y, top - px(4) - text)
            zero = bottom.y(0.0)
            self._behind.append(Line(bottom.box.x, zero, bottom.box.right, zero, "muted", 1.2))
            for spot in rest.spots:
                self._spot(spot, bottom)
        self._x_axis(bottom)
        is_roomy = width >= _ROOMY[0] * text and height >= _ROOMY[1] * text and rest is figure.rest
        return Scene(
            area.right,
            area.bottom,
            (*self._behind, *self._items, *self._front),
            tuple(self._targets),
            tuple(self._hints),
            unnamed=unnamed + self._shortened,
            is_airy=not unnamed and not self._shortened and is_roomy,
        )

    # axes

    def _grid(self, plane: _Plane, scale: Scale) -> None:
        px, box, text = self._look.px, plane.box, self._text
        least = 3 if scale.low < 0 else 2  # zero alone says nothing of what lies on either side
        most = max(least, min(6, int(box.height / (_Y_TICK_ROOM * text)) + 1))
        for value, label in scale.ticks(most):
            y = plane.y(value)
            self._behind.append(Line(box.x - px(3), y, box.right, y, "rule"))
            width = self._ruler.width(label)
            # what stands above the plot must not be written over
            at = Box(box.x - px(6) - width, max(y - text / 2, box.y - px(4)), width, text)
            self._front.append(Text(at, label, token="muted", full=label))
        for value, _ in self._figure.x.ticks(self._x_ticks(box)):
            x = plane.x(value)
            self._behind.append(Line(x, box.y, x, box.bottom, "rule"))

    def _x_ticks(self, box: Box) -> int:
        return max(2, min(6, int(box.width / (_X_TICK_ROOM * self._text)) + 1))

    def _x_axis(self, plane: _Plane) -> None:
        px, box, text, scale = self._look.px, plane.box, self._text, self._figure.x
        ticks = scale.ticks(self._x_ticks(box))
        places = [plane.x(value) for value, _ in ticks]
        room = min((b - a for a, b in pairwise(places)), default=box.width) - px(6)
        for x, (_, label) in zip(places, ticks, strict=True):
            shown = self._ruler.fitted(label, max(room, px(10)))  # names of places may be long
            width = self._ruler.width(shown)
            self._behind.append(Line(x, box.bottom, x, box.bottom + px(3), "rule"))
            left = min(x - width / 2, self._area.right - width)
            at = Box(left, box.bottom + px(4), width, text)
            self._front.append(Text(at, shown, token="muted", full=label))
            if shown != label:
                self._shortened += 1
                self._hints.append(Hint(at, label))
        title = _with_unit(scale)
        shown = self._ruler.fitted(title, box.right - self._area.x, bold=True)
        width = self._ruler.width(shown, bold=True)
        at = Box(box.right - width, box.bottom + px(6) + text, width, text)
        self._front.append(Text(at, shown, bold=True, full=title))

    def _title(self, scale: Scale, y: float, note: str = "", unnamed: int = 0) -> None:
        """The quantity above its plot; at the right names without room, and what signs mean."""
        title = _with_unit(scale)
        shown = self._ruler.fitted(title, self._area.width, bold=True)
        used = self._ruler.width(shown, bold=True)
        self._front.append(Text(Box(self._area.x, y, used, self._text), shown, bold=True, full=title))
        parts = [tr("no room for {names:name|names}", names=unnamed)] if unnamed else []
        parts += [note] if note else []
        room = self._area.width - used - self._look.px(16)
        while parts and self._ruler.width("; ".join(parts)) > room:
            parts.pop()
        if parts:
            said = "; ".join(parts)
            width = self._ruler.width(said)
            at = Box(self._area.right - width, y, width, self._text)
            self._front.append(Text(at, said, token="muted", full=said))

    # what is shown

    def _ending_together(self) -> tuple[Trend, ...]:
        """The curves that all end at the right border, where names within the plot would lie in a heap."""
        x = self._figure.x
        near = x.high - NEAR_BORDER * (x.high - x.low)
        named = [t for t in self._figure.trends if t.name and t.slot is not None and not t.is_dashed]
        at_border = tuple(t for t in named if t.x[-1] >= near)
        slots = {t.slot for t in at_border}
        return at_border if len(slots) >= _HEAP and len(at_border) == len(named) else ()

    def _draw(self, plane: _Plane, beside: tuple[Trend, ...], margin: float) -> int:
        """Draw everything, the names of some curves beside the plot; how many found no room is returned."""
        if self._figure.between is not None:
            self._between(self._figure.between, plane)
        for trend in self._figure.trends:
            self._trend(trend, plane)
        for spot in self._figure.spots:
            self._spot(spot, plane)
        for reading in self._figure.readings:
            x, y = plane.x(reading.x), plane.y(reading.y)
            if plane.box.y <= y <= plane.box.bottom:
                self._targets.append(Target(x, y, "", "", "", reading.lines))
        ends = [CurveEnd(plane.x(t.x[-1]), plane.y(t.y[-1]), t.name, t.slot or 0) for t in beside]
        self._front += names_beside(plane.box, ends, margin, self._look, marks_ends=False)
        without = max(0, len(ends) - lines_beside(plane.box, self._look))
        return self._names(plane, beside) + without + cut_names(ends, margin, self._look)

    def _color(self, slot: int | None) -> str:
        return "muted" if slot is None else self._look.machine(slot).line

    def _dash(self, slot: int | None) -> tuple[float, ...]:
        return () if slot is None else self._look.machine(slot).dash

    def _trend(self, trend: Trend, plane: _Plane) -> None:
        xs, ys = plane.xs(np.array(trend.x)), plane.ys(np.array(trend.y))
        color = self._color(trend.slot)
        if trend.low:
            tops, bottoms = plane.ys(np.array(trend.high)), plane.ys(np.array(trend.low))
            self._items.append(Area(xs, tops, bottoms, color, 0.16, plane.box, trend.slot))
        dash = (5.0, 4.0) if trend.is_dashed else self._dash(trend.slot)
        width = 1.4 if trend.is_dashed else 2.0
        self._items.append(Stroke(xs, ys, color, width, dash, clip=plane.box, slot=trend.slot))

    def _spot(self, spot: Spot, plane: _Plane) -> None:
        px = self._look.px
        x, y = plane.x(spot.x), plane.y(spot.y)
        if spot.u95:
            low, high = plane.y(spot.y - spot.u95), plane.y(spot.y + spot.u95)
            color = self._color(spot.slot)
            self._items.append(Line(x, low, x, high, color, 1.6, slot=spot.slot))
            if low - high > px(_MARK):
                for end in (low, high):
                    self._items.append(Line(x - px(4), end, x + px(4), end, color, 1.6, slot=spot.slot))
        self._front.append(Marker(x, y, px(_MARK), spot.slot, hollow=not spot.is_counted))
        self._targets.append(Target(x, y, spot.run_id, spot.machine_id, spot.key, spot.lines))

    def _between(self, between: Between, plane: _Plane) -> None:
        px = self._look.px
        xs = plane.xs(np.array(between.x))
        tops, bottoms = (plane.ys(np.array(v)) for v in (between.top, between.bottom))
        fill = self._look.machine(between.slot).fill
        self._items.append(Area(xs, tops, bottoms, fill, 0.22, plane.box, between.slot))
        if not between.text:
            return
        width = self._ruler.width(between.text, bold=True)
        middle = (plane.box.x + plane.box.right) / 2
        low, high = float(np.interp(middle, xs, bottoms)), float(np.interp(middle, xs, tops))
        y = (low + high) / 2 - self._text / 2
        if low - high < self._text + px(4):
            y = high - self._text - px(4)  # a sliver: its words stand above it
        left = max(min(middle - width / 2, plane.box.right - width), plane.box.x)
        box = Box(left, y, width, self._text)
        self._front.append(
            Text(box, between.text, bold=True, full=between.text, halo=True, slot=between.slot)
        )

    def _names(self, plane: _Plane, beside: tuple[Trend, ...]) -> int:
        """Names of the curves where they end, and of points that have no curve; how many found no room."""
        px = self._look.px
        wanted = [
            (plane.x(t.x[-1]), plane.y(t.y[-1]), t.name, "muted" if t.slot is None else "ink", t.slot)
            for t in self._figure.trends
            if t.name and t not in beside
        ]
        wanted += [(plane.x(s.x), plane.y(s.y), s.name, "ink", s.slot) for s in self._figure.spots if s.name]
        widest = 0.4 * plane.box.width
        texts = [self._ruler.fitted(name, widest, bold=token == "ink") for _, _, name, token, _ in wanted]
        anchors = tuple(
            Anchor(x, y, px(_MARK) * 0.6, self._ruler.width(text, bold=token == "ink"), self._text)
            for (x, y, _, token, _), text in zip(wanted, texts, strict=True)
        )
        marks = [Box(plane.x(s.x) - px(5), plane.y(s.y) - px(5), px(10), px(10)) for s in self._figure.spots]
        words = [t.box for t in self._front if isinstance(t, Text)]
        found = place(anchors, plane.box, (*marks, *words), self._kept_clear(plane))
        for (_, _, name, token, slot), text, at in zip(wanted, texts, found, strict=True):
            if at is None:
                continue
            if at.leader is not None:
                self._items.append(Line(*at.leader, "muted", 0.8, slot=slot))
            bold = token == "ink"
            self._front.append(Text(at.box, text, bold=bold, token=token, full=name, halo=True, slot=slot))
            if text != name:
                self._shortened += len(name) <= _ORDINARY
                self._hints.append(Hint(at.box, name))
        return sum(at is None for at in found)

    def _kept_clear(self, plane: _Plane) -> tuple[tuple[float, float, float, float], ...]:
        """Pieces of the curves, and the intervals of the points: names keep off them."""
        pieces = []
        for trend in self._figure.trends:
            every = max(1, len(trend.x) // _KEPT_CLEAR)
            xs = plane.xs(np.array(trend.x[::every] + trend.x[-1:])).tolist()
            ys = plane.ys(np.array(trend.y[::every] + trend.y[-1:])).tolist()
            pieces += list(zip(xs[:-1], ys[:-1], xs[1:], ys[1:], strict=True))
        for spot in self._figure.spots:
            x, reach = plane.x(spot.x), spot.u95 or 0.0
            pieces.append((x, plane.y(spot.y - reach), x, plane.y(spot.y + reach)))
        return tuple(pieces)


def _with_unit(scale: Scale) -> str:
    return f"{scale.title} ({scale.unit})" if scale.unit else scale.title
