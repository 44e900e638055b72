"""The program's own icons, drawn in the ink of the current look."""

from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

from core.places import assets_folder
from gui.look import Look

_SIZES = (16, 24, 32, 48)


def icon(name: str, look: Look) -> QIcon:
    """The icon of this name; an empty one if there is no such drawing."""
    return _icon(name, look.tokens.ink, look.tokens.muted)


@lru_cache(maxsize=256)
def _icon(name: str, ink: str, muted: str) -> QIcon:
    file = assets_folder() / "icons" / f"{name}.svg"
    made = QIcon()
    if file.is_file():
        for mode, color in ((QIcon.Mode.Normal, ink), (QIcon.Mode.Disabled, muted)):
            for size in _SIZES:
                made.addPixmap(_drawn(file, color, size), mode)
    return made


def _drawn(file: Path, color: str, size: int) -> QPixmap:
    drawing = file.read_text(encoding="utf-8").replace("currentColor", color)
    pixmap = QPixmap(QSize(size, size))
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    QSvgRenderer(QByteArray(drawing.encode())).render(painter, QRectF(0, 0, size, size))
    painter.end()
    return pixmap


def application_icon() -> QIcon:
    """The icon of the window and the task bar."""
    file = assets_folder() / "icons" / "samepart.svg"
    return QIcon(str(file)) if file.is_file() else QIcon()
