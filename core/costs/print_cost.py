"""Energy and price of a print of some hours, from runs of the test part: warm-up and processing kept apart.

Theory of operation. E(t) = E_warm-up + P_processing x (t - t_warm-up) for each run, so that a longer print
has one warm-up and more processing. The machine's value is the mean over its runs, with the uncertainties of
their energies carried along in proportion: what their meter gives all of them stays shared.
"""

import math
from collections.abc import Sequence

import numpy as np
from attrs import evolve, frozen

from core.costs.rates import Costs, MachineCosts
from core.costs.tariff import Steps
from core.results.values import Energy, Influence, Measured
from core.traces import F64
from core.units import SECONDS_PER_DAY, SECONDS_PER_HOUR, WH_PER_KWH

#: starting times of the day that are tried are so far apart [s]
START_STEP_S = 1800.0
GRAMS_PER_KG = 1000.0


@frozen(cache_hash=True)
class Course:
    """One run taken apart.

    Parameters
    ----------
    energy : Energy
        Of warm-up and processing together.
    warm_up_wh, warm_up_s : float
        0 where no warm-up was seen or none is known. [Wh], [s]
    seconds : float
        Of warm-up and processing together. [s]
    """

    energy: Energy
    warm_up_wh: float
    warm_up_s: float
    seconds: float

    @property
    def processing_w(self) -> float:
        """Mean power after the warm-up. [W]"""
        rest_s = self.seconds - self.warm_up_s
        return (self.energy.energy_wh - self.warm_up_wh) * SECONDS_PER_HOUR / rest_s if rest_s > 0 else 0.0

    def energy_wh(self, seconds: float) -> float:
        """Energy of a print of this length, warm-up included. [Wh]

        Shorter than the warm-up, it is that part of the warm-up.
        """
        if seconds <= self.warm_up_s:
            return self.warm_up_wh * seconds / self.warm_up_s if self.warm_up_s > 0 else 0.0
        return self.warm_up_wh + self.processing_w * (seconds - self.warm_up_s) / SECONDS_PER_HOUR


@frozen
class LongPrint:
    """A print of some hours on one machine: means over its runs.

    ``energy`` has the interval where there is one; ``influences`` make it unsure. [Wh], [s], [W]
    """

    seconds: float
    energy: Measured
    warm_up_wh: float
    warm_up_s: float
    processing_w: float
    runs: int
    influences: tuple[Influence, ...] = ()


def long_print(courses: Sequence[Course], seconds: float) -> LongPrint | None:
    """A print of this length, from runs of the part; None without a run.

    Parameters
    ----------
    courses : sequence of Course
    seconds : float
        With the warm-up, more than 0. [s]
    """
    from core.uncertainty import mean_of

    known = [c for c in courses if c.energy.energy_wh > 0 and c.seconds > c.warm_up_s]
    if not known:
        return None
    mean = mean_of([_scaled(c.energy, c.energy_wh(seconds) / c.energy.energy_wh) for c in known])
    count = len(known)
    return LongPrint(
        seconds=seconds,
        energy=mean.energy_wh,
        warm_up_wh=math.fsum(c.warm_up_wh for c in known) / count,
        warm_up_s=math.fsum(c.warm_up_s for c in known) / count,
        processing_w=math.fsum(c.processing_w for c in known) / count,
        runs=count,
        influences=mean.influences,
    )


def _scaled(energy: Energy, factor: float) -> Energy:
    return evolve(
        energy,
        energy_wh=energy.energy_wh * factor,
        influences=tuple(evolve(i, u_wh=i.u_wh * factor) for i in energy.influences),
        problems=(),
    )


@frozen
class Price:
    """What a print costs, by what it is spent on; None where nobody said. [currency]

    ``failed`` is what the prints that fail add to those that do not.
    """

    electricity: float | None
    material: float | None = None
    wear: float | None = None
    purchase: float | None = None
    failed: float | None = None

    @property
    def total(self) -> float | None:
        """All that is known together; None where the electricity is not."""
        if self.electricity is None:
            return None
        return math.fsum(
            p for p in (self.electricity, self.material, self.wear, self.purchase, self.failed) if p
        )

    @property
    def has_more(self) -> bool:
        """Whether anything beside electricity is known."""
        return any(p is not None for p in (self.material, self.wear, self.purchase, self.failed))

    @property
    def electricity_share(self) -> float | None:
        """Electricity's part of the total, with its part in prints that fail."""
        if self.total is None or self.electricity is None or self.total <= 0:
            return None
        sound = self.total - (self.failed or 0.0)
        return self.electricity / sound if sound > 0 else None


def price_of(electricity: float | None, costs: Costs, machine: MachineCosts) -> Price:
    """The price of a print with everything that the user stated about it.

    Parameters
    ----------
    electricity : float or None
        [currency]
    costs : Costs
    machine : MachineCosts

    Examples
    --------
    >>> costs = Costs(print_hours=10.0, material_g=200.0, material_per_kg=20.0, failed_percent=20.0)
    >>> price = price_of(0.36, costs, MachineCosts("a1", price=500.0, life_hours=5000.0))
    >>> round(price.total, 2), round(price.failed, 2)
    (6.7, 1.34)
    """
    hours = costs.print_hours
    material = _product(costs.material_g, costs.material_per_kg, GRAMS_PER_KG)
    wear = _product(machine.wear_price, hours, machine.wear_hours)
    purchase = _product(machine.price, hours, machine.life_hours)
    failed = None
    if costs.failed_percent is not None and electricity is not None:
        rate = costs.failed_percent / 100
        failed = math.fsum(p for p in (electricity, material, wear, purchase) if p) * rate / (1 - rate)
    return Price(electricity, material, wear, purchase, failed)


def _product(a: float | None, b: float | None, per: float | None) -> float | None:
    return None if a is None or b is None or per is None else a * b / per


@frozen
class Starts:
    """What a print costs by the time of day at which it starts: mean over the days that have prices.

    ``hours`` after midnight by the local clock [h], ``amounts`` [currency], shape (n,).
    """

    hours: F64
    amounts: F64

    @property
    def cheapest(self) -> tuple[float, float]:
        """Time of day and cost of the cheapest start. [h], [currency]"""
        i = int(np.argmin(self.amounts))
        return float(self.hours[i]), float(self.amounts[i])

    @property
    def dearest(self) -> tuple[float, float]:
        """Time of day and cost of the dearest start. [h], [currency]"""
        i = int(np.argmax(self.amounts))
        return float(self.hours[i]), float(self.amounts[i])


def by_start(printed: LongPrint, steps: Steps, midnights_s: Sequence[float]) -> Starts | None:
    """Cost of a print by its start, the price integrated over warm-up and processing apart.

    Parameters
    ----------
    printed : LongPrint
    steps : Steps
    midnights_s : sequence of float
        Begins of the local days to try, on the clock of `steps`; a day of 23 or 25 hours is passed over. [s]

    Returns
    -------
    Starts or None
        None where the prices do not change or no start has prices to its end.
    """
    edges, prices = steps.edges_s, steps.prices_per_kwh
    if np.unique(prices[np.isfinite(prices)]).size < 2:
        return None
    is_known = np.isfinite(prices)
    paid = np.concatenate(([0.0], np.cumsum(np.where(is_known, prices, 0.0) * np.diff(edges))))
    missing = np.concatenate(([0.0], np.cumsum(np.where(is_known, 0.0, np.diff(edges)))))
    places = np.arange(0.0, SECONDS_PER_DAY, START_STEP_S)
    days = np.array(midnights_s)
    days = days[:-1][np.diff(days) == SECONDS_PER_DAY]
    starts = days[:, None] + places[None, :]
    warm_ends = starts + min(printed.warm_up_s, printed.seconds)
    ends = starts + printed.seconds
    whole = (ends <= edges[-1]) & (starts >= edges[0])
    whole &= np.interp(ends, edges, missing) - np.interp(starts, edges, missing) < 1.0
    if not whole.any(axis=0).all():
        return None
    at_start, at_warm, at_end = (np.interp(x, edges, paid) for x in (starts, warm_ends, ends))
    warm_w = printed.warm_up_wh * SECONDS_PER_HOUR / printed.warm_up_s if printed.warm_up_s > 0 else 0.0
    amounts = (warm_w * (at_warm - at_start) + printed.processing_w * (at_end - at_warm)) / (
        SECONDS_PER_HOUR * WH_PER_KWH
    )
    mean = np.where(whole, amounts, 0.0).sum(axis=0) / whole.sum(axis=0)
    return Starts(places / SECONDS_PER_HOUR, mean)
