"""A measured energy made that of common conditions, a step for each condition that was another.

Theory of operation. What holds the bed warm changes with the temperatures of bed and room: by the machine's
own holds (`core.beds.model`) over the time of processing, with the heat that warms the bed by its heat
capacity; or, where there was no hold test, the bed's whole energy is scaled by the plate law
(`core.beds.plate`). One source may move several steps, so their uncertainties are added in full, and
joined with that of the measured value.
"""

import math
from typing import Final, Literal

from attrs import frozen

from core.beds.from_holds import EXPONENT_DOUBT, UNLIKE_HOLD
from core.beds.model import BedModel, half_width
from core.beds.plate import loss_ratio
from core.results.values import Measured
from core.uncertainty import NORMAL_95
from core.units import J_PER_WH, SECONDS_PER_HOUR

Condition = Literal["bed", "room", "start", "duration"]
How = Literal["hold test", "plate law"]
CONDITIONS: Final[tuple[Condition, ...]] = ("bed", "room", "start", "duration")
#: the bed's heat on the way up is told no better than to this part of itself; judgement, no source
WARMING_DOUBT: Final = 0.15
#: a bed is not adjusted to a temperature nearer to the room's: the laws tell little there [K]
LEAST_ABOVE_ROOM_K: Final = 2.0


@frozen
class Conditions:
    """Temperatures of the bed, of the room, and of the bed at the start of a run. [degC]

    ``processing_s`` is how long it is processed; None where each run keeps its own. [s]
    """

    bed_c: float
    room_c: float
    start_c: float
    processing_s: float | None = None

    def __attrs_post_init__(self) -> None:
        if self.bed_c < self.room_c + LEAST_ABOVE_ROOM_K:
            raise ValueError(f"a bed at {self.bed_c} degC is not heated in a room of {self.room_c} degC")


@frozen
class Step:
    """What one condition changes: the energy, and the standard uncertainty of the change. [Wh]"""

    condition: Condition
    change_wh: float
    u_wh: float


def by_holds(
    model: BedModel,
    heat_capacity: Measured,
    own: Conditions,
    common: Conditions,
    processing_s: float,
    *,
    has_warm_up: bool = True,
) -> tuple[Step, ...]:
    """Steps of one run from its own conditions to the common ones, by the machine's hold tests.

    Parameters
    ----------
    model : BedModel
    heat_capacity : Measured
        As drawn at the plug. [J/K]
    own, common : Conditions
    processing_s : float
        How long the bed was held during the run. [s]
    has_warm_up : bool
        Whether the energy that is adjusted holds the warm-up: else the heat of a rise has no part in it.

    Returns
    -------
    tuple of Step
        Bed, room and start, in this order; a condition that was the same changes nothing.

    Notes
    -----
    ``change = (P(common) - P(own)) t + C (rise common - rise own)``: what moves both watts alike cancels.
    """
    between = Conditions(common.bed_c, own.room_c, own.start_c) if _is_warm(common.bed_c, own.room_c) else own
    rise_k = common.bed_c - own.bed_c if has_warm_up else 0.0
    bed = _held_change(model, own, between, processing_s, heat_capacity, rise_k)
    room = _held_change(model, between, common, processing_s, heat_capacity, 0.0)
    warmer_k = own.start_c - common.start_c if has_warm_up else 0.0
    start_wh = heat_capacity.value * warmer_k / J_PER_WH
    return (
        Step("bed", *bed),
        Step("room", *room),
        Step("start", start_wh, _capacity_u(heat_capacity) * abs(start_wh)),
    )


def by_plate_law(bed_wh: float, bed_u_wh: float, own: Conditions, common: Conditions) -> tuple[Step, ...]:
    """Steps of one run by the energy of its bed alone, scaled as a plate loses heat; the start stays.

    Parameters
    ----------
    bed_wh, bed_u_wh : float
        Energy of the bed in the run, and its standard uncertainty. [Wh]
    own, common : Conditions

    Examples
    --------
    >>> steps = by_plate_law(20.0, 1.0, Conditions(60, 20, 20), Conditions(50, 20, 20))
    >>> [round(s.change_wh, 1) for s in steps]
    [-5.8, 0.0]
    """
    at_own_room = loss_ratio(own.bed_c, common.bed_c, own.room_c)
    # the air's own temperature hardly matters: the difference is what counts
    at_common = loss_ratio(own.room_c + _above(own), own.room_c + _above(common), own.room_c)
    bed_wh_change, room_wh_change = bed_wh * (at_own_room - 1), bed_wh * (at_common - at_own_room)
    return (
        Step("bed", bed_wh_change, _scaled_u(bed_wh, bed_u_wh, at_own_room, 1.0)),
        Step("room", room_wh_change, _scaled_u(bed_wh, bed_u_wh, at_common, at_own_room)),
    )


def by_duration(power_w: float, own_s: float, common_s: float, energy_wh: float, energy_u_wh: float) -> Step:
    """The step of one run from its own length of processing to a common one.

    Parameters
    ----------
    power_w : float
        Its watts of processing at the common temperatures. [W]
    own_s, common_s : float
        Both lengths. [s]
    energy_wh, energy_u_wh : float
        Energy of the run before this step, and its standard uncertainty. [Wh]

    Notes
    -----
    ``change = P (t_common - t_own)``. The watts are as unsure as the energy they are part of, in proportion,
    and err with it: the uncertainty is that which makes both together grow by as much as the energy.

    Examples
    --------
    >>> step = by_duration(30.0, 3600.0, 5400.0, 45.0, 0.45)
    >>> round(step.change_wh, 2), round(step.u_wh, 3)
    (15.0, 0.397)
    """
    change_wh = power_w * (common_s - own_s) / J_PER_WH
    part = change_wh / energy_wh if energy_wh > 0 else 0.0
    grown = math.sqrt(max((1 + part) ** 2 - 1, 0.0)) if part > 0 else abs(part)
    return Step("duration", change_wh, energy_u_wh * grown)


def adjusted(measured: Measured, steps: tuple[Step, ...]) -> Measured:
    """The measured value with its steps, and its interval widened by theirs. [Wh]

    Examples
    --------
    >>> adjusted(Measured(50.0, 3.0), (Step("bed", -10.0, 2.0),)).value
    40.0
    """
    change_wh = math.fsum(s.change_wh for s in steps)
    steps_u95_wh = NORMAL_95 * math.fsum(s.u_wh for s in steps)
    return Measured(measured.value + change_wh, math.hypot(measured.u95 or 0.0, steps_u95_wh))


def mean_steps(each: tuple[tuple[Step, ...], ...]) -> tuple[Step, ...]:
    """The steps of a machine from those of its runs: one model tells them all, so they err together."""
    return tuple(
        Step(
            together[0].condition,
            math.fsum(s.change_wh for s in together) / len(together),
            math.fsum(s.u_wh for s in together) / len(together),
        )
        for together in zip(*each, strict=True)
    )


def _above(at: Conditions) -> float:
    return at.bed_c - at.room_c


def _is_warm(bed_c: float, room_c: float) -> bool:
    return bed_c >= room_c + LEAST_ABOVE_ROOM_K


def _capacity_u(capacity: Measured) -> float:
    """Relative standard uncertainty of the heat that a rise takes. [1]"""
    measured = (capacity.u95 or 0.0) / NORMAL_95 / capacity.value
    return math.hypot(measured, WARMING_DOUBT / math.sqrt(3))


def _held_change(
    model: BedModel,
    from_: Conditions,
    to: Conditions,
    processing_s: float,
    capacity: Measured,
    rise_k: float,
) -> tuple[float, float]:
    """Change of energy between two conditions of holding, and its standard uncertainty. [Wh]"""
    hours = processing_s / SECONDS_PER_HOUR
    before, after = model.at(_above(from_)), model.at(_above(to))
    held_wh = (after.power_w - before.power_w) * hours
    held_u_wh = half_width(after.parts - before.parts, after.df) / NORMAL_95 * hours
    unlike_wh = UNLIKE_HOLD / math.sqrt(3) * abs(held_wh)
    warmed_wh = capacity.value * rise_k / J_PER_WH
    warmed_u_wh = _capacity_u(capacity) * abs(warmed_wh)
    return held_wh + warmed_wh, math.hypot(held_u_wh, unlike_wh, warmed_u_wh)


def _scaled_u(bed_wh: float, bed_u_wh: float, ratio: float, other: float) -> float:
    """Of ``bed energy x (ratio - other)``: of the energy, and of the exponent of the law."""
    law = EXPONENT_DOUBT / math.sqrt(3) * abs(ratio * math.log(ratio) - other * math.log(other))
    return math.hypot(bed_u_wh * (ratio - other), bed_wh * law)
