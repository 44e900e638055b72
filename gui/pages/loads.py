"""The Loads page: what each load takes by switch-on tests, and what of processing stays unexplained."""

from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QMenu, QVBoxLayout, QWidget

from core import edits
from core.figures.loads import loads_figure, value_readout
from core.figures.source import numbers_of
from core.figures.staircase import staircase_figure, step_id
from core.found.load_parts import IDLE, REST, STEP, SUM
from core.found.loads import load_found
from core.language import mark, tr
from core.results.load_answer import ambiguous, conditions, headline, idle_sentence, step_readout
from core.results.load_naming import LoadStep
from core.results.loads import Loads, MachineLoads, loads
from core.results.values import Comparison
from core.study import Study
from gui.charts.view import ChartView
from gui.locales import screen_locale
from gui.look import S4, S8, S16
from gui.pages.page import Page
from gui.pages.worked_out import Found, Source, WorkedOut
from gui.picture_drag import PictureDrag
from gui.session import Session
from gui.widgets.action_buttons import copy_button, link_button, save_button, told_label
from gui.widgets.asking import AskingLabel
from gui.widgets.choice import Choice
from gui.widgets.flow import Flow, labelled
from gui.widgets.found_frame import FoundFrame
from gui.widgets.found_panel import FoundPanel
from gui.widgets.load_form import LoadForm
from gui.widgets.page_scroll import PageScroll
from gui.widgets.picture_menu import PictureMenu
from gui.widgets.sentence_top import SentenceTop
from gui.widgets.titled_card import bare_card, plain_card, tell

#: key of the job
LOADS = "loads"


class LoadsPage(Page):
    """Switch-on tests, and what follows from them."""

    title = mark("Loads")

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("loads_page")
        self._session = session
        self._locale = screen_locale()
        self._loads = WorkedOut[Loads](session, LOADS, tr("reading switch-on tests"), self._show_found)
        self._machine_id = ""
        self.top = SentenceTop()
        self.machine = Choice("loads_machine", tr("Machine whose steps are named"))
        self.message = told_label()
        self.rows = ChartView("loads")
        self.rows.setAccessibleName(tr("Loads: one row a machine, one column a load"))
        self.stairs = ChartView("load_steps")
        self.stairs.setAccessibleName(tr("The switch-on test over time, with its steps"))
        self.test = Choice("load_test", tr("Which of the machine's switch-on tests is shown"))
        self.idle, self.unsure = AskingLabel(), QLabel()
        self.form = LoadForm(self._locale)
        self.found = FoundPanel()
        self.pictures = PictureMenu({mark("Loads"): self.rows, mark("Switch-on test"): self.stairs}, self)
        self.drag = PictureDrag(self.pictures, self)
        self._asked: tuple[str, str] | None = None
        self._lay_out()
        self._connect()
        self._show_nothing(tr("Reading the logs…"), "")

    def _lay_out(self) -> None:
        self.idle.setObjectName("idle_sentence")
        self.unsure.setObjectName("unsure_sentence")
        self.unsure.setWordWrap(True)
        self.message.setWordWrap(True)
        self._scroll = PageScroll("loads_scroll", is_fitted=False)
        content = self._scroll.column
        content.addWidget(bare_card(self.rows))
        content.addWidget(self.idle)
        content.addWidget(bare_card(self.stairs))
        content.addWidget(self.unsure)
        content.addWidget(plain_card(self.form))
        content.addStretch(1)
        self._bar = self._action_row()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        layout.addWidget(self._bar)
        self._frame = FoundFrame(self._scroll, self.found)
        layout.addWidget(self._frame, 1)
        self._filler = QWidget()
        layout.addWidget(self._filler, 1)

    def _action_row(self) -> QWidget:
        bar, controls = QWidget(), QWidget()
        tip = tr("How loads are measured; for a value click on it")
        self._how = link_button("how_found", tr("How is this found?"), tip)
        self._save = save_button(menu=self.pictures.menu)
        self._copy = copy_button()
        self._of_test = labelled(tr("&Test:"), self.test)
        row = Flow(controls, S8)
        for widget in (
            labelled(tr("&Machine:"), self.machine),
            self._of_test,
            self._how,
            self._save,
            self._copy,
        ):
            row.addWidget(widget)
        layout = QVBoxLayout(bar)
        layout.setContentsMargins(S16, 0, S16, 0)
        layout.setSpacing(S4)
        layout.addWidget(controls)
        layout.addWidget(self.message)
        self._tell("")
        return bar

    def _tell(self, text: str) -> None:
        """Say something under the controls; with no words it takes no room."""
        tell(self.message, text)

    def _connect(self) -> None:
        self.machine.activated.connect(self._on_machine)
        self.form.named.connect(self._on_named)
        self.form.idle_set.connect(self._on_idle)
        self.rows.asked.connect(self._on_asked)
        self.rows.picked.connect(self._on_picked)
        self.top.asked.connect(self._ask_of_answer)
        self.idle.asked.connect(partial(self._ask, IDLE))
        self.form.asked.connect(self._ask)
        self.stairs.asked.connect(self._on_step_asked)
        self.stairs.picked.connect(self._on_step)
        self.test.activated.connect(self._show_test)
        for chart in (self.rows, self.stairs):
            chart.copying.connect(partial(self._copy_picture, chart))
            chart.pulled.connect(partial(self.drag.start, chart))
        self._copy.clicked.connect(partial(self._copy_picture, self.rows))
        self.pictures.copying.connect(partial(self._copy_picture, self.rows))
        self.found.closed.connect(self._on_found_closed)
        self.found.run_wanted.connect(self._session.select)
        self._session.selection_changed.connect(self.rows.select)
        self.pictures.told.connect(self._tell)
        self._how.clicked.connect(self.explain)
        self._session.opened.connect(self._on_opened)

    # showing

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study; its loads are found where that does not hold up the window."""
        traces = self._session.traces
        source = Source(study, frozenset(traces), comparison)
        if self._loads.ask(source, lambda: loads(study, traces, comparison)):
            self._show_found()

    def explain(self) -> None:
        step = next((s for s in self._steps() if step_id(s.log_id, s.number) == self.stairs.selected), None)
        if self._frame.isHidden():
            self.tell_purpose()
        elif step is not None and self.stairs.hasFocus():
            self._ask(f"{STEP}{step.number}")
        else:
            self._ask_of_answer()

    def menu(self) -> QMenu:
        """Saving pictures."""
        return self.pictures.menu

    @property
    def _found(self) -> Found[Loads] | None:
        return self._loads.found

    def _show_nothing(self, sentence: str, conditions_text: str) -> None:
        self._bar.hide()
        self._frame.hide()
        self._filler.show()
        self.top.say(sentence, conditions_text)

    def _show_found(self) -> None:
        assert self._found is not None
        study, found = self._found.study, self._found.value
        if len(self._found.source.log_ids) < len(study.logs):
            self._show_nothing(tr("Reading the logs…"), "")
            return
        if not found.tested:
            self._show_nothing(headline(found, "", self._locale), conditions(found, study, self._locale))
            return
        if self._machine_id not in {m.machine_id for m in found.tested}:
            self._machine_id = found.tested[0].machine_id
        self.machine.fill([(m.name, m.machine_id) for m in found.tested], self._machine_id)
        self._bar.show()
        self._frame.show()
        self._filler.hide()
        self._show_machine()

    def _show_machine(self) -> None:
        """What belongs to the chosen machine."""
        assert self._found is not None
        study, found = self._found.study, self._found.value
        machine = next(m for m in found.tested if m.machine_id == self._machine_id)
        self.top.say(headline(found, self._machine_id, self._locale), conditions(found, study, self._locale))
        figure = loads_figure(found, study, self._machine_id, self._locale)
        self.rows.show_figure(figure, self._say_value)
        self.rows.select(self._session.selected)
        said = idle_sentence(machine, self._locale)
        self.idle.setText(said)
        self.idle.setVisible(bool(said))
        unsure = ambiguous(machine)
        self.unsure.setText(unsure)
        self.unsure.setVisible(bool(unsure))
        self.form.show_machine(machine)
        of = len(machine.stairs)
        tests = [(tr("{number} of {of}", number=i, of=of), i - 1) for i in range(1, of + 1)]
        self.test.fill(tests, min(max(self.test.currentIndex(), 0), len(tests) - 1))
        self._of_test.setVisible(len(tests) > 1)
        self._show_test()
        self._explain_asked()

    def _show_test(self) -> None:
        """The test that is chosen, over its time."""
        machine = self._chosen()
        if machine is None or self._found is None:
            return
        place, found = int(self.test.currentData() or 0), self._found
        figure = staircase_figure(
            found.value, machine, place, found.study, self._session.traces, self._locale
        )
        self.stairs.show_figure(figure, self._say_step)

    def _chosen(self) -> MachineLoads | None:
        tested = () if self._found is None else self._found.value.tested
        return next((m for m in tested if m.machine_id == self._machine_id), None)

    def _say_value(self, run_id: str, key: str) -> tuple[str, ...]:
        if self._found is None:
            return ()
        names = {r.id: r.name for r in self._found.study.runs}
        return value_readout(self._found.value, run_id, names, self._locale)

    def _say_step(self, run_id: str, key: str) -> tuple[str, ...]:
        machine = self._chosen()
        return () if machine is None else step_readout(machine, int(key), self._locale)

    # what the user does

    def _on_opened(self) -> None:
        self._loads.forget()
        self._machine_id, self._asked = "", None
        self.found.close_panel()
        self._tell("")

    def _on_machine(self) -> None:
        self._machine_id = str(self.machine.currentData())
        if self._found is not None:
            self._show_machine()

    def _on_named(self, log_id: str, at_s: float, load: str | None) -> None:
        self._session.apply(edits.name_step(self._session.study, log_id, at_s, load))

    def _on_idle(self, load: str, is_idle: bool) -> None:
        self._session.apply(edits.set_load_idle(self._session.study, self._machine_id, load, is_idle))

    def _steps(self) -> tuple[LoadStep, ...]:
        machine = self._chosen()
        return () if machine is None else machine.steps

    def _ask(self, key: str) -> None:
        """Ask for a number of the chosen machine."""
        self._on_asked(self._machine_id, "", key)

    def _ask_of_answer(self) -> None:
        """What the sentence on top says: what stays unexplained, else the loads it names, else the page."""
        machine = self._chosen()
        if machine is None or machine.sum_w is None:
            self._asked = None
            self.found.show_topic("loads")
        else:
            self._ask(SUM if machine.unexplained_w is None else REST)

    def _on_step_asked(self, machine_id: str, run_id: str, key: str) -> None:
        self._ask(f"{STEP}{key}")

    def _on_asked(self, machine_id: str, run_id: str, key: str) -> None:
        self._asked = (machine_id, key)
        self._explain_asked()

    def _explain_asked(self) -> None:
        """Explain the number that was asked for, as the study is now."""
        if self._asked is None or self._found is None:
            return
        told = load_found(self._found.value, self._found.study, *self._asked, self._locale)
        if told is None:
            self.found.close_panel()
        else:
            self.found.show_explanation(told, self._locale)

    def _on_found_closed(self) -> None:
        self._asked = None
        self.rows.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_picked(self, run_id: str | None) -> None:
        """A run of processing is selected on every page; a single value of a load on this one alone."""
        if run_id is None or run_id in self._session.results:
            self._session.select(run_id)

    def _on_step(self, picked: str | None) -> None:
        """A step that is clicked on can be named at once."""
        machine = self._chosen()
        steps = () if machine is None else machine.steps
        step = next((s for s in steps if step_id(s.log_id, s.number) == picked), None)
        if step is not None:
            self.form.go_to(step.number)
            self._scroll.ensureWidgetVisible(self.form)

    def _copy_picture(self, chart: ChartView) -> None:
        if chart.figure is not None:
            self.pictures.copy(chart, [(clause,) for clause in numbers_of(chart.figure).split("; ")])
