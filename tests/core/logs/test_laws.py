"""Laws of reading: any trace in any spelling is read back as it was; no bytes at all raise."""

import bz2
import gzip
import lzma
from collections.abc import Callable
from datetime import timedelta

import numpy as np
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from core.logs import join, join_readings, read_bytes
from tests.core.logs.corpus import START, Load, load, number, plain
from tests.core.logs.test_bad_input import sentence

FORMS = (
    "%Y-%m-%d %H:%M:%S",
    "%Y-%m-%dT%H:%M:%S",
    "%d.%m.%Y %H:%M:%S",
    "%d/%m/%Y %H:%M:%S",
    "%m/%d/%Y %I:%M:%S %p",
    "%d %b %Y %H:%M:%S",
)
HEADS = (
    ("time", "power [W]", "energy [Wh]"),
    ("Zeit", "Leistung (W)", "Zählerstand (Wh)"),
    ("horodatage", "puissance W", "énergie Wh"),
    ("日時", "電力 (W)", "電力量 (Wh)"),
)
#: how a file may be packed; its name does not tell
PACKED: tuple[Callable[[bytes], bytes], ...] = (bytes, bytes, gzip.compress, bz2.compress, lzma.compress)


@st.composite
def spellings(draw: st.DrawFn) -> tuple[Load, bytes]:
    """A trace and one way to write it, with oddities that may come together."""
    rows = draw(st.integers(12, 60))
    step_s = draw(st.sampled_from((1.0, 2.0, 5.0, 10.0, 30.0, 60.0)))
    seed = draw(st.integers(0, 1000))
    truth = load(rows, step_s, seed, start_wh=draw(st.sampled_from((0.0, 12.3, 98765.4))))
    delimiter = draw(st.sampled_from((",", ";", "\t", "|")))
    decimal = "." if delimiter == "," else draw(st.sampled_from((".", ",")))
    form = draw(st.sampled_from(FORMS))
    head = draw(st.sampled_from(HEADS))
    newline = draw(st.sampled_from(("\n", "\r\n")))
    quoted = draw(st.booleans())
    lines = [] if draw(st.booleans()) else [delimiter.join(head)]
    headings = len(lines)
    for t, p, c in zip(truth.time_s, truth.power_w, truth.counter_wh, strict=True):
        stamp = (START + timedelta(seconds=float(t))).strftime(form)
        cells = (stamp, number(p, 1, decimal), number(c, 1, decimal))
        lines.append(delimiter.join(f'"{x}"' if quoted else x for x in cells))
    if draw(st.booleans()):  # newest first
        lines[headings:] = lines[: headings - 1 if headings else None : -1]
    if headings and draw(st.booleans()):
        lines = ["A log of the shop", "", *lines]
    if headings and draw(st.booleans()):  # columns that tell nothing of the load
        at = len(lines) - truth.time_s.size
        lines[at:] = [delimiter.join((x, "-61", "ok")) for x in lines[at:]]
        lines[at - 1] = delimiter.join((lines[at - 1], "signal", "note"))
    text = newline.join(lines) + (newline if draw(st.booleans()) else "")
    data = text.encode(draw(st.sampled_from(("utf-8", "utf-8-sig", "utf-16"))))
    return truth, draw(st.sampled_from(PACKED))(data)


@settings(max_examples=120, deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])
@given(spellings())
def test_what_was_written_is_read_back(spelling: tuple[Load, bytes]) -> None:
    truth, data = spelling
    (reading,) = read_bytes(data, "log.csv").readings
    trace = reading.trace
    assert trace is not None
    assert reading.rows_refused == 0
    np.testing.assert_allclose(trace.time_s, truth.time_s, atol=1e-3)
    np.testing.assert_allclose(trace.power_w, truth.power_w, atol=1e-9)
    start = trace.clock.iso(0.0)
    assert start is not None
    assert start == START.isoformat()


@settings(max_examples=150, deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])
@given(st.binary(max_size=400))
def test_no_bytes_raise(data: bytes) -> None:
    found = read_bytes(data, "any.csv")
    assert "log.unforeseen" not in {p.code for p in found.problems}


GOOD = plain(load(rows=60)).encode()
PIECES = (
    b",",
    b";",
    b"\n",
    b'"',
    b"\0",
    b"\xff",
    b"nan",
    b"1e999",
    b"2025-",
    b"-",
    b"99999999999999999999",
    b"{",
    b"[",
)


@settings(max_examples=200, deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])
@given(
    st.lists(st.tuples(st.integers(0, len(GOOD)), st.integers(0, 40), st.sampled_from(PIECES)), max_size=12)
)
def test_a_damaged_log_raises_nothing_and_its_problems_can_be_said(
    damage: list[tuple[int, int, bytes]],
) -> None:
    data = bytearray(GOOD)
    for at, cut, piece in damage:
        data[at : at + cut] = piece
    found = read_bytes(bytes(data), "damaged.csv")
    problems = [*found.problems, *(p for r in found.readings for p in r.problems)]
    assert "log.unforeseen" not in {p.code for p in problems}
    for problem in problems:
        assert sentence(problem)
    for reading in found.readings:
        trace = reading.trace
        assert trace is not None
        assert np.isfinite(trace.power_w).all()
        assert (np.diff(trace.time_s) > 0).all()


@settings(max_examples=40, deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])
@given(st.integers(60, 180), st.integers(0, 30))
def test_a_log_cut_in_two_is_put_together_again(cut: int, overlap: int) -> None:
    lines = plain(load(rows=240)).splitlines()
    first = "\n".join(lines[: cut + 1 + overlap]) + "\n"
    second = "\n".join([lines[0], *lines[cut + 1 :]]) + "\n"
    readings = [
        read_bytes(data.encode(), name).readings[0]
        for name, data in (("day 1.csv", first), ("day 2.csv", second))
    ]
    (group,) = join_readings(readings)
    whole = read_bytes("\n".join(lines).encode(), "all.csv").readings[0].trace
    assert whole is not None
    joined = join(group)
    np.testing.assert_allclose(joined.time_s, whole.time_s, atol=1e-6)
    np.testing.assert_allclose(joined.power_w, whole.power_w)
    assert joined.counter_wh is not None
    assert whole.counter_wh is not None
    np.testing.assert_allclose(joined.counter_wh, whole.counter_wh)
