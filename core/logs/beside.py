"""Long work done in a thread while the caller's own thread reports progress.

Rules: sorting or summing a year of rows is one step that reports nothing; whoever waits must still see a sign
of life and be able to cancel. The progress callable is only ever called in the caller's thread.
"""

from collections.abc import Callable
from contextvars import copy_context
from threading import Event, Thread
from typing import TypeVar

from attrs import define, field

from core.progress import Cancelled, Progress

#: between two signs of life [s]
BEAT_S = 0.05

_Result = TypeVar("_Result")


@define
class _Told:
    """What the working thread has told: how far it is, and what went wrong."""

    fraction: float = 0.0
    text: str = ""
    is_cancelled: bool = False
    error: BaseException | None = None
    is_done: Event = field(factory=Event)

    def progress(self, fraction: float, text: str) -> None:
        """Progress as the working thread sees it."""
        if self.is_cancelled:
            raise Cancelled
        self.fraction, self.text = fraction, text


def reporting(work: Callable[[Progress], _Result], progress: Progress, text: str) -> _Result:
    """Do `work` in a thread and report at least ten times a second until it is done.

    When the progress callable raises, that is raised at once; the thread is not waited for, it ends by itself
    when `work` next reports.

    Parameters
    ----------
    work : callable
        Gets a progress callable of its own.
    progress : Progress
    text : str
        What is being done, until `work` says.

    Raises
    ------
    Exception
        Whatever `work` or `progress` raises.
    """
    told = _Told(text=text)
    results: list[_Result] = []

    def working() -> None:
        try:
            results.append(work(told.progress))
        except BaseException as error:  # noqa: BLE001  handed to the thread that waits
            told.error = error
        finally:
            told.is_done.set()

    context = copy_context()  # the floating-point error state belongs to it
    thread = Thread(target=context.run, args=(working,), name="reading")
    thread.start()
    try:
        while not told.is_done.wait(BEAT_S):
            progress(told.fraction, told.text)
        progress(told.fraction, told.text)
    except BaseException:
        told.is_cancelled = True
        raise
    thread.join()
    if told.error is not None:
        raise told.error
    return results[0]
