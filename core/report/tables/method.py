"""How each number of the tables is found, as a table of its own: the sheet of a workbook that says so."""

from datetime import date

from core import __version__
from core.found.energy import COUNTED
from core.publish.sources import Sources
from core.report.method import SOURCES, STEPS
from core.tables import Cell, Column, Table

_COLUMNS = (Column("what", "What", "left"), Column("how", "How", "left"))
_MEASURES = (
    ("Energy per part [Wh]", "Mean of the runs that count, each measured at the plug."),
    ("Parts per kWh", "1000 Wh divided by the mean energy per part; not the mean of the runs’ own values."),
    ("Mean power [W]", "Mean energy divided by mean duration."),
    ("Duration [min]", "Mean of the runs that count, within what counts of a run."),
    ("Bed share [%]", "The heated bed’s energy divided by the run’s; every run names its way."),
    (
        "Standby power [W]",
        "Mean of the longest steady rest of a quarter of an hour or more; with no rest that long, the low "
        "end of the values at which the power rests while nothing heats.",
    ),
    ("±", "Half the 95 % interval (JCGM 100:2008); empty where only one value was measured."),
    ("Empty cell", "Not known; never zero."),
)


def method_table(sources: Sources, made: date) -> Table:
    """What counts, how each measure is found, meters, program, day and sources."""
    study, comparison = sources.study, sources.comparison
    rows: list[tuple[Cell, ...]] = [
        ("Study", study.name + (" (invented data)" if study.invented else "")),
        ("Answer", comparison.headline),
        ("Conditions", comparison.conditions),
        ("Boundary", f"{comparison.boundary}. {COUNTED[comparison.boundary]}"),
        *_MEASURES,
        *(
            (
                f"Meter: {meter.name}",
                f"±{meter.gain_percent:g} % of reading and ±{meter.offset_w:g} W, "
                f"{'stated' if meter.stated else 'assumed: nobody stated it'}.",
            )
            for meter in study.meters
        ),
        *((lead.rstrip("."), text) for lead, text in STEPS),
        *(("Source", source) for source in SOURCES),
        ("Program", f"Samepart {__version__}"),
        ("Made on", made.isoformat()),
    ]
    return Table("Method", _COLUMNS, tuple(rows))
