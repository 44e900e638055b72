"""One measure of a machine or of a run, in the unit shown."""

from core.language import tr
from core.quantities import (
    BED_SHARE,
    DURATION,
    ENERGY,
    MEAN_W,
    PARTS_PER_KWH,
    Quantity,
)
from core.results.values import MachineResult, Measured, RunResult

#: the measures of the comparison, in the order of its columns
MEASURES: tuple[Quantity, ...] = (ENERGY, PARTS_PER_KWH, MEAN_W, DURATION, BED_SHARE)
#: the same, in the order in which they are kept when there is no room for all
BY_RANK: tuple[Quantity, ...] = (ENERGY, DURATION, MEAN_W, BED_SHARE, PARTS_PER_KWH)


def of_machine(machine: MachineResult, quantity: Quantity) -> Measured | None:
    """The machine's value of `quantity` in the unit shown; None where there is none."""
    measured: Measured | None = getattr(machine, quantity.key)
    if measured is None:
        return None
    u95 = None if measured.u95 is None else measured.u95 * quantity.factor
    return Measured(measured.value * quantity.factor, u95)


def of_run(run: RunResult, quantity: Quantity) -> Measured | None:
    """The run's value of `quantity` in the unit shown, with its own interval where that is known.

    The interval of the energy carries over to the mean watts and to the parts per kWh, because a run's
    duration is known far better than its energy.
    """
    if quantity is BED_SHARE:
        if run.bed is None or run.bed.share is None:
            return None
        u95 = None if run.bed.share_u95 is None else run.bed.share_u95 * quantity.factor
        return Measured(run.bed.share * quantity.factor, u95)
    value: float | None = getattr(run, quantity.key)
    if value is None:
        return None
    shown = value * quantity.factor
    if quantity is DURATION or run.energy_wh is None or run.energy_u95_wh is None or run.energy_wh <= 0:
        return Measured(shown, None)
    return Measured(shown, abs(shown) * run.energy_u95_wh / run.energy_wh)


def runs_text(runs: int) -> str:
    """How many runs a row stands for."""
    return tr("{count:run|runs}", count=runs) if runs else tr("no runs")


def tests_text(tests: int) -> str:
    """How many hold or switch-on tests a row stands for."""
    return tr("{count:test|tests}", count=tests) if tests else tr("no tests")
