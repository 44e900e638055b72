"""Edits of what the study supposes of beds: one made cooler after the first layers, and how they radiate."""

from collections.abc import Callable

from attrs import evolve

from core.beds.area import BED_AREA, bed_area_dm2
from core.beds.supply import BED_SUPPLY, Supply, bed_supply
from core.edits.edit import Edit, checked_number, found, replaced
from core.language import tr
from core.study import CoolerPlan, Machine, Study

#: no colder than absolute zero [degC]
_COLDEST_C = -273.15


def set_cooler_plan(study: Study, plan: CoolerPlan) -> Edit:
    """Suppose another print with a cooler bed.

    Raises
    ------
    ValueError
        If a number is not finite, a time negative, or the change lies outside the print.
    """
    lowest = {
        "first_c": _COLDEST_C,
        "later_c": _COLDEST_C,
        "least_c": _COLDEST_C,
        "print_s": 0.0,
        "first_layers_s": 0.0,
    }
    given = {name: value for name in lowest if (value := getattr(plan, name)) is not None}
    plan = evolve(plan, **{name: checked_number(value, name, lowest[name]) for name, value in given.items()})
    if plan.first_layers_s > plan.print_s:
        raise ValueError("the bed is made cooler during the print, not after it")
    return Edit(evolve(study, cooler=plan), tr("Suppose a cooler bed"), "cooler bed")


def set_emissivity(study: Study, emissivity: float) -> Edit:
    """Say how the faces of the beds radiate, between 0 and 1.

    Raises
    ------
    ValueError
        If it is not between them.
    """
    checked = checked_number(emissivity, "emissivity", 0.0)
    if checked > 1:
        raise ValueError(f"emissivity is {emissivity}; no surface has more than 1")
    return Edit(evolve(study, emissivity=checked), tr("Set the emissivity of beds"), "emissivity")


def set_bed_area(study: Study, machine_id: str, area_dm2: float | None) -> Edit:
    """Note the area of one face of a machine's bed; None where it is not known. [dm2]

    It takes the place of any property that said it before, in whichever unit.

    Raises
    ------
    ValueError
        If it is not above 0.
    """
    if area_dm2 is not None and checked_number(area_dm2, "area_dm2", 0.0) == 0:
        raise ValueError("a bed has some area")
    return _in_place_of(study, machine_id, BED_AREA, area_dm2, bed_area_dm2)


def set_bed_supply(study: Study, machine_id: str, supply: Supply | None) -> Edit:
    """Note what feeds a machine's bed; None where it is not known."""
    return _in_place_of(study, machine_id, BED_SUPPLY, supply, bed_supply)


def _in_place_of(
    study: Study, machine_id: str, key: str, value: str | float | None, says: Callable[[Machine], object]
) -> Edit:
    """The property under its usual name, and none that says the same under another."""
    machine = found(study.machines, machine_id, "machine")
    kept = tuple(p for p in machine.properties if says(evolve(machine, properties=(p,))) is None)
    if value is not None:
        kept = (*((name, other) for name, other in kept if name != key), (key, value))
    changed = evolve(machine, properties=kept)
    machines = replaced(study.machines, changed)
    return Edit(
        evolve(study, machines=machines),
        tr("Set {key} of {name}", key=key, name=machine.name),
        f"{key} {machine_id}",
    )
