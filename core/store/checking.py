"""Looking at a file before SQLite may touch it, and turning SQLite's errors into problems.

Rules: a file that is no study, or one of a newer version, is read and left exactly as it is.
"""

import errno
import sqlite3
import struct
from pathlib import Path
from typing import Final

from core.language import tr
from core.problems import Problem, Severity
from core.store.schema import APPLICATION_ID, Schema
from core.store.values import Unreadable

_MAGIC: Final = b"SQLite format 3\x00"
_HEADER_BYTES: Final = 100


def problem_before_opening(path: Path, schema: Schema) -> Problem | None:
    """What speaks against opening this file, from its first 100 bytes [1]_; None if nothing does.

    References
    ----------
    .. [1] SQLite, "Database File Format", section 1.3: user version at offset 60, application id at 68.
    """
    name = str(path)
    if path.is_dir():
        return Problem("store.is_folder", Severity.ERROR, name)
    if not path.exists():
        return Problem("store.missing", Severity.ERROR, name)
    if not path.is_file():
        return Problem("store.not_a_study", Severity.ERROR, name)
    try:
        with path.open("rb") as file:
            header = file.read(_HEADER_BYTES)
    except OSError as error:
        return problem_of_os(error, path)
    if len(header) < _HEADER_BYTES or not header.startswith(_MAGIC):
        return Problem("store.not_a_study", Severity.ERROR, name)
    version, application = struct.unpack(">I4xI", header[60:72])
    return problem_of_version(path, application, version, schema)


def problem_of_version(path: Path, application: int, version: int, schema: Schema) -> Problem | None:
    """What speaks against these numbers of a file, or None."""
    if application != APPLICATION_ID:
        return Problem("store.foreign", Severity.ERROR, str(path))
    if version > schema.version:
        facts = {"version": version, "known": schema.version}
        return Problem("store.newer", Severity.ERROR, str(path), facts=facts)
    if version < 1:
        return Problem("store.damaged", Severity.ERROR, str(path), facts={"what": tr("it has no version")})
    return None


def check_tables(connection: sqlite3.Connection, schema: Schema) -> None:
    """Make sure that the file has our tables and nothing else.

    It is a guard too: a file from elsewhere may carry triggers or views, which would run with ours.

    Raises
    ------
    Unreadable
        If anything is missing or there is more.
    """
    rows = connection.execute(
        "SELECT type, name FROM sqlite_master WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\'"
    )
    there = set(rows)
    wanted = {("table", name) for name in schema.tables}
    if there != wanted:
        different = ", ".join(sorted(name for _, name in there ^ wanted))
        raise Unreadable(tr("its tables are not those of a study: {tables}", tables=different))


def problem_of(error: Exception, path: Path) -> Problem:
    """An error of SQLite as a problem of the file."""
    code = getattr(error, "sqlite_errorcode", None)
    # The low byte is the kind of error, the rest says more about it.
    kind = code & 0xFF if isinstance(code, int) else None
    if kind == sqlite3.SQLITE_FULL:
        return Problem("store.disk_full", Severity.ERROR, str(path))
    if kind in (sqlite3.SQLITE_READONLY, sqlite3.SQLITE_PERM, sqlite3.SQLITE_AUTH):
        return Problem("store.cannot_write", Severity.ERROR, str(path), facts={"what": str(error)})
    if kind in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
        return Problem("store.busy", Severity.ERROR, str(path))
    if kind in (sqlite3.SQLITE_IOERR, sqlite3.SQLITE_CANTOPEN):
        return Problem("store.disk_error", Severity.ERROR, str(path), facts={"what": str(error)})
    # of text that is no text SQLite quotes the whole, which is a page of the study and helps nobody
    what, *_ = str(error).split(" with text ")
    return Problem("store.damaged", Severity.ERROR, str(path), facts={"what": what})


def problem_of_os(error: OSError, path: Path) -> Problem:
    """An error of the operating system as a problem of the file."""
    if error.errno in (errno.ENOSPC, errno.EDQUOT, errno.EFBIG):
        return Problem("store.disk_full", Severity.ERROR, str(path))
    facts = {"what": error.strerror or str(error)}
    if error.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        return Problem("store.no_permission", Severity.ERROR, str(path), facts=facts)
    return Problem("store.disk_error", Severity.ERROR, str(path), facts=facts)
