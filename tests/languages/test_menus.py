"""Menus of every language: a letter that Alt calls is underlined in one entry of a menu only."""

import re
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QMenuBar
from pytestqt.qtbot import QtBot

from core.language import speak
from gui.languages import install, languages
from tests.gui.driver import Driver, opened

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
