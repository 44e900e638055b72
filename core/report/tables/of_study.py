"""Which tables a study has, in the order of its pages."""

from collections.abc import Callable, Iterator

from attrs import frozen

from core.publish.sources import Sources
from core.report.tables import beds, budgets, costs, like, line_up, loads, logs, pairs, properties
from core.results.table import (
    comparison_table,
    fairness_table,
    readable_fairness,
    readable_runs,
    readable_table,
    runs_table,
)
from core.tables import Table


@frozen
class StudyTable:
    """One table.

    Parameters
    ----------
    key : str
        Name in files, without ending.
    page : str
        Title of the page that it belongs to.
    title : str
    data : Table
        Full precision, every number in a column of its own.
    shown : Table
        Values rounded by their intervals and written with them.
    """

    key: str
    page: str
    data: Table
    shown: Table

    @property
    def title(self) -> str:
        """What it holds, in a few words."""
        return self.shown.title


_Make = Callable[[Sources], Table]
#: key, page, in full, to read
_TABLES: tuple[tuple[str, str, _Make, _Make], ...] = (
    (
        "comparison",
        "Compare",
        lambda s: comparison_table(s.comparison),
        lambda s: readable_table(s.comparison),
    ),
    ("runs", "Compare", lambda s: runs_table(s.comparison), lambda s: readable_runs(s.comparison)),
    ("pairs", "Compare", pairs.pairs_table, pairs.readable_pairs),
    ("budgets", "Compare", budgets.budgets_table, budgets.readable_budgets),
    ("like-for-like", "Compare", like.like_data, like.readable_like),
    ("properties", "Compare", properties.properties_table, properties.readable_properties),
    ("line-up", "Line-up", line_up.spans_table, line_up.readable_spans),
    ("held-beds", "Bed", beds.held_table, beds.readable_held),
    ("cooler-bed", "Bed", beds.cooler_table, beds.readable_cooler),
    ("loads", "Loads", loads.loads_table, loads.readable_loads),
    ("standby", "Standby and cost", costs.standby_table, costs.readable_standby),
    ("hours", "Standby and cost", costs.hours_data, costs.readable_hours),
    ("print", "Standby and cost", costs.print_data, costs.readable_print),
    ("meters", "Logs", logs.meters_table, logs.meters_table),
    ("logs", "Logs", logs.logs_table, logs.readable_logs),
    (
        "fairness",
        "Fairness",
        lambda s: fairness_table(s.comparison),
        lambda s: readable_fairness(s.comparison),
    ),
)


#: tables of which every row costs: their title, or None where they have no row, is found without making them
_TITLES: dict[str, Callable[[Sources], str | None]] = {"line-up": line_up.title}


def tables_there(sources: Sources) -> Iterator[tuple[str, str, str]]:
    """Key, page and title of every table that has rows."""
    for key, page, data, shown in _TABLES:
        if key in _TITLES:
            title = _TITLES[key](sources)
        else:
            title = shown(sources).title if data(sources).rows else None
        if title is not None:
            yield key, page, title


def study_table(sources: Sources, key: str) -> StudyTable | None:
    """One table; None where it has no rows, or nobody knows its key."""
    made = (
        StudyTable(k, page, data(sources), shown(sources)) for k, page, data, shown in _TABLES if k == key
    )
    return next((table for table in made if table.data.rows), None)


def study_tables(sources: Sources) -> tuple[StudyTable, ...]:
    """The tables that have rows; those of pages for which the study holds nothing are left out."""
    made = (StudyTable(key, page, data(sources), shown(sources)) for key, page, data, shown in _TABLES)
    return tuple(table for table in made if table.data.rows)
