"""What the user knows of the beds: area and supply of each machine's, and how their faces radiate."""

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QShowEvent
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
#: lines made in one turn of the event loop: a hundred machines are no reason to wait for the page
_MADE_AT_ONCE = 12


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
        self._names: dict[str, QLabel] = {}
        self._more = QTimer(self)
        self._more.setSingleShot(True)
        self._more.setInterval(0)
        self._more.timeout.connect(self._go_on)
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
            self._build(len(study.machines))
        self._machines = study.machines
        for machine in study.machines[: len(self._areas)]:
            self._show_machine(machine)
        self._show_more()
        self.emissivity.show_text(number(study.emissivity, 2, self._locale), "0.9")

    def _show_machine(self, machine: Machine) -> None:
        area_dm2 = bed_area_dm2(machine)
        text = "" if area_dm2 is None else number(area_dm2, 4, self._locale).rstrip("0").rstrip(".,")
        self._areas[machine.id].show_text(text, tr("not known"))
        choice = self._supplies[machine.id]
        choice.setCurrentIndex(max(choice.findData(bed_supply(machine)), 0))
        self._names[machine.id].setText(machine.name)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._show_more()

    def _go_on(self) -> None:
        if self.isVisible():  # lines that nobody sees would only hold up the page that is seen
            self._show_more()

    def _show_more(self) -> None:
        """Make as many of the lines that are not there yet as one turn of the event loop allows."""
        first = len(self._areas)
        for row, machine in enumerate(self._machines[first : first + _MADE_AT_ONCE], start=first + 1):
            self._make_line(row, machine)
            self._show_machine(machine)
        if len(self._areas) < len(self._machines):
            self._more.start()

    def _build(self, count: int) -> None:
        """An empty card with room for so many lines."""
        while (item := self._grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None and widget is not self.emissivity:
                widget.hide()
                widget.deleteLater()
        self._areas, self._supplies, self._names = {}, {}, {}
        for row in range(self._grid.rowCount()):
            self._grid.setRowStretch(row, 0)
        for column, title in enumerate((tr("The beds"), tr("Area of one face (dm²)"), tr("Fed by"))):
            heading = QLabel(title)
            heading.setProperty("role", "heading" if column == 0 else "muted")
            self._grid.addWidget(heading, 0, column)
        row = count + 1
        label = QLabel(tr("Em&issivity of the faces"))
        label.setBuddy(self.emissivity)
        note = QLabel(tr("for the heat a plate must lose; 0.9 for paint or coating, 0.1 for bare metal"))
        note.setProperty("role", "muted")
        note.setWordWrap(True)
        self._grid.addWidget(label, row, 0)
        self._grid.addWidget(self.emissivity, row, 1)
        self._grid.addWidget(note, row + 1, 0, 1, 4)
        self._grid.setRowStretch(row + 2, 1)

    def _make_line(self, row: int, machine: Machine) -> None:
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
        self._areas[machine.id], self._supplies[machine.id], self._names[machine.id] = area, supply, name
        for column, widget in enumerate((name, area, supply)):
            self._grid.addWidget(widget, row, column)

    def _on_area(self, value: float | None) -> None:
        field = self.sender()
        machine = next((m for m in self._machines if self._areas.get(m.id) is field), None)
        if machine is not None:
            self.area_set.emit(machine.id, value)

    def _on_supply(self) -> None:
        choice = self.sender()
        machine = next((m for m in self._machines if self._supplies.get(m.id) is choice), None)
        if machine is not None and isinstance(choice, Choice) and choice.currentData() != bed_supply(machine):
            self.supply_set.emit(machine.id, choice.currentData())

    def _on_emissivity(self, value: float | None) -> None:
        self.emissivity_set.emit(0.9 if value is None else value)
