"""Two or more faces of one page, of which one is shown: a row of buttons that stay down."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QHBoxLayout, QPushButton, QWidget

from gui.look import S4


class PageSwitch(QWidget):
    """Buttons beside each other; the one that is down says which face is shown."""

    turned = Signal(str)  # key of the face

    def __init__(
        self,
        name: str,
        accessible_name: str,
        faces: Sequence[tuple[str, str]],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setObjectName(name)
        self.setAccessibleName(accessible_name)
        self._group = QButtonGroup(self)
        self._group.setExclusive(True)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        for place, (key, text) in enumerate(faces):
            button = QPushButton(text)
            button.setObjectName(f"{name}_{key}")
            button.setProperty("role", "switch")
            button.setCheckable(True)
            self._group.addButton(button, place)
            layout.addWidget(button)
        self._keys = [key for key, _ in faces]
        self._group.button(0).setChecked(True)
        self._group.buttonToggled.connect(self._on_toggled)

    @property
    def face(self) -> str:
        """Key of the face that is shown."""
        return self._keys[self._group.checkedId()]

    def turn_to(self, key: str) -> None:
        """Show a face."""
        self._group.button(self._keys.index(key)).setChecked(True)

    def _on_toggled(self, button: QAbstractButton, is_down: bool) -> None:
        if is_down:
            self.turned.emit(self.face)
