"""Groups that do not spread at all, as typed readings of a display do that counts in whole steps."""

import math

import numpy as np
import pytest

from core.stats import ALPHA, t_interval, welch


def test_equal_groups_show_no_difference_and_other_ones_show_theirs() -> None:
    same = welch([5.0, 5.0, 5.0], [5.0, 5.0])
    assert (same.difference, same.low, same.high) == (0.0, 0.0, 0.0)
    assert (same.statistic, same.p, same.df) == (0.0, 1.0, 3.0)
    apart = welch([5.0, 5.0, 5.0], [6.0, 6.0])
    assert (apart.low, apart.high, apart.p) == (apart.difference, apart.difference, 0.0)
    assert abs(apart.difference) == 1.0
    assert apart.statistic == math.copysign(math.inf, apart.difference)


def test_an_interval_is_where_the_test_turns() -> None:
    """Shifted to the end of its interval, a difference has p = 0.05 against none: the two say one thing."""
    first, second = np.array([10.0, 11.0, 12.5, 9.0]), np.array([13.0, 14.0, 12.0])
    found = welch(first.tolist(), second.tolist())
    sign = 1.0 if found.difference == pytest.approx(second.mean() - first.mean()) else -1.0
    for end in (found.low, found.high):
        assert welch((first + sign * end).tolist(), second.tolist()).p == pytest.approx(ALPHA, rel=1e-6)


def test_numbers_may_be_whole() -> None:
    assert welch([1, 2, 3], [2, 3, 4]).p == welch([1.0, 2.0, 3.0], [2.0, 3.0, 4.0]).p
    assert t_interval([1, 2, 3]).df == 2
