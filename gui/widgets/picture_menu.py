"""Saving and copying a figure as a picture: which chart, for which purpose, with or without its frame."""

from collections.abc import Sequence
from pathlib import Path

from attrs import frozen
from PySide6.QtCore import QObject, QStandardPaths, Qt, Signal
from PySide6.QtGui import QAction, QCursor, QGuiApplication
from PySide6.QtWidgets import QFileDialog, QMenu, QWidget

from core.figures.values import Figure
from core.language import mark, tr
from gui.charts.framing import Frame
from gui.charts.layout import frame_height
from gui.charts.view import ChartView
from gui.images import SIZES, Size, clipboard_data, render, save
from gui.publish.encode import FILTERS

_PURPOSES = (
    ("wide", mark("Wide, 1920 × 1080…")),
    ("square", mark("Square, 1080 × 1080…")),
    ("as shown", mark("As shown…")),
)
#: pixels of a copied picture in each of the screen's
_RATIO = 2.0


@frozen
class Picture:
    """A picture that was asked for."""

    figure: Figure
    size: Size
    frame: Frame
    view: ChartView


class PictureMenu(QObject):
    """The menu and what its entries do; the file dialog never blocks."""

    copying = Signal()
    adding = Signal(str, object)  # name of the chart and its figure, which are to be published
    told = Signal(str)  # that it is saved, or what stood in the way and what would mend it

    def __init__(self, charts: dict[str, ChartView], parent: QWidget) -> None:
        super().__init__(parent)
        self._charts = charts
        self._asked: Picture | None = None
        self._dialog: QFileDialog | None = None
        self.menu = QMenu(tr("&Picture"), parent)
        copy = self.menu.addAction(tr("&Copy the picture and its numbers"))
        copy.setObjectName("copy_picture")
        copy.triggered.connect(self.copying)
        self.menu.addSeparator()
        for title, chart in charts.items():
            part = self.menu.addMenu(tr(title))
            add = part.addAction(tr("&Add to Publish"))
            add.setObjectName(f"add_{chart.objectName()}_to_publish")
            add.setData(title)
            add.triggered.connect(self._on_add)
            part.addSeparator()
            for purpose, text in _PURPOSES:
                action = part.addAction(tr(text))
                action.setObjectName(f"save_{chart.objectName()}_{purpose.replace(' ', '_')}")
                action.setData((title, purpose))
                action.triggered.connect(self._on_purpose)
        self.menu.addSeparator()
        self.with_title = self._switch(tr("With the headline"))
        self.with_conditions = self._switch(tr("With conditions and source"))
        self.doubled = self._switch(tr("Twice the pixels (PNG)"), is_on=False)

    @property
    def frame(self) -> Frame:
        """What a picture carries around its chart."""
        return Frame(title=self.with_title.isChecked(), conditions=self.with_conditions.isChecked())

    @property
    def dialog(self) -> QFileDialog | None:
        """The dialog that asks where, while it is open."""
        return self._dialog

    def picture(self, title: str, purpose: str) -> Picture | None:
        """The picture of a chart for a purpose; None when the chart is empty."""
        view = self._charts[title]
        if view.figure is None:
            return None
        size = SIZES.get(purpose) or self.shown_size(view)
        return Picture(view.figure, size, self.frame, view)

    def shown_size(self, view: ChartView) -> Size:
        """Size at which the chart is as large in the picture as on screen, with its frame around it."""
        if view.figure is None:
            return Size(view.width(), view.height())
        around = frame_height(view.figure, view.width(), view.look, self.frame)
        return Size(view.width(), view.height() + round(around))

    def open_on(self, view: ChartView) -> None:
        """Open the menu at the pointer when a chart asks for its context menu."""
        view.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        view.customContextMenuRequested.connect(self._open)

    def copy(self, view: ChartView, rows: Sequence[Sequence[str]]) -> None:
        """Copy a chart's picture as shown, with the rows of its numbers; nothing where the chart is empty."""
        if view.figure is None:
            return
        image = render(view.figure, self.shown_size(view), view.look, self.frame, _RATIO)
        QGuiApplication.clipboard().setMimeData(clipboard_data(image, rows))
        self.told.emit(tr("Copied the picture and its numbers"))

    def write(self, picture: Picture, path: Path) -> None:
        """Write a picture; what stands in the way is told, not raised."""
        try:
            ratio = 2.0 if self.doubled.isChecked() else 1.0
            save(path, picture.figure, picture.size, picture.view.look, picture.frame, ratio)
        except OSError as error:
            why = error.strerror or str(error)
            self.told.emit(
                tr(
                    "{name} was not saved ({why}). Choose another folder or free some room.",
                    name=path.name,
                    why=why,
                )
            )
        else:
            self.told.emit(tr("Saved {name}", name=path.name))

    def _switch(self, text: str, *, is_on: bool = True) -> QAction:
        action = self.menu.addAction(text)
        action.setCheckable(True)
        action.setChecked(is_on)
        return action

    def _open(self) -> None:
        self.menu.popup(QCursor.pos())

    def _on_add(self) -> None:
        action = self.sender()
        view = self._charts[str(action.data())] if isinstance(action, QAction) else None
        if view is not None and view.figure is not None:
            self.adding.emit(view.objectName(), view.figure)

    def _on_purpose(self) -> None:
        action = self.sender()
        if not isinstance(action, QAction):
            return
        self._asked = self.picture(*action.data())
        if self._asked is None:
            return
        home = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.PicturesLocation)
        name = f"{self._asked.view.objectName().replace('_', '-')}.png"
        parent = self.parent()
        dialog = QFileDialog(parent if isinstance(parent, QWidget) else None, tr("Save picture"))
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setNameFilters([tr(kind) for kind in FILTERS.values()])
        dialog.setDefaultSuffix("png")
        dialog.setDirectory(home)
        dialog.selectFile(name)
        dialog.filterSelected.connect(self._on_filter)
        dialog.fileSelected.connect(self._on_file)
        dialog.finished.connect(self._on_finished)
        self._dialog = dialog
        dialog.open()

    def _on_filter(self, chosen: str) -> None:
        if self._dialog is not None:
            ending = next((each for each, kind in FILTERS.items() if tr(kind) == chosen), "png")
            self._dialog.setDefaultSuffix(ending)

    def _on_file(self, name: str) -> None:
        if self._asked is not None:
            path = Path(name)
            if path.suffix.lower().lstrip(".") not in FILTERS:
                path = path.with_name(path.name + ".png")
            self.write(self._asked, path)

    def _on_finished(self) -> None:
        if self._dialog is not None:
            self._dialog.deleteLater()
        self._dialog, self._asked = None, None
