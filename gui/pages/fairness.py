"""The Fairness page: how to run the next test so that it is fair, and whether the last one was."""

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QGuiApplication, QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QHBoxLayout,
    QMenu,
    QVBoxLayout,
    QWidget,
)

from core.figures.fairness import fairness_figure
from core.found.fairness import TOPIC, explain_finding, smallest_found
from core.found.sensitivity import without_runs
from core.found.values import Explanation
from core.language import mark, tr
from core.progress import Progress
from core.results.compare import compare, machine_inputs
from core.results.fairness_answer import conditions, findings_table, headline, line
from core.results.fairness_points import point_of
from core.results.fairness_temperatures import StatedConditions, told
from core.results.machine import machine_result
from core.results.values import Comparison, Finding
from core.study import Study
from gui.charts.view import ChartView
from gui.images import clipboard_data, render
from gui.locales import screen_locale
from gui.look import S4, S8, S12, S16
from gui.pages.fairness_edits import FairnessEdits
from gui.pages.page import Page
from gui.session import Session
from gui.widgets.action_buttons import copy_button, link_button, save_button, told_label
from gui.widgets.fairness_accepted import AcceptedList
from gui.widgets.fairness_card import FairnessCard
from gui.widgets.fairness_conditions import COLUMNS, ConditionsCard, MachineConditions
from gui.widgets.found_frame import FoundFrame
from gui.widgets.found_panel import FoundPanel
from gui.widgets.page_scroll import PageScroll
from gui.widgets.page_switch import PageSwitch
from gui.widgets.picture_menu import PictureMenu
from gui.widgets.plan_view import PlanView
from gui.widgets.sentence_top import SentenceTop
from gui.widgets.table_card import TableCard
from gui.widgets.titled_card import bare_card

BEFORE, AFTER = "before", "after"
_NOTE = mark("Gravest first. Select a point to read why, and to do something about it.")
#: key of the job
EXPLAINING = "explain fairness"
_EMPTY = (
    mark("Nothing has been tested yet"),
    mark("Before the test: plan it, so that it will be fair. After it, what was not alike is listed here."),
)


class FairnessPage(Page):
    """Before the test its plan; after it what was not alike."""

    title = mark("Fairness")

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("fairness_page")
        self._session = session
        self._locale = screen_locale()
        self._comparison: Comparison | None = None
        self._key = ""
        faces = ((BEFORE, tr("&Before the test")), (AFTER, tr("&After the test")))
        self.switch = PageSwitch("fairness_face", tr("Before or after the test"), faces)
        self.switch.turn_to(AFTER)
        self.plan = PlanView(session, self._locale)
        self.top = SentenceTop()
        self.chart = ChartView("fairness")
        self.chart.setAccessibleName(tr("What each point of fairness could matter, in Wh a part"))
        self.table = TableCard("findings_table", tr("Open points of fairness"))
        self.card = FairnessCard(self._locale)
        self.accepted = AcceptedList()
        self.conditions = ConditionsCard(self._locale)
        self.found = FoundPanel()
        self.message = told_label()
        self.pictures = PictureMenu({mark("Fairness"): self.chart, **self.plan.views()}, self)
        self._how = link_button("how_found", tr("How is this found?"))
        self._save = save_button(menu=self.pictures.menu)
        self._copy = copy_button(tr("Copy the picture and the list of points (Ctrl+C on the chart)"))
        self._edits = FairnessEdits(session, self)
        self._lay_out()
        self._connect()
        self._show_face()

    # building

    def _lay_out(self) -> None:
        self._chart_card = bare_card(self.chart)
        scroll = PageScroll("fairness_scroll", is_fitted=False)
        for part in (self.table, self.card, self._chart_card, self.accepted, self.conditions):
            scroll.column.addWidget(part)
        scroll.column.addStretch(1)
        self._frame = FoundFrame(scroll, self.found)
        self._after = QWidget()
        after = QVBoxLayout(self._after)
        after.setContentsMargins(0, 0, 0, 0)
        after.setSpacing(S4)
        after.addWidget(self.top)
        after.addWidget(self._frame, 1)
        self._blank = QWidget()
        after.addWidget(self._blank, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, S12, 0, 0)
        layout.setSpacing(S4)
        layout.addLayout(self._action_row())
        layout.addWidget(self._after, 1)
        layout.addWidget(self.plan, 1)

    def _action_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setContentsMargins(S16, 0, S16, 0)
        row.setSpacing(S8)
        row.addWidget(self.switch)
        row.addWidget(self._how)
        row.addWidget(self.message, 1)
        row.addWidget(self._save)
        row.addWidget(self._copy)
        return row

    def _connect(self) -> None:
        self.switch.turned.connect(self._show_face)
        self.chart.picked.connect(self._on_picked)
        self.chart.asked.connect(self._on_asked)
        self.chart.copying.connect(self._copy_picture)
        self.chart.leaving_out.connect(self._leave_out)
        delete = QShortcut(QKeySequence.StandardKey.Delete, self.table.view)
        delete.setContext(Qt.ShortcutContext.WidgetShortcut)
        delete.activated.connect(self._leave_out)
        self.table.view.selectionModel().currentRowChanged.connect(self._on_row)
        self.table.asked.connect(self._ask_of_cell)
        self.card.asked.connect(self._ask)
        self.top.asked.connect(self._ask_of_answer)
        self.card.wanted.connect(self._on_wanted)
        self.card.accepted.connect(self._on_accepted)
        self.card.run_wanted.connect(self._on_run)
        self.accepted.taken_back.connect(self._edits.take_back)
        self.conditions.noted.connect(self._edits.note)
        self.conditions.field_left.connect(self._session.seal)
        self.found.run_wanted.connect(self._on_run)
        self.found.closed.connect(self._on_found_closed)
        self._edits.page_wanted.connect(self.page_wanted)
        self._edits.plan_wanted.connect(self._show_plan)
        self._edits.told.connect(self.message.setText)
        self._copy.clicked.connect(self._copy_picture)
        self.pictures.copying.connect(self._copy_picture)
        self.pictures.told.connect(self.message.setText)
        self._how.clicked.connect(self.explain)
        self._session.opened.connect(self._on_opened)

    # showing

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study and its newest comparison, before or after."""
        if self.switch.face == BEFORE:
            self.plan.show_study(study, comparison)
            return
        if comparison is None:
            reading = bool(study.logs or study.typed)
            self._show_nothing(*((mark("Reading the logs…"), "") if reading else _EMPTY))
        elif not comparison.machines:
            self._show_nothing(*_EMPTY)
        else:
            self._comparison = comparison
            self._show_comparison(study, comparison)

    def turn_to(self, what: str) -> None:
        """Show the plan, or what was not alike."""
        self.switch.turn_to(what)

    def explain(self) -> None:
        if self.switch.face == BEFORE:
            self.plan.explain()
        elif self._finding is not None:
            self._ask()
        else:
            self._frame.show()
            self._blank.hide()
            self.found.show_topic(TOPIC)

    def menu(self) -> QMenu:
        """Saving pictures."""
        return self.pictures.menu

    def _show_face(self) -> None:
        is_before = self.switch.face == BEFORE
        self.plan.setVisible(is_before)
        self._after.setVisible(not is_before)
        self._copy.setVisible(not is_before)
        self.show_study(self._session.study, self._session.comparison)

    def _show_nothing(self, sentence: str, words: str) -> None:
        self._comparison = None
        self._frame.hide()
        self._blank.show()
        self.top.say(tr(sentence), tr(words))

    def _show_comparison(self, study: Study, comparison: Comparison) -> None:
        self._frame.show()
        self._blank.hide()
        self.top.say(headline(comparison, self._locale), conditions(comparison, self._locale))
        figure = fairness_figure(comparison, study, self._locale)
        self.chart.show_figure(figure, self._readout)
        self._chart_card.setVisible(figure is not None)
        found = comparison.open_findings
        self.table.show_table(findings_table(comparison, self._locale), tr(_NOTE), self._locale.decimal)
        self.table.setVisible(bool(found))
        self.accepted.show_comparison(comparison, read_only=self._session.is_read_only)
        self.conditions.show_machines(self._known(study), read_only=self._session.is_read_only)
        if self._key not in {f.key for f in found}:
            self._key = found[0].key if found else ""
        self._show_selected()

    def _known(self, study: Study) -> tuple[MachineConditions, ...]:
        """What is known of the temperatures of each machine's runs."""
        test = StatedConditions(study.bed_c, study.room_c)
        inputs = machine_inputs(study, self._session.traces, self._session.activities)
        return tuple(
            MachineConditions(
                given.machine.id,
                given.machine.name,
                tuple(told(given, place, test, self._locale) for place, *_ in COLUMNS),
            )
            for given in inputs
            if machine_result(given).included
        )

    def _readout(self, key: str, measure: str) -> tuple[str, ...]:
        """What the chart reads out at a bar."""
        found = next((f for f in self._open if f.key == key), None)
        return () if found is None else (line(found),)

    @property
    def _open(self) -> tuple[Finding, ...]:
        return () if self._comparison is None else self._comparison.open_findings

    @property
    def _finding(self) -> Finding | None:
        """The selected point."""
        return next((f for f in self._open if f.key == self._key), None)

    def _show_selected(self) -> None:
        """Show the same point as selected in the table, in the chart and at length."""
        found = self._finding
        keys = [f.key for f in self._open]
        if self._key in keys:
            view = self.table.view
            row = keys.index(self._key)
            if view.currentIndex().row() != row:
                view.setCurrentIndex(self.table.model.index(row, 0))
            view.selectRow(row)
        self.chart.select(self._key or None)
        if self._comparison is not None:
            self.card.show_finding(found, self._comparison, read_only=self._session.is_read_only)
        if not self.found.isHidden():
            self._ask()

    # what the user does

    def _on_opened(self) -> None:
        self._key = ""
        self.message.setText("")
        self.found.close_panel()

    def _on_row(self, current: QModelIndex) -> None:
        if current.isValid() and current.row() < len(self._open):
            self._select(self._open[current.row()].key)

    def _on_picked(self, key: str | None) -> None:
        if key:
            self._select(key)

    def _select(self, key: str) -> None:
        if key != self._key:
            self._key = key
            self._show_selected()

    def _on_asked(self, key: str) -> None:
        self._select(key)
        self._ask()

    def _ask(self) -> None:
        """Say how the selected point was found."""
        if self._finding is None or self._comparison is None:
            self.found.close_panel()
            return
        finding, comparison, locale = self._finding, self._comparison, self._locale
        study, traces, activities = self._session.study, self._session.traces, self._session.activities

        def again(run_ids: tuple[str, ...]) -> Comparison:
            return compare(without_runs(study, run_ids), traces, activities)

        def work(_: Progress) -> tuple[str, Explanation]:
            return finding.key, explain_finding(finding, comparison, locale, again)

        self._session.jobs.start(EXPLAINING, work, self._on_explained)

    def _on_explained(self, told: tuple[str, Explanation]) -> None:
        """Show it, if the point is still the selected one."""
        key, explained = told
        if key == self._key and self._comparison is not None:
            self.found.show_explanation(explained, self._locale)

    def _ask_of_cell(self, cell: QModelIndex) -> None:
        if cell.row() < len(self._open):
            self._select(self._open[cell.row()].key)
            self._ask()

    def _ask_of_answer(self) -> None:
        """What the sentence on top holds its points against, else the selected point."""
        told = None if self._comparison is None else smallest_found(self._comparison, self._locale)
        if told is not None:
            self.found.show_explanation(told, self._locale)
        elif self._finding is not None:
            self._ask()
        else:
            self.found.show_topic(TOPIC)

    def _on_found_closed(self) -> None:
        self.table.view.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_wanted(self) -> None:
        if self._finding is not None and self._comparison is not None:
            self._edits.act(self._finding, self._comparison)

    def _leave_out(self) -> None:
        """Leave the run of the selected point out, where the point asks for that."""
        found = self._finding
        if found is not None and point_of(found).action == "leave out" and not self._session.is_read_only:
            self._on_wanted()

    def _on_accepted(self, reason: str) -> None:
        if self._finding is not None:
            self._edits.accept(self._finding, reason)

    def _on_run(self, run_id: str) -> None:
        self._session.select(run_id)
        self.page_wanted.emit("Logs", "")

    def _show_plan(self) -> None:
        self.switch.turn_to(BEFORE)

    def _copy_picture(self) -> None:
        if self.chart.figure is None:
            return
        size = self.pictures.shown_size(self.chart)
        image = render(self.chart.figure, size, self.chart.look, self.pictures.frame, ratio=2.0)
        QGuiApplication.clipboard().setMimeData(clipboard_data(image, self.table.model.rows))
        self.message.setText(tr("Copied the picture and the list"))
