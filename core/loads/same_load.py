"""Same-load checks: two meters on one steady load, which measure the ratio of their gains.

Theory. Before a check each meter's gain error g is known only as its stated accuracy: mean 0, variance u^2.
A check of meters a and b that read E_a and E_b of one load says g_a - g_b = E_a / E_b - 1, give or take what
their readings are unsure by. All checks together are a linear observation of all gains, and what is then
known of the gains is the usual best linear update: new means, by which readings are corrected, and a
covariance that is narrower in the difference of the two meters and hardly in their common part. It is handed
on as independent influences under shared keys, so a ratio of two checked meters gains what the check has
told, and a mean does not pretend to.

References
----------
.. [1] JCGM 100:2008, clause 5.2 (correlated input quantities) and F.1.2.4 (a common standard).
"""

import math
from collections.abc import Mapping, Sequence

import numpy as np
from attrs import evolve, field, frozen

from core.results.values import Energy, Influence
from core.study import Meter
from core.traces import F64

#: a part of a gain's uncertainty below this is no more than rounding [1]
NEGLIGIBLE = 1e-12


@frozen
class SameLoad:
    """Two meters on one load at the same time.

    Parameters
    ----------
    meter_id, other_id : str
    energy_wh, other_wh : float
        What each read of it. [Wh]
    u_relative : float
        Standard uncertainty of their ratio from reading and resolution alone.
    """

    meter_id: str
    other_id: str
    energy_wh: float
    other_wh: float
    u_relative: float


@frozen(eq=False)
class Calibration:
    """What checks tell of meters.

    ``errors`` are those of the gains; ``doubts`` their standard uncertainties as (key, u), which meters may
    share.
    """

    errors: Mapping[str, float] = field(factory=dict)
    doubts: Mapping[str, tuple[tuple[str, float], ...]] = field(factory=dict)

    def u_relative(self, meter_id: str) -> float:
        """Standard uncertainty of a meter's gain. [1]"""
        return math.sqrt(sum(u**2 for _, u in self.doubts[meter_id]))

    def tells_of(self, meter_id: str) -> bool:
        """Whether a check tells anything of a meter."""
        return any(key != f"gain:{meter_id}" for key, _ in self.doubts.get(meter_id, ()))

    def factor(self, meter_id: str) -> float:
        """What a reading of a meter is multiplied by to take off the error that checks have shown. [1]"""
        return 1 / (1 + self.errors[meter_id])


def reading_u_relative(energy_wh: float, other_wh: float, step_wh: float, other_step_wh: float) -> float:
    """Standard uncertainty of the ratio of two readings of displays. [1]

    Each reading is a difference of two numbers of a display, unsure by its step / sqrt(6) (two rectangles).

    Examples
    --------
    >>> round(reading_u_relative(1000.0, 1000.0, 1.0, 1.0), 6)
    0.000577
    """
    return math.hypot(step_wh / energy_wh, other_step_wh / other_wh) / math.sqrt(6)


def calibrate(meters: Sequence[Meter], checks: Sequence[SameLoad]) -> Calibration:
    """What same-load checks tell of the gains of meters.

    Parameters
    ----------
    meters : sequence of Meter
    checks : sequence of SameLoad
        Between meters of `meters`; checks that name another meter are left aside.

    Returns
    -------
    Calibration
        Meters in no check keep their stated accuracy under their own key.

    Raises
    ------
    ValueError
        If a reading of a check is not positive.
    """
    known = {meter.id: place for place, meter in enumerate(meters)}
    used = [c for c in checks if c.meter_id in known and c.other_id in known]
    if any(c.energy_wh <= 0 or c.other_wh <= 0 for c in used):
        raise ValueError("a same-load check needs two positive readings")
    prior = np.diag([(m.gain_percent / 100) ** 2 / 3 for m in meters])
    means = np.zeros(len(meters))
    covariance = prior
    if used:
        sees = np.zeros((len(used), len(meters)))
        for row, check in enumerate(used):
            sees[row, known[check.meter_id]] += 1.0
            sees[row, known[check.other_id]] -= 1.0
        seen = np.array([c.energy_wh / c.other_wh - 1 for c in used])
        noise = np.diag([c.u_relative**2 for c in used])
        gain = np.linalg.lstsq(sees @ prior @ sees.T + noise, sees @ prior, rcond=None)[0].T
        means = gain @ seen
        covariance = prior - gain @ sees @ prior
    factor = _factor(covariance)
    doubts = {}
    for meter in meters:
        row = factor[known[meter.id]]
        is_checked = any(meter.id in (c.meter_id, c.other_id) for c in used)
        parts = [(f"checked gains {k}", float(u)) for k, u in enumerate(row) if abs(u) > NEGLIGIBLE]
        stated = (f"gain:{meter.id}", meter.gain_percent / 100 / math.sqrt(3))
        doubts[meter.id] = tuple(parts) if is_checked else (stated,)
    return Calibration({m.id: float(means[known[m.id]]) for m in meters}, doubts)


def _factor(covariance: F64) -> F64:
    """A square root of a covariance: rows are meters, columns independent influences."""
    values, vectors = np.linalg.eigh((covariance + covariance.T) / 2)
    return np.asarray(vectors * np.sqrt(np.maximum(values, 0.0)))


def corrected(energy: Energy, meter: Meter, calibration: Calibration) -> Energy:
    """An energy as the meter would have read it without the error that checks have shown, and narrowed.

    Parameters
    ----------
    energy : Energy
        As measured, with the meter's stated gain among its influences.
    meter : Meter
        That measured it.
    calibration : Calibration
        With this meter; without it the energy comes back as it was.
    """
    if meter.id not in calibration.doubts:
        return energy
    scale = calibration.factor(meter.id)
    value_wh = energy.energy_wh * scale
    kept = [evolve(i, u_wh=i.u_wh * scale) for i in energy.influences if i.shared != f"gain:{meter.id}"]
    gains = [
        Influence("meter gain", value_wh * u, key) for key, u in calibration.doubts[meter.id] if u * value_wh
    ]
    return evolve(energy, energy_wh=value_wh, influences=(*gains, *kept))
