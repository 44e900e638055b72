"""What charts show, as frozen values in the units shown (Wh, W, min, %)."""

from attrs import frozen

from core.figures.calendar_values import CalendarFigure
from core.figures.curve_values import CurvesFigure
from core.figures.line_up_values import LineUpFigure
from core.figures.ticks import MOST_TICKS, tick_decimals, ticks
from core.formatting import POINT, NumberLocale, number

#: slot of a row that belongs to no single machine
NO_MACHINE = -1


@frozen
class Axis:
    """An axis from zero to `top`, in `unit`."""

    title: str
    unit: str
    top: float
    locale: NumberLocale = POINT

    def ticks(self, most: int = MOST_TICKS) -> tuple[tuple[float, str], ...]:
        """Places of the ticks with their texts, at most `most` of them."""
        places = ticks(self.top, most)
        decimals = tick_decimals(places[1]) if len(places) > 1 else 0
        return tuple((at, number(at, decimals, self.locale)) for at in places)


@frozen
class Dot:
    """One run in one measure. ``beyond``: it lies past the end of the axis and is drawn at its edge."""

    run_id: str
    value: float
    included: bool
    beyond: bool = False


@frozen
class Mark:
    """One machine in one measure, with its 95 % interval where there is one.

    ``text`` is the value with its interval, to be read beside the mark; ``u95`` the interval's half-width;
    ``pick_id`` what is picked with it, where the mark itself can be.
    """

    value: float
    u95: float | None
    text: str
    pick_id: str = ""

    @property
    def low(self) -> float:
        """Lower end of the interval, never below zero."""
        return max(0.0, self.value - (self.u95 or 0.0))

    @property
    def high(self) -> float:
        """Upper end of the interval."""
        return self.value + (self.u95 or 0.0)


@frozen
class Bound:
    """What is known where a value cannot be given: it lies between `low` and `high`."""

    low: float
    high: float


@frozen
class Cell:
    """One machine in one measure: a mark with its runs, or a note saying why there is no value.

    ``inner`` is a part of the value drawn inside its bar (the bed's watts in the mean watts);
    ``inner_least`` is what it amounts to at least where no more is known. ``against`` is a value of another
    kind to hold it against, drawn as a dashed line. ``note`` is short, for the chart; ``reason`` says the
    same at length. ``lines`` are what is read out of a mark that stands for no run.
    """

    mark: Mark | None = None
    dots: tuple[Dot, ...] = ()
    inner: float | None = None
    inner_least: float | None = None
    bound: Bound | None = None
    note: str = ""
    reason: str = ""
    against: float | None = None
    lines: tuple[str, ...] = ()


@frozen
class Row:
    """One machine of the comparison. ``runs_text`` says how many runs count."""

    machine_id: str
    name: str
    slot: int
    runs_text: str


@frozen
class RefLine:
    """A value that is no measurement, to be read beside them; ``text`` says what it is."""

    value: float
    text: str


@frozen
class Measure:
    """One measure of the comparison: a column of cells, in the order of the rows.

    Parameters
    ----------
    key : str
        Key of its quantity in `core.quantities`.
    axis : Axis
    cells : tuple of Cell
    bars : bool
        Whether values are drawn as bars from zero, with the inner part filled.
    rank : int
        Which measures to keep when there is no room: 0 first.
    legend : str
        What a sign in the column means (the bar's filled part, the brackets); may be empty.
    legend_short : str
        The same for narrow columns.
    lines : tuple of RefLine
        Drawn dashed through the column.
    """

    key: str
    axis: Axis
    cells: tuple[Cell, ...]
    bars: bool = False
    rank: int = 0
    legend: str = ""
    legend_short: str = ""
    lines: tuple[RefLine, ...] = ()


@frozen
class ComparisonFigure:
    """One row a machine, one column a measure; ``row_word`` is what a row is, where it is something else.

    ``ties`` are stretches of rows (first, last) among which no difference in energy is shown; they may
    overlap, because a machine can be like its neighbours on either side while those differ.
    """

    headline: str
    conditions: str
    source: str
    rows: tuple[Row, ...]
    measures: tuple[Measure, ...]
    ties: tuple[tuple[int, int], ...] = ()
    row_word: str = "machine"


@frozen
class Point:
    """A run, or the mean of a machine, in the plane of time and energy. [min], [Wh]"""

    x: float
    y: float


@frozen
class PlaneDot:
    """One run in the plane."""

    run_id: str
    at: Point
    included: bool


@frozen
class PlaneMark:
    """One machine in the plane, with the half-widths of its 95 % intervals where there are any."""

    machine_id: str
    name: str
    slot: int
    at: Point
    x_u95: float | None
    y_u95: float | None
    dots: tuple[PlaneDot, ...]


@frozen
class WattLine:
    """All points with the same mean watts: a line from the origin to `end`, where it leaves the plot."""

    watts: float
    text: str
    end: Point


@frozen
class EnergyTimeFigure:
    """Energy against time, with lines of equal mean watts."""

    headline: str
    conditions: str
    source: str
    x: Axis
    y: Axis
    marks: tuple[PlaneMark, ...]
    lines: tuple[WattLine, ...]


Figure = ComparisonFigure | EnergyTimeFigure | LineUpFigure | CurvesFigure | CalendarFigure
