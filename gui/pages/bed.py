"""The Bed page: what beds take to stay warm, for their size and by temperature, and what cooler ones save."""

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QMenu, QVBoxLayout, QWidget

from core import edits
from core.beds.quantities import HALF_HOUR, HELD_W
from core.beds.supply import SUPPLIES
from core.edits import Edit
from core.figures.bed import beds_figure
from core.found.bed_page import (
    COLUMNS,
    Asked,
    headline_found,
    line_of,
    of_hold,
    of_machine,
    of_saving,
    supplies_found,
)
from core.language import mark, tr
from core.results.bed_answer import conditions, headline, supply_sentence
from core.results.bed_compared import by_area
from core.results.bed_table import half_hour_note, holds_table, rows_of
from core.results.cooler_beds import plan_of, savings
from core.results.hold_readout import hold_readout
from core.results.holds import Beds, Held, MachineBed, beds
from core.results.values import Comparison
from core.study import CoolerPlan, Study
from gui.charts.view import ChartView
from gui.locales import screen_locale
from gui.look import S4, S12, current
from gui.pages.page import Page
from gui.pages.worked_out import Found, Source, WorkedOut
from gui.session import Session
from gui.widgets.asking import AskingLabel
from gui.widgets.bed_bar import BedBar
from gui.widgets.bed_properties import BedProperties
from gui.widgets.cooler_card import CoolerCard
from gui.widgets.found_frame import FoundFrame
from gui.widgets.found_panel import FoundPanel
from gui.widgets.hold_temperatures import HoldTemperatures
from gui.widgets.page_scroll import PageScroll
from gui.widgets.picture_menu import PictureMenu
from gui.widgets.sentence_top import SentenceTop
from gui.widgets.table_card import TableCard
from gui.widgets.titled_card import plain_card
from gui.widgets.watts_card import WattsCard

#: key of the job
BEDS = "beds"
#: from this width on what is known of the beds stands beside the chart of watts, in text heights
_BESIDE = 88.0


class BedPage(Page):
    """Hold tests, and what follows from them."""

    title = mark("Bed")

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("bed_page")
        self._session = session
        self._locale = screen_locale()
        self._beds = WorkedOut[Beds](session, BEDS, tr("reading hold tests"), self._show_found)
        self._machine_id = ""
        self._row = -1
        self._asked: Asked | None = None
        self.top = SentenceTop()
        self.bar = BedBar()
        self.rows = ChartView("beds")
        self.rows.setAccessibleName(tr("Beds: one row a machine, one column a measure"))
        self.supply = AskingLabel()
        self.cooler = CoolerCard(self._locale)
        self.watts_card = WattsCard(self._locale)
        self.watts = self.watts_card.chart
        self.table = TableCard("holds_table", tr("Held temperatures"), note_asks=True)
        self.temperatures = HoldTemperatures(self._locale)
        self.properties = BedProperties(self._locale)
        self.found = FoundPanel()
        charts = {mark("Beds"): self.rows, mark("Cooler bed"): self.cooler.chart, mark("Watts"): self.watts}
        self.pictures = PictureMenu(charts, self)
        self._lay_out()
        self._connect()
        self._show_nothing(tr("Reading the logs…"), "")

    # building

    def _lay_out(self) -> None:
        self.supply.setObjectName("bed_supply_sentence")
        self._scroll = PageScroll("bed_scroll")
        content = self._scroll.column
        self._tested: list[QWidget] = [plain_card(self.rows), self.supply, self.cooler, self.table]
        self._pair = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._pair.setSpacing(S12)
        self._pair.addWidget(self.watts_card, 1)
        self._pair.addWidget(self.properties)
        for part in self._tested[:3]:
            content.addWidget(part)
        content.addLayout(self._pair)
        content.addWidget(self.table)
        content.addWidget(self.temperatures)
        content.addStretch(1)
        self.bar.save.setMenu(self.pictures.menu)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        layout.addWidget(self.bar)
        self._frame = FoundFrame(self._scroll, self.found)
        layout.addWidget(self._frame, 1)

    def _connect(self) -> None:
        for view in self._charts():
            view.picked.connect(self._session.select)
            view.asked.connect(self._on_asked)
            self.pictures.open_on(view)
        self.rows.copying.connect(self._copy_rows)
        self.watts.copying.connect(self._copy_watts)
        self.cooler.chart.copying.connect(self._copy_cooler)
        self.bar.copy.clicked.connect(self._copy_rows)
        self.pictures.copying.connect(self._copy_rows)
        self.pictures.told.connect(self.bar.message.setText)
        self.bar.how.clicked.connect(self.explain)
        self.found.closed.connect(self._on_found_closed)
        self.found.run_wanted.connect(self._session.select)
        self.bar.machine.activated.connect(self._on_machine)
        self.cooler.sliders.moved.connect(self._on_moved)
        self.cooler.sliders.settled.connect(self._on_settled)
        for slider in self.cooler.sliders.all:
            slider.sliderReleased.connect(self._session.seal)
        self.cooler.price_set.connect(self._on_price)
        self.top.asked.connect(partial(self._ask, headline_found))
        self.supply.asked.connect(partial(self._ask, supplies_found))
        self.cooler.asked.connect(self._on_saving_asked)
        self.watts_card.fits.asked.connect(self._on_line_asked)
        self.table.asked.connect(self._on_cell_asked)
        self.table.note_asked.connect(self._on_note_asked)
        self.table.view.selectionModel().currentRowChanged.connect(self._on_row)
        self.temperatures.noted.connect(self._on_noted)
        self.properties.area_set.connect(self._on_area)
        self.properties.supply_set.connect(self._on_supply)
        self.properties.emissivity_set.connect(self._on_emissivity)
        for form in (self.cooler, self.temperatures, self.properties):
            form.refused.connect(self.bar.message.setText)
        self._session.selection_changed.connect(self._on_selection)
        self._session.opened.connect(self._on_opened)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        beside = self.width() >= _BESIDE * current().text_px
        direction = QBoxLayout.Direction.LeftToRight if beside else QBoxLayout.Direction.TopToBottom
        if self._pair.direction() != direction:
            self._pair.setDirection(direction)

    @property
    def _found(self) -> Found[Beds] | None:
        return self._beds.found

    def _charts(self) -> tuple[ChartView, ...]:
        return self.rows, self.watts, self.cooler.chart

    # showing

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study; its beds are found where that does not hold up the window."""
        traces, activities = self._session.traces, self._session.activities
        if self._beds.ask(Source(study, frozenset(traces)), lambda: beds(study, traces, activities)):
            self._show_found()

    def explain(self) -> None:
        view = next((v for v in (self.rows, self.watts) if v.hasFocus()), None)
        if view is not None and view.selected is not None:
            self._ask_of_run(view.selected)
        elif self._found is not None and self._found.value.known:
            self._ask(headline_found)
        else:
            self.found.show_topic("bed")

    def menu(self) -> QMenu:
        """Saving pictures."""
        return self.pictures.menu

    def _show_nothing(self, sentence: str, conditions_text: str) -> None:
        self.bar.hide()
        self._frame.hide()
        self.top.say(sentence, conditions_text)

    def _show_found(self) -> None:
        assert self._found is not None
        study, found = self._found.study, self._found.value
        if len(self._found.source.log_ids) < len(study.logs):
            self._show_nothing(tr("Reading the logs…"), "")
            return
        self.top.say(headline(found, self._locale), conditions(found, study, self._locale))
        has_tests = any(m.held for m in found.machines)
        self.bar.setVisible(has_tests)
        self._frame.show()
        for part in self._tested:
            part.setVisible(has_tests)
        self.properties.setVisible(bool(study.machines))
        self.properties.show_study(study)
        if has_tests:
            self._show_tests(study, found)
        else:
            self.watts_card.hide()
            self.temperatures.hide()

    def _show_tests(self, study: Study, found: Beds) -> None:
        self._offer_machines(found)
        self.rows.show_figure(beds_figure(found, study, self._locale), self._say)
        said = supply_sentence(found, self._locale)
        self.supply.setText(said)
        self.supply.setVisible(bool(said))
        self._show_machine()
        self.table.show_table(
            holds_table(found, self._locale), half_hour_note(found, self._locale), self._locale.decimal
        )
        self._on_selection(self._session.selected)
        self._show_temperatures()
        self._explain_asked()

    def _offer_machines(self, found: Beds) -> None:
        """The machines whose beds are known; the one chosen stays, else that of the sentence on top."""
        known = [m for m in found.machines if m.model is not None] or [m for m in found.machines if m.held]
        if self._machine_id not in {m.machine_id for m in known}:
            most = sorted(known, key=lambda m: -(m.reference.power_w if m.reference else 0.0))
            self._machine_id = next(iter((*by_area(found), *most))).machine_id
        self.bar.machine.fill([(m.name, m.machine_id) for m in known], self._machine_id)

    def _show_machine(self) -> None:
        """What belongs to the chosen machine."""
        assert self._found is not None
        study, found = self._found.study, self._found.value
        self.watts_card.show_beds(found, study, self._machine_id, self._say)
        self._show_plan(study.cooler)

    def _show_plan(self, wished: CoolerPlan) -> None:
        assert self._found is not None
        plan = plan_of(wished, self._found.value)
        self.cooler.sliders.show_plan(wished, plan)
        self.cooler.show_savings(savings(self._found.value, plan), self._found.study, self._machine_id)

    def _show_temperatures(self) -> None:
        """The fields of the row that is chosen in the table."""
        assert self._found is not None
        rows = rows_of(self._found.value)
        if not 0 <= self._row < len(rows):
            self.temperatures.show_hold("", None, None, is_alone=True)
            return
        machine, held = rows[self._row]
        run = self._found.study.run(held.run_id)
        is_alone = sum(h.run_id == held.run_id for _, h in rows) == 1
        self.temperatures.show_hold(machine.name, held, run, is_alone=is_alone)

    def _say(self, run_id: str, key: str) -> tuple[str, ...]:
        return () if self._found is None else hold_readout(self._found.value, run_id, key, self._locale)

    # what the user does

    def _apply(self, make: Callable[[Study], Edit]) -> None:
        """Make an edit of the study as it is; a study that can only be looked at says so by itself."""
        self.bar.message.setText("")
        self._session.apply(make(self._session.study))

    def _on_opened(self) -> None:
        self._beds.forget()
        self._machine_id, self._row = "", -1
        self.found.close_panel()
        self.bar.message.setText("")

    def _on_machine(self) -> None:
        self._machine_id = str(self.bar.machine.currentData())
        if self._found is not None:
            self._show_machine()

    def _on_moved(self, wished: CoolerPlan) -> None:
        if self._found is not None:
            self._show_plan(wished)

    def _on_settled(self, wished: CoolerPlan) -> None:
        self._apply(lambda study: edits.set_cooler_plan(study, wished))

    def _on_price(self, price: float | None) -> None:
        self._apply(lambda study: edits.set_price(study, price))
        self._session.seal()

    def _on_noted(self, run_id: str, bed_c: float | None, room_c: float | None) -> None:
        self._apply(lambda study: edits.note_temperatures(study, run_id, bed_c, room_c))
        self._session.seal()

    def _on_area(self, machine_id: str, area_dm2: float | None) -> None:
        self._apply(lambda study: edits.set_bed_area(study, machine_id, area_dm2))
        self._session.seal()

    def _on_supply(self, machine_id: str, supply: str | None) -> None:
        known = next((s for s in SUPPLIES if s == supply), None)
        self._apply(lambda study: edits.set_bed_supply(study, machine_id, known))
        self._session.seal()

    def _on_emissivity(self, emissivity: float) -> None:
        self._apply(lambda study: edits.set_emissivity(study, emissivity))
        self._session.seal()

    def _on_row(self, current: QModelIndex) -> None:
        self._row = current.row()
        if self._found is not None:
            self._show_temperatures()
            rows = rows_of(self._found.value)
            if 0 <= self._row < len(rows):
                self._session.select(rows[self._row][1].run_id)

    def _on_selection(self, run_id: str | None) -> None:
        for view in self._charts():
            view.select(run_id)

    def _on_asked(self, machine_id: str, run_id: str, key: str) -> None:
        """A machine's number, or with a run that of one hold: in the chart of watts its key is its place."""
        if not machine_id:
            return
        column = COLUMNS.get(key, "bed_w" if key.isdigit() else "")
        if run_id and column:
            self._ask(partial(of_hold, machine_id=machine_id, run_id=run_id, place=key, column=column))
        else:
            self._ask(partial(of_machine, machine_id=machine_id, key=key))

    def _ask_of_run(self, run_id: str) -> None:
        owner = next((m.machine_id for m, h in self._rows() if h.run_id == run_id), "")
        self._ask(partial(of_machine, machine_id=owner, key=HELD_W.key))

    def _on_cell_asked(self, cell: QModelIndex) -> None:
        rows = self._rows()
        if cell.row() < len(rows):
            machine, held = rows[cell.row()]
            place, column = str(held.number), self.table.key_of(cell)
            self._ask(
                partial(
                    of_hold, machine_id=machine.machine_id, run_id=held.run_id, place=place, column=column
                )
            )

    def _on_note_asked(self) -> None:
        """The first half hour against the hour, of the first machine that tells it."""
        first = next((m.machine_id for m, h in self._rows() if m.first_hour is h), "")
        self._ask(partial(of_machine, machine_id=first, key=HALF_HOUR.key))

    def _on_saving_asked(self, machine_id: str | None, key: str) -> None:
        """What the cooler bed saves; None asks for the machine that is chosen."""
        machine_id = self._machine_id if machine_id is None else machine_id
        self._ask(partial(of_saving, plan=self.cooler.plan, machine_id=machine_id, key=key))

    def _on_line_asked(self) -> None:
        self._ask(partial(line_of, machine_id=self._machine_id))

    def _ask(self, asked: Asked) -> None:
        self._asked = asked
        self._explain_asked()

    def _explain_asked(self) -> None:
        """Explain the number that was asked for, as the study is now."""
        if self._asked is None or self._found is None:
            return
        told = self._asked(self._found.value, self._found.study, self._locale, self._session.traces)
        if told is None:
            self.found.close_panel()
        else:
            self.found.show_explanation(told, self._locale)

    def _on_found_closed(self) -> None:
        self._asked = None
        self.rows.setFocus(Qt.FocusReason.OtherFocusReason)

    def _rows(self) -> tuple[tuple[MachineBed, Held], ...]:
        return () if self._found is None else rows_of(self._found.value)

    def _copy_rows(self) -> None:
        self.pictures.copy(self.rows, self.table.model.rows)

    def _copy_watts(self) -> None:
        self.pictures.copy(self.watts, self.table.model.rows)

    def _copy_cooler(self) -> None:
        self.pictures.copy(self.cooler.chart, self.cooler.table.model.rows)
