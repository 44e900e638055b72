"""How the duration of a run, and the mean duration of a machine's runs, was found."""

import math
from datetime import datetime

from core.energy.edges import edge
from core.formatting import duration, number
from core.found import around, budgets, derived, energy, sensitivity
from core.found.question import Question
from core.found.values import BudgetLine, Explanation
from core.found.writing import figures, shown
from core.language import tr
from core.quantities import DURATION
from core.results.values import Measured, RunResult
from core.traces import Trace
from core.uncertainty import NORMAL_95
from core.units import SECONDS_PER_MINUTE


def length(asked: Question) -> Explanation:
    """Duration of a run or the mean of them."""
    value = asked.value(DURATION)
    if value is None:
        return derived.unknown(asked, DURATION, "duration")
    method, formula, budget = (
        _of_run(asked, asked.run, value) if asked.run is not None else _of_machine(asked, value)
    )
    return Explanation(
        title=tr("{who}: duration", who=asked.who),
        value_text=f"{shown(value, DURATION, asked.locale)} ({duration(value.value)})",
        topic="duration",
        method=method,
        formula=formula,
        sources=around.sources(asked, DURATION),
        budget=budget,
        without_budget="" if budget else _without_budget(asked),
        sensitivity=sensitivity.lines(asked, DURATION),
        surer=_surer(asked, budget),
        cautions=around.cautions(asked),
    )


def _of_run(
    asked: Question, run: RunResult, value: Measured
) -> tuple[tuple[str, ...], tuple[str, ...], tuple[BudgetLine, ...]]:
    trace, measured = asked.trace_of(run), asked.measured(run)
    if trace is None or measured is None:
        return (tr("As it was noted with the readings of the display."),), (), ()
    stretch = asked.study.run(run.run_id)
    began, ended = (_moment(trace, at_s) for at_s in (measured.start_s, measured.end_s))
    formula = [
        tr(
            "{ended} − {began} = {seconds} s",
            ended=ended,
            began=began,
            seconds=figures(value.value, 5, asked.locale),
        )
    ]
    method = (
        energy.counted_from(asked.comparison.boundary),
        tr("You set its edges.") if stretch.is_moved else tr("The program found its edges in the log."),
        tr("A change between two rows of the log may lie anywhere between them."),
    )
    parts = [
        (name, edge(trace, at_s, is_start=is_start, is_step=True).u_s, "", tr(budgets.WHY["boundary"]))
        for name, at_s, is_start in (("start", measured.start_s, True), ("end", measured.end_s, False))
    ]
    budget = budgets.made(parts, asked.locale, "s")
    u_s = math.hypot(*(line.u for line in budget)) if budget else 0.0
    if u_s > 0:
        formula.append(
            tr(
                "by its edges known to about ± {normal_95} s",
                normal_95=figures(NORMAL_95 * u_s, 2, asked.locale),
            )
        )
    return method, tuple(formula), budget


def _moment(trace: Trace, at_s: float) -> str:
    """A moment on the log's own clock, to the tenth of a second."""
    stamp = trace.clock.iso(at_s)
    if stamp is None:
        return tr("{at_s} s", at_s=number(at_s, 1))
    moment = datetime.fromisoformat(stamp)
    return f"{moment:%Y-%m-%d %H:%M:%S}.{moment.microsecond // 100_000}"


def _of_machine(
    asked: Question, value: Measured
) -> tuple[tuple[str, ...], tuple[str, ...], tuple[BudgetLine, ...]]:
    seconds = [run.seconds for run in asked.runs if run.seconds is not None]
    minutes = [s / SECONDS_PER_MINUTE for s in seconds]
    formula = [energy.mean_formula(minutes, "min", asked)]
    method = [tr("Mean of the runs that count."), energy.counted_from(asked.comparison.boundary)]
    if value.u95 is None:
        # of one run there is no spread: what its edges leave open is all that is known
        alone = next((run for run in asked.runs if run.seconds is not None), None)
        lines = () if alone is None else _of_run(asked, alone, value)[2]
        return tuple(method), tuple(formula), lines
    method.append(tr("The interval is Student's t on the spread of the runs."))
    mean = math.fsum(minutes) / len(minutes)
    squares = math.fsum((m - mean) ** 2 for m in minutes)
    u = math.sqrt(squares / (len(minutes) - 1) / len(minutes)) if len(minutes) > 1 else 0.0
    parts = [("repeats", u, "", tr("the runs differ from one another"))] if u > 0 else []
    lines = budgets.made(parts, asked.locale, "min")
    u95 = value.u95 / SECONDS_PER_MINUTE
    formula += budgets.combined(lines, u95, asked.locale, "min")
    return tuple(method), tuple(formula), lines


def _without_budget(asked: Question) -> str:
    if all(asked.trace_of(run) is None for run in asked.runs):
        return tr("It was noted with the readings of a display, and nobody said how exactly.")
    return tr("Nothing is known that makes it unsure: all runs took exactly as long.")


def _surer(asked: Question, budget: tuple[BudgetLine, ...]) -> tuple[str, ...]:
    if asked.run is not None:
        return (tr("A log with shorter intervals shows the edges better."),) if budget else ()
    if len(asked.runs) == 1:
        return (tr("More runs: what differs from run to run can only be seen with two or more."),)
    return (tr("More runs: the interval falls a little faster than with the root of their number."),)
