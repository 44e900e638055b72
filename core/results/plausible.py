"""Values outside what is usual for machines of this kind: worth a second look, never refused.

Rules: the bounds are judgement, with no source. They are wide, so that what lies outside is more often a unit
or a stretch taken for another thing than an unusual machine.
"""

from collections.abc import Iterable

from core.beds.area import bed_area_dm2
from core.beds.from_holds import ORDINARY_ROOM_C, HeldBed
from core.beds.plate import METHOD, Plate, loss
from core.results.bed_shares import Conditions, all_held
from core.results.fairness_points import found
from core.results.machine import MachineInput
from core.results.values import Finding, MachineResult

#: mean power of a run [W]
MEAN_W = (15.0, 400.0)
BED_SHARE = (0.20, 0.85)
#: power doing nothing [W]; a machine switched off at the plug draws none, or less than this, and is no oddity
STANDBY_W = (1.0, 30.0)
NOTHING_W = 0.1
#: watts of a held bed over the heat that a plate of its size must lose
HOLD_TIMES = (0.7, 3.0)
#: a bed held less far above the room than this tells little [K]
WARM_K = 20.0


def implausible(given: MachineInput, result: MachineResult) -> Iterable[Finding]:
    """What is unusual about a machine's values.

    Parameters
    ----------
    given : MachineInput
    result : MachineResult
        Of this input.
    """
    if result.mean_w is not None:
        yield from _outside("plausible.mean_w", result, result.mean_w.value, MEAN_W)
    if result.bed_share is not None:
        percent = tuple(100 * bound for bound in BED_SHARE)
        yield from _outside("plausible.bed_share", result, 100 * result.bed_share.value, percent)
    if result.standby_w is not None and result.standby_w.value >= NOTHING_W:
        yield from _outside("plausible.standby_w", result, result.standby_w.value, STANDBY_W)
    area_dm2 = bed_area_dm2(given.machine)
    if area_dm2 is None:
        return
    for held in _held(given):
        yield from _held_bed(result, held, area_dm2)


def _outside(code: str, result: MachineResult, value: float, bounds: tuple[float, ...]) -> Iterable[Finding]:
    low, high = bounds
    if low <= value <= high:
        return
    told = {"machine": result.name, "value": value, "low": low, "high": high}
    yield found("note", code, (result.machine_id,), facts=told)


def _held(given: MachineInput) -> tuple[HeldBed, ...]:
    tests = [
        (run, log.seen, log.meter)
        for log in given.logs
        for run in log.runs
        if run.kind == "hold test" and log.seen is not None
    ]
    return all_held(tests, Conditions(given.boundary, given.bed_c, given.room_c))[0]


def _held_bed(result: MachineResult, held: HeldBed, area_dm2: float) -> Iterable[Finding]:
    """A held bed against the floor that physics sets."""
    watts = held.hold.bed_w
    if watts is None or held.difference_k < WARM_K:
        return
    room_c = ORDINARY_ROOM_C if held.room_c is None else held.room_c
    floor_w = loss(Plate.square(area_dm2), held.bed_c, room_c).total_w
    low, high = HOLD_TIMES
    times = watts / floor_w
    if low <= times <= high:
        return
    yield found(
        "note",
        "plausible.hold_w",
        (result.machine_id,),
        about=(result.machine_id, f"{held.bed_c:.0f}"),
        facts={
            "machine": result.name,
            "value": watts,
            "times": times,
            "low": low,
            "high": high,
            "bed_c": held.bed_c,
            "area": area_dm2,
            "floor": floor_w,
            "method": METHOD,
        },
    )
