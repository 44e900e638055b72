"""What would come out if something had been otherwise: edges, runs left out, the meter, the boundary.

Rules: nothing is estimated from slopes. Each line is the machine's result computed again from a study, or
from a trace, in which that one thing is otherwise.
"""

from collections.abc import Collection, Mapping

from attrs import evolve

from core.figures.compare import shown_runs
from core.formatting import duration
from core.found.question import Question, value_of
from core.found.writing import change, shown
from core.language import mark, tr
from core.quantities import Quantity
from core.results.compare import machine_inputs
from core.results.machine import machine_result
from core.results.values import Measured
from core.study import BOUNDARIES, Study
from core.traces import Sampling, Trace

#: how far an edge is moved to see what it matters [s]
LATER_S = 30.0
#: runs that are tried without, those that matter most
MOST_WITHOUT = 3
#: what a meter that reads 1 % too high makes of each quantity
_TOO_HIGH = 1.01
_BY_METER = {"energy_wh": 1 / _TOO_HIGH, "mean_w": 1 / _TOO_HIGH, "parts_per_kwh": _TOO_HIGH}
_HELD: dict[Sampling, str] = {
    "sampled": mark("instants"),
    "averaged": mark("means of intervals"),
    "on_change": mark("changes only"),
}


def lines(asked: Question, quantity: Quantity) -> tuple[str, ...]:
    """What would come out otherwise, one sentence each.

    Parameters
    ----------
    asked : Question
    quantity : Quantity
        One that is made of runs.
    """
    value = asked.value(quantity)
    if value is None:
        return ()
    base = value.value

    def told(what: str, study: Study | None, traces: Mapping[str, Trace] | None = None) -> list[str]:
        then = None if study is None else again(asked, quantity, study, traces)
        return [] if then is None else [f"{what}: {change(then - base, quantity, asked.locale)}"]

    each = tr("the run") if asked.run is not None else tr("every run")
    sample_s = _one_sample_s(asked)
    said = told(
        tr("If {each} ended {later_s} later", each=each, later_s=duration(LATER_S)),
        moved(asked, end_by_s=LATER_S),
    )
    if sample_s > 0:
        earlier = tr(
            "If {each} started one sample ({sample_s}) earlier", each=each, sample_s=duration(sample_s)
        )
        said += told(earlier, moved(asked, start_by_s=-sample_s))
    for what, study in _other_runs(asked, quantity, base) if asked.run is None else ():
        said += told(what, study)
    said += _boundaries(asked, quantity)
    if asked.run is not None and quantity.key != "seconds":
        kind, traces = _read_otherwise(asked)
        said += told(
            tr("If the log held {held}", held=tr(_HELD[kind])), asked.study if traces else None, traces
        )
    if quantity.key in _BY_METER:
        by = base * (_BY_METER[quantity.key] - 1)
        said.append(tr("If the meter read 1 % too high: {change}", change=change(by, quantity, asked.locale)))
    return tuple(said) or (tr("It stands as it was noted: there is no log to measure it by again."),)


def again(
    asked: Question, quantity: Quantity, study: Study, traces: Mapping[str, Trace] | None = None
) -> float | None:
    """The number in another study, or with other traces; None where it is not there."""
    asked.progress(0.5, tr("how a number of {name} was found", name=asked.machine.name))
    alone = evolve(study, machines=(study.machine(asked.machine.machine_id),))
    if asked.run is not None:
        # of the others only those count that tell of this run's bed
        run_id = asked.run.run_id
        kept = tuple(r for r in study.runs if r.id == run_id or r.set_bed_off or r.kind == "hold test")
        alone = evolve(alone, runs=kept)
    (given,) = machine_inputs(alone, asked.traces if traces is None else traces, asked.activities or {})
    result = machine_result(given)
    known: Measured | None = getattr(result, quantity.key)
    if asked.run is not None:
        run = next((r for r in result.runs if r.run_id == asked.run.run_id), None)
        known = None if run is None else value_of(run, quantity)
    return None if known is None else known.value


def _counting(study: Study, run_id: str, *, counts: bool) -> Study:
    """The study with a run, or a typed reading, left out or counted."""
    return evolve(
        study,
        runs=tuple(evolve(r, set_included=counts) if r.id == run_id else r for r in study.runs),
        typed=tuple(evolve(t, included=counts) if t.id == run_id else t for t in study.typed),
    )


def without_runs(study: Study, run_ids: Collection[str]) -> Study:
    """The study with runs, or typed readings, left out.

    Parameters
    ----------
    study : Study
    run_ids : collection of str
    """
    for run_id in run_ids:
        study = _counting(study, run_id, counts=False)
    return study


def moved(asked: Question, *, start_by_s: float = 0.0, end_by_s: float = 0.0) -> Study | None:
    """The study with an edge of every run moved; None where there is no log, or an edge would leave it."""
    then = {}
    for result in asked.runs:
        run, trace = asked.stretch_of(result), asked.trace_of(result)
        if run is None or trace is None:
            return None
        start_s, end_s = run.start_s + start_by_s, run.end_s + end_by_s
        if start_s < min(0.0, run.start_s) or end_s > max(trace.end_s, run.end_s):
            return None
        then[run.id] = evolve(run, set_start_s=start_s, set_end_s=end_s)
    return evolve(asked.study, runs=tuple(then.get(run.id, run) for run in asked.study.runs))


def _one_sample_s(asked: Question) -> float:
    """The longest usual interval of the logs of these runs. [s]"""
    traces = [asked.trace_of(run) for run in asked.runs]
    return max((trace.median_s for trace in traces if trace is not None), default=0.0)


def _other_runs(asked: Question, quantity: Quantity, base: float) -> list[tuple[str, Study]]:
    """Studies without each of the runs that matter most, and with each that was left out."""
    known = [(run, value_of(run, quantity)) for run in asked.runs]
    far = [(abs(value.value - base), run) for run, value in known if value is not None]
    far.sort(key=lambda pair: -pair[0])
    tried = [
        (tr("Without {name}", name=run.name), _counting(asked.study, run.run_id, counts=False))
        for _, run in far[:MOST_WITHOUT]
        if len(far) > 1
    ]
    tried += [
        (tr("With {name} counted too", name=run.name), _counting(asked.study, run.run_id, counts=True))
        for run in shown_runs(asked.machine)
        if not run.included
    ]
    return tried


def _boundaries(asked: Question, quantity: Quantity) -> list[str]:
    """The number under the two other boundaries; typed readings know only one."""
    said: list[str] = []
    if any(asked.trace_of(run) is None for run in asked.runs):
        return said
    for boundary in BOUNDARIES:
        if boundary != asked.comparison.boundary:
            then = again(asked, quantity, evolve(asked.study, boundary=boundary))
            if then is not None:
                value = shown(Measured(then, None), quantity, asked.locale)
                said.append(tr("Counting {boundary}: {value}", boundary=tr(boundary), value=value))
    return said


def _read_otherwise(asked: Question) -> tuple[Sampling, dict[str, Trace]]:
    """The other thing that the values of the run's log may stand for, and the traces read so."""
    log = None if asked.run is None else asked.log_of(asked.run)
    trace = None if log is None else asked.traces.get(log.id)
    if log is None or trace is None:
        return "sampled", {}
    kind: Sampling = "averaged" if trace.kind == "sampled" else "sampled"
    read = evolve(trace, kind=kind, key=tr("{key} read as {kind}", key=trace.key, kind=kind))
    return kind, {**asked.traces, log.id: read}
