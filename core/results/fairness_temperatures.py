"""What is known of the temperatures of runs: noted with them, logged, or those of the whole test.

Rules: what a person noted with a run goes before what its log says, and that before the temperatures of the
whole test. A first layer that nobody noted has the temperatures of the others.
"""

import statistics
from collections.abc import Sequence
from functools import lru_cache
from typing import Literal

from attrs import frozen

from core.beds.hold import logged_c
from core.formatting import POINT, NumberLocale
from core.language import tr
from core.results.machine import LogInput, MachineInput, machine_result
from core.results.temperatures import degrees
from core.results.values import RunResult
from core.study import Run, TypedReading

Place = Literal["bed", "room", "nozzle", "first layer bed", "first layer nozzle", "start"]
#: a bed is read over this time before its run starts [s]
_BEFORE_S = 60.0
_LOGGED = {"bed": "bed", "room": "room", "nozzle": "hot end"}
_NOTED: dict[Place, str] = {
    "bed": "bed_c",
    "room": "room_c",
    "nozzle": "nozzle_c",
    "first layer bed": "first_layer_bed_c",
    "first layer nozzle": "first_layer_nozzle_c",
}
#: what is asked for where some machines have it and others not
ASKED: tuple[Place, ...] = ("bed", "room", "nozzle")
#: a first layer that nobody noted has the temperatures of the others
OTHERWISE: dict[Place, Place] = {"first layer bed": "bed", "first layer nozzle": "nozzle"}


@frozen
class StatedConditions:
    """Temperatures of the test where a run has none of its own. [degC]"""

    bed_c: float | None = None
    room_c: float | None = None

    def of(self, place: Place) -> float | None:
        """That of a place."""
        return self.bed_c if place == "bed" else self.room_c if place == "room" else None


def forget() -> None:
    """Let go of everything remembered."""
    temperature_c.cache_clear()
    by_run.cache_clear()


@lru_cache(maxsize=8192)
def temperature_c(given: MachineInput, place: Place) -> float | None:
    """Median temperature of a place in the counted runs: as noted, else as logged. [degC]

    Parameters
    ----------
    given : MachineInput
    place : {"bed", "room", "nozzle", "first layer bed", "first layer nozzle", "start"}
        The last is that of the bed just before a run begins.
    """
    known = [c for _, c in by_run(given, place)]
    return statistics.median(known) if known else None


def known_c(given: MachineInput, place: Place, test: StatedConditions) -> float | None:
    """That of the machine's runs, or else of the test. [degC]"""
    own_c = temperature_c(given, place)
    if own_c is None and place in OTHERWISE:
        return known_c(given, OTHERWISE[place], test)
    return test.of(place) if own_c is None else own_c


@lru_cache(maxsize=8192)
def by_run(given: MachineInput, place: Place) -> tuple[tuple[str, float], ...]:
    """The temperature of each counted run that has one, by run id. [degC]"""
    counted = {run.run_id: run for run in machine_result(given).included}
    known: list[tuple[str, float]] = []
    for log in given.logs:
        for run in log.runs:
            if run.id in counted:
                value_c = _noted_c(run, place)
                value_c = _logged_c(log, counted[run.id], place) if value_c is None else value_c
                if value_c is not None:
                    known.append((run.id, value_c))
    for typed, _ in given.typed:
        value_c = _noted_c(typed, place)
        if typed.id in counted and value_c is not None:
            known.append((typed.id, value_c))
    return tuple(known)


def _noted_c(run: Run | TypedReading, place: Place) -> float | None:
    if place not in _NOTED:
        return None
    value: float | None = getattr(run, _NOTED[place])
    return value


def _logged_c(log: LogInput, run: RunResult, place: Place) -> float | None:
    if log.seen is None or run.start_s is None:
        return None
    trace = log.seen.trace
    if place == "start":
        return logged_c(trace, "bed", run.start_s - _BEFORE_S, run.start_s) if run.start_s > 0 else None
    span = next((s for s in run.states if s.state == "processing"), None)
    if span is None or place not in _LOGGED:
        return None
    return logged_c(trace, _LOGGED[place], span.start_s, span.end_s)


@frozen
class Told:
    """A temperature of a machine's runs: what the user noted in them, and what counts without a note.

    Parameters
    ----------
    noted_c : float or None
        The same in all its runs; None where nobody noted any, or not one for all. [degC]
    behind : str
        In a few letters: what counts otherwise, and by whom.
    """

    noted_c: float | None
    behind: str


def told(given: MachineInput, place: Place, test: StatedConditions, locale: NumberLocale = POINT) -> Told:
    """What is known of a temperature of a machine's runs that count.

    Parameters
    ----------
    given : MachineInput
    place : {"bed", "room", "nozzle", "first layer bed", "first layer nozzle"}
    test : StatedConditions
    locale : NumberLocale
    """
    counted = {run.run_id for run in machine_result(given).included}
    made = [run for log in given.logs for run in log.runs if run.id in counted]
    read = [typed for typed, _ in given.typed if typed.id in counted]
    noted = [*(_noted_c(run, place) for run in made), *(_noted_c(typed, place) for typed in read)]
    known = [c for c in noted if c is not None]
    if known and len(known) == len(noted) and min(known) == max(known):
        return Told(known[0], "")
    if known:
        low, high = (degrees(c, locale) for c in (min(known), max(known)))
        return Told(None, low if low == high else tr("{low} to {high}", low=low, high=high))
    logged_c = temperature_c(given, place)
    if logged_c is not None:
        return Told(None, tr("{degrees} (log)", degrees=degrees(logged_c, locale)))
    if test.of(place) is not None:
        return Told(None, tr("{degrees} (test)", degrees=degrees(test.of(place) or 0.0, locale)))
    return Told(None, tr("as the rest") if place in OTHERWISE else tr("not noted"))


def unseen(compared: Sequence[MachineInput], test: StatedConditions) -> tuple[str, ...]:
    """Temperatures of which nothing is known of any machine, by name."""
    if not compared:
        return ()
    return tuple(place for place in ASKED if all(known_c(given, place, test) is None for given in compared))
