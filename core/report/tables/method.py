"""How each number of the tables is found, as a table of its own: the sheet of a workbook that says so."""

from datetime import date

from core import __version__
from core.found.energy import counted_from
from core.language import mark, tr
from core.publish.sources import Sources
from core.report.method import SOURCES, STEPS
from core.study import Meter
from core.tables import Cell, Column, Table

_MEASURES = (
    (mark("Energy per part [Wh]"), mark("Mean of the runs that count, each measured at the plug.")),
    (
        mark("Parts per kWh"),
        mark("1000 Wh divided by the mean energy per part; not the mean of the runs’ own values."),
    ),
    (mark("Mean power [W]"), mark("Mean energy divided by mean duration.")),
    (mark("Duration [min]"), mark("Mean of the runs that count, within what counts of a run.")),
    (
        mark("Bed share [%]"),
        mark("The heated bed’s energy divided by the run’s; every run names its way."),
    ),
    (
        mark("Standby power [W]"),
        mark(
            "Mean of the longest steady rest of a quarter of an hour or more; with no rest that long, the "
            "low end of the values at which the power rests while nothing heats."
        ),
    ),
    ("±", mark("Half the 95 % interval (JCGM 100:2008); empty where only one value was measured.")),
    (mark("Empty cell"), mark("Not known; never zero.")),
)


def method_table(sources: Sources, made: date) -> Table:
    """What counts, how each measure is found, meters, program, day and sources."""
    study, comparison = sources.study, sources.comparison
    rows: list[tuple[Cell, ...]] = [
        (tr("Study"), tr("{study} (invented data)", study=study.name) if study.invented else study.name),
        (tr("Answer"), comparison.headline),
        (tr("Conditions"), comparison.conditions),
        (tr("Boundary"), f"{tr(comparison.boundary)}. {counted_from(comparison.boundary)}"),
        *((tr(what), tr(how)) for what, how in _MEASURES),
        *(
            (
                tr("Meter: {meter}", meter=meter.name),
                _accuracy(meter),
            )
            for meter in study.meters
        ),
        *((tr(lead).rstrip("."), tr(text)) for lead, text in STEPS),
        *((tr("Source"), source) for source in SOURCES),
        (tr("Program"), f"Samepart {__version__}"),
        (tr("Made on"), made.isoformat()),
    ]
    columns = (Column("what", tr("What"), "left"), Column("how", tr("How"), "left"))
    return Table(tr("Method"), columns, tuple(rows))


def _accuracy(meter: Meter) -> str:
    percents, watts = f"{meter.gain_percent:g}", f"{meter.offset_w:g}"
    if meter.stated:
        return tr("±{percents} % of reading and ±{watts} W, stated.", percents=percents, watts=watts)
    return tr(
        "±{percents} % of reading and ±{watts} W, assumed: nobody stated it.", percents=percents, watts=watts
    )
