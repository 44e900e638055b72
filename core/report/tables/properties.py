"""What is known of the machines themselves: one row a machine, one column a property."""

from attrs import evolve

from core.beds.supply import SUPPLIES
from core.language import tr
from core.properties.table import columns_of
from core.publish.sources import Sources
from core.report.tables.cells import machine_column
from core.tables import Cell, Column, Table

#: digits of a number that a person typed in; fewer where it has fewer
_DECIMALS = 2


def readable_properties(sources: Sources) -> Table:
    """The same with numbers as they were typed in, and the words of the program in the language spoken."""
    table = properties_table(sources)
    rows: list[tuple[Cell, ...]] = [tuple(_as_typed(cell) for cell in row) for row in table.rows]
    headings = {c.name: c.heading for c in columns_of(sources.study)}
    columns = tuple(evolve(c, title=headings.get(c.title, c.title)) for c in table.columns)
    return Table(table.title, columns, tuple(rows))


def _as_typed(cell: Cell) -> Cell:
    if isinstance(cell, str) and cell in SUPPLIES:
        return tr(cell)
    return f"{cell:g}" if isinstance(cell, float) else cell


def properties_table(sources: Sources) -> Table:
    """The properties as the user noted them; no rows where there is none."""
    names = list(dict.fromkeys(name for m in sources.study.machines for name, _ in m.properties))
    columns: list[Column] = [machine_column()]
    for name in names:
        values = [dict(m.properties).get(name) for m in sources.study.machines]
        is_number = any(isinstance(v, float | int) and not isinstance(v, bool) for v in values)
        columns.append(Column(name, name, "right" if is_number else "left", _DECIMALS if is_number else None))
    rows: list[tuple[Cell, ...]] = [
        (machine.name, *(dict(machine.properties).get(name) for name in names))
        for machine in sources.study.machines
    ]
    return Table(tr("Properties of the machines"), tuple(columns), tuple(rows) if names else ())
