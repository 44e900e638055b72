"""Prices over time: what a kilowatt hour costs at each moment, and what an interval of a trace costs.

Theory of operation. A tariff becomes steps: edges in time with one price between two of them. The edges of
bands are wall-clock times of each local day, taken in both their meanings where a clock is put back, and the
moments at which the clock itself is put; the price between two edges is that of the local clock half-way. So
a day has 23 or 25 hours where it has them. Energy is integrated between the edges and priced there: never
energy times a mean price.
"""

from datetime import UTC, datetime, timedelta, timezone, tzinfo
from functools import lru_cache
from itertools import pairwise
from zoneinfo import ZoneInfo

import numpy as np
from attrs import field, frozen

from core.costs.rates import MINUTES_PER_DAY, PriceBand, PriceList, Tariff
from core.energy.integral import between_rows_wh
from core.traces import F64, Clock, Trace, read_only
from core.units import J_PER_WH, SECONDS_PER_HOUR, SECONDS_PER_MINUTE, WH_PER_KWH

_UNKNOWN = float("nan")
_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)


@frozen
class Steps:
    """Prices over an interval of time.

    Parameters
    ----------
    edges_s : ndarray, shape (n + 1,)
        Rising. [s]
    prices_per_kwh : ndarray, shape (n,)
        Price from one edge to the next; NaN where none is known. [currency/kWh]
    """

    edges_s: F64 = field(converter=read_only, eq=False, repr=False)
    prices_per_kwh: F64 = field(converter=read_only, eq=False, repr=False)

    @property
    def mean_per_kwh(self) -> float | None:
        """Mean over the time whose price is known: the price of a load that never changes. [currency/kWh]"""
        known = np.isfinite(self.prices_per_kwh)
        seconds = np.diff(self.edges_s)
        if not seconds[known].sum() > 0:
            return None
        return float(np.dot(self.prices_per_kwh[known], seconds[known]) / seconds[known].sum())

    @property
    def known_share(self) -> float:
        """Share of the time whose price is known."""
        seconds = np.diff(self.edges_s)
        return float(seconds[np.isfinite(self.prices_per_kwh)].sum() / seconds.sum()) if seconds.size else 0.0


@frozen
class Cost:
    """What an interval of a trace costs.

    ``amount`` is of the energy whose price is known [currency]; ``unpriced_wh`` of that whose is not. [Wh]
    """

    amount: float
    energy_wh: float
    unpriced_wh: float


def steps_between(
    tariff: Tariff, listed: PriceList | None, zone: tzinfo, start_s: float, end_s: float
) -> Steps:
    """Prices from one moment to another.

    Parameters
    ----------
    tariff : Tariff
    listed : PriceList or None
        The list of a tariff that is priced by one.
    zone : tzinfo
        Whose clock the bands follow.
    start_s, end_s : float
        Unix times, ``start_s < end_s``. [s]

    Examples
    --------
    >>> night = PriceBand("night", 0.10, 0, 420)
    >>> tariff = Tariff(priced_by="bands", price_per_kwh=0.30, bands=(night,))
    >>> steps_between(tariff, None, UTC, 0, 86400).prices_per_kwh.tolist()
    [0.1, 0.3]
    """
    if tariff.priced_by == "list":
        return _list_steps(listed, zone, start_s, end_s)
    price = _UNKNOWN if tariff.price_per_kwh is None else tariff.price_per_kwh
    if tariff.priced_by == "single" or not tariff.bands:
        return Steps(np.array([start_s, end_s]), np.array([price]))
    minutes = {m for b in tariff.bands for m in (b.start_min, b.end_min)} | {0}
    edges = _within(_clock_times(zone, frozenset(minutes), start_s, end_s), start_s, end_s)
    middles = (edges[:-1] + edges[1:]) / 2
    prices = [_band_price(tariff.bands, price, datetime.fromtimestamp(m, zone)) for m in middles.tolist()]
    return _joined(edges, np.array(prices))


def steps_for(tariff: Tariff, listed: PriceList | None, clock: Clock, start_s: float, end_s: float) -> Steps:
    """Prices over an interval of a trace, on the trace's own clock.

    Parameters
    ----------
    tariff : Tariff
    listed : PriceList or None
    clock : Clock
        Of the trace. One that tells elapsed time only has no hour of the day: then a price that changes is
        not known.
    start_s, end_s : float
        On the trace's clock. [s]
    """
    if tariff.priced_by == "single":
        return steps_between(tariff, None, UTC, start_s, end_s)
    if clock.kind == "relative" or clock.start_s is None:
        return Steps(np.array([start_s, end_s]), np.array([_UNKNOWN]))
    if clock.kind == "local" and tariff.zone is None:
        return _wall_steps(tariff, listed, clock, start_s, end_s)
    zone = zone_of(tariff, clock)
    at_s = clock.start_s
    if clock.kind == "local":
        wall = (_EPOCH + timedelta(seconds=clock.start_s)).replace(tzinfo=zone)
        at_s = wall.timestamp()
    found = steps_between(tariff, listed, zone, at_s + start_s, at_s + end_s)
    return Steps(_moved(found.edges_s, at_s, start_s, end_s), found.prices_per_kwh)


def zone_of(tariff: Tariff, clock: Clock | None = None) -> tzinfo:
    """The zone whose clock a tariff follows: its own, or else the log's, or else UTC."""
    if tariff.zone is not None:
        return ZoneInfo(tariff.zone)
    if clock is not None and clock.zone is not None:
        return ZoneInfo(clock.zone)
    return timezone(timedelta(seconds=clock.offset_s)) if clock is not None else UTC


def year_steps(tariff: Tariff, listed: PriceList | None, zone: tzinfo, year: int) -> Steps:
    """Prices of a calendar year of a zone: 8760 h, or 8784 in a leap year, with the days that change."""
    first, last = (datetime(y, 1, 1, tzinfo=zone).timestamp() for y in (year, year + 1))
    return steps_between(tariff, listed, zone, first, last)


def cost_of(trace: Trace, steps: Steps) -> Cost:
    """Price an interval of a trace, its energy integrated between the edges of the prices.

    Parameters
    ----------
    trace : Trace
    steps : Steps
        On the trace's clock, as `steps_for` gives them.

    Examples
    --------
    >>> trace = Trace.of([0, 3600, 7200], [100.0, 100.0, 100.0])
    >>> cost_of(trace, Steps([0, 3600, 7200], [0.10, 0.30])).amount
    0.04
    """
    energy_wh = energies_wh(trace, steps.edges_s)
    known = np.isfinite(steps.prices_per_kwh)
    amount = float(np.dot(energy_wh[known], steps.prices_per_kwh[known])) / WH_PER_KWH
    return Cost(amount, float(energy_wh.sum()), float(energy_wh[~known].sum()))


def energies_wh(trace: Trace, edges_s: F64) -> F64:
    """Energy between neighbouring edges by the power column alone. [Wh]

    Parameters
    ----------
    trace : Trace
    edges_s : ndarray, shape (n + 1,)
        Rising; what lies before the first or after the last row holds their values. [s]

    Returns
    -------
    ndarray, shape (n,)
    """
    time, power = trace.time_s, trace.power_w
    if time.size < 2:
        return np.zeros(max(edges_s.size - 1, 0))
    last = time.size - 1
    rows = np.clip(np.searchsorted(time, edges_s, side="right") - 1, 0, last)
    after = np.minimum(rows + 1, last)
    beyond_s = edges_s - time[rows]
    is_inside = (after > rows) & (beyond_s > 0)
    if trace.kind == "sampled":
        steps_s = np.where(after > rows, time[after] - time[rows], 1.0)
        rise_w = np.where(is_inside, (power[after] - power[rows]) * beyond_s / steps_s, 0.0)
        mean_w = power[rows] + rise_w / 2
    elif trace.kind == "averaged":
        mean_w = np.where(beyond_s > 0, power[after], power[rows])
    else:
        mean_w = power[rows]
    past_row_wh = mean_w * beyond_s / J_PER_WH
    between = np.array([between_rows_wh(trace, a, b) for a, b in pairwise(rows.tolist())])
    return between + np.diff(past_row_wh)


def _list_steps(listed: PriceList | None, zone: tzinfo, start_s: float, end_s: float) -> Steps:
    if listed is None or not listed.prices_per_kwh:
        return Steps(np.array([start_s, end_s]), np.array([_UNKNOWN]))
    begin_s = listed.start_s
    if listed.is_local:
        begin_s = (_EPOCH + timedelta(seconds=begin_s)).replace(tzinfo=zone).timestamp()
    all_edges: F64 = begin_s + listed.step_s * np.arange(len(listed.prices_per_kwh) + 1, dtype=np.float64)
    edges = _within(all_edges, start_s, end_s)
    places = np.floor(((edges[:-1] + edges[1:]) / 2 - begin_s) / listed.step_s).astype(int)
    prices = np.array([_UNKNOWN if p is None else p for p in listed.prices_per_kwh])
    is_listed = (places >= 0) & (places < prices.size)
    return _joined(edges, np.where(is_listed, prices[np.clip(places, 0, prices.size - 1)], _UNKNOWN))


def _wall_steps(
    tariff: Tariff, listed: PriceList | None, clock: Clock, start_s: float, end_s: float
) -> Steps:
    """Prices by a wall clock of no stated zone, put where the log saw it put."""
    assert clock.start_s is not None
    turns = [at for at, _ in clock.shifts if start_s < at < end_s]
    edges: list[F64] = []
    prices: list[F64] = []
    for a, b in pairwise([start_s, *turns, end_s]):
        at_s = clock.start_s + sum(by for at, by in clock.shifts if at <= a)
        part = steps_between(tariff, listed, UTC, at_s + a, at_s + b)
        edges.append(_moved(part.edges_s, at_s, a, b)[:-1])
        prices.append(part.prices_per_kwh)
    return Steps(np.concatenate([*edges, [end_s]]), np.concatenate(prices))


def _moved(edges_s: F64, by_s: float, start_s: float, end_s: float) -> F64:
    """The edges on another clock, with the ends as they were asked for."""
    moved = edges_s - by_s
    moved[0], moved[-1] = start_s, end_s
    return moved


def _within(edges_s: F64, start_s: float, end_s: float) -> F64:
    inner = edges_s[(edges_s > start_s) & (edges_s < end_s)]
    return np.concatenate(([start_s], inner, [end_s]))


def _joined(edges_s: F64, prices: F64) -> Steps:
    """The steps without edges at which the price does not change."""
    same = (prices[1:] == prices[:-1]) | (np.isnan(prices[1:]) & np.isnan(prices[:-1]))
    kept = np.concatenate(([True], ~same))
    return Steps(np.concatenate((edges_s[:-1][kept], edges_s[-1:])), prices[kept])


@lru_cache(maxsize=64)
def _clock_times(zone: tzinfo, minutes: frozenset[int], start_s: float, end_s: float) -> F64:
    """Moments at which a local clock shows one of these minutes of the day, or is put. [s]"""
    day = datetime.fromtimestamp(start_s, zone).replace(
        hour=0, minute=0, second=0, microsecond=0, tzinfo=None
    )
    last = datetime.fromtimestamp(end_s, zone).replace(tzinfo=None)
    found: set[float] = set()
    while day <= last:
        for minute in minutes:
            wall = (day + timedelta(minutes=minute)).replace(tzinfo=zone)
            # a time that comes twice, or never, has two meanings; a needless edge costs nothing
            found.update((wall.timestamp(), wall.replace(fold=1).timestamp()))
        day += timedelta(days=1)
    return np.array(sorted(found | set(turns_between(zone, start_s, end_s))))


def turns_between(zone: tzinfo, start_s: float, end_s: float) -> list[float]:
    """Moments at which the clock of a zone is put, to the second. [s]"""

    def offset(at_s: float) -> timedelta | None:
        return datetime.fromtimestamp(at_s, zone).utcoffset()

    hours = np.arange(np.floor(start_s / SECONDS_PER_HOUR), np.ceil(end_s / SECONDS_PER_HOUR) + 1)
    places = (hours * SECONDS_PER_HOUR).tolist()
    offsets = [offset(at) for at in places]
    found = []
    for i in range(len(places) - 1):
        if offsets[i] == offsets[i + 1]:
            continue
        low, high = places[i], places[i + 1]
        while high - low > 1:
            middle = float(round((low + high) / 2))
            low, high = (middle, high) if offset(middle) == offsets[i] else (low, middle)
        found.append(high)
    return found


def _band_price(bands: tuple[PriceBand, ...], price: float, wall: datetime) -> float:
    """The price that a local clock shows: that of the first band that holds."""
    minute = wall.hour * 60 + wall.minute + wall.second / SECONDS_PER_MINUTE
    today, yesterday = wall.weekday(), (wall.weekday() - 1) % 7
    for band in bands:
        end = band.end_min if band.end_min > band.start_min else band.end_min + MINUTES_PER_DAY
        if today in band.weekdays and band.start_min <= minute < end:
            return band.price_per_kwh
        if yesterday in band.weekdays and band.start_min <= minute + MINUTES_PER_DAY < end:
            return band.price_per_kwh
    return price
