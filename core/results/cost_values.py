"""What standby and prints cost, as frozen values: what the page, its charts and its tables show."""

from attrs import frozen

from core.costs.limits import Limit
from core.costs.print_cost import LongPrint, Price, Starts
from core.costs.rates import Costs
from core.costs.standby import Standby
from core.costs.switch_off import Rests
from core.costs.weeks import Week
from core.problems import Problem
from core.results.values import Influence, Measured, State
from core.units import SECONDS_PER_MINUTE

#: a rest tells what switching off saves when it is so many times as long as one would wait
TELLING = 2.0


@frozen
class MachineCost:
    """One machine. Unknown is None, never 0.

    Parameters
    ----------
    machine_id, name : str
    slot, count : int
        `count` machines of this kind.
    files : tuple of str
        Its logs.
    meter_id : str or None
        Meter with which the standby power was measured.
    standby : Standby or None
    idle_hours : float
        Hours a year for which one of them stands idle. [h]
    printing_hours : float or None
        Hours a year that one of them prints. [h]
    year_kwh, year_cost : Measured or None
        Of standby, all machines of this kind together. [kWh], [currency]
    hours : tuple of (State, float)
        Hours that its logs spent in each state. [h]
    weeks : tuple of Week
    rests : Rests
    part_wh : Measured or None
        [Wh]
    part_cost : Measured or None
        Of a part, priced when it was made. [currency]
    unpriced_share : float
        Share of the parts' energy whose price is not known.
    printed : LongPrint or None
    print_cost : Measured or None
        Electricity of the print at the mean price. [currency]
    printing_kwh, printing_cost : Measured or None
        Of a year of such prints, all machines of this kind together. [kWh], [currency]
    price : Price
        Of the print. [currency]
    co2_g : float or None
        Of the print. [g]
    starts : Starts or None
    part_influences : tuple of Influence
        What makes the energy of the priced parts unsure. [Wh]
    """

    machine_id: str
    name: str
    slot: int
    count: int
    files: tuple[str, ...]
    meter_id: str | None
    standby: Standby | None
    idle_hours: float
    printing_hours: float | None
    year_kwh: Measured | None
    year_cost: Measured | None
    hours: tuple[tuple[State, float], ...]
    weeks: tuple[Week, ...]
    rests: Rests
    part_wh: Measured | None
    part_cost: Measured | None
    unpriced_share: float
    printed: LongPrint | None
    print_cost: Measured | None
    printing_kwh: Measured | None
    printing_cost: Measured | None
    price: Price
    co2_g: float | None
    starts: Starts | None
    part_influences: tuple[Influence, ...] = ()

    def tells_saving_after(self, minutes: float) -> bool:
        """Whether its logs show a rest twice as long or longer: others say little about switching off."""
        longest_min = self.rests.longest_s / SECONDS_PER_MINUTE
        return self.year_kwh is not None and longest_min >= TELLING * minutes and longest_min > 0

    @property
    def logged_hours(self) -> float:
        """Hours of log. [h]"""
        return sum(hours for _, hours in self.hours)


@frozen
class StandbyCost:
    """The answer of the page, machines in the order of the study.

    Parameters
    ----------
    machines : tuple of MachineCost
    costs : Costs
        As the user stated them.
    part : str
    year : int
        Calendar year whose hours and bands are meant.
    year_hours : float
        [h]
    mean_per_kwh : float or None
        Price of a load that never changes. [currency/kWh]
    priced_share : float
        Share of the time whose price is known.
    total_kwh, total_cost : Measured or None
        Standby of a year of all machines whose standby is known. [kWh], [currency]
    saved_share : float or None
        What switching off saves of the standby of the machines whose logs show a longer rest.
    standing_year : float or None
        Standing charge of a year, apart from everything else. [currency]
    limits : tuple of Limit
        Published limits of standby power on the first day of the year, to be drawn and nothing more.
    problems : tuple of Problem
    headline, conditions : str
    """

    machines: tuple[MachineCost, ...]
    costs: Costs
    part: str
    year: int
    year_hours: float
    mean_per_kwh: float | None
    priced_share: float
    total_kwh: Measured | None
    total_cost: Measured | None
    saved_share: float | None
    standing_year: float | None
    limits: tuple[Limit, ...] = ()
    problems: tuple[Problem, ...] = ()
    headline: str = ""
    conditions: str = ""

    @property
    def currency(self) -> str:
        """Symbol or code of the amounts."""
        return self.costs.tariff.currency
