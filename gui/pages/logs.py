"""The Logs page: the whole of every log, what was found in it, and how it was read."""

from collections.abc import Callable

from PySide6.QtCore import QLocale, QPoint, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QHBoxLayout, QMenu, QSplitter, QToolButton, QVBoxLayout, QWidget

from core import edits
from core.formatting import NumberLocale
from core.lanes import headline, lanes
from core.results.values import Comparison
from core.study import KINDS, Kind, Run, Study
from gui import look
from gui.icons import icon
from gui.look import S4, S8, S16
from gui.pages.page import Page, SentenceTop
from gui.session import Session
from gui.settings import Settings
from gui.widgets.lane_list import LaneList
from gui.widgets.reading_panel import ReadingPanel
from gui.widgets.stretch_strip import StretchStrip

#: id, text, keys, icon, what it does
_ACTIONS = (
    (
        "leave_out",
        "Leave out",
        "Del",
        "leave-out",
        "Leave the stretch out of the comparison, or count it again",
    ),
    ("rename", "Rename", "F2", "", "Give the stretch a name"),
    ("split", "Split", "S", "split", "Cut the stretch in two where the pointer is"),
    ("join", "Join with next", "J", "join", "Make one stretch of this one and the next"),
    ("remove", "Remove", "Ctrl+Del", "", "Say that there is nothing here"),
    ("hand_back", "Hand back to the program", "Ctrl+B", "", "Undo every decision about this stretch"),
    ("closer", "Look closely", "Z", "", "Show this stretch alone"),
    ("whole", "Whole logs", "W", "zoom-all", "Show every log from end to end"),
)
_IN_BAR = ("leave_out", "split", "join", "whole")


class LogsPage(Page):
    """Lanes, the strip of the selected stretch, and the panel of how a log was read."""

    title = "Logs"
    icon = "logs"

    def __init__(self, session: Session, settings: Settings, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("logs_page")
        self._session = session
        self._settings = settings
        self._locale = number_locale()
        self._log_id: str | None = None
        self._top = SentenceTop()
        self._lanes = LaneList()
        self._strip = StretchStrip()
        self._panel = ReadingPanel()
        self._actions = self._make_actions()
        self._menu = self._make_menu()
        self._lanes.run_picked.connect(session.select)
        self._lanes.edges_moved.connect(self._move_edges)
        self._lanes.edge_left.connect(session.seal)
        self._lanes.stretch_drawn.connect(self._draw)
        self._lanes.menu_wanted.connect(self._open_menu)
        self._lanes.log_opened.connect(self._open_log)
        self._strip.kind_chosen.connect(self._set_kind)
        self._strip.left_out.connect(self._leave_out_because)
        self._strip.included.connect(self._include)
        self._strip.renamed.connect(self._rename_to)
        self._strip.field_left.connect(session.seal)
        self._strip.handed_back.connect(self._hand_back)
        self._panel.choices_changed.connect(session.read_again)
        self._panel.machine_chosen.connect(self._move_log)
        self._panel.meter_chosen.connect(self._assign_meter)
        session.selection_changed.connect(self._on_selection)
        self._lay_out()

    def show_study(self, study: Study, comparison: Comparison | None) -> None:
        results = self._session.results
        self._top.say(headline(study), "")
        self._lanes.show_lanes(
            lanes(study, results), self._session.traces, self._session.selected, self._waiting
        )
        self._show_stretch()
        self._show_reading()

    def menu(self) -> QMenu | None:
        return self._menu

    # what the user does

    def _move_edges(self, run_id: str, start_s: float, end_s: float) -> None:
        self._session.apply(edits.move_edges(self._session.study, run_id, start_s, end_s))

    def _draw(self, log_id: str, start_s: float, end_s: float) -> None:
        before = {run.id for run in self._session.study.runs}
        self._session.apply(edits.draw_run(self._session.study, log_id, start_s, end_s))
        new = [run.id for run in self._session.study.runs if run.id not in before]
        self._session.select(new[0] if new else None)

    def _set_kind(self, kind: str) -> None:
        run = self._selected()
        chosen: Kind | None = next((k for k in KINDS if k == kind), None)
        if run is not None and chosen is not None and chosen != run.kind:
            self._session.apply(edits.set_kind(self._session.study, run.id, chosen))

    def _leave_out_because(self, why: str) -> None:
        run = self._selected()
        if run is not None:
            self._session.apply(edits.leave_out(self._session.study, run.id, why))

    def _include(self) -> None:
        run = self._selected()
        if run is not None:
            self._session.apply(edits.include(self._session.study, run.id))

    def _rename_to(self, name: str) -> None:
        run = self._selected()
        if run is not None:
            self._session.apply(edits.rename_run(self._session.study, run.id, name))
            self._session.seal()

    def _do_leave_out(self) -> None:
        run = self._selected()
        if run is None:
            return
        if self._counts(run):
            self._leave_out_because("")
            self._strip.ask_why()
        else:
            self._include()

    def _do_rename(self) -> None:
        if self._selected() is not None:
            self._strip.edit_name()

    def _do_split(self) -> None:
        run = self._selected()
        lane = self._lanes.lane(run.log_id) if run is not None else None
        if run is None or lane is None:
            return
        at_s = lane.middle_s()
        if not run.start_s < at_s < run.end_s:
            at_s = (run.start_s + run.end_s) / 2
        self._session.apply(edits.split_run(self._session.study, run.id, at_s))

    def _do_join(self) -> None:
        pair = self._with_next()
        if pair is not None:
            self._session.apply(edits.join_runs(self._session.study, pair))

    def _do_remove(self) -> None:
        run = self._selected()
        if run is not None:
            self._session.apply(edits.remove_run(self._session.study, run.id))

    def _hand_back(self) -> None:
        run = self._selected()
        if run is not None and edits.is_decided(run):
            self._session.apply(edits.hand_back(self._session.study, run.id))

    def _do_closer(self) -> None:
        run = self._selected()
        lane = self._lanes.lane(run.log_id) if run is not None else None
        if run is not None and lane is not None:
            lane.show_stretch(run.id)

    def _move_log(self, log_id: str, machine_id: str) -> None:
        self._session.apply(edits.move_log(self._session.study, log_id, machine_id))

    def _assign_meter(self, log_id: str, meter_id: str) -> None:
        self._session.apply(edits.assign_meter(self._session.study, log_id, meter_id))

    def _turn_panel(self, is_open: bool) -> None:
        self._settings.reading_panel_open = is_open
        self._panel.setVisible(is_open)
        self._show_reading()

    def _open_log(self, log_id: str) -> None:
        self._log_id = log_id
        self._show_reading()

    # what it shows

    def _show_reading(self) -> None:
        """Show how the log was read that was last worked on, or the first one."""
        logs = self._session.study.logs
        log = next((g for g in logs if g.id == self._log_id), logs[0] if logs else None)
        if not self._panel.isHidden():
            self._panel.show_log(self._session.study, log, self._session.data(log.id) if log else None)

    def _selected(self) -> Run | None:
        chosen = self._session.selected
        return next((run for run in self._session.study.runs if run.id == chosen), None)

    def _counts(self, run: Run) -> bool:
        result = self._session.results.get(run.id)
        return run.included if result is None else result.included

    def _with_next(self) -> tuple[str, str] | None:
        run = self._selected()
        if run is None:
            return None
        stretches = self._session.study.runs_of(run.log_id)
        later = [r for r in stretches if (r.start_s, r.id) > (run.start_s, run.id)]
        return (run.id, later[0].id) if later else None

    def _waiting(self, log_id: str) -> str:
        data = self._session.data(log_id)
        return "reading the log" if data is None else "this log could not be read"

    def _on_selection(self, run_id: str | None) -> None:
        self._lanes.select(run_id)
        self._show_stretch()
        run = self._selected()
        if run is not None:
            self._open_log(run.log_id)

    def _show_stretch(self) -> None:
        run = self._selected()
        result = self._session.results.get(run.id) if run is not None else None
        self._strip.show_stretch(self._session.study, run, result, self._locale)
        for name in ("leave_out", "rename", "split", "remove", "closer"):
            self._actions[name].setEnabled(run is not None)
        self._actions["hand_back"].setEnabled(run is not None and edits.is_decided(run))
        self._actions["join"].setEnabled(self._with_next() is not None)
        self._actions["leave_out"].setText(
            "Count it" if run is not None and not self._counts(run) else "Leave out"
        )

    # how it is built

    def _make_actions(self) -> dict[str, QAction]:
        does: dict[str, Callable[[], None]] = {
            "leave_out": self._do_leave_out,
            "rename": self._do_rename,
            "split": self._do_split,
            "join": self._do_join,
            "remove": self._do_remove,
            "hand_back": self._hand_back,
            "closer": self._do_closer,
            "whole": self._lanes.show_whole,
        }
        style = look.current()
        made = {}
        for name, text, keys, drawing, tip in _ACTIONS:
            action = QAction(text, self)
            action.setObjectName(f"stretch_action_{name}")
            action.setShortcut(QKeySequence(keys))
            action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            if name == "join":
                action.setIconText("Join")  # the button has no room for the whole
            action.setToolTip(f"{tip} ({action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)})")
            if drawing:
                action.setIcon(icon(drawing, style))
            action.triggered.connect(does[name])
            self.addAction(action)
            made[name] = action
        return made

    def _make_menu(self) -> QMenu:
        menu = QMenu("&Stretch", self)
        for name in self._actions:
            menu.addAction(self._actions[name])
        return menu

    def _open_menu(self, at: QPoint, at_s: float) -> None:
        self._menu.popup(at)

    def _lay_out(self) -> None:
        bar = QHBoxLayout()
        bar.setContentsMargins(S16, 0, S16, S4)
        bar.setSpacing(S4)
        for name in _IN_BAR:
            button = QToolButton()
            button.setObjectName(f"button_{name}")
            button.setDefaultAction(self._actions[name])
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
            bar.addWidget(button)
        bar.addStretch(1)
        panel = QToolButton()
        panel.setObjectName("button_panel")
        panel.setText("How it was read")
        panel.setCheckable(True)
        panel.setChecked(self._settings.reading_panel_open)
        panel.toggled.connect(self._turn_panel)
        bar.addWidget(panel)
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(bar)
        column.addWidget(self._lanes, 1)
        column.addWidget(self._strip)
        splitter = QSplitter(Qt.Orientation.Horizontal)
        splitter.addWidget(left)
        splitter.addWidget(self._panel)
        self._panel.setVisible(self._settings.reading_panel_open)
        splitter.setStretchFactor(0, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S8)
        layout.addWidget(self._top)
        layout.addWidget(splitter, 1)


def number_locale() -> NumberLocale:
    """How the user's desktop writes numbers."""
    locale = QLocale()
    return NumberLocale(locale.decimalPoint(), locale.groupSeparator())
