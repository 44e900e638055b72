"""Stamps of whole seconds are read without dividing them; a fraction further down must change nothing."""

import numpy as np
import pyarrow as pa
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.logs import read_bytes
from core.logs.even_stamps import WIDTH, whole_seconds
from core.logs.source import BLOCK

#: bytes of the rows of whole seconds, so that what follows stands in another block
_FIRST = BLOCK + BLOCK // 2
#: of the years 1 and 9999, a little inside [s since 1970]
_FIRST_TO_LAST_S = (-62_135_596_800, 253_402_300_000)


@pytest.mark.parametrize("zone", ["", "Z"])
@pytest.mark.parametrize("odd", ["", "this is no row\n"])
def test_fractions_far_below_whole_seconds(zone: str, odd: str) -> None:
    whole = np.datetime64("2025-03-01T00:00:00") + np.arange(_FIRST // 25).astype("timedelta64[s]")
    fine = whole[-1] + np.arange(1, 2000).astype("timedelta64[s]") + np.timedelta64(250, "ms")
    lines = [f"{t}{zone},{60 + i % 7}.5\n" for i, t in enumerate([*whole, *fine])]
    text = "time,power (W)\n" + "".join(lines[:-1000]) + odd + "".join(lines[-1000:])
    (reading,) = read_bytes(text.encode(), "log.csv").readings
    assert reading.trace is not None
    assert reading.rows_read == whole.size + fine.size
    assert reading.rows_refused == bool(odd)
    expected = np.concatenate(
        [(whole - whole[0]).astype(float), (fine - whole[0]).astype("timedelta64[ms]").astype(float) / 1000]
    )
    assert np.array_equal(reading.trace.time_s, expected)


@pytest.mark.parametrize("missing", ["", "unavailable", "NaN"])
def test_a_missing_power_far_below_full_rows(missing: str) -> None:
    count = _FIRST // 25
    stamps = np.datetime64("2025-03-01T00:00:00") + np.arange(count).astype("timedelta64[s]")
    lines = [f"{t},{60 + i % 7}.5\n" for i, t in enumerate(stamps)]
    lines[-10] = f"{stamps[-10]},{missing}\n"
    (reading,) = read_bytes(("time,power (W)\n" + "".join(lines)).encode(), "log.csv").readings
    assert reading.trace is not None
    assert (reading.rows_read, reading.rows_refused) == (count - 1, 0)
    assert reading.trace.power_w.size == count - 1


@given(
    st.lists(st.integers(*_FIRST_TO_LAST_S), min_size=1, max_size=60),
    st.integers(1, 40),
    st.sampled_from(" T"),
    st.booleans(),
)
def test_stamps_of_one_width_as_arrow_reads_them(
    starts_s: list[int], repeats: int, between: str, is_utc: bool
) -> None:
    stamps = np.repeat(np.array(starts_s), repeats) + np.tile(np.arange(repeats), len(starts_s))
    written = np.datetime_as_string(stamps.astype("datetime64[s]")).tolist()
    texts = [f"{t.replace('T', between)}{'Z' * is_utc}" for t in written]
    width = WIDTH + is_utc
    found = whole_seconds(pa.array([t.encode() for t in texts], pa.binary(width)), is_utc)
    if found is None:  # days that change too often are left to Arrow
        assert len(starts_s) > 2
        return
    expected = pa.array(texts).cast(pa.timestamp("s", "UTC" if is_utc else None))
    assert found.type == expected.type
    assert found.equals(expected)


@given(st.integers(0, WIDTH - 1), st.characters(min_codepoint=0, max_codepoint=127), st.integers(0, 5))
def test_a_stamp_that_is_none_is_never_taken_for_one(place: int, letter: str, row: int) -> None:
    good = "2024-02-28 23:59:58"
    texts = [good] * 6
    texts[row] = good[:place] + letter + good[place + 1 :]
    found = whole_seconds(pa.array([t.encode() for t in texts], pa.binary(WIDTH)), False)
    try:
        expected = pa.array(texts).cast(pa.timestamp("s"))
    except pa.ArrowInvalid:
        assert found is None
    else:
        assert found is not None
        assert found.equals(expected)


def test_a_slice_of_stamps_and_missing_ones() -> None:
    texts = [f"2024-02-2{d} 00:00:0{s}".encode() for d in (7, 8, 9) for s in range(9)]
    whole = pa.array(texts, pa.binary(WIDTH))
    assert whole_seconds(whole[9:20], False).equals(whole_seconds(whole, False)[9:20])
    assert whole_seconds(pa.array([texts[0], None], pa.binary(WIDTH)), False) is None
    assert whole_seconds(whole[:0], False) is None
