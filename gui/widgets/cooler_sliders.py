"""Sliders of a print whose bed is made cooler: temperatures, when, for how long, and the user's limit."""

from attrs import evolve
from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QWheelEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QSlider, QWidget

from core.formatting import NumberLocale, duration, number
from core.language import tr
from core.results.cooler_beds import Plan
from core.study import CoolerPlan
from core.units import SECONDS_PER_HOUR, SECONDS_PER_MINUTE
from gui.look import S4, S8, current
from gui.widgets.number_field import NumberField

#: ends of the sliders [degC], [min], [half hours]
_BED_C = (25, 120)
_FIRST_LAYERS_MIN = (0, 120)
_PRINT_HALF_HOURS = (1, 96)
#: of a slider, so that its handle is not cut, in text heights
_HEIGHT = 1.9
_HALF_HOUR_S = SECONDS_PER_HOUR / 2


class CoolerSliders(QWidget):
    """Tells every plan while a slider moves, and the one at which it comes to rest."""

    moved = Signal(object)  # CoolerPlan, while a slider moves
    settled = Signal(object)  # CoolerPlan, once it rests

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._locale = locale
        self._plan = CoolerPlan()
        self._is_shown = False
        self._values: dict[QSlider, QLabel] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(S8)
        self._grid.setVerticalSpacing(S4)
        self._grid.setColumnStretch(1, 1)
        self.first = self._slider("cooler_first", tr("First &layers at"), _BED_C, 5)
        self.later = self._slider("cooler_later", tr("&Then at"), _BED_C, 5)
        self.first_layers = self._slider(
            "cooler_first_layers", tr("First layers ta&ke"), _FIRST_LAYERS_MIN, 10
        )
        self.print_time = self._slider("cooler_print", tr("The p&rint takes"), _PRINT_HALF_HOURS, 4)
        self.least = NumberField("cooler_least", tr("Lowest bed temperature that you allow"), (0.0, 120.0))
        label = QLabel(tr("&Never below"))
        label.setBuddy(self.least)
        unit = QLabel(tr("°C, your limit"))
        unit.setProperty("role", "muted")
        row = self._grid.rowCount()
        beside = QHBoxLayout()
        beside.setSpacing(S8)
        beside.addWidget(self.least)
        beside.addWidget(unit)
        beside.addStretch(1)
        self._grid.addWidget(label, row, 0)
        self._grid.addLayout(beside, row, 1, 1, 2)
        self.least.entered.connect(self._on_least)

    def show_plan(self, wished: CoolerPlan, plan: Plan) -> None:
        """Show a plan: what was wished, and what it comes to.

        A slider that is being dragged stays where the hand has it.
        """
        self._plan = wished
        self._is_shown = True
        for slider, value in (
            (self.first, plan.first_c),
            (self.later, plan.later_c),
            (self.first_layers, plan.first_layers_s / SECONDS_PER_MINUTE),
            (self.print_time, plan.print_s / _HALF_HOUR_S),
        ):
            if not slider.isSliderDown() and slider.value() != round(value):
                was = slider.blockSignals(True)
                slider.setValue(round(value))
                slider.blockSignals(was)
        self._say(plan)
        self.least.show_text(number(wished.least_c, 0, self._locale), "")

    def _say(self, plan: Plan) -> None:
        """The values beside the sliders, and to a screen reader."""
        texts = (
            f"{number(plan.first_c, 0, self._locale)} °C",
            f"{number(plan.later_c, 0, self._locale)} °C",
            duration(plan.first_layers_s),
            duration(plan.print_s),
        )
        for slider, text in zip(self.all, texts, strict=True):
            self._values[slider].setText(text)
            slider.setAccessibleDescription(text)

    @property
    def all(self) -> tuple[QSlider, ...]:
        """The sliders, from top to bottom."""
        return (self.first, self.later, self.first_layers, self.print_time)

    def _slider(self, name: str, text: str, ends: tuple[int, int], page: int) -> QSlider:
        slider = _Slider(Qt.Orientation.Horizontal)
        slider.setObjectName(name)
        slider.setAccessibleName(text.replace("&", ""))
        slider.setRange(*ends)
        slider.setPageStep(page)
        slider.setMinimumHeight(round(_HEIGHT * current().text_px))
        slider.valueChanged.connect(self._on_value)
        slider.sliderReleased.connect(self._on_release)
        label = QLabel(text)
        label.setBuddy(slider)
        value = QLabel()
        value.setMinimumWidth(value.fontMetrics().horizontalAdvance("00 h 00 min "))
        self._values[slider] = value
        row = self._grid.rowCount()
        self._grid.addWidget(label, row, 0)
        self._grid.addWidget(slider, row, 1)
        self._grid.addWidget(value, row, 2)
        return slider

    def _on_value(self) -> None:
        if not self._is_shown:
            return
        slider = self.sender()
        plan = self._plan
        if slider is self.first:
            plan = evolve(plan, first_c=float(self.first.value()))
        elif slider is self.later:
            plan = evolve(plan, later_c=float(self.later.value()))
        elif slider is self.first_layers:
            until_s = self.first_layers.value() * SECONDS_PER_MINUTE
            plan = evolve(plan, first_layers_s=min(until_s, plan.print_s))
        else:
            print_s = self.print_time.value() * _HALF_HOUR_S
            plan = evolve(plan, print_s=print_s, first_layers_s=min(plan.first_layers_s, print_s))
        self._plan = plan
        self.moved.emit(plan)
        if isinstance(slider, QSlider) and not slider.isSliderDown():
            self.settled.emit(plan)  # by keys every step rests

    def _on_release(self) -> None:
        self.settled.emit(self._plan)

    def _on_least(self, least_c: float | None) -> None:
        self._plan = evolve(self._plan, least_c=CoolerPlan().least_c if least_c is None else least_c)
        self.settled.emit(self._plan)


class _Slider(QSlider):
    """A slider in a page that scrolls: the wheel scrolls the page. Its handle shows the focus."""

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self._mark(True)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self._mark(False)

    def _mark(self, is_focused: bool) -> None:
        # a style sheet knows no focus of a handle
        self.setProperty("focused", is_focused)
        self.style().unpolish(self)
        self.style().polish(self)

    def wheelEvent(self, event: QWheelEvent) -> None:
        event.ignore()
