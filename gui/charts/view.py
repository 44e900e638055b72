"""A widget that shows a figure: hover reads out the nearest run, click and arrow keys select, Ctrl+C copies.

A click on a value, a double click on a run, or F1 asks how it was found. Pulled with the left button, the
picture goes out of the window.

Theory of operation, in three cached stages: a figure (given), its scene at the widget's size (dropped when
figure, size or look change) and the painted scene (dropped with the scene or another device ratio). Hover and
selection are painted over the last stage and belong to no saved picture.
"""

from collections.abc import Callable, Iterator

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
    QHelpEvent,
    QKeyEvent,
    QKeySequence,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPixmap,
    QResizeEvent,
)
from PySide6.QtWidgets import QApplication, QSizePolicy, QToolTip, QWidget

from core.figures.curve_values import CurvesFigure
from core.figures.placing import Box
from core.figures.values import ComparisonFigure, EnergyTimeFigure, Figure
from gui.charts.drawing import paint
from gui.charts.layout import lay_out, room_for
from gui.charts.readout import paint_readout
from gui.charts.scene import Scene, Target, ValuePlace
from gui.look import Look, current

#: how near the pointer must be to a run to read it out [px at scale 1]
_REACH = 22.0
#: a higher chart is never seen whole: what is visible of it is painted each time, and nothing is kept [px]
_MOST_KEPT = 2400
_ASKING_KEYS = (Qt.Key.Key_F1, Qt.Key.Key_Return, Qt.Key.Key_Enter)

Readout = Callable[[str, str], tuple[str, ...]]


class ChartView(QWidget):
    """Shows one figure."""

    picked = Signal(object)  # run id or None
    leaving_out = Signal(str)  # Delete was pressed on a run
    #: how was it found: machine id, run id or nothing, key of the measure; all empty at a reading of a curve
    asked = Signal(str, str, str)
    copying = Signal()
    pulled = Signal()  # the pointer has been moved with the button held: the picture is to go elsewhere

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName(name)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self._figure: Figure | None = None
        self._readout: Readout = lambda run_id, key: ()
        self._look: Look = current()
        self._scene: Scene | None = None
        self._painted: QPixmap | None = None
        self._hovered: Target | None = None
        self._selected: str | None = None
        self._pressed: QPointF | None = None

    @property
    def figure(self) -> Figure | None:
        """What is shown."""
        return self._figure

    @property
    def selected(self) -> str | None:
        """The selected run."""
        return self._selected

    @property
    def hovered(self) -> Target | None:
        """What the pointer is at."""
        return self._hovered

    @property
    def look(self) -> Look:
        """How it is painted."""
        return self._look

    def show_figure(self, figure: Figure | None, readout: Readout) -> None:
        """Show another figure; `readout` says a run in one measure as lines of text."""
        self._readout = readout
        if figure == self._figure:
            return
        self._figure = figure
        self._hovered = None
        self._drop()
        self._take_room()
        self._describe()

    def select(self, run_id: str | None) -> None:
        """Show a run as selected, without telling anybody."""
        if run_id != self._selected:
            self._selected = run_id
            self._describe()
            self.update()

    def scene(self) -> Scene | None:
        """The figure laid out at the widget's size."""
        if self._scene is None and self._figure is not None and self.width() > 1 and self.height() > 1:
            self._scene = lay_out(self._figure, self.width(), self.height(), self._look)
        return self._scene

    def readout_lines(self) -> tuple[str, ...]:
        """What is read out now: the run under the pointer, or else the selected one."""
        target = self._shown_target()
        return () if target is None else target.lines or self._readout(target.run_id, target.key)

    def sizeHint(self) -> QSize:
        if self._figure is None:
            return QSize(400, 200)
        width, height = room_for(self._figure, self._look).wished
        return QSize(round(width), round(height))

    def minimumSizeHint(self) -> QSize:
        if self._figure is None:
            return QSize(240, 120)
        width, height = room_for(self._figure, self._look).least
        return QSize(round(width), round(height))

    def _take_room(self) -> None:
        self.setMinimumSize(self.minimumSizeHint())
        if self._figure is not None:
            self.setMaximumHeight(round(room_for(self._figure, self._look).most_height))
        self.updateGeometry()

    # painting

    def _drop(self) -> None:
        self._scene = None
        self._painted = None
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._hovered = None
        self._drop()
        super().resizeEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange):
            self._look = current()
            self._drop()
            self._take_room()
        super().changeEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        try:
            self._paint(painter, event.rect())
        finally:
            painter.end()

    def _paint(self, painter: QPainter, seen: QRect) -> None:
        scene = self.scene()
        if scene is None:
            painter.fillRect(self.rect(), self._look.color("card"))
            return
        if self.height() > _MOST_KEPT:
            self._painted = None
            painter.fillRect(seen, self._look.color("card"))
            paint(painter, scene, self._look, Box(seen.x(), seen.y(), seen.width(), seen.height()))
        else:
            painter.drawPixmap(0, 0, self._pixmap(scene))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_states(painter, scene)

    def _pixmap(self, scene: Scene) -> QPixmap:
        ratio = self.devicePixelRatioF()
        if self._painted is None or self._painted.devicePixelRatio() != ratio:
            pixels = QSize(round(self.width() * ratio), round(self.height() * ratio))
            self._painted = QPixmap(pixels)
            self._painted.setDevicePixelRatio(ratio)
            self._painted.fill(self._look.color("card"))
            painter = QPainter(self._painted)
            paint(painter, scene, self._look)
            painter.end()
        return self._painted

    def _paint_states(self, painter: QPainter, scene: Scene) -> None:
        look = self._look
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for target in scene.targets:
            if target.run_id and target.run_id == self._selected:
                painter.setPen(look.pen("link", 2.5))
                painter.drawEllipse(QPointF(target.x, target.y), look.px(6.5), look.px(6.5))
        if self._hovered is not None:
            painter.setPen(look.pen("ink", 1.6))
            painter.drawEllipse(QPointF(self._hovered.x, self._hovered.y), look.px(7), look.px(7))
        if self.hasFocus():
            painter.setPen(look.pen("link", 2.0))
            painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))
        read_out = self._shown_target()
        lines = self.readout_lines()
        if read_out is not None and lines:
            whole = Box(0, 0, self.width(), self.height())
            paint_readout(painter, lines, (read_out.x, read_out.y), whole, look)

    def _shown_target(self) -> Target | None:
        if self._hovered is not None:
            return self._hovered
        if not self._selected or not self.hasFocus():
            return None  # before the scene is asked for: it costs, and may be wanted at another size soon
        scene = self.scene()
        if scene is None:
            return None
        return next((t for t in scene.targets if t.run_id == self._selected), None)

    # pointing

    def target_at(self, x: float, y: float) -> Target | None:
        """The run nearest to a place, if one is near."""
        return self._nearest(x, y, lambda target: bool(target.run_id))

    def pointed_at(self, x: float, y: float) -> Target | None:
        """What is read out at a place: a run, or else what has something to say by itself."""
        return self.target_at(x, y) or self._nearest(x, y, lambda target: bool(target.lines))

    def _nearest(self, x: float, y: float, is_meant: Callable[[Target], bool]) -> Target | None:
        scene = self.scene()
        meant = () if scene is None else [t for t in scene.targets if is_meant(t)]
        nearest = min(meant, key=lambda t: (t.x - x) ** 2 + (t.y - y) ** 2, default=None)
        reach = self._look.px(_REACH)
        if nearest is None or (nearest.x - x) ** 2 + (nearest.y - y) ** 2 > reach**2:
            return None
        return nearest

    def value_at(self, x: float, y: float) -> ValuePlace | None:
        """The machine's value that is written at a place, if one is."""
        scene = self.scene()
        values = () if scene is None else scene.values
        return next((v for v in values if v.box.x <= x <= v.box.right and v.box.y <= y <= v.box.bottom), None)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position()
        if self._pressed is not None:
            if (at - self._pressed).manhattanLength() >= QApplication.startDragDistance():
                self._pressed = None
                self._hover(None)
                self.pulled.emit()
            return
        value = self.value_at(at.x(), at.y())
        self.setCursor(Qt.CursorShape.ArrowCursor if value is None else Qt.CursorShape.PointingHandCursor)
        self._hover(self.pointed_at(at.x(), at.y()) if value is None else self._mark_of(value))

    def _mark_of(self, value: ValuePlace) -> Target | None:
        """The mark beside which a value is written, where it has something to say by itself."""
        of, scene = (value.machine_id, value.key), self.scene()
        marks = () if scene is None else scene.targets
        return next((t for t in marks if t.lines and (t.machine_id, t.key) == of), None)

    def leaveEvent(self, event: QEvent) -> None:
        self._hover(None)

    def _hover(self, target: Target | None) -> None:
        if target != self._hovered:
            self._hovered = target
            self._describe()
            self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._pressed = event.position()
        else:
            super().mousePressEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        pressed = self._pressed
        if event.button() != Qt.MouseButton.LeftButton or pressed is None:
            super().mouseReleaseEvent(event)
            return
        self._pressed = None
        value = self.value_at(pressed.x(), pressed.y())
        if value is not None:
            self.asked.emit(value.machine_id, "", value.key)
        else:
            target = self.target_at(pressed.x(), pressed.y())
            self._pick(None if target is None else target.run_id)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        target = self.pointed_at(event.position().x(), event.position().y())
        if target is not None and self.value_at(event.position().x(), event.position().y()) is None:
            self.asked.emit(target.machine_id, target.run_id, target.key)

    def _pick(self, run_id: str | None) -> None:
        self.select(run_id)
        self.picked.emit(run_id)

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.ShortcutOverride and isinstance(event, QKeyEvent):
            is_ours = event.key() == Qt.Key.Key_F1 and self._selected is not None
            if is_ours:  # the window has a shortcut of the same key
                event.accept()
                return True
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            text = self._hint_at(event.pos().x(), event.pos().y())
            if text and self._hovered is None:
                QToolTip.showText(event.globalPos(), text, self)
            else:
                QToolTip.hideText()
            return True
        return super().event(event)

    def _hint_at(self, x: float, y: float) -> str:
        scene = self.scene()
        hints = () if scene is None else scene.hints
        return next(
            (h.text for h in hints if h.box.x <= x <= h.box.right and h.box.y <= y <= h.box.bottom), ""
        )

    # keys

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copying.emit()
        elif key == Qt.Key.Key_Escape and self._selected is not None:
            self._pick(None)
        elif key in _ASKING_KEYS and self._selected is not None:
            self._ask(of_machine=bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier))
        elif key == Qt.Key.Key_Delete and self._selected is not None:
            self.leaving_out.emit(self._selected)
        elif key in (Qt.Key.Key_Right, Qt.Key.Key_Left):
            self._step(1 if key == Qt.Key.Key_Right else -1, along_machines=False)
        elif key in (Qt.Key.Key_Down, Qt.Key.Key_Up):
            self._step(1 if key == Qt.Key.Key_Down else -1, along_machines=True)
        else:
            super().keyPressEvent(event)

    def _ask(self, *, of_machine: bool) -> None:
        scene = self.scene()
        targets = () if scene is None else scene.targets
        hovered = "" if self._hovered is None else self._hovered.key
        mine = [t for t in targets if t.run_id == self._selected]
        target = next((t for t in mine if t.key == hovered), mine[0] if mine else None)
        if target is not None:
            self.asked.emit(target.machine_id, "" if of_machine else target.run_id, target.key)

    def _step(self, by: int, *, along_machines: bool) -> None:
        """Walk the runs in the figure's order; up and down go from machine to machine."""
        machines = [m for m in self._runs_by_machine() if m]
        runs = [run for machine in machines for run in machine]
        if not runs:
            self._step_readings(by)
        elif self._selected not in runs:
            self._pick(runs[0])
        elif not along_machines:
            at = runs.index(self._selected) + by
            self._pick(runs[min(max(at, 0), len(runs) - 1)])
        else:
            row = next(i for i, machine in enumerate(machines) if self._selected in machine)
            place = machines[row].index(self._selected)
            other = machines[min(max(row + by, 0), len(machines) - 1)]
            self._pick(other[min(place, len(other) - 1)])

    def _step_readings(self, by: int) -> None:
        """Walk what can be read out where there are no runs."""
        scene = self.scene()
        told = [] if scene is None else [t for t in scene.targets if t.lines]
        if told:
            at = told.index(self._hovered) + by if self._hovered in told else 0
            self._hover(told[min(max(at, 0), len(told) - 1)])

    def _runs_by_machine(self) -> Iterator[tuple[str, ...]]:
        figure = self._figure
        if isinstance(figure, ComparisonFigure):
            for i in range(len(figure.rows)):
                cell = figure.measures[0].cells[i]
                own = () if cell.mark is None or not cell.mark.pick_id else (cell.mark.pick_id,)
                yield (*own, *(d.run_id for d in cell.dots))
        elif isinstance(figure, EnergyTimeFigure):
            for mark in figure.marks:
                yield tuple(d.run_id for d in mark.dots)
        elif isinstance(figure, CurvesFigure):
            machines = dict.fromkeys(s.machine_id for s in figure.spots)
            for machine_id in machines:
                of_it = (s.run_id for s in figure.spots if s.machine_id == machine_id and s.run_id)
                yield tuple(dict.fromkeys(of_it))

    # for a screen reader

    def _describe(self) -> None:
        from core.figures.source import numbers_of

        lines = self.readout_lines()
        told = ", ".join(lines) if lines else ("" if self._figure is None else numbers_of(self._figure))
        if told != self.accessibleDescription():
            self.setAccessibleDescription(told)
            QAccessible.updateAccessibility(QAccessibleEvent(self, QAccessible.Event.DescriptionChanged))
