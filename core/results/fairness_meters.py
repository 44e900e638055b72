"""Whether the compared machines were measured alike: meters, checks of them, ways of logging, displays."""

import math
import statistics
from collections.abc import Iterable, Sequence
from itertools import combinations

from core.formatting import listed, number, percent
from core.language import mark, tr
from core.results.fairness_measuring import counted_logs
from core.results.fairness_points import found
from core.results.machine import MachineInput, machine_result
from core.results.values import Finding
from core.study import Meter
from core.uncertainty import NORMAL_95

#: sampling intervals further apart than this factor are told
SAMPLING_FACTOR = 3.0
#: chance of telling any two meters apart that are alike
DIFFER_LEVEL = 0.05
#: so many names are written out in a sentence
_NAMED = 4


def meters_between(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Meters that differ between machines, what checks tell of them, and how they were read.

    Parameters
    ----------
    compared : sequence of MachineInput
        Those with a value.
    """
    used = {meter.id: meter for given in compared for meter in _meters_of(given)}
    if len(compared) > 1 and len(used) > 1:
        yield _several(compared, used)
    yield from _beyond(compared, used)
    yield from _differing(compared)
    yield from _unstated(compared, used)
    yield from _sampling(compared)
    yield from _read_off(compared)


#: how a log was taken, by what its values stand for
_WAYS = {
    "sampled": mark("sampled every {seconds} s"),
    "averaged": mark("averaged every {seconds} s"),
    "on_change": mark("on change"),
}


def named(names: Sequence[str], counted: str) -> str:
    """A few names, or how many there are by a text that takes ``{count}``."""
    return listed(list(names)) if len(names) <= _NAMED else tr(counted, count=len(names))


def _meters_of(given: MachineInput) -> tuple[Meter, ...]:
    """Those that measured a counted run: a log of a rest or of a hold test is not compared."""
    logged = (log.meter for log in given.logs if any(run.included for run in log.runs))
    return (*logged, *(meter for reading, meter in given.typed if reading.included))


def _ids(compared: Sequence[MachineInput]) -> tuple[str, ...]:
    return tuple(given.machine.id for given in compared)


def _several(compared: Sequence[MachineInput], used: dict[str, Meter]) -> Finding:
    """More than one meter: held against each other, or not."""
    about = tuple(sorted(used))
    known = compared[0].calibration
    if known is not None and all(f"gain:{i}" not in dict(known.doubts[i]) for i in used if i in known.doubts):
        return found("note", "fair.meters_checked", _ids(compared), about=about, facts={"count": len(used)})
    errors = [
        (energy.value * meter.gain_percent / 100, given.machine.name, meter)
        for given in compared
        if (energy := machine_result(given).energy_wh) is not None
        for meter in _meters_of(given)
    ]
    most_wh, name, meter = max(errors, key=lambda e: e[0])
    working = (
        tr(
            "{machine}: {percents:g} % of its energy by {meter}: {energy} Wh",
            machine=name,
            percents=meter.gain_percent,
            meter=meter.name,
            energy=number(most_wh, 2),
        ),
    )
    return found(
        "note",
        "fair.meters",
        _ids(compared),
        most_wh,
        about=about,
        working=working,
        facts={"count": len(used)},
    )


def _beyond(compared: Sequence[MachineInput], used: dict[str, Meter]) -> Iterable[Finding]:
    """Meters that checks show to be further off than their accuracy allows."""
    known = compared[0].calibration if compared else None
    if known is None:
        return
    for meter in used.values():
        error = known.errors.get(meter.id, 0.0)
        if abs(error) <= meter.gain_percent / 100:
            continue
        measured = [given for given in compared if meter in _meters_of(given)]
        energies = [e.value for given in measured if (e := machine_result(given).energy_wh) is not None]
        most_wh = max(energies, default=0.0)
        yield found(
            "caution",
            "fair.meter_beyond",
            _ids(measured),
            abs(error) * most_wh,
            about=(meter.id,),
            working=(
                tr(
                    "{share} of {energy} Wh, the largest energy it measured",
                    share=percent(abs(error), 1),
                    energy=number(most_wh, 1),
                ),
            ),
            facts={
                "meter": meter.name,
                "error": percent(abs(error), 1),
                "way": tr("much") if error > 0 else tr("little"),
                "limit": f"{meter.gain_percent:g}",
            },
        )


def _differing(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Machines that took more by one meter than by another: more than the accuracy of both allows."""
    from core.stats import welch

    tests = [
        (given, (one, other), groups)
        for given in compared
        for groups in [_by_meter(given)]
        for one, other in combinations(groups, 2)
    ]
    for given, (one, other), groups in tests:
        seen = welch(groups[one], groups[other])
        mean_wh = statistics.fmean([*groups[one], *groups[other]])
        allowed_wh = (one.gain_percent + other.gain_percent) / 100 * mean_wh
        if seen.p >= DIFFER_LEVEL / len(tests) or abs(seen.difference) <= allowed_wh:
            continue
        high, low = (one, other) if seen.difference > 0 else (other, one)
        working = tuple(
            tr(
                "{meter}: {energy} Wh, the mean of {runs:run|runs}",
                meter=meter.name,
                energy=number(statistics.fmean(groups[meter]), 2),
                runs=len(groups[meter]),
            )
            for meter in (high, low)
        )
        facts = {
            "machine": given.machine.name,
            "high": high.name,
            "low": low.name,
            "difference": percent(abs(seen.difference) / mean_wh, 1),
            "allowed": percent(allowed_wh / mean_wh, 1),
        }
        ids, about = (given.machine.id,), (given.machine.id, *sorted((one.id, other.id)))
        yield found(
            "caution",
            "fair.meters_differ",
            ids,
            abs(seen.difference),
            about=about,
            working=working,
            facts=facts,
        )


def _by_meter(given: MachineInput) -> dict[Meter, list[float]]:
    """Energies of the counted runs by the meter that measured them, where it measured several. [Wh]"""
    counted = {r.run_id: r.energy_wh for r in machine_result(given).included if r.energy_wh is not None}
    groups: dict[Meter, list[float]] = {}
    for log in given.logs:
        groups.setdefault(log.meter, []).extend(counted[r.id] for r in log.runs if r.id in counted)
    return {meter: energies for meter, energies in groups.items() if len(energies) > 1}


def _unstated(compared: Sequence[MachineInput], used: dict[str, Meter]) -> Iterable[Finding]:
    unstated = {meter.id: meter.name for meter in used.values() if not meter.stated}
    if unstated:
        touched = [g for g in compared if any(not m.stated for m in _meters_of(g))]
        told = named(sorted(unstated.values()), mark("{count:meter|meters}"))
        yield found(
            "note", "fair.accuracy", _ids(touched), about=tuple(sorted(unstated)), facts={"meters": told}
        )


def _sampling(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Logs taken in different ways."""
    logged = [given for given in compared if counted_logs(given)]
    ways = {given.machine.id: _way(given) for given in logged}
    kinds = {kind for kind, _ in ways.values()}
    steps = [step for kind, step in ways.values() if kind != "on_change" and step > 0]
    if len(kinds) < 2 and (not steps or max(steps) <= SAMPLING_FACTOR * min(steps)):
        return
    names = {given.machine.id: given.machine.name for given in compared}
    told: dict[str, list[str]] = {}
    for machine_id, (kind, step) in ways.items():
        digits = 0 if step == round(step) else 1
        text = tr(_WAYS[kind], seconds=number(step, digits))
        told.setdefault(text, []).append(names[machine_id])
    text = "; ".join(f"{named(who, mark('{count:machine|machines}'))} {way}" for way, who in told.items())
    open_wh = {given.machine.name: _sampling_wh(given) for given in logged}
    most = max(open_wh, key=lambda name: open_wh[name])
    matters_wh = open_wh[most] or None
    working = (
        (
            tr(
                "{machine}: half-width of {energy} Wh by its samples",
                machine=most,
                energy=number(open_wh[most], 2),
            ),
        )
        if matters_wh
        else ()
    )
    yield found("note", "fair.sampling", tuple(ways), matters_wh, working=working, facts={"ways": text})


def _sampling_wh(given: MachineInput) -> float:
    """Half-width of what the samples leave open of the machine's mean. [Wh]"""
    parts = [i.u_wh for i in machine_result(given).influences if i.name == "sampling"]
    return NORMAL_95 * math.hypot(*parts)


def _way(given: MachineInput) -> tuple[str, float]:
    """Kind and interval of the machine's slowest log."""
    traces = [log.seen.trace for log in counted_logs(given) if log.seen is not None]
    slowest = max(traces, key=lambda trace: trace.median_s)
    return slowest.kind, round(slowest.median_s, 1)


def _read_off(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Runs read off a display by hand, beside others that were logged."""
    if not any(counted_logs(given) for given in compared):
        return
    counted = {run.run_id for given in compared for run in machine_result(given).included}
    read = [
        (given, typed)
        for given in compared
        for typed, _ in given.typed
        if typed.included and typed.id in counted
    ]
    if not read:
        return
    step_wh = max(typed.step_wh for _, typed in read)
    names = list(dict.fromkeys(given.machine.name for given, _ in read))
    yield found(
        "note",
        "fair.typed",
        tuple(dict.fromkeys(given.machine.id for given, _ in read)),
        step_wh,
        run_ids=tuple(typed.id for _, typed in read),
        working=(tr("last digit of the display: {energy} Wh", energy=number(step_wh, 2)),),
        facts={
            "runs": tr("{count:run|runs}", count=len(read)),
            "machines": named(names, mark("{count:machine|machines}")),
        },
    )
