"""An item model over a table of the core, with numbers lined up on their decimal mark."""

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QFontMetrics

from core.formatting import PLUS_MINUS
from core.tables import Table, shown

#: spaces as wide as a digit and as wide as a point or comma (Unicode, "General Punctuation")
FIGURE_SPACE, PUNCTUATION_SPACE = "\u2007", "\u2008"
#: before words that follow numbers set flush right: both would read as one
EM_SPACE = "\u2003"
_ROLE = Qt.ItemDataRole
Index = QModelIndex | QPersistentModelIndex


class TableModel(QAbstractTableModel):
    """Shows a `Table`; the texts are made once per table, because views ask for them again and again."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._table: Table | None = None
        self._texts: list[tuple[str, ...]] = []
        self._lined_up: list[tuple[str, ...]] = []

    @property
    def table(self) -> Table | None:
        """What is shown."""
        return self._table

    @property
    def rows(self) -> list[tuple[str, ...]]:
        """Header and rows as plain text, for the clipboard."""
        titles = () if self._table is None else tuple(c.title for c in self._table.columns)
        return [titles, *self._texts]

    def show_table(self, table: Table, decimal: str = ".") -> None:
        """Show another table whose numbers are written with this decimal mark."""
        if table == self._table:
            return
        self.beginResetModel()
        self._table = table
        self._texts = [
            tuple(shown(cell, column) for cell, column in zip(row, table.columns, strict=True))
            for row in table.rows
        ]
        columns = list(zip(*self._texts, strict=True)) or [()] * len(table.columns)
        by_column = [
            line_up(tuple(texts), decimal)
            if column.align == "right"
            else tuple(self._indent(place) + text for text in texts)
            for place, (column, texts) in enumerate(zip(table.columns, columns, strict=True))
        ]
        self._lined_up = list(zip(*by_column, strict=True))
        self.endResetModel()

    def widest(self, column: int, metrics: QFontMetrics) -> QModelIndex:
        """The cell of a column with the widest text; a view would ask for every role of each."""
        texts = {row[column]: place for place, row in enumerate(self._lined_up)}
        found = max(texts, key=metrics.horizontalAdvance, default=None)
        return QModelIndex() if found is None else self.index(texts[found], column)

    def rowCount(self, parent: Index | None = None) -> int:
        return 0 if parent is not None and parent.isValid() else len(self._texts)

    def columnCount(self, parent: Index | None = None) -> int:
        if self._table is None or (parent is not None and parent.isValid()):
            return 0
        return len(self._table.columns)

    def data(self, index: Index, role: int = _ROLE.DisplayRole) -> Any:
        if self._table is None or not index.isValid():
            return None
        if role == _ROLE.DisplayRole:
            return self._lined_up[index.row()][index.column()]
        if role == _ROLE.TextAlignmentRole:
            return self._alignment(index.column())
        if role in (_ROLE.AccessibleTextRole, _ROLE.ToolTipRole):
            title = self._table.columns[index.column()].title
            return f"{title}: {self._texts[index.row()][index.column()]}"
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = _ROLE.DisplayRole) -> Any:
        if self._table is None or orientation == Qt.Orientation.Vertical:
            return None
        if role == _ROLE.DisplayRole:
            lines = two_lines(self._table.columns[section].title).split("\n")
            return "\n".join(self._indent(section) + line for line in lines)
        if role == _ROLE.TextAlignmentRole:
            return self._alignment(section)
        return None

    def _indent(self, column: int) -> str:
        columns = () if self._table is None else self._table.columns
        follows = column > 0 and columns[column].align != "right" and columns[column - 1].align == "right"
        return EM_SPACE if follows else ""

    def _alignment(self, column: int) -> int:
        right = self._table is not None and self._table.columns[column].align == "right"
        side = Qt.AlignmentFlag.AlignRight if right else Qt.AlignmentFlag.AlignLeft
        return int(side | Qt.AlignmentFlag.AlignVCenter)


def two_lines(title: str) -> str:
    r"""A title broken between words where its longer line is shortest, to keep columns narrow.

    Examples
    --------
    >>> two_lines("Energy per part [Wh]"), two_lines("Runs")
    ('Energy per\npart [Wh]', 'Runs')
    """
    words = title.split(" ")
    breaks = [(" ".join(words[:i]), " ".join(words[i:])) for i in range(1, len(words))]
    return "\n".join(min(breaks, key=lambda b: max(map(len, b)))) if breaks else title


def line_up(texts: tuple[str, ...], decimal: str = ".") -> tuple[str, ...]:
    """Pad numbers at the right so that, set flush right in figures of equal width, their marks align.

    A value with its interval is padded in both, so that the plus-minus signs align too.

    Examples
    --------
    >>> [t.replace(FIGURE_SPACE, "_").replace(PUNCTUATION_SPACE, ".") for t in line_up(("1.25", "10.5", "7"))]
    ['1.25', '10.5_', '7.__']
    """
    sign = f" {PLUS_MINUS} "
    values, intervals = [], []
    for text in texts:
        value, _, interval = text.partition(sign)
        values.append(value)
        intervals.append(interval)
    values = _padded(values, decimal)
    if not any(intervals):
        return tuple(values)
    intervals = _padded(intervals, decimal)
    widest = max(len(i) for i in intervals)
    blank = "".join(
        PUNCTUATION_SPACE if c in decimal + PUNCTUATION_SPACE else FIGURE_SPACE
        for c in max(intervals, key=len)
    )
    return tuple(
        f"{value}{sign}{FIGURE_SPACE * (widest - len(interval))}{interval}"
        if interval.strip(FIGURE_SPACE + PUNCTUATION_SPACE)
        else f"{value} {FIGURE_SPACE} {blank}"
        for value, interval in zip(values, intervals, strict=True)
    )


def _padded(texts: list[str], decimal: str) -> list[str]:
    most = max((len(t.partition(decimal)[2]) for t in texts), default=0)
    result = []
    for text in texts:
        _, mark, rest = text.partition(decimal)
        missing = FIGURE_SPACE * (most - len(rest))
        if not mark and most:
            missing = PUNCTUATION_SPACE + missing
        result.append(text + missing)
    return result
