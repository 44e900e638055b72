"""What is not alike between the compared machines: meters, sampling, bed temperature."""

from collections.abc import Iterable, Sequence
from functools import lru_cache

from core.formatting import count, listed, number
from core.problems import Problem, Severity
from core.results.machine import MachineInput, machine_result
from core.results.runs import Seen
from core.results.values import Finding
from core.study import Meter

#: sampling intervals further apart than this factor are told
SAMPLING_FACTOR = 3.0
#: bed temperatures further apart than this are told [K]
BED_KELVIN = 3.0
#: so many names are written out in a sentence
_NAMED = 4


def between_machines(compared: Sequence[MachineInput]) -> tuple[Finding, ...]:
    """Findings of machines against each other.

    Parameters
    ----------
    compared : sequence of MachineInput
        Those with a value.
    """
    return (*_meters(compared), *_sampling(compared), *_bed_temperatures(compared))


def forget() -> None:
    """Let go of everything remembered."""
    _bed_c.cache_clear()


def logs_compared(given: MachineInput) -> list[Seen]:
    """The machine's logs that hold a run that counts."""
    counted = {run.run_id for run in machine_result(given).included}
    return [
        log.seen for log in given.logs if log.seen is not None and any(run.id in counted for run in log.runs)
    ]


def _named(names: Sequence[str], what: str) -> str:
    return listed(list(names)) if len(names) <= _NAMED else count(len(names), what)


def _meters_of(given: MachineInput) -> tuple[Meter, ...]:
    return (*(log.meter for log in given.logs), *(meter for _, meter in given.typed))


def _meters(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Meters that differ between machines, and meters whose accuracy nobody stated."""
    meters = {meter.id: meter for given in compared for meter in _meters_of(given)}
    if len(compared) > 1 and len(meters) > 1:
        errors_wh = [
            energy.value * meter.gain_percent / 100
            for given in compared
            if (energy := machine_result(given).energy_wh) is not None
            for meter in _meters_of(given)
        ]
        ids = tuple(given.machine.id for given in compared)
        facts = {"count": len(meters)}
        yield Finding("note", Problem("fair.meters", Severity.NOTE, facts=facts), ids, max(errors_wh))
    unstated = sorted({meter.name for meter in meters.values() if not meter.stated})
    if unstated:
        ids = tuple(g.machine.id for g in compared if any(not m.stated for m in _meters_of(g)))
        facts_told = {"meters": _named(unstated, "meter")}
        yield Finding("note", Problem("fair.accuracy", Severity.NOTE, facts=facts_told), ids)


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
    text = "; ".join(f"{_named(who, 'machine')} {way}" for way, who in told.items())
    yield Finding("note", Problem("fair.sampling", Severity.NOTE, facts={"ways": text}), tuple(ways))


def _way(given: MachineInput) -> tuple[str, float]:
    """Kind and interval of the machine's slowest log."""
    slowest = max(logs_compared(given), key=lambda seen: seen.trace.median_s)
    return slowest.trace.kind, round(slowest.trace.median_s, 1)


def _bed_temperatures(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Bed temperatures that differ, where the logs hold them."""
    known = [(c, given.machine) for given in compared if (c := _bed_c(given)) is not None]
    if len(known) < 2:
        return
    (low, cool), (high, hot) = min(known, key=lambda k: k[0]), max(known, key=lambda k: k[0])
    if high - low > BED_KELVIN:
        facts = {"low": low, "low_machine": cool.name, "high": high, "high_machine": hot.name}
        yield Finding("caution", Problem("fair.bed_temperature", facts=facts), (cool.id, hot.id))


@lru_cache(maxsize=4096)
def _bed_c(given: MachineInput) -> float | None:
    """Median logged bed temperature while the counted runs were processed. [degC]"""
    import numpy as np

    counted = {run.run_id: run for run in machine_result(given).included}
    parts = []
    for log in given.logs:
        bed_c = log.seen.trace.temperatures_c.get("bed") if log.seen is not None else None
        if bed_c is None or log.seen is None:
            continue
        time_s = log.seen.trace.time_s
        for run in log.runs:
            for span in counted[run.id].states if run.id in counted else ():
                if span.state == "processing":
                    first, last = np.searchsorted(time_s, (span.start_s, span.end_s))
                    parts.append(bed_c[first:last])
    values = np.concatenate(parts) if parts else np.empty(0)
    values = values[np.isfinite(values)]
    return float(np.median(values)) if values.size else None
