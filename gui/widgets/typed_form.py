"""Runs of which only a display was read: before, after, how long it took."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QDoubleSpinBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from core.formatting import NumberLocale, duration, number
from core.language import tr
from core.study import Study, TypedReading
from core.units import SECONDS_PER_MINUTE, WH_PER_KWH
from gui.look import S4, S8, S16

#: last digit of a display [kWh]
_DIGITS = ((0.001, "0.001 kWh"), (0.01, "0.01 kWh"), (0.1, "0.1 kWh"), (1.0, "1 kWh"))
_ROWS_SHOWN = 4
#: characters of a name that are always seen
_NAME_LENGTH = 14


class TypedForm(QWidget):
    """A row of fields and the list of what was typed so far."""

    added = Signal(
        str, float, object, float, str, object
    )  # machine, energy [Wh], seconds or None, last digit [Wh], note, meter id or None
    removed = Signal(str)  # id of the reading
    turned = Signal(str)  # id: counted or not

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._machine = QComboBox()
        self._machine.setObjectName("typed_machine")
        self._machine.setEditable(True)
        self._before = _spin("typed_before", 999_999.0, " kWh", 3)
        self._after = _spin("typed_after", 999_999.0, " kWh", 3)
        self._took = _spin("typed_minutes", 100_000.0, " min", 1)
        self._took.setSpecialValueText(tr("not noted"))
        self._digit = QComboBox()
        self._digit.setObjectName("typed_digit")
        for step_kwh, text in _DIGITS:
            self._digit.addItem(text, step_kwh)
        self._digit.setCurrentIndex(1)
        self._meter = QComboBox()
        self._meter.setObjectName("typed_meter")
        self._meter.setToolTip(
            tr("What one meter is off by cancels between the machines that it measured; two meters' does not")
        )
        for combo in (self._machine, self._meter):
            combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            combo.setMinimumContentsLength(_NAME_LENGTH)
        self._note = QLineEdit()
        self._note.setObjectName("typed_note")
        self._add = QPushButton(tr("Add the run"))
        self._add.setObjectName("typed_add")
        self._add.clicked.connect(self._on_add)
        self._why_not = QLabel()
        self._why_not.setObjectName("typed_why_not")
        self._why_not.setProperty("role", "problem")
        self._why_not.hide()
        self._list = QListWidget()
        self._list.setObjectName("typed_list")
        self._list.setAccessibleName(tr("Runs typed in"))
        self._list.currentRowChanged.connect(self._on_row)
        self._turn = QPushButton(tr("Leave out"))
        self._turn.setObjectName("typed_turn")
        self._turn.clicked.connect(self._on_turn)
        self._remove = QPushButton(tr("Remove"))
        self._remove.setObjectName("typed_remove")
        self._remove.clicked.connect(self._on_remove)
        self._lay_out()

    def show_study(self, study: Study, locale: NumberLocale) -> None:
        """Show what was typed so far."""
        names = [machine.name for machine in study.machines]
        if [self._machine.itemText(i) for i in range(self._machine.count())] != names:
            text = self._machine.currentText()
            self._machine.clear()
            self._machine.addItems(names)
            self._machine.setEditText(text or (names[0] if names else ""))
        self._offer_meters(study)
        chosen = self._chosen()
        self._list.clear()
        for reading in study.typed:
            item = QListWidgetItem(_words(study, reading, locale))
            item.setData(Qt.ItemDataRole.UserRole, (reading.id, reading.included))
            self._list.addItem(item)
            if chosen is not None and chosen[0] == reading.id:
                self._list.setCurrentItem(item)
        line = self.fontMetrics().height() + S8
        self._list.setFixedHeight(min(max(len(study.typed), 1), _ROWS_SHOWN) * line + S8)
        for widget in (self._list, self._turn, self._remove):
            widget.setVisible(bool(study.typed))
        self._on_row()

    def _offer_meters(self, study: Study) -> None:
        entries: list[tuple[str, str | None]] = [(tr("the machine's own"), None)]
        entries += [(meter.name, meter.id) for meter in study.meters]
        rows = range(self._meter.count())
        if [(self._meter.itemText(row), self._meter.itemData(row)) for row in rows] == entries:
            return
        chosen = self._meter.currentData()
        self._meter.clear()
        for name, meter_id in entries:
            self._meter.addItem(name, meter_id)
        self._meter.setCurrentIndex(max(self._meter.findData(chosen), 0))

    def _on_add(self) -> None:
        name = self._machine.currentText().strip()
        energy_wh = (self._after.value() - self._before.value()) * WH_PER_KWH
        if not name:
            self._refuse(tr("Say which machine it was."))
        elif energy_wh <= 0:
            self._refuse(tr("The reading after the run must be higher than the one before it."))
        else:
            self._refuse("")
            seconds = self._took.value() * SECONDS_PER_MINUTE or None
            step_wh = float(self._digit.currentData()) * WH_PER_KWH
            self.added.emit(name, energy_wh, seconds, step_wh, self._note.text(), self._meter.currentData())
            self._before.setValue(self._after.value())
            self._note.clear()

    def _refuse(self, why: str) -> None:
        self._why_not.setText(why)
        self._why_not.setVisible(bool(why))

    def _chosen(self) -> tuple[str, bool] | None:
        item = self._list.currentItem()
        return None if item is None else item.data(Qt.ItemDataRole.UserRole)

    def _on_row(self) -> None:
        chosen = self._chosen()
        self._turn.setEnabled(chosen is not None)
        self._remove.setEnabled(chosen is not None)
        self._turn.setText(tr("Leave out") if chosen is None or chosen[1] else tr("Count it"))

    def _on_turn(self) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self.turned.emit(chosen[0])

    def _on_remove(self) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self.removed.emit(chosen[0])

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(S8)
        grid.setVerticalSpacing(2)
        fields = (
            (tr("Machine"), self._machine, 0, 0, 1),
            (tr("Display before"), self._before, 0, 1, 1),
            (tr("Display after"), self._after, 0, 2, 1),
            (tr("It took"), self._took, 0, 3, 1),
            (tr("Last digit"), self._digit, 0, 4, 1),
            (tr("Meter"), self._meter, 2, 0, 1),
            (tr("Note"), self._note, 2, 1, 3),
        )
        for text, field, row, column, wide in fields:
            label = QLabel(text)
            label.setProperty("role", "muted")
            label.setBuddy(field)
            field.setAccessibleName(text)
            grid.addWidget(label, row, column, 1, wide)
            grid.addWidget(field, row + 1, column, 1, wide)
        for column, stretch in enumerate((3, 2, 2, 2, 1)):
            grid.setColumnStretch(column, stretch)
        grid.addWidget(self._add, 3, 4)
        buttons = QVBoxLayout()
        buttons.addWidget(self._turn)
        buttons.addWidget(self._remove)
        buttons.addStretch(1)
        below = QHBoxLayout()
        below.setSpacing(S8)
        below.addWidget(self._list, 1)
        below.addLayout(buttons)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S16, S8, S16, S8)
        layout.setSpacing(S4)
        layout.addLayout(grid)
        layout.addWidget(self._why_not)
        layout.addLayout(below)


def _words(study: Study, reading: TypedReading, locale: NumberLocale) -> str:
    said = [
        study.machine(reading.machine_id).name,
        f"{number(reading.energy_wh, 0, locale)} Wh",
    ]
    if reading.seconds is not None:
        said.append(duration(reading.seconds))
    if reading.note:
        said.append(reading.note)
    if not reading.included:
        said.append(
            tr("left out: {why}", why=reading.why_left_out) if reading.why_left_out else tr("left out")
        )
    return "  ·  ".join(said)


def _spin(name: str, most: float, unit: str, decimals: int) -> QDoubleSpinBox:
    spin = QDoubleSpinBox()
    spin.setObjectName(name)
    spin.setRange(0.0, most)
    spin.setDecimals(decimals)
    spin.setSuffix(unit)
    spin.setKeyboardTracking(False)
    return spin
