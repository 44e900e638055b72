"""The menu of languages."""

from PySide6.QtCore import Slot
from PySide6.QtGui import QAction, QActionGroup
from PySide6.QtWidgets import QMenu, QWidget

from core.language import tr
from gui.languages import SYSTEM, languages, own_name
from gui.settings import Settings


class LanguageMenu(QMenu):
    """Languages of the window, each by its own name; a choice is kept and shown from the next start on."""

    def __init__(self, settings: Settings, parent: QWidget | None) -> None:
        super().__init__(tr("Lan&guage"), parent)
        self._settings = settings
        group = QActionGroup(self)
        chosen = settings.language
        for code in (SYSTEM, *languages()):
            name = tr("As the &system") if code == SYSTEM else own_name(code)
            action = group.addAction(self.addAction(name))
            action.setData(code)
            action.setCheckable(True)
            action.setChecked(code == chosen)
        group.triggered.connect(self._choose)
        self.addSeparator()
        told = self.addAction(tr("Shown from the next start on"))
        told.setEnabled(False)

    @Slot(QAction)
    def _choose(self, action: QAction) -> None:
        self._settings.language = str(action.data())
