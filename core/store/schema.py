"""What a study file looks like: an SQLite database with an application id, a version and these tables.

Rules: a change of the tables raises `VERSION` and adds a step to `core.store.migrations`; a new optional
field of a study value needs neither, because values are kept as JSON and a missing field takes its default.

Theory: a step of the history is a study, and a study is made of values of which an edit changes few. So every
value is a *piece*, kept once under the digest of its text: machines, meters, logs, runs, readings; lists of
those; studies, which name a list for each collection. A thousand steps share almost everything. Raw logs are
blobs under the digest of their bytes, in parts, so that no transaction is long. A log that has grown shares
parts with what it was before; a shared part stands once, at the blob that brought it.
"""

from collections.abc import Callable, Mapping
from sqlite3 import Connection
from typing import Final

from attrs import frozen

from core.store.migrations import MIGRATIONS, SHARED_PARTS

SUFFIX: Final = ".samepart"
#: "SPrt" as a big-endian number, in the header of every study file
APPLICATION_ID: Final = 0x53507274
VERSION: Final = 2

TABLES: Final[Mapping[str, str]] = {
    "pieces": """CREATE TABLE pieces (
        id INTEGER PRIMARY KEY,
        digest BLOB NOT NULL UNIQUE,
        json TEXT NOT NULL)""",
    "steps": """CREATE TABLE steps (
        position INTEGER PRIMARY KEY,
        edit TEXT NOT NULL,
        study INTEGER NOT NULL REFERENCES pieces(id))""",
    "present": """CREATE TABLE present (
        only INTEGER PRIMARY KEY CHECK (only = 1),
        position INTEGER NOT NULL REFERENCES steps(position) DEFERRABLE INITIALLY DEFERRED)""",
    "blobs": """CREATE TABLE blobs (
        digest TEXT PRIMARY KEY,
        size INTEGER NOT NULL,
        parts INTEGER NOT NULL)""",
    "blob_parts": """CREATE TABLE blob_parts (
        digest TEXT NOT NULL,
        part INTEGER NOT NULL,
        packed BLOB NOT NULL,
        PRIMARY KEY (digest, part))""",
    "shared_parts": SHARED_PARTS,
}


@frozen
class Schema:
    """A version of the file: its tables, and how to bring a file of each older version one version on."""

    version: int
    tables: Mapping[str, str]
    migrations: Mapping[int, Callable[[Connection], None]]


CURRENT: Final = Schema(VERSION, TABLES, MIGRATIONS)
