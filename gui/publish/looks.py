"""How a picture is painted: its theme, what stands out, and whether its ground can be seen through."""

from attrs import evolve

from core.publish.choices import Publishing
from core.study import Study
from gui.look import Look, current


def look_of(publishing: Publishing, study: Study) -> Look:
    """The look of the pictures, in the family of the window but in no way of its size or theme."""
    family = current().family
    look = Look.of_print(family=family)
    if publishing.theme != "print":
        look = Look.of(dark=publishing.theme == "dark", family=family)
    slots = [m.slot for m in study.machines if m.id == publishing.highlighted]
    standing_out = frozenset(slots) if slots else None
    return evolve(look, standing_out=standing_out, is_clear=publishing.is_clear)
