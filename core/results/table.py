"""The comparison as tables: one row a machine, one row a run, and what is not alike."""

from core.formatting import POINT, UNKNOWN, NumberLocale, count, with_interval
from core.quantities import QUANTITIES, Quantity
from core.results.values import Comparison, Measured
from core.tables import Cell, Column, Table
from core.wording import sentence


def comparison_table(comparison: Comparison) -> Table:
    """One row a machine, in the comparison's order, with the half-widths of the 95 % intervals."""
    columns = [Column("machine", "Machine", "left"), Column("runs", "Runs", decimals=0)]
    for q in QUANTITIES:
        columns.append(Column(_key(q), _title(q), decimals=q.decimals))
        if q.key != "standby_w":
            columns.append(Column(f"{_key(q)}_u95", "±", decimals=max(1, q.decimals)))
    rows = []
    for machine in comparison.machines:
        row: list[Cell] = [machine.name, len(machine.included)]
        for q in QUANTITIES:
            known = getattr(machine, q.key)
            if q.key == "standby_w":
                row.append(None if known is None else known * q.factor)
            else:
                row += _pair(known, q)
        rows.append(tuple(row))
    return Table("Comparison", tuple(columns), tuple(rows), (comparison.headline, comparison.conditions))


def readable_table(comparison: Comparison, locale: NumberLocale = POINT) -> Table:
    """The comparison as people read it: every value rounded by its interval and written with it."""
    columns = [
        Column("machine", "Machine", "left"),
        Column("runs", "Runs", decimals=0),
        *(Column(q.key, _title(q)) for q in QUANTITIES),
    ]
    rows = []
    for machine in comparison.machines:
        row: list[Cell] = [machine.name, len(machine.included)]
        for q in QUANTITIES:
            known = getattr(machine, q.key)
            measured = known if isinstance(known, Measured) or known is None else Measured(known, None)
            row.append(
                UNKNOWN if measured is None else with_interval(measured.value, measured.u95, q, locale)
            )
        rows.append(tuple(row))
    return Table("Comparison", tuple(columns), tuple(rows), (comparison.headline, comparison.conditions))


def runs_table(comparison: Comparison) -> Table:
    """One row a stretch that was found or typed in, with why it does not count where it does not."""
    columns = (
        Column("machine", "Machine", "left"),
        Column("run", "Run", "left"),
        Column("start", "Start", "left"),
        Column("included", "Counts", "left"),
        Column("why_excluded", "Why not", "left"),
        Column("energy_wh", "Energy [Wh]", decimals=2),
        Column("energy_wh_u95", "±", decimals=2),
        Column("seconds", "Duration [s]", decimals=0),
        Column("mean_w", "Mean power [W]", decimals=1),
        Column("parts_per_kwh", "Parts per kWh", decimals=1),
        Column("bed_share_percent", "Bed share [%]", decimals=0),
        Column("bed_share_percent_u95", "±", decimals=1),
        Column("bed_method", "Bed by", "left"),
        Column("energy_method", "Energy by", "left"),
    )
    rows = []
    for machine in comparison.machines:
        for run in machine.runs:
            bed = run.bed
            rows.append(
                (
                    machine.name,
                    run.name,
                    run.start or ("" if run.start_s is None else f"{run.start_s:.0f} s"),
                    run.included,
                    run.why_excluded or "",
                    run.energy_wh,
                    run.energy_u95_wh,
                    run.seconds,
                    run.mean_w,
                    run.parts_per_kwh,
                    None if bed is None or bed.share is None else 100 * bed.share,
                    None if bed is None or bed.share_u95 is None else 100 * bed.share_u95,
                    bed.method if bed is not None and bed.share is not None else "",
                    run.energy.method if run.energy is not None else "",
                )
            )
    return Table("Runs", columns, tuple(rows))


def fairness_table(comparison: Comparison) -> Table:
    """What differs between the compared runs, and what to do about it."""
    names = {m.machine_id: m.name for m in comparison.machines}
    columns = (
        Column("level", "Level", "left"),
        Column("machines", "Machines", "left"),
        Column("finding", "Finding", "left"),
        Column("matters_wh", "Could matter [Wh]", decimals=2),
    )
    rows = tuple(
        (f.level, ", ".join(names[m] for m in f.machine_ids), sentence(f.problem), f.matters_wh)
        for f in comparison.fairness
    )
    return Table("Fairness", columns, rows, (count(len(rows), "finding") + ".",))


def _key(q: Quantity) -> str:
    return {"seconds": "minutes", "bed_share": "bed_share_percent"}.get(q.key, q.key)


def _title(q: Quantity) -> str:
    return f"{q.name} [{q.unit}]" if q.unit else q.name


def _pair(known: Measured | None, q: Quantity) -> list[Cell]:
    if known is None:
        return [None, None]
    return [known.value * q.factor, None if known.u95 is None else known.u95 * q.factor]
