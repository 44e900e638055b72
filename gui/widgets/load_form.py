"""The steps of a machine's switch-on tests to be named, and its loads with what runs while idle."""

from functools import partial

from attrs import evolve
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QGridLayout, QLabel, QWidget

from core.formatting import NumberLocale, number
from core.found.load_parts import STEP
from core.language import tr
from core.loads.names import BY_KEY, LOADS
from core.results.load_answer import step_name, step_watts, watts_text, year_kwh
from core.results.load_naming import LoadStep
from core.results.loads import LoadWatts, MachineLoads
from core.units import SECONDS_PER_MINUTE
from gui.look import S4, S8, S12
from gui.widgets.asking import AskingLabel
from gui.widgets.choice import Choice

#: letters that a name has room for at least
_LONGEST = 15


class LoadForm(QWidget):
    """Steps on top, loads below."""

    named = Signal(
        str, float, object
    )  # log id, when [s], load key, "" for none, None as the program finds it
    idle_set = Signal(str, bool)  # load key, whether it runs while idle
    asked = Signal(str)  # how was it found: key of a load, or of a step

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._locale = locale
        self._shown: MachineLoads | None = None
        self._steps: dict[Choice, LoadStep] = {}
        self._boxes: dict[QCheckBox, LoadWatts] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(S12, S8, S12, S8)
        self._grid.setHorizontalSpacing(S12)
        self._grid.setVerticalSpacing(S4)
        self._grid.setColumnStretch(2, 1)
        self._grid.setColumnStretch(3, 2)

    def show_machine(self, machine: MachineLoads) -> None:
        """Show the steps and loads of a machine."""
        if machine == self._shown:
            return
        self._shown = machine
        while (item := self._grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self._steps, self._boxes = {}, {}
        self._head(0, tr("Steps"), tr("Power moved"), tr("What was it?"))
        for row, step in enumerate(machine.steps, start=1):
            self._add_step(row, step)
        row = 1 + len(machine.steps)
        self._head(row, tr("Loads"), tr("Takes"), tr("Runs while idle, a year of it"))
        for place, load in enumerate(machine.loads, start=row + 1):
            self._add_load(place, load)

    def go_to(self, step_number: int) -> None:
        """Go to the name of a step."""
        choice = next((c for c, step in self._steps.items() if step.number == step_number), None)
        if choice is not None:
            choice.setFocus(Qt.FocusReason.OtherFocusReason)

    def _head(self, row: int, *texts: str) -> None:
        for column, text in enumerate(texts):
            label = QLabel(text)
            label.setProperty("role", "heading" if column == 0 else "muted")
            self._grid.addWidget(label, row, column)

    def _add_step(self, row: int, step: LoadStep) -> None:
        at_min = number(step.at_s / SECONDS_PER_MINUTE, 1, self._locale)
        texts = (
            tr("Step {number} at {minutes} min", number=step.number, minutes=at_min),
            step_watts(step, self._locale),
        )
        for column, text in enumerate(texts):
            label = self._asking(text, f"{STEP}{step.number}", by_keyboard=column > 0)
            self._grid.addWidget(label, row, column)
        choice = Choice(f"step_{step.number}", tr("Load of step {number}", number=step.number))
        unnamed = evolve(step, load="") if step.is_named else step
        found = "" if step.is_named or not step.load else tr("{what} (found)", what=BY_KEY[step.load].title)
        choice.setMinimumContentsLength(_LONGEST)
        entries: list[tuple[str, object]] = [(found or step_name(unnamed), None)]
        entries += [(load.title, load.key) for load in LOADS]
        if found or (step.is_named and not step.load):
            entries.append((tr("none of these"), ""))
        choice.fill(entries, step.load if step.is_named else None)
        choice.activated.connect(self._on_named)
        self._steps[choice] = step
        self._grid.addWidget(choice, row, 2)

    def _add_load(self, row: int, load: LoadWatts) -> None:
        title = BY_KEY[load.load].title
        self._grid.addWidget(QLabel(title), row, 0)
        watts = watts_text(load.watts, load.u95_w, self._locale)
        self._grid.addWidget(self._asking(watts, load.load), row, 1)
        if BY_KEY[load.load].in_processing:
            told = f"{number(year_kwh(load), 0, self._locale)} kWh"
            box = QCheckBox(tr("{energy}, set by you", energy=told) if load.is_idle_by_user else told)
            box.setObjectName(f"idle_{load.load.replace(' ', '_')}")
            box.setAccessibleName(tr("Whether {title} runs while the machine is idle", title=title))
            box.setChecked(load.is_idle)
            box.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            box.clicked.connect(self._on_idle)
            self._boxes[box] = load
            self._grid.addWidget(box, row, 2)

    def _asking(self, text: str, key: str, *, by_keyboard: bool = True) -> AskingLabel:
        label = AskingLabel(text, by_keyboard=by_keyboard)
        label.setWordWrap(False)
        label.asked.connect(partial(self.asked.emit, key))
        return label

    def _on_named(self) -> None:
        choice = self.sender()
        step = self._steps.get(choice) if isinstance(choice, Choice) else None
        if step is not None and isinstance(choice, Choice):
            shown = step.load if step.is_named else None
            if choice.currentData() != shown:
                self.named.emit(step.log_id, step.at_s, choice.currentData())

    def _on_idle(self, is_checked: bool) -> None:
        box = self.sender()
        if isinstance(box, QCheckBox) and box in self._boxes:
            self.idle_set.emit(self._boxes[box].load, is_checked)
