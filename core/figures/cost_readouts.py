"""What is read out of the charts of standby and cost, where the pointer is: machine, value, what it is of."""

from collections.abc import Sequence

from attrs import evolve

from core.costs.money import decimals_of, money
from core.figures.curve_values import Reading
from core.figures.values import Cell, Measure, Row
from core.formatting import POINT, NumberLocale, number, percent
from core.language import tr
from core.results.cost_values import MachineCost

#: of a longer curve not every place is read out
_MOST_READINGS = 60


def with_lines(measures: Sequence[Measure], rows: Sequence[Row]) -> tuple[Measure, ...]:
    """Measures whose marks are read out with their machine, their interval and their unit."""
    return tuple(
        evolve(m, cells=tuple(_with_lines(cell, m, row) for cell, row in zip(m.cells, rows, strict=True)))
        for m in measures
    )


def _with_lines(cell: Cell, measure: Measure, row: Row) -> Cell:
    if cell.mark is None:
        return cell
    unit = f" {measure.axis.unit}" if measure.axis.unit else ""
    lines = [row.name, f"{measure.axis.title}: {cell.mark.text}{unit}"]
    if cell.reason:
        # what stands at length beside the mark names the machine again
        lines.append(cell.reason.removeprefix(f"{row.name}: "))
    return evolve(cell, lines=tuple(lines))


def saving_readings(
    machine: MachineCost, xs: Sequence[float], ys: Sequence[float], locale: NumberLocale = POINT
) -> tuple[Reading, ...]:
    """Places of the curve of what switching off would have saved. [min], [%]"""
    rests = tr(
        "of {energy} Wh in {count:rest|rests}",
        energy=number(machine.rests.idle_wh, 0, locale),
        count=machine.rests.count,
    )
    return tuple(
        Reading(
            x,
            y,
            (
                machine.name,
                tr(
                    "off after {minutes} min: {share} saved",
                    minutes=number(x, 0, locale),
                    share=percent(y / 100, 0, locale),
                ),
                rests,
            ),
        )
        for x, y in _thinned(xs, ys)
    )


def start_readings(machine: MachineCost, currency: str, locale: NumberLocale = POINT) -> tuple[Reading, ...]:
    """Places of the curve of what a print costs by its start. [h], [currency]"""
    if machine.starts is None:
        return ()
    cheapest, least = machine.starts.cheapest
    decimals = decimals_of(least, currency)

    def amount(value: float) -> str:
        return money(value, currency, locale, decimals=decimals)

    places = _thinned(machine.starts.hours.tolist(), machine.starts.amounts.tolist())
    return tuple(
        Reading(
            hour,
            value,
            (
                machine.name,
                tr("start at {time}: {cost}", time=clock(hour), cost=amount(value)),
                tr("least at {time}: {cost}", time=clock(cheapest), cost=amount(least)),
            ),
        )
        for hour, value in places
    )


def clock(hour: float) -> str:
    """A time of day in hours and minutes.

    Examples
    --------
    >>> clock(6.5), clock(23.999)
    ('06:30', '24:00')
    """
    minutes = round(hour * 60)
    return f"{minutes // 60:02}:{minutes % 60:02}"


def _thinned(xs: Sequence[float], ys: Sequence[float]) -> list[tuple[float, float]]:
    step = max(1, -(-len(xs) // _MOST_READINGS))
    return list(zip(xs[::step], ys[::step], strict=True))
