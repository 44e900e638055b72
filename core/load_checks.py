"""What checks of meters against each other on steady loads say of the meters' gains.

Theory. The gain of each meter is known beforehand only to its stated accuracy; a check says how two gains
stand to each other. Both together, as one least-squares adjustment, give each gain a correction and all of
them a joint covariance. Energies are divided by the corrected gains; the covariance goes into their
uncertainty as influences that the meters share, so that in a ratio of two machines what the check settled
cancels and only what the check itself is unsure of remains. A check can narrow an interval and never widen
it. Several checks, and chains of them over a third meter, are one adjustment.

References
----------
.. [1] JCGM 102:2011, clause 7 (models with any number of outputs), and the adjustment of correlated values by
   least squares as in JCGM 100:2008, 5.2 (from memory).
"""

import math
from collections.abc import Sequence

import numpy as np
from attrs import evolve, frozen

from core.results.values import Energy, Influence
from core.study import LoadCheck, Meter
from core.units import SECONDS_PER_HOUR

#: name of the influence that a corrected gain leaves
GAIN = "meter gain"
#: a check is beyond the stated accuracies when it is further off than so many standard uncertainties
BEYOND = 3.0


@frozen
class Correction:
    """What to do with the energies of one meter.

    Parameters
    ----------
    factor : float
        Energies are multiplied by it.
    terms : tuple of (str, float)
        Keys of shared influences and what one standard uncertainty of each gives, relative to the energy.
    """

    factor: float
    terms: tuple[tuple[str, float], ...]

    @property
    def u(self) -> float:
        """Relative standard uncertainty of the corrected gain."""
        return math.sqrt(sum(part**2 for _, part in self.terms))


@frozen
class Doubtful:
    """A check whose meters differ by more than their accuracies allow. Relative difference and its limit."""

    check: LoadCheck
    difference: float
    limit: float


def corrections(meters: Sequence[Meter], checks: Sequence[LoadCheck]) -> dict[str, Correction]:
    """Corrections by meter id, of the meters that a check connects with another.

    Parameters
    ----------
    meters : sequence of Meter
    checks : sequence of LoadCheck
        Those that name an unknown meter are passed over.
    """
    by_id = {meter.id: meter for meter in meters}
    known = [c for c in checks if c.meter_id in by_id and c.other_id in by_id]
    found: dict[str, Correction] = {}
    for ids in _connected(known):
        group = [c for c in known if c.meter_id in ids]
        found.update(_adjusted([by_id[i] for i in ids], group))
    return found


def doubtful(meters: Sequence[Meter], checks: Sequence[LoadCheck]) -> tuple[Doubtful, ...]:
    """The checks whose meters differ by more than their stated accuracies and the check explain."""
    by_id = {meter.id: meter for meter in meters}
    found = []
    for check in checks:
        if check.meter_id not in by_id or check.other_id not in by_id:
            continue
        pair = by_id[check.meter_id], by_id[check.other_id]
        u = math.sqrt(sum(_gain_u(meter) ** 2 for meter in pair) + _check_u(check, *pair) ** 2)
        difference = math.log(check.reading / check.other_reading)
        if abs(difference) > BEYOND * u:
            found.append(Doubtful(check, difference, BEYOND * u))
    return tuple(found)


def corrected(energy: Energy, meter_id: str, correction: Correction) -> Energy:
    """The energy that a corrected meter would have read, with the influences that go with it.

    Parameters
    ----------
    energy : Energy
        As read.
    meter_id : str
        Of the meter that read it.
    correction : Correction
    """
    kept = tuple(
        evolve(i, u_wh=i.u_wh * correction.factor)
        for i in energy.influences
        if i.shared != f"gain:{meter_id}"
    )
    value_wh = energy.energy_wh * correction.factor
    gains = tuple(Influence(GAIN, value_wh * part, key) for key, part in correction.terms if part)
    return evolve(energy, energy_wh=value_wh, influences=gains + kept)


def _gain_u(meter: Meter) -> float:
    return meter.gain_percent / 100 / math.sqrt(3)


def _check_u(check: LoadCheck, meter: Meter, other: Meter) -> float:
    """Relative standard uncertainty of the ratio of two readings, without the gains.

    The last digit of each display (a power is one reading, an energy the difference of two), and the offsets,
    which a load measured once cannot tell from gains.
    """
    per_reading = math.sqrt(6) if check.unit == "Wh" else math.sqrt(12)
    steps = math.hypot(
        check.step / per_reading / check.reading, check.other_step / per_reading / check.other_reading
    )
    hours = (check.seconds or SECONDS_PER_HOUR) / SECONDS_PER_HOUR
    load_w = check.reading / hours if check.unit == "Wh" else check.reading
    offsets = math.hypot(meter.offset_w, other.offset_w) / math.sqrt(3) / load_w
    return math.hypot(steps, offsets)


def _connected(checks: Sequence[LoadCheck]) -> list[tuple[str, ...]]:
    """Groups of meters that checks connect, directly or over others."""
    groups: list[set[str]] = []
    for check in checks:
        pair = {check.meter_id, check.other_id}
        touched = [group for group in groups if group & pair]
        groups = [group for group in groups if not group & pair]
        groups.append(pair.union(*touched))
    return [tuple(sorted(group)) for group in groups]


def _adjusted(meters: Sequence[Meter], checks: Sequence[LoadCheck]) -> dict[str, Correction]:
    """Least-squares adjustment of the gains of one connected group."""
    place = {meter.id: i for i, meter in enumerate(meters)}
    before = np.diag([_gain_u(meter) ** 2 for meter in meters])
    design = np.zeros((len(checks), len(meters)))
    seen = np.array([math.log(c.reading / c.other_reading) for c in checks])
    noise = np.zeros(len(checks))
    for row, check in enumerate(checks):
        pair = place[check.meter_id], place[check.other_id]
        design[row, pair[0]], design[row, pair[1]] = 1.0, -1.0
        noise[row] = _check_u(check, meters[pair[0]], meters[pair[1]]) ** 2
    spread = design @ before @ design.T + np.diag(noise)
    # meters without any doubt leave nothing to adjust: the pseudo-inverse then gives no correction
    gain = before @ design.T @ np.linalg.pinv(spread, hermitian=True)
    error = gain @ seen
    after = before - gain @ design @ before
    values, vectors = np.linalg.eigh((after + after.T) / 2)
    root = vectors * np.sqrt(np.clip(values, 0, None))
    name = "+".join(meter.id for meter in meters)
    keys = [f"gain:{name}:{k + 1}" for k in range(len(meters))]
    return {
        meter.id: Correction(float(math.exp(-error[i])), tuple(zip(keys, root[i].tolist(), strict=True)))
        for meter, i in zip(meters, range(len(meters)), strict=True)
    }
