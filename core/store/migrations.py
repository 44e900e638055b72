"""Numbered steps that bring an older study file up to date, and the copy that is kept of the file before.

Rules: a step is never edited once a version with it is out; all steps that a file needs are one transaction,
the version number in it; if any of it fails the file is as it was.
"""

from collections.abc import Callable, Mapping
from pathlib import Path
from sqlite3 import Connection
from types import MappingProxyType
from typing import Final

from core.store.connecting import transaction
from core.store.copying import copy_database

SHARED_PARTS: Final = """CREATE TABLE shared_parts (
        digest TEXT NOT NULL,
        part INTEGER NOT NULL,
        of_digest TEXT NOT NULL,
        of_part INTEGER NOT NULL,
        PRIMARY KEY (digest, part))"""


def _share_parts(connection: Connection) -> None:
    """Version 2: a log that has grown shares parts with what it was before."""
    connection.execute(SHARED_PARTS)


#: from version n to n + 1, under n
MIGRATIONS: Final[Mapping[int, Callable[[Connection], None]]] = MappingProxyType({1: _share_parts})


def backup_path(path: Path, version: int) -> Path:
    """A free name beside `path` for the copy of the file as version `version` left it."""
    candidates = (
        path.with_name(f"{path.stem} (version {version}{'' if n == 1 else f', copy {n}'}){path.suffix}")
        for n in range(1, 10_000)
    )
    return next(candidate for candidate in candidates if not candidate.exists())


def migrate(
    connection: Connection, path: Path, target: int, steps: Mapping[int, Callable[[Connection], None]]
) -> Path:
    """Bring an open file up to a version, keeping a copy beside it first.

    Parameters
    ----------
    connection : sqlite3.Connection
        To the file, in autocommit mode, outside a transaction.
    path : Path
        The file.
    target : int
        Version to reach, above the one that the file has.
    steps : mapping of int to callable
        A step for each version from the file's own up to ``target - 1``.

    Returns
    -------
    Path
        The copy.

    Raises
    ------
    sqlite3.Error, OSError
        If the copy or a step fails; the file is then as it was.
    """
    version = int(connection.execute("PRAGMA user_version").fetchone()[0])
    backup = backup_path(path, version)
    copy_database(connection, backup)
    try:
        with transaction(connection):
            for number in range(version, target):
                steps[number](connection)
            connection.execute(f"PRAGMA user_version = {target:d}")
    except BaseException:
        backup.unlink(missing_ok=True)
        raise
    return backup
