"""Lays out the comparison: one row a machine, one column a measure.

Every text has a place of its own, so that none can be clipped or laid over another: values stand in a lane
above their marks while rows are tall enough, and in a gutter at the right of their column when they are
not. Measures and machines for which there is no room are named under the chart.
"""

from attrs import evolve

from core.figures.placing import Box, swarm
from core.figures.values import Cell, ComparisonFigure, Measure, Row
from core.formatting import listed
from core.language import tr
from gui.charts.row_heights import GROUP, overhead
from gui.charts.row_notes import note_lines, under_title, unsaid
from gui.charts.scene import ELLIPSIS, Fill, Hint, Item, Line, Marker, Ruler, Scene, Target, Text, ValuePlace
from gui.look import Look

#: share of the width that machine names may take
_NAMES_SHARE, _LEAST_NAMES_SHARE = 0.19, 0.12
#: share of the width that the words below a name may take where columns leave little
_MOST_WORDS_SHARE = 0.16
#: and of what the columns do not need, up to a larger share of the width
_NAMES_OF_SPARE, _MOST_NAMES_SHARE = 0.6, 0.4
#: names of so many letters are not shortened while the text of a picture can shrink
_ORDINARY = 16
_COLUMN_GAP = 16.0
#: least height of a row: one line of text with air around it, in text heights
_LEAST_ROW = 1.15
#: from this height on values stand above their marks, in text heights
_TALL_ROW = 2.3
#: narrowest plot that still shows where marks lie, in text heights
_LEAST_PLOT = 2.4
#: weight of the first measure's width against the others'
_FIRST_WEIGHT = 1.35
#: at most so many brackets stand side by side
_TIE_LANES = 3
#: one tick label needs this much width, in text heights
_TICK_ROOM = 2.6


def lay_out_rows(figure: ComparisonFigure, area: Box, look: Look) -> Scene:
    """Place everything the comparison shows inside `area`."""
    shown = _fitting(figure, area, look)
    return _Rows(shown, area, look, len(figure.rows) - len(shown.rows)).scene()


def _fitting(figure: ComparisonFigure, area: Box, look: Look) -> ComparisonFigure:
    """The figure with as many machines, from the first on, as there is room for."""
    text = Ruler(look).height()
    most = max(1, int((area.height - overhead(text, look)) / (_LEAST_ROW * text) + 0.01))
    if most >= len(figure.rows):
        return figure
    most = max(1, most - 2)  # room for the line that says so
    measures = tuple(evolve(m, cells=m.cells[:most]) for m in figure.measures)
    return evolve(figure, rows=figure.rows[:most], measures=measures)


class _Rows:
    def __init__(self, figure: ComparisonFigure, area: Box, look: Look, unshown: int) -> None:
        self._figure = figure
        self._unshown = unshown
        self._area = area
        self._look = look
        self._ruler = Ruler(look)
        self._text = self._ruler.height()
        self._items: list[Item] = []
        self._front: list[Item] = []
        self._targets: list[Target] = []
        self._hints: list[Hint] = []
        self._values: list[ValuePlace] = []
        self._cut = 0

    def scene(self) -> Scene:
        px, area = self._look.px, self._area
        measures = self._figure.measures
        rows = max(1, len(self._figure.rows))
        self._tall = (area.height - overhead(self._text, self._look)) / rows >= _TALL_ROW * self._text
        self._least = [self._least_width(m) for m in measures]
        widest = max((self._ruler.width(r.name, bold=True) for r in self._figure.rows), default=0.0)
        runs = max((self._ruler.width(r.runs_text) for r in self._figure.rows), default=0.0)
        left = area.width - sum(self._least) - px(_COLUMN_GAP) * len(measures)
        # where columns leave much room, long names have most of it
        usual = max(_NAMES_SHARE * area.width, min(_NAMES_OF_SPARE * left, _MOST_NAMES_SHARE * area.width))
        most = min(max(left, _LEAST_NAMES_SHARE * area.width), usual)
        # the few words below a name are kept whole, however long they are in another language
        most = max(most, min(runs + px(8), _MOST_WORDS_SHARE * area.width))
        self._names = min(max(widest, runs) + px(8), most)
        kept = self._kept()
        missing = [m.axis.title for m in measures if m not in kept]
        notes = []
        if self._unshown:
            shown = len(self._figure.rows)
            every = shown + self._unshown
            notes.append(tr("{shown} of {machines:machine|machines} shown", shown=shown, machines=every))
        if missing:
            notes.append(tr("no room here for: {names}", names=listed(missing)))
        bottom = area.bottom
        widths = [width + px(8) for width in self._widths(kept)]
        said = [*notes, *unsaid(zip(kept, widths, strict=True), self._ruler)]
        if said:
            bottom -= self._note("; ".join(said)) + px(4)
        self._lay_out(kept, bottom)
        items = (*self._items, *self._front)
        return Scene(
            width=area.right,
            height=area.bottom,
            items=items,
            targets=tuple(self._targets),
            hints=tuple(self._hints),
            values=tuple(self._values),
            is_whole=not notes,
            unnamed=self._cut,
            is_airy=self._tall and not notes and not self._cut,
        )

    # which measures stand where

    def _least_width(self, measure: Measure) -> float:
        value = max((self._label_width(measure, c) for c in measure.cells), default=0.0)
        title = self._ruler.width(measure.axis.title, bold=True) - self._look.px(8)
        plot = _LEAST_PLOT * self._text
        return max(value, title, plot) if self._tall else max(title, value + self._look.px(8) + plot)

    def _label_width(self, measure: Measure, cell: Cell) -> float:
        return self._ruler.width(_label(cell), bold=_is_bold(measure, cell))

    def _kept(self) -> tuple[Measure, ...]:
        """The measures that there is room for, by rank; one at least."""
        measures = self._figure.measures
        gap = self._look.px(_COLUMN_GAP)
        room = self._area.width - self._names
        kept: list[Measure] = []
        for measure in sorted(measures, key=lambda m: m.rank):
            room -= self._least[measures.index(measure)] + gap
            if kept and room < 0:
                break
            kept.append(measure)
        return tuple(sorted(kept, key=measures.index))

    def _note(self, text: str) -> float:
        """What is not shown, on the last lines; their height."""
        lines = note_lines(text, self._area.width, self._ruler)
        height = len(lines) * self._text
        whole = Box(self._area.x, self._area.bottom - height, self._area.width, height)
        for i, line in enumerate(lines):
            full = text if line.endswith(ELLIPSIS) else line
            box = Box(whole.x, whole.y + i * self._text, whole.width, self._text)
            self._front.append(Text(box, line, token="muted", full=full))
        self._hints.append(Hint(whole, text))
        return height

    def _lay_out(self, measures: tuple[Measure, ...], bottom: float) -> None:
        px, area = self._look.px, self._area
        head = 2 * self._text + px(12)
        foot = self._text + px(6)
        top, bottom = area.y + head, bottom - foot
        rows = self._figure.rows
        height = (bottom - top) / max(1, len(rows))
        tall = height >= 0.98 * _TALL_ROW * self._text and self._tall
        for i, row in enumerate(rows):
            y = top + i * height
            self._items.append(Line(area.x, y, area.right, y, "rule", 1.0))
            self._name(row, y, height, tall)
        self._items.append(Line(area.x, bottom, area.right, bottom, "rule", 1.0))
        self._ties(top, height)
        left = area.x + self._names
        gap = px(_COLUMN_GAP)
        for measure, width in zip(measures, self._widths(measures), strict=True):
            column = Box(left + gap, top, width, bottom - top)
            self._column(measure, column, area.y, height, tall)
            left += gap + width

    def _ties(self, top: float, height: float) -> None:
        """Brackets between names and charts; where there is no lane the words on top must do."""
        px, names = self._look.px, self._figure.rows
        shown = [(first, min(last, len(names) - 1)) for first, last in self._figure.ties]
        ends = [-1] * _TIE_LANES
        for first, last in shown:
            lane = next((k for k, end in enumerate(ends) if end < first), None)
            if lane is None or first >= last:
                continue
            ends[lane] = last
            x = self._area.x + self._names + px(1 + 4 * lane)
            upper, lower = top + (first + 0.25) * height, top + (last + 0.75) * height
            slot = names[last].slot  # the bracket comes with the last of its machines
            self._items.append(Line(x, upper, x, lower, "muted", 1.4, slot=slot))
            for y in (upper, lower):
                self._items.append(Line(x - px(3), y, x, y, "muted", 1.4, slot=slot))
            who = listed([row.name for row in names[first : last + 1]])
            self._hints.append(
                Hint(
                    Box(x - px(4), upper, px(8), lower - upper),
                    tr("{machines}: no difference shown", machines=who),
                )
            )

    def _widths(self, measures: tuple[Measure, ...]) -> list[float]:
        """Widths by weight, but none below what its texts need."""
        weights = [_FIRST_WEIGHT if m.rank == 0 else 1.0 for m in measures]
        room = self._area.width - self._names - self._look.px(_COLUMN_GAP) * len(weights)
        least = [self._least[self._figure.measures.index(m)] for m in measures]
        widths = [room * w / sum(weights) for w in weights]
        short = [max(0.0, need - width) for need, width in zip(least, widths, strict=True)]
        spare = [max(0.0, width - need) for need, width in zip(least, widths, strict=True)]
        taken = min(1.0, sum(short) / sum(spare)) if sum(spare) > 0 else 0.0
        return [w + s - taken * x for w, s, x in zip(widths, short, spare, strict=True)]

    def _name(self, row: Row, y: float, height: float, tall: bool) -> None:
        px = self._look.px
        width = self._names - px(4)
        lines = [(row.name, True, "ink")]
        if tall:
            lines.append((row.runs_text, False, "muted"))
        start = y + (height - len(lines) * self._text) / 2
        for i, (text, bold, token) in enumerate(lines):
            box = Box(self._area.x, start + i * self._text, width, self._text)
            shown = self._ruler.fitted(text, width, bold=bold)
            self._cut += shown != text and len(text) <= _ORDINARY
            self._front.append(Text(box, shown, bold=bold, token=token, full=text, slot=row.slot))
        self._hints.append(Hint(Box(self._area.x, y, width, height), f"{row.name}: {row.runs_text}"))

    # one column

    def _column(self, measure: Measure, column: Box, head: float, height: float, tall: bool) -> None:
        px = self._look.px
        self._heading(measure, column, head)
        gutter = 0.0
        if not tall:
            gutter = max((self._label_width(measure, c) for c in measure.cells), default=0.0)
            gutter = min(gutter + px(8), column.width)
        plot = Box(column.x, column.y, max(column.width - gutter, px(8)), column.height)
        # with a gutter there may be no room left for a plot: then the values stand alone, as in a table
        drawn = plot.width >= 1.6 * self._text
        if drawn:
            self._axis(measure, plot)
        for i, cell in enumerate(measure.cells):
            box = Box(plot.x, column.y + i * height, plot.width, height)
            row = self._figure.rows[i]
            if drawn:
                self._cell(measure, cell, row, box, tall)
            self._value(measure, cell, row, box, column, tall)

    def _heading(self, measure: Measure, column: Box, y: float) -> None:
        room = column.width + self._look.px(8)
        title = self._ruler.fitted(measure.axis.title, room, bold=True)
        under = under_title(measure, room, self._ruler)
        for i, (text, bold, token) in enumerate(((title, True, "ink"), (under, False, "muted"))):
            box = Box(column.x, y + i * self._text, room, self._text)
            self._front.append(Text(box, text, bold=bold, token=token, full=text))
        what = f"{measure.axis.title}, {measure.axis.unit}".rstrip(", ")
        note = f"{what} ({measure.legend})" if measure.legend else what
        self._hints.append(Hint(Box(column.x, y, column.width, 2 * self._text), note))

    def _axis(self, measure: Measure, plot: Box) -> None:
        most = max(2, min(6, int(plot.width / (_TICK_ROOM * self._text)) + 1))
        ticks = measure.axis.ticks(most)
        right = -1e9
        for value, text in ticks:
            x = self._x(measure, plot, value)
            width = self._ruler.width(text)
            left = min(max(x - width / 2, plot.x - self._look.px(_COLUMN_GAP) / 2), plot.right - width)
            self._items.append(Line(x, plot.y, x, plot.bottom + self._look.px(3), "rule", 1.0))
            if left < right + self._look.px(4):
                continue
            box = Box(left, plot.bottom + self._look.px(5), width, self._text)
            self._front.append(Text(box, text, token="muted", full=text))
            right = box.right
        for line in measure.lines:
            x = self._x(measure, plot, line.value)
            self._items.append(Line(x, plot.y, x, plot.bottom, "muted", 1.0, (4.0, 3.0)))
            reach = self._look.px(3)
            self._hints.append(Hint(Box(x - reach, plot.y, 2 * reach, plot.height), line.text))

    def _x(self, measure: Measure, plot: Box, value: float) -> float:
        return plot.x + plot.width * min(max(value / measure.axis.top, 0.0), 1.0)

    def _group(self, box: Box) -> Box:
        """The part of a tall row in which value, mark and dots stand together."""
        height = min(box.height, GROUP * self._text)
        return Box(box.x, box.y + (box.height - height) / 2, box.width, height)

    def _mark_size(self, box: Box, tall: bool) -> float:
        px = self._look.px
        return min(px(13), max(px(7), (0.19 if tall else 0.55) * box.height))

    def _lanes(self, box: Box, tall: bool) -> tuple[float, float, float]:
        """Middle of the marks' lane, and top and bottom of the dots' lane."""
        px = self._look.px
        if not tall:
            middle = box.y + 0.5 * box.height
            return middle, middle, middle
        group = self._group(box)
        half = 0.85 * self._mark_size(group, tall)
        middle = group.y + px(3) + self._text + half
        return middle, middle + half + px(1), group.bottom - px(2)

    def _cell(self, measure: Measure, cell: Cell, row: Row, box: Box, tall: bool) -> None:
        px = self._look.px
        middle, dots_top, dots_bottom = self._lanes(box, tall)
        size = self._mark_size(self._group(box) if tall else box, tall)
        half = 0.85 * size
        style = self._look.machine(row.slot)
        if cell.bound is not None:
            low, high = self._x(measure, box, cell.bound.low), self._x(measure, box, cell.bound.high)
            lane = Box(low, middle - half / 2, max(high - low, px(2)), half)
            self._items.append(Fill(lane, style.fill, 0.14, slot=row.slot))
            self._items.append(Line(low, middle - half, low, middle + half, style.line, 2.0, slot=row.slot))
        mark = cell.mark
        if mark is not None:
            end = self._x(measure, box, mark.value)
            if measure.bars:
                self._bar(measure, cell, row, box, middle, size)
            elif measure.rank == 0:
                self._items.append(Line(box.x, middle, end, middle, style.line, 1.6, slot=row.slot))
            if mark.u95 is not None:
                low, high = self._x(measure, box, mark.low), self._x(measure, box, mark.high)
                span = Box(low, middle - half, max(high - low, px(2)), 2 * half)
                self._items.append(Fill(span, style.fill, 0.32, slot=row.slot))
                for x in (span.x, span.right):
                    self._items.append(Line(x, span.y, x, span.bottom, style.line, 1.6, slot=row.slot))
        if cell.against is not None:
            x = self._x(measure, box, cell.against)
            reach = 1.5 * half
            self._front.append(
                Line(x, middle - reach, x, middle + reach, "ink", 1.6, (2.0, 1.5), slot=row.slot)
            )
        self._dots(measure, cell, row, Box(box.x, dots_top, box.width, dots_bottom - dots_top))
        if mark is not None:
            self._front.append(Marker(end, middle, size, row.slot))
            self._targets.append(Target(end, middle, mark.pick_id, row.machine_id, measure.key, cell.lines))

    def _bar(self, measure: Measure, cell: Cell, row: Row, box: Box, middle: float, size: float) -> None:
        assert cell.mark is not None
        fill, slot = self._look.machine(row.slot).fill, row.slot
        half = 0.45 * size
        end = self._x(measure, box, cell.mark.value)
        whole = Box(box.x, middle - half, end - box.x, 2 * half)
        self._items.append(Fill(whole, fill, 0.18, outline=fill, slot=slot))
        if cell.inner is not None:
            inner = self._x(measure, box, cell.inner)
            part = Box(box.x, middle - half, inner - box.x, 2 * half)
            self._items.append(Fill(part, fill, 0.75, slot=slot))
        elif cell.inner_least is not None:
            least = self._x(measure, box, cell.inner_least)
            part = Box(box.x, middle - half, least - box.x, 2 * half)
            self._items.append(Fill(part, fill, 0.32, slot=slot))
            edge = Line(least, middle - half, least, middle + half, fill, 1.6, (1.5, 1.5), slot=slot)
            self._items.append(edge)

    def _dots(self, measure: Measure, cell: Cell, row: Row, lane: Box) -> None:
        px = self._look.px
        size = min(px(6.5), max(px(4.5), 0.4 * lane.height))
        lanes = min(4, max(1, int(lane.height // size)))
        xs = tuple(self._x(measure, lane, d.value) for d in cell.dots)
        for dot, x, k in zip(cell.dots, xs, swarm(xs, size, lanes), strict=True):
            y = lane.y + size / 2 + k * size if lane.height > 0 else lane.y
            self._front.append(Marker(x, y, size, row.slot, hollow=not dot.included, dot=True))
            self._targets.append(Target(x, y, dot.run_id, row.machine_id, measure.key))

    def _value(self, measure: Measure, cell: Cell, row: Row, box: Box, column: Box, tall: bool) -> None:
        px = self._look.px
        label = _label(cell)
        if not label:
            return
        bold = _is_bold(measure, cell)
        token = "ink" if cell.mark is not None else "muted"
        if tall:
            at = cell.mark.value if cell.mark else (cell.bound.low if cell.bound else 0.0)
            shown = self._ruler.fitted(label, column.width, bold=bold)
            width = self._ruler.width(shown, bold=bold)
            x = self._x(measure, box, at) - width / 2
            x = min(max(x, column.x), column.right - width)
            place = Box(x, self._group(box).y + px(2), width, self._text)
            self._front.append(
                Text(place, shown, bold=bold, token=token, full=label, halo=True, slot=row.slot)
            )
        else:
            y = box.y + (box.height - self._text) / 2
            place = Box(box.right, y, column.right - box.right, self._text)
            shown = self._ruler.fitted(label, place.width, bold=bold)
            self._front.append(
                Text(place, shown, bold=bold, token=token, align="right", full=label, slot=row.slot)
            )
        self._values.append(ValuePlace(place, row.machine_id, measure.key))
        if cell.reason:
            self._hints.append(Hint(place, cell.reason))


def _label(cell: Cell) -> str:
    return cell.mark.text if cell.mark is not None else cell.note


def _is_bold(measure: Measure, cell: Cell) -> bool:
    return measure.rank == 0 and cell.mark is not None
