"""Study and traces into the comparison.

Theory of operation: the study is cut into one `MachineInput` a machine, which holds all that the machine's
result depends on; results and pairs are remembered by these, so that an edit of one run computes only its
machine and the pairs of its machine again.
"""

from collections import defaultdict
from collections.abc import Mapping
from functools import lru_cache
from typing import TYPE_CHECKING

from attrs import evolve, frozen

from core.activity import Activity
from core.plan.scatter import scatter
from core.results import answer, checked_logs, fairness, holds, machine, runs
from core.results.checked_meters import calibration
from core.results.fairness_accepted import with_acceptances
from core.results.fairness_temperatures import StatedConditions, unseen
from core.results.machine import LogInput, MachineInput, machine_result
from core.results.runs import Seen, seen
from core.results.values import Comparison, MachineResult, Pair
from core.study import Log, Machine, Run, Study
from core.traces import Trace

if TYPE_CHECKING:
    from core.uncertainty import Mean

#: level at which a difference counts as shown
ALPHA = 0.05
#: with more machines than this only neighbours in the order, and each against the best, are paired
ALL_PAIRS_UP_TO = 30
#: differences of which the number of runs needed is told, in percent, the usual one first
TOLD_PERCENT = (5.0, 10.0, 20.0)
#: finer differences, told where five percent would have been shown already
FINER_PERCENT = (3.0, 2.0, 1.0)
#: nobody makes more runs than this for a comparison
MANY_RUNS = 100


def compare(
    study: Study, traces: Mapping[str, Trace], activities: Mapping[str, Activity] | None = None
) -> Comparison:
    """The comparison of a study's machines.

    Parameters
    ----------
    study : Study
    traces : mapping of log id to Trace
        A log that is missing here has not been read: its runs are listed without values.
    activities : mapping of log id to Activity, optional
        What was found in the traces, where somebody has it already; else it is found here and remembered.

    Returns
    -------
    Comparison
        Machines by energy per part, those without a value last.
    """
    inputs = machine_inputs(study, traces, activities or {})
    results = {given.machine.id: machine_result(given) for given in inputs}
    by_id = {given.machine.id: given for given in inputs}
    order = tuple(sorted(results.values(), key=_by_energy))
    pairs = _pairs([by_id[m.machine_id] for m in order if m.energy_wh is not None])
    test = StatedConditions(study.bed_c, study.room_c)
    told = fairness.findings(inputs, order, pairs, test)
    told, accepted_before = with_acceptances(told, study.accepted)
    comparison = Comparison(
        part=study.part,
        boundary=study.boundary,
        machines=order,
        pairs=pairs,
        fairness=told,
        accepted_before=accepted_before,
        unseen=unseen([by_id[m.machine_id] for m in order if m.energy_wh is not None], test),
        problems=(
            *(problem for m in order for problem in m.problems),
            *(
                evolve(problem, file=problem.file or f"{m.name}, {run.name}")
                for m in order
                for run in m.included
                for problem in run.problems
            ),
        ),
        headline="",
        conditions="",
    )
    return evolve(
        comparison, headline=answer.headline(comparison), conditions=answer.conditions(comparison, study)
    )


def forget() -> None:
    """Let go of everything remembered, and of the traces with it: when a study is closed."""
    from core import uncertainty

    uncertainty.forget()
    runs.forget()
    machine.forget()
    holds.forget()
    checked_logs.forget()
    _repeats.cache_clear()
    _pair.cache_clear()
    fairness.forget()


def machine_inputs(
    study: Study, traces: Mapping[str, Trace], activities: Mapping[str, Activity]
) -> tuple[MachineInput, ...]:
    """The study cut into what each machine's result depends on."""
    runs_of: dict[str, list[Run]] = defaultdict(list)
    for run in study.runs:
        runs_of[run.log_id].append(run)
    logs_of: dict[str, list[Log]] = defaultdict(list)
    bed_logs_of: dict[str, list[Log]] = defaultdict(list)
    for log in study.logs:
        # the log of a bed alone holds no run of the machine
        (bed_logs_of if log.of_bed else logs_of)[log.machine_id].append(log)
    meters = {meter.id: meter for meter in study.meters}
    known = calibration(study.meters, study.checks)
    # temperatures matter only where a hold test is carried over to the runs
    tested = {run.log_id for run in study.runs if run.kind == "hold test"}

    def has_hold_test(machine: Machine) -> bool:
        return any(log.id in tested for log in logs_of[machine.id])

    def seen_of(log: Log) -> Seen | None:
        trace = traces.get(log.id)
        return None if trace is None else seen(trace, activities.get(log.id))

    def log_input(log: Log) -> LogInput:
        found = seen_of(log)
        stretches = tuple(sorted(runs_of[log.id], key=lambda run: run.start_s))
        files = tuple(source.file_name for source in log.sources)
        return LogInput(files, found, meters[log.meter_id], stretches)

    return tuple(
        MachineInput(
            machine=each,
            boundary=study.boundary,
            bed_c=study.bed_c if has_hold_test(each) else None,
            room_c=study.room_c if has_hold_test(each) else None,
            calibration=known,
            bed_logs=tuple(
                (found, meters[log.meter_id]) for log in bed_logs_of[each.id] if (found := seen_of(log))
            ),
            logs=_by_time([log_input(log) for log in logs_of[each.id]]),
            typed=tuple((t, meters[t.meter_id]) for t in study.typed if t.machine_id == each.id),
        )
        for each in study.machines
    )


def _by_time(logs: list[LogInput]) -> tuple[LogInput, ...]:
    """The logs of a machine in the order in which they were taken, where all their clocks tell it."""
    starts = [None if log.seen is None else log.seen.trace.clock.start_s for log in logs]
    known = [start for start in starts if start is not None]
    if len(known) < len(logs):
        return tuple(logs)
    return tuple(logs[i] for i in sorted(range(len(logs)), key=known.__getitem__))


def _by_energy(result: MachineResult) -> tuple[bool, float, str]:
    known = result.energy_wh is not None
    return (not known, result.energy_wh.value if result.energy_wh else 0.0, result.name)


@frozen
class _Raw:
    """Two machines against each other before other pairs are taken into account.

    ``p`` of the ratio, with what the meters leave open; the energies of the repeats for a test of their own;
    their relative spreads, and what no repeat lessens. None and empty where one of the two was not repeated.
    """

    pair: Pair
    p: float | None
    repeats_wh: tuple[tuple[float, ...], ...] = ()
    spreads: tuple[float, float] = (0.0, 0.0)
    shared_u: float = 0.0


def _pairs(given: list[MachineInput]) -> tuple[Pair, ...]:
    """Every pair that is told, best machine first, judged by two tests.

    The repeats alone are tested by Welch's way, or by Games and Howell's where there are more than two
    machines; the ratio with all that the meters leave open is tested by itself, its p adjusted for the number
    of pairs (Holm). A difference is shown where both say so: the larger p decides.
    """
    from core.stats import holm

    indices = [
        (i, k)
        for i in range(len(given))
        for k in range(i + 1, len(given))
        if len(given) <= ALL_PAIRS_UP_TO or i == 0 or k == i + 1
    ]
    raws = [_pair(given[i], given[k]) for i, k in indices]
    tested = [raw for raw in raws if raw.p is not None]
    machines = len({id_ for raw in tested for id_ in (raw.pair.machine_id, raw.pair.other_id)})
    adjusted = dict(zip(map(id, tested), holm([raw.p for raw in tested if raw.p is not None]), strict=True))
    return tuple(_judged(raw, adjusted.get(id(raw)), machines, len(tested)) for raw in raws)


def _judged(raw: _Raw, ratio_p: float | None, machines: int, pairs: int) -> Pair:
    """A difference is shown when both tests say so; without a spread on both sides nothing is judged."""
    from core.stats import repeats_p

    if ratio_p is None:
        return raw.pair
    by_repeats = repeats_p(*raw.repeats_wh, machines)
    p = max(ratio_p, by_repeats)
    judged = evolve(raw.pair, p=p, shown=p < ALPHA, ratio_p=ratio_p, repeats_p=by_repeats, tested=machines)
    if judged.shown:
        return judged
    runs, percent = _needed(raw, machines, pairs)
    return evolve(judged, runs_needed=runs, needed_percent=percent)


@frozen
class _Repeats:
    """The runs of a machine that count, for all its pairs: their mean, their energies, how they scatter."""

    mean: "Mean"
    energies_wh: tuple[float, ...]
    scatter: float | None


@lru_cache(maxsize=4096)
def _repeats(given: MachineInput) -> _Repeats:
    from core.uncertainty import mean_of

    energies = [run.energy for run in machine_result(given).included if run.energy is not None]
    return _Repeats(mean_of(energies), tuple(e.energy_wh for e in energies), scatter(energies))


@lru_cache(maxsize=65_536)
def _pair(one: MachineInput, other: MachineInput) -> _Raw:
    """Two machines by the ratio of their means, in which what one meter gives both cancels."""
    from core.uncertainty import ratio

    first, second = _repeats(one), _repeats(other)
    found = ratio(first.mean, second.mean)
    pair = Pair(
        machine_id=one.machine.id,
        other_id=other.machine.id,
        ratio=found.value,
        ratio_low=found.low,
        ratio_high=found.high,
        p=None,
        shown=None,
    )
    if first.scatter is None or second.scatter is None:
        return _Raw(pair, None)
    repeats_wh = (first.energies_wh, second.energies_wh)
    return _Raw(pair, found.p, repeats_wh, (first.scatter, second.scatter), found.u_shared)


def _needed(raw: _Raw, machines: int, pairs: int) -> tuple[int | None, float | None]:
    """How many runs of each would show how many percent: the usual five, or what is worth telling instead."""
    from core.plan.power import Spread, runs_needed

    spread = Spread(*raw.spreads, raw.shared_u, machines, pairs)
    runs = min(len(repeats) for repeats in raw.repeats_wh)

    def needed(percent: float) -> int | None:
        return runs_needed(percent / 100, spread)

    usual = needed(TOLD_PERCENT[0])
    if usual is not None and usual <= runs:
        # a difference of five percent would have been shown already
        for percent in FINER_PERCENT:
            count = needed(percent)
            if count is None or count > runs:
                break
        return count, percent
    for percent in TOLD_PERCENT:
        count = needed(percent)
        if count is not None and count <= MANY_RUNS:
            return count, percent
    return None, TOLD_PERCENT[-1]
