"""The report of a study: which parts it has and in which order, the answer first."""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import Final

from attrs import evolve

from core import __version__
from core.language import tr
from core.progress import Progress, silent
from core.publish.sources import Sources
from core.report.about_pages import pages
from core.report.answering import answering
from core.report.blocks import Block, Heading, PictureBlock, Report
from core.report.fair import fair
from core.report.left_out import left_out
from core.report.measured import measured
from core.report.method import cautions, method
from core.report.pictures import Picture
from core.report.tables import study_tables
from core.report.tracing import found
from core.study import Study
from core.tables import Table

#: rows of a table in the report
MOST_ROWS: Final = 120


def write_report(
    sources: Sources,
    pictures: Sequence[Picture],
    made: date,
    warnings: Sequence[str] = (),
    progress: Progress = silent,
) -> Report:
    """Everything that the study tells, as a report that stands on its own.

    Parameters
    ----------
    sources : Sources
        The study's results.
    pictures : sequence of Picture
        Each is shown once, with the page that it belongs to; of pictures that every machine has of its own
        only the first.
    made : date
    warnings : sequence of str
        What was wrong with files, in words.
    progress : Progress
        May raise `Cancelled`.
    """
    shown = {table.key: capped(table.shown, table.key) for table in study_tables(sources)}
    left = leading(pictures, sources.study)
    title = sources.study.name or tr("What the {part} costs in energy", part=sources.study.part)
    blocks: list[Block] = [
        Heading(title, 1),
        *answering(sources, shown, _taken(left, "Compare")),
        *pages(sources, shown, lambda page: _taken(left, page)),
        *fair(sources.comparison, _taken(left, "Fairness")),
        *left_out(sources, shown, warnings),
        *found(sources, progress),
        *measured(shown),
        *cautions(),
        *method(sources),
        *_more(left),
    ]
    return Report(title, tuple(blocks), made, f"Samepart {__version__}")


def capped(table: Table, key: str) -> Table:
    """The table with no more rows than a person reads; the files hold all of them."""
    if len(table.rows) <= MOST_ROWS:
        return table
    note = tr(
        "The first {shown} of {rows} rows; the table “{key}” in the files holds all.",
        shown=MOST_ROWS,
        rows=len(table.rows),
        key=key,
    )
    return evolve(table, rows=table.rows[:MOST_ROWS], notes=(*table.notes, note))


def leading(pictures: Sequence[Picture], study: Study) -> list[Picture]:
    """The pictures without those that repeat the same for one machine after another."""
    kept = leading_keys([picture.key for picture in pictures], study)
    return [picture for picture in pictures if picture.key in kept]


def leading_keys(keys: Sequence[str], study: Study) -> frozenset[str]:
    """The keys of pictures without those that repeat the same for one machine after another."""
    endings = tuple(f"-{machine.id}" for machine in study.machines)
    first: dict[str, str] = {}
    for key in keys:
        ending = next((e for e in endings if key.endswith(e)), "")
        # a key that ends in no machine's name is a picture of its own
        first.setdefault(f"{key.removesuffix(ending)}-" if ending else key, key)
    return frozenset(first.values())


def _taken(left: list[Picture], page: str) -> tuple[Picture, ...]:
    """The pictures of a page, taken out of those that are left."""
    taken = tuple(picture for picture in left if picture.page == page)
    left[:] = [picture for picture in left if picture.page != page]
    return taken


def _more(left: Iterable[Picture]) -> Iterator[Block]:
    blocks = [PictureBlock(picture) for picture in left]
    if blocks:
        yield Heading(tr("More pictures"))
        yield from blocks
