"""Before a test: how many repeats it takes, its plan, the order of its runs, and its sheet."""

from functools import partial

from attrs import frozen
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from core import edits
from core.figures.plan import repeats_figure
from core.figures.source import numbers_of
from core.formatting import NumberLocale
from core.found.plan import repeats_found
from core.found.values import Explanation
from core.language import mark, tr
from core.plan.cautions import CAUTIONS
from core.plan.repeats import Repeats, repeats
from core.plan.sheet import RunSheet, order_table, run_sheet
from core.plan.words import conditions, floor_words, headline, share
from core.progress import Progress
from core.results.temperatures import degrees
from core.results.values import Comparison
from core.study import Study
from gui.charts.framing import Frame
from gui.charts.view import ChartView
from gui.dialogs import notes
from gui.images import Size, clipboard_data, render
from gui.look import S4
from gui.session import Session
from gui.widgets.asking import asking_words
from gui.widgets.choice import Choice
from gui.widgets.flow import Flow, labelled
from gui.widgets.found_frame import FoundFrame
from gui.widgets.found_panel import FoundPanel
from gui.widgets.number_field import NumberField
from gui.widgets.page_scroll import PageScroll
from gui.widgets.plan_files import PlanFiles
from gui.widgets.plan_form import Maker, PlanForm
from gui.widgets.sentence_top import SentenceTop
from gui.widgets.table_card import TableCard
from gui.widgets.titled_card import muted_words, tell, titled_card

#: key of the job
REPEATS = "repeats"
#: key of the job that says how they were found
EXPLAINING = "explain repeats"
#: more rows of the order are on the sheet alone
MOST_ROWS = 300
_DIFFERENCES, _SPREADS = (0.1, 200.0), (0.01, 100.0)


@frozen(eq=False)
class _Asked:
    """What the number of repeats was asked for."""

    study: Study
    comparison: Comparison | None
    pair_ids: tuple[str, str] | None


class PlanView(QWidget):
    """Shows the plan of the open study."""

    def __init__(self, session: Session, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("plan_view")
        self._session = session
        self._locale = locale
        self._asked: _Asked | None = None
        self._pair_ids: tuple[str, str] | None = None
        self.found: Repeats | None = None
        self.top = SentenceTop()
        self.repeats = ChartView("repeats")
        self.repeats.setAccessibleName(
            tr("Smallest difference that is shown, against the runs of each machine")
        )
        self.difference = NumberField(
            "plan_difference", tr("Difference to be shown, in percent"), _DIFFERENCES
        )
        self.spread = NumberField("plan_spread", tr("Scatter from run to run, in percent"), _SPREADS)
        self.first = Choice("plan_first", tr("First machine of the pair"))
        self.other = Choice("plan_other", tr("Other machine of the pair"))
        self.take = QPushButton(tr("Plan so many"))
        self.take.setObjectName("plan_take")
        self.form = PlanForm(locale)
        self.files = PlanFiles(session, locale, self)
        self.order = TableCard("plan_order", tr("Order of the runs"))
        self.panel = FoundPanel()
        self.message = muted_words()
        self.why_not = QLabel()
        self._lay_out()
        self._connect()

    def views(self) -> dict[str, ChartView]:
        """The charts by the names under which their pictures are saved."""
        return {mark("How many repeats"): self.repeats}

    # building

    def _lay_out(self) -> None:
        self.message.setObjectName("plan_message")
        self.why_not.setObjectName("plan_why_not")
        self.why_not.setProperty("role", "problem")
        self.why_not.setWordWrap(True)
        self.why_not.hide()
        self.message.hide()
        self._floors = asking_words()
        self._floors.setObjectName("plan_floors")
        asked = QWidget()
        line = Flow(asked)
        for text, field in (
            (tr("Sho&w a difference of (%):"), self.difference),
            (tr("Scatte&r (%):"), self.spread),
            (tr("between"), self.first),
            (tr("and"), self.other),
        ):
            line.addWidget(labelled(text, field))
        line.addWidget(self.take)
        self._repeats_card = titled_card(tr("How many repeats"), asked, self.repeats, self._floors)
        cautions = QLabel("\n".join(tr(each) for each in CAUTIONS))
        cautions.setObjectName("plan_cautions")
        cautions.setProperty("role", "caution")
        cautions.setWordWrap(True)
        form_card = titled_card(tr("The test"), self.form, self.why_not)
        self._order_card = titled_card(tr("Order and run sheet"), cautions, self._buttons(), self.message)
        scroll = PageScroll("plan_scroll")
        for card in (self._repeats_card, form_card, self._order_card, self.order):
            scroll.column.addWidget(card)
        scroll.column.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(self.top)
        layout.addWidget(FoundFrame(scroll, self.panel), 1)

    def _buttons(self) -> QWidget:
        bar = QWidget()
        row = Flow(bar)
        self._out: list[QPushButton] = []
        for name, text, slot in (
            ("plan_pdf", tr("Save run sheet (P&DF)…"), self.files.ask_pdf),
            ("plan_csv", tr("Save run sheet (&CSV)…"), self.files.ask_csv),
            ("plan_print", tr("Pri&nt…"), self.files.ask_print),
            ("plan_read", tr("Read a fi&lled sheet…"), self.files.ask_filled),
        ):
            button = QPushButton(text)
            button.setObjectName(name)
            button.clicked.connect(slot)
            row.addWidget(button)
            if name != "plan_read":
                self._out.append(button)
        return bar

    def _connect(self) -> None:
        self.form.wanted.connect(self._apply)
        self.form.left.connect(self._session.seal)
        self.form.refused.connect(self._refuse)
        self.files.told.connect(self._say)
        for field in (self.difference, self.spread):
            field.refused.connect(self._refuse)
            field.editingFinished.connect(self._session.seal)
        self.difference.entered.connect(self._on_difference)
        self.spread.entered.connect(self._on_spread)
        self.first.activated.connect(self._on_pair)
        self.other.activated.connect(self._on_pair)
        self.take.clicked.connect(self._on_take)
        for words in (self.top, self._floors):
            words.asked.connect(self._explain_repeats)
        self.repeats.asked.connect(self._explain_repeats)
        self.repeats.copying.connect(self._copy_picture)
        self._session.opened.connect(self._on_opened)

    # showing

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        """Show a study and its newest comparison; the repeats are worked out outside the GUI thread."""
        self.setEnabled(not self._session.is_read_only)
        asked, before = _Asked(study, comparison, self._pair_ids), self._asked
        if before is None or before.study is not study:
            self._show_plan(study, is_other=before is None or before.study.id != study.id)
        elif before.comparison is comparison and before.pair_ids == asked.pair_ids:
            return
        self._asked = asked

        def work(progress: Progress) -> tuple[_Asked, Repeats]:
            progress(0.0, tr("working out repeats"))
            return asked, repeats(asked.study, asked.comparison, asked.pair_ids)

        self._session.jobs.start(REPEATS, work, self._on_found)

    def _show_plan(self, study: Study, *, is_other: bool) -> None:
        """What the study states, and the order that follows from it."""
        self.form.show_study(study)
        sheet = run_sheet(study, self._locale)
        self.order.show_table(order_table(sheet, MOST_ROWS), _order_note(sheet), self._locale.decimal)
        self.order.setVisible(bool(sheet.rows))
        for button in self._out:
            button.setEnabled(bool(sheet.rows))
        plan = study.plan
        self.difference.show_text(degrees(plan.difference_percent, self._locale), "", of_other=is_other)
        stated = "" if plan.spread_percent is None else _plain(plan.spread_percent, self._locale)
        self.spread.show_text(stated, self.spread.placeholderText(), of_other=is_other)

    def explain(self) -> None:
        """Say how the number of repeats was found, or how a plan is made where there is none yet."""
        if self.found is None or self.found.pair is None:
            notes.show_note(self, tr("A fair test"), "plan")
        else:
            self._explain_repeats()

    def _explain_repeats(self) -> None:
        asked, found, locale = self._asked, self.found, self._locale
        if asked is None or found is None:
            return

        def work(_: Progress) -> tuple[_Asked, Explanation | None]:
            return asked, repeats_found(found, asked.study, asked.comparison, locale)

        self._session.jobs.start(EXPLAINING, work, self._on_explained)

    def _on_explained(self, answer: tuple[_Asked, Explanation | None]) -> None:
        asked, told = answer
        if asked is self._asked and told is not None:
            self.panel.show_explanation(told, self._locale)

    def _on_found(self, found: tuple[_Asked, Repeats]) -> None:
        asked, self.found = found
        if asked is not self._asked:
            return
        result, locale = self.found, self._locale
        if not self.panel.isHidden():
            self._explain_repeats()
        self.top.say(headline(result, locale), conditions(result, locale))
        figure = repeats_figure(result, asked.study, locale)
        self.repeats.show_figure(figure, lambda run_id, key: ())
        self._repeats_card.setVisible(figure is not None)
        tell(self._floors, floor_words(result, locale))
        behind = share(result.spread, locale).removesuffix(" %")
        assumed = (
            tr("{percents} assumed", percents=behind)
            if result.is_assumed
            else tr("{percents} so far", percents=behind)
        )
        self.spread.setPlaceholderText("" if result.is_stated else assumed)
        self.spread.updateGeometry()
        if result.pair is not None:
            names = [(m.name, m.machine_id) for m in result.machines]
            self.first.fill(names, result.pair.first.machine_id)
            self.other.fill(names, result.pair.other.machine_id)
        more = result.pair.more if result.pair is not None else None
        self.take.setVisible(bool(more))
        if more:
            self.take.setText(tr("Plan {count:block|blocks}", count=more))
            self.take.setToolTip(tr("Make as many blocks as the difference takes"))

    # what the user does

    def _apply(self, maker: Maker) -> None:
        self._refuse("")
        self._session.apply(maker(self._session.study))

    def _refuse(self, why: str) -> None:
        tell(self.why_not, why)

    def _say(self, done: str) -> None:
        tell(self.message, done)

    def _on_opened(self) -> None:
        self._asked, self._pair_ids, self.found = None, None, None
        self.panel.close_panel()
        self._say("")
        self._refuse("")

    def _on_difference(self, value: float | None) -> None:
        if value is None:
            plan = self._session.study.plan
            self.difference.show_text(degrees(plan.difference_percent, self._locale), "", of_other=True)
        else:
            self._apply(partial(edits.set_plan_goal, difference_percent=value))

    def _on_spread(self, value: float | None) -> None:
        if value is None:
            self._apply(edits.take_measured_spread)
        else:
            self._apply(partial(edits.set_plan_goal, spread_percent=value))

    def _on_pair(self) -> None:
        """Look at two machines; one that is chosen on both sides changes places with the other."""
        pair = (str(self.first.currentData()), str(self.other.currentData()))
        before = None if self.found is None or self.found.pair is None else self.found.pair
        if pair[0] == pair[1] and before is not None:
            pair = (before.other.machine_id, before.first.machine_id)
        self._pair_ids = pair
        self.show_study(self._session.study, self._session.comparison)

    def _on_take(self) -> None:
        if self.found is not None and self.found.pair is not None and self.found.pair.more:
            self._apply(partial(edits.plan_repeats, repeats=self.found.pair.more))
            self._session.seal()

    def _copy_picture(self) -> None:
        view = self.repeats
        if view.figure is None:
            return
        image = render(view.figure, Size(view.width(), view.height()), view.look, Frame(), ratio=2.0)
        lines = [(clause,) for clause in numbers_of(view.figure).split("; ")]
        QGuiApplication.clipboard().setMimeData(clipboard_data(image, lines))
        self._say(tr("Copied the picture and its numbers"))


def _order_note(sheet: RunSheet) -> str:
    """How many runs there are, and how many rows are on the sheet alone."""
    runs = sum(1 for row in sheet.rows if row.machine)
    if not runs:
        return ""
    more = len(sheet.rows) - MOST_ROWS
    told = tr("{count:run|runs} in the order of seed {seed}.", count=runs, seed=sheet.seed)
    if more > 0:
        told += " " + tr("The sheet has {count:more row|more rows}.", count=more)
    return told


def _plain(value: float, locale: NumberLocale) -> str:
    """A number as it was typed, without digits that say nothing."""
    return f"{value:g}".replace(".", locale.decimal)
