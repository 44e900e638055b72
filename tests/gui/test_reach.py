"""Everything can be reached: by keyboard, by a screen reader, at any text size, written in either direction.

Every page that the window has is visited, so that a new page is held to the same without a word here.
"""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible, QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QDialog,
    QLabel,
    QTextBrowser,
    QWidget,
)

from gui.widgets.found_panel import FoundPanel
from gui.widgets.reading_panel import ReadingPanel
from tests.gui.driver import Driver, opened, write_log

#: roles that tell nothing of what can be done with a control: then a description has to
_TELLS_NOTHING = {QAccessible.Role.NoRole, QAccessible.Role.Client}
#: a widget's own wish may be rounded up where its layout has rounded down [px]
_ROUNDING_PX = 1


@pytest.fixture
def user(qtbot, tmp_path: Path) -> Iterator[Driver]:
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


def tab_stop(widget: QWidget) -> int:
    """What Tab comes to: buttons of which one is chosen are one stop, and the arrow keys go on from there."""
    group = widget.group() if isinstance(widget, QAbstractButton) else None
    return id(widget) if group is None or not group.exclusive() else id(group)


def visit(user: Driver) -> Iterator[str]:
    """Every page in turn, with a run selected."""
    assert len(user.titles) >= 6
    for title in user.titles:
        user.window.show_page(title)
        user.session.select(user.run().id)
        user.settle()
        user.wait_until(lambda: not user.window.is_busy)
        user.settle()
        yield title


def described(widget: QWidget) -> str:
    return f"{type(widget).__name__} {widget.objectName()}"


def test_every_control_has_a_name_and_a_role_for_a_screen_reader(user: Driver):
    nameless, roleless = [], []
    for page in visit(user):
        for widget in focusable(user):
            interface = QAccessible.queryAccessibleInterface(widget)
            assert interface is not None, described(widget)
            if not interface.text(QAccessible.Text.Name):
                nameless.append(f"{page}: {described(widget)}")
            if interface.role() in _TELLS_NOTHING and not widget.accessibleDescription():
                roleless.append(f"{page}: {described(widget)}")
    assert nameless == []
    assert roleless == []


def test_tab_goes_round_every_control(user: Driver):
    missed = []
    for page in visit(user):
        wanted = {tab_stop(w): described(w) for w in focusable(user)}
        user.window.focusNextPrevChild(True)
        first, seen = QApplication.focusWidget(), set()
        for _ in range(3 * len(wanted)):
            focus = QApplication.focusWidget()
            assert focus is not None
            seen.add(tab_stop(focus))
            user.window.focusNextPrevChild(True)
            if QApplication.focusWidget() is first:
                break
        missed += [f"{page}: {name}" for key, name in wanted.items() if key not in seen]
    assert missed == []


def test_the_control_that_has_the_keyboard_looks_different(user: Driver):
    """Its picture with the focus is not its picture without."""
    unchanged = []
    for page in visit(user):
        for widget in focusable(user):
            if not widget.visibleRegion().isEmpty() and not _shows_focus(widget):
                unchanged.append(f"{page}: {described(widget)}")
    assert unchanged == []


def _shows_focus(widget: QWidget) -> bool:
    """Whether a control is painted differently while it has the focus; a moving cursor is no difference."""
    reason = Qt.FocusReason.TabFocusReason
    widget.setFocus(reason)
    QApplication.processEvents()
    with_focus = widget.grab().toImage()
    widget.clearFocus()
    QApplication.processEvents()
    return widget.grab().toImage() != with_focus


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


def cut_off(user: Driver) -> list[str]:
    """Words that have less room than they need."""
    fields = shown(user, QAbstractButton) + [x for x in shown(user, QLabel) if not x.wordWrap()]
    cut = [
        f"{described(w)} {w.text()!r}: {w.width()} of {w.minimumSizeHint().width()} px"
        for w in fields
        if w.text() and w.width() < w.minimumSizeHint().width() - _ROUNDING_PX
    ]
    cut += [
        f"{described(w)} {w.text()!r}: {w.height()} of {w.heightForWidth(w.width())} px high"
        for w in shown(user, QLabel)
        if w.text() and w.wordWrap() and w.height() < w.heightForWidth(w.width()) - _ROUNDING_PX
    ]
    cut += [
        f"{described(w)}: {w.height()} of {w.fontMetrics().height()} px high"
        for w in shown(user, QComboBox)
        if w.height() < w.fontMetrics().height()
    ]
    cut += [
        f"reading panel: {panel.viewport().width()} of {panel.widget().minimumSizeHint().width()} px"
        for panel in shown(user, ReadingPanel)
        if panel.viewport().width() < panel.widget().minimumSizeHint().width()
    ]
    return cut


@pytest.mark.parametrize("zoom", [1.0, 1.25, 1.5, 1.75, 2.0])
def test_no_word_is_cut_off_at_any_text_size(user: Driver, zoom: float):
    user.appearance.set_zoom(zoom)
    cut = [f"{page}: {each}" for page in visit(user) for each in cut_off(user)]
    user.appearance.set_zoom(1.0)
    assert cut == []


def test_right_to_left_stands_the_window_on_its_head_and_breaks_nothing(user: Driver):
    """The list of pages goes to the right; names, tab order and words stay whole."""
    user.window.setLayoutDirection(Qt.LayoutDirection.RightToLeft)
    user.settle()
    pages = user.widget(QWidget, "pages")
    left_of_pages = pages.mapTo(user.window, pages.rect().topLeft()).x()
    assert left_of_pages > user.window.width() / 2
    cut = [f"{page}: {each}" for page in visit(user) for each in cut_off(user)]
    assert cut == []


def test_f1_opens_something_to_read_on_every_page(user: Driver):
    silent = []
    action = user.window.findChild(QAction, "action_explain")
    assert action is not None
    assert action.shortcut().toString() == "F1"
    for page in visit(user):
        action.trigger()
        user.settle()
        if not is_something_to_read(user):
            silent.append(page)
        close_dialogs(user)
    assert silent == []


def test_every_page_tells_what_it_is_for(user: Driver):
    told = set()
    for page in visit(user):
        user.do("action_page_help")
        (note,) = (d for d in shown(user, QDialog) if d.objectName() == "note_dialog")
        assert note.windowTitle() == page
        text = note.findChild(QTextBrowser, "note").toPlainText()
        assert "is missing" not in text
        told.add(text)
        close_dialogs(user)
    assert len(told) == len(user.titles)


def is_something_to_read(user: Driver) -> bool:
    return any(w.objectName() == "note_dialog" for w in shown(user, QDialog)) or bool(shown(user, FoundPanel))


def close_dialogs(user: Driver) -> None:
    for dialog in shown(user, QDialog):
        dialog.close()
    user.settle()
