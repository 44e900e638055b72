"""Cells that tables of several pages share: a value with its interval, in a column each or in one."""

from core.formatting import UNKNOWN, with_interval
from core.language import tr
from core.quantities import Quantity
from core.results.values import Measured
from core.tables import Cell, Column


def machine_column() -> Column:
    """The column of machines."""
    return Column("machine", tr("Machine"), "left")


def pair_columns(key: str, title: str, decimals: int) -> tuple[Column, Column]:
    """A value's column and that of its half-width."""
    return Column(key, title, decimals=decimals), Column(f"{key}_u95", "±", decimals=decimals)


def pair(known: Measured | None, factor: float = 1.0) -> tuple[Cell, Cell]:
    """A value and its half-width, each times `factor`; unknown is None."""
    if known is None:
        return None, None
    return known.value * factor, None if known.u95 is None else known.u95 * factor


def told(known: Measured | None, quantity: Quantity) -> str:
    """A value rounded by its interval, with it, without the unit."""
    return UNKNOWN if known is None else with_interval(known.value, known.u95, quantity)
