"""One writer for a study file: a lock that the operating system drops when the process ends, however it ends.

The lock is on a small file beside the study, not on the study: locks of POSIX belong to the process and the
file, so one of ours on the study would fall when SQLite closes it. A lock file that a killed process left
behind is harmless.
"""

import os
import sys
from pathlib import Path

from core.problems import Problem, Severity


def lock_path(path: Path) -> Path:
    """The lock file of a study file."""
    return path.with_name(f".{path.name}.lock")


class Lock:
    """A lock that is held until `release`."""

    def __init__(self, path: Path, descriptor: int) -> None:
        self._path = path
        self._descriptor: int | None = descriptor

    def release(self) -> None:
        """Let others write. Releasing twice does nothing."""
        if self._descriptor is None:
            return
        descriptor, self._descriptor = self._descriptor, None
        # Windows deletes no open file, POSIX must delete while it still holds the lock: nobody else may have
        # it then.
        if os.name == "posix":
            self._path.unlink(missing_ok=True)
            os.close(descriptor)
        else:
            os.close(descriptor)
            try:
                self._path.unlink(missing_ok=True)
            except (
                PermissionError
            ):  # another program has opened it meanwhile; then it is that program's to delete
                return


def acquire(path: Path) -> Lock | None:
    """Lock a study file, or None if another process (or another part of this one) has it.

    Raises
    ------
    OSError
        If no lock file can be made there, as in a read-only folder.
    """
    name = lock_path(path)
    while True:
        descriptor = os.open(name, os.O_RDWR | os.O_CREAT | getattr(os, "O_CLOEXEC", 0), 0o600)
        try:
            got = _try_lock(descriptor)
        except BaseException:
            os.close(descriptor)
            raise
        if not got:
            os.close(descriptor)
            return None
        if os.name != "posix" or _is_current(name, descriptor):
            return Lock(name, descriptor)
        # The last owner deleted the file between our opening and our locking it: this lock guards nothing.
        os.close(descriptor)


def _is_current(name: Path, descriptor: int) -> bool:
    try:
        return os.path.samestat(name.stat(), os.fstat(descriptor))
    except FileNotFoundError:
        return False


if sys.platform == "win32":
    import msvcrt

    def _try_lock(descriptor: int) -> bool:
        try:
            msvcrt.locking(descriptor, msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        return True

else:
    import fcntl

    def _try_lock(descriptor: int) -> bool:
        try:
            fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            return False
        return True


def acquire_or_say(path: Path) -> tuple[Lock | None, Problem | None]:
    """The lock for writing, or why there is none."""
    if not os.access(path, os.W_OK, effective_ids=os.access in os.supports_effective_ids):
        return None, Problem("store.read_only", Severity.CAUTION, str(path))
    try:
        lock = acquire(path)
    except OSError:
        return None, Problem("store.read_only", Severity.CAUTION, str(path))
    if lock is None:
        return None, Problem("store.in_use", Severity.CAUTION, str(path))
    return lock, None
