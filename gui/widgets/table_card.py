"""A small table on a card: as high as its rows, with a note beneath, so that it neither scrolls nor gapes."""

from PySide6.QtCore import QEvent, QModelIndex, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QFrame, QHeaderView, QLabel, QSizePolicy, QTableView, QVBoxLayout, QWidget

from core.tables import Table
from gui.look import S4, S8, current
from gui.models.table import TableModel
from gui.widgets.asking import AskingLabel

#: width that a name may take before it is shortened, in text heights
_LONGEST_NAME = 11.0
#: rows may grow to so many times their least height to fill the card
_MOST_STRETCH = 1.7
#: border of a table that has the keyboard [px]
_FOCUS = 2
#: what the card and the frame of the table take of the width beside the columns [px]
_BESIDE = 2 * S8 + 2 * (_FOCUS + 1)


class TableCard(QFrame):
    """Shows a core table whole.

    A click on a number, and Return or F1 on any cell, asks how it was found.
    """

    asked = Signal(QModelIndex)
    note_asked = Signal()

    def __init__(
        self, name: str, accessible_name: str, parent: QWidget | None = None, *, note_asks: bool = False
    ) -> None:
        """With `note_asks` the note holds numbers that may be asked about."""
        super().__init__(parent)
        self.setObjectName("card")
        self._widths: list[int] | None = None  # dropped with the table, the font and the style
        self.model = TableModel(self)
        self.view = QTableView()
        self.view.setObjectName(name)
        self.view.setAccessibleName(accessible_name)
        self.view.setModel(self.model)
        self.view.setShowGrid(False)
        self.view.setWordWrap(False)
        self.view.setFrameShape(QFrame.Shape.NoFrame)
        # a card has its own border: that of the table only shows where the keyboard is
        self.view.setStyleSheet(
            f"QTableView {{ border: {_FOCUS}px solid transparent; }}"
            f"QTableView:focus {{ border: {_FOCUS}px solid palette(link); }}"
        )
        self.view.setSelectionBehavior(QTableView.SelectionBehavior.SelectRows)
        self.view.setSelectionMode(QTableView.SelectionMode.SingleSelection)
        self.view.setTabKeyNavigation(False)
        self.view.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.view.verticalHeader().hide()
        self.view.clicked.connect(self._on_clicked)
        self.view.activated.connect(self.asked)
        self.view.installEventFilter(self)
        self.view.horizontalHeader().setHighlightSections(False)
        self.note = AskingLabel() if note_asks else QLabel()
        if isinstance(self.note, AskingLabel):
            self.note.asked.connect(self.note_asked)
        self.note.setProperty("role", "muted")
        self.note.setWordWrap(True)
        self.note.setContentsMargins(S4, 0, S4, 0)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S8, S8, S8, S8)
        layout.setSpacing(S8)
        layout.addWidget(self.view)
        layout.addWidget(self.note)
        layout.addStretch(1)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.MinimumExpanding)

    def show_table(self, table: Table, note: str, decimal: str = ".") -> None:
        """Show another table and note."""
        self.note.setText(note)
        self.note.setVisible(bool(note))
        if table != self.model.table:
            self.model.show_table(table, decimal)
            self._widths = None
        self._fit()

    @property
    def wished_width(self) -> int:
        """Width at which no column is shortened. [px]"""
        return sum(self._column_widths()) + _BESIDE

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """F1 on a cell is the table's; else it is the window's."""
        is_ours = isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_F1
        cell = self.view.currentIndex()
        if is_ours and cell.isValid():
            if event.type() == QEvent.Type.ShortcutOverride:
                event.accept()
                return True
            if event.type() == QEvent.Type.KeyPress:
                self.asked.emit(cell)
                return True
        return super().eventFilter(watched, event)

    def key_of(self, cell: QModelIndex) -> str:
        """The key of a cell's column."""
        table = self.model.table
        return "" if table is None else table.columns[cell.column()].key

    def _on_clicked(self, cell: QModelIndex) -> None:
        if not self._is_text(cell.column()):
            self.asked.emit(cell)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._fit()  # what was resized while hidden has its width only now

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._widths = None
            self._fit()

    def _column_widths(self) -> list[int]:
        """What each column needs; names longer than a line of a few words are shortened instead."""
        if self._widths is not None:
            return self._widths
        header = self.view.horizontalHeader()
        longest = round(_LONGEST_NAME * current().text_px)
        widths = []
        for column in range(self.model.columnCount()):
            widest = self.model.widest(column, self.view.fontMetrics())
            content = self.view.sizeHintForIndex(widest).width() + 1 if widest.isValid() else 0
            if self._is_text(column):
                content = min(content, longest)
            widths.append(max(content, header.sectionSizeHint(column)))
        self._widths = widths
        return widths

    def _is_text(self, column: int) -> bool:
        table = self.model.table
        return table is not None and table.columns[column].align == "left"

    def _fit(self) -> None:
        rows = self.model.rowCount()
        if not rows:
            self.view.setFixedHeight(0)
            return
        least = round(1.75 * current().text_px)
        header = self.view.horizontalHeader()
        note = self.note.heightForWidth(max(self.width() - 2 * S8, 1)) if self.note.isVisibleTo(self) else 0
        head = header.sizeHint().height()
        free = self.height() - head - note - 4 * S8
        height = min(max(least, free // rows), round(_MOST_STRETCH * least))
        self.view.verticalHeader().setDefaultSectionSize(height)
        is_wide = sum(self._column_widths()) > max(self.width() - _BESIDE, 1)
        bar = self.view.horizontalScrollBar().sizeHint().height() if is_wide else 0
        self.view.setFixedHeight(head + rows * height + bar + 2 * _FOCUS)
        self.setMinimumHeight(head + rows * least + note + bar + 4 * S8)
        self._spread()

    def _spread(self) -> None:
        """Share what width is left; a scroll bar appears only when even the least is missing."""
        widths = self._column_widths()
        spare = max(0, self.view.viewport().width() - sum(widths)) // max(1, len(widths))
        header = self.view.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        for column, width in enumerate(widths):
            header.resizeSection(column, width + spare)
