"""Run sheets out of the program and back: saved as PDF or CSV, printed, read when they are filled in."""

from pathlib import Path

from PySide6.QtCore import QObject, QStandardPaths, Signal
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QDialog, QFileDialog, QWidget

from core.formatting import NumberLocale
from core.language import tr
from core.plan.sheet import run_sheet, sheet_csv
from gui.run_sheets import RunSheets
from gui.session import Session
from gui.widgets.plan_print import page_layout, page_size, print_sheet, write_pdf

#: a mark at the start tells spreadsheets that the text is UTF-8
_CSV_ENCODING = "utf-8-sig"


class PlanFiles(QObject):
    """The dialogs and what comes of them; none of them blocks the window."""

    told = Signal(str)  # what was done, or what stood in the way

    def __init__(self, session: Session, locale: NumberLocale, parent: QWidget) -> None:
        super().__init__(parent)
        self._session, self._locale, self._window = session, locale, parent
        self._sheets = RunSheets(session, self)
        self._sheets.told.connect(self.told)
        self._dialog: QFileDialog | QPrintDialog | None = None
        self._printer: QPrinter | None = None

    @property
    def dialog(self) -> QFileDialog | QPrintDialog | None:
        """The dialog that asks, while it is open."""
        return self._dialog

    def ask_pdf(self) -> None:
        """Ask where to save the sheet for printing."""
        self._ask_where(tr("Save run sheet (PDF)"), "run-sheet.pdf", "PDF (*.pdf)")

    def ask_csv(self) -> None:
        """Ask where to save the sheet for filling in."""
        self._ask_where(tr("Save run sheet (CSV)"), "run-sheet.csv", tr("Table as text (*.csv)"))

    def ask_print(self) -> None:
        """Ask for a printer."""
        self._printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        self._printer.setPageLayout(page_layout(page_size()))
        dialog = QPrintDialog(self._printer, self._window)
        dialog.accepted.connect(self._on_print)
        self._open(dialog)

    def ask_filled(self) -> None:
        """Ask for a filled sheet."""
        dialog = QFileDialog(self._window, tr("Read a filled run sheet"))
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.setNameFilters([tr("Tables as text (*.csv *.txt *.tsv)"), tr("All files (*)")])
        dialog.fileSelected.connect(self.read)
        self._open(dialog)

    def save(self, name: str) -> None:
        """Write the sheet; the ending says how."""
        path, study = Path(name), self._session.study
        sheet = run_sheet(study, self._locale)
        try:
            if path.suffix.lower() == ".csv":
                path.write_text(sheet_csv(sheet), encoding=_CSV_ENCODING, newline="")
                self.told.emit(tr("Saved {name}: fill in its blanks and read it here", name=path.name))
            else:
                pages = write_pdf(path, sheet, study.name)
                self.told.emit(tr("Saved {name}, {pages:page|pages}", name=path.name, pages=pages))
        except OSError as error:
            why = error.strerror or str(error)
            self.told.emit(
                tr(
                    "{name} was not saved ({why}). Choose another folder or free some room.",
                    name=path.name,
                    why=why,
                )
            )

    def read(self, name: str) -> None:
        """Read a filled sheet into the study."""
        self._sheets.read([Path(name)])

    def _ask_where(self, title: str, name: str, kind: str) -> None:
        dialog = QFileDialog(self._window, title)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setNameFilters([kind])
        dialog.setDefaultSuffix(name.rpartition(".")[2])
        dialog.setDirectory(
            QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        )
        dialog.selectFile(name)
        dialog.fileSelected.connect(self.save)
        self._open(dialog)

    def _open(self, dialog: QFileDialog | QPrintDialog) -> None:
        dialog.setObjectName("file_dialog")
        dialog.finished.connect(self._on_finished)
        self._dialog = dialog
        QDialog.open(dialog)

    def _on_finished(self) -> None:
        if self._dialog is not None:
            self._dialog.deleteLater()
        self._dialog = None

    def _on_print(self) -> None:
        if self._printer is None:
            return
        study = self._session.study
        try:
            pages = print_sheet(self._printer, run_sheet(study, self._locale), study.name)
        except OSError as error:
            self.told.emit(
                tr(
                    "Nothing was printed ({error}). Choose another printer, or save the sheet as PDF.",
                    error=error,
                )
            )
        else:
            self.told.emit(tr("Sent {pages:page|pages} to the printer", pages=pages))
