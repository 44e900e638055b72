"""Every text of the window has passed the gate: in a language that signs each text, none is unsigned."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QLabel,
    QLineEdit,
    QListView,
    QMenu,
    QWidget,
)
from pytestqt.qtbot import QtBot

from core.language import speak
from core.results.compare import forget
from gui.charts.view import ChartView
from gui.languages import languages, own_name
from tests.gui.driver import Driver, opened

SIGN = "§"
#: what the demo's logs and study bring with them
_BROUGHT = "|".join(
    (
        r"Alder|Birch|Cedar|Hazel|Rowan|Meter [12]",
        r".*\.(csv|tsv|csv\.gz)",
        "time|device|power_W|energy_Wh|bed_C|room_C",
    )
)
#: units and numbers with them: the same in every language
_UNITS = r"[\d.,±−–\s]*(min|kWh|Wh|W/dm²|[\d.]+ (min|s|h|kWh|min \d+ s))"
_ROWS = 40


@pytest.fixture
def signed() -> Iterator[None]:
    forget()
    speak(lambda text: f"{SIGN}{text}" if text else text, "xx")
    yield
    speak(None)
    forget()


def test_no_text_of_the_window_is_fixed_in_english(qtbot: QtBot, tmp_path: Path, signed: None) -> None:
    own_names = "|".join(own_name(code) for code in languages())
    known = re.compile(rf"({_BROUGHT}|{_UNITS}|{own_names})")
    with opened(qtbot, tmp_path) as user:
        shown = {f"empty {where} {text}": text for where, text in texts(user)}
        user.window.open_demo()
        user.settle()
        for title in user.window.titles:
            user.window.show_page(title)
            user.settle()
            shown |= {f"{title} {where} {text}": text for where, text in texts(user)}
    assert len(shown) > 1000
    fixed = {
        where: text
        for where, text in shown.items()
        if SIGN not in text and re.search(r"[^\W\d_]{3}", text) and not known.fullmatch(text)
    }
    assert fixed == {}


def texts(user: Driver) -> Iterator[tuple[str, str]]:
    """Where and what: all that a user may see or hear of the window as it is."""
    for widget in user.window.findChildren(QWidget):
        where = f"{type(widget).__name__} {widget.objectName()}"
        yield f"{where} tip", widget.toolTip()
        yield f"{where} name", widget.accessibleName()
        yield f"{where} description", widget.accessibleDescription()
        if isinstance(widget, QLabel | QAbstractButton):
            yield where, widget.text()
        elif isinstance(widget, QLineEdit):
            yield where, widget.placeholderText()
        elif isinstance(widget, QComboBox):
            yield from ((where, widget.itemText(i)) for i in range(widget.count()))
        elif isinstance(widget, QMenu):
            yield where, widget.title()
            yield from ((where, text) for a in widget.actions() for text in (a.text(), a.toolTip()))
        elif isinstance(widget, QAbstractItemView) and widget.model() is not None:
            yield from ((where, text) for text in cells(widget))
        elif isinstance(widget, ChartView) and (scene := widget.scene()) is not None:
            yield from ((where, item.text) for item in scene.items if hasattr(item, "text"))


def cells(view: QAbstractItemView) -> Iterator[str]:
    """Texts and headings of a list or a table."""
    model = view.model()
    columns = 1 if isinstance(view, QListView) else model.columnCount()
    for column in range(columns):
        yield str(model.headerData(column, Qt.Orientation.Horizontal) or "")
        for row in range(min(model.rowCount(), _ROWS)):
            yield str(model.index(row, column).data() or "")
