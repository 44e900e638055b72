"""Columns of Python values from a spreadsheet, JSON or a database as a table of numbers and texts."""

import math
from collections.abc import Sequence
from datetime import date, datetime, time, timedelta
from typing import Any

import numpy as np

from core.logs.table import I64, Table


def packed(cells: Sequence[Any]) -> Any:
    """Some rows of a column in little room: numbers as an array, texts as Arrow's; else the cells.

    Parameters
    ----------
    cells : sequence of int, float, str, bytes or None
    """
    import pyarrow as pa

    kinds = {type(c) for c in cells if c is not None}
    if kinds <= {int, float}:
        return np.array([_number(c) for c in cells], dtype=np.float64)
    return pa.array(cells, pa.string()) if kinds == {str} else list(cells)


def joined(parts: Sequence[Any]) -> Any:
    """A column of parts that were `packed`: an array of numbers, an Arrow column of texts, or cells."""
    import pyarrow as pa

    if all(isinstance(p, np.ndarray) for p in parts):
        numbers = np.concatenate(parts) if parts else np.zeros(0)
        return numbers if np.isfinite(numbers).any() else [None] * numbers.size
    if all(isinstance(p, pa.Array) for p in parts):
        return pa.chunked_array(parts, pa.string())
    spelt: list[Any] = []
    for part in parts:
        if isinstance(part, np.ndarray):
            spelt += [None if math.isnan(value) else value for value in part.tolist()]
        else:
            spelt += part.to_pylist() if isinstance(part, pa.Array) else part
    return spelt


def table_of_cells(names: Sequence[str], columns: Sequence[Any], lines: I64 | int = 1) -> Table:
    """Make a table; a column with more numbers than anything else becomes numbers, any other becomes text.

    Parameters
    ----------
    names : headings
    columns : columns of cells: numbers, texts, dates, times, durations, booleans, None; or as `joined` has
        them
    lines : line number of the first row, or of every row
    """
    import pyarrow as pa

    out: list[Any] = []
    heads: list[str] = []
    for name, cells in zip(names, columns, strict=True):
        if isinstance(cells, np.ndarray | pa.ChunkedArray):
            out.append(cells)
            heads.append(str(name))
            continue
        numeric = sum(isinstance(c, int | float) and not isinstance(c, bool) for c in cells)
        spans = sum(isinstance(c, timedelta) for c in cells)
        filled = sum(c is not None and c != "" for c in cells)
        if spans and spans >= 0.5 * filled:
            out.append(np.array([c.total_seconds() if isinstance(c, timedelta) else math.nan for c in cells]))
            heads.append(f"{name} [s]")
            continue
        if numeric and numeric > 0.5 * filled and not any(isinstance(c, str) and c.strip() for c in cells):
            out.append(np.array([_number(c) for c in cells], dtype=np.float64))
        else:
            out.append(pa.array([_text(c) for c in cells], type=pa.string()))
        heads.append(str(name))
    rows = len(columns[0]) if columns else 0
    return Table(tuple(heads), tuple(out), rows, ((0, lines),))


def _number(cell: Any) -> float:
    if isinstance(cell, bool) or not isinstance(cell, int | float):
        return math.nan
    try:
        value = float(cell)
    except OverflowError:
        return math.nan
    return value if math.isfinite(value) else math.nan


def _text(cell: Any) -> str | None:
    if cell is None or cell == "":
        return None
    if isinstance(cell, datetime):
        return cell.isoformat(" ")
    if isinstance(cell, date | time):
        return cell.isoformat()
    if isinstance(cell, timedelta):
        return f"{cell.total_seconds():.3f}"
    if isinstance(cell, float):
        return f"{cell:.0f}" if cell.is_integer() and abs(cell) < 1e15 else repr(cell)
    if isinstance(cell, bytes):
        return cell.decode("utf-8", "replace")
    return str(cell)
