"""The columns of a file with what each was taken for, to be corrected."""

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QLabel, QWidget

from core.language import mark, tr
from core.logs.reading import Column
from core.study import Choices
from gui.look import S4, S8
from gui.widgets.choice import Choice

_MEANINGS = (
    (mark("time"), ""),
    (mark("power"), "W"),
    (mark("power"), "kW"),
    (mark("power"), "mW"),
    (mark("energy"), "Wh"),
    (mark("energy"), "kWh"),
    (mark("energy"), "mWh"),
    (mark("energy"), "kJ"),
    (mark("energy"), "MJ"),
    (mark("voltage"), "V"),
    (mark("current"), "A"),
    (mark("temperature"), "degC"),
    (mark("device"), ""),
    (mark("other"), ""),
)
#: more columns than this are of no use here, and would take long to build
_MOST = 24
_NAME_SHOWN = 16


class ColumnTable(QWidget):
    """A line for each column: heading and meaning."""

    columns_set = Signal(object)  # tuple of (position, quantity, unit)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(S8)
        self._grid.setVerticalSpacing(S4)
        self._grid.setColumnStretch(1, 1)
        self._columns: tuple[Column, ...] = ()
        self._choices = Choices()
        self._combos: list[QComboBox] = []

    @property
    def combos(self) -> tuple[QComboBox, ...]:
        """The lists of meanings, from top to bottom."""
        return tuple(self._combos)

    def show_columns(self, columns: Sequence[Column], choices: Choices) -> None:
        """Show these columns and which of them the user has decided."""
        if tuple(columns) == self._columns and choices == self._choices:
            return
        self._columns, self._choices = tuple(columns), choices
        while (item := self._grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self._combos = []
        by_hand = {position for position, _, _ in choices.columns}
        for position, column in enumerate(self._columns[:_MOST]):
            self._add(position, column, position in by_hand)

    def _add(self, position: int, column: Column, is_by_hand: bool) -> None:
        name = column.name or tr("column {position}", position=position + 1)
        label = QLabel(name if len(name) <= _NAME_SHOWN else f"{name[: _NAME_SHOWN - 1]}…")
        label.setToolTip(name)
        combo = Choice(f"column_{position}", tr("Meaning of column {name}", name=name))
        found = " ".join(w for w in (tr(column.quantity), column.unit) if w)
        told = tr("{what} (set by you)", what=found) if is_by_hand else tr("{what} (found)", what=found)
        combo.addItem(told, None)
        for quantity, unit in _MEANINGS:
            combo.addItem(f"{tr(quantity)}, {unit}" if unit else tr(quantity), (quantity, unit))
        if is_by_hand:
            combo.addItem(tr("as the program finds it"), "")
        combo.activated.connect(self._choose)
        label.setBuddy(combo)
        self._combos.append(combo)
        self._grid.addWidget(label, position, 0)
        self._grid.addWidget(combo, position, 1)

    def _choose(self) -> None:
        combo = self.sender()
        position = next((i for i, c in enumerate(self._combos) if c is combo), None)
        if position is None or not isinstance(combo, QComboBox) or combo.currentData() is None:
            return
        kept = [c for c in self._choices.columns if c[0] != position]
        if combo.currentData() != "":
            quantity, unit = combo.currentData()
            kept.append((position, str(quantity), str(unit)))
        self.columns_set.emit(tuple(sorted(kept)))
