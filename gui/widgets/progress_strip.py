"""What the program is doing, how far it is, and a button to stop it."""

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QProgressBar, QPushButton, QWidget

from core.language import tr
from gui.jobs import Report
from gui.look import S4, S8, S16

_STEPS = 1000
_PATIENCE_MS = 250


class ProgressStrip(QWidget):
    """Visible only while something takes long enough to be worth a word."""

    cancelled = Signal(str)  # key of the job

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._key = ""
        self._text = QLabel()
        self._text.setObjectName("progress_text")
        self._bar = QProgressBar()
        self._bar.setRange(0, _STEPS)
        self._bar.setTextVisible(False)
        self._bar.setAccessibleName(tr("Progress"))
        self._button = QPushButton(tr("Cancel"))
        self._button.setObjectName("cancel")
        self._button.setAccessibleDescription(tr("Stop this and leave the study as it was"))
        self._button.clicked.connect(self._cancel)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(S16, S4, S16, S4)
        layout.setSpacing(S8)
        layout.addWidget(self._text)
        layout.addWidget(self._bar, 1)
        layout.addWidget(self._button)
        # What is over at once need not be told.
        self._patience = QTimer(self)
        self._patience.setSingleShot(True)
        self._patience.setInterval(_PATIENCE_MS)
        self._patience.timeout.connect(self.show)
        self.hide()

    def tell(self, report: Report) -> None:
        """Show how far a job is; one that says nothing is nobody's concern."""
        if not report.text:
            return
        if self.isHidden() and not self._patience.isActive():
            self._patience.start()
        self._key = report.key
        text = report.text[:1].upper() + report.text[1:]
        self._text.setText(text)
        self._bar.setValue(round(_STEPS * report.fraction))
        self._bar.setAccessibleDescription(f"{text}, {report.fraction:.0%}")
        self._button.setEnabled(True)

    def end(self, key: str) -> None:
        """The job is over."""
        if key == self._key:
            self._patience.stop()
            self.hide()

    def _cancel(self) -> None:
        self._button.setEnabled(False)
        self._text.setText(tr("Stopping…"))
        self.cancelled.emit(self._key)
