"""The Logs page: the whole of every log, what was found in it, and how it was read."""

from PySide6.QtCore import QEvent, QPoint, QSize, Qt, QTimer
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QMenu, QSizePolicy, QSplitter, QToolButton, QVBoxLayout, QWidget

from core.figures.lanes import headline, lanes
from core.found.logs import log_found, runs_found
from core.found.values import Explanation
from core.language import mark, tr
from core.progress import Progress
from core.quantities import ENERGY
from core.results.values import Comparison
from core.study import Log, Study
from gui.explaining import Explaining
from gui.locales import number_locale
from gui.look import S4, S8, S16
from gui.pages.condition_edits import ConditionEdits
from gui.pages.log_edits import LogEdits
from gui.pages.page import Page
from gui.pages.stretch_actions import StretchActions
from gui.session import Session
from gui.settings import Settings
from gui.widgets.flow import Flow
from gui.widgets.found_frame import FoundFrame
from gui.widgets.found_panel import FoundPanel
from gui.widgets.lane_list import LaneList
from gui.widgets.reading_panel import ReadingPanel
from gui.widgets.sentence_top import SentenceTop
from gui.widgets.stretch_strip import StretchStrip
from gui.widgets.tab_order import in_order
from gui.widgets.typed_form import TypedForm

#: key of the job
EXPLAINING = "explain a log"
_IN_BAR = ("leave_out", "split", "join", "whole")
#: beside the panel the lanes need at least this many times its width
_LANES_TO_PANEL = 1.6


class LogsPage(Page):
    """Lanes, the strip of the selected stretch, and the panel of how a log was read."""

    title = mark("Logs")

    def __init__(self, session: Session, settings: Settings, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("logs_page")
        self._session, self._settings = session, settings
        self._locale = number_locale()
        self._log_id: str | None = None
        self._top = SentenceTop()
        self._lanes = LaneList()
        self._strip = StretchStrip()
        self._panel = ReadingPanel()
        self._splitter = QSplitter(Qt.Orientation.Horizontal)
        self._typed = TypedForm()
        self._found = FoundPanel()
        self._explaining = Explaining(session, self._found, self._locale)
        self._stretch = StretchActions(session, self._lanes, self._strip, self)
        self._conditions = ConditionEdits(session, self._strip.conditions, self)
        self._log_edits = LogEdits(session, self._lanes, self._panel, self._typed, self)
        self._top.asked.connect(self._explain_runs)
        self._panel.asked.connect(self._explain_log)
        self._strip.asked.connect(self.explain)
        self._lanes.run_picked.connect(session.select)
        self._lanes.menu_wanted.connect(self._open_menu)
        self._lanes.log_opened.connect(self._open_log)
        self._lanes.lanes_made.connect(self._order_tabs)
        session.selection_changed.connect(self._on_selection)
        # The panel follows in the next turn of the event loop: the lanes come first.
        self._reading_timer = QTimer(self)
        self._reading_timer.setSingleShot(True)
        self._reading_timer.setInterval(0)
        self._reading_timer.timeout.connect(self._show_reading)
        self._lay_out()
        self._stretch.draw_icons()
        if self._stretch.selected is not None:  # chosen on another page, before there was this one
            self._log_id = self._stretch.selected.log_id

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        results = self._session.results
        self._top.say(headline(study), "")
        traces, selected = self._session.traces, self._session.selected
        self._lanes.show_lanes(lanes(study, results), traces, selected, self._waiting)
        self._typed.show_study(study, self._locale)
        self._typed_button.setChecked(self._typed_button.isChecked() or bool(study.typed and not study.logs))
        self._show_stretch()
        self._reading_timer.start()

    def turn_to(self, what: str) -> None:
        """Open the panel of how the log was read, and of its meter, or the form for readings of a display."""
        if what == "meter":
            self._panel_button.setChecked(True)
        elif what == "typed":
            self._typed_button.setChecked(True)
            self._typed.setFocus()

    def explain(self) -> None:
        result = self._session.results.get(self._session.selected or "")
        if result is not None:
            self._explaining.ask(result.machine_id, result.run_id, ENERGY.key)
        else:
            self._explain_runs()

    def _explain_runs(self) -> None:
        """Say how the runs were found, which the sentence on top counts."""
        self._explaining.let_go()
        told = runs_found(self._session.study, self._locale)
        if told is None:
            self._found.show_topic("runs")
        else:
            self._found.show_explanation(told, self._locale)

    def _explain_log(self) -> None:
        """Say how the whole of the log was found that is shown beside."""
        study, log, reading = self._session.study, self._log, self._panel.reading
        if log is None or reading is None:
            return
        self._explaining.let_go()
        trace, locale = self._session.traces.get(log.id), self._locale

        def work(_: Progress) -> Explanation | None:
            return log_found(study, log, reading, trace, locale)

        self._session.jobs.start(EXPLAINING, work, self._on_explained)

    def _on_explained(self, told: Explanation | None) -> None:
        if told is not None:
            self._found.show_explanation(told, self._locale)

    def menu(self) -> QMenu | None:
        return self._stretch.menu

    def minimumSizeHint(self) -> QSize:
        # Without the panel, which gives way where there is no room for both.
        hint = super().minimumSizeHint()
        return QSize(min(hint.width(), self._left.minimumSizeHint().width()), hint.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place_panel()

    def event(self, event: QEvent) -> bool:
        done = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest:
            self._place_panel()
        return done

    def changeEvent(self, event: QEvent) -> None:
        if event.type() == QEvent.Type.PaletteChange:
            self._stretch.draw_icons()
        super().changeEvent(event)

    # what it shows

    def _waiting(self, log_id: str) -> str:
        data = self._session.data(log_id)
        return tr("reading the log") if data is None else tr("this log could not be read")

    def _on_selection(self, run_id: str | None) -> None:
        self._lanes.select(run_id)
        self._show_stretch()
        run = self._stretch.selected
        if run is not None:
            self._open_log(run.log_id)

    def _open_log(self, log_id: str) -> None:
        self._log_id = log_id
        self._stretch.set_log(log_id)
        self._reading_timer.start()

    def _order_tabs(self) -> None:
        in_order([self._panel_button, *self._lanes.lanes])

    def _open_menu(self, at: QPoint, at_s: float) -> None:
        self._stretch.menu.popup(at)

    def _show_stretch(self) -> None:
        run = self._stretch.selected
        result = self._session.results.get(run.id) if run is not None else None
        told = self._conditions.told(run)
        self._strip.show_stretch(self._session.study, run, result, self._locale, told)
        self._stretch.set_log(self._log.id if self._log is not None else None)
        self._stretch.refresh()

    @property
    def _log(self) -> Log | None:
        """The log that was last worked on, or the first one."""
        logs = self._session.study.logs
        return next((g for g in logs if g.id == self._log_id), logs[0] if logs else None)

    def _show_reading(self) -> None:
        """Show how the log was read."""
        log = self._log
        if not self._panel.isHidden():
            self._panel.show_log(self._session.study, log, self._session.data(log.id) if log else None)

    def _turn_panel(self, is_open: bool) -> None:
        self._settings.reading_panel_open = is_open
        self._place_panel()

    def _place_panel(self) -> None:
        """Show the panel if it is wanted and there is room for it."""
        panel_w = self._panel.minimumWidth() + self._splitter.handleWidth()
        has_room = self.width() - panel_w >= max(
            _LANES_TO_PANEL * panel_w, self._left.minimumSizeHint().width()
        )
        self._panel_button.setEnabled(has_room)
        was_hidden = self._panel.isHidden()
        self._panel.setVisible(has_room and self._settings.reading_panel_open)
        if was_hidden and not self._panel.isHidden():
            self._reading_timer.start()

    # how it is built

    def _lay_out(self) -> None:
        self._left = QWidget()
        column = QVBoxLayout(self._left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(self._tool_row())
        column.addWidget(self._lanes, 1)
        column.addWidget(self._typed)
        column.addWidget(self._strip)
        self._splitter.addWidget(self._left)
        self._splitter.addWidget(self._panel)
        self._splitter.setStretchFactor(0, 1)
        self._splitter.setChildrenCollapsible(False)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S8)
        layout.addWidget(self._top)
        layout.addWidget(FoundFrame(self._splitter, self._found, may_stand_beside=False), 1)

    def _tool_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setContentsMargins(S16, 0, S16, S4)
        row.setSpacing(S4)
        of_stretch = QWidget()
        flow = Flow(of_stretch, S4)  # in two lines rather than no room for the panel
        for name in _IN_BAR:
            button = QToolButton()
            button.setObjectName(f"button_{name}")
            button.setDefaultAction(self._stretch.actions[name])
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
            button.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
            flow.addWidget(button)
        row.addWidget(of_stretch, 1)
        self._typed_button = QToolButton()
        self._typed_button.setObjectName("button_typed")
        self._typed_button.setText(tr("Type in"))
        self._typed_button.setToolTip(tr("Enter runs of which only the meter's display was read"))
        self._typed_button.setCheckable(True)
        self._typed_button.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self._typed_button.toggled.connect(self._typed.setVisible)
        self._typed.hide()
        row.addWidget(self._typed_button)
        self._panel_button = QToolButton()
        self._panel_button.setObjectName("button_panel")
        self._panel_button.setText(tr("Reading"))
        self._panel_button.setToolTip(
            tr("Encoding, clock, units, gaps and refused rows of the log, to be corrected")
        )
        self._panel_button.setCheckable(True)
        self._panel_button.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self._panel_button.setChecked(self._settings.reading_panel_open)
        self._panel_button.toggled.connect(self._turn_panel)
        row.addWidget(self._panel_button)
        return row
