"""What the order and the times of the runs could have done: drift, rests between runs, tests far apart.

Theory of operation. Drift of one machine: a straight line through its energies in the order of making, and
Student's test of its slope. Drift of all: one slope through the runs of all machines, each taken as a part of
its machine's mean. All these tests together call a drift where there is none in one comparison of twenty.
"""

import math
import statistics
from collections.abc import Iterable, Sequence
from datetime import datetime
from itertools import pairwise

from attrs import frozen

from core.formatting import duration, listed, number, percent
from core.language import tr
from core.results.fairness_conditions import warming_wh
from core.results.fairness_points import found
from core.results.fairness_temperatures import StatedConditions, temperature_c
from core.results.machine import MachineInput, machine_result
from core.results.runs import MAKING
from core.results.values import Finding, MachineResult, RunResult
from core.uncertainty import NORMAL_95

#: chance that all tests of a comparison together call a drift where there is none
DRIFT_LEVEL = 0.05
#: runs of one machine, and degrees of freedom of all, that a line takes
DRIFT_RUNS, DRIFT_DF = 4, 5
#: a rise of less than this part of the mean is not told; judgement, no source
DRIFT_TOLD = 0.01
#: a bed cools to a third of its distance from the room in about this time; judgement, no source [s]
COOLS_IN_S = 1200.0
#: rests are told where what a bed keeps over them differs by more than this part of its heat
UNLIKE_HEAT = 0.1
#: machines tested further apart than this are told, where the room is not known of all [d]
FAR_DAYS = 30.0
#: values that leave less than this part of their variance beside a line lie on it, but for rounding
_EXACT = 1e-18
_HEATED = (*MAKING, "hold test", "heating", "switch-on test")


@frozen
class Line:
    """A straight line through values in their order: its slope and the chance of one as steep by chance."""

    slope: float
    p: float


def order_between(
    compared: Sequence[MachineInput], test: StatedConditions, odd_run_ids: frozenset[str]
) -> Iterable[Finding]:
    """Findings of the order and the times of runs.

    Parameters
    ----------
    compared : sequence of MachineInput
        Those with a value.
    test : StatedConditions
    odd_run_ids : frozenset of str
        Runs that are told as odd already: they make no drift.
    """
    series = [(given, _in_order(machine_result(given), odd_run_ids)) for given in compared]
    drifting = list(_drifts(series))
    yield from drifting
    if not drifting:
        yield from _common_drift(series)
    yield from _rests(compared)
    yield from _far_apart(compared, test)


def line_through(groups: Sequence[Sequence[float]]) -> Line | None:
    """One slope through groups of values in their order, each group about its own mean.

    Parameters
    ----------
    groups : sequence of sequence of float
        Values one step apart.

    Returns
    -------
    Line or None
        None where too little is left to judge a slope by.

    References
    ----------
    .. [1] N. R. Draper, H. Smith, *Applied Regression Analysis*, chapter 1: the slope and its t test; with
       several groups, the common slope of an analysis of covariance (from memory).

    Examples
    --------
    >>> round(line_through([[1.0, 2.0, 3.0, 4.1]]).slope, 6)
    1.03
    """
    from scipy.special import stdtr

    sxx = sxy = syy = 0.0
    used = [g for g in groups if len(g) > 1]
    for values in used:
        middle, mean = (len(values) - 1) / 2, statistics.fmean(values)
        sxx += sum((i - middle) ** 2 for i in range(len(values)))
        sxy += sum((i - middle) * (v - mean) for i, v in enumerate(values))
        syy += sum((v - mean) ** 2 for v in values)
    df = sum(len(g) for g in used) - len(used) - 1
    if df < 1 or sxx <= 0:
        return None
    slope = sxy / sxx
    left = max(syy - slope * sxy, 0.0)
    if left <= _EXACT * syy:
        return Line(slope, 0.0 if slope else 1.0)
    t = abs(slope) / math.sqrt(left / df / sxx)
    return Line(slope, float(2 * stdtr(df, -t)))


def _in_order(result: MachineResult, odd_run_ids: frozenset[str]) -> list[RunResult]:
    """The logged runs that count, in the order of making; a display tells no order."""
    return [r for r in result.included if r.start_s is not None and r.run_id not in odd_run_ids]


_Series = list[tuple[MachineInput, list[RunResult]]]


def _drifts(series: _Series) -> Iterable[Finding]:
    tested = [(given, runs) for given, runs in series if len(runs) >= DRIFT_RUNS]
    for given, runs in tested:
        line = line_through([[r.energy_wh or 0.0 for r in runs]])
        if line is None or line.p >= DRIFT_LEVEL / 2 / len(tested):
            continue
        rise_wh = abs(line.slope) * (len(runs) - 1)
        mean_wh = statistics.fmean([r.energy_wh or 0.0 for r in runs])
        if rise_wh <= max(_noise_wh(runs), DRIFT_TOLD * mean_wh):
            continue
        working = (
            tr(
                "line through {runs:run|runs}: {energy} Wh from run to run",
                runs=len(runs),
                energy=number(line.slope, 3),
            ),
            tr(
                "half its rise of {energy} Wh: how far the first and the last run lie from the mean",
                energy=number(rise_wh, 2),
            ),
        )
        yield found(
            "caution",
            "fair.drift",
            (given.machine.id,),
            rise_wh / 2,
            run_ids=tuple(r.run_id for r in runs),
            about=(given.machine.id,),
            working=working,
            facts={
                "machine": given.machine.name,
                "way": tr("more") if line.slope > 0 else tr("less"),
                "rise": percent(rise_wh / mean_wh, 1),
                "p": line.p,
            },
        )


def _noise_wh(runs: Sequence[RunResult]) -> float:
    """What the meter leaves open of a single run, beside what it shares with the others. [Wh]"""
    own = [
        math.hypot(*(i.u_wh for i in r.energy.influences if i.shared is None))
        for r in runs
        if r.energy is not None
    ]
    return NORMAL_95 * max(own, default=0.0)


def _common_drift(series: _Series) -> Iterable[Finding]:
    """The same change from run to run on all machines."""
    groups = []
    means_wh = []
    for _, runs in series:
        energies = [r.energy_wh or 0.0 for r in runs]
        mean_wh = statistics.fmean(energies) if energies else 0.0
        if len(energies) > 1 and mean_wh > 0:
            groups.append([e / mean_wh for e in energies])
            means_wh.append(mean_wh)
    if len(groups) < 2 or sum(len(g) for g in groups) - len(groups) - 1 < DRIFT_DF:
        return
    line = line_through(groups)
    if line is None or line.p >= DRIFT_LEVEL / 2:
        return
    lined = sum(len(g) for g in groups)
    longest = max(len(g) for g in groups)
    rise = abs(line.slope) * (longest - 1)
    used = [given for given, runs in series if len(runs) > 1]
    if rise <= DRIFT_TOLD:
        return
    yield found(
        "caution",
        "fair.common_drift",
        tuple(given.machine.id for given in used),
        rise / 2 * max(means_wh),
        about=("all",),
        working=(
            tr(
                "one line through {runs:run|runs}: {share} from run to run",
                runs=lined,
                share=percent(line.slope, 2),
            ),
            tr(
                "half its rise of {share}, of the largest mean of {energy} Wh",
                share=percent(rise, 1),
                energy=number(max(means_wh), 1),
            ),
        ),
        facts={"way": tr("more") if line.slope > 0 else tr("less"), "rise": percent(rise, 1), "p": line.p},
    )


def _rests(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Machines whose beds had longer to cool between runs than those of others."""
    known = [(given, rests) for given in compared if (rests := _rests_s(given))]
    if len(known) < 2:
        return
    kept = {given: math.exp(-statistics.median(rests) / COOLS_IN_S) for given, rests in known}
    short, long = max(known, key=lambda k: kept[k[0]]), min(known, key=lambda k: kept[k[0]])
    apart = kept[short[0]] - kept[long[0]]
    warming = warming_wh(short[0])
    if apart <= UNLIKE_HEAT or warming is None:
        return
    result = machine_result(short[0])
    # the first run of a log has no rest before it that anybody could know
    part = len(short[1]) / max(len(result.included), 1)
    bound_wh = warming * apart * part
    yield found(
        "note",
        "fair.rests",
        (short[0].machine.id, long[0].machine.id),
        bound_wh,
        working=(
            tr("{machine}: warm-up {energy} Wh", machine=short[0].machine.name, energy=number(warming, 2)),
            tr(
                "of a bed's heat {share} are left there and {other_share} on {other}, in {part} of the runs",
                share=percent(kept[short[0]]),
                other_share=percent(kept[long[0]]),
                other=long[0].machine.name,
                part=percent(part),
            ),
        ),
        facts={
            "short": duration(statistics.median(short[1])),
            "short_machine": short[0].machine.name,
            "long": duration(statistics.median(long[1])),
            "long_machine": long[0].machine.name,
        },
    )


def _rests_s(given: MachineInput) -> list[float]:
    """How long each counted run was at rest after the stretch of its log that heated before it. [s]"""
    counted = {run.run_id for run in machine_result(given).included}
    rests = []
    for log in given.logs:
        heated = [run for run in log.runs if run.kind in _HEATED]
        for before, run in pairwise(heated):
            if run.id in counted:
                rests.append(max(0.0, run.start_s - before.end_s))
    return rests


def _far_apart(compared: Sequence[MachineInput], test: StatedConditions) -> Iterable[Finding]:
    """Machines tested in different weeks, with nothing known of the room."""
    if test.room_c is not None or all(temperature_c(given, "room") is not None for given in compared):
        return
    dated = [(day, given) for given in compared if (day := _day(given)) is not None]
    if len(dated) < 2:
        return
    first, last = min(dated, key=lambda d: d[0]), max(dated, key=lambda d: d[0])
    days = (last[0] - first[0]) / 86_400.0
    if days <= FAR_DAYS:
        return
    yield found(
        "note",
        "fair.far_apart",
        (first[1].machine.id, last[1].machine.id),
        facts={"machines": listed([first[1].machine.name, last[1].machine.name]), "days": round(days)},
    )


def _day(given: MachineInput) -> float | None:
    """When the machine's runs were made, as seconds of a wall clock; None where no log tells. [s]"""
    starts = [
        datetime.fromisoformat(r.start).replace(tzinfo=None).timestamp()
        for r in machine_result(given).included
        if r.start is not None
    ]
    return statistics.median(starts) if starts else None
