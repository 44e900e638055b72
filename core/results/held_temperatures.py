"""Where the temperatures of a hold test are from: noted, logged here or elsewhere, or the test's own."""

import statistics
from collections.abc import Sequence
from typing import Final, Literal

from core.beds.hold import Hold, logged_c
from core.traces import Trace

#: a bed temperature nobody chose, for comparing beds [degC]
ORDINARY_BED_C: Final = 60.0
Known = Literal["noted", "logged", "other log", "of the test", "ordinary", "unknown"]


def elsewhere_c(other: Trace, trace: Trace, hold: Hold, place: str) -> float | None:
    """Temperature that another log of the machine, or of its bed, has of the same time. [degC]"""
    here, there = trace.clock, other.clock
    if place not in other.temperatures_c or here.start_s is None or there.start_s is None:
        return None
    if here.kind != there.kind:
        return None
    shift_s = here.start_s - there.start_s
    start_s, end_s = hold.steady.start_s + shift_s, hold.end_s + shift_s
    return logged_c(other, place, start_s, end_s) if start_s >= 0 and end_s <= other.end_s else None


def first_known(*told: tuple[float | None, Known]) -> tuple[float | None, Known]:
    """The first temperature that is known, and from where; the best source comes first. [degC]"""
    return next(((value, how) for value, how in told if value is not None), (None, "unknown"))


def usual_c(held_c: Sequence[float | None]) -> float:
    """The temperature that most holds are near, the warmest of several, or an ordinary one. [degC]"""
    near = [5.0 * round(bed_c / 5) for bed_c in held_c if bed_c is not None]
    return max(statistics.multimode(near), default=ORDINARY_BED_C)
