"""Where a study is kept that nobody has given a name yet."""

import os
from contextlib import suppress
from pathlib import Path
from typing import Final

from core.store.checking import problem_before_opening
from core.store.locking import acquire
from core.store.schema import CURRENT

_NAMES: Final = "untitled*.samepart"
#: beside the studies: the name of the one that was opened last, for a clock can be set back
_LAST: Final = "last untitled.txt"


def untitled_path(folder: Path) -> Path:
    """Where the untitled study is kept: of the good ones that nobody has open the last, or else a free name.

    The last is the one that was opened last, as `remember` keeps it, and then by the times of the files.

    Parameters
    ----------
    folder : Path
        A folder for such studies; made if it is not there.

    Raises
    ------
    OSError
        If the folder cannot be made or nothing can be written in it.
    """
    folder.mkdir(parents=True, exist_ok=True)
    last = _last(folder)
    kept = sorted(
        folder.glob(_NAMES), key=lambda path: (path.name == last, path.stat().st_mtime_ns), reverse=True
    )
    for path in kept:
        if problem_before_opening(path, CURRENT) is not None:
            continue
        lock = acquire(Path(os.path.realpath(path)))
        if lock is not None:
            lock.release()
            return path
    return new_untitled_path(folder)


def remember(path: Path) -> None:
    """Keep which untitled study was opened last; nothing is kept of a study that has a name.

    A folder in which nothing can be written is passed over: then the times of the files decide.
    """
    if path.match(_NAMES):
        with suppress(OSError):
            (path.parent / _LAST).write_text(path.name, encoding="utf-8")


def _last(folder: Path) -> str:
    try:
        return (folder / _LAST).read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError):
        return ""


def new_untitled_path(folder: Path) -> Path:
    """A free name for another untitled study in that folder."""
    names = (f"untitled{'' if n == 1 else f' {n}'}.samepart" for n in range(1, 1_000_000))
    return next(folder / name for name in names if not (folder / name).exists())
