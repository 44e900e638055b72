"""The Publish page: figures and tables of all pages, picked, made ready for their purpose and taken out."""

from PySide6.QtWidgets import QVBoxLayout, QWidget

from core.results.values import Comparison
from core.study import Study
from gui.look import S4
from gui.pages.page import Page, SentenceTop
from gui.session import Session

_EMPTY = (
    "Nothing to publish yet",
    "Drop meter logs of two or more machines anywhere on this window, or open the demo from the File menu.",
)


class PublishPage(Page):
    """Picks on the left, the picture in the middle, how it looks on the right."""

    title = "Publish"
    icon = "publish"

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("publish_page")
        self._session = session
        self.top = SentenceTop()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        layout.addStretch(1)
        self.top.say(*_EMPTY)

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show what there is to publish of a study."""
        if comparison is None or not comparison.machines:
            self.top.say(*_EMPTY)
        else:
            self.top.say(comparison.headline, comparison.conditions)
