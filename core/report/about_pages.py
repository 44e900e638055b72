"""What the other pages tell: line-up, beds, loads, standby and cost, each with its sentence first."""

from collections.abc import Callable, Iterator, Mapping, Sequence

from core.language import tr
from core.line_up.answer import answer
from core.line_up.choices import LineUp
from core.publish.sources import MOST_LINED_UP, Sources
from core.report.blocks import Block, Heading, Paragraph, PictureBlock, TableBlock
from core.report.pictures import Picture
from core.results import bed_answer, cost_answer, load_answer
from core.tables import Table

_Take = Callable[[str], Sequence[Picture]]


def pages(sources: Sources, shown: Mapping[str, Table], take: _Take) -> Iterator[Block]:
    """The parts of all pages for which the study holds something.

    Parameters
    ----------
    sources : Sources
    shown : mapping of key to Table
    take : callable
        The pictures of a page.
    """
    if sources.strands:
        said = answer(sources.strands[:MOST_LINED_UP], sources.comparison, LineUp())
        yield from _part(tr("Line-up"), said.headline, said.conditions, take("Line-up"), shown, ("line-up",))
    if any(machine.held for machine in sources.beds.machines):
        yield from _part(
            tr("Beds held warm"),
            bed_answer.headline(sources.beds),
            bed_answer.conditions(sources.beds, sources.study),
            take("Bed"),
            shown,
            ("held-beds", "cooler-bed"),
        )
        yield Paragraph(tr(bed_answer.LOOSE), "caution")
    if sources.loads.tested:
        yield from _part(
            tr("Loads"),
            load_answer.headline(sources.loads),
            load_answer.conditions(sources.loads, sources.study),
            take("Loads"),
            shown,
            ("loads",),
        )
        idle = (load_answer.idle_sentence(machine) for machine in sources.loads.tested)
        yield from (Paragraph(sentence) for sentence in idle if sentence)
    if "standby" in shown or "print" in shown:
        yield from _part(
            tr("Standby and cost"),
            sources.costs.headline,
            sources.costs.conditions,
            take("Standby and cost"),
            shown,
            ("standby", "hours", "print"),
        )
        yield from (Paragraph(tr(text), "caution") for text in (cost_answer.HOT, cost_answer.MAINS))
        yield Paragraph(tr(cost_answer.ESTIMATE), "note")


def _part(
    title: str,
    said: str,
    conditions: str,
    pictures: Sequence[Picture],
    shown: Mapping[str, Table],
    keys: Sequence[str],
) -> Iterator[Block]:
    yield Heading(title)
    yield Paragraph(said, "answer")
    if conditions:
        yield Paragraph(conditions, "conditions")
    yield from (PictureBlock(picture) for picture in pictures)
    yield from (TableBlock(shown[key]) for key in keys if key in shown)
