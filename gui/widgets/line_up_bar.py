"""The controls of the Line-up page: how runs are lined up, what is shown of them, and which span is read."""

from collections.abc import Sequence

from attrs import evolve
from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QDoubleSpinBox, QHBoxLayout, QLabel, QPushButton, QWidget

from core.figures.line_up import whole_view
from core.formatting import NumberLocale, duration
from core.language import mark, tr
from core.line_up.choices import ARRANGEMENTS, REPEATS, SHOWN, LineUp
from core.line_up.common_axis import WIDTHS_S
from core.line_up.strands import ANCHORS, Strand
from gui.look import S8, S16
from gui.widgets.flow import Flow

_SHOWN = {
    "power": mark("Power"),
    "running energy": mark("Running energy"),
    "both": mark("Power and energy"),
}
_ANCHORS = {
    "start": mark("Start"),
    "end of warm-up": mark("End of warm-up"),
    "end": mark("End"),
    "share of duration": mark("Share of duration"),
}
_ARRANGEMENTS = {
    "over each other": mark("Over each other"),
    "machine under machine": mark("Machine under machine"),
    "run under run": mark("Run under run"),
    "difference": mark("Difference from a run"),
}
_REPEATS = {
    "runs and bands": mark("Runs and bands"),
    "bands": mark("Bands alone"),
    "runs": mark("Runs alone"),
}


_HOW_TO_READ = mark("Drag over the chart to read a span")


class LineUpBar(QWidget):
    """Tells what a person wants to see as a `LineUp`."""

    changed = Signal(object)  # LineUp

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._locale = locale
        self._choices = LineUp()
        self._strands: tuple[Strand, ...] = ()
        self.anchor = _combo("anchor", [(tr(_ANCHORS[a]), a) for a in ANCHORS])
        self.shown = _combo("shown", [(tr(_SHOWN[s]), s) for s in SHOWN])
        self.arrangement = _combo("arrangement", [(tr(_ARRANGEMENTS[a]), a) for a in ARRANGEMENTS])
        self.reference = _combo("reference", [])
        self.smooth = _combo("smooth", [])
        self.repeats = _combo("repeats", [(tr(_REPEATS[r]), r) for r in REPEATS])
        self.fit = QCheckBox(tr("Height for pr&ocessing"))
        self.fit.setObjectName("fit_processing")
        self.fit.setToolTip(
            tr("Give the height to what follows warm-up; the warm-up then leaves the chart at the top")
        )
        self.span_from, self.span_to = (_moment(name) for name in ("span_from", "span_to"))
        self.clear = QPushButton(tr("&Clear"))
        self.clear.setObjectName("clear_span")
        self.clear.setToolTip(tr("Mark no span (Esc on the chart)"))
        self.message = QLabel()
        self.message.setObjectName("message")
        self.message.setProperty("role", "muted")
        self._lay_out()
        for combo in (self.anchor, self.shown, self.arrangement, self.reference, self.smooth, self.repeats):
            combo.activated.connect(self._on_changed)
        self.fit.toggled.connect(self._on_changed)
        self.span_from.valueChanged.connect(self._on_span)
        self.span_to.valueChanged.connect(self._on_span)
        self.clear.clicked.connect(self._on_clear)

    def _lay_out(self) -> None:
        self._flow = Flow(self, S8)
        self._flow.setContentsMargins(S16, 0, S16, 0)
        self._against = _labelled(tr("A&gainst"), self.reference)
        self._repeats = _labelled(tr("&Draw"), self.repeats)
        span = QWidget()
        row = QHBoxLayout(span)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(S8)
        label = QLabel(tr("Spa&n"))
        label.setBuddy(self.span_from)
        parts: tuple[QWidget, ...] = (label, self.span_from, QLabel(tr("to")), self.span_to, self.clear)
        for part in parts:
            row.addWidget(part)
        for widget in (
            _labelled(tr("Line up a&t"), self.anchor),
            _labelled(tr("Sho&w"), self.shown),
            _labelled(tr("A&rrange"), self.arrangement),
            self._against,
            self._repeats,
            _labelled(tr("S&mooth"), self.smooth),
            self.fit,
            span,
        ):
            self._flow.addWidget(widget)
        self._against.hide()

    @property
    def controls(self) -> tuple[QWidget, ...]:
        """The controls from first to last, as they are read."""
        combos = (self.anchor, self.shown, self.arrangement, self.reference, self.repeats, self.smooth)
        return (*combos, self.fit, self.span_from, self.span_to, self.clear)

    def add(self, *widgets: QWidget) -> None:
        """Put more controls at the end."""
        for widget in widgets:
            self._flow.addWidget(widget)
        self._flow.addWidget(self.message)
        self.say(tr(_HOW_TO_READ))

    def say(self, text: str) -> None:
        """Say what has been done."""
        self.message.setText(text)
        self.message.setVisible(bool(text))

    def show_choices(self, choices: LineUp, given: tuple[Strand, ...], smooth_s: float) -> None:
        """Show choices for these runs; `smooth_s` is the width that suits them or was chosen. [s]"""
        self._choices, self._strands = choices, given
        usual = (
            tr("{time} (suits these runs)", time=duration(smooth_s))
            if choices.smooth_s is None
            else tr("As suits the runs")
        )
        widths = [(usual, None), (tr("Not at all"), 0.0), *((duration(w), w) for w in WIDTHS_S)]
        _fill(self.smooth, widths, choices.smooth_s)
        _fill(self.reference, [(s.label, s.run_id) for s in given], choices.reference or _first(given))
        for combo, value in (
            (self.anchor, choices.anchor),
            (self.shown, choices.shown),
            (self.arrangement, choices.arrangement),
            (self.repeats, choices.repeats),
        ):
            combo.setCurrentIndex(combo.findData(value))
        is_difference = choices.arrangement == "difference"
        self._against.setVisible(is_difference)
        self._repeats.setVisible(not is_difference)
        with QSignalBlocker(self.fit):
            self.fit.setChecked(choices.fit_processing)
        self.fit.setVisible(not is_difference and choices.shown != "running energy")
        if choices.span is not None and self.message.text() == tr(_HOW_TO_READ):
            self.say("")
        self._show_span()

    def _show_span(self) -> None:
        low, high = whole_view(self._strands, self._choices.anchor)
        factor, unit = self._unit()
        span = self._choices.span
        for field, value, end in (
            (self.span_from, low if span is None else span[0], 0),
            (self.span_to, high if span is None else span[1], 1),
        ):
            with QSignalBlocker(field):
                field.setSuffix(f" {unit}")
                field.setRange(low * factor, high * factor)
                field.setSingleStep(1.0)
                field.setValue(value * factor)
                field.setAccessibleName(
                    tr("End of the span that is read, in {unit}", unit=unit)
                    if end
                    else tr("Start of the span that is read, in {unit}", unit=unit)
                )
        self.clear.setEnabled(span is not None)

    def _unit(self) -> tuple[float, str]:
        return (100.0, "%") if self._choices.anchor == "share of duration" else (1 / 60, "min")

    def _on_changed(self) -> None:
        self.changed.emit(
            evolve(
                self._choices,
                anchor=self.anchor.currentData(),
                shown=self.shown.currentData(),
                arrangement=self.arrangement.currentData(),
                reference=self.reference.currentData() or "",
                smooth_s=self.smooth.currentData(),
                repeats=self.repeats.currentData(),
                fit_processing=self.fit.isChecked(),
            )
        )

    def _on_span(self) -> None:
        factor, _ = self._unit()
        low, high = self.span_from.value() / factor, self.span_to.value() / factor
        if high > low:
            self.changed.emit(evolve(self._choices, span=(low, high)))

    def _on_clear(self) -> None:
        self.changed.emit(evolve(self._choices, span=None))


def _combo(name: str, entries: Sequence[tuple[str, object]]) -> QComboBox:
    combo = QComboBox()
    combo.setObjectName(name)
    combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
    for text, value in entries:
        combo.addItem(text, value)
    return combo


def _fill(combo: QComboBox, entries: Sequence[tuple[str, object]], current: object) -> None:
    """Offer other entries, only where they differ: an open list must not be torn away."""
    if [(combo.itemText(i), combo.itemData(i)) for i in range(combo.count())] != list(entries):
        combo.clear()
        for text, value in entries:
            combo.addItem(text, value)
    combo.setCurrentIndex(next((i for i, (_, value) in enumerate(entries) if value == current), 0))


def _labelled(text: str, combo: QComboBox) -> QWidget:
    both = QWidget()
    row = QHBoxLayout(both)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(S8)
    label = QLabel(text)
    label.setBuddy(combo)
    combo.setAccessibleName(text.replace("&", ""))
    row.addWidget(label)
    row.addWidget(combo)
    return both


def _moment(name: str) -> QDoubleSpinBox:
    field = QDoubleSpinBox()
    field.setObjectName(name)
    field.setDecimals(2)
    field.setKeyboardTracking(False)
    return field


def _first(given: Sequence[Strand]) -> str:
    return given[0].run_id if given else ""
