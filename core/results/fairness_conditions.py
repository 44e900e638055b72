"""Temperatures that are not alike: of bed, room, nozzle and first layer, and of the bed at the start.

Rules: machines are told apart from the temperature that most of them share; each group of others is one
finding. What a temperature could matter is worked out for the machines that differ, from their own energies.
"""

import statistics
from collections import Counter
from collections.abc import Callable, Iterable, Sequence

from attrs import frozen

from core.beds.plate import loss_ratio
from core.energy.integral import by_power_wh
from core.formatting import listed, number
from core.language import tr
from core.results.fairness_points import found
from core.results.fairness_runs import odd, others, processing_s
from core.results.fairness_temperatures import (
    ASKED,
    OTHERWISE,
    Place,
    StatedConditions,
    by_run,
    known_c,
    temperature_c,
)
from core.results.machine import MachineInput, machine_result
from core.results.values import Finding, MachineResult

#: temperatures further apart than this are told [K]
FAR_KELVIN = 3.0
#: a nozzle, and a bed at the start, by more [K]
FAR_NOZZLE_KELVIN, FAR_START_KELVIN = 5.0, 5.0
#: where nobody noted or logged the room, or the bed [degC]
ORDINARY_ROOM_C, ORDINARY_BED_C = 22.0, 60.0
#: a first layer is taken to last no longer than this; judgement, no source [s]
FIRST_LAYER_S = 600.0
#: so many names are written out in a sentence
_NAMED = 4


@frozen
class _Made:
    """A machine with its temperatures. [degC]"""

    given: MachineInput
    own_c: float
    test: StatedConditions

    @property
    def result(self) -> MachineResult:
        return machine_result(self.given)

    def at(self, place: Place, otherwise_c: float) -> float:
        found_c = known_c(self.given, place, self.test)
        return otherwise_c if found_c is None else found_c


def conditions_between(compared: Sequence[MachineInput], test: StatedConditions) -> Iterable[Finding]:
    """Findings of temperatures of machines against each other.

    Parameters
    ----------
    compared : sequence of MachineInput
        Those with a value.
    test : StatedConditions
    """
    for place, code, far_k, matters in _RULES:
        if place in OTHERWISE and all(temperature_c(given, place) is None for given in compared):
            continue
        known = [
            _Made(given, own_c, test)
            for given in compared
            if (own_c := known_c(given, place, test)) is not None
        ]
        yield from _unlike(known, code, far_k, matters)
    yield from _not_noted(compared, test)
    yield from _starting_states(compared)


def conditions_within(given: MachineInput) -> Iterable[Finding]:
    """Runs of one machine that were made at another temperature than its other runs."""
    result = machine_result(given)
    for place in ("bed", "room", "nozzle"):
        known = dict(by_run(given, place))
        runs = [r for r in result.included if r.run_id in known]
        temperatures = [known[r.run_id] for r in runs]
        far_k = FAR_NOZZLE_KELVIN if place == "nozzle" else FAR_KELVIN
        for i in range(len(runs)):
            if len(runs) < 2 or (len(runs) == 2 and i == 0):
                continue  # of two runs the second is told
            usual_c = others(temperatures, i)
            if abs(temperatures[i] - usual_c) > far_k:
                facts = {"place": tr(place), "own": temperatures[i], "usual": usual_c}
                yield odd("fair.run_temperature", result, runs, i, about=(runs[i].run_id, place), facts=facts)


# what a temperature could matter, and how that was worked out


def _bed_wh(result: MachineResult) -> tuple[float, str]:
    """The bed's energy in the mean run, and how it is known; all energy where nothing tells it. [Wh]"""
    assert result.energy_wh is not None
    energy_wh = result.energy_wh.value
    if result.bed_share is not None:
        return energy_wh * result.bed_share.value, tr("by its share")
    bounds = [r.bed.at_most for r in result.included if r.bed is not None and r.bed.at_most is not None]
    if bounds and len(bounds) == len(result.included):
        return energy_wh * max(bounds), tr("at most")
    return energy_wh, tr("at most: all energy, because its share is not known")


def _of_bed(made: _Made, usual_c: float) -> tuple[float | None, tuple[str, ...]]:
    room_c = made.at("room", ORDINARY_ROOM_C)
    if min(made.own_c, usual_c) <= room_c:
        return None, ()
    bed_wh, how = _bed_wh(made.result)
    ratio = loss_ratio(made.own_c, usual_c, room_c)
    working = (
        tr("{machine}: bed {energy} Wh ({how})", machine=made.result.name, energy=number(bed_wh, 2), how=how),
        tr(
            "at {usual} instead of {own} °C in a room of {room} °C: {ratio} times that",
            usual=number(usual_c, 0),
            own=number(made.own_c, 0),
            room=number(room_c, 0),
            ratio=number(ratio, 3),
        ),
    )
    return bed_wh * abs(ratio - 1), working


def _of_room(made: _Made, usual_c: float) -> tuple[float | None, tuple[str, ...]]:
    bed_c = made.at("bed", ORDINARY_BED_C)
    if bed_c <= max(made.own_c, usual_c):
        return None, ()
    bed_wh, how = _bed_wh(made.result)
    # the air's own temperature hardly matters: how far the bed stands above it does
    ratio = loss_ratio(bed_c, bed_c - (usual_c - made.own_c), made.own_c)
    working = (
        tr("{machine}: bed {energy} Wh ({how})", machine=made.result.name, energy=number(bed_wh, 2), how=how),
        tr(
            "at {bed} °C in a room of {usual} instead of {own} °C: {ratio} times that",
            bed=number(bed_c, 0),
            usual=number(usual_c, 0),
            own=number(made.own_c, 0),
            ratio=number(ratio, 3),
        ),
    )
    return bed_wh * abs(ratio - 1), working


def _of_start(made: _Made, usual_c: float) -> tuple[float | None, tuple[str, ...]]:
    bed_c = made.at("bed", ORDINARY_BED_C)
    warming = warming_wh(made.given)
    if warming is None or bed_c - made.own_c <= 1.0:
        return None, ()
    per_k = warming / (bed_c - made.own_c)
    working = (
        tr(
            "{machine}: warm-up {energy} Wh from {own} to {bed} °C",
            machine=made.result.name,
            energy=number(warming, 2),
            own=number(made.own_c, 0),
            bed=number(bed_c, 0),
        ),
        tr(
            "from {usual} °C: {degrees} degrees at {energy} Wh each",
            usual=number(usual_c, 0),
            degrees=number(abs(usual_c - made.own_c), 0),
            energy=number(per_k, 3),
        ),
    )
    return per_k * abs(usual_c - made.own_c), working


def _of_nozzle(made: _Made, usual_c: float) -> tuple[float | None, tuple[str, ...]]:
    result, room_c = made.result, made.at("room", ORDINARY_ROOM_C)
    if made.own_c <= room_c or result.energy_wh is None:
        return None, ()
    bed_wh = 0.0 if result.bed_share is None else result.energy_wh.value * result.bed_share.value
    rest_wh = result.energy_wh.value - bed_wh
    share = abs(usual_c - made.own_c) / (made.own_c - room_c)
    working = (
        tr(
            "{machine}: {energy} Wh are not known to be the bed's",
            machine=result.name,
            energy=number(rest_wh, 2),
        ),
        tr(
            "{degrees} of {all} degrees above the room",
            degrees=number(abs(usual_c - made.own_c), 0),
            all=number(made.own_c - room_c, 0),
        ),
    )
    return rest_wh * share, working


def _early(
    matters: Callable[[_Made, float], tuple[float | None, tuple[str, ...]]],
) -> Callable[[_Made, float], tuple[float | None, tuple[str, ...]]]:
    """The same, for no longer than a first layer."""

    def of_first_layer(made: _Made, usual_c: float) -> tuple[float | None, tuple[str, ...]]:
        whole_wh, working = matters(made, usual_c)
        lengths = [processing_s(r) or r.seconds or 0.0 for r in made.result.included]
        longest_s = max(lengths, default=0.0)
        if whole_wh is None or longest_s <= 0:
            return None, ()
        share = min(1.0, FIRST_LAYER_S / longest_s)
        return whole_wh * share, (
            *working,
            tr("for {percents} % of the time at most", percents=number(100 * share, 0)),
        )

    return of_first_layer


_Matters = Callable[[_Made, float], tuple[float | None, tuple[str, ...]]]
_RULES: tuple[tuple[Place, str, float, _Matters], ...] = (
    ("bed", "fair.bed_temperature", FAR_KELVIN, _of_bed),
    ("room", "fair.room_temperature", FAR_KELVIN, _of_room),
    ("start", "fair.start_temperature", FAR_START_KELVIN, _of_start),
    ("nozzle", "fair.nozzle_temperature", FAR_NOZZLE_KELVIN, _of_nozzle),
    ("first layer bed", "fair.first_layer_bed", FAR_KELVIN, _early(_of_bed)),
    ("first layer nozzle", "fair.first_layer_nozzle", FAR_NOZZLE_KELVIN, _early(_of_nozzle)),
)


def warming_wh(given: MachineInput) -> float | None:
    """Mean energy of the warm-ups of the counted runs, by the power column; None where none is seen. [Wh]"""
    counted = {run.run_id: run for run in machine_result(given).included}
    found_wh = [
        by_power_wh(log.seen.trace, span.start_s, span.end_s)
        for log in given.logs
        if log.seen is not None
        for run in log.runs
        if run.id in counted
        for span in counted[run.id].states
        if span.state == "warm-up"
    ]
    return statistics.fmean(found_wh) if found_wh else None


# telling groups of machines apart


def _unlike(known: list[_Made], code: str, far_k: float, matters: _Matters) -> Iterable[Finding]:
    """One finding for each group of machines that lies apart from the largest."""
    groups = _groups(known, far_k)
    if len(groups) < 2:
        return
    # of groups of one size the hotter is the usual one
    usual = max(groups, key=lambda g: (len(g), g[0].own_c))
    usual_c = statistics.median([made.own_c for made in usual])
    for group in groups:
        if group is usual:
            continue
        worked = [matters(made, usual_c) for made in group]
        most = max((w for w in worked if w[0] is not None), key=lambda w: w[0] or 0.0, default=(None, ()))
        # of two groups of one size nothing says which is the odd one
        is_tie = len(groups) == 2 and len(group) == len(usual)
        touched = (*group, *usual) if is_tie else group
        yield found(
            "caution",
            code,
            tuple(made.given.machine.id for made in touched),
            most[0],
            working=most[1],
            facts={
                "own": statistics.median([made.own_c for made in group]),
                "machines": _names(group),
                "usual": usual_c,
                "others": _names(usual),
            },
        )


def _groups(known: list[_Made], far_k: float) -> list[list[_Made]]:
    """Machines by temperature; a group spans no more than what is not told."""
    groups: list[list[_Made]] = []
    for made in sorted(known, key=lambda m: m.own_c):
        if groups and made.own_c - groups[-1][0].own_c <= far_k:
            groups[-1].append(made)
        else:
            groups.append([made])
    return groups


def _names(group: Sequence[_Made]) -> str:
    names = [made.given.machine.name for made in group]
    return listed(names) if len(names) <= _NAMED else tr("{count} machines", count=len(names))


def _not_noted(compared: Sequence[MachineInput], test: StatedConditions) -> Iterable[Finding]:
    """Temperatures that are known of some machines only."""
    for place in ASKED:
        without = [given for given in compared if known_c(given, place, test) is None]
        if not without or len(without) == len(compared):
            continue
        names = [given.machine.name for given in without]
        yield found(
            "note",
            "fair.not_noted",
            tuple(given.machine.id for given in without),
            about=(place, *sorted(given.machine.id for given in without)),
            facts={
                "place": tr(place),
                "machines": listed(names)
                if len(names) <= _NAMED
                else tr("{count} machines", count=len(names)),
            },
        )


def _starting_states(compared: Sequence[MachineInput]) -> Iterable[Finding]:
    """Runs read off a display that began from another state than most, as somebody noted it."""
    noted = [
        (given, typed, typed.starting_state.strip().lower())
        for given in compared
        for typed, _ in given.typed
        if typed.included and typed.starting_state.strip()
    ]
    states = Counter(state for _, _, state in noted)
    if len(states) < 2:
        return
    usual = states.most_common(1)[0][0]
    for state in sorted(states.keys() - {usual}):
        apart = [(given, typed) for given, typed, own in noted if own == state]
        machines = {given.machine.id: given.machine.name for given, _ in apart}
        yield found(
            "caution",
            "fair.starting_state",
            tuple(machines),
            run_ids=tuple(typed.id for _, typed in apart),
            facts={
                "runs": tr("{count:run|runs}", count=len(apart)),
                "machines": listed(list(machines.values())),
                "state": state,
                "usual": usual,
            },
        )
