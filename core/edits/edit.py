"""What an edit is, and the small tools that every edit is made with.

Rules: an edit is a pure function from a study to an `Edit`; asking for something that makes no sense raises
`ValueError`, because only a programmer can ask it. Identifiers come from the study itself, so that the same
edits give the same study every time.
"""

import math
from collections.abc import Iterable
from typing import Protocol, TypeVar

from attrs import frozen

from core.language import tr
from core.study import Run, Study


@frozen
class Edit:
    """A new study and how it came about.

    Parameters
    ----------
    study : Study
        The study after the edit.
    label : str
        What was done, for the undo menu, as a phrase with a capital and no full stop.
    merge_key : str or None
        Edits that follow each other with one key are one step of the history: a drag, a field typed in.
    """

    study: Study
    label: str
    merge_key: str | None = None


class HasId(Protocol):
    """Anything that a study keeps under an identifier."""

    @property
    def id(self) -> str:
        """Unique within its collection."""


Item = TypeVar("Item", bound=HasId)


def found(items: Iterable[Item], wanted_id: str, what: str) -> Item:
    """The item with this identifier.

    Raises
    ------
    ValueError
        If there is none.
    """
    for item in items:
        if item.id == wanted_id:
            return item
    raise ValueError(f"there is no {what} {wanted_id!r} in this study")


def replaced(items: tuple[Item, ...], new: Item) -> tuple[Item, ...]:
    """`items` with the one that has the identifier of `new` replaced by it."""
    return tuple(new if item.id == new.id else item for item in items)


def without(items: tuple[Item, ...], gone_ids: Iterable[str]) -> tuple[Item, ...]:
    """`items` without those identifiers."""
    gone = frozenset(gone_ids)
    return tuple(item for item in items if item.id not in gone)


def next_number(items: Iterable[HasId], prefix: str) -> int:
    """The number after the highest one used in identifiers such as ``r12``."""
    numbers = (item.id.removeprefix(prefix) for item in items if item.id.startswith(prefix))
    return 1 + max((int(number) for number in numbers if number.isdecimal()), default=0)


def checked_name(name: str) -> str:
    """`name` on one line with no space at its ends.

    Raises
    ------
    ValueError
        If nothing is left of it.
    """
    one_line = " ".join(name.split())
    if not one_line:
        raise ValueError("a name needs at least one character")
    return one_line


def checked_number(value: float, name: str, lowest: float = -math.inf) -> float:
    """`value` as a float, if it is finite and not below `lowest`.

    Raises
    ------
    ValueError
        If it is neither.
    """
    if not math.isfinite(value) or value < lowest:
        raise ValueError(f"{name} is {value}; it must be finite and at least {lowest}")
    return float(value)


def title(study: Study, run: Run) -> str:
    """What to call a stretch in words: its own name, or its machine and its place in the log."""
    if run.name:
        return run.name
    log = study.log(run.log_id)
    place = 1 + [r.id for r in study.runs_of(log.id)].index(run.id)
    return tr("{machine}, run {place}", machine=study.machine(log.machine_id).name, place=place)
