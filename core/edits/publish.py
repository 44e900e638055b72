"""Edits of what is to be published, and how its pictures look."""

from attrs import evolve

from core.edits.edit import Edit
from core.language import tr
from core.publish.choices import SIDE_PX, Pick, Publishing
from core.study import Study

#: what is typed as a title or a note is kept up to this length
MOST_LETTERS = 300


def set_publishing(study: Study, publishing: Publishing, what: str = "") -> Edit:
    """Publish other figures or tables, or the same in another way.

    Parameters
    ----------
    study : Study
    publishing : Publishing
        Titles and the note are put on one line and cut to `MOST_LETTERS`; machines that the study has no more
        are dropped.
    what : str
        What changed, such as ``"title"``: changes of the same that follow each other are one step.

    Raises
    ------
    ValueError
        If a key is picked twice, a machine is shown twice, or a side is out of bounds.
    """
    if len(set(publishing.keys)) < len(publishing.picks):
        raise ValueError("a figure is picked twice")
    if len(set(publishing.machine_ids)) < len(publishing.machine_ids):
        raise ValueError("a machine is shown twice")
    for side in (publishing.width_px, publishing.height_px):
        if not SIDE_PX[0] <= side <= SIDE_PX[1]:
            raise ValueError(f"a side of {side} px; it must lie between {SIDE_PX[0]} and {SIDE_PX[1]}")
    picks = tuple(evolve(pick, title=_one_line(pick.title)) for pick in publishing.picks)
    known = {machine.id for machine in study.machines}
    cleaned = evolve(
        publishing,
        picks=picks,
        note=_one_line(publishing.note),
        machine_ids=tuple(m for m in publishing.machine_ids if m in known),
        highlighted=publishing.highlighted if publishing.highlighted in known else "",
    )
    label = tr("Set the {what} of pictures", what=tr(what)) if what else tr("Change what is published")
    return Edit(evolve(study, publishing=cleaned), label, f"publishing {what}" if what else None)


def add_pick(study: Study, pick: Pick) -> Edit:
    """Add a figure or table to what is published; one that is picked already takes its place."""
    publishing = study.publishing
    picks = tuple(p for p in publishing.picks if p.key != pick.key)
    changed = evolve(publishing, picks=(*picks, pick))
    return Edit(set_publishing(study, changed).study, tr("Add to what is published"))


def remove_pick(study: Study, key: str) -> Edit:
    """Take a figure or table out of what is published.

    Raises
    ------
    ValueError
        If it is not picked.
    """
    publishing = study.publishing
    if publishing.pick(key) is None:
        raise ValueError(f"{key!r} is not picked")
    picks = tuple(p for p in publishing.picks if p.key != key)
    return Edit(
        evolve(study, publishing=evolve(publishing, picks=picks)), tr("Take out of what is published")
    )


def _one_line(text: str) -> str:
    return " ".join(text.split())[:MOST_LETTERS]
