"""What is not alike between the compared machines: meters, sampling, temperatures."""

import statistics
from collections.abc import Iterable, Sequence
from functools import lru_cache

from core.formatting import number
from core.problems import Problem, Severity
from core.results.fairness_meters import meters, named
from core.results.machine import LogInput, MachineInput, machine_result
from core.results.runs import Seen
from core.results.values import Finding, RunResult

#: sampling intervals further apart than this factor are told
SAMPLING_FACTOR = 3.0
#: temperatures of bed or room further apart than this are told [K]
FAR_KELVIN = 3.0
#: where nobody noted or logged the room [degC]
ORDINARY_ROOM_C = 22.0


def between_machines(compared: Sequence[MachineInput]) -> tuple[Finding, ...]:
    """Findings of machines against each other.

    Parameters
    ----------
    compared : sequence of MachineInput
        Those with a value.
    """
    return (*meters(compared), *_sampling(compared), *_temperatures(compared))


def forget() -> None:
    """Let go of everything remembered."""
    temperature_c.cache_clear()


def logs_compared(given: MachineInput) -> list[Seen]:
    """The machine's logs that hold a run that counts."""
    counted = {run.run_id for run in machine_result(given).included}
    return [
        log.seen for log in given.logs if log.seen is not None and any(run.id in counted for run in log.runs)
    ]


def _sampling(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Logs taken in different ways."""
    ways = {given.machine.id: _way(given) for given in compared if logs_compared(given)}
    kinds = {kind for kind, _ in ways.values()}
    steps = [step for kind, step in ways.values() if kind != "on_change" and step > 0]
    if len(kinds) < 2 and (not steps or max(steps) <= SAMPLING_FACTOR * min(steps)):
        return
    names = {given.machine.id: given.machine.name for given in compared}
    told: dict[str, list[str]] = {}
    for machine_id, (kind, step) in ways.items():
        digits = 0 if step == round(step) else 1
        text = "on change" if kind == "on_change" else f"{kind} every {number(step, digits)} s"
        told.setdefault(text, []).append(names[machine_id])
    text = "; ".join(f"{named(who, 'machine')} {way}" for way, who in told.items())
    yield Finding("note", Problem("fair.sampling", Severity.NOTE, facts={"ways": text}), tuple(ways))


def _way(given: MachineInput) -> tuple[str, float]:
    """Kind and interval of the machine's slowest log."""
    slowest = max(logs_compared(given), key=lambda seen: seen.trace.median_s)
    return slowest.trace.kind, round(slowest.trace.median_s, 1)


def _temperatures(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Temperatures of bed and room that differ, where they were logged or noted."""
    for place in ("bed", "room"):
        known = [(c, given) for given in compared if (c := temperature_c(given, place)) is not None]
        if len(known) < 2:
            continue
        (low, cool), (high, hot) = min(known, key=lambda k: k[0]), max(known, key=lambda k: k[0])
        if high - low > FAR_KELVIN:
            facts = {
                "low": low,
                "low_machine": cool.machine.name,
                "high": high,
                "high_machine": hot.machine.name,
            }
            matters_wh = _bed_matters_wh(hot, low, high) if place == "bed" else None
            problem = Problem(f"fair.{place}_temperature", facts=facts)
            yield Finding("caution", problem, (cool.machine.id, hot.machine.id), matters_wh)


def _bed_matters_wh(given: MachineInput, low_c: float, high_c: float) -> float | None:
    """What the hotter bed's machine would use less with the cooler bed, by the plate law. [Wh]"""
    from core.beds.plate import loss_ratio

    result = machine_result(given)
    room_c = temperature_c(given, "room")
    room_c = ORDINARY_ROOM_C if room_c is None else room_c
    if result.energy_wh is None or result.bed_share is None or low_c <= room_c:
        return None
    bed_wh = result.energy_wh.value * result.bed_share.value
    return bed_wh * (1 - loss_ratio(high_c, low_c, room_c))


@lru_cache(maxsize=4096)
def temperature_c(given: MachineInput, place: str) -> float | None:
    """Median temperature of a place in the counted runs: as noted, else as logged while processing. [degC]

    Parameters
    ----------
    given : MachineInput
    place : {"bed", "room"}
    """
    counted = {run.run_id: run for run in machine_result(given).included}
    known: list[float] = []
    for log in given.logs:
        for run in log.runs:
            if run.id not in counted:
                continue
            noted = run.bed_c if place == "bed" else run.room_c
            found = noted if noted is not None else _logged_c(log, counted[run.id], place)
            if found is not None:
                known.append(found)
    return statistics.median(known) if known else None


def _logged_c(log: LogInput, run: RunResult, place: str) -> float | None:
    import numpy as np

    logged = log.seen.trace.temperatures_c.get(place) if log.seen is not None else None
    if logged is None or log.seen is None:
        return None
    values = [
        logged[slice(*np.searchsorted(log.seen.trace.time_s, (span.start_s, span.end_s)))]
        for span in run.states
        if span.state == "processing"
    ]
    known = np.concatenate(values) if values else np.empty(0)
    known = known[np.isfinite(known)]
    return float(np.median(known)) if known.size else None
