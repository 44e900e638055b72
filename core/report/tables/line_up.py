"""Line-up: what every run that counts used in its warm-up and in its processing."""

from collections.abc import Iterator

from core.formatting import UNKNOWN, duration, percent
from core.language import mark, tr
from core.line_up.spans import SpanReading
from core.publish.sources import Sources
from core.quantities import ENERGY, MEAN_W
from core.report.tables.cells import machine_column, pair, pair_columns, told
from core.tables import Cell, Column, Table

_TITLE = mark("Warm-up and processing")
_NOTE = mark("Lined up at the end of warm-up. A machine's mean is of its runs that count.")


def title(sources: Sources) -> str | None:
    """The table's title; None where it has no row: every run that counts has a warm-up or a processing."""
    return tr(_TITLE) if sources.strands else None


def spans_table(sources: Sources) -> Table:
    """One row a run and state, in full."""
    columns = (
        machine_column(),
        *_run_and_state(),
        Column("seconds", tr("Time [s]"), decimals=0),
        *pair_columns("mean_w", tr("Mean power [W]"), 2),
        *pair_columns("energy_wh", tr("Energy [Wh]"), 3),
        Column("run_percent", tr("Of the run [%]"), decimals=1),
    )
    rows: list[tuple[Cell, ...]] = [
        (
            reading.machine,
            _name(reading),
            state,
            reading.seconds,
            *pair(reading.power_w),
            *pair(reading.energy_wh),
            None if reading.share is None else 100.0 * reading.share,
        )
        for state, reading in _readings(sources)
    ]
    return Table(tr(_TITLE), columns, tuple(rows), (tr(_NOTE),))


def readable_spans(sources: Sources) -> Table:
    """The means of machines as people read them; the runs where a machine has only one."""
    columns = (
        machine_column(),
        *_run_and_state(),
        Column("seconds", tr("Time")),
        Column("mean_w", tr("Mean power [W]")),
        Column("energy_wh", tr("Energy [Wh]")),
        Column("share", tr("Of the run")),
    )
    found = list(_readings(sources))
    with_mean = {reading.machine_id for _, reading in found if not reading.run_id}
    rows: list[tuple[Cell, ...]] = [
        (
            reading.machine,
            _name(reading),
            tr(state),
            duration(reading.seconds),
            told(reading.power_w, MEAN_W),
            told(reading.energy_wh, ENERGY),
            UNKNOWN if reading.share is None else percent(reading.share, 0),
        )
        for state, reading in found
        if not (reading.run_id and reading.machine_id in with_mean)
    ]
    return Table(tr(_TITLE), columns, tuple(rows), (tr(_NOTE),))


def _readings(sources: Sources) -> Iterator[tuple[str, SpanReading]]:
    """Machine by machine: its mean, then its runs, each in both states; a state that is not there is not."""
    by_state = sources.warm_up_and_processing
    order = {m.machine_id: i for i, m in enumerate(sources.comparison.machines)}
    found = [(state, reading) for state, readings in by_state for reading in readings if reading.seconds > 0]
    rank = {s.run_id: i for i, s in enumerate(sources.strands, start=1)}
    yield from sorted(found, key=lambda f: (order[f[1].machine_id], rank.get(f[1].run_id, 0)))


def _run_and_state() -> tuple[Column, Column]:
    return Column("run", tr("Run"), "left"), Column("state", tr("State"), "left")


def _name(reading: SpanReading) -> str:
    if reading.run_id:
        return reading.name
    return tr("mean of {runs}", runs=reading.runs)
