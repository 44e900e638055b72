"""The rows of a text log as columns, at the speed of the disk, and carefully where rows are irregular.

Rules: the text comes in blocks that end at a line end. A block whose rows are all regular goes through Arrow
with fixed column types; any other is split into lines and its odd lines are set aside with their numbers.
Numbers and times go straight into arrays that are long enough for the whole file.
"""

import re
from collections import deque
from collections.abc import Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from itertools import chain, repeat
from typing import Any

import numpy as np
from attrs import evolve

from core.language import tr
from core.logs import by_arrow, clock, numbers, stamps
from core.logs.by_arrow import Kind
from core.logs.careful import Rows, regular_rows
from core.logs.reading import REFUSED_KEPT
from core.logs.sniff import Form
from core.logs.source import AHEAD, PARSERS, Source
from core.logs.table import I64, Broken, Table
from core.progress import Progress
from core.traces import F64

#: what Arrow's own reader of time stamps accepts
ISO = re.compile(r"^\d{4}-\d\d-\d\d[ T]\d\d:\d\d(?::\d\d(?:\.\d{1,9})?)?(Z|[+-]\d\d(?::?\d\d)?)?$")
#: more offsets from UTC than this are none, but the ends of spans of time
_MOST_OFFSETS = 4
_SECONDS = ("number", "swapped number", "local stamp", "stamp", "dated text")


class NotPlain(Exception):
    """A block is not the plain text that the first lines promised; nothing of it has been used."""


def kinds_of(
    sample: Sequence[Sequence[str]],
    wanted: Sequence[str],
    decimal: str,
    swapped: frozenset[int] = frozenset(),
) -> list[Kind]:
    """How each column is best read.

    Parameters
    ----------
    sample : columns of cells
    wanted : str a column
        ``"number"``, ``"time"``, ``"text"`` or ``""`` for a column that is not needed.
    decimal : {".", ","}
        Sign in the sample.
    swapped : frozenset of int
        Columns that have the other sign in the file.
    """
    out: list[Kind] = []
    for cells, want in zip(sample, wanted, strict=True):
        full = [c.strip() for c in cells if c.strip()]
        if not want:
            out.append("skip")
        elif want == "number" or (want == "time" and full and all(_plain_number(c, decimal) for c in full)):
            out.append("number")
        elif want == "time" and full:
            matches = [ISO.match(c) for c in full]
            ends = [m.group(1) for m in matches if m]
            has_one_form = len(ends) == len(full) and len({e is None for e in ends}) == 1
            if has_one_form and len(set(ends)) <= _MOST_OFFSETS:
                out.append("local stamp" if ends[0] is None else "stamp")
            else:
                out.append("text")
        else:
            out.append("text")
    return ["swapped number" if k == "number" and i in swapped else k for i, k in enumerate(out)]


def _plain_number(cell: str, decimal: str) -> bool:
    return numbers.parse(cell, decimal)[2] in (numbers.FINE, numbers.EMPTY)


def read_body(
    source: Source,
    form: Form,
    kinds: Sequence[Kind],
    progress: Progress,
    hints: clock.Hints = clock.NO_HINTS,
    lines: int | None = None,
) -> Table:
    """Read the rows below the headings.

    Parameters
    ----------
    source : Source
        The text, UTF-8.
    form : Form
    kinds : Kind a column
    progress : Progress
    hints : Hints
        For columns of dated text: the decided order of day and month.
    lines : int, optional
        The source is only what follows so many lines; else it is the whole text.

    Raises
    ------
    NotPlain
        If a block is no UTF-8 text without zero bytes.
    """
    at = _skip_lines(source.piece(0, 1 << 20), form.first_line) if lines is None else 0
    gathered = _Gathered(form, list(kinds), source.size - at, hints)
    done = 0
    waiting: deque[tuple[bytes | memoryview, Future[Any]]] = deque()
    blocks = source.blocks(at)
    with ThreadPoolExecutor(PARSERS, "rows") as pool:
        # blocks are parsed beside each other, each by one thread, and taken in their order
        for block in chain(blocks, repeat(None)):
            if block is not None:
                waiting.append((block, pool.submit(gathered.parsed, block)))
                if len(waiting) <= AHEAD:
                    continue
            if not waiting:
                break
            taken, parsing = waiting.popleft()
            gathered.take(taken, parsing.result())
            done += len(taken)
            progress(done / max(1, source.size - at), tr("reading rows"))
    return gathered.table(form.first_line + 1 if lines is None else lines + 1)


def _skip_lines(head: bytes, count: int) -> int:
    at = 0
    for _ in range(count):
        at = head.find(b"\n", at) + 1
        if at == 0:
            return len(head)
    return at


class _Gathered:
    """Columns growing block by block."""

    def __init__(self, form: Form, kinds: list[Kind], size: int, hints: clock.Hints) -> None:
        self.form = form
        self.kinds = kinds
        self.size = max(1, size)
        self.hints = hints
        self.arrays: dict[int, F64] = {}
        self.texts: dict[int, list[Any]] = {i: [] for i, k in enumerate(kinds) if k == "text"}
        self.rows = 0
        self.seen = 0
        self.blocks: list[tuple[int, int | I64, int]] = []
        self.wrong: dict[int, list[I64]] = {}
        self.units: dict[int, str] = {}
        self.offsets: dict[int, float] = {}
        self.local: set[int] = set()
        self.broken: list[Broken] = []
        self.broken_count = 0
        self.repeated = 0
        self.is_over = False
        #: how blocks are tried, the quickest first; what has failed once is not tried again
        self.ways = by_arrow.ways(kinds)

    def parsed(self, block: bytes | memoryview) -> Any:
        """The block as an Arrow table, None where its rows have to be looked at one by one."""
        if self.form.delimiter == " " or self.form.is_wrapped:
            return None
        for way in self.ways:
            table = by_arrow.read(block, self.form, self.kinds, way)
            if table is not None:
                return table
            if len(self.ways) > 1 and way is self.ways[0]:  # else another thread has gone on already
                self.ways = self.ways[1:]
        return None

    def take(self, block: bytes | memoryview, table: Any) -> None:
        """Append a block with its table."""
        self.seen += len(block)
        if self.is_over:
            table = None
        if table is not None and not min((c.null_count for c in table.columns), default=0):
            self.blocks.append((self.rows, table.num_rows, len(block)))
            self._take(table, self.kinds)
            return
        raw = bytes(block)
        if b"\0" in raw or not _is_utf8(raw):
            raise NotPlain
        self._carefully(raw)

    def _carefully(self, block: bytes) -> None:
        """Split into lines, set odd ones aside, and read the rest as text."""
        rows = regular_rows(block, self.form, self.is_over)
        self.is_over = rows.is_over
        self.repeated += rows.repeated
        sign = "\t" if self.form.delimiter == " " else self.form.delimiter
        lines: list[int] = []
        if rows.kept:
            body = b"\n".join(rows.kept) + b"\n"
            kinds: Sequence[Kind] = self.kinds
            table = by_arrow.read(body, self.form, kinds, delimiter=sign)
            if table is None or table.num_rows != len(rows.kept):
                kinds = ["skip" if k == "skip" else "text" for k in self.kinds]
                table = by_arrow.read(body, self.form, kinds, delimiter=sign)
            if table is None or table.num_rows != len(rows.kept):
                broken = [Broken(n, t[:300].decode("utf-8", "replace"), "row.unreadable")
                          for n, t in zip(rows.lines, rows.kept, strict=True)]  # fmt: skip
                rows = Rows([], [], rows.broken + broken, rows.repeated, rows.total)
            else:
                lines = rows.lines
        start = len(self.blocks)
        self.blocks.append((self.rows, np.array(lines, dtype=np.int64), rows.total))
        self.broken_count += len(rows.broken)
        room = max(0, REFUSED_KEPT - len(self.broken))
        self.broken += [evolve(b, block=start) for b in rows.broken[:room]]
        if lines:
            self._take(table, kinds)

    def _take(self, table: Any, kinds: Sequence[Kind]) -> None:
        """Append an Arrow table whose columns are read as `kinds`; bring text back to what was wished."""
        count = table.num_rows
        place = 0
        for i, (kind, wish) in enumerate(zip(kinds, self.kinds, strict=True)):
            if kind == "skip":
                continue
            column = table.column(place)
            place += 1
            if wish == "text":
                self.texts[i].append(column)
                continue
            out = self._room(i, count)
            if wish in ("number", "swapped number"):
                self._numbers(i, column, kind, out)
            elif kind == "text" or wish == "dated text":
                clocked = clock.from_text(column, self.hints)
                out[:] = clocked.seconds
                self.offsets.setdefault(i, clocked.offset_s)
                if clocked.kind != "absolute":
                    self.local.add(i)
            else:
                _seconds(column, out)
        self.rows += count

    def _room(self, i: int, count: int) -> F64:
        """Space for `count` more values of a column."""
        array = self.arrays.get(i)
        need = self.rows + count
        if array is None or array.size < need:
            guess = int(need * max(1.0, 1.02 * self.size / max(1, self.seen))) + 16
            grown = np.empty(max(need, guess))
            if array is not None:
                grown[: self.rows] = array[: self.rows]
            self.arrays[i] = array = grown
        return array[self.rows : need]

    def _numbers(self, i: int, column: Any, kind: Kind, out: F64) -> None:
        if kind == "number":
            _copy(column, out)
            if not np.isfinite(out.sum()):
                infinite = np.flatnonzero(np.isinf(out))
                if infinite.size:
                    out[infinite] = np.nan
                    self.wrong.setdefault(i, []).append(infinite + self.rows)
            return
        parsed = numbers.parse_column(column, self.form.decimal_of(i))
        wrong = np.flatnonzero(parsed.verdicts >= numbers.INFINITE)
        if wrong.size:
            self.wrong.setdefault(i, []).append(wrong + self.rows)
        if parsed.units:
            self.units.setdefault(i, parsed.units[0][0])
        out[:] = parsed.values

    def table(self, first_line: int) -> Table:
        import pyarrow as pa

        columns: list[Any] = []
        for i, kind in enumerate(self.kinds):
            if kind in _SECONDS:
                columns.append(self.arrays.pop(i)[: self.rows] if i in self.arrays else np.zeros(0))
            elif kind == "text":
                chunks = [c for column in self.texts[i] for c in column.chunks]
                columns.append(pa.chunked_array(chunks, type=pa.string()))
            else:
                columns.append(None)
        lines: list[tuple[int, int | I64]] = []
        starts = []
        line = first_line
        for first, rows, total in self.blocks:
            starts.append(line)
            if isinstance(rows, int):
                lines.append((first, line))
                line += rows
            else:
                lines.append((first, rows + line))
                line += total
        broken = tuple(evolve(b, line=b.line + starts[b.block]) for b in self.broken)
        return Table(
            self.form.names, tuple(columns), self.rows, tuple(lines),
            {i: np.concatenate(w) for i, w in self.wrong.items()}, self.units, broken,
            self.broken_count, self.repeated, self.offsets, frozenset(self.local), self.is_over,
        )  # fmt: skip


def _is_utf8(block: bytes) -> bool:
    if block.isascii():
        return True
    try:
        block.decode("utf-8")
    except UnicodeDecodeError:
        return False
    return True


def _copy(column: Any, out: F64) -> None:
    """Copy an Arrow column of numbers, missing ones as NaN."""
    at = 0
    for chunk in column.chunks:
        out[at : at + len(chunk)] = chunk.to_numpy(zero_copy_only=False)
        at += len(chunk)


def _seconds(column: Any, out: F64) -> None:
    """Copy an Arrow column of stamps in seconds or microseconds as seconds, missing ones as NaN."""
    import pyarrow as pa

    at = 0
    for chunk in column.chunks:
        values = chunk.view(pa.int64()).to_numpy(zero_copy_only=False)
        if column.type.unit == "s":
            out[at : at + len(chunk)] = values
        else:
            np.divide(values, 1e6, out=out[at : at + len(chunk)])
        at += len(chunk)


def first_offset(cells: Sequence[str]) -> float | None:
    """Offset from UTC stated in the first stamp, None where there is none. [s]"""
    for cell in cells:
        match = ISO.match(cell.strip())
        if match:
            text = match.group(1)
            if text is None:
                return None
            if text == "Z":
                return 0.0
            sign = -1.0 if text[0] == "-" else 1.0
            bare = text[1:].replace(":", "")
            return sign * (int(bare[:2]) * 3600.0 + (int(bare[2:4]) * 60.0 if len(bare) >= 4 else 0.0))
        if stamps.understand(re.sub(r"\d", "0", cell)) is not None:
            return None
    return None
