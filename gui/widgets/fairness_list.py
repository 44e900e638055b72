"""How many points of fairness there are, and on demand which."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from core.formatting import POINT, NumberLocale, count, number
from core.results.values import Finding
from core.wording import sentence
from gui.look import S4, S8

_LEVELS = {"unfair": "Unfair", "caution": "Caution", "note": "Note"}


class FairnessList(QFrame):
    """The findings as lines of text; `button` opens and closes it and may stand elsewhere."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.button = QPushButton()
        self.button.setObjectName("fairness_button")
        self.button.setProperty("role", "link")
        self.button.setCheckable(True)
        self.button.toggled.connect(self._on_toggled)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(S8, S8, S8, S8)
        self._layout.setSpacing(S4)
        self._shown: Sequence[Finding] = ()
        self._labels: list[QLabel] = []
        self.hide()
        self.button.hide()

    @property
    def texts(self) -> list[str]:
        """What the lines say."""
        return [label.text() for label in self._labels]

    def show_findings(self, findings: Sequence[Finding], locale: NumberLocale = POINT) -> None:
        """Show another list; nothing is shown of an empty one."""
        if findings == self._shown:
            return
        self._shown = findings
        for old in self._labels:
            self._layout.removeWidget(old)
            old.hide()
            old.deleteLater()
        self._labels = []
        for finding in findings:
            matters = finding.matters_wh
            could = f" Could matter {number(matters, 1, locale)} Wh." if matters is not None else ""
            label = QLabel(f"{_LEVELS[finding.level]}: {sentence(finding.problem)}{could}")
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            if finding.level != "note":
                label.setProperty("role", "problem" if finding.level == "unfair" else "caution")
            self._layout.addWidget(label)
            self._labels.append(label)
        self._name_button()
        self.button.setVisible(bool(findings))
        self.setVisible(bool(findings) and self.button.isChecked())

    def _on_toggled(self, is_open: bool) -> None:
        self.setVisible(is_open and bool(self._shown))
        self._name_button()

    def _name_button(self) -> None:
        points = count(len(self._shown), "point of fairness", "points of fairness")
        self.button.setText(f"{points} {'▴' if self.button.isChecked() else '▾'}")
        self.button.setAccessibleName(f"{points}, {'shown' if self.button.isChecked() else 'show'}")
