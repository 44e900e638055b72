"""A small table of a file's first rows; it scrolls sideways by itself where columns are many."""

from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QFrame, QHeaderView, QSizePolicy, QTableView, QWidget

from core.language import tr
from core.logs.reading import Reading
from gui.look import S4, S8
from gui.models.first_rows import FirstRows

#: width that a cell may take before it is cut, in widths of a character
_LONGEST = 32


class FirstRowsView(QTableView):
    """The first rows of a reading, as high as they are."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("first_rows")
        self.setAccessibleName(tr("First rows of the file"))
        self._model = FirstRows(self)
        self.setModel(self._model)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setSelectionMode(QTableView.SelectionMode.NoSelection)
        self.setTabKeyNavigation(False)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollMode(QTableView.ScrollMode.ScrollPerPixel)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.verticalHeader().hide()
        self.horizontalHeader().setHighlightSections(False)
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)

    def show_reading(self, reading: Reading | None) -> None:
        """Show another reading, or none."""
        self._model.show_reading(reading)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange, QEvent.Type.PaletteChange):
            self._fit()

    def _fit(self) -> None:
        header, most = self.horizontalHeader(), _LONGEST * self.fontMetrics().averageCharWidth()
        for place in range(self._model.columnCount()):
            width = max(self.sizeHintForColumn(place), header.sectionSizeHint(place))
            header.resizeSection(place, min(width, most))
        line = self.fontMetrics().height() + S4
        self.verticalHeader().setDefaultSectionSize(line)
        bar = self.horizontalScrollBar().sizeHint().height()
        self.setFixedHeight(header.sizeHint().height() + self._model.rowCount() * line + bar + S8)
