"""How many points of fairness there are, and on demand which."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from core.formatting import POINT, NumberLocale
from core.language import tr
from core.results.fairness_answer import LEVEL_NAMES, matters_text
from core.results.values import Finding
from core.wording import sentence
from gui.look import S4, S8


class FairnessList(QFrame):
    """The findings as lines of text, accepted ones last and greyed; `button`, placed elsewhere, opens it."""

    more_wanted = Signal()  # something is to be done about them

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
        self.more = QPushButton(tr("See to them on the Fairness page"))
        self.more.setObjectName("fairness_more")
        self.more.setProperty("role", "link")
        self.more.clicked.connect(self.more_wanted)
        self._layout.addWidget(self.more, 0, Qt.AlignmentFlag.AlignLeft)
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
        for place, finding in enumerate(sorted(findings, key=lambda f: not f.is_open)):
            label = QLabel(_said(finding, locale))
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            if not finding.is_open:
                label.setProperty("role", "muted")
            elif finding.level != "note":
                label.setProperty("role", "problem" if finding.level == "unfair" else "caution")
            self._layout.insertWidget(place, label)
            self._labels.append(label)
        self._name_button()
        self.button.setVisible(bool(findings))
        self.setVisible(bool(findings) and self.button.isChecked())

    def _on_toggled(self, is_open: bool) -> None:
        self.setVisible(is_open and bool(self._shown))
        self._name_button()

    def _name_button(self) -> None:
        count = sum(f.is_open for f in self._shown)
        points = tr("no points of fairness")
        if count:
            points = tr("{count:point of fairness|points of fairness}", count=count)
        self.button.setText(f"{points} {'▴' if self.button.isChecked() else '▾'}")
        self.button.setAccessibleName(
            tr("{what}, shown", what=points) if self.button.isChecked() else tr("{what}, show", what=points)
        )


def _said(finding: Finding, locale: NumberLocale) -> str:
    """One line: how grave it is, or why it was accepted, what it is, and how much it could matter."""
    level = (
        tr("Accepted ({why})", why=finding.accepted) if finding.accepted else tr(LEVEL_NAMES[finding.level])
    )
    matters = matters_text(finding.matters_wh, locale)
    could = tr("Could matter {energy} Wh.", energy=matters) if finding.matters_wh is not None else ""
    return f"{level}: {sentence(finding.problem)} {could}".rstrip()
