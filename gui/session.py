"""The one mutable object of the program: the open study, its history, and what was read and computed.

Rules: every edit goes through `apply`, is saved before anybody hears of it, and is told as `changed`.
Reading and computing happen in the pool; a result that belongs to an older study is dropped.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from pathlib import Path

from attrs import evolve, frozen
from PySide6.QtCore import QObject, Signal

from core import edits
from core.activity import Activity
from core.demo import demo_study, with_what_is_known
from core.edits import Edit
from core.history import History
from core.language import tr
from core.places import demo_folder
from core.problems import Problem, Severity
from core.progress import Progress
from core.results.compare import compare, forget
from core.results.values import Comparison, RunResult
from core.store.copy_open import copy_open
from core.store.file import StudyFile
from core.store.untitled import new_untitled_path, remember, untitled_path
from core.study import Choices, Log, Source, Study
from core.traces import Trace
from gui import growing, reading
from gui.jobs import Jobs
from gui.reading import LogData
from gui.reading_on import ReadingOn

#: keys of the jobs
READ_FILES, READ_LOGS, COMPARE, COPY = "read files", "read logs", "compare", "copy"
DEMO_NAME = "demo.samepart"


@frozen
class _Asked:
    """What a comparison was asked for."""

    study: Study
    traces: Mapping[str, Trace]
    activities: Mapping[str, Activity]


class Session(QObject):
    """The open study and everything known about it."""

    changed = Signal(object, object)  # old study, new study
    compared = Signal(object)  # Comparison
    logs_read = Signal()  # traces or readings have arrived
    selection_changed = Signal(object)  # run id or None
    problems_changed = Signal()
    imported = Signal(int)  # how many logs came in
    opened = Signal()  # another study file is open

    def __init__(self, jobs: Jobs, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.jobs = jobs
        self._folder = folder
        self._file: StudyFile | None = None
        self._history = History.start(edits.new_study("none"))
        self._data: dict[tuple[Source, ...], LogData] = {}
        self._comparison: Comparison | None = None
        self._results: dict[str, RunResult] = {}
        self._selected: str | None = None
        self._problems: tuple[Problem, ...] = ()
        self._to_read: tuple[Path, ...] = ()
        self.reading_on = ReadingOn(self)

    # what there is

    @property
    def history(self) -> History:
        """The study with its past and its undone future."""
        return self._history

    @property
    def study(self) -> Study:
        """The study as it is now."""
        return self._history.study

    @property
    def comparison(self) -> Comparison | None:
        """The newest comparison; None until the first one has been computed."""
        return self._comparison

    @property
    def results(self) -> Mapping[str, RunResult]:
        """The newest results by run id."""
        return self._results

    @property
    def selected(self) -> str | None:
        """The selected run, the same on every page."""
        return self._selected

    @property
    def problems(self) -> tuple[Problem, ...]:
        """What went wrong with files since the list was last put away."""
        return self._problems

    @property
    def path(self) -> Path | None:
        """The study file."""
        return self._file.path if self._file else None

    @property
    def file(self) -> StudyFile | None:
        """The study file, open; None before the first one."""
        return self._file

    @property
    def is_untitled(self) -> bool:
        """Whether the program chose where the study is kept."""
        return self._file is None or self._file.path.parent == self._folder.resolve()

    @property
    def is_read_only(self) -> bool:
        """Whether the study can only be looked at."""
        return self._file is not None and self._file.read_only

    def data(self, log_id: str) -> LogData | None:
        """What was read from a log; None while it is not read yet."""
        return self._data.get(self.study.log(log_id).sources)

    @property
    def read(self) -> dict[str, LogData | None]:
        """What was read from every log, by log id; None for those that are not read yet."""
        return {log.id: self._data.get(log.sources) for log in self.study.logs}

    @property
    def traces(self) -> dict[str, Trace]:
        """The traces that have been read, by log id."""
        known = ((log.id, self._data.get(log.sources)) for log in self.study.logs)
        return {log_id: data.trace for log_id, data in known if data is not None and data.trace is not None}

    @property
    def activities(self) -> dict[str, Activity]:
        """What was found in the traces, by log id."""
        known = ((log.id, self._data.get(log.sources)) for log in self.study.logs)
        return {log_id: d.activity for log_id, d in known if d is not None and d.activity is not None}

    def apply(self, edit: Edit) -> None:
        """Take an edit in and save it."""
        self._go_to(self._history.apply(edit))

    def undo(self) -> None:
        """Go one step back."""
        self._go_to(self._history.undo())

    def redo(self) -> None:
        """Go one step on."""
        self._go_to(self._history.redo())

    def seal(self) -> None:
        """A drag or a field is finished: the next edit is a step of its own."""
        if self._history.merging:
            self._go_to(self._history.sealed())

    def select(self, run_id: str | None) -> None:
        """Select a run on every page, or none."""
        if run_id != self._selected:
            self._selected = run_id
            self.seal()
            self.selection_changed.emit(run_id)

    def tell(self, *problems: Problem) -> None:
        """Add to the list of what went wrong."""
        if problems:
            self._problems = (*self._problems, *problems)
            self.problems_changed.emit()

    def untell(self, codes: Sequence[str], file: str) -> None:
        """Take back what was told of a file and is so no longer."""
        left = tuple(p for p in self._problems if p.file != file or p.code not in codes)
        if len(left) < len(self._problems):
            self._problems = left
            self.problems_changed.emit()

    def put_problems_away(self) -> None:
        """Empty the list of what went wrong."""
        self._problems = ()
        self.problems_changed.emit()

    # files

    def open_untitled(self) -> bool:
        """Open the study that was never given a name, or make one."""
        try:
            path = untitled_path(self._folder)
        except OSError as error:
            self.tell(
                Problem("session.no_folder", Severity.ERROR, facts={"folder": self._folder, "why": error})
            )
            return False
        return self.open(path) if path.exists() else self._adopt(StudyFile.create(path))

    def new_study(self) -> bool:
        """Start an empty study; the present one stays where it is kept."""
        return self._adopt(StudyFile.create(self.free_path()))

    def free_path(self) -> Path:
        """A place for another study without a name."""
        return new_untitled_path(self._folder)

    def open(self, path: Path) -> bool:
        """Open a study file; the present study stays open if that fails."""
        if self._file is not None and path.resolve() == self._file.path:
            return True
        return self._adopt(StudyFile.open(path))

    def open_demo(self) -> bool:
        """Open the demo study, reading its logs if this is the first time."""
        path = self._folder / DEMO_NAME
        if path.exists() and self.open(path):
            if not self.study.logs:
                self.add_logs([demo_folder() / "logs"], with_what_is_known)
            return True
        if path.exists():  # what cannot be opened is kept
            path = self.free_path()
        if not self._adopt(StudyFile.create(path, History.start(Edit(demo_study(), tr("Open the demo"))))):
            return False
        self.add_logs([demo_folder() / "logs"], with_what_is_known)
        return True

    def save_as(self, path: Path) -> None:
        """Copy the study to another place and go on working there; an untitled one moves."""
        self._copy(path, go_on_there=True)

    def save_copy(self, path: Path) -> None:
        """Copy the study to another place."""
        self._copy(path, go_on_there=False)

    def add_logs(self, paths: Sequence[Path], finish: Callable[[Study], Study] | None = None) -> None:
        """Read logs, keep their bytes, and take them into the study; `finish` adds what is known besides."""
        file = self._file
        if file is None:
            self.tell(Problem("session.no_file", Severity.ERROR))
        elif self.jobs.is_running(READ_FILES):
            self._to_read = (*self._to_read, *paths)  # what is being read now goes on first
        elif not self.refuse_if_read_only():
            wanted, basis = tuple(paths), growing.Basis(self.study, self.read, finish)

            def work(progress: Progress) -> tuple[growing.Basis, growing.TakenIn]:
                return basis, growing.take_in(wanted, basis, file, progress)

            self.jobs.start(READ_FILES, work, self._on_files, self._on_files_cancelled)

    def read_again(self, log_id: str, index: int, choices: Choices) -> None:
        """Read a file of a log with other choices; the study changes once that has worked."""
        if self._file is None or self.refuse_if_read_only():
            return
        blob, log = self._file.blob, self.study.log(log_id)

        def work(progress: Progress) -> tuple[str, int, Choices, LogData]:
            return log_id, index, choices, reading.read_with(log, index, choices, blob, progress)

        self.jobs.start(f"{READ_LOGS} {log_id}", work, self._on_choices)

    def take_in(self, edit: Edit, read: Iterable[tuple[tuple[Source, ...], LogData]]) -> None:
        """Apply an edit that comes with logs as they were read."""
        for sources, data in read:
            self._data[sources] = data
        self.apply(edit)
        self.logs_read.emit()

    def close(self) -> None:
        """Stop all work and close the file."""
        self._to_read = ()
        self.reading_on.close()
        self.jobs.cancel_all()
        if self._file is not None:
            self._file.close()
            self._file = None
        forget()

    # how it comes about

    def refuse_if_read_only(self) -> bool:
        """Say so if the study can only be looked at."""
        if self.is_read_only and self._file is not None:
            self.tell(Problem("session.read_only", Severity.ERROR, file=self._file.path.name))
        return self.is_read_only

    def _go_to(self, new: History) -> None:
        old = self._history
        if new is old or (new.study is not old.study and self.refuse_if_read_only()):
            return
        if self._file is not None and not self._file.read_only:
            problem = self._file.write(old, new)
            if problem is not None:
                self.tell(problem)
        self._history = new
        if new.study is old.study:
            return
        known = {run.id for run in new.study.runs} | {typed.id for typed in new.study.typed}
        if self._selected is not None and self._selected not in known:
            self._selected = None
            self.selection_changed.emit(None)
        self.changed.emit(old.study, new.study)
        self._catch_up()

    def _adopt(self, file: StudyFile | Problem) -> bool:
        if isinstance(file, Problem):
            self.tell(file)
            return False
        self.close()
        self._file, self._history = file, file.history
        remember(file.path)
        self._data, self._comparison, self._results, self._selected = {}, None, {}, None
        self._problems = () if file.problem is None else (file.problem,)
        self.problems_changed.emit()
        self.opened.emit()
        self._catch_up()
        return True

    def _catch_up(self) -> None:
        """Read what the study refers to and has not been read; compute what has changed."""
        missing = tuple(log for log in self.study.logs if log.sources not in self._data)
        if missing and self._file is not None:
            blob = self._file.blob
            self.jobs.start(
                READ_LOGS, lambda progress: reading.read_logs(missing, blob, progress), self._on_logs
            )
        asked = _Asked(self.study, self.traces, self.activities)
        self.jobs.start(
            COMPARE,
            lambda _: (asked, compare(asked.study, asked.traces, asked.activities)),
            self._on_comparison,
        )

    def _on_files(self, given: tuple[growing.Basis, growing.TakenIn]) -> None:
        basis, found = given
        for path, grown in found.grown:
            self.reading_on.take_in(path, grown)
        before, new, edit = len(self.study.logs), found.new, found.edit
        self.reading_on.remember(new.places)
        again = (log.sources[0] for log, _ in new.logs if edits.is_imported(self.study, log.sources))
        known = (Problem("session.known", Severity.NOTE, source.file_name) for source in again)
        self.tell(*new.problems, *known)
        if basis.study is not self.study:  # edited meanwhile
            edit = evolve(basis, study=self.study, read=self.read).adding(new)
        if edit is not None:
            self.take_in(edit, ((log.sources, data) for log, data in new.logs))
            self.seal()
        self.imported.emit(len(self.study.logs) - before)
        waiting, self._to_read = self._to_read, ()
        if waiting:
            self.add_logs(waiting)

    def _on_files_cancelled(self) -> None:
        self._to_read = ()

    def _on_logs(self, found: Sequence[tuple[Log, LogData]]) -> None:
        told = {p.fact("expected") for p in self._problems if p.code == "bundle.log_missing"}
        for log, data in found:
            self._data[log.sources] = data
            self.tell(*(p for p in data.problems if data.trace is None and p.fact("digest") not in told))
        self.logs_read.emit()
        self._catch_up()

    def _on_choices(self, found: tuple[str, int, Choices, LogData]) -> None:
        log_id, index, choices, data = found
        log = next((g for g in self.study.logs if g.id == log_id), None)
        if log is None or index >= len(log.sources):
            return
        if data.trace is None:
            self.tell(*data.problems)
            return
        edit = edits.set_choices(self.study, log_id, index, choices, data.runs)
        self.take_in(edit, [(edit.study.log(log_id).sources, data)])
        self.seal()

    def _on_comparison(self, found: tuple[_Asked, Comparison]) -> None:
        asked, comparison = found
        if asked.study is not self.study:
            return
        self._comparison = comparison
        self._results = {run.run_id: run for machine in comparison.machines for run in machine.runs}
        self.compared.emit(comparison)

    def _copy(self, path: Path, *, go_on_there: bool) -> None:
        file = self._file
        if file is None:
            return
        here = file.path

        def work(progress: Progress) -> tuple[Path, bool, Problem | None]:
            return path, go_on_there, copy_open(here, path, progress)

        self.jobs.start(COPY, work, self._on_copy)

    def _on_copy(self, done: tuple[Path, bool, Problem | None]) -> None:
        path, go_on_there, problem = done
        if problem is not None:
            self.tell(problem)
            return
        if go_on_there:
            before, was_untitled = self.path, self.is_untitled
            if self.open(path) and was_untitled and before is not None:
                before.unlink(missing_ok=True)
