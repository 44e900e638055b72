"""A filled run sheet: a table with a row a run, of which only readings of the meter's display are known.

Theory: the columns are known by their heading, whatever their order: machine and energy (or the display's
reading at the start and at the end) must be there; run, start and end may be. A heading may name its unit in
brackets or after an underscore; an energy with no unit is in watt hours.
"""

import csv
import io
import re
from collections.abc import Mapping, Sequence
from datetime import datetime
from pathlib import Path

from core import edits
from core.problems import Problem, Severity
from core.study import Study
from core.units import ENERGY_IN_WH

#: a run sheet is written by hand: more than this is something else
_MOST_BYTES = 1_000_000
_TIMES = ("%H:%M", "%H:%M:%S")
#: year of a time of day with no date
_NO_DATE = 1900
#: start and end by the wall clock
Span = tuple[datetime, datetime]
_UNITS = {unit.lower(): factor for unit, factor in ENERGY_IN_WH.items()}


def add_sheet(
    study: Study, path: Path, logged: Mapping[str, Sequence[Span]] | None = None
) -> tuple[Study, tuple[Problem, ...]]:
    """Put the runs of a sheet into a study as typed readings.

    Parameters
    ----------
    study : Study
        A machine of the sheet that is not in it yet is added.
    path : Path
    logged : mapping of machine name to spans, optional
        When runs were logged, by the wall clock where the log is. A row of the sheet that tells of one of
        them is passed over: the log knows more, and a run counts once.

    Returns
    -------
    study, problems
        A row that cannot be used is told with its number and leaves the others alone.
    """
    name = str(path)
    try:
        data = _bytes_of(path)
    except OSError as error:
        return study, (_error("sheet.unreadable", name, why=error.strerror or str(error)),)
    rows = _rows(data)
    if not rows:
        return study, (_error("sheet.unreadable", name, why="there is no text in it"),)
    head, *body = rows
    columns = _columns(head[1])
    missing = [c for c in ("machine", "energy") if c not in columns]
    if "first" in columns and "last" in columns and missing == ["energy"]:
        missing = []
    if missing:
        return study, (_error("sheet.no_columns", name, missing=" and ".join(missing)),)
    problems: list[Problem] = []
    for number, cells in body:
        if any(cell.strip() for cell in cells):
            row = _row(cells, columns)
            study, told = _with_row(study, name, number, row, (logged or {}).get(_machine(row), ()))
            problems += told
    return study, tuple(problems)


def _bytes_of(path: Path) -> bytes:
    if not path.is_file():
        raise FileNotFoundError(
            2, "there is no such file" if not path.exists() else "it is no file", str(path)
        )
    if path.stat().st_size > _MOST_BYTES:
        raise OSError(27, "it is far larger than any run sheet", str(path))
    return path.read_bytes()


def _error(code: str, file: str, **facts: object) -> Problem:
    return Problem(code, Severity.ERROR, file, facts=facts)


def _rows(data: bytes) -> list[tuple[int, list[str]]]:
    """Rows with their line numbers; encoding and delimiter as spreadsheets write them."""
    for encoding in (
        ("utf-8-sig", "utf-16") if data[:2] in (b"\xff\xfe", b"\xfe\xff") else ("utf-8-sig", "cp1252")
    ):
        try:
            text = data.decode(encoding)
            break
        except UnicodeDecodeError:
            continue
    else:
        text = data.decode("latin-1")
    text = text.replace("\0", "")
    first = next((line for line in text.splitlines() if line.strip()), "")
    delimiter = max(";,\t", key=first.count)
    reader = csv.reader(io.StringIO(text), delimiter=delimiter)
    try:
        return [(reader.line_num, row) for row in reader if any(cell.strip() for cell in row)]
    except csv.Error:
        return []


#: meaning of a heading -> the words that say so; the first meaning that fits is taken
_HEADINGS: tuple[tuple[str, frozenset[str]], ...] = (
    ("machine", frozenset({"machine", "device"})),
    ("energy", frozenset({"energy", "used"})),
    ("start", frozenset({"start", "begin", "started"})),
    ("end", frozenset({"end", "stop", "finish", "ended"})),
    ("run", frozenset({"run", "no", "number", "note"})),
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
    meaning = next((name for name, told in _HEADINGS if words & told), None)
    if meaning in ("start", "end") and (has_unit or words & _READING_WORDS):
        return "first" if meaning == "start" else "last"
    if meaning is None and has_unit:
        return "energy"
    return meaning


def _row(cells: Sequence[str], columns: Mapping[str, tuple[int, float]]) -> dict[str, tuple[str, float]]:
    return {
        name: (cells[i].strip() if i < len(cells) else "", factor) for name, (i, factor) in columns.items()
    }


def _machine(row: Mapping[str, tuple[str, float]]) -> str:
    return " ".join(row["machine"][0].split())


def _with_row(
    study: Study, file: str, number: int, row: Mapping[str, tuple[str, float]], logged: Sequence[Span]
) -> tuple[Study, tuple[Problem, ...]]:
    def problem(code: str, severity: Severity = Severity.ERROR, **facts: object) -> Problem:
        return Problem(code, severity, file, number, facts=facts)

    machine_name = _machine(row)
    if not machine_name:
        return study, (problem("sheet.no_machine"),)
    try:
        energy_wh, step_wh = _energy(row)
    except ValueError as error:
        code = "sheet.bad_number" if str(error) else "sheet.no_energy"
        severity = Severity.ERROR if str(error) else Severity.CAUTION
        return study, (problem(code, severity, text=str(error)),)
    told: list[Problem] = []
    seconds = None
    start, end = (row.get(name, ("", 1.0))[0] for name in ("start", "end"))
    if _is_logged(start, end, logged):
        return study, (problem("sheet.logged", Severity.NOTE),)
    if logged and not _is_dated(start):
        told.append(problem("sheet.beside_log", Severity.CAUTION, machine=machine_name))
    try:
        seconds = _seconds(start, end)
    except ValueError as error:
        told.append(problem("sheet.bad_time", Severity.CAUTION, text=str(error)))
    if seconds is not None and seconds <= 0:
        told.append(problem("sheet.ends_before_start", Severity.CAUTION))
        seconds = None
    machine = next((m for m in study.machines if m.name == machine_name), None)
    if machine is None:
        study = edits.add_machine(study, machine_name).study
        machine = study.machines[-1]
    label = row.get("run", ("", 1.0))[0]
    note = f"run {label}" if label.isdigit() else label
    study, meter_id = _meter(study, machine.id, machine_name)
    study = edits.add_typed(
        study, machine.id, energy_wh, seconds=seconds, step_wh=step_wh, note=note, meter_id=meter_id
    ).study
    return study, tuple(told)


def _meter(study: Study, machine_id: str, machine_name: str) -> tuple[Study, str]:
    """The meter the machine's other runs were measured with, or a new one of unstated accuracy."""
    known = [g.meter_id for g in study.logs_of(machine_id)]
    known += [t.meter_id for t in study.typed if t.machine_id == machine_id]
    if known:
        return study, known[0]
    study = edits.add_meter(study, f"Meter of {machine_name}").study
    return study, study.meters[-1].id


def _energy(row: Mapping[str, tuple[str, float]]) -> tuple[float, float]:
    """Energy and the display's last digit. [Wh]

    Raises
    ------
    ValueError
        With the text that is no number; with no text when the row is not filled in.
    """
    text, factor = row.get("energy", ("", 1.0))
    if text:
        value, step = _number(text)
        return value * factor, step * factor
    (first, first_factor), (last, _) = row.get("first", ("", 1.0)), row.get("last", ("", 1.0))
    if not first or not last:
        raise ValueError("")
    (a, step_a), (b, step_b) = _number(first), _number(last)
    if b < a:
        raise ValueError(f"{first} to {last}")
    return (b - a) * first_factor, max(step_a, step_b) * first_factor


def _number(text: str) -> tuple[float, float]:
    """A number written with point or comma, and the worth of its last digit."""
    written = re.sub(r"\s*(k|m)?wh$", "", text.strip().lower()).replace(" ", "").replace(",", ".")
    if not re.fullmatch(r"\d+(\.\d+)?", written):
        raise ValueError(text)
    return float(written), 10.0 ** -len(written.partition(".")[2])


def _seconds(start: str, end: str) -> float | None:
    """Time from start to end; None where one is not filled in. [s]"""
    if not start or not end:
        return None
    a, b = _moment(start), _moment(end)
    if (a.tzinfo is None) != (b.tzinfo is None):
        raise ValueError(end)
    seconds = (b - a).total_seconds()
    # times of day alone: a run that ends earlier in the day has gone on over midnight
    return seconds + 86400 if seconds < 0 and a.year == b.year == _NO_DATE else seconds


def _is_dated(text: str) -> bool:
    try:
        return bool(text) and _moment(text).year != _NO_DATE
    except ValueError:
        return False


def _is_logged(start: str, end: str, logged: Sequence[Span]) -> bool:
    """Whether a row with dates tells of a run that a log holds: they share half of the shorter one."""
    if not (_is_dated(start) and _is_dated(end)):
        return False
    a, b = _moment(start).replace(tzinfo=None), _moment(end).replace(tzinfo=None)
    return any(min(b, d) - max(a, c) >= 0.5 * min(b - a, d - c) for c, d in logged if b > a)


def _moment(text: str) -> datetime:
    for form in _TIMES:
        try:
            return datetime.strptime(text, form)  # noqa: DTZ007  # only a difference of two is used
        except ValueError:
            continue
    try:
        return datetime.fromisoformat(text)
    except ValueError:
        raise ValueError(text) from None
