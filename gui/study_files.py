"""Opening, saving and adding through file dialogs, and the list of studies opened lately."""

from collections.abc import Iterable, Sequence
from pathlib import Path

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QFileDialog, QMenu, QWidget

from core.bundle.reading import is_bundle
from core.language import tr
from core.problems import Problem, Severity
from core.run_sheet import is_run_sheet
from gui.bundles import Unpacked, unpack
from gui.run_sheets import RunSheets
from gui.session import Session
from gui.settings import Settings

STUDY_SUFFIX = ".samepart"

OPEN_BUNDLE = "open a bundle"


class StudyFiles(QObject):
    """Asks for file names, without ever blocking the window."""

    logs_chosen = Signal(object)  # list of Path

    def __init__(self, session: Session, settings: Settings, window: QWidget) -> None:
        super().__init__(window)
        self._session, self._settings, self._window = session, settings, window
        self._sheets = RunSheets(session, self)
        self._sheets.told.connect(self._on_sheet)
        session.sheets_found.connect(self.read_sheets)
        session.copied.connect(self._on_copied)
        self.recent_menu = QMenu(tr("Open &recent"), window)

    def fill_recent(self) -> None:
        """List the studies that were opened lately and are still there."""
        self.recent_menu.clear()
        for path in self._settings.recent:
            action = self.recent_menu.addAction(path.stem)
            action.setData(str(path))
            action.setToolTip(str(path))
            action.triggered.connect(self._open_recent)
        self.recent_menu.setEnabled(not self.recent_menu.isEmpty())

    @Slot()
    def open_study(self) -> None:
        """Ask for a study or a bundle and open it."""
        kinds = tr("Studies and bundles") + f" (*{STUDY_SUFFIX} *.zip)"
        dialog = self._dialog(tr("Open a study"), QFileDialog.FileMode.ExistingFile, kinds)
        dialog.fileSelected.connect(self._open)
        dialog.open()

    @Slot()
    def add_logs(self) -> None:
        """Ask for logs."""
        kinds = tr("All files") + " (*)"
        dialog = self._dialog(tr("Add meter logs"), QFileDialog.FileMode.ExistingFiles, kinds)
        dialog.filesSelected.connect(self._add)
        dialog.open()

    @Slot()
    def add_folder(self) -> None:
        """Ask for a folder of logs."""
        dialog = self._dialog(tr("Add a folder of logs"), QFileDialog.FileMode.Directory, "")
        dialog.filesSelected.connect(self._add)
        dialog.open()

    @Slot()
    def save_as(self) -> None:
        """Ask for a name, and go on there."""
        dialog = self._save_dialog(tr("Save the study as"))
        dialog.fileSelected.connect(self._save_as)
        dialog.open()

    @Slot()
    def save_copy(self) -> None:
        """Ask for a name, write a copy, and go on here."""
        dialog = self._save_dialog(tr("Save a copy of the study"))
        dialog.fileSelected.connect(self._save_copy)
        dialog.open()

    def open_bundle_among(self, paths: Sequence[Path]) -> bool:
        """Make a study of the first bundle among files, the others being its logs; whether there is one."""
        bundles = [path for path in paths if is_bundle(path)]
        if bundles:
            self._open_bundle(bundles[0], [path for path in paths if path not in bundles])
        return bool(bundles)

    def besides_sheets(self, paths: Iterable[Path]) -> list[Path]:
        """The files that are no filled run sheets."""
        return [path for path in paths if not is_run_sheet(path)]

    def read_sheets(self, paths: Iterable[Path]) -> None:
        """Take filled run sheets into the study, after the logs that are being read."""
        self._sheets.read(tuple(paths))

    def _on_sheet(self, what: str) -> None:
        self._session.tell(Problem("session.sheet", Severity.NOTE, facts={"what": what}))

    def _open_bundle(self, path: Path, beside: Sequence[Path]) -> None:
        target = self._session.free_path()
        self._session.jobs.start(
            OPEN_BUNDLE, lambda progress: unpack(path, beside, target, progress), self._on_bundle
        )

    def _on_bundle(self, found: Unpacked) -> None:
        if found.path is not None:
            self._session.open(found.path)
        self._session.tell(*found.problems)

    def _open(self, name: str) -> None:
        self._settings.last_folder = str(Path(name).parent)
        if not self.open_bundle_among([Path(name)]):
            self._session.open(Path(name))

    def _open_recent(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self._open(str(action.data()))

    def _add(self, names: list[str]) -> None:
        self._settings.last_folder = str(Path(names[0]).parent)
        self.logs_chosen.emit([Path(name) for name in names])

    def _save_as(self, name: str) -> None:
        self._session.save_as(Path(name))

    def _save_copy(self, name: str) -> None:
        self._session.save_copy(Path(name))

    def _on_copied(self, path: Path) -> None:
        self._settings.last_folder = str(path.parent)  # where saving has worked

    def _dialog(self, title: str, mode: QFileDialog.FileMode, kinds: str) -> QFileDialog:
        dialog = QFileDialog(self._window, title, self._settings.last_folder, kinds)
        dialog.setObjectName("file_dialog")
        dialog.setFileMode(mode)
        dialog.finished.connect(dialog.deleteLater)
        return dialog

    def _save_dialog(self, title: str) -> QFileDialog:
        kinds = tr("Studies") + f" (*{STUDY_SUFFIX})"
        dialog = self._dialog(title, QFileDialog.FileMode.AnyFile, kinds)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setDefaultSuffix(STUDY_SUFFIX[1:])
        dialog.selectFile(self._session.study.name)
        return dialog
