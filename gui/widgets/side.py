"""The left edge of the window: the study's name, what is in it, the pages, and what can be dropped."""

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtWidgets import QLabel, QLineEdit, QListWidget, QVBoxLayout, QWidget

from core.formatting import count
from core.study import Study
from gui.look import S4, S8, S16


class Side(QWidget):
    """Says where one is and leads elsewhere."""

    page_chosen = Signal(int)
    study_renamed = Signal(str)

    def __init__(self, titles: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("side")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._name = QLineEdit()
        self._name.setObjectName("study_name")
        self._name.setAccessibleName("Name of the study")
        self._name.setToolTip("Click to rename the study")
        self._name.editingFinished.connect(self._rename)
        self._facts = QLabel()
        self._facts.setObjectName("study_facts")
        self._facts.setProperty("role", "muted")
        self._facts.setWordWrap(True)
        self._facts.setIndent(S8)
        self._pages = QListWidget()
        self._pages.setObjectName("pages")
        self._pages.setAccessibleName("Pages")
        self._pages.addItems(list(titles))
        self._pages.currentRowChanged.connect(self.page_chosen)
        self._fit_rows()
        hint = QLabel("Drop meter logs anywhere in this window")
        hint.setProperty("role", "muted")
        hint.setWordWrap(True)
        hint.setIndent(S8)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S8, S16, S8, S16)
        layout.setSpacing(S4)
        layout.addWidget(self._name)
        layout.addWidget(self._facts)
        layout.addSpacing(S16)
        layout.addWidget(self._pages)
        layout.addStretch(1)
        layout.addWidget(hint)

    def show_study(self, study: Study, is_read_only: bool, saved_as: str) -> None:
        """Show the study's name and what is in it."""
        if self._name.text() != study.name and not self._name.hasFocus():
            self._name.setText(study.name)
            self._name.setCursorPosition(0)
        self._name.setReadOnly(is_read_only)
        runs = sum(run.kind == "run" for run in study.runs) + len(study.typed)
        facts = f"{count(len(study.machines), 'machine')}, {count(runs, 'run')}"
        if study.invented:
            facts += "\nInvented data"
        if is_read_only:
            facts += "\nOpen for reading only"
        self._facts.setText(facts[:1].upper() + facts[1:])
        self._facts.setToolTip(saved_as)

    def set_current(self, index: int) -> None:
        """Mark a page as the visible one."""
        self._pages.setCurrentRow(index)

    def take_focus(self) -> None:
        """Give the keyboard to the list of pages."""
        self._pages.setFocus(Qt.FocusReason.OtherFocusReason)

    def changeEvent(self, event: QEvent) -> None:
        if event.type() == QEvent.Type.FontChange:
            self._fit_rows()
        super().changeEvent(event)

    def _fit_rows(self) -> None:
        # A padding in the style sheet is left out of the rows' height by Qt.
        height = self.fontMetrics().height() + 2 * S8
        for row in range(self._pages.count()):
            self._pages.item(row).setSizeHint(QSize(0, height))
        self._pages.setFixedHeight(self._pages.count() * height + 2 * S4)

    def _rename(self) -> None:
        if self._name.isModified():
            self._name.setModified(False)
            self.study_renamed.emit(self._name.text())
