"""What one machine needs for the part: the mean of the runs that count, with its interval."""

import math
from collections import Counter
from collections.abc import Sequence
from functools import lru_cache

from attrs import evolve, frozen

from core.costs.standby import Standby
from core.faults import facts_of
from core.language import tr
from core.loads.same_load import Calibration
from core.problems import Problem, Severity
from core.results import bed_shares, standby
from core.results.bed_shares import Conditions, Made
from core.results.runs import Seen, called_by_kind, run_result
from core.results.typed import typed_result
from core.results.values import BedShare, Energy, Influence, MachineResult, Measured, RunResult
from core.study import Boundary, Machine, Meter, Run, TypedReading
from core.units import SECONDS_PER_HOUR, mean_w


@frozen(cache_hash=True)
class LogInput:
    """A log of a machine: what it is called, what was read, which meter wrote it, which stretches it has."""

    files: tuple[str, ...]
    seen: Seen | None
    meter: Meter
    runs: tuple[Run, ...]


@frozen(cache_hash=True)
class MachineInput:
    """Everything a machine's result depends on, and nothing else.

    Parameters
    ----------
    machine : Machine
    boundary : Boundary
    bed_c, room_c : float or None
        Temperatures of the test, where a run has none of its own and a hold test asks for them. [degC]
    calibration : Calibration or None
        What same-load checks tell of the meters.
    logs : tuple of LogInput
    bed_logs : tuple of (Seen, Meter)
        Logs of the bed alone.
    typed : tuple of (TypedReading, Meter)
    """

    machine: Machine
    boundary: Boundary
    bed_c: float | None = None
    room_c: float | None = None
    calibration: Calibration | None = None
    logs: tuple[LogInput, ...] = ()
    bed_logs: tuple[tuple[Seen, Meter], ...] = ()
    typed: tuple[tuple[TypedReading, Meter], ...] = ()


@lru_cache(maxsize=4096)
def machine_result(given: MachineInput) -> MachineResult:
    """The result of one machine from its logs and typed readings."""
    runs = [
        *_logged(given),
        *(
            typed_result(typed, i, meter, given.calibration)
            for i, (typed, meter) in enumerate(given.typed, start=1)
        ),
    ]
    rest, problems = _rest(given)
    result = MachineResult(
        machine_id=given.machine.id,
        name=given.machine.name,
        slot=given.machine.slot,
        files=tuple(name for log in given.logs for name in log.files),
        runs=tuple(runs),
        energy_wh=None,
        parts_per_kwh=None,
        mean_w=None,
        seconds=None,
        bed_share=None,
        bed_w=None,
        standby_w=None if rest is None else Measured(rest.power_w, rest.u95_w),
        standby_way=None if rest is None else rest.way,
        problems=problems,
    )
    return _with_means(result) if result.included else result


def _logged(given: MachineInput) -> list[RunResult]:
    """The stretches of the machine's logs, each with the best share of its bed that can be had."""
    numbers: Counter[str] = Counter()
    made = []
    for log in given.logs:
        for run in log.runs:
            called = called_by_kind(run.kind)
            numbers[called] += 1
            name = f"{tr(called)} {numbers[called]}"
            result = run_result(
                run, given.machine.id, name, log.seen, given.boundary, log.meter, given.calibration
            )
            made.append(Made(run, result, log.seen, log.meter))
    conditions = Conditions(given.boundary, given.bed_c, given.room_c, given.calibration)
    return bed_shares.best(made, given.bed_logs, conditions)


def _rest(given: MachineInput) -> tuple[Standby | None, tuple[Problem, ...]]:
    """Standby of the machine, and what went wrong with it."""
    try:
        best = standby.best_standby(((log.seen, log.meter) for log in given.logs), given.calibration)
    except Exception as error:  # noqa: BLE001  # a fault of ours in a rest must not cost the runs
        facts = {"machine": given.machine.name, **facts_of(error)}
        return None, (Problem("standby.fault", Severity.ERROR, facts=facts),)
    return (None if best is None else best[0]), ()


def forget() -> None:
    """Let go of every remembered machine."""
    machine_result.cache_clear()
    bed_shares.forget()
    standby.forget()


def _with_means(result: MachineResult) -> MachineResult:
    from core.uncertainty import mean_of

    counted = result.included
    energies = [run.energy for run in counted if run.energy is not None]
    mean = mean_of(energies)
    energy = mean.energy_wh
    seconds = mean_with_spread([run.seconds for run in counted if run.seconds is not None])
    power = _mean_power(counted, energy, seconds)
    share = mean_share([run.bed for run in counted if run.bed is not None])
    return evolve(
        result,
        energy_wh=energy,
        parts_per_kwh=mean.parts_per_kwh,
        mean_w=power,
        seconds=seconds,
        bed_share=share,
        bed_w=None if share is None or power is None else share.value * power.value,
        influences=mean.influences,
    )


def _mean_power(runs: Sequence[RunResult], energy: Measured, seconds: Measured | None) -> Measured | None:
    """Mean power: mean energy over mean duration, so that the three agree; interval by the runs' powers."""
    from core.uncertainty import mean_of

    timed = [(r.energy, r.seconds) for r in runs if r.energy is not None and r.seconds]
    if seconds is None or not timed:
        return None
    whole = len(timed) == len(runs)
    powers = [_scaled(used, SECONDS_PER_HOUR / length) for used, length in timed]
    mean = mean_of(powers).energy_wh
    return Measured(mean_w(energy.value, seconds.value) if whole else mean.value, mean.u95)


def _scaled(energy: Energy, factor: float) -> Energy:
    """The energy and its influences times a number known exactly: here the power over its run."""
    return evolve(
        energy,
        energy_wh=energy.energy_wh * factor,
        influences=tuple(Influence(i.name, i.u_wh * factor, i.shared, i.df) for i in energy.influences),
        problems=(),
    )


def mean_with_spread(values: Sequence[float]) -> Measured | None:
    """Mean of repeats with Student's interval; None of nothing, no interval of one value.

    Examples
    --------
    >>> mean_with_spread([2.0])
    Measured(value=2.0, u95=None)
    """
    from core.stats import t_interval

    if len(values) < 2:
        return Measured(values[0], None) if values else None
    interval = t_interval(values)
    return Measured(interval.mean, interval.half_width)


def mean_share(beds: Sequence[BedShare]) -> Measured | None:
    """Mean bed share of the runs that have one.

    What a run's share is unsure of (where the level with the bed off lies) is the same in every run of a
    machine, so the mean of the runs' own intervals is kept whole and joined with Student's interval of the
    spread.
    """
    known = [bed for bed in beds if bed.share is not None]
    spread = mean_with_spread([bed.share for bed in known if bed.share is not None])
    if spread is None:
        return None
    own = [bed.share_u95 for bed in known if bed.share_u95 is not None]
    if not own:
        return spread
    return Measured(spread.value, math.hypot(spread.u95 or 0.0, math.fsum(own) / len(own)))
