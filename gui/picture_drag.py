"""Dragging a picture out of the window into another program."""

from collections import deque
from pathlib import Path
from typing import Final

from PySide6.QtCore import QDir, QMimeData, QObject, Qt, QTemporaryDir, QUrl
from PySide6.QtGui import QDrag, QPixmap

from core.figures.values import Figure
from gui.charts.view import ChartView
from gui.images import png_bytes, render, svg_bytes
from gui.widgets.picture_menu import PictureMenu

SVG_TYPE: Final = "image/svg+xml"
#: the picture under the pointer is this wide [px at scale 1]
_SHOWN_W: Final = 240
#: pixels of the picture in each of the screen's
_RATIO: Final = 2.0
#: so many dropped pictures stay on the disk: a program may read a file long after it was dropped
_KEPT: Final = 16


class PictureDrag(QObject):
    """Starts drags of charts, as what the picture menu would copy or save."""

    def __init__(self, pictures: PictureMenu, parent: QObject) -> None:
        super().__init__(parent)
        self._pictures = pictures
        self._folders: deque[QTemporaryDir] = deque(maxlen=_KEPT)

    def start(self, view: ChartView) -> None:
        """Drag the picture of a chart until it is dropped somewhere."""
        if view.figure is None:
            return
        drag = QDrag(view)
        data = self.data(view, view.figure)
        drag.setMimeData(data)
        shown = QPixmap.fromImage(data.imageData())
        width = round(view.look.px(_SHOWN_W) * view.devicePixelRatioF())
        small = shown.scaledToWidth(width, Qt.TransformationMode.SmoothTransformation)
        small.setDevicePixelRatio(view.devicePixelRatioF())
        drag.setPixmap(small)
        # The only way to drag that Qt has; the window goes on being painted and fed meanwhile.
        drag.exec(Qt.DropAction.CopyAction)

    def data(self, view: ChartView, figure: Figure) -> QMimeData:
        """A chart for other programs: pixels, a drawing, and a file for those that take only files."""
        size, frame = self._pictures.shown_size(view), self._pictures.frame
        image = render(figure, size, view.look, frame, _RATIO)
        data = QMimeData()
        data.setImageData(image)
        data.setData(SVG_TYPE, svg_bytes(figure, size, view.look, frame))
        folder = QTemporaryDir(QDir.tempPath() + "/samepart-picture-XXXXXX")
        if folder.isValid():
            path = Path(folder.filePath(f"{view.objectName().replace('_', '-')}.png"))
            try:
                path.write_bytes(png_bytes(image))
            except OSError:
                return data  # a full disk: those that take pixels still get them
            self._folders.append(folder)
            data.setUrls([QUrl.fromLocalFile(str(path))])
        return data
