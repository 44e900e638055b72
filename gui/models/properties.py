"""An item model over the table of properties: what is typed into a cell is handed on, never kept here."""

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt, Signal

from core.formatting import POINT, NumberLocale
from core.language import tr
from core.properties.table import Column, columns_of, value_of, written
from core.study import Machine, Study

_ROLE = Qt.ItemDataRole
Index = QModelIndex | QPersistentModelIndex


class PropertyModel(QAbstractTableModel):
    """Machines down, columns across."""

    typed = Signal(str, object, str)  # machine id, Column, text

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._machines: tuple[Machine, ...] = ()
        self.columns: tuple[Column, ...] = ()
        self._locale = POINT

    @property
    def machines(self) -> tuple[Machine, ...]:
        """The machines, a row each."""
        return self._machines

    def show_study(self, study: Study, locale: NumberLocale) -> None:
        """Show another study; where only cells differ, what is selected stays."""
        columns = columns_of(study)
        if (study.machines, columns, locale) == (self._machines, self.columns, self._locale):
            return
        is_same = [c.name for c in columns] == [c.name for c in self.columns] and (
            [m.id for m in study.machines] == [m.id for m in self._machines]
        )
        if not is_same:
            self.beginResetModel()
        self._machines, self.columns, self._locale = study.machines, columns, locale
        if not is_same:
            self.endResetModel()
        elif columns and study.machines:
            last = self.index(len(study.machines) - 1, len(columns) - 1)
            self.dataChanged.emit(self.index(0, 0), last)
            self.headerDataChanged.emit(Qt.Orientation.Vertical, 0, len(study.machines) - 1)

    def text(self, row: int, column: int) -> str:
        """A cell as people read it."""
        return written(value_of(self._machines[row], self.columns[column].name), self._locale)

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own default
        return 0 if parent.isValid() else len(self._machines)

    def columnCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008 - Qt's own default
        return 0 if parent.isValid() else len(self.columns)

    def data(self, index: Index, role: int = _ROLE.DisplayRole) -> Any:
        if not index.isValid():
            return None
        if role in (_ROLE.DisplayRole, _ROLE.EditRole):
            return self.text(index.row(), index.column())
        column = self.columns[index.column()]
        if role == _ROLE.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignRight if column.kind == "number" else Qt.AlignmentFlag.AlignLeft
            return side | Qt.AlignmentFlag.AlignVCenter
        if role == _ROLE.AccessibleTextRole:
            text = self.text(index.row(), index.column()) or tr("empty")
            return f"{self._machines[index.row()].name}, {column.heading}: {text}"
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _ROLE.DisplayRole) -> Any:
        if role not in (_ROLE.DisplayRole, _ROLE.ToolTipRole):
            return None
        if orientation == Qt.Orientation.Vertical:
            return self._machines[section].name if section < len(self._machines) else None
        return self.columns[section].heading if section < len(self.columns) else None

    def flags(self, index: Index) -> Qt.ItemFlag:
        return super().flags(index) | Qt.ItemFlag.ItemIsEditable

    def setData(self, index: Index, value: Any, role: int = _ROLE.EditRole) -> bool:
        """Hand on what was typed; it is shown once the study has it."""
        if role != _ROLE.EditRole or not index.isValid():
            return False
        text = str(value)
        if text != self.text(index.row(), index.column()):
            self.typed.emit(self._machines[index.row()].id, self.columns[index.column()], text)
        return True
