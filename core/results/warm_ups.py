"""The warm-up of a hold test: how far the bed rose, and the heat that it takes a kelvin."""

import math

import numpy as np
from attrs import evolve, frozen

from core.beds.heat import heat_capacity_j_per_k
from core.beds.hold import Hold, logged_c
from core.results.values import Measured
from core.traces import Trace
from core.uncertainty import NORMAL_95

#: the bed's temperature at the start is read over this time before it [s]
_BEFORE_S = 60.0
#: a heater that has let go still lifts the bed for so long [s]
_OVERSHOOT_S = 120.0
#: standard uncertainties of a rise of temperature: logged, and told by room and held temperature; judgement,
#: no source [K]
_LOGGED_RISE_U_K, _TYPED_RISE_U_K = 0.7, 2.0


@frozen
class Rise:
    """The rise of a bed's temperature in its warm-up. [degC], [K]

    ``u_k`` is its standard uncertainty, ``is_logged`` whether the log's own temperatures tell it.
    """

    from_c: float
    to_c: float
    room_c: float
    u_k: float
    is_logged: bool

    @property
    def kelvin(self) -> float:
        """How far it rose. [K]"""
        return self.to_c - self.from_c


def rise_of(hold: Hold, bed_c: float | None, room_c: float, trace: Trace) -> Rise | None:
    """How far the bed rose in its warm-up; None where nothing tells.

    Logged temperatures tell it, overshoot and all. Where they are not logged, the first temperature of a test
    rose from the room's to the held one, give or take some kelvin; of the others the rise is not known.

    Parameters
    ----------
    hold : Hold
    bed_c : float or None
        Held temperature. [degC]
    room_c : float
        [degC]
    trace : Trace
    """
    before_c = logged_c(trace, "bed", hold.start_s - _BEFORE_S, hold.start_s)
    top_c = _highest_c(trace, hold.warm_end_s, hold.warm_end_s + _OVERSHOOT_S)
    if before_c is not None and top_c is not None:
        return Rise(before_c, top_c, room_c, _LOGGED_RISE_U_K, is_logged=True)
    if not hold.is_first or bed_c is None:
        return None
    return Rise(room_c, bed_c, room_c, _TYPED_RISE_U_K, is_logged=False)


def heat_capacity(hold: Hold, rise: Rise, gain_u: float) -> Measured | None:
    """Heat that the bed takes a kelvin, as drawn at the plug; None where the warm-up is not known. [J/K]

    Parameters
    ----------
    hold : Hold
    rise : Rise
    gain_u : float
        Relative standard uncertainty of the meter's gain.
    """
    found = heat_capacity_j_per_k(evolve(hold, bed_c=rise.to_c), rise.from_c, rise.room_c)
    if found is None or found[0] <= 0:
        return None
    value, u = found
    return Measured(value, NORMAL_95 * math.hypot(u, gain_u * value, rise.u_k / rise.kelvin * value))


def _highest_c(trace: Trace, start_s: float, end_s: float) -> float | None:
    """Highest logged bed temperature of an interval. [degC]"""
    column = trace.temperatures_c.get("bed")
    if column is None:
        return None
    first, last = np.searchsorted(trace.time_s, (start_s, end_s))
    values = column[first:last][np.isfinite(column[first:last])]
    return float(values.max()) if values.size else None
