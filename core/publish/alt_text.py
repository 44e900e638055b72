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
from core.formatting import count, listed, number

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
    what = f"Chart with one row for each of {count(len(figure.rows), figure.row_word)}"
    parts = [f"{what} and one column each for {listed(titles)}", figure.headline]
    parts += [_measure(figure, measure) for measure in figure.measures]
    for first, last in figure.ties:
        names = listed([row.name for row in figure.rows[first : last + 1]])
        parts.append(f"A bracket joins {names}: no difference between them is shown")
    left_out = sum(not dot.included for m in figure.measures[:1] for c in m.cells for dot in c.dots)
    if left_out:
        parts.append(
            f"{count(left_out, 'hollow dot is a run', 'hollow dots are runs')} left out of the means"
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
    ends = f"from {least[1].text} {unit} for {least[0]} to {most[1].text} {unit} for {most[0]}"
    unknown = len(figure.rows) - len(known)
    more = f"; not known for {count(unknown, figure.row_word)}" if unknown else ""
    return f"{title}: {' '.join(ends.split())}{more}"


def _energy_time(figure: EnergyTimeFigure) -> list[str]:
    parts = [f"Chart of {_axis(figure.y)} against {_axis(figure.x)}, both from zero", figure.headline]
    marks = figure.marks
    if len(marks) > _ALL_TOLD:
        ys, xs = [m.at.y for m in marks], [m.at.x for m in marks]
        parts.append(
            f"{count(len(marks), 'machine')} lie between {_value(min(ys), figure.y)} "
            f"and {_value(max(ys), figure.y)}, {_value(min(xs), figure.x)} and {_value(max(xs), figure.x)}"
        )
    elif marks:
        told = [f"{m.name} {_value(m.at.y, figure.y)} in {_value(m.at.x, figure.x)}" for m in marks]
        parts.append(listed(told))
    if figure.lines:
        watts = [line.text for line in figure.lines]
        parts.append(f"Dashed lines through zero are equal mean power: {listed(watts)}")
    return parts


def _line_up(figure: LineUpFigure) -> list[str]:
    machines = list(dict.fromkeys(s.machine for s in figure.strands))
    who = listed(machines) if len(machines) <= _ALL_TOLD else count(len(machines), "machine")
    quantities = list(dict.fromkeys(f"{p.y.title.lower()} in {p.y.unit}" for p in figure.panels))
    parts = [
        f"Chart of {listed(quantities)} against {_scale(figure.x)}, "
        f"{count(len(figure.strands), 'run')} of {who}",
        figure.headline,
    ]
    parts += list(figure.facts[:_ALL_TOLD])
    if len(figure.facts) > _ALL_TOLD:
        parts.append(f"{count(len(figure.facts) - _ALL_TOLD, 'more machine')} not told here")
    left = [x.text for panel in figure.panels for x in panel.excursions]
    if left:
        parts.append("; ".join(dict.fromkeys(left[:_ALL_TOLD])))
    return parts


def _curves(figure: CurvesFigure) -> list[str]:
    across = "step by step" if isinstance(figure.x, NamedScale) else f"against {_scale(figure.x)}"
    parts = [f"Chart of {_scale(figure.y)} {across}", figure.headline]
    facts = [fact for fact in figure.facts if fact.rstrip(".") != figure.headline.rstrip(".")]
    parts += facts[:_ALL_TOLD]
    if len(facts) > _ALL_TOLD:
        parts.append(f"{count(len(facts) - _ALL_TOLD, 'more line')} not told here")
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
            told.append(f"{trend.name}: from {first} to {last}")
    return told


def _calendar(figure: CalendarFigure) -> list[str]:
    machines = list(dict.fromkeys(row.machine_id for row in figure.rows))
    parts = [
        f"Calendar of operating states by hour, one row a week from Monday to Sunday: "
        f"{count(len(figure.rows), 'week')} of {count(len(machines), 'machine')}",
        figure.headline,
        *figure.facts[:_ALL_TOLD],
    ]
    if figure.unshown:
        parts.append(f"{count(figure.unshown, 'earlier week')} not shown")
    return parts


def _axis(axis: Axis) -> str:
    return f"{_lower(axis.title)} in {axis.unit}"


def _scale(scale: Scale) -> str:
    return f"{_lower(scale.title)} in {scale.unit}" if scale.unit else _lower(scale.title)


def _lower(title: str) -> str:
    return title[:1].lower() + title[1:]


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
    return " ".join(f"Chart {place} of {len(texts)}: {text}" for place, text in enumerate(texts, start=1))
