"""A calendar of operating states: one row a week, Monday to Sunday on the local clock."""

from datetime import date

from attrs import frozen

from core.costs.weeks import Block
from core.language import mark, tr

_MONTHS = (
    mark("Jan"),
    mark("Feb"),
    mark("Mar"),
    mark("Apr"),
    mark("May"),
    mark("Jun"),
    mark("Jul"),
    mark("Aug"),
    mark("Sep"),
    mark("Oct"),
    mark("Nov"),
    mark("Dec"),
)


@frozen
class CalendarRow:
    """A week of a machine. ``name`` is empty where it would only say the row above again."""

    machine_id: str
    name: str
    slot: int
    week: str
    blocks: tuple[Block, ...]


@frozen
class CalendarFigure:
    """Weeks of machines.

    Parameters
    ----------
    rows : tuple of CalendarRow
    legend : tuple of (State, str)
        How states are called, in the order of their height.
    facts : tuple of str
        Hours in each state, a clause a machine.
    unshown : int
        Earlier weeks for which there is no row.
    """

    headline: str
    conditions: str
    source: str
    rows: tuple[CalendarRow, ...]
    legend: tuple[tuple[str, str], ...]
    facts: tuple[str, ...]
    unshown: int = 0


def week_text(monday: date) -> str:
    """A week by the day on which it begins."""
    return tr("{day} {month}", day=str(monday.day), month=tr(_MONTHS[monday.month - 1]))
