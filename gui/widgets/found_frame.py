"""Keeps the panel of how a number was found under what it explains, or beside it where there is room."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QWidget

from gui.look import current
from gui.widgets.found_panel import FoundPanel

#: from this width on the panel stands beside the page, in text heights
_BESIDE = 92.0
#: its width there, in text heights
_WIDTH = 27.0
#: under the page it takes this part of the height, and no more than this in text heights
_PART, _MOST = 0.46, 26.0


class FoundFrame(QWidget):
    """A page's content and the panel that explains it."""

    def __init__(
        self,
        content: QWidget,
        panel: FoundPanel,
        *,
        may_stand_beside: bool = True,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._panel = panel
        self._may_stand_beside = may_stand_beside
        self._layout = QBoxLayout(QBoxLayout.Direction.TopToBottom, self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(0)
        self._layout.addWidget(content, 1)
        self._layout.addWidget(panel)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        text = current().text_px
        beside = self._may_stand_beside and self.width() >= _BESIDE * text
        self._layout.setDirection(
            QBoxLayout.Direction.LeftToRight if beside else QBoxLayout.Direction.TopToBottom
        )
        self._panel.set_beside(beside)
        if beside:
            self._panel.setFixedWidth(round(_WIDTH * text))
            self._panel.setMinimumHeight(0)
            self._panel.setMaximumHeight(self.maximumHeight())
        else:
            self._panel.setMinimumWidth(0)
            self._panel.setMaximumWidth(self.maximumWidth())
            self._panel.setFixedHeight(round(min(_PART * self.height(), _MOST * text)))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc on the page puts the panel away too, once nothing on the page has a use for it."""
        if event.key() == Qt.Key.Key_Escape and self._panel.isVisible():
            self._panel.close_panel()
        else:
            super().keyPressEvent(event)
