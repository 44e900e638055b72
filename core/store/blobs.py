"""Raw logs inside the study file: compressed, in parts, under the SHA-256 of their bytes.

Rules: the parts of a blob go in one short transaction each, so that a long log never keeps an edit waiting,
and its entry in ``blobs`` goes last: a blob without an entry does not exist. An edit may name a blob only
once it is there.

Theory: a log that has grown takes over the parts of what it was before, except short ones at the end, which
are packed again together with what is new. A part is left as it is only when it is more than twice as long
as all behind it. So a log that grows by a row at a time has few parts, and a row is packed again only as
often as the log has doubled since.
"""

import hashlib
import sqlite3
import zlib
from collections.abc import Collection
from typing import Final

from core.language import tr
from core.progress import Progress, silent

#: bytes of a log in one part
PART_BYTES: Final = 4 * 1024 * 1024
#: a study keeps no longer log; a file that says otherwise is not to fill the memory [bytes]
MOST_BYTES: Final = 6 << 30
#: the quickest level: logs shrink to about a fifth with it, and it keeps up with most disks
_LEVEL: Final = 1


class Damaged(Exception):
    """The bytes of a blob are not those that were put in."""


def add(connection: sqlite3.Connection, data: bytes | memoryview, progress: Progress = silent) -> str:
    """Put bytes into the file, if they are not there yet.

    Parameters
    ----------
    connection : sqlite3.Connection
        In autocommit mode, outside a transaction.
    data : bytes or memoryview
    progress : Progress
        Told after every part; may raise `Cancelled`, and then the blob is not there.

    Returns
    -------
    str
        SHA-256 of the bytes, in hexadecimal.

    Raises
    ------
    sqlite3.Error
        If they cannot be written.
    """
    view = memoryview(data).cast("B")
    digest = hashlib.sha256(view).hexdigest()
    if connection.execute("SELECT 1 FROM blobs WHERE digest = ?", (digest,)).fetchone():
        return digest
    parts = -(-len(view) // PART_BYTES)
    for part in range(parts):
        packed = zlib.compress(view[part * PART_BYTES : (part + 1) * PART_BYTES], _LEVEL)
        connection.execute("INSERT OR REPLACE INTO blob_parts VALUES (?, ?, ?)", (digest, part, packed))
        progress((part + 1) / parts, tr("keeping the log"))
    connection.execute("INSERT OR IGNORE INTO blobs VALUES (?, ?, ?)", (digest, len(view), parts))
    return digest


def extend(connection: sqlite3.Connection, before: str, fresh: bytes, digest: str) -> bool:
    """Put a log that has grown into the file, keeping what it shares with the log before only once.

    Parameters
    ----------
    connection : sqlite3.Connection
        In autocommit mode, outside a transaction.
    before : str
        The blob that the log begins with.
    fresh : bytes
        What was added to it.
    digest : str
        SHA-256 of all of it, in hexadecimal.

    Returns
    -------
    bool
        False if the blob before is not in the file; nothing is put in then.

    Raises
    ------
    Damaged
        If the end of the blob before cannot be read.
    sqlite3.Error
        If it cannot be written.
    """
    if connection.execute("SELECT 1 FROM blobs WHERE digest = ?", (digest,)).fetchone():
        return True
    entry = connection.execute("SELECT size, parts FROM blobs WHERE digest = ?", (before,)).fetchone()
    if entry is None:
        return False
    size, kept = entry
    data = fresh
    while kept:
        last = _unpacked(_packed(connection, before, kept - 1))
        if len(last) == PART_BYTES or len(last) > 2 * len(data):
            break
        data, kept = last + data, kept - 1
    for part in range(kept):
        place = _owner(connection, before, part)
        connection.execute("INSERT OR REPLACE INTO shared_parts VALUES (?, ?, ?, ?)", (digest, part, *place))
    parts = kept - (-len(data) // PART_BYTES)
    for part in range(kept, parts):
        start = (part - kept) * PART_BYTES
        packed = zlib.compress(data[start : start + PART_BYTES], _LEVEL)
        connection.execute("INSERT OR REPLACE INTO blob_parts VALUES (?, ?, ?)", (digest, part, packed))
    connection.execute("INSERT OR IGNORE INTO blobs VALUES (?, ?, ?)", (digest, size + len(fresh), parts))
    return True


def get(connection: sqlite3.Connection, digest: str) -> bytes | None:
    """The bytes with this SHA-256, or None if they are not in the file.

    Raises
    ------
    Damaged
        If what is there has another digest.
    sqlite3.Error
        If the file cannot be read.
    """
    entry = connection.execute("SELECT size, parts FROM blobs WHERE digest = ?", (digest,)).fetchone()
    if entry is None:
        return None
    data = bytearray()
    size, parts = entry
    if type(parts) is not int or type(size) is not int:
        raise Damaged("the number of parts or the size is no number")
    if size > MOST_BYTES:
        raise Damaged(f"it says to be longer than a log can be: {size} bytes")
    for part in range(parts):
        data += _unpacked(_packed(connection, digest, part))
        # a few packed bytes, referred to often enough, would fill any memory
        if len(data) > size:
            raise Damaged(f"there is more of it than the {size} bytes it says to have")
    if hashlib.sha256(data).hexdigest() != digest:
        raise Damaged(digest)
    return bytes(data)


def sweep(connection: sqlite3.Connection, used: Collection[str]) -> bool:
    """Delete the blobs that are not `used`, and parts that no blob needs.

    Returns
    -------
    bool
        Whether anything was deleted.
    """
    stored = {row[0] for row in connection.execute("SELECT digest FROM blobs")}
    kept = stored & set(used)
    gone = stored - kept
    parts = set(connection.execute("SELECT digest, part FROM blob_parts"))
    shared = set(connection.execute("SELECT digest, part, of_digest, of_part FROM shared_parts"))
    needed = {(of, part) for digest, _, of, part in shared if digest in kept}
    orphans = {place for place in parts if place[0] not in kept and place not in needed}
    unlinked = {(digest, part) for digest, part, _, _ in shared if digest not in kept}
    connection.executemany("DELETE FROM blobs WHERE digest = ?", [(digest,) for digest in gone])
    connection.executemany("DELETE FROM blob_parts WHERE digest = ? AND part = ?", orphans)
    connection.executemany("DELETE FROM shared_parts WHERE digest = ? AND part = ?", unlinked)
    return bool(gone or orphans or unlinked)


def _owner(connection: sqlite3.Connection, digest: str, part: int) -> tuple[str, int]:
    """Where a part of a blob stands: at the blob itself, or at the one that brought it."""
    row = connection.execute(
        "SELECT of_digest, of_part FROM shared_parts WHERE digest = ? AND part = ?", (digest, part)
    ).fetchone()
    return (digest, part) if row is None else (row[0], row[1])


def _packed(connection: sqlite3.Connection, digest: str, part: int) -> tuple[bytes] | None:
    row: tuple[bytes] | None = connection.execute(
        "SELECT packed FROM blob_parts WHERE digest = ? AND part = ?", _owner(connection, digest, part)
    ).fetchone()
    return row


def _unpacked(row: tuple[bytes] | None) -> bytes:
    # Never more than a part holds: a damaged or hostile file must not fill the memory.
    if row is None:
        raise Damaged("a part is missing")
    unpacker = zlib.decompressobj()
    try:
        data = unpacker.decompress(row[0], PART_BYTES)
    except (zlib.error, TypeError) as error:
        raise Damaged(str(error)) from error
    if not unpacker.eof:
        raise Damaged("a part is longer than it may be, or cut")
    return data
