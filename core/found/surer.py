"""What would make a number surer, from the largest lines of its budget, with what each would bring."""

import math
from collections.abc import Sequence

from attrs import evolve

from core.found.question import Question
from core.found.values import BudgetLine
from core.found.writing import figures
from core.language import mark, tr
from core.results.values import Influence
from core.uncertainty import REPEATS, coverage_factor

#: what helps against each line of a budget
_ADVICE: dict[str, str] = {
    "meter gain": mark(
        "a meter of better stated accuracy; between machines, one meter for all: then it cancels"
    ),
    "meter offset": mark("a meter of better stated accuracy at small loads"),
    "sampling": mark("a log with shorter intervals, of averages, or with an energy counter"),
    "unseen heater": mark("a log with shorter intervals, of averages, or with an energy counter"),
    "readings in step": mark("a log with another interval, of averages, or with an energy counter"),
    "boundary": mark("a log with shorter intervals, so that the run's edges are seen"),
    "resolution": mark("a meter that shows finer steps of power"),
    "gaps": mark("a log without gaps, or a meter with an energy counter to bridge them"),
    "counter step": mark("a meter whose energy counter has finer steps"),
    "display step": mark("a display with finer steps, a log, or several parts made between two readings"),
}
#: lines that make less of the variance than this are not worth an effort
WORTH = 0.1
MOST_LINES = 3


def lines(
    asked: Question, budget: Sequence[BudgetLine], u95: float | None, unit: str, *, factor: float = 1.0
) -> tuple[str, ...]:
    """What to do, the most effective first.

    Parameters
    ----------
    asked : Question
    budget : sequence of BudgetLine
        Largest first.
    u95 : float or None
        Half-width of the interval that the budget makes, in `unit`.
    unit : str
    factor : float
        Turns an energy's uncertainty into that of the number. [unit/Wh]
    """
    said = []
    if asked.run is None and len(asked.runs) == 1:
        said.append(tr("More runs: what differs from run to run can only be seen with two or more."))
    for line in [line for line in budget if line.share_of_variance >= WORTH][:MOST_LINES]:
        if line.name == REPEATS:
            said.append(_more_runs(asked, unit, factor))
        elif line.name in _ADVICE:
            advice = tr(_ADVICE[line.name])
            gain = "" if u95 is None else _without(line, u95, unit, asked)
            said.append(
                tr(
                    "Against “{name}”: {advice}{gain}.",
                    name=line.title,
                    advice=advice,
                    gain=gain,
                )
            )
    if any(line.name in ("meter gain", "meter offset") for line in budget[:MOST_LINES]):
        said += _not_stated(asked)
    return tuple(said)


def _without(line: BudgetLine, u95: float, unit: str, asked: Question) -> str:
    left = u95 * math.sqrt(max(0.0, 1 - line.share_of_variance))
    without = f"{figures(left, 2, asked.locale)} {unit}".rstrip()
    return f" ({tr('without it about ± {interval}', interval=without)})"


def _more_runs(asked: Question, unit: str, factor: float) -> str:
    """The interval that twice as many runs would give, if they differ as these do."""
    runs = len(asked.runs)
    u95 = with_runs(asked.machine.influences, runs, 2 * runs) * factor
    half = f"{figures(u95, 2, asked.locale)} {unit}".rstrip()
    return tr(
        "More runs: {more} instead of {runs} would give about ± {half}, if they differ as these do.",
        more=2 * runs,
        runs=runs,
        half=half,
    )


def with_runs(influences: Sequence[Influence], runs: int, more: int) -> float:
    """Half-width of the interval of a mean of `more` runs that differ as these `runs` do. [Wh]

    What a meter gives all runs alike stays; the rest falls with the root of their number. Degrees of freedom
    after Welch and Satterthwaite (JCGM 100:2008, G.4.1), of which only the repeats have few.
    """
    less = math.sqrt(runs / more)
    then = [i if i.shared is not None else evolve(i, u_wh=i.u_wh * less) for i in influences]
    u_wh = math.sqrt(math.fsum(i.u_wh**2 for i in then))
    spread_wh = math.sqrt(math.fsum(i.u_wh**2 for i in then if i.name == REPEATS))
    df = math.inf if spread_wh <= 0 else (u_wh / spread_wh) ** 4 * (more - 1)
    return coverage_factor(df) * u_wh


def _not_stated(asked: Question) -> list[str]:
    meters = {m.id: m for run in asked.runs for m in [asked.meter_of(run)] if m is not None and not m.stated}
    return [
        tr(
            "State the accuracy of {name} from its data sheet: ±{gain_percent:g} % of reading and "
            "±{offset_w:g} W are assumed.",
            name=meter.name,
            gain_percent=meter.gain_percent,
            offset_w=meter.offset_w,
        )
        for meter in meters.values()
    ]
