"""Pages are made when they are first turned to, and nobody can tell."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from pytestqt.qtbot import QtBot

from gui.pages.logs import LogsPage
from gui.pages.page import Page
from gui.pages.publish import PublishPage
from tests.gui.driver import Driver, opened, write_log


@pytest.fixture
def user(qtbot: QtBot, tmp_path: Path) -> Iterator[Driver]:
    with opened(qtbot, tmp_path) as driver:
        yield driver


def made(user: Driver) -> list[str]:
    return sorted(page.title for page in user.window.findChildren(Page))


def test_no_page_is_made_before_there_is_something_to_show(user: Driver, tmp_path: Path) -> None:
    assert made(user) == []
    user.drop(write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", seed=2))
    assert made(user) == ["Compare"]


def test_a_page_is_made_once_and_bears_the_title_it_is_listed_by(user: Driver, tmp_path: Path) -> None:
    user.drop(write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", seed=2))
    pages = []
    for title in user.titles:
        user.window.show_page(title)
        user.settle()
        assert user.window.page is not None
        assert user.window.page.title == title
        pages.append(user.window.page)
    for title, page in zip(user.titles, pages, strict=True):
        user.window.show_page(title)
        user.settle()
        assert user.window.page is page
    assert made(user) == sorted(user.titles)


def test_the_menu_of_a_page_is_seen_with_its_page_only(user: Driver, tmp_path: Path) -> None:
    user.drop(write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", seed=2))
    for title in (*user.titles, *user.titles):
        user.window.show_page(title)
        user.settle()
        page = user.window.page
        assert page is not None
        for each in user.window.findChildren(Page):
            menu = each.menu()
            if menu is not None:
                assert menu.menuAction().isVisible() == (each is page)
                assert menu.menuAction() in user.window.menuBar().actions()


def test_a_run_selected_elsewhere_is_there_when_the_logs_are_first_seen(user: Driver, tmp_path: Path) -> None:
    user.drop(write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", seed=2))
    log = user.study.logs[1]
    user.session.select(user.study.runs_of(log.id)[0].id)
    user.window.show_page("Logs")
    user.settle()
    assert isinstance(user.window.page, LogsPage)
    assert user.window.page._log == log


def test_a_chart_added_before_the_publish_page_was_seen_is_the_one_it_opens_with(
    user: Driver, tmp_path: Path
) -> None:
    user.drop(write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", seed=2))
    for title in ("Compare", "Line-up"):
        user.window.show_page(title)
        user.settle()
        assert user.window.page is not None
        menu = user.window.page.menu()
        assert menu is not None
        next(a for a in menu.findChildren(QAction) if a.objectName().startswith("add_")).trigger()
        user.settle()
    picks = user.study.publishing.keys
    assert len(picks) == 2
    user.window.show_page("Publish")
    user.settle()
    assert isinstance(user.window.page, PublishPage)
    assert user.window.page._key == picks[-1]


def test_all_pages_are_made_ahead_while_nothing_goes_on(user: Driver) -> None:
    user.window.make_pages_ahead()
    user.wait_until(lambda: not user.window.is_making_pages)
    assert made(user) == sorted(user.titles)
    assert user.window.page is None
    bar = user.window.menuBar()
    assert [a.text() for a in bar.actions() if a.isVisible()] == ["&File", "&Edit", "&View", "&Help"]


def test_nothing_is_made_ahead_once_the_window_is_hidden(user: Driver) -> None:
    user.window.make_pages_ahead()
    user.window.hide()
    user.wait_until(lambda: not user.window.is_making_pages)
    assert made(user) == []


@pytest.mark.parametrize(("key", "title"), [(Qt.Key.Key_1, "Logs"), (Qt.Key.Key_4, "Bed")])
def test_a_number_turns_to_its_page_from_anywhere(
    user: Driver, tmp_path: Path, key: Qt.Key, title: str
) -> None:
    user.drop(write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", seed=2))
    user.press(key, modifier=Qt.KeyboardModifier.ControlModifier)
    assert user.window.page is not None
    assert user.window.page.title == title
