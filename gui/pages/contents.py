"""The pages of the window in their order, each loaded and made when it is first turned to.

Theory of operation: to load and make all pages takes longer than all else at the start, and only one of them
is seen. What must be known of a page before there is one, its title and its badge, is kept here.
"""

from collections.abc import Callable

from attrs import frozen

from core.language import mark
from core.results.values import Comparison
from gui.pages.page import Badge, Page
from gui.publish.adding import PublishAdding
from gui.session import Session
from gui.settings import Settings


def _none(comparison: Comparison | None) -> Badge:
    return Badge()


@frozen(eq=False)
class Entry:
    """A page before there is one: its title, what makes it, and its badge in the list of pages."""

    title: str
    make: Callable[[], Page]
    badge: Callable[[Comparison | None], Badge] = _none


class Contents:
    """Makes the pages of one window; they share the session, and what is added to the Publish page."""

    def __init__(self, session: Session, settings: Settings) -> None:
        self._session, self._settings = session, settings
        self._adding = PublishAdding(session, session)

    @property
    def entries(self) -> tuple[Entry, ...]:
        """All pages, in their order."""
        return (
            Entry(mark("Logs"), self._logs),
            Entry(mark("Line-up"), self._line_up),
            Entry(mark("Compare"), self._compare),
            Entry(mark("Bed"), self._bed),
            Entry(mark("Loads"), self._loads),
            Entry(mark("Standby and cost"), self._standby_cost),
            Entry(mark("Fairness"), self._fairness, _open_findings),
            Entry(mark("Publish"), self._publish),
        )

    # Pages are imported where they are made: that is what this file is for.

    def _logs(self) -> Page:
        from gui.pages.logs import LogsPage

        return LogsPage(self._session, self._settings)

    def _line_up(self) -> Page:
        from gui.pages.line_up import LineUpPage

        return self._adding.heard(LineUpPage(self._session))

    def _compare(self) -> Page:
        from gui.pages.compare import ComparePage

        return self._adding.heard(ComparePage(self._session))

    def _bed(self) -> Page:
        from gui.pages.bed import BedPage

        return self._adding.heard(BedPage(self._session))

    def _loads(self) -> Page:
        from gui.pages.loads import LoadsPage

        return self._adding.heard(LoadsPage(self._session))

    def _standby_cost(self) -> Page:
        from gui.pages.standby_cost import StandbyCostPage

        return self._adding.heard(StandbyCostPage(self._session))

    def _fairness(self) -> Page:
        from gui.pages.fairness import FairnessPage

        return self._adding.heard(FairnessPage(self._session))

    def _publish(self) -> Page:
        from gui.pages.publish import PublishPage

        return PublishPage(self._session, self._adding)


def _open_findings(comparison: Comparison | None) -> Badge:
    if comparison is None or not comparison.open_findings:
        return Badge()
    from core.results.fairness_answer import counted

    return Badge(str(len(comparison.open_findings)), counted(comparison.open_findings))
