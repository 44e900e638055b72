"""How a number was found: method in words, formula with the values in it, source runs, uncertainty budget."""

from collections.abc import Sequence

from attrs import frozen

from core.figures.measures import of_machine, of_run
from core.figures.readout import energy_method, find_run
from core.formatting import POINT, NumberLocale, count, number, percent, value_alone, with_interval, with_unit
from core.quantities import BED_SHARE, DURATION, ENERGY, MEAN_W, PARTS_PER_KWH, Quantity
from core.results.values import Comparison, Influence, MachineResult, RunResult
from core.wording import sentence

#: what narrows the interval most, by the largest line of the budget
_SURER = {
    "meter gain": "a meter of stated, better accuracy, or one meter for all machines when they are compared",
    "meter offset": "a meter of stated, better accuracy",
    "repeats": "more runs of the part",
    "sampling": "a log that is sampled faster, or one with an energy counter",
    "unseen heater": "a log that is sampled faster, or one with an energy counter",
    "counter step": "a meter whose counter has smaller steps",
    "boundary": "a log that is sampled faster around the edges of the run",
    "resolution": "a meter with a finer power reading",
    "gaps": "a log without gaps",
    "display step": "a meter whose display has smaller steps, or a log instead of readings",
}
#: values written out in a formula before the rest is only counted
_MOST_TERMS = 6


@frozen
class BudgetBar:
    """One line of an uncertainty budget: its share of the variance, from 0 to 1, and its size in words."""

    name: str
    share: float
    text: str


@frozen
class HowFound:
    """What stands behind one number.

    ``steps`` are sentences and formulas in reading order; ``budget`` is empty where there is none.
    """

    title: str
    value: str
    steps: tuple[str, ...]
    budget: tuple[BudgetBar, ...] = ()


def how_found(
    comparison: Comparison,
    machine_id: str,
    run_id: str = "",
    quantity: Quantity = ENERGY,
    locale: NumberLocale = POINT,
) -> HowFound | None:
    """Say how a machine's value, or with `run_id` a run's, was found.

    Parameters
    ----------
    comparison : Comparison
    machine_id : str
    run_id : str
        Empty for the machine's own value.
    quantity : Quantity
    locale : NumberLocale

    Returns
    -------
    HowFound or None
        None when there is no such machine or run.
    """
    if run_id:
        found = find_run(comparison, run_id)
        return None if found is None else _of_run(found[0], found[1], quantity, comparison.boundary, locale)
    machine = next((m for m in comparison.machines if m.machine_id == machine_id), None)
    return None if machine is None else _of_machine(machine, quantity, locale)


def _of_machine(machine: MachineResult, quantity: Quantity, locale: NumberLocale) -> HowFound:
    title = f"{quantity.name}, {machine.name}"
    shown = of_machine(machine, quantity)
    if shown is None:
        return HowFound(title, "not known", _why_unknown(machine, quantity))
    raw = getattr(machine, quantity.key)
    value = with_unit(with_interval(raw.value, raw.u95, quantity, locale), quantity)
    steps = [_machine_formula(machine, quantity, locale), f"Runs: {_names(machine.included)}."]
    out = [r for r in machine.runs if not r.included and r.energy_wh is not None]
    if out:
        steps.append(f"Not counted: {count(len(out), 'other stretch', 'other stretches')}.")
    if quantity is ENERGY or quantity is PARTS_PER_KWH:
        return HowFound(
            title, value, (*steps, *_surer(machine.influences)), _bars(machine.influences, locale)
        )
    if quantity is DURATION and shown.u95 is not None:
        steps.append("Interval: Student's t on the spread of the runs.")
    if quantity is BED_SHARE:
        steps.append("Interval: Student's t on the runs, joined with what each run's own share is unsure by.")
    return HowFound(title, value, tuple(steps))


def _machine_formula(machine: MachineResult, quantity: Quantity, locale: NumberLocale) -> str:
    def text(q: Quantity) -> str:
        measured = getattr(machine, q.key)
        return "?" if measured is None else with_unit(value_alone(measured.value, measured.u95, q, locale), q)

    if quantity is PARTS_PER_KWH:
        return f"1000 Wh / mean energy = 1000 Wh / {text(ENERGY)} = {text(PARTS_PER_KWH)}"
    if quantity is MEAN_W:
        return f"Mean energy / mean duration = {text(ENERGY)} / {text(DURATION)} = {text(MEAN_W)}"
    values = [v.value for r in machine.included for v in [of_run(r, quantity)] if v is not None]
    decimals = quantity.decimals + 1
    if len(values) == 1:
        return f"One run: {with_unit(number(values[0], decimals, locale), quantity)}"
    terms = [number(v, decimals, locale) for v in values[:_MOST_TERMS]]
    if len(values) > _MOST_TERMS:
        terms.append(f"… {len(values) - _MOST_TERMS} more")
    return f"Mean of {len(values)} runs: ({' + '.join(terms)}) / {len(values)} = {text(quantity)}"


def _why_unknown(machine: MachineResult, quantity: Quantity) -> tuple[str, ...]:
    if not machine.included:
        return ("No run of this machine counts.",)
    if quantity is not BED_SHARE:
        return ("None of the runs that count has it.",)
    reasons = [r.bed.why_not for r in machine.included if r.bed is not None and r.bed.why_not is not None]
    return tuple(dict.fromkeys(sentence(p) for p in reasons)) or (
        "The bed's part cannot be seen in these logs.",
    )


def _of_run(
    machine: MachineResult, run: RunResult, quantity: Quantity, boundary: str, locale: NumberLocale
) -> HowFound:
    title = f"{quantity.name}, {machine.name}, {run.name}"
    shown = of_run(run, quantity)
    steps: list[str] = []
    if not run.included:
        steps.append(f"Not counted: {run.why_excluded}.")
    if shown is None:
        if quantity is BED_SHARE and run.bed is not None and run.bed.why_not is not None:
            steps.append(sentence(run.bed.why_not))
        return HowFound(title, "not known", tuple(steps))
    raw = shown.value / quantity.factor
    u95 = None if shown.u95 is None else shown.u95 / quantity.factor
    value = with_unit(with_interval(raw, u95, quantity, locale), quantity)
    steps += _run_steps(run, quantity, boundary, locale)
    if run.energy is None or quantity in (DURATION, BED_SHARE):
        return HowFound(title, value, tuple(steps))
    influences = run.energy.influences
    return HowFound(title, value, (*steps, *_surer(influences)), _bars(influences, locale))


def _run_steps(run: RunResult, quantity: Quantity, boundary: str, locale: NumberLocale) -> list[str]:
    steps = []
    energy = with_unit(number(run.energy_wh, 2, locale), ENERGY)
    if quantity is PARTS_PER_KWH:
        steps.append(f"1000 Wh / {energy} = {number(run.parts_per_kwh, 1, locale)}")
    if quantity is MEAN_W and run.seconds is not None:
        seconds = with_unit(number(run.seconds * DURATION.factor, 2, locale), DURATION)
        steps.append(f"{energy} / {seconds} = {with_unit(number(run.mean_w, 1, locale), MEAN_W)}")
    if quantity is BED_SHARE and run.bed is not None:
        bed = with_unit(number(run.bed.energy_wh, 2, locale), ENERGY)
        steps.append(f"The bed's {bed} of {energy}; found by: {run.bed.method}.")
    if quantity is DURATION:
        steps.append(f"From edge to edge, counted as: {boundary}.")
    if run.energy is not None and quantity not in (DURATION, BED_SHARE):
        steps.append(f"{energy} {energy_method(run.energy.method)}, counted as: {boundary}.")
        by_power, by_counter = run.energy.by_power_wh, run.energy.by_counter_wh
        if by_power is not None and by_counter is not None:
            steps.append(
                f"Power integrated: {number(by_power, 2, locale)} Wh; "
                f"counter: {number(by_counter, 2, locale)} Wh; the surer of the two is used."
            )
    if run.start:
        steps.append(f"Starts {run.start[:19].replace('T', ' ')}.")
    steps += [sentence(problem) for problem in run.problems]
    return steps


def _bars(influences: Sequence[Influence], locale: NumberLocale) -> tuple[BudgetBar, ...]:
    from core.uncertainty import budget

    return tuple(
        BudgetBar(
            line.name, line.share, f"{number(line.u_wh, 3, locale)} Wh, {percent(line.share, 0, locale)}"
        )
        for line in budget(influences)
        if line.share >= 0.0005
    )


def _surer(influences: Sequence[Influence]) -> tuple[str, ...]:
    from core.uncertainty import budget

    lines = budget(influences)
    advice = _SURER.get(lines[0].name) if lines else None
    return (f"What would narrow it most: {advice}.",) if advice else ()


def _names(runs: Sequence[RunResult]) -> str:
    shown = [r.name for r in runs[:_MOST_TERMS]]
    if len(runs) > _MOST_TERMS:
        shown.append(f"{len(runs) - _MOST_TERMS} more")
    return ", ".join(shown)
