"""Each machine's energy for the part, made that of common conditions where its data allow it.

Rules: measured and adjusted values stand side by side and are never mixed. A run whose bed's temperature is
not known is not adjusted, nor is a machine whose bed's watts no hold test and no share tell: it says which
test would help. A room that was not noted is taken for that of the hold tests. How warm a bed began, where no
log shows it, is worked out from how long it had cooled since the run before, if a test tells its heat
capacity.
"""

import math
from collections.abc import Mapping
from functools import lru_cache

from attrs import evolve, frozen

from core.beds.heat import time_constant_s
from core.beds.hold import logged_c
from core.beds.like_for_like import (
    LEAST_ABOVE_ROOM_K,
    Conditions,
    How,
    Step,
    adjusted,
    by_duration,
    by_holds,
    by_plate_law,
    mean_steps,
)
from core.energy.integral import mean_w
from core.language import tr
from core.results.holds import Beds, MachineBed, beds
from core.results.temperatures import degrees
from core.results.values import Comparison, MachineResult, Measured, RunResult
from core.study import Run, Study
from core.traces import Trace
from core.uncertainty import NORMAL_95
from core.units import J_PER_WH

#: the bed's temperature at the start is read over this time before it [s]
_BEFORE_S = 60.0
#: so far from the common temperature, in such strides, one is looked for at which two machines change places
FARTHEST_K = 20
_STRIDE_K = 5
#: among more machines some always do, and looking would hold up the window
MOST_SEARCHED = 30
#: a bed that has cooled this many time constants is as cold as the room
_COLD_AFTER = 5.0


@frozen
class Adjusted:
    """One machine, measured and made like the others.

    Parameters
    ----------
    measured_wh : Measured
        The mean of its runs. [Wh]
    adjusted_wh : Measured or None
        None where it cannot be adjusted; then `why_not` says why, and which test would help. [Wh]
    steps : tuple of Step
        From the one to the other, the mean of its runs.
    how : How or None
        What told the bed's watts.
    run_id : str
        Its first run that counts.
    notes : tuple of str
        What was taken for granted.
    own : tuple of (run id, Conditions)
        The conditions of its runs, where they are known.
    """

    machine_id: str
    name: str
    slot: int
    measured_wh: Measured
    adjusted_wh: Measured | None
    steps: tuple[Step, ...]
    how: How | None
    run_id: str
    why_not: str = ""
    notes: tuple[str, ...] = ()
    own: tuple[tuple[str, Conditions], ...] = ()


@frozen
class Swap:
    """Two machines that change places: `first_name` needed less as measured, `then_name` needs less adjusted.

    ``is_sure`` says whether the adjusted difference is more than both intervals leave open.
    """

    first_name: str
    then_name: str
    is_sure: bool


@frozen
class LikeForLike:
    """All machines with a measured value in the order of the comparison, at the common conditions.

    ``change_c`` is the bed's temperature nearest to the common one at which two machines change places, and
    ``changing`` those two; None where none do here or within `FARTHEST_K`, or where some do already. [degC]
    """

    common: Conditions
    machines: tuple[Adjusted, ...]
    swaps: tuple[Swap, ...]
    change_c: float | None = None
    changing: Swap | None = None

    @property
    def known(self) -> tuple[Adjusted, ...]:
        """Those that could be adjusted, the least adjusted energy first."""
        found = [m for m in self.machines if m.adjusted_wh is not None]
        return tuple(sorted(found, key=lambda m: m.adjusted_wh.value if m.adjusted_wh else math.inf))

    def of(self, machine_id: str) -> Adjusted | None:
        """The machine with this id; None where it has no value."""
        return next((m for m in self.machines if m.machine_id == machine_id), None)


@frozen(eq=False)
class Given:
    """What it is made from; remembered as this one object."""

    study: Study
    comparison: Comparison
    traces: Mapping[str, Trace]
    beds: Beds


def given(study: Study, comparison: Comparison, traces: Mapping[str, Trace]) -> Given:
    """The comparison with the beds of its machines."""
    return Given(study, comparison, traces, beds(study, traces))


@lru_cache(maxsize=8)  # each keeps the traces of its comparison alive
def like_for_like(
    from_: Given,
    bed_c: float | None = None,
    room_c: float | None = None,
    processing_s: float | None = None,
) -> LikeForLike:
    """Adjust every machine of a comparison to the same conditions.

    Parameters
    ----------
    from_ : Given
    bed_c, room_c : float or None
        Common temperatures; those of the test, and of an ordinary room, unless given. A bed no warmer than
        the room is taken `LEAST_ABOVE_ROOM_K` above it. [degC]
    processing_s : float or None
        Common length of processing; None leaves each machine its own. [s]

    Returns
    -------
    LikeForLike
    """
    found = from_.beds
    room = found.room_c if room_c is None else room_c
    bed = max(found.bed_c if bed_c is None else bed_c, room + LEAST_ABOVE_ROOM_K)
    common = Conditions(bed, room, room, processing_s)
    machines = _all_adjusted(from_, common)
    swaps = _swaps(machines)
    change_c, changing = (None, None) if swaps else _nearest_change(from_, common)
    return LikeForLike(common, machines, swaps, change_c, changing)


def _all_adjusted(from_: Given, common: Conditions) -> tuple[Adjusted, ...]:
    return tuple(
        _adjusted(m, from_.beds.of(m.machine_id), from_, common)
        for m in from_.comparison.machines
        if m.energy_wh is not None
    )


def _nearest_change(from_: Given, common: Conditions) -> tuple[float | None, Swap | None]:
    """The whole degree nearest to the common bed temperature at which two machines have changed places."""
    if len(from_.comparison.machines) > MOST_SEARCHED:
        return None, None

    def swaps_at(off_k: float) -> tuple[Swap, ...]:
        bed_c = common.bed_c + off_k
        if bed_c < common.room_c + LEAST_ABOVE_ROOM_K:
            return ()
        return _swaps(_all_adjusted(from_, evolve(common, bed_c=bed_c)))

    for reach_k in range(_STRIDE_K, FARTHEST_K + 1, _STRIDE_K):
        if not (swaps_at(-reach_k) or swaps_at(reach_k)):
            continue
        for off_k in range(reach_k - _STRIDE_K + 1, reach_k + 1):
            for way in (-1, 1):
                swaps = swaps_at(way * off_k)
                if swaps:
                    return common.bed_c + way * off_k, swaps[0]
    return None, None


def forget() -> None:
    """Let go of everything remembered."""
    like_for_like.cache_clear()


def _adjusted(result: MachineResult, bed: MachineBed | None, from_: Given, common: Conditions) -> Adjusted:
    assert result.energy_wh is not None
    runs = [(r, _own(r, bed, from_)) for r in result.included]
    known = [(r, own, notes) for r, (own, notes) in runs if own is not None]
    steps: tuple[Step, ...] = ()
    how: How | None = None
    why_not = short_of = ""
    if len(known) < len(runs):
        why_not = tr("note the bed's temperature of each run")
    else:
        each, how = _steps(known, bed, common, has_warm_up=from_.comparison.boundary != "processing only")
        if how is not None and common.processing_s is not None:
            each, lacking = _with_duration(each, [r for r, _, _ in known], from_, common.processing_s)
            short_of = tr("duration not adjusted: no log shows its processing") if lacking else ""
        if how is None:
            why_not = tr("the bed's watts are not known: a hold test from cold would tell them")
        else:
            steps = mean_steps(each)
    notes = tuple(dict.fromkeys(note for _, _, told in known for note in told))
    return Adjusted(
        machine_id=result.machine_id,
        name=result.name,
        slot=result.slot,
        measured_wh=result.energy_wh,
        adjusted_wh=adjusted(result.energy_wh, steps) if how is not None else None,
        steps=steps,
        how=how,
        run_id=result.included[0].run_id,
        why_not=why_not,
        own=tuple((run.run_id, own) for run, own, _ in known),
        notes=(
            *notes,
            *((tr("start not adjusted: no hold test from cold"),) if how == "plate law" else ()),
            *((short_of,) if short_of else ()),
        ),
    )


_Known = list[tuple[RunResult, Conditions, tuple[str, ...]]]


def _steps(
    known: _Known, bed: MachineBed | None, common: Conditions, *, has_warm_up: bool
) -> tuple[tuple[tuple[Step, ...], ...], How | None]:
    """The steps of each run by the hold tests, else by the plate law, and which it was."""
    if bed is not None and bed.model is not None and bed.heat_capacity is not None:
        processing = [_processing_s(run) for run, _, _ in known]
        if all(s is not None for s in processing):
            return tuple(
                by_holds(bed.model, bed.heat_capacity, own, common, s or 0.0, has_warm_up=has_warm_up)
                for (_, own, _), s in zip(known, processing, strict=True)
            ), "hold test"
    shares = [run.bed for run, _, _ in known if run.bed is not None and run.bed.energy_wh is not None]
    if len(shares) < len(known):
        return (), None
    each = []
    for (run, own, _), share in zip(known, shares, strict=True):
        u_wh = (share.share_u95 or 0.0) / NORMAL_95 * (run.energy_wh or 0.0)
        each.append(by_plate_law(share.energy_wh or 0.0, u_wh, own, common))
    return tuple(each), "plate law"


def _with_duration(
    each: tuple[tuple[Step, ...], ...], runs: list[RunResult], from_: Given, common_s: float
) -> tuple[tuple[tuple[Step, ...], ...], bool]:
    """The steps with that of the duration; as they were, and True, where a run's processing is not known."""
    longer = []
    for steps, result in zip(each, runs, strict=True):
        run = next((r for r in from_.study.runs if r.id == result.run_id), None)
        trace = None if run is None else from_.traces.get(run.log_id)
        own_s, energy_wh = _processing_s(result), result.energy_wh
        if trace is None or not own_s or energy_wh is None:
            return each, True
        spans = [(s.start_s, s.end_s) for s in result.states if s.state == "processing"]
        joules = math.fsum(mean_w(trace, *span) * (span[1] - span[0]) for span in spans)
        held_wh = math.fsum(s.change_wh for s in steps if s.condition != "start")
        power_w = (joules + held_wh * J_PER_WH) / own_s
        before_wh = energy_wh + math.fsum(s.change_wh for s in steps)
        u_wh = (result.energy_u95_wh or 0.0) / NORMAL_95
        longer.append((*steps, by_duration(power_w, own_s, common_s, before_wh, u_wh)))
    return tuple(longer), False


def _processing_s(run: RunResult) -> float | None:
    spans = [s.end_s - s.start_s for s in run.states if s.state == "processing"]
    return math.fsum(spans) if spans else None


def _own(
    result: RunResult, bed: MachineBed | None, from_: Given
) -> tuple[Conditions | None, tuple[str, ...]]:
    """A run's own conditions, and what of them was taken for granted; None where the bed's is not known."""
    study = from_.study
    run = next((r for r in study.runs if r.id == result.run_id), None)
    trace = None if run is None else from_.traces.get(run.log_id)
    span = next(((s.start_s, s.end_s) for s in result.states if s.state == "processing"), None)
    bed_c = _first(None if run is None else run.bed_c, _logged(trace, "bed", span), study.bed_c)
    room_c = _first(None if run is None else run.room_c, _logged(trace, "room", span), study.room_c)
    notes = (
        ()
        if room_c is not None
        else (tr("room not noted: taken for {celsius} °C", celsius=degrees(from_.beds.room_c)),)
    )
    room_c = from_.beds.room_c if room_c is None else room_c
    if bed_c is None or bed_c < room_c + LEAST_ABOVE_ROOM_K:
        return None, ()
    start_c = None
    if run is not None and result.start_s is not None:
        start_c = _logged(trace, "bed", (result.start_s - _BEFORE_S, result.start_s))
        if start_c is None:
            start_c = _cooled_c(run, result.start_s, bed, study, bed_c, room_c)
            if start_c is not None:
                notes = (*notes, tr("start worked out from the rest before each run"))
    return Conditions(bed_c, room_c, room_c if start_c is None else start_c), notes


def _logged(trace: Trace | None, place: str, span: tuple[float, float] | None) -> float | None:
    if trace is None or span is None or span[1] <= 0:
        return None
    return logged_c(trace, place, *span)


def _cooled_c(
    run: Run, start_s: float, bed: MachineBed | None, study: Study, bed_c: float, room_c: float
) -> float | None:
    """How warm the bed still is from the run before, by its time constant; None where that is not known."""
    if bed is None or bed.model is None or bed.heat_capacity is None:
        return None
    heated = ("run", "other part", "broken off", "hold test")
    before = [r for r in study.runs_of(run.log_id) if r.end_s <= start_s and r.kind in heated]
    if not before:
        return None
    above_k = bed_c - room_c
    tau_s = time_constant_s(bed.heat_capacity.value, bed.model.at(above_k).power_w / above_k)
    rest_s = start_s - max(r.end_s for r in before)
    if tau_s <= 0 or rest_s > _COLD_AFTER * tau_s:
        return room_c
    return room_c + above_k * math.exp(-rest_s / tau_s)


def _first(*values: float | None) -> float | None:
    return next((v for v in values if v is not None), None)


def _swaps(machines: tuple[Adjusted, ...]) -> tuple[Swap, ...]:
    """Pairs of which the one that needed less needs more, the widest adjusted difference first."""
    found: list[tuple[float, Swap]] = []
    for place, one in enumerate(machines):
        for other in machines[place + 1 :]:
            if one.adjusted_wh is None or other.adjusted_wh is None:
                continue
            measured = other.measured_wh.value - one.measured_wh.value
            after = other.adjusted_wh.value - one.adjusted_wh.value
            if measured * after < 0:
                less, more = (one, other) if measured > 0 else (other, one)
                open_wh = math.hypot(one.adjusted_wh.u95 or 0.0, other.adjusted_wh.u95 or 0.0)
                found.append((abs(after), Swap(less.name, more.name, abs(after) > open_wh)))
    return tuple(swap for _, swap in sorted(found, key=lambda f: -f[0]))
