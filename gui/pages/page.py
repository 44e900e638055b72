"""What every page is: shown a study and a comparison, asks for edits, keeps nothing of its own."""

from attrs import frozen
from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLabel, QMenu, QVBoxLayout, QWidget

from core.language import tr
from core.results.values import Comparison
from core.study import Study
from gui.dialogs import notes
from gui.look import S4, S16


@frozen
class Badge:
    """A few signs beside the page's name in the list of pages, and what they mean; empty for none."""

    signs: str = ""
    meaning: str = ""


def purpose_of(title: str) -> str:
    """The name of the text that tells what a page is for.

    Examples
    --------
    >>> purpose_of("Standby and cost")
    'standby-cost'
    """
    return title.lower().replace(" and ", " ").replace(" ", "-")


class Page(QWidget):
    """Base of the pages. Only the visible page is fed; a page that becomes visible is fed at once."""

    #: name in the page list, and of the page's icon
    title = ""
    icon = ""
    #: another page is wanted: its title, and what is to be seen there
    page_wanted = Signal(str, str)

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study and its newest comparison, which may still be that of a moment ago."""
        raise NotImplementedError

    def explain(self) -> None:
        """Say how the number was found that is selected on the page, or else what the page is for."""
        self.tell_purpose()

    def tell_purpose(self) -> None:
        """Say what the page answers, how to read it, and what to beware of."""
        notes.show_note(self, tr(self.title), purpose_of(self.title))

    def turn_to(self, what: str) -> None:
        """Show what another page has led to; "" and what the page does not know leave it as it is."""

    def menu(self) -> QMenu | None:
        """A menu for the menu bar while the page is visible."""
        return None


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
