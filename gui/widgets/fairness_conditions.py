"""The temperatures of each machine's runs, to be noted for all of them at once."""

from collections.abc import Mapping, Sequence

from attrs import frozen
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QVBoxLayout, QWidget

from core.formatting import NumberLocale
from core.language import mark, tr
from core.results.fairness_temperatures import Place, Told
from core.results.temperatures import degrees
from gui.look import S4, S8, S12
from gui.widgets.condition_row import LIMITS_C, NOZZLE_LIMITS_C
from gui.widgets.number_field import NumberField

#: the columns: place, field of a run, heading, and what its field says
COLUMNS: tuple[tuple[Place, str, str, str], ...] = (
    ("bed", "bed_c", mark("Bed"), mark("{machine}: temperature of the bed")),
    (
        "first layer bed",
        "first_layer_bed_c",
        mark("Bed, first layer"),
        mark("{machine}: temperature of the bed at the first layer"),
    ),
    ("nozzle", "nozzle_c", mark("Nozzle"), mark("{machine}: temperature of the nozzle")),
    (
        "first layer nozzle",
        "first_layer_nozzle_c",
        mark("Nozzle, first layer"),
        mark("{machine}: temperature of the nozzle at the first layer"),
    ),
    ("room", "room_c", mark("Room"), mark("{machine}: temperature of the room")),
)
#: of more machines nobody fills in a form: their runs are noted on the Logs page
MOST_MACHINES = 30


@frozen
class MachineConditions:
    """One machine's row: what is told in each column."""

    machine_id: str
    name: str
    told: tuple[Told, ...]


class ConditionsCard(QFrame):
    """One row a machine, one field a temperature."""

    noted = Signal(str, str, object)  # machine id, field of a run, degC or None
    field_left = Signal()

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._locale = locale
        self._machines: tuple[tuple[str, str], ...] = ()
        self._fields: Mapping[tuple[str, str], NumberField] = {}
        self._parts: list[QWidget] = []
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S12, S8, S12, S8)
        layout.setSpacing(S4)
        heading = QLabel(tr("Temperatures of the runs, in °C"))
        heading.setProperty("role", "heading")
        layout.addWidget(heading)
        hint = QLabel(
            tr(
                "What stands here is noted in all runs of the machine that count; grey is what "
                "counts without."
            )
        )
        hint.setProperty("role", "muted")
        hint.setWordWrap(True)
        layout.addWidget(hint)
        self._why_not = QLabel()
        self._why_not.setObjectName("conditions_why_not")
        self._why_not.setProperty("role", "problem")
        self._why_not.setWordWrap(True)
        self._why_not.hide()
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(S12)
        self._grid.setVerticalSpacing(S4)
        self._grid.setColumnStretch(0, 1)
        self._grid.setColumnStretch(len(COLUMNS) + 1, 2)
        layout.addLayout(self._grid)
        self._more = _muted("")
        layout.addWidget(self._more)
        layout.addWidget(self._why_not)

    def show_machines(self, machines: Sequence[MachineConditions], *, read_only: bool) -> None:
        """Show what is known of the machines' runs, the first ones of a farm."""
        unshown = len(machines) - MOST_MACHINES
        machines = machines[:MOST_MACHINES]
        self._more.setText(
            tr(
                "{count:more machine|more machines}: note the temperatures of those runs on the Logs page.",
                count=unshown,
            )
        )
        self._more.setVisible(unshown > 0)
        wanted = tuple((m.machine_id, m.name) for m in machines)
        is_other = wanted != self._machines
        if is_other:
            self._machines = wanted
            self._build()
        self.setVisible(bool(machines))
        for machine in machines:
            for (_, name, _, _), told in zip(COLUMNS, machine.told, strict=True):
                field = self._fields[machine.machine_id, name]
                text = "" if told.noted_c is None else degrees(told.noted_c, self._locale)
                field.show_text(text, told.behind, of_other=is_other)
                field.setReadOnly(read_only)

    def _build(self) -> None:
        for part in self._parts:
            self._grid.removeWidget(part)
            part.hide()
            part.deleteLater()
        self._parts = []
        fields = {}
        for column, (_, _, heading, _) in enumerate(COLUMNS, start=1):
            self._put(_muted(tr(heading)), 0, column)
        for row, (machine_id, machine) in enumerate(self._machines, start=1):
            label = QLabel(machine)
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
            self._put(label, row, 0)
            for column, (_, name, _, said) in enumerate(COLUMNS, start=1):
                fields[machine_id, name] = self._field(
                    row,
                    name,
                    machine_id,
                    tr(said, machine=machine),
                )
                self._put(fields[machine_id, name], row, column)
        self._fields = fields

    def _put(self, part: QWidget, row: int, column: int) -> None:
        self._grid.addWidget(part, row, column)
        self._parts.append(part)

    def _field(self, row: int, name: str, machine_id: str, said: str) -> NumberField:
        limits = NOZZLE_LIMITS_C if "nozzle" in name else LIMITS_C
        field = NumberField(f"condition_{row}_{name}", tr("{said}, in °C", said=said), limits)
        field.setToolTip(tr("{said}; empty the field to take the note back", said=said))
        field.setProperty("machine_id", machine_id)
        field.setProperty("name", name)
        field.entered.connect(self._on_entered)
        field.refused.connect(self._refuse)
        field.editingFinished.connect(self.field_left)
        return field

    def _on_entered(self, value_c: float | None) -> None:
        field = self.sender()
        if isinstance(field, NumberField):
            self.noted.emit(str(field.property("machine_id")), str(field.property("name")), value_c)

    def _refuse(self, why_not: str) -> None:
        self._why_not.setText(why_not)
        self._why_not.setVisible(bool(why_not))


def _muted(text: str) -> QLabel:
    label = QLabel(text)
    label.setProperty("role", "muted")
    label.setWordWrap(True)
    return label
