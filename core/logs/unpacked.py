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
#: most logs or sheets in one file that are looked at
MOST_PARTS = 1000


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


def most_unpacked(packed: int, most: int = MOST_BYTES) -> int:
    """Bytes that a container of so many bytes may come to: a log's readings differ, so it shrinks little."""
    return min(most, FREE_BYTES + MOST_RATIO * packed)


def too_large(name: str, limit: int) -> Problem:
    """An error about typed columns of more bytes than are taken out of a file."""
    return refused(name, "log.too_large_unpacked", limit_mb=limit >> 20)


def too_many(name: str, count: int) -> Problem:
    """An error about a container of more parts than are looked at."""
    return refused(name, "log.too_many_parts", count=count, limit=MOST_PARTS)


def refused(name: str, code: str, **facts: object) -> Problem:
    """An error about a container."""
    return Problem(code, Severity.ERROR, name, facts=facts)
