"""One point of fairness at length: why, how much, which runs, and what can be done about it."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from core.formatting import NumberLocale
from core.language import tr
from core.results.fairness_answer import ACTION_NAMES, LEVEL_NAMES, held_against, of_whom
from core.results.fairness_points import point_of
from core.results.values import Comparison, Finding
from core.wording import sentence
from gui.look import S4, S8, S12
from gui.widgets.asking import AskingLabel, asking_words
from gui.widgets.flow import Flow

_ROLES = {"unfair": "problem", "caution": "caution", "note": "muted"}
#: so many runs are offered to turn to
_MOST_RUNS = 8


class FairnessCard(QFrame):
    """Shows a finding; what is to be done is asked of the page."""

    wanted = Signal()  # the finding's own action was chosen
    accepted = Signal(str)  # the reason
    run_wanted = Signal(str)
    asked = Signal()  # how was it found?

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._locale = locale
        self._finding: Finding | None = None
        self.title = _label("finding_title", "heading")
        self.level = _label("finding_level", "muted")
        self.why = _asking("finding_why")
        self.matters = _asking("finding_matters", "muted")
        for label in (self.why, self.matters):
            label.asked.connect(self.asked)
        self.lapsed = _label("finding_lapsed", "caution")
        self.act = QPushButton()
        self.act.setObjectName("finding_act")
        self.act.setProperty("role", "main")
        self.accept = QPushButton(tr("Accept with a reason…"))
        self.accept.setObjectName("finding_accept")
        self.reason = QLineEdit()
        self.reason.setObjectName("finding_reason")
        self.reason.setAccessibleName(tr("Why this is accepted"))
        self.reason.setPlaceholderText(tr("Why? (kept in the study and told in the report)"))
        self.keep = QPushButton(tr("Accept"))
        self.keep.setObjectName("finding_keep")
        self.cancel = QPushButton(tr("Cancel"))
        self.cancel.setObjectName("finding_cancel")
        self._runs = QWidget()
        self._run_flow = Flow(self._runs, S4)
        self._run_buttons: list[QPushButton] = []
        self._lay_out()
        self._connect()
        self.hide()

    @property
    def finding(self) -> Finding | None:
        """What is shown."""
        return self._finding

    def show_finding(self, finding: Finding | None, comparison: Comparison, *, read_only: bool) -> None:
        """Show another finding, or none; what somebody is typing of the same one stays."""
        is_other = finding is None or self._finding is None or finding.key != self._finding.key
        self._finding = finding
        self.setVisible(finding is not None)
        if is_other:
            self._ask_reason(False)
        if finding is None:
            return
        point = point_of(finding)
        self.title.setText(f"{point.name}: {of_whom(finding, comparison)}")
        self.level.setText(tr(LEVEL_NAMES[finding.level]))
        self.level.setProperty("role", _ROLES[finding.level])
        self.level.style().polish(self.level)
        self.why.setText(sentence(finding.problem))
        self.matters.setText(held_against(finding, comparison, self._locale))
        self.lapsed.setText(
            tr("Accepted when it was less grave (“{why}”); that holds no longer.", why=finding.lapsed)
            if finding.lapsed
            else ""
        )
        self.lapsed.setVisible(bool(finding.lapsed))
        self.act.setText(tr(ACTION_NAMES[point.action]))
        self.act.setVisible(point.action != "accept" and self.reason.isHidden())
        for button in (self.act, self.accept, self.keep):
            button.setEnabled(not read_only)
        self._show_runs(_links(finding, comparison))

    def open_reason(self) -> None:
        """Ask in place why the finding is accepted."""
        self._ask_reason(True)
        self.reason.setFocus(Qt.FocusReason.OtherFocusReason)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and not self.reason.isHidden():
            self._ask_reason(False)
            self.accept.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            super().keyPressEvent(event)

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S12, S8, S12, S8)
        layout.setSpacing(S4)
        head = QHBoxLayout()
        head.setSpacing(S12)
        head.addWidget(self.title)
        head.addWidget(self.level)
        head.addStretch(1)
        layout.addLayout(head)
        for widget in (self.why, self.matters, self.lapsed, self._runs):
            layout.addWidget(widget)
        row = QHBoxLayout()
        row.setSpacing(S8)
        row.addWidget(self.act)
        row.addWidget(self.accept)
        row.addWidget(self.reason, 1)
        row.addWidget(self.keep)
        row.addWidget(self.cancel)
        row.addStretch(0)
        layout.addLayout(row)

    def _connect(self) -> None:
        self.act.clicked.connect(self.wanted)
        self.accept.clicked.connect(self.open_reason)
        self.keep.clicked.connect(self._on_keep)
        self.reason.returnPressed.connect(self._on_keep)
        self.reason.textChanged.connect(self._on_text)
        self.cancel.clicked.connect(self._on_cancel)

    def _on_text(self, text: str) -> None:
        self.keep.setEnabled(bool(text.strip()))

    def _on_keep(self) -> None:
        reason = self.reason.text().strip()
        if reason:
            self._ask_reason(False)
            self.accepted.emit(reason)

    def _on_cancel(self) -> None:
        self._ask_reason(False)

    def _ask_reason(self, is_asked: bool) -> None:
        """Show the field for the reason in the place of the buttons, or the other way round."""
        self.reason.clear()
        for widget in (self.reason, self.keep, self.cancel):
            widget.setVisible(is_asked)
        self.accept.setVisible(not is_asked)
        has_act = self._finding is not None and point_of(self._finding).action != "accept"
        self.act.setVisible(not is_asked and has_act)
        self.keep.setEnabled(False)

    def _show_runs(self, links: Sequence[tuple[str, str]]) -> None:
        known = [(str(b.property("run_id")), b.text()) for b in self._run_buttons]
        self._runs.setVisible(bool(links))
        if known == list(links):
            return
        for button in self._run_buttons:
            self._run_flow.removeWidget(button)
            button.hide()
            button.deleteLater()
        self._run_buttons = []
        for run_id, text in links:
            button = QPushButton(text)
            button.setObjectName(f"finding_run_{run_id}")
            button.setProperty("role", "link")
            button.setProperty("run_id", run_id)
            button.setToolTip(tr("Show this run on the Logs page"))
            button.clicked.connect(self._on_run)
            self._run_flow.addWidget(button)
            self._run_buttons.append(button)

    def _on_run(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            self.run_wanted.emit(str(button.property("run_id")))


def _label(name: str, role: str = "") -> QLabel:
    label = QLabel()
    label.setObjectName(name)
    label.setTextFormat(Qt.TextFormat.PlainText)
    if role:
        label.setProperty("role", role)
    if role != "heading" and name != "finding_level":
        label.setWordWrap(True)
        label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label


def _links(finding: Finding, comparison: Comparison) -> list[tuple[str, str]]:
    """Runs to turn to, with their names: those the finding touches, or the first ones of its machines."""
    runs = [(m, r) for m in comparison.machines for r in m.runs]
    if finding.run_ids:
        touched = [(m, r) for m, r in runs if r.run_id in finding.run_ids]
    else:
        touched = [(m, r) for m, r in runs if m.machine_id in finding.machine_ids and r.included]
    links = [(r.run_id, f"{m.name}, {r.name}") for m, r in touched if r.start_s is not None]
    return links[:_MOST_RUNS]


def _asking(name: str, role: str = "") -> AskingLabel:
    label = asking_words(role)
    label.setObjectName(name)
    return label
