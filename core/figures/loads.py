"""Loads side by side: one row a machine, one column a load, then their sum, processing and the rest."""

from collections.abc import Mapping

from core.figures.compare import source_of
from core.figures.measures import tests_text
from core.figures.ticks import axis_end
from core.figures.values import Axis, Cell, ComparisonFigure, Dot, Mark, Measure, Row
from core.formatting import POINT, NumberLocale, capitalised, listed, number, with_interval
from core.found.load_parts import PROCESSING, REST, SUM
from core.language import tr
from core.loads.names import BY_KEY, LOADS
from core.results.load_answer import LOAD_W, conditions, headline, watts_text
from core.results.loads import Loads, MachineLoads
from core.results.values import Measured
from core.study import Study
from core.uncertainty import NORMAL_95


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
        title = capitalised(load.title)
        columns.append((load.key, title, values, 3 + largest.index(load)))
    columns.append((SUM, tr("Sum"), [m.sum_w for m in machines], 2))
    columns.append((PROCESSING, tr("Processing"), [m.processing_w for m in machines], 1))
    columns.append((REST, tr("Unexplained"), [m.unexplained_w for m in machines], 0))
    measures: list[Measure] = []
    for key, title, values, rank in columns:
        if any(v is not None for v in values):
            measures.append(_measure(key, title, rank, machines, values, locale, not measures))
    return ComparisonFigure(
        headline=headline(loads, machine_id, locale),
        conditions=conditions(loads, study, locale),
        source=source_of(study),
        rows=tuple(Row(m.machine_id, m.name, m.slot, tests_text(m.tests)) for m in machines),
        measures=tuple(measures),
    )


def value_id(machine_id: str, load: str, place: int) -> str:
    """What one value of a load is told by in the chart."""
    return f"{machine_id} {load} {place}"


def _each(machine: MachineLoads, key: str) -> tuple[tuple[str, float], ...]:
    """The single values behind a number, each with what it is told by: runs by their own ids."""
    if key == PROCESSING:
        return machine.processing_runs
    load = machine.of(key)
    singles = () if load is None else load.each
    return tuple((value_id(machine.machine_id, key, i), s.watts) for i, s in enumerate(singles))


def value_readout(
    loads: Loads, dot_id: str, names: Mapping[str, str], locale: NumberLocale = POINT
) -> tuple[str, ...]:
    """What is read out at a single value, as lines; empty where there is none.

    Parameters
    ----------
    loads : Loads
    dot_id : str
        A run's id, or what `value_id` gives.
    names : mapping of run id to str
        How runs are called.
    locale : NumberLocale
    """
    for machine in loads.machines:
        for run_id, watts in machine.processing_runs:
            if run_id == dot_id:
                name = names.get(run_id, "")
                who = f"{machine.name}, {name}" if name else machine.name
                return who, tr("mean of processing: {watts} W", watts=number(watts, LOAD_W.decimals, locale))
        for load in machine.loads:
            for place, single in enumerate(load.each):
                if value_id(machine.machine_id, load.load, place) == dot_id:
                    told = watts_text(single.watts, NORMAL_95 * single.u_w, locale)
                    return (
                        f"{machine.name}, {BY_KEY[load.load].title}",
                        tr("{watts} without the meter's gain", watts=told),
                        _by_steps(single.steps),
                    )
    return ()


def _by_steps(numbers: tuple[int, ...]) -> str:
    if not numbers:
        return tr("by the level before the first step")
    if len(numbers) == 1:
        return tr("by step {number}", number=numbers[0])
    return tr("by steps {numbers}", numbers=listed([str(n) for n in numbers]))


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
            short = tr("no test") if is_first and not machine.tests else ""
            cells.append(Cell(note=short, reason=tr("{name}: no step is called so.", name=machine.name)))
            continue
        text = with_interval(value.value, value.u95, LOAD_W, locale)
        mark = Mark(max(0.0, value.value), value.u95, text)
        dots = tuple(Dot(at, max(0.0, w), included=True) for at, w in _each(machine, key))
        cells.append(Cell(mark=mark, dots=dots))
    return Measure(key, Axis(title, "W", axis_end(ends), locale), tuple(cells), bars=True, rank=rank)
