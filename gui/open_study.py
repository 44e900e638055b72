"""The study that is open: its file and history, what was read of its logs, what is selected, what went wrong.

Rules: every edit goes through `apply`, is saved before anybody hears of it, and is told as `changed`.
"""

from collections.abc import Iterable, Sequence
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from core import edits
from core.activity import Activity
from core.edits import Edit
from core.history import History
from core.problems import Problem, Severity
from core.store.file import StudyFile
from core.study import Source, Study
from core.traces import Trace
from gui.reading import LogData


class OpenStudy(QObject):
    """What is known of the open study without computing, and the one way to edit it."""

    changed = Signal(object, object)  # old study, new study
    logs_read = Signal()  # traces or readings have arrived
    selection_changed = Signal(object)  # run id or None
    problems_changed = Signal()
    opened = Signal()  # another study file is open

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._file: StudyFile | None = None
        self._history = History.start(edits.new_study("none"))
        self._data: dict[tuple[Source, ...], LogData] = {}
        self._selected: str | None = None
        self._problems: tuple[Problem, ...] = ()

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

    # what is done with it

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

    def take_in(self, edit: Edit, read: Iterable[tuple[tuple[Source, ...], LogData]]) -> None:
        """Apply an edit that comes with logs as they were read."""
        for sources, data in read:
            self._data[sources] = data
        self.apply(edit)
        self.logs_read.emit()

    def refuse_if_read_only(self) -> bool:
        """Say so if the study can only be looked at."""
        if self.is_read_only and self._file is not None:
            self.tell(Problem("session.read_only", Severity.ERROR, file=self._file.path.name))
        return self.is_read_only

    # how it comes about

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

    def _hold(self, file: StudyFile) -> None:
        """Have another study file open, of which no log has been read yet."""
        self._file, self._history = file, file.history
        self._data, self._selected = {}, None
        self._problems = () if file.problem is None else (file.problem,)
