"""What a line-up shows, as frozen values in the units shown."""

import math
from functools import lru_cache

from attrs import field, frozen

from core.figures.ticks import tick_decimals
from core.formatting import POINT, NumberLocale, number
from core.line_up.choices import LineUp
from core.line_up.strands import Strand
from core.results.values import State
from core.traces import F64

#: steps that people count in, by unit; other units count in 1, 2, 5
_STEPS = {
    "s": (1.0, 2.0, 5.0, 10.0, 15.0, 20.0, 30.0, 60.0),
    "min": (1.0, 2.0, 5.0, 10.0, 15.0, 20.0, 30.0, 60.0, 120.0),
    "h": (0.5, 1.0, 2.0, 3.0, 4.0, 6.0, 12.0, 24.0),
}
_DECIMAL_STEPS = tuple(m * 10.0**k for k in range(-4, 7) for m in (1.0, 2.0, 5.0))


@frozen
class Scale:
    """An axis from `low` to `high`, in `unit`."""

    title: str
    unit: str
    low: float
    high: float
    locale: NumberLocale = POINT

    def ticks(self, most: int) -> tuple[tuple[float, str], ...]:
        """Places of the ticks with their texts, at most `most` of them.

        Examples
        --------
        >>> [text for _, text in Scale("Time", "min", -3.0, 40.0).ticks(5)]
        ['0', '10', '20', '30', '40']
        """
        return _ticks(self, most)


@lru_cache(maxsize=512)
def _ticks(scale: Scale, most: int) -> tuple[tuple[float, str], ...]:
    """Remembered, because a chart of many plots asks for the same ticks again and again."""
    steps = (*(s for s in _DECIMAL_STEPS if s < 1.0), *_STEPS.get(scale.unit, ()), *_DECIMAL_STEPS)
    for step in steps:
        first, last = -int(-scale.low // step), int(scale.high // step)
        if last - first + 1 <= max(most, 1):
            decimals = tick_decimals(step)
            places = [round(i * step, decimals) for i in range(first, last + 1)]
            if places == [0.0] and most > 1 and scale.high > 0:
                # zero alone is no scale: the largest number of one digit goes with it
                unit = 10.0 ** math.floor(math.log10(scale.high))
                places.append(math.floor(scale.high / unit) * unit)
                decimals = tick_decimals(unit)
            return tuple((at, number(at, decimals, scale.locale)) for at in places)
    return ()


@frozen
class Curve:
    """A line: one run, or with an empty `run_id` the median of a machine's runs. NaN lifts the pen.

    ``included`` says whether the run counts.
    """

    run_id: str
    machine_id: str
    name: str
    slot: int
    x: F64 = field(eq=False, repr=False)
    y: F64 = field(eq=False, repr=False)
    included: bool = True


@frozen
class Ribbon:
    """The band in which a machine's repeats lie; NaN where it has none."""

    machine_id: str
    slot: int
    x: F64 = field(eq=False, repr=False)
    low: F64 = field(eq=False, repr=False)
    high: F64 = field(eq=False, repr=False)


@frozen
class StateRow:
    """Operating states of a run, or of a machine's runs in the mean, as (state, from, to)."""

    name: str
    slot: int
    spans: tuple[tuple[State, float, float], ...]


@frozen
class Excursion:
    """Where a run leaves the band of its own machine."""

    run_id: str
    slot: int
    low: float
    high: float
    name: str
    by_text: str
    text: str


@frozen
class Panel:
    """One plot on the common axis.

    ``title`` says whose it is, empty where its curves are labelled. ``hidden`` are runs of which only the
    band is drawn: they can be pointed at. ``beyond`` is the greatest value where it lies past the axis.
    """

    title: str
    slot: int | None
    y: Scale
    curves: tuple[Curve, ...]
    ribbons: tuple[Ribbon, ...] = ()
    state_rows: tuple[StateRow, ...] = ()
    excursions: tuple[Excursion, ...] = ()
    hidden: tuple[Curve, ...] = ()
    beyond: float | None = None


@frozen
class LineUpFigure:
    """Runs lined up: rows and columns of panels over one axis.

    Parameters
    ----------
    x : Scale
        The part of the common axis that is drawn.
    factor : float
        A place of the common axis times this is a value of `x`.
    rows : tuple of tuple of Panel
        All rows have the same number of panels.
    span : tuple of float, optional
        What is marked, in the unit of `x`.
    facts : tuple of str
        The numbers behind it, a clause a machine.
    strands, choices
        What it was made from: two figures are equal when these are.
    is_as_logged : bool
        Whether the power is drawn as its least and greatest values, not as a mean.
    """

    headline: str
    conditions: str
    source: str
    x: Scale
    factor: float
    rows: tuple[tuple[Panel, ...], ...]
    span: tuple[float, float] | None
    facts: tuple[str, ...]
    strands: tuple[Strand, ...]
    choices: LineUp
    is_as_logged: bool = False

    @property
    def panels(self) -> tuple[Panel, ...]:
        """All panels, row by row."""
        return tuple(panel for row in self.rows for panel in row)

    @property
    def run_ids(self) -> tuple[str, ...]:
        """The runs in their order."""
        return tuple(s.run_id for s in self.strands)
