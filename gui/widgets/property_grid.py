"""The table of properties to type into: keys as in a spreadsheet, blocks pasted and copied."""

from PySide6.QtCore import QItemSelectionModel, QModelIndex, QPersistentModelIndex, Qt, Signal
from PySide6.QtGui import QGuiApplication, QKeyEvent, QKeySequence, QResizeEvent
from PySide6.QtWidgets import (
    QCompleter,
    QHeaderView,
    QLineEdit,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from core.language import tr
from gui.look import current
from gui.models.properties import PropertyModel

#: a name of a machine takes no more than this, in text heights
_LONGEST_NAME = 11.0
#: rows that are shown before the table scrolls
_MOST_ROWS = 12
#: columns are as wide as this many rows ask for: of a farm's thousands measuring all takes too long
_ROWS_MEASURED = 100


class _Cells(QStyledItemDelegate):
    """Offers the words of a column while one is typed."""

    def createEditor(
        self, parent: QWidget, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QWidget:
        editor = super().createEditor(parent, option, index)
        model = index.model()
        if isinstance(editor, QLineEdit) and isinstance(model, PropertyModel):
            column = model.columns[index.column()]
            editor.setAccessibleName(f"{model.machines[index.row()].name}, {column.heading}")
            if column.offered:
                completer = QCompleter(list(column.offered), editor)
                completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
                editor.setCompleter(completer)
        return editor


class PropertyGrid(QTableView):
    """Cells that can be typed into, emptied, copied and pasted."""

    pasting = Signal(str, int, int)  # text of a block, and the row and column where it begins
    emptying = Signal(list)  # (row, column) of each cell

    def __init__(self, model: PropertyModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("property_grid")
        self.setAccessibleName(tr("What is known of the machines"))
        self.setAccessibleDescription(
            tr(
                "One row a machine, one column a property. Type to fill a cell, Delete empties, "
                "Ctrl+V pastes."
            )
        )
        self._model = model
        self.setModel(model)
        self.setItemDelegate(_Cells(self))
        self.setSelectionMode(QTableView.SelectionMode.ContiguousSelection)
        self.setEditTriggers(
            QTableView.EditTrigger.AnyKeyPressed
            | QTableView.EditTrigger.DoubleClicked
            | QTableView.EditTrigger.EditKeyPressed
        )
        self.setTabKeyNavigation(False)
        self.setVerticalScrollMode(QTableView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollMode(QTableView.ScrollMode.ScrollPerPixel)
        self.verticalHeader().setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.verticalHeader().setTextElideMode(Qt.TextElideMode.ElideRight)
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setResizeContentsPrecision(_ROWS_MEASURED)
        self.verticalHeader().setHighlightSections(False)

    def fit(self) -> None:
        """Take the height of the rows, and columns as wide as their headings and cells."""
        text_px = current().text_px
        self.verticalHeader().setDefaultSectionSize(round(1.9 * text_px))
        self.verticalHeader().setMaximumWidth(round(_LONGEST_NAME * text_px))
        self.resizeColumnsToContents()
        header = self.horizontalHeader()
        rows = min(self._model.rowCount(), _MOST_ROWS)
        is_wide = header.length() + self.verticalHeader().sizeHint().width() > self.width()
        bar = self.horizontalScrollBar().sizeHint().height() if is_wide else 0
        self.setFixedHeight(header.sizeHint().height() + rows * round(1.9 * text_px) + bar + 4)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.size().width() != event.oldSize().width():
            self.fit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self.state() == QTableView.State.EditingState:
            super().keyPressEvent(event)
        elif event.matches(QKeySequence.StandardKey.Paste):
            self._paste()
        elif event.matches(QKeySequence.StandardKey.Copy):
            self._copy()
        elif event.matches(QKeySequence.StandardKey.Cut):
            self._copy()
            self._empty()
        elif event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self._empty()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.edit(self.currentIndex())
        else:
            super().keyPressEvent(event)

    def go_to(self, row: int, column: int) -> None:
        """Make a cell the current one."""
        index = self._model.index(row, column)
        self.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.ClearAndSelect)

    def _cells(self) -> list[tuple[int, int]]:
        chosen = sorted((i.row(), i.column()) for i in self.selectedIndexes())
        at = self.currentIndex()
        return chosen or ([(at.row(), at.column())] if at.isValid() else [])

    def _paste(self) -> None:
        cells = self._cells() or [(0, 0)]
        self.pasting.emit(QGuiApplication.clipboard().text(), cells[0][0], cells[0][1])

    def _copy(self) -> None:
        """The selected block as spreadsheets take it; the whole table with its headings and names."""
        cells = self._cells()
        if not cells:
            return
        model = self._model
        rows, columns = sorted({r for r, _ in cells}), sorted({c for _, c in cells})
        lines = [[model.text(r, c) for c in columns] for r in rows]
        if len(rows) == model.rowCount() and len(columns) == model.columnCount() and len(cells) > 1:
            lines = [
                [tr("Machine"), *(c.name for c in model.columns)],
                *([machine.name, *line] for machine, line in zip(model.machines, lines, strict=True)),
            ]
        QGuiApplication.clipboard().setText("\n".join("\t".join(line) for line in lines))

    def _empty(self) -> None:
        cells = self._cells()
        if cells:
            self.emptying.emit(cells)
