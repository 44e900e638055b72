"""What a study, its part and its meters are called until somebody names them, in the language spoken."""

from attrs import evolve

from core.language import in_english, tr
from core.study import Study

#: stands where a machine's name does, and in no name
_MACHINE = "\0"


def untitled() -> str:
    """Name of a study that nobody has named."""
    return tr("Untitled study")


def unnamed_part() -> str:
    """Name of a part that nobody has named."""
    return tr("part")


def meter_of(machine: str) -> str:
    """Name of the meter that a machine was measured with, as far as anybody knows."""
    return tr("Meter of {machine}", machine=machine)


def called_in_english(study: Study) -> Study:
    """The study with the names that the program gave in the language spoken now put into English.

    What a person has named stays. For what is English whatever the window speaks.
    """
    here, around = (untitled(), unnamed_part()), meter_of(_MACHINE)
    with in_english():
        there, around_there = (untitled(), unnamed_part()), meter_of(_MACHINE)
    if (here, around) == (there, around_there):
        return study
    before, behind = around.split(_MACHINE)
    meters = tuple(
        evolve(m, name=around_there.replace(_MACHINE, m.name[len(before) : len(m.name) - len(behind)]))
        if m.name.startswith(before) and m.name.endswith(behind)
        else m
        for m in study.meters
    )
    return evolve(
        study,
        name=there[0] if study.name == here[0] else study.name,
        part=there[1] if study.part == here[1] else study.part,
        meters=meters,
    )
