"""Asks in place why a run is left out: the run is out at once, the reason may follow or not."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QLineEdit, QPushButton, QWidget

from core.language import tr
from gui.look import S8


class LeftOutBar(QFrame):
    """One line: which run, why, and the way back."""

    reason_typed = Signal(str, str)  # run id, reason
    counting_again = Signal(str)
    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._run_id = ""
        self._label = QLabel()
        self.reason = QLineEdit()
        self.reason.setObjectName("left_out_reason")
        self.reason.setAccessibleName(tr("Why this run is left out"))
        self.reason.setPlaceholderText(tr("Why? (shown with the comparison)"))
        self.again = QPushButton(tr("Count it again"))
        self.again.setObjectName("count_again")
        self.done = QPushButton(tr("Done"))
        self.done.setObjectName("left_out_done")
        layout = QHBoxLayout(self)
        layout.setContentsMargins(S8, S8, S8, S8)
        layout.setSpacing(S8)
        layout.addWidget(self._label)
        layout.addWidget(self.reason, 1)
        layout.addWidget(self.again)
        layout.addWidget(self.done)
        self.reason.textEdited.connect(self._on_typed)
        self.reason.returnPressed.connect(self.close_bar)
        self.again.clicked.connect(self._on_again)
        self.done.clicked.connect(self.close_bar)
        self.hide()

    @property
    def run_id(self) -> str:
        """The run it is about; empty while the bar is closed."""
        return self._run_id

    def ask(self, run_id: str, title: str, reason: str) -> None:
        """Open for a run that has just been left out, or was before."""
        self._run_id = run_id
        self._label.setText(tr("{title} is left out.", title=title))
        self.reason.setText(reason)
        self.show()
        self.reason.setFocus(Qt.FocusReason.OtherFocusReason)

    def close_bar(self) -> None:
        """Put the bar away; what was typed has been kept all along."""
        if self._run_id:
            self._run_id = ""
            self.hide()
            self.closed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.close_bar()
        else:
            super().keyPressEvent(event)

    def _on_typed(self, text: str) -> None:
        self.reason_typed.emit(self._run_id, text)

    def _on_again(self) -> None:
        run_id = self._run_id
        self.close_bar()
        self.counting_again.emit(run_id)
