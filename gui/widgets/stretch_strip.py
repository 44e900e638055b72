"""What the selected stretch is, in words and controls: its kind, whether it counts, and what it used."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from core.edits import is_decided, title
from core.formatting import NumberLocale, duration, with_interval, with_unit
from core.language import mark, tr
from core.quantities import ENERGY, MEAN_W
from core.results.temperatures import Temperature
from core.results.values import RunResult, StateSpan
from core.study import KINDS, Run, Study
from core.wording import reason
from gui.look import S4, S8, S16
from gui.widgets.asking import AskingLabel
from gui.widgets.condition_row import ConditionRow

KIND_WORDS = {
    "run": mark("run of the part"),
    "other part": mark("another part"),
    "broken off": mark("broken off"),
    "cut": mark("cut by the log's end"),
    "heating": mark("heating only"),
    "hold test": mark("hold test"),
    "switch-on test": mark("switch-on test"),
    "nothing": mark("nothing"),
}
_HINT = mark(
    "Click a stretch, or press ← and → on a lane. Drag its edges; Enter chooses an "
    "edge for the arrow keys. Shift and drag marks a new stretch."
)


class StretchStrip(QWidget):
    """Says what the user wants; the page makes edits of it."""

    kind_chosen = Signal(str)
    left_out = Signal(str)  # the reason, as it is typed
    included = Signal()
    renamed = Signal(str)
    field_left = Signal()
    handed_back = Signal()

    asked = Signal()  # how were its numbers found?

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._run: Run | None = None
        self._counted = False
        self._name = QLineEdit()
        self._name.setObjectName("stretch_name")
        self._name.setAccessibleName(tr("Name of the stretch"))
        self._name.setToolTip(tr("Name (F2)"))
        self._name.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self._name.editingFinished.connect(self._rename)
        self._kind = QComboBox()
        self._kind.setObjectName("stretch_kind")
        self._kind.setAccessibleName(tr("What the stretch is"))
        for kind in KINDS:
            self._kind.addItem(tr(KIND_WORDS[kind]), kind)
        self._kind.activated.connect(self._choose_kind)
        self._include = QPushButton()
        self._include.setObjectName("stretch_include")
        self._include.clicked.connect(self._turn)
        self._why = QLineEdit()
        self._why.setObjectName("stretch_why")
        self._why.setAccessibleName(tr("Why it is left out"))
        self._why.setPlaceholderText(tr("Why is it left out?"))
        self._why.textEdited.connect(self.left_out)
        self._why.editingFinished.connect(self.field_left)
        self._back = QPushButton(tr("Hand back"))
        self._back.setObjectName("stretch_hand_back")
        self._back.setProperty("role", "link")
        self._back.setToolTip(tr("Give edges, kind and counting back to the program"))
        self._back.clicked.connect(self.handed_back)
        self._what = AskingLabel()
        self._what.setObjectName("stretch_facts")
        self._what.asked.connect(self.asked)
        self.conditions = ConditionRow()
        self._hint = QLabel(tr(_HINT))
        self._hint.setProperty("role", "muted")
        self._hint.setWordWrap(True)
        row = QHBoxLayout()
        row.setSpacing(S8)
        for widget in (self._name, self._kind, self._include):
            row.addWidget(widget)
        row.addWidget(self._why, 1)
        row.addStretch(0)
        row.addWidget(self._back)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S16, S8, S16, S8)
        layout.setSpacing(S4)
        layout.addLayout(row)
        layout.addWidget(self._what)
        layout.addWidget(self.conditions)
        layout.addWidget(self._hint)
        self.show_stretch(None, None, None, NumberLocale())

    def show_stretch(
        self,
        study: Study | None,
        run: Run | None,
        result: RunResult | None,
        locale: NumberLocale,
        told: tuple[Temperature, ...] | None = None,
    ) -> None:
        """Show one stretch with the temperatures of its bed and room, or how to select one."""
        self._run = run
        self.conditions.show_run(run, told, locale)
        for widget in (self._name, self._kind, self._include, self._why, self._back, self._what):
            widget.setVisible(run is not None)
        self._hint.setVisible(run is None)
        if study is None or run is None:
            return
        self._name.setPlaceholderText(title(study, run))
        _set_text(self._name, run.name)
        self._kind.setCurrentIndex(KINDS.index(run.kind))
        counted = self._counted = run.included if result is None else result.included
        self._include.setText(tr("Leave out") if counted else tr("Count it"))
        self._include.setToolTip(
            tr("Leave it out of the comparison (Delete)") if counted else tr("Count it as a run of the part")
        )
        self._why.setVisible(run.set_included is False)
        _set_text(self._why, run.why_left_out)
        self._back.setVisible(is_decided(run))
        self._what.setText(_facts(run, result, locale))

    def ask_why(self) -> None:
        """Put the cursor where the reason goes."""
        self._why.setVisible(True)
        self._why.setFocus()
        self._why.selectAll()

    def edit_name(self) -> None:
        """Put the cursor where the name goes."""
        self._name.setFocus()
        self._name.selectAll()

    def _choose_kind(self) -> None:
        self.kind_chosen.emit(str(self._kind.currentData()))

    def _turn(self) -> None:
        if self._counted:
            self.left_out.emit("")
            self.ask_why()
        else:
            self.included.emit()

    def _rename(self) -> None:
        if self._name.isModified():
            self._name.setModified(False)
            self.renamed.emit(self._name.text())


def _facts(run: Run, result: RunResult | None, locale: NumberLocale) -> str:
    """Duration, energy, states, who decided, and why it does not count."""
    said = [duration(run.end_s - run.start_s)]
    if result is not None and result.energy_wh is not None:
        energy = with_interval(result.energy_wh, result.energy_u95_wh, ENERGY, locale)
        mean = with_interval(result.mean_w, None, MEAN_W, locale)
        said += [with_unit(energy, ENERGY), tr("{power} on average", power=with_unit(mean, MEAN_W))]
    if result is not None:
        said += [_span_words(span) for span in result.states if span.state in ("warm-up", "processing")]
    text = "  ·  ".join(said)
    why = result.why_excluded if result is not None else None
    if run.set_included is False:
        why = None  # the reason stands in its own field
    elif why is None and not run.included and run.found_why and run.set_kind is None:
        why = reason(run.found_why)
    if why and run.is_moved:
        text += "\n" + tr("Not counted: {why}; edges set by hand", why=why)
    elif why:
        text += "\n" + tr("Not counted: {why}", why=why)
    elif run.is_moved:
        text += "\n" + tr("Edges set by hand")
    return text


def _span_words(span: StateSpan) -> str:
    return f"{tr(span.state)} {duration(span.end_s - span.start_s)}"


def _set_text(field: QLineEdit, text: str) -> None:
    # Only if it differs: the cursor of somebody who is typing stays where it is.
    if field.text() != text:
        field.setText(text)
