"""Whether the compared machines were measured alike: several meters, checks of them, unstated accuracy."""

from collections.abc import Iterable, Sequence

from core.formatting import count, listed, percent
from core.problems import Problem, Severity
from core.results.machine import MachineInput, machine_result
from core.results.values import Finding
from core.study import Meter

#: so many names are written out in a sentence
_NAMED = 4


def named(names: Sequence[str], what: str) -> str:
    """A few names, or how many there are."""
    return listed(list(names)) if len(names) <= _NAMED else count(len(names), what)


def meters(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Meters that differ between machines, what checks tell of them, and accuracies that nobody stated.

    Parameters
    ----------
    compared : sequence of MachineInput
        Those with a value.
    """
    used = {meter.id: meter for given in compared for meter in _meters_of(given)}
    if len(compared) > 1 and len(used) > 1:
        yield _several(compared, used)
    yield from _beyond(compared, used)
    unstated = sorted({meter.name for meter in used.values() if not meter.stated})
    if unstated:
        ids = tuple(g.machine.id for g in compared if any(not m.stated for m in _meters_of(g)))
        facts = {"meters": named(unstated, "meter")}
        yield Finding("note", Problem("fair.accuracy", Severity.NOTE, facts=facts), ids)


def _meters_of(given: MachineInput) -> tuple[Meter, ...]:
    return (*(log.meter for log in given.logs), *(meter for _, meter in given.typed))


def _several(compared: Sequence[MachineInput], used: dict[str, Meter]) -> Finding:
    """More than one meter: held against each other, or not."""
    ids = tuple(given.machine.id for given in compared)
    known = compared[0].calibration
    if known is not None and all(f"gain:{i}" not in dict(known.doubts[i]) for i in used if i in known.doubts):
        problem = Problem("fair.meters_checked", Severity.NOTE, facts={"count": len(used)})
        return Finding("note", problem, ids)
    errors_wh = [
        energy.value * meter.gain_percent / 100
        for given in compared
        if (energy := machine_result(given).energy_wh) is not None
        for meter in _meters_of(given)
    ]
    problem = Problem("fair.meters", Severity.NOTE, facts={"count": len(used)})
    return Finding("note", problem, ids, max(errors_wh))


def _beyond(compared: Sequence[MachineInput], used: dict[str, Meter]) -> Iterable[Finding]:
    """Meters that checks show to be further off than their accuracy allows."""
    known = compared[0].calibration if compared else None
    if known is None:
        return
    for meter in used.values():
        error = known.errors.get(meter.id, 0.0)
        if abs(error) <= meter.gain_percent / 100:
            continue
        ids = tuple(g.machine.id for g in compared if meter in _meters_of(g))
        facts = {
            "meter": meter.name,
            "error": percent(abs(error), 1),
            "way": "much" if error > 0 else "little",
            "limit": f"{meter.gain_percent:g}",
        }
        yield Finding("caution", Problem("fair.meter_beyond", facts=facts), ids)
