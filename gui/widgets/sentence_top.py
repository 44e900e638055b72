"""The top of a page: its answer in a sentence, and under which conditions it holds."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from gui.look import S4, S16
from gui.widgets.asking import AskingLabel


class SentenceTop(QWidget):
    """The page's answer in one sentence, and its conditions in a second line.

    F1 on the page asks for the same as a click, so Tab goes past both.
    """

    asked = Signal()  # how was this found?

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.sentence = AskingLabel(by_keyboard=False)
        self.sentence.setObjectName("sentence")
        self.sentence.setProperty("role", "title")
        self.conditions = AskingLabel(by_keyboard=False)
        self.conditions.setObjectName("conditions")
        self.conditions.setProperty("role", "muted")
        for label in (self.sentence, self.conditions):
            label.asked.connect(self.asked)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S16, S16, S16, S4)
        layout.setSpacing(S4)
        layout.addWidget(self.sentence)
        layout.addWidget(self.conditions)

    def say(self, sentence: str, conditions: str) -> None:
        """Put both in words; an empty second line takes no room."""
        self.sentence.setText(sentence)
        self.conditions.setText(conditions)
        self.conditions.setVisible(bool(conditions))
