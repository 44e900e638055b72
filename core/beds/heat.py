"""How a bed warms and cools: its heat capacity from a hold test's warm-up, and how long it takes to cool."""

import math

from core.beds.hold import Hold
from core.beds.plate import exponent
from core.units import J_PER_WH

#: while a plate warms evenly its loss grows to the held one: on average this part of it
WARMING_PART = 1 / (1 + exponent(40, 70, 20))
#: half-width of a rectangle around that part; judgement, no source
WARMING_DOUBT = 0.1


def heat_capacity_j_per_k(hold: Hold, from_c: float, room_c: float) -> tuple[float, float] | None:
    """Heat that the bed takes a kelvin, as drawn at the plug, from a warm-up; and its u. [J/K], [J/K]

    Parameters
    ----------
    hold : Hold
        With a warm-up, its watts and its bed temperature known.
    from_c : float
        Bed temperature at the start. [degC]
    room_c : float
        [degC]

    Returns
    -------
    (value, u) or None
        None where the warm-up is not known.

    Notes
    -----
    ``C = (E - p P t) / (T - T0)``: what was drawn, less what was lost meanwhile. The loss grows as the plate
    law says from nothing to the held watts P, so p is 0.45 on average for an even rise from room temperature.
    """
    if hold.warm_up_wh is None or hold.warm_up_u_wh is None or hold.bed_w is None:
        return None
    if hold.bed_c is None or hold.bed_c <= from_c:
        return None
    lost_j = hold.bed_w * hold.warm_up_s
    # from a warm start on it is lost at more than nothing from the beginning
    started = max(from_c - room_c, 0.0) / (hold.bed_c - room_c)
    part = WARMING_PART + (1 - WARMING_PART) * started
    rise_k = hold.bed_c - from_c
    value = (hold.warm_up_wh * J_PER_WH - part * lost_j) / rise_k
    u_j = math.hypot(WARMING_DOUBT / math.sqrt(3) * lost_j, hold.warm_up_u_wh * J_PER_WH)
    return value, u_j / rise_k


def time_constant_s(heat_capacity: float, w_per_k: float) -> float:
    """Time in which a bed left alone loses all but 1/e of its difference from the room. [s]

    Both at the plug, or both at the bed: the loss of a supply drops out. [J/K], [W/K]
    """
    return heat_capacity / w_per_k


def cooling_s(tau_s: float, from_c: float, to_c: float, room_c: float) -> float:
    """How long a bed without heating takes from one temperature to a lower one. [s]

    ``tau ln((T1 - Ta) / (T2 - Ta))``, for a loss in proportion to the difference.

    Raises
    ------
    ValueError
        If `to_c` is not between the room and `from_c`: it is never reached.

    Examples
    --------
    >>> round(cooling_s(1000, 60, 45, 20), 2)
    470.0
    """
    if not room_c < to_c <= from_c:
        raise ValueError(f"a bed cooling from {from_c} degC in a room of {room_c} degC never passes {to_c}")
    return tau_s * math.log((from_c - room_c) / (to_c - room_c))
