"""A table that was read made into readings: its clock, its machines, a trace for each."""

from pathlib import PurePath

import numpy as np
from attrs import evolve, frozen

from core.logs import blocks, clock, machines, number_clock, series, split_stamps
from core.logs.blocks import Block
from core.logs.clock import NO_HINTS, Clocked, Hints
from core.logs.preamble import interval_in, start_in
from core.logs.reading import Column, Reading, Refused
from core.logs.refusals import no_time_usable, refused_rows
from core.logs.roles import Roles
from core.logs.sniff import OTHER_SIGN
from core.logs.source import Source
from core.logs.table import Table
from core.problems import Problem, Severity
from core.progress import Progress, part
from core.study import Choices


@frozen
class Read:
    """A table with what is known about how it was written; `source` is None where no text is behind it.

    ``beside`` are the logs that stand side by side in the table, if there are several; ``swapped`` are the
    positions of columns whose decimal sign is not `decimal` but the other.
    """

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
    beside: tuple[Block, ...] = ()
    swapped: frozenset[int] = frozenset()


def no_load(names: tuple[str, ...], name: str) -> Problem:
    """Why a table without power and energy is no log."""
    return Problem("log.no_power", Severity.ERROR, name, facts={"columns": ", ".join(names)[:160]})


def no_time(names: tuple[str, ...], name: str, row: int) -> Problem:
    """Why a table without a time is no log."""
    return Problem("log.no_time", Severity.ERROR, name, row + 1, facts={"columns": ", ".join(names)[:160]})


def hints_of(
    told: Roles, name: str, decimal: str, choices: Choices, zone: str | None, preamble: tuple[str, ...]
) -> Hints:
    """What a table tells about its clock beside the stamps."""
    first = told.all[told.time[0]]
    date = clock.date_in(preamble)
    return Hints(
        name, first.quantity, first.unit, decimal, zone, False, date, first.name, choices,
        interval_in(preamble), start_in(preamble),
    )  # fmt: skip


def machines_of(
    read: Read, label: str, name: str, key: str, choices: Choices, progress: Progress
) -> tuple[list[Reading], list[Problem]]:
    """A reading for each machine of a table, and what stood in the way of others.

    Parameters
    ----------
    read : Read
    label : str
        Name inside a container, ``""`` for a plain file.
    name : str
        The file, for problems.
    key : str
        Beginning of the identities of the traces.
    choices : Choices
    progress : Progress
    """
    if read.beside:
        return _side_by_side(read, label, name, key, choices, progress)
    clocked = clock_of(read)
    raws = machines.sort_out(read.table, read.roles, clocked.seconds, read.decimal)
    refused, count = refused_rows(read.table, read.roles, read.source, clocked.seconds, read.hints.file)
    shared = [*read.problems, *clocked.problems]
    if read.table.repeated_headings:
        facts: dict[str, object] = {"count": read.table.repeated_headings}
        shared.append(Problem("log.repeated_headings", Severity.NOTE, name, facts=facts))
    if read.table.is_over:
        shared.append(Problem("log.other_table", Severity.CAUTION, name))
    shared += about_refused(refused, count, name)
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
        reasons = reasons_of(read, clocked, raw, made)
        out.append(
            Reading(
                name, raw.device or stem, raw.device, read.encoding, read.delimiter,
                read.decimal, read.header_row,
                raw.rows_read - made.missing if raw.rows is None else raw.rows_read,
                count, columns_of(read, raw, made), made.trace,
                made.by_power_wh, made.by_counter_wh, made.used_wh,
                refused, reasons, tuple(extra), choices, read.first_rows,
            )
        )  # fmt: skip
    if not out:
        untimed = None if np.isfinite(clocked.seconds).any() else no_time_usable(refused, name)
        if untimed is not None:  # which tells of the refused rows already
            return out, [untimed, *(p for p in shared if p.code != "log.refused_rows")]
        problems = problems or [no_load(read.table.names, name)]
        problems += shared
    return out, problems


def _side_by_side(
    read: Read, label: str, name: str, key: str, choices: Choices, progress: Progress
) -> tuple[list[Reading], list[Problem]]:
    """The readings of logs that stand side by side, each with its own time."""
    out: list[Reading] = []
    problems: list[Problem] = []
    for i, block in enumerate(read.beside):
        share = part(progress, i / len(read.beside), (i + 1) / len(read.beside))
        one = _of_block(read, block, is_first=i == 0)
        found, wrong = machines_of(one, label, name, f"{key}:{block.device}", choices, share)
        problems += wrong
        for reading in found:
            device = block.device if reading.device is None else f"{reading.device} ({block.device})"
            machine = device if block.is_named else f"{reading.machine}, {device}"
            out.append(
                evolve(
                    reading, machine=machine, device=device, is_named=block.is_named,
                    problems=(*reading.problems, _told_apart(read, block, name)),
                    columns=_of_whole(read, block, reading.columns), reasons=_said(read, block, reading),
                )
            )  # fmt: skip
    return out, problems


def _told_apart(read: Read, block: Block, name: str) -> Problem:
    facts: dict[str, object] = {"count": len(read.beside), "first": block.start + 1, "last": block.stop}
    return Problem("log.side_by_side", Severity.NOTE, name, facts=facts)


def _of_block(read: Read, block: Block, *, is_first: bool) -> Read:
    first = block.told.all[block.told.time[0]]
    hints = evolve(read.hints, quantity=first.quantity, unit=first.unit, heading=first.name)
    return evolve(
        read, table=blocks.cut(read.table, block, is_first), roles=block.told, beside=(), hints=hints,
        stated_offset_s=block.offset_s, time_kind=block.time_kind,
        swapped=frozenset(p - block.start for p in read.swapped),
        reasons=(*(r for r in read.reasons if r not in read.roles.reasons), *block.told.reasons),
    )  # fmt: skip


def _of_whole(read: Read, block: Block, columns: tuple[Column, ...]) -> tuple[Column, ...]:
    """All columns of the file; those of the other logs are nothing to this one."""
    others = [Column(n, "other", "") for n in read.table.names]
    return (*others[: block.start], *columns, *others[block.stop :])


def _said(read: Read, block: Block, reading: Reading) -> tuple[tuple[str, str], ...]:
    rest = tuple(r for r in reading.reasons if r != ("layout", "one machine"))
    text = (
        f"{len(read.beside)} logs side by side, each with its own time; this one is in columns "
        f"{block.start + 1} to {block.stop}"
    )
    return (*rest, ("layout", text))


def clock_of(read: Read) -> Clocked:
    """The times of a table's rows."""
    position = read.roles.time[0]
    column = read.table.columns[position]
    if read.roles.fields:
        return split_stamps.clocked(read.table, read.roles.fields, read.hints)
    if len(read.roles.time) == 2:
        import pyarrow.compute as pc

        second = read.table.columns[read.roles.time[1]]
        # a spreadsheet may tell a date once, where it changes
        dates = pc.fill_null_forward(_as_text(column))
        both = pc.binary_join_element_wise(dates, _as_text(second), " ")
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


def about_refused(refused: tuple[Refused, ...], count: int, name: str) -> tuple[Problem, ...]:
    """What there is to say of rows that could not be used."""
    if not count:
        return ()
    first = refused[0].row if refused else None
    facts: dict[str, object] = {"count": count, "first": first or 0}
    return (Problem("log.refused_rows", Severity.CAUTION, name, first, facts),)


def reasons_of(
    read: Read, clocked: Clocked, raw: machines.Raw, made: series.Made
) -> tuple[tuple[str, str], ...]:
    """Why each choice was made, in the order of the choices."""
    told = (*read.reasons, ("clock", clocked.reason), ("layout", raw.layout), *made.reasons)
    return tuple(dict.fromkeys(told))


def columns_of(read: Read, raw: machines.Raw, made: series.Made) -> tuple[Column, ...]:
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
        decimal = OTHER_SIGN[read.decimal] if role.position in read.swapped else None
        out.append(Column(role.name, quantity, unit, decimal))
    return tuple(out)
