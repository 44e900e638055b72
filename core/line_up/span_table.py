"""The readings of a span as a table: means of machines first, then every run."""

from collections.abc import Sequence

from core.formatting import POINT, NumberLocale, number, percent, with_interval
from core.language import tr
from core.line_up.spans import SpanReading
from core.quantities import ENERGY, MEAN_W
from core.tables import Column, Table


def span_table(readings: Sequence[SpanReading], title: str, locale: NumberLocale = POINT) -> Table:
    """What runs used within a span, for reading: values with their 95 % intervals, rounded by them.

    Parameters
    ----------
    readings : sequence of SpanReading
    title : str
        The span in words.
    locale : NumberLocale
    """
    columns = (
        Column("run", tr("Run"), align="left"),
        Column("mean_w", tr("Mean power [W]")),
        Column("energy_wh", tr("Energy [Wh]")),
        Column("share", tr("Share of the run")),
        Column("minutes", tr("Time read [min]")),
    )
    return Table(title, columns, tuple(_row(reading, locale) for reading in readings))


def _row(reading: SpanReading, locale: NumberLocale) -> tuple[str, ...]:
    if reading.run_id:
        name = f"{reading.machine}, {reading.name}"
    else:
        name = tr("{machine}, mean of {runs:run|runs}", machine=reading.machine, runs=reading.runs)
    power, energy = reading.power_w, reading.energy_wh
    if power is None or energy is None or reading.share is None:
        return (name, "", "", "", tr("not there"))
    return (
        name,
        with_interval(power.value, power.u95, MEAN_W, locale),
        with_interval(energy.value, energy.u95, ENERGY, locale),
        percent(reading.share, 1, locale),
        number(reading.seconds / 60, 1, locale),
    )
