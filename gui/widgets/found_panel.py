"""The panel that says how a number was found, and leads on to the page about it."""

from html import escape

from PySide6.QtCore import QEvent, Qt, QUrl, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleAnnouncementEvent,
    QGuiApplication,
    QKeyEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QStackedWidget,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from core.formatting import POINT, NumberLocale
from core.found import Explanation, SourceLine, as_markdown
from core.found.topics import TOPICS, text_of
from core.language import mark, tr
from gui.look import S4, S8, S12, S16, S24, current
from gui.widgets.budget_chart import BudgetChart
from gui.widgets.long_text import show_markdown

_MORE, _LESS = mark("More about this"), mark("Back to the number")
_COPY, _COPIED = mark("Copy text"), mark("Copied")


class FoundPanel(QFrame):
    """Shows an explanation: in columns under the page, or in one column beside it."""

    closed = Signal()
    run_wanted = Signal(str)  # a run among the sources was pointed at

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("found_panel")
        self.setAccessibleName(tr("How this was found"))
        self._explanation: Explanation | None = None
        self._locale = POINT
        self._direction = QBoxLayout.Direction.LeftToRight
        self._columns: QBoxLayout | None = None
        self.title = QLabel()
        self.title.setObjectName("found_title")
        self.title.setTextFormat(Qt.TextFormat.PlainText)
        self.title.setWordWrap(True)
        self.value = QLabel()
        self.value.setObjectName("found_value")
        self.value.setProperty("role", "heading")
        self.value.setTextFormat(Qt.TextFormat.PlainText)
        self.value.setWordWrap(True)
        self.value.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.more = _button(
            "found_more", tr(_MORE), tr("The page about this number: what it means, how sure, cautions")
        )
        self.more.clicked.connect(self._turn)
        self.copy = _button(
            "found_copy", tr(_COPY), tr("Copy all of this as text, to be pasted into a report")
        )
        self.copy.clicked.connect(self._copy)
        self.close_button = _button("found_close", tr("Close"), tr("Put this away (Esc)"))
        self.close_button.clicked.connect(self.close_panel)
        self.body = QScrollArea()
        self.body.setObjectName("found_body")
        self.body.setWidgetResizable(True)
        self.body.setFrameShape(QFrame.Shape.NoFrame)
        self.body.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.page = QTextBrowser()
        self.page.setObjectName("found_page")
        self.page.setOpenLinks(False)
        self.page.setStyleSheet("QTextBrowser { border: none; background: transparent; }")
        self.page.anchorClicked.connect(self._follow)
        self._stack = QStackedWidget()
        self._stack.addWidget(self.body)
        self._stack.addWidget(self.page)
        self._lay_out()
        self.hide()

    @property
    def explanation(self) -> Explanation | None:
        """What is shown."""
        return self._explanation

    def show_explanation(self, explanation: Explanation, locale: NumberLocale = POINT) -> None:
        """Open for a number, or turn to another one; the same again changes nothing."""
        self.show()
        if explanation == self._explanation and locale == self._locale:
            return
        is_same_number = self._explanation is not None and self._explanation.title == explanation.title
        self._explanation, self._locale = explanation, locale
        self.title.setText(explanation.title)
        self.value.setText(explanation.value_text)
        self._is_of_number(True)
        self.copy.setText(tr(_COPY))
        self._announce()
        at = self.body.verticalScrollBar().value() if is_same_number else 0
        self._fill(explanation)
        self.body.verticalScrollBar().setValue(at)
        if not is_same_number:
            self._show_number()

    def show_topic(self, topic: str) -> None:
        """Open at a page that belongs to no number."""
        self._explanation = None
        self.title.setText(tr(TOPICS[topic].title))
        self._is_of_number(False)
        self._open(topic)
        self.show()

    def set_beside(self, beside: bool) -> None:
        """Stand beside the page, in one column, or under it, in three."""
        direction = QBoxLayout.Direction.TopToBottom if beside else QBoxLayout.Direction.LeftToRight
        self._head.setDirection(direction)
        if direction != self._direction:
            self._direction = direction
            self._share_room()

    def close_panel(self) -> None:
        """Put the panel away."""
        if not self.isHidden():
            self.hide()
            self._explanation = None
            self.closed.emit()

    def paintEvent(self, event: QPaintEvent) -> None:
        """One hairline parts it from the page."""
        painter = QPainter(self)
        painter.setPen(current().pen("rule", 0))
        if self._direction == QBoxLayout.Direction.LeftToRight:
            painter.drawLine(0, 0, self.width(), 0)
        else:
            painter.drawLine(0, 0, 0, self.height())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.close_panel()
        else:
            super().keyPressEvent(event)

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        # links in rich text keep the colour that they were made with; the labels stay, because Qt is walking
        # through them
        label = self.findChild(QLabel, "found_sources")
        if event.type() == QEvent.Type.PaletteChange and label is not None:
            text = label.text()
            label.clear()
            label.setText(text)

    # what the user does

    def _copy(self) -> None:
        if self._explanation is not None:
            QGuiApplication.clipboard().setText(as_markdown(self._explanation))
            self.copy.setText(tr(_COPIED))

    def _turn(self) -> None:
        if self._explanation is None or self._stack.currentWidget() is self.page:
            self._show_number()
        else:
            self._open(self._explanation.topic)

    def _follow(self, link: QUrl) -> None:
        if link.scheme() == "topic" and link.path() in TOPICS:
            self._open(link.path())

    def _open(self, topic: str) -> None:
        others = ", ".join(f"[{tr(TOPICS[name].title)}](topic:{name})" for name in TOPICS[topic].related)
        show_markdown(self.page, f"{text_of(topic)}\n\n{tr('More: {pages}', pages=others)}\n")
        self.page.setAccessibleName(tr(TOPICS[topic].title))
        self._stack.setCurrentWidget(self.page)
        self.more.setText(tr(_LESS))

    def _show_number(self) -> None:
        self._stack.setCurrentWidget(self.body)
        self.more.setText(tr(_MORE))

    def _announce(self) -> None:
        """Tell a screen reader, because the focus stays where it was."""
        said = f"{self.title.text()}: {self.value.text()}"
        QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self, said))

    def _is_of_number(self, is_so: bool) -> None:
        for widget in (self.title, self.value, self.more, self.copy):
            widget.setVisible(is_so)

    def _on_source(self, link: str) -> None:
        self.run_wanted.emit(link)

    # how it is built

    def _lay_out(self) -> None:
        said = QVBoxLayout()
        said.setSpacing(0)
        said.addWidget(self.title)
        said.addWidget(self.value)
        buttons = QHBoxLayout()
        buttons.setSpacing(S4)
        for button in (self.more, self.copy, self.close_button):
            buttons.addWidget(button, 0, Qt.AlignmentFlag.AlignTop)
        buttons.addStretch(1)
        self._head = QBoxLayout(QBoxLayout.Direction.LeftToRight)
        self._head.setSpacing(S4)
        self._head.addLayout(said, 1)
        self._head.addLayout(buttons)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(S16, S8, S8, S8)
        layout.setSpacing(S8)
        layout.addLayout(self._head)
        layout.addWidget(self._stack, 1)

    def _fill(self, explanation: Explanation) -> None:
        """Build the parts anew; the old ones go with their widget."""
        inner = QWidget()
        inner.setObjectName("found_inner")
        columns = self._columns = QBoxLayout(self._direction, inner)
        columns.setContentsMargins(0, 0, S8, 0)
        columns.setSpacing(S24)
        how = _column(columns)
        _section(how, mark("How it was found"), explanation.method)
        _section(how, mark("In numbers"), explanation.formula)
        unsure = _column(columns)
        if explanation.budget:
            unsure.addWidget(_heading(tr("What makes it unsure (standard uncertainty, share)")))
            unsure.addWidget(BudgetChart(explanation.budget, self._locale))
        elif explanation.without_budget:
            _section(unsure, mark("What makes it unsure"), (explanation.without_budget,))
        _section(unsure, mark("What would make it surer"), explanation.surer)
        rest = _column(columns)
        _section(rest, mark("Keep in mind"), explanation.cautions, role="caution")
        _section(rest, mark("If it had been otherwise"), explanation.sensitivity)
        self._add_sources(rest, explanation.sources)
        for column in (how, unsure, rest):
            column.addStretch(1)
        columns.addStretch(0)
        self._share_room()
        self.body.setWidget(inner)
        self.body.setAccessibleName(f"{explanation.title}: {explanation.value_text}")
        self.body.setAccessibleDescription(as_markdown(explanation))

    def _share_room(self) -> None:
        """Columns share the width evenly; one under the other, what is left of the height stays below."""
        if self._columns is None:
            return
        self._columns.setDirection(self._direction)
        is_row = self._direction == QBoxLayout.Direction.LeftToRight
        last = self._columns.count() - 1
        for index in range(last):
            self._columns.setStretch(index, int(is_row))
        self._columns.setStretch(last, int(not is_row))

    def _add_sources(self, column: QVBoxLayout, sources: tuple[SourceLine, ...]) -> None:
        if not sources:
            return
        column.addWidget(_heading(tr("Made of")))
        lines = "".join(_paragraph(_source(source)) for source in sources)
        label = _text(lines, "found_sources")
        label.setTextInteractionFlags(
            label.textInteractionFlags()
            | Qt.TextInteractionFlag.LinksAccessibleByMouse
            | Qt.TextInteractionFlag.LinksAccessibleByKeyboard
        )
        label.linkActivated.connect(self._on_source)
        column.addWidget(label)


def _button(name: str, text: str, tip: str) -> QPushButton:
    button = QPushButton(text)
    button.setObjectName(name)
    button.setProperty("role", "link")
    button.setToolTip(tip)
    button.setAccessibleDescription(tip)
    return button


def _column(columns: QBoxLayout) -> QVBoxLayout:
    column = QVBoxLayout()
    column.setSpacing(S4)
    columns.addLayout(column, 1)
    return column


def _section(column: QVBoxLayout, title: str, lines: tuple[str, ...], role: str = "") -> None:
    if not lines:
        return
    column.addWidget(_heading(tr(title)))
    name = "found_" + title.lower().replace(" ", "_")
    label = _text("".join(_paragraph(escape(line)) for line in lines), name)
    label.setProperty("role", role)
    label.setContentsMargins(0, 0, 0, S12)
    column.addWidget(label)


def _heading(text: str) -> QLabel:
    label = QLabel(f"<b>{escape(text)}</b>")
    label.setTextFormat(Qt.TextFormat.RichText)
    label.setWordWrap(True)
    return label


def _text(html: str, name: str) -> QLabel:
    label = QLabel(html)
    label.setObjectName(name)
    label.setTextFormat(Qt.TextFormat.RichText)
    label.setWordWrap(True)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label


def _paragraph(html: str) -> str:
    return f'<p style="margin: 0 0 {S4}px 0">{html}</p>'


def _source(source: SourceLine) -> str:
    """A run leads to itself by its name; what follows the name is text."""
    if not source.run_id:
        return escape(source.text)
    name, colon, rest = source.text.partition(":")
    return f'<a href="{escape(source.run_id)}">{escape(name)}</a>{escape(colon + rest)}'
