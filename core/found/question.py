"""What was asked, with everything that is known: the study, its traces, its comparison."""

from collections.abc import Mapping

from attrs import frozen

from core.activity import Activity
from core.formatting import POINT, NumberLocale
from core.language import tr
from core.progress import Progress, silent
from core.quantities import BED_SHARE, DURATION, STANDBY_W, Quantity
from core.results.runs import Measurement, measure, seen
from core.results.values import Comparison, MachineResult, Measured, RunResult
from core.study import Log, Meter, Run, Study
from core.traces import Trace


@frozen(eq=False)
class Question:
    """One number of a comparison. ``run`` is None for the machine's own number.

    ``traces`` and ``activities`` are by log id; a log that is missing there has not been read. `progress` is
    told of every measurement that is made again, and may raise `Cancelled`.
    """

    comparison: Comparison
    study: Study
    traces: Mapping[str, Trace]
    machine: MachineResult
    run: RunResult | None = None
    activities: Mapping[str, Activity] | None = None
    locale: NumberLocale = POINT
    progress: Progress = silent

    @property
    def runs(self) -> tuple[RunResult, ...]:
        """The run that is asked for, or those that count for the machine."""
        return self.machine.included if self.run is None else (self.run,)

    @property
    def who(self) -> str:
        """Machine and run by name."""
        if self.run is None or not self.run.name:
            return self.machine.name
        return f"{self.machine.name}, {self.run.name}"

    def log_of(self, run: RunResult) -> Log | None:
        """The log a run lies in; None for typed readings."""
        stretch = self.stretch_of(run)
        return None if stretch is None else self.study.log(stretch.log_id)

    def trace_of(self, run: RunResult) -> Trace | None:
        """The trace a run lies in, if it has been read."""
        log = self.log_of(run)
        return None if log is None else self.traces.get(log.id)

    def meter_of(self, run: RunResult) -> Meter | None:
        """The meter that measured a run."""
        log = self.log_of(run)
        if log is not None:
            return self.study.meter(log.meter_id)
        typed = next((t for t in self.study.typed if t.id == run.run_id), None)
        return None if typed is None else self.study.meter(typed.meter_id)

    def stretch_of(self, run: RunResult) -> Run | None:
        """The stretch of the study behind a run; None for typed readings."""
        return next((r for r in self.study.runs if r.id == run.run_id), None)

    def measured(self, run: RunResult) -> Measurement | None:
        """What was measured of a run before any meter was corrected; None where there is no trace."""
        log, trace = self.log_of(run), self.trace_of(run)
        if log is None or trace is None or run.start_s is None or run.end_s is None:
            return None
        self.progress(0.5, tr("how a number of {name} was found", name=self.machine.name))
        activity = (self.activities or {}).get(log.id)
        meter = self.study.meter(log.meter_id)
        return measure(seen(trace, activity), run.start_s, run.end_s, self.comparison.boundary, meter)

    def value(self, quantity: Quantity) -> Measured | None:
        """The number that is asked for, in the core's own unit."""
        if self.run is None or quantity is STANDBY_W:
            known: Measured | None = getattr(self.machine, quantity.key)
            return known
        return value_of(self.run, quantity)


def value_of(run: RunResult, quantity: Quantity) -> Measured | None:
    """A run's value with its own interval; that of the energy carries over to what is made of it."""
    if quantity is BED_SHARE:
        bed = run.bed
        return None if bed is None or bed.share is None else Measured(bed.share, bed.share_u95)
    value: float | None = getattr(run, quantity.key)
    if value is None:
        return None
    if quantity is DURATION or not run.energy_wh or run.energy_u95_wh is None:
        return Measured(value, None)
    return Measured(value, abs(value) * run.energy_u95_wh / run.energy_wh)
