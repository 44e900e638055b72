"""A field for a number that may be unknown: the user's stands in it, the program's behind it."""

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from core.language import tr

_MINUS = "\u2212"
#: frame and padding, and the button that empties the field; a field grows by more where it may [letters]
_AROUND, _BUTTON, _MORE = 3, 2, 2


class NumberField(QLineEdit):
    """Takes a number with point or comma; emptied, it says that the user has none."""

    entered = Signal(object)  # float, or None where the field was emptied
    refused = Signal(str)  # what was written and cannot be used; empty once that is mended

    def __init__(
        self, name: str, accessible_name: str, limits: tuple[float, float], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setObjectName(name)
        self.setAccessibleName(accessible_name)
        self._limits = limits
        self._shown = ""
        self.editingFinished.connect(self._finish)

    @property
    def value(self) -> float | None:
        """The number in the field; None where there is none, or none that can be used."""
        found = number_in(self.text())
        return found if found is not None and self._limits[0] <= found <= self._limits[1] else None

    @property
    def step(self) -> float:
        """What the last written digit is worth, such as 0.01 for ``12.50``."""
        digits = self.text().strip().replace(",", ".").partition(".")[2]
        return 10.0 ** -len(digits)

    def show_text(self, text: str, behind: str, *, of_other: bool = False) -> None:
        """Show a number as text, and behind an empty field what counts without one.

        What somebody is typing stays, unless the number of something other is to be shown.
        """
        self.setPlaceholderText(behind)
        if of_other or text != self._shown or not self.isModified():
            self._shown = text
            if self.text() != text or self.isModified():
                self.setText(text)
            self._mark(is_wrong=False)
        self.updateGeometry()

    def sizeHint(self) -> QSize:
        """Room for what is written, for what stands behind it, and for more digits."""
        least = self.minimumSizeHint()
        return QSize(least.width() + _MORE * self.fontMetrics().averageCharWidth(), least.height())

    def minimumSizeHint(self) -> QSize:
        """Room for what is written and for what stands behind it."""
        metrics = self.fontMetrics()
        text_px = max(metrics.horizontalAdvance(text) for text in (self.text(), self.placeholderText()))
        letters = _AROUND + (_BUTTON if self.isClearButtonEnabled() else 0)
        return QSize(text_px + letters * metrics.averageCharWidth(), super().sizeHint().height())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.text() != self._shown:
            self.setText(self._shown)
            self._tell("")
            return
        super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason):
            self.selectAll()

    def _finish(self) -> None:
        if not self.isModified():
            return
        text = self.text().strip()
        if text and self.value is None:
            low, high = (f"{limit:g}".replace("-", _MINUS) for limit in self._limits)
            self._tell(
                tr(
                    "“{text}” cannot be used: write a number from {low} to {high}.",
                    text=text,
                    low=low,
                    high=high,
                )
            )
            return
        self.setModified(False)
        self._tell("")
        if text != self._shown:
            self._shown = text
            self.entered.emit(self.value)

    def _tell(self, why_not: str) -> None:
        self._mark(is_wrong=bool(why_not))
        self.setAccessibleDescription(why_not)
        self.refused.emit(why_not)

    def _mark(self, *, is_wrong: bool) -> None:
        if bool(self.property("wrong")) != is_wrong:
            self.setProperty("wrong", is_wrong)
            self.style().unpolish(self)
            self.style().polish(self)


def number_in(text: str) -> float | None:
    """The number that a person wrote, with point or comma; None of anything else."""
    plain = text.strip().replace(_MINUS, "-").replace(",", ".")
    try:
        found = float(plain)
    except ValueError:
        return None
    return found if plain.strip("+-").replace(".", "").isdecimal() else None
