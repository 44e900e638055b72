"""Held beds, and what a cooler bed after the first layers would save."""

from core.language import tr
from core.publish.sources import Sources
from core.report.tables.cells import machine_column, pair, pair_columns
from core.results.bed_table import half_hour_note, holds_table, rows_of, savings_table
from core.tables import Cell, Column, Table
from core.units import SECONDS_PER_MINUTE


def held_table(sources: Sources) -> Table:
    """One row a held temperature, in full."""
    columns = (
        machine_column(),
        Column("bed_c", tr("Bed [°C]"), decimals=1),
        Column("bed_c_known", tr("Bed's temperature by"), "left"),
        Column("room_c", tr("Room [°C]"), decimals=1),
        Column("room_c_known", tr("Room's temperature by"), "left"),
        *pair_columns("bed_w", tr("Bed held [W]"), 2),
        *pair_columns("w_per_dm2", tr("Per area [W/dm²]"), 3),
        Column("floor_w", tr("Least a plate of its size loses [W]"), decimals=2),
        Column("half_hour_w", tr("First half hour, all [W]"), decimals=2),
        Column("full_hour_w", tr("First hour, all [W]"), decimals=2),
        Column("settled_w", tr("Steady, all [W]"), decimals=2),
        Column("is_settled", tr("Settled"), "left"),
        Column("steady_after_min", tr("Steady after [min]"), decimals=1),
        *pair_columns("warm_up_wh", tr("Warm-up [Wh]"), 2),
        *pair_columns("heat_capacity_j_per_k", tr("Heat capacity [J/K]"), 0),
    )
    rows: list[tuple[Cell, ...]] = []
    for machine, held in rows_of(sources.beds):
        steady = held.hold.steady
        after_min = (steady.start_s - held.hold.start_s) / SECONDS_PER_MINUTE
        rows.append(
            (
                machine.name,
                held.bed_c,
                held.bed_known,
                held.room_c,
                held.room_known,
                *pair(held.bed_w),
                *pair(held.w_per_dm2),
                held.floor_w,
                held.hold.half_hour_w,
                held.hold.full_hour_w,
                steady.mean_w,
                steady.is_settled,
                after_min if steady.is_settled else None,
                *pair(held.warm_up_wh),
                *pair(held.heat_capacity),
            )
        )
    return Table(tr("Held temperatures"), columns, tuple(rows), (half_hour_note(sources.beds),))


def readable_held(sources: Sources) -> Table:
    """One row a held temperature, as people read it."""
    table = holds_table(sources.beds)
    return Table(table.title, table.columns, table.rows, (half_hour_note(sources.beds),))


def cooler_table(sources: Sources) -> Table:
    """One row a machine whose bed is known, in full."""
    plan = sources.savings.plan
    columns = (
        machine_column(),
        Column("first_c", tr("First layers at [°C]"), decimals=1),
        Column("later_c", tr("Then at [°C]"), decimals=1),
        Column("first_layers_s", tr("First layers [s]"), decimals=0),
        Column("print_s", tr("Print [s]"), decimals=0),
        *pair_columns("saved_wh", tr("Saved [Wh]"), 2),
        *pair_columns("saved_percent", tr("Of the bed [%]"), 1),
    )
    rows: list[tuple[Cell, ...]] = [
        (
            saving.name,
            plan.first_c,
            plan.later_c,
            plan.first_layers_s,
            plan.print_s,
            *pair(saving.saved_wh),
            *pair(saving.saved_share, 100.0),
        )
        for saving in sources.savings.machines
    ]
    return Table(tr("A cooler bed after the first layers"), columns, tuple(rows))


def readable_cooler(sources: Sources) -> Table:
    """One row a machine, as people read it, with what it is in money where that is known."""
    return savings_table(
        sources.savings, price_per_kwh=sources.costs.mean_per_kwh, currency=sources.costs.currency
    )
