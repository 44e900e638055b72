"""Reads prices by date from a file that the user picks, into the study."""

from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog, QWidget

from core import edits
from core.costs.price_csv import PricesRead, read_prices
from core.language import tr
from core.problems import Problem, Severity
from core.progress import Progress
from gui.session import Session

#: key of the job
READ_PRICES = "read prices"


class PriceFile(QObject):
    """The dialog and what comes of it; nothing here blocks the window."""

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(parent)
        self._session, self._window = session, parent
        self._dialog: QFileDialog | None = None

    def ask(self) -> None:
        """Ask for a file of prices."""
        dialog = QFileDialog(self._window, tr("Read prices by date"))
        dialog.setObjectName("file_dialog")
        dialog.setFileMode(QFileDialog.FileMode.ExistingFile)
        dialog.setNameFilters([tr("Prices as text (*.csv *.txt *.tsv)"), tr("All files (*)")])
        dialog.fileSelected.connect(self.read)
        dialog.finished.connect(self._on_finished)
        self._dialog = dialog
        dialog.open()

    def read(self, name: str) -> None:
        """Read a file of prices."""
        path, zone = Path(name), self._session.study.costs.tariff.zone

        def work(progress: Progress) -> PricesRead:
            progress(0.0, tr("reading {name}", name=path.name))
            try:
                data = path.read_bytes()
            except OSError as error:
                facts = {"why": error.strerror or str(error)}
                problem = Problem("prices.unreadable", Severity.ERROR, path.name, facts=facts)
                return PricesRead(None, (problem,))
            return read_prices(data, path.name, zone)

        self._session.jobs.start(READ_PRICES, work, self._on_prices)

    def _on_finished(self) -> None:
        if self._dialog is not None:
            self._dialog.deleteLater()
        self._dialog = None

    def _on_prices(self, read: PricesRead) -> None:
        self._session.tell(*read.problems)
        if read.listed is not None and not self._session.is_read_only:
            self._session.apply(edits.add_price_list(self._session.study, read.listed))
            self._session.seal()
