"""What can be wrong with data from outside, as values: a code, a place and the facts; no sentences.

`core.wording.sentence` turns a problem into words, for the screen, the command line and the report alike.
"""

from collections.abc import Mapping
from enum import Enum

from attrs import field, frozen


class Severity(Enum):
    """How much a problem matters."""

    NOTE = "note"
    CAUTION = "caution"
    ERROR = "error"


def _frozen_facts(facts: Mapping[str, object]) -> tuple[tuple[str, object], ...]:
    return tuple(sorted(facts.items())) if isinstance(facts, Mapping) else tuple(facts)


@frozen
class Problem:
    """One thing that is wrong, or worth knowing, about data from outside.

    Parameters
    ----------
    code : str
        Key of the table in `core.wording`, such as ``"log.empty"``.
    severity : Severity
    file : str or None
        The file as the user named it.
    row : int or None
        Line of the file, counted from 1, where there is one.
    facts : mapping
        Whatever the sentence needs, by name; kept as sorted pairs so that the value can be hashed.
    """

    code: str
    severity: Severity = Severity.CAUTION
    file: str | None = None
    row: int | None = None
    facts: tuple[tuple[str, object], ...] = field(default=(), converter=_frozen_facts)

    def fact(self, name: str, default: object = None) -> object:
        """The fact called `name`, or `default`."""
        return dict(self.facts).get(name, default)
