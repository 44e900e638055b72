"""A layout that puts controls beside each other and goes on in the next line where there is no room."""

from PySide6.QtCore import QMargins, QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QLayout, QLayoutItem, QWidget

from gui.look import S4


class Flow(QLayout):
    """Lines of controls, each as wide as it wishes to be."""

    def __init__(self, parent: QWidget | None = None, spacing: int = 8) -> None:
        super().__init__()
        self._items: list[QLayoutItem] = []
        self._heights: dict[int, int] = {}  # by width: a page that opens asks hundreds of times
        if parent is not None:
            parent.setLayout(self)
        self.setContentsMargins(QMargins(0, 0, 0, 0))
        self.setSpacing(spacing)

    def invalidate(self) -> None:
        self._heights.clear()
        super().invalidate()

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)
        self.invalidate()

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        self.invalidate()
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        if width not in self._heights:
            self._heights[width] = self._arrange(QRect(0, 0, width, 0), is_real=False)
        return self._heights[width]

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        self._arrange(rect, is_real=True)

    def sizeHint(self) -> QSize:
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        size = QSize()
        for item in self._items:
            size = size.expandedTo(item.minimumSize())
        margins = self.contentsMargins()
        return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom())

    def _arrange(self, rect: QRect, *, is_real: bool) -> int:
        """Place the controls, in the middle of their lines; the height that all take is returned."""
        margins = self.contentsMargins()
        inner = rect.marginsRemoved(margins)
        y = inner.y()
        for line in self._lines(inner.width()):
            height = max(item.sizeHint().height() for item in line)
            x = inner.x()
            for item in line:
                size = item.sizeHint()
                width = min(size.width(), max(inner.width(), item.minimumSize().width()))
                if is_real:
                    top = y + (height - size.height()) // 2
                    item.setGeometry(QRect(QPoint(x, top), QSize(width, size.height())))
                x += width + self.spacing()
            y += height + self.spacing()
        return max(y - self.spacing(), inner.y()) - rect.y() + margins.bottom()

    def _lines(self, room: int) -> list[list[QLayoutItem]]:
        """The visible controls, as many to a line as fit."""
        lines: list[list[QLayoutItem]] = []
        left = 0
        for item in self._items:
            widget = item.widget()
            if widget is not None and widget.isHidden():
                continue
            width = item.sizeHint().width()
            if lines and width <= left:
                lines[-1].append(item)
            else:
                lines.append([item])
                left = room
            left -= width + self.spacing()
        return lines


def labelled(text: str, field: QWidget) -> QWidget:
    """A label and its field, which stay together where the line is broken."""
    pair = QWidget()
    row = QHBoxLayout(pair)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(S4)
    label = QLabel(text)
    label.setBuddy(field)
    row.addWidget(label)
    row.addWidget(field)
    return pair
