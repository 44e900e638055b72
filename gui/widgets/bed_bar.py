"""What can be done on the Bed page: choose a machine, ask how it is found, save and copy pictures."""

from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from core.language import tr
from gui.look import S8, S16
from gui.widgets.action_buttons import copy_button, link_button, save_button, told_label
from gui.widgets.choice import Choice


class BedBar(QWidget):
    """A line of controls, with room for what is told."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.machine = Choice("bed_machine", tr("Machine whose cooler bed, line and floor are shown"))
        self.message = told_label()
        self.how = link_button(
            "how_found",
            tr("How is this found?"),
            tr("How beds are measured; for a value click on it, or press F1 on a selected test"),
        )
        self.save = save_button()
        self.copy = copy_button(
            tr("Copy the picture of the beds and the held temperatures (Ctrl+C on a chart)")
        )
        label = QLabel(tr("&Machine:"))
        label.setBuddy(self.machine)
        row = QHBoxLayout(self)
        row.setContentsMargins(S16, 0, S16, 0)
        row.setSpacing(S8)
        for widget in (label, self.machine, self.how):
            row.addWidget(widget)
        row.addWidget(self.message, 1)
        row.addWidget(self.save)
        row.addWidget(self.copy)
