"""Energy against time as a figure, with lines of equal mean watts."""

from core.figures.compare import shown_runs, source_of
from core.figures.measures import of_machine, of_run
from core.figures.ticks import axis_end
from core.figures.values import (
    Axis,
    EnergyTimeFigure,
    PlaneDot,
    PlaneMark,
    Point,
    WattLine,
)
from core.formatting import POINT, NumberLocale, number
from core.language import tr
from core.quantities import DURATION, ENERGY, MEAN_W
from core.results.values import Comparison, MachineResult
from core.study import Study
from core.units import SECONDS_PER_HOUR, mean_w

#: lines of equal mean watts: enough to read between, few enough to stay in the background
_MOST_LINES = 5
_STEPS_W = (1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0)


def energy_time_figure(
    comparison: Comparison, study: Study, locale: NumberLocale = POINT
) -> EnergyTimeFigure:
    """The figure of energy against time.

    Machines without a mean energy or a mean duration are not in it.

    Parameters
    ----------
    comparison : Comparison
    study : Study
        Names the source of the numbers.
    locale : NumberLocale

    Returns
    -------
    EnergyTimeFigure
        x in min, y in Wh; both axes from zero.
    """
    marks = tuple(mark for m in comparison.machines for mark in [_mark(m)] if mark is not None)
    xs = [m.at.x + (m.x_u95 or 0.0) for m in marks] + [d.at.x for m in marks for d in m.dots if d.included]
    ys = [m.at.y + (m.y_u95 or 0.0) for m in marks] + [d.at.y for m in marks for d in m.dots if d.included]
    x = Axis(tr("Time"), DURATION.unit, axis_end(tuple(xs), margin=0.10), locale)
    y = Axis(ENERGY.name, ENERGY.unit, axis_end(tuple(ys), margin=0.14), locale)
    return EnergyTimeFigure(
        headline=comparison.headline,
        conditions=comparison.conditions,
        source=source_of(study),
        x=x,
        y=y,
        marks=tuple(
            PlaneMark(
                m.machine_id,
                m.name,
                m.slot,
                m.at,
                m.x_u95,
                m.y_u95,
                tuple(d for d in m.dots if d.at.x <= x.top and d.at.y <= y.top),
            )
            for m in marks
        ),
        lines=watt_lines(tuple(m.at for m in marks), x.top, y.top, locale),
    )


def watt_lines(
    points: tuple[Point, ...], x_top: float, y_top: float, locale: NumberLocale = POINT
) -> tuple[WattLine, ...]:
    """Lines of equal mean watts through the origin: round values around and between the points.

    Parameters
    ----------
    points : tuple of Point
        Times and energies. [min], [Wh]
    x_top, y_top : float
        Ends of the axes, where the lines stop. [min], [Wh]
    locale : NumberLocale

    Returns
    -------
    tuple of WattLine
        At most five, by rising watts; none without points.

    Examples
    --------
    >>> [line.watts for line in watt_lines((Point(60, 20), Point(60, 40)), 70, 50)]
    [20.0, 25.0, 30.0, 35.0, 40.0]
    """
    watts = [_watts(p) for p in points if p.x > 0]
    if not watts:
        return ()
    low, high = min(watts), max(watts)
    if high - low < 0.2 * high:
        low, high = 0.85 * low, 1.15 * high
    for step in _STEPS_W:
        first, last = round(low / step), round(high / step)
        if last - first < _MOST_LINES:
            break
    values = [max(1, i) * step for i in range(first, last + 1)]
    return tuple(
        WattLine(w, f"{number(w, 0, locale)} {MEAN_W.unit}", _end_of(w, x_top, y_top))
        for w in sorted(set(values))
    )


def _watts(point: Point) -> float:
    return mean_w(point.y, point.x / DURATION.factor)


def _end_of(watts: float, x_top: float, y_top: float) -> Point:
    at_right = watts * (x_top / DURATION.factor) / SECONDS_PER_HOUR
    if at_right <= y_top:
        return Point(x_top, at_right)
    return Point(y_top * SECONDS_PER_HOUR / watts * DURATION.factor, y_top)


def _mark(machine: MachineResult) -> PlaneMark | None:
    energy, time = of_machine(machine, ENERGY), of_machine(machine, DURATION)
    if energy is None or time is None:
        return None
    dots = []
    for run in shown_runs(machine):
        run_energy, run_time = of_run(run, ENERGY), of_run(run, DURATION)
        if run_energy is not None and run_time is not None:
            dots.append(PlaneDot(run.run_id, Point(run_time.value, run_energy.value), run.included))
    return PlaneMark(
        machine.machine_id,
        machine.name,
        machine.slot,
        Point(time.value, energy.value),
        time.u95,
        energy.u95,
        tuple(dots),
    )
