"""The guards of the suite fire: a guard that cannot fail would guard nothing."""

import os
import re
import socket
import subprocess
import sys
import textwrap
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QObject, QSettings, QThread, QTimer
from PySide6.QtWidgets import QDialog, QFileDialog, QMessageBox, QWidget

from tests.window_guards import guarded

ROOT = Path(__file__).parents[2]


@pytest.mark.parametrize(
    "wait",
    [
        lambda: QDialog().exec(),
        lambda: QMessageBox().exec(),
        lambda: QFileDialog().exec(),
        lambda: QMessageBox.question(None, "a", "b"),
        lambda: QFileDialog.getOpenFileName(),
    ],
)
def test_a_dialog_that_would_wait_fails_at_once(wait: Callable[[], object]):
    with pytest.raises(RuntimeError, match="waits for a person"):
        wait()


def test_the_window_has_one_event_loop_and_that_of_a_drag():
    calls = {
        path.relative_to(ROOT).as_posix(): len(re.findall(r"\.exec_?\(", path.read_text(encoding="utf-8")))
        for path in (ROOT / "gui").rglob("*.py")
    }
    waiting = {name: count for name, count in calls.items() if count}
    assert set(waiting) <= {"gui/app.py", "gui/picture_drag.py"}
    assert max(waiting.values()) <= 1


def test_settings_are_in_the_folder_of_the_test(tmp_path: Path):
    stored = QSettings(QSettings.Format.IniFormat, QSettings.Scope.UserScope, "Samepart", "samepart")
    assert stored.fileName().startswith(str(tmp_path))


def _widget() -> QWidget:
    widget = QWidget()
    widget.setObjectName("forgotten widget")
    return widget


def _timer() -> QTimer:
    timer = QTimer()
    timer.setObjectName("forgotten timer")
    timer.start(60_000)
    return timer


class _Waiting(QThread):
    def run(self) -> None:
        self.exec()


def _thread() -> QThread:
    thread = _Waiting()
    thread.setObjectName("forgotten thread")
    thread.start()
    return thread


@pytest.mark.parametrize("make", [_widget, _timer, _thread])
def test_what_a_test_leaves_over_is_named(make: Callable[[], QObject], tmp_path: Path):
    kept: list[QObject] = []
    with pytest.raises(pytest.fail.Exception, match="forgotten"), guarded(tmp_path):
        kept.append(make())
    (thing,) = kept
    if isinstance(thing, QThread):
        thing.quit()
        assert thing.wait(5000)
    elif isinstance(thing, QTimer):
        thing.stop()
    else:
        thing.deleteLater()


def test_what_is_put_away_is_not_left_over(tmp_path: Path):
    with guarded(tmp_path):
        _widget().deleteLater()
        timer = _timer()
        timer.stop()


def test_a_thread_that_outlives_its_test_fails_it(tmp_path: Path):
    result = _run_test(
        tmp_path,
        """
        import threading, time
        def test_it():
            threading.Thread(target=time.sleep, args=(8,), name="forgotten", daemon=True).start()
        """,
    )
    assert "threads outlive the test: forgotten" in result


def test_the_network_is_refused_also_when_the_refusal_is_caught(tmp_path: Path):
    result = _run_test(
        tmp_path,
        """
        import contextlib, socket
        import pytest
        here = ("127.0.0.1", 9)
        ways = [
            lambda: socket.create_connection(here),
            lambda: socket.getaddrinfo("a.invalid", 80),
            lambda: socket.socket().bind(here),
            lambda: socket.socket(type=socket.SOCK_DGRAM).sendto(b"", here),
        ]
        @pytest.mark.parametrize("use", ways)
        def test_it(use):
            with contextlib.suppress(Exception):
                use()
        """,
    )
    assert "4 passed, 4 errors" in result
    assert "the network was used: socket.sendto" in result


def test_sockets_within_the_computer_are_let_be():
    one, other = socket.socketpair()
    with one, other:
        one.sendall(b"x")
        assert other.recv(1) == b"x"


@pytest.mark.skipif(sys.version_info >= (3, 12), reason="None is not counted there")
def test_qt_calls_do_not_lose_references():
    # A binding that does ends the program with "deallocating None" after some ten thousand calls.
    thing = QObject()
    before = sys.getrefcount(None)
    for _ in range(1000):
        thing.setObjectName("x")
    assert abs(sys.getrefcount(None) - before) < 100


def _run_test(folder: Path, text: str) -> str:
    """What pytest says of a test file under the guards of this suite, run in another process."""
    (folder / "conftest.py").write_text(
        "from tests.conftest import _no_leftover_threads, _no_network\n", encoding="utf-8"
    )
    (folder / "test_it.py").write_text(textwrap.dedent(text), encoding="utf-8")
    command = [sys.executable, "-m", "pytest", "-q", "-W", "ignore", "-p", "no:cacheprovider", "test_it.py"]
    done = subprocess.run(
        command,
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert done.returncode == 1, done.stdout + done.stderr
    return done.stdout
