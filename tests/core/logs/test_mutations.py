"""Logs of every shape, damaged at random: no exception, a sentence for every problem, sound traces.

``SAMEPART_FUZZ_S=600`` fuzzes for ten minutes; ``SAMEPART_FUZZ_SEED`` takes another sequence.
"""

import os
import random
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

from core.logs import FileReading, read_bytes, read_path
from core.wording import sentence, sentences
from tests.core.logs.test_corpus import CASES

#: what damage brings into a file: signs with a meaning, extremes, pieces of other forms
PIECES = (
    b",", b";", b"\t", b"|", b"\n", b"\r", b'"', b"'", b"\0", b"\xff", b" ", b".", b":", b"-", b"0",
    b"{", b"}", b"[", b"]",
    b"1e308", b"-1e308", b"inf", b"nan", b"99999999999999999999", b"9999-12-31", b"0001-01-01", b"24:00:00",
    b"W", b"kWh", b"%", b"am ", b"Z", b"+02:00", b"\xc2\xa0", b"\xe2\x80\xaf", b"2025-06-23 09:36:00\n",
)  # fmt: skip
FEW = 120


def _flip(data: bytearray, at: int, rng: random.Random) -> None:
    data[at] = rng.randrange(256)


def _insert(data: bytearray, at: int, rng: random.Random) -> None:
    data[at:at] = rng.choice(PIECES)


def _overwrite(data: bytearray, at: int, rng: random.Random) -> None:
    piece = rng.choice(PIECES)
    data[at : at + len(piece)] = piece


def _delete(data: bytearray, at: int, rng: random.Random) -> None:
    del data[at : at + rng.choice((1, 3, 20, 500))]


def _repeat(data: bytearray, at: int, rng: random.Random) -> None:
    start = rng.randrange(len(data))
    data[at:at] = data[start : start + rng.choice((5, 50, 500))]


def _swap_signs(data: bytearray, at: int, rng: random.Random) -> None:
    data[:] = bytes(data).replace(rng.choice(PIECES), rng.choice(PIECES), rng.choice((1, 5, 1000)))


def _reorder_lines(data: bytearray, at: int, rng: random.Random) -> None:
    lines = bytes(data).split(b"\n")
    rng.shuffle(lines)
    data[:] = b"\n".join(lines)


def _splice(data: bytearray, at: int, rng: random.Random) -> None:
    other = rng.choice(CASES).data
    start = rng.randrange(len(other))
    data[at:at] = other[start : start + rng.choice((30, 300))]


DAMAGE: tuple[Callable[[bytearray, int, random.Random], None], ...] = (
    _flip, _insert, _overwrite, _delete, _repeat, _swap_signs, _reorder_lines, _splice,
)  # fmt: skip


def damaged(data: bytes, rng: random.Random) -> bytes:
    out = bytearray(data[: rng.randrange(200, 3000)] if rng.random() < 0.5 else data)
    for _ in range(rng.choice((1, 1, 2, 4, 10, 50))):
        if out:
            rng.choice(DAMAGE)(out, rng.randrange(len(out)), rng)
    return bytes(out)


def _sound(found: FileReading) -> None:
    problems = [*found.problems]
    for reading in found.readings:
        problems += [*reading.problems, *(r.why for r in reading.refused)]
        trace = reading.trace
        assert trace is not None
        assert np.isfinite(trace.power_w).all()
        assert (np.diff(trace.time_s) > 0).all()
        trace.clock.iso(trace.end_s)
    for problem in problems:
        assert problem.code != "log.unforeseen", problem.facts
        assert problem.code in sentences()
        assert sentence(problem)
    assert found.readings or found.is_refused


def test_damaged_logs_are_read_or_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    seed = int(os.environ.get("SAMEPART_FUZZ_SEED", "3"))
    until = time.monotonic() + float(os.environ.get("SAMEPART_FUZZ_S", "0"))
    monkeypatch.setattr("core.logs.source.BLOCK", 2000)
    path = tmp_path / "damaged"
    count = 0
    while count < FEW or time.monotonic() < until:
        rng = random.Random(f"{seed} {count}")
        case = rng.choice(CASES)
        data = damaged(case.data, rng)
        count += 1
        # every fourth comes from disk, block by block
        monkeypatch.setattr("core.logs.read.STREAMED", 100 if count % 4 == 0 else 1 << 23)
        path.write_bytes(data)
        started = time.monotonic()
        try:
            _sound(read_path(path, shown_name=case.file) if count % 4 == 0 else read_bytes(data, case.file))
        except Exception as error:
            raise AssertionError(f"seed {seed}, input {count - 1}: {case.name}") from error
        assert time.monotonic() - started < 30
