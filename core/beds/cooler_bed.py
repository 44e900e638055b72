"""What a cooler bed after the first layers saves over a print.

Theory. The bed is held at one temperature until a moment t1, cools with its heater off until it reaches the
lower one, and is held there to the end. While it cools it takes nothing. Against holding the first
temperature to the end this saves the cooling time at full watts, and the difference of the watts after it.
"""

from attrs import frozen

from core.beds.heat import cooling_s
from core.units import SECONDS_PER_HOUR


@frozen
class CoolerBed:
    """A print with a cooler bed against one without. [Wh], [s]

    Parameters
    ----------
    held_wh : float
        Energy of the bed at its first temperature to the end, without its warm-up.
    cooler_wh : float
        The same with the cooler bed.
    cooling_s : float
        How long its heater stays off; as long as is left where the print ends before the bed has cooled.
    """

    held_wh: float
    cooler_wh: float
    cooling_s: float

    @property
    def saved_wh(self) -> float:
        """What the cooler bed saves. [Wh]"""
        return self.held_wh - self.cooler_wh

    @property
    def saved_share(self) -> float:
        """The same as a share of the bed's energy. [1]"""
        return self.saved_wh / self.held_wh if self.held_wh > 0 else 0.0


def cooler_bed(
    first_w: float,
    later_w: float,
    *,
    first_c: float,
    later_c: float,
    room_c: float,
    tau_s: float,
    until_s: float,
    seconds: float,
) -> CoolerBed:
    """Energy of a bed that is made cooler once the first layers hold.

    Parameters
    ----------
    first_w, later_w : float
        Watts that hold the two temperatures: measured, by a fit of holds, or by the plate law. [W]
    first_c, later_c, room_c : float
        ``room_c < later_c <= first_c``. [degC]
    tau_s : float
        Time constant of the bed left alone (`core.beds.heat.time_constant_s`). [s]
    until_s : float
        From the end of the warm-up to the change. [s]
    seconds : float
        From the end of the warm-up to the end of processing. [s]

    Returns
    -------
    CoolerBed

    Raises
    ------
    ValueError
        If the temperatures are not in that order, or the change lies outside the print.

    Examples
    --------
    >>> found = cooler_bed(70, 40, first_c=60, later_c=45, room_c=20, tau_s=1000, until_s=600, seconds=36000)
    >>> round(found.held_wh), round(found.saved_wh)
    (700, 300)
    """
    if not 0 <= until_s <= seconds:
        raise ValueError(f"a change after {until_s} s is outside a print of {seconds} s")
    falling_s = min(cooling_s(tau_s, first_c, later_c, room_c), seconds - until_s)
    at_first_s, at_later_s = until_s, seconds - until_s - falling_s
    return CoolerBed(
        held_wh=first_w * seconds / SECONDS_PER_HOUR,
        cooler_wh=(first_w * at_first_s + later_w * at_later_s) / SECONDS_PER_HOUR,
        cooling_s=falling_s,
    )
