"""The quantities of a comparison: how each is called, in which unit it is shown, and which way is better."""

from attrs import frozen

from core.language import mark, tr


@frozen
class Quantity:
    """One measure as people read it.

    Parameters
    ----------
    key : str
        Name in code and in files.
    name : str
        Title of a chart or a column: given in English, told in the language of the window.
    unit : str
        Unit shown, empty for a pure number.
    factor : float
        Value shown = value in the core's own unit x factor.
    decimals : int
        Digits after the mark where no uncertainty says how many are worth showing.
    higher_is_better : bool or None
        None where neither way is better.
    """

    key: str
    _name: str
    unit: str
    factor: float = 1.0
    decimals: int = 1
    higher_is_better: bool | None = None

    @property
    def name(self) -> str:
        """Title of a chart or a column, in the language of the window."""
        return tr(self._name)


ENERGY = Quantity("energy_wh", mark("Energy per part"), "Wh", decimals=1, higher_is_better=False)
PARTS_PER_KWH = Quantity("parts_per_kwh", mark("Parts per kWh"), "", decimals=1, higher_is_better=True)
MEAN_W = Quantity("mean_w", mark("Mean power"), "W", decimals=1)
DURATION = Quantity("seconds", mark("Duration"), "min", factor=1 / 60, decimals=1, higher_is_better=False)
BED_SHARE = Quantity("bed_share", mark("Bed share"), "%", factor=100.0, decimals=0)
STANDBY_W = Quantity("standby_w", mark("Standby power"), "W", decimals=1, higher_is_better=False)

#: quantities of the page on standby and cost
STANDBY_MEAN_W = Quantity("standby_mean_w", mark("Standby power"), "W", decimals=2, higher_is_better=False)
STANDBY_KWH = Quantity("standby_kwh", mark("Standby of a year"), "kWh", decimals=0, higher_is_better=False)
STANDBY_COST = Quantity("standby_cost", mark("Cost of a year"), "", decimals=2, higher_is_better=False)
PRINT_KWH = Quantity("print_kwh", mark("Energy of the print"), "kWh", decimals=2, higher_is_better=False)
PRINT_COST = Quantity("print_cost", mark("Its electricity"), "", decimals=2, higher_is_better=False)
PRINT_PRICE = Quantity("print_price", mark("Price of the print"), "", decimals=2, higher_is_better=False)
PRINT_CO2 = Quantity("print_co2", mark("CO2 of the print"), "g", decimals=0, higher_is_better=False)
PART_COST = Quantity("part_cost", mark("Electricity of a part"), "", decimals=4, higher_is_better=False)

#: in the order of the comparison's columns
QUANTITIES: tuple[Quantity, ...] = (ENERGY, PARTS_PER_KWH, MEAN_W, DURATION, BED_SHARE, STANDBY_W)


def quantity(key: str) -> Quantity:
    """The quantity with this key.

    Raises
    ------
    KeyError
        If there is none: the caller's mistake.

    Examples
    --------
    >>> quantity("seconds").unit
    'min'
    """
    return _BY_KEY[key]


_BY_KEY = {q.key: q for q in QUANTITIES}
