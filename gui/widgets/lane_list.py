"""All lanes under each other, kept and fed rather than built anew."""

from collections.abc import Callable, Mapping, Sequence

from attrs import evolve, frozen
from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from core.figures.lanes import LaneContent
from core.language import tr
from core.traces import Trace
from gui.charts.traces import Lane
from gui.look import S4, S8

#: a lane grows to this many times its least height when there is room
_MOST_GROWTH = 4.5
#: so many lanes are made in one turn of the event loop; the rest follow in the next turns
_MADE_AT_ONCE = 10


@frozen(eq=False)
class _Asked:
    """What is to be shown, as it was asked for last."""

    contents: Sequence[LaneContent]
    traces: Mapping[str, Trace]
    selected: str | None
    waiting: Callable[[str], str]


class LaneList(QScrollArea):
    """Lanes of one study; passes on what the user does to any of them."""

    run_picked = Signal(object)
    edges_moved = Signal(str, float, float)
    edge_left = Signal()
    stretch_drawn = Signal(str, float, float)
    menu_wanted = Signal(object, object)
    log_opened = Signal(str)
    lanes_made = Signal()
    head_menu_wanted = Signal(str, object)
    machine_renamed = Signal(str, str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("lanes")
        self.setAccessibleName(tr("Logs"))
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._lanes: dict[str, Lane] = {}
        self._body = QWidget()
        self._layout = QVBoxLayout(self._body)
        self._layout.setContentsMargins(S8, S4, S8, S4)
        self._layout.setSpacing(S4)
        self._layout.addStretch(1)
        self.setWidget(self._body)
        self._asked: _Asked | None = None
        self._next = 0
        self._more = QTimer(self)
        self._more.setSingleShot(True)
        self._more.setInterval(0)
        self._more.timeout.connect(self._show_more)

    def show_lanes(
        self,
        contents: Sequence[LaneContent],
        traces: Mapping[str, Trace],
        selected: str | None,
        waiting: Callable[[str], str],
    ) -> None:
        """Show these logs in this order; `waiting` says why a log has no trace yet."""
        self._asked = _Asked(contents, traces, selected, waiting)
        wanted = {content.log_id for content in contents}
        for log_id in [there for there in self._lanes if there not in wanted]:
            lane = self._lanes.pop(log_id)
            self._layout.removeWidget(lane)
            lane.hide()
            lane.deleteLater()
        self._show_from(0)

    def _show_from(self, first: int) -> None:
        """Show the lanes from this place on, as far as one turn of the event loop allows."""
        asked = self._asked
        if asked is None:
            return
        before = len(self._lanes)
        self._next = len(asked.contents)
        for place, content in enumerate(asked.contents[first:], start=first):
            known = self._lanes.get(content.log_id)
            if known is None and len(self._lanes) - before == _MADE_AT_ONCE:
                self._next = place
                self._more.start()
                break
            self._show_lane(place, content, known or self._new_lane(content.log_id), asked)
        if len(self._lanes) != before:
            self.lanes_made.emit()

    def _show_lane(self, place: int, content: LaneContent, lane: Lane, asked: _Asked) -> None:
        if self._layout.indexOf(lane) != place:
            self._layout.insertWidget(place, lane, 100)
        trace = asked.traces.get(content.log_id)
        waiting = "" if trace is not None else asked.waiting(content.log_id)
        lane.show_content(content, trace, asked.selected, waiting)
        lane.setMaximumHeight(round(_MOST_GROWTH * lane.minimumSizeHint().height()))
        lane.show()

    def _show_more(self) -> None:
        if self.isVisible():  # lanes that nobody sees would only hold up the page that is seen
            self._show_from(self._next)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._asked is not None and self._next < len(self._asked.contents):
            self._more.start()

    def select(self, run_id: str | None) -> None:
        """Mark a stretch on whichever lane it is, and bring that lane into view."""
        if self._asked is not None:
            self._asked = evolve(self._asked, selected=run_id)
        for lane in self._lanes.values():
            lane.select(run_id)
            if run_id is not None and lane.content is not None and lane.content.block(run_id) is not None:
                self.ensureWidgetVisible(lane, 0, S8)

    def lane(self, log_id: str) -> Lane | None:
        """The lane of a log."""
        return self._lanes.get(log_id)

    @property
    def lanes(self) -> tuple[Lane, ...]:
        """All lanes from top to bottom."""
        items = (self._layout.itemAt(i) for i in range(self._layout.count()))
        found = (item.widget() for item in items if item is not None)
        return tuple(lane for lane in found if isinstance(lane, Lane))

    def show_whole(self) -> None:
        """Return every lane to its whole log."""
        for lane in self._lanes.values():
            lane.show_whole()

    def focus_neighbour(self, by: int) -> None:
        """Give the keyboard to the next lane, or the one before."""
        lanes = self.lanes
        places = [i for i, lane in enumerate(lanes) if lane.hasFocus()]
        if places:
            lane = lanes[min(max(places[0] + by, 0), len(lanes) - 1)]
            lane.setFocus(Qt.FocusReason.TabFocusReason)
            self.ensureWidgetVisible(lane, 0, S8)

    def _new_lane(self, log_id: str) -> Lane:
        lane = Lane(self._body)
        lane.setObjectName(f"lane_{log_id}")
        lane.run_picked.connect(self.run_picked)
        lane.edges_moved.connect(self.edges_moved)
        lane.edge_left.connect(self.edge_left)
        lane.stretch_drawn.connect(self.stretch_drawn)
        lane.menu_wanted.connect(self.menu_wanted)
        lane.opened.connect(self.log_opened)
        lane.neighbour_wanted.connect(self.focus_neighbour)
        lane.zoomed_together.connect(self._zoom_all)
        lane.head_menu_wanted.connect(self.head_menu_wanted)
        lane.machine_renamed.connect(self.machine_renamed)
        self._lanes[log_id] = lane
        return lane

    def _zoom_all(self, factor: float, share: float) -> None:
        for lane in self._lanes.values():
            lane.zoom(factor, share)
