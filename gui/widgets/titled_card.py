"""Cards with a heading: charts, and the words that belong to them."""

from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from gui.charts.view import ChartView
from gui.look import S4, S8, S12


def titled_card(title: str, *parts: QWidget | QHBoxLayout) -> QFrame:
    """A card with a heading and these parts one under another; charts take the height that is left."""
    card = QFrame()
    card.setObjectName("card")
    layout = QVBoxLayout(card)
    layout.setContentsMargins(S12, S8, S12, S8)
    layout.setSpacing(S4)
    heading = QLabel(title)
    heading.setProperty("role", "heading")
    layout.addWidget(heading)
    for part in parts:
        if isinstance(part, QHBoxLayout):
            layout.addLayout(part)
        else:
            layout.addWidget(part, 1 if isinstance(part, ChartView) else 0)
    return card


def plain_card(part: QWidget, margin: int = 1) -> QFrame:
    """A card around a single part, as high as the page makes it."""
    card = QFrame()
    card.setObjectName("card")
    layout = QVBoxLayout(card)
    layout.setContentsMargins(margin, margin, margin, margin)
    layout.addWidget(part)
    return card


def bare_card(view: QWidget) -> QFrame:
    """A card as high as its chart wishes to be."""
    card = plain_card(view)
    layout = card.layout()
    assert layout is not None
    layout.setSizeConstraint(QVBoxLayout.SizeConstraint.SetMinAndMaxSize)
    return card


def column_of(*cards: QWidget) -> QVBoxLayout:
    """Cards one under another."""
    column = QVBoxLayout()
    column.setSpacing(S12)
    for card in cards:
        column.addWidget(card)
    column.addStretch(1)
    return column


def muted_words() -> QLabel:
    """A label for a sentence that is not the page's first."""
    label = QLabel()
    label.setProperty("role", "muted")
    label.setWordWrap(True)
    return label


def tell(label: QLabel, text: str) -> None:
    """Put words in a label; with none it takes no room."""
    label.setText(text)
    label.setVisible(bool(text))
