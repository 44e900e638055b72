"""The Standby and cost page: what machines take doing nothing, what prints cost, and what saves."""

from attrs import evolve
from PySide6.QtCore import QDate, QModelIndex
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QLabel, QMenu, QVBoxLayout, QWidget

from core.figures.standby_cost import (
    calendar_figure,
    print_figure,
    print_sentence,
    saving_figure,
    standby_figure,
    starts_figure,
    starts_sentence,
)
from core.found.cost_starts import START
from core.found.costs import SAVED, TOTAL, explain_cost, of_print, of_saving, of_start
from core.language import mark, tr
from core.quantities import PRINT_COST, PRINT_KWH, PRINT_PRICE, STANDBY_KWH, STANDBY_MEAN_W
from core.results.cost_answer import ESTIMATE, HOT, MAINS, conditions, headline, limit_words, saving_sentence
from core.results.cost_tables import hours_table, print_note, print_table
from core.results.cost_values import StandbyCost
from core.results.costs import forget, standby_cost
from core.results.values import Comparison
from core.study import Study
from gui.charts.view import ChartView
from gui.locales import money_locale
from gui.look import S4, S8, S12, S16, current
from gui.pages.page import Page
from gui.pages.worked_out import Found, Source, WorkedOut
from gui.picture_drag import PictureDrag
from gui.session import Session
from gui.widgets.action_buttons import copy_button, link_button, save_button, told_label
from gui.widgets.asking import asking_words
from gui.widgets.choice import Choice
from gui.widgets.cost_form import CostForm, Maker
from gui.widgets.found_frame import FoundFrame
from gui.widgets.found_panel import FoundPanel
from gui.widgets.page_scroll import PageScroll
from gui.widgets.picture_menu import PictureMenu
from gui.widgets.price_file import PriceFile
from gui.widgets.sentence_top import SentenceTop
from gui.widgets.table_card import TableCard
from gui.widgets.titled_card import column_of, muted_words, plain_card, tell, titled_card

#: key of the job
COST = "standby and cost"
#: width of the form, and from which width of the page on it stands beside the charts [text heights]
_FORM, _BESIDE = 23.0, 58.0
_EMPTY = (
    mark("Nothing to price yet"),
    mark(
        "Drop meter logs of one machine or more anywhere on this window, or open the demo from the File menu."
    ),
)


class StandbyCostPage(Page):
    """Charts with their words on one side, what the user states on the other."""

    title = mark("Standby and cost")

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("standby_cost_page")
        self._session = session
        self._locale = money_locale()
        self._costs = WorkedOut[StandbyCost](session, COST, tr("working out costs"), self._show_costs)
        self._price_file = PriceFile(session, self)
        self.top = SentenceTop()
        self.standby = _chart("standby", tr("Standby power, and a year of it"))
        self.saving = _chart(
            "switching_off", tr("What switching off would have saved, against minutes waited")
        )
        self.calendar = _chart("weeks", tr("Operating states week by week"))
        self.prints = _chart("print", tr("What a print takes and costs"))
        self.starts = _chart("starts", tr("Cost of a print by the time of day at which it starts"))
        self.hours = TableCard("hours_table", tr("Hours in each operating state"))
        self.parts = TableCard("print_table", tr("A print taken apart"))
        self.week_machine = Choice("week_machine", tr("Machine whose weeks are shown"))
        self.form = CostForm(self._locale)
        self.found = FoundPanel()
        self.message = told_label("cost_message")
        self.pictures = PictureMenu(self._charts(), self)
        self.drag = PictureDrag(self.pictures, self)
        self._lay_out()
        self._connect()
        self._show_nothing(*_EMPTY)

    @property
    def result(self) -> StandbyCost | None:
        """What is shown."""
        return None if self._found is None else self._found.value

    @property
    def _found(self) -> Found[StandbyCost] | None:
        return self._costs.found

    def _charts(self) -> dict[str, ChartView]:
        return {
            mark("Standby"): self.standby,
            mark("Switching off"): self.saving,
            mark("Weeks"): self.calendar,
            mark("Print"): self.prints,
            mark("Start of a print"): self.starts,
        }

    # building

    def _lay_out(self) -> None:
        self._limits, self._cautions, self._saving_words = muted_words(), muted_words(), asking_words()
        self._print_words, self._start_words = asking_words(), asking_words()
        hot = QLabel(tr(HOT))
        hot.setObjectName("hot_caution")
        hot.setProperty("role", "caution")
        hot.setWordWrap(True)
        self._cautions.setText(f"{tr(ESTIMATE)} {tr(MAINS)}")
        bar = QHBoxLayout()
        label = QLabel(tr("Wee&ks of"))
        label.setBuddy(self.week_machine)
        bar.addWidget(label)
        bar.addWidget(self.week_machine)
        bar.addStretch(1)
        self._standby_card = titled_card(tr("Doing nothing"), self.standby, self._limits)
        self._saving_card = titled_card(
            tr("Switching off"), hot, self._saving_words, self.saving, self._cautions
        )
        self._calendar_card = titled_card(tr("Hours in each operating state"), bar, self.calendar)
        self._print_card = titled_card(tr("A print"), self._print_words, self.prints)
        self._starts_card = titled_card(tr("When to start"), self._start_words, self.starts)
        upper = column_of(self._standby_card, self._saving_card, self._calendar_card)
        lower = column_of(self.hours, self._print_card, self.parts, self._starts_card)
        side = QVBoxLayout()
        self._form_card = plain_card(self.form)
        side.addWidget(self._form_card)
        side.addStretch(1)
        self._columns = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._columns.setSpacing(S12)
        self._columns.addLayout(upper, 1)
        self._columns.addLayout(side, 0)
        self._scroll = PageScroll("standby_cost_scroll")
        content = self._scroll.column
        content.addLayout(self._columns)
        content.addLayout(lower)
        content.addStretch(1)
        self._bar = self._action_row()
        self._frame = FoundFrame(self._scroll, self.found, may_stand_beside=False)
        self._blank = QWidget()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        layout.addWidget(self._bar)
        layout.addWidget(self._frame, 1)
        layout.addWidget(self._blank, 1)

    def _action_row(self) -> QWidget:
        bar = QWidget()
        row = QHBoxLayout(bar)
        row.setContentsMargins(S16, 0, S16, 0)
        row.setSpacing(S8)
        tip = tr("How the sentence above was found; for a value on a chart, click on it")
        self._how = link_button("cost_how_found", tr("How was this found?"), tip)
        self._save = save_button("cost_save_picture", self.pictures.menu)
        tip = tr("Copy the first chart's picture and its numbers (Ctrl+C on a chart)")
        self._copy = copy_button(tip, "cost_copy")
        row.addWidget(self._how)
        row.addWidget(self.message, 1)
        row.addWidget(self._save)
        row.addWidget(self._copy)
        return bar

    def _connect(self) -> None:
        for view in (self.standby, self.prints, self.calendar):
            view.asked.connect(self._on_asked)
        for view in self._charts().values():
            view.copying.connect(self._on_copy)
            view.pulled.connect(self._drag_out)
            self.pictures.open_on(view)
        self._copy.clicked.connect(self._on_copy)
        self._how.clicked.connect(self.explain)
        self.pictures.copying.connect(self._on_copy)
        self.pictures.told.connect(self.message.setText)
        self.week_machine.activated.connect(self._show_weeks)
        self.top.asked.connect(self.explain)
        self.hours.asked.connect(self._on_hours_cell)
        self.parts.asked.connect(self._on_parts_cell)
        self._saving_words.asked.connect(self._ask_of_saving)
        self._print_words.asked.connect(self._ask_of_print)
        self._start_words.asked.connect(self._ask_of_start)
        self.saving.asked.connect(self._ask_of_saving)
        self.starts.asked.connect(self._ask_of_start)
        self.form.wanted.connect(self._apply)
        self.form.left.connect(self._session.seal)
        self.form.file_wanted.connect(self._price_file.ask)
        self._session.opened.connect(self._on_opened)

    # showing

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study; what it costs is worked out outside the GUI thread."""
        is_empty = not (study.logs or study.typed)
        if is_empty or comparison is None:
            self._costs.forget()
            self._show_nothing(*(_EMPTY if is_empty else (mark("Reading the logs…"), "")))
            return
        self.form.show_study(study)
        self.form.setEnabled(not self._session.is_read_only)
        traces, activities = self._session.traces, self._session.activities
        year = QDate.currentDate().year()
        source = Source(study, frozenset(traces))
        if self._costs.ask(source, lambda: standby_cost(study, traces, activities, year=year)):
            return
        if self._found is None:
            self._show_nothing(mark("Working out what standby and prints cost…"), "")

    def explain(self) -> None:
        """Say how the sentence on top was found: what all machines use while they do nothing."""
        if self.result is not None and self.result.total_kwh is not None:
            self._explain("", TOTAL)
        else:
            self.tell_purpose()

    def menu(self) -> QMenu:
        """Saving pictures."""
        return self.pictures.menu

    def _show_costs(self) -> None:
        assert self._found is not None
        result, study, locale = self._found.value, self._found.study, self._locale
        spoken = evolve(result, headline=headline(result, locale), conditions=conditions(result, locale))
        self.top.say(spoken.headline, spoken.conditions)
        self.standby.show_figure(standby_figure(spoken, study, locale), _no_runs)
        self._limits.setText(limit_words(result.limits, locale))
        saving = saving_figure(spoken, study, locale)
        self.saving.show_figure(saving, _no_runs)
        self._saving_card.setVisible(saving is not None)
        tell(self._saving_words, saving_sentence(result, locale))
        self.prints.show_figure(print_figure(spoken, study, locale), _no_runs)
        self._print_words.setText(print_sentence(result, locale))
        has_prints = any(m.printed is not None for m in result.machines)
        self._print_card.setVisible(has_prints)
        self.parts.setVisible(has_prints)
        starts = starts_figure(spoken, study, locale)
        self.starts.show_figure(starts, _no_runs)
        self._start_words.setText(starts_sentence(result, locale))
        self._starts_card.setVisible(starts is not None)
        self.hours.show_table(hours_table(result, locale), "", locale.decimal)
        self.parts.show_table(print_table(result, locale), print_note(result, locale), locale.decimal)
        shown = self.week_machine.currentData()
        names = [(tr("all machines"), None), *((m.name, m.machine_id) for m in result.machines if m.weeks)]
        self.week_machine.fill(names, shown)
        self._show_weeks()
        self._show_parts(True)
        self._arrange()

    def _show_weeks(self) -> None:
        if self._found is None:
            return
        chosen = self.week_machine.currentData()
        figure = calendar_figure(self._found.value, self._found.study, chosen, self._locale)
        self.calendar.show_figure(figure, _no_runs)
        self._calendar_card.setVisible(figure is not None)

    def _show_nothing(self, sentence: str, said: str) -> None:
        self._show_parts(False)
        self.top.say(tr(sentence), tr(said))

    def _show_parts(self, shown: bool) -> None:
        self._bar.setVisible(shown)
        self._frame.setVisible(shown)
        self._blank.setVisible(not shown)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        """The form beside the charts where both fit, else under them."""
        text = current().text_px
        beside = self.width() >= _BESIDE * text
        direction = QBoxLayout.Direction.LeftToRight if beside else QBoxLayout.Direction.TopToBottom
        if self._columns.direction() != direction:
            self._columns.setDirection(direction)
        self._form_card.setMinimumWidth(round(_FORM * text) if beside else 0)
        self._form_card.setMaximumWidth(round(_FORM * text) if beside else self.maximumWidth())

    # what the user does

    def _apply(self, maker: Maker) -> None:
        self._session.apply(maker(self._session.study))

    def _on_opened(self) -> None:
        forget()
        self._costs.forget()
        self.found.close_panel()

    def _on_asked(self, machine_id: str, run_id: str, key: str) -> None:
        self._explain(machine_id, key)

    def _on_hours_cell(self, cell: QModelIndex) -> None:
        key = self.hours.key_of(cell)
        self._on_cell(cell, {"windows": STANDBY_MEAN_W.key, "steady": STANDBY_MEAN_W.key}.get(key, key))

    def _on_parts_cell(self, cell: QModelIndex) -> None:
        key = self.parts.key_of(cell)
        own = {"electricity": PRINT_COST.key, "printing_cost": "printing_kwh"}
        own |= dict.fromkeys(("material", "wear", "purchase", "failed", "price"), PRINT_PRICE.key)
        self._on_cell(cell, own.get(key, key))

    def _on_cell(self, cell: QModelIndex, key: str) -> None:
        """A number of a machine; its name asks for what it uses while it does nothing."""
        if self.result is not None:
            machine = self.result.machines[cell.row()]
            self._explain(machine.machine_id, STANDBY_KWH.key if key == "machine" else key)

    def _ask_of_saving(self) -> None:
        if self.result is not None:
            self._explain(of_saving(self.result), SAVED)

    def _ask_of_print(self) -> None:
        if self.result is not None:
            self._explain(of_print(self.result), PRINT_KWH.key)

    def _ask_of_start(self) -> None:
        if self.result is not None:
            self._explain(of_start(self.result), START)

    def _explain(self, machine_id: str, key: str) -> None:
        if self._found is None:
            return
        told = explain_cost(self._found.value, self._found.study, machine_id, key, self._locale)
        if told is not None:
            self.found.show_explanation(told, self._locale)

    def _drag_out(self) -> None:
        view = self.sender()
        if isinstance(view, ChartView):
            self.drag.start(view)

    def _on_copy(self) -> None:
        """Copy the chart that asked, or else the first one."""
        asking = self.sender()
        view = asking if isinstance(asking, ChartView) else self.standby
        table = self.parts if view in (self.prints, self.starts) else self.hours
        self.pictures.copy(view, table.model.rows)


def _no_runs(run_id: str, key: str) -> tuple[str, ...]:
    """There are no runs on these charts to read out."""
    return ()


def _chart(name: str, accessible_name: str) -> ChartView:
    view = ChartView(name)
    view.setAccessibleName(accessible_name)
    return view
