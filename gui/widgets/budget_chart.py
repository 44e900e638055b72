"""An uncertainty budget as a small bar chart: name and size, a bar as long as its share, and what it is."""

from collections.abc import Sequence

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from core.formatting import NumberLocale, capitalised, listed, percent
from core.found import BudgetLine
from core.language import tr
from gui.look import S4, S8, current

#: lines smaller than this part of the variance are named only
LEAST_DRAWN = 0.005
_BAR_PX = 7


class Bar(QWidget):
    """One bar: solid for what is this number's alone, pale for what is shared."""

    def __init__(self, share: float, *, is_shared: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._share = share
        self._is_shared = is_shared
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        return QSize(120, _BAR_PX + 2)

    def minimumSizeHint(self) -> QSize:
        return QSize(40, _BAR_PX + 2)

    def paintEvent(self, event: QPaintEvent) -> None:
        look = current()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        room = self.width() - 1.0
        top = (self.height() - _BAR_PX) / 2
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(look.color("rule"))
        painter.drawRect(QRectF(0.5, top, room, _BAR_PX))
        painter.setPen(look.pen("link", 1.0))
        painter.setBrush(look.color("link", 0.3 if self._is_shared else 1.0))
        painter.drawRect(QRectF(0.5, top, max(room * self._share, 1.0), _BAR_PX))


class BudgetChart(QWidget):
    """The lines of one budget."""

    def __init__(
        self, budget: Sequence[BudgetLine], locale: NumberLocale, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setObjectName("budget")
        self.setAccessibleName(tr("Uncertainty budget"))
        said = [
            f"{line.title} {line.u_text}, {percent(line.share_of_variance, 0, locale)}" for line in budget
        ]
        self.setAccessibleDescription("; ".join(said))
        layout = QGridLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setHorizontalSpacing(S8)
        layout.setVerticalSpacing(0)
        layout.setColumnStretch(0, 1)
        drawn = [line for line in budget if line.share_of_variance >= LEAST_DRAWN]
        for row, line in enumerate(drawn):
            self._add(layout, 3 * row, line, locale)
        notes = []
        if any(line.shared_with for line in drawn):
            notes.append(tr("A pale bar is shared: more runs do not lessen it."))
        small = [line.title for line in budget if line.share_of_variance < LEAST_DRAWN]
        if small:
            notes.append(tr("Too small to draw: {causes}.", causes=listed(small)))
        if notes:
            layout.addWidget(_muted(" ".join(notes)), 3 * len(drawn), 0, 1, 2)

    def _add(self, layout: QGridLayout, row: int, line: BudgetLine, locale: NumberLocale) -> None:
        name = QLabel(capitalised(line.title))
        name.setTextFormat(Qt.TextFormat.PlainText)
        name.setWordWrap(True)
        size = QLabel(f"{line.u_text}, {percent(line.share_of_variance, 0, locale)}")
        size.setTextFormat(Qt.TextFormat.PlainText)
        size.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop)
        layout.addWidget(name, row, 0)
        layout.addWidget(size, row, 1)
        layout.addWidget(Bar(line.share_of_variance, is_shared=bool(line.shared_with)), row + 1, 0, 1, 2)
        shared = tr("The same for {others}.", others=line.shared_with) if line.shared_with else ""
        said = [words for words in (f"{capitalised(line.why)}." if line.why else "", shared) if words]
        why = _muted(" ".join(said))
        why.setContentsMargins(0, 0, 0, S8)
        layout.addWidget(why, row + 2, 0, 1, 2)
        layout.setRowMinimumHeight(row + 1, _BAR_PX + S4)


def _muted(text: str) -> QLabel:
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setProperty("role", "muted")
    label.setWordWrap(True)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label
