"""Rows put in order of time: what is moved is told, and what need not be moved stays."""

import numpy as np
import pytest

from core.logs import order, read_bytes
from core.logs.order import spread

HEAD = "time,power_w\n"


def test_rows_out_of_order_keep_the_times_that_they_state() -> None:
    seconds = [3, 1, 2, 5, 4, 6, 7, 9, 8, 10]
    text = HEAD + "".join(f"2025-06-23T09:36:{s:02d}Z,{50 + s}\n" for s in seconds)
    (reading,) = read_bytes(text.encode(), "log.csv").readings
    assert reading.trace.time_s.tolist() == list(range(10))
    assert reading.trace.clock.start_s % 60 == 1
    assert reading.trace.power_w.tolist() == [50 + s for s in range(1, 11)]
    assert [p.code for p in reading.problems] == ["log.unsorted"]


@pytest.mark.parametrize("block", [1, 7, 100, 1000])
def test_spreading_by_blocks_is_spreading_the_whole(block: int, monkeypatch: pytest.MonkeyPatch) -> None:
    rng = np.random.default_rng(20250623)
    stamps_s = np.floor(np.cumsum(rng.exponential(9.0, 900)) / 60) * 60
    stamps_s[500:] += 86_400.0
    whole = spread(stamps_s, 60.0)
    monkeypatch.setattr(order, "_BLOCK", block)
    np.testing.assert_array_equal(spread(stamps_s, 60.0), whole)
    assert (np.diff(whole) > 0).all()
    assert ((whole >= stamps_s) & (whole < stamps_s + 60)).all()
