"""What every page is: shown a study and a comparison, asks for edits, keeps nothing of its own."""

from attrs import frozen
from PySide6.QtCore import Signal
from PySide6.QtWidgets import QMenu, QWidget

from core.language import tr
from core.results.values import Comparison
from core.study import Study
from gui.dialogs import notes


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


#: another page is to say how the sentence on top of it was found
HOW = "how"


class Page(QWidget):
    """Base of the pages. Only the visible page is fed; a page that becomes visible is fed at once."""

    #: name in the page list
    title = ""
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

    def come_to(self, what: str) -> None:
        """Be led to from another page: turn to what it names, or say how the sentence on top was found."""
        if what == HOW:
            self.explain()
        else:
            self.turn_to(what)

    def turn_to(self, what: str) -> None:
        """Show what another page has led to; "" and what the page does not know leave it as it is."""

    def menu(self) -> QMenu | None:
        """A menu for the menu bar while the page is visible."""
        return None
