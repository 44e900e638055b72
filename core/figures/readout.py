"""What is read out where the pointer is: machine, run, value, interval, how it was found."""

import textwrap

from core.beds.bound import bound_words
from core.figures.measures import of_run
from core.formatting import POINT, NumberLocale, with_interval, with_unit
from core.language import mark, tr
from core.quantities import BED_SHARE, DURATION, ENERGY, MEAN_W, PARTS_PER_KWH, Quantity
from core.results.values import BedShare, Comparison, MachineResult, RunResult
from core.wording import sentence

#: sentences are broken into lines of so many letters
_LINE = 64

_HOW = {
    "power": mark("from the power"),
    "counter": mark("from the energy counter"),
    "counter with power at the edges": mark("from the energy counter, edges from the power"),
    "typed": mark("from typed readings"),
}


def find_run(comparison: Comparison, run_id: str) -> tuple[MachineResult, RunResult] | None:
    """The run with this id and its machine; None when the comparison has none."""
    return next(((m, r) for m in comparison.machines for r in m.runs if r.run_id == run_id), None)


def readout(
    comparison: Comparison, run_id: str, quantity: Quantity = ENERGY, locale: NumberLocale = POINT
) -> tuple[str, ...]:
    """One run read out, as lines: who, the value, how it was found, and why it is left out.

    Parameters
    ----------
    comparison : Comparison
    run_id : str
    quantity : Quantity
        The measure that is pointed at.
    locale : NumberLocale

    Returns
    -------
    tuple of str
        Empty when there is no such run.
    """
    found = find_run(comparison, run_id)
    if found is None:
        return ()
    machine, run = found
    value = of_run(run, quantity)
    lines = [f"{machine.name}, {run.name}" if run.name else machine.name]
    if run.start:
        lines[0] += f", {run.start[:16].replace('T', ' ')}"
    if value is None and quantity is BED_SHARE and run.bed is not None:
        lines += _unseen(run, run.bed, locale)
    elif value is None:
        lines.append(tr("{quantity}: not known", quantity=quantity.name))
    else:
        raw = value.value / quantity.factor
        u95 = None if value.u95 is None else value.u95 / quantity.factor
        lines.append(f"{quantity.name}: {with_unit(with_interval(raw, u95, quantity, locale), quantity)}")
    how = _how(run, quantity)
    if how and value is not None:
        lines.append(how)
    if quantity is BED_SHARE and value is not None and run.bed is not None:
        lines += _other_ways(run, run.bed, locale)
    if not run.included:
        lines += _broken(
            tr("not counted: {why}", why=run.why_excluded) if run.why_excluded else tr("not counted")
        )
    return tuple(lines)


def _unseen(run: RunResult, bed: BedShare, locale: NumberLocale) -> list[str]:
    """What is sure of a bed's part that cannot be seen, and why it cannot."""
    told = bound_words(bed.at_least, bed.at_most, locale) or tr("not known")
    reasons = [bed.why_not, *(p for p in run.problems if p.code == "bed.no_temperature")]
    why = [line for reason in reasons if reason is not None for line in _broken(sentence(reason))]
    return [f"{BED_SHARE.name}: {told}", *why]


def _other_ways(run: RunResult, bed: BedShare, locale: NumberLocale) -> list[str]:
    """What the other ways to the bed's part say, and whether they disagree."""
    lines = []
    for way in bed.others:
        if way.share is not None:
            told = with_unit(with_interval(way.share, way.share_u95, BED_SHARE, locale), BED_SHARE)
            lines.append(tr("also by {method}: {share}", method=tr(way.method), share=told))
    disagree = next((p for p in run.problems if p.code == "bed.ways_disagree"), None)
    return lines if disagree is None else [*lines, *_broken(sentence(disagree))]


def _broken(text: str) -> list[str]:
    return textwrap.wrap(text, _LINE, break_long_words=False)


def _how(run: RunResult, quantity: Quantity) -> str:
    if quantity is BED_SHARE:
        return "" if run.bed is None else tr("found by: {method}", method=tr(run.bed.method))
    if quantity is DURATION:
        return tr("edges set by hand") if run.decided_by_user else ""
    if quantity in (ENERGY, MEAN_W, PARTS_PER_KWH) and run.energy is not None:
        return energy_method(run.energy.method)
    return ""


def energy_method(method: str) -> str:
    """A method of `core.results.values.Energy` in words."""
    return tr(_HOW[method]) if method in _HOW else method
