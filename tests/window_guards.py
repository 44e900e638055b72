"""Guards for tests of the window: no dialog that waits, fresh settings, nothing left over that Qt made."""

import gc
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from typing import Any

import pytest
import shiboken6
from PySide6.QtCore import QCoreApplication, QEvent, QObject, QSettings, QThread, QTimer
from PySide6.QtWidgets import (
    QApplication,
    QColorDialog,
    QDialog,
    QFileDialog,
    QFontDialog,
    QInputDialog,
    QMessageBox,
    QWidget,
)

#: calls that would wait for a person. A menu's exec cannot be replaced from Python: `tests.gui.test_guards`
#: looks for it in the source instead.
_WAITING: dict[type[QWidget], tuple[str, ...]] = {
    QDialog: ("exec",),
    QMessageBox: ("about", "critical", "information", "question", "warning"),
    QFileDialog: ("getExistingDirectory", "getOpenFileName", "getOpenFileNames", "getSaveFileName"),
    QInputDialog: ("getDouble", "getInt", "getItem", "getMultiLineText", "getText"),
    QColorDialog: ("getColor",),
    QFontDialog: ("getFont",),
}
#: the tool tip is one widget for the whole program, kept by Qt
_KEPT_BY_QT = ("QTipLabel",)


class WaitsForAPerson(RuntimeError):
    """A test came to a dialog that would wait for ever; use ``open()`` and ``finished``."""


@contextmanager
def guarded(folder: Path) -> Iterator[None]:
    """Run a test of the window under all guards, with its settings in `folder`."""
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(folder / "settings"))
    before = _addresses(QApplication.topLevelWidgets())
    running_before = _addresses(_running())
    with pytest.MonkeyPatch.context() as patch:
        for owner, names in _WAITING.items():
            for name in names:
                patch.setattr(owner, name, _refusing(f"{owner.__name__}.{name}"))
        yield
    left = _left(before, running_before)
    if left:
        # What only reference cycles keep alive is no leak of ours, but costs a collection to tell.
        gc.collect()
        left = _left(before, running_before)
    if left:
        pytest.fail("left over: " + ", ".join(_described(thing) for thing in left))


def _refusing(name: str) -> Callable[..., Any]:
    def refuse(*arguments: object, **named: object) -> None:
        raise WaitsForAPerson(f"{name} waits for a person")

    return refuse


def _left(widgets_before: set[int], running_before: set[int]) -> list[QObject]:
    QCoreApplication.processEvents()
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    widgets: list[QObject] = [
        widget
        for widget in QApplication.topLevelWidgets()
        if _address(widget) not in widgets_before
        and type(widget).__name__ not in _KEPT_BY_QT
        and widget.metaObject().className() not in _KEPT_BY_QT
    ]
    return widgets + [thing for thing in _running() if _address(thing) not in running_before]


def _running() -> list[QObject]:
    """Timers and threads of ours that are going."""
    found: list[QObject] = []
    for thing in gc.get_objects():
        # The type is asked, not the object: some objects answer for others, or do work when they are asked.
        is_running = _is_running(type(thing))
        if is_running is not None and shiboken6.isValid(thing) and is_running(thing):
            found.append(thing)
    return found


@cache  # Qt's types take long to answer, and there are hundreds of thousands of objects
def _is_running(kind: type) -> Callable[[Any], bool] | None:
    """How to ask a timer or a thread whether it is going; None for objects of another kind."""
    if issubclass(kind, QTimer):
        return QTimer.isActive
    return QThread.isRunning if issubclass(kind, QThread) else None


def _addresses(things: list[Any]) -> set[int]:
    return {_address(thing) for thing in things}


def _address(thing: QObject) -> int:
    return int(shiboken6.getCppPointer(thing)[0])


def _described(thing: QObject) -> str:
    name = thing.objectName()
    return f"{type(thing).__name__}{f' {name!r}' if name else ''}"
