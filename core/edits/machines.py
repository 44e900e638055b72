"""Edits of machines, meters and typed readings."""

from attrs import evolve

from core.edits.edit import Edit, checked_name, checked_number, found, next_number, replaced, without
from core.edits.plan import plan_without
from core.given_names import meter_of
from core.language import tr
from core.study import Machine, Meter, Study, TypedReading

#: name of the meter that is assumed where nobody says which one was used
DEFAULT_METER = "Meter"


def add_machine(study: Study, name: str) -> Edit:
    """Add a machine that has no log yet, for readings typed by hand."""
    study, machine = with_machine(study, checked_name(name))
    return Edit(study, tr("Add {name}", name=machine.name))


def rename_machine(study: Study, machine_id: str, name: str) -> Edit:
    """Give a machine another name."""
    machine = found(study.machines, machine_id, "machine")
    changed = evolve(machine, name=checked_name(name))
    return _machine_edit(
        study,
        changed,
        tr("Rename {name}", name=machine.name),
        f"machine name {machine_id}",
    )


def set_slot(study: Study, machine_id: str, slot: int) -> Edit:
    """Give a machine another colour and marker; a machine that had them takes its old ones."""
    machine = found(study.machines, machine_id, "machine")
    if slot < 0:
        raise ValueError(f"slot is {slot}; slots count from 0")
    machines = tuple(
        evolve(m, slot=slot if m.id == machine_id else machine.slot)
        if m.id == machine_id or m.slot == slot
        else m
        for m in study.machines
    )
    return Edit(
        evolve(study, machines=machines),
        tr("Set the marker of {name}", name=machine.name),
        f"slot {machine_id}",
    )


def merge_machines(study: Study, from_id: str, into_id: str) -> Edit:
    """Say that two machines are one: logs and readings of the first go to the second."""
    gone = found(study.machines, from_id, "machine")
    kept = found(study.machines, into_id, "machine")
    if from_id == into_id:
        raise ValueError("a machine cannot be merged into itself")
    known = {key for key, _ in kept.properties}
    both = kept.properties + tuple((key, value) for key, value in gone.properties if key not in known)
    merged = evolve(
        study,
        machines=without(replaced(study.machines, evolve(kept, properties=both)), [from_id]),
        plan=plan_without(study, machine_id=from_id),
        idle_loads=tuple(i for i in study.idle_loads if i.machine_id != from_id),
        logs=tuple(evolve(g, machine_id=into_id) if g.machine_id == from_id else g for g in study.logs),
        typed=tuple(evolve(t, machine_id=into_id) if t.machine_id == from_id else t for t in study.typed),
    )
    return Edit(merged, tr("Merge {gone} into {kept}", gone=gone.name, kept=kept.name))


def remove_machine(study: Study, machine_id: str) -> Edit:
    """Take a machine away with everything that was measured on it."""
    machine = found(study.machines, machine_id, "machine")
    logs = {log.id for log in study.logs_of(machine_id)}
    rest = evolve(
        study,
        machines=without(study.machines, [machine_id]),
        plan=plan_without(study, machine_id=machine_id),
        idle_loads=tuple(i for i in study.idle_loads if i.machine_id != machine_id),
        logs=without(study.logs, logs),
        runs=tuple(run for run in study.runs if run.log_id not in logs),
        step_names=tuple(name for name in study.step_names if name.log_id not in logs),
        typed=tuple(reading for reading in study.typed if reading.machine_id != machine_id),
    )
    return Edit(rest, tr("Remove {name}", name=machine.name))


def add_meter(study: Study, name: str) -> Edit:
    """Add a meter whose accuracy nobody has stated yet."""
    meter = Meter(f"m{next_number(study.meters, 'm')}", checked_name(name))
    return Edit(evolve(study, meters=(*study.meters, meter)), tr("Add {name}", name=meter.name))


def set_meter(
    study: Study,
    meter_id: str,
    *,
    name: str | None = None,
    gain_percent: float | None = None,
    offset_w: float | None = None,
) -> Edit:
    """Rename a meter or state its accuracy; what is None stays as it is.

    Parameters
    ----------
    study : Study
    meter_id : str
    name : str, optional
    gain_percent, offset_w : float, optional
        Half-widths, not negative. [%], [W] Giving either makes the accuracy a stated one.
    """
    meter = found(study.meters, meter_id, "meter")
    changed = evolve(
        meter,
        name=meter.name if name is None else checked_name(name),
        gain_percent=meter.gain_percent
        if gain_percent is None
        else checked_number(gain_percent, "gain_percent", 0.0),
        offset_w=meter.offset_w if offset_w is None else checked_number(offset_w, "offset_w", 0.0),
        stated=meter.stated or gain_percent is not None or offset_w is not None,
    )
    meters = replaced(study.meters, changed)
    return Edit(
        evolve(study, meters=meters),
        tr("Change {name}", name=meter.name),
        f"meter {meter_id}",
    )


def assign_meter(study: Study, log_id: str, meter_id: str) -> Edit:
    """Say with which meter a log was taken."""
    log = found(study.logs, log_id, "log")
    meter = found(study.meters, meter_id, "meter")
    logs = replaced(study.logs, evolve(log, meter_id=meter_id))
    return Edit(evolve(study, logs=logs), tr("Assign {name}", name=meter.name))


def assign_meter_to_all(study: Study, meter_id: str) -> Edit:
    """Say that one meter measured every machine, one after another: its error then cancels between them.

    Logs of a bed alone keep theirs: they were taken beside the log of the whole machine. Meters that nobody
    stated anything of and that are left without a log go.
    """
    meter = found(study.meters, meter_id, "meter")
    after = evolve(
        study,
        logs=tuple(log if log.of_bed else evolve(log, meter_id=meter_id) for log in study.logs),
        typed=tuple(evolve(reading, meter_id=meter_id) for reading in study.typed),
    )
    kept = {log.meter_id for log in after.logs} | {meter_id}
    kept |= {one for check in study.checks for one in (check.meter_id, check.other_id)}
    kept |= set(study.plan.meter_ids or ())
    for idle in after.meters:
        if idle.id not in kept and not idle.stated:
            after = remove_meter(after, idle.id).study
    return Edit(after, tr("Say that {name} measured all", name=meter.name))


def remove_meter(study: Study, meter_id: str) -> Edit:
    """Take a meter away that nothing was measured with, and its load checks.

    Raises
    ------
    ValueError
        If a log or a typed reading names it.
    """
    meter = found(study.meters, meter_id, "meter")
    in_use = {log.meter_id for log in study.logs} | {reading.meter_id for reading in study.typed}
    if meter_id in in_use:
        raise ValueError(f"{meter.name} is in use")
    checks = tuple(c for c in study.checks if meter_id not in (c.meter_id, c.other_id))
    plan = plan_without(study, meter_id=meter_id)
    rest = evolve(study, meters=without(study.meters, [meter_id]), checks=checks, plan=plan)
    return Edit(rest, tr("Remove {name}", name=meter.name))


def add_typed(
    study: Study,
    machine_id: str,
    energy_wh: float,
    *,
    seconds: float | None = None,
    step_wh: float = 1.0,
    note: str = "",
    meter_id: str | None = None,
) -> Edit:
    """Add a run of which only readings of a display are known.

    Parameters
    ----------
    study : Study
    machine_id : str
    energy_wh : float
        Difference of the two readings, not negative. [Wh]
    seconds : float, optional
        How long the run took, more than 0. [s]
    step_wh : float
        Last digit of the display. [Wh]
    note : str
    meter_id : str, optional
        The study's first meter (or a new one of unstated accuracy) if nobody says which.
    """
    machine = found(study.machines, machine_id, "machine")
    if seconds is not None and checked_number(seconds, "seconds", 0.0) == 0:
        raise ValueError("a run takes some time")
    if meter_id is None:
        study, meter = with_meter(study)
    else:
        meter = found(study.meters, meter_id, "meter")
    reading = TypedReading(
        id=f"t{next_number(study.typed, 't')}",
        machine_id=machine_id,
        meter_id=meter.id,
        energy_wh=checked_number(energy_wh, "energy_wh", 0.0),
        seconds=None if seconds is None else float(seconds),
        step_wh=checked_number(step_wh, "step_wh", 0.0),
        note=" ".join(note.split()),
    )
    return Edit(
        evolve(study, typed=(*study.typed, reading)), tr("Add a reading of {name}", name=machine.name)
    )


def type_reading(
    study: Study,
    name: str,
    energy_wh: float,
    *,
    seconds: float | None = None,
    step_wh: float = 1.0,
    note: str = "",
    meter_id: str | None = None,
) -> Edit:
    """Add a reading of a machine by its name, new where there is none of that name.

    Parameters are those of `add_typed`; where nobody says which meter it was, it is the one that measured the
    machine's other runs, or else a new one: taking two machines' readings for one meter's would make its
    error cancel in their ratio with nothing to show for it.
    """
    machine = next((m for m in study.machines if m.name == name), None)
    if machine is None:
        study, machine = with_machine(study, checked_name(name))
    if meter_id is None:
        study, meter = with_usual_meter(study, machine)
        meter_id = meter.id
    return add_typed(
        study, machine.id, energy_wh, seconds=seconds, step_wh=step_wh, note=note, meter_id=meter_id
    )


def remove_typed(study: Study, typed_id: str) -> Edit:
    """Take a typed reading away."""
    reading = found(study.typed, typed_id, "typed reading")
    rest = evolve(study, typed=without(study.typed, [typed_id]))
    return Edit(rest, tr("Remove a reading of {name}", name=study.machine(reading.machine_id).name))


def leave_out_typed(study: Study, typed_id: str, why: str) -> Edit:
    """Leave a typed reading out of the comparison, with the user's reason."""
    reading = found(study.typed, typed_id, "typed reading")
    changed = evolve(reading, included=False, why_left_out=" ".join(why.split()))
    label = tr("Leave out a reading of {name}", name=study.machine(reading.machine_id).name)
    return Edit(
        evolve(study, typed=replaced(study.typed, changed)),
        label,
        f"leave out {typed_id}",
    )


def include_typed(study: Study, typed_id: str) -> Edit:
    """Count a typed reading again."""
    reading = found(study.typed, typed_id, "typed reading")
    changed = evolve(reading, included=True, why_left_out="")
    label = tr("Include a reading of {name}", name=study.machine(reading.machine_id).name)
    return Edit(evolve(study, typed=replaced(study.typed, changed)), label)


def with_machine(study: Study, name: str) -> tuple[Study, Machine]:
    """`study` with a new machine in the lowest free slot, and that machine."""
    taken = {machine.slot for machine in study.machines}
    slot = next(i for i in range(len(taken) + 1) if i not in taken)
    machine = Machine(f"a{next_number(study.machines, 'a')}", name, slot)
    return evolve(study, machines=(*study.machines, machine)), machine


def with_meter(study: Study) -> tuple[Study, Meter]:
    """`study` with a meter in it, and its first meter."""
    if study.meters:
        return study, study.meters[0]
    meter = Meter("m1", DEFAULT_METER)
    return evolve(study, meters=(meter,)), meter


def with_usual_meter(study: Study, machine: Machine) -> tuple[Study, Meter]:
    """`study`, and the meter a machine's other runs were measured with, or a new one of unstated accuracy."""
    known = [log.meter_id for log in study.logs_of(machine.id) if not log.of_bed]
    known += [reading.meter_id for reading in study.typed if reading.machine_id == machine.id]
    if known:
        return study, study.meter(known[0])
    name = meter_of(machine.name)
    meter = next((m for m in study.meters if m.name == name), None)
    return with_meter_of(study, machine) if meter is None else (study, meter)


def with_meter_of(study: Study, machine: Machine) -> tuple[Study, Meter]:
    """`study` with a new meter that is called after a machine, and that meter."""
    study = add_meter(study, meter_of(machine.name)).study
    return study, study.meters[-1]


def _machine_edit(study: Study, machine: Machine, label: str, merge_key: str) -> Edit:
    return Edit(evolve(study, machines=replaced(study.machines, machine)), label, merge_key)
