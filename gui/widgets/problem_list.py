"""What could not be read, or went wrong, as a list: file, row, what it is and what would mend it."""

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QSizePolicy,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from core.language import mark, tr
from core.problems import Problem, Severity
from core.wording import placed, sentence
from gui.look import S4, S8, S16

_WORDS = {Severity.ERROR: mark("problem"), Severity.CAUTION: mark("caution"), Severity.NOTE: mark("note")}
_ROLES = {Severity.ERROR: "problem", Severity.CAUTION: "caution", Severity.NOTE: "muted"}
_ORDER = {Severity.ERROR: 0, Severity.CAUTION: 1, Severity.NOTE: 2}
#: rows shown before the list scrolls
_ROWS_SHOWN = 5


class ProblemList(QWidget):
    """A strip with one line of summary that opens into a list."""

    put_away = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._problems: tuple[Problem, ...] = ()
        self._summary = QLabel()
        self._summary.setObjectName("problem_summary")
        self._toggle = self._button(tr("Show"), "show_problems", self._turn)
        copy = self._button(tr("Copy"), "copy_problems", self._copy)
        away = self._button(tr("Put away"), "put_problems_away", self.put_away.emit)
        top = QHBoxLayout()
        top.setSpacing(S8)
        top.addWidget(self._summary, 1)
        for button in (self._toggle, copy, away):
            top.addWidget(button)
        self._list = QTreeWidget()
        self._list.setObjectName("problems")
        self._list.setAccessibleName(tr("What could not be read"))
        self._list.setHeaderLabels(["", tr("File"), tr("Row"), tr("What it is, and what would mend it")])
        self._list.setRootIsDecorated(False)
        self._list.setUniformRowHeights(False)
        self._list.setWordWrap(True)
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.header().setSectionResizeMode(3, QHeaderView.ResizeMode.Stretch)
        self._list.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S16, S4, S16, S4)
        layout.setSpacing(S4)
        layout.addLayout(top)
        layout.addWidget(self._list)
        self._list.hide()
        self.hide()

    def show_problems(self, problems: Sequence[Problem]) -> None:
        """Show these; none hides the strip. New errors open the list."""
        has_new_error = any(p.severity is Severity.ERROR for p in problems if p not in self._problems)
        self._problems = tuple(sorted(dict.fromkeys(problems), key=lambda p: _ORDER[p.severity]))
        self.setVisible(bool(self._problems))
        if not self._problems:
            self._list.clear()
            self._list.hide()
            return
        errors = sum(p.severity is Severity.ERROR for p in self._problems)
        others = len(self._problems) - errors
        said = [tr("{count:problem|problems}", count=errors)] if errors else []
        said += [tr("{count:remark|remarks}", count=others)] if others else []
        first = "" if len(self._problems) > 1 or self._list.isVisible() else f": {placed(self._problems[0])}"
        self._summary.setText(", ".join(said)[:1].upper() + ", ".join(said)[1:] + first)
        worst = self._problems[0].severity
        self._summary.setProperty("role", _ROLES[worst])
        self._summary.style().polish(self._summary)
        self._fill()
        self._set_open(self._list.isVisibleTo(self) or has_new_error)

    def _fill(self) -> None:
        self._list.clear()
        for problem in self._problems:
            row = "" if problem.row is None else str(problem.row)
            item = QTreeWidgetItem([tr(_WORDS[problem.severity]), problem.file or "", row, sentence(problem)])
            for column in range(4):
                item.setToolTip(column, placed(problem))
            self._list.addTopLevelItem(item)
        for column in range(3):
            self._list.resizeColumnToContents(column)
        line = self._list.fontMetrics().height() + S4
        rows = min(len(self._problems), _ROWS_SHOWN)
        # A long sentence takes two lines; a few lines more than there are rows are enough for that.
        self._list.setFixedHeight((rows + 1 + (rows + 1) // 2) * line + S16)

    def _turn(self) -> None:
        self._set_open(not self._list.isVisibleTo(self))

    def _set_open(self, is_open: bool) -> None:
        self._list.setVisible(is_open)
        self._toggle.setText(tr("Hide") if is_open else tr("Show"))

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText("\n".join(placed(p) for p in self._problems))

    def _button(self, text: str, name: str, does: object) -> QPushButton:
        button = QPushButton(text)
        button.setObjectName(name)
        button.setProperty("role", "link")
        button.clicked.connect(does)
        return button
