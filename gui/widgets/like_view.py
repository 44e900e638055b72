"""Like for like on the Compare page: common temperatures, both energies side by side, a machine's steps."""

from PySide6.QtCore import QModelIndex, Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from core.figures.waterfall import like_figure, waterfall_figure
from core.formatting import NumberLocale, with_interval
from core.found.like import answer_found, like_found
from core.found.values import Explanation
from core.language import tr
from core.quantities import ENERGY
from core.results.like_answer import like_note, like_table
from core.results.like_for_like import Given, LikeForLike, forget, given, like_for_like
from core.results.temperatures import degrees
from core.results.values import Comparison
from core.study import Study
from core.units import SECONDS_PER_MINUTE
from gui.charts.view import ChartView
from gui.look import S8, S12, current
from gui.session import Session
from gui.widgets.choice import Choice
from gui.widgets.flow import Flow, labelled
from gui.widgets.number_field import NumberField
from gui.widgets.table_card import TableCard
from gui.widgets.titled_card import bare_card

#: width of a temperature's field [text heights]
_FIELD = 4.0
#: key of the job
LIKE = "like for like"
_BED_C, _ROOM_C, _MINUTES = (20.0, 150.0), (-10.0, 45.0), (1.0, 100_000.0)


class LikeView(QWidget):
    """Shows what was found at the temperatures in its two fields."""

    changed = Signal()  # other conditions: the sentence on top is another
    refused = Signal(str)

    def __init__(self, session: Session, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("like_view")
        self._session = session
        self._locale = locale
        self._given: Given | None = None
        self.found: LikeForLike | None = None
        self._machine_id = ""
        self.bed = NumberField("common_bed_c", tr("Common temperature of the beds in degrees"), _BED_C)
        self.room = NumberField("common_room_c", tr("Common temperature of the room in degrees"), _ROOM_C)
        self.length = NumberField("common_minutes", tr("Common length of processing in minutes"), _MINUTES)
        self.machine = Choice("like_machine", tr("Machine whose steps are shown"))
        self.rows = ChartView("like_for_like")
        self.rows.setAccessibleName(tr("Measured and adjusted energy: one row a machine"))
        self.steps = ChartView("like_steps")
        self.steps.setAccessibleName(tr("Steps from the measured to the adjusted energy of one machine"))
        self.table = TableCard("like_table", tr("Like for like as a table"))
        self._lay_out()
        for field in (self.bed, self.room, self.length):
            field.entered.connect(self._on_entered)
            field.refused.connect(self.refused)
        self.machine.activated.connect(self._on_machine)
        session.opened.connect(self._on_opened)
        self.table.view.selectionModel().currentRowChanged.connect(self._on_row)

    def _lay_out(self) -> None:
        controls = QWidget()
        row = Flow(controls, S8)
        for text, widget in (
            (tr("&Bed at (°C):"), self.bed),
            (tr("&Room at (°C):"), self.room),
            (tr("&Lasting (min):"), self.length),
            (tr("Steps &of:"), self.machine),
        ):
            if isinstance(widget, NumberField):
                words = widget.fontMetrics().horizontalAdvance(tr("own")) + 2 * S12
                widget.setMinimumWidth(max(round(_FIELD * current().text_px), words))
            row.addWidget(labelled(text, widget))
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S12)
        layout.addWidget(controls)
        layout.addWidget(bare_card(self.rows))
        self._steps_card = bare_card(self.steps)
        layout.addWidget(self._steps_card)
        layout.addWidget(self.table)
        layout.addStretch(1)

    def explanation(self) -> Explanation | None:
        """How the sentence on top was found; None before anything is."""
        if self.found is None or self._given is None or not self.found.machines:
            return None
        return answer_found(self.found, self._given, self._locale)

    def explanation_of(self, machine_id: str, key: str) -> Explanation | None:
        """How a machine's adjusted energy was found."""
        if self.found is None:
            return None
        return like_found(self.found, machine_id, self._locale, self._given)

    def show_study(self, study: Study, comparison: Comparison) -> None:
        """Show a comparison at the temperatures in the fields; its beds are found outside the GUI thread."""
        if self._given is not None and self._given.comparison is comparison:
            self._show()
            return
        traces = self._session.traces
        self._session.jobs.start(LIKE, lambda _: given(study, comparison, traces), self._on_given)

    def _on_opened(self) -> None:
        """Another study is open: nothing of the one before counts there, nor is its data kept."""
        self._given, self.found, self._machine_id = None, None, ""
        for field in (self.bed, self.room, self.length):
            field.show_text("", "", of_other=True)
        forget()

    def _on_given(self, found: Given) -> None:
        if found.comparison is self._session.comparison:
            self._given = found
            self._show()
            self.changed.emit()

    def _show(self) -> None:
        if self._given is None:
            return
        self.found = found = like_for_like(self._given, self.bed.value, self.room.value, self._processing_s())
        self.length.setPlaceholderText(tr("own"))
        self.bed.setPlaceholderText(degrees(self._given.beds.bed_c, self._locale))
        self.room.setPlaceholderText(degrees(self._given.beds.room_c, self._locale))
        known = found.known
        if self._machine_id not in {m.machine_id for m in known}:
            moved = sorted(known, key=lambda m: -sum(abs(s.change_wh) for s in m.steps))
            self._machine_id = moved[0].machine_id if moved else ""
        self.machine.fill([(m.name, m.machine_id) for m in known], self._machine_id)
        self.machine.setEnabled(bool(known))
        self.rows.show_figure(like_figure(found, self._given.study, self._locale), self._say)
        self.table.show_table(like_table(found, self._locale), like_note(found), self._locale.decimal)
        self._show_steps()

    def _processing_s(self) -> float | None:
        minutes = self.length.value
        return None if minutes is None else minutes * SECONDS_PER_MINUTE

    def _show_steps(self) -> None:
        assert self._given is not None
        assert self.found is not None
        machine = self.found.of(self._machine_id)
        figure = (
            None
            if machine is None
            else waterfall_figure(machine, self.found, self._given.study, self._locale)
        )
        self.steps.show_figure(figure, self._say)
        self._steps_card.setVisible(figure is not None)

    def _say(self, run_id: str, key: str) -> tuple[str, ...]:
        machine = next((m for m in self.found.machines if m.run_id == run_id), None) if self.found else None
        value = (
            None if machine is None else (machine.measured_wh if key == "measured" else machine.adjusted_wh)
        )
        if machine is None or value is None:
            return ()
        told = with_interval(value.value, value.u95, ENERGY, self._locale)
        if key == "measured":
            return machine.name, tr("Measured: {energy} Wh", energy=told)
        return machine.name, tr("Like for like: {energy} Wh", energy=told)

    def _on_entered(self) -> None:
        self.refused.emit("")
        self._show()
        self.changed.emit()

    def _on_machine(self) -> None:
        self._machine_id = str(self.machine.currentData())
        self._show_steps()

    def _on_row(self, current: QModelIndex) -> None:
        index = self.machine.findText(str(current.siblingAtColumn(0).data(Qt.ItemDataRole.DisplayRole)))
        if index >= 0:
            self.machine.setCurrentIndex(index)
            self._on_machine()
