"""Words that hold numbers: a click, or F1 on them, asks how these were found."""

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QLabel, QWidget

from core.language import mark, tr
from gui.look import current

_TIP = mark("How was this found? Click, or press F1.")
_KEYS = (Qt.Key.Key_F1, Qt.Key.Key_Return, Qt.Key.Key_Enter)


class AskingLabel(QLabel):
    """Words that may be asked about.

    Parameters
    ----------
    text : str
    by_keyboard : bool
        Whether Tab goes to it; False where F1 on the page asks for the same.
    parent : QWidget, optional
    """

    asked = Signal()

    def __init__(self, text: str = "", *, by_keyboard: bool = True, parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setWordWrap(True)
        self.setToolTip(tr(_TIP))
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        if by_keyboard:
            self.setFocusPolicy(Qt.FocusPolicy.TabFocus)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton and self.rect().contains(event.position().toPoint()):
            self.asked.emit()
        else:
            super().mouseReleaseEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        event.accept()  # the release comes to who took the press

    def event(self, event: QEvent) -> bool:
        is_ours = isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_F1
        if is_ours and event.type() == QEvent.Type.ShortcutOverride:
            event.accept()  # the window has a shortcut of the same key
            return True
        return super().event(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in _KEYS:
            self.asked.emit()
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self.hasFocus():
            painter = QPainter(self)
            painter.setPen(current().pen("link", 1.6))
            painter.drawRect(self.rect().adjusted(0, 0, -1, -1))
            painter.end()


def asking_words(role: str = "muted") -> AskingLabel:
    """A label for a sentence with numbers that is not the page's first."""
    label = AskingLabel()
    label.setProperty("role", role)
    return label
