"""Builds ``version_2.samepart`` with nothing but SQLite, as a program of file version 2 wrote it.

Run as ``python -m tests.store.old.make_version_2``. It must never be edited to follow the program: it
stands for files that people have. Version 2 lets a log that has grown share parts with what it was before.
"""

import hashlib
import sqlite3
import zlib
from contextlib import closing
from pathlib import Path

from tests.store.old import make_version_1

FILE = Path(__file__).with_name("version_2.samepart")

MORE = b"40,119\n50,5\n"
GROWN = hashlib.sha256(make_version_1.LOG + MORE).hexdigest()


def build(path: Path) -> None:
    """Write the file: that of version 1, with its log grown by two rows."""
    make_version_1.build(path)
    old = make_version_1.DIGEST
    with closing(sqlite3.connect(path)) as connection:
        connection.execute(
            "CREATE TABLE shared_parts (digest TEXT NOT NULL, part INTEGER NOT NULL, "
            "of_digest TEXT NOT NULL, of_part INTEGER NOT NULL, PRIMARY KEY (digest, part))"
        )
        rows = connection.execute("SELECT id, json FROM pieces").fetchall()
        for number, text in rows:
            text = text.replace(old, GROWN)
            digest = hashlib.sha256(text.encode()).digest()
            connection.execute("UPDATE pieces SET digest = ?, json = ? WHERE id = ?", (digest, text, number))
        connection.execute("DELETE FROM blobs")
        connection.execute("INSERT INTO blobs VALUES (?, ?, 2)", (GROWN, len(make_version_1.LOG + MORE)))
        connection.execute("INSERT INTO shared_parts VALUES (?, 0, ?, 0)", (GROWN, old))
        connection.execute("INSERT INTO blob_parts VALUES (?, 1, ?)", (GROWN, zlib.compress(MORE)))
        connection.execute("PRAGMA user_version = 2")
        connection.commit()


if __name__ == "__main__":
    FILE.unlink(missing_ok=True)
    build(FILE)
