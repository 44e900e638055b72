"""Rows of a table that could not be used, with their lines as they stand in the file."""

import re
from typing import Any

import numpy as np

from core.logs.clock import FIRST_YEAR, LAST_YEAR
from core.logs.reading import REFUSED_KEPT, Refused
from core.logs.roles import Roles
from core.logs.source import Source, lines_at
from core.logs.table import I64, Table
from core.problems import Problem, Severity
from core.traces import F64

_DATE = re.compile(r"(?<!\d)(\d{4})[-/.]\d\d?[-/.]\d\d?|\d\d?[-/.]\d\d?[-/.](\d{4})(?!\d)")


def refused_rows(
    table: Table, roles: Roles, source: Source | None, seconds: F64, name: str
) -> tuple[tuple[Refused, ...], int]:
    """Rows that could not be used: broken lines, unreadable stamps, cells that are no numbers.

    Parameters
    ----------
    table : Table
    roles : Roles
    source : Source or None
        The text behind the table, to show refused lines as they stand there.
    seconds : ndarray, shape (rows,)
        Times, NaN where unreadable. [s]
    name : str
        The file, for problems.

    Returns
    -------
    refused : tuple of Refused
        The first hundred, by line.
    count : int
        All of them.
    """
    untimed = np.zeros(0, np.int64) if np.isfinite(seconds.sum()) else np.flatnonzero(~np.isfinite(seconds))
    loads = [
        r.position
        for r in roles.all
        if r.quantity in ("power", "energy", "value") and r.position in table.wrong
    ]
    wrong = [table.wrong[p] for p in loads]
    rows: I64 = np.unique(np.concatenate([untimed, *wrong])) if wrong else untimed
    count = table.broken_count + int(rows.size)
    out = [
        Refused(b.line, b.text, Problem(b.code, Severity.CAUTION, name, b.line, dict(b.facts)))
        for b in table.broken
    ]
    kept = rows[:REFUSED_KEPT].tolist()
    lines = {row: table.line_of(int(row)) for row in kept}
    texts = lines_at(source, list(lines.values())) if source is not None and kept else {}
    untimed_set = set(untimed[: 2 * REFUSED_KEPT].tolist())
    for row in kept:
        line = lines[row]
        shown = texts.get(line) or _row_text(table, int(row))
        facts: dict[str, object] = {"text": shown[:80]}
        code = "row.time" if row in untimed_set else "row.number"
        if code == "row.time" and _is_outside(table.columns[roles.time[0]], row, shown):
            code, facts = "row.time_outside", {**facts, "first": FIRST_YEAR, "last": LAST_YEAR}
        out.append(Refused(line, shown, Problem(code, Severity.CAUTION, name, line, facts)))
    return tuple(sorted(out, key=lambda r: r.row)[:REFUSED_KEPT]), count


def no_time_usable(refused: tuple[Refused, ...], name: str) -> Problem | None:
    """Why a log has no row at all with a time, told by its first row; None when no time was refused."""
    first = next((r for r in refused if r.why.code.startswith("row.time")), None)
    if first is None:
        return None
    code = "log.times_outside" if first.why.code == "row.time_outside" else "log.times_unreadable"
    return Problem(code, Severity.ERROR, name, first.row, dict(first.why.facts))


def _is_outside(column: Any, row: int, text: str) -> bool:
    """Whether an unusable time can be read, but is of a year that no log can be from."""
    if isinstance(column, np.ndarray) and np.isfinite(column[row]):
        return True
    years = [int(m.group(1) or m.group(2)) for m in _DATE.finditer(text)]
    return any(not FIRST_YEAR <= y <= LAST_YEAR for y in years)


def _row_text(table: Table, row: int) -> str:
    cells = []
    for column in table.columns:
        if isinstance(column, np.ndarray):
            cells.append(f"{column[row]:g}")
        elif column is not None:
            cells.append(_shown(column[row]))
    return " | ".join(cells)[:300]


def _shown(cell: Any) -> str:
    """An Arrow value as text; a stamp outside the calendar as its number."""
    try:
        return str(cell.as_py())
    except (OverflowError, ValueError):
        return str(cell.value)
