"""Loads of machines by their switch-on tests, and their sum held against the watts of processing.

Rules: what is on before the first step is called electronics. A step that nobody named is named by the
program only where the test itself says what it is: a heater that lets go, or one load that goes off again.
The watts of a held heater are what stays of its step. Names that the user gave win.
"""

import itertools
import math
from collections.abc import Mapping, Sequence
from functools import lru_cache

from attrs import evolve, frozen

from core.energy.integral import mean_w
from core.loads.names import BY_KEY, ELECTRONICS, HEATING_OF, LOADS
from core.loads.steps import Plateau, Staircase, find_steps, interval_w
from core.results.checked_logs import checked_logs
from core.results.holds import gain_u
from core.results.load_naming import AGREE_PART, AGREE_U, LoadStep, On, named_steps, switch
from core.results.values import Comparison, Measured
from core.stats import t_interval
from core.study import Log, Machine, Meter, Run, Study
from core.traces import Trace
from core.uncertainty import NORMAL_95

#: so much before and after a test is looked at for the levels it starts from and ends at [s]
AROUND_S = 600.0
#: idle loads are searched for among so many
_MOST_SEARCHED = 10


@frozen
class LoadWatts:
    """What a load takes, in standard uncertainty without the meter's gain, and as an interval. [W]

    ``each`` are the values it was made of, with the numbers of the steps that gave each (none for what was on
    before the first step).
    """

    load: str
    watts: float
    u_w: float
    df: float
    u95_w: float
    is_idle: bool = False
    is_idle_by_user: bool = False
    each: tuple["Single", ...] = ()


@frozen
class Single:
    """One value of a load: its watts with their standard uncertainty, and the steps that gave it. [W]"""

    watts: float
    u_w: float
    steps: tuple[int, ...]


@frozen
class LoadTest:
    """One test of a machine: where it lies on its log's clock, and its plateaus. [s]

    ``first`` is the number of its first step; each step lies between two plateaus.
    """

    run_id: str
    log_id: str
    start_s: float
    end_s: float
    plateaus: tuple[Plateau, ...]
    first: int


@frozen
class MachineLoads:
    """The loads of one machine.

    ``processing_w`` is the mean power from warm-up to end of the included runs; ``sum_w`` adds up the loads
    that draw all through processing; ``unexplained_w`` is the rest. None where they cannot be told.
    ``unnamed`` counts steps up that have no name. ``stairs`` are the tests in which steps were found, and
    ``processing_runs`` the mean watts of processing of each run by its id. [W]
    """

    machine_id: str
    name: str
    slot: int
    tests: int
    steps: tuple[LoadStep, ...] = ()
    loads: tuple[LoadWatts, ...] = ()
    processing_w: Measured | None = None
    sum_w: Measured | None = None
    unexplained_w: Measured | None = None
    unnamed: int = 0
    stairs: tuple[LoadTest, ...] = ()
    processing_runs: tuple[tuple[str, float], ...] = ()

    def of(self, load: str) -> LoadWatts | None:
        """What a load takes; None where no step is called so."""
        return next((w for w in self.loads if w.load == load), None)


@frozen
class Loads:
    """The loads of all machines of a study, in its order."""

    machines: tuple[MachineLoads, ...]

    @property
    def tested(self) -> tuple[MachineLoads, ...]:
        """Machines with a test in which a step was found."""
        return tuple(m for m in self.machines if m.steps)


def loads(study: Study, traces: Mapping[str, Trace], comparison: Comparison | None = None) -> Loads:
    """Loads of a study's machines.

    Parameters
    ----------
    study : Study
    traces : mapping of log id to Trace
    comparison : Comparison, optional
        For the watts of processing; without it nothing is held against them.

    Returns
    -------
    Loads
    """
    study, traces = checked_logs(study, traces)
    return Loads(tuple(_machine(m, study, traces, comparison) for m in study.machines))


@lru_cache(maxsize=256)
def _stairs(trace: Trace, start_s: float, end_s: float, meter: Meter) -> Staircase:
    return find_steps(trace, start_s, end_s, meter)


def forget() -> None:
    """Let go of everything remembered."""
    _stairs.cache_clear()


def _machine(
    machine: Machine, study: Study, traces: Mapping[str, Trace], comparison: Comparison | None
) -> MachineLoads:
    tests = [
        (run, log)
        for log in study.logs_of(machine.id)
        if not log.of_bed
        for run in study.runs_of(log.id)
        if run.kind == "switch-on test" and run.set_included is not False
    ]
    steps: list[LoadStep] = []
    measured: list[LoadWatts] = []
    gains = [0.0]
    shown: list[LoadTest] = []
    for run, log in tests:
        trace, meter = traces.get(log.id), study.meter(log.meter_id)
        if trace is None:
            continue
        stairs = _stairs(trace, *_around(run, log, study, trace), meter)
        if not stairs.steps:
            continue
        gains.append(gain_u(meter))
        around = _around(run, log, study, trace)
        shown.append(LoadTest(run.id, log.id, *around, stairs.plateaus, len(steps) + 1))
        named = named_steps(_steps_of(stairs, run, log, gain_u(meter)), study, len(steps))
        steps += named
        measured += _measured(named, stairs)
    gain = max(gains)
    found = _together(measured, gain)
    marked = tuple(_with_users_word(w, machine.id, study) for w in found)
    by_run = _processing_w(machine.id, study, traces, comparison) if found else ()
    processing = _mean_of_runs([watts for _, watts in by_run])
    metered = {log.meter_id for _, log in tests}
    used = {
        log.meter_id for log in study.logs_of(machine.id) if any(r.included for r in study.runs_of(log.id))
    }
    apart = 0.0 if used <= metered else max(gain_u(study.meter(m)) for m in used)
    total, rest = _against(marked, processing, gain, apart)
    return MachineLoads(
        machine_id=machine.id,
        name=machine.name,
        slot=machine.slot,
        tests=len(tests),
        steps=tuple(steps),
        loads=marked,
        processing_w=processing,
        sum_w=total,
        unexplained_w=rest,
        unnamed=sum(s.watts > 0 and not s.load for s in steps),
        stairs=tuple(shown),
        processing_runs=by_run,
    )


def _around(run: Run, log: Log, study: Study, trace: Trace) -> tuple[float, float]:
    """The test with the rest before and after it, up to the next stretches."""
    others = [r for r in study.runs_of(log.id) if r.id != run.id and r.kind != "nothing"]
    before = max((r.end_s for r in others if r.end_s <= run.start_s), default=0.0)
    after = min((r.start_s for r in others if r.start_s >= run.end_s), default=trace.end_s)
    return max(run.start_s - AROUND_S, before, 0.0), min(run.end_s + AROUND_S, after, trace.end_s)


def _steps_of(stairs: Staircase, run: Run, log: Log, gain: float) -> list[LoadStep]:
    return [
        LoadStep(run.id, log.id, i, s.at_s, s.watts, s.u_w, s.df, s.u95_w(gain))
        for i, s in enumerate(stairs.steps, start=1)
    ]


def _measured(steps: list[LoadStep], stairs: Staircase) -> list[LoadWatts]:
    """One value for each time that a load was turned on or off."""
    base = stairs.plateaus[0]
    found = [
        LoadWatts(
            ELECTRONICS,
            base.low_w,
            base.low_u_w,
            base.df,
            0.0,
            is_idle=True,
            each=(Single(base.low_w, base.low_u_w, ()),),
        )
    ]
    heated = 0
    on: On = {}
    open_at: dict[str, int] = {}
    for step in steps:
        if step.is_all:
            on.clear()
            open_at.clear()
        if not step.load:
            continue
        was_on = on.get(step.load)
        heats = HEATING_OF.get(step.load) in on and step.watts < 0
        switch(on, step)
        if step.watts > 0 or heats:
            watts, u_w = on[step.load]
            numbers: tuple[int, ...] = (heated, step.number) if heats else (step.number,)
            if was_on is not None and step.load in open_at:  # more of the same load
                numbers = (*found[open_at[step.load]].each[0].steps, step.number)
            value = LoadWatts(step.load, watts, u_w, step.df, 0.0, each=(Single(watts, u_w, numbers),))
            heated = step.number if BY_KEY[step.load].held_by else heated
            if was_on is not None and step.load in open_at:
                found[open_at[step.load]] = value
            else:
                open_at[step.load] = len(found)
                found.append(value)
        elif step.load not in HEATING_OF:
            open_at.pop(step.load, None)
            single = Single(-step.watts, step.u_w, (step.number,))
            found.append(LoadWatts(step.load, -step.watts, step.u_w, step.df, 0.0, each=(single,)))
    return _marked(found, stairs, on)


def _marked(found: list[LoadWatts], stairs: Staircase, on: On) -> list[LoadWatts]:
    """Loads that still run at the end: those that were not turned off, or the only ones that add up to it."""
    first, last = stairs.plateaus[0], stairs.plateaus[-1]
    left_w, left_u_w = last.low_w - first.low_w, math.hypot(last.low_u_w, first.low_u_w)
    names = [w for w in found if w.load != ELECTRONICS and BY_KEY[w.load].in_processing]
    if left_w <= max(AGREE_U * left_u_w, AGREE_PART * first.low_w):
        return found

    def is_left(some: Sequence[LoadWatts]) -> bool:
        u_w = math.hypot(left_u_w, *(w.u_w for w in some))
        return abs(sum(w.watts for w in some) - left_w) <= max(AGREE_U * u_w, AGREE_PART * left_w)

    still = [w for w in names if w.load in on]
    if still and is_left(still):
        return _idle(found, {w.load for w in still})
    if not names or len(names) > _MOST_SEARCHED:
        return found
    fits = [
        {w.load for w in some}
        for many in range(1, len(names) + 1)
        for some in itertools.combinations(names, many)
        if is_left(some)
    ]
    if not fits or any(fit != fits[0] for fit in fits):
        return found
    return _idle(found, fits[0])


def _idle(found: list[LoadWatts], names: set[str]) -> list[LoadWatts]:
    return [evolve(w, is_idle=True) if w.load in names else w for w in found]


def _together(measured: list[LoadWatts], gain: float) -> tuple[LoadWatts, ...]:
    """Values of one load weighted into one, in the order of the list of loads."""
    found = []
    for load in LOADS:
        values = [w for w in measured if w.load == load.key]
        if not values:
            continue
        weights = [1 / max(w.u_w, 1e-9) ** 2 for w in values]
        total = sum(weights)
        watts = sum(w.watts * k for w, k in zip(values, weights, strict=True)) / total
        u_w, df = total**-0.5, min(w.df for w in values)
        if len(values) > 1:  # what values of one load differ by is no noise of rows
            scatter = sum(k * (w.watts - watts) ** 2 for w, k in zip(values, weights, strict=True))
            u_w *= max(1.0, math.sqrt(scatter / (len(values) - 1)))
        is_idle = any(w.is_idle for w in values)
        each = tuple(single for w in values for single in w.each)
        u95_w = interval_w(watts, u_w, df, gain)
        found.append(LoadWatts(load.key, watts, u_w, df, u95_w, is_idle, each=each))
    return tuple(found)


def _with_users_word(watts: LoadWatts, machine_id: str, study: Study) -> LoadWatts:
    said = next((i for i in study.idle_loads if (i.machine_id, i.load) == (machine_id, watts.load)), None)
    return watts if said is None else evolve(watts, is_idle=said.is_idle, is_idle_by_user=True)


def _processing_w(
    machine_id: str, study: Study, traces: Mapping[str, Trace], comparison: Comparison | None
) -> tuple[tuple[str, float], ...]:
    """Mean power of processing of each included run, by its id. [W]"""
    results = comparison.machines if comparison is not None else ()
    machine = next((m for m in results if m.machine_id == machine_id), None)
    means: list[tuple[str, float]] = []
    for result in machine.included if machine is not None else ():
        run = next((r for r in study.runs if r.id == result.run_id), None)
        trace = traces.get(run.log_id) if run is not None else None
        spans = [s for s in result.states if s.state == "processing"]
        if trace is None or not spans:
            continue
        seconds = sum(s.end_s - s.start_s for s in spans)
        joules = sum(mean_w(trace, s.start_s, s.end_s) * (s.end_s - s.start_s) for s in spans)
        means.append((result.run_id, joules / seconds))
    return tuple(means)


def _mean_of_runs(means_w: list[float]) -> Measured | None:
    """The mean of several runs with the interval of their spread alone; one has none. [W]"""
    if len(means_w) < 2:
        return Measured(means_w[0], None) if means_w else None
    interval = t_interval(means_w)
    return Measured(interval.mean, interval.half_width)


def _against(
    found: tuple[LoadWatts, ...], processing: Measured | None, gain: float, apart: float
) -> tuple[Measured | None, Measured | None]:
    """The sum of what draws all through processing, and what is left of its watts.

    ``apart`` is the relative uncertainty of the runs' meter where it is not that of the test, else 0: the
    gain of one meter scales what is left, those of two scale each its own.
    """
    counted = [w for w in found if BY_KEY[w.load].in_processing]
    if not counted:
        return None, None
    total_w = sum(w.watts for w in counted)
    u_w = math.sqrt(sum(w.u_w**2 for w in counted))
    df = min(w.df for w in counted)
    total = Measured(total_w, interval_w(total_w, u_w, df, gain))
    if processing is None:
        return total, None
    rest_w = processing.value - total_w
    if apart:
        own_w = math.hypot(total.u95 or 0.0, NORMAL_95 * apart * processing.value)
    else:
        own_w = interval_w(rest_w, u_w, df, gain)
    u95_w = None if processing.u95 is None else math.hypot(own_w, processing.u95)
    return total, Measured(rest_w, u95_w)
