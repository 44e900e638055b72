"""Everything can be reached: by keyboard, by a screen reader, at any text size the window offers."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QWidget

from gui.widgets.reading_panel import ReadingPanel
from tests.gui.driver import Driver, opened, write_log


@pytest.fixture
def user(qtbot, tmp_path: Path):
    with opened(qtbot, tmp_path) as driver:
        driver.drop(write_log(tmp_path / "alder.csv"), write_log(tmp_path / "birch.csv", seed=2))
        driver.window.activateWindow()
        yield driver


def shown(user: Driver, kind: type) -> list:
    return [w for w in user.window.findChildren(kind) if w.isVisible() and w.width() > 0]


def focusable(user: Driver) -> list[QWidget]:
    # The inner parts of a spin box or an editable list stand for their owner.
    return [
        w for w in shown(user, QWidget)
        if w.focusPolicy() & Qt.FocusPolicy.TabFocus and w.isEnabled() and w.focusProxy() is None
        and not w.objectName().startswith("qt_")
    ]  # fmt: skip


@pytest.mark.parametrize("page", ["Logs", "Compare"])
def test_every_control_has_a_name_for_a_screen_reader(user: Driver, page: str):
    user.window.show_page(page)
    user.session.select(user.run().id)
    user.settle()
    nameless = []
    for widget in focusable(user):
        interface = QAccessible.queryAccessibleInterface(widget)
        if interface is not None and not interface.text(QAccessible.Text.Name):
            nameless.append(f"{type(widget).__name__} {widget.objectName()}")
    assert nameless == []


@pytest.mark.parametrize("page", ["Logs", "Compare"])
def test_tab_goes_round_every_control(user: Driver, page: str):
    user.window.show_page(page)
    user.settle()
    wanted = {id(w): f"{type(w).__name__} {w.objectName()}" for w in focusable(user)}
    user.window.focusNextPrevChild(True)
    first, seen = QApplication.focusWidget(), set()
    for _ in range(3 * len(wanted)):
        focus = QApplication.focusWidget()
        assert focus is not None
        seen.add(id(focus))
        user.window.focusNextPrevChild(True)
        if QApplication.focusWidget() is first:
            break
    assert [name for key, name in wanted.items() if key not in seen] == []


def test_tab_goes_from_the_buttons_to_the_lanes_and_on(user: Driver):
    user.window.show_page("Logs")
    user.session.select(user.run().id)
    user.settle()
    names = []
    widget = user.window.nextInFocusChain()
    while widget is not user.window:
        names.append(widget.objectName())
        widget = widget.nextInFocusChain()
    order = [
        "pages",
        "button_leave_out",
        "button_panel",
        "lane_g1",
        "lane_g2",
        "stretch_name",
        "reading_machine",
        "column_0",
    ]
    places = [names.index(name) for name in order]
    assert places == sorted(places)


@pytest.mark.parametrize("zoom", [1.0, 1.5, 2.0])
@pytest.mark.parametrize("page", ["Logs", "Compare"])
def test_no_word_is_cut_off_at_any_text_size(user: Driver, page: str, zoom: float):
    user.appearance.set_zoom(zoom)
    user.window.show_page(page)
    user.session.select(user.run().id)
    user.settle()
    cut = [
        f"{type(w).__name__} {w.objectName()} {w.text()!r}: {w.width()} of {w.minimumSizeHint().width()} px"
        for w in shown(user, QAbstractButton) + [x for x in shown(user, QLabel) if not x.wordWrap()]
        if w.text() and w.width() < w.minimumSizeHint().width()
    ]
    panels = shown(user, ReadingPanel)
    cut += [
        f"reading panel: {panel.viewport().width()} of {panel.widget().minimumSizeHint().width()} px"
        for panel in panels
        if panel.viewport().width() < panel.widget().minimumSizeHint().width()
    ]
    user.appearance.set_zoom(1.0)
    assert cut == []
