"""Which runs are shown: machines with their runs, each with a box to tick."""

from collections.abc import Collection, Mapping

from PySide6.QtCore import QModelIndex, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtWidgets import QHeaderView, QSizePolicy, QTreeWidget, QTreeWidgetItem, QWidget

from core.figures.compare import shown_runs
from core.language import tr
from core.results.values import Comparison, MachineResult, RunResult
from gui.look import Look, current, marker_path

_RUN_ID = Qt.ItemDataRole.UserRole
_ON, _OFF = Qt.CheckState.Checked, Qt.CheckState.Unchecked


class RunPicker(QTreeWidget):
    """The runs of a comparison; those that do not count can be ticked too."""

    chosen = Signal(object)  # frozenset of run ids, or None for all that count
    picked = Signal(object)  # run id

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("run_picker")
        self.setAccessibleName(tr("Runs to line up"))
        self.setHeaderHidden(True)
        self.setUniformRowHeights(True)
        self.setIndentation(14)
        self.header().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self._runs: dict[str, QTreeWidgetItem] = {}
        self._remarked: frozenset[str] = frozenset()
        self._counted: frozenset[str] = frozenset()
        self._shown: tuple[object, ...] = ()
        self.itemChanged.connect(self._on_changed)
        self.currentItemChanged.connect(self._on_current)

    @property
    def ticked(self) -> frozenset[str]:
        """The ids of the runs that are ticked."""
        return frozenset(run_id for run_id, item in self._runs.items() if item.checkState(0) == _ON)

    def show_runs(
        self, comparison: Comparison, chosen: Collection[str] | None, remarks: Mapping[str, str]
    ) -> None:
        """Show the runs of a comparison, those that are chosen (None: that count) ticked.

        ``remarks`` are told of a run where the pointer rests on it.
        """
        look = current()
        listed = tuple((m.machine_id, m.name, m.slot, _listed(m)) for m in comparison.machines)
        state = (listed, None if chosen is None else frozenset(chosen), tuple(sorted(remarks.items())), look)
        if state == self._shown:
            return
        is_same_list = bool(self._shown) and self._shown[0] == listed and self._shown[3] == look
        self._shown = state
        with QSignalBlocker(self):
            if not is_same_list:
                self._fill(comparison, look, chosen)
            self._tick(chosen)
            self._remark(remarks)

    def select(self, run_id: str | None) -> None:
        """Show a run as chosen on every page, without telling anybody."""
        item = self._runs.get(run_id or "")
        if item is not self.currentItem():
            with QSignalBlocker(self):
                if item is None:
                    self.setCurrentIndex(QModelIndex())
                else:
                    self.setCurrentItem(item)

    def _remark(self, remarks: Mapping[str, str]) -> None:
        """Mark the runs that something is to be said of; of thousands only those that change are touched."""
        told = {run_id: text for run_id, text in remarks.items() if text and run_id in self._runs}
        for run_id in self._remarked.union(told).intersection(self._runs):
            item, remark = self._runs[run_id], told.get(run_id, "")
            name = item.data(0, _RUN_ID + 1)
            item.setText(0, tr("{name}  ◂ leaves", name=name) if remark else name)
            item.setToolTip(0, remark or item.data(0, _RUN_ID + 2))
        self._remarked = frozenset(told)

    def _fill(self, comparison: Comparison, look: Look, chosen: Collection[str] | None) -> None:
        tops = [self.topLevelItem(i) for i in range(self.topLevelItemCount())]
        opened = {item.text(0): item.isExpanded() for item in tops if item is not None}
        self.clear()
        self._runs, self._remarked = {}, frozenset()
        many = sum(len(_listed(m)) for m in comparison.machines) > 40
        for machine in comparison.machines:
            runs = _listed(machine)
            if not runs:
                continue
            parent = QTreeWidgetItem([machine.name])
            parent.setIcon(0, _icon(machine.slot, look))
            parent.setFlags(parent.flags() | Qt.ItemFlag.ItemIsAutoTristate | Qt.ItemFlag.ItemIsUserCheckable)
            # what is complete before it is put in tells nobody of each of its parts
            items = []
            for run in runs:
                name = run.name if run.included else tr("{name} (not counted)", name=run.name)
                item = QTreeWidgetItem([name])
                item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
                item.setData(0, _RUN_ID, run.run_id)
                item.setData(0, _RUN_ID + 1, name)
                if run.why_excluded:
                    item.setData(0, _RUN_ID + 2, run.why_excluded)
                    item.setToolTip(0, run.why_excluded)
                is_ticked = run.included if chosen is None else run.run_id in chosen
                item.setCheckState(0, _ON if is_ticked else _OFF)
                items.append(item)
                self._runs[run.run_id] = item
            parent.addChildren(items)
            self.addTopLevelItem(parent)
            parent.setExpanded(opened.get(machine.name, not many))
        self._counted = frozenset(r.run_id for m in comparison.machines for r in _listed(m) if r.included)

    def _tick(self, chosen: Collection[str] | None) -> None:
        wanted = self._counted if chosen is None else chosen
        for run_id, item in self._runs.items():
            state = _ON if run_id in wanted else _OFF
            if item.checkState(0) != state:
                item.setCheckState(0, state)

    def _on_changed(self, item: QTreeWidgetItem) -> None:
        # a machine's box is told after those of its runs; one message is enough
        ticked = self.ticked
        chosen = None if ticked == self._counted else ticked
        if (self._shown[1] if self._shown else None) != chosen:
            self._shown = (self._shown[0], chosen, *self._shown[2:])
            self.chosen.emit(chosen)

    def _on_current(self, item: QTreeWidgetItem | None) -> None:
        run_id = None if item is None else item.data(0, _RUN_ID)
        if run_id is not None:
            self.picked.emit(run_id)

    def sizeHint(self) -> QSize:
        return QSize(round(15 * current().text_px), 200)


def _listed(machine: MachineResult) -> tuple[RunResult, ...]:
    """The runs with a trace."""
    return tuple(r for r in shown_runs(machine) if r.start_s is not None)


def _icon(slot: int, look: Look) -> QIcon:
    """The machine's mark."""
    size = round(look.text_px)
    pixmap = QPixmap(size, size)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    style = look.machine(slot)
    painter.setPen(look.pen("ink", 1.0))
    painter.setBrush(look.color(style.fill))
    painter.drawPath(marker_path(style.marker, 0.62 * size).translated(size / 2, size / 2))
    painter.end()
    return QIcon(pixmap)
