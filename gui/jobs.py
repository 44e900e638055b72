"""Work outside the GUI thread: one pool, one relay, newest wins, everything can be cancelled.

A job is started under a key. Its result comes back in the GUI thread through a queued signal of `Jobs`, which
lives as long as the application; a result whose ticket is no longer the newest of its key is dropped.
"""

import threading
import time
import traceback
from collections.abc import Callable
from concurrent.futures import Executor, Future, ThreadPoolExecutor
from typing import Any, Final, TypeVar

from attrs import define, field, frozen
from PySide6.QtCore import QObject, Qt, Signal

from core.progress import Cancelled, Progress
from gui.garbage import Collector

T = TypeVar("T")

#: no more than this many progress reports a second reach the window
REPORTS_PER_SECOND: Final = 20.0


@frozen
class Report:
    """How far a job is: `fraction` from 0 to 1, and what it is doing."""

    key: str
    fraction: float
    text: str


@frozen
class Failure:
    """An exception that escaped from a job: a fault of the program, never of the data."""

    key: str
    summary: str
    details: str


@define(eq=False)
class _Job:
    key: str
    ticket: int
    done: Callable[[Any], None]
    cancelled: Callable[[], None] | None
    stop: threading.Event = field(factory=threading.Event)
    last_report_s: float = 0.0


class Jobs(QObject):
    """Runs functions in a pool and brings their results back to the GUI thread."""

    started = Signal(str)
    progressed = Signal(object)  # Report
    ended = Signal(str)
    failed = Signal(object)  # Failure
    _reported = Signal(object, object)
    _returned = Signal(object, object)

    def __init__(self, executor: Executor | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._collector = Collector(self)
        self._executor = executor or ThreadPoolExecutor(max_workers=2, thread_name_prefix="samepart")
        self._tickets = 0
        self._running: dict[str, _Job] = {}
        self._closed = False
        queued = Qt.ConnectionType.QueuedConnection
        self._reported.connect(self._on_report, queued)
        self._returned.connect(self._on_return, queued)

    def start(
        self,
        key: str,
        work: Callable[[Progress], T],
        done: Callable[[T], None],
        cancelled: Callable[[], None] | None = None,
    ) -> None:
        """Run `work` in the pool and call `done` with its result in the GUI thread.

        An older job of the same key is cancelled, and neither of its callbacks is called.
        """
        if self._closed:
            return
        older = self._running.pop(key, None)
        if older is not None:
            older.stop.set()
        self._tickets += 1
        job = _Job(key, self._tickets, done, cancelled)
        self._running[key] = job
        self.started.emit(key)

        def progress(fraction: float, text: str) -> None:
            if job.stop.is_set():
                raise Cancelled
            now_s = time.monotonic()
            if now_s - job.last_report_s >= 1.0 / REPORTS_PER_SECOND:
                job.last_report_s = now_s
                self._reported.emit(job, Report(key, fraction, text))

        future = self._executor.submit(work, progress)
        future.add_done_callback(lambda finished: self._deliver(job, finished))

    def cancel(self, key: str) -> None:
        """Ask a job to stop; it does so at its next report of progress."""
        if key in self._running:
            self._running[key].stop.set()

    def cancel_all(self) -> None:
        """Ask every job to stop."""
        for job in self._running.values():
            job.stop.set()

    def is_running(self, key: str) -> bool:
        """Whether a result of this key is still awaited."""
        return key in self._running

    @property
    def running(self) -> tuple[str, ...]:
        """Keys whose results are still awaited, oldest first."""
        return tuple(self._running)

    def close(self) -> None:
        """Stop everything and wait for the pool; no callback is called after this."""
        self._closed = True
        self.cancel_all()
        self._executor.shutdown(wait=True, cancel_futures=True)
        self._collector.close()
        self._running.clear()

    def _deliver(self, job: _Job, future: "Future[Any]") -> None:
        # In the pool's thread (or in the caller's, if the work was over at once).
        if not self._closed:
            self._returned.emit(job, future)

    def _on_report(self, job: _Job, report: Report) -> None:
        if self._running.get(job.key) is job:
            self.progressed.emit(report)

    def _on_return(self, job: _Job, future: "Future[Any]") -> None:
        is_newest = self._running.get(job.key) is job
        if is_newest:
            del self._running[job.key]
            self.ended.emit(job.key)
        error = None if future.cancelled() else future.exception()
        if future.cancelled() or isinstance(error, Cancelled):
            if is_newest and job.cancelled is not None:
                job.cancelled()
        elif error is not None:
            # An exception is shown even when nobody waits for the result any more.
            self.failed.emit(
                Failure(
                    job.key, f"{type(error).__name__}: {error}", "".join(traceback.format_exception(error))
                )
            )
            if is_newest and job.cancelled is not None:
                job.cancelled()
        elif is_newest and not self._closed:
            job.done(future.result())
