"""The Compare page: the answer in words, as a chart that reads as a table, in the plane, and in numbers."""

from functools import partial

from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QMenu, QVBoxLayout, QWidget

from core import edits
from core.edits import Edit
from core.figures.compare import comparison_figure, signs_note, source_of
from core.figures.energy_time import energy_time_figure
from core.figures.readout import find_run, readout
from core.figures.waterfall import MEASURED as MEASURED_WH
from core.formatting import NumberLocale
from core.found import RATIO
from core.language import mark, tr
from core.quantities import ENERGY, QUANTITIES, quantity
from core.results import like_answer, property_answer
from core.results.table import readable_table
from core.results.values import Comparison
from core.study import BOUNDARIES, Study
from gui.charts.view import ChartView
from gui.explaining import Explaining
from gui.locales import screen_locale
from gui.look import S4, S12, S16, current
from gui.pages.page import Page
from gui.picture_drag import PictureDrag
from gui.session import Session
from gui.widgets.compare_bar import LIKE, MEASURED, PROPERTY, CompareBar
from gui.widgets.fairness_list import FairnessList
from gui.widgets.found_frame import FoundFrame
from gui.widgets.found_panel import FoundPanel
from gui.widgets.left_out_bar import LeftOutBar
from gui.widgets.like_view import LikeView
from gui.widgets.page_scroll import PageScroll
from gui.widgets.picture_menu import PictureMenu
from gui.widgets.property_view import PropertyView
from gui.widgets.sentence_top import SentenceTop
from gui.widgets.table_card import TableCard
from gui.widgets.titled_card import bare_card

#: the plane stands beside the table if it gets this width, else above it [text heights]
_LEAST_PLANE = 27
#: with fewer machines the table is too short to stand beside the plane
_LEAST_BESIDE = 3
_EMPTY = (
    mark("Nothing to compare yet"),
    mark(
        "Drop meter logs of two or more machines anywhere on this window, or open the "
        "demo from the File menu."
    ),
)


class ComparePage(Page):
    """One row a machine, one column a measure."""

    title = mark("Compare")

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("compare_page")
        self._session = session
        self._comparison: Comparison | None = None
        self._drawn: tuple[Comparison, str] | None = None  # what the charts and the table are of
        self._locale = screen_locale()
        self.top = SentenceTop()
        self.rows = ChartView("comparison")
        self.rows.setAccessibleName(tr("Comparison: one row a machine, one column a measure"))
        self.plane = ChartView("energy_against_time")
        self.plane.setAccessibleName(tr("Energy against time, with lines of equal mean watts"))
        self.table = TableCard("comparison_table", tr("Comparison as a table"))
        self.fairness = FairnessList()
        self.left_out = LeftOutBar()
        self.found = FoundPanel()
        self._explaining = Explaining(session, self.found, self._locale)
        self.like = LikeView(session, self._locale)
        self.properties = PropertyView(session, self._locale)
        self._bar = CompareBar(self.fairness.button)
        self.view, self.boundary, self.message = self._bar.view, self._bar.boundary, self._bar.message
        charts = {mark("Comparison"): self.rows, mark("Energy against time"): self.plane}
        charts |= {mark("Like for like"): self.like.rows, mark("Steps"): self.like.steps}
        charts |= {PROPERTY: self.properties.chart}
        self.pictures = PictureMenu(charts, self)
        self._bar.save.setMenu(self.pictures.menu)
        self.drag = PictureDrag(self.pictures, self)
        self._lay_out()
        self._connect()
        self._show_nothing()

    # building

    def _lay_out(self) -> None:
        self._lower = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._lower.setSpacing(S12)
        self._plane_card = bare_card(self.plane)
        self._lower.addWidget(self._plane_card, 1)
        self._lower.addWidget(self.table, 0)
        self._scroll, self._runs = PageScroll("compare_scroll"), QWidget()
        outer = self._scroll.column
        outer.addWidget(self.fairness)
        outer.addWidget(self._runs)
        outer.addWidget(self.like)
        outer.addWidget(self.properties)
        content = QVBoxLayout(self._runs)
        content.setContentsMargins(0, 0, 0, 0)
        content.setSpacing(S12)
        content.addWidget(bare_card(self.rows), 3)
        content.addWidget(self.left_out)
        content.addLayout(self._lower, 2)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        layout.addWidget(self._bar)
        self._frame = FoundFrame(self._scroll, self.found)
        layout.addWidget(self._frame, 1)
        self._blank = QWidget()
        layout.addWidget(self._blank, 1)

    def _connect(self) -> None:
        for view in (self.rows, self.plane):
            view.picked.connect(self._session.select)
            view.leaving_out.connect(self._leave_out)
            view.asked.connect(self._explaining.ask)
            view.pulled.connect(self._drag_out)
            self.pictures.open_on(view)
        self.rows.copying.connect(self._copy_rows)
        self.plane.copying.connect(self._copy_plane)
        self._bar.copy.clicked.connect(self._copy_rows)
        self._session.selection_changed.connect(self._on_selection)
        self.fairness.more_wanted.connect(self._see_to_fairness)
        self.boundary.activated.connect(self._on_boundary)
        self.view.currentIndexChanged.connect(self._show_view)
        self.like.changed.connect(self._say_top)
        self.like.refused.connect(self._bar.tell)
        self.properties.changed.connect(self._say_top)
        self.properties.told.connect(self._bar.tell)
        for chart in (self.like.rows, self.like.steps, self.properties.chart):
            chart.picked.connect(self._session.select)
            chart.pulled.connect(self._drag_out)
            chart.copying.connect(partial(self._copy_picture, chart))
        self.properties.chart.asked.connect(self._ask_of_point)
        self.like.rows.asked.connect(self._ask_of_like)
        self.like.steps.asked.connect(self._ask_of_like)
        self.left_out.reason_typed.connect(self._on_reason)
        self.left_out.counting_again.connect(self._count_again)
        self.left_out.closed.connect(self._on_bar_closed)
        self.table.asked.connect(self._ask_of_cell)
        self.like.table.asked.connect(self._ask_of_like_cell)
        self.top.asked.connect(self._ask_of_answer)
        self.found.closed.connect(self._on_found_closed)
        self._bar.how.clicked.connect(self._ask_of_answer)
        self.pictures.copying.connect(self._copy_rows)
        self.pictures.told.connect(self._bar.tell)

    # showing

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study and its newest comparison."""
        self.boundary.setCurrentIndex(BOUNDARIES.index(study.boundary))
        if comparison is None and (study.logs or study.typed):
            self._show_nothing(mark("Reading the logs…"), "")
            return
        if comparison is None or not comparison.machines:
            self._show_nothing()
            return
        self._comparison = comparison
        self._show_parts(True)
        self._show_view()
        say = partial(_say, comparison, self._locale)
        # an edit is told twice: at once, with the numbers as they were, and when those are worked out again
        source = source_of(study)
        if self._drawn is None or self._drawn[0] is not comparison or self._drawn[1] != source:
            self._drawn = (comparison, source)
            self.rows.show_figure(comparison_figure(comparison, study, self._locale), say)
            plane = energy_time_figure(comparison, study, self._locale)
            self.plane.show_figure(plane, say)
            self._plane_card.setVisible(bool(plane.marks))
            self.table.show_table(
                readable_table(comparison, self._locale), signs_note(comparison), self._locale.decimal
            )
        self.fairness.show_findings(comparison.fairness, self._locale)
        self._on_selection(self._session.selected)
        self._arrange()

    def _show_view(self) -> None:
        """Show the runs as measured, the machines like for like, or against a property: one of them."""
        shown = self.view.currentData()
        for name, part in ((MEASURED, self._runs), (LIKE, self.like), (PROPERTY, self.properties)):
            part.setVisible(shown == name)
        if self._comparison is not None:
            if shown == LIKE:
                self.like.show_study(self._session.study, self._comparison)
            elif shown == PROPERTY:
                self.properties.show_study(self._session.study, self._comparison)
        self._say_top()

    def _say_top(self) -> None:
        if self._comparison is None:
            return
        shown, locale = self.view.currentData(), self._locale
        like, held = self.like.found, self.properties.found
        if shown == LIKE and like is not None:
            self.top.say(like_answer.headline(like, locale), like_answer.conditions(like, locale))
        elif shown == PROPERTY and held is not None:
            told = property_answer.conditions(held, self._session.study, locale)
            self.top.say(property_answer.headline(held, locale), told)
            shown_now = self.found.explanation
            if shown_now is not None and shown_now.topic == "properties":
                self._ask_of_view()
        else:
            self.top.say(self._comparison.headline, self._comparison.conditions)

    def explain(self) -> None:
        is_measured = self.view.currentData() == MEASURED
        selected = self._session.results.get(self._session.selected or "") if is_measured else None
        cell = self.table.view.currentIndex()
        if self.table.view.hasFocus() and cell.isValid():
            self._ask_of_cell(cell)
        elif selected is not None:
            self._explaining.ask(selected.machine_id, selected.run_id, ENERGY.key)
        else:
            self._ask_of_answer()

    def _see_to_fairness(self) -> None:
        self.page_wanted.emit("Fairness", "after")

    def turn_to(self, what: str) -> None:
        """Show the machines like for like."""
        if what == "like for like":
            self.view.setCurrentIndex(self.view.findData(LIKE))

    def menu(self) -> QMenu:
        """Saving pictures."""
        return self.pictures.menu

    def _show_nothing(self, sentence: str = _EMPTY[0], conditions: str = _EMPTY[1]) -> None:
        self._comparison = None
        self._show_parts(False)
        self.top.say(tr(sentence), tr(conditions))

    def _show_parts(self, shown: bool) -> None:
        self._bar.setVisible(shown)
        self._frame.setVisible(shown)
        self._blank.setVisible(not shown)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def _arrange(self) -> None:
        """Plane and table side by side where both fit, else one under the other."""
        room = self.width() - 2 * S16 - S12
        is_short = self.table.model.rowCount() < _LEAST_BESIDE
        beside = not is_short and room - self.table.wished_width >= _LEAST_PLANE * current().text_px
        direction = QBoxLayout.Direction.LeftToRight if beside else QBoxLayout.Direction.TopToBottom
        if self._lower.direction() != direction:
            self._lower.setDirection(direction)
        self.table.setMinimumWidth(self.table.wished_width if beside else 0)

    # what the user does

    def _on_selection(self, run_id: str | None) -> None:
        for view in (self.rows, self.plane):
            view.select(run_id)
        if run_id is not None and self.left_out.run_id not in ("", run_id):
            self.left_out.close_bar()

    def _ask_of_cell(self, index: QModelIndex) -> None:
        table = self.table.model.table
        if self._comparison is None or table is None:
            return
        key = table.columns[index.column()].key
        machine = self._comparison.machines[index.row()]
        self._explaining.ask(
            machine.machine_id, "", key if key in {q.key for q in QUANTITIES} else ENERGY.key
        )

    def _ask_of_answer(self) -> None:
        """Ask for what the sentence on top says: the first machine against the last, or the only one."""
        if self.view.currentData() != MEASURED:
            self._ask_of_view()
            return
        known = [m for m in self._comparison.machines if m.energy_wh] if self._comparison is not None else []
        if len(known) > 1:
            self._explaining.ask(known[0].machine_id, "", RATIO, known[-1].machine_id)
        elif known:
            self._explaining.ask(known[0].machine_id, "", ENERGY.key)

    def _ask_of_view(self) -> None:
        self._explaining.let_go()
        told = (self.properties if self.view.currentData() == PROPERTY else self.like).explanation()
        if told is not None:
            self.found.show_explanation(told, self._locale)
        else:
            self.found.show_topic("like-for-like" if self.view.currentData() == LIKE else "properties")

    def _ask_of_like(self, machine_id: str, run_id: str, key: str) -> None:
        """The measured energy as ever; the adjusted one by its steps."""
        self._ask_elsewhere(machine_id, ENERGY.key if key == MEASURED_WH else "", self.like)

    def _ask_of_like_cell(self, cell: QModelIndex) -> None:
        """A row of the table like for like: the measured energy, or what was made of it."""
        found = self.like.found
        if found is not None and cell.row() < len(found.machines):
            machine_id = found.machines[cell.row()].machine_id
            is_measured = self.like.table.key_of(cell) == "measured_wh"
            self._ask_of_like(machine_id, "", MEASURED_WH if is_measured else "")

    def _ask_of_point(self, machine_id: str, run_id: str, key: str) -> None:
        """A machine's own number, by the measure that its point stands for."""
        self._ask_elsewhere(machine_id, key, self.properties)

    def _ask_elsewhere(self, machine_id: str, key: str, view: LikeView | PropertyView) -> None:
        """A number of the comparison is explained as on its chart, any other by its view."""
        if key in {q.key for q in QUANTITIES}:
            self._explaining.ask(machine_id, "", key)
            return
        self._explaining.let_go()
        told = view.explanation_of(machine_id, key)
        if told is not None:
            self.found.show_explanation(told, self._locale)

    def _on_found_closed(self) -> None:
        self.rows.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_boundary(self, index: int) -> None:
        self._session.apply(edits.set_boundary(self._session.study, BOUNDARIES[index]))
        self._session.seal()

    def _leave_out(self, run_id: str) -> None:
        """Leave a run out at once and ask why in place; the reason merges with it into one step."""
        found = None if self._comparison is None else find_run(self._comparison, run_id)
        if found is None or self._session.is_read_only:
            return
        machine, run = found
        reason = self._reason(run_id)
        if run.included:
            self._session.apply(self._leaving_out(run_id, reason))
        self.left_out.ask(run_id, f"{machine.name}, {run.name}", reason)

    def _reason(self, run_id: str) -> str:
        study = self._session.study
        reasons = {r.id: r.why_left_out for r in study.runs} | {t.id: t.why_left_out for t in study.typed}
        return reasons.get(run_id, "")

    def _is_typed(self, run_id: str) -> bool:
        return any(t.id == run_id for t in self._session.study.typed)

    def _leaving_out(self, run_id: str, why: str) -> Edit:
        leave_out = edits.leave_out_typed if self._is_typed(run_id) else edits.leave_out
        return leave_out(self._session.study, run_id, why)

    def _on_reason(self, run_id: str, why: str) -> None:
        self._session.apply(self._leaving_out(run_id, why))

    def _count_again(self, run_id: str) -> None:
        include = edits.include_typed if self._is_typed(run_id) else edits.include
        self._session.apply(include(self._session.study, run_id))
        self._session.seal()

    def _on_bar_closed(self) -> None:
        self._session.seal()
        self.rows.setFocus(Qt.FocusReason.OtherFocusReason)

    def _drag_out(self) -> None:
        view = self.sender()
        if isinstance(view, ChartView):
            self.drag.start(view)

    def _copy_rows(self) -> None:
        shown = {LIKE: self.like.rows, PROPERTY: self.properties.chart}
        self._copy_picture(shown.get(self.view.currentData(), self.rows))

    def _copy_plane(self) -> None:
        self._copy_picture(self.plane)

    def _copy_picture(self, view: ChartView) -> None:
        if view is self.properties.chart:
            rows = self.properties.rows
        else:
            rows = (self.like.table if view in (self.like.rows, self.like.steps) else self.table).model.rows
        self.pictures.copy(view, rows)


def _say(comparison: Comparison, locale: NumberLocale, run_id: str, key: str) -> tuple[str, ...]:
    return readout(comparison, run_id, quantity(key), locale)
