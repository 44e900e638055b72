"""The bed's part of each run of a machine, by the best of the four ways that its logs allow.

Rules: ways are ranked (a meter on the bed, a run with the bed off, a hold test, the run's own heater). Where
ways agree, the one with the narrowest interval is told; where they do not, the better-ranked one, and that
they disagree. The others are kept beside it. A machine with nothing but its runs costs nothing here.
"""

import math
from collections.abc import Sequence
from functools import lru_cache

from attrs import evolve, frozen

from core.beds.from_holds import ORDINARY_ROOM_C, HeldBed, warm_up_wh, watts_at
from core.beds.hold import Hold, holds, logged_c
from core.beds.ways import agreement, by_hold, by_own_meter, by_run_without
from core.faults import facts_of
from core.loads.same_load import Calibration
from core.problems import Problem, Severity
from core.results.runs import MAKING, Measurement, Seen, as_checked, measure
from core.results.values import BedShare, Energy, Influence, Measured, RunResult, State
from core.study import Boundary, Meter, Run
from core.uncertainty import NORMAL_95
from core.units import SECONDS_PER_HOUR

#: names of influences of a run with the bed off: its length, and that it is not made quite alike
UNLIKE_LENGTH, UNLIKE_RUN = "unlike length", "unlike run"
#: half-width of a rectangle: how a part made without a warm bed may differ in all else; judgement, no source
UNLIKE_WITHOUT = 0.02


@frozen
class Made:
    """A stretch of a log, its result, and where it was measured."""

    run: Run
    result: RunResult
    seen: Seen | None
    meter: Meter


@frozen
class Conditions:
    """What holds for all runs: the test's temperatures, where a run has none, and checks of meters. [degC]"""

    boundary: Boundary
    bed_c: float | None = None
    room_c: float | None = None
    checked: Calibration | None = None


def best(
    made: Sequence[Made], bed_logs: Sequence[tuple[Seen, Meter]], conditions: Conditions
) -> list[RunResult]:
    """The results with the best share that can be had of each run.

    Parameters
    ----------
    made : sequence of Made
        All stretches of one machine.
    bed_logs : sequence of (Seen, Meter)
        Logs of the bed alone.
    conditions : Conditions
    """
    without = _mean_without(made)
    tests = [m for m in made if m.run.kind == "hold test" and m.seen is not None]
    if not (without or tests or bed_logs):
        return [m.result for m in made]
    held, faults = all_held([(m.run, m.seen, m.meter) for m in tests if m.seen is not None], conditions)
    meters = tuple(dict.fromkeys(m.meter for m in tests))

    def with_best(one: Made) -> RunResult:
        used = one.result.energy
        if used is None or one.result.bed is None or used.energy_wh <= 0:
            return one.result
        measured = _measured(one, conditions)
        if measured is None:
            return one.result
        if one.run.set_bed_off:
            return evolve(one.result, bed=None)
        told: tuple[Problem, ...] = faults
        ways: list[BedShare | None] = []
        try:
            ways += [_by_bed_log(one, measured, *log, conditions) for log in bed_logs]
            if without is not None:
                ways.append(_by_run_without(one, *without))
            if held:
                ways.append(_by_hold(one, measured, held, meters, conditions))
        except Exception as error:  # noqa: BLE001  # a fault of ours costs the way, not the run
            told += (Problem("bed.fault", Severity.ERROR, facts=facts_of(error)),)
        chosen, problem = choice([*(way for way in ways if way is not None), one.result.bed])
        told += () if problem is None else (problem,)
        if held and chosen.share is None and _bed_c(one, measured, conditions) is None:
            told += (Problem("bed.no_temperature", Severity.NOTE),)
        return evolve(one.result, bed=chosen, problems=(*one.result.problems, *told))

    return [with_best(one) if one.run.kind in MAKING else one.result for one in made]


def all_held(
    tests: Sequence[tuple[Run, Seen, Meter]], conditions: Conditions
) -> tuple[tuple[HeldBed, ...], tuple[Problem, ...]]:
    """What was held in all hold tests of a machine, and what went wrong."""
    held: list[HeldBed] = []
    faults: list[Problem] = []
    for run, seen, meter in tests:
        try:
            held += held_in(run, seen, meter, conditions)
        except Exception as error:  # noqa: BLE001  # a fault of ours in one test must not cost the machine
            faults.append(Problem("bed.fault", Severity.ERROR, facts=facts_of(error)))
    return tuple(held), tuple(faults)


def choice(ways: Sequence[BedShare]) -> tuple[BedShare, Problem | None]:
    """The way to tell, with the others beside it, and whether two ways disagree.

    Parameters
    ----------
    ways : sequence of BedShare
        Of one run, best-ranked first, the run's own heater last.
    """
    known = [way for way in ways if way.share is not None]
    if not known:
        return ways[-1], None
    surest = min(known, key=lambda way: way.share_u95 or 0.0)
    for rank, way in enumerate(known):
        for other in known[rank + 1 :]:
            found = agreement(way, other)
            if found is not None and found.problem is not None:
                return _beside(way, known), found.problem
    return _beside(surest, known), None


def _beside(way: BedShare, known: Sequence[BedShare]) -> BedShare:
    return evolve(way, others=tuple(other for other in known if other is not way))


def forget() -> None:
    """Let go of everything remembered."""
    _holds.cache_clear()
    _watts_at.cache_clear()
    _cut.cache_clear()
    _share_by_hold.cache_clear()
    _share_by_difference.cache_clear()


def _measured(one: Made, conditions: Conditions) -> Measurement | None:
    if one.seen is None:
        return None
    return measure(one.seen, one.run.start_s, one.run.end_s, conditions.boundary, one.meter)


def _by_bed_log(
    one: Made, measured: Measurement, bed: Seen, meter: Meter, conditions: Conditions
) -> BedShare | None:
    """Way 1, where the bed's log covers the run and both clocks say when that was."""
    if one.seen is None or one.result.energy is None:
        return None
    run_clock, bed_clock = one.seen.trace.clock, bed.trace.clock
    if run_clock.start_s is None or bed_clock.start_s is None or run_clock.kind != bed_clock.kind:
        return None
    shift_s = run_clock.start_s - bed_clock.start_s
    start_s, end_s = measured.start_s + shift_s, measured.end_s + shift_s
    if start_s < 0 or end_s > bed.trace.end_s:
        return None
    bed_energy = as_checked(_cut(bed, start_s, end_s, meter), meter, conditions.checked)
    return by_own_meter(one.result.energy, bed_energy)


@lru_cache(maxsize=4096)
def _cut(seen: Seen, start_s: float, end_s: float, meter: Meter) -> Energy:
    from core.energy.total import between

    return between(seen.trace, start_s, end_s, meter)


def _mean_without(made: Sequence[Made]) -> tuple[Energy, float] | None:
    """Mean energy and duration of the machine's runs with the bed off. [s]"""
    from core.uncertainty import mean_of

    off = [
        (m.result.energy, m.result.seconds)
        for m in made
        if m.run.set_bed_off and m.run.kind == "run" and m.result.energy is not None and m.result.seconds
    ]
    if not off:
        return None
    mean = mean_of([energy for energy, _ in off])
    seconds = math.fsum(s for _, s in off) / len(off)
    return Energy(mean.energy_wh.value, mean.influences, "mean"), seconds


def _by_run_without(one: Made, without: Energy, seconds: float) -> BedShare | None:
    """Way 2; what the run takes longer than one with the bed off is waiting for the bed.

    While it waits the machine draws more than in standby and less than at work: the middle, as a rectangle.
    """
    used, length_s = one.result.energy, one.result.seconds
    if used is None or not length_s:
        return None
    standby_w = (one.seen.activity.standby_w if one.seen is not None else None) or 0.0
    working_w = without.energy_wh * SECONDS_PER_HOUR / seconds
    half_w = max(working_w - standby_w, 0.0) / 2
    longer_h = (length_s - seconds) / SECONDS_PER_HOUR
    doubts = (
        Influence(UNLIKE_LENGTH, abs(longer_h) * half_w / math.sqrt(3)),
        Influence(UNLIKE_RUN, UNLIKE_WITHOUT / math.sqrt(3) * without.energy_wh),
    )
    value_wh = without.energy_wh + longer_h * (standby_w + half_w)
    rest = evolve(without, energy_wh=value_wh, influences=(*without.influences, *doubts))
    return _share_by_difference(used, rest)


@lru_cache(maxsize=4096)
def _share_by_difference(used: Energy, without: Energy) -> BedShare:
    return evolve(by_run_without(used, without), terms=(("without_wh", without.energy_wh),))


@lru_cache(maxsize=1024)
def _holds(seen: Seen, start_s: float, end_s: float, meter: Meter) -> tuple[Hold, ...]:
    return holds(seen.trace, start_s, end_s, meter)


def held_in(run: Run, seen: Seen, meter: Meter, conditions: Conditions) -> list[HeldBed]:
    """The temperatures held in a hold test, those that are known: as noted, logged, or those of the test.

    Parameters
    ----------
    run : Run
        The hold test.
    seen : Seen
        Its log.
    meter : Meter
    conditions : Conditions
    """
    found = _holds(seen, run.start_s, run.end_s, meter)
    held = []
    for hold in found:
        noted_c = run.bed_c if len(found) == 1 else None
        bed_c = _first(noted_c, hold.bed_c, conditions.bed_c if len(found) == 1 else None)
        if bed_c is not None:
            held.append(HeldBed(hold, bed_c, _first(run.room_c, hold.room_c, conditions.room_c)))
    return held


def _bed_c(one: Made, measured: Measurement, conditions: Conditions) -> float | None:
    return _first(one.run.bed_c, _logged_c(one, measured, "bed"), conditions.bed_c)


def _logged_c(one: Made, measured: Measurement, place: str) -> float | None:
    if one.seen is None:
        return None
    start_s, end_s = _span(measured, "processing")
    return logged_c(one.seen.trace, place, start_s, end_s)


def _by_hold(
    one: Made,
    measured: Measurement,
    held: tuple[HeldBed, ...],
    meters: tuple[Meter, ...],
    conditions: Conditions,
) -> BedShare | None:
    """Way 3, where the bed's temperature in the run is known."""
    from core.energy.total import by_power_wh

    bed_c = _bed_c(one, measured, conditions)
    if bed_c is None or one.seen is None:
        return None
    # as read: the hold's watts are
    used = measured.energy
    room_c = _first(one.run.room_c, _logged_c(one, measured, "room"), conditions.room_c)
    watts = _watts_at(held, bed_c, room_c)
    if watts is None:
        return None
    if meters == (one.meter,):
        # the same gain is in both and cancels
        used = evolve(
            used, influences=tuple(i for i in used.influences if i.shared != f"gain:{one.meter.id}")
        )
    else:
        gain_u95_w = NORMAL_95 * max(m.gain_percent for m in meters) / 100 / math.sqrt(3) * watts.value
        watts = Measured(watts.value, math.hypot(watts.u95 or 0.0, gain_u95_w))
    warm_s = _span(measured, "warm-up")
    warm_wh = Measured(0.0, 0.0)
    if warm_s[1] > warm_s[0]:
        standby_wh = (one.seen.activity.standby_w or 0.0) * (warm_s[1] - warm_s[0]) / SECONDS_PER_HOUR
        above_wh = by_power_wh(one.seen.trace, *warm_s) - standby_wh
        difference_k = bed_c - (ORDINARY_ROOM_C if room_c is None else room_c)
        warm_wh = warm_up_wh(held, difference_k, watts.value, warm_s[1] - warm_s[0], above_wh)
    working_s = _span(measured, "processing")
    found = _share_by_hold(used, watts, working_s[1] - working_s[0], warm_wh)
    if found is None or found.share is None or one.result.energy_wh is None:
        return None
    return evolve(found, energy_wh=found.share * one.result.energy_wh)


@lru_cache(maxsize=1024)
def _watts_at(held: tuple[HeldBed, ...], bed_c: float, room_c: float | None) -> Measured | None:
    return watts_at(held, bed_c, room_c)


@lru_cache(maxsize=4096)
def _share_by_hold(used: Energy, watts: Measured, seconds: float, warm_wh: Measured) -> BedShare | None:
    found = by_hold(used, watts, Measured(0.0, 0.0), seconds, warm_wh)
    if found.share is None or not 0 < found.share < 1:
        return None
    terms = (("held_w", watts.value), ("processing_s", seconds), ("warm_up_wh", warm_wh.value))
    return evolve(found, terms=terms)


def _span(measured: Measurement, state: State) -> tuple[float, float]:
    """The part of a run's interval that is in a state; empty where it is not. [s]"""
    for span in measured.states:
        if span.state == state:
            start_s, end_s = max(span.start_s, measured.start_s), min(span.end_s, measured.end_s)
            return start_s, max(start_s, end_s)
    return measured.start_s, measured.start_s


def _first(*values: float | None) -> float | None:
    """The first that is known."""
    return next((value for value in values if value is not None), None)
