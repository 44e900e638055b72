"""What can be done on the Compare page: which view, what is counted, how it was found, pictures."""

from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLabel, QPushButton, QWidget

from core.study import BOUNDARIES
from gui.look import S8, S16
from gui.widgets.choice import Choice

#: the views, as they are called in the list
MEASURED, LIKE, PROPERTY = "Measured", "Like for like", "Against a property"


class CompareBar(QWidget):
    """A line of controls, with room for what is told."""

    def __init__(self, fairness: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.view = Choice(
            "compare_view", "Energies as measured, made like for like, or a measure against a property"
        )
        self.view.fill([(name, name) for name in (MEASURED, LIKE, PROPERTY)], MEASURED)
        self.view.setMinimumContentsLength(len(PROPERTY))
        self.boundary = QComboBox()
        self.boundary.setObjectName("boundary")
        self.boundary.setAccessibleName("What is counted as a run")
        self.boundary.addItems([b[0].upper() + b[1:] for b in BOUNDARIES])
        self.message = QLabel()
        self.message.setObjectName("message")
        self.message.setProperty("role", "muted")
        self.save = QPushButton("&Save picture")
        self.save.setObjectName("save_picture")
        self.copy = QPushButton("Cop&y")
        self.copy.setObjectName("copy")
        self.copy.setToolTip(
            "Copy the picture and its numbers (Ctrl+C on a chart); or drag a chart into another program"
        )
        self.how = QPushButton("&How was this found?")
        self.how.setObjectName("how_found")
        self.how.setProperty("role", "link")
        self.how.setToolTip(
            "How the sentence above was found; for a value click on it, for a run double-click it or press F1"
        )
        row = QHBoxLayout(self)
        row.setContentsMargins(S16, 0, S16, 0)
        row.setSpacing(S8)
        for text, widget in (("Sho&w:", self.view), ("&Counted:", self.boundary)):
            label = QLabel(text)
            label.setBuddy(widget)
            row.addWidget(label)
            row.addWidget(widget)
        row.addWidget(fairness)
        row.addWidget(self.how)
        row.addWidget(self.message, 1)
        row.addWidget(self.save)
        row.addWidget(self.copy)
