"""What would come out if something had been otherwise: edges, runs left out, the meter, the boundary.

Rules: nothing is estimated from slopes; each line is the same measurement made again with the one thing
changed, and the mean of the same runs.
"""

from collections.abc import Callable, Sequence

from attrs import evolve, frozen

from core.figures.compare import shown_runs
from core.formatting import duration
from core.found.question import Question
from core.found.writing import change, shown
from core.quantities import Quantity
from core.results.runs import Measurement, Seen, measure, seen
from core.results.values import Measured, RunResult
from core.study import BOUNDARIES
from core.traces import Sampling
from core.units import mean_w, parts_per_kwh

#: how far an edge is moved to see what it matters [s]
LATER_S = 30.0
#: runs that are tried without, those that matter most
MOST_WITHOUT = 3
_HELD: dict[Sampling, str] = {
    "sampled": "instants",
    "averaged": "means of intervals",
    "on_change": "changes only",
}


@frozen
class Sample:
    """What a number is made of, for one run. [Wh], [s]"""

    energy_wh: float
    seconds: float | None
    share: float | None


def _energy(samples: Sequence[Sample]) -> float | None:
    return sum(s.energy_wh for s in samples) / len(samples) if samples else None


def _parts(samples: Sequence[Sample]) -> float | None:
    energy = _energy(samples)
    return parts_per_kwh(energy) if energy else None


def _seconds(samples: Sequence[Sample]) -> float | None:
    known = [s.seconds for s in samples if s.seconds is not None]
    return sum(known) / len(known) if known else None


def _power(samples: Sequence[Sample]) -> float | None:
    energy, seconds = _energy([s for s in samples if s.seconds]), _seconds(samples)
    return mean_w(energy, seconds) if energy is not None and seconds else None


def _share(samples: Sequence[Sample]) -> float | None:
    known = [s.share for s in samples if s.share is not None]
    return sum(known) / len(known) if known else None


_MEAN: dict[str, Callable[[Sequence[Sample]], float | None]] = {
    "energy_wh": _energy,
    "parts_per_kwh": _parts,
    "seconds": _seconds,
    "mean_w": _power,
    "bed_share": _share,
}


def lines(asked: Question, quantity: Quantity) -> tuple[str, ...]:
    """What would come out otherwise, one sentence each.

    Parameters
    ----------
    asked : Question
    quantity : Quantity
        One that is made of runs.
    """
    mean = _MEAN[quantity.key]
    runs = asked.runs
    base = mean([_sample(run) for run in runs if run.energy_wh is not None])
    if base is None:
        return ()

    def told(what: str, samples: Sequence[Sample] | None) -> list[str]:
        value = None if samples is None else mean(samples)
        return [] if value is None else [f"{what}: {change(value - base, quantity, asked.locale)}"]

    said = told(*_moved(asked, end_by_s=LATER_S))
    said += told(*_moved(asked, start_by_s=-_one_sample_s(asked)))
    if asked.run is None:
        said += _others(asked, quantity, base)
    said += _boundaries(asked, quantity)
    if asked.run is not None and quantity.key != "seconds":
        said += told(*_read_otherwise(asked, asked.run))
    if quantity.key in ("energy_wh", "parts_per_kwh", "mean_w"):
        lower = [Sample(s.energy_wh / 1.01, s.seconds, s.share) for s in map(_sample, runs)]
        said += told("If the meter read 1 % too high", lower)
    return tuple(said)


def _sample(run: RunResult) -> Sample:
    return Sample(run.energy_wh or 0.0, run.seconds, None if run.bed is None else run.bed.share)


def _of(measured: Measurement) -> Sample:
    seconds = measured.end_s - measured.start_s
    return Sample(measured.energy.energy_wh, seconds, None if measured.bed is None else measured.bed.share)


def _moved(
    asked: Question, *, start_by_s: float = 0.0, end_by_s: float = 0.0
) -> tuple[str, list[Sample] | None]:
    """The runs with one edge moved, and what that is called; None where a trace does not allow it."""
    found = [asked.measured(run, start_by_s=start_by_s, end_by_s=end_by_s) for run in asked.runs]
    samples = [_of(measured) for measured in found if measured is not None]
    each = "the run" if asked.run is not None else "every run"
    what = f"If {each} ended {duration(end_by_s)} later"
    if start_by_s:
        what = f"If {each} started one sample ({duration(-start_by_s)}) earlier"
    return what, samples if samples and len(samples) == len(asked.runs) else None


def _read_otherwise(asked: Question, run: RunResult) -> tuple[str, list[Sample] | None]:
    """The run with the values of its log taken for the other thing that they may stand for."""
    trace, log = asked.trace_of(run), asked.log_of(run)
    if trace is None or log is None or run.start_s is None or run.end_s is None:
        return "", None
    kind: Sampling = "averaged" if trace.kind == "sampled" else "sampled"
    read = evolve(trace, kind=kind, key=f"{trace.key} read as {kind}")
    activity = seen(trace, (asked.activities or {}).get(log.id)).activity
    measured = measure(
        Seen(read, activity),
        run.start_s,
        run.end_s,
        asked.comparison.boundary,
        asked.study.meter(log.meter_id),
    )
    return f"If the log held {_HELD[kind]}", None if measured is None else [_of(measured)]


def _one_sample_s(asked: Question) -> float:
    """The longest usual interval of the logs of these runs. [s]"""
    traces = [asked.trace_of(run) for run in asked.runs]
    return max((trace.median_s for trace in traces if trace is not None), default=0.0)


def _others(asked: Question, quantity: Quantity, base: float) -> list[str]:
    """The mean without each of the runs that matter most, and with each that was left out."""
    mean, runs = _MEAN[quantity.key], asked.runs
    changes: list[tuple[float, str]] = []
    if len(runs) > 1:
        for run in runs:
            value = mean([_sample(other) for other in runs if other is not run])
            if value is not None:
                changes.append((value - base, f"Without {run.name}"))
    changes.sort(key=lambda pair: -abs(pair[0]))
    said = changes[:MOST_WITHOUT]
    for run in shown_runs(asked.machine):
        if not run.included and run.energy_wh is not None:
            value = mean([*map(_sample, runs), _sample(run)])
            if value is not None:
                said.append((value - base, f"With {run.name} counted too"))
    return [f"{what}: {change(by, quantity, asked.locale)}" for by, what in said]


def _boundaries(asked: Question, quantity: Quantity) -> list[str]:
    """The number under the two other boundaries."""
    said = []
    for boundary in BOUNDARIES:
        if boundary == asked.comparison.boundary:
            continue
        found = [asked.measured(run, boundary=boundary) for run in asked.runs]
        samples = [_of(measured) for measured in found if measured is not None]
        value = _MEAN[quantity.key](samples) if samples and len(samples) == len(asked.runs) else None
        if value is not None:
            said.append(f"Counting {boundary}: {shown(Measured(value, None), quantity, asked.locale)}")
    return said
