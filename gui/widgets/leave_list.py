"""How many runs leave the band of their own machine, and on demand which, where, and by how much."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFrame, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from core.language import tr
from gui.look import S4, S8

#: so many are listed; more than that would be a list of runs
_MOST = 12


class LeaveList(QFrame):
    """A button for the action row, and the lines that it opens; a line picks its run."""

    picked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.button = QPushButton()
        self.button.setObjectName("leaves_button")
        self.button.setProperty("role", "link")
        self.button.setCheckable(True)
        self.button.toggled.connect(self._on_toggled)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(S8, S8, S8, S8)
        self._layout.setSpacing(S4)
        self._told = ""
        self._shown: tuple[tuple[str, str], ...] = ()
        self._lines: list[QPushButton] = []
        self.hide()
        self.button.hide()

    @property
    def texts(self) -> list[str]:
        """What the lines say."""
        return [line.text() for line in self._lines]

    def show_leaves(self, told: str, lines: Sequence[tuple[str, str]]) -> None:
        """Show (run id, what it does) under a sentence; an empty sentence hides all of it."""
        if (told, tuple(lines)) == (self._told, self._shown):
            return
        self._told, self._shown = told, tuple(lines)
        for old in self._lines:
            self._layout.removeWidget(old)
            old.hide()
            old.deleteLater()
        self._lines = []
        for run_id, text in lines[:_MOST]:
            line = QPushButton(text)
            line.setProperty("role", "link")
            line.setProperty("run_id", run_id)
            line.setToolTip(tr("Choose this run on every page"))
            line.setStyleSheet("text-align: left;")
            line.clicked.connect(self._on_line)
            self._layout.addWidget(line)
            self._lines.append(line)
        self.button.setCheckable(bool(lines))
        self.button.setEnabled(bool(lines))
        self.button.setVisible(bool(told))
        self.setVisible(bool(lines) and self.button.isChecked())
        self._name_button()

    def _on_line(self) -> None:
        line = self.sender()
        if isinstance(line, QPushButton):
            self.picked.emit(str(line.property("run_id")))

    def _on_toggled(self, is_open: bool) -> None:
        self.setVisible(is_open and bool(self._shown))
        self._name_button()

    def _name_button(self) -> None:
        is_open = self.button.isChecked()
        self.button.setText(f"{self._told} {'▴' if is_open else '▾'}" if self._shown else self._told)
        self.button.setAccessibleName(
            tr("{what}, shown", what=self._told) if is_open else tr("{what}, show which", what=self._told)
        )
