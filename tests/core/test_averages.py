"""Averages of one column are NumPy's own to the last bit."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from core import averages
from core.traces import F64

watts = st.floats(-1e4, 1e4, allow_subnormal=False) | st.integers(0, 3000).map(lambda tenths: tenths / 10)
columns = arrays(np.float64, st.integers(1, 200), elements=watts)
percents = st.sampled_from([1, 2, 3, 5, 10, 15, 50, 60, 95, 98, 99, 99.5]) | st.floats(0, 100)


@settings(max_examples=40)
@given(columns)
def test_mean_variance_and_median_are_those_of_numpy(values: F64) -> None:
    assert averages.average(values) == np.mean(values)
    assert averages.variance(values) == np.var(values)
    assert averages.median(values) == np.median(values)
    assert averages.median_of_ordered(np.sort(values)) == np.median(values)


@settings(max_examples=40)
@given(columns, percents)
def test_percentiles_are_those_of_numpy(values: F64, percent: float) -> None:
    assert averages.percentile(values, percent) == np.percentile(values, percent)
    assert averages.percentile_of_ordered(np.sort(values), percent) == np.percentile(values, percent)


@settings(max_examples=40)
@given(columns, watts)
def test_the_part_of_rows_is_the_mean_of_yes_and_no(values: F64, limit: float) -> None:
    assert averages.part_of(values > limit) == np.mean(values > limit)


@settings(max_examples=40)
@given(columns, columns.map(np.unique).filter(lambda edges: edges.size > 1))
def test_counts_are_those_of_a_histogram(values: F64, edges: F64) -> None:
    counts = averages.counts_between(np.sort(values), edges)
    assert counts.tolist() == np.histogram(values, edges)[0].tolist()


def test_a_long_column_gives_the_same_too() -> None:
    values = np.random.default_rng(1).normal(100, 30, 70_001)
    assert averages.average(values) == np.mean(values)
    assert averages.variance(values) == np.var(values)
    assert averages.percentile(values, 99.5) == np.percentile(values, 99.5)
    assert averages.median(values[:-1]) == np.median(values[:-1])


def test_nothing_has_no_median() -> None:
    with pytest.raises((IndexError, ValueError)):
        averages.median(np.empty(0))
