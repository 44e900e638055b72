"""Which machines a picture shows, and in which order: ticks, dragging, and the keyboard."""

from collections.abc import Sequence

from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QDropEvent, QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QListWidget, QListWidgetItem, QWidget

from core.language import tr

_ID = Qt.ItemDataRole.UserRole
_MOST_LINES = 8


class PublishMachines(QListWidget):
    """The machines of the study; Alt with up or down moves the one that is chosen."""

    arranged = Signal(object)  # ids of the machines shown, in their order; () for all in that of the study

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("publish_machines")
        self.setAccessibleName(tr("Machines shown and their order"))
        self.setToolTip(
            tr("Tick the machines to show; drag them, or press Alt with up or down, to order them")
        )
        self.setDragDropMode(QAbstractItemView.DragDropMode.InternalMove)
        self.setDefaultDropAction(Qt.DropAction.MoveAction)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._study_order: tuple[str, ...] = ()
        self._shown: tuple[tuple[str, str], ...] = ()
        self.itemChanged.connect(self._tell)

    def sizeHint(self) -> QSize:
        line = round(self.fontMetrics().height() * 1.5)
        return QSize(14 * line, (min(max(self.count(), 3), _MOST_LINES)) * line + 8)

    def minimumSizeHint(self) -> QSize:
        return QSize(100, self.sizeHint().height())

    def show_machines(self, machines: Sequence[tuple[str, str]], shown: Sequence[str]) -> None:
        """Show (id, name) pairs in the order of the study, and which are shown; nobody is told."""
        self._study_order = tuple(machine_id for machine_id, _ in machines)
        names = dict(machines)
        known = [m for m in shown if m in names] or list(names)
        order = (*known, *(m for m in names if m not in known))
        wanted = tuple((m, names[m]) for m in order)
        with QSignalBlocker(self):
            if wanted != self._shown or self.count() != len(wanted):
                self._shown = wanted
                chosen = self.currentItem().data(_ID) if self.currentItem() is not None else None
                self.clear()
                for machine_id, name in wanted:
                    item = QListWidgetItem(name)
                    item.setData(_ID, machine_id)
                    # no drop onto an item: it would take the place of the one underneath
                    item.setFlags(item.flags() & ~Qt.ItemFlag.ItemIsDropEnabled)
                    self.addItem(item)
                    if machine_id == chosen:
                        self.setCurrentItem(item)
                self.updateGeometry()
            for row in range(self.count()):
                on = self.item(row).data(_ID) in known
                self.item(row).setCheckState(Qt.CheckState.Checked if on else Qt.CheckState.Unchecked)

    def dropEvent(self, event: QDropEvent) -> None:
        super().dropEvent(event)
        self._tell()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}.get(Qt.Key(event.key()), 0)
        if step and event.modifiers() & Qt.KeyboardModifier.AltModifier:
            self._move(step)
        else:
            super().keyPressEvent(event)

    def _move(self, step: int) -> None:
        row = self.currentRow()
        if row < 0 or not 0 <= row + step < self.count():
            return
        with QSignalBlocker(self):
            item = self.takeItem(row)
            self.insertItem(row + step, item)
            self.setCurrentRow(row + step)
        self._tell()

    def _tell(self) -> None:
        items = [self.item(row) for row in range(self.count())]
        self._shown = tuple((str(item.data(_ID)), item.text()) for item in items)
        shown = tuple(str(item.data(_ID)) for item in items if item.checkState() == Qt.CheckState.Checked)
        self.arranged.emit(() if shown == self._study_order else shown)
