"""Letters that Alt calls, in every language: each once in a menu, and once in all that is seen of a page."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QAbstractButton, QGroupBox, QLabel, QMenu, QMenuBar, QTabBar, QWidget
from pytestqt.qtbot import QtBot

from core.language import speak
from gui.languages import install, languages
from gui.main_window import MainWindow
from tests.gui.driver import Driver, opened
from tests.screens.render import pages

_LETTER = re.compile(r"&(\w)")


@pytest.fixture(params=languages())
def window_in(request: pytest.FixtureRequest, qtbot: QtBot, tmp_path: Path) -> Iterator[Driver]:
    """A window in each language; the texts of the process are English again afterwards."""
    app = QCoreApplication.instance()
    assert app is not None
    before = set(app.findChildren(QTranslator))
    assert install(app, request.param) == request.param
    try:
        with opened(qtbot, tmp_path / "bench") as driver:
            yield driver
    finally:
        speak(None)
        for translator in set(app.findChildren(QTranslator)) - before:
            app.removeTranslator(translator)
            translator.deleteLater()


def test_no_letter_calls_two_entries_of_a_menu(window_in: Driver) -> None:
    bar = window_in.window.menuBar()
    twice = {}
    for title, actions in menus(bar):
        letters = [letter for action in actions if (letter := letter_of(action.text()))]
        assert letters or title, "the bar itself has letters"
        if several := [letter for letter, count in Counter(letters).items() if count > 1]:
            twice[title] = several
    assert twice == {}


def test_no_letter_calls_two_things_that_are_visible(window_in: Driver) -> None:
    window_in.window.open_demo()
    window_in.settle()
    twice = {}
    for page in pages(window_in.window):
        window_in.session.select(window_in.run().id)
        window_in.settle()
        called = defaultdict(list)
        for text in visible_texts(window_in.window):
            if letter := letter_of(text):
                called[letter].append(text)
        assert len(called) >= 5, f"{page}: the menus at least have letters"
        twice |= {f"{page}, {letter}": texts for letter, texts in called.items() if len(texts) > 1}
    assert twice == {}


def visible_texts(window: MainWindow) -> Iterator[str]:
    """Texts by whose letter something visible is reached: menus, buttons, and labels of fields."""
    yield from (action.text() for action in window.menuBar().actions() if action.isVisible())
    for widget in window.findChildren(QWidget):
        if not widget.isVisible():
            continue
        if isinstance(widget, QAbstractButton) or (isinstance(widget, QLabel) and widget.buddy()):
            yield widget.text()
        elif isinstance(widget, QGroupBox):
            yield widget.title()
        elif isinstance(widget, QTabBar):
            yield from (widget.tabText(place) for place in range(widget.count()))


def menus(menu: QMenuBar | QMenu, title: str = "") -> Iterator[tuple[str, list[QAction]]]:
    """A menu and all menus in it, with their entries."""
    yield title, menu.actions()
    for action in menu.actions():
        inner = action.menu()
        if isinstance(inner, QMenu):
            yield from menus(inner, f"{title}/{action.text()}")


def letter_of(text: str) -> str:
    """The letter that Alt calls, in lower case; empty where there is none."""
    found = _LETTER.search(text.replace("&&", ""))
    return found.group(1).casefold() if found else ""
