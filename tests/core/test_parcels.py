"""A trace that was packed and unpacked is the same trace, bit by bit."""

import pickle

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from core.parcels import pack_column, packed, unpack_column, unpacked
from core.traces import F64, Clock, Trace
from tests.core.benches import alike, trace


def same_bits(one: F64, other: F64) -> bool:
    return one.dtype == other.dtype and bool(np.array_equal(one.view(np.int64), other.view(np.int64)))


@given(arrays(np.float64, st.integers(0, 40), elements=st.floats(width=64)), st.integers(1, 2))
def test_any_column_comes_back(values: F64, steps: int) -> None:
    assert same_bits(unpack_column(pack_column(values, steps)), values)


@given(
    st.lists(st.integers(-(10**12), 10**12), max_size=40),
    st.integers(0, 7),
    st.sampled_from([1.0, 1000.0, 1 / 3.6]),
)
def test_decimal_numbers_come_back(whole: list[int], digits: int, factor: float) -> None:
    values = np.array(whole, dtype=np.float64) / 10.0**digits * factor
    assert same_bits(unpack_column(pack_column(values)), values)


@pytest.mark.parametrize("odd", [np.nan, -0.0, np.inf, 1e300, 5e-324, 0.1 + 0.2])
def test_one_odd_value_far_down_changes_no_other(odd: float) -> None:
    values = np.round(np.arange(5000) * 0.1, 1)
    values[4321] = odd
    assert same_bits(unpack_column(pack_column(values)), values)


def test_a_whole_trace_comes_back_and_is_small() -> None:
    made = trace(alike(3, level_w=60.0, seed=1), seed=1)
    counter = np.round(np.cumsum(made.power_w) / 3600.0 / 1000.0, 3) * 1000.0
    given_ = Trace.of(
        made.time_s, np.round(made.power_w, 1), made.kind, counter, key="k", clock=Clock("local", 1.5e9),
        temperatures_c={"bed": np.where(made.time_s < 100, np.nan, 60.5)},
    )  # fmt: skip
    parcel = packed(given_)
    back = unpacked(pickle.loads(pickle.dumps(parcel)))
    assert back == given_
    assert same_bits(back.time_s, given_.time_s)
    assert same_bits(back.power_w, given_.power_w)
    assert back.counter_wh is not None
    assert given_.counter_wh is not None
    assert same_bits(back.counter_wh, given_.counter_wh)
    assert same_bits(back.temperatures_c["bed"], given_.temperatures_c["bed"])
    for name in ("kind", "counter_step_wh", "counter_breaks_s", "resolution_w", "median_s", "p95_s", "max_s",
                 "gaps", "clock"):  # fmt: skip
        assert getattr(back, name) == getattr(given_, name)
    assert not back.power_w.flags.writeable
    assert len(pickle.dumps(parcel)) < 0.3 * len(pickle.dumps(given_))
