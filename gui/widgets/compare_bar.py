"""What can be done on the Compare page: which view, what is counted, how it was found, pictures."""

from PySide6.QtWidgets import QComboBox, QVBoxLayout, QWidget

from core.formatting import capitalised
from core.language import mark, tr
from core.study import BOUNDARIES
from gui.look import S4, S8, S16
from gui.widgets.action_buttons import copy_button, link_button, save_button, told_label
from gui.widgets.choice import Choice
from gui.widgets.flow import Flow, labelled

#: the views, as they are called in the list
MEASURED, LIKE, PROPERTY = mark("Measured"), mark("Like for like"), mark("Against a property")


class CompareBar(QWidget):
    """Controls in as many lines as it takes, and under them what is told."""

    def __init__(self, fairness: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.view = Choice(
            "compare_view", tr("Energies as measured, made like for like, or a measure against a property")
        )
        self.view.fill([(tr(name), name) for name in (MEASURED, LIKE, PROPERTY)], MEASURED)
        self.view.setMinimumContentsLength(len(tr(PROPERTY)))
        self.boundary = QComboBox()
        self.boundary.setObjectName("boundary")
        self.boundary.setAccessibleName(tr("What is counted as a run"))
        self.boundary.addItems([capitalised(tr(b)) for b in BOUNDARIES])
        self.message = told_label()
        self.save = save_button()
        self.copy = copy_button(
            tr("Copy the picture and its numbers (Ctrl+C on a chart); or drag a chart into another program")
        )
        tip = tr(
            "How the sentence above was found; for a value click on it, for a run double-click it or press F1"
        )
        self.how = link_button("how_found", tr("How was this found?"), tip)
        controls = QWidget()
        row = Flow(controls, S8)
        for text, widget in ((tr("Sho&w:"), self.view), (tr("&Counted:"), self.boundary)):
            row.addWidget(labelled(text, widget))
        for button in (fairness, self.how, self.save, self.copy):
            row.addWidget(button)
        self.message.setWordWrap(True)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S16, 0, S16, 0)
        layout.setSpacing(S4)
        layout.addWidget(controls)
        layout.addWidget(self.message)
        self.tell("")

    def tell(self, text: str) -> None:
        """Say something under the controls; with no words it takes no room."""
        self.message.setText(text)
        self.message.setVisible(bool(text))
