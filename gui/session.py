"""The one mutable object of the program: the open study, and what is read and computed of it.

Reading and computing happen in the pool; a result that belongs to an older study is dropped.
"""

from collections.abc import Callable, Mapping, Sequence
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
from core.study import Choices, Log, Study
from core.traces import Trace
from gui import growing, reading
from gui.jobs import Jobs
from gui.open_study import OpenStudy
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


class Session(OpenStudy):
    """The open study and everything known about it."""

    compared = Signal(object)  # Comparison
    imported = Signal(int)  # how many logs came in
    sheets_found = Signal(object)  # paths of filled run sheets that lay among the logs
    copied = Signal(object)  # path that the study has been saved to

    def __init__(self, jobs: Jobs, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.jobs = jobs
        self._folder = folder
        self._comparison: Comparison | None = None
        self._results: dict[str, RunResult] = {}
        self._to_read: tuple[Path, ...] = ()
        self.reading_on = ReadingOn(self, jobs)

    # what there is

    @property
    def comparison(self) -> Comparison | None:
        """The newest comparison; None until the first one has been computed."""
        return self._comparison

    @property
    def results(self) -> Mapping[str, RunResult]:
        """The newest results by run id."""
        return self._results

    @property
    def is_untitled(self) -> bool:
        """Whether the program chose where the study is kept."""
        return self._file is None or self._file.path.parent == self._folder.resolve()

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

    def _go_to(self, new: History) -> None:
        before = self.study
        super()._go_to(new)
        if self.study is not before:
            self._catch_up()

    def _adopt(self, file: StudyFile | Problem) -> bool:
        if isinstance(file, Problem):
            self.tell(file)
            return False
        self.close()
        self._hold(file)
        self._comparison, self._results = None, {}
        remember(file.path)
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
        if new.sheets:
            self.sheets_found.emit(new.sheets)
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
        self.copied.emit(path)
        if go_on_there:
            before, was_untitled = self.path, self.is_untitled
            if self.open(path) and was_untitled and before is not None:
                before.unlink(missing_ok=True)
