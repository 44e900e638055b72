"""Telling a log that has grown from another one."""

import hashlib
from pathlib import Path

import numpy as np
import pytest

from core.logs import read_path
from core.logs.growth import added, known_start, read_added, shift_between
from core.study import Choices
from core.traces import Clock, Trace
from tests.core.logs.corpus import load, plain

FIRST = b"time,W\n0,5\n1,6\n"
LONGER = FIRST + b"2,7\n"


def _known(*logs: bytes) -> dict[str, int]:
    return {hashlib.sha256(log).hexdigest(): len(log) for log in logs}


def test_the_longest_log_that_the_bytes_begin_with_is_found():
    known = _known(FIRST, LONGER, b"time,W\n0,9\n")
    assert known_start(LONGER + b"3,8\n", known) == hashlib.sha256(LONGER).hexdigest()
    assert known_start(FIRST + b"2,9\n", known) == hashlib.sha256(FIRST).hexdigest()


def test_a_log_begins_with_itself():
    assert known_start(FIRST, _known(FIRST)) == hashlib.sha256(FIRST).hexdigest()


@pytest.mark.parametrize("data", [b"", FIRST[:-1], b"x" + FIRST, FIRST.replace(b"6", b"7") + b"2,7\n"])
def test_what_was_cut_or_changed_is_another_log(data: bytes):
    assert known_start(data, _known(FIRST)) is None


@pytest.mark.parametrize(
    ("old", "new", "shift_s"),
    [
        (Clock("absolute", 1000.0), Clock("absolute", 400.0), 600.0),
        (Clock("local", 1000.0), Clock("local", 1000.0), 0.0),
        (Clock("local", 1000.0), Clock("absolute", 400.0), 0.0),
        (Clock("relative"), Clock("relative"), 0.0),
    ],
)
def test_times_go_over_to_the_new_clock(old: Clock, new: Clock, shift_s: float):
    steps = np.arange(3.0)
    before, now = (Trace.of(steps, steps, clock=clock) for clock in (old, new))
    assert shift_between(before, now) == shift_s


def test_what_was_added_is_taken_up_to_its_last_whole_line(tmp_path: Path):
    path = tmp_path / "log.csv"
    first = hashlib.sha256(FIRST).hexdigest()
    path.write_bytes(LONGER + b"3,8")
    more = added(path, first, len(FIRST))
    assert more is not None
    assert (more.fresh, more.size, more.lines) == (b"2,7\n", len(FIRST), 3)
    assert more.digest == hashlib.sha256(LONGER).hexdigest()
    path.write_bytes(FIRST + b"2")
    unfinished = added(path, first, len(FIRST))
    assert unfinished is not None
    assert (unfinished.fresh, unfinished.digest) == (b"", first)
    path.write_bytes(FIRST[:-2])
    assert added(path, first, len(FIRST)) is None


def test_a_log_that_is_no_text_is_taken_whole(tmp_path: Path):
    path, data = tmp_path / "log.json", b'{"t":0,"W":5}\n{"t":1,"W":6}\n'
    path.write_bytes(data + b'{"t":2,"W":7}')
    more = added(path, hashlib.sha256(data).hexdigest(), len(data))
    assert more is not None
    assert more.fresh == b'{"t":2,"W":7}'
    assert read_added(path, more, read_path(path).readings, Choices()) is None


def test_added_rows_make_the_log_that_the_file_is(tmp_path: Path):
    path, data = tmp_path / "log.csv", plain(load(rows=300)).encode()
    at = data.index(b"\n", 3000) + 1
    path.write_bytes(data[:at])
    before = read_path(path)
    path.write_bytes(data + b"2025-06-23 10:")
    more = added(path, before.digest, before.size)
    assert more is not None
    path.write_bytes(data + b"2025-06-23 10:26:00,6.0,0.1\n")  # it grows on while it is read
    now = read_added(path, more, before.readings, Choices())
    path.write_bytes(data)
    whole = read_path(path)
    assert now is not None
    assert more.digest == whole.digest
    assert now[0].trace == whole.readings[0].trace
    assert now[0].rows_read == whole.readings[0].rows_read == 300
