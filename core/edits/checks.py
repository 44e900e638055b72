"""Edits of load checks: one steady load read with two meters."""

from typing import Literal

from attrs import evolve

from core.edits.edit import Edit, checked_number, found, next_number, replaced, without
from core.language import tr
from core.study import LoadCheck, Study

#: an energy takes time [s]
_SHORTEST_S = 1.0
#: readings further apart than this ratio are a slip, such as Wh for kWh: no meter errs so much
_FARTHEST = 2.0


def is_one_load(reading: float, other_reading: float) -> bool:
    """Whether two readings are near enough to each other to be of one load."""
    low, high = sorted((reading, other_reading))
    return low > 0 and high <= _FARTHEST * low


def add_load_check(
    study: Study,
    meter_id: str,
    other_id: str,
    reading: float,
    other_reading: float,
    *,
    unit: Literal["Wh", "W"] = "Wh",
    step: float = 0.0,
    other_step: float = 0.0,
    seconds: float | None = None,
    note: str = "",
) -> Edit:
    """Note what two meters showed of one steady load.

    Parameters
    ----------
    study : Study
    meter_id, other_id : str
        Two different meters.
    reading, other_reading : float
        What they showed, more than 0. [Wh] or [W] by `unit`
    unit : {"Wh", "W"}
    step, other_step : float
        Last digits of the displays, not negative.
    seconds : float, optional
        How long an energy was measured: needed for one, and of no use for a power. [s]
    note : str
        What the load was.

    Raises
    ------
    ValueError
        If the meters are one, a reading is not more than 0, the readings are too far apart for one load, or
        an energy has no duration.
    """
    check = _checked(
        study,
        LoadCheck(
            id=f"c{next_number(study.checks, 'c')}",
            meter_id=meter_id,
            other_id=other_id,
            reading=reading,
            other_reading=other_reading,
            unit=unit,
            step=step,
            other_step=other_step,
            seconds=seconds,
            note=" ".join(note.split()),
        ),
    )
    return Edit(
        evolve(study, checks=(*study.checks, check)), tr("Add a check of {names}", names=_names(study, check))
    )


def set_load_check(study: Study, check: LoadCheck) -> Edit:
    """Put another version of a load check in its place.

    Raises
    ------
    ValueError
        As for `add_load_check`, or if there is no check of this identifier.
    """
    found(study.checks, check.id, "load check")
    checked = _checked(study, check)
    label = tr("Change the check of {names}", names=_names(study, checked))
    return Edit(evolve(study, checks=replaced(study.checks, checked)), label, f"check {check.id}")


def remove_load_check(study: Study, check_id: str) -> Edit:
    """Take a load check away."""
    check = found(study.checks, check_id, "load check")
    label = tr("Remove the check of {names}", names=_names(study, check))
    return Edit(evolve(study, checks=without(study.checks, [check_id])), label)


def _checked(study: Study, check: LoadCheck) -> LoadCheck:
    for meter_id in (check.meter_id, check.other_id):
        found(study.meters, meter_id, "meter")
    if check.meter_id == check.other_id:
        raise ValueError("a load check takes two meters")
    readings = [checked_number(value, "reading", 0.0) for value in (check.reading, check.other_reading)]
    if 0 in readings:
        raise ValueError("a load check needs a load")
    if not is_one_load(*readings):
        raise ValueError(f"{readings[0]} and {readings[1]} are no readings of one load")
    seconds = None
    if check.unit == "Wh":
        if check.seconds is None:
            raise ValueError("an energy needs the time it took")
        seconds = checked_number(check.seconds, "seconds", _SHORTEST_S)
    return evolve(
        check,
        reading=readings[0],
        other_reading=readings[1],
        step=checked_number(check.step, "step", 0.0),
        other_step=checked_number(check.other_step, "other_step", 0.0),
        seconds=seconds,
    )


def _names(study: Study, check: LoadCheck) -> str:
    return tr(
        "{meter} and {other}", meter=study.meter(check.meter_id).name, other=study.meter(check.other_id).name
    )
