"""The left edge of the window: the study's name, what is in it, the pages, and what can be dropped."""

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QDoubleSpinBox,
    QFormLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QVBoxLayout,
    QWidget,
)

from core.formatting import count
from core.study import Study
from gui.look import S4, S8, S16

_WIDTH_IN_LINES = 12
#: below every bed: stands for "not stated"
_NO_BED_C = 0.0


class Side(QWidget):
    """Says where one is and leads elsewhere."""

    page_chosen = Signal(int)
    study_renamed = Signal(str)
    part_renamed = Signal(str)
    bed_set = Signal(object)  # degC, or None where it is not known
    field_left = Signal()

    def __init__(self, titles: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("side")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._name = QLineEdit()
        self._name.setObjectName("study_name")
        self._name.setAccessibleName("Name of the study")
        self._name.setToolTip("Click to rename the study")
        self._name.editingFinished.connect(self._rename)
        self._part = QLineEdit()
        self._part.setObjectName("part_name")
        self._part.setAccessibleName("Name of the test part")
        self._part.setToolTip("The part that is made on every machine")
        self._part.editingFinished.connect(self._rename_part)
        self._bed = QDoubleSpinBox()
        self._bed.setObjectName("bed_c")
        self._bed.setAccessibleName("Bed temperature of the test")
        self._bed.setToolTip("Bed temperature of the test, printed with the comparison")
        self._bed.setRange(_NO_BED_C, 300.0)
        self._bed.setDecimals(0)
        self._bed.setSingleStep(5.0)
        self._bed.setSuffix(" °C")
        self._bed.setSpecialValueText("not stated")
        self._bed.setKeyboardTracking(False)
        self._bed.valueChanged.connect(self._set_bed)
        self._bed.editingFinished.connect(self.field_left)
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
        self._fit()
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
        form = QFormLayout()
        form.setContentsMargins(S8, 0, 0, S16)
        form.setSpacing(S4)
        form.addRow(_muted("Part"), self._part)
        form.addRow(_muted("Bed"), self._bed)
        layout.addLayout(form)
        layout.addWidget(hint)

    def show_study(self, study: Study, is_read_only: bool, saved_as: str) -> None:
        """Show the study's name and what is in it."""
        if self._name.text() != study.name and not self._name.hasFocus():
            self._name.setText(study.name)
            self._name.setCursorPosition(0)
        if self._part.text() != study.part and not self._part.hasFocus():
            self._part.setText(study.part)
        bed_c = _NO_BED_C if study.bed_c is None else study.bed_c
        if self._bed.value() != bed_c:
            self._bed.blockSignals(True)
            self._bed.setValue(bed_c)
            self._bed.blockSignals(False)
        for field in (self._name, self._part, self._bed):
            field.setReadOnly(is_read_only)
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
            self._fit()
        super().changeEvent(event)

    def _fit(self) -> None:
        self.setFixedWidth(_WIDTH_IN_LINES * self.fontMetrics().height())
        # A padding in the style sheet is left out of the rows' height by Qt.
        height = self.fontMetrics().height() + 2 * S8
        for row in range(self._pages.count()):
            self._pages.item(row).setSizeHint(QSize(0, height))
        self._pages.setFixedHeight(self._pages.count() * height + 2 * S4)

    def _rename_part(self) -> None:
        if self._part.isModified() and self._part.text().strip():
            self._part.setModified(False)
            self.part_renamed.emit(self._part.text())

    def _set_bed(self, value: float) -> None:
        self.bed_set.emit(None if value == _NO_BED_C else value)

    def _rename(self) -> None:
        if self._name.isModified():
            self._name.setModified(False)
            self.study_renamed.emit(self._name.text())


def _muted(text: str) -> QLabel:
    label = QLabel(text)
    label.setProperty("role", "muted")
    return label
