"""A filled run sheet as values: what each row says, whatever a spreadsheet has made of its form.

Theory: columns are known by their headings, whatever their order; a heading may name its unit in brackets or
after an underscore, and an energy with no unit is in watt hours. The decimal sign, and the order of day and
month, are decided from all cells together, by the same rules as those of meter logs; a cell that does not fit
is told and never guessed.
"""

import csv
import io
import re
from collections.abc import Mapping, Sequence
from datetime import UTC, datetime, timedelta
from pathlib import Path

from attrs import evolve, frozen

from core.formatting import listed
from core.language import tr
from core.logs.numbers import EMPTY, FINE, decimal_of, parse
from core.logs.text import decode, foreign
from core.plan.sheet import REMARK, SAME_LOAD
from core.problems import Problem, Severity
from core.tables import as_written
from core.units import ENERGY_IN_WH

#: a run sheet is written by hand: more than this is something else
_MOST_BYTES = 1_000_000
_TIMES = ("%H:%M", "%H:%M:%S", "%I:%M %p", "%I:%M:%S %p", "%H.%M", "%HH%M")
#: how a workbook, or any other packed file, begins
_PACKED = b"PK\x03\x04"
#: year of a time of day with no date
NO_DATE = 1900
_UNITS = {unit.lower(): factor for unit, factor in ENERGY_IN_WH.items()}
_DAY = timedelta(days=1)


@frozen
class Amount:
    """An energy as it was written, with the worth of its last digit. [Wh]"""

    value_wh: float
    step_wh: float


@frozen
class Conditions:
    """Temperatures that a row tells; None where it tells none. [degC]"""

    bed_c: float | None = None
    room_c: float | None = None
    nozzle_c: float | None = None
    first_layer_bed_c: float | None = None
    first_layer_nozzle_c: float | None = None


@frozen
class FilledRow:
    """A row of a sheet.

    Parameters
    ----------
    number : int
        Of its line in the file.
    is_check : bool
        Whether it is of a same-load check.
    label : str
        Number of the run, or name of the check.
    machine, meter : str
    energy : Amount or None
        None where the row has none, or none that can be used.
    start, end : datetime or None
        By the wall clock; a year of `NO_DATE` where only a time of day is known.
    seconds : float or None
        From start to end. [s]
    starting_state, remarks : str
    conditions : Conditions
    is_blank : bool
        Nothing of it has been filled in.
    is_refused : bool
        Its energy cannot be used; `problems` say why.
    problems : tuple of Problem
    """

    number: int
    is_check: bool
    label: str
    machine: str
    meter: str
    energy: Amount | None = None
    start: datetime | None = None
    end: datetime | None = None
    seconds: float | None = None
    starting_state: str = ""
    remarks: str = ""
    conditions: Conditions = Conditions()
    is_blank: bool = False
    is_refused: bool = False
    problems: tuple[Problem, ...] = ()

    @property
    def is_dated(self) -> bool:
        """Whether the day on which it began is known."""
        return self.start is not None and self.start.year != NO_DATE


@frozen
class FilledSheet:
    """The rows of a file, and what is wrong with the file as a whole."""

    file: str
    rows: tuple[FilledRow, ...] = ()
    problems: tuple[Problem, ...] = ()


@frozen
class _Cell:
    """A cell with what its column's unit is worth in watt hours."""

    text: str
    factor: float = 1.0


_Cells = Mapping[str, _Cell]
_BLANK = _Cell("")


def read_sheet(path: Path) -> FilledSheet:
    """The rows of a run sheet; a file that is none comes back with the reason and no rows."""
    name = str(path)
    try:
        data = _bytes_of(path)
    except OSError as error:
        return _unreadable(name, error.strerror or str(error))
    return sheet_of(data, name)


def sheet_of(data: bytes, name: str) -> FilledSheet:
    """The rows of a run sheet from the bytes of its file."""
    if data.startswith(_PACKED):
        return _unreadable(name, tr("it is a packed file, such as a workbook"))
    rows = _rows(data, name)
    if not rows:
        return _unreadable(name, tr("it is without text"))
    what = foreign(data)
    if what:
        return _unreadable(name, tr("it is {what}", what=what))
    head, *body = rows
    columns = _columns(head[1])
    missing = [c for c in ("machine", "energy") if c not in columns]
    if "first" in columns and "last" in columns and missing == ["energy"]:
        missing = []
    if missing:
        facts = {"missing": listed(missing)}
        return FilledSheet(name, problems=(Problem("sheet.no_columns", Severity.ERROR, name, facts=facts),))
    cells = [(number, _cells(row, columns)) for number, row in body]
    reader = _Reader(name, [row for _, row in cells])
    return FilledSheet(name, tuple(reader.row(i, number, row) for i, (number, row) in enumerate(cells)))


def _bytes_of(path: Path) -> bytes:
    if not path.is_file():
        why = tr("it is no file") if path.exists() else tr("there is no such file")
        raise FileNotFoundError(2, why, str(path))
    if path.stat().st_size > _MOST_BYTES:
        raise OSError(27, tr("it is far larger than any run sheet"), str(path))
    return path.read_bytes()


def _unreadable(name: str, why: str) -> FilledSheet:
    problem = Problem("sheet.unreadable", Severity.ERROR, name, facts={"why": why})
    return FilledSheet(name, problems=(problem,))


def _rows(data: bytes, name: str) -> list[tuple[int, list[str]]]:
    """Rows with their line numbers, remarks left aside; encoding and delimiter as spreadsheets write them."""
    text = decode(data, name).data.decode("utf-8", "replace")
    first = next((line for line in text.splitlines() if line.strip() and not _is_remark([line])), "")
    delimiter = max(";,\t", key=first.count)
    reader = csv.reader(io.StringIO(text), delimiter=delimiter)
    try:
        rows = [(reader.line_num, row) for row in reader]
    except csv.Error:
        return []
    return [(number, row) for number, row in rows if any(c.strip() for c in row) and not _is_remark(row)]


def _is_remark(row: Sequence[str]) -> bool:
    return next((c for c in row if c.strip()), "").strip().strip('"').startswith(REMARK)


# headings

#: meaning of a heading -> the words that say so, all of one group; the first meaning that fits is taken
_HEADINGS: tuple[tuple[str, tuple[frozenset[str], ...]], ...] = (
    ("row", (frozenset({"row", "what"}),)),
    ("starting_state", (frozenset({"starting", "state"}),)),
    ("first_layer_bed_c", (frozenset({"layer"}), frozenset({"bed"}))),
    ("first_layer_nozzle_c", (frozenset({"layer"}), frozenset({"nozzle"}))),
    ("machine", (frozenset({"machine", "device"}),)),
    ("meter", (frozenset({"meter"}),)),
    ("energy", (frozenset({"energy", "used"}),)),
    ("start", (frozenset({"start", "begin", "started"}),)),
    ("end", (frozenset({"end", "stop", "finish", "ended"}),)),
    ("bed_c", (frozenset({"bed"}),)),
    ("nozzle_c", (frozenset({"nozzle"}),)),
    ("room_c", (frozenset({"room"}),)),
    ("run", (frozenset({"run", "no", "number", "note"}),)),
    ("remarks", (frozenset({"remark", "remarks"}),)),
)
_READING_WORDS = frozenset({"reading", "display", "counter"})


def _columns(heading: Sequence[str]) -> dict[str, tuple[int, float]]:
    """Meaning -> (position, factor to Wh)."""
    found: dict[str, tuple[int, float]] = {}
    for i, cell in enumerate(heading):
        words = re.findall(r"[a-z]+", cell.lower())
        units = [_UNITS[w] for w in words if w in _UNITS]
        meaning = _meaning(frozenset(words), bool(units))
        if meaning:
            found.setdefault(meaning, (i, units[0] if units else 1.0))
    return found


def _meaning(words: frozenset[str], has_unit: bool) -> str | None:
    meaning = next((name for name, groups in _HEADINGS if all(words & group for group in groups)), None)
    if meaning in ("start", "end") and (has_unit or words & _READING_WORDS):
        return "first" if meaning == "start" else "last"
    if meaning is None and has_unit:
        return "energy"
    return meaning


def _cells(row: Sequence[str], columns: Mapping[str, tuple[int, float]]) -> dict[str, _Cell]:
    return {
        name: _Cell(as_written(row[i].strip()) if i < len(row) else "", factor)
        for name, (i, factor) in columns.items()
    }


# cells

_ENERGIES = ("energy", "first", "last")
_TEMPERATURES = ("bed_c", "room_c", "nozzle_c", "first_layer_bed_c", "first_layer_nozzle_c")
#: of these the user fills in at least one where a run was made
_FILLED = (*_ENERGIES, "start", "end", "remarks", "room_c")


class _Reader:
    """Reads the cells of one file, whose decimal sign and order of day and month it knows."""

    def __init__(self, file: str, rows: Sequence[_Cells]) -> None:
        self._file = file
        numbers = [row.get(name, _BLANK).text for row in rows for name in (*_ENERGIES, *_TEMPERATURES)]
        self._decimal, _, _ = decimal_of(numbers)
        self._moments = _moments([row.get(n, _BLANK).text for row in rows for n in ("start", "end")])

    def row(self, index: int, number: int, cells: _Cells) -> FilledRow:
        """One row of the file."""

        def text(name: str) -> str:
            return " ".join(cells.get(name, _BLANK).text.split())

        row = FilledRow(
            number=number,
            is_check=text("row").casefold().startswith(SAME_LOAD.split(maxsplit=1)[0]),
            label=text("run"),
            machine=text("machine"),
            meter=text("meter"),
            starting_state=text("starting_state"),
            remarks=text("remarks"),
            is_blank=not any(text(name) for name in _FILLED),
        )
        return self._with_times(self._with_conditions(self._with_energy(row, cells), cells), cells, index)

    def _problem(self, code: str, row: FilledRow, severity: Severity, **facts: object) -> Problem:
        return Problem(code, severity, self._file, row.number, facts=facts)

    def _with_energy(self, row: FilledRow, cells: _Cells) -> FilledRow:
        try:
            told, counted = self._amount(cells.get("energy", _BLANK)), self._counted(cells)
        except ValueError as error:
            bad = self._problem("sheet.bad_number", row, Severity.ERROR, text=str(error))
            return evolve(row, is_refused=True, problems=(*row.problems, bad))
        problems = row.problems
        if told is not None and counted is not None:
            apart = abs(told.value_wh - counted.value_wh)
            if apart > told.step_wh + counted.step_wh:
                facts = {"energy": told.value_wh, "counted": counted.value_wh}
                differ = self._problem("sheet.energies_differ", row, Severity.CAUTION, **facts)
                problems = (*problems, differ)
        return evolve(row, energy=told or counted, problems=problems)

    def _counted(self, cells: _Cells) -> Amount | None:
        """From one reading of the display to another; None where one of them is missing."""
        first, last = (self._amount(cells.get(name, _BLANK)) for name in ("first", "last"))
        if first is None or last is None:
            return None
        if last.value_wh < first.value_wh:
            raise ValueError(tr("{first} to {last}", first=cells["first"].text, last=cells["last"].text))
        # the difference of two decimal numbers has no more digits than they have
        difference = round(last.value_wh - first.value_wh, 9)
        return Amount(difference, max(first.step_wh, last.step_wh))

    def _amount(self, cell: _Cell) -> Amount | None:
        """An energy; None where nothing was filled in.

        Raises
        ------
        ValueError
            With the text that is none.
        """
        value, unit, verdict = parse(cell.text, self._decimal)
        if verdict == EMPTY:
            return None
        if verdict != FINE or value < 0 or (unit and unit not in ENERGY_IN_WH):
            raise ValueError(cell.text)
        factor = ENERGY_IN_WH[unit] if unit else cell.factor
        digits = re.match(rf"[^{re.escape(self._decimal)}]*\{self._decimal}?(\d*)", cell.text)
        step = 10.0 ** -len(digits.group(1)) if digits else 1.0
        return Amount(value * factor, step * factor)

    def _with_conditions(self, row: FilledRow, cells: _Cells) -> FilledRow:
        known: dict[str, float | None] = {}
        problems = list(row.problems)
        for name in _TEMPERATURES:
            text = re.sub(r"\s*°?\s*c$", "", cells.get(name, _BLANK).text, flags=re.IGNORECASE)
            value, unit, verdict = parse(text, self._decimal)
            is_good = verdict == FINE and not unit and -50 <= value <= 600
            known[name] = value if is_good else None
            if not is_good and verdict != EMPTY:
                problems.append(self._problem("sheet.bad_temperature", row, Severity.CAUTION, text=text))
        conditions = Conditions(
            known["bed_c"],
            known["room_c"],
            known["nozzle_c"],
            known["first_layer_bed_c"],
            known["first_layer_nozzle_c"],
        )
        return evolve(row, conditions=conditions, problems=tuple(problems))

    def _with_times(self, row: FilledRow, cells: _Cells, index: int) -> FilledRow:
        texts = [cells.get(name, _BLANK).text for name in ("start", "end")]
        start, end = self._moments[2 * index : 2 * index + 2]
        bad = next((t for t, at in zip(texts, (start, end), strict=True) if t and at is None), None)
        if start is not None and end is not None and (start.tzinfo is None) != (end.tzinfo is None):
            bad, end = texts[1], None
        problems = row.problems
        if bad is not None:
            problems = (*problems, self._problem("sheet.bad_time", row, Severity.CAUTION, text=bad))
        seconds = None
        if start is not None and end is not None:
            end = _on_its_day(start, end)
            seconds = (end - start).total_seconds()
            if seconds <= 0:
                problems = (*problems, self._problem("sheet.ends_before_start", row, Severity.CAUTION))
                seconds, end = None, None
        return evolve(row, start=start, end=end, seconds=seconds, problems=problems)


def _on_its_day(start: datetime, end: datetime) -> datetime:
    """An end of which only the time of day is known: the first such time after the start."""
    if end.year != NO_DATE:
        return end
    end = end.replace(year=start.year, month=start.month, day=start.day)
    return end + _DAY if end < start else end


def _moments(texts: Sequence[str]) -> list[datetime | None]:
    """Moments by the wall clock, in the order of the sheet; None where a text is no time."""
    found = [_plain_moment(text) for text in texts]
    left = [i for i, (text, moment) in enumerate(zip(texts, found, strict=True)) if text and moment is None]
    if left:
        import pyarrow as pa

        from core.logs import stamps
        from core.logs.clock import NO_HINTS, from_text

        shapes = {i: stamps.understand(re.sub(r"\d", "0", texts[i])) for i in left}
        dated = [i for i in left if (shape := shapes[i]) is not None and shape.date]
        if dated:
            clocked = from_text(pa.array([texts[i] for i in dated], type=pa.string()), NO_HINTS)
            for i, at_s in zip(dated, clocked.seconds.tolist(), strict=True):
                if at_s == at_s:
                    found[i] = datetime.fromtimestamp(at_s, UTC).replace(tzinfo=None)
    return found


def _plain_moment(text: str) -> datetime | None:
    for form in _TIMES:
        try:
            return datetime.strptime(text.upper(), form)  # noqa: DTZ007  # only a difference of two is used
        except ValueError:
            continue
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        return None
