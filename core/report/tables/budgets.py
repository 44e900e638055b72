"""What makes each machine's energy per part unsure, line by line."""

from core.formatting import POINT, percent
from core.found.budgets import LEAST_SHARE, lines
from core.found.values import BudgetLine
from core.publish.sources import Sources
from core.report.tables.cells import MACHINE
from core.results.values import MachineResult
from core.tables import Cell, Column, Table

_TITLE = "Uncertainty budgets"
_RULE = (
    "Standard uncertainties that each source gives the mean energy per part; their squares add up "
    "(JCGM 100:2008, 5.1)."
)
_LEFT_AWAY = f"Lines below {100 * LEAST_SHARE:g} % of the variance are left away."


def budgets_table(sources: Sources) -> Table:
    """One row a line of a budget, in full."""
    columns = (
        MACHINE,
        Column("source", "Source", "left"),
        Column("u_wh", "Standard uncertainty [Wh]", decimals=4),
        Column("variance_percent", "Part of the variance [%]", decimals=1),
        Column("shared_with", "Shared with", "left"),
        Column("what", "What it is", "left"),
    )
    rows: list[tuple[Cell, ...]] = [
        (machine.name, line.name, line.u, 100.0 * line.share_of_variance, line.shared_with, line.why)
        for machine, line in _lines(sources)
    ]
    return Table(_TITLE, columns, tuple(rows), (_RULE,))


def readable_budgets(sources: Sources) -> Table:
    """One row a line of a budget, as people read it."""
    columns = (
        MACHINE,
        Column("source", "Source", "left"),
        Column("u", "Standard uncertainty"),
        Column("share", "Of the variance"),
        Column("shared_with", "Shared with", "left"),
    )
    rows: list[tuple[Cell, ...]] = [
        (machine.name, line.name, line.u_text, percent(line.share_of_variance), line.shared_with)
        for machine, line in _lines(sources)
        if line.share_of_variance >= LEAST_SHARE
    ]
    return Table(_TITLE, columns, tuple(rows), (f"{_RULE} {_LEFT_AWAY}",))


def _lines(sources: Sources) -> list[tuple[MachineResult, BudgetLine]]:
    return [
        (machine, line)
        for machine in sources.comparison.machines
        if machine.energy_wh is not None
        for line in lines(machine.influences, sources.study, POINT)
    ]
