"""A text with a cell for each column: its form found from a sample of lines, then its rows read.

Rules: the form is found once, from the same lines however the rows are then read, so that rows that were
added to a log are read as they would be with all the others.
"""

from attrs import evolve, frozen

from core.language import later, mark
from core.logs import blocks, body, clock, decimal_commas, roles, sniff, spelling
from core.logs.blocks import Block
from core.logs.by_arrow import Kind
from core.logs.clock import NO_HINTS, Hints
from core.logs.reading import first_rows
from core.logs.readings import Read, hints_of, no_load, no_time
from core.logs.roles import Roles
from core.logs.sniff import Form
from core.logs.source import InMemory, Source
from core.logs.table import Table
from core.logs.zones import zone_named_in
from core.problems import Problem, Severity
from core.progress import Progress, part
from core.study import Choices

_LATER_BYTES = 6000


@frozen
class Found:
    """How a text is written.

    ``source`` is the text, with its numbers made whole where commas had cut them; ``delimiter`` is the one in
    the file; ``block_hints`` are for stamps that are read block by block; ``beside`` are the logs that stand
    side by side in it, if there are several.
    """

    source: Source
    form: Form
    roles: Roles
    kinds: tuple[Kind, ...]
    hints: Hints
    block_hints: Hints
    offset_s: float | None
    delimiter: str
    beside: tuple[Block, ...] = ()


def detect(source: Source, name: str, choices: Choices) -> Found | Problem:
    """Find the form of a text, or why it is no log.

    Parameters
    ----------
    source : Source
        UTF-8.
    name : str
        The file, for problems.
    choices : Choices
    """
    lines, further = _sample_lines(source)
    if not any(x.strip() for x in lines):
        return Problem("log.empty", Severity.ERROR, name)
    if len(lines) == 1 and source.size > sniff.LONGEST_LINE:
        return Problem("log.line_too_long", Severity.ERROR, name, 1, facts={"bytes": source.size})
    spelt = spelling.find(lines)
    if spelt is not None:
        source = InMemory(spelt.plain(source.piece(0, source.size).decode("utf-8", "replace")).encode())
        lines, further = _sample_lines(source)
    cut = None
    if choices.delimiter in (None, ",") and choices.decimal in (None, ","):
        cut = decimal_commas.find(lines, further)
    if isinstance(cut, str):
        return Problem("log.decimal_comma_unclear", Severity.ERROR, name, facts={"row": cut[:120]})
    chosen = choices
    if cut is not None:
        source = InMemory(cut.whole(source.piece(0, source.size).decode("utf-8", "replace")).encode())
        lines, further = _sample_lines(source)
        chosen = evolve(choices, delimiter=decimal_commas.MARK, decimal=",")
    form = sniff.sniff(lines, further, chosen)
    if form is None:
        only_words = len([x for x in lines if x.strip()]) <= 2
        code = "log.no_rows" if only_words else "log.no_table"
        return Problem(code, Severity.ERROR, name, 1, facts={"first_line": lines[0][:120]})
    if spelt is not None:
        form = evolve(form, reasons=(("layout", spelt.reason), *form.reasons))
    by_hours = sniff.hours_above(form)
    if by_hours:
        return no_load(by_hours, name)
    written = form.delimiter
    if cut is not None:
        written = ","
        others = tuple(r for r in form.reasons if r[0] not in ("delimiter", "decimal"))
        form = evolve(form, reasons=(("delimiter", later(mark("comma"))), ("decimal", cut.reason), *others))
    columns = sniff.as_decided(form)
    told = roles.assign(form.names, columns, form.decimal, choices)
    if told is None:
        return no_time(form.names, name, form.first_line)
    if not told.has_load():
        return no_load(form.names, name)
    zone = zone_named_in(" ".join([*form.preamble, *(form.names[p] for p in told.time)]))
    hints = hints_of(told, name, form.decimal, choices, zone, form.preamble)
    beside = blocks.find(form.names, columns, form.decimal, choices, _above(form))
    wanted = [want for block in beside for want in block.told.wanted()] or told.wanted()
    if beside:
        form = evolve(form, shorter=frozenset(w for block in beside[:-1] for w in _widths(block, columns)))
    kinds = body.kinds_of(columns, wanted, form.decimal, form.swapped)
    times = [(b.start + b.told.time[0], len(b.told.time)) for b in beside] or [(told.time[0], len(told.time))]
    dated = [p for p, count in times if count == 1 and kinds[p] == "text"]
    # one file is written in one way
    order = next((o for p in dated if (o := clock.settled_order(columns[p], hints)) is not None), None)
    for position in dated if order is not None else ():
        kinds[position] = "dated text"
    block_hints = NO_HINTS if order is None else evolve(NO_HINTS, choices=Choices(date_order=order))
    beside = tuple(
        evolve(b, time_kind=kinds[p], offset_s=body.first_offset(columns[p]))
        for b, (p, _) in zip(beside, times, strict=False)
    )
    offset_s = body.first_offset(columns[told.time[0]])
    return Found(source, form, told, tuple(kinds), hints, block_hints, offset_s, written, beside)


def _above(form: Form) -> tuple[str, ...]:
    """Cells of the line above the headings, filled up to their count."""
    cells = sniff.split(form.preamble[-1], form.delimiter) if form.preamble else []
    is_table = 1 < len(cells) <= len(form.names)
    return (*cells, *[""] * (len(form.names) - len(cells))) if is_table else ()


def _widths(block: Block, columns: list[list[str]]) -> list[int]:
    """Counts of cells of rows that end with this block: with the empty columns behind it or without."""
    last = max(p for p in block.columns if any(c.strip() for c in columns[p]))
    return list(range(last + 1, block.stop + 1))


def read(found: Found, encoding: str, why: str, problems: tuple[Problem, ...], progress: Progress) -> Read:
    """Read the rows of a text.

    Parameters
    ----------
    found : Found
    encoding, why : str
        The encoding of the file, and the reason for it.
    problems : tuple of Problem
        What was found on the way to the text.
    progress : Progress

    Raises
    ------
    NotPlain
        If a block is no UTF-8 text without zero bytes.
    """
    table = body.read_body(
        found.source, found.form, found.kinds, part(progress, 0.05, 0.85), found.block_hints
    )
    return evolve(_without_source(found, table, encoding, why, problems), source=found.source)


def read_more(found: Found, fresh: bytes, lines: int, progress: Progress) -> Read:
    """Read rows that were added to a text in UTF-8, which are preceded by `lines` lines.

    Raises
    ------
    NotPlain
        If a block is no UTF-8 text without zero bytes.
    """
    table = body.read_body(
        InMemory(fresh), found.form, found.kinds, part(progress, 0.05, 0.85), found.block_hints, lines
    )
    return _without_source(found, table, "utf-8", later(mark("as before")), ())


def _without_source(
    found: Found, table: Table, encoding: str, why: str, problems: tuple[Problem, ...]
) -> Read:
    form, told = found.form, found.roles
    told_by = later(mark("{encoding}: {why}"), encoding=encoding, why=why)
    return Read(
        table, told, form.decimal, encoding, found.delimiter,
        None if form.header_line is None else form.header_line + 1, found.hints, found.offset_s,
        found.kinds[told.time[0]], None,
        (("encoding", told_by), *form.reasons, *told.reasons), problems,
        first_rows(form.sample), found.beside, form.swapped,
    )  # fmt: skip


def _sample_lines(source: Source) -> tuple[list[str], list[str]]:
    """The first lines, and some from the middle and the end."""
    head = source.piece(0, sniff.SAMPLE_BYTES)
    whole = len(head) == source.size
    lines = [x.rstrip("\r") for x in head.decode("utf-8", "replace").split("\n")]
    if not whole and len(lines) > 1:
        lines.pop()
    further: list[str] = []
    if not whole:
        for at in (source.size // 2, max(0, source.size - _LATER_BYTES)):
            piece = source.piece(at, _LATER_BYTES).decode("utf-8", "replace").split("\n")
            further += [x.rstrip("\r") for x in piece[1:-1]]
    elif len(lines) > 2 * sniff.SAMPLE_LINES:
        further = lines[-sniff.SAMPLE_LINES // 2 :]
    return lines[: sniff.SAMPLE_LINES], further
