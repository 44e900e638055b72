"""Logs that grow: where their files are, and reading them on when they change or when the user asks.

Paths are private, so no study holds one: they are known as long as the program runs.
"""

from collections.abc import Iterable
from pathlib import Path

from PySide6.QtCore import QObject

from core.problems import Problem, Severity
from core.progress import Progress
from gui import growing
from gui.jobs import Jobs
from gui.open_study import OpenStudy
from gui.watching import LogWatch

READ_ON = "read on"
_PASSING = ("session.grown", "session.read_anew", "session.not_grown", "session.changed_otherwise")


class ReadingOn(QObject):
    """Follows the files of the open study."""

    def __init__(self, study: OpenStudy, jobs: Jobs) -> None:
        super().__init__(study)
        self._open, self._jobs = study, jobs
        self._paths: dict[str, Path] = {}
        self._watch = LogWatch(self)
        self._watch.settled.connect(self._on_settled)
        study.changed.connect(self._follow)
        study.opened.connect(self._follow)

    def remember(self, places: Iterable[tuple[str, Path]]) -> None:
        """Remember where the bytes of a digest came from."""
        self._paths |= {digest: path.absolute() for digest, path in places}

    def path_of(self, log_id: str) -> Path | None:
        """The file in which a log may have grown: its last one that is known; None if none is."""
        sources = self._open.study.log(log_id).sources
        return next((self._paths[s.digest] for s in reversed(sources) if s.digest in self._paths), None)

    def ask(self, log_id: str, path: Path | None = None) -> None:
        """Read a log's file on, or anew if it has changed otherwise; `path` where it is not known."""
        path = path or self.path_of(log_id)
        if path is None:
            return
        sources = self._open.study.log(log_id).sources
        by_path = [s.digest for s in sources if self._paths.get(s.digest) == path.absolute()]
        by_name = [s.digest for s in sources if s.file_name == path.name]
        self._start(path, (by_path or by_name or [sources[-1].digest])[0], is_asked=True)

    def take_in(self, path: Path, grown: growing.GrownFile, *, is_asked: bool = True) -> None:
        """Take a file as it is now into the study."""
        study = self._open.study
        self._open.untell(_PASSING, grown.name)
        if any(one.log not in study.logs for one in grown.logs):
            return  # edited meanwhile; the file's next change comes round to it
        before = self._open.read
        if grown.logs:
            self.remember([(grown.now, path), (grown.before, path)])
            edit = growing.growth_edit(study, grown, before)
            self._open.take_in(edit, ((one.sources, one.data) for one in grown.logs))
        elif not grown.problems:
            self.remember([(grown.before, path)])
            self._follow()
            if is_asked:
                self._open.tell(Problem("session.not_grown", Severity.NOTE, grown.name))
        self._open.tell(*growing.told(grown, before))

    def close(self) -> None:
        """Stop following."""
        self._watch.close()

    def _follow(self) -> None:
        digests = {s.digest for log in self._open.study.logs for s in log.sources}
        self._watch.watch({self._paths[d] for d in digests if d in self._paths})

    def _on_settled(self, path: Path) -> None:
        digests = [s.digest for log in self._open.study.logs for s in log.sources]
        mine = [d for d in digests if self._paths.get(d) == path]
        if mine and not self._open.is_read_only:
            self._start(path, mine[-1], is_asked=False)

    def _start(self, path: Path, digest: str, *, is_asked: bool) -> None:
        file = self._open.file
        if file is None or self._open.refuse_if_read_only():
            return
        study, before = self._open.study, self._open.read

        def work(progress: Progress) -> tuple[Path, growing.GrownFile, bool]:
            grown = growing.read_on(path, digest, study, file, progress, before, anew=is_asked)
            return path, grown, is_asked

        self._jobs.start(f"{READ_ON} {path}", work, self._on_read)

    def _on_read(self, found: tuple[Path, growing.GrownFile, bool]) -> None:
        path, grown, is_asked = found
        self.take_in(path, grown, is_asked=is_asked)
