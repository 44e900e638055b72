"""Edits of the study as a whole: its name, its part, and the conditions of the comparison."""

from typing import get_args

from attrs import evolve

from core.edits.edit import Edit, checked_name, checked_number
from core.given_names import unnamed_part, untitled
from core.language import tr
from core.study import Boundary, Study


def new_study(study_id: str, *, name: str = "", invented: bool = False) -> Edit:
    """Start an empty study; what nobody has named is called so in the language spoken.

    Parameters
    ----------
    study_id : str
        Unique in the world; made by whoever makes the file.
    name : str
        Empty for a study that nobody has named.
    invented : bool
        Whether its numbers are made up, as those of the demo are; it is then said wherever they are shown.
    """
    called = checked_name(name) if name else untitled()
    return Edit(Study(id=study_id, name=called, part=unnamed_part(), invented=invented), tr("New study"))


def rename_study(study: Study, name: str) -> Edit:
    """Give the study another name."""
    return Edit(evolve(study, name=checked_name(name)), tr("Rename the study"), "study name")


def rename_part(study: Study, part: str) -> Edit:
    """Say what the test part is called."""
    return Edit(evolve(study, part=checked_name(part)), tr("Rename the part"), "part name")


def set_boundary(study: Study, boundary: Boundary) -> Edit:
    """Choose what counts as a run, for the whole comparison.

    Raises
    ------
    ValueError
        If there is no such boundary.
    """
    if boundary not in get_args(Boundary):
        raise ValueError(f"there is no boundary {boundary!r}")
    return Edit(evolve(study, boundary=boundary), tr("Count {boundary}", boundary=tr(boundary)))


def set_bed_c(study: Study, bed_c: float | None) -> Edit:
    """Note the bed temperature of the test, or that it is not known. [degC]"""
    checked = None if bed_c is None else checked_number(bed_c, "bed_c", -273.15)
    return Edit(evolve(study, bed_c=checked), tr("Set the bed temperature"), "bed temperature")
