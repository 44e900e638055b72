"""The first part of a report: the answer, its conditions, the table behind it, machine against machine."""

from collections.abc import Iterator, Mapping, Sequence

from attrs import evolve

from core.language import mark, tr
from core.publish.sources import Sources
from core.report.blocks import Block, Heading, Paragraph, PictureBlock, TableBlock
from core.report.pictures import Picture
from core.results import fairness_answer
from core.tables import Table

INVENTED = mark("All numbers are invented: this is a demonstration.")
_READING = mark(
    "± is half the 95 % interval, from the spread between runs and what the meters leave open. Parts per "
    "kWh is 1000 Wh divided by the energy per part. Bed share is the heated bed’s part of the energy."
)
_STANDBY = mark(
    "Standby power is the mean of the longest steady rest of a quarter of an hour or more; “lowest” marks "
    "the low end of what is drawn at rest, where no rest is that long."
)


def answering(sources: Sources, shown: Mapping[str, Table], pictures: Sequence[Picture]) -> Iterator[Block]:
    """The answer first; the first picture belongs to it, the others follow their tables."""
    comparison = sources.comparison
    if sources.study.invented:
        yield Paragraph(tr(INVENTED), "caution")
    yield Paragraph(comparison.headline, "answer")
    if comparison.conditions:
        yield Paragraph(comparison.conditions, "conditions")
    if any(finding.level != "note" for finding in comparison.open_findings):
        yield Paragraph(fairness_answer.headline(comparison), lead=tr("Fairness."))
    if "comparison" in shown:
        title = tr("Machines, least energy first") if len(comparison.machines) > 1 else tr("The machine")
        notes = (tr(_READING), tr(_STANDBY)) if "standby" in shown else (tr(_READING),)
        yield TableBlock(evolve(shown["comparison"], title=title, notes=notes))
    yield from (PictureBlock(picture) for picture in pictures if not _is_like(picture))
    if "pairs" in shown:
        yield Heading(tr("Machine against machine"))
        yield Paragraph(
            tr(
                "Each machine against each: how much less or more the first one needs. A difference counts "
                "as shown only where chance and the meters together would hardly make it."
            )
        )
        yield TableBlock(evolve(shown["pairs"], title=tr("Every pair")))
    if "like-for-like" in shown:
        yield from _like_for_like(shown["like-for-like"], pictures)
    if "properties" in shown:
        yield Heading(tr("The machines"))
        yield TableBlock(shown["properties"])


def _is_like(picture: Picture) -> bool:
    return picture.key.startswith("like-for-like")


def _like_for_like(table: Table, pictures: Sequence[Picture]) -> Iterator[Block]:
    said, conditions = table.notes[:2]
    yield Heading(tr("Like for like"))
    yield Paragraph(said, "answer")
    yield Paragraph(conditions, "conditions")
    yield Paragraph(
        tr(
            "Measured and adjusted values stand side by side; the difference is what a model makes of other "
            "temperatures, with its own uncertainty."
        )
    )
    yield from (PictureBlock(picture) for picture in pictures if _is_like(picture))
    yield TableBlock(evolve(table, title=tr("Measured, and made like for like"), notes=table.notes[2:]))
