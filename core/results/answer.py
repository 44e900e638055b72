"""The answer in words: one sentence of what the data say, one line of the conditions.

Rules: a sentence is made from the results alone; it claims a difference only where `Pair.shown` is true, and
says so where none is shown or none can be.
"""

from core.formatting import count, listed, number, percent, value_alone, with_interval
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
        return "Nothing to compare yet: add the meter logs of two or more machines."
    if not known:
        logs = sum(len(m.files) for m in comparison.machines)
        return f"No complete run of {_the_part(comparison)} was found in {count(logs, 'log')}."
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
        return (
            f"{best.name} makes {_the_part(comparison)} for {_energy(best)} Wh, "
            f"{percent(1 - pair.ratio, digits)} less than {last.name} "
            f"(95 % interval {number(100 * low, digits)} to {percent(high, digits)})."
        )
    return _no_difference(told, pair)


def _one_machine(machine: MachineResult, comparison: Comparison) -> str:
    assert machine.energy_wh is not None
    energy = with_interval(machine.energy_wh.value, machine.energy_wh.u95, ENERGY)
    parts = machine.parts_per_kwh
    tail = f", {value_alone(parts.value, parts.u95, PARTS_PER_KWH)} parts per kWh" if parts else ""
    n = len(machine.included)
    runs = "one run only" if n == 1 else f"{n} runs"
    return f"{machine.name} makes {_the_part(comparison)} for {energy} Wh{tail} ({runs})."


def _not_judged(best: MachineResult, last: MachineResult, comparison: Comparison) -> str:
    single = [m.name for m in (best, last) if len(m.included) == 1]
    told = (
        f"{best.name} makes {_the_part(comparison)} for {_energy(best)} Wh, "
        f"{last.name} for {_energy(last)} Wh"
    )
    if single:
        return f"{told}; whether they differ cannot be judged with one run of {listed(single)}."
    return f"{told}; whether they differ cannot be judged from these runs."


def _no_difference(known: list[MachineResult], pair: Pair) -> str:
    names = [m.name for m in known]
    runs = {len(m.included) for m in known}
    each = f"{count(min(runs), 'run')} each" if len(runs) == 1 else "these runs"
    who = listed(names) if len(names) <= 3 else f"{len(names)} machines, {names[0]} to {names[-1]}"
    return f"{who}: no difference shown by {each}{_would_show(pair, min(runs))}."


def _would_show(pair: Pair, runs: int) -> str:
    """What more runs would show; what these runs would have shown, where they are many enough already."""
    if pair.needed_percent is None:
        return ""
    if pair.runs_needed is not None and pair.runs_needed <= runs:
        return f"; they would have shown one of {number(pair.needed_percent, 0)} %"
    if pair.runs_needed is None:
        return f"; no number of runs would show {number(pair.needed_percent, 0)} %, the meters allow no more"
    return f"; {count(pair.runs_needed, 'run')} each would show {number(pair.needed_percent, 0)} %"


def conditions(comparison: Comparison, study: Study) -> str:
    """The conditions in one line: boundary, temperatures, runs, what was left out, what is not shown."""
    known = [m for m in comparison.machines if m.energy_wh is not None]
    if not comparison.machines:
        return ""
    parts = [comparison.boundary.capitalize()]
    if study.bed_c is not None:
        parts.append(f"bed at {number(study.bed_c, 0)} °C")
    if study.room_c is not None:
        parts.append(f"room at {number(study.room_c, 0)} °C")
    parts.append(_runs_told(known))
    lines = [", ".join(parts) + "."]
    unknown = [m.name for m in comparison.machines if m.energy_wh is None]
    if unknown and known:
        lines.append(f"{listed(unknown)}: no complete run.")
    single = [m.name for m in known if len(m.included) == 1]
    if single and len(known) > 1:
        lines.append(f"{listed(single)}: one run only.")
    left_out = _left_out_told(comparison)
    if left_out:
        lines.append(left_out)
    lines += _ties_told(comparison)
    return " ".join(lines)


def _runs_told(known: list[MachineResult]) -> str:
    counts = sorted(len(m.included) for m in known)
    if not counts:
        return "no runs"
    if counts[0] == counts[-1]:
        return count(counts[0], "run") + (" a machine" if len(counts) > 1 else "")
    return f"{counts[0]} to {counts[-1]} runs a machine"


def _left_out_told(comparison: Comparison) -> str:
    """How many stretches do not count, by hand and by the program."""
    by_hand = by_program = 0
    for machine in comparison.machines:
        for run in machine.runs:
            if run.included:
                continue
            if run.decided_by_user:
                by_hand += 1
            else:
                by_program += 1
    told = []
    if by_hand:
        told.append(f"{count(by_hand, 'run')} left out by hand")
    if by_program:
        told.append(f"{count(by_program, 'other stretch', 'other stretches')} found and not counted")
    text = ", ".join(told)
    return f"{text[0].upper()}{text[1:]}." if text else ""


def _ties_told(comparison: Comparison) -> list[str]:
    """Pairs with no difference, unless the headline tells of nothing else."""
    names = {m.machine_id: m.name for m in comparison.machines}
    runs = {m.machine_id: len(m.included) for m in comparison.machines}
    known = [m.machine_id for m in comparison.machines if len(m.included) > 1]
    ties = [p for p in comparison.pairs if p.shown is False]
    first_and_last = {(known[0], known[-1])} if known else set()
    if any((p.machine_id, p.other_id) in first_and_last for p in ties):
        return []
    told = [
        f"{names[p.machine_id]} and {names[p.other_id]}: no difference shown"
        f"{_would_show(p, min(runs[p.machine_id], runs[p.other_id]))}."
        for p in ties[:NAMED_PAIRS]
    ]
    if len(ties) > NAMED_PAIRS:
        told.append(f"{count(len(ties) - NAMED_PAIRS, 'more pair')}: no difference shown.")
    return told


def _pair_of(comparison: Comparison, machine_id: str, other_id: str) -> Pair | None:
    return next((p for p in comparison.pairs if (p.machine_id, p.other_id) == (machine_id, other_id)), None)


def _the_part(comparison: Comparison) -> str:
    return f"the {comparison.part}"


def _energy(machine: MachineResult) -> str:
    measured = machine.energy_wh or Measured(float("nan"), None)
    return value_alone(measured.value, measured.u95, ENERGY)


def _decimals(low: float, high: float) -> int:
    """As many digits of a percentage as it takes to keep the ends of an interval of shares apart."""
    width = high - low
    return next((d for d in (0, 1) if width >= 1.5 * 10.0 ** -(d + 2)), 2)
