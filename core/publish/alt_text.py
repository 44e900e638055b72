"""What a figure shows, in words: for readers who cannot see the picture, made from the figure's values.

Rules: what kind of chart it is comes first, then what the data say, then the values with their units; with
many machines the ends are named and the others counted, because nobody listens to thirty rows.
"""

from collections.abc import Sequence

import numpy as np

from core.figures.calendar_values import CalendarFigure
from core.figures.curve_values import CurvesFigure, NamedScale
from core.figures.line_up_values import LineUpFigure, Scale
from core.figures.values import Axis, ComparisonFigure, EnergyTimeFigure, Figure, Measure
from core.formatting import listed, number
from core.language import WRITTEN_IN, spoken, tr

#: of so many machines every value is told
_ALL_TOLD = 8
_SENTENCES = ".!?"


def alt_text(figure: Figure) -> str:
    """What a figure shows, in whole sentences."""
    if isinstance(figure, ComparisonFigure):
        parts = _comparison(figure)
    elif isinstance(figure, EnergyTimeFigure):
        parts = _energy_time(figure)
    elif isinstance(figure, LineUpFigure):
        parts = _line_up(figure)
    elif isinstance(figure, CalendarFigure):
        parts = _calendar(figure)
    else:
        parts = _curves(figure)
    return " ".join(_sentence(part) for part in (*parts, figure.conditions) if part)


def _sentence(text: str) -> str:
    text = " ".join(text.split())
    return text if text[-1:] in _SENTENCES else f"{text}."


def _comparison(figure: ComparisonFigure) -> list[str]:
    titles = [_lower(m.axis.title) for m in figure.measures]
    rows = _rows(figure, len(figure.rows))
    what = tr(
        "Chart with one row for each of {rows} and one column each for {titles}",
        rows=rows,
        titles=listed(titles),
    )
    parts = [what, figure.headline]
    parts += [_measure(figure, measure) for measure in figure.measures]
    for first, last in figure.ties:
        names = listed([row.name for row in figure.rows[first : last + 1]])
        parts.append(tr("A bracket joins {names}: no difference between them is shown", names=names))
    left_out = sum(not dot.included for m in figure.measures[:1] for c in m.cells for dot in c.dots)
    if left_out:
        parts.append(
            tr(
                "{count:hollow dot is a run|hollow dots are runs} left out of the means",
                count=left_out,
            )
        )
    return parts


def _measure(figure: ComparisonFigure, measure: Measure) -> str:
    """Every value of a column, or its ends where there are many."""
    known = [
        (row.name, cell.mark)
        for row, cell in zip(figure.rows, measure.cells, strict=True)
        if cell.mark is not None
    ]
    title, unit = measure.axis.title, measure.axis.unit
    notes = [
        f"{row.name} ({cell.note})"
        for row, cell in zip(figure.rows, measure.cells, strict=True)
        if cell.mark is None and cell.note
    ]
    if not known:
        return f"{title}: {listed(notes)}" if 0 < len(notes) <= _ALL_TOLD else ""
    if len(known) <= _ALL_TOLD:
        told = [f"{name} {mark.text} {unit}".strip() for name, mark in known]
        return f"{title}: {listed([*told, *notes[:_ALL_TOLD]])}"
    least = min(known, key=lambda item: item[1].value)
    most = max(known, key=lambda item: item[1].value)
    ends = tr(
        "{title}: from {least} {unit} for {first} to {most} {unit} for {last}",
        title=title,
        least=least[1].text,
        first=least[0],
        most=most[1].text,
        last=most[0],
        unit=unit,
    )
    ends = " ".join(ends.split())
    unknown = len(figure.rows) - len(known)
    if not unknown:
        return ends
    return tr("{ends}; not known for {rows}", ends=ends, rows=_rows(figure, unknown))


def _rows(figure: ComparisonFigure, rows: int) -> str:
    """So many rows, with the word for what a row is."""
    if figure.row_word == "point":
        return tr("{count:point|points}", count=rows)
    return tr("{count:machine|machines}", count=rows)


def _energy_time(figure: EnergyTimeFigure) -> list[str]:
    what = tr("Chart of {y} against {x}, both from zero", y=_axis(figure.y), x=_axis(figure.x))
    parts = [what, figure.headline]
    marks = figure.marks
    if len(marks) > _ALL_TOLD:
        ys, xs = [m.at.y for m in marks], [m.at.x for m in marks]
        parts.append(
            tr(
                "{count:machine|machines} lie between {low} and {high}, {shortest} and {longest}",
                count=len(marks),
                low=_value(min(ys), figure.y),
                high=_value(max(ys), figure.y),
                shortest=_value(min(xs), figure.x),
                longest=_value(max(xs), figure.x),
            )
        )
    elif marks:
        told = [
            tr(
                "{machine} {value} in {time}",
                machine=m.name,
                value=_value(m.at.y, figure.y),
                time=_value(m.at.x, figure.x),
            )
            for m in marks
        ]
        parts.append(listed(told))
    if figure.lines:
        watts = [line.text for line in figure.lines]
        parts.append(tr("Dashed lines through zero are equal mean power: {watts}", watts=listed(watts)))
    return parts


def _line_up(figure: LineUpFigure) -> list[str]:
    machines = list(dict.fromkeys(s.machine for s in figure.strands))
    who = (
        listed(machines)
        if len(machines) <= _ALL_TOLD
        else tr("{count:machine|machines}", count=len(machines))
    )
    quantities = list(
        dict.fromkeys(
            tr("{title} in {unit}", title=_lower(p.y.title, whole=True), unit=p.y.unit) for p in figure.panels
        )
    )
    what = tr(
        "Chart of {quantities} against {x}, {runs:run|runs} of {machines}",
        quantities=listed(quantities),
        x=_scale(figure.x),
        runs=len(figure.strands),
        machines=who,
    )
    parts = [what, figure.headline]
    parts += list(figure.facts[:_ALL_TOLD])
    if len(figure.facts) > _ALL_TOLD:
        more = len(figure.facts) - _ALL_TOLD
        parts.append(tr("{count:more machine|more machines} not told here", count=more))
    left = [x.text for panel in figure.panels for x in panel.excursions]
    if left:
        parts.append("; ".join(dict.fromkeys(left[:_ALL_TOLD])))
    return parts


def _curves(figure: CurvesFigure) -> list[str]:
    what = (
        tr("Chart of {y} step by step", y=_scale(figure.y))
        if isinstance(figure.x, NamedScale)
        else tr("Chart of {y} against {x}", y=_scale(figure.y), x=_scale(figure.x))
    )
    parts = [what, figure.headline]
    facts = [fact for fact in figure.facts if fact.rstrip(".") != figure.headline.rstrip(".")]
    parts += facts[:_ALL_TOLD]
    if len(facts) > _ALL_TOLD:
        more = len(facts) - _ALL_TOLD
        parts.append(tr("{count:more line|more lines} not told here", count=more))
    if isinstance(figure.x, NamedScale):
        names = dict(figure.x.ticks(len(figure.x.names)))
        ends = [f"{names[s.x]}: {s.name} {figure.y.unit}" for s in figure.spots if s.x in names and s.name]
        parts[2:2] = ends
    elif not facts:
        parts += _courses(figure)
    return parts


def _courses(figure: CurvesFigure) -> list[str]:
    """From where to where each named curve runs, where the figure says no more of it."""
    told: list[str] = []
    for trend in figure.trends:
        if trend.name and len(trend.y) > 1 and len(told) < _ALL_TOLD:
            first, last = (_plain(v, figure.y) for v in (trend.y[0], trend.y[-1]))
            told.append(tr("{name}: from {first} to {last}", name=trend.name, first=first, last=last))
    return told


def _calendar(figure: CalendarFigure) -> list[str]:
    machines = list(dict.fromkeys(row.machine_id for row in figure.rows))
    what = tr(
        "Calendar of operating states by hour, one row a week from Monday to Sunday: {weeks:week|weeks} of "
        "{machines:machine|machines}",
        weeks=len(figure.rows),
        machines=len(machines),
    )
    parts = [what, figure.headline, *figure.facts[:_ALL_TOLD]]
    if figure.unshown:
        parts.append(tr("{count:earlier week|earlier weeks} not shown", count=figure.unshown))
    return parts


def _axis(axis: Axis) -> str:
    return tr("{title} in {unit}", title=_lower(axis.title), unit=axis.unit)


def _scale(scale: Scale) -> str:
    title = _lower(scale.title)
    return tr("{title} in {unit}", title=title, unit=scale.unit) if scale.unit else title


def _lower(title: str, *, whole: bool = False) -> str:
    """A title as it stands within an English sentence; other languages have capitals inside."""
    if spoken() != WRITTEN_IN:
        return title
    return title.lower() if whole else title[:1].lower() + title[1:]


def _value(value: float, axis: Axis) -> str:
    return f"{number(value, _decimals(axis.top), axis.locale)} {axis.unit}"


def _plain(value: float, scale: Scale) -> str:
    return f"{number(value, _decimals(scale.high - scale.low), scale.locale)} {scale.unit}".strip()


def _decimals(span: float) -> int:
    """Digits after the point that tell about three hundred places of an axis apart."""
    return max(0, 2 - int(np.floor(np.log10(span)))) if span > 0 else 0


def several(texts: Sequence[str]) -> str:
    """Words for a picture of several figures, one after another."""
    if len(texts) == 1:
        return texts[0]
    return " ".join(
        tr("Chart {place} of {of}: {text}", place=place, of=len(texts), text=text)
        for place, text in enumerate(texts, start=1)
    )
