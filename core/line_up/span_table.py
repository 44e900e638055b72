"""The readings of a span as a table: means of machines first, then every run."""

from collections.abc import Sequence

from core.formatting import POINT, NumberLocale, count, number, percent, with_interval
from core.line_up.spans import SpanReading
from core.quantities import ENERGY, MEAN_W
from core.tables import Column, Table

_COLUMNS = (
    Column("run", "Run", align="left"),
    Column("mean_w", "Mean power [W]"),
    Column("energy_wh", "Energy [Wh]"),
    Column("share", "Share of the run"),
    Column("minutes", "Time read [min]"),
)


def span_table(readings: Sequence[SpanReading], title: str, locale: NumberLocale = POINT) -> Table:
    """What runs used within a span, for reading: values with their 95 % intervals, rounded by them.

    Parameters
    ----------
    readings : sequence of SpanReading
    title : str
        The span in words.
    locale : NumberLocale
    """
    return Table(title, _COLUMNS, tuple(_row(reading, locale) for reading in readings))


def _row(reading: SpanReading, locale: NumberLocale) -> tuple[str, ...]:
    if reading.run_id:
        name = f"{reading.machine}, {reading.name}"
    else:
        name = f"{reading.machine}, mean of {count(reading.runs, 'run')}"
    power, energy = reading.power_w, reading.energy_wh
    if power is None or energy is None or reading.share is None:
        return (name, "", "", "", "not there")
    return (
        name,
        with_interval(power.value, power.u95, MEAN_W, locale),
        with_interval(energy.value, energy.u95, ENERGY, locale),
        percent(reading.share, 1, locale),
        number(reading.seconds / 60, 1, locale),
    )
