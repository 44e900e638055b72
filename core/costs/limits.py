"""Published limits of standby power, to be drawn as reference lines: numbers with their source and date.

Rules: a reference line compares nothing. Which law covers a machine is not for this program to say (a
material-extrusion machine is named in none of them), so no sentence ever says that one complies or fails.
What is measured here is no test after IEC 62301, which asks for a laboratory's supply and accuracy.
"""

from datetime import date
from typing import Final

from attrs import frozen

from core.formatting import day
from core.language import mark, tr
from core.units import HOURS_PER_YEAR, WH_PER_KWH


@frozen
class Limit:
    """One published limit.

    Parameters
    ----------
    power_w : float
        [W]
    mode : str
        What it is a limit of, in the document's own sense.
    document : str
    applies_from : date
    applies_to : date or None
        The day before a later limit takes its place; None where none is known.
    """

    power_w: float
    mode: str
    document: str
    applies_from: date
    applies_to: date | None = None

    def holds_on(self, day: date) -> bool:
        """Whether it is the limit of that day."""
        return self.applies_from <= day and (self.applies_to is None or day <= self.applies_to)

    @property
    def words(self) -> str:
        """What to write beside the line."""
        return tr(
            "{mode}, {document}, from {date}",
            mode=tr(self.mode),
            document=self.document,
            date=day(self.applies_from),
        )


_OFF, _STANDBY = mark("off mode"), mark("standby")
_DISPLAY = mark("standby with information or status display")
_NETWORKED = mark("networked standby")
_EU_2023: Final = "Regulation (EU) 2023/826, Annex III"
_EU_2008: Final = "Regulation (EC) 1275/2008, Annex II"
_MAY_2025, _MAY_2027 = date(2025, 5, 9), date(2027, 5, 9)
_LAST_OF_2008 = date(2025, 5, 8)

#: the limits of the European Union; those for equipment that others are reached through are left out
STANDBY_LIMITS: Final = (
    Limit(0.50, _OFF, _EU_2023, _MAY_2025, date(2027, 5, 8)),
    Limit(0.30, _OFF, _EU_2023, _MAY_2027),
    Limit(0.50, _STANDBY, _EU_2023, _MAY_2025),
    Limit(0.80, _DISPLAY, _EU_2023, _MAY_2025),
    Limit(2.00, _NETWORKED, _EU_2023, _MAY_2025),
    Limit(1.00, _OFF, _EU_2008, date(2010, 1, 7), date(2013, 1, 6)),
    Limit(0.50, _OFF, _EU_2008, date(2013, 1, 7), _LAST_OF_2008),
    Limit(1.00, _STANDBY, _EU_2008, date(2010, 1, 7), date(2013, 1, 6)),
    Limit(0.50, _STANDBY, _EU_2008, date(2013, 1, 7), _LAST_OF_2008),
    Limit(2.00, _DISPLAY, _EU_2008, date(2010, 1, 7), date(2013, 1, 6)),
    Limit(1.00, _DISPLAY, _EU_2008, date(2013, 1, 7), _LAST_OF_2008),
    Limit(6.00, _NETWORKED, _EU_2008, date(2015, 1, 1), date(2016, 12, 31)),
    Limit(3.00, _NETWORKED, _EU_2008, date(2017, 1, 1), date(2018, 12, 31)),
    Limit(2.00, _NETWORKED, _EU_2008, date(2019, 1, 1), _LAST_OF_2008),
)


def limits_on(day: date) -> tuple[Limit, ...]:
    """The limits of a day, smallest first.

    Examples
    --------
    >>> [limit.power_w for limit in limits_on(date(2026, 1, 1))]
    [0.5, 0.5, 0.8, 2.0]
    """
    return tuple(sorted((x for x in STANDBY_LIMITS if x.holds_on(day)), key=lambda x: x.power_w))


def yearly_kwh(power_w: float, hours: float = HOURS_PER_YEAR) -> float:
    """Energy of a power drawn all year, or so many hours of it. [kWh]

    Examples
    --------
    >>> round(yearly_kwh(0.5), 2)
    4.38
    """
    return power_w * hours / WH_PER_KWH
