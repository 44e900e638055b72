"""What the user states about the next test: who takes part, how often, from which state, how hot."""

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from core import edits
from core.edits import Edit
from core.edits.plan import MOST_REPEATS, PlanTemperature
from core.formatting import NumberLocale
from core.language import mark, tr
from core.plan.order import machines_of, meters_of
from core.plan.values import DisplayUnit, StartingState
from core.results.temperatures import degrees
from core.study import Study
from gui.look import S4, S8
from gui.widgets.choice import Choice
from gui.widgets.flow import Flow, labelled
from gui.widgets.number_field import NumberField
from gui.widgets.titled_card import muted_words, tell

Maker = Callable[[Study], Edit]
_STARTS: tuple[tuple[str, StartingState], ...] = (
    (mark("a cold machine"), "cold"),
    (mark("a warm machine"), "warm"),
)
_UNITS: tuple[DisplayUnit, ...] = ("kWh", "Wh")
#: (field, label, what it is, limits)
_TEMPERATURES: tuple[tuple[PlanTemperature, str, str, tuple[float, float]], ...] = (
    ("bed_c", mark("Bed (°C)"), mark("Temperature of the bed in degrees"), (0.0, 200.0)),
    ("nozzle_c", mark("Nozzle (°C)"), mark("Temperature of the nozzle in degrees"), (0.0, 500.0)),
    (
        "first_layer_bed_c",
        mark("First layer: bed (°C)"),
        mark("Bed at the first layer in degrees"),
        (0.0, 200.0),
    ),
    ("first_layer_nozzle_c", mark("nozzle (°C)"), mark("Nozzle at the first layer in degrees"), (0.0, 500.0)),
    ("room_c", mark("Room (°C)"), mark("Temperature of the room in degrees"), (-20.0, 50.0)),
)
_MOST_SEED = 1e9
_MOST_AT_ONCE = 8
#: more machines or meters than this have no box of their own
_MOST_BOXES = 60


class PlanForm(QWidget):
    """Asks for edits, and keeps nothing of its own."""

    wanted = Signal(object)  # Maker
    left = Signal()  # a field is finished
    refused = Signal(str)

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("plan_form")
        self._locale = locale
        self._study: Study | None = None
        self._machine_boxes: dict[QCheckBox, str] = {}
        self._meter_boxes: dict[QCheckBox, str] = {}
        self.new_machine = _name_field(
            "plan_new_machine", tr("Name of another machine"), tr("another machine")
        )
        self.new_meter = _name_field("plan_new_meter", tr("Name of another meter"), tr("another meter"))
        self.repeats = NumberField("plan_repeats", tr("Blocks: runs of each machine"), (1.0, MOST_REPEATS))
        self.at_once = Choice("plan_at_once", tr("Machines that work at the same time"))
        self.start = Choice("plan_start", tr("State from which each run starts"))
        self.wait = NumberField("plan_wait", tr("Minutes in that state before a run"), (0.0, 1440.0))
        self.material = QLineEdit()
        self.material.setObjectName("plan_material")
        self.material.setAccessibleName(tr("Material of the part"))
        self.material.setPlaceholderText(tr("not stated"))
        self.temperatures = {
            name: NumberField(f"plan_{name}", tr(told), limits) for name, _, told, limits in _TEMPERATURES
        }
        self.display = Choice("plan_display", tr("What the meters' displays show"))
        self.checks = QCheckBox(tr("Hold the meters a&gainst each other on one load, before and after"))
        self.checks.setObjectName("plan_checks")
        self.seed = NumberField("plan_seed", tr("Seed of the order"), (0.0, _MOST_SEED))
        self.shuffle = QPushButton(tr("Sh&uffle"))
        self.shuffle.setObjectName("plan_shuffle")
        self.shuffle.setToolTip(tr("Take the order of the next seed"))
        self._machines, self._meters, self._extras = Flow(), Flow(), Flow()
        self._extra_buttons: dict[QPushButton, str] = {}
        self._more_machines = muted_words()
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S8)
        for flow, words in ((self._machines, tr("Machines:")), (self._meters, tr("Meters:"))):
            flow.addWidget(QLabel(words))
            layout.addLayout(flow)
        layout.insertWidget(1, self._more_machines)
        self._machines.addWidget(self.new_machine)
        self._meters.addWidget(self.new_meter)
        lines: Sequence[Sequence[tuple[str, QWidget]]] = (
            (
                (tr("Bloc&ks (runs of each):"), self.repeats),
                (tr("At the same t&ime:"), self.at_once),
                (tr("Star&t from:"), self.start),
                (tr("for at least (min):"), self.wait),
            ),
            (
                (tr("&Material:"), self.material),
                *((f"{tr(label)}:", self.temperatures[name]) for name, label, _, _ in _TEMPERATURES),
            ),
            ((tr("Displa&ys in:"), self.display), ("", self.checks)),
            ((tr("Order &of seed:"), self.seed), ("", self.shuffle)),
        )
        for line in lines:
            flow = Flow()
            for text, field in line:
                flow.addWidget(labelled(text, field) if text else field)
            layout.addLayout(flow)
        layout.addLayout(self._extras)
        layout.setSpacing(S4)

    def _connect(self) -> None:
        for field in (self.repeats, self.wait, self.seed, *self.temperatures.values()):
            field.refused.connect(self.refused)
            field.entered.connect(self._on_number)
            field.editingFinished.connect(self.left)
        for choice in (self.at_once, self.start, self.display):
            choice.activated.connect(self._on_choice)
        self.material.textEdited.connect(self._on_material)
        self.material.editingFinished.connect(self.left)
        self.checks.clicked.connect(self._on_checks)
        self.shuffle.clicked.connect(self._on_shuffle)
        self.new_machine.returnPressed.connect(self._on_new_machine)
        self.new_meter.returnPressed.connect(self._on_new_meter)

    # showing

    def show_study(self, study: Study) -> None:
        """Show the plan of a study."""
        is_other = self._study is None or self._study.id != study.id
        before = self._study
        self._study, plan = study, study.plan
        if before is None or before.machines != study.machines or before.plan != plan:
            named = [(m.id, m.name) for m in study.machines]
            self._fill_boxes(self._machines, self._machine_boxes, named, {m.id for m in machines_of(study)})
        if before is None or before.meters != study.meters or before.plan != plan:
            named = [(m.id, m.name) for m in study.meters]
            self._fill_boxes(self._meters, self._meter_boxes, named, {m.id for m in meters_of(study)})
        more = len(study.machines) - _MOST_BOXES
        words = (
            tr("{count:more machine|more machines} without a box of their own take part.", count=more)
            if more > 0
            else ""
        )
        tell(self._more_machines, words)
        if before is None or before.plan.extra != plan.extra or before.machines != study.machines:
            self._show_extras(study)
        self.repeats.show_text(str(plan.repeats), "", of_other=is_other)
        most = max(1, min(len(machines_of(study)), len(meters_of(study)), _MOST_AT_ONCE))
        names = [
            (tr("{count} machines", count=n) if n > 1 else tr("one machine"), n) for n in range(1, most + 1)
        ]
        self.at_once.fill(names, min(plan.at_once, most))
        self.at_once.setEnabled(most > 1)
        self.start.fill([(tr(text), value) for text, value in _STARTS], plan.start)
        self.wait.show_text(degrees(plan.wait_min, self._locale), "", of_other=is_other)
        if self.material.text() != plan.material and (is_other or not self.material.hasFocus()):
            self.material.setText(plan.material)
        of_study = {"bed_c": study.bed_c, "room_c": study.room_c}
        stated = {
            "bed_c": plan.bed_c,
            "nozzle_c": plan.nozzle_c,
            "first_layer_bed_c": plan.first_layer_bed_c,
            "first_layer_nozzle_c": plan.first_layer_nozzle_c,
            "room_c": plan.room_c,
        }
        for name, field in self.temperatures.items():
            known = of_study.get(name)
            behind = "–" if known is None else degrees(known, self._locale)
            value = stated[name]
            field.show_text("" if value is None else degrees(value, self._locale), behind, of_other=is_other)
        self.display.fill([(unit, unit) for unit in _UNITS], plan.display_unit)
        self.checks.setChecked(plan.has_checks)
        self.checks.setEnabled(len(meters_of(study)) > 1)
        self.seed.show_text(str(plan.seed), "", of_other=is_other)

    def _show_extras(self, study: Study) -> None:
        """Runs beyond the blocks, each with a button that takes it out."""
        while self._extra_buttons:
            gone, _ = self._extra_buttons.popitem()
            self._extras.removeWidget(gone)
            gone.hide()
            gone.deleteLater()
        names = {m.id: m.name for m in study.machines}
        for extra in study.plan.extra:
            button = QPushButton(
                tr(
                    "Take out {runs:more run|more runs} of {machine}",
                    runs=extra.runs,
                    machine=names[extra.machine_id],
                )
            )
            button.setObjectName(f"plan_extra_{extra.machine_id}")
            button.setToolTip(tr("They are planned after the blocks"))
            button.clicked.connect(self._on_extra)
            self._extras.addWidget(button)
            self._extra_buttons[button] = extra.machine_id

    def _fill_boxes(
        self,
        flow: Flow,
        boxes: dict[QCheckBox, str],
        items: Sequence[tuple[str, str]],
        taking_part: set[str],
    ) -> None:
        """A box for each machine or meter (id, name); those that are there stay, so that the focus does.

        Of very many only the first have a box; the others take part.
        """
        items = items[:_MOST_BOXES]
        while len(boxes) > len(items):
            gone, _ = boxes.popitem()
            flow.removeWidget(gone)
            gone.hide()
            gone.deleteLater()
        while len(boxes) < len(items):
            box = QCheckBox()
            box.clicked.connect(self._on_box)
            field = flow.takeAt(flow.count() - 1)
            flow.addWidget(box)
            if field is not None:
                flow.addItem(field)
            boxes[box] = ""
        for box, (item_id, name) in zip(list(boxes), items, strict=True):
            boxes[box] = item_id
            box.setText(name.replace("&", "&&"))
            box.setObjectName(f"plan_{item_id}")
            box.setAccessibleName(tr("Whether {name} takes part", name=name))
            box.setChecked(item_id in taking_part)

    # what the user does

    def _ask(self, maker: Maker) -> None:
        self.wanted.emit(maker)

    def _on_box(self, is_in: bool) -> None:
        box = self.sender()
        if isinstance(box, QCheckBox):
            if box in self._machine_boxes:
                machine_id = self._machine_boxes[box]
                self._ask(partial(edits.plan_machine, machine_id=machine_id, takes_part=is_in))
            else:
                self._ask(partial(edits.plan_meter, meter_id=self._meter_boxes[box], takes_part=is_in))

    def _on_number(self, value: float | None) -> None:
        field = self.sender()
        for name, known in self.temperatures.items():
            if field is known:
                self._ask(partial(edits.set_plan_temperature, name=name, value_c=value))
        if value is None:
            if field in (self.repeats, self.wait, self.seed):
                self._show_again()
        elif field is self.repeats:
            self._ask(partial(edits.plan_repeats, repeats=round(value)))
        elif field is self.wait:
            start = self.start.currentData()
            self._ask(partial(edits.set_plan_start, start=start, wait_min=value))
        elif field is self.seed:
            self._ask(partial(edits.shuffle_plan, seed=round(value)))

    def _show_again(self) -> None:
        """An emptied field that needs a number takes its old one back."""
        if self._study is not None:
            plan = self._study.plan
            self.repeats.show_text(str(plan.repeats), "", of_other=True)
            self.wait.show_text(degrees(plan.wait_min, self._locale), "", of_other=True)
            self.seed.show_text(str(plan.seed), "", of_other=True)

    def _on_choice(self) -> None:
        choice = self.sender()
        if choice is self.at_once:
            self._ask(partial(edits.plan_at_once, at_once=int(self.at_once.currentData())))
        elif choice is self.start:
            self._ask(partial(edits.set_plan_start, start=self.start.currentData()))
        elif choice is self.display:
            self._ask(partial(edits.set_plan_display, unit=self.display.currentData()))

    def _on_extra(self) -> None:
        button = self.sender()
        if isinstance(button, QPushButton) and button in self._extra_buttons:
            self._ask(partial(edits.plan_extra, machine_id=self._extra_buttons[button], runs=0))

    def _on_material(self, text: str) -> None:
        self._ask(partial(edits.set_plan_material, material=text))

    def _on_checks(self, is_on: bool) -> None:
        self._ask(partial(edits.set_plan_checks, has_checks=is_on))

    def _on_shuffle(self) -> None:
        self._ask(edits.shuffle_plan)

    def _on_new_machine(self) -> None:
        self._add(self.new_machine, edits.add_machine)

    def _on_new_meter(self) -> None:
        self._add(self.new_meter, edits.add_meter)

    def _add(self, field: QLineEdit, add: Callable[..., Edit]) -> None:
        name = field.text().strip()
        field.clear()
        if name:
            self._ask(partial(add, name=name))


def _name_field(name: str, accessible_name: str, behind: str) -> QLineEdit:
    field = QLineEdit()
    field.setObjectName(name)
    field.setAccessibleName(tr("{what}; Enter adds it", what=accessible_name))
    field.setPlaceholderText(tr("{what}, then Enter", what=behind))
    field.setMinimumWidth(field.fontMetrics().horizontalAdvance(field.placeholderText()) + 24)
    return field
