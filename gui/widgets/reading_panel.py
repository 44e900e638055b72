"""How one log was read: every choice with its reason, to be corrected, and what was refused."""

from pathlib import PurePath

from attrs import evolve
from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QComboBox, QFrame, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from core.language import tr
from core.logs.facts import Fact, changes, facts, refused_lines
from core.logs.reading import Reading
from core.logs.reading_options import OPTIONS, Option, chosen, with_choice
from core.study import Choices, Log, Study
from gui.look import FOCUS_EDGE, S4, S8, S12, S16
from gui.reading import LogData
from gui.widgets.asking import AskingLabel
from gui.widgets.choice import Choice
from gui.widgets.column_table import ColumnTable
from gui.widgets.first_rows_view import FirstRowsView
from gui.widgets.meter_form import MeterForm
from gui.widgets.tab_order import in_order

_NATIVE = QKeySequence.SequenceFormat.NativeText


class ReadingPanel(QScrollArea):
    """One log's reading; the page has it read again when a choice is changed."""

    choices_changed = Signal(str, int, object)  # log id, which file, Choices
    machine_chosen = Signal(str, str)  # log id, machine id
    file_wanted_again = Signal(str)  # log id
    asked = Signal()  # how were the facts of the log found?

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("reading_panel")
        self.setAccessibleName(tr("How the log was read"))
        self.setAccessibleDescription(tr("Up and down scroll; Tab goes on to the choices in it"))
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._log: Log | None = None
        self._data: LogData | None = None
        self._study: Study | None = None
        self._index = 0
        self._widest = 0
        self._title = _label("", "heading")
        self._file = Choice("reading_file", tr("File of the log"))
        self._file.activated.connect(self._turn_to_file)
        self._again = QPushButton(tr("Read the file again"))
        self._again.setObjectName("reading_again")
        self._again.setProperty("role", "link")
        self._again.setToolTip(tr("Take in what was added to the file, keeping what you decided"))
        self._again.clicked.connect(self._want_again)
        self._machine = Choice("reading_machine", tr("Machine of this log"))
        self._machine.activated.connect(self._choose_machine)
        self.meter = MeterForm()
        self._options = {
            option.name: Choice(f"reading_{option.name}", tr(option.title)) for option in OPTIONS
        }
        self._reasons = {option.name: _label("", "muted") for option in OPTIONS}
        self._titles = {o.name: _label(tr(o.title), "muted", self._options[o.name]) for o in OPTIONS}
        self._columns = ColumnTable()
        self._columns.columns_set.connect(self._set_columns)
        self._first_rows = FirstRowsView()
        self._facts = QVBoxLayout()
        self._chosen: tuple[str, Choices, Reading] | None = None  # log, choices taken, and what was before
        self._changes = _label("", "")
        self._changes.setObjectName("reading_changes")
        self._refused = _label("", "")
        self._refused.setObjectName("reading_refused")
        self._refused_title = _label(tr("Refused rows"), "heading")
        self._refused.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._body = self._lay_out()
        self.setWidget(self._body)
        self._body.installEventFilter(self)

    def show_log(self, study: Study, log: Log | None, data: LogData | None) -> None:
        """Show how a log was read."""
        is_other = log is None or self._log is None or log.id != self._log.id
        is_same = not is_other and data is self._data and study is self._study
        if is_same:
            return
        self._study, self._log, self._data = study, log, data
        if is_other:
            self._index = 0
        self._body.setVisible(log is not None)
        if log is not None:
            self._fill(study, log)

    @property
    def log_id(self) -> str | None:
        """The log that is shown."""
        return self._log.id if self._log is not None else None

    @property
    def reading(self) -> Reading | None:
        """How the file that is shown was read."""
        return self._reading()

    def _fill(self, study: Study, log: Log) -> None:
        machine = study.machine(log.machine_id)
        self._title.setText(tr("How {machine}'s log was read", machine=machine.name))
        self._file.fill([(s.file_name, i) for i, s in enumerate(log.sources)], self._index)
        self._file.setEnabled(len(log.sources) > 1)
        self._machine.fill([(m.name, m.id) for m in study.machines], log.machine_id)
        self.meter.show_meter(study, log)
        reading = self._reading()
        source = log.sources[min(self._index, len(log.sources) - 1)]
        for option in OPTIONS:
            self._fill_option(option, reading, chosen(source.choices, option.name))
        self._columns.show_columns(reading.columns if reading else (), source.choices)
        self._first_rows.show_reading(reading)
        self._show_changes(log, source.choices, reading)
        in_order([*self._options.values(), *self._columns.combos])
        self._fill_facts(facts(reading) if reading is not None else ())
        lines = refused_lines(reading) if reading is not None else ""
        self._refused.setText(lines)
        self._refused.setVisible(bool(lines))
        self._refused_title.setVisible(bool(lines))

    def _show_changes(self, log: Log, choices: Choices, reading: Reading | None) -> None:
        """Say what the choice that was taken last has changed, as long as it stands."""
        text = ""
        if self._chosen is not None and reading is not None and self._chosen[:2] == (log.id, choices):
            told = changes(self._chosen[2], reading)
            figures = "; ".join(f"{fact.name}: {fact.text}" for fact in told) or tr("no figure")
            keys = QKeySequence(QKeySequence.StandardKey.Undo).toString(_NATIVE)
            text = tr("Your choice changed {figures}. {keys} takes it back.", figures=figures, keys=keys)
        self._changes.setText(text)
        self._changes.setVisible(bool(text))

    def _fill_option(self, option: Option, reading: Reading | None, value: str | None) -> None:
        combo, reason = self._options[option.name], self._reasons[option.name]
        found = option.found(reading) if reading is not None else None
        entries: list[tuple[str, object]] = [
            (tr("{what} (found)", what=tr(found)) if found else tr("as found"), None)
        ]
        entries += [
            (tr("{what} (set by you)", what=tr(text)) if key == value else tr(text), key)
            for text, key in option.entries
        ]
        if value is not None and all(key != value for _, key in option.entries):
            entries.append((tr("{what} (set by you)", what=value), value))
        combo.fill(entries, value)
        why = dict(reading.reasons).get(option.name, "") if reading is not None else ""
        is_shown = not option.is_rare or found is not None or value is not None
        for widget in (self._titles[option.name], combo):
            widget.setVisible(is_shown)
        reason.setText(tr(why) if why else "")
        reason.setVisible(bool(why) and is_shown)

    def _fill_facts(self, shown: tuple[Fact, ...]) -> None:
        while (item := self._facts.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        for fact in shown:
            label = AskingLabel(f"<b>{fact.name}</b>&nbsp; {fact.text}")
            label.setProperty("role", fact.role)
            label.asked.connect(self.asked)
            self._facts.addWidget(label)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        # Only when the body is laid out do its controls know how wide they have to be.
        if watched is self._body and event.type() == QEvent.Type.LayoutRequest:
            self._fit()
        return super().eventFilter(watched, event)

    def _fit(self) -> None:
        """Be wide enough for the controls: there is no scrolling sideways."""
        bar = self.verticalScrollBar().sizeHint().width()
        em = self.fontMetrics().averageCharWidth()
        # as wide as for the log that takes most: lanes stay in their place as one after another is chosen
        self._widest = max(self._widest, self._body.minimumSizeHint().width(), 36 * em)
        self.setMinimumWidth(self._widest + bar + FOCUS_EDGE)

    def changeEvent(self, event: QEvent) -> None:
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._widest = 0
        super().changeEvent(event)

    def _reading(self) -> Reading | None:
        if self._log is None or self._data is None:
            return None
        source = self._log.sources[min(self._index, len(self._log.sources) - 1)]
        name, device = source.file_name, source.device
        found = [r for r in self._data.readings if PurePath(r.file).name == name and r.device == device]
        return found[0] if found else None

    # what the user does

    def _turn_to_file(self) -> None:
        self._index = self._file.currentIndex()
        if self._study is not None and self._log is not None:
            self._fill(self._study, self._log)

    def _want_again(self) -> None:
        if self._log is not None:
            self.file_wanted_again.emit(self._log.id)

    def _choose_machine(self) -> None:
        if self._log is not None and self._machine.currentData() != self._log.machine_id:
            self.machine_chosen.emit(self._log.id, str(self._machine.currentData()))

    def _choose(self) -> None:
        combo = self.sender()
        name = next((n for n, c in self._options.items() if c is combo), None)
        if name is None or self._log is None or not isinstance(combo, QComboBox):
            return
        source = self._log.sources[self._index]
        value = combo.currentData()
        choices = with_choice(source.choices, name, None if value is None else str(value))
        if choices != source.choices:
            self._take(self._log, choices)

    def _set_columns(self, columns: object) -> None:
        if self._log is not None and isinstance(columns, tuple):
            source = self._log.sources[self._index]
            self._take(self._log, evolve(source.choices, columns=columns))

    def _take(self, log: Log, choices: Choices) -> None:
        reading = self._reading()
        self._chosen = None if reading is None else (log.id, choices, reading)
        self.choices_changed.emit(log.id, self._index, choices)

    def _lay_out(self) -> QWidget:
        body = QWidget()
        column = QVBoxLayout(body)
        column.setContentsMargins(S16, S8, S16, S16)
        column.setSpacing(S4)
        column.addWidget(self._title)
        for name, combo in (
            (tr("File"), self._file),
            (tr("Machine"), self._machine),
            (tr("Meter"), self.meter),
        ):
            column.addSpacing(S4)
            column.addWidget(_label(name, "muted", combo))
            column.addWidget(combo)
            if combo is self._file:
                column.addWidget(self._again, 0, Qt.AlignmentFlag.AlignLeft)
        column.addSpacing(S12)
        column.addWidget(self._changes)
        column.addLayout(self._facts)
        column.addSpacing(S8)
        for option in OPTIONS:
            combo = self._options[option.name]
            combo.activated.connect(self._choose)
            column.addSpacing(S4)
            column.addWidget(self._titles[option.name])
            column.addWidget(combo)
            column.addWidget(self._reasons[option.name])
        column.addSpacing(S8)
        column.addWidget(_label(tr("Columns"), "heading"))
        column.addWidget(self._columns)
        column.addSpacing(S8)
        column.addWidget(_label(tr("First rows"), "heading", self._first_rows))
        column.addWidget(self._first_rows)
        column.addSpacing(S8)
        column.addWidget(self._refused_title)
        column.addWidget(self._refused)
        column.addStretch(1)
        return body


def _label(text: str, role: str, buddy: QWidget | None = None) -> QLabel:
    label = QLabel(text)
    label.setProperty("role", role)
    label.setWordWrap(True)
    if buddy is not None:
        label.setBuddy(buddy)
    return label
