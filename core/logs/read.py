"""Bytes of a file to readings: container, text or table, columns, machines, traces.

Rules: pure; bad input becomes a problem, never an exception; only `Cancelled` passes through.
"""

import hashlib
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

import numpy as np
from attrs import evolve

from core.language import later, mark, tr
from core.logs import arrow_tables, beside, blocks, body, containers, files, roles, text, text_logs
from core.logs.reading import NO_CHOICES, FileReading, Reading, first_rows
from core.logs.readings import Read, hints_of, machines_of, no_load, no_time
from core.logs.source import InMemory, OnDisk
from core.logs.table import Table, sample_of
from core.logs.unpacked import Item
from core.logs.zones import zone_named_in
from core.problems import Problem, Severity
from core.progress import Cancelled, Progress, part, silent
from core.study import Choices

#: larger files are read block by block when they are plain text [bytes]
STREAMED = 1 << 23
#: a smaller file is read too soon for anybody to wait [bytes]
_LONG = 1 << 18


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
        Called ten times a second at least, in the caller's thread; may raise `Cancelled`.

    Returns
    -------
    FileReading
        With no readings and an ERROR among its problems when the file cannot be used.
    """
    digest = hashlib.sha256(data).hexdigest()
    empty = FileReading(name, digest, len(data))
    if not data:
        return evolve(empty, problems=(Problem("log.empty", Severity.ERROR, name),))

    def read(told: Progress) -> FileReading:
        return _read(data, name, digest, choices, told)

    return _guarded(lambda: _alive(read, len(data), progress), empty)


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
    size = path.stat().st_size
    if size > STREAMED:

        def stream(told: Progress) -> FileReading | None:
            return _stream(path, name, choices, told)

        streamed = _guarded(lambda: _alive(stream, size, progress), FileReading(name, "", 0))
        if streamed is not None:
            return streamed
    loaded = _alive(lambda told: files.load(path, name), size, progress)
    if isinstance(loaded, Problem):
        return FileReading(name, "", 0, problems=(loaded,))
    return read_bytes(loaded, name, choices, progress)


_Any = TypeVar("_Any")
_Result = TypeVar("_Result", FileReading, FileReading | None)


def _alive(work: Callable[[Progress], _Any], size: int, progress: Progress) -> _Any:
    """Do `work` so that signs of life keep coming, however long one of its steps is."""
    if size < _LONG or progress is silent:
        return work(progress)
    return beside.reporting(work, progress, tr("looking at the file"))


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
    progress(0.0, tr("looking at the file"))
    opened = containers.open_container(data, name, encoding=choices.encoding)
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
            if item.reasons and isinstance(read, Read):
                read = evolve(read, reasons=(*item.reasons, *read.reasons))
        if isinstance(read, Problem):
            problems.append(read)
            continue
        key = f"{digest}:{item.label}"
        found, wrong = machines_of(read, item.label, name, key, choices, part(share, 0.9, 1.0))
        readings += [_moved(r, item.lines_before) for r in found] if item.lines_before else found
        problems += wrong
    return _file_reading(name, digest, len(data), readings, problems, progress)


def _moved(reading: Reading, lines: int) -> Reading:
    """A reading of a log that stands below others, its lines counted from the beginning of the file."""
    header = reading.header_row
    return evolve(
        reading,
        header_row=None if header is None else header + lines,
        refused=tuple(evolve(r, row=r.row + lines, why=_down(r.why, lines)) for r in reading.refused),
        problems=tuple(_down(p, lines) for p in reading.problems),
    )


def _down(problem: Problem, lines: int) -> Problem:
    if problem.row is None:
        return problem
    facts = {k: v + lines if k == "first" and isinstance(v, int) else v for k, v in problem.facts}
    return evolve(problem, row=problem.row + lines, facts=facts)


def _file_reading(
    name: str, digest: str, size: int, readings: list[Reading], problems: list[Problem], progress: Progress
) -> FileReading:
    if readings:
        problems = [
            evolve(p, severity=Severity.CAUTION) if p.severity is Severity.ERROR else p for p in problems
        ]
    progress(1.0, tr("read"))
    return FileReading(name, digest, size, tuple(readings), tuple(problems))


def _stream(path: Path, name: str, choices: Choices, progress: Progress) -> FileReading | None:
    """Read a large plain text from disk; None when it has to be read as a whole."""
    source = OnDisk(path)
    head = source.piece(0, text.HEAD)
    if not text.is_plain(head) or not containers.is_text(head) or choices.encoding not in (None, "utf-8"):
        return None
    plain = later(mark("only plain characters or valid UTF-8"))
    why = plain if head.isascii() else later(mark("valid UTF-8 in every block"))
    try:
        source.begin()
        found = text_logs.detect(source, name, choices)
        if not isinstance(found, Problem):
            read: Read | Problem = text_logs.read(found, "utf-8", why, (), progress)
        else:
            read = found
        if isinstance(read, Problem):
            return FileReading(name, source.digest(), source.size, problems=(read,))
        if not source.is_unchanged():
            changed = Problem("file.changed", Severity.CAUTION, name)
            read = evolve(read, problems=(*read.problems, changed))
        # meanwhile the rest of the digest is taken
        readings, problems = machines_of(read, "", name, ":", choices, part(progress, 0.9, 1.0))
        digest = source.digest()
    except body.NotPlain:
        return None
    finally:
        source.close()
    readings = [_with_key(r, digest) for r in readings]
    return _file_reading(name, digest, source.size, readings, problems, progress)


def _with_key(reading: Reading, digest: str) -> Reading:
    trace = reading.trace
    return reading if trace is None else evolve(reading, trace=evolve(trace, key=f"{digest}{trace.key}"))


def _from_bytes(
    data: bytes, problems: tuple[Problem, ...], name: str, choices: Choices, progress: Progress
) -> Read | Problem:
    what = text.foreign(data)
    if what:
        return Problem("log.not_a_log", Severity.ERROR, name, facts={"what": what})
    decoded = text.decode(data, name, choices.encoding)
    found = text_logs.detect(InMemory(decoded.data), name, choices)
    if isinstance(found, Problem):
        return found
    return text_logs.read(found, decoded.encoding, decoded.reason, (*problems, *decoded.problems), progress)


def _from_table(item: Item, name: str, choices: Choices) -> Read | Problem:
    table = item.content
    assert isinstance(table, Table)
    if not table.rows:
        return Problem(
            "log.no_rows", Severity.ERROR, name, facts={"first_line": ", ".join(table.names)[:120]}
        )
    cells = sample_of(table)
    told = roles.assign(table.names, cells, ".", choices)
    if told is None:
        return no_time(table.names, name, 0)
    if not told.has_load():
        return no_load(table.names, name)
    parts = blocks.find(table.names, cells, ".", choices, item.above)
    wanted = [want for block in parts for want in block.told.wanted()] or told.wanted()
    kinds = body.kinds_of(cells, wanted, ".")
    table, decimal = arrow_tables.with_numbers(table, [k == "number" for k in kinds])
    zone = zone_named_in(" ".join(table.names[p] for p in told.time))
    hints = evolve(hints_of(told, name, decimal, choices, zone, ()), is_1904=item.is_1904)
    return Read(
        table, told, decimal, item.encoding, None, item.header_row, hints, None, "", None,
        (*item.reasons, *told.reasons), item.problems, first_rows(zip(*cells, strict=True)), parts,
    )  # fmt: skip
