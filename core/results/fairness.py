"""Was the test fair: what differs between the compared runs, how much each could matter, what to do about it.

Rules: limits are shares of what is usual on the same machine, never fixed watts; a finding says how much it
could move the machine's mean where that can be worked out, and is called unfair only when that is more than
the mean's own interval.
"""

import math
import statistics
from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import Literal

from attrs import frozen

from core.formatting import count, duration, number, percent
from core.problems import Problem, Severity
from core.results import fairness_between
from core.results.fairness_between import between_machines, logs_compared
from core.results.machine import MachineInput, machine_result
from core.results.plausible import implausible
from core.results.values import Finding, MachineResult, RunResult

#: a warm-up this much shorter than usual, and by at least this many seconds, is that of a warm start
WARM_START_SHARE, WARM_START_S = 0.6, 20.0
#: a warm-up this much longer than usual, and by at least this many seconds, holds a soak
SOAK_SHARE, SOAK_S = 1.6, 90.0
#: so many samples the end of a warm-up may be off: nothing is made of less
EDGE_SAMPLES = 6.0
#: processing this much longer or shorter than usual, and by at least this many seconds
LENGTH_SHARE, LENGTH_S = 0.04, 60.0
#: level of the test for an outlier, and from how many runs on it is made
OUTLIER_LEVEL, OUTLIER_RUNS = 0.05, 4
#: more of a run's time than this in gaps is told
GAP_TOLD = 0.01
#: steps of the power reading above this share of the mean power are told
RESOLUTION_SHARE = 0.01

_ORDER = {"unfair": 0, "caution": 1, "note": 2}


def findings(inputs: Sequence[MachineInput], order: Sequence[MachineResult]) -> tuple[Finding, ...]:
    """Everything worth knowing before the comparison is believed, weightiest first.

    Parameters
    ----------
    inputs : sequence of MachineInput
    order : sequence of MachineResult
        In the order in which machines are told.
    """
    by_id = {given.machine.id: given for given in inputs}
    compared = [by_id[m.machine_id] for m in order if m.energy_wh is not None]
    found = [f for m in order for f in _of_machine(by_id[m.machine_id])]
    found += between_machines(compared)
    return tuple(sorted(found, key=lambda f: (_ORDER[f.level], -(f.matters_wh or 0.0))))


def forget() -> None:
    """Let go of everything remembered."""
    _of_machine.cache_clear()
    fairness_between.forget()


@lru_cache(maxsize=4096)
def _of_machine(given: MachineInput) -> tuple[Finding, ...]:
    """What can be said of one machine by itself."""
    result = machine_result(given)
    counted = result.included
    if not counted:
        made_or_typed = bool(given.typed) or any(log.seen is not None for log in given.logs)
        return (_finding("caution", "fair.no_run", result),) if made_or_typed else ()
    found: list[Finding] = []
    if len(counted) == 1:
        found.append(_finding("caution", "fair.one_run", result))
    elif len(counted) == 2:
        found.append(_finding("note", "fair.few_runs", result))
    edge_s = EDGE_SAMPLES * max((seen.trace.median_s for seen in logs_compared(given)), default=0.0)
    found += _starts(result, edge_s)
    found += _lengths(result, edge_s)
    explained = {f.problem.fact("run") for f in found}
    found += (f for f in _outliers(result) if f.problem.fact("run") not in explained)
    found += _gaps(result)
    found += _by_hand(result)
    found += _resolution(given, result)
    found += implausible(given, result)
    return tuple(found)


def _finding(
    level: Literal["note", "caution", "unfair"],
    code: str,
    result: MachineResult,
    matters_wh: float | None = None,
    **facts: object,
) -> Finding:
    u95 = result.energy_wh.u95 if result.energy_wh is not None else None
    if level == "caution" and matters_wh is not None and u95 is not None and matters_wh > u95:
        level = "unfair"
    problem = Problem(code, Severity.CAUTION, facts={"machine": result.name, **facts})
    return Finding(level, problem, (result.machine_id,), matters_wh)


def _warm_up_s(run: RunResult) -> float:
    """Time from the first heating to the first motion. [s]"""
    return sum(s.end_s - s.start_s for s in run.states if s.state == "warm-up")


def _processing_s(run: RunResult) -> float:
    return sum(s.end_s - s.start_s for s in run.states if s.state == "processing")


def _others(values: Sequence[float], i: int) -> float:
    """What is usual: the median of the other runs."""
    return statistics.median([v for k, v in enumerate(values) if k != i])


def _starts(result: MachineResult, edge_s: float) -> Iterable[Finding]:
    """Runs that began warmer, or waited longer, than the machine's others."""
    runs = [r for r in result.included if r.states]
    if len(runs) < 2:
        return
    times = [_warm_up_s(r) for r in runs]
    rests = [_processing_s(r) for r in runs]
    for i, run in enumerate(runs):
        usual = _others(times, i)
        if abs(rests[i] - _others(rests, i)) > 0.5 * abs(times[i] - usual):
            continue  # only the end of its warm-up was seen elsewhere: the run as a whole is no different
        facts = {"run": run.name, "seconds": duration(times[i]), "usual": duration(usual)}
        if times[i] < WARM_START_SHARE * usual and usual - times[i] > WARM_START_S + edge_s:
            if len(runs) == 2:
                continue  # two runs cannot tell which of them is the odd one: told as a soak below
            yield _finding("caution", "fair.warm_start", result, _matters(runs, i), **facts)
        elif times[i] > SOAK_SHARE * usual and times[i] - usual > SOAK_S + edge_s:
            code = "fair.unlike_starts" if len(runs) == 2 else "fair.soak"
            yield _finding("caution", code, result, _matters(runs, i), **facts)


def _lengths(result: MachineResult, edge_s: float) -> Iterable[Finding]:
    """Runs whose processing took longer or shorter than the machine's others."""
    runs = [r for r in result.included if r.states]
    if len(runs) < 2:
        return
    times = [_processing_s(r) for r in runs]
    wholes = [_processing_s(r) + _warm_up_s(r) for r in runs]
    for i, run in enumerate(runs):
        usual = _others(times, i)
        by, whole_by = times[i] - usual, wholes[i] - _others(wholes, i)
        # where the end of warm-up was seen elsewhere, only one of the two differs
        by = 0.0 if by * whole_by <= 0 else math.copysign(min(abs(by), abs(whole_by)), by)
        if abs(by) <= max(LENGTH_SHARE * usual, LENGTH_S + edge_s):
            continue
        if by < 0 and len(runs) == 2:
            continue  # the longer of the two is told
        yield _finding(
            "caution",
            "fair.long" if by > 0 else "fair.short",
            result,
            _matters(runs, i),
            run=run.name,
            percent=percent(abs(by) / usual),
        )


def _matters(runs: Sequence[RunResult], i: int) -> float:
    """How far run `i` moves the machine's mean: the mean with it against the mean of the others. [Wh]"""
    energies = [r.energy_wh or 0.0 for r in runs]
    without = (sum(energies) - energies[i]) / (len(energies) - 1)
    return abs(sum(energies) / len(energies) - without)


def _outliers(result: MachineResult) -> Iterable[Finding]:
    """The run that lies furthest from the others, if that is more than chance would put it."""
    runs = result.included
    energies = [r.energy_wh or 0.0 for r in runs]
    odd = grubbs(energies)
    if odd is None:
        return
    run = runs[odd.index]
    others = [e for i, e in enumerate(energies) if i != odd.index]
    # repeats closer to each other than the meter can tell make any distance look large
    if abs(energies[odd.index] - statistics.fmean(others)) <= (run.energy_u95_wh or 0.0):
        return
    yield _finding(
        "caution",
        "fair.outlier",
        result,
        _matters(runs, odd.index),
        run=run.name,
        energy=number(energies[odd.index], 1),
        statistic=odd.statistic,
        limit=odd.limit,
    )


@frozen
class Outlier:
    """The value that stands out: its place, and Grubbs' statistic against its limit."""

    index: int
    statistic: float
    limit: float


def grubbs(values: Sequence[float]) -> Outlier | None:
    """The outlier among repeats by Grubbs' test, two-sided at 5 %; None when no value stands out.

    Parameters
    ----------
    values : sequence of float
        Fewer than four say nothing.

    References
    ----------
    .. [1] F. E. Grubbs, "Procedures for detecting outlying observations in samples", Technometrics 11 (1969)
       1-21; the limit as in the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1 (from memory).

    Examples
    --------
    >>> grubbs([199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]).index
    7
    """
    from scipy.special import stdtrit

    n = len(values)
    if n < OUTLIER_RUNS:
        return None
    mean, deviation = statistics.fmean(values), statistics.stdev(values)
    if deviation <= 0:
        return None
    index = max(range(n), key=lambda i: abs(values[i] - mean))
    statistic = abs(values[index] - mean) / deviation
    t = float(stdtrit(n - 2, 1 - OUTLIER_LEVEL / (2 * n)))
    limit = (n - 1) / math.sqrt(n) * math.sqrt(t**2 / (n - 2 + t**2))
    return Outlier(index, statistic, limit) if statistic > limit else None


def _gaps(result: MachineResult) -> Iterable[Finding]:
    for run in result.included:
        # with a counter nothing of the run's energy is lost in a gap
        if run.energy is not None and run.energy.method == "power" and run.energy.gap_share > GAP_TOLD:
            u_wh = sum(i.u_wh for i in run.energy.influences if i.name == "gaps")
            matters = 1.96 * u_wh / len(result.included) if u_wh else None
            yield _finding(
                "caution", "fair.gaps", result, matters, run=run.name, share=percent(run.energy.gap_share, 1)
            )


def _by_hand(result: MachineResult) -> Iterable[Finding]:
    counted = result.included
    moved = [r for r in counted if r.decided_by_user and r.start_s is not None]
    if moved and len(moved) < len(counted):
        yield _finding("note", "fair.hand", result, runs=count(len(moved), "run"))
    left_out = [r for r in result.runs if not r.included and r.decided_by_user]
    if left_out:
        yield _finding("note", "fair.left_out", result, runs=count(len(left_out), "run"))


def _resolution(given: MachineInput, result: MachineResult) -> Iterable[Finding]:
    if result.mean_w is None:
        return
    for seen in logs_compared(given):
        share = seen.trace.resolution_w / result.mean_w.value
        if share > RESOLUTION_SHARE:
            yield _finding(
                "note", "fair.resolution", result, step=seen.trace.resolution_w, share=percent(share, 1)
            )
            return
