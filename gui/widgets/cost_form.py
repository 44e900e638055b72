"""What the user states about cost: price of electricity, switching off, the print, and each machine."""

from collections.abc import Callable
from functools import cache, partial
from zoneinfo import available_timezones

from PySide6.QtCore import QLocale, Qt, QTimeZone, Signal
from PySide6.QtWidgets import (
    QCompleter,
    QFormLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from core import edits
from core.costs.rates import PriceBand, PricedBy
from core.edits import Edit
from core.formatting import NumberLocale, number
from core.language import mark, tr
from core.study import Study
from gui.look import S4, S8, S12
from gui.widgets.band_list import PRICES, BandList, price_text
from gui.widgets.choice import Choice
from gui.widgets.number_field import NumberField

Maker = Callable[[Study], Edit]

_WAYS: tuple[tuple[str, PricedBy], ...] = (
    (mark("one price"), "single"),
    (mark("by time of day"), "bands"),
    (mark("a list by date"), "list"),
)
_MOST = 1e9
#: (field, label, what it is, unit, limits) of the print
_PRINT = (
    ("print_hours", mark("Len&gth"), mark("Length of the print, warm-up included"), "h", (0.01, 10_000.0)),
    ("material_g", mark("Materia&l"), mark("Material in the print"), "g", (0.0, _MOST)),
    ("material_per_kg", mark("Material, a kg"), mark("Price of the material a kilogram"), "", (0.0, _MOST)),
    (
        "failed_percent",
        mark("Pri&nts that fail"),
        mark("Prints that fail, of all that are begun"),
        "%",
        (0.0, 99.0),
    ),
    (
        "co2_g_per_kwh",
        mark("CO₂ facto&r"),
        mark("Grams of carbon dioxide a kWh, your own figure"),
        "g/kWh",
        (0.0, 1e6),
    ),
)
_MACHINE = (
    ("count", mark("Ho&w many"), mark("Machines of this kind"), "", (1.0, 100_000.0)),
    (
        "printing_hours",
        mark("Printing a year"),
        mark("Hours a year that one of them prints"),
        "h",
        (0.0, 8784.0),
    ),
    (
        "idle_hours",
        mark("&Idle a year"),
        mark("Hours a year switched on and doing nothing"),
        "h",
        (0.0, 8784.0),
    ),
    ("price", mark("Purchase price"), mark("Purchase price of the machine"), "", (0.0, _MOST)),
    (
        "life_hours",
        mark("Its life"),
        mark("Hours of printing over which the price is spread"),
        "h",
        (1.0, _MOST),
    ),
    ("wear_price", mark("Wearing parts"), mark("Price of a set of the parts that wear"), "", (0.0, _MOST)),
    (
        "wear_hours",
        mark("They last"),
        mark("Hours of printing that a set of wearing parts lasts"),
        "h",
        (1.0, _MOST),
    ),
)


class CostForm(QWidget):
    """Asks for edits; keeps nothing of its own but which machine is chosen."""

    wanted = Signal(object)  # Maker
    left = Signal()  # a field is finished
    file_wanted = Signal()  # read a list of prices

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("cost_form")
        self._locale = locale
        self._study: Study | None = None
        self._fields: dict[str, NumberField] = {}
        self.currency = QLineEdit()
        self.currency.setObjectName("currency")
        self.currency.setAccessibleName(tr("Currency, any symbol or code"))
        self.currency.setMaxLength(8)
        self.way = Choice("priced_by", tr("How electricity is priced"))
        self.way.fill([(tr(text), value) for text, value in _WAYS], "single")
        self.bands = BandList(locale)
        self.lists = Choice("price_list", tr("Which list of prices"))
        self.read = QPushButton(tr("&Read prices from a file…"))
        self.read.setObjectName("read_prices")
        self.read.setToolTip(tr("A CSV file with a date and time and a price in each row"))
        self.zone = QLineEdit()
        self.zone.setObjectName("price_zone")
        self.zone.setAccessibleName(tr("Time zone by whose clock the price changes"))
        self.zone.setPlaceholderText(tr("clock of the logs"))
        self.co2_source = QLineEdit()
        self.co2_source.setObjectName("co2_source")
        self.co2_source.setAccessibleName(tr("Where the CO₂ factor is from"))
        self.co2_source.setPlaceholderText(tr("not named"))
        self.machine = Choice("cost_machine", tr("Machine whose costs are shown below"))
        self.why_not = QLabel()
        self.why_not.setObjectName("cost_why_not")
        self.why_not.setProperty("role", "problem")
        self.why_not.setWordWrap(True)
        self.why_not.hide()
        self._lay_out()
        self._connect()

    def field(self, name: str) -> NumberField:
        """A number by the name of what it states."""
        return self._fields[name]

    def show_study(self, study: Study) -> None:
        """Show what a study states."""
        is_other = self._study is None or self._study.id != study.id
        self._study = study
        costs, tariff = study.costs, study.costs.tariff
        usual = QLocale().currencySymbol() or "€"
        self.currency.setPlaceholderText(usual)
        if self.currency.text() != tariff.currency and (is_other or not self.currency.hasFocus()):
            self.currency.setText(tariff.currency)
        self.way.fill([(tr(text), value) for text, value in _WAYS], tariff.priced_by)
        self._show("price_per_kwh", tariff.price_per_kwh, tr("not set"), is_other)
        self._show("standing_per_day", tariff.standing_per_day, tr("none"), is_other)
        self.bands.show_bands(tariff.bands, tariff.price_per_kwh)
        self.lists.fill([(p.name, p.id) for p in study.price_lists], tariff.list_id)
        if self.zone.text() != (tariff.zone or "") and (is_other or not self.zone.hasFocus()):
            self.zone.setText(tariff.zone or "")
        self._show("off_after_min", costs.off_after_min, "", is_other)
        for name, *_ in _PRINT:
            self._show(name, getattr(costs, name), tr("not stated"), is_other)
        if self.co2_source.text() != costs.co2_source and (is_other or not self.co2_source.hasFocus()):
            self.co2_source.setText(costs.co2_source)
        self._show_rows()
        self._show_machine(is_other)

    def _show_rows(self) -> None:
        """Only what the chosen way of pricing needs."""
        assert self._study is not None
        way = self._study.costs.tariff.priced_by
        self._price.setRowVisible(self._fields["price_per_kwh"], way != "list")
        self._price.setRowVisible(self.bands, way == "bands")
        self._price.setRowVisible(self.lists, way == "list")
        self._price.setRowVisible(self.read, way == "list" or bool(self._study.price_lists))
        self._price.setRowVisible(self.zone, way != "single")
        if way != "single" and self.zone.completer() is None:
            self._offer_zones()
        label = self._price.labelForField(self._fields["price_per_kwh"])
        if isinstance(label, QLabel):
            label.setText(tr("Other &times") if way == "bands" else tr("&Price a kWh"))
        self._price.setRowVisible(self._fields["price_per_kwh"], way != "list")

    def _offer_zones(self) -> None:
        completer = QCompleter(_zones(), self.zone)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        self.zone.setCompleter(completer)

    def _show_machine(self, is_other: bool) -> None:
        assert self._study is not None
        machines = self._study.machines
        before = self.machine.currentData()
        self.machine.fill([(m.name, m.id) for m in machines], before)
        if not machines:
            return
        now = str(self.machine.currentData())
        stated = self._study.costs.of(now)
        for name, *_ in _MACHINE:
            behind = tr("all the rest") if name == "idle_hours" else tr("not stated")
            self._show(name, getattr(stated, name), behind, is_other or now != before)

    def _show(self, name: str, value: float | None, behind: str, is_other: bool) -> None:
        write = price_text if name in ("price_per_kwh", "standing_per_day") else _plain
        text = "" if value is None else write(value, self._locale)
        self._fields[name].show_text(text, behind, of_other=is_other)

    # what the user does

    def _connect(self) -> None:
        self.currency.editingFinished.connect(self._on_currency)
        self.way.activated.connect(self._on_way)
        self.bands.bands_set.connect(self._on_bands)
        self.bands.refused.connect(self._refuse)
        self.lists.activated.connect(self._on_list)
        self.read.clicked.connect(self.file_wanted)
        self.zone.editingFinished.connect(self._on_zone)
        self.co2_source.editingFinished.connect(self._on_co2_source)
        self.machine.activated.connect(self._on_machine)
        for field in self._fields.values():
            field.entered.connect(self._on_number)
            field.refused.connect(self._refuse)
            field.editingFinished.connect(self.left)

    def _on_number(self, value: float | None) -> None:
        field = self.sender()
        name = next((n for n, f in self._fields.items() if f is field), "")
        if name == "price_per_kwh":
            self._ask(lambda study: edits.set_price(study, value))
        elif name == "standing_per_day":
            self._ask(lambda study: edits.set_standing_charge(study, value))
        elif any(name == known for known, *_ in _MACHINE):
            machine_id = str(self.machine.currentData())
            whole = 1.0 if name == "count" and value is None else value
            if name == "count" and whole is not None and whole != int(whole):
                self._refuse(tr("There is no part of a machine: write a whole number."))
                return
            self._ask(lambda study: edits.set_machine_cost(study, machine_id, name, whole))
        else:
            default = {"off_after_min": 30.0, "print_hours": 10.0}.get(name) if value is None else value
            self._ask(lambda study: edits.set_cost(study, name, default))

    def _on_currency(self) -> None:
        if self._study is not None and self.currency.text().strip() != self._study.costs.tariff.currency:
            text = self.currency.text()
            self._ask(lambda study: edits.set_currency(study, text))

    def _on_way(self) -> None:
        way: PricedBy = self.way.currentData()
        if self._study is None or way == self._study.costs.tariff.priced_by:
            return
        if way == "list" and not self._study.price_lists:
            self.way.fill([(tr(text), value) for text, value in _WAYS], self._study.costs.tariff.priced_by)
            self.file_wanted.emit()
            return
        self._ask(partial(_priced_by, way))
        self.left.emit()

    def _on_bands(self, bands: tuple[PriceBand, ...]) -> None:
        self._ask(lambda study: edits.set_bands(study, bands))
        self.left.emit()

    def _on_list(self) -> None:
        list_id = str(self.lists.currentData())
        self._ask(lambda study: edits.choose_price_list(study, list_id))
        self.left.emit()

    def _on_zone(self) -> None:
        text = self.zone.text().strip()
        if self._study is None or text == (self._study.costs.tariff.zone or ""):
            self._refuse("")
        elif text and text not in _zones():
            self._refuse(tr("There is no time zone “{text}”: write one such as Europe/Berlin.", text=text))
        else:
            self._refuse("")
            self._ask(lambda study: edits.set_price_zone(study, text or None))

    def _on_co2_source(self) -> None:
        text = self.co2_source.text()
        if self._study is not None and text.strip() != self._study.costs.co2_source:
            self._ask(lambda study: edits.set_co2_source(study, text))

    def _on_machine(self) -> None:
        if self._study is not None:
            self._show_machine(True)

    def _ask(self, maker: Maker) -> None:
        self.wanted.emit(maker)

    def _refuse(self, why_not: str) -> None:
        self.why_not.setText(why_not)
        self.why_not.setVisible(bool(why_not))

    # building

    def _lay_out(self) -> None:
        self._price = _form()
        self._price.addRow(tr("C&urrency"), self.currency)
        self._price.addRow(tr("Pri&ced"), self.way)
        self._add(
            self._price, "price_per_kwh", tr("&Price a kWh"), tr("Price of a kilowatt hour"), "", PRICES
        )
        self._price.addRow(self.bands)
        self._price.addRow(tr("List"), self.lists)
        self._price.addRow(self.read)
        self._price.addRow(tr("&Zone"), self.zone)
        standing = tr("Standing charge a day, kept apart")
        self._add(self._price, "standing_per_day", tr("Stan&ding, a day"), standing, "", (0.0, _MOST))
        off = _form()
        self._add(
            off,
            "off_after_min",
            tr("&Off after"),
            tr("Idle minutes before switching off"),
            "min",
            (0, 100_000),
        )
        print_form, machine = _form(), _form()
        for name, label, what, unit, limits in _PRINT:
            self._add(print_form, name, tr(label), tr(what), unit, limits)
        print_form.addRow(tr("CO₂ source"), self.co2_source)
        machine.addRow(tr("&Machine"), self.machine)
        for name, label, what, unit, limits in _MACHINE:
            self._add(machine, name, tr(label), tr(what), unit, limits)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S12, S12, S12, S12)
        layout.setSpacing(S8)
        layout.addWidget(self.why_not)
        for title, form in (
            (tr("Price of electricity"), self._price),
            (tr("Switching off"), off),
            (tr("The print"), print_form),
            (tr("Each machine"), machine),
        ):
            heading = QLabel(title)
            heading.setProperty("role", "heading")
            layout.addWidget(heading)
            layout.addLayout(form)
            layout.addSpacing(S4)
        layout.addStretch(1)

    def _add(
        self, form: QFormLayout, name: str, label: str, what: str, unit: str, limits: tuple[float, float]
    ) -> None:
        field = NumberField(name, f"{what} [{unit}]" if unit else what, limits)
        field.setToolTip(what)
        self._fields[name] = field
        form.addRow(f"{label} [{unit}]" if unit else label, field)


@cache
def _zones() -> tuple[str, ...]:
    """Names of all time zones; finding them takes a walk through many files."""
    return tuple(sorted(available_timezones()))


def _priced_by(way: PricedBy, study: Study) -> Edit:
    """Price in another way; the first time a price changes over the day, by the clock of this place."""
    edit = edits.set_priced_by(study, way)
    if way == "single" or study.costs.tariff.zone is not None:
        return edit
    here = bytes(QTimeZone.systemTimeZoneId().data()).decode()
    if here not in _zones():
        return edit
    return Edit(edits.set_price_zone(edit.study, here).study, edit.label)


def _form() -> QFormLayout:
    form = QFormLayout()
    form.setHorizontalSpacing(S8)
    form.setVerticalSpacing(S4)
    form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.ExpandingFieldsGrow)
    return form


def _plain(value: float, locale: NumberLocale) -> str:
    text = number(value, 6, locale)
    return text.rstrip("0").rstrip(locale.decimal) if locale.decimal in text else text
