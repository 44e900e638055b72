"""What can be done on the Bed page: choose a machine, ask how it is found, save and copy pictures."""

from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QWidget

from gui.look import S8, S16
from gui.widgets.choice import Choice


class BedBar(QWidget):
    """A line of controls, with room for what is told."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.machine = Choice("bed_machine", "Machine whose cooler bed, line and floor are shown")
        self.message = QLabel()
        self.message.setObjectName("message")
        self.message.setProperty("role", "muted")
        self.how = QPushButton("&How is this found?")
        self.how.setObjectName("how_found")
        self.how.setProperty("role", "link")
        self.how.setToolTip("How beds are measured; for a value click on it, or press F1 on a selected test")
        self.save = QPushButton("&Save picture")
        self.save.setObjectName("save_picture")
        self.copy = QPushButton("Cop&y")
        self.copy.setObjectName("copy")
        self.copy.setToolTip("Copy the picture of the beds and the held temperatures (Ctrl+C on a chart)")
        label = QLabel("&Machine:")
        label.setBuddy(self.machine)
        row = QHBoxLayout(self)
        row.setContentsMargins(S16, 0, S16, 0)
        row.setSpacing(S8)
        for widget in (label, self.machine, self.how):
            row.addWidget(widget)
        row.addWidget(self.message, 1)
        row.addWidget(self.save)
        row.addWidget(self.copy)
