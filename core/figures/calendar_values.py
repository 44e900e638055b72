"""A calendar of operating states: one row a week, Monday to Sunday on the local clock."""

from attrs import frozen

from core.costs.weeks import Block


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
