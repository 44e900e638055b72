"""Asks where the report, the tables and the bundle of the whole study go, and has them written."""

from datetime import datetime
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from core.bundle.log_bytes import of_study_file
from core.bundle.writing import without_folders
from core.language import mark, tr
from core.personal.search import Personal
from core.problems import Problem
from core.report.pictures import Drawable
from core.wording import each_once
from gui.publish.files import PublishFiles
from gui.publish.whole_study import FILES, Wanted, WholeStudy, personal_of, save_whole
from gui.session import Session
from gui.widgets.publish_whole import PublishWhole

#: key of the job
PERSONAL = "look for personal data"
_TITLES: dict[Wanted, str] = {
    "html": mark("Save the report as HTML"),
    "pdf": mark("Save the report as PDF"),
    "tables": mark("Save all tables"),
    "bundle": mark("Save the bundle"),
    "everything": mark("Save everything into a folder"),
}
_KINDS: dict[Wanted, str] = {
    "html": mark("HTML report (*.html)"),
    "pdf": mark("PDF report (*.pdf)"),
    "tables": mark("Spreadsheet (*.xlsx)"),
    "bundle": mark("Bundle (*{suffix})"),
    "everything": "",
}


class PublishGiving(QObject):
    """Between the card of the whole study and the files."""

    refused = Signal(str)

    def __init__(self, session: Session, card: PublishWhole, files: PublishFiles, window: QWidget) -> None:
        super().__init__(window)
        self._session, self._card, self._files = session, card, files
        card.wanted.connect(self._on_wanted)
        card.looking.connect(self._on_looking)

    def _whole(self) -> WholeStudy | None:
        """The study as it is given to others; None while it is being read."""
        session = self._session
        comparison, path = session.comparison, session.path
        if comparison is None or path is None or len(session.traces) < len(session.study.logs):
            self.refused.emit(tr("The logs are still being read; try again in a moment."))
            return None
        study = without_folders(session.study)
        drawable = Drawable(study, comparison, session.traces, session.activities)
        read = {log.id: session.data(log.id) for log in session.study.logs}
        readings = {log_id: data.readings for log_id, data in read.items() if data is not None}
        problems: list[Problem] = [p for data in read.values() if data is not None for p in data.problems]
        today = datetime.now().astimezone().date()
        warnings = tuple(each_once((*problems, *comparison.problems)))
        return WholeStudy(drawable, readings, partial(of_study_file, path), today, warnings)

    def _on_looking(self) -> None:
        whole = self._whole()
        if whole is None:
            self._card.close_bundle()
            return
        self._session.jobs.start(PERSONAL, lambda progress: personal_of(whole, progress), self._on_found)

    def _on_found(self, found: tuple[Personal, ...]) -> None:
        self._card.show_personal(found)

    def _on_wanted(self, name: str) -> None:
        whole = self._whole()
        wanted = next((each for each in FILES if each == name), None)
        if whole is None or wanted is None:
            return
        giving = self._card.giving

        def save(path: Path) -> None:
            self._files.start(lambda progress: save_whole(whole, wanted, path, giving, progress))

        stem, suffix = FILES[wanted]
        if not suffix:
            self._files.ask_for_folder(tr(_TITLES[wanted]), save)
            return
        kind = tr(_KINDS[wanted], suffix=suffix)
        self._files.ask_for_file(tr(_TITLES[wanted]), f"{stem}{suffix}", [kind], suffix[1:], save)
