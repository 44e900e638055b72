"""Builds ``version_1.samepart`` with nothing but SQLite, as a program of file version 1 wrote it.

Run as ``python -m tests.store.old.make_version_1``. It must never be edited to follow the program: it
stands for files that people have.
"""

import hashlib
import json
import sqlite3
import zlib
from contextlib import closing
from pathlib import Path

FILE = Path(__file__).with_name("version_1.samepart")

LOG = b"time_s,power_w\n0,5\n10,120\n20,118\n30,5\n"
DIGEST = hashlib.sha256(LOG).hexdigest()

_SCRIPT = """
PRAGMA page_size = 1024;
PRAGMA auto_vacuum = INCREMENTAL;
PRAGMA application_id = 1397781108;
PRAGMA user_version = 1;
CREATE TABLE pieces (id INTEGER PRIMARY KEY, digest BLOB NOT NULL UNIQUE, json TEXT NOT NULL);
CREATE TABLE steps (
    position INTEGER PRIMARY KEY, edit TEXT NOT NULL, study INTEGER NOT NULL REFERENCES pieces(id));
CREATE TABLE present (
    only INTEGER PRIMARY KEY CHECK (only = 1),
    position INTEGER NOT NULL REFERENCES steps(position) DEFERRABLE INITIALLY DEFERRED);
CREATE TABLE blobs (digest TEXT PRIMARY KEY, size INTEGER NOT NULL, parts INTEGER NOT NULL);
CREATE TABLE blob_parts (
    digest TEXT NOT NULL, part INTEGER NOT NULL, packed BLOB NOT NULL, PRIMARY KEY (digest, part));
"""

_CHOICES = {
    "encoding": None,
    "delimiter": ",",
    "decimal": None,
    "header_row": None,
    "date_order": None,
    "zone": None,
    "sampling": "sampled",
    "columns": [[0, "time", "s"], [1, "power", "W"]],
}
_RUN = {
    "id": "r1",
    "log_id": "g1",
    "found_start_s": 5.0,
    "found_end_s": 25.0,
    "found_kind": "run",
    "found_part": "A",
    "found_why": "",
    "set_start_s": None,
    "set_end_s": None,
    "set_kind": None,
    "set_included": None,
    "why_left_out": "",
    "name": "",
}
#: pieces by number: values, then lists of numbers, then studies that name lists
_PIECES: dict[int, object] = {
    1: [],
    2: {
        "id": "a1",
        "name": "Alder",
        "slot": 0,
        "properties": [["bed area", 5.5], ["closed", True], ["supply", "mains"]],
    },
    3: {"id": "m1", "name": "Meter", "gain_percent": 1.0, "offset_w": 0.3, "stated": False},
    4: {
        "id": "g1",
        "machine_id": "a1",
        "meter_id": "m1",
        "sources": [{"digest": DIGEST, "file_name": "alder.csv", "device": None, "choices": _CHOICES}],
    },
    5: _RUN,
    6: {**_RUN, "set_end_s": 27.5, "set_included": False, "why_left_out": "door open"},
    7: {
        "id": "t1",
        "machine_id": "a1",
        "meter_id": "m1",
        "energy_wh": 21.0,
        "seconds": 1800.0,
        "step_wh": 1.0,
        "note": "from the display",
        "included": True,
        "why_left_out": "",
    },
    8: [2],
    9: [3],
    10: [4],
    11: [5],
    12: [6],
    13: [7],
}


def _study(number: int, machines: int, meters: int, logs: int, runs: int, typed: int, part: str) -> None:
    _PIECES[number] = {
        "id": "7d9f",
        "name": "Untitled study",
        "part": part,
        "boundary": "warm-up and processing",
        "bed_c": 60.0,
        "machines": machines,
        "meters": meters,
        "logs": logs,
        "runs": runs,
        "typed": typed,
        "invented": False,
    }


_study(14, 1, 1, 1, 1, 1, "part")
_study(15, 8, 9, 10, 11, 13, "part")
_study(16, 8, 9, 10, 12, 13, "part")
_study(17, 8, 9, 10, 12, 13, "hose clip")

_STEPS = [
    (1, {"label": "New study", "merge_key": None}, 14),
    (2, {"label": "Import a log", "merge_key": None}, 15),
    (3, {"label": "Leave out Alder, run 1", "merge_key": "leave out r1"}, 16),
    (4, {"label": "Rename the part", "merge_key": "part name"}, 17),
]
#: the last step is undone
_PRESENT = 3


def build(path: Path) -> None:
    """Write the file."""
    with closing(sqlite3.connect(path)) as connection:
        connection.executescript(_SCRIPT)
        for number, value in _PIECES.items():
            text = json.dumps(value, separators=(",", ":"))
            digest = hashlib.sha256(text.encode()).digest()
            connection.execute("INSERT INTO pieces VALUES (?, ?, ?)", (number, digest, text))
        for position, edit, study in _STEPS:
            connection.execute("INSERT INTO steps VALUES (?, ?, ?)", (position, json.dumps(edit), study))
        connection.execute("INSERT INTO present VALUES (1, ?)", (_PRESENT,))
        connection.execute("INSERT INTO blobs VALUES (?, ?, 1)", (DIGEST, len(LOG)))
        connection.execute("INSERT INTO blob_parts VALUES (?, 0, ?)", (DIGEST, zlib.compress(LOG)))
        connection.commit()


if __name__ == "__main__":
    FILE.unlink(missing_ok=True)
    build(FILE)
