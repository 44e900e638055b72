"""Runs of one machine that are not like its other runs: how they began, how long they took, what they used.

Rules: limits are shares of what is usual on the same machine, never fixed watts. A run that one rule explains
is not told again by another.
"""

import math
import statistics
from collections.abc import Iterable, Mapping, Sequence

from attrs import frozen

from core.formatting import duration, number, percent
from core.language import tr
from core.results.fairness_points import found
from core.results.values import Finding, MachineResult, RunResult
from core.uncertainty import NORMAL_95, coverage_factor
from core.units import SECONDS_PER_HOUR

#: a warm-up this much shorter than usual, and by at least this many seconds, is that of a warm start
WARM_START_SHARE, WARM_START_S = 0.6, 20.0
#: a warm-up this much longer than usual, and by at least this many seconds, holds a soak
SOAK_SHARE, SOAK_S = 1.6, 90.0
#: processing this much longer or shorter than usual, and by at least this many seconds
LENGTH_SHARE, LENGTH_S = 0.04, 60.0
#: durations that lie further apart than this share of their mean are told, of so many runs
DURATION_SHARE, _DURATIONS = 0.04, 3
#: chance of calling any run of the whole comparison an outlier where there is none; runs it takes
OUTLIER_LEVEL, OUTLIER_RUNS = 0.05, 4
#: more of a run's time than this in gaps is told
GAP_TOLD = 0.01


def of_runs(result: MachineResult, edge_s: float, tests: int) -> tuple[Finding, ...]:
    """What is odd about single runs of a machine.

    Parameters
    ----------
    result : MachineResult
    edge_s : float
        How far off the end of a warm-up may be. [s]
    tests : int
        Machines among which outliers are looked for.
    """
    told = [*_starts(result, edge_s), *_lengths(result, edge_s)]
    explained = {run_id for f in told for run_id in f.run_ids}
    told += (f for f in _outliers(result, tests) if explained.isdisjoint(f.run_ids))
    told += _durations(result, explained, edge_s)
    return (*told, *_gaps(result))


def odd(
    code: str,
    result: MachineResult,
    runs: Sequence[RunResult],
    i: int,
    *,
    facts: Mapping[str, object],
    about: tuple[str, ...] = (),
) -> Finding:
    """A caution of run `i`, with what it makes of the machine's mean."""
    run = runs[i]
    with_wh, without_wh = _means(runs, i)
    working = (
        tr("mean of {count} runs: {energy} Wh", count=len(runs), energy=number(with_wh, 2)),
        tr("mean without {run}: {energy} Wh", run=run.name, energy=number(without_wh, 2)),
        tr("difference: {energy} Wh", energy=number(abs(with_wh - without_wh), 2)),
    )
    return found(
        "caution",
        code,
        (result.machine_id,),
        abs(with_wh - without_wh),
        run_ids=(run.run_id,),
        about=about,
        working=working,
        facts={"machine": result.name, "run": run.name, **facts},
    )


def others(values: Sequence[float], i: int) -> float:
    """What is usual: the median of the other runs."""
    return statistics.median([v for k, v in enumerate(values) if k != i])


def warm_up_s(run: RunResult) -> float:
    """Time from the first heating to the first motion. [s]"""
    return sum(s.end_s - s.start_s for s in run.states if s.state == "warm-up")


def processing_s(run: RunResult) -> float:
    """Time of processing. [s]"""
    return sum(s.end_s - s.start_s for s in run.states if s.state == "processing")


def _means(runs: Sequence[RunResult], i: int) -> tuple[float, float]:
    """Mean energy of all runs, and of all but one. [Wh]"""
    energies = [r.energy_wh or 0.0 for r in runs]
    without = (sum(energies) - energies[i]) / (len(energies) - 1)
    return sum(energies) / len(energies), without


def _starts(result: MachineResult, edge_s: float) -> Iterable[Finding]:
    """Runs that began warmer, or waited longer, than the machine's others."""
    runs = [r for r in result.included if r.states]
    if len(runs) < 2:
        return
    times = [warm_up_s(r) for r in runs]
    rests = [processing_s(r) for r in runs]
    for i in range(len(runs)):
        usual = others(times, i)
        if abs(rests[i] - others(rests, i)) > 0.5 * abs(times[i] - usual):
            continue  # only the end of its warm-up was seen elsewhere: the run as a whole is no different
        facts = {"seconds": duration(times[i]), "usual": duration(usual)}
        if times[i] < WARM_START_SHARE * usual and usual - times[i] > WARM_START_S + edge_s:
            if len(runs) == 2:
                continue  # two runs cannot tell which of them is the odd one: told as a soak below
            yield odd("fair.warm_start", result, runs, i, facts=facts)
        elif times[i] > SOAK_SHARE * usual and times[i] - usual > SOAK_S + edge_s:
            yield odd("fair.unlike_starts" if len(runs) == 2 else "fair.soak", result, runs, i, facts=facts)


def _lengths(result: MachineResult, edge_s: float) -> Iterable[Finding]:
    """Runs whose processing took longer or shorter than the machine's others."""
    runs = [r for r in result.included if r.states]
    if len(runs) < 2:
        return
    times = [processing_s(r) for r in runs]
    wholes = [processing_s(r) + warm_up_s(r) for r in runs]
    for i in range(len(runs)):
        usual = others(times, i)
        by, whole_by = times[i] - usual, wholes[i] - others(wholes, i)
        # where the end of warm-up was seen elsewhere, only one of the two differs
        by = 0.0 if by * whole_by <= 0 else math.copysign(min(abs(by), abs(whole_by)), by)
        if abs(by) <= max(LENGTH_SHARE * usual, LENGTH_S + edge_s):
            continue
        if by < 0 and len(runs) == 2:
            continue  # the longer of the two is told
        code = "fair.long" if by > 0 else "fair.short"
        yield odd(code, result, runs, i, facts={"percent": percent(abs(by) / usual)})


def _durations(result: MachineResult, explained: set[str], edge_s: float) -> Iterable[Finding]:
    """Runs that spread in duration with none of them odd by itself."""
    runs = [r for r in result.included if r.seconds is not None and r.run_id not in explained]
    times = [r.seconds or 0.0 for r in runs]
    if len(times) < _DURATIONS or result.mean_w is None:
        return
    if max(times) - min(times) <= max(DURATION_SHARE * statistics.fmean(times), LENGTH_S + edge_s):
        return
    df = len(times) - 1
    half_s = coverage_factor(df) * statistics.stdev(times) / math.sqrt(len(times))
    watts = result.mean_w.value
    yield found(
        "note",
        "fair.durations",
        (result.machine_id,),
        watts * half_s / SECONDS_PER_HOUR,
        working=(
            tr("mean duration known to {half} by {count} runs", half=duration(half_s), count=len(times)),
            tr("times mean watts of {watts} W", watts=number(watts, 1)),
        ),
        facts={
            "machine": result.name,
            "short": duration(min(times)),
            "long": duration(max(times)),
        },
    )


def _outliers(result: MachineResult, tests: int) -> Iterable[Finding]:
    """The run that lies furthest from the others, if that is more than chance would put it."""
    runs = result.included
    energies = [r.energy_wh or 0.0 for r in runs]
    out = grubbs(energies, OUTLIER_LEVEL / max(tests, 1))
    if out is None:
        return
    rest = [e for i, e in enumerate(energies) if i != out.index]
    # repeats closer to each other than the meter can tell make any distance look large
    if abs(energies[out.index] - statistics.fmean(rest)) <= (runs[out.index].energy_u95_wh or 0.0):
        return
    yield odd(
        "fair.outlier",
        result,
        runs,
        out.index,
        facts={"energy": number(energies[out.index], 1), "statistic": out.statistic, "limit": out.limit},
    )


@frozen
class Outlier:
    """The value that stands out: its place, and Grubbs' statistic against its limit."""

    index: int
    statistic: float
    limit: float


def grubbs(values: Sequence[float], level: float = OUTLIER_LEVEL) -> Outlier | None:
    """The outlier among repeats by Grubbs' test, two-sided; None when no value stands out.

    Parameters
    ----------
    values : sequence of float
        Fewer than four say nothing.
    level : float
        Chance of finding one where there is none.

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
    t = float(stdtrit(n - 2, 1 - level / (2 * n)))
    limit = (n - 1) / math.sqrt(n) * math.sqrt(t**2 / (n - 2 + t**2))
    return Outlier(index, statistic, limit) if statistic > limit else None


def _gaps(result: MachineResult) -> Iterable[Finding]:
    for run in result.included:
        # where a counter ran on, nothing of the run's energy is lost in a gap
        if run.energy is None or run.energy.untold_gap_share <= GAP_TOLD:
            continue
        u_wh = math.hypot(*(i.u_wh for i in run.energy.influences if i.name == "gaps"))
        yield found(
            "caution",
            "fair.gaps",
            (result.machine_id,),
            NORMAL_95 * u_wh / len(result.included) if u_wh else None,
            run_ids=(run.run_id,),
            working=(
                tr(
                    "half-width of what the gaps leave open in {run}: {energy} Wh",
                    run=run.name,
                    energy=number(NORMAL_95 * u_wh, 2),
                ),
            ),
            facts={"machine": result.name, "run": run.name, "share": percent(run.energy.untold_gap_share, 1)},
        )
