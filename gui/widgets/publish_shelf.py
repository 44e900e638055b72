"""The shelf: figures and tables of the study, page by page, each with a tick that picks it."""

from collections.abc import Sequence

from attrs import frozen
from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal
from PySide6.QtWidgets import QSizePolicy, QTreeWidget, QTreeWidgetItem, QWidget

from core.language import mark, tr
from core.publish.shelf import Entry

_KEY = Qt.ItemDataRole.UserRole
_TABLES = mark("Tables")


@frozen
class _Row:
    heading: str
    title: str
    key: str


class PublishShelf(QTreeWidget):
    """Ticks pick, the chosen row is the one that is shown."""

    ticked = Signal(str, bool)  # key, whether it is picked
    chosen = Signal(str)  # key of what is to be shown

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("publish_shelf")
        self.setAccessibleName(tr("Figures and tables to publish"))
        self.setAccessibleDescription(tr("Space picks the row that is chosen, or lets it go"))
        self.setHeaderHidden(True)
        self.setRootIsDecorated(False)
        self.setIndentation(12)
        self.setUniformRowHeights(True)
        self.setItemsExpandable(False)
        self.setTabKeyNavigation(False)
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._rows: tuple[_Row, ...] = ()
        self._items: dict[str, QTreeWidgetItem] = {}
        self.itemChanged.connect(self._on_changed)
        self.currentItemChanged.connect(self._on_current)

    @property
    def current_key(self) -> str:
        """Key of the row that is chosen; empty where there is none."""
        item = self.currentItem()
        return "" if item is None else str(item.data(0, _KEY) or "")

    def sizeHint(self) -> QSize:
        line = self.fontMetrics().height()
        return QSize(17 * line, 22 * line)

    def minimumSizeHint(self) -> QSize:
        line = self.fontMetrics().height()
        return QSize(12 * line, 8 * line)

    def show_entries(self, entries: Sequence[Entry], picked: Sequence[str], current: str) -> None:
        """Show what there is, what of it is picked and what is shown; nobody is told."""
        rows = tuple(_Row(_TABLES if e.is_table else e.page, e.title, e.key) for e in entries)
        with QSignalBlocker(self):
            if rows != self._rows:
                self._fill(rows)
            for key, item in self._items.items():
                state = Qt.CheckState.Checked if key in picked else Qt.CheckState.Unchecked
                if item.checkState(0) != state:
                    item.setCheckState(0, state)
            wanted = self._items.get(current)
            if wanted is not None and wanted is not self.currentItem():
                self.setCurrentItem(wanted)

    def _fill(self, rows: tuple[_Row, ...]) -> None:
        self._rows, self._items = rows, {}
        self.clear()
        headings: dict[str, QTreeWidgetItem] = {}
        for row in rows:
            if row.heading not in headings:
                heading = QTreeWidgetItem([tr(row.heading)])
                heading.setFlags(Qt.ItemFlag.ItemIsEnabled)
                font = heading.font(0)
                font.setBold(True)
                heading.setFont(0, font)
                self.addTopLevelItem(heading)
                headings[row.heading] = heading
            item = QTreeWidgetItem([row.title])
            item.setToolTip(0, row.title)
            item.setData(0, _KEY, row.key)
            item.setCheckState(0, Qt.CheckState.Unchecked)
            headings[row.heading].addChild(item)
            self._items[row.key] = item
        self.expandAll()

    def _on_changed(self, item: QTreeWidgetItem) -> None:
        key = item.data(0, _KEY)
        if key:
            self.ticked.emit(str(key), item.checkState(0) == Qt.CheckState.Checked)

    def _on_current(self) -> None:
        if self.current_key:
            self.chosen.emit(self.current_key)
