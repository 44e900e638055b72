"""How a machine's bed is fed, as the user noted it among the machine's properties."""

import re
from typing import Final, Literal

from core.language import mark
from core.study import Machine

Supply = Literal["mains", "low voltage"]
SUPPLIES: Final[tuple[Supply, ...]] = (mark("mains"), mark("low voltage"))
#: how the property is called where the program itself offers it
BED_SUPPLY: Final = mark("Bed supply")
_NAME: Final = re.compile(r"\bbed\b.*\bsupply\b|\bsupply\b.*\bbed\b", re.IGNORECASE)


def is_bed_supply(name: str) -> bool:
    """Whether a property of this name says how the bed is fed."""
    return _NAME.search(name) is not None


def bed_supply(machine: Machine) -> Supply | None:
    """Whether the bed is fed from the mains or through a supply of low voltage; None where nobody said.

    Examples
    --------
    >>> bed_supply(Machine("a1", "Alder", 0, (("Bed supply", "24 V, low voltage"),)))
    'low voltage'
    """
    for name, value in machine.properties:
        if isinstance(value, str) and is_bed_supply(name):
            words = value.lower()
            if "mains" in words:
                return "mains"
            if "low" in words:
                return "low voltage"
    return None
