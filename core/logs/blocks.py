"""Logs that stand side by side in one table, each with its own time: one for each machine.

Rules: the columns are cut where another time begins (or ends) with a power or energy of its own. Times that
run alike in both are one clock written twice, and cut nothing. Each block is then a table by itself.
"""

import re
from collections import Counter
from collections.abc import Sequence

import numpy as np
from attrs import evolve, frozen

from core.logs import clock, numbers, roles
from core.logs.clock import NO_HINTS
from core.logs.roles import TIMES, Role, Roles
from core.logs.table import Table
from core.study import Choices
from core.traces import F64

_LOADS = ("power", "energy", "apparent power")
#: share of the rows in which two times must be equally far apart to be one clock
_ALIKE = 0.9
#: and how far apart that may be, from row to row [s]
_APART_S = 1.5


@frozen
class Block:
    """Columns from `start` to before `stop`; the positions in `told` count from `start`.

    ``device`` is what the headings call the machine; where they call it nothing it says which columns hold
    it, and `is_named` is false. ``time_kind`` is how its times are read from a text, and ``offset_s`` the
    offset from UTC stated in the first of them.
    """

    start: int
    stop: int
    told: Roles
    device: str
    is_named: bool = True
    time_kind: str = ""
    offset_s: float | None = None

    @property
    def columns(self) -> range:
        """Positions of its columns in the whole table."""
        return range(self.start, self.stop)


def find(
    names: Sequence[str],
    sample: Sequence[Sequence[str]],
    decimal: str,
    choices: Choices,
    above: Sequence[str] = (),
) -> tuple[Block, ...]:
    """The logs that stand side by side; empty where the table holds one.

    Parameters
    ----------
    names : sequence of str
        Headings.
    sample : sequence of sequence of str
        Columns of cells.
    decimal : {".", ","}
    choices : Choices
    above : sequence of str
        Cells of a line above the headings, which may name the machines; empty where there is none.
    """
    told = roles.proposed(names, sample, decimal, choices)
    spans = _spans(told)
    if len(spans) < 2 or not _are_apart(spans, told, sample):
        return ()
    found: list[tuple[int, int, Roles]] = []
    for start, stop in spans:
        own = tuple((p - start, q, u) for p, q, u in choices.columns if start <= p < stop)
        mine = roles.assign(names[start:stop], sample[start:stop], decimal, evolve(choices, columns=own))
        if mine is None or not mine.has_load():
            return ()
        found.append((start, stop, mine))
    called = _called(found, above)
    return tuple(
        Block(start, stop, mine, name or f"columns {start + 1} to {stop}", bool(name))
        for (start, stop, mine), name in zip(found, called, strict=True)
    )


def cut(table: Table, block: Block, is_first: bool) -> Table:
    """One block as a table of the rows in which it holds anything.

    Lines that could not be taken apart are told with the first block alone, or they would count twice.
    """
    import pyarrow as pa

    columns = [table.columns[p] for p in block.columns]
    filled = np.zeros(table.rows, dtype=bool)
    for position, column in zip(block.columns, columns, strict=True):
        if column is None:
            continue
        if isinstance(column, np.ndarray):
            filled |= np.isfinite(column)
        else:
            filled |= np.asarray(_is_filled(column))
        # a cell that could not be read is there all the same
        filled[table.wrong.get(position, np.zeros(0, np.int64))] = True
    rows = np.flatnonzero(filled)
    place = np.cumsum(filled) - 1

    def moved(position: int) -> int:
        return position - block.start

    kept = tuple(
        c if c is None else c[rows] if isinstance(c, np.ndarray) else c.take(pa.array(rows)) for c in columns
    )
    inside = set(block.columns)
    return evolve(
        table,
        names=tuple(table.names[block.start : block.stop]),
        columns=kept,
        rows=int(rows.size),
        lines=((0, table.lines_of(rows)),),
        wrong={moved(p): place[w] for p, w in table.wrong.items() if p in inside},
        units={moved(p): u for p, u in table.units.items() if p in inside},
        broken=table.broken if is_first else (),
        broken_count=table.broken_count if is_first else 0,
        offsets={moved(p): s for p, s in table.offsets.items() if p in inside},
        local=frozenset(moved(p) for p in table.local if p in inside),
    )


def _is_filled(column: object) -> F64:
    import pyarrow as pa
    import pyarrow.compute as pc

    there = pc.is_valid(column)
    if pa.types.is_string(column.type):  # type: ignore[attr-defined]
        there = pc.and_(
            there, pc.fill_null(pc.greater(pc.utf8_length(pc.utf8_trim_whitespace(column)), 0), False)
        )
    filled: F64 = (
        there.to_numpy() if isinstance(there, pa.ChunkedArray) else there.to_numpy(zero_copy_only=False)
    )
    return filled


def _spans(told: Sequence[Role]) -> list[tuple[int, int]]:
    """Where the columns can be cut so that each part has a time and a load."""
    kinds = ["time" if _is_time(r) else "load" if _is_load(r, told) else "" for r in told]
    marks = [k for k in kinds if k]
    if not marks or "load" not in marks:
        return []
    if marks[0] == "load" and marks[-1] == "time":  # each time stands behind its power
        back = [(len(kinds) - stop, len(kinds) - start) for start, stop in _forward(kinds[::-1])]
        return back[::-1]
    return _forward(kinds)


def _forward(kinds: Sequence[str]) -> list[tuple[int, int]]:
    starts = [0]
    loaded = False
    for i, kind in enumerate(kinds):
        if kind == "load":
            loaded = True
        elif kind == "time" and loaded and "load" in kinds[i:]:
            starts.append(i)
            loaded = False
    return list(zip(starts, [*starts[1:], len(kinds)], strict=True))


def _is_time(role: Role) -> bool:
    is_stamp = role.kind == "stamp" and role.quantity != "other"
    return is_stamp or (role.quantity in TIMES and role.kind == "number")


def _is_load(role: Role, told: Sequence[Role]) -> bool:
    """Whether it holds a power or an energy; where no heading speaks of one, any number may."""
    if any(r.quantity in _LOADS for r in told):
        return role.quantity in _LOADS
    return role.kind == "number" and role.quantity in ("", "value")


def _are_apart(
    spans: Sequence[tuple[int, int]], told: Sequence[Role], sample: Sequence[Sequence[str]]
) -> bool:
    """Whether every block has a load like those of the first, and a clock of its own."""
    loads = [{r.quantity for r in told[a:b] if _is_load(r, told)} for a, b in spans]
    if any(not mine & loads[0] for mine in loads[1:]):
        return False
    first, times = told[spans[0][0] : spans[0][1]], []
    for a, b in spans:
        mine = [r.position for r in told[a:b] if _is_time(r)]
        if not mine:
            return False
        times.append(mine)
    headings = [tuple(sorted(r.name.casefold() for r in told[a:b] if r.quantity in _LOADS)) for a, b in spans]
    if len(set(headings)) == 1 and any(not r.name.startswith("column ") for r in first):
        return True  # the same headings again cannot be two quantities of one machine
    return all(_has_own_clock(times[0], other, sample) for other in times[1:])


def _has_own_clock(one: Sequence[int], other: Sequence[int], sample: Sequence[Sequence[str]]) -> bool:
    a, is_stamp_a = _seconds([sample[p] for p in one])
    b, is_stamp_b = _seconds([sample[p] for p in other])
    both = np.isfinite(a) & np.isfinite(b)
    either = np.isfinite(a) | np.isfinite(b)
    if not both.any() or both.sum() < _ALIKE * either.sum():
        return True
    apart = (b - a)[both]
    middle = float(np.median(apart))
    runs_alike = float((np.abs(apart - middle) <= _APART_S).mean()) >= _ALIKE
    if not runs_alike:
        return True
    # elapsed time beside a stamp, or the same moment in another zone, is the same clock
    quarters = abs(middle) / 900.0
    is_other_zone = abs(quarters - round(quarters)) < 1e-6 and abs(middle) <= 14 * 3600.0
    return is_stamp_a == is_stamp_b and not is_other_zone


def _seconds(columns: Sequence[Sequence[str]]) -> tuple[F64, bool]:
    """Times of the sampled rows, and whether they are written as stamps. [s, or the unit of plain numbers]"""
    import pyarrow as pa

    as_numbers = np.array([numbers.parse(c, "." if "," not in c else ",")[0] for c in columns[0]])
    if np.isfinite(as_numbers).any() and len(columns) == 1:
        return as_numbers, False
    texts = [" ".join(cells).strip() or None for cells in zip(*columns[:2], strict=True)]
    return clock.from_text(pa.array(texts, type=pa.string()), NO_HINTS).seconds, True


def _called(found: Sequence[tuple[int, int, Roles]], above: Sequence[str]) -> list[str]:
    """What the line above or the headings call each machine, "" for all where that tells them not apart."""
    titles = []
    for start, stop, _ in found:
        words = [c.strip() for c in above[start:stop] if c.strip()]
        titles.append(words[0] if len(words) == 1 else "")
    loads = [
        next((r for r in told.all if r.quantity in _LOADS), told.all[told.time[0]]) for _, _, told in found
    ]
    rests = [r.meaning.rest for r in loads]
    for names in (titles, rests, _told_apart([r.name for r in loads])):
        if all(names) and max(Counter(n.casefold() for n in names).values()) == 1:
            return list(names)
    return [""] * len(found)


def _told_apart(headings: Sequence[str]) -> list[str]:
    """The words of each heading that no other has, as "A" and "B" of "power A" and "power B"."""
    words = [re.findall(r"[^\W_]+", h) for h in headings if not re.fullmatch(r"column \d+", h)]
    if len(words) < len(headings):
        return [""] * len(headings)
    seen = Counter(w.casefold() for mine in words for w in {x.casefold(): x for x in mine}.values())
    return [" ".join(w for w in mine if seen[w.casefold()] == 1) for mine in words]
