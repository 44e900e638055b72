"""Cyclic garbage holding Qt objects must never be destroyed in a thread of the pool."""

import gc
import threading

from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from core.progress import Progress
from gui.garbage import Collector
from gui.jobs import Jobs


class _InACycle(QObject):
    def __init__(self, died_in: list[int]) -> None:
        super().__init__()
        self.me = self
        self.destroyed.connect(lambda: died_in.append(threading.get_ident()))


def _allocate(progress: Progress) -> int:
    kept = [[[]] for _ in range(200_000)]
    return len(kept)


def test_the_pool_destroys_no_qt_object(qtbot: QtBot) -> None:
    jobs, died_in, done = Jobs(), [], []
    try:
        for _ in range(50):
            _InACycle(died_in)
        jobs.start("allocate", _allocate, done.append)
        qtbot.waitUntil(lambda: bool(done))
        assert set(died_in) <= {threading.get_ident()}
        assert not gc.isenabled()
        gc.collect()
        assert len(died_in) == 50
        assert set(died_in) == {threading.get_ident()}
    finally:
        jobs.close()
    assert gc.isenabled()


def test_collecting_is_handed_back_once_the_last_pool_has_ended(qtbot: QtBot) -> None:
    first, second = Collector(), Collector()
    first.close()
    first.close()
    assert not gc.isenabled()
    second.close()
    assert gc.isenabled()
