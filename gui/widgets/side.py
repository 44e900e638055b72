"""The left edge of the window: the study's name, what is in it, the pages, and what can be dropped."""

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QSize, Qt, Signal, SignalInstance
from PySide6.QtWidgets import (
    QFormLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QVBoxLayout,
    QWidget,
)

from core.language import mark, tr
from core.results.temperatures import degrees
from core.study import Study
from gui.locales import screen_locale
from gui.look import S4, S8, S16
from gui.widgets.condition_row import LIMITS_C
from gui.widgets.number_field import NumberField

_WIDTH_IN_LINES = 12
_UNKNOWN = mark("not stated")
_PART, _BED, _ROOM = mark("Part"), mark("Bed °C"), mark("Room °C")
_FEWEST_PAGES = 3
#: stretch of the list of pages beside that of the room below it
_ALL_IT_WANTS = 1000


class Side(QWidget):
    """Says where one is and leads elsewhere."""

    page_chosen = Signal(int)
    study_renamed = Signal(str)
    part_renamed = Signal(str)
    bed_set = Signal(object)  # degC, or None where it is not known
    room_set = Signal(object)
    field_left = Signal()

    def __init__(self, titles: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("side")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._locale = screen_locale()
        self._name = QLineEdit()
        self._name.setObjectName("study_name")
        self._name.setAccessibleName(tr("Name of the study"))
        self._name.setToolTip(tr("Click to rename the study"))
        self._name.editingFinished.connect(self._rename)
        self._part = QLineEdit()
        self._part.setObjectName("part_name")
        self._part.setAccessibleName(tr("Name of the test part"))
        self._part.setToolTip(tr("The part that is made on every machine"))
        self._part.editingFinished.connect(self._rename_part)
        self._bed = self._temperature("bed_c", self.bed_set)
        self._bed.setAccessibleName(tr("Temperature of the bed in the test, in °C"))
        self._bed.setToolTip(tr("Temperature of the bed in the test, where a run has none of its own"))
        self._room = self._temperature("room_c", self.room_set)
        self._room.setAccessibleName(tr("Temperature of the room in the test, in °C"))
        self._room.setToolTip(tr("Temperature of the room in the test, where a run has none of its own"))
        self._study_id = ""
        self._why_not = QLabel()
        self._why_not.setObjectName("side_why_not")
        self._why_not.setProperty("role", "problem")
        self._why_not.setWordWrap(True)
        self._why_not.setIndent(S8)
        self._why_not.hide()
        self._facts = QLabel()
        self._facts.setObjectName("study_facts")
        self._facts.setProperty("role", "muted")
        self._facts.setWordWrap(True)
        self._facts.setIndent(S8)
        self._pages = QListWidget()
        self._pages.setObjectName("pages")
        self._pages.setAccessibleName(tr("Pages"))
        self._titles = tuple(tr(title) for title in titles)
        self._pages.addItems(self._titles)
        self._pages.currentRowChanged.connect(self.page_chosen)
        self._fit()
        hint = QLabel(tr("Drop meter logs anywhere in this window"))
        hint.setProperty("role", "muted")
        hint.setWordWrap(True)
        hint.setIndent(S8)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S8, S16, S8, S16)
        layout.setSpacing(S4)
        layout.addWidget(self._name)
        layout.addWidget(self._facts)
        layout.addSpacing(S16)
        layout.addWidget(self._pages, _ALL_IT_WANTS)
        layout.addStretch(1)
        self._form = form = QFormLayout()
        form.setContentsMargins(S8, 0, 0, S16)
        form.setSpacing(S4)
        form.addRow(_muted(tr(_PART)), self._part)
        form.addRow(_muted(tr(_BED)), self._bed)
        form.addRow(_muted(tr(_ROOM)), self._room)
        layout.addLayout(form)
        self._wrap()
        layout.addWidget(self._why_not)
        layout.addWidget(hint)

    def show_study(self, study: Study, is_read_only: bool, saved_as: str) -> None:
        """Show the study's name and what is in it."""
        if self._name.text() != study.name and not self._name.hasFocus():
            self._name.setText(study.name)
            self._name.setCursorPosition(0)
        if self._part.text() != study.part and not self._part.hasFocus():
            self._part.setText(study.part)
        for field, value_c in ((self._bed, study.bed_c), (self._room, study.room_c)):
            text = "" if value_c is None else degrees(value_c, self._locale)
            field.show_text(text, tr(_UNKNOWN), of_other=study.id != self._study_id)
        self._study_id = study.id
        for each in (self._name, self._part, self._bed, self._room):
            each.setReadOnly(is_read_only)
        beds = {log.id for log in study.logs if log.of_bed}
        runs = sum(run.kind == "run" and run.log_id not in beds for run in study.runs) + len(study.typed)
        machines = len(study.machines)
        facts = tr("{count:machine|machines}", count=machines) if machines else tr("no machines")
        facts += ", " + (tr("{count:run|runs}", count=runs) if runs else tr("no runs"))
        if study.invented:
            facts += "\n" + tr("Invented data")
        if is_read_only:
            facts += "\n" + tr("Open for reading only")
        self._facts.setText(facts[:1].upper() + facts[1:])
        self._facts.setToolTip(saved_as)

    def set_current(self, index: int) -> None:
        """Mark a page as the visible one."""
        self._pages.setCurrentRow(index)

    def set_badge(self, index: int, signs: str, meaning: str) -> None:
        """Say a few signs beside a page's name, and their meaning to whoever points at it or listens."""
        item, title = self._pages.item(index), self._titles[index]
        text = f"{title} ({signs})" if signs else title
        if item.text() != text:
            item.setText(text)
            item.setToolTip(meaning)
            item.setData(Qt.ItemDataRole.AccessibleTextRole, f"{title}: {meaning}" if meaning else title)

    def take_focus(self) -> None:
        """Give the keyboard to the list of pages."""
        self._pages.setFocus(Qt.FocusReason.OtherFocusReason)

    def changeEvent(self, event: QEvent) -> None:
        if event.type() == QEvent.Type.FontChange:
            self._fit()
            self._wrap()
        super().changeEvent(event)

    def _fit(self) -> None:
        # Titles in another language may be longer than the usual width has room for.
        longest = max((self.fontMetrics().horizontalAdvance(title) for title in self._titles), default=0)
        self.setFixedWidth(max(_WIDTH_IN_LINES * self.fontMetrics().height(), longest + 4 * S8 + 2 * S4))
        # A padding in the style sheet is left out of the rows' height by Qt.
        height = self.fontMetrics().height() + 2 * S8
        for row in range(self._pages.count()):
            self._pages.item(row).setSizeHint(QSize(0, height))
        # In a low window with large text the list gives way and scrolls, before anything lies over it.
        self._pages.setMinimumHeight(_FEWEST_PAGES * height + 2 * S4)
        self._pages.setMaximumHeight(self._pages.count() * height + 2 * S4)

    def _wrap(self) -> None:
        """Put the labels above the fields, all of them, where they are too long to stand beside them."""
        metrics = self.fontMetrics()
        labels = max(metrics.horizontalAdvance(tr(text)) for text in (_PART, _BED, _ROOM))
        words = metrics.horizontalAdvance(tr(_UNKNOWN)) + 2 * S8
        policy = QFormLayout.RowWrapPolicy
        is_long = labels + words + S4 > self.width() - 2 * S8 - S4
        self._form.setRowWrapPolicy(policy.WrapAllRows if is_long else policy.WrapLongRows)

    def _rename_part(self) -> None:
        if self._part.isModified() and self._part.text().strip():
            self._part.setModified(False)
            self.part_renamed.emit(self._part.text())

    def _temperature(self, name: str, said: SignalInstance) -> NumberField:
        field = NumberField(name, "", LIMITS_C)
        field.entered.connect(said)
        field.refused.connect(self._refuse)
        field.editingFinished.connect(self.field_left)
        return field

    def _refuse(self, why_not: str) -> None:
        self._why_not.setText(why_not)
        self._why_not.setVisible(bool(why_not))

    def _rename(self) -> None:
        if self._name.isModified():
            self._name.setModified(False)
            self.study_renamed.emit(self._name.text())


def _muted(text: str) -> QLabel:
    label = QLabel(text)
    label.setProperty("role", "muted")
    return label
