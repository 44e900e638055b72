"""Every machine against every other: the ratio of their energies, and whether a difference is shown."""

from core.formatting import UNKNOWN, number
from core.language import mark, tr
from core.publish.sources import Sources
from core.report.tables.cells import machine_column
from core.results.values import Pair
from core.tables import Cell, Column, Table

_RULE = mark(
    "Ratio of the energies per part with its 95 % interval. A difference is shown where p, adjusted for all "
    "pairs, is below 0.05 by the repeats and by the ratio with what the meters leave open."
)


def pairs_table(sources: Sources) -> Table:
    """One row a pair, in full."""
    columns = (
        machine_column(),
        Column("other", tr("Against"), "left"),
        Column("ratio", tr("Ratio"), decimals=4),
        Column("ratio_low", tr("Ratio, low"), decimals=4),
        Column("ratio_high", tr("Ratio, high"), decimals=4),
        Column("p", "p", decimals=5),
        Column("difference_shown", tr("Difference shown"), "left"),
        Column("needed_percent", tr("Difference looked for [%]"), decimals=0),
        Column("runs_needed", tr("Runs each would need to show it"), decimals=0),
    )
    names = _names(sources)
    rows: list[tuple[Cell, ...]] = [
        (
            names[pair.machine_id],
            names[pair.other_id],
            pair.ratio,
            pair.ratio_low,
            pair.ratio_high,
            pair.p,
            _shown(pair),
            pair.needed_percent,
            pair.runs_needed,
        )
        for pair in sources.comparison.pairs
    ]
    return Table(tr("Machine against machine"), columns, tuple(rows), (tr(_RULE),))


def readable_pairs(sources: Sources) -> Table:
    """One row a pair, as people read it."""
    columns = (
        machine_column(),
        Column("other", tr("Against"), "left"),
        Column("less", tr("Energy per part")),
        Column("interval", tr("95 % interval")),
        Column("p", "p"),
        Column("shown", tr("Difference"), "left"),
    )
    names = _names(sources)
    rows: list[tuple[Cell, ...]] = [
        (
            names[pair.machine_id],
            names[pair.other_id],
            _apart(pair.ratio),
            _interval(pair),
            UNKNOWN if pair.p is None else "< 0.001" if pair.p < 0.001 else number(pair.p, 3),
            _verdict(pair),
        )
        for pair in sources.comparison.pairs
    ]
    return Table(tr("Machine against machine"), columns, tuple(rows), (tr(_RULE),))


def _names(sources: Sources) -> dict[str, str]:
    return {m.machine_id: m.name for m in sources.comparison.machines}


def _shown(pair: Pair) -> str:
    """As files tell it."""
    return "not tested" if pair.shown is None else "yes" if pair.shown else "no"


def _verdict(pair: Pair) -> str:
    if pair.shown is None:
        return tr("not tested: too few runs")
    if pair.shown:
        return tr("shown")
    if pair.runs_needed is None or pair.needed_percent is None:
        return tr("none shown")
    return tr(
        "none shown; {count:run|runs} each would show {percents} %",
        count=pair.runs_needed,
        percents=number(pair.needed_percent, 0),
    )


def _apart(ratio: float) -> str:
    """How far apart two energies are.

    Examples
    --------
    >>> _apart(0.65), _apart(1.02), _apart(1.0)
    ('35 % less', '2.0 % more', 'the same')
    """
    percent = 100.0 * abs(ratio - 1.0)
    decimals = 0 if percent >= 10 else 1
    if round(percent, decimals) == 0:
        return tr("the same")
    percents = number(percent, decimals)
    if ratio < 1:
        return tr("{percents} % less", percents=percents)
    return tr("{percents} % more", percents=percents)


def _interval(pair: Pair) -> str:
    """Both ends of the interval; the words once where both lie on one side."""
    if pair.ratio_low is None or pair.ratio_high is None:
        return UNKNOWN
    low, high = _apart(pair.ratio_low), _apart(pair.ratio_high)
    for word in (tr("{percents} % less", percents=""), tr("{percents} % more", percents="")):
        if low.endswith(word) and high.endswith(word):
            return tr("{low} to {high}", low=low.removesuffix(word), high=high)
    return tr("{low} to {high}", low=low, high=high)
