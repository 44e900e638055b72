"""Temperatures of the hold that is chosen in the table, to be typed where no log has them."""

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from core.formatting import NumberLocale, number
from core.language import tr
from core.results.holds import Held
from core.study import Run
from gui.look import S8
from gui.widgets.number_field import NumberField

_BED_C = (0.0, 200.0)
_ROOM_C = (-20.0, 60.0)


class HoldTemperatures(QWidget):
    """Two fields: bed and room during a hold test."""

    noted = Signal(str, object, object)  # run id, bed [degC] or None, room [degC] or None
    refused = Signal(str)

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._locale = locale
        self._run: Run | None = None
        self.whose = QLabel()
        self.whose.setObjectName("hold_whose")
        self.bed = NumberField("hold_bed_c", tr("Bed temperature during the hold test"), _BED_C)
        self.room = NumberField("hold_room_c", tr("Room temperature during the hold test"), _ROOM_C)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(S8)
        row.addWidget(self.whose)
        for text, field in ((tr("&Bed (°C)"), self.bed), (tr("R&oom (°C)"), self.room)):
            label = QLabel(text)
            label.setBuddy(field)
            row.addWidget(label)
            row.addWidget(field)
            field.entered.connect(self._on_entered)
            field.refused.connect(self.refused)
        row.addStretch(1)
        self.show_hold("", None, None, is_alone=True)

    def show_hold(self, name: str, held: Held | None, run: Run | None, *, is_alone: bool) -> None:
        """Show a hold; ``is_alone``: its test held no other temperature, so that one can be typed."""
        is_other = run is None or self._run is None or run.id != self._run.id
        self._run = run
        self.setVisible(run is not None and held is not None)
        if run is None or held is None:
            return
        self.whose.setText(tr("Temperatures of {name}:", name=name))
        self.bed.setEnabled(is_alone)
        self.bed.setToolTip(
            "" if is_alone else tr("A test of several temperatures is told by its log alone.")
        )
        for field, noted, counts in ((self.bed, run.bed_c, held.bed_c), (self.room, run.room_c, held.room_c)):
            text = "" if noted is None else number(noted, 1, self._locale)
            behind = tr("not known") if counts is None else number(counts, 1, self._locale)
            field.show_text(text, behind, of_other=is_other)

    def _on_entered(self) -> None:
        if self._run is not None:
            self.noted.emit(self._run.id, self.bed.value, self.room.value)
