"""Charts of other pages, added to what is published as they are shown there."""

from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QDate, QObject, Signal
from PySide6.QtWidgets import QWidget

from core import edits
from core.language import tr
from core.progress import Progress
from core.publish.choices import Pick
from gui.locales import money_locale
from gui.session import Session

if TYPE_CHECKING:
    from core.figures.values import Figure
    from gui.widgets.picture_menu import PictureMenu

#: key of the job
ADD = "add to publish"
AnyPage = TypeVar("AnyPage", bound=QWidget)


class PublishAdding(QObject):
    """Hears the picture menus of the pages, and picks what they name.

    It is there from the start, the Publish page only once it is turned to: what shelves and picture menus
    need is loaded at their first use.
    """

    added = Signal(str)  # key

    def __init__(self, session: Session, parent: QObject) -> None:
        super().__init__(parent)
        self._session = session
        self._newest = ""
        session.opened.connect(self._on_opened)

    @property
    def newest(self) -> str:
        """Key of what was added last to the open study; empty before anything was."""
        return self._newest

    def heard(self, page: AnyPage) -> AnyPage:
        """Let the charts of a page be added to what is published."""
        from gui.widgets.picture_menu import PictureMenu

        for pictures in page.findChildren(PictureMenu):
            pictures.adding.connect(self._on_adding)
        return page

    def _on_opened(self) -> None:
        self._newest = ""

    def _on_adding(self, view: str, figure: "Figure") -> None:
        from core.figures.line_up_values import LineUpFigure
        from core.publish.shelf import key_for, shelf
        from core.publish.sources import Sources
        from core.report.pictures import Drawable
        from gui.publish.shelving import line_up_pick
        from gui.widgets.picture_menu import PictureMenu

        menu, study, comparison = self.sender(), self._session.study, self._session.comparison
        if comparison is None or not isinstance(menu, PictureMenu):
            return
        if isinstance(figure, LineUpFigure):
            self._add(line_up_pick(figure, study.publishing), menu)
            return
        drawable = Drawable(study, comparison, self._session.traces, self._session.activities)
        sources = Sources(drawable, QDate.currentDate().year(), money_locale())

        def work(progress: Progress) -> str | None:
            progress(0.0, tr("looking the chart up"))
            return key_for(view, figure, shelf(sources), sources)

        def done(key: str | None) -> None:
            if key is None:
                menu.told.emit(tr("This chart cannot be published; save its picture instead."))
            else:
                self._add(Pick(key), menu)

        self._session.jobs.start(ADD, work, done)

    def _add(self, pick: Pick, menu: "PictureMenu") -> None:
        study = self._session.study
        known = study.publishing.pick(pick.key)
        if known is None or known.line_up != pick.line_up:
            self._session.apply(edits.add_pick(study, pick))
            self._session.seal()
        self._newest = pick.key
        self.added.emit(pick.key)
        menu.told.emit(tr("Added to the Publish page"))
