"""The hold tests of a study: what each machine's bed takes to stay warm, and how that compares.

Theory of operation: each hold test is cut into the temperatures it held (`core.beds.hold`); those whose
temperatures are known make the machine's bed (`core.beds.model`), and all beds are read at one temperature
and one room, because watts held at different temperatures cannot be compared.
"""

import math
import statistics
from collections.abc import Mapping, Sequence
from functools import lru_cache

from attrs import frozen

from core.activity import Activity
from core.beds.area import bed_area_dm2
from core.beds.from_holds import DIFFERENCE_U_K, ORDINARY_ROOM_C
from core.beds.hold import Hold, holds
from core.beds.hold_fit import Point
from core.beds.model import BedModel, Watts
from core.beds.plate import Plate, loss
from core.beds.supply import Supply, bed_supply
from core.results.checked_logs import checked_logs
from core.results.held_temperatures import Known, elsewhere_c, first_known, usual_c
from core.results.own_supply import OwnSupply, own_supply
from core.results.runs import Seen, seen
from core.results.values import Measured
from core.results.warm_ups import Rise, heat_capacity, rise_of
from core.study import Log, Machine, Meter, Run, Study
from core.traces import Trace
from core.uncertainty import NORMAL_95, coverage_factor


@frozen
class Held:
    """One temperature held, with all that is known of it.

    Parameters
    ----------
    run_id : str
        The hold test.
    number : int
        Place in the test, from 0.
    hold : Hold
    bed_c, room_c : float or None
        [degC]
    bed_known, room_known : str
        From where: noted by the user, logged beside the power, logged by another log of the machine at the
        same time, the test's own, an ordinary room, or not at all.
    bed_w : Measured or None
        Watts of the bed alone, held; None where the log does not show what else the machine draws. [W]
    w_per_dm2 : Measured or None
    floor_w : float or None
        What a plate of the bed's size must lose. [W]
    warm_up_wh : Measured or None
        What the bed took in its warm-up. [Wh]
    heat_capacity : Measured or None
        As drawn at the plug. [J/K]
    rise : Rise or None
        What the heat capacity was divided by.
    """

    run_id: str
    number: int
    hold: Hold
    bed_c: float | None
    room_c: float | None
    bed_known: Known
    room_known: Known
    bed_w: Measured | None
    w_per_dm2: Measured | None
    floor_w: float | None
    warm_up_wh: Measured | None
    heat_capacity: Measured | None
    rise: Rise | None = None

    @property
    def half_over_full(self) -> float | None:
        """Mean power of the first half hour over that of the first hour, warm-up and all. [1]"""
        half_w, full_w = self.hold.half_hour_w, self.hold.full_hour_w
        return None if half_w is None or not full_w else half_w / full_w

    @property
    def difference_k(self) -> float | None:
        """Bed minus room; None where the bed's temperature is not known. [K]"""
        if self.bed_c is None:
            return None
        return self.bed_c - (ORDINARY_ROOM_C if self.room_c is None else self.room_c)

    @property
    def times_floor(self) -> float | None:
        """Watts over the heat that the plate must lose. [1]"""
        return None if self.bed_w is None or not self.floor_w else self.bed_w.value / self.floor_w


@frozen
class MachineBed:
    """The bed of one machine.

    Parameters
    ----------
    tests : int
        Hold tests, also those that were too short to tell anything.
    held : tuple of Held
    model : BedModel or None
        None without a hold whose temperature and watts are known.
    reference : Watts or None
        At the temperature and room of the comparison.
    meter_ids : frozenset of str
        Meters of the holds.
    heat_capacity : Measured or None
        Of the longest rise. [J/K]
    floor_w : float or None
        At the temperature and room of the comparison. [W]
    own_meter : OwnSupply or None
        What a meter on the bed alone tells of its supply.
    """

    machine_id: str
    name: str
    slot: int
    area_dm2: float | None
    supply: Supply | None
    tests: int
    held: tuple[Held, ...]
    model: BedModel | None
    reference: Watts | None
    meter_ids: frozenset[str]
    heat_capacity: Measured | None
    floor_w: float | None
    own_meter: OwnSupply | None = None

    def counts(self, held: Held) -> bool:
        """Whether a hold has a part in the model: a restless one only where none was settled."""
        if held.hold.steady.is_settled:
            return True
        return not any(h.hold.steady.is_settled and _point(h) is not None for h in self.held)

    @property
    def from_cold(self) -> Held | None:
        """The hold whose warm-up is told: that which began cold, the warmest of several."""
        cold = [h for h in self.held if h.hold.is_first and h.warm_up_wh is not None]
        return max(cold, key=lambda h: h.difference_k or 0.0, default=None)

    @property
    def longest_rise(self) -> Held | None:
        """The hold whose heat capacity is told: that whose warm-up took most."""
        return longest_rise(self.held)

    @property
    def first_hour(self) -> Held | None:
        """The first of the tests from cold that lasted an hour."""
        return next((h for h in self.held if h.hold.is_first and h.half_over_full is not None), None)

    @property
    def efficiency(self) -> Measured | None:
        """Watts of the bed by a meter of its own over those at the plug. [1]"""
        return None if self.own_meter is None else self.own_meter.value

    @property
    def w_per_dm2(self) -> Measured | None:
        """Reference watts over the area of one face. [W/dm2]"""
        if self.reference is None or self.area_dm2 is None:
            return None
        return Measured(self.reference.power_w / self.area_dm2, self.reference.u95_w / self.area_dm2)


@frozen
class Beds:
    """All beds of a study, read at `bed_c` in a room of `room_c`. [degC]"""

    machines: tuple[MachineBed, ...]
    bed_c: float
    room_c: float
    emissivity: float

    @property
    def known(self) -> tuple[MachineBed, ...]:
        """Those whose watts are known."""
        return tuple(m for m in self.machines if m.reference is not None)

    def of(self, machine_id: str) -> MachineBed | None:
        """The bed of a machine; None where there is no such machine."""
        return next((m for m in self.machines if m.machine_id == machine_id), None)


def beds(study: Study, traces: Mapping[str, Trace], activities: Mapping[str, Activity] | None = None) -> Beds:
    """The beds of a study's machines.

    Parameters
    ----------
    study : Study
    traces : mapping of log id to Trace
        Logs that have been read; the others are as if they held no test.
    activities : mapping of log id to Activity, optional

    Returns
    -------
    Beds
        Machines in the order of the study.
    """
    study, traces = checked_logs(study, traces)
    found = {m.id: _held_by(m, study, traces, activities or {}) for m in study.machines}
    everything = [h for held in found.values() for h in held]
    bed_c = study.bed_c if study.bed_c is not None else usual_c([h.bed_c for h in everything])
    rooms = [h.room_c for h in everything if h.room_c is not None]
    room_c = study.room_c if study.room_c is not None else _middle(rooms, ORDINARY_ROOM_C)
    machines = tuple(_bed(m, study, found[m.id], bed_c, room_c, traces) for m in study.machines)
    return Beds(machines, bed_c, room_c, study.emissivity)


def forget() -> None:
    """Let go of everything remembered."""
    _holds.cache_clear()


@lru_cache(maxsize=1024)
def _holds(log: Seen, start_s: float, end_s: float, meter: Meter) -> tuple[Hold, ...]:
    return holds(log.trace, start_s, end_s, meter)


def tests_of(study: Study, machine_id: str) -> tuple[tuple[Run, Log], ...]:
    """The hold tests of a machine, each with its log; logs of the bed alone hold none."""
    return tuple(
        (run, log)
        for log in study.logs_of(machine_id)
        if not log.of_bed
        for run in study.runs_of(log.id)
        if run.kind == "hold test" and run.set_included is not False
    )


def _held_by(
    machine: Machine, study: Study, traces: Mapping[str, Trace], activities: Mapping[str, Activity]
) -> tuple[Held, ...]:
    found: list[Held] = []
    for run, log in tests_of(study, machine.id):
        trace = traces.get(log.id)
        if trace is None:
            continue
        meter = study.meter(log.meter_id)
        others = [traces[g.id] for g in study.logs_of(machine.id) if g.id != log.id and g.id in traces]
        start_s, end_s = max(run.start_s, 0.0), min(run.end_s, trace.end_s)
        if end_s > start_s:
            parts = _holds(seen(trace, activities.get(log.id)), start_s, end_s, meter)
            alone = len(parts) == 1
            for number, hold in enumerate(parts):
                found.append(_held(hold, number, run, alone, trace, others, meter, machine, study))
    return tuple(found)


def _held(
    hold: Hold,
    number: int,
    run: Run,
    alone: bool,
    trace: Trace,
    others: Sequence[Trace],
    meter: Meter,
    machine: Machine,
    study: Study,
) -> Held:
    elsewhere = [elsewhere_c(other, trace, hold, "bed") for other in others]
    bed_c, bed_known = first_known(
        (run.bed_c if alone else None, "noted"),
        (hold.bed_c, "logged"),
        *((c, "other log") for c in elsewhere),
        (study.bed_c if alone else None, "of the test"),
    )
    rooms = [elsewhere_c(other, trace, hold, "room") for other in others]
    room_c, room_known = first_known(
        (run.room_c, "noted"),
        (hold.room_c, "logged"),
        *((c, "other log") for c in rooms),
        (study.room_c, "of the test"),
    )
    if room_c is None:
        room_known = "ordinary"
    ambient_c = ORDINARY_ROOM_C if room_c is None else room_c
    area_dm2 = bed_area_dm2(machine)
    bed_w = _bed_w(hold, meter)
    is_warm = bed_c is not None and bed_c > ambient_c
    floor_w = None
    if area_dm2 is not None and bed_c is not None and is_warm:
        floor_w = loss(Plate.square(area_dm2), bed_c, ambient_c, emissivity=study.emissivity).total_w
    rise = rise_of(hold, bed_c, ambient_c, trace) if is_warm else None
    per_dm2 = None
    if bed_w is not None and area_dm2 is not None:
        per_dm2 = Measured(bed_w.value / area_dm2, None if bed_w.u95 is None else bed_w.u95 / area_dm2)
    return Held(
        run_id=run.id,
        number=number,
        hold=hold,
        bed_c=bed_c,
        room_c=room_c,
        bed_known=bed_known,
        room_known=room_known,
        bed_w=bed_w,
        w_per_dm2=per_dm2,
        floor_w=floor_w,
        warm_up_wh=_warm_up_wh(hold, meter),
        heat_capacity=None if rise is None else heat_capacity(hold, rise, gain_u(meter)),
        rise=rise,
    )


def gain_u(meter: Meter) -> float:
    """Relative standard uncertainty of a meter's gain. [1]"""
    return meter.gain_percent / 100 / math.sqrt(3)


def _bed_w(hold: Hold, meter: Meter) -> Measured | None:
    """Watts of the bed with the interval that holds the meter's gain too; its offset cancels."""
    if hold.bed_w is None or hold.bed_u_w is None:
        return None
    u_w = math.hypot(hold.bed_u_w, gain_u(meter) * hold.bed_w)
    df = hold.steady.df * (u_w / hold.bed_u_w) ** 4 if hold.bed_u_w > 0 else math.inf
    return Measured(hold.bed_w, coverage_factor(df) * u_w)


def _warm_up_wh(hold: Hold, meter: Meter) -> Measured | None:
    if hold.warm_up_wh is None or hold.warm_up_u_wh is None:
        return None
    return Measured(
        hold.warm_up_wh, NORMAL_95 * math.hypot(hold.warm_up_u_wh, gain_u(meter) * hold.warm_up_wh)
    )


def _bed(
    machine: Machine,
    study: Study,
    held: tuple[Held, ...],
    bed_c: float,
    room_c: float,
    traces: Mapping[str, Trace],
) -> MachineBed:
    log_of = {run.id: log for run, log in tests_of(study, machine.id)}
    meters = {log_of[h.run_id].meter_id for h in held}
    known = [(h, p) for h in held for p in [_point(h)] if p is not None]
    settled = [p for h, p in known if h.hold.steady.is_settled]
    points = settled or [p for _, p in known]
    model = None
    if points:
        model = BedModel.of(points, max(gain_u(study.meter(meter_id)) for meter_id in meters))
    area_dm2 = bed_area_dm2(machine)
    is_warm = bed_c > room_c
    longest = longest_rise(held)
    floor_w = None
    if area_dm2 is not None and is_warm:
        floor_w = loss(Plate.square(area_dm2), bed_c, room_c, emissivity=study.emissivity).total_w
    return MachineBed(
        machine_id=machine.id,
        name=machine.name,
        slot=machine.slot,
        area_dm2=area_dm2,
        supply=bed_supply(machine),
        tests=len(tests_of(study, machine.id)),
        held=held,
        model=model,
        reference=model.at(bed_c - room_c) if model is not None and is_warm else None,
        meter_ids=frozenset(meters),
        heat_capacity=None if longest is None else longest.heat_capacity,
        floor_w=floor_w,
        own_meter=own_supply(study, machine.id, [(h.hold, log_of[h.run_id]) for h in held], traces),
    )


def longest_rise(held: Sequence[Held]) -> Held | None:
    """The hold whose warm-up took most, of those whose heat capacity is known."""
    warmed = [h for h in held if h.heat_capacity is not None]
    return max(warmed, key=lambda h: h.hold.warm_up_wh or 0.0, default=None)


def _point(held: Held) -> Point | None:
    if held.difference_k is None or held.difference_k <= 0 or held.hold.bed_w is None:
        return None
    if held.hold.bed_w <= 0:
        return None
    return Point(held.difference_k, held.hold.bed_w, held.hold.bed_u_w, held.hold.steady.df, DIFFERENCE_U_K)


def _middle(values: Sequence[float], otherwise: float) -> float:
    return statistics.median(values) if values else otherwise
