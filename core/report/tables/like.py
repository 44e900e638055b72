"""Like for like: what was measured and what it would be at common conditions, side by side."""

from core.language import tr
from core.publish.sources import Sources
from core.report.tables.cells import machine_column, pair, pair_columns
from core.results.like_answer import STEP_NAMES, conditions, headline, like_note, like_table
from core.results.values import Measured
from core.tables import Cell, Column, Table
from core.uncertainty import NORMAL_95


def like_data(sources: Sources) -> Table:
    """One row a machine, in full; nothing where no machine can be adjusted."""
    columns = (
        machine_column(),
        *pair_columns("measured_wh", tr("Measured [Wh]"), 2),
        *(
            c
            for key, name in STEP_NAMES.items()
            for c in pair_columns(f"{key}_wh", tr("{step} [Wh]", step=tr(name)), 2)
        ),
        *pair_columns("adjusted_wh", tr("Like for like [Wh]"), 2),
        Column("how", tr("By"), "left"),
        Column("why_not", tr("Why not adjusted"), "left"),
    )
    rows: list[tuple[Cell, ...]] = []
    for machine in sources.like.machines:
        steps = {s.condition: Measured(s.change_wh, NORMAL_95 * s.u_wh) for s in machine.steps}
        rows.append(
            (
                machine.name,
                *pair(machine.measured_wh),
                *(cell for key in STEP_NAMES for cell in pair(steps.get(key))),
                *pair(machine.adjusted_wh),
                machine.how or "",
                machine.why_not,
            )
        )
    notes = (headline(sources.like), conditions(sources.like), like_note(sources.like))
    return Table(tr("Like for like"), columns, tuple(rows) if sources.like.known else (), notes)


def readable_like(sources: Sources) -> Table:
    """One row a machine, as people read it."""
    return like_table(sources.like)
