"""Where a study is kept that nobody has given a name yet."""

import os
from pathlib import Path

from core.store.checking import problem_before_opening
from core.store.locking import acquire
from core.store.schema import CURRENT


def untitled_path(folder: Path) -> Path:
    """Where the untitled study is kept: the newest good one that nobody has open, or else a free name.

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
    kept = sorted(folder.glob("untitled*.samepart"), key=lambda path: path.stat().st_mtime_ns, reverse=True)
    for path in kept:
        if problem_before_opening(path, CURRENT) is not None:
            continue
        lock = acquire(Path(os.path.realpath(path)))
        if lock is not None:
            lock.release()
            return path
    return new_untitled_path(folder)


def new_untitled_path(folder: Path) -> Path:
    """A free name for another untitled study in that folder."""
    names = (f"untitled{'' if n == 1 else f' {n}'}.samepart" for n in range(1, 1_000_000))
    return next(folder / name for name in names if not (folder / name).exists())
