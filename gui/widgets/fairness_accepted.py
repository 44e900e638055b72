"""Points of fairness that the user has accepted: listed with the reason, not counted, to be taken back."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from core.language import mark, tr
from core.results.fairness_answer import LEVEL_NAMES, of_whom
from core.results.fairness_points import point_of
from core.results.values import Comparison
from core.wording import sentence
from gui.look import S4, S8, S12

_BACK, _FORGET = mark("Count it again"), mark("Forget it")


class AcceptedList(QFrame):
    """One entry an accepted point; those that are no longer found say so."""

    taken_back = Signal(str)  # key

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._shown: tuple[tuple[str, str, str, str], ...] = ()
        self._entries: list[QWidget] = []
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S12, S8, S12, S8)
        layout.setSpacing(S4)
        heading = QLabel(tr("Accepted, and not counted"))
        heading.setProperty("role", "heading")
        layout.addWidget(heading)
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(S12)
        self._grid.setVerticalSpacing(S8)
        self._grid.setColumnStretch(0, 1)
        layout.addLayout(self._grid)
        self.hide()

    @property
    def texts(self) -> tuple[str, ...]:
        """What the entries say."""
        return tuple(said for _, said, _, _ in self._shown)

    def show_comparison(self, comparison: Comparison, *, read_only: bool) -> None:
        """Show what is accepted of a comparison; nothing is shown where nothing is."""
        entries = tuple(
            (
                f.key,
                tr(
                    "{level}. {point}, {whom}: “{why}”",
                    level=tr(LEVEL_NAMES[f.level]),
                    point=point_of(f).name,
                    whom=of_whom(f, comparison),
                    why=f.accepted,
                ),
                sentence(f.problem),
                _BACK,
            )
            for f in comparison.accepted_findings
        ) + tuple(
            (a.key, tr("No longer found. Accepted before: “{why}”", why=a.why), a.said, _FORGET)
            for a in comparison.accepted_before
        )
        self.setVisible(bool(entries))
        if entries != self._shown:
            self._shown = entries
            self._fill()
        for entry in self._entries:
            if isinstance(entry, QPushButton):
                entry.setEnabled(not read_only)

    def _fill(self) -> None:
        for old in self._entries:
            self._grid.removeWidget(old)
            old.hide()
            old.deleteLater()
        self._entries = []
        for row, (key, said, what, back) in enumerate(self._shown):
            label = QLabel(f"{said}\n{what}")
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setProperty("role", "muted")
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            button = QPushButton(tr(back))
            button.setObjectName(f"take_back_{row}")
            button.setProperty("role", "link")
            button.setProperty("key", key)
            button.setAccessibleName(f"{tr(back)}: {what}")
            button.clicked.connect(self._on_back)
            self._grid.addWidget(label, row, 0)
            self._grid.addWidget(button, row, 1, Qt.AlignmentFlag.AlignTop)
            self._entries += [label, button]

    def _on_back(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton):
            self.taken_back.emit(str(button.property("key")))
