"""Under what conditions the selected stretch was made: temperatures, and a bed left off."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QSizePolicy, QWidget

from core.formatting import NumberLocale
from core.language import tr
from core.results.temperatures import Temperature, degrees
from core.study import Run
from gui.look import S8
from gui.widgets.flow import Flow
from gui.widgets.number_field import NumberField

#: what a thermometer in a workshop may show [degC]
LIMITS_C = (-40.0, 300.0)
#: and what a nozzle may be set to [degC]
NOZZLE_LIMITS_C = (-40.0, 600.0)
#: kinds of which the conditions matter: makings of the part, and the test that stands for their bed
_WITH_TEMPERATURES = ("run", "other part", "hold test")
_WITH_NOZZLE = ("run", "other part")
#: without its bed a run takes so little that the program may have taken it for something else
_MAY_BE_BED_OFF = ("run", "other part", "hold test", "heating")


class ConditionRow(QWidget):
    """Shows what the program took for the temperatures behind the fields, and in them what the user noted."""

    temperatures_noted = Signal(
        str, object, object
    )  # run id, of bed and room [degC]; None: the user has none
    nozzle_noted = Signal(str, object)  # run id, degC or None
    bed_turned = Signal(str, bool)  # run id, whether the part was made with the bed off
    field_left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._run: Run | None = None
        self._bed = _field("stretch_bed_c", tr("Temperature of the bed in this stretch, in °C"))
        self._room = _field("stretch_room_c", tr("Temperature of the room in this stretch, in °C"))
        self._bed.entered.connect(self._note_bed)
        self._room.entered.connect(self._note_room)
        self._nozzle = _field(
            "stretch_nozzle_c", tr("Temperature of the nozzle in this stretch, in °C"), NOZZLE_LIMITS_C
        )
        self._nozzle.entered.connect(self._note_nozzle)
        self._off = QCheckBox(tr("Run with the bed off"))
        self._off.setObjectName("stretch_bed_off")
        self._off.setToolTip(
            tr(
                "The same part was made here with the bed off: what it took less is the bed's "
                "in the other runs"
            )
        )
        self._off.clicked.connect(self._turn)
        self._why_not = QLabel()
        self._why_not.setObjectName("stretch_why_not")
        self._why_not.setProperty("role", "problem")
        self._why_not.hide()
        self._pairs: list[QWidget] = []
        flow = Flow(self, S8)
        for text, field in (
            (tr("Bed °C"), self._bed),
            (tr("Room °C"), self._room),
            (tr("Nozzle °C"), self._nozzle),
        ):
            pair = QWidget()
            row = QHBoxLayout(pair)
            row.setContentsMargins(0, 0, 0, 0)
            row.setSpacing(S8)
            label = QLabel(text)
            label.setProperty("role", "muted")
            label.setBuddy(field)
            row.addWidget(label)
            row.addWidget(field)
            flow.addWidget(pair)
            self._pairs.append(pair)
            field.refused.connect(self._refuse)
            field.editingFinished.connect(self.field_left)
        flow.addWidget(self._off)
        flow.addWidget(self._why_not)
        self.show_run(None, None, NumberLocale())

    def show_run(self, run: Run | None, told: tuple[Temperature, ...] | None, locale: NumberLocale) -> None:
        """Show the conditions of one stretch: bed, room, nozzle; of some kinds none matter."""
        is_other = run is None or self._run is None or run.id != self._run.id
        self._run = run
        kind = None if run is None else run.kind
        self.setVisible(told is not None and kind in {*_WITH_TEMPERATURES, *_MAY_BE_BED_OFF})
        if run is None or told is None:
            return
        self._off.setVisible(kind in _MAY_BE_BED_OFF)
        self._off.setChecked(run.set_bed_off)
        for field, temperature in zip((self._bed, self._room, self._nozzle), told, strict=True):
            noted_c = temperature.noted_c
            field.show_text(
                "" if noted_c is None else degrees(noted_c, locale),
                temperature.found_words(locale),
                of_other=is_other,
            )
            field.setReadOnly(not temperature.can_be_noted)
            field.setToolTip(_tip(temperature, locale))
        self._pairs[0].setVisible(kind in _WITH_TEMPERATURES and not run.set_bed_off)
        self._pairs[1].setVisible(kind in _WITH_TEMPERATURES)
        self._pairs[2].setVisible(kind in _WITH_NOZZLE)
        if is_other:
            self._refuse("")

    def _note_bed(self, bed_c: float | None) -> None:
        if self._run is not None:
            self.temperatures_noted.emit(self._run.id, bed_c, self._run.room_c)

    def _note_room(self, room_c: float | None) -> None:
        if self._run is not None:
            self.temperatures_noted.emit(self._run.id, self._run.bed_c, room_c)

    def _note_nozzle(self, nozzle_c: float | None) -> None:
        if self._run is not None:
            self.nozzle_noted.emit(self._run.id, nozzle_c)

    def _turn(self, is_off: bool) -> None:
        if self._run is not None:
            self.bed_turned.emit(self._run.id, is_off)

    def _refuse(self, why_not: str) -> None:
        self._why_not.setText(why_not)
        self._why_not.setVisible(bool(why_not))


def _field(name: str, accessible_name: str, limits_c: tuple[float, float] = LIMITS_C) -> NumberField:
    field = NumberField(name, accessible_name, limits_c)
    field.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
    field.setClearButtonEnabled(True)
    return field


def _tip(temperature: Temperature, locale: NumberLocale) -> str:
    """Who says what, and how to hand it back."""
    found = temperature.found_words(locale)
    if not temperature.can_be_noted:
        return tr("Found: {found}; the log tells each step of this hold test", found=found)
    if temperature.noted_c is None:
        return tr("Found: {found}; write another temperature to set it", found=found)
    return tr("Set by you; empty the field to hand it back (found: {found})", found=found)
