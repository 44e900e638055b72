"""The Loads page: what each load takes by switch-on tests, and what of processing stays unexplained."""

from attrs import frozen
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QMenu,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from core import edits
from core.figures.loads import loads_figure
from core.figures.source import numbers_of
from core.progress import Progress
from core.results.load_answer import conditions, headline, idle_sentence
from core.results.loads import Loads, loads
from core.results.values import Comparison
from core.study import Study
from gui.charts.view import ChartView
from gui.dialogs import notes
from gui.images import clipboard_data, render
from gui.look import S4, S8, S12, S16
from gui.pages.compare import screen_locale
from gui.pages.page import Page, SentenceTop
from gui.session import Session
from gui.widgets.choice import Choice
from gui.widgets.load_form import LoadForm
from gui.widgets.picture_menu import PictureMenu

#: key of the job
LOADS = "loads"


@frozen(eq=False)
class _Found:
    """The loads with what they are of."""

    study: Study
    comparison: Comparison | None
    log_ids: frozenset[str]
    loads: Loads


class LoadsPage(Page):
    """Switch-on tests, and what follows from them."""

    title = "Loads"
    icon = "loads"

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("loads_page")
        self._session = session
        self._locale = screen_locale()
        self._found: _Found | None = None
        self._machine_id = ""
        self.top = SentenceTop()
        self.machine = Choice("loads_machine", "Machine whose steps are named")
        self.message = QLabel()
        self.rows = ChartView("loads")
        self.rows.setAccessibleName("Loads: one row a machine, one column a load")
        self.idle = QLabel()
        self.form = LoadForm(self._locale)
        self.pictures = PictureMenu({"Loads": self.rows}, self)
        self._lay_out()
        self._connect()
        self._show_nothing("Reading the logs…", "")

    def _lay_out(self) -> None:
        self.idle.setObjectName("idle_sentence")
        self.idle.setWordWrap(True)
        self.message.setObjectName("message")
        self.message.setProperty("role", "muted")
        inner = QWidget()
        content = QVBoxLayout(inner)
        content.setContentsMargins(S16, S4, S16, S12)
        content.setSpacing(S12)
        content.addWidget(_card(self.rows))
        content.addWidget(self.idle)
        content.addWidget(_card(self.form))
        content.addStretch(1)
        self._scroll = QScrollArea()
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._scroll.setWidget(inner)
        self._bar = self._action_row()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        layout.addWidget(self._bar)
        layout.addWidget(self._scroll, 1)
        self._filler = QWidget()
        layout.addWidget(self._filler, 1)

    def _action_row(self) -> QWidget:
        bar = QWidget()
        row = QHBoxLayout(bar)
        row.setContentsMargins(S16, 0, S16, 0)
        row.setSpacing(S8)
        label = QLabel("&Machine:")
        label.setBuddy(self.machine)
        self._how = QPushButton("&How is this found?")
        self._how.setObjectName("how_found")
        self._how.setProperty("role", "link")
        self._save = QPushButton("&Save picture")
        self._save.setObjectName("save_picture")
        self._save.setMenu(self.pictures.menu)
        self._copy = QPushButton("Cop&y")
        self._copy.setObjectName("copy")
        for widget in (label, self.machine, self._how):
            row.addWidget(widget)
        row.addWidget(self.message, 1)
        row.addWidget(self._save)
        row.addWidget(self._copy)
        return bar

    def _connect(self) -> None:
        self.machine.activated.connect(self._on_machine)
        self.form.named.connect(self._on_named)
        self.form.idle_set.connect(self._on_idle)
        self.rows.asked.connect(self._on_asked)
        self.rows.copying.connect(self._copy_picture)
        self._copy.clicked.connect(self._copy_picture)
        self.pictures.copying.connect(self._copy_picture)
        self.pictures.told.connect(self.message.setText)
        self._how.clicked.connect(self.explain)
        self._session.opened.connect(self._on_opened)

    # showing

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study; its loads are found where that does not hold up the window."""
        traces = self._session.traces
        log_ids = frozenset(traces)
        found = self._found
        if (
            found is not None
            and found.study is study
            and found.comparison is comparison
            and found.log_ids == log_ids
        ):
            self._show_found()
            return

        def work(progress: Progress) -> _Found:
            progress(0.0, "reading switch-on tests")
            return _Found(study, comparison, log_ids, loads(study, traces, comparison))

        self._session.jobs.start(LOADS, work, self._on_found)

    def explain(self) -> None:
        notes.show_note(self, "Loads", "loads")

    def menu(self) -> QMenu:
        """Saving pictures."""
        return self.pictures.menu

    def _on_found(self, found: _Found) -> None:
        if found.study is self._session.study:
            self._found = found
            self._show_found()

    def _show_nothing(self, sentence: str, conditions_text: str) -> None:
        self._bar.hide()
        self._scroll.hide()
        self._filler.show()
        self.top.say(sentence, conditions_text)

    def _show_found(self) -> None:
        assert self._found is not None
        study, found = self._found.study, self._found.loads
        if len(self._found.log_ids) < len(study.logs):
            self._show_nothing("Reading the logs…", "")
            return
        if not found.tested:
            self._show_nothing(headline(found, "", self._locale), conditions(found, study, self._locale))
            return
        if self._machine_id not in {m.machine_id for m in found.tested}:
            self._machine_id = found.tested[0].machine_id
        self.machine.fill([(m.name, m.machine_id) for m in found.tested], self._machine_id)
        self._bar.show()
        self._scroll.show()
        self._filler.hide()
        self._show_machine()

    def _show_machine(self) -> None:
        """What belongs to the chosen machine."""
        assert self._found is not None
        study, found = self._found.study, self._found.loads
        machine = next(m for m in found.tested if m.machine_id == self._machine_id)
        self.top.say(headline(found, self._machine_id, self._locale), conditions(found, study, self._locale))
        figure = loads_figure(found, study, self._machine_id, self._locale)
        self.rows.show_figure(figure, lambda run_id, key: ())
        said = idle_sentence(machine, self._locale)
        self.idle.setText(said)
        self.idle.setVisible(bool(said))
        self.form.show_machine(machine)

    # what the user does

    def _on_opened(self) -> None:
        self._found, self._machine_id = None, ""
        self.message.setText("")

    def _on_machine(self) -> None:
        self._machine_id = str(self.machine.currentData())
        if self._found is not None:
            self._show_machine()

    def _on_named(self, log_id: str, at_s: float, load: str | None) -> None:
        self._session.apply(edits.name_step(self._session.study, log_id, at_s, load))

    def _on_idle(self, load: str, is_idle: bool) -> None:
        self._session.apply(edits.set_load_idle(self._session.study, self._machine_id, load, is_idle))

    def _on_asked(self, machine_id: str, run_id: str, key: str) -> None:
        self.explain()

    def _copy_picture(self) -> None:
        if self.rows.figure is None:
            return
        image = render(
            self.rows.figure,
            self.pictures.shown_size(self.rows),
            self.rows.look,
            self.pictures.frame,
            ratio=2.0,
        )
        lines = [(clause,) for clause in numbers_of(self.rows.figure).split("; ")]
        QGuiApplication.clipboard().setMimeData(clipboard_data(image, lines))
        self.message.setText("Copied the picture and its numbers")


def _card(view: QWidget) -> QFrame:
    card = QFrame()
    card.setObjectName("card")
    layout = QVBoxLayout(card)
    layout.setContentsMargins(1, 1, 1, 1)
    layout.addWidget(view)
    return card
