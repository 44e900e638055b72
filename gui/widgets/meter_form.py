"""Which meter a log was taken with, what it measured, how good it is, and how it compares with another."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDoubleSpinBox,
    QGridLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QWidget,
)

from core.language import mark, tr
from core.study import Log, Meter, Study
from gui.locales import screen_locale
from gui.look import S4, S8
from gui.widgets.choice import Choice
from gui.widgets.load_checks import LoadChecks

BED_ALONE_TIP = mark("A second meter, or a channel of its own, measured the heated bed and nothing else")
NO_WHOLE_TIP = mark(
    "A log of the bed alone stands beside one of the whole machine: choose this "
    "log's machine first, if it was taken for another"
)


class MeterForm(QWidget):
    """Chooses a meter, says what it measured, states its accuracy, and holds it against another."""

    meter_chosen = Signal(str)  # meter id
    meter_added = Signal()
    meter_of_all = Signal(str)  # id of the meter that measured every machine
    renamed = Signal(str, str)  # meter id, name
    accuracy_stated = Signal(str, float, float)  # meter id, % of reading, W
    bed_alone_turned = Signal(bool)  # whether the log is of the bed alone
    field_left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._meter: Meter | None = None
        self._choice = Choice("reading_meter", tr("Meter this log was taken with"))
        self._choice.activated.connect(self._choose)
        self._add = QPushButton(tr("New"))
        self._add.setObjectName("meter_add")
        self._add.setToolTip(tr("This log was taken with a meter that is not in the list"))
        self._add.clicked.connect(self.meter_added)
        self._for_all = QPushButton(tr("The same meter for all"))
        self._for_all.setObjectName("meter_for_all")
        self._for_all.setProperty("role", "link")
        self._for_all.setToolTip(
            tr("This meter measured all machines, one after another: what it is off by cancels between them")
        )
        self._for_all.clicked.connect(self._take_for_all)
        self._name = QLineEdit()
        self._name.setObjectName("meter_name")
        self._name.setAccessibleName(tr("Name of the meter"))
        self._name.editingFinished.connect(self._rename)
        self._gain = _spin("meter_gain", tr("Accuracy as a share of the reading"), tr(" % of reading"), 100.0)
        self._offset = _spin("meter_offset", tr("Accuracy that does not depend on the reading"), " W", 1000.0)
        for spin in (self._gain, self._offset):
            spin.valueChanged.connect(self._state)
            spin.editingFinished.connect(self.field_left)
        self._note = QLabel()
        self._note.setProperty("role", "muted")
        self._note.setWordWrap(True)
        self._of_bed = QCheckBox(tr("Log of the bed alone"))
        self._of_bed.setObjectName("meter_of_bed")
        self._of_bed.clicked.connect(self._turn_of_bed)
        self.checks = LoadChecks()
        self.checks.hide()
        self._checks_button = QPushButton()
        self._checks_button.setObjectName("checks_button")
        self._checks_button.setProperty("role", "link")
        self._checks_button.setCheckable(True)
        self._checks_button.toggled.connect(self._turn_checks)
        self._count = 0
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(S8)
        grid.setVerticalSpacing(S4)
        grid.addWidget(self._choice, 0, 0)
        grid.addWidget(self._add, 0, 1)
        grid.addWidget(self._for_all, 1, 0, 1, 2, Qt.AlignmentFlag.AlignLeft)
        grid.addWidget(self._name, 2, 0, 1, 2)
        grid.addWidget(self._gain, 3, 0, 1, 2)
        grid.addWidget(self._offset, 4, 0, 1, 2)
        grid.addWidget(self._note, 5, 0, 1, 2)
        grid.addWidget(self._of_bed, 6, 0, 1, 2)
        grid.addWidget(self._checks_button, 7, 0, 1, 2, Qt.AlignmentFlag.AlignLeft)
        grid.addWidget(self.checks, 8, 0, 1, 2)
        grid.setColumnStretch(0, 1)

    def show_meter(self, study: Study, log: Log) -> None:
        """Show the meter of a log."""
        meter = self._meter = study.meter(log.meter_id)
        self._choice.fill([(m.name, m.id) for m in study.meters], meter.id)
        used = {g.meter_id for g in study.logs if not g.of_bed} | {t.meter_id for t in study.typed}
        self._for_all.setVisible(not log.of_bed and used != {meter.id})
        if self._name.text() != meter.name and not self._name.hasFocus():
            self._name.setText(meter.name)
        for spin, value in ((self._gain, meter.gain_percent), (self._offset, meter.offset_w)):
            if spin.value() != value:
                spin.blockSignals(True)
                spin.setValue(value)
                spin.blockSignals(False)
        self._note.setText("" if meter.stated else tr("Assumed: nobody has stated this meter's accuracy yet"))
        self._note.setVisible(not meter.stated)

        beside = [g for g in study.logs_of(log.machine_id) if g.id != log.id and not g.of_bed]
        self._of_bed.setChecked(log.of_bed)
        self._of_bed.setEnabled(log.of_bed or bool(beside))
        self._of_bed.setToolTip(tr(BED_ALONE_TIP if beside or log.of_bed else NO_WHOLE_TIP))
        self._count = len(study.checks)
        self._name_button()
        self.checks.show_checks(study, screen_locale())

    def _turn_of_bed(self, of_bed: bool) -> None:
        # The box says what is so, which a study that can only be read may refuse to change.
        self._of_bed.setChecked(not of_bed)
        self.bed_alone_turned.emit(of_bed)

    def _turn_checks(self, is_open: bool) -> None:
        self.checks.setVisible(is_open)
        self._name_button()

    def _name_button(self) -> None:
        is_open = self._checks_button.isChecked()
        what = (
            tr("Same-load check")
            if not self._count
            else tr("{count:same-load check|same-load checks}", count=self._count)
        )
        self._checks_button.setText(f"{what} {'▴' if is_open else '▾'}")
        self._checks_button.setAccessibleName(
            tr("{what}, shown", what=what) if is_open else tr("{what}, show", what=what)
        )

    def _choose(self) -> None:
        if self._meter is not None and self._choice.currentData() != self._meter.id:
            self.meter_chosen.emit(str(self._choice.currentData()))

    def _take_for_all(self) -> None:
        if self._meter is not None:
            self.meter_of_all.emit(self._meter.id)

    def _rename(self) -> None:
        if self._meter is not None and self._name.isModified() and self._name.text().strip():
            self._name.setModified(False)
            self.renamed.emit(self._meter.id, self._name.text())

    def _state(self) -> None:
        if self._meter is not None:
            self.accuracy_stated.emit(self._meter.id, self._gain.value(), self._offset.value())


def _spin(name: str, accessible_name: str, unit: str, most: float) -> QDoubleSpinBox:
    spin = QDoubleSpinBox()
    spin.setObjectName(name)
    spin.setAccessibleName(accessible_name)
    spin.setPrefix("± ")
    spin.setSuffix(unit)
    spin.setRange(0.0, most)
    spin.setDecimals(2)
    spin.setSingleStep(0.1)
    # While a number is being typed nothing is computed.
    spin.setKeyboardTracking(False)
    return spin
