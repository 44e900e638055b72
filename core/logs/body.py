"""The rows of a text log as columns, at the speed of the disk, and carefully where rows are irregular.

Rules: the file is read in blocks that end at a line end. A block whose rows are all regular goes
through Arrow with fixed column types; any other block is split into lines and its odd lines are set
aside with their numbers.
"""

import re
from collections.abc import Sequence
from typing import Any, Literal

import numpy as np

from core.logs import numbers, stamps
from core.logs.clock import NO_HINTS, from_text
from core.logs.reading import REFUSED_KEPT
from core.logs.sniff import LONGEST_LINE, Form, split
from core.logs.table import I64, Broken, Table
from core.progress import Progress
from core.traces import F64

Kind = Literal["number", "local stamp", "stamp", "text", "skip"]
BLOCK = 1 << 24
#: what Arrow's own reader of time stamps accepts
ISO = re.compile(r"^\d{4}-\d\d-\d\d[ T]\d\d:\d\d(?::\d\d(?:\.\d{1,9})?)?(Z|[+-]\d\d(?::?\d\d)?)?$")
_SHOWN = 300


def kinds_of(sample: Sequence[Sequence[str]], wanted: Sequence[str], decimal: str) -> list[Kind]:
    """How each column is best read.

    Parameters
    ----------
    sample : columns of cells
    wanted : str a column
        ``"number"``, ``"time"``, ``"text"`` or ``""`` for a column that is not needed.
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
            zoned = [m.group(1) is not None for m in matches if m]
            if len(zoned) == len(full) and len(set(zoned)) == 1:
                out.append("stamp" if zoned[0] else "local stamp")
            else:
                out.append("text")
        else:
            out.append("text")
    return out


def _plain_number(cell: str, decimal: str) -> bool:
    return numbers.parse(cell, decimal)[2] in (numbers.FINE, numbers.EMPTY)


def read_body(data: bytes, form: Form, kinds: Sequence[Kind], progress: Progress) -> Table:
    """Read the rows below the headings.

    Parameters
    ----------
    data : bytes
        The whole text, UTF-8.
    form : Form
    kinds : Kind a column
    """
    at, line = _skip_lines(data, form.first_line), form.first_line + 1
    gathered = _Gathered(form, list(kinds))
    start = at
    while at < len(data):
        stop = _block_end(data, at)
        gathered.block(memoryview(data)[at:stop], line)
        line += gathered.lines_in_block
        at = stop
        progress((at - start) / max(1, len(data) - start), "reading rows")
    return gathered.table()


def _skip_lines(data: bytes, count: int) -> int:
    at = 0
    for _ in range(count):
        at = data.find(b"\n", at) + 1
        if at == 0:
            return len(data)
    return at


def _block_end(data: bytes, at: int) -> int:
    if at + BLOCK >= len(data):
        return len(data)
    stop = data.rfind(b"\n", at, at + BLOCK)
    if stop < 0:
        stop = data.find(b"\n", at + BLOCK)
    return len(data) if stop < 0 else stop + 1


class _Gathered:
    """Columns growing block by block."""

    def __init__(self, form: Form, kinds: list[Kind]) -> None:
        self.form = form
        self.kinds = kinds
        self.columns: list[list[Any]] = [[] for _ in kinds]
        self.rows = 0
        self.lines: list[tuple[int, int | I64]] = []
        self.wrong: dict[int, list[I64]] = {}
        self.units: dict[int, str] = {}
        self.offsets: dict[int, float] = {}
        self.broken: list[Broken] = []
        self.broken_count = 0
        self.repeated = 0
        self.lines_in_block = 0
        self.heading = None if form.header_line is None else tuple(form.names)

    def block(self, view: memoryview, line: int) -> None:
        block = np.frombuffer(view, dtype=np.uint8)
        self.lines_in_block = int(np.count_nonzero(block == 10)) + (not block.size or block[-1] != 10)
        table = None
        if self.form.delimiter != " ":
            table = self._arrow(view, self.kinds)
            if table is not None and table.num_rows != self.lines_in_block:
                table = None
        if table is not None:
            self.lines.append((self.rows, line))
            self._take(table, self.kinds)
        else:
            self._carefully(bytes(view), line)

    def _arrow(self, view: Any, kinds: Sequence[Kind], delimiter: str | None = None) -> Any:
        """The block as an Arrow table, None where it does not fit the column types."""
        import pyarrow as pa
        from pyarrow import csv

        types = {
            "number": pa.float64(), "text": pa.string(), "stamp": pa.timestamp("us", "UTC"),
            "local stamp": pa.timestamp("us"), "skip": pa.string(),
        }  # fmt: skip
        names = [f"c{i}" for i in range(len(kinds))]
        wanted = [n for n, k in zip(names, kinds, strict=True) if k != "skip"]
        try:
            return csv.read_csv(
                pa.BufferReader(pa.py_buffer(view)),
                read_options=csv.ReadOptions(
                    column_names=names, block_size=1 << 22, use_threads=len(view) > 1 << 20
                ),
                parse_options=csv.ParseOptions(delimiter=delimiter or self.form.delimiter),
                convert_options=csv.ConvertOptions(
                    column_types={n: types[k] for n, k in zip(names, kinds, strict=True)},
                    include_columns=wanted,
                    decimal_point=self.form.decimal,
                    null_values=numbers.MISSING_SPELLINGS,
                    strings_can_be_null=True,
                ),
            )
        except pa.ArrowInvalid:
            return None

    def _carefully(self, block: bytes, line: int) -> None:
        """Split into lines, set odd ones aside, and read the rest as text."""
        delimiter = self.form.delimiter
        sign = delimiter.encode()
        width = len(self.kinds)
        kept: list[bytes] = []
        kept_lines: list[int] = []
        raw = block.split(b"\n")
        if raw and not raw[-1]:
            raw.pop()
        for i, text in enumerate(raw):
            text = text.rstrip(b"\r")
            if not text.strip():
                continue
            if len(text) > LONGEST_LINE:
                self._break(line + i, text, "row.too_long", bytes=len(text))
                continue
            if delimiter == " ":
                cells = text.split()
                count = len(cells)
                text = b"\t".join(cells)
            elif b'"' in text:
                cells_text = split(text.decode("utf-8", "replace"), delimiter)
                count = len(cells_text)
                text = sign.join(_quoted(c, delimiter) for c in cells_text)
            else:
                count = text.count(sign) + 1
            if count == width + 1 and text.endswith(sign):
                text, count = text[:-1], width
            if count != width:
                self._break(line + i, text, "row.cells", cells=count, usual=width)
                continue
            if self.heading is not None and self._is_heading(text, "\t" if delimiter == " " else delimiter):
                self.repeated += 1
                continue
            kept.append(text)
            kept_lines.append(line + i)
        if not kept:
            return
        sign_now = "\t" if delimiter == " " else delimiter
        body = b"\n".join(kept) + b"\n"
        table = self._arrow(body, self.kinds, sign_now)
        kinds: Sequence[Kind] = self.kinds
        if table is None or table.num_rows != len(kept):
            kinds = ["skip" if k == "skip" else "text" for k in self.kinds]
            table = self._arrow(body, kinds, sign_now)
        if table is None or table.num_rows != len(kept):
            for number, text in zip(kept_lines, kept, strict=True):
                self._break(number, text, "row.unreadable")
            return
        self.lines.append((self.rows, np.array(kept_lines, dtype=np.int64)))
        self._take(table, kinds)

    def _is_heading(self, text: bytes, delimiter: str) -> bool:
        assert self.heading is not None
        first = self.heading[0].split(" [")[0]
        if not text[:200].decode("utf-8", "replace").lstrip('"# ').startswith(first[:20]):
            return False
        cells = [c.strip('"') for c in split(text.decode("utf-8", "replace"), delimiter)]
        return (
            sum(h == c or h.startswith(c + " [") for h, c in zip(self.heading, cells, strict=False))
            >= len(cells) / 2
        )

    def _break(self, line: int, text: bytes, code: str, **facts: object) -> None:
        self.broken_count += 1
        if len(self.broken) < REFUSED_KEPT:
            shown = text[:_SHOWN].decode("utf-8", "replace")
            self.broken.append(Broken(line, shown, code, tuple(sorted(facts.items()))))

    def _take(self, table: Any, kinds: Sequence[Kind]) -> None:
        """Append an Arrow table whose columns are read as `kinds`; bring text back to what was wished."""
        place = 0
        for i, (kind, wish) in enumerate(zip(kinds, self.kinds, strict=True)):
            if kind == "skip":
                continue
            column = table.column(place)
            place += 1
            if wish == "number":
                self.columns[i].append(self._numbers(i, column, kind))
            elif wish in ("stamp", "local stamp"):
                self.columns[i].append(self._seconds(i, column, kind, wish))
            else:
                self.columns[i].append(column)
        self.rows += table.num_rows

    def _numbers(self, i: int, column: Any, kind: Kind) -> F64:
        if kind == "number":
            values: F64 = column.to_numpy()
            infinite = np.flatnonzero(np.isinf(values)) if values.size and np.isinf(values.sum()) else None
            if infinite is not None and infinite.size:
                values = np.where(np.isinf(values), np.nan, values)
                self.wrong.setdefault(i, []).append(infinite + self.rows)
            return values
        parsed = numbers.parse_column(column, self.form.decimal)
        wrong = np.flatnonzero(parsed.verdicts >= numbers.INFINITE)
        if wrong.size:
            self.wrong.setdefault(i, []).append(wrong + self.rows)
        if parsed.units:
            self.units.setdefault(i, parsed.units[0][0])
        return parsed.values

    def _seconds(self, i: int, column: Any, kind: Kind, wish: Kind) -> F64:
        if kind == "text":
            clocked = from_text(column, NO_HINTS)
            self.offsets.setdefault(i, clocked.offset_s)
            return clocked.seconds
        import pyarrow as pa

        whole = column.cast(pa.int64())
        if whole.null_count:
            values: F64 = whole.to_numpy().astype(np.float64)
            return values / 1e6
        out = np.empty(len(whole))
        at = 0
        for chunk in whole.chunks:
            np.divide(chunk.to_numpy(), 1e6, out=out[at : at + len(chunk)])
            at += len(chunk)
        return out

    def table(self) -> Table:
        import pyarrow as pa

        columns: list[Any] = []
        for kind, parts in zip(self.kinds, self.columns, strict=True):
            if kind == "skip" or not parts:
                columns.append(None)
            elif kind == "text":
                columns.append(pa.chunked_array([c for p in parts for c in p.chunks], type=pa.string()))
            else:
                columns.append(parts[0] if len(parts) == 1 else np.concatenate(parts))
            parts.clear()
        return Table(
            self.form.names, tuple(columns), self.rows, tuple(self.lines),
            {i: np.concatenate(w) for i, w in self.wrong.items()}, self.units, tuple(self.broken),
            self.broken_count, self.repeated, self.offsets,
        )  # fmt: skip


def _quoted(cell: str, delimiter: str) -> bytes:
    if delimiter in cell or '"' in cell:
        cell = '"' + cell.replace('"', '""') + '"'
    return cell.encode()


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
        shape = stamps.understand(re.sub(r"\d", "0", cell))
        if shape is not None:
            return None
    return None
