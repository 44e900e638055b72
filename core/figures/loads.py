"""Loads side by side: one row a machine, one column a load, then their sum, processing and the rest."""

from core.figures.compare import source_of
from core.figures.ticks import axis_end
from core.figures.values import Axis, Cell, ComparisonFigure, Mark, Measure, Row
from core.formatting import POINT, NumberLocale, count, with_interval
from core.loads.names import LOADS
from core.results.load_answer import LOAD_W, conditions, headline
from core.results.loads import Loads, MachineLoads
from core.results.values import Measured
from core.study import Study


def loads_figure(
    loads: Loads, study: Study, machine_id: str = "", locale: NumberLocale = POINT
) -> ComparisonFigure | None:
    """Bars of all loads that were named, for all machines; None where no test has a step.

    Machines without a test stand last.
    """
    if not loads.tested:
        return None
    machines = (*loads.tested, *(m for m in loads.machines if not m.steps))
    columns: list[tuple[str, str, list[Measured | None], int]] = []
    largest = sorted(LOADS, key=lambda load: (not load.in_processing, -_most_w(machines, load.key)))
    for load in LOADS:
        found = [m.of(load.key) for m in machines]
        values = [None if w is None else Measured(w.watts, w.u95_w) for w in found]
        title = load.title[0].upper() + load.title[1:]
        columns.append((load.key, title, values, 3 + largest.index(load)))
    columns.append(("load_sum", "Sum", [m.sum_w for m in machines], 2))
    columns.append(("processing_w", "Processing", [m.processing_w for m in machines], 1))
    columns.append(("unexplained_w", "Unexplained", [m.unexplained_w for m in machines], 0))
    measures: list[Measure] = []
    for key, title, values, rank in columns:
        if any(v is not None for v in values):
            measures.append(_measure(key, title, rank, machines, values, locale, not measures))
    return ComparisonFigure(
        headline=headline(loads, machine_id, locale),
        conditions=conditions(loads, study, locale),
        source=source_of(study),
        rows=tuple(Row(m.machine_id, m.name, m.slot, count(m.tests, "test")) for m in machines),
        measures=tuple(measures),
    )


def _most_w(machines: tuple[MachineLoads, ...], load: str) -> float:
    return max((w.watts for m in machines for w in m.loads if w.load == load), default=0.0)


def _measure(
    key: str,
    title: str,
    rank: int,
    machines: tuple[MachineLoads, ...],
    values: list[Measured | None],
    locale: NumberLocale,
    is_first: bool,
) -> Measure:
    ends = tuple(max(0.0, v.value) + (v.u95 or 0.0) for v in values if v is not None)
    cells = []
    for machine, value in zip(machines, values, strict=True):
        if value is None:
            short = "no test" if is_first and not machine.tests else ""
            cells.append(Cell(note=short, reason=f"{machine.name}: no step is called so."))
            continue
        text = with_interval(value.value, value.u95, LOAD_W, locale)
        cells.append(Cell(mark=Mark(max(0.0, value.value), value.u95, text)))
    return Measure(key, Axis(title, "W", axis_end(ends), locale), tuple(cells), bars=True, rank=rank)
