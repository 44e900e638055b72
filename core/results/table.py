"""The comparison as tables: one row a machine, one row a run, and what is not alike.

Rules: in tables in full, which other programs read, a word that tells a kind stays the program's own.
"""

import math
from datetime import datetime

from attrs import evolve

from core.formatting import POINT, UNKNOWN, NumberLocale, number, with_interval
from core.language import tr
from core.quantities import (
    BED_SHARE,
    DURATION,
    ENERGY,
    MEAN_W,
    PARTS_PER_KWH,
    QUANTITIES,
    STANDBY_W,
    Quantity,
)
from core.results.values import Comparison, MachineResult, Measured, RunResult
from core.tables import Cell, Column, Table
from core.wording import sentence

_OF_A_RUN = (ENERGY, PARTS_PER_KWH, MEAN_W, DURATION, BED_SHARE)


def comparison_table(comparison: Comparison) -> Table:
    """One row a machine, in the comparison's order, with the half-widths of the 95 % intervals."""
    columns = [Column("machine", tr("Machine"), "left"), Column("runs", tr("Runs"), decimals=0)]
    for q in QUANTITIES:
        columns.append(Column(_key(q), _title(q), decimals=q.decimals))
        columns.append(Column(f"{_key(q)}_u95", "±", decimals=max(1, q.decimals)))
    columns.append(Column("standby_way", tr("Standby by"), "left"))
    rows = []
    for machine in comparison.machines:
        row: list[Cell] = [machine.name, len(machine.included)]
        for q in QUANTITIES:
            row += _pair(getattr(machine, q.key), q)
        row.append(machine.standby_way or "")
        rows.append(tuple(row))
    return Table(tr("Comparison"), tuple(columns), tuple(rows), (comparison.headline, comparison.conditions))


def readable_table(comparison: Comparison, locale: NumberLocale = POINT) -> Table:
    """The comparison as people read it: every value rounded by its interval and written with it."""
    columns = [
        Column("machine", tr("Machine"), "left"),
        Column("runs", tr("Runs"), decimals=0),
        *(Column(q.key, _title(q)) for q in QUANTITIES),
    ]
    rows = []
    for machine in comparison.machines:
        row: list[Cell] = [machine.name, len(machine.included)]
        for q in QUANTITIES:
            row.append(_readable(getattr(machine, q.key), q, locale))
            if q is BED_SHARE and machine.bed_share is None:
                row[-1] = _bound_told(machine, locale)
            if q is STANDBY_W and machine.standby_way == "lowest level":
                row[-1] = tr("{watts} (lowest)", watts=row[-1])
        rows.append(tuple(row))
    return Table(tr("Comparison"), tuple(columns), tuple(rows), (comparison.headline, comparison.conditions))


def _readable(known: Measured | float | None, q: Quantity, locale: NumberLocale) -> str:
    if known is None:
        return UNKNOWN
    measured = known if isinstance(known, Measured) else Measured(known, None)
    return with_interval(measured.value, measured.u95, q, locale)


def _bound_told(machine: MachineResult, locale: NumberLocale) -> str:
    """What is sure of a bed's share that no run shows: the least of the runs' lower bounds."""
    bounds = [run.bed.at_least if run.bed is not None else None for run in machine.included]
    known = [bound for bound in bounds if bound is not None]
    if not known or len(known) < len(bounds):
        return UNKNOWN
    # cut down, never up: a bound that is rounded up is none
    return tr("at least {percents}", percents=number(math.floor(100 * min(known)), 0, locale))


def readable_runs(comparison: Comparison, locale: NumberLocale = POINT) -> Table:
    """One row a stretch, as people read it."""
    columns = (
        Column("machine", tr("Machine"), "left"),
        Column("run", tr("Run"), "left"),
        Column("start", tr("Start"), "left"),
        *(Column(q.key, _title(q)) for q in _OF_A_RUN),
        Column("why_excluded", tr("Why it does not count"), "left"),
    )
    rows = []
    for machine in comparison.machines:
        for run in machine.runs:
            share = None if run.bed is None or run.bed.share is None else run.bed
            values = (
                _measured(run.energy_wh, run.energy_u95_wh),
                run.parts_per_kwh,
                run.mean_w,
                run.seconds,
                None if share is None else _measured(share.share, share.share_u95),
            )
            shown = (_readable(value, q, locale) for value, q in zip(values, _OF_A_RUN, strict=True))
            rows.append((machine.name, run.name, _start(run), *shown, run.why_excluded or ""))
    return Table(tr("Runs"), columns, tuple(rows))


def _measured(value: float | None, u95: float | None) -> Measured | None:
    return None if value is None else Measured(value, u95)


def _start(run: RunResult) -> str:
    """When it began, to the second; on the log's own clock where that is all there is."""
    if run.start is not None:
        return datetime.fromisoformat(run.start).isoformat(" ", "seconds")
    return "" if run.start_s is None else tr("at {seconds} s", seconds=number(run.start_s, 0))


def runs_table(comparison: Comparison) -> Table:
    """One row a stretch that was found or typed in, with why it does not count where it does not.

    ``start`` is ISO 8601, with an offset where the log states one; empty where no clock tells it.
    """
    columns = (
        Column("machine", tr("Machine"), "left"),
        Column("run", tr("Run"), "left"),
        Column("start", tr("Start"), "left"),
        Column("start_s", tr("Start in the log [s]"), decimals=1),
        Column("end_s", tr("End in the log [s]"), decimals=1),
        Column("included", tr("Counts"), "left"),
        Column("why_excluded", tr("Why not"), "left"),
        Column("energy_wh", tr("Energy [Wh]"), decimals=2),
        Column("energy_wh_u95", "±", decimals=2),
        Column("seconds", tr("Duration [s]"), decimals=0),
        Column("mean_w", tr("Mean power [W]"), decimals=1),
        Column("parts_per_kwh", tr("Parts per kWh"), decimals=1),
        Column("bed_share_percent", tr("Bed share [%]"), decimals=0),
        Column("bed_share_percent_u95", "±", decimals=1),
        Column("bed_method", tr("Bed by"), "left"),
        Column("energy_method", tr("Energy by"), "left"),
    )
    rows = [_run_row(machine, run) for machine in comparison.machines for run in machine.runs]
    return Table(tr("Runs"), columns, tuple(rows))


def _run_row(machine: MachineResult, run: RunResult) -> tuple[Cell, ...]:
    bed = run.bed if run.bed is not None and run.bed.share is not None else None
    return (
        machine.name,
        run.name,
        run.start or "",
        run.start_s,
        run.end_s,
        run.included,
        run.why_excluded or "",
        run.energy_wh,
        run.energy_u95_wh,
        run.seconds,
        run.mean_w,
        run.parts_per_kwh,
        None if bed is None or bed.share is None else 100 * bed.share,
        None if bed is None or bed.share_u95 is None else 100 * bed.share_u95,
        bed.method if bed is not None else "",
        run.energy.method if run.energy is not None else "",
    )


def fairness_table(comparison: Comparison) -> Table:
    """What differs between the compared runs, and what to do about it."""
    names = {m.machine_id: m.name for m in comparison.machines}
    columns = (
        Column("level", tr("Level"), "left"),
        Column("machines", tr("Machines"), "left"),
        Column("finding", tr("Finding"), "left"),
        Column("matters_wh", tr("Could matter [Wh]"), decimals=2),
        Column("against_wh", tr("Held against [Wh]"), decimals=2),
        Column("accepted", tr("Accepted because"), "left"),
    )
    rows = tuple(
        (
            f.level,
            ", ".join(names[m] for m in f.machine_ids),
            sentence(f.problem),
            f.matters_wh,
            f.against_wh,
            f.accepted,
        )
        for f in comparison.fairness
    )
    found = tr("{count:finding|findings}.", count=len(rows)) if rows else tr("no findings.")
    return Table(tr("Fairness"), columns, rows, (found,))


def readable_fairness(comparison: Comparison) -> Table:
    """The same as people read it, the levels in the language of the window."""
    table = fairness_table(comparison)
    return evolve(table, rows=tuple((tr(str(level)), *rest) for level, *rest in table.rows))


def _key(q: Quantity) -> str:
    return {"seconds": "minutes", "bed_share": "bed_share_percent"}.get(q.key, q.key)


def _title(q: Quantity) -> str:
    return f"{q.name} [{q.unit}]" if q.unit else q.name


def _pair(known: Measured | None, q: Quantity) -> list[Cell]:
    if known is None:
        return [None, None]
    return [known.value * q.factor, None if known.u95 is None else known.u95 * q.factor]
