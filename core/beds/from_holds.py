"""What the bed takes in a run by hold tests of the same machine (way 3): held watts, and the warm-up.

Rules: between held temperatures the fit of the holds tells, outside them the nearest hold scaled by the plate
law (`core.beds.plate.loss_ratio`), never a straight line beyond its ends. A run is not a hold: its fan
moves air, its bed may travel, the room around it warms; that difference is not known and goes into the
uncertainty.
"""

import math
from collections.abc import Sequence

from attrs import frozen

from core.beds.hold import Hold
from core.beds.hold_fit import Point, line_or_curve
from core.beds.plate import exponent, loss_ratio
from core.results.values import Measured
from core.uncertainty import NORMAL_95, coverage_factor
from core.units import SECONDS_PER_HOUR

#: taken for a room whose temperature nobody noted [degC], and the half-width of a rectangle around it [K]
ORDINARY_ROOM_C, ROOM_DOUBT_K = 20.0, 3.0
#: half-width of a rectangle: how a bed in a run differs from a bed held alone; judgement, no source
UNLIKE_HOLD = 0.10
#: half-width of a rectangle around the exponent of the plate law; judgement, no source
EXPONENT_DOUBT = 0.15
#: standard uncertainty of a temperature difference that was logged or noted; judgement, no source [K]
DIFFERENCE_U_K = 0.5
#: holds nearer to each other than this make no line [K]
APART_K = 5.0
#: half-widths of rectangles around the bed's part of a warm-up: from a hold test's own, and without one from
#: what the run drew above standby, of which the hot end takes a tenth or so; judgement, no source
WARM_UP_DOUBT = 0.10
HOT_END_PART = 0.10


@frozen(cache_hash=True)
class HeldBed:
    """A hold whose temperatures are known; a room that is not is None. [degC]"""

    hold: Hold
    bed_c: float
    room_c: float | None

    @property
    def difference_k(self) -> float:
        """Bed minus room. [K]"""
        return self.bed_c - (ORDINARY_ROOM_C if self.room_c is None else self.room_c)


def watts_at(held: Sequence[HeldBed], bed_c: float, room_c: float | None) -> Measured | None:
    """Watts of the bed in a run at `bed_c`, without what the meter's gain is unsure by.

    Parameters
    ----------
    held : sequence of HeldBed
        Of one machine.
    bed_c : float
        Of the run. [degC]
    room_c : float or None
        Of the run. [degC]

    Returns
    -------
    Measured or None
        None where no hold shows the bed's watts, or the bed is not above the room. [W]
    """
    known = [h for h in held if h.hold.bed_w is not None and h.difference_k > 0]
    run_room_c = ORDINARY_ROOM_C if room_c is None else room_c
    difference_k = bed_c - run_room_c
    if not known or difference_k <= 0:
        return None
    value_w, u_w, df = _by_fit(known, difference_k) or _by_nearest(known, difference_k)
    terms = [u_w, UNLIKE_HOLD / math.sqrt(3) * value_w]
    if room_c is None or any(h.room_c is None for h in known):
        per_k = exponent(30, 60, ORDINARY_ROOM_C) / difference_k
        terms.append(per_k * ROOM_DOUBT_K / math.sqrt(3) * value_w)
    whole = math.sqrt(sum(u**2 for u in terms))
    # only the hold's own part was estimated from few windows (Welch-Satterthwaite)
    effective = df * (whole / u_w) ** 4 if u_w > 0 else math.inf
    return Measured(value_w, coverage_factor(effective) * whole)


def _by_fit(known: Sequence[HeldBed], difference_k: float) -> tuple[float, float, float] | None:
    """Watts, u and degrees of freedom by the fit of several holds; None outside them."""
    lowest, highest = (f(h.difference_k for h in known) for f in (min, max))
    if highest - lowest < APART_K:
        return None
    predicted = line_or_curve([_point(h) for h in known]).at(difference_k)
    if predicted.is_extrapolated:
        return None
    return predicted.power_w, (predicted.high_w - predicted.power_w) / NORMAL_95, math.inf


def _by_nearest(known: Sequence[HeldBed], difference_k: float) -> tuple[float, float, float]:
    """The same by the nearest hold and the plate law."""
    nearest = min(known, key=lambda h: abs(h.difference_k - difference_k))
    point = _point(nearest)
    room_c = ORDINARY_ROOM_C if nearest.room_c is None else nearest.room_c
    ratio = loss_ratio(room_c + nearest.difference_k, room_c + difference_k, room_c)
    far = abs(math.log(difference_k / nearest.difference_k))
    per_k = exponent(30, 60, ORDINARY_ROOM_C) / nearest.difference_k
    value_w = point.power_w * ratio
    own_w = (point.u_w or 0.0) * ratio
    terms = (
        own_w,
        per_k * DIFFERENCE_U_K * value_w if far else 0.0,
        EXPONENT_DOUBT / math.sqrt(3) * far * value_w,
    )
    return value_w, math.sqrt(sum(u**2 for u in terms)), point.df


def _point(held: HeldBed) -> Point:
    hold = held.hold
    assert hold.bed_w is not None
    return Point(held.difference_k, hold.bed_w, hold.bed_u_w, hold.steady.df, DIFFERENCE_U_K)


def warm_up_wh(
    held: Sequence[HeldBed], difference_k: float, held_w: float, seconds: float, above_standby_wh: float
) -> Measured:
    """The bed's part of a run's warm-up: that of a hold test, and held watts for what it took longer.

    A run warms up longer where it soaks the bed, or waits for the hot end.

    Parameters
    ----------
    held : sequence of HeldBed
        Of one machine; the first of each test began cold and tells what a warm-up takes.
    difference_k : float
        Of the run's bed from the room. [K]
    held_w : float
        Watts of the bed at the run's temperature. [W]
    seconds : float
        Of the run's warm-up. [s]
    above_standby_wh : float
        What the run's warm-up drew above standby: the bed took no more, and little after a warm start. [Wh]

    Returns
    -------
    Measured
        [Wh]
    """
    told = [h for h in held if h.hold.warm_up_wh is not None and h.hold.is_first and h.difference_k > 0]
    if told:
        nearest = min(told, key=lambda h: abs(h.difference_k - difference_k))
        further = difference_k / nearest.difference_k
        value_wh = (nearest.hold.warm_up_wh or 0.0) * further
        longer_s = max(seconds - nearest.hold.warm_up_s * further, 0.0)
        value_wh = min(value_wh + held_w * longer_s / SECONDS_PER_HOUR, above_standby_wh)
        u_wh = math.hypot(WARM_UP_DOUBT / math.sqrt(3) * value_wh, nearest.hold.warm_up_u_wh or 0.0)
    else:
        value_wh = (1 - HOT_END_PART) * above_standby_wh
        u_wh = HOT_END_PART / math.sqrt(3) * above_standby_wh
    return Measured(max(value_wh, 0.0), NORMAL_95 * u_wh)
