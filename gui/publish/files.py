"""Where pictures and tables go: dialogs that never block, and files written outside the GUI thread."""

from collections.abc import Callable
from pathlib import Path

from attrs import frozen
from PySide6.QtCore import QObject, QStandardPaths, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from core.language import mark, tr
from core.progress import Progress
from core.report.tables import StudyTable
from core.spreadsheet import spreadsheet_bytes
from core.tables import Table, to_csv, to_html, to_markdown
from gui.jobs import Jobs
from gui.publish.encode import FILTERS, Ending, file_bytes
from gui.publish.making import TOGETHER, Desk, save_picked, save_sequence

#: key of the job
SAVE = "save pictures"
_SAVED_FILES = mark("Saved {count:file|files} in {folder}")
_SAVED_PICTURES = mark("Saved {count:picture|pictures} in {folder}")
_TABLES = {
    "csv": mark("CSV, full precision (*.csv)"),
    "xlsx": mark("Spreadsheet (*.xlsx)"),
    "md": mark("Markdown (*.md)"),
    "html": mark("HTML (*.html)"),
}


@frozen
class Saved:
    """What came of saving, in words, and the files."""

    told: str
    paths: tuple[Path, ...] = ()


def table_bytes(table: StudyTable, ending: str) -> bytes:
    """A table as the bytes of a file: in full for programs, rounded for readers.

    Raises
    ------
    ValueError
        If the ending is none of a table: the caller's mistake.
    """
    if ending == "xlsx":
        return spreadsheet_bytes([table.data])
    ways: dict[str, tuple[Callable[[Table], str], Table]] = {
        "csv": (to_csv, table.data),
        "md": (to_markdown, table.shown),
        "html": (to_html, table.shown),
    }
    if ending not in ways:
        raise ValueError(f"no way to write a table as {ending}")
    way, wanted = ways[ending]
    return way(wanted).encode()


class PublishFiles(QObject):
    """Asks where, and writes there."""

    saved = Signal(object)  # Saved

    def __init__(self, jobs: Jobs, window: QWidget) -> None:
        super().__init__(window)
        self._jobs, self._window = jobs, window
        self._folder = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.PicturesLocation)
        self._asked: Callable[[Path], None] | None = None
        self._dialog: QFileDialog | None = None

    @property
    def dialog(self) -> QFileDialog | None:
        """The dialog that asks where, while it is open."""
        return self._dialog

    # asking

    def ask_for_picture(self, desk: Desk, key: str, ending: Ending, ratio: float) -> None:
        """Ask for a name, and save the picture that is shown."""
        name = TOGETHER if key in [entry.key for entry in desk.together] else key

        def save(path: Path) -> None:
            self.start(lambda progress: _one_picture(desk, key, path, ending, ratio, progress))

        self.ask_for_file(tr("Save picture"), f"{name}.{ending}", [tr(FILTERS[ending])], ending, save)

    def ask_for_table(self, desk: Desk, key: str) -> None:
        """Ask for a name, and save the table that is shown; the name's ending says how."""

        def save(path: Path) -> None:
            self.start(lambda progress: _one_table(desk, key, path))

        self.ask_for_file(
            tr("Save table"), f"{key}.csv", [tr(kind) for kind in _TABLES.values()], "csv", save
        )

    def ask_for_all(self, desk: Desk, ending: Ending, ratio: float) -> None:
        """Ask for a folder, and save every pick into it."""

        def save(folder: Path) -> None:
            self.start(
                lambda progress: _many(
                    folder, lambda: save_picked(desk, folder, ending, ratio, progress), _SAVED_FILES
                )
            )

        self.ask_for_folder(tr("Save all picked into a folder"), save)

    def ask_for_steps(self, desk: Desk, key: str, ending: Ending, ratio: float) -> None:
        """Ask for a folder, and save into it the pictures that build the chart up."""

        def save(folder: Path) -> None:
            self.start(
                lambda progress: _many(
                    folder, lambda: save_sequence(desk, key, folder, ending, ratio, progress), _SAVED_PICTURES
                )
            )

        self.ask_for_folder(tr("Save step by step into a folder"), save)

    def ask_for_file(
        self, title: str, name: str, filters: list[str], suffix: str, save: Callable[[Path], None]
    ) -> None:
        """Ask for a name; `save` is called with it."""
        dialog = self._made(title)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setNameFilters(filters)
        dialog.setDefaultSuffix(suffix)
        dialog.selectFile(name)
        dialog.filterSelected.connect(self._on_filter)
        self._open(dialog, save)

    def ask_for_folder(self, title: str, save: Callable[[Path], None]) -> None:
        """Ask for a folder; `save` is called with it."""
        dialog = self._made(title)
        dialog.setFileMode(QFileDialog.FileMode.Directory)
        dialog.setOption(QFileDialog.Option.ShowDirsOnly)
        self._open(dialog, save)

    def _made(self, title: str) -> QFileDialog:
        dialog = QFileDialog(self._window, title, self._folder)
        dialog.setObjectName("publish_file_dialog")
        return dialog

    def _open(self, dialog: QFileDialog, save: Callable[[Path], None]) -> None:
        self._asked, self._dialog = save, dialog
        dialog.fileSelected.connect(self._on_file)
        dialog.finished.connect(self._on_finished)
        dialog.open()

    def _on_filter(self, chosen: str) -> None:
        if self._dialog is not None and "*." in chosen:
            self._dialog.setDefaultSuffix(chosen.rpartition("*.")[2].rstrip(")"))

    def _on_file(self, name: str) -> None:
        path = Path(name)
        self._folder = str(path if path.is_dir() else path.parent)
        if self._asked is not None:
            self._asked(path)

    def _on_finished(self) -> None:
        if self._dialog is not None:
            self._dialog.deleteLater()
        self._dialog, self._asked = None, None

    # writing

    def start(self, work: Callable[[Progress], Saved]) -> None:
        """Write in the pool; what came of it is told."""
        self._jobs.start(SAVE, work, self._on_saved, self._on_cancelled)

    def _on_saved(self, saved: Saved) -> None:
        self.saved.emit(saved)

    def _on_cancelled(self) -> None:
        self.saved.emit(Saved(tr("Saving was stopped; what was saved before is there.")))


def _one_picture(desk: Desk, key: str, path: Path, ending: Ending, ratio: float, progress: Progress) -> Saved:
    progress(0.0, tr("saving {name}", name=path.name))
    picture = desk.picture(key)
    if picture is None:
        return Saved(tr("There is nothing to save: the study has this figure no more."))
    if path.suffix.lower() != f".{ending}":
        path = path.with_name(f"{path.name}.{ending}")
    return _written(path, lambda: file_bytes(picture, ending, ratio))


def _one_table(desk: Desk, key: str, path: Path) -> Saved:
    table = desk.table(key)
    if table is None:
        return Saved(tr("There is nothing to save: the study has this table no more."))
    ending = path.suffix.lower().lstrip(".")
    if ending not in _TABLES:
        ending, path = "csv", path.with_name(f"{path.name}.csv")
    return _written(path, lambda: table_bytes(table, ending))


def _written(path: Path, made: Callable[[], bytes]) -> Saved:
    try:
        path.write_bytes(made())
    except OSError as error:
        return not_saved(path, error)
    return Saved(tr("Saved {name}", name=path.name), (path,))


def _many(folder: Path, save: Callable[[], tuple[Path, ...]], told: str) -> Saved:
    try:
        folder.mkdir(parents=True, exist_ok=True)
        paths = save()
    except OSError as error:
        return not_saved(folder, error)
    if not paths:
        return Saved(tr("There was nothing to save."))
    return Saved(tr(told, count=len(paths), folder=folder.name), paths)


def not_saved(path: Path, error: OSError) -> Saved:
    """What is said where something stood in the way of writing."""
    why = error.strerror or str(error)
    told = mark("{name} was not saved ({why}). Choose another folder or free some room.")
    return Saved(tr(told, name=path.name, why=why))
