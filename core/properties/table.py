"""The table of what the user knows of the machines: its columns, and cells as people write and read them.

Rules: area and supply of the beds, which other pages ask for too, are columns of this table like any other.
A column that nobody added but that a machine has a value in is shown with the kind of its values. What a
person writes is kept as it is meant or refused with the reason; nothing is guessed.
"""

import math
import re
from collections.abc import Sequence
from typing import Final

from attrs import frozen

from core.beds.area import BED_AREA, bed_area_dm2, is_bed_area
from core.beds.supply import BED_SUPPLY, SUPPLIES, bed_supply, is_bed_supply
from core.formatting import POINT, NumberLocale, number, one_of
from core.language import mark, tr
from core.study import Machine, PropertyKind, Study

Value = str | float | bool
#: kinds as they are offered: what is kept, and what it is called
KINDS: Final[tuple[tuple[PropertyKind, str], ...]] = (
    ("number", mark("Number")),
    ("words", mark("Words")),
    ("yes/no", mark("Yes or no")),
)
YES, NO = mark("yes"), mark("no")
_YES: Final = frozenset({"yes", "y", "true", "x", "✓"})
_NO: Final = frozenset({"no", "n", "false"})
_UNIT: Final = re.compile(r"^(.*\S)\s*\(([^()]+)\)$")
#: longer words are notes, not properties, and would fit no chart
MOST_LETTERS: Final = 60
_MINUS: Final = "\u2212"


@frozen
class Column:
    """One column of the table.

    Parameters
    ----------
    name : str
        Heading, with the unit in brackets where it has one; the name of the property.
    kind : PropertyKind
    offered : tuple of str
        Words to choose from; others may be written.
    is_own : bool
        Whether the user may rename or remove it.
    """

    name: str
    kind: PropertyKind
    offered: tuple[str, ...] = ()
    is_own: bool = True

    @property
    def heading(self) -> str:
        """The name as it is shown: those that the program offers itself are in the language of the window."""
        return self.name if self.is_own else tr(self.name)

    @property
    def title(self) -> str:
        """The heading without its unit."""
        return title_and_unit(self.heading)[0]

    @property
    def unit(self) -> str:
        """The unit in the name; empty where it has none, and for what is no number."""
        return title_and_unit(self.name)[1] if self.kind == "number" else ""


@frozen
class Cell:
    """What a person wrote into a cell: its value (None where it was emptied), or why it cannot be used."""

    value: Value | None = None
    why_not: str = ""


def title_and_unit(name: str) -> tuple[str, str]:
    """A column's name parted from the unit in brackets at its end.

    Examples
    --------
    >>> title_and_unit("Noise at standby (dB)"), title_and_unit("Enclosure")
    (('Noise at standby', 'dB'), ('Enclosure', ''))
    """
    found = _UNIT.match(name)
    return (found.group(1), found.group(2).strip()) if found else (name, "")


def full_name(title: str, unit: str) -> str:
    """A column's name with its unit in brackets."""
    title, unit = " ".join(title.split()), " ".join(unit.split())
    return f"{title} ({unit})" if unit else title


def columns_of(study: Study) -> tuple[Column, ...]:
    """All columns: those of the beds, those the user added, and those that only machines have.

    The beds' columns are offered under their usual names unless others say the same.
    """
    kinds: dict[str, PropertyKind] = {c.name: c.kind for c in study.property_columns}
    added = frozenset(kinds)
    for machine in study.machines:
        for name, value in machine.properties:
            if kinds.setdefault(name, kind_of(value)) != kind_of(value) and name not in added:
                kinds[name] = "words"  # values of several kinds: words hold them all
    beds = [name for name in kinds if is_of_bed(name)]
    if not any(is_bed_area(name) for name in beds):
        beds.insert(0, BED_AREA)
    if not any(is_bed_supply(name) for name in beds):
        beds.append(BED_SUPPLY)
    first = [_of_bed(name, study) for name in beds]
    return (*first, *(Column(n, k, _words_of(n, k, study)) for n, k in kinds.items() if n not in beds))


def is_of_bed(name: str) -> bool:
    """Whether other pages ask for a property of this name: its column cannot be renamed or removed."""
    return is_bed_area(name) or is_bed_supply(name)


def kind_of(value: Value) -> PropertyKind:
    """The kind of column that a value belongs in."""
    if isinstance(value, bool):
        return "yes/no"
    return "words" if isinstance(value, str) else "number"


def value_of(machine: Machine, name: str) -> Value | None:
    """A machine's value in a column; None where nobody wrote one."""
    return next((value for key, value in machine.properties if key == name), None)


def written(value: Value | None, locale: NumberLocale = POINT) -> str:
    """A cell as people read it, with every digit of a number that was written.

    Examples
    --------
    >>> written(5.5), written(True), written(None)
    ('5.5', 'yes', '')
    """
    if value is None:
        return ""
    if isinstance(value, bool):
        return tr(YES) if value else tr(NO)
    if isinstance(value, str):
        return tr(value) if value in SUPPLIES else value
    text = number(value, 9, locale)
    return text.rstrip("0").rstrip(locale.decimal) if locale.decimal in text else text


def read_cell(text: str, column: Column, locale: NumberLocale = POINT) -> Cell:
    """What a person means by the text in a cell, or why it cannot be used.

    Numbers are read with a point or with the locale's own mark; what parts thousands is not guessed at.

    Examples
    --------
    >>> read_cell("5,5", Column("Age (years)", "number"), NumberLocale(",")).value
    5.5
    >>> read_cell("perhaps", Column("Enclosure", "yes/no")).why_not
    '“perhaps” is neither yes nor no: write yes, no, or nothing.'
    """
    text = " ".join(text.split())
    if not text:
        return Cell()
    if column.kind == "number":
        return _number(text, column, locale)
    if column.kind == "yes/no":
        known = text.casefold()
        told = {tr(YES): True, tr(NO): False}.get(known)
        if told is not None:
            return Cell(told)
        if known in _YES | _NO:
            return Cell(known in _YES)
        return Cell(why_not=tr("“{text}” is neither yes nor no: write yes, no, or nothing.", text=text))
    return _words(text, column)


def why_not_a_column(study: Study, name: str, but: str = "") -> str:
    """Why a column cannot have a name; empty where it can.

    Parameters
    ----------
    study : Study
    name : str
    but : str
        Name of the column that is to be renamed, whose own name is free to it.
    """
    name = " ".join(name.split())
    if not name:
        return tr("A column needs a name.")
    if len(name) > MOST_LETTERS:
        return tr(
            "A column's name has at most {most} letters; this one has {count}.",
            most=MOST_LETTERS,
            count=len(name),
        )
    others = {c.name.casefold(): c.name for c in columns_of(study) if c.name != but}
    if name.casefold() in others:
        return tr("There is a column “{name}” already: choose another name.", name=others[name.casefold()])
    if is_of_bed(name):
        said = BED_AREA if is_bed_area(name) else BED_SUPPLY
        return tr(
            "“{name}” would say the same as the column “{other}”: write into that one.",
            name=name,
            other=tr(said),
        )
    return ""


def _of_bed(name: str, study: Study) -> Column:
    if is_bed_area(name):
        return Column(name, "number", is_own=False)
    return Column(name, "words", (*(tr(s) for s in SUPPLIES), *_others(name, study, SUPPLIES)), is_own=False)


def _words_of(name: str, kind: PropertyKind, study: Study) -> tuple[str, ...]:
    if kind == "yes/no":
        return (tr(YES), tr(NO))
    return _others(name, study, ()) if kind == "words" else ()


def _others(name: str, study: Study, known: Sequence[str]) -> tuple[str, ...]:
    """Words that are in a column already, in the order of the machines."""
    found = (value_of(machine, name) for machine in study.machines)
    return tuple(dict.fromkeys(v for v in found if isinstance(v, str) and v not in known))


def _number(text: str, column: Column, locale: NumberLocale) -> Cell:
    plain = text.replace(_MINUS, "-").replace(locale.decimal, ".")
    unit = column.unit
    if unit and plain.endswith(unit):
        plain = plain[: -len(unit)].rstrip()
    try:
        value = float(plain) if plain.isascii() and "_" not in plain else math.nan
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        like = f"2{locale.decimal}5"
        return Cell(
            why_not=tr("“{text}” is no number: write one such as {like}, or nothing.", text=text, like=like)
        )
    if is_bed_area(column.name) and bed_area_dm2(Machine("", "", 0, ((column.name, value),))) is None:
        return Cell(
            why_not=tr("“{text}” is no area of a bed: write a number above 0, or nothing.", text=text)
        )
    return Cell(value)


def _words(text: str, column: Column) -> Cell:
    if len(text) > MOST_LETTERS:
        return Cell(
            why_not=tr(
                "A cell holds at most {most} letters; this text has {count}.",
                most=MOST_LETTERS,
                count=len(text),
            )
        )
    if is_bed_supply(column.name):
        said_so = {tr(supply).casefold(): supply for supply in SUPPLIES}
        text = said_so.get(text.casefold(), text)
    if is_bed_supply(column.name) and bed_supply(Machine("", "", 0, ((column.name, text),))) is None:
        said = one_of([f"“{tr(s)}”" for s in SUPPLIES])
        return Cell(
            why_not=tr(
                "“{text}” does not say what feeds the bed: write {words}, or nothing.", text=text, words=said
            )
        )
    return Cell(text)
