"""Bytes of a file to readings: container, text or table, columns, machines, traces.

Rules: pure; bad input becomes a problem, never an exception; only `Cancelled` passes through.
"""

import hashlib
from collections.abc import Callable
from pathlib import Path, PurePath
from typing import TypeVar

import numpy as np
from attrs import evolve, frozen

from core.logs import body, clock, containers, files, machines, number_clock, roles, series, sniff, text
from core.logs.clock import NO_HINTS, Clocked, Hints
from core.logs.reading import NO_CHOICES, Column, FileReading, Reading, first_rows
from core.logs.refusals import no_time_usable, refused_rows
from core.logs.roles import Roles
from core.logs.source import InMemory, OnDisk, Source
from core.logs.table import Table, sample_of
from core.logs.words import zone_named_in
from core.problems import Problem, Severity
from core.progress import Cancelled, Progress, part, silent
from core.study import Choices

_LATER_BYTES = 6000
#: larger files are read block by block when they are plain text [bytes]
STREAMED = 1 << 23


@frozen
class _Read:
    """A table with what is known about how it was written; `source` is None where no text is behind it."""

    table: Table
    roles: Roles
    decimal: str
    encoding: str | None = None
    delimiter: str | None = None
    header_row: int | None = None
    hints: Hints = NO_HINTS
    stated_offset_s: float | None = None
    time_kind: str = ""
    source: Source | None = None
    reasons: tuple[tuple[str, str], ...] = ()
    problems: tuple[Problem, ...] = ()
    first_rows: tuple[tuple[str, ...], ...] = ()


def read_bytes(
    data: bytes, name: str, choices: Choices = NO_CHOICES, progress: Progress = silent
) -> FileReading:
    """Read a log from the bytes of its file.

    Parameters
    ----------
    data : bytes
    name : str
        The file as the user named it; its ending decides nothing that the bytes can tell.
    choices : Choices
        What the user decided.
    progress : Progress
        Called for every block of 16 MB at least; may raise `Cancelled`.

    Returns
    -------
    FileReading
        With no readings and an ERROR among its problems when the file cannot be used.
    """
    digest = hashlib.sha256(data).hexdigest()
    empty = FileReading(name, digest, len(data))
    if not data:
        return evolve(empty, problems=(Problem("log.empty", Severity.ERROR, name),))
    return _guarded(lambda: _read(data, name, digest, choices, progress), empty)


def read_path(
    path: Path, choices: Choices = NO_CHOICES, progress: Progress = silent, shown_name: str | None = None
) -> FileReading:
    """Read a log from disk; `shown_name` is the file as the user named it.

    A large plain text is read block by block and never held as a whole.

    Raises
    ------
    Cancelled
        When the progress callable does.
    """
    name = shown_name or str(path)
    wrong = files.check(path, name)
    if wrong is not None:
        return FileReading(name, "", 0, problems=(wrong,))
    if path.stat().st_size > STREAMED:
        streamed = _guarded(lambda: _stream(path, name, choices, progress), FileReading(name, "", 0))
        if streamed is not None:
            return streamed
    loaded = files.load(path, name)
    if isinstance(loaded, Problem):
        return FileReading(name, "", 0, problems=(loaded,))
    return read_bytes(loaded, name, choices, progress)


_Result = TypeVar("_Result", FileReading, FileReading | None)


def _guarded(work: Callable[[], _Result], empty: FileReading) -> _Result | FileReading:
    """Do `work`; whatever goes wrong in it becomes a problem of the file."""
    try:
        # whatever numbers a file holds, they warn nobody: what is not finite afterwards is set aside
        with np.errstate(over="ignore", invalid="ignore", divide="ignore"):
            return work()
    except Cancelled:
        raise
    except MemoryError:
        problem = Problem("log.too_large", Severity.ERROR, empty.file, facts={"bytes": empty.size})
    except OSError as error:
        facts: dict[str, object] = {"error": error.strerror or str(error)}
        problem = Problem("file.failed", Severity.ERROR, empty.file, facts=facts)
    except Exception as error:  # noqa: BLE001  the last net under unforeseen bytes: a problem, never a traceback
        facts = {"error": f"{type(error).__name__}: {error}"[:200]}
        problem = Problem("log.unforeseen", Severity.ERROR, empty.file, facts=facts)
    return evolve(empty, problems=(problem,))


def _read(data: bytes, name: str, digest: str, choices: Choices, progress: Progress) -> FileReading:
    progress(0.0, "looking at the file")
    opened = containers.open_container(data, name)
    if isinstance(opened, Problem):
        return FileReading(name, digest, len(data), problems=(opened,))
    readings: list[Reading] = []
    problems: list[Problem] = []
    for i, item in enumerate(opened):
        share = part(progress, i / len(opened), (i + 1) / len(opened))
        if isinstance(item.content, Table):
            read = _from_table(item, name, choices)
        else:
            read = _from_bytes(item.content, item.problems, name, choices, share)
        if isinstance(read, Problem):
            problems.append(read)
            continue
        key = f"{digest}:{item.label}"
        found, wrong = _machines(read, item.label, name, key, choices, part(share, 0.9, 1.0))
        readings += found
        problems += wrong
    return _file_reading(name, digest, len(data), readings, problems, progress)


def _file_reading(
    name: str, digest: str, size: int, readings: list[Reading], problems: list[Problem], progress: Progress
) -> FileReading:
    if readings:
        problems = [
            evolve(p, severity=Severity.CAUTION) if p.severity is Severity.ERROR else p for p in problems
        ]
    progress(1.0, "read")
    return FileReading(name, digest, size, tuple(readings), tuple(problems))


def _stream(path: Path, name: str, choices: Choices, progress: Progress) -> FileReading | None:
    """Read a large plain text from disk; None when it has to be read as a whole."""
    source = OnDisk(path)
    head = source.piece(0, text.HEAD)
    if not text.is_plain(head) or not containers.is_text(head) or choices.encoding not in (None, "utf-8"):
        return None
    why = "valid UTF-8 in every block" if not head.isascii() else "only plain characters or valid UTF-8"
    try:
        read = _from_source(source, "utf-8", why, (), name, choices, progress)
        digest = source.digest()
    except body.NotPlain:
        return None
    finally:
        source.close()
    if isinstance(read, Problem):
        return FileReading(name, digest, source.size, problems=(read,))
    if not source.is_unchanged():
        changed = Problem("file.changed", Severity.CAUTION, name)
        read = evolve(read, problems=(*read.problems, changed))
    readings, problems = _machines(read, "", name, f"{digest}:", choices, part(progress, 0.9, 1.0))
    return _file_reading(name, digest, source.size, readings, problems, progress)


def _from_bytes(
    data: bytes, problems: tuple[Problem, ...], name: str, choices: Choices, progress: Progress
) -> _Read | Problem:
    what = text.foreign(data)
    if what:
        return Problem("log.not_a_log", Severity.ERROR, name, facts={"what": what})
    decoded = text.decode(data, name, choices.encoding)
    source = InMemory(decoded.data)
    return _from_source(
        source, decoded.encoding, decoded.reason, (*problems, *decoded.problems), name, choices, progress
    )


def _from_source(
    source: Source,
    encoding: str,
    why: str,
    problems: tuple[Problem, ...],
    name: str,
    choices: Choices,
    progress: Progress,
) -> _Read | Problem:
    lines, later = _sample_lines(source)
    if not any(x.strip() for x in lines):
        return Problem("log.empty", Severity.ERROR, name)
    if len(lines) == 1 and source.size > sniff.LONGEST_LINE:
        return Problem("log.line_too_long", Severity.ERROR, name, 1, facts={"bytes": source.size})
    form = sniff.sniff(lines, later, choices)
    if form is None:
        only_words = len([x for x in lines if x.strip()]) <= 2
        code = "log.no_rows" if only_words else "log.no_table"
        return Problem(code, Severity.ERROR, name, 1, facts={"first_line": lines[0][:120]})
    columns = [[row[i] for row in form.sample] for i in range(len(form.names))]
    told = roles.assign(form.names, columns, form.decimal, choices)
    if told is None:
        return _no_time(form.names, name, form.first_line)
    if not told.has_load():
        return _no_load(form.names, name)
    zone = zone_named_in(" ".join([*form.preamble, *(form.names[p] for p in told.time)]))
    hints = _hints(told, name, form.decimal, choices, zone, form.preamble)
    kinds = body.kinds_of(columns, told.wanted(), form.decimal)
    order = None
    if len(told.time) == 1 and kinds[told.time[0]] == "text":
        order = clock.settled_order(columns[told.time[0]], hints)
        if order is not None:
            kinds[told.time[0]] = "dated text"
    block_hints = NO_HINTS if order is None else evolve(NO_HINTS, choices=Choices(date_order=order))
    table = body.read_body(source, form, kinds, part(progress, 0.05, 0.85), block_hints)
    offset = body.first_offset(columns[told.time[0]])
    return _Read(
        table, told, form.decimal, encoding, form.delimiter,
        None if form.header_line is None else form.header_line + 1, hints, offset,
        kinds[told.time[0]], source,
        (("encoding", f"{encoding}: {why}"), *form.reasons, *told.reasons), problems,
        first_rows(form.sample),
    )  # fmt: skip


def _from_table(item: containers.Item, name: str, choices: Choices) -> _Read | Problem:
    table = item.content
    assert isinstance(table, Table)
    if not table.rows:
        return Problem(
            "log.no_rows", Severity.ERROR, name, facts={"first_line": ", ".join(table.names)[:120]}
        )
    cells = sample_of(table)
    told = roles.assign(table.names, cells, ".", choices)
    if told is None:
        return _no_time(table.names, name, 0)
    if not told.has_load():
        return _no_load(table.names, name)
    kinds = body.kinds_of(cells, told.wanted(), ".")
    table, decimal = containers.with_numbers(table, [k == "number" for k in kinds])
    zone = zone_named_in(" ".join(table.names[p] for p in told.time))
    hints = evolve(_hints(told, name, decimal, choices, zone, ()), is_1904=item.is_1904)
    return _Read(
        table, told, decimal, item.encoding, None, item.header_row, hints, None, "", None,
        (*item.reasons, *told.reasons), item.problems, first_rows(zip(*cells, strict=True)),
    )  # fmt: skip


def _hints(
    told: Roles, name: str, decimal: str, choices: Choices, zone: str | None, preamble: tuple[str, ...]
) -> Hints:
    first = told.all[told.time[0]]
    date = clock.date_in(preamble)
    return Hints(name, first.quantity, first.unit, decimal, zone, False, date, first.name, choices)


def _no_time(names: tuple[str, ...], name: str, row: int) -> Problem:
    return Problem("log.no_time", Severity.ERROR, name, row + 1, facts={"columns": ", ".join(names)[:160]})


def _no_load(names: tuple[str, ...], name: str) -> Problem:
    return Problem("log.no_power", Severity.ERROR, name, facts={"columns": ", ".join(names)[:160]})


def _sample_lines(source: Source) -> tuple[list[str], list[str]]:
    """The first lines, and some from the middle and the end."""
    head = source.piece(0, sniff.SAMPLE_BYTES)
    whole = len(head) == source.size
    lines = [x.rstrip("\r") for x in head.decode("utf-8", "replace").split("\n")]
    if not whole and len(lines) > 1:
        lines.pop()
    later: list[str] = []
    if not whole:
        for at in (source.size // 2, max(0, source.size - _LATER_BYTES)):
            piece = source.piece(at, _LATER_BYTES).decode("utf-8", "replace").split("\n")
            later += [x.rstrip("\r") for x in piece[1:-1]]
    elif len(lines) > 2 * sniff.SAMPLE_LINES:
        later = lines[-sniff.SAMPLE_LINES // 2 :]
    return lines[: sniff.SAMPLE_LINES], later


def _machines(
    read: _Read, label: str, name: str, key: str, choices: Choices, progress: Progress
) -> tuple[list[Reading], list[Problem]]:
    clocked = _clock(read)
    raws = machines.sort_out(read.table, read.roles, clocked.seconds, read.decimal)
    refused, count = refused_rows(read.table, read.roles, read.source, clocked.seconds, read.hints.file)
    shared = [*read.problems, *clocked.problems]
    if read.table.repeated_headings:
        facts: dict[str, object] = {"count": read.table.repeated_headings}
        shared.append(Problem("log.repeated_headings", Severity.NOTE, name, facts=facts))
    if count:
        facts = {"count": count, "first": refused[0].row if refused else 0}
        shared.append(
            Problem("log.refused_rows", Severity.CAUTION, name, refused[0].row if refused else None, facts)
        )
    out: list[Reading] = []
    problems: list[Problem] = []
    stem = PurePath(label).stem if label else PurePath(name).stem
    for i, raw in enumerate(raws):
        share = part(progress, i / len(raws), (i + 1) / len(raws))
        made = series.make(raw, clocked, f"{key}:{raw.device or ''}:{choices!r}", name, choices, share)
        if made.trace is None:
            problems += made.problems
            continue
        extra = list(shared) + list(made.problems)
        if made.missing:
            extra.append(Problem("log.missing_values", Severity.NOTE, name, facts={"count": made.missing}))
        reasons = (*read.reasons, ("clock", clocked.reason), ("layout", raw.layout), *made.reasons)
        out.append(
            Reading(
                name, raw.device or stem, raw.device, read.encoding, read.delimiter,
                read.decimal, read.header_row,
                raw.rows_read - made.missing if raw.rows is None else raw.rows_read,
                count, _columns(read, raw, made), made.trace,
                made.by_power_wh, made.by_counter_wh, made.used_wh,
                refused, tuple(dict.fromkeys(reasons)), tuple(extra), choices, read.first_rows,
            )
        )  # fmt: skip
    if not out and refused and not np.isfinite(clocked.seconds).any():
        problems = [no_time_usable(refused, name)]
    elif not out and not problems:
        problems.append(_no_load(read.table.names, name))
    if not out and shared:
        problems += shared
    return out, problems


def _clock(read: _Read) -> Clocked:
    position = read.roles.time[0]
    column = read.table.columns[position]
    if len(read.roles.time) == 2:
        import pyarrow.compute as pc

        second = read.table.columns[read.roles.time[1]]
        both = pc.binary_join_element_wise(_as_text(column), _as_text(second), " ")
        return clock.from_text(both, read.hints)
    if isinstance(column, np.ndarray):
        is_local = read.time_kind == "local stamp" or position in read.table.local
        if read.time_kind in ("stamp", "local stamp", "dated text"):
            column = clock.sane(column)
        if is_local:
            why = "date and time of no stated zone"
            return clock.zoned(Clocked(column, "local", why, clock.tick_of(column)), read.hints)
        if read.time_kind in ("stamp", "dated text"):
            offset = (
                read.table.offsets.get(position, 0.0)
                if read.stated_offset_s is None
                else read.stated_offset_s
            )
            why = "date and time with their offset from UTC"
            return Clocked(column, "absolute", why, clock.tick_of(column), offset)
        return number_clock.from_numbers(column, read.hints)
    import pyarrow as pa

    if pa.types.is_timestamp(column.type):
        return clock.from_timestamps(column, read.hints)
    return clock.from_text(column, read.hints)


def _as_text(column: object) -> object:
    import pyarrow as pa

    if not isinstance(column, np.ndarray):
        return column
    return pa.array([None if np.isnan(v) else f"{v:.0f}" for v in column.tolist()], type=pa.string())


def _columns(read: _Read, raw: machines.Raw, made: series.Made) -> tuple[Column, ...]:
    """Columns with what they were taken for and the unit their values are written in."""
    out = []
    for role in read.roles.all:
        quantity = role.quantity or "other"
        if role.position in read.roles.time:
            quantity = "time"
        elif role.position == read.roles.channel:
            quantity = "channel"
        elif role.position == read.roles.value:
            quantity = "value"
        elif role.position == read.roles.device:
            quantity = "device"
        inferred = {raw.power_name: made.power_unit, raw.counter_name: made.counter_unit}.get(role.name, "")
        unit = read.table.units.get(role.position, "") or role.unit or inferred
        out.append(Column(role.name, quantity, unit))
    return tuple(out)
