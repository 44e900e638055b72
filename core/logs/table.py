"""A table as it was read: columns of numbers, texts or timestamps, with the line every row came from.

Rules: no meaning here. Whatever could not become a row is kept as `Broken`, with its line.
"""

from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

from core.traces import F64

I64 = NDArray[np.int64]


@frozen
class Broken:
    """A line that is no row: its number, its text (cut), the code of the problem, and facts.

    Lines count from 1 in the file; while a file is being read, from 0 in its `block`.
    """

    line: int
    text: str
    code: str
    facts: tuple[tuple[str, object], ...] = ()
    block: int = 0


@frozen
class Table:
    """Columns of one length.

    Parameters
    ----------
    names : tuple of str
    columns : tuple
        Each a float64 array, an Arrow array of strings, an Arrow array of timestamps, or None where the
        column was not asked for.
    lines : tuple of (first_row, line)
        For the rows from `first_row` on: the line of the first of them, from 1, and they run on from it; or
        an array with one line a row.
    wrong : mapping from column position to rows whose cell is no number
    units : mapping from column position to the unit found inside its cells
    broken : tuple of Broken
        The first hundred.
    broken_count : int
    offsets : mapping from column position to the offset stated in its first stamp [s]
    local : positions of stamp columns that hold a wall clock, at least in part
    is_over : bool
        Another table follows in the file.
    """

    names: tuple[str, ...]
    columns: tuple[Any, ...] = field(eq=False, repr=False)
    rows: int = 0
    lines: tuple[tuple[int, int | I64], ...] = field(default=((0, 1),), eq=False, repr=False)
    wrong: dict[int, I64] = field(factory=dict, eq=False, repr=False)
    units: dict[int, str] = field(factory=dict, eq=False)
    broken: tuple[Broken, ...] = ()
    broken_count: int = 0
    repeated_headings: int = 0
    offsets: dict[int, float] = field(factory=dict, eq=False)
    local: frozenset[int] = frozenset()
    is_over: bool = False

    def line_of(self, row: int) -> int:
        """Line of the file that a row came from."""
        for first, lines in reversed(self.lines):
            if row >= first:
                return int(lines) + row - first if isinstance(lines, int) else int(lines[row - first])
        return 0

    def lines_of(self, rows: I64) -> I64:
        """Lines of the file that rows came from; `rows` rise."""
        out = np.zeros(rows.size, dtype=np.int64)
        ends = [first for first, _ in self.lines[1:]] + [self.rows]
        for (first, lines), end in zip(self.lines, ends, strict=True):
            a, b = np.searchsorted(rows, (first, end)).tolist()
            mine = rows[a:b] - first
            out[a:b] = mine + lines if isinstance(lines, int) else lines[mine]
        return out

    def numbers(self, position: int) -> F64 | None:
        """A column as numbers, None when it holds something else."""
        column = self.columns[position]
        return column if isinstance(column, np.ndarray) else None


def sample_of(table: Table, size: int = 400) -> list[list[str]]:
    """Columns as written text, from the start, the middle and the end, for deciding what they mean."""
    if table.rows <= 3 * size:
        picked = np.arange(table.rows)
    else:
        middle = table.rows // 2
        picked = np.concatenate(
            (
                np.arange(size),
                np.arange(middle, middle + size // 2),
                np.arange(table.rows - size // 2, table.rows),
            )
        )
    out = []
    for column in table.columns:
        if column is None:
            out.append([""] * picked.size)
        elif isinstance(column, np.ndarray):
            out.append(["" if np.isnan(v) else repr(float(v)) for v in column[picked]])
        else:
            import pyarrow as pa

            taken = column.take(pa.array(picked))
            cells = (taken if pa.types.is_string(taken.type) else taken.cast(pa.string())).to_pylist()
            out.append(["" if c is None else str(c) for c in cells])
    return out
