"""Runs that can be laid beside each other: each with its trace, its moments and its place on a common axis.

A common axis counts from the moment at which the runs are lined up, in seconds; or, by share of duration,
from 0 at the start of each run to 1 at its end.
"""

from collections.abc import Collection, Iterator, Mapping
from functools import cached_property
from itertools import islice

import numpy as np
from attrs import field, frozen

from core.energy.integral import pieces
from core.language import tr
from core.line_up.choices import ANCHORS as ANCHORS
from core.line_up.choices import Anchor as Anchor
from core.line_up.course import Course
from core.results.values import Comparison, MachineResult, RunResult, StateSpan
from core.study import Boundary, Meter, Study
from core.traces import F64, Gap, Trace


@frozen
class Strand:
    """One run with what it takes to line it up.

    Parameters
    ----------
    start_s, end_s : float
        What counts of the run under the comparison's boundary, on the log's clock. [s]
    warm_s : float
        When warm-up ends; equal to `start_s` where none is seen or none counts. [s]
    energy_wh : float
        Energy counted, by the best way there is. [Wh]
    """

    run_id: str
    machine_id: str
    machine: str
    name: str
    slot: int
    trace: Trace
    meter: Meter = field(eq=False)
    start_s: float
    end_s: float
    warm_s: float
    energy_wh: float
    states: tuple[StateSpan, ...] = ()
    included: bool = True

    @property
    def seconds(self) -> float:
        """Length of what counts. [s]"""
        return self.end_s - self.start_s

    @property
    def label(self) -> str:
        """The machine's and the run's name, and whether it does not count."""
        if self.included:
            return f"{self.machine}, {self.name}"
        return tr("{machine}, {run} (not counted)", machine=self.machine, run=self.name)

    @cached_property
    def course(self) -> Course:
        """The energy used up to any moment."""
        return Course.of(pieces(self.trace, self.start_s, self.end_s))

    @cached_property
    def gaps(self) -> tuple[Gap, ...]:
        """The gaps of the trace that reach into the run."""
        return tuple(g for g in self.trace.gaps if g.end_s > self.start_s and g.start_s < self.end_s)

    @property
    def closing(self) -> float:
        """By what the power column's energy is multiplied to end at the energy that counts.

        The counter may know what the power column missed between its samples.
        """
        by_power_wh = self.course.energy_wh
        return self.energy_wh / by_power_wh if by_power_wh > 0 and self.energy_wh > 0 else 1.0

    def origin_s(self, anchor: Anchor) -> float:
        """The moment that lies at 0 of the common axis. [s]"""
        if anchor == "end of warm-up":
            return self.warm_s
        return self.end_s if anchor == "end" else self.start_s

    def place(self, at_s: F64, anchor: Anchor) -> F64:
        """Where moments of the log's clock lie on the common axis. [s], or a share from 0 to 1"""
        moved = np.asarray(at_s, dtype=np.float64) - self.origin_s(anchor)
        return moved / self.seconds if anchor == "share of duration" else moved

    def moment_s(self, place: F64, anchor: Anchor) -> F64:
        """The moments of the log's clock that lie at places of the common axis. [s]"""
        scale = self.seconds if anchor == "share of duration" else 1.0
        return np.asarray(place, dtype=np.float64) * scale + self.origin_s(anchor)

    def reach(self, anchor: Anchor) -> tuple[float, float]:
        """From where to where the run lies on the common axis."""
        low, high = self.place(np.array([self.start_s, self.end_s]), anchor)
        return float(low), float(high)


def strands(
    study: Study,
    comparison: Comparison,
    traces: Mapping[str, Trace],
    chosen: Collection[str] | None = None,
) -> tuple[Strand, ...]:
    """The runs of a comparison that can be lined up, machines in its order.

    Parameters
    ----------
    study : Study
    comparison : Comparison
        Of this study.
    traces : mapping of log id to Trace
    chosen : collection of str, optional
        Run ids; without it all that count.

    Returns
    -------
    tuple of Strand
        Without typed readings (they have no trace) and runs whose log has not been read.
    """
    wanted = _wanted(study, comparison, traces, chosen)
    return tuple(_strand(*each, comparison.boundary) for each in wanted)


def first_strands(
    study: Study, comparison: Comparison, traces: Mapping[str, Trace], most: int
) -> tuple[tuple[Strand, ...], int]:
    """The first runs that count and can be lined up, and how many more there are.

    Of the thousands of a farm only those are made that are returned.

    Parameters
    ----------
    study : Study
    comparison : Comparison
        Of this study.
    traces : mapping of log id to Trace
    most : int
        How many are wanted at the most.

    Returns
    -------
    first : tuple of Strand
        The beginning of what `strands` returns.
    more : int
        How many it returns beyond these.
    """
    wanted = _wanted(study, comparison, traces, None)
    first = tuple(_strand(*each, comparison.boundary) for each in islice(wanted, most))
    return first, sum(1 for _ in wanted)


def _wanted(
    study: Study, comparison: Comparison, traces: Mapping[str, Trace], chosen: Collection[str] | None
) -> Iterator[tuple[MachineResult, RunResult, Trace, Meter]]:
    """The runs that are chosen (None: that count) and can be lined up."""
    # a farm has thousands of runs: each is looked up once
    logs = {run.id: run.log_id for run in study.runs}
    meters = {meter.id: meter for meter in study.meters}
    meter_of = {log.id: meters[log.meter_id] for log in study.logs}
    for machine in comparison.machines:
        for run in machine.runs:
            is_wanted = run.included if chosen is None else run.run_id in chosen
            log_id = logs.get(run.run_id, "")
            trace = traces.get(log_id)
            if is_wanted and trace is not None and _ends_s(run, trace, comparison.boundary) is not None:
                yield machine, run, trace, meter_of[log_id]


def _ends_s(run: RunResult, trace: Trace, boundary: Boundary) -> tuple[float, float] | None:
    """From when to when a run counts; None where nothing of it does. [s]"""
    if run.start_s is None or run.end_s is None or run.energy_wh is None:
        return None
    start_s, end_s = max(0.0, run.start_s), min(trace.end_s, run.end_s)
    if boundary == "processing only":
        start_s = _warm_s(run, start_s)
    if boundary == "until cooled":
        end_s = max([end_s, *(s.end_s for s in run.states if s.state == "cooling")])
    return (start_s, end_s) if end_s > start_s else None


def _warm_s(run: RunResult, otherwise_s: float) -> float:
    """When warm-up ends, where one is seen. [s]"""
    return next((s.end_s for s in run.states if s.state == "warm-up"), otherwise_s)


def _strand(machine: MachineResult, run: RunResult, trace: Trace, meter: Meter, boundary: Boundary) -> Strand:
    ends_s = _ends_s(run, trace, boundary)
    assert ends_s is not None
    assert run.energy_wh is not None
    start_s, end_s = ends_s
    return Strand(
        run_id=run.run_id,
        machine_id=machine.machine_id,
        machine=machine.name,
        name=run.name,
        slot=machine.slot,
        trace=trace,
        meter=meter,
        start_s=start_s,
        end_s=min(end_s, trace.end_s),
        warm_s=min(max(_warm_s(run, start_s), start_s), end_s),
        energy_wh=run.energy_wh,
        states=tuple(s for s in run.states if s.end_s > start_s and s.start_s < end_s),
        included=run.included,
    )


def by_machine(given: Collection[Strand]) -> dict[str, tuple[Strand, ...]]:
    """The strands of each machine, machines in the order in which they come."""
    found: dict[str, list[Strand]] = {}
    for strand in given:
        found.setdefault(strand.machine_id, []).append(strand)
    return {machine_id: tuple(members) for machine_id, members in found.items()}
