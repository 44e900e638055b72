"""The top of a page: its answer in a sentence, and under which conditions it holds."""

from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from gui.look import S4, S16


class SentenceTop(QWidget):
    """The page's answer in one sentence, and its conditions in a second line."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.sentence = QLabel()
        self.sentence.setObjectName("sentence")
        self.sentence.setProperty("role", "title")
        self.sentence.setWordWrap(True)
        self.conditions = QLabel()
        self.conditions.setObjectName("conditions")
        self.conditions.setProperty("role", "muted")
        self.conditions.setWordWrap(True)
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
