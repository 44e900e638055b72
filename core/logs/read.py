"""Bytes of a file to readings: container, text or table, columns, machines, traces.

Rules: pure; bad input becomes a problem, never an exception; only `Cancelled` passes through.
"""

import hashlib
from pathlib import Path, PurePath

import numpy as np
from attrs import evolve, frozen

from core.logs import body, clock, containers, machines, roles, series, sniff, text
from core.logs.clock import NO_HINTS, Clocked, Hints
from core.logs.reading import NO_CHOICES, REFUSED_KEPT, Column, FileReading, Reading, Refused
from core.logs.roles import Role, Roles
from core.logs.table import I64, Table, sample_of
from core.logs.words import zone_named_in
from core.problems import Problem, Severity
from core.progress import Cancelled, Progress, part, silent
from core.study import Choices

_WRITTEN = {"kVA": "kW", "VA": "W"}


@frozen
class _Source:
    """A table with what is known about how it was written."""

    table: Table
    roles: Roles
    decimal: str
    encoding: str | None = None
    delimiter: str | None = None
    header_row: int | None = None
    hints: Hints = NO_HINTS
    stated_offset_s: float | None = None
    is_absolute: bool = False
    data: bytes | None = None
    reasons: tuple[tuple[str, str], ...] = ()
    problems: tuple[Problem, ...] = ()


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
        Called at least ten times a second of work; may raise `Cancelled`.

    Returns
    -------
    FileReading
        With no readings and an ERROR among its problems when the file cannot be used.
    """
    digest = hashlib.sha256(data).hexdigest()
    empty = FileReading(name, digest, len(data))
    if not data:
        return evolve(empty, problems=(Problem("log.empty", Severity.ERROR, name),))
    try:
        return _read(data, name, digest, choices, progress)
    except Cancelled:
        raise
    except MemoryError:
        return evolve(
            empty, problems=(Problem("log.too_large", Severity.ERROR, name, facts={"bytes": len(data)}),)
        )
    except Exception as error:  # noqa: BLE001  the last net under unforeseen bytes: a problem, never a traceback
        facts = {"error": f"{type(error).__name__}: {error}"[:200]}
        return evolve(empty, problems=(Problem("log.unforeseen", Severity.ERROR, name, facts=facts),))


def read_path(
    path: Path, choices: Choices = NO_CHOICES, progress: Progress = silent, shown_name: str | None = None
) -> FileReading:
    """Read a log from disk; `shown_name` is the file as the user named it.

    Raises
    ------
    Cancelled
        When the progress callable does.
    """
    from core.logs.files import load

    name = shown_name or str(path)
    loaded = load(path, name)
    if isinstance(loaded, Problem):
        return FileReading(name, "", 0, problems=(loaded,))
    return read_bytes(loaded, name, choices, progress)


def _read(data: bytes, name: str, digest: str, choices: Choices, progress: Progress) -> FileReading:
    progress(0.0, "looking at the file")
    opened = containers.open_container(data, name)
    if isinstance(opened, Problem):
        return FileReading(name, digest, len(data), problems=(opened,))
    readings: list[Reading] = []
    problems: list[Problem] = []
    for i, item in enumerate(opened):
        share = part(progress, i / len(opened), (i + 1) / len(opened))
        source = (
            _from_table(item, name, choices)
            if isinstance(item.content, Table)
            else _from_text(item, name, choices, share)
        )
        if isinstance(source, Problem):
            problems.append(source)
            continue
        found, wrong = _machines(
            source, item.label, name, f"{digest}:{item.label}", choices, part(share, 0.9, 1.0)
        )
        readings += found
        problems += wrong
    if readings:
        problems = [
            evolve(p, severity=Severity.CAUTION) if p.severity is Severity.ERROR else p for p in problems
        ]
    progress(1.0, "read")
    return FileReading(name, digest, len(data), tuple(readings), tuple(problems))


def _from_text(item: containers.Item, name: str, choices: Choices, progress: Progress) -> _Source | Problem:
    assert isinstance(item.content, bytes)
    what = text.foreign(item.content)
    if what:
        return Problem("log.not_a_log", Severity.ERROR, name, facts={"what": what})
    decoded = text.decode(item.content, name, choices.encoding)
    data = decoded.data
    lines, later = _sample_lines(data)
    if not any(x.strip() for x in lines):
        return Problem("log.empty", Severity.ERROR, name)
    if len(lines) == 1 and len(data) > sniff.LONGEST_LINE:
        return Problem("log.line_too_long", Severity.ERROR, name, 1, facts={"bytes": len(data)})
    form = sniff.sniff(lines, later, choices)
    if form is None:
        only_words = len([x for x in lines if x.strip()]) <= 2
        code = "log.no_rows" if only_words else "log.no_table"
        return Problem(code, Severity.ERROR, name, 1, facts={"first_line": lines[0][:120]})
    columns = [[row[i] for row in form.sample] for i in range(len(form.names))]
    told = roles.assign(form.names, columns, form.decimal, choices)
    if told is None:
        return _no_time(form.names, name, form.first_line)
    if not _has_load(told):
        return _no_load(form.names, name)
    kinds = body.kinds_of(columns, [_want(r, told) for r in told.all], form.decimal)
    table = body.read_body(data, form, kinds, part(progress, 0.05, 0.85))
    zone = zone_named_in(" ".join([*form.preamble, *(form.names[p] for p in told.time)]))
    hints = _hints(told, name, form.decimal, choices, zone, form.preamble)
    offset = body.first_offset(columns[told.time[0]]) if columns else None
    return _Source(
        table, told, form.decimal, decoded.encoding, form.delimiter,
        None if form.header_line is None else form.header_line + 1, hints, offset,
        kinds[told.time[0]] == "stamp", data,
        (("encoding", f"{decoded.encoding}: {decoded.reason}"), *form.reasons, *told.reasons),
        decoded.problems,
    )  # fmt: skip


def _from_table(item: containers.Item, name: str, choices: Choices) -> _Source | Problem:
    table = item.content
    assert isinstance(table, Table)
    if not table.rows:
        return Problem(
            "log.no_rows", Severity.ERROR, name, facts={"first_line": ", ".join(table.names)[:120]}
        )
    told = roles.assign(table.names, sample_of(table), ".", choices)
    if told is None:
        return _no_time(table.names, name, 0)
    if not _has_load(told):
        return _no_load(table.names, name)
    table, decimal = containers.with_numbers(table, [_want(r, told) == "number" for r in told.all])
    zone = zone_named_in(" ".join(table.names[p] for p in told.time))
    hints = evolve(_hints(told, name, decimal, choices, zone, ()), is_1904=item.is_1904)
    return _Source(
        table, told, decimal, item.encoding, None, item.header_row, hints, None, False, None,
        (*item.reasons, *told.reasons), item.problems,
    )  # fmt: skip


def _hints(
    told: Roles, name: str, decimal: str, choices: Choices, zone: str | None, preamble: tuple[str, ...]
) -> Hints:
    first = told.all[told.time[0]]
    date = clock.date_in(preamble)
    return Hints(name, first.quantity, first.unit, decimal, zone, False, date, choices)


def _no_time(names: tuple[str, ...], name: str, row: int) -> Problem:
    return Problem("log.no_time", Severity.ERROR, name, row + 1, facts={"columns": ", ".join(names)[:160]})


def _no_load(names: tuple[str, ...], name: str) -> Problem:
    return Problem("log.no_power", Severity.ERROR, name, facts={"columns": ", ".join(names)[:160]})


def _has_load(told: Roles) -> bool:
    known = {r.quantity for r in told.all}
    return (
        told.channel is not None
        or bool(known & {"power", "energy", "apparent power"})
        or known >= {"voltage", "current"}
    )


def _want(role: Role, told: Roles) -> str:
    if role.position in told.time:
        return "time"
    if role.position in (told.channel, told.device):
        return "text"
    if role.position == told.value:
        return "text" if role.cell_unit else "number"
    if role.quantity in ("power", "energy", "voltage", "current", "temperature", "apparent power"):
        return "number"
    return "text" if role.quantity == "unit" else ""


def _sample_lines(data: bytes) -> tuple[list[str], list[str]]:
    """The first lines, and some from the middle and the end."""
    head = data[: sniff.SAMPLE_BYTES]
    whole = len(head) == len(data)
    lines = [x.rstrip("\r") for x in head.decode("utf-8", "replace").split("\n")]
    if not whole and len(lines) > 1:
        lines.pop()
    later: list[str] = []
    if not whole:
        for at in (len(data) // 2, max(0, len(data) - 20000)):
            piece = data[at : at + 20000].decode("utf-8", "replace").split("\n")
            later += [x.rstrip("\r") for x in piece[1:-1]]
    elif len(lines) > 3 * sniff.SAMPLE_LINES:
        later = lines[-sniff.SAMPLE_LINES :]
    return lines[: 2 * sniff.SAMPLE_LINES], later


def _machines(
    source: _Source, label: str, name: str, key: str, choices: Choices, progress: Progress
) -> tuple[list[Reading], list[Problem]]:
    clocked = _clock(source)
    raws = machines.sort_out(source.table, source.roles, clocked.seconds, source.decimal)
    refused, count = _refused(source, clocked)
    shared = [*source.problems, *clocked.problems]
    if source.table.repeated_headings:
        facts: dict[str, object] = {"count": source.table.repeated_headings}
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
        progress(i / len(raws), "making traces")
        made = series.make(raw, clocked, f"{key}:{raw.device or ''}:{choices!r}", name, choices)
        if made.trace is None:
            problems += made.problems
            continue
        extra = list(shared) + list(made.problems)
        if made.missing:
            extra.append(Problem("log.missing_values", Severity.NOTE, name, facts={"count": made.missing}))
        reasons = (*source.reasons, ("clock", clocked.reason), ("layout", raw.layout), *made.reasons)
        out.append(
            Reading(
                name, raw.device or stem, raw.device, source.encoding, source.delimiter,
                source.decimal, source.header_row,
                raw.rows_read - made.missing if raw.rows is None else raw.rows_read,
                count, _columns(source, raw), made.trace, made.by_power_wh, made.by_counter_wh, made.used_wh,
                refused, _once(reasons), tuple(extra), choices,
            )
        )  # fmt: skip
    if not out and not problems:
        problems.append(_no_load(source.table.names, name))
    if not out and shared:
        problems += shared
    return out, problems


def _once(reasons: tuple[tuple[str, str], ...]) -> tuple[tuple[str, str], ...]:
    return tuple(dict.fromkeys(reasons))


def _clock(source: _Source) -> Clocked:
    position = source.roles.time[0]
    column = source.table.columns[position]
    if len(source.roles.time) == 2:
        import pyarrow.compute as pc

        second = source.table.columns[source.roles.time[1]]
        return clock.from_text(
            pc.binary_join_element_wise(_as_text(column), _as_text(second), " "), source.hints
        )
    if isinstance(column, np.ndarray):
        if source.is_absolute:
            why = "date and time with their offset from UTC"
            return Clocked(column, "absolute", why, clock.tick_of(column), source.stated_offset_s or 0.0)
        if source.data is not None and source.roles.all[position].kind == "stamp":
            local = Clocked(column, "local", "date and time of no stated zone", clock.tick_of(column))
            return clock.zoned(local, source.hints)
        return clock.from_numbers(column, source.hints)
    import pyarrow as pa

    if pa.types.is_timestamp(column.type):
        return clock.from_timestamps(column, source.hints)
    return clock.from_text(column, source.hints)


def _as_text(column: object) -> object:
    import pyarrow as pa

    if not isinstance(column, np.ndarray):
        return column
    return pa.array([None if np.isnan(v) else f"{v:.0f}" for v in column.tolist()], type=pa.string())


def _refused(source: _Source, clocked: Clocked) -> tuple[tuple[Refused, ...], int]:
    """Rows that could not be used: broken lines, unreadable stamps, cells that are no numbers."""
    table, name = source.table, source.hints.file
    untimed = np.flatnonzero(~np.isfinite(clocked.seconds))
    loads = [
        r.position
        for r in source.roles.all
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
    texts = _lines_at(source.data, sorted(lines.values())) if source.data is not None else {}
    untimed_set = set(untimed[: 2 * REFUSED_KEPT].tolist())
    for row in kept:
        code = "row.time" if row in untimed_set else "row.number"
        line = lines[row]
        shown = texts.get(line) or _row_text(table, int(row))
        out.append(Refused(line, shown, Problem(code, Severity.CAUTION, name, line, {"text": shown[:80]})))
    return tuple(sorted(out, key=lambda r: r.row)[:REFUSED_KEPT]), count


def _row_text(table: Table, row: int) -> str:
    cells = []
    for column in table.columns:
        if isinstance(column, np.ndarray):
            cells.append(f"{column[row]:g}")
        elif column is not None:
            cells.append(str(column[row].as_py()))
    return " | ".join(cells)[:300]


def _lines_at(data: bytes, wanted: list[int]) -> dict[int, str]:
    """The text of lines by number from 1, in one pass."""
    out: dict[int, str] = {}
    line, at = 1, 0
    for number in wanted:
        while line < number:
            at = data.find(b"\n", at) + 1
            if at == 0:
                return out
            line += 1
        end = data.find(b"\n", at)
        out[number] = data[at : len(data) if end < 0 else end][:300].decode("utf-8", "replace").rstrip("\r")
    return out


def _columns(source: _Source, raw: machines.Raw) -> tuple[Column, ...]:
    """Columns with what they were taken for and the unit their values are written in."""
    out = []
    for role in source.roles.all:
        quantity = role.quantity or "other"
        if role.position in source.roles.time:
            quantity = "time"
        elif role.position == source.roles.channel:
            quantity = "channel"
        elif role.position == source.roles.value:
            quantity = "value"
        elif role.position == source.roles.device:
            quantity = "device"
        unit = source.table.units.get(role.position, "") or role.unit
        out.append(Column(role.name, quantity, unit))
    return tuple(out)
