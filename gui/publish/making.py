"""From picks to pictures and files: what the Publish page does outside the GUI thread."""

from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Final

from attrs import evolve, frozen

from core.figures.calendar_values import CalendarFigure
from core.figures.values import ComparisonFigure, Figure
from core.language import tr
from core.progress import Progress
from core.publish.choices import MOST_ON_ONE, Pick, Publishing
from core.publish.shelf import Entry, entry_of
from core.publish.sources import Sources
from core.report.tables import StudyTable
from core.tables import to_csv
from gui.charts.sheet import Part, built_up
from gui.publish.encode import Ending, file_bytes
from gui.publish.picture import DrawnPicture, draw

#: name of the picture that holds several figures
TOGETHER: Final = "together"


@frozen(eq=False)
class Desk:
    """What lies ready to be published: results, what there is of them, and how it is to look.

    Parameters
    ----------
    sources : Sources
        Of the machines shown.
    entries : tuple of Entry
        The shelf.
    publishing : Publishing
    """

    sources: Sources
    entries: tuple[Entry, ...]
    publishing: Publishing

    def entry(self, key: str) -> Entry | None:
        """The entry of a key, also of a line-up as a person arranged it."""
        pick = self.publishing.pick(key) or Pick(key)
        return entry_of(pick, self.entries)

    @property
    def picked(self) -> tuple[Entry, ...]:
        """The entries that are picked and that the study still has, in their order."""
        found = (entry_of(pick, self.entries) for pick in self.publishing.picks)
        return tuple(entry for entry in found if entry is not None)

    @property
    def together(self) -> tuple[Entry, ...]:
        """The figures that share one picture."""
        figures = [entry for entry in self.picked if not entry.is_table]
        return tuple(figures[:MOST_ON_ONE]) if self.publishing.is_together else ()

    def picture(self, key: str) -> DrawnPicture | None:
        """The picture of a figure, or of those that share one; None where there is nothing to show."""
        shared = [entry.key for entry in self.together]
        return self._drawn(self.together if key in (TOGETHER, *shared) else self._one(key))

    def _one(self, key: str) -> tuple[Entry, ...]:
        entry = self.entry(key)
        return () if entry is None or entry.is_table else (entry,)

    def _drawn(self, entries: Sequence[Entry]) -> DrawnPicture | None:
        parts = [
            Part(figure, self.title_of(entry) or entry.title)
            for entry in entries
            for figure in [entry.figure(self.sources)]
            if figure is not None
        ]
        if not parts:
            return None
        own = next((title for entry in entries[:1] if (title := self.title_of(entry))), "")
        title = own if len(parts) == 1 else ""
        return draw(parts, self.publishing, self.sources.study, title)

    def title_of(self, entry: Entry) -> str:
        """The user's own title of an entry; empty where there is none."""
        pick = self.publishing.pick(entry.key)
        return "" if pick is None else pick.title

    def figure(self, key: str) -> Figure | None:
        """The figure of a key."""
        entry = self.entry(key)
        return None if entry is None else entry.figure(self.sources)

    def table(self, key: str) -> StudyTable | None:
        """The table of a key."""
        entry = self.entry(key)
        return None if entry is None else entry.table(self.sources)


def save_picked(
    desk: Desk, folder: Path, ending: Ending, ratio: float, progress: Progress
) -> tuple[Path, ...]:
    """Write every pick: figures as pictures, tables as CSV, each under its number and its key.

    Raises
    ------
    OSError
        If a file cannot be written; those before it are there.
    """
    written: list[Path] = []
    entries = desk.picked
    shared = desk.together
    for place, entry in enumerate(entries):
        progress(place / len(entries), tr("saving {name}", name=entry.title))
        if entry in shared[1:]:
            continue  # it is on the picture of the first of them
        name = TOGETHER if entry in shared else entry.key
        path = folder / f"{len(written) + 1:02}-{name}"
        if entry.is_table:
            table = entry.table(desk.sources)
            if table is not None:
                path = path.with_name(f"{path.name}.csv")
                path.write_text(to_csv(table.data), encoding="utf-8", newline="")
                written.append(path)
            continue
        picture = desk.picture(entry.key)
        if picture is not None:
            path = path.with_name(f"{path.name}.{ending}")
            path.write_bytes(file_bytes(picture, ending, ratio))
            written.append(path)
    return tuple(written)


def slots_in_order(figures: Sequence[Figure], sources: Sources) -> tuple[int, ...]:
    """The machines of a picture as they come in: from the first row down, else as in the study."""
    slots = {machine.id: machine.slot for machine in sources.study.machines}
    ids: list[str] = []
    for figure in figures:
        if isinstance(figure, ComparisonFigure | CalendarFigure):
            ids += [row.machine_id for row in figure.rows]
    return tuple(dict.fromkeys(slots[m] for m in (*ids, *slots) if m in slots))


def frames(picture: DrawnPicture, slots: Sequence[int], *, own_title: bool) -> Iterator[DrawnPicture]:
    """The picture built up: first without machines, then with one more each, everything else in its place.

    A title that the data give is the answer, and comes with the last picture; one of the user's own is there
    from the first.

    Parameters
    ----------
    picture : DrawnPicture
    slots : sequence of int
        Of its machines, in the order in which they come in; those that it does not show are passed over.
    own_title : bool
        Whether its title is the user's.
    """
    shown = {item.slot for item in picture.scene.items}
    order = [slot for slot in slots if slot in shown]
    for many in range(len(order)):
        yield evolve(picture, scene=built_up(picture.scene, order[:many], has_title=own_title))
    yield picture


def save_sequence(
    desk: Desk, key: str, folder: Path, ending: Ending, ratio: float, progress: Progress
) -> tuple[Path, ...]:
    """Write the pictures that build a chart up machine by machine, numbered from 00.

    Raises
    ------
    OSError
        If a file cannot be written; those before it are there.
    """
    picture = desk.picture(key)
    if picture is None:
        return ()
    shared = [entry.key for entry in desk.together]
    keys = shared if key in (TOGETHER, *shared) else [key]
    figures = [figure for k in keys for figure in [desk.figure(k)] if figure is not None]
    slots = slots_in_order(figures, desk.sources)
    entry = desk.entry(key)
    has_own = len(figures) == 1 and entry is not None and bool(desk.title_of(entry))
    name = TOGETHER if len(figures) > 1 else key
    made = list(frames(picture, slots, own_title=has_own))
    written = []
    for place, frame in enumerate(made):
        saving = tr("saving picture {number} of {of}", number=place + 1, of=len(made))
        progress(place / len(made), saving)
        path = folder / f"{name}-{place:02}.{ending}"
        path.write_bytes(file_bytes(frame, ending, ratio))
        written.append(path)
    return tuple(written)
