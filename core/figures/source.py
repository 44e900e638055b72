"""The numbers a picture was drawn from, as text to travel inside its file."""

from core import __version__
from core.figures.calendar_values import CalendarFigure
from core.figures.curve_values import CurvesFigure
from core.figures.line_up_values import LineUpFigure
from core.figures.values import ComparisonFigure, EnergyTimeFigure, Figure
from core.formatting import listed, number
from core.language import tr


def maker() -> str:
    """The program that draws, with its version."""
    return f"Samepart {__version__}"


def with_maker(source: str) -> str:
    """Whose numbers a picture shows, and which version of the program drew it.

    Examples
    --------
    >>> with_maker("Hose clip study").startswith("Hose clip study; made with Samepart ")
    True
    """
    made = tr("made with {program}", program=maker())
    return f"{source}; {made}" if source else made


def numbers_of(figure: Figure) -> str:
    """One clause a machine: its values with their intervals and units."""
    if isinstance(figure, ComparisonFigure):
        return "; ".join(_row(figure, i) for i in range(len(figure.rows)))
    if isinstance(figure, LineUpFigure | CurvesFigure | CalendarFigure):
        return "; ".join(figure.facts)
    return "; ".join(_mark(figure, i) for i in range(len(figure.marks)))


def _row(figure: ComparisonFigure, i: int) -> str:
    values = [
        f"{m.axis.title} {cell.mark.text if cell.mark is not None else cell.note} {unit}".strip()
        for m in figure.measures
        for cell in [m.cells[i]]
        for unit in [m.axis.unit if cell.mark is not None else ""]
    ]
    row = figure.rows[i]
    return f"{row.name} ({row.runs_text}): {', '.join(values)}"


def _mark(figure: EnergyTimeFigure, i: int) -> str:
    mark = figure.marks[i]
    values = [
        f"{number(mark.at.y, 2)} {figure.y.unit}",
        f"{number(mark.at.x, 2)} {figure.x.unit}",
    ]
    return f"{mark.name}: {listed(values)}"
