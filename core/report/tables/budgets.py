"""What makes each machine's energy per part unsure, line by line."""

from core.formatting import POINT, percent
from core.found.budgets import LEAST_SHARE, lines
from core.found.values import BudgetLine
from core.language import mark, tr
from core.publish.sources import Sources
from core.report.tables.cells import machine_column
from core.results.values import MachineResult
from core.tables import Cell, Column, Table

_TITLE = mark("Uncertainty budgets")
_RULE = mark(
    "Standard uncertainties that each source gives the mean energy per part; their squares add up (JCGM "
    "100:2008, 5.1)."
)


def budgets_table(sources: Sources) -> Table:
    """One row a line of a budget, in full."""
    columns = (
        machine_column(),
        Column("source", tr("Source"), "left"),
        Column("u_wh", tr("Standard uncertainty [Wh]"), decimals=4),
        Column("variance_percent", tr("Part of the variance [%]"), decimals=1),
        Column("shared_with", tr("Shared with"), "left"),
        Column("what", tr("What it is"), "left"),
    )
    rows: list[tuple[Cell, ...]] = [
        (machine.name, line.title, line.u, 100.0 * line.share_of_variance, line.shared_with, line.why)
        for machine, line in _lines(sources)
    ]
    return Table(tr(_TITLE), columns, tuple(rows), (tr(_RULE),))


def readable_budgets(sources: Sources) -> Table:
    """One row a line of a budget, as people read it."""
    columns = (
        machine_column(),
        Column("source", tr("Source"), "left"),
        Column("u", tr("Standard uncertainty")),
        Column("share", tr("Of the variance")),
        Column("shared_with", tr("Shared with"), "left"),
    )
    rows: list[tuple[Cell, ...]] = [
        (machine.name, line.title, line.u_text, percent(line.share_of_variance), line.shared_with)
        for machine, line in _lines(sources)
        if line.share_of_variance >= LEAST_SHARE
    ]
    left_away = tr(
        "Lines below {percents} % of the variance are left away.", percents=f"{100 * LEAST_SHARE:g}"
    )
    return Table(tr(_TITLE), columns, tuple(rows), (f"{tr(_RULE)} {left_away}",))


def _lines(sources: Sources) -> list[tuple[MachineResult, BudgetLine]]:
    return [
        (machine, line)
        for machine in sources.comparison.machines
        if machine.energy_wh is not None
        for line in lines(machine.influences, sources.study, POINT)
    ]
