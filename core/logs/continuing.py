"""A log that has grown, read on from its end: only the added rows are parsed.

Theory of operation: the form of the text is found anew from its first and last lines, as for a log that is
read whole, and must be what it was. The added rows become columns; those of the trace that is known are put
before them; then everything that is judged of a whole log (order, units, counter, sampling, gaps, energy) is
judged of both together. So reading on gives what reading the whole log gives. Where that cannot be promised,
because earlier rows were put in order, spread, stitched or left out, the answer is None and the log is read
whole.
"""

from collections.abc import Mapping, Sequence

import numpy as np
from attrs import evolve

from core.logs import body, clock, machines, sections, series, text_logs
from core.logs.clock import Clocked
from core.logs.machines import Raw
from core.logs.reading import REFUSED_KEPT, Reading
from core.logs.readings import Read, about_refused, clock_of, columns_of, reasons_of
from core.logs.refusals import refused_rows
from core.logs.source import Source
from core.logs.words import meaning
from core.problems import Problem, Severity
from core.progress import Progress, part, silent
from core.study import Choices
from core.traces import F64, Trace
from core.units import ENERGY_IN_WH, POWER_IN_W

#: what may have been said of the earlier rows; all of it is judged again together with the added ones
_JUDGED_AGAIN = frozenset(
    {
        "log.gaps", "log.values_held", "log.energies_differ", "log.power_and_counter_differ",
        "log.refused_rows", "log.power_unit_doubtful", "log.counter_unit_doubtful", "log.negative_power",
        "log.negative_noise", "log.power_back",
        "log.apparent_power", "log.power_from_counter",
    }
)  # fmt: skip


def read_on(
    whole: Source,
    fresh: bytes,
    lines: int,
    before: Sequence[Reading],
    digest: str,
    choices: Choices,
    progress: Progress = silent,
) -> tuple[Reading, ...] | None:
    """The readings of a log that has grown; None where it has to be read whole.

    Parameters
    ----------
    whole : Source
        All of the text, of which only pieces are looked at.
    fresh : bytes
        What was added, beginning with a line.
    lines : int
        Lines before that.
    before : sequence of Reading
        What was read from the log before: every machine in it.
    digest : str
        SHA-256 of the whole text, in hexadecimal.
    choices : Choices
        Those that it was read with before.
    progress : Progress
        May raise `Cancelled`.
    """
    if not before or not all(_can_go_on(r) for r in before) or not _is_plain(fresh):
        return None
    name = before[0].file
    found = text_logs.detect(whole, name, choices)
    if isinstance(found, Problem) or found.beside or found.form.swapped:
        return None
    if found.source is not whole or not _is_as_before(found, before[0]):
        return None
    try:
        read = text_logs.read_more(found, fresh, lines, part(progress, 0.0, 0.7))
    except body.NotPlain:
        return None
    if not read.table.rows or read.table.repeated_headings:  # another log may begin below the first
        return None
    with np.errstate(over="ignore", invalid="ignore", divide="ignore"):
        return _together(read, before, digest, choices, part(progress, 0.7, 1.0))


def _is_plain(fresh: bytes) -> bool:
    """Whether nothing in the added bytes has to be brought to UTF-8 with plain line ends first."""
    if b"\0" in fresh or fresh.count(b"\r") != fresh.count(b"\r\n"):
        return False
    try:
        fresh.decode("utf-8")
    except UnicodeDecodeError:
        return False
    return True


def _can_go_on(reading: Reading) -> bool:
    trace = reading.trace
    return (
        trace is not None
        and trace.clock.kind != "relative"
        and not trace.clock.shifts
        and not trace.counter_breaks_s
        and reading.encoding == "utf-8"
        and {p.code for p in reading.problems} <= _JUDGED_AGAIN
        and not any(choice == "layout" and "for each quantity" in why for choice, why in reading.reasons)
        and sections.REASON not in reading.reasons
    )


def _is_as_before(found: text_logs.Found, before: Reading) -> bool:
    """Whether the text is still taken for what it was, and its stamps can be read without seeing them all."""
    form, told = found.form, found.roles
    header = None if form.header_line is None else form.header_line + 1
    names = tuple(c.name for c in before.columns)
    return (
        (found.delimiter, form.decimal, header) == (before.delimiter, before.decimal, before.header_row)
        and names == tuple(r.name for r in told.all)
        and not any(found.kinds[p] == "text" for p in told.time)
        and meaning(found.hints.heading).quantity != "row number"  # those count from their own first row
    )


def _together(
    read: Read, before: Sequence[Reading], digest: str, choices: Choices, progress: Progress
) -> tuple[Reading, ...] | None:
    clocked = clock_of(read)
    raws = {r.device: r for r in machines.sort_out(read.table, read.roles, clocked.seconds, read.decimal)}
    if set(raws) != {r.device for r in before} or read.table.repeated_headings or read.table.is_over:
        return None
    if clocked.problems:
        return None
    name = before[0].file
    refused, count = refused_rows(read.table, read.roles, None, clocked.seconds, name)
    out = []
    for i, old in enumerate(before):
        raw = raws[old.device]
        joined = _after(old, raw, clocked)
        if joined is None:
            return None
        told = _ticking(clocked, joined.seconds)
        key = f"{digest}::{raw.device or ''}:{choices!r}"
        here = part(progress, i / len(before), (i + 1) / len(before))
        made = series.make(joined, told, key, name, choices, here)
        if made.trace is None:
            return None
        all_refused = (*old.refused, *refused)[:REFUSED_KEPT]
        problems = [*about_refused(all_refused, old.rows_refused + count, name), *made.problems]
        if made.missing:
            problems.append(Problem("log.missing_values", Severity.NOTE, name, facts={"count": made.missing}))
        columns = columns_of(read, joined, made)
        read_here = joined.rows_read - (made.missing if raw.rows is None else 0)
        if [c.quantity for c in columns] != [c.quantity for c in old.columns]:
            return None
        out.append(
            evolve(
                old, rows_read=read_here, rows_refused=old.rows_refused + count,
                columns=columns, trace=made.trace, energy_by_power_wh=made.by_power_wh,
                energy_by_counter_wh=made.by_counter_wh, energy_used_wh=made.used_wh, refused=all_refused,
                reasons=_reasons(old, reasons_of(read, told, joined, made)), problems=tuple(problems),
            )
        )  # fmt: skip
    return tuple(out)


def _ticking(clocked: Clocked, seconds: F64) -> Clocked:
    tick_s = clocked.tick_s if clocked.tick_s >= 60.0 else clock.tick_of(seconds)
    return evolve(clocked, seconds=seconds, tick_s=tick_s)


def _reasons(old: Reading, new: tuple[tuple[str, str], ...]) -> tuple[tuple[str, str], ...]:
    """The new reasons, but those of encoding and clock: they were found from more than was read now."""
    found = dict(old.reasons)
    return tuple((choice, found[choice] if choice in ("encoding", "clock") else why) for choice, why in new)


def _after(old: Reading, raw: Raw, clocked: Clocked) -> Raw | None:
    """The earlier rows and the added ones as columns of one table; None where units were only inferred."""
    trace = old.trace
    assert trace is not None
    start_s = trace.clock.start_s
    if (
        clocked.kind != trace.clock.kind
        or start_s is None
        or (raw.counter is None) != (trace.counter_wh is None)
    ):
        return None
    units = {c.name: c.unit for c in old.columns}
    power = raw.power
    if power is not None:
        if raw.volt_ampere is not None and not raw.power_unit:
            return None
        power = _one_column(trace.power_w, power, raw.power_unit, units.get(raw.power_name, ""), POWER_IN_W)
        if power is None:
            return None
    counter = raw.counter
    if counter is not None and trace.counter_wh is not None:
        stated = units.get(raw.counter_name, "")
        counter = _one_column(trace.counter_wh, counter, raw.counter_unit, stated, ENERGY_IN_WH)
        if counter is None:
            return None
    temperatures = _temperatures(trace, raw)
    if temperatures is None:
        return None
    return evolve(
        raw,
        seconds=np.concatenate((trace.time_s + start_s, raw.seconds)),
        power=power,
        power_unit=raw.power_unit and "W",
        counter=counter,
        counter_unit=raw.counter_unit and "Wh",
        volt_ampere=None,
        temperatures_c=temperatures,
        rows_read=old.rows_read + raw.rows_read,
        is_own=True,
    )


def _one_column(known: F64, added: F64, stated: str, used: str, factors: Mapping[str, float]) -> F64 | None:
    """Known values in the base unit, and added ones as they stand in the file; None where it was inferred.

    What was read in the base unit can be judged again as it stood in the file, stated or not.
    """
    factor = factors.get(stated or used, 1.0)
    if not stated and factor != 1.0:
        return None
    return np.concatenate((known, added if factor == 1.0 else added * factor))


def _temperatures(trace: Trace, raw: Raw) -> dict[str, F64] | None:
    if set(trace.temperatures_c) != set(raw.temperatures_c):
        return None
    return {
        place: np.concatenate((trace.temperatures_c[place], added))
        for place, added in raw.temperatures_c.items()
    }
