"""Charts of other pages, added to what is published as they are shown there."""

from collections.abc import Iterable

from PySide6.QtCore import QDate, QObject, Signal
from PySide6.QtWidgets import QWidget

from core import edits
from core.figures.line_up_values import LineUpFigure
from core.figures.values import Figure
from core.formatting import NumberLocale
from core.progress import Progress
from core.publish.choices import Pick
from core.publish.shelf import key_for, shelf
from core.publish.sources import Sources
from core.report.pictures import Drawable
from gui.publish.shelving import line_up_pick
from gui.session import Session
from gui.widgets.picture_menu import PictureMenu

#: key of the job
ADD = "add to publish"


class PublishAdding(QObject):
    """Hears the picture menus of the pages, and picks what they name."""

    added = Signal(str)  # key

    def __init__(self, session: Session, locale: NumberLocale, parent: QObject) -> None:
        super().__init__(parent)
        self._session, self._locale = session, locale

    def take_from(self, pages: Iterable[QWidget]) -> None:
        """Let charts of other pages be added to what is published."""
        for page in pages:
            for pictures in page.findChildren(PictureMenu):
                pictures.adding.connect(self._on_adding)

    def _on_adding(self, view: str, figure: Figure) -> None:
        menu, study, comparison = self.sender(), self._session.study, self._session.comparison
        if comparison is None or not isinstance(menu, PictureMenu):
            return
        if isinstance(figure, LineUpFigure):
            self._add(line_up_pick(figure, study.publishing), menu)
            return
        drawable = Drawable(study, comparison, self._session.traces, self._session.activities)
        sources = Sources(drawable, QDate.currentDate().year(), self._locale)

        def work(progress: Progress) -> str | None:
            progress(0.0, "looking the chart up")
            return key_for(view, figure, shelf(sources), sources)

        def done(key: str | None) -> None:
            if key is None:
                menu.told.emit("This chart cannot be published; save its picture instead.")
            else:
                self._add(Pick(key), menu)

        self._session.jobs.start(ADD, work, done)

    def _add(self, pick: Pick, menu: PictureMenu) -> None:
        study = self._session.study
        known = study.publishing.pick(pick.key)
        if known is None or known.line_up != pick.line_up:
            self._session.apply(edits.add_pick(study, pick))
            self._session.seal()
        self.added.emit(pick.key)
        menu.told.emit("Added to the Publish page")
