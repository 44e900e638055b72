"""What comes out of a container: one log as text or table; how much may come out; why nothing did.

Rules: what is unpacked is limited in size and in ratio, so that a small file cannot fill the memory.
"""

from attrs import field, frozen

from core.logs.table import Table
from core.problems import Problem, Severity

#: most bytes that are unpacked, and most unpacked bytes for each packed one beyond the first 64 MB
MOST_BYTES = 1 << 30
MOST_RATIO = 300
FREE_BYTES = 1 << 26


@frozen
class Item:
    """One log inside a file: text as bytes, or a table.

    ``label`` names it inside its container, ``""`` where the file is the log; ``above`` are the cells of the
    line above its headings, ``lines_before`` the lines of the file or sheet before its own.
    """

    content: bytes | Table = field(repr=False)
    label: str = ""
    encoding: str | None = None
    header_row: int | None = None
    is_1904: bool = False
    above: tuple[str, ...] = ()
    reasons: tuple[tuple[str, str], ...] = ()
    problems: tuple[Problem, ...] = ()
    lines_before: int = 0


def refused(name: str, code: str, **facts: object) -> Problem:
    """An error about a container."""
    return Problem(code, Severity.ERROR, name, facts=facts)
