"""A log that is read on from its end is what it is when it is read whole."""

import hashlib
from pathlib import Path

import numpy as np
import pytest

from core.logs import Reading, read_bytes
from core.logs.continuing import read_on
from core.logs.source import InMemory
from core.study import Choices
from tests.core.logs.corpus import Case, Load, Writer, load, plain, table
from tests.core.logs.test_corpus import CASES

WHOLE = load(rows=600)
SPLIT = 200


def grown(data: bytes, at: int) -> tuple[Reading, ...] | None:
    """What reading on gives after the line that ends at or after byte `at`."""
    at = data.index(b"\n", at) + 1
    before = read_bytes(data[:at], "log.csv").readings
    digest = hashlib.sha256(data).hexdigest()
    return read_on(InMemory(data), data[at:], data[:at].count(b"\n"), before, digest, Choices())


def same(found: tuple[Reading, ...], whole: tuple[Reading, ...]) -> None:
    assert [r.device for r in found] == [r.device for r in whole]
    for a, b in zip(found, whole, strict=True):
        assert a.trace is not None
        assert b.trace is not None
        assert a.trace == b.trace  # the identity
        np.testing.assert_allclose(a.trace.time_s, b.trace.time_s, atol=1e-6)
        np.testing.assert_allclose(a.trace.power_w, b.trace.power_w, rtol=1e-12)
        assert (a.trace.counter_wh is None) == (b.trace.counter_wh is None)
        if a.trace.counter_wh is not None:
            np.testing.assert_allclose(a.trace.counter_wh, b.trace.counter_wh, rtol=1e-12)
        assert (a.trace.kind, a.trace.clock, a.trace.gaps) == (b.trace.kind, b.trace.clock, b.trace.gaps)
        assert a.trace.counter_breaks_s == b.trace.counter_breaks_s
        assert a.trace.resolution_w == pytest.approx(b.trace.resolution_w)
        assert a.energy_used_wh == pytest.approx(b.energy_used_wh)
        assert (a.rows_read, a.rows_refused, a.columns) == (b.rows_read, b.rows_refused, b.columns)
        assert {p.code for p in a.problems} == {p.code for p in b.problems}
        assert {**dict(a.reasons), "clock": ""} == {**dict(b.reasons), "clock": ""}  # tells a middle value
        assert [r.row for r in a.refused] == [r.row for r in b.refused]


def test_only_the_added_rows_are_looked_at() -> None:
    data = plain(WHOLE).encode()
    at = data.index(b"\n", len(data) // 2) + 1
    before = read_bytes(data[:at], "log.csv").readings
    spoilt = data[: at // 2] + b"x" * 2000 + data[at // 2 + 2000 :]
    found = read_on(InMemory(spoilt), data[at:], data[:at].count(b"\n"), before, "now", Choices())
    assert found is not None
    assert found[0].rows_read == 600


SHAPES = {
    "ISO": plain(WHOLE),
    "day first, decimal comma": plain(WHOLE, form="%d.%m.%Y %H:%M:%S", decimal=",", delimiter=";"),
    "no headings": table(WHOLE, (), (Writer(WHOLE).time, Writer(WHOLE).watts)),
    "kilowatts stated": table(WHOLE, ("time", "P [kW]"), (Writer(WHOLE).time, Writer(WHOLE).kilowatts)),
    "counter alone": table(WHOLE, ("time", "energy [Wh]"), (Writer(WHOLE).time, Writer(WHOLE).wh)),
}


@pytest.mark.parametrize("text", SHAPES.values(), ids=SHAPES)
@pytest.mark.parametrize("share", [0.1, 0.5, 0.97])
def test_reading_on_gives_what_reading_whole_gives(text: str, share: float) -> None:
    data = text.encode()
    found = grown(data, int(share * len(data)))
    assert found is not None
    same(found, read_bytes(data, "log.csv").readings)


def test_two_machines_in_columns_and_in_rows() -> None:
    half = Load(WHOLE.time_s, np.round(WHOLE.power_w / 2, 1), WHOLE.counter_wh)
    w, h = Writer(WHOLE), Writer(half)
    wide = table(WHOLE, ("time", "Alder (W)", "Birch (W)"), (w.time, w.watts, h.watts)).encode()
    rows = [
        f"{w.time(i)},{name},{x.watts(i)}" for i in range(600) for name, x in (("Alder", w), ("Birch", h))
    ]
    long = "\n".join(["time,device,power_w", *rows, ""]).encode()
    for data in (wide, long):
        found = grown(data, len(data) // 2)
        assert found is not None
        same(found, read_bytes(data, "log.csv").readings)


def test_refused_rows_keep_their_lines() -> None:
    lines = plain(WHOLE).splitlines()
    for i in (50, 400, 500):
        lines[i] = lines[i][:12]
    data = "\n".join([*lines, ""]).encode()
    found = grown(data, len(data) // 2)
    assert found is not None
    assert [r.row for r in found[0].refused] == [51, 401, 501]
    same(found, read_bytes(data, "log.csv").readings)


def test_a_counter_that_starts_again_among_the_added_rows() -> None:
    t = load(rows=600)
    reset = np.where(np.arange(600) < 450, t.counter_wh, t.counter_wh - t.counter_wh[450])
    data = plain(Load(t.time_s, t.power_w, reset)).encode()
    found = grown(data, len(data) // 2)
    assert found is not None
    same(found, read_bytes(data, "log.csv").readings)


def _later(text: str, old: str, new: str) -> bytes:
    half = text.index("\n", len(text) // 2)
    return (text[:half] + text[half:].replace(old, new)).encode()


@pytest.mark.parametrize(
    ("name", "data"),
    [
        ("stamps cut to the minute", plain(WHOLE, form="%Y-%m-%d %H:%M").encode()),
        ("elapsed time", table(WHOLE, ("s", "W"), (lambda i: f"{i * 10}", Writer(WHOLE).watts)).encode()),
        ("another delimiter", _later(plain(WHOLE), ",", ";")),
        (
            "milliwatts inferred",
            table(WHOLE, ("time", "power"), (Writer(WHOLE).time, Writer(WHOLE).milliwatts)).encode(),
        ),
    ],
    ids=lambda x: x if isinstance(x, str) else "",
)
def test_what_cannot_be_promised_is_read_whole(name: str, data: bytes) -> None:
    assert grown(data, len(data) // 2) is None


def _texts() -> list[Case]:
    return [c for c in CASES if Path(c.file).suffix == ".csv" and c.data.isascii() and b"\n" in c.data[:-200]]


def test_every_shape_that_is_read_on_is_read_alike() -> None:
    """Reading on may give up, but never gives anything else."""
    continued = 0
    for case in _texts():
        found = grown(case.data, int(0.6 * len(case.data)))
        if found is not None:
            continued += 1
            same(found, read_bytes(case.data, "log.csv").readings)
    assert continued >= 40
