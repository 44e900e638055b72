"""Uncertainty of energies after the GUM, carried by GTC.

Rules. Every line of a budget is one input quantity. What two runs share (the gain and the offset of one
meter) is one and the same input object, told by its key, so that it adds up in a mean and cancels in a ratio
by itself. Intervals are two-sided at 95 %: Student's t at the effective degrees of freedom
(Welch-Satterthwaite) times the standard uncertainty.

References
----------
.. [1] JCGM 100:2008, *Guide to the expression of uncertainty in measurement*: clauses 4.2, 4.3, 5.2 and
annex G.
"""

import math
from collections.abc import Sequence
from functools import lru_cache
from typing import Any

from attrs import frozen

from core.results.values import Energy, Influence, Measured
from core.units import WH_PER_KWH

#: coverage factor of a normal distribution for 95 %, two-sided
NORMAL_95 = 1.959963984540054
#: name of the influence that the scatter of repeated runs gives a mean
REPEATS = "repeats"


@frozen
class BudgetLine:
    """One line of a budget: standard uncertainty [Wh] and its share of the variance (all lines make 1)."""

    name: str
    u_wh: float
    share: float
    is_shared: bool
    df: float


@frozen
class Mean:
    """Mean energy of the runs of a machine.

    Parameters
    ----------
    energy_wh : Measured
        Mean and the half-width of its 95 % interval. [Wh]
    influences : tuple of Influence
        Of the mean; those shared by a meter keep their keys.
    runs : int
    df : float
        Effective degrees of freedom.
    spread_wh : float or None
        Standard deviation between the runs; None for a single run: nothing was repeated. [Wh]
    """

    energy_wh: Measured
    influences: tuple[Influence, ...]
    runs: int
    df: float
    spread_wh: float | None

    @property
    def parts_per_kwh(self) -> Measured:
        """1000 / mean energy, with the interval that goes with it. [1/kWh]"""
        value = WH_PER_KWH / self.energy_wh.value
        u95 = None if self.energy_wh.u95 is None else value * self.energy_wh.u95 / self.energy_wh.value
        return Measured(value, u95)


@frozen
class Ratio:
    """Energy of one machine over that of another.

    ``low`` and ``high`` bound the 95 % interval; ``u_shared`` is the part of `u` that more runs would not
    lessen (two meters); ``p`` is the two-sided probability of a ratio at least as far from 1 if there were
    no difference.
    """

    value: float
    low: float
    high: float
    u: float
    df: float
    p: float
    u_shared: float

    @property
    def is_shown(self) -> bool:
        """Whether the interval leaves 1 out."""
        return not self.low <= 1 <= self.high


class Inputs:
    """The input quantities of one calculation: influences with one key share one object."""

    def __init__(self) -> None:
        from GTC import ureal

        self._ureal = ureal
        self._shared: dict[str, Any] = {}

    def energy(self, value_wh: float, influences: Sequence[Influence]) -> Any:
        """An uncertain number: GTC has no types."""
        result: Any = value_wh
        for influence in influences:
            result = result + influence.u_wh * self._unit(influence)
        return result

    def measured(self, value: Measured) -> Any:
        """An uncertain number from a value and its 95 % half-width, taken as normal."""
        return self._ureal(value.value, (value.u95 or 0.0) / NORMAL_95)

    def _unit(self, influence: Influence) -> Any:
        if influence.shared is None:
            return self._ureal(0.0, 1.0, df=influence.df, label=influence.name)
        if influence.shared not in self._shared:
            self._shared[influence.shared] = self._ureal(0.0, 1.0, df=influence.df, label=influence.shared)
        return self._shared[influence.shared]


def coverage_factor(df: float) -> float:
    """Student's t for 95 %, two-sided.

    Parameters
    ----------
    df : float
        Effective degrees of freedom, taken as at least 1; fractions are allowed (JCGM 100:2008, G.4.1, note
        1).

    Examples
    --------
    >>> round(coverage_factor(2), 2), round(coverage_factor(float("inf")), 2)
    (4.3, 1.96)
    """
    if not math.isfinite(df):
        return NORMAL_95
    from scipy.special import stdtrit

    return float(stdtrit(max(df, 1.0), 0.975))


def standard_of(number: Any) -> tuple[float, float]:
    """Standard uncertainty and degrees of freedom of a number made by `Inputs`, or of a plain one."""
    if isinstance(number, (int, float)):
        return 0.0, math.inf
    return float(number.u), float(number.df)


@lru_cache(maxsize=8192)
def u95_of(energy: Energy) -> float:
    """Half-width of the 95 % interval of one run's energy. [Wh]

    Examples
    --------
    >>> round(u95_of(Energy(100.0, (Influence("meter gain", 1 / 3**0.5),), "power")), 3)
    1.132
    """
    if _are_apart(energy.influences):
        # the root of the sum of squares, as GTC finds it too, but for a thousand runs in no time
        return NORMAL_95 * math.sqrt(math.fsum(i.u_wh * i.u_wh for i in energy.influences))
    u_wh, df = standard_of(Inputs().energy(energy.energy_wh, energy.influences))
    return coverage_factor(df) * u_wh


def _are_apart(influences: Sequence[Influence]) -> bool:
    """Whether no two influences share an input, and none was estimated from few values."""
    keys = [i.shared for i in influences if i.shared is not None]
    return len(keys) == len(set(keys)) and all(i.df == math.inf for i in influences)


def budget(influences: Sequence[Influence]) -> tuple[BudgetLine, ...]:
    """The influences by size, with their shares of the variance.

    Influences of one name and key are taken together; the shares add up to 1.
    """
    lines: dict[tuple[str, str | None], list[Influence]] = {}
    for influence in influences:
        lines.setdefault((influence.name, influence.shared), []).append(influence)
    total = sum(_together(group) ** 2 for group in lines.values())
    if total <= 0:
        return ()
    made = (
        BudgetLine(name, _together(group), _together(group) ** 2 / total, key is not None, group[0].df)
        for (name, key), group in lines.items()
    )
    return tuple(sorted(made, key=lambda line: -line.u_wh))


def _together(group: Sequence[Influence]) -> float:
    """Lines that share a key err together (their sum); others do not (root of squares). [Wh]"""
    if group[0].shared is not None:
        return abs(sum(i.u_wh for i in group))
    return math.sqrt(sum(i.u_wh**2 for i in group))


def mean_of(energies: Sequence[Energy]) -> Mean:
    """Mean energy of the included runs of a machine, with its interval.

    The spread of the runs holds both what really differed from run to run and what each run's own
    measurement was unsure by, so the two are not added: the variance of the mean is s^2 / n, or what the
    runs' own influences explain when that is more (a spread that came out small by luck makes nothing
    surer). Only the part of it that the measurement does not explain was estimated from n values, and only
    that has n - 1 degrees of freedom. What the runs share (their meter) is carried along whole.

    Parameters
    ----------
    energies : sequence of Energy
        At least one.

    Returns
    -------
    Mean

    Raises
    ------
    ValueError
        If there is none.
    """
    return _mean_of(tuple(energies))


@lru_cache(maxsize=2048)
def _mean_of(energies: tuple[Energy, ...]) -> Mean:
    count = len(energies)
    if count == 0:
        raise ValueError("a mean needs a value")
    mean_wh = math.fsum(e.energy_wh for e in energies) / count
    own: dict[str, float] = {}
    shared: dict[tuple[str, str], tuple[float, float]] = {}
    for influence in (i for e in energies for i in e.influences):
        if influence.shared is None:
            own[influence.name] = own.get(influence.name, 0.0) + (influence.u_wh / count) ** 2
        else:
            so_far, df = shared.get((influence.name, influence.shared), (0.0, influence.df))
            shared[influence.name, influence.shared] = (
                so_far + influence.u_wh / count,
                min(df, influence.df),
            )
    influences = [Influence(name, u_wh, key, df) for (name, key), (u_wh, df) in shared.items()]
    influences += [Influence(name, math.sqrt(variance)) for name, variance in own.items()]
    spread_wh = None
    if count > 1:
        spread_wh = math.sqrt(math.fsum((e.energy_wh - mean_wh) ** 2 for e in energies) / (count - 1))
        excess = spread_wh**2 / count - sum(own.values())
        if excess > 0:
            influences.append(Influence(REPEATS, math.sqrt(excess), df=count - 1))
    u_wh, df = standard_of(Inputs().energy(mean_wh, influences))
    return Mean(Measured(mean_wh, coverage_factor(df) * u_wh), tuple(influences), count, df, spread_wh)


def forget() -> None:
    """Let go of everything remembered."""
    for remembered in (u95_of, _mean_of, _ratio):
        remembered.cache_clear()


def ratio(mean: Mean, other: Mean) -> Ratio:
    """Energy of one machine over that of another, with its 95 % interval.

    Parameters
    ----------
    mean, other : Mean

    Returns
    -------
    Ratio

    Raises
    ------
    ValueError
        If the other energy is not positive.
    """
    if other.energy_wh.value <= 0:
        raise ValueError("a ratio needs a positive energy below the line")
    return _ratio(mean, other)


@lru_cache(maxsize=4096)
def _ratio(mean: Mean, other: Mean) -> Ratio:
    inputs = Inputs()
    above = inputs.energy(mean.energy_wh.value, mean.influences)
    below = inputs.energy(other.energy_wh.value, other.influences)
    value = mean.energy_wh.value / other.energy_wh.value
    u, df = standard_of(above / below)
    inputs = Inputs()
    above = inputs.energy(mean.energy_wh.value, [i for i in mean.influences if i.shared])
    below = inputs.energy(other.energy_wh.value, [i for i in other.influences if i.shared])
    u_shared, _ = standard_of(above / below)
    half = coverage_factor(df) * u
    return Ratio(value, value - half, value + half, u, df, _two_sided_p(value - 1, u, df), u_shared)


def _two_sided_p(distance: float, u: float, df: float) -> float:
    if u <= 0:
        return 1.0 if distance == 0 else 0.0
    t = abs(distance) / u
    if not math.isfinite(df):
        return math.erfc(t / math.sqrt(2))
    from scipy.special import stdtr

    return float(2 * stdtr(max(df, 1.0), -t))
