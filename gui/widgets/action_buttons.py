"""What the action rows of pages share: how it was found, saving and copying pictures, what is told."""

from PySide6.QtWidgets import QLabel, QMenu, QPushButton

from core.language import tr


def link_button(name: str, text: str, tip: str = "") -> QPushButton:
    """A button that leads to words, so it looks like a link."""
    button = QPushButton(text)
    button.setObjectName(name)
    button.setProperty("role", "link")
    button.setToolTip(tip)
    return button


def save_button(name: str = "save_picture", menu: QMenu | None = None) -> QPushButton:
    """A button that opens the menu of pictures."""
    button = QPushButton(tr("&Save picture"))
    button.setObjectName(name)
    if menu is not None:
        button.setMenu(menu)
    return button


def copy_button(tip: str = "", name: str = "copy") -> QPushButton:
    """A button that copies the page's first chart."""
    button = QPushButton(tr("Cop&y"))
    button.setObjectName(name)
    button.setToolTip(tip)
    return button


def told_label(name: str = "message") -> QLabel:
    """Where a page tells what it has done, or why it has not."""
    label = QLabel()
    label.setObjectName(name)
    label.setProperty("role", "muted")
    return label
