"""The pages one over another: each is made when it is first wanted, or ahead in an idle moment, and kept."""

from collections.abc import Callable, Iterator, Sequence

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QStackedWidget, QWidget

from gui.pages.contents import Entry
from gui.pages.page import Page

#: the window's turn between two pages that are made ahead [ms]
_PAUSE_MS = 50


class PageStack(QStackedWidget):
    """Shows one page, or what is seen before there is anything to show on one."""

    made = Signal(object)  # Page

    def __init__(self, entries: Sequence[Entry], before: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.entries = tuple(entries)
        self._pages: dict[int, Page] = {}
        self._before = before
        self.addWidget(before)
        self._is_idle: Callable[[], bool] = lambda: False
        self._ahead = QTimer(self)
        self._ahead.setInterval(_PAUSE_MS)
        self._ahead.timeout.connect(self._make_next)

    @property
    def titles(self) -> tuple[str, ...]:
        """Titles of all pages, made or not, in their order."""
        return tuple(entry.title for entry in self.entries)

    @property
    def shown(self) -> Page | None:
        """The page that is seen; None while it is what comes before them."""
        widget = self.currentWidget()
        return widget if isinstance(widget, Page) else None

    def page(self, index: int) -> Page:
        """A page by its place, which makes it if need be."""
        if index not in self._pages:
            page = self._pages[index] = self.entries[index].make()
            self.addWidget(page)
            self.made.emit(page)
        return self._pages[index]

    def show_page(self, index: int) -> Page:
        """Have a page seen."""
        page = self.page(index)
        self.setCurrentWidget(page)
        return page

    def show_before(self) -> None:
        """Have no page seen."""
        self.setCurrentWidget(self._before)

    def make_ahead(self, is_idle: Callable[[], bool]) -> None:
        """Make the pages that nobody has turned to yet, one after another, whenever `is_idle` says so."""
        self._is_idle = is_idle
        self._ahead.start()

    @property
    def is_making(self) -> bool:
        """Whether pages are still to be made ahead."""
        return self._ahead.isActive()

    def _make_next(self) -> None:
        index = next((i for i in range(len(self.entries)) if i not in self._pages), None)
        if index is None or not self.isVisible():  # all are there, or the window is being closed
            self._ahead.stop()
        elif self._is_idle():
            self.page(index)

    def made_pages(self) -> Iterator[Page]:
        """The pages that there are already."""
        yield from self._pages.values()
