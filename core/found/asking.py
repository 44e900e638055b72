"""From what was pointed at to its explanation."""

from collections.abc import Callable, Mapping

from core.activity import Activity
from core.formatting import POINT, NumberLocale
from core.found import bed_share, derived, energy, length, standby
from core.found import ratio as ratios
from core.found.question import Question
from core.found.values import RATIO, Explanation
from core.progress import Progress, silent
from core.results.values import Comparison
from core.study import Study
from core.traces import Trace


def explain(
    comparison: Comparison,
    study: Study,
    traces: Mapping[str, Trace],
    machine_id: str,
    quantity_key: str,
    run_id: str | None = None,
    *,
    other_id: str | None = None,
    activities: Mapping[str, Activity] | None = None,
    locale: NumberLocale = POINT,
    progress: Progress = silent,
) -> Explanation | None:
    """Say how a number was found.

    Parameters
    ----------
    comparison : Comparison
    study : Study
        The one that was compared.
    traces : mapping of log id to Trace
        Without the trace of a log, what needs it is left unsaid.
    machine_id : str
    quantity_key : str
        Key of a quantity of `core.quantities`, or ``"ratio"``.
    run_id : str, optional
        For the value of one run; else it is the machine's.
    other_id : str, optional
        For a ratio: the machine below the line; without it, the last of the comparison that has a value.
    activities : mapping of log id to Activity, optional
        What was found in the traces, where it is known; else it is found again where it is needed.
    locale : NumberLocale
    progress : Progress
        May raise `Cancelled`.

    Returns
    -------
    Explanation or None
        None when the comparison has no such machine or run.

    Raises
    ------
    KeyError
        If there is no such quantity: the caller's mistake.
    """
    machine = next((m for m in comparison.machines if m.machine_id == machine_id), None)
    if machine is None:
        return None
    run = next((r for r in machine.runs if r.run_id == run_id), None) if run_id else None
    if run_id and run is None:
        return None
    asked = Question(comparison, study, traces, machine, run, activities, locale, progress)
    if quantity_key == RATIO:
        known = [m for m in comparison.machines if m.energy_wh is not None and m is not machine]
        other = next(
            (m for m in comparison.machines if m.machine_id == other_id), known[-1] if known else None
        )
        return None if other is None else ratios.ratio(asked, other)
    return _BY_KEY[quantity_key](asked)


def _energy(asked: Question) -> Explanation:
    return energy.of_machine(asked) if asked.run is None else energy.of_run(asked, asked.run)


_BY_KEY: dict[str, Callable[[Question], Explanation]] = {
    "energy_wh": _energy,
    "parts_per_kwh": derived.parts,
    "mean_w": derived.power,
    "seconds": length.length,
    "bed_share": bed_share.share,
    "standby_w": standby.standby,
}
