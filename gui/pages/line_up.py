"""The Line-up page: runs over each other, one under another, or as differences; a span of them read."""

from attrs import evolve, frozen
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtWidgets import QHBoxLayout, QMenu, QVBoxLayout, QWidget

from core import edits
from core.figures.compare import source_of
from core.figures.line_up import line_up_figure
from core.figures.line_up_values import LineUpFigure
from core.figures.readout import find_run
from core.language import mark, tr
from core.line_up import spans
from core.line_up.answer import Answer, answer, leave_told, span_told, total_told
from core.line_up.choices import LineUp
from core.line_up.span_table import span_table
from core.line_up.spans import SpanReading, read_span
from core.line_up.strands import Strand, first_strands, strands
from core.progress import Progress
from core.results.values import Comparison
from core.study import Study
from gui.charts.drawing import load_paths
from gui.charts.line_up_view import LineUpView
from gui.dialogs import notes
from gui.locales import screen_locale
from gui.look import S4, S8, S12, S16
from gui.pages.line_up_explaining import LineUpExplaining
from gui.pages.page import Page
from gui.session import Session
from gui.widgets.action_buttons import copy_button, link_button, save_button
from gui.widgets.found_frame import FoundFrame
from gui.widgets.found_panel import FoundPanel
from gui.widgets.leave_list import LeaveList
from gui.widgets.left_out_bar import LeftOutBar
from gui.widgets.line_up_bar import LineUpBar
from gui.widgets.page_scroll import PageScroll
from gui.widgets.picture_menu import PictureMenu
from gui.widgets.run_picker import RunPicker
from gui.widgets.sentence_top import SentenceTop
from gui.widgets.tab_order import in_order
from gui.widgets.table_card import TableCard
from gui.widgets.titled_card import plain_card

#: of a farm only so many runs are shown until a person chooses
MOST_SHOWN = 120
#: keys of the jobs
ANSWER, SPAN = "line up", "read a span"
_EMPTY = (
    mark("No runs to line up yet"),
    mark("Drop meter logs anywhere on this window, or open the demo from the File menu."),
)
_NO_RUNS = (
    mark("No complete run of the part was found"),
    mark("Say on the Logs page which stretches are runs of the part; they are lined up here at once."),
)
_NO_TRACES = (
    mark("There is nothing to line up"),
    mark(
        "Readings of a display have no trace. Drop a meter log anywhere on this window to see how power ran."
    ),
)
_NOTHING_CHOSEN = (mark("No runs are chosen"), mark("Tick runs in the list on the right."))


@frozen
class _Said:
    """An answer with what it was asked of, and the newest figure of it."""

    strands: tuple[Strand, ...]
    choices: LineUp
    answer: Answer
    figure: LineUpFigure


class LineUpPage(Page):
    """Why machines differ: their runs beside each other."""

    title = mark("Line-up")

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("line_up_page")
        self._session = session
        self._locale = screen_locale()
        self._choices = LineUp()
        self._chosen: frozenset[str] | None = None
        self._study: Study | None = None
        self._comparison: Comparison | None = None
        self._strands: tuple[Strand, ...] = ()
        self._typed = 0
        self._more = 0
        self._said: _Said | None = None
        load_paths()
        self.top = SentenceTop()
        self.bar = LineUpBar(self._locale)
        self.chart = LineUpView("line_up", self._locale)
        self.chart.setAccessibleName(tr("Runs lined up"))
        self.picker = RunPicker()
        self.leaves = LeaveList()
        self.left_out = LeftOutBar()
        self.table = TableCard("span_table", tr("What the runs used within the marked span"))
        self.found = FoundPanel()
        self._explaining = LineUpExplaining(session, self.found, self._locale)
        self.pictures = PictureMenu({mark("Line-up"): self.chart}, self)
        self._lay_out()
        self._connect()
        self._show_nothing(*_EMPTY)

    # building

    def _lay_out(self) -> None:
        self._save = save_button(menu=self.pictures.menu)
        self._copy = copy_button(tr("Copy the picture and its numbers (Ctrl+C on the chart)"))
        self._explain = link_button("explain_line_up", tr("How &it is read"))
        self.bar.add(self.leaves.button, self._save, self._copy, self._explain)
        self._scroll = PageScroll("line_up_scroll", right=S8)
        content = self._scroll.column
        content.addWidget(self.leaves)
        content.addWidget(plain_card(self.chart, S4), 1)
        content.addWidget(self.left_out)
        content.addWidget(self.table)
        parts = QWidget()
        row = QHBoxLayout(parts)
        row.setContentsMargins(0, 0, S16, S12)
        row.setSpacing(S4)
        row.addWidget(self._scroll, 1)
        row.addWidget(self.picker)
        self._body = FoundFrame(parts, self.found, may_stand_beside=False)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        layout.addWidget(self.bar)
        layout.addWidget(self._body, 1)
        self._blank = QWidget()
        layout.addWidget(self._blank, 1)
        self.table.hide()
        buttons = (self.leaves.button, self._save, self._copy, self._explain)
        in_order((*self.bar.controls, *buttons, self.chart, self.picker))

    def _connect(self) -> None:
        self.bar.changed.connect(self._on_choices)
        self.chart.span_marked.connect(self._on_span)
        self.chart.view_changed.connect(self._on_view)
        self.chart.picked.connect(self._session.select)
        self.chart.copying.connect(self._copy_picture)
        self.chart.leaving_out.connect(self._leave_out)
        self.pictures.open_on(self.chart)
        self.picker.chosen.connect(self._on_chosen)
        self.picker.picked.connect(self._session.select)
        self.leaves.picked.connect(self._session.select)
        self.left_out.reason_typed.connect(self._on_reason)
        self.left_out.counting_again.connect(self._count_again)
        self.left_out.closed.connect(self._on_bar_closed)
        self._copy.clicked.connect(self._copy_picture)
        self._explain.clicked.connect(self._on_explain)
        self.top.asked.connect(self.explain)
        self.chart.asked.connect(self._explaining.ask_of_run)
        self.table.asked.connect(self._on_cell_asked)
        self.pictures.copying.connect(self._copy_picture)
        self.pictures.told.connect(self.bar.say)
        self._session.selection_changed.connect(self._on_selection)
        self._session.opened.connect(self._on_opened)

    # showing

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study and its newest comparison."""
        self._study, self._comparison = study, comparison
        if comparison is None or not comparison.machines:
            is_reading = comparison is None and bool(study.logs or study.typed)
            self._show_nothing(*((mark("Reading the logs…"), "") if is_reading else _EMPTY))
            return
        traces = self._session.traces
        if self._chosen is None:
            given, self._more = first_strands(study, comparison, traces, MOST_SHOWN)
        else:
            given, self._more = strands(study, comparison, traces, self._chosen), 0
        self._typed = sum(r.start_s is None for m in comparison.machines for r in m.included)
        if not given and self._chosen is None:
            if len(traces) < len(study.logs):
                self._show_nothing(mark("Reading the logs…"), "")
            else:
                self._show_nothing(*(_NO_RUNS if study.logs else _NO_TRACES))
            return
        self._strands = given
        self._ask()

    def menu(self) -> QMenu:
        """Saving pictures."""
        return self.pictures.menu

    def _show_nothing(self, sentence: str, conditions: str) -> None:
        self._said = None
        self._strands = ()
        for part in (self.bar, self._body):
            part.hide()
        self._blank.show()
        self.top.say(tr(sentence), tr(conditions))

    def _ask(self) -> None:
        """Have the answer computed where it does not hold up the window, and show it when it is there."""
        given, choices = self._strands, self._choices
        study, comparison = self._study, self._comparison
        if study is None or comparison is None:
            return
        self._show_chosen()
        asked = evolve(choices, view=None, span=None)
        if self._said is not None and (self._said.strands, self._said.choices) == (given, asked):
            self._show_figure()
            return
        typed, more, locale = self._typed, self._more, self._locale

        def work(progress: Progress) -> _Said:
            progress(0.0, tr("lining up runs"))
            found = answer(given, comparison, asked, locale, without_trace=typed, not_shown=more)
            return _Said(given, asked, found, line_up_figure(given, choices, found, study, locale))

        self._session.jobs.start(ANSWER, work, self._on_answer)

    def _on_answer(self, said: _Said) -> None:
        if said.strands == self._strands and said.choices == evolve(self._choices, view=None, span=None):
            self._said = said
            self._show_figure()
            self._read_span()

    def _show_chosen(self) -> None:
        """The controls, whatever is computed."""
        assert self._comparison is not None
        self.bar.show()
        self._body.show()
        self._blank.hide()
        self.picker.show_runs(self._comparison, self._ticked(), self._remarks())
        self.picker.select(self._session.selected)

    def _show_figure(self) -> None:
        said, study = self._said, self._study
        if said is None or study is None:
            return
        has_runs = bool(said.strands)
        self._scroll.setVisible(has_runs)
        if has_runs:
            self.top.say(said.answer.headline, said.answer.conditions)
        else:
            self.top.say(*map(tr, _NOTHING_CHOSEN))
        if (said.figure.choices, said.figure.source) != (self._choices, source_of(study)):
            # a step of looking closer must not wait for a job
            figure = line_up_figure(said.strands, self._choices, said.answer, study, self._locale)
            said = self._said = evolve(said, figure=figure)
        self.chart.show_figure(said.figure if has_runs else None, _no_readout)
        self.chart.select(self._session.selected)
        self.bar.show_choices(self._choices, said.strands, said.answer.smooth_s)
        by_id = {s.run_id: s for s in said.strands}
        anchor, leaving = self._choices.anchor, said.answer.leaves
        lines = [(x.run_id, leave_told(x, by_id[x.run_id], anchor, self._locale)) for x in leaving]
        counted = [s for s in said.strands if s.included]
        self.leaves.show_leaves(total_told(len({x.run_id for x in leaving}), counted), lines)
        if self._comparison is not None:
            self.picker.show_runs(self._comparison, self._ticked(), self._remarks())

    def _ticked(self) -> frozenset[str] | None:
        """What is ticked in the list; None for all that counts."""
        return frozenset(s.run_id for s in self._strands) if self._more else self._chosen

    def _remarks(self) -> dict[str, str]:
        if self._said is None:
            return {}
        by_id = {s.run_id: s for s in self._said.strands}
        return {
            x.run_id: leave_told(x, by_id[x.run_id], self._said.choices.anchor, self._locale)
            for x in self._said.answer.leaves
        }

    # what the user does

    def _on_choices(self, choices: LineUp) -> None:
        is_moved = choices.anchor != self._choices.anchor
        # places of another axis mean nothing on this one
        self._choices = evolve(choices, view=None, span=None) if is_moved else choices
        self._ask()
        self._read_span()

    def _on_view(self, view: tuple[float, float] | None) -> None:
        self._choices = evolve(self._choices, view=view)
        self._show_figure()

    def _on_span(self, span: tuple[float, float] | None) -> None:
        self._choices = evolve(self._choices, span=span)
        self._show_figure()
        self._read_span()

    def _on_chosen(self, chosen: frozenset[str] | None) -> None:
        self._chosen = chosen
        if self._study is not None:
            self.show_study(self._study, self._comparison)

    def _on_selection(self, run_id: str | None) -> None:
        self.chart.select(run_id)
        self.picker.select(run_id)
        if run_id is not None and self.left_out.run_id not in ("", run_id):
            self.left_out.close_bar()

    def _on_opened(self) -> None:
        """Another study: what was chosen of the last one means nothing here."""
        spans.forget()
        self.found.close_panel()
        self._choices, self._chosen = LineUp(), None
        self._show_nothing(*_EMPTY)

    # reading a span

    def _read_span(self) -> None:
        span, given, anchor = self._choices.span, self._strands, self._choices.anchor
        self.table.setVisible(span is not None and bool(given))
        if span is None or not given:
            return

        def work(progress: Progress) -> tuple[tuple[float, float], tuple[SpanReading, ...]]:
            progress(0.0, tr("reading a span"))
            return span, read_span(given, anchor, *span)

        self._session.jobs.start(SPAN, work, self._on_span_read)

    def _on_span_read(self, read: tuple[tuple[float, float], tuple[SpanReading, ...]]) -> None:
        span, readings = read
        if span != self._choices.span:
            return
        told = span_told(*span, self._choices.anchor, self._locale)
        table = span_table(readings, told, self._locale)
        note = tr("Read {span}. 95 % intervals; the mean of a machine's runs holds their spread.", span=told)
        self._explaining.show_readings(readings, span)
        self.table.show_table(table, note, self._locale.decimal)

    def explain(self) -> None:
        """Say how the sentence on top was found, or what the page is for where it says nothing yet."""
        said, comparison, study = self._said, self._comparison, self._study
        if said is None or comparison is None or study is None or not said.strands:
            self.tell_purpose()
        else:
            self._explaining.ask_of_answer(said.strands, comparison, study)

    def _on_cell_asked(self, cell: QModelIndex) -> None:
        if self._study is not None:
            key = self.table.key_of(cell)
            self._explaining.ask_of_cell(cell.row(), key, self._strands, self._choices.anchor, self._study)

    # leaving out, copying

    def _leave_out(self, run_id: str) -> None:
        """Leave a run out at once and ask why in place; the reason merges with it into one step."""
        found = None if self._comparison is None else find_run(self._comparison, run_id)
        if found is None or self._session.is_read_only:
            return
        machine, run = found
        reason = self._session.study.run(run_id).why_left_out
        if run.included:
            self._session.apply(edits.leave_out(self._session.study, run_id, reason))
        self.left_out.ask(run_id, f"{machine.name}, {run.name}", reason)

    def _on_reason(self, run_id: str, why: str) -> None:
        self._session.apply(edits.leave_out(self._session.study, run_id, why))

    def _count_again(self, run_id: str) -> None:
        self._session.apply(edits.include(self._session.study, run_id))
        self._session.seal()

    def _on_bar_closed(self) -> None:
        self._session.seal()
        self.chart.setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_explain(self) -> None:
        notes.show_note(self, tr("Line-up"), "line-up")

    def _copy_picture(self) -> None:
        if self._said is None:
            return
        rows = (
            self.table.model.rows
            if self._choices.span is not None
            else [(x,) for x in self._said.answer.facts]
        )
        self.pictures.copy(self.chart, rows)


def _no_readout(run_id: str, key: str) -> tuple[str, ...]:
    """The chart reads its runs out itself: what it says depends on the place too."""
    return ()
