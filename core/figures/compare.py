"""The comparison as a figure: one row a machine, one column a measure."""

from core.figures.measures import BY_RANK, MEASURES, of_machine, of_run, runs_text
from core.figures.ticks import axis_end
from core.figures.values import Axis, Bound, Cell, ComparisonFigure, Dot, Mark, Measure, Row
from core.formatting import POINT, NumberLocale, listed, number, with_interval
from core.language import tr
from core.quantities import BED_SHARE, ENERGY, MEAN_W, Quantity
from core.results.values import Comparison, MachineResult, RunResult
from core.study import Study
from core.wording import sentence

#: a run that was left out may stretch an axis to this many times what the others need
_LEFT_OUT_STRETCH = 1.3
#: so many runs that are left out are named under the table, the others counted
_MOST_NAMED = 4


def comparison_figure(comparison: Comparison, study: Study, locale: NumberLocale = POINT) -> ComparisonFigure:
    """The figure of a comparison.

    Parameters
    ----------
    comparison : Comparison
        Machines in the order in which they are shown.
    study : Study
        Names the source of the numbers.
    locale : NumberLocale
        How the numbers beside the marks are written.

    Returns
    -------
    ComparisonFigure
        Values in the units of `core.quantities`: Wh, 1/kWh, W, min, %.
    """
    machines = comparison.machines
    runs = tuple(shown_runs(m) for m in machines)
    return ComparisonFigure(
        headline=comparison.headline,
        conditions=comparison.conditions,
        source=source_of(study),
        rows=tuple(_row(m) for m in machines),
        measures=tuple(_measure(q, comparison, runs, locale) for q in MEASURES),
        ties=ties(comparison),
    )


def ties(comparison: Comparison) -> tuple[tuple[int, int], ...]:
    """Stretches of neighbouring machines among which no pair shows a difference in energy.

    Parameters
    ----------
    comparison : Comparison
        A pair of which nothing is known counts as different: a tie is claimed only where it was tested.

    Returns
    -------
    tuple of (first, last)
        Places of machines, ``first < last``; none lies inside another.
    """
    alike = {frozenset((p.machine_id, p.other_id)) for p in comparison.pairs if p.shown is False}
    ids = [m.machine_id for m in comparison.machines]
    found: list[tuple[int, int]] = []
    for first in range(len(ids)):
        last = first
        while last + 1 < len(ids) and all(
            frozenset((ids[i], ids[last + 1])) in alike for i in range(first, last + 1)
        ):
            last += 1
        if last > first and (not found or last > found[-1][1]):
            found.append((first, last))
    return tuple(found)


def source_of(study: Study) -> str:
    """Whose numbers a picture shows, and whether they were invented."""
    return tr("{name} (invented data)", name=study.name) if study.invented else study.name


def shown_runs(machine: MachineResult) -> tuple[RunResult, ...]:
    """The runs that a chart shows: those that count, and those of the same part that were left out.

    A stretch that is no run of the part (another part, a hold test, a broken-off run) is not shown, unless a
    person decided that it does not count: then leaving it out must stay visible.
    """
    parts = {r.part for r in machine.included}
    return tuple(
        r
        for r in machine.runs
        if r.energy_wh is not None and (r.included or r.left_out_by_user or r.part in parts)
    )


def signs_note(comparison: Comparison) -> str:
    """What the signs mean, and every run of the part that is left out."""
    out = [
        tr("{machine}, {run} ({why})", machine=machine.name, run=run.name, why=run.why_excluded)
        for machine in comparison.machines
        for run in shown_runs(machine)
        if not run.included
    ]
    signs = tr("± is half the 95 % interval.")
    if any(len(machine.included) == 1 for machine in comparison.machines):
        signs = tr(
            "± is half the 95 % interval; of one run it holds what the meter leaves open, not the spread."
        )
    if len(out) > _MOST_NAMED:
        out = [*out[:_MOST_NAMED], tr("{count} more", count=len(out) - _MOST_NAMED)]
    if any(machine.standby_way == "lowest level" for machine in comparison.machines):
        lowest = tr("“Lowest”: the low end of standby, where no rest lasts a quarter of an hour.")
        signs = f"{signs} {lowest}"
    return f"{signs} {tr('Not counted (hollow): {runs}.', runs=listed(out))}" if out else signs


def _row(machine: MachineResult) -> Row:
    return Row(machine.machine_id, machine.name, machine.slot, runs_text(len(machine.included)))


def _measure(
    quantity: Quantity,
    comparison: Comparison,
    shown: tuple[tuple[RunResult, ...], ...],
    locale: NumberLocale,
) -> Measure:
    """One column, from the runs that are shown of each machine."""
    machines = comparison.machines
    ends = [
        value.value + (value.u95 or 0.0)
        for m in machines
        for value in [of_machine(m, quantity)]
        if value is not None
    ]
    runs = [
        [(r, value.value) for r in each for value in [of_run(r, quantity)] if value is not None]
        for each in shown
    ]
    counted = ends + [value for each in runs for r, value in each if r.included]
    left_out = [value for each in runs for r, value in each if not r.included]
    limit = _LEFT_OUT_STRETCH * max(counted, default=float("inf"))
    top = axis_end((*counted, *(v for v in left_out if v <= limit)))
    if quantity is BED_SHARE:
        top = 100.0  # a share is read against the whole
    axis = Axis(quantity.name, quantity.unit, top, locale)
    cells = tuple(_cell(m, each, quantity, axis) for m, each in zip(machines, runs, strict=True))
    legend, legend_short = _legend(quantity, comparison, cells)
    return Measure(
        key=quantity.key,
        axis=axis,
        cells=cells,
        bars=quantity is MEAN_W,
        rank=BY_RANK.index(quantity),
        legend=legend,
        legend_short=legend_short,
    )


def _legend(quantity: Quantity, comparison: Comparison, cells: tuple[Cell, ...]) -> tuple[str, str]:
    """What the signs of a column mean, at length and in short."""
    if quantity is ENERGY and ties(comparison):
        return tr("bracket: no difference shown"), tr("] not told apart")
    if any(c.inner or c.inner_least for c in cells):
        return tr("filled: the bed"), tr("bed filled")
    return "", ""


def _cell(
    machine: MachineResult, runs: list[tuple[RunResult, float]], quantity: Quantity, axis: Axis
) -> Cell:
    dots = tuple(Dot(r.run_id, value, r.included, beyond=value > axis.top) for r, value in runs)
    measured = of_machine(machine, quantity)
    if measured is None:
        return _unknown(machine, quantity, dots, axis.locale)
    raw = getattr(machine, quantity.key)
    return Cell(
        mark=Mark(measured.value, measured.u95, with_interval(raw.value, raw.u95, quantity, axis.locale)),
        dots=dots,
        inner=machine.bed_w if quantity is MEAN_W else None,
        inner_least=_bed_at_least_w(machine) if quantity is MEAN_W else None,
    )


def _unknown(machine: MachineResult, quantity: Quantity, dots: tuple[Dot, ...], locale: NumberLocale) -> Cell:
    if not machine.included:
        note = tr("no run counts") if quantity is ENERGY else ""  # once a row is enough
        return Cell(dots=dots, note=note, reason=tr("{name} has no run that counts.", name=machine.name))
    if quantity is not BED_SHARE:
        return Cell(
            dots=dots,
            note=tr("not known"),
            reason=tr("{quantity} is not known for {machine}.", quantity=quantity.name, machine=machine.name),
        )
    beds = [r.bed for r in machine.included if r.bed is not None]
    reason = next((sentence(b.why_not) for b in beds if b.why_not is not None), "")
    bound = _bed_bound(machine)
    if bound is None:
        return Cell(
            dots=dots, note=tr("cannot be seen"), reason=reason or tr("The bed's part cannot be seen here.")
        )
    low, high = bound[0] * quantity.factor, bound[1] * quantity.factor
    note = tr("at least {value} {unit}", value=number(low, 0, locale), unit=quantity.unit)
    return Cell(
        dots=dots, bound=Bound(low, high), note=note, reason=reason or tr("The bed takes {note}.", note=note)
    )


def _bed_bound(machine: MachineResult) -> tuple[float, float] | None:
    """Between which shares the bed's part lies in every run that counts and has a bound."""
    beds = [r.bed for r in machine.included if r.bed is not None]
    lows = [b.at_least for b in beds if b.at_least is not None]
    if not lows:
        return None
    highs = [b.at_most for b in beds if b.at_most is not None]
    return min(lows), max(highs) if len(highs) == len(lows) else 1.0


def _bed_at_least_w(machine: MachineResult) -> float | None:
    bound = _bed_bound(machine)
    if machine.bed_w is not None or machine.mean_w is None or bound is None:
        return None
    return bound[0] * machine.mean_w.value
