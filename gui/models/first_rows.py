"""The first rows of a file as an item model: cells as they stand there, columns coloured by meaning."""

from typing import Any, Final

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QBrush

from core.language import mark, tr
from core.logs.reading import Column, Reading
from gui import look

#: a colour behind what matters most; its meaning is written above it too
_GROUNDS: Final = {"time": "link", "power": "caution", "energy": "ink"}
_SHARE: Final = 0.16
#: more columns than this are of no use here
_MOST: Final = 24
#: what a column can hold that has a name in other languages
_QUANTITIES: Final = (
    mark("time"),
    mark("date"),
    mark("clock time"),
    mark("elapsed"),
    mark("power"),
    mark("energy"),
    mark("voltage"),
    mark("current"),
    mark("frequency"),
    mark("power factor"),
    mark("apparent power"),
    mark("reactive power"),
    mark("temperature"),
    mark("value"),
    mark("channel"),
    mark("device"),
    mark("state"),
    mark("unit"),
    mark("cost"),
    mark("row number"),
    mark("share"),
)
_ROLE = Qt.ItemDataRole
Index = QModelIndex | QPersistentModelIndex


class FirstRows(QAbstractTableModel):
    """Shows the first rows of a reading."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._columns: tuple[Column, ...] = ()
        self._rows: tuple[tuple[str, ...], ...] = ()

    def show_reading(self, reading: Reading | None) -> None:
        """Show another reading, or none."""
        self.beginResetModel()
        self._columns = () if reading is None else reading.columns[:_MOST]
        self._rows = () if reading is None else reading.first_rows
        self.endResetModel()

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._columns)

    def data(self, index: Index, role: int = _ROLE.DisplayRole) -> Any:
        if not index.isValid():
            return None
        row, place = self._rows[index.row()], index.column()
        text = row[place] if place < len(row) else ""
        if role == _ROLE.DisplayRole:
            return text
        if role == _ROLE.AccessibleTextRole:
            return f"{meaning(self._columns[place])}: {text}"
        if role == _ROLE.BackgroundRole:
            token = _GROUNDS.get(self._columns[place].quantity)
            return None if token is None else QBrush(look.current().blend(token, "card", _SHARE))
        if role == _ROLE.ForegroundRole:
            return QBrush(look.current().color("ink" if self._is_used(place) else "muted"))
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _ROLE.DisplayRole) -> Any:
        if orientation == Qt.Orientation.Vertical:
            return None
        if role == _ROLE.DisplayRole:
            return f"{meaning(self._columns[section])}\n{self._columns[section].name}"
        if role == _ROLE.TextAlignmentRole:
            return int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        return None

    def _is_used(self, place: int) -> bool:
        return self._columns[place].quantity != "other"


def meaning(column: Column) -> str:
    """What a column was taken for, in words.

    Examples
    --------
    >>> meaning(Column("Leistung", "power", "W")), meaning(Column("Notiz", "other", ""))
    ('power, W', 'not used')
    """
    if column.quantity == "other":
        return tr("not used")
    what = tr(column.quantity) if column.quantity in _QUANTITIES else column.quantity
    return f"{what}, {column.unit}" if column.unit else what
