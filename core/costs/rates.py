"""What electricity and prints cost, as the user states it: prices, bands, machines, material, wear, life.

Rules: nothing here is measured and nothing has a price unless a person gave it one; None is not known, never
free. Amounts are in the tariff's own currency, whichever that is.
"""

from typing import Literal

from attrs import field, frozen

PricedBy = Literal["single", "bands", "list"]
MINUTES_PER_DAY = 1440
#: Monday to Sunday, as `datetime.weekday` counts
EVERY_DAY = (0, 1, 2, 3, 4, 5, 6)


@frozen
class PriceBand:
    """A price at some hours of some weekdays, by the local clock.

    Parameters
    ----------
    name : str
    price_per_kwh : float
        [currency/kWh]
    start_min, end_min : int
        Minutes after local midnight, 0 to 1440; an end that is not after the start lies on the next day.
    weekdays : tuple of int
        Monday is 0. A band over midnight belongs to the day on which it begins.
    """

    name: str
    price_per_kwh: float
    start_min: int
    end_min: int
    weekdays: tuple[int, ...] = EVERY_DAY


@frozen
class PriceList:
    """Prices by date, evenly spaced, from a file of half-hourly or hourly prices.

    Parameters
    ----------
    start_s : float
        Begin of the first price: Unix time, or, where `is_local`, a wall clock read as if it were UTC. [s]
    step_s : float
        How long one price holds. [s]
    prices_per_kwh : tuple of float or None
        None where the file has a hole. [currency/kWh]
    is_local : bool
        The file names no offset and nobody named a zone.
    """

    id: str
    name: str
    start_s: float
    step_s: float
    prices_per_kwh: tuple[float | None, ...]
    is_local: bool = False

    @property
    def end_s(self) -> float:
        """End of the last price, on the clock of `start_s`. [s]"""
        return self.start_s + self.step_s * len(self.prices_per_kwh)


@frozen
class Tariff:
    """What a kilowatt hour costs, and when.

    Parameters
    ----------
    currency : str
        Any symbol or code.
    priced_by : {"single", "bands", "list"}
    price_per_kwh : float or None
        The single price; with bands, the price outside them. [currency/kWh]
    bands : tuple of PriceBand
        Of several that hold at one moment the first counts.
    list_id : str or None
        Which of the study's price lists.
    zone : str or None
        IANA name of the zone whose clock the bands follow; None: the clock of each log.
    standing_per_day : float or None
        Paid whatever is used; never part of what a machine costs. [currency/d]
    """

    currency: str = ""
    priced_by: PricedBy = "single"
    price_per_kwh: float | None = None
    bands: tuple[PriceBand, ...] = ()
    list_id: str | None = None
    zone: str | None = None
    standing_per_day: float | None = None


@frozen
class MachineCosts:
    """What a machine costs beside electricity, and how it is used.

    Parameters
    ----------
    machine_id : str
    count : int
        How many machines of this kind there are.
    printing_hours : float or None
        Hours a year that one prints. [h]
    idle_hours : float or None
        Hours a year that one stands switched on and does nothing; None: whenever it does not print. [h]
    price, life_hours : float or None
        Purchase price, and the hours of printing over which it is spread. [currency], [h]
    wear_price, wear_hours : float or None
        Price of the parts that wear, and the hours of printing that a set lasts. [currency], [h]
    """

    machine_id: str
    count: int = 1
    printing_hours: float | None = None
    idle_hours: float | None = None
    price: float | None = None
    life_hours: float | None = None
    wear_price: float | None = None
    wear_hours: float | None = None


@frozen
class Costs:
    """Everything the user states about cost.

    Parameters
    ----------
    tariff : Tariff
    machines : tuple of MachineCosts
        Only those about which something is stated.
    off_after_min : float
        Idle minutes after which machines would be switched off. [min]
    print_hours : float
        Length of the print that is priced, with its warm-up. [h]
    material_g : float or None
        Material in that print. [g]
    material_per_kg : float or None
        [currency/kg]
    failed_percent : float or None
        Prints that fail, of all that are begun. [%]
    co2_g_per_kwh : float or None
        The user's own factor. [g/kWh]
    co2_source : str
        Where that factor is from.
    """

    tariff: Tariff = field(factory=Tariff)
    machines: tuple[MachineCosts, ...] = ()
    off_after_min: float = 30.0
    print_hours: float = 10.0
    material_g: float | None = None
    material_per_kg: float | None = None
    failed_percent: float | None = None
    co2_g_per_kwh: float | None = None
    co2_source: str = ""

    def of(self, machine_id: str) -> MachineCosts:
        """What is stated about a machine; the defaults where nothing is."""
        return next((m for m in self.machines if m.machine_id == machine_id), MachineCosts(machine_id))
