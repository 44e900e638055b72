"""What an empty window says: what to drop, and where to look first."""

from PySide6.QtCore import QPoint, QRect, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from core.language import mark, tr
from gui import look
from gui.look import S8, S12, S16, S24, S32
from gui.widgets.flow import Flow

_STEPS = (
    mark("Make the same part on each machine, a few times, with a plug-in meter that saves a log."),
    mark("Drop the logs here: text tables, spreadsheets, packed files, whole folders."),
    mark("Read off what the part costs on each machine, and whether the difference is real."),
)


_INVITED = (
    mark("Drop meter logs here"),
    mark("What does the same part cost in energy on different machines?"),
)
_READING = (mark("Reading the logs…"), mark("The comparison opens as soon as it is known."))


class Welcome(QWidget):
    """A dashed frame with words and buttons, or, while the first logs are read, with words alone."""

    add_wanted = Signal()
    demo_wanted = Signal()
    typed_wanted = Signal()
    page_wanted = Signal(str, str)  # title of a page, and what to turn to on it

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("welcome")
        self._title = QLabel(tr(_INVITED[0]))
        self._title.setObjectName("welcome_title")
        self._title.setProperty("role", "title")
        self._lead = QLabel(tr(_INVITED[1]))
        self._lead.setWordWrap(True)
        add = self._button(tr("Choose logs…"), "welcome_add", "main", self.add_wanted)
        demo = self._button(tr("Open the demo"), "welcome_demo", "", self.demo_wanted)
        demo.setAccessibleDescription(tr("Five invented machines that make a hose clip"))
        typed = self._button(tr("Type readings…"), "welcome_typed", "", self.typed_wanted)
        typed.setAccessibleDescription(tr("Enter runs of which only the meter's display was read"))
        plan = QPushButton(tr("Plan a test…"))
        plan.setObjectName("welcome_plan")
        plan.setAccessibleDescription(
            tr("Order of the runs, a sheet to print, and how many repeats it takes")
        )
        plan.clicked.connect(self._on_plan)
        buttons = Flow(spacing=S12)
        for button in (add, demo, typed, plan):
            buttons.addWidget(button)
        foot = QLabel(
            tr("Nothing leaves this computer. The logs stay as they are; a copy is kept inside the study.")
        )
        foot.setProperty("role", "muted")
        foot.setWordWrap(True)
        column = QWidget()
        column.setMaximumWidth(64 * self.fontMetrics().averageCharWidth() + 2 * S32)
        words = QVBoxLayout(column)
        words.setSpacing(S8)
        words.addWidget(self._title)
        words.addWidget(self._lead)
        self._invitation = QWidget()
        invited = QVBoxLayout(self._invitation)
        invited.setContentsMargins(0, S16, 0, 0)
        invited.setSpacing(S8)
        for number, step in enumerate(_STEPS, start=1):
            invited.addLayout(_step(number, tr(step)))
        invited.addSpacing(S16)
        invited.addLayout(buttons)
        invited.addSpacing(S24)
        invited.addWidget(foot)
        words.addWidget(self._invitation)
        middle = QHBoxLayout()
        middle.addStretch(1)
        middle.addWidget(column, 100)
        middle.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S32 * 2, S32, S32 * 2, S32)
        layout.addStretch(2)
        layout.addLayout(middle)
        layout.addStretch(3)

    def _on_plan(self) -> None:
        self.page_wanted.emit("Fairness", "before")

    def set_reading(self, is_reading: bool) -> None:
        """Say that logs are being read, or what to drop."""
        for label, text in zip((self._title, self._lead), _READING if is_reading else _INVITED, strict=True):
            label.setText(tr(text))
        self._invitation.setVisible(not is_reading)

    def paintEvent(self, event: QPaintEvent) -> None:
        style = look.current()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(style.pen("muted", 1.5, (6.0, 5.0)))
        painter.setBrush(style.color("card"))
        painter.drawRoundedRect(self.rect().adjusted(S24, S24, -S24, -S24), S8, S8)
        painter.end()

    def _button(self, text: str, name: str, role: str, signal: object) -> QPushButton:
        button = QPushButton(text)
        button.setObjectName(name)
        button.setProperty("role", role)
        button.clicked.connect(signal)
        return button


class DropHint(QLabel):
    """Lies over the window while something that can be read is held over it."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(tr("Let go to read this"), parent)
        self.setObjectName("drop_hint")
        self.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.hide()

    def show_over(self, widget: QWidget) -> None:
        """Cover another widget of the window."""
        corner = self.window().mapFromGlobal(widget.mapToGlobal(QPoint(0, 0)))
        self.setGeometry(QRect(corner, widget.size()))
        self.raise_()
        self.show()


def _step(number: int, text: str) -> QHBoxLayout:
    row = QHBoxLayout()
    row.setSpacing(S12)
    figure = QLabel(str(number))
    figure.setProperty("role", "heading")
    figure.setAlignment(Qt.AlignmentFlag.AlignTop)
    figure.setFixedWidth(S16)
    words = QLabel(text)
    words.setWordWrap(True)
    row.addWidget(figure)
    row.addWidget(words, 1)
    return row
