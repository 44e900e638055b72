"""What the Publish page has worked out in the pool: the shelf of a study, and the picture that is shown."""

from collections.abc import Sequence
from itertools import count as counting

from attrs import fields, frozen
from PySide6.QtGui import QImage

from core.figures.line_up_values import LineUpFigure
from core.language import tr
from core.progress import Progress
from core.publish.choices import Pick, Publishing
from core.publish.shelf import AS_ARRANGED, Entry, shelf
from core.publish.sources import Sources
from core.results.values import Comparison
from core.study import Study
from gui.publish.encode import image_of
from gui.publish.making import Desk
from gui.publish.picture import DrawnPicture


@frozen(eq=False)
class Shelved:
    """The shelf of a study, with what it was made of."""

    study: Study
    comparison: Comparison
    log_ids: frozenset[str]
    sources: Sources
    entries: tuple[Entry, ...]


@frozen(eq=False)
class Drawn:
    """A picture with its pixels, and what was asked for."""

    desk: Desk
    key: str
    picture: DrawnPicture | None
    image: QImage


@frozen(eq=False)
class Finder:
    """Puts the figures of a study on the shelf, in the pool."""

    study: Study
    comparison: Comparison
    log_ids: frozenset[str]
    sources: Sources

    def __call__(self, progress: Progress) -> Shelved:
        progress(0.0, tr("putting figures on the shelf"))
        entries = shelf(self.sources)
        return Shelved(self.study, self.comparison, self.log_ids, self.sources, entries)


@frozen(eq=False)
class Drawer:
    """Draws the picture that is shown, in the pool."""

    desk: Desk
    key: str

    def __call__(self, progress: Progress) -> Drawn:
        progress(0.0, tr("drawing the picture"))
        picture = self.desk.picture(self.key)
        image = QImage() if picture is None else image_of(picture)
        return Drawn(self.desk, self.key, picture, image)


def is_shelf_of(found: Shelved, study: Study, comparison: Comparison, log_ids: frozenset[str]) -> bool:
    """Whether a shelf is that of a study, whatever is picked and however it looks."""
    return (
        found.log_ids == log_ids
        and found.sources.machine_ids == study.publishing.machine_ids
        and is_same_but_publishing(found.study, study)
        and (found.comparison is comparison or found.comparison == comparison)
    )


def is_same_but_publishing(one: Study, other: Study) -> bool:
    """Whether two studies differ in nothing but what is published: then their results are the same."""
    names = (f.name for f in fields(Study) if f.name != "publishing")
    return all(getattr(one, name) is getattr(other, name) for name in names)


def is_asked_again(asked: tuple[object, ...], before: tuple[object, ...]) -> bool:
    """Whether the same picture of the same results is asked for."""
    return asked[0] is before[0] and asked[1:] == before[1:]


def with_arranged(entries: Sequence[Entry], arranged: Sequence[Entry]) -> tuple[Entry, ...]:
    """The shelf with line-ups that a person arranged behind the others of their page."""
    if not arranged:
        return tuple(entries)
    last = max((i for i, entry in enumerate(entries) if entry.page == arranged[0].page), default=-1)
    return (*entries[: last + 1], *arranged, *entries[last + 1 :])


def line_up_pick(figure: LineUpFigure, publishing: Publishing) -> Pick:
    """A pick of a line-up as it is shown, under a number that is free; one that is picked keeps its own."""
    run_ids = figure.run_ids
    for pick in publishing.picks:
        if pick.line_up == figure.choices and pick.run_ids == run_ids:
            return pick
    taken = set(publishing.keys)
    key = next(k for n in counting(1) if (k := f"{AS_ARRANGED}-{n}") not in taken)
    return Pick(key, line_up=figure.choices, run_ids=run_ids)
