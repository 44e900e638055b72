"""Same-load checks: what two meters showed of one steady load, and what that says of them."""

from typing import Literal

from attrs import frozen
from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtWidgets import (
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

from core.edits import is_one_load
from core.formatting import NumberLocale
from core.language import mark, tr
from core.results.check_words import as_read, read, told
from core.study import LoadCheck, Study
from core.units import SECONDS_PER_MINUTE
from gui.look import S4, S8
from gui.widgets.choice import Choice
from gui.widgets.number_field import NumberField

_LIMITS = (0.0, 1_000_000.0)
#: an energy needs some time
_LEAST_MINUTES = 1.0
_ROWS_SHOWN = 2
_EXPLAINED = mark(
    "Read one steady load with both meters, one after the other: what they differ by "
    "then no longer stands between machines. Write every digit that the display "
    "shows."
)
_CAUTION = mark(
    "Mains: only plug-in meters approved for your sockets, unopened, and a load within the rating of each."
)
_ONE_METER = mark(
    "The study has one meter. Give another log its own with New, then hold the two against each other."
)


@frozen
class CheckTyped:
    """A check as it stands in the fields; `check_id` is empty for a new one."""

    check_id: str
    meter_id: str
    other_id: str
    reading: float
    other_reading: float
    unit: Literal["Wh", "W"]
    step: float
    other_step: float
    seconds: float | None
    note: str


class LoadChecks(QWidget):
    """The list of checks, what the selected one says, and fields for another."""

    typed = Signal(object)  # CheckTyped: a new check, or a changed one
    removed = Signal(str)  # id of the check

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._study: Study | None = None
        self._locale = NumberLocale()
        self._list = QListWidget()
        self._list.setObjectName("checks_list")
        self._list.setAccessibleName(tr("Same-load checks"))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.currentRowChanged.connect(self._on_row)
        self._says = _text("check_says", "")
        self._says.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._one_meter = _text("check_one_meter", "muted", tr(_ONE_METER))
        self._meters = (Choice("check_meter", tr("First meter")), Choice("check_other", tr("Second meter")))
        self._readings = (
            NumberField("check_reading", tr("What the first meter showed"), _LIMITS),
            NumberField("check_other_reading", tr("What the second meter showed"), _LIMITS),
        )
        self._unit = Choice("check_unit", tr("Energies or powers"))
        self._unit.fill([("Wh", "Wh"), ("W", "W")], "Wh")
        self._unit.activated.connect(self._show_unit)
        self._minutes = NumberField("check_minutes", tr("Minutes that the energies took"), _LIMITS)
        self._note = QLineEdit()
        self._note.setObjectName("check_note")
        self._note.setAccessibleName(tr("What the load was"))
        self._note.setPlaceholderText(tr("What the load was"))
        self._add = QPushButton(tr("Add the check"))
        self._add.setObjectName("check_add")
        self._add.clicked.connect(self._on_add)
        self._remove = QPushButton(tr("Remove"))
        self._remove.setObjectName("check_remove")
        self._remove.clicked.connect(self._on_remove)
        self._new = QPushButton(tr("Another"))
        self._new.setObjectName("check_new")
        self._new.setProperty("role", "link")
        self._new.setToolTip(tr("Empty the fields for another check"))
        self._new.clicked.connect(self._on_new)
        self._why_not = _text("check_why_not", "problem")
        self._lay_out()
        self._refuse("")

    def show_checks(self, study: Study, locale: NumberLocale) -> None:
        """Show the checks of a study."""
        if study is self._study:
            return
        chosen = self._chosen_id
        is_other = self._study is None or study.id != self._study.id
        self._study, self._locale = study, locale
        has_two = len(study.meters) > 1
        self._one_meter.setVisible(not has_two)
        self._form.setVisible(has_two)
        kept = [combo.currentData() for combo in self._meters]
        for place, combo in enumerate(self._meters):
            spare = study.meters[min(place, len(study.meters) - 1)].id if study.meters else None
            wanted = kept[place] if any(m.id == kept[place] for m in study.meters) else spare
            combo.fill([(m.name, m.id) for m in study.meters], wanted)
        self._list.blockSignals(True)
        self._list.clear()
        for check in study.checks:
            item = QListWidgetItem("\n".join(read(study, check, locale)))
            item.setData(Qt.ItemDataRole.UserRole, check.id)
            self._list.addItem(item)
            if check.id == chosen and not is_other:
                self._list.setCurrentItem(item)
        self._list.blockSignals(False)
        self._list.setVisible(bool(study.checks))
        self._fit_list()
        if is_other:
            self._empty()
        self._on_row()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._fit_list()

    def _fit_list(self) -> None:
        """Make the list as high as its first rows."""
        rows = min(self._list.count(), _ROWS_SHOWN)
        height = sum(self._list.sizeHintForRow(row) for row in range(rows))
        self._list.setFixedHeight(height + 2 * self._list.frameWidth() + 2)

    # what the user does

    @property
    def _chosen_id(self) -> str:
        item = self._list.currentItem()
        return "" if item is None else str(item.data(Qt.ItemDataRole.UserRole))

    @property
    def _chosen(self) -> LoadCheck | None:
        checks = () if self._study is None else self._study.checks
        return next((check for check in checks if check.id == self._chosen_id), None)

    def _on_row(self) -> None:
        """Say what the selected check says, and put it into the fields to be changed."""
        check = self._chosen
        self._remove.setVisible(check is not None)
        self._new.setVisible(check is not None)
        self._add.setText(tr("Add the check") if check is None else tr("Change it"))
        self._says.setVisible(check is not None)
        if check is not None and self._study is not None:
            self._says.setText(" ".join(told(self._study, check, self._locale)))
            self._fill(check)
        self._show_unit()

    def _on_new(self) -> None:
        self._list.setCurrentRow(-1)
        self._empty()
        self._on_row()
        self._readings[0].setFocus(Qt.FocusReason.OtherFocusReason)

    def _on_remove(self) -> None:
        check = self._chosen
        if check is not None:
            self._empty()
            self.removed.emit(check.id)

    def _on_add(self) -> None:
        meter_id, other_id = (str(combo.currentData()) for combo in self._meters)
        first, second = (field.value for field in self._readings)
        is_energy = self._unit.currentData() == "Wh"
        minutes = self._minutes.value
        if meter_id == other_id:
            self._refuse(tr("A check takes two different meters: choose another one."))
        elif not first or not second:
            self._refuse(tr("Write what each meter showed, more than 0, such as 412.3."))
        elif not is_one_load(first, second):
            self._refuse(tr("These readings are too far apart for one load: check the digits and the unit."))
        elif is_energy and (minutes is None or minutes < _LEAST_MINUTES):
            self._refuse(
                tr("Write how many minutes the energies took: meters are also off by tenths of a watt.")
            )
        else:
            self._refuse("")
            check = CheckTyped(
                check_id=self._chosen_id,
                meter_id=meter_id,
                other_id=other_id,
                reading=first,
                other_reading=second,
                unit="Wh" if is_energy else "W",
                step=self._readings[0].step,
                other_step=self._readings[1].step,
                seconds=minutes * SECONDS_PER_MINUTE if is_energy and minutes else None,
                note=self._note.text(),
            )
            if not check.check_id:
                self._empty()
            self.typed.emit(check)

    def _refuse(self, why: str) -> None:
        self._why_not.setText(why)
        self._why_not.setVisible(bool(why))

    # what is shown

    def _empty(self) -> None:
        for field in (*self._readings, self._minutes):
            field.show_text("", "", of_other=True)
        self._note.clear()
        self._show_unit()

    def _fill(self, check: LoadCheck) -> None:
        for combo, meter_id in zip(self._meters, (check.meter_id, check.other_id), strict=True):
            combo.setCurrentIndex(combo.findData(meter_id))
        shown = ((check.reading, check.step), (check.other_reading, check.other_step))
        for field, (value, step) in zip(self._readings, shown, strict=True):
            field.show_text(as_read(value, step, self._locale), "", of_other=True)
        self._unit.setCurrentIndex(self._unit.findData(check.unit))
        minutes = None if check.seconds is None else check.seconds / SECONDS_PER_MINUTE
        took = "" if minutes is None else as_read(minutes, 0.0, self._locale)
        self._minutes.show_text(took, "", of_other=True)
        self._note.setText(check.note)

    def _show_unit(self) -> None:
        unit = self._unit.currentData()
        for field in self._readings:
            field.setPlaceholderText(str(unit))
        self._minutes.setPlaceholderText(tr("minutes"))
        self._minutes.setVisible(unit == "Wh")

    def _lay_out(self) -> None:
        self._form = QWidget()
        grid = QGridLayout(self._form)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(S8)
        grid.setVerticalSpacing(S4)
        for row, (combo, field) in enumerate(zip(self._meters, self._readings, strict=True)):
            grid.addWidget(combo, row, 0)
            grid.addWidget(field, row, 1)
        grid.addWidget(self._unit, 2, 0)
        grid.addWidget(self._minutes, 2, 1)
        grid.addWidget(self._note, 3, 0, 1, 2)
        grid.addWidget(self._why_not, 4, 0, 1, 2)
        buttons = QHBoxLayout()
        buttons.setSpacing(S8)
        for button in (self._add, self._remove, self._new):
            buttons.addWidget(button)
        buttons.addStretch(1)
        grid.addLayout(buttons, 5, 0, 1, 2)
        grid.setColumnStretch(0, 3)
        grid.setColumnStretch(1, 2)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S4)
        layout.addWidget(_text("check_explained", "muted", tr(_EXPLAINED)))
        layout.addWidget(_text("check_caution", "caution", tr(_CAUTION)))
        for widget in (self._one_meter, self._list, self._says, self._form):
            layout.addWidget(widget)


def _text(name: str, role: str, text: str = "") -> QLabel:
    label = QLabel(text)
    label.setObjectName(name)
    label.setProperty("role", role)
    label.setWordWrap(True)
    return label
