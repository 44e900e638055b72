"""Raw logs inside the study file: compressed, in parts, under the SHA-256 of their bytes.

Rules: the parts of a blob go in one short transaction each, so that a long log never keeps an edit waiting,
and its entry in ``blobs`` goes last: a blob without an entry does not exist. An edit may name a blob only
once it is there.
"""

import hashlib
import sqlite3
import zlib
from collections.abc import Collection
from typing import Final

from core.progress import Progress, silent

#: bytes of a log in one part
PART_BYTES: Final = 4 * 1024 * 1024
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
        progress((part + 1) / parts, "keeping the log")
    connection.execute("INSERT OR IGNORE INTO blobs VALUES (?, ?, ?)", (digest, len(view), parts))
    return digest


def get(connection: sqlite3.Connection, digest: str) -> bytes | None:
    """The bytes with this SHA-256, or None if they are not in the file.

    Raises
    ------
    Damaged
        If what is there has another digest.
    sqlite3.Error
        If the file cannot be read.
    """
    entry = connection.execute("SELECT parts FROM blobs WHERE digest = ?", (digest,)).fetchone()
    if entry is None:
        return None
    data = bytearray()
    if type(entry[0]) is not int:
        raise Damaged("the number of parts is no number")
    for part in range(entry[0]):
        row = connection.execute(
            "SELECT packed FROM blob_parts WHERE digest = ? AND part = ?", (digest, part)
        ).fetchone()
        data += _unpacked(row)
    if hashlib.sha256(data).hexdigest() != digest:
        raise Damaged(digest)
    return bytes(data)


def sweep(connection: sqlite3.Connection, used: Collection[str]) -> bool:
    """Delete the blobs that are not `used`, and parts of blobs that were never finished.

    Returns
    -------
    bool
        Whether anything was deleted.
    """
    stored = {row[0] for row in connection.execute("SELECT digest FROM blobs")}
    parts = {row[0] for row in connection.execute("SELECT DISTINCT digest FROM blob_parts")}
    orphans = (stored | parts) - (stored & set(used))
    for digest in orphans:
        connection.execute("DELETE FROM blobs WHERE digest = ?", (digest,))
        connection.execute("DELETE FROM blob_parts WHERE digest = ?", (digest,))
    return bool(orphans)


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
