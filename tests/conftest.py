"""Guards that are always on: no network, no settings of the developer, nothing left over from a test.

Qt is touched only for tests of the window, and only then; tests of the core must not pay for it.
"""

import gc
import os
import sys
import tempfile
import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

#: how long a thread may take to end after its test [s]
_PATIENCE_S = 3.0
_WINDOW_FOLDERS = ("gui", "screens")
_WINDOW_FIXTURES = {"qtbot", "qapp"}

# Before Qt is loaded, since it reads them once: no screen, and neither locale nor settings of the developer.
_home = tempfile.TemporaryDirectory(prefix="samepart-tests-")
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["LC_ALL"] = "C.UTF-8"
for _name in ("XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME"):
    os.environ[_name] = str(Path(_home.name) / _name.lower())

_reached: list[str] = []


class NetworkRefused(RuntimeError):
    """A test tried to reach the network."""


def _refuse_network(event: str, arguments: tuple[object, ...]) -> None:
    # Audit events see every use from Python, however the socket was made. Sockets within the computer have a
    # path (or nothing) for an address; those of the network a tuple.
    if event == "socket.getaddrinfo":
        target: object = arguments[0]
    elif event in ("socket.connect", "socket.bind", "socket.sendto") and isinstance(arguments[1], tuple):
        target = arguments[1]
    else:
        return
    _reached.append(f"{event} {target}")
    raise NetworkRefused(f"{event} {target}")


sys.addaudithook(_refuse_network)


def pytest_collection_finish() -> None:
    """Look no more through what the imports have made: hundreds of thousands of objects that stay."""
    gc.collect()
    gc.freeze()


@pytest.fixture(autouse=True)
def _no_network() -> Iterator[None]:
    """Fail a test that reached for the network, also if it caught the refusal."""
    _reached.clear()
    yield
    if _reached:
        pytest.fail(f"the network was used: {', '.join(_reached)}")


@pytest.fixture(autouse=True)
def _no_leftover_threads() -> Iterator[None]:
    """Fail a test whose threads outlive it."""
    before = set(threading.enumerate())
    yield
    until = time.monotonic() + _PATIENCE_S
    left = [thread for thread in threading.enumerate() if thread not in before]
    for thread in left:
        thread.join(max(0.0, until - time.monotonic()))
    names = [thread.name for thread in left if thread.is_alive()]
    if names:
        pytest.fail(f"threads outlive the test: {', '.join(names)}")


@pytest.fixture(autouse=True)
def _window_guards(request: pytest.FixtureRequest) -> Iterator[None]:
    """The guards of `tests.window_guards`, for tests of the window."""
    folder = request.node.path.relative_to(Path(__file__).parent).parts[0]
    if folder not in _WINDOW_FOLDERS and not _WINDOW_FIXTURES.intersection(request.fixturenames):
        yield
        return
    from tests.window_guards import guarded

    request.getfixturevalue("qapp")
    with guarded(request.getfixturevalue("tmp_path")):
        yield
