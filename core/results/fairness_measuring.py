"""How one machine's runs were measured: by how many, by whom, with what steps."""

import math
import statistics
from collections.abc import Iterable, Sequence

from core.formatting import number, percent
from core.language import tr
from core.results.fairness_points import found
from core.results.machine import LogInput, MachineInput, machine_result
from core.results.values import Finding, MachineResult
from core.study import Run
from core.uncertainty import coverage_factor
from core.units import SECONDS_PER_HOUR

#: steps of the power reading above this share of the mean power are told
RESOLUTION_SHARE = 0.01


def of_measuring(given: MachineInput, result: MachineResult) -> Iterable[Finding]:
    """Few runs, edges set by hand, runs left out without a reason, coarse steps.

    Parameters
    ----------
    given : MachineInput
    result : MachineResult
        Of this input, with at least one run that counts.
    """
    yield from _repeats(result)
    yield from _by_hand(given, result)
    yield from _left_out(given, result)
    yield from _resolution(given, result)


def unrepeated(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Machines with one run only: what is left open if they spread like the others, by all their repeats.

    Parameters
    ----------
    compared : sequence of MachineInput
        Those with a value.
    """
    results = [machine_result(given) for given in compared]
    groups = [[r.energy_wh for r in m.included if r.energy_wh] for m in results]
    if all(len(g) > 1 for g in groups):
        return
    repeated = [g for g in groups if len(g) > 1]
    df = sum(len(g) - 1 for g in repeated)
    # relative, because a machine that takes more spreads more; pooled by degrees of freedom
    squares = math.fsum((len(g) - 1) * (statistics.stdev(g) / statistics.fmean(g)) ** 2 for g in repeated)
    for result, energies in zip(results, groups, strict=True):
        if len(energies) != 1:
            continue
        matters_wh: float | None = None
        working: tuple[str, ...] = ()
        if df:
            spread = math.sqrt(squares / df)
            matters_wh = coverage_factor(df) * spread * energies[0]
            others = df + len(repeated)
            working = (
                tr(
                    "spread of the other machines' runs: {spread}, by {runs:run|runs}",
                    spread=percent(spread, 2),
                    runs=others,
                ),
                tr(
                    "{machine}: {factor} times that of {energy} Wh",
                    machine=result.name,
                    factor=number(coverage_factor(df), 2),
                    energy=number(energies[0], 2),
                ),
            )
        ids = (result.machine_id,)
        yield found(
            "caution", "fair.one_run", ids, matters_wh, working=working, facts={"machine": result.name}
        )


def counted_logs(given: MachineInput) -> list[LogInput]:
    """The machine's logs that hold a run that counts, and have been read."""
    counted = {run.run_id for run in machine_result(given).included}
    return [log for log in given.logs if log.seen is not None and any(run.id in counted for run in log.runs)]


def _repeats(result: MachineResult) -> Iterable[Finding]:
    if len(result.included) == 2:
        u95 = None if result.energy_wh is None else result.energy_wh.u95
        yield found("note", "fair.few_runs", (result.machine_id,), u95, facts={"machine": result.name})


def _by_hand(given: MachineInput, result: MachineResult) -> Iterable[Finding]:
    """Some edges set by hand, and others by the program."""
    counted = result.included
    stretches = {run.id: run for log in given.logs for run in log.runs}
    moved = [r for r in counted if r.run_id in stretches and stretches[r.run_id].is_moved]
    if not moved or len(moved) == len(counted):
        return
    # what an edge moved by hand adds or takes is about the mean watts over the time it was moved by
    moved_wh = math.fsum((r.mean_w or 0.0) * _moved_s(stretches[r.run_id]) / SECONDS_PER_HOUR for r in moved)
    yield found(
        "note",
        "fair.hand",
        (result.machine_id,),
        moved_wh / len(counted) if moved_wh > 0 else None,
        run_ids=tuple(r.run_id for r in moved),
        working=(
            tr(
                "moved edges: {energy} Wh in the sum of {runs:run|runs}",
                energy=number(moved_wh, 2),
                runs=len(counted),
            ),
        ),
        facts={"machine": result.name, "runs": tr("{count:run|runs}", count=len(moved))},
    )


def _moved_s(run: Run) -> float:
    """By how much the edges of a run were moved from where the program found them. [s]"""
    pairs = ((run.set_start_s, run.found_start_s), (run.set_end_s, run.found_end_s))
    return math.fsum(abs(s - f) for s, f in pairs if s is not None and f is not None)


def _left_out(given: MachineInput, result: MachineResult) -> Iterable[Finding]:
    """Runs left out by hand with no reason given; one with a reason is told with the comparison."""
    unsaid = {
        run.id for log in given.logs for run in log.runs if run.set_included is False and not run.why_left_out
    }
    unsaid |= {typed.id for typed, _ in given.typed if not typed.included and not typed.why_left_out}
    out = [r for r in result.runs if not r.included and r.run_id in unsaid]
    if not out:
        return
    counted = [r.energy_wh for r in result.included if r.energy_wh is not None]
    again = [r.energy_wh for r in out if r.energy_wh is not None]
    matters_wh = None
    working: tuple[str, ...] = ()
    if again and counted:
        with_wh, without_wh = statistics.fmean([*counted, *again]), statistics.fmean(counted)
        matters_wh = abs(with_wh - without_wh)
        working = (
            tr("mean with them: {energy} Wh", energy=number(with_wh, 2)),
            tr("mean without: {energy} Wh", energy=number(without_wh, 2)),
        )
    yield found(
        "note",
        "fair.left_out",
        (result.machine_id,),
        matters_wh,
        run_ids=tuple(r.run_id for r in out),
        working=working,
        facts={"machine": result.name, "runs": tr("{count:run|runs}", count=len(out))},
    )


def _resolution(given: MachineInput, result: MachineResult) -> Iterable[Finding]:
    if result.mean_w is None:
        return
    for log in counted_logs(given):
        assert log.seen is not None
        step_w = log.seen.trace.resolution_w
        share = step_w / result.mean_w.value
        if share > RESOLUTION_SHARE:
            hours = None if result.seconds is None else result.seconds.value / SECONDS_PER_HOUR
            bound_wh = None if hours is None else step_w / 2 * hours
            yield found(
                "note",
                "fair.resolution",
                (result.machine_id,),
                bound_wh,
                working=(
                    tr(
                        "half a step: {watts} W over {hours} h",
                        watts=number(step_w / 2, 2),
                        hours=number(hours, 2),
                    ),
                ),
                facts={"machine": result.name, "step": step_w, "share": percent(share, 1)},
            )
            return
