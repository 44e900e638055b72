"""Rows of a figure in the order that a person chose."""

from collections.abc import Sequence

from attrs import evolve

from core.figures.calendar_values import CalendarFigure, CalendarRow
from core.figures.values import ComparisonFigure, Figure


def in_order(figure: Figure, machine_ids: Sequence[str]) -> Figure:
    """The figure with its rows in the order of these machines; others keep their order after them.

    Figures without rows have no order, and are returned as they are. A bracket over rows without a difference
    is kept wherever its machines still stand beside each other.
    """
    if isinstance(figure, ComparisonFigure):
        return _rows_in_order(figure, machine_ids)
    if isinstance(figure, CalendarFigure):
        places = {m: i for i, m in enumerate(machine_ids)}
        rows: list[CalendarRow] = sorted(figure.rows, key=lambda row: places.get(row.machine_id, len(places)))
        return evolve(figure, rows=tuple(rows))
    return figure


def _rows_in_order(figure: ComparisonFigure, machine_ids: Sequence[str]) -> ComparisonFigure:
    places = {m: i for i, m in enumerate(machine_ids)}
    order = sorted(range(len(figure.rows)), key=lambda i: places.get(figure.rows[i].machine_id, len(places)))
    tied = [set(range(first, last + 1)) for first, last in figure.ties]
    return evolve(
        figure,
        rows=tuple(figure.rows[i] for i in order),
        measures=tuple(evolve(m, cells=tuple(m.cells[i] for i in order)) for m in figure.measures),
        ties=_stretches(order, tied),
    )


def _stretches(order: Sequence[int], tied: Sequence[set[int]]) -> tuple[tuple[int, int], ...]:
    """Stretches of neighbours that all lie within one group, none inside another."""
    found: list[tuple[int, int]] = []
    for group in tied:
        first = 0
        while first < len(order):
            last = first
            while last < len(order) and order[last] in group:
                last += 1
            if last - first > 1:
                found.append((first, last - 1))
            first = max(last, first + 1)
    whole = sorted(set(found))
    return tuple(
        (a, b) for a, b in whole if not any((c, d) != (a, b) and c <= a and b <= d for c, d in whole)
    )
