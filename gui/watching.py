"""Watching the files that logs came from, so that one that grows can be read on."""

import time
from collections.abc import Collection
from pathlib import Path
from typing import Final

from PySide6.QtCore import QFileSystemWatcher, QObject, QTimer, Signal

#: a program that writes a row writes more at once [s]
_SETTLE_S: Final = 0.5
#: a log that grows all the time is not read more often than this [s]
_REST_S: Final = 10.0


class LogWatch(QObject):
    """Says which files have changed, after they have come to rest and not too often."""

    settled = Signal(object)  # Path

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._watcher = QFileSystemWatcher(self)
        self._watcher.fileChanged.connect(self._on_changed)
        self._due: dict[str, float] = {}
        self._told: dict[str, float] = {}
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._tell)

    def watch(self, paths: Collection[Path]) -> None:
        """Watch these files and no others; one that is not there is passed over."""
        wanted, watched = {str(path.absolute()) for path in paths}, set(self._watcher.files())
        if watched - wanted:
            self._watcher.removePaths(sorted(watched - wanted))
        fresh = [path for path in sorted(wanted - watched) if Path(path).is_file()]
        if fresh:
            self._watcher.addPaths(fresh)

    def close(self) -> None:
        """Stop watching."""
        self._timer.stop()
        self._due.clear()
        self.watch(())

    def _on_changed(self, path: str) -> None:
        now = time.monotonic()
        rested = self._told.get(path, now - _REST_S) + _REST_S
        self._due.setdefault(path, max(now + _SETTLE_S, rested))
        self._wait()

    def _wait(self) -> None:
        if self._due:
            self._timer.start(max(0, round(1000 * (min(self._due.values()) - time.monotonic()))))

    def _tell(self) -> None:
        now = time.monotonic()
        for path in [p for p, due in self._due.items() if due <= now + 0.01]:
            del self._due[path]
            self._told[path] = now
            if Path(path).is_file():
                if path not in self._watcher.files():  # replaced by another file under its name
                    self._watcher.addPath(path)
                self.settled.emit(Path(path))
        self._wait()
