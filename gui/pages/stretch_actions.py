"""What can be done with the selected stretch, by menu, key or button; every one is an edit of the study."""

from collections.abc import Callable
from functools import partial
from typing import Final

from PySide6.QtCore import QObject, Qt, Slot
from PySide6.QtGui import QAction, QGuiApplication, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from core import edits
from core.edits import Edit
from core.figures.lanes import stretch_rows
from core.language import mark, tr
from core.study import KINDS, Kind, Run, Study
from gui import look
from gui.charts.traces import Lane
from gui.icons import icon
from gui.images import clipboard_data
from gui.session import Session
from gui.widgets.lane_list import LaneList
from gui.widgets.stretch_strip import KIND_WORDS, StretchStrip

#: id, text, keys, icon, what it does
_TABLE: Final = (
    (
        "leave_out",
        mark("Leave out"),
        "Del",
        "leave-out",
        mark("Leave the stretch out of the comparison, or count it again"),
    ),
    (
        "rename",
        mark("Rename"),
        "F2",
        "",
        mark("Give the stretch a name, or the machine if no stretch is selected"),
    ),
    ("split", mark("Split"), "S", "split", mark("Cut the stretch in two where the pointer is")),
    ("join", mark("Join with next"), "J", "join", mark("Make one stretch of this one and the next")),
    ("remove", mark("Nothing here"), "Ctrl+Del", "", mark("Say that there is nothing here")),
    (
        "hand_back",
        mark("Hand back to the program"),
        "Ctrl+B",
        "",
        mark("Take back every decision about this stretch"),
    ),
    ("closer", mark("Look closely"), "Z", "", mark("Show this stretch alone")),
    ("whole", mark("Whole logs"), "W", "zoom-all", mark("Show every log from end to end")),
    (
        "copy",
        mark("Copy the lane"),
        "Ctrl+C",
        "",
        mark("Copy the lane's picture and its stretches as numbers"),
    ),
    (
        "draw",
        mark("Mark a stretch"),
        "N",
        "",
        mark("Mark a stretch in the middle of what is visible of the log"),
    ),
)
#: a button has no room for the whole text
_ON_BUTTON: Final = {"join": mark("Join"), "whole": mark("Whole")}


class StretchActions(QObject):
    """The actions of the Logs page and their menu."""

    def __init__(self, session: Session, lanes: LaneList, strip: StretchStrip, page: QWidget) -> None:
        super().__init__(page)
        self._session, self._lanes, self._strip = session, lanes, strip
        self._log_id: str | None = None
        does: dict[str, Callable[[], None]] = {
            "leave_out": self._leave_out,
            "rename": self._rename,
            "split": self._split,
            "join": self._join,
            "remove": self._remove,
            "hand_back": self._hand_back,
            "closer": self._look_closely,
            "whole": lanes.show_whole,
            "draw": self._draw_in_middle,
            "copy": self._copy,
        }
        self.actions = {name: self._made(page, does[name], name, *rest) for name, *rest in _TABLE}
        self.menu = QMenu(tr("&Stretch"), page)
        self._kinds = self.menu.addMenu(tr("What it &is"))
        for kind in KINDS:
            action = self._kinds.addAction(tr(KIND_WORDS[kind]))
            action.setData(kind)
            action.setCheckable(True)
        self._kinds.triggered.connect(self._choose_kind)
        self.menu.addActions(list(self.actions.values()))
        lanes.edges_moved.connect(self._move_edges)
        lanes.edge_left.connect(session.seal)
        lanes.stretch_drawn.connect(self._draw)
        strip.kind_chosen.connect(self._set_kind)
        strip.left_out.connect(self._leave_out_because)
        strip.included.connect(self._include)
        strip.renamed.connect(self._rename_to)
        strip.field_left.connect(session.seal)
        strip.handed_back.connect(self._hand_back)

    @property
    def selected(self) -> Run | None:
        """The selected stretch."""
        chosen = self._session.selected
        return next((run for run in self._session.study.runs if run.id == chosen), None)

    def set_log(self, log_id: str | None) -> None:
        """Which log is worked on when no stretch is selected."""
        self._log_id = log_id

    def refresh(self) -> None:
        """Enable what can be done now."""
        run = self.selected
        for name in ("leave_out", "split", "remove", "closer"):
            self.actions[name].setEnabled(run is not None)
        self.actions["hand_back"].setEnabled(run is not None and edits.is_decided(run))
        self.actions["join"].setEnabled(self._with_next() is not None)
        counts = run is None or self._counts(run)
        self.actions["leave_out"].setText(tr("Leave out") if counts else tr("Count it"))
        self._kinds.setEnabled(run is not None)
        for action in self._kinds.actions():
            action.setChecked(run is not None and action.data() == run.kind)

    def draw_icons(self) -> None:
        """Draw the icons in the ink of the current look."""
        style = look.current()
        for name, _, _, drawing, _ in _TABLE:
            if drawing:
                self.actions[name].setIcon(icon(drawing, style))

    def _lane_of(self, log_id: str | None) -> Lane | None:
        return None if log_id is None else self._lanes.lane(log_id)

    # edits

    def _edit(self, edit: Callable[[Study, str], Edit]) -> None:
        """Apply an edit of one stretch to the selected one, if there is one."""
        run = self.selected
        if run is not None:
            self._session.apply(edit(self._session.study, run.id))

    def _move_edges(self, run_id: str, start_s: float, end_s: float) -> None:
        self._session.apply(edits.move_edges(self._session.study, run_id, start_s, end_s))

    def _draw(self, log_id: str, start_s: float, end_s: float) -> None:
        before = {run.id for run in self._session.study.runs}
        self._session.apply(edits.draw_run(self._session.study, log_id, start_s, end_s))
        new = [run.id for run in self._session.study.runs if run.id not in before]
        self._session.select(new[0] if new else None)

    def _draw_in_middle(self) -> None:
        lane = self._lane_of(self._log_id)
        if lane is not None and self._log_id is not None:
            view = lane.view
            third_s = view.span_s / 3
            self._draw(self._log_id, view.start_s + third_s, view.end_s - third_s)

    def _set_kind(self, kind: str) -> None:
        run = self.selected
        chosen: Kind | None = next((k for k in KINDS if k == kind), None)
        if run is not None and chosen is not None and chosen != run.kind:
            self._session.apply(edits.set_kind(self._session.study, run.id, chosen))

    @Slot(QAction)
    def _choose_kind(self, action: QAction) -> None:
        self._set_kind(str(action.data()))
        self.refresh()

    def _leave_out_because(self, why: str) -> None:
        self._edit(partial(edits.leave_out, why=why))

    def _include(self) -> None:
        self._edit(edits.include)

    def _leave_out(self) -> None:
        run = self.selected
        if run is not None and self._counts(run):
            self._leave_out_because("")
            self._strip.ask_why()
        else:
            self._include()

    def _rename(self) -> None:
        lane = self._lane_of(self._log_id)
        if self.selected is not None:
            self._strip.edit_name()
        elif lane is not None:
            lane.edit_name()

    def _rename_to(self, name: str) -> None:
        self._edit(partial(edits.rename_run, name=name))
        self._session.seal()

    def _split(self) -> None:
        run = self.selected
        lane = self._lane_of(run.log_id if run is not None else None)
        if run is None or lane is None:
            return
        at_s = lane.middle_s()
        if not run.start_s < at_s < run.end_s:
            at_s = (run.start_s + run.end_s) / 2
        self._session.apply(edits.split_run(self._session.study, run.id, at_s))

    def _join(self) -> None:
        pair = self._with_next()
        if pair is not None:
            self._session.apply(edits.join_runs(self._session.study, pair))

    def _remove(self) -> None:
        self._edit(edits.remove_run)

    def _hand_back(self) -> None:
        run = self.selected
        if run is not None and edits.is_decided(run):
            self._session.apply(edits.hand_back(self._session.study, run.id))

    def _look_closely(self) -> None:
        run = self.selected
        lane = self._lane_of(run.log_id if run is not None else None)
        if run is not None and lane is not None:
            lane.show_stretch(run.id)

    def _copy(self) -> None:
        lane = self._lane_of(self._log_id)
        trace = self._session.traces.get(self._log_id) if self._log_id is not None else None
        if lane is None or lane.content is None or trace is None:
            return
        rows = stretch_rows(lane.content, trace.clock, self._session.results)
        QGuiApplication.clipboard().setMimeData(clipboard_data(lane.grab().toImage(), rows))

    def _counts(self, run: Run) -> bool:
        result = self._session.results.get(run.id)
        return run.included if result is None else result.included

    def _with_next(self) -> tuple[str, str] | None:
        run = self.selected
        if run is None:
            return None
        later = [
            r for r in self._session.study.runs_of(run.log_id) if (r.start_s, r.id) > (run.start_s, run.id)
        ]
        return (run.id, later[0].id) if later else None

    def _made(
        self, page: QWidget, does: Callable[[], None], name: str, text: str, keys: str, drawing: str, tip: str
    ) -> QAction:
        action = QAction(tr(text), page)
        action.setObjectName(f"stretch_action_{name}")
        action.setShortcut(QKeySequence(keys))
        if name in _ON_BUTTON:
            action.setIconText(tr(_ON_BUTTON[name]))
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        action.setToolTip(f"{tr(tip)} ({action.shortcut().toString(QKeySequence.SequenceFormat.NativeText)})")
        action.triggered.connect(does)
        page.addAction(action)
        return action
