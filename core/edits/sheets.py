"""The edit that takes a filled run sheet in: readings, same-load checks, conditions of logged runs."""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime, timedelta
from typing import TypeVar

from attrs import evolve, frozen

from core.edits.checks import add_load_check, is_one_load
from core.edits.conditions import note_making, note_temperatures
from core.edits.edit import Edit
from core.edits.machines import add_machine, add_meter, add_typed, assign_meter, with_usual_meter
from core.edits.runs import rename_run
from core.formatting import listed
from core.language import tr
from core.plan.filled import Conditions, FilledRow, FilledSheet
from core.plan.sheet import labels_of
from core.problems import Problem, Severity
from core.study import Machine, Meter, Study, TypedReading


@frozen
class LoggedRun:
    """When a run that a log holds was made, by the wall clock of the log."""

    run_id: str
    start: datetime
    end: datetime


Labelled = TypeVar("Labelled", Machine, Meter)
#: a start is noted no longer than this before the machine heats
_SOON = timedelta(minutes=15)
#: runs that were logged, by the name of their machine
Logged = Mapping[str, Sequence[LoggedRun]]


def take_in_sheet(
    study: Study, sheet: FilledSheet, logged: Logged | None = None
) -> tuple[Edit, tuple[Problem, ...]]:
    """Take a filled sheet into a study.

    Parameters
    ----------
    study : Study
        Machines and meters of the sheet that are not in it yet are added.
    sheet : FilledSheet
    logged : mapping of machine name to LoggedRun, optional
        A row that tells of one of these gives it its conditions and is no reading of its own: the log knows
        more, and a run counts once.

    Returns
    -------
    Edit, problems
        A row that cannot be used is told with its number and leaves the others alone. A row that is read for
        the second time changes nothing.
    """
    taker = _Taker(study, sheet.file, logged or {})
    for row in sheet.rows:
        if not row.is_check:
            taker.take(row)
    taker.assign_meters()
    taker.take_checks([row for row in sheet.rows if row.is_check])
    taker.tell_blank_rows()
    label = tr("Read a run sheet of {rows:row|rows}", rows=len(sheet.rows))
    problems = sorted((*sheet.problems, *taker.problems), key=lambda p: p.row or 0)
    return Edit(taker.study, label), tuple(problems)


class _Taker:
    """Takes one row after another into a study, and keeps what is to be told."""

    def __init__(self, study: Study, file: str, logged: Logged) -> None:
        self.study = study
        self.problems: list[Problem] = []
        self._file, self._logged = file, logged
        self._blank: list[FilledRow] = []
        self._meters_of_logs: dict[str, dict[str, FilledRow]] = defaultdict(dict)

    def _tell(self, row: FilledRow, code: str, severity: Severity, **facts: object) -> None:
        self.problems.append(Problem(code, severity, self._file, row.number, facts=facts))

    def take(self, row: FilledRow) -> None:
        """Take the row of a run in."""
        if not row.machine:
            self._tell(row, "sheet.no_machine", Severity.ERROR)
            return
        run = _logged_run(row, self._logged.get(self._name_of(row), ()))
        if run is not None:
            self._take_conditions(row, run)
            return
        self.problems += row.problems
        if row.is_refused:
            return
        if row.energy is None:
            self._blank.append(row)
            return
        if self._name_of(row) in self._logged and self._logged[self._name_of(row)] and not row.is_dated:
            self._tell(row, "sheet.beside_log", Severity.CAUTION, machine=row.machine)
        self._add_reading(row)

    def _name_of(self, row: FilledRow) -> str:
        machine = _named(row.machine, self.study.machines)
        return row.machine if machine is None else machine.name

    def _add_reading(self, row: FilledRow) -> None:
        assert row.energy is not None
        machine = _named(row.machine, self.study.machines)
        if machine is None:
            self.study = add_machine(self.study, row.machine).study
            machine = self.study.machines[-1]
        meter = self._meter(row.meter) if row.meter else self._usual_meter(machine)
        study = add_typed(
            self.study,
            machine.id,
            row.energy.value_wh,
            seconds=row.seconds,
            step_wh=row.energy.step_wh,
            note=_note(row),
            meter_id=meter.id,
        ).study
        reading = _with_conditions(study.typed[-1], row)
        if row.label and any(_is_same(reading, known) for known in self.study.typed):
            self._tell(row, "sheet.known", Severity.NOTE)
            return
        self.study = evolve(study, typed=(*study.typed[:-1], reading))

    def _meter(self, name: str) -> Meter:
        """The meter of that name, new where there is none."""
        meter = _named(name, self.study.meters)
        if meter is None:
            self.study = add_meter(self.study, name).study
            meter = self.study.meters[-1]
        return meter

    def _usual_meter(self, machine: Machine) -> Meter:
        """The meter the machine's other runs were measured with, or a new one of unstated accuracy."""
        self.study, meter = with_usual_meter(self.study, machine)
        return meter

    # runs that a log holds

    def _take_conditions(self, row: FilledRow, logged: LoggedRun) -> None:
        self._tell(row, "sheet.logged", Severity.NOTE)
        run = self.study.run(logged.run_id)
        told = row.conditions
        self.study = note_temperatures(
            self.study, run.id, _first(told.bed_c, run.bed_c), _first(told.room_c, run.room_c)
        ).study
        self.study = note_making(
            self.study,
            run.id,
            _first(told.nozzle_c, run.nozzle_c),
            _first(told.first_layer_bed_c, run.first_layer_bed_c),
            _first(told.first_layer_nozzle_c, run.first_layer_nozzle_c),
        ).study
        if row.remarks and not run.name:
            self.study = rename_run(self.study, run.id, _note(row)).study
        if row.meter:
            self._meters_of_logs[run.log_id].setdefault(row.meter.casefold(), row)

    def assign_meters(self) -> None:
        """Give each log the meter that its rows name, where they name one."""
        for log_id, rows in self._meters_of_logs.items():
            first = next(iter(rows.values()))
            if len(rows) == 1:
                meter = self._meter(first.meter)  # which may be new to the study
                self.study = assign_meter(self.study, log_id, meter.id).study
            else:
                names = listed([row.meter for row in rows.values()])
                facts = {"machine": first.machine, "meters": names}
                self._tell(first, "sheet.meters_of_log", Severity.CAUTION, **facts)

    # same-load checks

    def take_checks(self, rows: Sequence[FilledRow]) -> None:
        """Take rows with one name as same-load checks: the first of them against each of the others."""
        groups: dict[str, list[FilledRow]] = defaultdict(list)
        for row in rows:
            self.problems += row.problems
            if row.energy is not None:
                groups[row.label.casefold()].append(row)
        for first, *others in groups.values():
            if not others:
                self._tell(first, "sheet.check_alone", Severity.CAUTION)
            for other in others:
                self._take_check(first, other)

    def _take_check(self, first: FilledRow, other: FilledRow) -> None:
        if not first.meter or not other.meter or first.meter.casefold() == other.meter.casefold():
            self._tell(other, "sheet.check_alone", Severity.CAUTION)
            return
        assert first.energy is not None
        assert other.energy is not None
        if not first.seconds or not other.seconds:
            self._tell(first if not first.seconds else other, "sheet.check_no_time", Severity.CAUTION)
            return
        # the load is steady: what the other meter counted is brought to the time of the first
        scale = first.seconds / other.seconds
        reading, other_reading = first.energy.value_wh, other.energy.value_wh * scale
        if not is_one_load(reading, other_reading):
            facts = {"reading": reading, "other": other_reading}
            self._tell(first, "sheet.check_apart", Severity.CAUTION, **facts)
            return
        study = add_load_check(
            self.study,
            self._meter(first.meter).id,
            self._meter(other.meter).id,
            reading,
            other_reading,
            step=first.energy.step_wh,
            other_step=other.energy.step_wh * scale,
            seconds=first.seconds,
            note=f"{first.label} {first.remarks}".strip(),
        ).study
        new = evolve(study.checks[-1], id="")
        if any(evolve(known, id="") == new for known in self.study.checks):
            self._tell(first, "sheet.known", Severity.NOTE)
            return
        self.study = study

    def tell_blank_rows(self) -> None:
        """Rows without an energy, once for all of them."""
        if not self._blank:
            return
        if len(self._blank) == 1:
            self._tell(self._blank[0], "sheet.no_energy", Severity.CAUTION)
            return
        severity = Severity.NOTE if all(row.is_blank for row in self._blank) else Severity.CAUTION
        rows = listed(_spans([row.number for row in self._blank]))
        self._tell(self._blank[0], "sheet.no_energies", severity, rows=rows)


def _first(told: float | None, known: float | None) -> float | None:
    return known if told is None else told


def _spans(numbers: Iterable[int]) -> list[str]:
    """Numbers in words, neighbours taken together.

    Examples
    --------
    >>> _spans([2, 3, 4, 7])
    ['2 to 4', '7']
    """
    spans: list[list[int]] = []
    for number in numbers:
        if spans and number == spans[-1][-1] + 1:
            spans[-1].append(number)
        else:
            spans.append([number])
    return [
        tr("{first} to {last}", first=span[0], last=span[-1]) if len(span) > 1 else str(span[0])
        for span in spans
    ]


def _named(name: str, items: Sequence[Labelled]) -> Labelled | None:
    """The machine or meter that a sheet calls so; capitals do not matter where no other fits."""
    labels = labels_of(items)
    for wanted, folded in ((name, False), (name.casefold(), True)):
        for item in items:
            label = labels[item.id].casefold() if folded else labels[item.id]
            if wanted in (label, item.name.casefold() if folded else item.name):
                return item
    return None


def _note(row: FilledRow) -> str:
    """What a reading is called: the number of its run, and the remarks."""
    label = f"run {row.label}" if row.label.isdigit() else row.label
    return ": ".join(text for text in (label, row.remarks) if text)


def _with_conditions(reading: TypedReading, row: FilledRow) -> TypedReading:
    told: Conditions = row.conditions
    return evolve(
        reading,
        started=row.start.isoformat(timespec="minutes") if row.start is not None and row.is_dated else "",
        starting_state=row.starting_state,
        bed_c=told.bed_c,
        room_c=told.room_c,
        nozzle_c=told.nozzle_c,
        first_layer_bed_c=told.first_layer_bed_c,
        first_layer_nozzle_c=told.first_layer_nozzle_c,
    )


def _is_same(reading: TypedReading, known: TypedReading) -> bool:
    """Whether a reading was taken in before; what the user has done with it since does not matter."""
    return evolve(reading, id="", included=True, why_left_out="") == evolve(
        known, id="", included=True, why_left_out=""
    )


def _logged_run(row: FilledRow, logged: Sequence[LoggedRun]) -> LoggedRun | None:
    """The logged run that a row with dates tells of: they share half of the shorter one.

    A row without an end tells of the run in which its start lies, or which begins soon after it.
    """
    if not row.is_dated or row.start is None:
        return None
    start = row.start.replace(tzinfo=None)
    if row.end is None:
        return next((run for run in logged if run.start - _SOON <= start < run.end), None)
    end = row.end.replace(tzinfo=None)
    for run in logged:
        shared = min(end, run.end) - max(start, run.start)
        if shared >= 0.5 * min(end - start, run.end - run.start):
            return run
    return None
