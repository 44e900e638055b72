"""The values of a figure as rows, for the clipboard and for spreadsheets."""

from core.figures.source import numbers_of
from core.figures.values import ComparisonFigure, EnergyTimeFigure, Figure
from core.formatting import number
from core.language import tr

Rows = tuple[tuple[str, ...], ...]


def rows_of(figure: Figure) -> Rows:
    """A heading and a row a machine where the figure has them, else a row for each of its facts."""
    if isinstance(figure, ComparisonFigure):
        titles = (f"{m.axis.title} ({m.axis.unit})" if m.axis.unit else m.axis.title for m in figure.measures)
        body = (
            (
                row.name,
                *(
                    cell.mark.text if cell.mark is not None else cell.note
                    for m in figure.measures
                    for cell in [m.cells[i]]
                ),
            )
            for i, row in enumerate(figure.rows)
        )
        return ((tr("Machine"), *titles), *body)
    if isinstance(figure, EnergyTimeFigure):
        x, y = figure.x, figure.y
        heading = (tr("Machine"), f"{y.title} ({y.unit})", f"{x.title} ({x.unit})")
        marks = ((m.name, number(m.at.y, 2, y.locale), number(m.at.x, 2, x.locale)) for m in figure.marks)
        return (heading, *marks)
    return tuple((clause,) for clause in numbers_of(figure).split("; ") if clause)
