"""Telling a log that has grown from another one."""

import hashlib

import numpy as np
import pytest

from core.growth import known_start, shift_between
from core.traces import Clock, Trace

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
