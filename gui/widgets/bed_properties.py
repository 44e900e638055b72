"""What the user knows of the beds: area and supply of each machine's, and how their faces radiate."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QWidget

from core.beds.area import bed_area_dm2
from core.beds.supply import SUPPLIES, bed_supply
from core.formatting import NumberLocale, capitalised, number
from core.language import tr
from core.study import Machine, Study
from gui.look import S4, S8, S12
from gui.widgets.choice import Choice
from gui.widgets.number_field import NumberField

_AREAS_DM2 = (0.01, 1000.0)


class BedProperties(QFrame):
    """A line for each machine."""

    area_set = Signal(str, object)  # machine id, area [dm2] or None
    supply_set = Signal(str, object)  # machine id, "mains", "low voltage" or None
    emissivity_set = Signal(float)
    refused = Signal(str)

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._locale = locale
        self._machines: tuple[Machine, ...] = ()
        self._areas: dict[str, NumberField] = {}
        self._supplies: dict[str, Choice] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(S12, S8, S12, S8)
        self._grid.setHorizontalSpacing(S12)
        self._grid.setVerticalSpacing(S4)
        self._grid.setColumnStretch(3, 1)
        self.emissivity = NumberField("emissivity", tr("Emissivity of the beds' faces"), (0.0, 1.0), self)
        self.emissivity.entered.connect(self._on_emissivity)
        self.emissivity.refused.connect(self.refused)

    def show_study(self, study: Study) -> None:
        """Show the machines of a study."""
        if tuple(m.id for m in study.machines) != tuple(m.id for m in self._machines) or not self._areas:
            self._build(study.machines)
        self._machines = study.machines
        for machine in study.machines:
            area_dm2 = bed_area_dm2(machine)
            text = "" if area_dm2 is None else number(area_dm2, 4, self._locale).rstrip("0").rstrip(".,")
            self._areas[machine.id].show_text(text, tr("not known"))
            choice, supply = self._supplies[machine.id], bed_supply(machine)
            index = choice.findData(supply)
            choice.setCurrentIndex(max(index, 0))
            name = self._grid.itemAtPosition(self._row(machine.id), 0)
            label = None if name is None else name.widget()
            if isinstance(label, QLabel):
                label.setText(machine.name)
        self.emissivity.show_text(number(study.emissivity, 2, self._locale), "0.9")

    def _row(self, machine_id: str) -> int:
        return 1 + list(self._areas).index(machine_id)

    def _build(self, machines: tuple[Machine, ...]) -> None:
        while (item := self._grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None and widget is not self.emissivity:
                widget.hide()
                widget.deleteLater()
        self._areas, self._supplies = {}, {}
        for column, title in enumerate((tr("The beds"), tr("Area of one face (dm²)"), tr("Fed by"))):
            heading = QLabel(title)
            heading.setProperty("role", "heading" if column == 0 else "muted")
            self._grid.addWidget(heading, 0, column)
        for row, machine in enumerate(machines, start=1):
            name = QLabel(machine.name)
            name.setTextFormat(Qt.TextFormat.PlainText)
            area = NumberField(
                f"bed_area_{machine.id}", tr("Bed area of {name} in dm²", name=machine.name), _AREAS_DM2
            )
            area.entered.connect(self._on_area)
            area.refused.connect(self.refused)
            supply = Choice(f"bed_supply_{machine.id}", tr("What feeds the bed of {name}", name=machine.name))
            supply.fill([(tr("not known"), None), *((capitalised(tr(s)), s) for s in SUPPLIES)], None)
            supply.activated.connect(self._on_supply)
            self._areas[machine.id], self._supplies[machine.id] = area, supply
            for column, widget in enumerate((name, area, supply)):
                self._grid.addWidget(widget, row, column)
        row = self._grid.rowCount()
        label = QLabel(tr("&Emissivity of the faces"))
        label.setBuddy(self.emissivity)
        note = QLabel(tr("for the heat a plate must lose; 0.9 for paint or coating, 0.1 for bare metal"))
        note.setProperty("role", "muted")
        note.setWordWrap(True)
        self._grid.addWidget(label, row, 0)
        self._grid.addWidget(self.emissivity, row, 1)
        self._grid.addWidget(note, row + 1, 0, 1, 4)
        self._grid.setRowStretch(row + 2, 1)

    def _on_area(self, value: float | None) -> None:
        field = self.sender()
        machine = next((m for m in self._machines if self._areas[m.id] is field), None)
        if machine is not None:
            self.area_set.emit(machine.id, value)

    def _on_supply(self) -> None:
        choice = self.sender()
        machine = next((m for m in self._machines if self._supplies[m.id] is choice), None)
        if machine is not None and isinstance(choice, Choice) and choice.currentData() != bed_supply(machine):
            self.supply_set.emit(machine.id, choice.currentData())

    def _on_emissivity(self, value: float | None) -> None:
        self.emissivity_set.emit(0.9 if value is None else value)
