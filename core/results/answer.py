"""The answer in words: one sentence of what the data say, one line of the conditions.

Rules: a sentence is made from the results alone; it claims a difference only where `Pair.shown` is true, and
says so where none is shown or none can be.
"""

from core.formatting import capitalised, listed, number, percent, value_alone, with_interval
from core.language import tr
from core.quantities import ENERGY, PARTS_PER_KWH
from core.results.values import Comparison, MachineResult, Measured, Pair
from core.study import Study

#: at most so many pairs with no difference are named in the conditions
NAMED_PAIRS = 2


def headline(comparison: Comparison) -> str:
    """What the comparison says, in one sentence.

    Parameters
    ----------
    comparison : Comparison
        Machines by energy per part; its own headline is not read.
    """
    known = [m for m in comparison.machines if m.energy_wh is not None]
    if not comparison.machines:
        return tr("Nothing to compare yet: add the meter logs of two or more machines.")
    if not known:
        logs = sum(len(m.files) for m in comparison.machines)
        if not logs:
            return tr("No complete run of the {part} was found in no logs.", part=comparison.part)
        return tr(
            "No complete run of the {part} was found in {logs:log|logs}.", part=comparison.part, logs=logs
        )
    if len(known) == 1:
        return _one_machine(known[0], comparison)
    # a machine with one run cannot be judged: where two others can, they are what is told
    repeated = [m for m in known if len(m.included) > 1]
    told = repeated if len(repeated) > 1 else known
    best, last = told[0], told[-1]
    pair = _pair_of(comparison, best.machine_id, last.machine_id)
    if pair is None or pair.shown is None:
        return _not_judged(best, last, comparison)
    if pair.shown and pair.ratio_low is not None and pair.ratio_high is not None:
        low, high = 1 - pair.ratio_high, 1 - pair.ratio_low
        digits = _decimals(low, high)
        return tr(
            "{machine} makes the {part} for {energy} Wh, {less} less than {other} "
            "(95 % interval {low} to {high}).",
            machine=best.name,
            part=comparison.part,
            energy=_energy(best),
            less=percent(1 - pair.ratio, digits),
            other=last.name,
            low=number(100 * low, digits),
            high=percent(high, digits),
        )
    return _no_difference(told, pair)


def _one_machine(machine: MachineResult, comparison: Comparison) -> str:
    assert machine.energy_wh is not None
    energy = with_interval(machine.energy_wh.value, machine.energy_wh.u95, ENERGY)
    parts = machine.parts_per_kwh
    n = len(machine.included)
    runs = tr("one run only") if n == 1 else tr("{count:run|runs}", count=n)
    if not parts:
        return tr(
            "{machine} makes the {part} for {energy} Wh ({runs}).",
            machine=machine.name,
            part=comparison.part,
            energy=energy,
            runs=runs,
        )
    return tr(
        "{machine} makes the {part} for {energy} Wh, {parts} parts per kWh ({runs}).",
        machine=machine.name,
        part=comparison.part,
        energy=energy,
        parts=value_alone(parts.value, parts.u95, PARTS_PER_KWH),
        runs=runs,
    )


def _not_judged(best: MachineResult, last: MachineResult, comparison: Comparison) -> str:
    single = [m.name for m in (best, last) if len(m.included) == 1]
    told = tr(
        "{machine} makes the {part} for {energy} Wh, {other} for {more} Wh",
        machine=best.name,
        part=comparison.part,
        energy=_energy(best),
        other=last.name,
        more=_energy(last),
    )
    if single:
        return tr(
            "{told}; whether they differ cannot be judged with one run of {machines}.",
            told=told,
            machines=listed(single),
        )
    return tr("{told}; whether they differ cannot be judged from these runs.", told=told)


def _no_difference(known: list[MachineResult], pair: Pair) -> str:
    names = [m.name for m in known]
    runs = {len(m.included) for m in known}
    who = (
        listed(names)
        if len(names) <= 3
        else tr("{count} machines, {first} to {last}", count=len(names), first=names[0], last=names[-1])
    )
    told = (
        tr("{machines}: no difference shown by {count:run|runs} each", machines=who, count=min(runs))
        if len(runs) == 1
        else tr("{machines}: no difference shown by these runs", machines=who)
    )
    return "; ".join((told, *_would_show(pair, min(runs)))) + "."


def _would_show(pair: Pair, runs: int) -> tuple[str, ...]:
    """What more runs would show; what these runs would have shown, where they are many enough already."""
    if pair.needed_percent is None:
        return ()
    percents = number(pair.needed_percent, 0)
    if pair.runs_needed is None:
        return (tr("no number of runs would show {percents} %, the meters allow no more", percents=percents),)
    if pair.runs_needed <= runs:
        return (tr("they would have shown one of {percents} %", percents=percents),)
    return (
        tr(
            "{count:run|runs} each would show {percents} %",
            count=pair.runs_needed,
            percents=percents,
        ),
    )


def conditions(comparison: Comparison, study: Study) -> str:
    """The conditions in one line: boundary, temperatures, runs, what was left out, what is not shown."""
    known = [m for m in comparison.machines if m.energy_wh is not None]
    if not comparison.machines:
        return ""
    parts = [capitalised(tr(comparison.boundary))]
    if study.bed_c is not None:
        parts.append(tr("bed at {celsius} °C", celsius=number(study.bed_c, 0)))
    if study.room_c is not None:
        parts.append(tr("room at {celsius} °C", celsius=number(study.room_c, 0)))
    parts.append(_runs_told(known))
    lines = [", ".join(parts) + "."]
    unknown = [m.name for m in comparison.machines if m.energy_wh is None]
    if unknown and known:
        lines.append(tr("{machines}: no complete run.", machines=listed(unknown)))
    single = [m.name for m in known if len(m.included) == 1]
    if single and len(known) > 1:
        lines.append(tr("{machines}: one run only.", machines=listed(single)))
    left_out = _left_out_told(comparison)
    if left_out:
        lines.append(left_out)
    lines += _ties_told(comparison)
    return " ".join(lines)


def _runs_told(known: list[MachineResult]) -> str:
    counts = sorted(len(m.included) for m in known)
    if not counts:
        return tr("no runs")
    if counts[0] < counts[-1]:
        return tr("{least} to {most} runs a machine", least=counts[0], most=counts[-1])
    if len(counts) > 1:
        return tr("{count:run|runs} a machine", count=counts[0])
    return tr("{count:run|runs}", count=counts[0])


def _left_out_told(comparison: Comparison) -> str:
    """How many stretches do not count, by hand and by the program."""
    by_hand = by_program = 0
    for machine in comparison.machines:
        for run in machine.runs:
            if run.included:
                continue
            if run.left_out_by_user:
                by_hand += 1
            else:
                by_program += 1
    told = []
    if by_hand:
        told.append(tr("{count:run|runs} left out by hand", count=by_hand))
    if by_program:
        told.append(tr("{count:other stretch|other stretches} found and not counted", count=by_program))
    return f"{capitalised(', '.join(told))}." if told else ""


def _ties_told(comparison: Comparison) -> list[str]:
    """Pairs with no difference, unless the headline tells of nothing else."""
    names = {m.machine_id: m.name for m in comparison.machines}
    runs = {m.machine_id: len(m.included) for m in comparison.machines}
    known = [m.machine_id for m in comparison.machines if len(m.included) > 1]
    ties = [p for p in comparison.pairs if p.shown is False]
    first_and_last = {(known[0], known[-1])} if known else set()
    if any((p.machine_id, p.other_id) in first_and_last for p in ties):
        return []
    told = []
    for pair in ties[:NAMED_PAIRS]:
        both = tr(
            "{machine} and {other}: no difference shown",
            machine=names[pair.machine_id],
            other=names[pair.other_id],
        )
        shown = _would_show(pair, min(runs[pair.machine_id], runs[pair.other_id]))
        told.append("; ".join((both, *shown)) + ".")
    if len(ties) > NAMED_PAIRS:
        told.append(
            tr(
                "{count:more pair|more pairs}: no difference shown.",
                count=len(ties) - NAMED_PAIRS,
            )
        )
    return told


def _pair_of(comparison: Comparison, machine_id: str, other_id: str) -> Pair | None:
    return next((p for p in comparison.pairs if (p.machine_id, p.other_id) == (machine_id, other_id)), None)


def _energy(machine: MachineResult) -> str:
    measured = machine.energy_wh or Measured(float("nan"), None)
    return value_alone(measured.value, measured.u95, ENERGY)


def _decimals(low: float, high: float) -> int:
    """As many digits of a percentage as it takes to keep the ends of an interval of shares apart."""
    width = high - low
    return next((d for d in (0, 1) if width >= 1.5 * 10.0 ** -(d + 2)), 2)
