"""The panel that says how a number was found: method, formula, source runs, and the budget as small bars."""

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetricsF, QKeyEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QPushButton, QSizePolicy, QWidget

from core.figures.found import BudgetBar, HowFound
from gui.charts.scene import font_of
from gui.look import S4, S8, S12, Size, current


class BudgetBars(QWidget):
    """An uncertainty budget: one bar a line, as long as its share of the variance."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("budget_bars")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._bars: tuple[BudgetBar, ...] = ()

    def show_bars(self, bars: tuple[BudgetBar, ...]) -> None:
        """Show another budget."""
        self._bars = bars
        told = "; ".join(f"{bar.name} {bar.text}" for bar in bars)
        self.setAccessibleName("Uncertainty budget" if bars else "No uncertainty budget")
        self.setAccessibleDescription(told)
        self.setVisible(bool(bars))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        line = QFontMetricsF(font_of(current(), Size.TEXT)).height() + S4
        return QSize(300, round(line * len(self._bars)))

    def minimumSizeHint(self) -> QSize:
        return QSize(220, self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        look = current()
        font = font_of(look, Size.TEXT)
        metrics = QFontMetricsF(font)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(font)
        line = metrics.height() + S4
        names = max((metrics.horizontalAdvance(bar.name) for bar in self._bars), default=0.0) + S12
        values = max((metrics.horizontalAdvance(bar.text) for bar in self._bars), default=0.0) + S8
        room = max(0.0, self.width() - names - values)
        for i, bar in enumerate(self._bars):
            baseline = i * line + metrics.ascent()
            painter.setPen(look.color("ink"))
            painter.drawText(0, round(baseline), bar.name)
            painter.setPen(look.color("muted"))
            painter.drawText(
                QRectF(self.width() - values, i * line, values, metrics.height()), _RIGHT, bar.text
            )
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(look.color("link", 0.75))
            painter.drawRect(
                QRectF(names, i * line + 0.25 * metrics.height(), room * bar.share, 0.5 * metrics.height())
            )


_RIGHT = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)


class FoundPanel(QFrame):
    """Shows a `HowFound`."""

    closed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self.title = QLabel()
        self.title.setProperty("role", "heading")
        self.title.setWordWrap(True)
        self.steps = QLabel()
        self.steps.setObjectName("found_steps")
        self.steps.setWordWrap(True)
        self.steps.setTextFormat(Qt.TextFormat.PlainText)
        self.steps.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.steps.setAccessibleName("How it was found")
        self.budget_title = QLabel("What makes it unsure (standard uncertainty, share of the variance)")
        self.budget_title.setProperty("role", "muted")
        self.budget_title.setWordWrap(True)
        self.bars = BudgetBars()
        self.close_button = QPushButton("Close")
        self.close_button.setObjectName("found_close")
        self.close_button.clicked.connect(self.close_panel)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        layout = QGridLayout(self)
        layout.setContentsMargins(S12, S8, S8, S12)
        layout.setHorizontalSpacing(S12 * 2)
        layout.setVerticalSpacing(S4)
        layout.addWidget(self.title, 0, 0, 1, 2)
        layout.addWidget(self.close_button, 0, 2)
        layout.addWidget(self.steps, 1, 0, 2, 1, Qt.AlignmentFlag.AlignTop)
        layout.addWidget(self.budget_title, 1, 1, 1, 2)
        layout.addWidget(self.bars, 2, 1, 1, 2, Qt.AlignmentFlag.AlignTop)
        layout.setColumnStretch(0, 1)
        layout.setColumnStretch(1, 1)
        layout.setRowStretch(2, 1)
        self.hide()

    def show_found(self, found: HowFound) -> None:
        """Open for a number, or for another one."""
        self.title.setText(f"{found.title}: {found.value}")
        self.steps.setText("\n".join(found.steps))
        self.bars.show_bars(found.budget)
        self.budget_title.setVisible(bool(found.budget))
        self.show()

    def close_panel(self) -> None:
        """Put the panel away."""
        if self.isVisible():
            self.hide()
            self.closed.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.close_panel()
        else:
            super().keyPressEvent(event)
