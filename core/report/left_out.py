"""What does not count and why, every run, and what was wrong with files."""

from collections.abc import Iterator, Mapping, Sequence

from attrs import evolve

from core.language import tr
from core.publish.sources import Sources
from core.report.blocks import Block, Bullets, Heading, Paragraph, TableBlock
from core.results.values import RunResult
from core.tables import Cell, Table

#: characters of a date with hours and minutes
_TO_THE_MINUTE = 16
#: stretches that are told one by one
_MOST_LINES = 60


def left_out(sources: Sources, shown: Mapping[str, Table], warnings: Sequence[str]) -> Iterator[Block]:
    """The part on runs: first those left out, then all of them."""
    out = [(m.name, run) for m in sources.comparison.machines for run in m.runs if not run.included]
    yield Heading(tr("Runs, and what was left out"))
    counted = sum(len(m.included) for m in sources.comparison.machines)
    yield Paragraph(_said(counted, len(out)), "answer")
    for by_user, title in (
        (True, tr("Left out by hand")),
        (False, tr("Not counted by the program’s rules")),
    ):
        lines = [_line(name, run) for name, run in out if run.left_out_by_user is by_user]
        if len(lines) > _MOST_LINES:
            rest = len(lines) - _MOST_LINES
            lines[_MOST_LINES:] = [
                tr("and {count} more: the table “runs” in the files holds all.", count=rest)
            ]
        if lines:
            yield Heading(title, 3)
            yield Bullets(tuple(lines))
    if "runs" in shown:
        yield TableBlock(_narrow(shown["runs"]))
    if warnings:
        yield Heading(tr("What was wrong with files"), 3)
        yield Bullets(tuple(warnings))


def _said(counted: int, out: int) -> str:
    if not counted:
        said = tr("no runs count")
    else:
        said = tr("{count:run counts|runs count}", count=counted)
    if not out:
        return tr("{said}; nothing was left out.", said=said)
    return tr(
        "{said}; {count:other stretch|other stretches} of the logs {count:~is|are} not compared.",
        said=said,
        count=out,
    )


def _line(name: str, run: RunResult) -> str:
    why = run.why_excluded or tr("not counted")
    return tr("{machine}, {run}: {why}.", machine=name, run=run.name, why=why)


def _narrow(table: Table) -> Table:
    """The runs without the long column that the lists above have said already, and times to the minute."""
    keys = [column.key for column in table.columns]
    why, start = keys.index("why_excluded"), keys.index("start")
    columns = tuple(
        evolve(column, title=tr("Counts")) if i == why else column for i, column in enumerate(table.columns)
    )
    rows: list[tuple[Cell, ...]] = []
    for row in table.rows:
        cells = list(row)
        cells[why] = tr("no") if cells[why] else tr("yes")
        cells[start] = str(cells[start])[:_TO_THE_MINUTE]
        rows.append(tuple(cells))
    return Table(table.title, columns, tuple(rows), (*table.notes, tr("Start by the clock of each log.")))
