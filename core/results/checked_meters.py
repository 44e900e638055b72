"""What the study's same-load checks tell of its meters."""

import math
from functools import lru_cache

from core.loads.same_load import Calibration, SameLoad, calibrate, reading_u_relative
from core.study import LoadCheck, Meter
from core.units import J_PER_WH


@lru_cache(maxsize=256)
def calibration(meters: tuple[Meter, ...], checks: tuple[LoadCheck, ...]) -> Calibration | None:
    """The calibration of a study's meters; None without checks, so that stated accuracies stand.

    Parameters
    ----------
    meters : tuple of Meter
    checks : tuple of LoadCheck
        One that names a meter that is not there is left aside.
    """
    by_id = {meter.id: meter for meter in meters}
    known = [c for c in checks if c.meter_id in by_id and c.other_id in by_id]
    if not known:
        return None
    return calibrate(meters, [same_load(c, by_id[c.meter_id], by_id[c.other_id]) for c in known])


def same_load(check: LoadCheck, meter: Meter, other: Meter) -> SameLoad:
    """A check with what its two readings are unsure by: the displays' steps and the meters' offsets.

    An energy is the difference of two readings of a display, a power a single one: the latter is unsure by
    half a step, the former by twice that, added (JCGM 100:2008, 4.3.7 and 4.3.9).
    """
    if check.unit == "Wh":
        steps = reading_u_relative(check.reading, check.other_reading, check.step, check.other_step)
        hours = (check.seconds or 0.0) / J_PER_WH
    else:
        steps = math.hypot(check.step / check.reading, check.other_step / check.other_reading) / math.sqrt(12)
        hours = 1.0
    offsets = math.hypot(
        meter.offset_w * hours / check.reading, other.offset_w * hours / check.other_reading
    ) / math.sqrt(3)
    return SameLoad(
        check.meter_id, check.other_id, check.reading, check.other_reading, math.hypot(steps, offsets)
    )
