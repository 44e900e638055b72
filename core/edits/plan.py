"""Edits of the plan of the next test."""

from typing import Literal, get_args

from attrs import evolve

from core.edits.edit import Edit, checked_number, found
from core.language import tr
from core.plan.values import DisplayUnit, ExtraRun, Plan, StartingState
from core.study import Study

#: no colder than absolute zero [degC]
_COLDEST_C = -273.15
#: more than this nobody makes
MOST_REPEATS = 100
PlanTemperature = Literal["bed_c", "room_c", "nozzle_c", "first_layer_bed_c", "first_layer_nozzle_c"]


def plan_machine(study: Study, machine_id: str, takes_part: bool = True) -> Edit:
    """Take a machine into the plan, or leave it out; runs of it beyond the blocks go with it."""
    machine = found(study.machines, machine_id, "machine")
    chosen = {m.id for m in study.machines if _is_in(study.plan.machine_ids, m.id)}
    chosen = chosen | {machine_id} if takes_part else chosen - {machine_id}
    plan = study.plan
    changed = evolve(
        plan,
        machine_ids=_chosen([m.id for m in study.machines], chosen),
        extra=tuple(e for e in plan.extra if takes_part or e.machine_id != machine_id),
    )
    label = (
        tr("Take {name} into the plan", name=machine.name)
        if takes_part
        else tr("Leave {name} out of the plan", name=machine.name)
    )
    return Edit(evolve(study, plan=changed), label)


def plan_meter(study: Study, meter_id: str, takes_part: bool = True) -> Edit:
    """Take a meter into the plan, or leave it out."""
    meter = found(study.meters, meter_id, "meter")
    chosen = {m.id for m in study.meters if _is_in(study.plan.meter_ids, m.id)}
    chosen = chosen | {meter_id} if takes_part else chosen - {meter_id}
    changed = evolve(study.plan, meter_ids=_chosen([m.id for m in study.meters], chosen))
    label = (
        tr("Take {name} into the plan", name=meter.name)
        if takes_part
        else tr("Leave {name} out of the plan", name=meter.name)
    )
    return Edit(evolve(study, plan=changed), label)


def plan_repeats(study: Study, repeats: int) -> Edit:
    """Say how many blocks are made: in each every machine makes the part once."""
    if not 1 <= repeats <= MOST_REPEATS:
        raise ValueError(f"repeats is {repeats}; it must be 1 to {MOST_REPEATS}")
    return _edit(study, evolve(study.plan, repeats=int(repeats)), tr("Set the repeats"), "plan repeats")


def plan_at_once(study: Study, at_once: int) -> Edit:
    """Say how many machines work at the same time, each on a meter of its own."""
    if at_once < 1:
        raise ValueError(f"at_once is {at_once}; at least one machine works")
    return _edit(
        study, evolve(study.plan, at_once=int(at_once)), tr("Set the machines at once"), "plan at once"
    )


def shuffle_plan(study: Study, seed: int | None = None) -> Edit:
    """Take another order: that of `seed`, or of the seed after the present one."""
    wanted = study.plan.seed + 1 if seed is None else seed
    if wanted < 0:
        raise ValueError(f"seed is {wanted}; it must not be negative")
    return _edit(study, evolve(study.plan, seed=int(wanted)), tr("Shuffle the order"), "plan seed")


def plan_extra(study: Study, machine_id: str, runs: int = 1) -> Edit:
    """Plan so many runs of a machine beyond those of the blocks; 0 takes them out.

    A machine that the plan leaves out is taken in.
    """
    machine = found(study.machines, machine_id, "machine")
    if not 0 <= runs <= MOST_REPEATS:
        raise ValueError(f"runs is {runs}; it must be 0 to {MOST_REPEATS}")
    plan = study.plan
    if runs and not _is_in(plan.machine_ids, machine_id):
        plan = plan_machine(study, machine_id).study.plan
    rest = tuple(e for e in plan.extra if e.machine_id != machine_id)
    extra = (*rest, ExtraRun(machine_id, int(runs))) if runs else rest
    label = tr("Plan more runs of {name}", name=machine.name)
    return _edit(study, evolve(plan, extra=extra), label, f"plan extra {machine_id}")


def set_plan_temperature(study: Study, name: PlanTemperature, value_c: float | None) -> Edit:
    """State a temperature of the plan, or that nobody states it.

    Parameters
    ----------
    study : Study
    name : {"bed_c", "room_c", "nozzle_c", "first_layer_bed_c", "first_layer_nozzle_c"}
    value_c : float or None
        [degC]
    """
    checked = None if value_c is None else checked_number(value_c, name, _COLDEST_C)
    match name:
        case "bed_c":
            plan = evolve(study.plan, bed_c=checked)
        case "room_c":
            plan = evolve(study.plan, room_c=checked)
        case "nozzle_c":
            plan = evolve(study.plan, nozzle_c=checked)
        case "first_layer_bed_c":
            plan = evolve(study.plan, first_layer_bed_c=checked)
        case "first_layer_nozzle_c":
            plan = evolve(study.plan, first_layer_nozzle_c=checked)
        case _:
            raise ValueError(f"a plan has no temperature {name!r}")
    return _edit(study, plan, tr("Set a temperature of the plan"), f"plan {name}")


def set_plan_material(study: Study, material: str) -> Edit:
    """Say what the part is made of."""
    plan = evolve(study.plan, material=" ".join(material.split()))
    return _edit(study, plan, tr("Set the material of the plan"), "plan material")


def set_plan_start(study: Study, start: StartingState, wait_min: float | None = None) -> Edit:
    """Say from which state each run starts, and how long the machine waits in it. [min]"""
    if start not in get_args(StartingState):
        raise ValueError(f"there is no starting state {start!r}")
    wait = study.plan.wait_min if wait_min is None else checked_number(wait_min, "wait_min", 0.0)
    plan = evolve(study.plan, start=start, wait_min=wait)
    return _edit(study, plan, tr("Set the starting state"), "plan start")


def set_plan_checks(study: Study, has_checks: bool) -> Edit:
    """Say whether the meters are held against each other before and after the test."""
    label = tr("Plan same-load checks") if has_checks else tr("Plan no same-load checks")
    return _edit(study, evolve(study.plan, has_checks=has_checks), label)


def set_plan_display(study: Study, unit: DisplayUnit) -> Edit:
    """Say what the meters' displays show."""
    if unit not in get_args(DisplayUnit):
        raise ValueError(f"there is no unit {unit!r} of a display")
    return _edit(study, evolve(study.plan, display_unit=unit), tr("Plan for displays in {unit}", unit=unit))


def set_plan_goal(
    study: Study, *, difference_percent: float | None = None, spread_percent: float | None = None
) -> Edit:
    """State what the test is to show, or the spread that is expected; what is None stays as it is.

    Raises
    ------
    ValueError
        If either is not more than 0. [%]
    """
    plan = study.plan
    if difference_percent is not None:
        plan = evolve(plan, difference_percent=_positive(difference_percent, "difference_percent"))
    if spread_percent is not None:
        plan = evolve(plan, spread_percent=_positive(spread_percent, "spread_percent"))
    return _edit(study, plan, tr("Set what the test is to show"), "plan goal")


def take_measured_spread(study: Study) -> Edit:
    """Find the number of repeats from the spread of the runs so far again."""
    return _edit(study, evolve(study.plan, spread_percent=None), tr("Take the measured spread"), "plan goal")


def plan_without(study: Study, *, machine_id: str = "", meter_id: str = "") -> Plan:
    """The plan once a machine or a meter is gone: its identifier may be given to another one."""
    plan = study.plan
    machine_ids, meter_ids = (
        None if chosen is None else tuple(one for one in chosen if one != gone)
        for chosen, gone in ((plan.machine_ids, machine_id), (plan.meter_ids, meter_id))
    )
    extra = tuple(e for e in plan.extra if e.machine_id != machine_id)
    return evolve(plan, machine_ids=machine_ids, meter_ids=meter_ids, extra=extra)


def _positive(value: float, name: str) -> float:
    if checked_number(value, name, 0.0) == 0:
        raise ValueError(f"{name} must be more than 0")
    return float(value)


def _is_in(chosen: tuple[str, ...] | None, wanted_id: str) -> bool:
    return chosen is None or wanted_id in chosen


def _chosen(all_ids: list[str], chosen: set[str]) -> tuple[str, ...] | None:
    """None where all are chosen, so that one that is added later takes part."""
    return None if chosen.issuperset(all_ids) else tuple(one for one in all_ids if one in chosen)


def _edit(study: Study, plan: Plan, label: str, merge_key: str | None = None) -> Edit:
    return Edit(evolve(study, plan=plan), label, merge_key)
