"""Stamps of whole seconds are read without dividing them; a fraction further down must change nothing."""

import numpy as np
import pytest

from core.logs import read_bytes
from core.logs.source import BLOCK

#: bytes of the rows of whole seconds, so that what follows stands in another block
_FIRST = BLOCK + BLOCK // 2


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
