"""The left edge of the window keeps its parts apart, however large the text and low the window."""

import pytest
from PySide6.QtWidgets import QLabel, QLineEdit, QListWidget
from pytestqt.qtbot import QtBot

from gui.widgets.number_field import NumberField
from gui.widgets.side import Side

PAGES = ["Logs", "Line-up", "Compare", "Bed", "Loads", "Standby and cost", "Fairness", "Publish"]


@pytest.mark.parametrize(("size_pt", "height_px"), [(10, 670), (20, 670), (10, 900), (20, 600)])
def test_pages_and_fields_lie_apart(qtbot: QtBot, size_pt: int, height_px: int) -> None:
    side = Side(PAGES)
    qtbot.addWidget(side)
    font = side.font()
    font.setPointSize(size_pt)
    side.setFont(font)
    side.resize(side.width(), height_px)
    with qtbot.waitExposed(side):
        side.show()
    pages = side.findChild(QListWidget, "pages")
    part = side.findChild(QLineEdit, "part_name")
    assert pages.geometry().bottom() < part.geometry().top()
    assert pages.viewport().height() >= 3 * pages.visualItemRect(pages.item(0)).height()


def test_all_pages_are_seen_where_there_is_room(qtbot: QtBot) -> None:
    side = Side(PAGES)
    qtbot.addWidget(side)
    side.resize(side.width(), 800)
    with qtbot.waitExposed(side):
        side.show()
    pages = side.findChild(QListWidget, "pages")
    assert pages.visualItemRect(pages.item(len(PAGES) - 1)).bottom() <= pages.viewport().height()


def test_longer_words_of_another_language_are_not_cut(qtbot: QtBot) -> None:
    title = "A page with a title much longer than usual"
    side = Side([*PAGES, title])
    qtbot.addWidget(side)
    side.resize(side.width(), 800)
    field = side.findChild(NumberField, "bed_c")
    field.show_text("", "not told so far")
    with qtbot.waitExposed(side):
        side.show()
    pages = side.findChild(QListWidget, "pages")
    assert pages.viewport().width() > pages.fontMetrics().horizontalAdvance(title)
    label = next(each for each in side.findChildren(QLabel) if each.text() == "Bed °C")
    assert label.width() >= label.sizeHint().width()
    assert field.width() >= field.minimumSizeHint().width()
