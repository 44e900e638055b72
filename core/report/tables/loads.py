"""What each load takes by the switch-on tests, and what stays unexplained of processing."""

from collections.abc import Iterator

from core.language import mark, tr
from core.loads.names import BY_KEY
from core.publish.sources import Sources
from core.quantities import Quantity
from core.report.tables.cells import machine_column, pair, pair_columns, told
from core.results.load_answer import IDLE_KWH, LOAD_W, conditions, year_kwh
from core.results.loads import LoadWatts
from core.results.values import Measured
from core.tables import Cell, Column, Table

_TITLE = mark("Loads one by one")


def loads_table(sources: Sources) -> Table:
    """One row a load, in full; the sum and what it is held against come last of each machine."""
    columns = (
        machine_column(),
        Column("load", tr("Load"), "left"),
        *pair_columns("watts", tr("Load [W]"), 3),
        Column("runs_while_idle", tr("On while idle"), "left"),
        Column("idle_kwh_a_year", tr("A year of it [kWh]"), decimals=1),
    )
    rows: list[tuple[Cell, ...]] = [
        (
            machine,
            name,
            *pair(watts),
            None if load is None else load.is_idle,
            year_kwh(load) if load is not None and load.is_idle else None,
        )
        for machine, name, watts, load in _rows(sources)
    ]
    return Table(tr(_TITLE), columns, tuple(rows), (conditions(sources.loads, sources.study),))


def readable_loads(sources: Sources) -> Table:
    """One row a load, as people read it."""
    columns = (
        machine_column(),
        Column("load", tr("Load"), "left"),
        Column("watts", tr("Load [W]")),
        Column("idle", tr("On while idle"), "left"),
        Column("year", tr("A year of it [kWh]")),
    )
    rows: list[tuple[Cell, ...]] = [
        (
            machine,
            name,
            told(watts, LOAD_W),
            tr("yes") if load is not None and load.is_idle else "",
            _number(year_kwh(load), IDLE_KWH) if load is not None and load.is_idle else "",
        )
        for machine, name, watts, load in _rows(sources)
    ]
    return Table(tr(_TITLE), columns, tuple(rows))


def _number(value: float, quantity: Quantity) -> str:
    return told(Measured(value, None), quantity)


def _rows(sources: Sources) -> Iterator[tuple[str, str, Measured | None, LoadWatts | None]]:
    for machine in sources.loads.tested:
        for load in machine.loads:
            yield machine.name, BY_KEY[load.load].title, Measured(load.watts, load.u95_w), load
        for name, watts in (
            (tr("sum of the loads in processing"), machine.sum_w),
            (tr("processing as measured"), machine.processing_w),
            (tr("stays unexplained"), machine.unexplained_w),
        ):
            if watts is not None:
                yield machine.name, name, watts, None
