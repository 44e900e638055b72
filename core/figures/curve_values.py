"""A plane with curves, their bands and measured points, and what is left of the points beside a curve."""

from attrs import frozen

from core.figures.line_up_values import Scale


@frozen
class NamedScale(Scale):
    """An axis of places 0, 1, 2, ... that have names instead of numbers."""

    names: tuple[str, ...] = ()

    def ticks(self, most: int) -> tuple[tuple[float, str], ...]:
        """Every place with its name: a place without one would be no place."""
        return tuple((float(place), name) for place, name in enumerate(self.names))


@frozen
class Trend:
    """A curve through `x` and `y`, with a band between `low` and `high` where there is one.

    ``slot`` is a machine's, None for what belongs to none; ``name`` stands at its end, where it has one.
    """

    x: tuple[float, ...]
    y: tuple[float, ...]
    slot: int | None = None
    name: str = ""
    low: tuple[float, ...] = ()
    high: tuple[float, ...] = ()
    is_dashed: bool = False


@frozen
class Spot:
    """A measured point with the half-width of its 95 % interval.

    ``key`` tells several points of one run apart; what is not counted has no part in any curve. ``lines`` are
    what is read out of one that is of no run.
    """

    x: float
    y: float
    u95: float | None
    slot: int
    run_id: str
    machine_id: str
    key: str
    name: str = ""
    is_counted: bool = True
    lines: tuple[str, ...] = ()


@frozen
class Reading:
    """A place of a curve that can be pointed at, and what is read out there."""

    x: float
    y: float
    lines: tuple[str, ...]


@frozen
class Between:
    """What lies between two curves over the same places, and what is said of it inside."""

    x: tuple[float, ...]
    top: tuple[float, ...]
    bottom: tuple[float, ...]
    slot: int
    text: str


@frozen
class Rest:
    """Points minus their curve, drawn under the plane on the same horizontal axis."""

    y: Scale
    spots: tuple[Spot, ...]


@frozen
class CurvesFigure:
    """Curves and points over one axis.

    Parameters
    ----------
    x, y : Scale
    trends : tuple of Trend
    spots : tuple of Spot
    between : Between or None
    rest : Rest or None
    note : str
        What signs mean, at the right above the plot.
    facts : tuple of str
        The numbers behind it, a clause each.
    readings : tuple of Reading
        Of the curves.
    """

    headline: str
    conditions: str
    source: str
    x: Scale
    y: Scale
    trends: tuple[Trend, ...]
    spots: tuple[Spot, ...] = ()
    between: Between | None = None
    rest: Rest | None = None
    note: str = ""
    facts: tuple[str, ...] = ()
    readings: tuple[Reading, ...] = ()
