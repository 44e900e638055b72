"""A list to choose from that the wheel cannot change by accident."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox, QSizePolicy, QWidget


class Choice(QComboBox):
    """A combo box in a panel that scrolls: the wheel scrolls the panel."""

    def __init__(self, name: str, accessible_name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName(name)
        self.setAccessibleName(accessible_name)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setMinimumContentsLength(10)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def fill(self, entries: Sequence[tuple[str, object]], current: object) -> None:
        """Offer (text, value) pairs with one of them chosen."""
        self.clear()
        for text, value in entries:
            self.addItem(text, value)
        self.setCurrentIndex(next((i for i, (_, value) in enumerate(entries) if value == current), 0))

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()
