"""Meter logs: bytes in, readings out.

The way of a row: `containers` unpacks, `text` decodes, `sniff` finds delimiter and headings, `roles`
decides what columns hold, `body` reads them, `clock` tells the time, `machines` sorts out whose they
are, and `series` makes the trace; `joining` puts files of one machine together.
"""

from core.logs.files import find_files
from core.logs.joining import join, join_readings, joined_problem
from core.logs.read import read_bytes, read_path
from core.logs.reading import Column, FileReading, Reading, Refused

__all__ = [
    "Column",
    "FileReading",
    "Reading",
    "Refused",
    "find_files",
    "join",
    "join_readings",
    "joined_problem",
    "read_bytes",
    "read_path",
]
