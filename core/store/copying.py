"""Whole copies of an open database that appear under their name only once they are complete."""

import os
import sqlite3
import uuid
from contextlib import closing
from pathlib import Path

from core.language import tr
from core.progress import Progress, silent

_PAGES_AT_ONCE = 512


def unfinished_path(path: Path) -> Path:
    """A name beside `path` for a file that is not complete yet."""
    return path.with_name(f".{path.name}.{uuid.uuid4().hex[:8]}.unfinished")


def put_in_place(unfinished: Path, path: Path) -> None:
    """Give a complete file its name, for good even if the power fails now."""
    unfinished.replace(path)
    if os.name == "posix":
        folder = os.open(path.parent, os.O_RDONLY)
        try:
            os.fsync(folder)
        finally:
            os.close(folder)


def copy_database(source: sqlite3.Connection, path: Path, progress: Progress = silent) -> None:
    """Copy an open database to `path`, replacing what is there.

    Parameters
    ----------
    source : sqlite3.Connection
    path : Path
    progress : Progress
        Told every few hundred pages; may raise `Cancelled`, and then no copy is left.

    Raises
    ------
    sqlite3.Error, OSError
        If the copy cannot be written; what was at `path` is then still there.
    """

    def tell(status: int, remaining: int, total: int) -> None:
        progress(1 - remaining / total if total else 1.0, tr("copying the study"))

    unfinished = unfinished_path(path)
    try:
        with closing(sqlite3.connect(unfinished, isolation_level=None)) as target:
            source.backup(target, pages=_PAGES_AT_ONCE, progress=tell)
        put_in_place(unfinished, path)
    finally:
        unfinished.unlink(missing_ok=True)
