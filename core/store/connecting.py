"""Connections to a study file, all made alike.

Rules: the journal is SQLite's default, a file beside the study that is gone after each edit: a write-ahead
log leaves files behind that folders synchronised between computers lose. Every commit waits for the disk.
Nothing in the schema of a file is trusted, since anyone may have made it. A connection belongs to the thread
that made it.
"""

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from urllib.parse import quote

#: what SQLite raises for a bad file: of a damaged one it may not even be able to decode its own message
FAILURES = (sqlite3.Error, UnicodeDecodeError)

_PRAGMAS = ("synchronous = FULL", "foreign_keys = ON", "trusted_schema = OFF", "cell_size_check = ON")
#: how long to wait for another thread's short transaction [s]
_PATIENCE_S = 10.0


def connect(path: Path, *, read_only: bool = False) -> sqlite3.Connection:
    """Open an existing file, in autocommit mode.

    Raises
    ------
    sqlite3.Error, UnicodeDecodeError
        If SQLite cannot (see `FAILURES`).
    """
    address = f"file:{quote(str(path.absolute()))}?mode={'ro' if read_only else 'rw'}"
    connection = sqlite3.connect(address, uri=True, isolation_level=None, timeout=_PATIENCE_S)
    try:
        for pragma in _PRAGMAS:
            connection.execute(f"PRAGMA {pragma}")
    except BaseException:
        connection.close()
        raise
    return connection


@contextmanager
def briefly(path: Path, *, read_only: bool = False) -> Iterator[sqlite3.Connection]:
    """A connection for one task, in whichever thread it runs."""
    with closing(connect(path, read_only=read_only)) as connection:
        yield connection


@contextmanager
def transaction(connection: sqlite3.Connection) -> Iterator[None]:
    """All or nothing: committed at the end, rolled back if anything (the commit itself too) fails."""
    connection.execute("BEGIN IMMEDIATE")
    try:
        yield
        connection.execute("COMMIT")
    finally:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
