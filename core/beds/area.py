"""The area of a machine's bed as the user noted it among the machine's properties."""

import math
import re
from typing import Final

from core.language import mark
from core.study import Machine

#: how the property is called where the program itself offers it
BED_AREA: Final = mark("Bed area (dm²)")
_UNIT_IN_DM2: Final = {"mm": 1e-4, "cm": 1e-2, "dm": 1.0, "m": 100.0}
_NAME: Final = re.compile(r"\bbed\b.*\barea\b|\barea\b.*\bbed\b", re.IGNORECASE)
_UNIT: Final = re.compile(r"\b(mm|cm|dm|m)\s*(?:²|2|\^2)", re.IGNORECASE)


def is_bed_area(name: str) -> bool:
    """Whether a property of this name says the area of the bed."""
    return _NAME.search(name) is not None


def bed_area_dm2(machine: Machine) -> float | None:
    """Area of one face of the bed, by a property whose name has the words bed and area. [dm2]

    Parameters
    ----------
    machine : Machine
        The unit is read from the property's name; dm2 where it has none.

    Returns
    -------
    float or None
        None where no such property holds a positive number.

    Examples
    --------
    >>> bed_area_dm2(Machine("a1", "Alder", 0, (("Bed area (cm²)", 552.25),)))
    5.5225
    """
    for name, value in machine.properties:
        if isinstance(value, bool) or not isinstance(value, int | float) or not is_bed_area(name):
            continue
        unit = _UNIT.search(name)
        area_dm2 = value * _UNIT_IN_DM2[unit.group(1).lower() if unit else "dm"]
        if math.isfinite(area_dm2) and area_dm2 > 0:
            return area_dm2
    return None
