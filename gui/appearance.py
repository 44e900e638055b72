"""Theme and text size of the whole application: follows the desktop, or what the user has fixed."""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Final

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QApplication

from gui import look
from gui.look import Look
from gui.settings import Theme
from gui.style_sheet import style_sheet

_SCHEMES: Final = {
    "system": Qt.ColorScheme.Unknown,
    "light": Qt.ColorScheme.Light,
    "dark": Qt.ColorScheme.Dark,
}


class Appearance(QObject):
    """Dresses the application. Text is never below the system font."""

    changed = Signal()

    def __init__(self, app: QApplication, theme: Theme = "system", zoom: float = 1.0) -> None:
        super().__init__(app)
        self._app = app
        self._theme, self._zoom = theme, zoom
        self._system_px = look.current().text_px
        app.setStyle("Fusion")
        app.styleHints().colorSchemeChanged.connect(self._dress)
        self._dress()

    def set_theme(self, theme: Theme) -> None:
        """Fix the theme, or follow the desktop."""
        self._theme = theme
        self._dress()

    def set_zoom(self, zoom: float) -> None:
        """Text size as a share of the system font, at least 1."""
        self._zoom = max(zoom, 1.0)
        self._dress()

    @contextmanager
    def put_on_last(self) -> Iterator[None]:
        """Make widgets first and dress them at the end, all at once.

        Qt works out the style of a widget again each time it is put into another: two thirds of what a window
        costs to make.
        """
        sheet = self._app.styleSheet()
        self._app.setStyleSheet("")
        try:
            yield
        finally:
            self._app.setStyleSheet(sheet)

    @property
    def is_dark(self) -> bool:
        """Whether the dark look is in force."""
        if self._theme == "system":
            return self._app.styleHints().colorScheme() == Qt.ColorScheme.Dark
        return self._theme == "dark"

    def _dress(self) -> None:
        # The window frame and native dialogs follow the hint; our own widgets follow palette and sheet.
        hints = self._app.styleHints()
        hints.blockSignals(True)
        hints.setColorScheme(_SCHEMES[self._theme])
        hints.blockSignals(False)
        font = QFont(self._app.font())
        font.setPixelSize(round(self._system_px * self._zoom))
        self._app.setFont(font)
        dressed = Look.of(dark=self.is_dark, family=font.family(), text_px=float(font.pixelSize()))
        self._app.setPalette(dressed.palette())
        self._app.setStyleSheet(style_sheet(dressed))
        self.changed.emit()
