"""The middle of a page: a column of cards that scrolls up and down."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from gui.look import S4, S12, S16


class PageScroll(QScrollArea):
    """Scrolls a column of cards; with the keyboard one goes from card to card, never to the area itself."""

    def __init__(self, name: str, *, right: int = S16, is_fitted: bool = True) -> None:
        """An empty column.

        `right` is the room to the right of the cards; cards that are `is_fitted` never need more width than
        there is, the others get a bar to scroll sideways where they do.
        """
        super().__init__()
        self.setObjectName(name)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        if is_fitted:
            self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        inner = QWidget()
        self.column = QVBoxLayout(inner)
        self.column.setContentsMargins(S16, S4, right, S12)
        self.column.setSpacing(S12)
        self.setWidget(inner)
