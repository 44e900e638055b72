"""How a log was read, as values: nothing here reads, and everything can be sent between processes."""

from collections.abc import Iterable, Sequence
from itertools import islice
from typing import Final

from attrs import frozen

from core.language import later, mark
from core.problems import Problem, Severity
from core.study import Choices
from core.traces import Trace

#: every decision left to the program
NO_CHOICES = Choices()
#: why something was read as it was, where the user said so
CHOSEN: Final = later(mark("chosen by hand"))
#: refused rows kept with their text; all are counted
REFUSED_KEPT = 100
#: first rows kept with their text, and characters kept of each of their cells
ROWS_KEPT = 8
CELL_KEPT = 40


@frozen
class Column:
    """A column of the file: its heading, what it holds, and the unit its values are written in.

    ``decimal`` is its decimal sign where that is not the one of the log.
    """

    name: str
    quantity: str
    unit: str
    decimal: str | None = None


@frozen
class Refused:
    """A row that could not be used: its line (from 1, 0 where unknown), its text, and why."""

    row: int
    text: str
    why: Problem


@frozen
class Reading:
    """One machine found in a file, and every choice made on the way.

    Parameters
    ----------
    file : str
        The file as the user named it.
    machine : str
        The device named in the log, or else the stem of the file's name.
    device : str or None
        The device as the log names it; None where it names none.
    encoding, delimiter, decimal : str or None
        None where the container has none (a spreadsheet has no delimiter).
    header_row : int or None
        Line of the headings, from 1; None when there is none.
    rows_read, rows_refused : int
        Rows of the file that belong to this machine, and rows of the file that could not be used.
    columns : tuple of Column
    trace : Trace or None
        None when nothing could be read; `problems` then says why.
    energy_by_power_wh, energy_by_counter_wh, energy_used_wh : float or None
        Energy of the whole log by either way, and the one that is less unsure. [Wh]
    refused : tuple of Refused
        The first hundred.
    reasons : tuple of (choice, text)
        Why each choice was made, with the figures behind it; in English, for `core.language.tr` where shown.
    problems : tuple of Problem
    choices : Choices
        What the user had decided.
    first_rows : tuple of tuple of str
        The first rows of values as they stand in the file, cut into cells; for all machines of the file.
    is_named : bool
        Whether `device`, if there is one, is a name, and not only the place of its columns in the file.
    """

    file: str
    machine: str
    device: str | None
    encoding: str | None
    delimiter: str | None
    decimal: str | None
    header_row: int | None
    rows_read: int
    rows_refused: int
    columns: tuple[Column, ...]
    trace: Trace | None
    energy_by_power_wh: float | None = None
    energy_by_counter_wh: float | None = None
    energy_used_wh: float | None = None
    refused: tuple[Refused, ...] = ()
    reasons: tuple[tuple[str, str], ...] = ()
    problems: tuple[Problem, ...] = ()
    choices: Choices = NO_CHOICES
    first_rows: tuple[tuple[str, ...], ...] = ()
    is_named: bool = True


def first_rows(rows: Iterable[Sequence[str]]) -> tuple[tuple[str, ...], ...]:
    """The first rows of a file's values as they are kept: few, and no cell longer than a line."""
    return tuple(tuple(cell[:CELL_KEPT] for cell in row) for row in islice(rows, ROWS_KEPT))


@frozen
class FileReading:
    """What one file holds: its machines, or the problems that kept it from being read.

    ``digest`` is the SHA-256 of the bytes in hexadecimal, ``size`` their number.
    """

    file: str
    digest: str
    size: int
    readings: tuple[Reading, ...] = ()
    problems: tuple[Problem, ...] = ()

    @property
    def is_refused(self) -> bool:
        """Whether nothing of the file could be used."""
        return not self.readings and any(p.severity is Severity.ERROR for p in self.problems)
