"""Edits of the conditions under which a run was made: temperatures, a bed left off, a meter on the bed."""

from typing import Any

from attrs import evolve

from core.edits.edit import Edit, checked_number, found, replaced, title
from core.language import tr
from core.study import Study

#: no colder than absolute zero [degC]
_COLDEST_C = -273.15
#: what of a run can be noted, as the names of its fields
TEMPERATURES = ("bed_c", "room_c", "nozzle_c", "first_layer_bed_c", "first_layer_nozzle_c")


def mark_bed_off(study: Study, run_id: str, bed_off: bool = True) -> Edit:
    """Say that a run of the part was made with the bed off, or take it back.

    Such a run tells the bed's part of the machine's other runs; it is not compared itself. For want of the
    bed's energy the program may well have taken it for another part, or for a hold test: then it becomes a
    run with this, and taking it back hands that back too.
    """
    run = found(study.runs, run_id, "run")
    named = title(study, run)
    if bed_off:
        label = tr("Say that the bed was off in {run}", run=named)
    else:
        label = tr("Say that the bed was on in {run}", run=named)
    changed = evolve(run, set_bed_off=bed_off)
    if bed_off and run.kind != "run":
        changed = evolve(changed, set_kind="run")
    elif not bed_off and run.found_kind != "run" and run.set_kind == "run":
        changed = evolve(changed, set_kind=None)
    return Edit(evolve(study, runs=replaced(study.runs, changed)), label)


def note_temperatures(study: Study, run_id: str, bed_c: float | None, room_c: float | None) -> Edit:
    """Note the temperatures of bed and room during a stretch; None where they are not known.

    Parameters
    ----------
    study : Study
    run_id : str
    bed_c, room_c : float or None
        [degC]
    """
    run = found(study.runs, run_id, "run")
    changed = evolve(run, bed_c=_checked_c(bed_c, "bed_c"), room_c=_checked_c(room_c, "room_c"))
    label = tr("Note temperatures of {title}", title=title(study, run))
    return Edit(evolve(study, runs=replaced(study.runs, changed)), label, f"temperatures {run_id}")


def note_making(
    study: Study,
    run_id: str,
    nozzle_c: float | None,
    first_layer_bed_c: float | None,
    first_layer_nozzle_c: float | None,
) -> Edit:
    """Note the temperatures with which a part was made, beside those of bed and room; None where not known.

    Parameters
    ----------
    study : Study
    run_id : str
    nozzle_c, first_layer_bed_c, first_layer_nozzle_c : float or None
        Of the nozzle, and of bed and nozzle at the first layer. [degC]
    """
    run = found(study.runs, run_id, "run")
    changed = evolve(
        run,
        nozzle_c=_checked_c(nozzle_c, "nozzle_c"),
        first_layer_bed_c=_checked_c(first_layer_bed_c, "first_layer_bed_c"),
        first_layer_nozzle_c=_checked_c(first_layer_nozzle_c, "first_layer_nozzle_c"),
    )
    label = tr("Note temperatures of {title}", title=title(study, run))
    return Edit(evolve(study, runs=replaced(study.runs, changed)), label, f"making {run_id}")


def note_machine(study: Study, machine_id: str, name: str, value_c: float | None) -> Edit:
    """Note one temperature in all runs of a machine that count, logged or typed in; None takes it back.

    Parameters
    ----------
    study : Study
    machine_id : str
    name : {"bed_c", "room_c", "nozzle_c", "first_layer_bed_c", "first_layer_nozzle_c"}
    value_c : float or None
        [degC]
    """
    machine = found(study.machines, machine_id, "machine")
    if name not in TEMPERATURES:
        raise ValueError(f"a run has no temperature {name!r}")
    checked: dict[str, Any] = {name: _checked_c(value_c, name)}  # the name decides which field it is
    logs = {log.id for log in study.logs_of(machine_id) if not log.of_bed}
    runs = tuple(evolve(r, **checked) if r.log_id in logs and r.included else r for r in study.runs)
    typed = tuple(
        evolve(t, **checked) if t.machine_id == machine_id and t.included else t for t in study.typed
    )
    label = tr("Note a temperature of the runs of {name}", name=machine.name)
    return Edit(
        evolve(study, runs=runs, typed=typed),
        label,
        f"conditions {machine_id} {name}",
    )


def set_room_c(study: Study, room_c: float | None) -> Edit:
    """Note the room temperature of the test, or that it is not known. [degC]"""
    checked = _checked_c(room_c, "room_c")
    return Edit(evolve(study, room_c=checked), tr("Set the room temperature"), "room temperature")


def mark_log_of_bed(study: Study, log_id: str, of_bed: bool = True) -> Edit:
    """Say that a log is of the machine's bed alone, by a meter or a channel of its own."""
    log = found(study.logs, log_id, "log")
    name = study.machine(log.machine_id).name
    if of_bed:
        label = tr("Say that a log is of the bed of {machine}", machine=name)
    else:
        label = tr("Say that a log is of all of {machine}", machine=name)
    return Edit(evolve(study, logs=replaced(study.logs, evolve(log, of_bed=of_bed))), label)


def _checked_c(value: float | None, name: str) -> float | None:
    return None if value is None else checked_number(value, name, _COLDEST_C)
