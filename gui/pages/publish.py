"""The Publish page: figures and tables of all pages, picked, made ready for their purpose and taken out."""

from attrs import evolve
from PySide6.QtCore import QDate
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from core import edits
from core.language import mark, tr
from core.publish.choices import MOST_ON_ONE, Pick, Publishing
from core.publish.rows import rows_of
from core.publish.sources import Sources
from core.report.pictures import Drawable
from core.results.values import Comparison
from core.study import Study
from gui.dialogs import notes
from gui.images import clipboard_data
from gui.locales import money_locale
from gui.look import S4, S16
from gui.pages.page import HOW, Page
from gui.picture_drag import DrawnDrag
from gui.publish.adding import PublishAdding
from gui.publish.files import PublishFiles, Saved
from gui.publish.giving import PublishGiving
from gui.publish.making import Desk
from gui.publish.purposes import FORMATS, advised_px, size_of
from gui.publish.shelving import (
    Drawer,
    Drawn,
    Finder,
    Shelved,
    is_asked_again,
    is_same_but_publishing,
    is_shelf_of,
    with_arranged,
)
from gui.session import Session
from gui.widgets.publish_bar import PublishBar
from gui.widgets.publish_body import PublishBody
from gui.widgets.sentence_top import SentenceTop

#: keys of the jobs
SHELF, PICTURE = "publish shelf", "publish picture"
_EMPTY = (
    mark("Nothing to publish yet"),
    mark(
        "Drop meter logs of two or more machines anywhere on this window, or open the "
        "demo from the File menu."
    ),
)


class PublishPage(Page):
    """Picks on the left, the picture in the middle, how it looks on the right."""

    title = mark("Publish")

    def __init__(self, session: Session, adding: PublishAdding, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("publish_page")
        self._session = session
        self._locale = money_locale()
        self._shelved: Shelved | None = None
        self._asked: tuple[object, ...] | None = None
        self._key = adding.newest
        self._drawn: Drawn | None = None
        self.top = SentenceTop()
        self.bar = PublishBar()
        self.message = QLabel()
        self.body = PublishBody()
        self.shelf, self.preview, self.form = self.body.shelf, self.body.preview, self.body.form
        self.files = PublishFiles(session.jobs, self)
        self.drag = DrawnDrag(self)
        self.giving = PublishGiving(session, self.body.whole, self.files, self)
        adding.added.connect(self._on_added)
        self._lay_out()
        self._connect()
        self._show_nothing(*_EMPTY)

    def _lay_out(self) -> None:
        self.message.setObjectName("publish_message")
        self.message.setProperty("role", "muted")
        self.message.setWordWrap(True)
        self.message.setContentsMargins(S16, 0, S16, 0)
        self._blank = QWidget()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        self.top.asked.connect(self._ask_where_it_is_shown)
        layout.addWidget(self.bar)
        layout.addWidget(self.message)
        layout.addWidget(self.body, 1)
        layout.addWidget(self._blank, 1)

    def _connect(self) -> None:
        self.shelf.ticked.connect(self._on_ticked)
        self.shelf.chosen.connect(self._on_chosen)
        self.form.wanted.connect(self._on_wanted)
        self.form.titled.connect(self._on_titled)
        self.form.left.connect(self._session.seal)
        self.form.refused.connect(self._say)
        self.bar.save.clicked.connect(self._on_save)
        self.bar.save_all.clicked.connect(self._on_save_all)
        self.bar.steps.clicked.connect(self._on_steps)
        self.bar.copy.clicked.connect(self._on_copy)
        self.bar.copy_words.clicked.connect(self._on_copy_words)
        self.bar.real_size.toggled.connect(self.body.set_real_size)
        self.bar.ending.activated.connect(self._show_entry)
        self.preview.copying.connect(self._on_copy)
        self.preview.pulled.connect(self._drag_out)
        self.files.saved.connect(self._on_saved)
        self.giving.refused.connect(self._say)
        self._session.opened.connect(self._on_opened)

    # showing

    @property
    def desk(self) -> Desk | None:
        """What lies ready; None while it is worked out."""
        if self._shelved is None:
            return None
        return Desk(self._shelved.sources, self._shelved.entries, self._session.study.publishing)

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show what there is to publish; it is worked out outside the GUI thread."""
        if comparison is None and (study.logs or study.typed):
            self._show_nothing(mark("Reading the logs…"), "")
            return
        if comparison is None or not comparison.machines:
            self._show_nothing(*_EMPTY)
            return
        log_ids = frozenset(self._session.traces)
        found = self._shelved
        if found is not None and is_shelf_of(found, study, comparison, log_ids):
            self._show_shelf()
            return
        self._session.jobs.start(SHELF, self._finding(study, comparison, log_ids), self._on_shelf)
        if found is None:
            self._show_nothing(mark("Putting figures on the shelf…"), "")

    def _finding(self, study: Study, comparison: Comparison, log_ids: frozenset[str]) -> Finder:
        drawable = Drawable(study, comparison, self._session.traces, self._session.activities)
        year, locale = QDate.currentDate().year(), self._locale
        return Finder(
            study, comparison, log_ids, Sources(drawable, year, locale, study.publishing.machine_ids)
        )

    def _on_shelf(self, found: Shelved) -> None:
        study = self._session.study
        if is_same_but_publishing(found.study, study):
            self._shelved = found
            self._show_shelf()

    def _show_nothing(self, sentence: str, said: str) -> None:
        for part in (self.bar, self.message, self.body):
            part.hide()
        self._blank.show()
        self.top.say(tr(sentence), tr(said))

    def _show_shelf(self) -> None:
        desk = self.desk
        assert desk is not None
        if not desk.entries:
            self._show_nothing(*_EMPTY)
            return
        self.bar.show()
        self.body.show()
        self.message.setVisible(bool(self.message.text()))
        self._blank.hide()
        arranged = [entry for entry in desk.picked if entry.key not in {e.key for e in desk.entries}]
        entries = with_arranged(desk.entries, arranged)
        if desk.entry(self._key) is None:
            first = (*desk.picked, *desk.entries)[0]
            self._key = first.key
        self.shelf.show_entries(entries, desk.publishing.keys, self._key)
        self._show_entry()

    def _show_entry(self) -> None:
        """The figure or table that is chosen: as a picture, or as a table."""
        desk = self.desk
        entry = None if desk is None else desk.entry(self._key)
        if desk is None or entry is None:
            return
        if entry.is_table:
            table = entry.table(desk.sources)
            if table is not None:
                self.body.show_table(table.shown, self._locale.decimal)
                self.top.say(table.title, self._what_is_picked(desk))
            self.form.show_study(self._session.study, "", "")
            self._show_state()
            return
        self.body.show_picture()
        self._show_state()
        asked = (desk.sources, desk.publishing, self._key)
        if self._asked is not None and self._drawn is not None and is_asked_again(asked, self._asked):
            self._show_words()
            return
        self._asked = asked
        self._session.jobs.start(PICTURE, Drawer(desk, self._key), self._on_drawn)

    def _on_drawn(self, drawn: Drawn) -> None:
        if drawn.key != self._key:
            return
        self._drawn = drawn
        words = "" if drawn.picture is None else drawn.picture.words.alt
        self.preview.show_image(drawn.image, words)
        self._show_words()
        self._show_state()

    def _show_words(self) -> None:
        """What belongs to the picture that is shown."""
        desk, drawn = self.desk, self._drawn
        if desk is None or drawn is None:
            return
        entry = desk.entry(self._key)
        own = "" if entry is None else desk.title_of(entry)
        if drawn.picture is None:
            self.top.say(tr("This figure has nothing to show for the machines that are chosen"), "")
            self.form.show_study(self._session.study, own, "")
            return
        words = drawn.picture.words
        self.body.words.setText(words.alt)
        figure_says = words.title
        self.top.say(words.title, self._what_is_picked(desk))
        self.form.show_study(self._session.study, own, figure_says)

    def _what_is_picked(self, desk: Desk) -> str:
        """The second line: purpose, size, text, and how much is picked."""
        publishing, drawn = desk.publishing, self._drawn
        parts = []
        if drawn is not None and drawn.picture is not None and drawn.key == self._key:
            width, height = size_of(publishing)
            text_px = drawn.picture.text_px
            purpose = tr(FORMATS[publishing.purpose].title).split(",")[0]
            parts.append(tr("{purpose}, {width} × {height} px", purpose=purpose, width=width, height=height))
            parts.append(tr("text of {text_px:.0f} px", text_px=text_px))
            if text_px < advised_px(publishing):
                parts.append(
                    tr("small for where it is read: show fewer machines, or say that it is read nearer")
                )
            if self.bar.chosen_ending == "svg":
                parts.append(tr("an SVG names the font of its text and does not hold it, a PDF holds it"))
        picks = len(desk.picked)
        figures = sum(not entry.is_table for entry in desk.picked)
        picked = (
            tr("{picks:pick|picks} of {entries}", picks=picks, entries=len(desk.entries))
            if picks
            else tr("nothing picked yet: tick what to publish")
        )
        parts.append(picked)
        if publishing.is_together and figures > MOST_ON_ONE:
            parts.append(tr("the first {most} figures share one picture", most=MOST_ON_ONE))
        said = "; ".join(parts)
        return f"{said[0].upper()}{said[1:]}."

    def _show_state(self) -> None:
        desk = self.desk
        entry = None if desk is None else desk.entry(self._key)
        is_table = entry is not None and entry.is_table
        has_picture = not is_table and self._drawn is not None and self._drawn.picture is not None
        picks = 0 if desk is None else len(desk.picked)
        self.bar.show_state(is_table=is_table, has_picture=has_picture, picks=picks)

    # what the user does

    def explain(self) -> None:
        notes.show_note(self, tr("Publish"), "publish")

    def _ask_where_it_is_shown(self) -> None:
        """The sentence is another page's: that page says how it was found."""
        entry = None if self.desk is None else self.desk.entry(self._key)
        if entry is not None:
            self.page_wanted.emit(entry.page, HOW)

    def _on_added(self, key: str) -> None:
        self._key = key

    def _on_ticked(self, key: str, on: bool) -> None:
        study = self._session.study
        if on and study.publishing.pick(key) is None:
            self._session.apply(edits.add_pick(study, Pick(key)))
        elif not on and study.publishing.pick(key) is not None:
            self._session.apply(edits.remove_pick(study, key))
        self._session.seal()

    def _on_chosen(self, key: str) -> None:
        if key != self._key:
            self._key = key
            self._say("")
            self._show_entry()

    def _on_wanted(self, publishing: Publishing, what: str) -> None:
        self._say("")
        was_together = self._session.study.publishing.is_together
        self._session.apply(edits.set_publishing(self._session.study, publishing, what))
        shared = [] if self.desk is None else [entry.key for entry in self.desk.together]
        if shared and not was_together and self._key not in shared:
            self._key = shared[0]  # what has just been put together is shown
        if what not in ("title", "note"):
            self._session.seal()

    def _on_titled(self, text: str) -> None:
        """A title of the user's own picks what it is the title of."""
        study, key = self._session.study, self._key
        publishing = study.publishing
        known = publishing.pick(key) or Pick(key)
        others = publishing.picks if publishing.pick(key) else (*publishing.picks, known)
        picks = tuple(evolve(p, title=text) if p.key == key else p for p in others)
        self._session.apply(edits.set_publishing(study, evolve(publishing, picks=picks), "title"))

    def _on_save(self) -> None:
        desk = self.desk
        entry = None if desk is None else desk.entry(self._key)
        if desk is None or entry is None:
            return
        if entry.is_table:
            self.files.ask_for_table(desk, self._key)
        else:
            self.files.ask_for_picture(desk, self._key, self.bar.chosen_ending, self.bar.chosen_ratio)

    def _on_save_all(self) -> None:
        if self.desk is not None:
            self.files.ask_for_all(self.desk, self.bar.chosen_ending, self.bar.chosen_ratio)

    def _on_steps(self) -> None:
        if self.desk is not None:
            self.files.ask_for_steps(self.desk, self._key, self.bar.chosen_ending, self.bar.chosen_ratio)

    def _on_copy(self) -> None:
        desk = self.desk
        if desk is None:
            return
        table = desk.table(self._key)
        if table is not None:
            data = clipboard_data(None, self.body.table.model.rows)
        else:
            figure = desk.figure(self._key)
            if figure is None or self.preview.image.isNull():
                return
            data = clipboard_data(self.preview.image, rows_of(figure))
        QGuiApplication.clipboard().setMimeData(data)
        self._say(tr("Copied the table") if table is not None else tr("Copied the picture and its numbers"))

    def _drag_out(self) -> None:
        if self._drawn is not None and self._drawn.picture is not None:
            self.drag.start(self.preview, self._drawn.picture, self._drawn.key)

    def _on_copy_words(self) -> None:
        if self._drawn is not None and self._drawn.picture is not None:
            QGuiApplication.clipboard().setText(self._drawn.picture.words.alt)
            self._say(tr("Copied what the picture shows in words"))

    def _on_saved(self, saved: Saved) -> None:
        self._say(saved.told)

    def _on_opened(self) -> None:
        self._shelved, self._drawn, self._asked, self._key = None, None, None, ""
        self.body.whole.close_bundle()
        self._say("")

    def _say(self, text: str) -> None:
        self.message.setText(text)
        self.message.setVisible(bool(text) and self.bar.isVisibleTo(self))
