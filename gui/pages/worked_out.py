"""What a page shows and takes long to compute: done in a job, shown only while it is of the open study."""

from collections.abc import Callable
from typing import Generic, TypeVar

from attrs import frozen

from core.progress import Progress
from core.results.values import Comparison
from core.study import Study
from gui.session import Session

T = TypeVar("T")


@frozen(eq=False)
class Source:
    """What a result is worked out from; studies and comparisons are told apart by identity: it is quick."""

    study: Study
    log_ids: frozenset[str]
    comparison: Comparison | None = None

    def is_same(self, other: "Source | None") -> bool:
        """Whether nothing has come or gone between the two."""
        return (
            other is not None
            and self.study is other.study
            and self.comparison is other.comparison
            and self.log_ids == other.log_ids
        )


@frozen(eq=False)
class Found(Generic[T]):
    """A result with what it is of."""

    source: Source
    value: T

    @property
    def study(self) -> Study:
        """The study it is of."""
        return self.source.study


class WorkedOut(Generic[T]):
    """Keeps a page's newest result, and has another computed outside the GUI thread once it is of the past.

    Until the next one is there the page goes on showing the last one, which is `found`.
    """

    def __init__(self, session: Session, key: str, doing: str, show: Callable[[], None]) -> None:
        """`key` is that of the job, `doing` what the progress strip says; `show` is called at a new value."""
        self._session, self._key, self._doing, self._show = session, key, doing, show
        self._asked: Source | None = None
        self.found: Found[T] | None = None

    def ask(self, source: Source, work: Callable[[], T]) -> bool:
        """Have `work` done unless it is done, which the answer says, or is under way."""
        if self.found is not None and source.is_same(self.found.source):
            return True
        jobs = self._session.jobs
        if source.is_same(self._asked) and jobs.is_running(self._key):
            return False
        self._asked = source

        def run(progress: Progress) -> Found[T]:
            progress(0.0, self._doing)
            return Found(source, work())

        jobs.start(self._key, run, self._on_done)
        return False

    def forget(self) -> None:
        """Let go of what was worked out, and of what is under way: another study was opened."""
        self._asked, self.found = None, None

    def _on_done(self, found: Found[T]) -> None:
        if found.source is self._asked and found.study is self._session.study:
            self.found = found
            self._show()
