"""Filled run sheets taken into the study: chosen on the Fairness page, or dropped on the window."""

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal, Slot

from core import edits
from core.language import tr
from core.plan.filled import FilledSheet, read_sheet
from core.progress import Progress
from core.run_sheet import logged_runs
from gui.session import READ_FILES, Session

#: key of the job
READ_SHEET = "read run sheet"


class RunSheets(QObject):
    """Reads sheets in the pool, after logs that came with them: a row may tell of their runs."""

    told = Signal(str)  # what came of a sheet

    def __init__(self, session: Session, parent: QObject) -> None:
        super().__init__(parent)
        self._session = session
        self._waiting: tuple[Path, ...] = ()
        session.jobs.ended.connect(self._on_ended)

    def read(self, paths: Sequence[Path]) -> None:
        """Read filled sheets into the study, after the logs that are being read."""
        if not paths or self._session.refuse_if_read_only():
            return
        self._waiting = (*self._waiting, *paths)
        self._go_on()

    @Slot(str)
    def _on_ended(self, key: str) -> None:
        if self._waiting and key in (READ_FILES, READ_SHEET):
            # what has ended is taken into the study once this signal has been heard
            QTimer.singleShot(0, self, self._go_on)

    @Slot()
    def _go_on(self) -> None:
        jobs, waiting = self._session.jobs, self._waiting
        if not waiting or jobs.is_running(READ_FILES) or jobs.is_running(READ_SHEET):
            return
        self._waiting = ()

        def work(progress: Progress) -> list[FilledSheet]:
            sheets = []
            for done, path in enumerate(waiting):
                progress(done / len(waiting), tr("reading {name}", name=path.name))
                sheets.append(read_sheet(path))
            return sheets

        jobs.start(READ_SHEET, work, self._on_read)

    def _on_read(self, sheets: Sequence[FilledSheet]) -> None:
        for sheet in sheets:
            self._take_in(sheet)

    def _take_in(self, sheet: FilledSheet) -> None:
        study = self._session.study
        edit, problems = edits.take_in_sheet(study, sheet, logged_runs(study, self._session.traces))
        name = Path(sheet.file).name
        self._session.tell(*problems)
        if edit.study == study:
            self.told.emit(
                tr("{name} had nothing new", name=name)
                if sheet.rows
                else tr("{name} is no run sheet", name=name)
            )
            return
        self._session.apply(edit)
        self._session.seal()
        runs = len(edit.study.typed) - len(study.typed)
        checks = len(edit.study.checks) - len(study.checks)
        self.told.emit(_told(runs, checks, name))


def _told(runs: int, checks: int, name: str) -> str:
    """What was read from a filled sheet."""
    if runs and checks:
        return tr(
            "Read {runs:reading|readings} and {checks:same-load check|same-load checks} from {name}",
            runs=runs,
            checks=checks,
            name=name,
        )
    if runs:
        return tr("Read {runs:reading|readings} from {name}", runs=runs, name=name)
    if checks:
        return tr("Read {checks:same-load check|same-load checks} from {name}", checks=checks, name=name)
    return tr("Read conditions of logged runs from {name}", name=name)
