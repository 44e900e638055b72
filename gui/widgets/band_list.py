"""Price bands, two lines each: name and price, times and days."""

from attrs import evolve
from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QGridLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from core.costs.rates import EVERY_DAY, MINUTES_PER_DAY, PriceBand
from core.formatting import NumberLocale, decimals_written, number
from core.language import mark, tr
from gui.charts.calendar import DAYS
from gui.look import S4, S8, S12
from gui.widgets.choice import Choice
from gui.widgets.number_field import NumberField

_DAYS: tuple[tuple[str, tuple[int, ...]], ...] = (
    (mark("every day"), EVERY_DAY),
    (mark("Mon to Fri"), (0, 1, 2, 3, 4)),
    (mark("Sat and Sun"), (5, 6)),
    *((name, (day,)) for day, name in enumerate(DAYS)),
)
_FIRST = PriceBand(mark("night"), 0.0, 22 * 60, 6 * 60)
#: prices that a field takes [currency/kWh]; they may be negative
PRICES = (-10_000.0, 10_000.0)
#: decimals with which a price is shown at the most
_MOST_DECIMALS = 6


class BandList(QWidget):
    """Shows bands to change, add and remove."""

    bands_set = Signal(object)  # tuple of PriceBand
    refused = Signal(str)

    def __init__(self, locale: NumberLocale, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._locale = locale
        self._bands: tuple[PriceBand, ...] = ()
        self._price: float | None = None
        self._rows: list[_BandRow] = []
        self._column = QVBoxLayout()
        self._column.setSpacing(S8)
        self._add = QPushButton(tr("&Add a band"))
        self._add.setObjectName("add_band")
        self._add.clicked.connect(self._on_add)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(S8)
        layout.addLayout(self._column)
        layout.addWidget(self._add)

    def show_bands(self, bands: tuple[PriceBand, ...], price: float | None) -> None:
        """Show these bands; a new one begins with `price`."""
        self._bands, self._price = bands, price
        while len(self._rows) > len(bands):
            row = self._rows.pop()
            row.hide()
            row.deleteLater()
        while len(self._rows) < len(bands):
            row = _BandRow(len(self._rows), self._locale)
            row.changed.connect(self._on_changed)
            row.removed.connect(self._on_removed)
            row.refused.connect(self.refused)
            self._rows.append(row)
            self._column.addWidget(row)
        for row, band in zip(self._rows, bands, strict=True):
            row.show_band(band)

    def _on_add(self) -> None:
        self.bands_set.emit(
            (*self._bands, evolve(_FIRST, name=tr(_FIRST.name), price_per_kwh=self._price or 0.0))
        )

    def _on_changed(self, place: int, band: PriceBand) -> None:
        if band.start_min == band.end_min % MINUTES_PER_DAY and band.end_min != MINUTES_PER_DAY:
            self.refused.emit(tr("A band that ends when it begins has no length."))
            self._rows[place].show_band(self._bands[place])
            return
        self.refused.emit("")
        self.bands_set.emit((*self._bands[:place], band, *self._bands[place + 1 :]))

    def _on_removed(self, place: int) -> None:
        self.bands_set.emit((*self._bands[:place], *self._bands[place + 1 :]))


class _BandRow(QWidget):
    """One band."""

    changed = Signal(int, object)  # place, PriceBand
    removed = Signal(int)
    refused = Signal(str)

    def __init__(self, place: int, locale: NumberLocale) -> None:
        super().__init__()
        self._place, self._locale = place, locale
        self._band = _FIRST
        self._name = QLineEdit()
        self._name.setObjectName(f"band_{place}_name")
        self._name.setAccessibleName(tr("Name of band {place}", place=place + 1))
        self._price = NumberField(
            f"band_{place}_price", tr("Price of band {place} a kWh", place=place + 1), PRICES
        )
        self._start, self._end = (
            self._time("start", tr("When band {place} begins, hours and minutes", place=place + 1)),
            self._time("end", tr("When band {place} ends, hours and minutes", place=place + 1)),
        )
        self._days = Choice(f"band_{place}_days", tr("Days of band {place}", place=place + 1))
        self._remove = QToolButton()
        self._remove.setText("×")
        self._remove.setObjectName(f"band_{place}_remove")
        self._remove.setAccessibleName(tr("Remove band {place}", place=place + 1))
        self._remove.setToolTip(tr("Remove this band"))
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(S4)
        grid.setVerticalSpacing(S4)
        grid.addWidget(self._name, 0, 0, 1, 3)
        grid.addWidget(self._price, 0, 3)
        grid.addWidget(self._remove, 0, 4)
        grid.addWidget(self._start, 1, 0)
        grid.addWidget(QLabel("–"), 1, 1)
        grid.addWidget(self._end, 1, 2)
        grid.addWidget(self._days, 1, 3, 1, 2)
        grid.setColumnStretch(3, 1)
        self._name.editingFinished.connect(self._on_name)
        self._price.entered.connect(self._on_price)
        self._price.refused.connect(self.refused)
        self._start.editingFinished.connect(self._on_times)
        self._end.editingFinished.connect(self._on_times)
        self._days.activated.connect(self._on_days)
        self._remove.clicked.connect(self._on_remove)

    def show_band(self, band: PriceBand) -> None:
        """Show a band."""
        self._band = band
        if self._name.text() != band.name and not self._name.hasFocus():
            self._name.setText(band.name)
        self._price.show_text(price_text(band.price_per_kwh, self._locale), tr("price"))
        for field, minutes in ((self._start, band.start_min), (self._end, band.end_min)):
            if minutes_in(field.text()) != minutes:
                field.setText(f"{minutes // 60:02}:{minutes % 60:02}")
        days = [(tr(name), weekdays) for name, weekdays in _DAYS]
        if all(band.weekdays != known for _, known in _DAYS):
            days.append((", ".join(tr(DAYS[d])[:3] for d in band.weekdays), band.weekdays))
        self._days.fill(days, band.weekdays)

    def _time(self, name: str, accessible_name: str) -> QLineEdit:
        field = QLineEdit()
        field.setObjectName(f"band_{self._place}_{name}")
        field.setAccessibleName(accessible_name)
        field.setMaximumWidth(field.fontMetrics().horizontalAdvance("00:00") + 2 * S12)
        return field

    def _tell(self, band: PriceBand) -> None:
        if band != self._band:
            self.changed.emit(self._place, band)

    def _on_name(self) -> None:
        if self._name.text().strip():
            self._tell(evolve(self._band, name=" ".join(self._name.text().split())))
        else:
            self._name.setText(self._band.name)

    def _on_price(self, price: float | None) -> None:
        if price is not None:
            self._tell(evolve(self._band, price_per_kwh=price))

    def _on_times(self) -> None:
        texts = [field.text() for field in (self._start, self._end)]
        start, end = (minutes_in(text) for text in texts)
        if start is None or end is None:
            wrong = texts[0] if start is None else texts[1]
            self.refused.emit(tr("“{wrong}” is no time of day: write it as 22:00.", wrong=wrong))
        else:
            self._tell(evolve(self._band, start_min=start % MINUTES_PER_DAY, end_min=end))

    def _on_days(self) -> None:
        self._tell(evolve(self._band, weekdays=tuple(self._days.currentData())))

    def _on_remove(self) -> None:
        self.removed.emit(self._place)


def minutes_in(text: str) -> int | None:
    """Minutes after midnight of a time that a person wrote; None of anything else.

    Examples
    --------
    >>> minutes_in("22:30"), minutes_in("7"), minutes_in("24.00"), minutes_in("25:00")
    (1350, 420, 1440, None)
    """
    hours, _, minutes = text.strip().replace(".", ":").partition(":")
    if not hours.isdecimal() or not (minutes or "0").isdecimal():
        return None
    found = int(hours) * 60 + int(minutes or "0")
    return found if found <= MINUTES_PER_DAY and int(minutes or "0") < 60 else None


def price_text(price: float, locale: NumberLocale) -> str:
    """A price with two decimals at least and no more zeros than that."""
    written = decimals_written(price, _MOST_DECIMALS)
    return number(price, _MOST_DECIMALS if written is None else max(2, written), locale)
