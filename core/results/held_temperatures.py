"""Where the temperatures of a hold test are from: noted, logged here or elsewhere, or the test's own."""

from typing import Literal

from core.beds.hold import Hold, logged_c
from core.traces import Trace

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
