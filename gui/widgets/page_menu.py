"""The menu of pages, each with its number as a key."""

from collections.abc import Sequence

from PySide6.QtCore import Signal, Slot
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from core.language import tr


class PageMenu(QMenu):
    """One entry a page, in their order; Ctrl and a number choose one from anywhere."""

    chosen = Signal(int)  # place of the page

    def __init__(self, titles: Sequence[str], parent: QWidget) -> None:
        super().__init__(tr("&Page"), parent)
        for place, title in enumerate(titles):
            action = self.addAction(tr(title))
            action.setShortcut(QKeySequence(f"Ctrl+{place + 1}"))
            action.setData(place)
        self.triggered.connect(self._on_triggered)

    @Slot(QAction)
    def _on_triggered(self, action: QAction) -> None:
        self.chosen.emit(int(action.data()))
