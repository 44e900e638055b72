"""The window: page list, page stack, menus, problem strip, progress strip; no words of the domain."""

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QTimer, Slot
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDragLeaveEvent, QDropEvent
from PySide6.QtWidgets import QHBoxLayout, QMainWindow, QVBoxLayout, QWidget

from core import edits
from core.language import tr
from core.results.values import Comparison
from gui import look
from gui.actions import draw_icons, fill_menus, make_actions
from gui.appearance import Appearance
from gui.diagnostics import diagnostics
from gui.dialogs import notes
from gui.jobs import Failure, Jobs
from gui.pages.contents import Entry
from gui.pages.page import Page
from gui.pages.stack import PageStack
from gui.session import READ_FILES, READ_LOGS, Session
from gui.settings import Settings
from gui.study_files import STUDY_SUFFIX, StudyFiles
from gui.view_settings import ViewSettings
from gui.widgets.language_menu import LanguageMenu
from gui.widgets.page_menu import PageMenu
from gui.widgets.problem_list import ProblemList
from gui.widgets.progress_strip import ProgressStrip
from gui.widgets.side import Side
from gui.widgets.welcome import DropHint, Welcome


class MainWindow(QMainWindow):
    """Holds the pages and turns what the user asks of the window into calls of the session."""

    def __init__(
        self,
        session: Session,
        jobs: Jobs,
        settings: Settings,
        appearance: Appearance,
        entries: Sequence[Entry],
    ) -> None:
        super().__init__()
        self.setObjectName("main_window")
        self.setWindowTitle("Samepart")
        self.setAcceptDrops(True)
        self.resize(1280, 820)
        self._session, self._jobs, self._settings, self._appearance = session, jobs, settings, appearance
        self._lands_after_import = False
        self._is_typing, self._shown_id = False, ""
        self._welcome = Welcome()
        self._stack = PageStack(entries, self._welcome)
        self._side = Side(self._stack.titles)
        self._problems = ProblemList()
        self._progress = ProgressStrip()
        self._drop_hint = DropHint(self)
        self._files = StudyFiles(session, settings, self)
        self._view = ViewSettings(settings, appearance, self)
        self._actions = make_actions(self, self._does())
        self._page_menu = PageMenu(self._stack.titles, self)
        self._build_menus()
        self._lay_out()
        self._connect()
        # Several changes of one turn of the event loop are one refresh.
        self._refresh_timer = QTimer(self)
        self._refresh_timer.setSingleShot(True)
        self._refresh_timer.setInterval(0)
        self._refresh_timer.timeout.connect(self._refresh)
        if not settings.geometry.isEmpty():
            self.restoreGeometry(settings.geometry)
        self._on_opened()
        self._side.take_focus()

    @property
    def page(self) -> Page | None:
        """The visible page; None while the window says what to drop."""
        return self._stack.shown

    @property
    def titles(self) -> tuple[str, ...]:
        """Titles of all pages, in the order of the list."""
        return self._stack.titles

    @property
    def is_busy(self) -> bool:
        """Whether something is being read or computed, or is about to be shown."""
        return bool(self._jobs.running) or self._refresh_timer.isActive()

    def show_page(self, title: str) -> None:
        """Turn to a page."""
        index = self.titles.index(title)
        self._side.set_current(index)
        self._turn_to(index)

    def make_pages_ahead(self) -> None:
        """Make all pages while nothing else goes on, so that none is waited for when it is turned to."""
        self._stack.make_ahead(lambda: not self.is_busy)

    @property
    def is_making_pages(self) -> bool:
        """Whether pages are still to be made ahead."""
        return self._stack.is_making

    @Slot(str, str)
    def _lead(self, title: str, what: str) -> None:
        """Turn to the page that another one leads to."""
        self.show_page(title)
        self._stack.page(self._index).come_to(what)

    # what the user does

    def add_paths(self, paths: Sequence[Path]) -> None:
        """Open studies and bundles, take in filled run sheets, and read everything else as logs."""
        if self._files.open_bundle_among(paths):
            return
        studies = [path for path in paths if path.suffix.lower() == STUDY_SUFFIX and path.is_file()]
        others = [path for path in paths if path not in studies]
        if studies:
            self._session.open(studies[0])
        logs = self._files.besides_sheets(others)
        if logs:
            self._session.add_logs(logs)
        if logs or self.page is None:
            self._lands_after_import = True
            self._queue_refresh()
        self._files.read_sheets(path for path in others if path not in logs)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        is_ours = event.source() is not None  # a picture on its way out
        if not is_ours and any(url.isLocalFile() for url in event.mimeData().urls()):
            event.acceptProposedAction()
            self._drop_hint.show_over(self._stack)

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        self._drop_hint.hide()

    def dropEvent(self, event: QDropEvent) -> None:
        paths = [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
        event.acceptProposedAction()
        self._drop_hint.hide()
        self.add_paths(paths)

    def closeEvent(self, event: QCloseEvent) -> None:
        self._settings.geometry = self.saveGeometry()
        self.hide()  # a job may need seconds until it can stop; nobody should have to look at that
        self._settings.sync()
        self._jobs.close()
        self._session.close()
        super().closeEvent(event)

    @Slot()
    def open_demo(self) -> None:
        """Open the demo study and land on its comparison."""
        self._lands_after_import = True
        self._session.open_demo()

    @Slot()
    def _type_readings(self) -> None:
        self._begin("Logs", "typed")

    @Slot(str, str)
    def _begin(self, title: str, what: str) -> None:
        """Turn to a page though nothing has been measured yet."""
        self._is_typing, self._lands_after_import = True, False
        self._lead(title, what)

    @Slot()
    def _explain(self) -> None:
        if self.page is not None:
            self.page.explain()

    @Slot()
    def _tell_purpose(self) -> None:
        if self.page is not None:
            self.page.tell_purpose()
        else:
            self._show_about()

    @Slot()
    def _show_keys(self) -> None:
        notes.show_note(self, tr("Keys"), "keys")

    @Slot()
    def _show_cautions(self) -> None:
        notes.show_note(self, tr("Cautions"), "cautions")

    @Slot()
    def _show_diagnostics(self) -> None:
        words = tr(
            "For whoever mends a fault: versions and sizes. No name, path or number of yours is in it."
        )
        notes.show_text(self, tr("Diagnostics"), words, diagnostics(self._session, self._settings))

    @Slot()
    def _show_about(self) -> None:
        notes.show_note(self, tr("About Samepart"), "about")

    @Slot(str)
    def _rename_study(self, name: str) -> None:
        if name.strip():
            self._session.apply(edits.rename_study(self._session.study, name))
            self._session.seal()
        else:
            self._queue_refresh()

    @Slot(str)
    def _rename_part(self, name: str) -> None:
        self._session.apply(edits.rename_part(self._session.study, name))
        self._session.seal()

    @Slot(object)
    def _set_bed(self, bed_c: float | None) -> None:
        self._session.apply(edits.set_bed_c(self._session.study, bed_c))

    @Slot(object)
    def _set_room(self, room_c: float | None) -> None:
        self._session.apply(edits.set_room_c(self._session.study, room_c))

    # what happens

    def _on_opened(self) -> None:
        path = None if self._session.is_untitled else self._session.path
        if self._session.file is not None:
            self._settings.last_study = path
        if path is not None:
            self._settings.add_recent(path)
        self._files.fill_recent()
        shown_before, self._shown_id = self._shown_id, self._session.study.id
        self._queue_refresh()
        if shown_before != self._shown_id:  # else it was saved under a name: the page stays
            self._is_typing = False
            self.show_page(self.titles[self._best_page()])

    def _on_imported(self, count: int) -> None:
        self._lands_after_import = self._lands_after_import and count > 0

    def _on_compared(self, comparison: Comparison) -> None:
        is_reading = self._jobs.is_running(READ_FILES) or self._jobs.is_running(READ_LOGS)
        if self._lands_after_import and not is_reading:
            self._lands_after_import = False
            with_runs = sum(bool(machine.included) for machine in comparison.machines)
            self.show_page("Compare" if with_runs > 1 else "Logs")
        self._queue_refresh()

    def _on_ended(self, key: str) -> None:
        self._progress.end(key)
        if self.page is None:  # a read that was given up, or found nothing
            self._queue_refresh()

    def _on_failure(self, failure: Failure) -> None:
        self._lands_after_import = False
        self._queue_refresh()
        notes.show_failure(self, failure)

    def _on_problems(self) -> None:
        self._problems.show_problems(self._session.problems)

    def _queue_refresh(self) -> None:
        self._refresh_timer.start()

    def _refresh(self) -> None:
        """Show the study as it is: in the frame, and on the visible page only."""
        study = self._session.study
        path = self._session.path
        is_untitled = self._session.is_untitled
        place = tr("Kept by the program until you save it under a name") if is_untitled else str(path)
        self._side.show_study(study, self._session.is_read_only, place)
        self.setWindowTitle(f"{study.name} - Samepart")
        self._show_history()
        for index, entry in enumerate(self._stack.entries):
            badge = entry.badge(self._session.comparison)
            self._side.set_badge(index, badge.signs, badge.meaning)
        has_something = bool(study.logs or study.typed or study.machines) or self._is_typing
        if has_something and self._lands_after_import and self.page is None:
            return  # the first page to be seen is the one to land on, once it is known
        self._welcome.set_reading(self._jobs.is_running(READ_FILES))
        if has_something:
            self._stack.show_page(self._index)
        else:
            self._stack.show_before()
        page = self.page
        for each in self._stack.made_pages():
            menu = each.menu()
            if menu is not None:
                menu.menuAction().setVisible(each is page)
        if page is not None:
            page.show_study(study, self._session.comparison)

    def _show_history(self) -> None:
        history = self._session.history
        for name, label in (("undo", history.undo_label), ("redo", history.redo_label)):
            word = tr("&Undo") if name == "undo" else tr("&Redo")
            self._actions[name].setText(tr("{word}: {label}", word=word, label=label) if label else word)
            self._actions[name].setEnabled(label is not None and not self._session.is_read_only)

    def _turn_to(self, index: int) -> None:
        self._index = index
        self._queue_refresh()

    def _best_page(self) -> int:
        several = sum(bool(self._session.study.logs_of(m.id)) for m in self._session.study.machines) > 1
        return self.titles.index("Compare") if several else 0

    def _on_look(self) -> None:
        draw_icons(self._actions, look.current())
        self._queue_refresh()

    # how it is built

    def _does(self) -> dict[str, Callable[[], object]]:
        return {
            "new": self._session.new_study,
            "open": self._files.open_study,
            "add": self._files.add_logs,
            "add_folder": self._files.add_folder,
            "save_as": self._files.save_as,
            "save_copy": self._files.save_copy,
            "demo": self.open_demo,
            "type": self._type_readings,
            "quit": self.close,
            "undo": self._session.undo,
            "redo": self._session.redo,
            "larger": self._view.larger,
            "smaller": self._view.smaller,
            "normal": self._view.normal,
            "explain": self._explain,
            "page_help": self._tell_purpose,
            "keys": self._show_keys,
            "cautions": self._show_cautions,
            "diagnostics": self._show_diagnostics,
            "about": self._show_about,
        }

    def _build_menus(self) -> None:
        given = {
            "<recent>": self._files.recent_menu,
            "<theme>": self._view.theme_menu,
            "<language>": LanguageMenu(self._settings, self),
            "<pages>": self._page_menu,
        }
        self._view_menu = fill_menus(self.menuBar(), self._actions, given)["View"]

    @Slot(object)
    def _on_made(self, page: Page) -> None:
        page.page_wanted.connect(self._lead)
        menu = page.menu()
        if menu is not None:
            self.menuBar().insertMenu(self._view_menu.menuAction(), menu)
            menu.menuAction().setVisible(page is self.page)  # most are made ahead of being turned to

    def _lay_out(self) -> None:
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._stack, 1)
        column.addWidget(self._problems)
        column.addWidget(self._progress)
        body = QWidget()
        row = QHBoxLayout(body)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self._side)
        row.addWidget(right, 1)
        self.setCentralWidget(body)

    def _connect(self) -> None:
        session, jobs = self._session, self._jobs
        self._side.page_chosen.connect(self._turn_to)
        self._page_menu.chosen.connect(self._side.set_current)
        self._stack.made.connect(self._on_made)
        self._side.study_renamed.connect(self._rename_study)
        self._side.part_renamed.connect(self._rename_part)
        self._side.bed_set.connect(self._set_bed)
        self._side.room_set.connect(self._set_room)
        self._side.field_left.connect(session.seal)
        self._welcome.add_wanted.connect(self._files.add_logs)
        self._files.logs_chosen.connect(self.add_paths)
        self._welcome.demo_wanted.connect(self.open_demo)
        self._welcome.typed_wanted.connect(self._type_readings)
        self._welcome.page_wanted.connect(self._begin)
        self._problems.put_away.connect(session.put_problems_away)
        self._progress.cancelled.connect(jobs.cancel)
        jobs.progressed.connect(self._progress.tell)
        jobs.ended.connect(self._on_ended)
        jobs.failed.connect(self._on_failure)
        session.changed.connect(self._queue_refresh)
        session.logs_read.connect(self._queue_refresh)
        session.compared.connect(self._on_compared)
        session.imported.connect(self._on_imported)
        session.problems_changed.connect(self._on_problems)
        session.opened.connect(self._on_opened)
        self._appearance.changed.connect(self._on_look)
        draw_icons(self._actions, look.current())
        self._on_problems()
