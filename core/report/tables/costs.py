"""Standby of a year, hours in operating states, and a print taken apart."""

from core.costs.money import money
from core.costs.standby import STATES
from core.formatting import POINT, UNKNOWN, capitalised, number
from core.language import mark, tr
from core.publish.sources import Sources
from core.quantities import STANDBY_KWH, STANDBY_MEAN_W
from core.report.tables.cells import machine_column, pair, pair_columns, told
from core.results.cost_tables import hours_table, print_note, print_table
from core.results.cost_values import MachineCost
from core.results.values import Measured
from core.tables import Cell, Column, Table
from core.units import WH_PER_KWH

#: what a print's price is made of, by its name in files
_AMOUNTS = (
    ("electricity", mark("Electricity")),
    ("material", mark("Material")),
    ("wear", mark("Wear")),
    ("purchase", mark("Purchase")),
    ("failed", mark("Failed")),
)


def standby_table(sources: Sources) -> Table:
    """One row a machine whose standby is known, in full."""
    sign = _sign(sources)
    columns = (
        machine_column(),
        Column("count", tr("Machines of this kind"), decimals=0),
        *pair_columns("standby_w", tr("Standby power [W]"), 3),
        Column("is_steady", tr("Steady"), "left"),
        Column("idle_hours", tr("Idle in a year [h]"), decimals=0),
        *pair_columns("year_kwh", tr("Standby of a year [kWh]"), 2),
        *pair_columns("year_cost", f"{tr('Cost of it')}{sign}", 2),
        Column("saved_percent", _off_title(sources), decimals=1),
    )
    rows: list[tuple[Cell, ...]] = [
        (
            m.name,
            m.count,
            *pair(_standby(m)),
            None if m.standby is None else m.standby.is_steady,
            m.idle_hours,
            *pair(m.year_kwh),
            *pair(m.year_cost),
            _saved_percent(m, sources),
        )
        for m in sources.costs.machines
        if m.standby is not None
    ]
    return Table(_standby_title(sources), columns, tuple(rows))


def readable_standby(sources: Sources) -> Table:
    """One row a machine, as people read it."""
    costs = sources.costs
    columns = (
        machine_column(),
        Column("standby_w", tr("Standby power [W]")),
        Column("idle_hours", tr("Idle in a year [h]")),
        Column("year_kwh", tr("Standby of a year [kWh]")),
        Column("year_cost", f"{tr('Cost of it')}{_sign(sources)}"),
        Column("saved", _off_title(sources)),
    )
    rows: list[tuple[Cell, ...]] = []
    for m in costs.machines:
        saved = _saved_percent(m, sources)
        if m.standby is not None:
            rows.append(
                (
                    m.name,
                    told(_standby(m), STANDBY_MEAN_W),
                    number(m.idle_hours, 0),
                    told(m.year_kwh, STANDBY_KWH),
                    UNKNOWN if m.year_cost is None else money(m.year_cost.value, "", POINT, m.year_cost.u95),
                    tr("not known") if saved is None else number(saved, 0),
                )
            )
    return Table(_standby_title(sources), columns, tuple(rows))


def hours_data(sources: Sources) -> Table:
    """Hours of each machine's logs in each operating state, in full."""
    columns = (
        machine_column(),
        Column("log_hours", tr("Log [h]"), decimals=2),
        *(
            Column(f"{state}_hours", tr("{state} [h]", state=capitalised(tr(state))), decimals=3)
            for state in STATES
        ),
        Column("longest_rest_s", tr("Longest rest [s]"), decimals=0),
    )
    rows: list[tuple[Cell, ...]] = [
        (
            m.name,
            m.logged_hours,
            *(dict(m.hours)[state] for state in STATES),
            m.rests.longest_s if m.rests.count else None,
        )
        for m in sources.costs.machines
        if m.files
    ]
    return Table(tr("Hours in each operating state"), columns, tuple(rows))


def readable_hours(sources: Sources) -> Table:
    """The same, as people read it."""
    return hours_table(sources.costs)


def print_data(sources: Sources) -> Table:
    """The print taken apart, in full."""
    sign = _sign(sources)
    columns = (
        machine_column(),
        Column("print_hours", tr("Print [h]"), decimals=2),
        Column("warm_up_wh", tr("Warm-up [Wh]"), decimals=2),
        Column("processing_w", tr("Processing [W]"), decimals=2),
        *pair_columns("print_kwh", tr("Energy [kWh]"), 4),
        *(Column(f"{name}_price", f"{tr(title)}{sign}", decimals=4) for name, title in _AMOUNTS),
        Column("price", f"{tr('Price')}{sign}", decimals=4),
        Column("co2_g", tr("CO₂ [g]"), decimals=0),
        *pair_columns("part_cost", f"{tr('Electricity of a part')}{sign}", 5),
    )
    rows: list[tuple[Cell, ...]] = [
        (
            m.name,
            sources.costs.costs.print_hours,
            m.printed.warm_up_wh,
            m.printed.processing_w,
            *pair(m.printed.energy, 1.0 / WH_PER_KWH),
            *(getattr(m.price, name) for name, _ in _AMOUNTS),
            m.price.total,
            m.co2_g,
            *pair(m.part_cost),
        )
        for m in sources.costs.machines
        if m.printed is not None
    ]
    return Table(tr("A print taken apart"), columns, tuple(rows), (print_note(sources.costs),))


def readable_print(sources: Sources) -> Table:
    """The same, as people read it."""
    table = print_table(sources.costs)
    title = tr("A print of {hours} h taken apart", hours=number(sources.costs.costs.print_hours, 1))
    return Table(title, table.columns, table.rows, (print_note(sources.costs),))


def _sign(sources: Sources) -> str:
    return f" [{sources.costs.currency}]" if sources.costs.currency else ""


def _standby_title(sources: Sources) -> str:
    return tr("Standby in {year}", year=sources.costs.year)


def _off_title(sources: Sources) -> str:
    minutes = number(sources.costs.costs.off_after_min, 0)
    return tr("Saved by switching off after {minutes} min [%]", minutes=minutes)


def _standby(machine: MachineCost) -> Measured | None:
    return None if machine.standby is None else Measured(machine.standby.power_w, machine.standby.u95_w)


def _saved_percent(machine: MachineCost, sources: Sources) -> float | None:
    """Where a rest in the logs is long enough to judge by; as on the page."""
    minutes = sources.costs.costs.off_after_min
    share = machine.rests.share_after(minutes)
    if share is None or not machine.tells_saving_after(minutes):
        return None
    return 100.0 * share
