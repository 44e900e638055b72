"""Dragging a picture out of the window into another program."""

from collections import deque
from pathlib import Path
from typing import Final

from PySide6.QtCore import QDir, QMimeData, QObject, Qt, QTemporaryDir, QUrl
from PySide6.QtGui import QDrag, QPixmap
from PySide6.QtWidgets import QWidget

from core.figures.values import Figure
from gui.charts.view import ChartView
from gui.images import picture_of
from gui.look import current
from gui.publish.encode import image_of, png_bytes, svg_bytes
from gui.publish.picture import DrawnPicture
from gui.widgets.picture_menu import PictureMenu

SVG_TYPE: Final = "image/svg+xml"
#: the picture under the pointer is this wide [px at scale 1]
_SHOWN_W: Final = 240
#: pixels of a chart's picture in each of the screen's
_RATIO: Final = 2.0
#: so many dropped pictures stay on the disk: a program may read a file long after it was dropped
_KEPT: Final = 16


class DrawnDrag(QObject):
    """Drags laid out pictures: pixels, a drawing, and a file for programs that take only files."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._folders: deque[QTemporaryDir] = deque(maxlen=_KEPT)

    def start(self, source: QWidget, picture: DrawnPicture, name: str, ratio: float = 1.0) -> None:
        """Drag a picture until it is dropped somewhere."""
        drag = QDrag(source)
        data = self.data(picture, name, ratio)
        drag.setMimeData(data)
        shown = QPixmap.fromImage(data.imageData())
        width = round(current().px(_SHOWN_W) * source.devicePixelRatioF())
        small = shown.scaledToWidth(width, Qt.TransformationMode.SmoothTransformation)
        small.setDevicePixelRatio(source.devicePixelRatioF())
        drag.setPixmap(small)
        # The only way to drag that Qt has; the window goes on being painted and fed meanwhile.
        drag.exec(Qt.DropAction.CopyAction)

    def data(self, picture: DrawnPicture, name: str, ratio: float = 1.0) -> QMimeData:
        """A picture for other programs; its file is called `name`."""
        image = image_of(picture, ratio)
        data = QMimeData()
        data.setImageData(image)
        data.setData(SVG_TYPE, svg_bytes(picture))
        folder = QTemporaryDir(QDir.tempPath() + "/samepart-picture-XXXXXX")
        if folder.isValid():
            path = Path(folder.filePath(f"{name}.png"))
            try:
                path.write_bytes(png_bytes(image))
            except OSError:
                return data  # a full disk: those that take pixels still get them
            self._folders.append(folder)
            data.setUrls([QUrl.fromLocalFile(str(path))])
        return data


class PictureDrag(QObject):
    """Starts drags of charts, as what the picture menu would copy or save."""

    def __init__(self, pictures: PictureMenu, parent: QObject) -> None:
        super().__init__(parent)
        self._pictures = pictures
        self._drags = DrawnDrag(self)

    def start(self, view: ChartView) -> None:
        """Drag the picture of a chart until it is dropped somewhere."""
        if view.figure is not None:
            self._drags.start(view, self._picture(view, view.figure), _name_of(view), _RATIO)

    def data(self, view: ChartView, figure: Figure) -> QMimeData:
        """A chart for other programs: pixels, a drawing, and a file for those that take only files."""
        return self._drags.data(self._picture(view, figure), _name_of(view), _RATIO)

    def _picture(self, view: ChartView, figure: Figure) -> DrawnPicture:
        return picture_of(figure, self._pictures.shown_size(view), view.look, self._pictures.frame)


def _name_of(view: ChartView) -> str:
    return view.objectName().replace("_", "-")
