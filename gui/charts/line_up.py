"""Lays out runs lined up: rows of plots over one axis, with bands, states, and runs that leave."""

import math

from core.figures.line_up_values import Curve, Excursion, LineUpFigure, Panel, StateRow
from core.figures.placing import Box
from core.formatting import number
from core.language import tr
from gui.charts.curve_names import PanelPlace, margin_for, names
from gui.charts.scene import Area, Fill, Hint, Item, Line, Marker, Plot, Ruler, Scene, Stroke, Text
from gui.look import Look

#: heights of one plot: below the first nothing is seen, the second is wished for [text heights]
_LEAST_PLOT, _WISHED_PLOT = 2.4, 4.4
#: a single row of plots is higher than one of many [text heights]
_LEAST_ALONE, _WISHED_ALONE = 7.5, 11.0
#: one tick label along the axes needs this much room [text heights]
_X_TICK_ROOM, _Y_TICK_ROOM = 4.2, 2.0
#: strips of the operating states, one under the other [px at scale 1]
_STRIP, _STRIP_GAP = 5.0, 2.0
_COLUMN_GAP = 22.0
#: how a run that does not count is dashed, as its mark is hollow elsewhere
_NOT_COUNTED = (1.5, 2.5)
#: with more curves or rows lines are thin: those underneath are seen, and thin lines are painted far faster
_MANY_CURVES = 12


def lay_out_line_up(figure: LineUpFigure, area: Box, look: Look) -> Scene:
    """Place everything that a line-up shows inside `area`."""
    return _LineUp(figure, area, look).scene()


def line_up_height(figure: LineUpFigure, look: Look) -> tuple[float, float]:
    """The least height of a chart of this figure, and the height wished for. [px]"""
    text = Ruler(look).height()
    rows = max(1, len(figure.rows))
    is_alone = rows <= 2
    least, wished = (_LEAST_ALONE, _WISHED_ALONE / rows) if is_alone else (_LEAST_PLOT, _WISHED_PLOT)
    least = least / rows if is_alone else least
    around = sum(_row_extra(row, text, look) for row in figure.rows) + _foot(text, look) + text + look.px(6)
    return rows * least * text + around, rows * wished * text + around


def _row_extra(row: tuple[Panel, ...], text: float, look: Look) -> float:
    """Height of a row beside its plot: a heading above where it has one, its strips below. [px]"""
    strips = max((len(panel.state_rows) for panel in row), default=0)
    heading = 0.0 if any(panel.title for panel in row) else text + look.px(6)
    return heading + strips * look.px(_STRIP + _STRIP_GAP) + look.px(8)


def _foot(text: float, look: Look) -> float:
    """Height of the tick texts and the title of the axis. [px]"""
    return 2 * text + look.px(6)


class _LineUp:
    def __init__(self, figure: LineUpFigure, area: Box, look: Look) -> None:
        self._figure, self._area, self._look = figure, area, look
        self._ruler = Ruler(look)
        self._text = self._ruler.height()
        self._behind: list[Item] = []
        self._items: list[Item] = []
        self._front: list[Item] = []
        self._curves: list[Stroke] = []
        self._hints: list[Hint] = []
        self._plots: list[Plot] = []
        self._is_roomy = True
        self._unnamed = 0
        self._margin = 0.0
        self._is_fine = figure.is_as_logged
        self._are_many_rows = len(figure.rows) > _MANY_CURVES

    def scene(self) -> Scene:
        rows, area = self._rows_that_fit(), self._area
        missing = len(self._figure.rows) - len(rows)
        places = self._places(rows)
        for row in places:
            for at in row:
                self._panel(at)
        notes = [tr("no room for {rows:more row|more rows}", rows=missing)] if missing else []
        notes += [tr("no room for {names:name|names}", names=self._unnamed)] if self._unnamed else []
        self._columns_named(places, "; ".join(notes))
        if places:
            for at in places[-1]:
                self._x_axis_named(at)
        return Scene(
            width=area.right,
            height=area.bottom,
            items=(*self._behind, *self._items, *self._front),
            hints=tuple(self._hints),
            plots=tuple(self._plots),
            curves=tuple(self._curves),
            is_whole=not missing,
            unnamed=self._unnamed,
            is_airy=not missing and not self._unnamed and self._is_roomy,
        )

    # where the plots lie

    def _rows_that_fit(self) -> tuple[tuple[Panel, ...], ...]:
        """As many rows as can be read, one at least."""
        rows, px = self._figure.rows, self._look.px
        room = self._area.height - _foot(self._text, self._look) - self._head()
        kept = 0
        for row in rows:
            room -= _row_extra(row, self._text, self._look) + _LEAST_PLOT * self._text * 0.8
            if kept and room < -px(1):
                break
            kept += 1
        return rows[:kept]

    def _head(self) -> float:
        """Room above the first row for the names of the columns, where rows have no headings."""
        return self._text + self._look.px(6) if any(p.title for p in self._figure.panels) else 0.0

    def _places(self, rows: tuple[tuple[Panel, ...], ...]) -> list[list[PanelPlace]]:
        px, area, text = self._look.px, self._area, self._text
        if not rows:
            return []
        extras = [_row_extra(row, text, self._look) for row in rows]
        room = area.height - self._head() - _foot(text, self._look) - sum(extras)
        height = max(room / len(rows), px(8))
        ends = self._figure.x.low, self._figure.x.high
        panels = [panel for row in rows for panel in row]
        self._margin = margin_for(panels, *ends, area.width, self._look)
        self._is_roomy = height >= _WISHED_PLOT * text * (1.0 if len(rows) > 2 else 2.0)
        columns = len(rows[0])
        lefts = [self._tick_width([row[i] for row in rows], height) for i in range(columns)]
        width = (area.width - sum(lefts) - (columns - 1) * px(_COLUMN_GAP) - px(6) - self._margin) / columns
        places, y = [], area.y + self._head()
        for row, extra in zip(rows, extras, strict=True):
            x, line = area.x, []
            strips = max(len(panel.state_rows) for panel in row) * px(_STRIP + _STRIP_GAP)
            top = y + extra - strips - px(6)
            for panel, left in zip(row, lefts, strict=True):
                box = Box(x + left, top, max(width, px(20)), height)
                line.append(PanelPlace(panel, box, x, *ends))
                x += left + width + px(_COLUMN_GAP)
            places.append(line)
            y = top + height + strips + px(6)
        return places

    def _tick_width(self, panels: list[Panel], height: float) -> float:
        texts = [text for panel in panels for _, text in panel.y.ticks(self._y_ticks(height))]
        return max((self._ruler.width(text) for text in texts), default=0.0) + self._look.px(8)

    def _y_ticks(self, height: float) -> int:
        return max(2, min(6, int(height / (_Y_TICK_ROOM * self._text)) + 1))

    # what stands around

    def _columns_named(self, places: list[list[PanelPlace]], note: str) -> None:
        """The quantity above each column, or above each plot; at the right what the strips and bands mean."""
        if not places:
            return
        px, right, before = self._look.px, self._area.right, len(self._front)
        for row in places[:1] if places[0][0].panel.title else places:
            for at in row:
                title = f"{at.panel.y.title} ({at.panel.y.unit})"
                shown = self._ruler.fitted(title, at.box.right - at.left, bold=True)
                width = self._ruler.width(shown, bold=True)
                box = Box(at.left, at.box.y - px(6) - self._text, width, self._text)
                self._front.append(Text(box, shown, bold=True, full=title))
                if at.panel.beyond is not None:
                    locale = self._figure.x.locale
                    most = number(at.panel.beyond, 0, locale)
                    beyond = tr("warm-up goes up to {most} {unit}", most=most, unit=at.panel.y.unit)
                    place = Box(box.right + px(10), box.y, self._ruler.width(beyond), self._text)
                    # rows that are missing matter more
                    room = at.box.right - (self._ruler.width(note) + px(16) if note else 0.0)
                    if place.right <= room:
                        self._front.append(Text(place, beyond, token="muted", full=beyond))
        first = places[0][0]
        top = first.box.y - px(6) - self._text
        line = [t for t in self._front[before:] if isinstance(t, Text) and t.box.y == top]
        used = max(
            t.box.x + self._ruler.width(t.text, bold=t.bold) for t in line if t.box.x < first.box.right
        )
        end = first.box.right if len(places[0]) > 1 else right
        self._explained(Box(used + px(16), top, end - used - px(16), self._text), note)

    def _explained(self, box: Box, note: str) -> None:
        """What signs mean, as far as there is room."""
        parts = [note] if note else []
        panels = self._figure.panels
        if any(panel.ribbons for panel in panels):
            parts.append(tr("band: spread of the repeats"))
        if any(panel.state_rows for panel in panels):
            parts.append(tr("strip: warm-up hatched"))
        while parts and self._ruler.width("; ".join(parts)) > box.width:
            parts.pop()
        if parts:
            text = "; ".join(parts)
            width = self._ruler.width(text)
            at = Box(box.right - width, box.y, width, box.height)
            self._front.append(Text(at, text, token="muted", full=text))

    def _panel(self, at: PanelPlace) -> None:
        self._plots.append(Plot(at.box, at.low, at.high))
        self._grid(at)
        if at.panel.title:
            self._panel_named(at)
        self._marked(at)
        for ribbon in at.panel.ribbons:
            fill = self._look.machine(ribbon.slot).fill
            xs = at.x(ribbon.x)
            alpha = 0.2 if len(at.panel.ribbons) <= _MANY_CURVES // 2 else 0.1
            area = Area(xs, at.y(ribbon.high), at.y(ribbon.low), fill, alpha, at.box, ribbon.slot)
            self._items.append(area)
        self._lines(at)
        self._strips(at)

    def _panel_named(self, at: PanelPlace) -> None:
        """Whose plot it is, in the corner that its curves leave free; and where its run leaves its band."""
        px, panel, text = self._look.px, at.panel, self._text
        is_left = panel.y.unit == "Wh"
        name = self._ruler.fitted(panel.title, at.box.width - px(18), bold=True)
        width = self._ruler.width(name, bold=True)
        told = ""
        if panel.excursions and len([c for c in panel.curves if c.run_id]) == 1:
            told = "; ".join(x.text.removeprefix(x.name).strip() for x in panel.excursions)
            told = self._ruler.fitted(told, max(0.75 * at.box.width - width - px(28), 0.0))
        more = self._ruler.width(told) + px(10) if len(told) > 1 else 0.0
        left = at.box.x + px(4) if is_left else at.box.right - px(18) - width - more
        y = at.box.y + px(1)
        if panel.slot is not None:
            self._front.append(Marker(left + px(5), y + text / 2, px(9), panel.slot))
            left += px(14)
        heading = Box(left, y, width, text)
        self._front.append(Text(heading, name, bold=True, full=panel.title, halo=True, slot=panel.slot))
        if more:
            box = Box(left + width + px(10), y, more - px(10), text)
            self._front.append(Text(box, told, token="caution", full=told, halo=True, slot=panel.slot))

    def _grid(self, at: PanelPlace) -> None:
        px, box, text = self._look.px, at.box, self._text
        above = math.inf
        for value, label in at.panel.y.ticks(self._y_ticks(box.height)):
            y = at.at(0.0, value)[1]
            is_zero = abs(value) < 1e-12
            self._behind.append(Line(box.x - px(3), y, box.right, y, "muted" if is_zero else "rule"))
            width = self._ruler.width(label)
            # what stands above the plot must not be written over
            top = max(y - text / 2, box.y - px(2))
            if top + 0.9 * text > above:
                continue  # in a low plot there is no room for it over the one below
            above = top
            self._front.append(
                Text(Box(box.x - px(6) - width, top, width, text), label, token="muted", full=label)
            )
        for value, _ in self._figure.x.ticks(self._x_ticks(box)):
            x = at.at(value, 0.0)[0]
            self._behind.append(Line(x, box.y, x, box.bottom, "rule"))

    def _x_ticks(self, box: Box) -> int:
        return max(2, min(9, int(box.width / (_X_TICK_ROOM * self._text)) + 1))

    def _x_axis_named(self, at: PanelPlace) -> None:
        text, scale = self._text, self._figure.x
        y = self._area.bottom - 2 * text
        for value, label in scale.ticks(self._x_ticks(at.box)):
            width = self._ruler.width(label)
            box = Box(at.at(value, 0.0)[0] - width / 2, y, width, text)
            self._front.append(Text(box, label, token="muted", full=label))
        title = f"{scale.title} ({scale.unit})"
        shown = self._ruler.fitted(title, at.box.right - at.left, bold=True)
        width = self._ruler.width(shown, bold=True)
        box = Box(at.box.right - width, self._area.bottom - text, width, text)
        self._front.append(Text(box, shown, bold=True, full=title))

    def _marked(self, at: PanelPlace) -> None:
        """The span that is read."""
        if self._figure.span is None:
            return
        low, high = (min(max(v, at.low), at.high) for v in self._figure.span)
        left, right = (at.at(v, 0.0)[0] for v in (low, high))
        if right > left:
            box = Box(left, at.box.y, right - left, at.box.height)
            self._behind.insert(0, Fill(box, "selection", 0.6))
            for x in (left, right):
                self._items.append(Line(x, at.box.y, x, at.box.bottom, "link", 1.2))

    # curves and their names

    def _lines(self, at: PanelPlace) -> None:
        panel = at.panel
        runs = [c for c in panel.curves if c.run_id]
        medians = [c for c in panel.curves if not c.run_id]
        many = len(runs) > _MANY_CURVES
        for curve in runs:
            style = self._look.machine(curve.slot)
            faint = bool(medians)
            width = 1.0 if self._is_fine else 1.0 if many or faint or self._are_many_rows else 1.6
            dash = () if width <= 1.0 else style.dash
            if not curve.included:
                width, dash = max(width, 1.2), _NOT_COUNTED
            stroke = self._stroke(at, curve, width, dash, 0.5 if faint else 0.9)
            self._items.append(stroke)
            self._curves.append(stroke)
        for curve in panel.hidden:
            self._curves.append(self._stroke(at, curve, 0.9, (), 0.0))
        for curve in medians:
            style = self._look.machine(curve.slot)
            self._items.append(self._stroke(at, curve, 2.2, style.dash, 1.0))
        for excursion in panel.excursions:
            self._leaving(at, excursion)
        named, dropped = names(at, self._margin, self._look)
        self._front += named
        self._unnamed = max(self._unnamed, dropped)

    def _stroke(
        self, at: PanelPlace, curve: Curve, width: float, dash: tuple[float, ...], alpha: float
    ) -> Stroke:
        return Stroke(
            at.x(curve.x),
            at.y(curve.y),
            self._look.machine(curve.slot).line,
            width,
            dash,
            alpha,
            curve.run_id,
            curve.machine_id,
            at.box,
            self._is_fine and bool(curve.run_id) and at.panel.y.unit == "W",
            slot=curve.slot,
        )

    def _leaving(self, at: PanelPlace, excursion: Excursion) -> None:
        """The part of a run outside its band, in front of everything."""
        curve = next((c for c in at.panel.curves if c.run_id == excursion.run_id), None)
        if curve is None:
            return
        inside = (curve.x >= excursion.low) & (curve.x <= excursion.high)
        xs, ys = at.x(curve.x[inside]), at.y(curve.y[inside])
        slot = curve.slot
        self._items.append(Stroke(xs, ys, "card", 3.6, clip=at.box, slot=slot))
        self._items.append(Stroke(xs, ys, "caution", 2.2, (3.0, 1.5), clip=at.box, slot=slot))

    # operating states

    def _strips(self, at: PanelPlace) -> None:
        px = self._look.px
        y = at.box.bottom + px(4)
        for row in at.panel.state_rows:
            self._strip(at, row, y)
            y += px(_STRIP + _STRIP_GAP)

    def _strip(self, at: PanelPlace, row: StateRow, y: float) -> None:
        px, height = self._look.px, self._look.px(_STRIP)
        color = self._look.machine(row.slot).line
        told = []
        for state, low, high in row.spans:
            left, right = (at.at(v, 0.0)[0] for v in (low, high))
            box = Box(left, y, right - left, height)
            until, unit = number(high, 1, self._figure.x.locale), self._figure.x.unit
            told.append(tr("{state} until {end} {unit}", state=tr(state), end=until, unit=unit))
            if state == "processing":
                inner = Box(left, y + px(1), right - left, height - px(2))
                self._items.append(Fill(inner, color, 0.85, slot=row.slot))
                continue
            self._items.append(Fill(box, color, 0.15, outline=color, slot=row.slot))
            apart = max(px(3) if state == "warm-up" else px(7), (right - left) / 40)
            x = left + apart
            while x < right:
                self._items.append(Line(x, y, x, y + height, color, 1.2, slot=row.slot))
                x += apart
        whole = Box(at.box.x, y - px(1), at.box.width, height + px(2))
        self._hints.append(Hint(whole, f"{row.name}: {', '.join(told)}"))
