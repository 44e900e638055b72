"""Which runs are shown: machines with their runs, each with a box to tick."""

from collections.abc import Collection, Iterable, Mapping

from attrs import frozen
from PySide6.QtCore import QModelIndex, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtWidgets import QHeaderView, QSizePolicy, QTreeWidget, QTreeWidgetItem, QWidget

from core.figures.compare import shown_runs
from core.language import tr
from core.results.values import Comparison, MachineResult, RunResult
from gui.look import Look, MachineStyle, current, marker_path

_RUN_ID = Qt.ItemDataRole.UserRole
_ON, _OFF, _SOME = Qt.CheckState.Checked, Qt.CheckState.Unchecked, Qt.CheckState.PartiallyChecked
#: of more runs than this the machines are folded at first
_MANY_RUNS = 40


@frozen
class _Listed:
    """A machine with those of its runs that can be ticked."""

    machine_id: str
    name: str
    slot: int
    runs: tuple[RunResult, ...]


class RunPicker(QTreeWidget):
    """The runs of a comparison; those that do not count can be ticked too.

    The rows of a machine's runs are made when it is first opened: a farm has thousands.
    """

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
        self._comparison: Comparison | None = None
        self._look = current()
        self._listed: tuple[_Listed, ...] = ()
        self._tops: list[QTreeWidgetItem] = []
        #: the place of a run's machine, and its row as far as it has been made
        self._places: dict[str, int] = {}
        self._rows: dict[str, QTreeWidgetItem] = {}
        self._counted: frozenset[str] = frozenset()
        self._ticked: frozenset[str] = frozenset()
        self._remarks: dict[str, str] = {}
        self.itemChanged.connect(self._on_changed)
        self.itemExpanded.connect(self._on_expanded)
        self.currentItemChanged.connect(self._on_current)

    @property
    def ticked(self) -> frozenset[str]:
        """The ids of the runs that are ticked."""
        return self._ticked

    def show_runs(
        self, comparison: Comparison, chosen: Collection[str] | None, remarks: Mapping[str, str]
    ) -> None:
        """Show the runs of a comparison, those that are chosen (None: that count) ticked.

        ``remarks`` are told of a run where the pointer rests on it.
        """
        look = current()
        with QSignalBlocker(self):
            if comparison is not self._comparison or look != self._look:
                self._comparison = comparison
                listed = tuple(each for each in map(_listed, comparison.machines) if each.runs)
                if (listed, look) != (self._listed, self._look):
                    self._fill(listed, look)
            wanted = self._counted if chosen is None else frozenset(chosen).intersection(self._places)
            self._tick(self._ticked.symmetric_difference(wanted))
            self._remark(remarks)

    def select(self, run_id: str | None) -> None:
        """Show a run as chosen on every page, without telling anybody."""
        item, now = self.row_of(run_id), self.currentItem()
        if item is None and (now is None or now.parent() is None):
            return  # keys go on from a machine
        if item is not now:
            with QSignalBlocker(self):
                if item is None:
                    self.setCurrentIndex(QModelIndex())
                else:
                    self.setCurrentItem(item)

    def row_of(self, run_id: str | None) -> QTreeWidgetItem | None:
        """The row of a run; None where it is not listed."""
        place = self._places.get(run_id or "")
        if place is not None:
            self._make_runs(place)
        return self._rows.get(run_id or "")

    # rows

    def _fill(self, listed: tuple[_Listed, ...], look: Look) -> None:
        """List other machines; what was opened stays open."""
        opened = {each.name: top.isExpanded() for each, top in zip(self._listed, self._tops, strict=True)}
        is_open = sum(len(each.runs) for each in listed) <= _MANY_RUNS
        self.clear()
        self._listed, self._look = listed, look
        self._places = {run.run_id: place for place, each in enumerate(listed) for run in each.runs}
        self._counted = frozenset(run.run_id for each in listed for run in each.runs if run.included)
        self._rows, self._ticked, self._remarks = {}, frozenset(), {}
        self._tops = [QTreeWidgetItem([each.name]) for each in listed]
        icons: dict[MachineStyle, QIcon] = {}
        for each, top in zip(listed, self._tops, strict=True):
            style = look.machine(each.slot)
            if style not in icons:
                icons[style] = _icon(style, look)
            top.setIcon(0, icons[style])
            top.setFlags(top.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            top.setCheckState(0, _OFF)
            top.setChildIndicatorPolicy(QTreeWidgetItem.ChildIndicatorPolicy.ShowIndicator)
        self.addTopLevelItems(self._tops)
        for place, each in enumerate(listed):
            if opened.get(each.name, is_open):
                self._make_runs(place)
                self._tops[place].setExpanded(True)

    def _make_runs(self, place: int) -> None:
        """Make the rows of a machine's runs, unless there are some."""
        top = self._tops[place]
        if top.childCount():
            return
        for run in self._listed[place].runs:
            # what is complete before it is put in tells nobody of each of its parts
            item = self._rows[run.run_id] = QTreeWidgetItem()
            name = run.name if run.included else tr("{name} (not counted)", name=run.name)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setData(0, _RUN_ID, run.run_id)
            item.setData(0, _RUN_ID + 1, name)
            item.setData(0, _RUN_ID + 2, run.why_excluded or "")
            item.setCheckState(0, _ON if run.run_id in self._ticked else _OFF)
            self._say(item)
        with QSignalBlocker(self):
            top.addChildren([self._rows[run.run_id] for run in self._listed[place].runs])

    def _say(self, item: QTreeWidgetItem) -> None:
        """What a run's row says."""
        remark = self._remarks.get(item.data(0, _RUN_ID), "")
        name = item.data(0, _RUN_ID + 1)
        item.setText(0, tr("{name}  ◂ leaves", name=name) if remark else name)
        item.setToolTip(0, remark or item.data(0, _RUN_ID + 2))

    def _remark(self, remarks: Mapping[str, str]) -> None:
        """Mark the runs that something is to be said of; of thousands only those that change are touched."""
        before, self._remarks = self._remarks, {run_id: text for run_id, text in remarks.items() if text}
        for run_id in before.keys() | self._remarks.keys():
            if run_id in self._rows and before.get(run_id) != self._remarks.get(run_id):
                self._say(self._rows[run_id])

    def _tick(self, turned: Iterable[str]) -> None:
        """Turn the ticks of some runs, and show it: only what changes is touched."""
        self._ticked = self._ticked.symmetric_difference(turned)
        for run_id in turned:
            if run_id in self._rows:
                self._rows[run_id].setCheckState(0, _ON if run_id in self._ticked else _OFF)
        for place in {self._places[run_id] for run_id in turned}:
            runs = self._listed[place].runs
            ticked = sum(run.run_id in self._ticked for run in runs)
            self._tops[place].setCheckState(0, _OFF if not ticked else _ON if ticked == len(runs) else _SOME)

    # what the user does

    def _on_changed(self, item: QTreeWidgetItem) -> None:
        run_id = item.data(0, _RUN_ID)
        runs = [run_id] if run_id is not None else self._run_ids(self.indexOfTopLevelItem(item))
        is_on = item.checkState(0) == _ON
        turned = [each for each in runs if (each in self._ticked) != is_on]
        if not turned:
            return
        with QSignalBlocker(self):
            self._tick(turned)
        self.chosen.emit(None if self._ticked == self._counted else self._ticked)

    def _run_ids(self, place: int) -> list[str]:
        return [run.run_id for run in self._listed[place].runs]

    def _on_expanded(self, item: QTreeWidgetItem) -> None:
        self._make_runs(self.indexOfTopLevelItem(item))

    def _on_current(self, item: QTreeWidgetItem | None) -> None:
        run_id = None if item is None else item.data(0, _RUN_ID)
        if run_id is not None:
            self.picked.emit(run_id)

    def sizeHint(self) -> QSize:
        return QSize(round(15 * current().text_px), 200)


def _listed(machine: MachineResult) -> _Listed:
    """A machine's runs with a trace."""
    runs = tuple(run for run in shown_runs(machine) if run.start_s is not None)
    return _Listed(machine.machine_id, machine.name, machine.slot, runs)


def _icon(style: MachineStyle, look: Look) -> QIcon:
    """The machine's mark."""
    size = round(look.text_px)
    pixmap = QPixmap(size, size)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(look.pen("ink", 1.0))
    painter.setBrush(look.color(style.fill))
    painter.drawPath(marker_path(style.marker, 0.62 * size).translated(size / 2, size / 2))
    painter.end()
    return QIcon(pixmap)
