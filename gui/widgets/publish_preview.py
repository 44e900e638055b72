"""The picture that would be saved: the same pixels, made to fit or in their own size."""

from PySide6.QtCore import QPoint, QPointF, QRect, QSize, Qt, Signal
from PySide6.QtGui import QImage, QKeyEvent, QKeySequence, QMouseEvent, QPainter, QPaintEvent, QPixmap
from PySide6.QtWidgets import QApplication, QSizePolicy, QWidget

from core.language import tr
from gui.look import current

#: squares under a picture whose ground can be seen through [px at scale 1]
_SQUARE = 8


class PublishPreview(QWidget):
    """Shows an image; pulled with the left button, it goes out of the window."""

    copying = Signal()
    pulled = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("publish_preview")
        self.setAccessibleName(tr("The picture as it is saved"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._image = QImage()
        self._fitted = QPixmap()
        self._is_real_size = False
        self._pressed: QPointF | None = None

    @property
    def image(self) -> QImage:
        """The pixels that would be saved; null where there is nothing to show."""
        return self._image

    def show_image(self, image: QImage, words: str) -> None:
        """Show other pixels, and say in words what they show."""
        self._image, self._fitted = image, QPixmap()
        self.setAccessibleDescription(words)
        self._take_room()
        self.update()

    def set_real_size(self, on: bool) -> None:
        """Whether each pixel of the picture is one of the screen."""
        self._is_real_size = on
        self._fitted = QPixmap()
        self._take_room()
        self.update()

    def sizeHint(self) -> QSize:
        return self._real_size if self._is_real_size else QSize(560, 315)

    def minimumSizeHint(self) -> QSize:
        line = self.fontMetrics().height()
        return self._real_size if self._is_real_size else QSize(10 * line, 10 * line)

    @property
    def _real_size(self) -> QSize:
        return self._image.size() / self.devicePixelRatioF()

    def _take_room(self) -> None:
        self.setMinimumSize(self.minimumSizeHint())
        self.updateGeometry()

    def placed(self) -> QRect:
        """Where the picture lies in the widget."""
        if self._image.isNull():
            return QRect()
        size = self._real_size
        if not self._is_real_size:
            size = size.scaled(self.size(), Qt.AspectRatioMode.KeepAspectRatio)
        corner = QPoint((self.width() - size.width()) // 2, 0)
        return QRect(corner, size)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            self._paint(painter)
        finally:
            painter.end()

    def _paint(self, painter: QPainter) -> None:
        look, place = current(), self.placed()
        if place.isEmpty():
            return
        if self._image.hasAlphaChannel():
            self._paint_squares(painter, place)
        if self._is_real_size:
            painter.drawImage(place, self._image)
        else:
            painter.drawPixmap(place, self._scaled(place.size()))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(look.pen("link", 2.0) if self.hasFocus() else look.pen("rule", 1.0))
        painter.drawRect(place.adjusted(0, 0, -1, -1))

    def _paint_squares(self, painter: QPainter, place: QRect) -> None:
        look, side = current(), _SQUARE
        painter.fillRect(place, look.color("card"))
        for row, y in enumerate(range(place.top(), place.bottom() + 1, side)):
            for x in range(place.left() + side * (row % 2), place.right() + 1, 2 * side):
                square = QRect(x, y, side, side).intersected(place)
                painter.fillRect(square, look.color("selection"))

    def _scaled(self, size: QSize) -> QPixmap:
        """The picture made to fit, kept until it or the room changes."""
        ratio = self.devicePixelRatioF()
        wanted = size * ratio
        if self._fitted.size() != wanted:
            small = self._image.scaled(
                wanted, Qt.AspectRatioMode.IgnoreAspectRatio, Qt.TransformationMode.SmoothTransformation
            )
            self._fitted = QPixmap.fromImage(small)
            self._fitted.setDevicePixelRatio(ratio)
        return self._fitted

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._pressed = event.position()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._pressed is None or self._image.isNull():
            return
        if (event.position() - self._pressed).manhattanLength() >= QApplication.startDragDistance():
            self._pressed = None
            self.pulled.emit()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._pressed = None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copying.emit()
        else:
            super().keyPressEvent(event)
