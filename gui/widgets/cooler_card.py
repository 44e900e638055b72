"""A cooler bed after the first layers: sliders, what it saves in words, its course, and the caution."""

from PySide6.QtCore import QModelIndex, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from core.figures.cooler_bed import cooler_figure
from core.formatting import NumberLocale, number
from core.found.cooler import MONEY, SHARE, WH
from core.language import tr
from core.results.bed_answer import LOOSE, saving_note, saving_sentence
from core.results.bed_table import savings_table
from core.results.cooler_beds import Plan, Savings
from core.study import Study
from gui.charts.view import ChartView
from gui.look import S4, S8, S12, current
from gui.widgets.asking import AskingLabel
from gui.widgets.cooler_sliders import CoolerSliders
from gui.widgets.number_field import NumberField
from gui.widgets.table_card import TableCard

#: from this width on the course stands beside the sliders, in text heights
_BESIDE = 58.0


class CoolerCard(QFrame):
    """Shows what a plan saves; the plan itself belongs to the page."""

    price_set = Signal(object)  # float or None
    refused = Signal(str)
    #: how was it found: machine id, empty for all together, None for the one that is shown; key of the number
    asked = Signal(object, str)

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._locale = locale
        heading = QLabel(tr("A cooler bed after the first layers"))
        heading.setProperty("role", "heading")
        self._savings: Savings | None = None
        self.sentence = AskingLabel()
        self.sentence.setObjectName("saving_sentence")
        self.note = QLabel()
        self.note.setObjectName("saving_note")
        self.note.setProperty("role", "muted")
        self.note.setWordWrap(True)
        self.caution = QLabel(tr(LOOSE))
        self.caution.setObjectName("cooler_caution")
        self.caution.setProperty("role", "caution")
        self.caution.setWordWrap(True)
        self.sliders = CoolerSliders(locale)
        self.price = NumberField("cooler_price", tr("Price of a kilowatt hour"), (-1000.0, 1e6))
        self.price.entered.connect(self.price_set)
        self.price.refused.connect(self.refused)
        self.sliders.least.refused.connect(self.refused)
        self._currency = QLabel()
        self._currency.setProperty("role", "muted")
        self.chart = ChartView("cooler_bed")
        self.chart.setAccessibleName(tr("Watts of the bed over the print, held and made cooler"))
        self.table = TableCard("savings_table", tr("What a cooler bed saves on each machine"))
        self.table.setObjectName("plain")
        self.sentence.asked.connect(lambda: self.asked.emit(None, WH))
        self.chart.asked.connect(lambda *_: self.asked.emit(None, WH))
        self.table.asked.connect(self._on_cell)
        self._lay_out(heading)

    @property
    def plan(self) -> Plan | None:
        """The plan that is shown."""
        return None if self._savings is None else self._savings.plan

    def _on_cell(self, cell: QModelIndex) -> None:
        machines = () if self._savings is None else self._savings.machines
        key = self.table.key_of(cell)
        key = key if key in (SHARE, MONEY) else WH
        self.asked.emit(machines[cell.row()].machine_id if cell.row() < len(machines) else "", key)

    def _lay_out(self, heading: QLabel) -> None:
        priced = QHBoxLayout()
        priced.setSpacing(S8)
        label = QLabel(tr("A kWh &costs"))
        label.setBuddy(self.price)
        priced.addWidget(label)
        priced.addWidget(self.price)
        priced.addWidget(self._currency)
        priced.addStretch(1)
        controls = QVBoxLayout()
        controls.setSpacing(S8)
        controls.addWidget(self.sliders)
        controls.addLayout(priced)
        controls.addWidget(self.caution)
        controls.addWidget(self.table)
        controls.addStretch(1)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._row.setSpacing(S12)
        self._row.addLayout(controls, 4)
        self._row.addWidget(self.chart, 6)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(S12, S8, S12, S8)
        whole.setSpacing(S4)
        whole.addWidget(heading)
        whole.addWidget(self.sentence)
        whole.addWidget(self.note)
        whole.addLayout(self._row, 1)

    def show_savings(self, savings: Savings, study: Study, machine_id: str) -> None:
        """Show what a plan saves on a machine, and on all."""
        self._savings = savings
        locale, tariff = self._locale, study.costs.tariff
        price = tariff.price_per_kwh
        self.sentence.setText(saving_sentence(savings, machine_id, locale, price, tariff.currency))
        self.note.setText(saving_note(savings, machine_id))
        self.note.setVisible(bool(self.note.text()))
        self.chart.show_figure(cooler_figure(savings, study, machine_id, locale), _say_nothing)
        self.chart.setVisible(self.chart.figure is not None)
        missing = savings.missing
        named = (
            ", ".join(missing) if len(missing) <= 4 else tr("{count:machine|machines}", count=len(missing))
        )
        self.table.show_table(
            savings_table(savings, locale, price, tariff.currency),
            tr("Not known without a hold test at a noted temperature: {named}.", named=named)
            if missing
            else "",
            locale.decimal,
        )
        text = "" if price is None else number(price, 4, locale).rstrip("0").rstrip(locale.decimal)
        self.price.show_text(text, tr("not told"))
        self._currency.setText(tariff.currency or tr("in your currency"))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        beside = self.width() >= _BESIDE * current().text_px
        direction = QBoxLayout.Direction.LeftToRight if beside else QBoxLayout.Direction.TopToBottom
        if self._row.direction() != direction:
            self._row.setDirection(direction)


def _say_nothing(run_id: str, key: str) -> tuple[str, ...]:
    return ()
