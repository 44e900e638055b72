"""How the window looks, as its user sets it: theme and size of text, kept for the next start."""

from typing import Final

from PySide6.QtCore import QObject, Slot
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QMenu, QWidget

from core.language import mark, tr
from gui.appearance import Appearance
from gui.settings import ZOOMS, Settings, Theme

_THEMES: Final[tuple[tuple[Theme, str], ...]] = (
    ("system", mark("As the desktop")),
    ("light", mark("Light")),
    ("dark", mark("Dark")),
)


class ViewSettings(QObject):
    """The menu of themes, and what makes text larger and smaller."""

    def __init__(self, settings: Settings, appearance: Appearance, window: QWidget) -> None:
        super().__init__(window)
        self._settings, self._appearance = settings, appearance
        self.theme_menu = QMenu(tr("&Theme"), window)
        group = QActionGroup(self)
        for theme, text in _THEMES:
            action = group.addAction(self.theme_menu.addAction(tr(text)))
            action.setData(theme)
            action.setCheckable(True)
            action.setChecked(theme == settings.theme)
        group.triggered.connect(self._choose_theme)

    @Slot()
    def larger(self) -> None:
        """Take the next larger text."""
        self._zoom(next((z for z in ZOOMS if z > self._settings.zoom + 0.01), ZOOMS[-1]))

    @Slot()
    def smaller(self) -> None:
        """Take the next smaller text."""
        self._zoom(next((z for z in reversed(ZOOMS) if z < self._settings.zoom - 0.01), ZOOMS[0]))

    @Slot()
    def normal(self) -> None:
        """Take text of the desktop's size."""
        self._zoom(1.0)

    def _zoom(self, zoom: float) -> None:
        self._settings.zoom = zoom
        self._appearance.set_zoom(zoom)

    @Slot(QAction)
    def _choose_theme(self, action: QAction) -> None:
        theme = next(theme for theme, _ in _THEMES if theme == action.data())
        self._settings.theme = theme
        self._appearance.set_theme(theme)
