"""What a cooler bed after the first layers would save on each machine, with its interval and over time.

Theory of operation. Watts at both temperatures come from the machine's bed (`core.beds.model`), with what
each source gives them; the cooling time from the heat capacity that its warm-up showed. The saving is
``t_c P1 + (T - t1 - t_c) (P1 - P2)``: its uncertainty is the same sum over the sources, so that what moves
both watts alike (the meter's gain, one hold's scatter) counts once. A bed in a print is not a bed held alone:
that difference is one more source. Savings of several machines on one meter share its gain.
"""

import math
from collections.abc import Sequence
from functools import lru_cache

import numpy as np
from attrs import frozen

from core.beds.cooler_bed import CoolerBed, cooler_bed
from core.beds.from_holds import UNLIKE_HOLD
from core.beds.heat import cooling_s, time_constant_s
from core.beds.model import Watts, half_width
from core.results.holds import Beds, MachineBed
from core.results.values import Measured
from core.study import CoolerPlan
from core.traces import F64
from core.uncertainty import NORMAL_95
from core.units import SECONDS_PER_HOUR, WH_PER_KWH

#: ten kelvin less is tried where nobody said how much cooler
USUAL_STEP_K = 10.0
#: a bed cooler than this above the room needs no heater to speak of, and the laws here tell little [K]
LEAST_ABOVE_ROOM_K = 2.0
#: time constant of a bed whose warm-up no test showed, and the half-width of a rectangle around it;
#: judgement, no source [s]
ORDINARY_TAU_S, TAU_DOUBT_S = 600.0, 400.0


@frozen
class Plan:
    """A plan with every number known and possible.

    Parameters
    ----------
    first_c, later_c, least_c, room_c : float
        ``room_c + 2 <= later_c <= first_c`` and ``least_c <= later_c`` where that can be. [degC]
    first_layers_s, print_s : float
        [s]
    is_held_up : bool
        Whether the user's own limit made the later temperature higher than was asked.
    """

    first_c: float
    later_c: float
    least_c: float
    room_c: float
    first_layers_s: float
    print_s: float
    is_held_up: bool


@frozen
class Saving:
    """What one machine would save.

    Parameters
    ----------
    first, later : Watts
        At both temperatures.
    bed : CoolerBed
        The print with and without.
    tau_s : float
        Time constant of the bed left alone. [s]
    is_tau_known : bool
        Whether a warm-up showed it.
    saved_wh, saved_share : Measured
        [Wh], [1] of the bed's energy without its warm-up
    parts_wh, share_parts : tuple of float
        What one standard uncertainty of each source gives them: those of the watts in their order, then the
        time constant, and of the energy what a print is unlike a hold. [Wh], [1]
    """

    machine_id: str
    name: str
    slot: int
    first: Watts
    later: Watts
    bed: CoolerBed
    tau_s: float
    is_tau_known: bool
    saved_wh: Measured
    saved_share: Measured
    parts_wh: tuple[float, ...] = ()
    share_parts: tuple[float, ...] = ()

    @property
    def is_scaled(self) -> bool:
        """Whether a temperature lies beyond what was held on the machine."""
        return "scaled" in (self.first.how, self.later.how)

    def saved_price(self, price_per_kwh: float) -> Measured:
        """The saving in money. [currency of the price]"""
        per_wh = price_per_kwh / WH_PER_KWH
        return Measured(self.saved_wh.value * per_wh, (self.saved_wh.u95 or 0.0) * per_wh)


@frozen
class Savings:
    """What every machine with a known bed would save, the most first; ``missing`` names the others.

    ``total_wh`` is the sum over one print on each machine.
    """

    plan: Plan
    machines: tuple[Saving, ...]
    missing: tuple[str, ...]
    total_wh: Measured | None

    def of(self, machine_id: str) -> Saving | None:
        """The saving of a machine; None where its bed is not known."""
        return next((s for s in self.machines if s.machine_id == machine_id), None)


def plan_of(wished: CoolerPlan, beds: Beds) -> Plan:
    """The user's plan with what was left open filled in, and what cannot be brought within reach.

    Parameters
    ----------
    wished : CoolerPlan
    beds : Beds
        Tell the room, and the temperature of the test.
    """
    room_c = beds.room_c
    first_c = beds.bed_c if wished.first_c is None else wished.first_c
    first_c = max(first_c, room_c + LEAST_ABOVE_ROOM_K)
    asked_c = first_c - USUAL_STEP_K if wished.later_c is None else wished.later_c
    lowest_c = min(max(wished.least_c, room_c + LEAST_ABOVE_ROOM_K), first_c)
    later_c = min(max(asked_c, lowest_c), first_c)
    return Plan(
        first_c=first_c,
        later_c=later_c,
        least_c=wished.least_c,
        room_c=room_c,
        first_layers_s=min(wished.first_layers_s, wished.print_s),
        print_s=wished.print_s,
        is_held_up=asked_c < later_c,
    )


def savings(beds: Beds, plan: Plan) -> Savings:
    """What a plan would save on every machine whose bed is known."""
    known = [m for m in beds.machines if m.model is not None]
    each = [_saving(m, plan) for m in known]
    order = sorted((s for s, _ in each), key=lambda s: -s.saved_wh.value)
    missing = tuple(m.name for m in beds.machines if m.model is None)
    return Savings(plan, tuple(order), missing, _total(known, each))


@frozen
class _Parts:
    """What each source gives a saving, with the meter's gain apart. [Wh]"""

    own_wh: float
    gain_wh: float


def _saving(machine: MachineBed, plan: Plan) -> tuple[Saving, _Parts]:
    assert machine.model is not None
    first = machine.model.at(plan.first_c - plan.room_c)
    later = machine.model.at(plan.later_c - plan.room_c)
    tau_s, tau_u_s, is_known = _tau(machine, first, later, plan)

    def made(first_w: float, later_w: float, tau: float) -> CoolerBed:
        return cooler_bed(
            first_w,
            later_w,
            first_c=plan.first_c,
            later_c=plan.later_c,
            room_c=plan.room_c,
            tau_s=tau,
            until_s=plan.first_layers_s,
            seconds=plan.print_s,
        )

    found = made(first.power_w, later.power_w, tau_s)
    after_h = (plan.print_s - plan.first_layers_s) / SECONDS_PER_HOUR
    cooling_h = found.cooling_s / SECONDS_PER_HOUR
    parts = first.parts * after_h - later.parts * (after_h - cooling_h)
    longer = made(first.power_w, later.power_w, tau_s + tau_u_s)
    others = np.array(
        [longer.saved_wh - found.saved_wh, UNLIKE_HOLD / math.sqrt(3) * found.saved_wh], dtype=np.float64
    )
    all_parts = np.append(parts, others)
    u95_wh = half_width(all_parts, (*first.df, math.inf, math.inf))
    share = found.saved_share
    share_parts = _share_parts(first, later, found, after_h, cooling_h, others[0], share)
    saving = Saving(
        machine_id=machine.machine_id,
        name=machine.name,
        slot=machine.slot,
        first=first,
        later=later,
        bed=found,
        tau_s=tau_s,
        is_tau_known=is_known,
        saved_wh=Measured(found.saved_wh, u95_wh),
        saved_share=Measured(share, half_width(share_parts, (*first.df, math.inf))),
        parts_wh=tuple(all_parts.tolist()),
        share_parts=tuple(share_parts.tolist()),
    )
    gain_wh = machine.model.gain_u * found.saved_wh
    return saving, _Parts(math.sqrt(max((u95_wh / NORMAL_95) ** 2 - gain_wh**2, 0.0)), gain_wh)


def _share_parts(
    first: Watts,
    later: Watts,
    bed: CoolerBed,
    after_h: float,
    cooling_h: float,
    tau_wh: float,
    share: float,
) -> F64:
    """Of the saving over the energy without: the gain, and what a print is unlike a hold, drop out."""
    if bed.held_wh <= 0:
        return np.zeros(first.parts.size + 1)
    whole_h = bed.held_wh / first.power_w
    saved = first.parts * after_h - later.parts * (after_h - cooling_h)
    parts = (saved - share * first.parts * whole_h) / bed.held_wh
    return np.append(parts, tau_wh / bed.held_wh)


def _tau(machine: MachineBed, first: Watts, later: Watts, plan: Plan) -> tuple[float, float, bool]:
    """Time constant between the two temperatures, its standard uncertainty, and whether it was seen. [s]"""
    capacity = machine.heat_capacity
    if capacity is None:
        return ORDINARY_TAU_S, TAU_DOUBT_S / math.sqrt(3), False
    per_k = (first.power_w / (plan.first_c - plan.room_c) + later.power_w / (plan.later_c - plan.room_c)) / 2
    tau_s = time_constant_s(capacity.value, per_k)
    return tau_s, tau_s * (capacity.u95 or 0.0) / NORMAL_95 / capacity.value, True


def _total(known: Sequence[MachineBed], each: Sequence[tuple[Saving, _Parts]]) -> Measured | None:
    """The sum, in which the gain of a meter that several machines share adds up in full."""
    if not each:
        return None
    own = math.fsum(parts.own_wh**2 for _, parts in each)
    by_meter: dict[frozenset[str], float] = {}
    for machine, (_, parts) in zip(known, each, strict=True):
        by_meter[machine.meter_ids] = by_meter.get(machine.meter_ids, 0.0) + parts.gain_wh
    u_wh = math.sqrt(own + math.fsum(g**2 for g in by_meter.values()))
    return Measured(math.fsum(s.saved_wh.value for s, _ in each), NORMAL_95 * u_wh)


@lru_cache(maxsize=256)
def course(
    first_w: float, later_w: float, plan: Plan, tau_s: float
) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Watts of the cooler bed over time, as corners of a line that jumps. [s], [W]

    Examples
    --------
    >>> plan = Plan(60, 50, 40, 20, 600, 3600, False)
    >>> [round(t) for t in course(70.0, 50.0, plan, 1000.0)[0]]
    [0, 600, 600, 888, 888, 3600]
    """
    falling_s = min(
        cooling_s(tau_s, plan.first_c, plan.later_c, plan.room_c), plan.print_s - plan.first_layers_s
    )
    low_until_s = plan.first_layers_s + falling_s
    times_s = (0.0, plan.first_layers_s, plan.first_layers_s, low_until_s, low_until_s, plan.print_s)
    return times_s, (first_w, first_w, 0.0, 0.0, later_w, later_w)
