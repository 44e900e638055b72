"""Edits of what the study supposes of beds: one made cooler after the first layers, and how they radiate."""

from attrs import evolve

from core.edits.edit import Edit, checked_number
from core.study import CoolerPlan, Study

#: no colder than absolute zero [degC]
_COLDEST_C = -273.15


def set_cooler_plan(study: Study, plan: CoolerPlan) -> Edit:
    """Suppose another print with a cooler bed.

    Raises
    ------
    ValueError
        If a number is not finite, a time negative, or the change lies outside the print.
    """
    for name in ("first_c", "later_c", "least_c"):
        value = getattr(plan, name)
        if value is not None:
            checked_number(value, name, _COLDEST_C)
    checked_number(plan.print_s, "print_s", 0.0)
    checked_number(plan.first_layers_s, "first_layers_s", 0.0)
    if plan.first_layers_s > plan.print_s:
        raise ValueError("the bed is made cooler during the print, not after it")
    return Edit(evolve(study, cooler=plan), "Suppose a cooler bed", "cooler bed")


def set_emissivity(study: Study, emissivity: float) -> Edit:
    """Say how the faces of the beds radiate, between 0 and 1.

    Raises
    ------
    ValueError
        If it is not between them.
    """
    if checked_number(emissivity, "emissivity", 0.0) > 1:
        raise ValueError(f"emissivity is {emissivity}; no surface has more than 1")
    return Edit(evolve(study, emissivity=emissivity), "Set the emissivity of beds", "emissivity")
