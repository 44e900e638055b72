"""Beds against each other, each for its size: which loses most, and beds fed from the mains against others.

Rules: two beds measured with one meter share its gain, which drops out of their ratio. Several claims on one
page are tested together (Holm). Beds differ in more than their supply, so the ratio of the groups is called
apparent, and is told only where both groups have a bed that was measured and whose area is known.
"""

import math
from collections.abc import Sequence

from attrs import evolve, frozen

from core.results.holds import Beds, MachineBed
from core.uncertainty import NORMAL_95, coverage_factor

#: level at which a difference counts as shown
ALPHA = 0.05


@frozen
class BedPair:
    """Watts per area of one bed over those of another, with the 95 % interval."""

    machine_id: str
    other_id: str
    ratio: float
    low: float
    high: float
    p: float

    @property
    def is_shown(self) -> bool:
        """Whether a difference is shown, all claims of the page taken together."""
        return self.p < ALPHA


@frozen
class Supplies:
    """Beds fed from the mains against beds behind a supply of low voltage.

    Parameters
    ----------
    mains, low_voltage : tuple of MachineBed
        Those whose watts per area are known.
    efficiency, low, high : float or None
        Apparent efficiency of the low-voltage supplies: watts per area of the mains group over those of the
        other, with the 95 % interval; None unless both groups have a bed.
    """

    mains: tuple[MachineBed, ...]
    low_voltage: tuple[MachineBed, ...]
    efficiency: float | None
    low: float | None
    high: float | None


def by_area(beds: Beds) -> tuple[MachineBed, ...]:
    """Beds whose watts per area are known, those that lose most first."""
    known = [(m.w_per_dm2.value, m) for m in beds.machines if m.w_per_dm2 is not None]
    return tuple(m for _, m in sorted(known, key=lambda k: -k[0]))


def pairs_with_first(order: Sequence[MachineBed]) -> tuple[BedPair, ...]:
    """The bed that loses most against every other, their p adjusted for their number.

    Parameters
    ----------
    order : sequence of MachineBed
        As `by_area` gives them.
    """
    from core.stats import holm

    pairs = [_pair(order[0], other) for other in order[1:]]
    adjusted = holm([pair.p for pair in pairs]) if pairs else ()
    return tuple(evolve(pair, p=p) for pair, p in zip(pairs, adjusted, strict=True))


def supplies(beds: Beds) -> Supplies:
    """The groups by supply, and what the supplies seem to cost."""
    order = by_area(beds)
    mains = tuple(m for m in order if m.supply == "mains")
    others = tuple(m for m in order if m.supply == "low voltage")
    if not (mains and others):
        return Supplies(mains, others, None, None, None)
    (mean, u, df), (other_mean, other_u, other_df) = mean_per_area(mains), mean_per_area(others)
    relative, other_relative = u / mean, other_u / other_mean
    u_ratio = math.hypot(relative, other_relative)
    below = relative**4 / df + other_relative**4 / other_df
    half = coverage_factor(u_ratio**4 / below if below > 0 else math.inf) * u_ratio
    efficiency = mean / other_mean
    return Supplies(mains, others, efficiency, efficiency * math.exp(-half), efficiency * math.exp(half))


def _pair(one: MachineBed, other: MachineBed) -> BedPair:
    from scipy.special import ndtr

    a, b = one.reference, other.reference
    assert a is not None
    assert b is not None
    assert one.w_per_dm2 is not None
    assert other.w_per_dm2 is not None
    shares_meter = one.meter_ids == other.meter_ids and len(one.meter_ids) == 1
    u_a, u_b = (w.u_own_w if shares_meter else w.u_w for w in (a, b))
    # the t factor that few windows ask for is in u95: the same stretch is kept for the ratio
    stretch = [w.u95_w / w.u_w / NORMAL_95 if w.u_w > 0 else 1.0 for w in (a, b)]
    u = math.hypot(stretch[0] * u_a / a.power_w, stretch[1] * u_b / b.power_w)
    ratio = one.w_per_dm2.value / other.w_per_dm2.value
    far = abs(math.log(ratio)) / u if u > 0 else math.inf
    return BedPair(
        one.machine_id,
        other.machine_id,
        ratio,
        ratio * math.exp(-NORMAL_95 * u),
        ratio * math.exp(NORMAL_95 * u),
        float(2 * ndtr(-far)),
    )


def mean_per_area(group: Sequence[MachineBed]) -> tuple[float, float, float]:
    """Mean watts per area, its standard uncertainty, and degrees of freedom.

    Between several beds their spread counts where it is larger than what the measurements leave open: beds
    are not alike.

    Parameters
    ----------
    group : sequence of MachineBed
        One at least, each with its watts per area.

    Returns
    -------
    tuple of (mean, u, df)
        [W/dm2], [W/dm2], [1]
    """
    values = [m.w_per_dm2.value for m in group if m.w_per_dm2 is not None]
    measured_u = math.sqrt(
        math.fsum((m.reference.u_w / m.area_dm2) ** 2 for m in group if m.reference and m.area_dm2)
    ) / len(values)
    mean = math.fsum(values) / len(values)
    if len(values) == 1:
        return mean, measured_u, math.inf
    spread = math.sqrt(math.fsum((v - mean) ** 2 for v in values) / (len(values) - 1))
    spread_u = spread / math.sqrt(len(values))
    return (mean, spread_u, len(values) - 1.0) if spread_u > measured_u else (mean, measured_u, math.inf)
