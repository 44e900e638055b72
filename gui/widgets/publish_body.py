"""The Publish page under its buttons: shelf, picture or table with its words, the whole study, the form."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QScrollArea, QStackedWidget, QVBoxLayout, QWidget

from core.language import tr
from core.tables import Table
from gui.look import S4, S8, S12, S16, current
from gui.widgets.publish_form import PublishForm
from gui.widgets.publish_preview import PublishPreview
from gui.widgets.publish_shelf import PublishShelf
from gui.widgets.publish_whole import PublishWhole
from gui.widgets.table_card import TableCard

#: from this width on the form stands beside the picture, else under the shelf [text heights]
_BESIDE = 88.0
#: widths of shelf and form, beside the picture and one under another [text heights]
_SHELF, _FORM, _ONE_COLUMN = 19.0, 24.0, 22.0
#: the picture is at least so many lines high
_LEAST_LINES = 15
#: so many lines of the words under a picture are seen at once
_LINES = 4


class PublishBody(QWidget):
    """Arranges its parts in two columns or three."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.shelf = PublishShelf()
        self.preview = PublishPreview()
        self.table = TableCard("publish_table", tr("The table as it is saved"))
        self.words = QLabel()
        self.whole = PublishWhole()
        self.form = PublishForm()
        self.words.setObjectName("publish_words")
        self.words.setProperty("role", "muted")
        self.words.setWordWrap(True)
        self.words.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._picture_scroll = _scroll("publish_picture_scroll", self.preview)
        table = QWidget()
        inside = QVBoxLayout(table)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.addWidget(self.table)
        inside.addStretch(1)
        self._middle = QStackedWidget()
        self._middle.addWidget(self._picture_scroll)
        self._middle.addWidget(_scroll("publish_table_scroll", table))
        self._words_scroll = _scroll("publish_words_scroll", self.words)
        self._words_scroll.setFixedHeight(_LINES * self.fontMetrics().lineSpacing())
        # in a low window the column scrolls rather than press the picture flat
        column = QWidget()
        middle = QVBoxLayout(column)
        middle.setContentsMargins(0, 0, 0, 0)
        middle.setSpacing(S8)
        middle.addWidget(self._middle, 1)
        middle.addWidget(self._words_scroll)
        middle.addWidget(self.whole)
        self._form_scroll = _scroll("publish_form_scroll", self.form)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(S16, S4, S16, S12)
        self._grid.setSpacing(S12)
        self._middle.setMinimumHeight(_LEAST_LINES * self.fontMetrics().lineSpacing())
        self._grid.addWidget(_scroll("publish_column_scroll", column), 0, 1, 2, 1)
        self._grid.setColumnStretch(1, 1)
        self._is_beside: bool | None = None
        self._arrange()

    def show_picture(self) -> None:
        """Show the picture in the middle, with its words."""
        self._middle.setCurrentIndex(0)
        self._words_scroll.show()

    def show_table(self, table: Table, decimal: str) -> None:
        """Show a table in the middle."""
        self.table.show_table(table, " ".join(table.notes), decimal)
        self._middle.setCurrentIndex(1)
        self._words_scroll.hide()

    def set_real_size(self, on: bool) -> None:
        """Whether each pixel of the picture is one of the screen."""
        self._picture_scroll.setWidgetResizable(not on)
        self.preview.set_real_size(on)
        if on:
            self.preview.resize(self.preview.sizeHint())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        text = current().text_px
        beside = self.width() >= _BESIDE * text
        self.shelf.setFixedWidth(round((_SHELF if beside else _ONE_COLUMN) * text))
        self._form_scroll.setFixedWidth(round((_FORM if beside else _ONE_COLUMN) * text))
        if beside == self._is_beside:
            return
        self._is_beside = beside
        for part in (self.shelf, self._form_scroll):
            self._grid.removeWidget(part)
        if beside:
            self._grid.addWidget(self.shelf, 0, 0, 2, 1)
            self._grid.addWidget(self._form_scroll, 0, 2, 2, 1)
        else:
            self._grid.addWidget(self.shelf, 0, 0)
            self._grid.addWidget(self._form_scroll, 1, 0)


def _scroll(name: str, widget: QWidget) -> QScrollArea:
    scroll = QScrollArea()
    scroll.setObjectName(name)
    scroll.setWidgetResizable(True)
    scroll.setFrameShape(QFrame.Shape.NoFrame)
    scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    scroll.setWidget(widget)
    return scroll
