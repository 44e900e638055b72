"""Tests between machines."""

import numpy as np
import pytest

from core.stats import holm, range_beyond, repeats_p, t_interval, welch


def test_holm_keeps_order_and_never_falls() -> None:
    adjusted = holm([0.04, 0.001, 0.03, 0.5])
    assert adjusted == pytest.approx((0.09, 0.004, 0.09, 0.5))


def test_one_value_has_no_spread() -> None:
    with pytest.raises(ValueError, match="two values"):
        t_interval([1.0])


def test_groups_without_spread() -> None:
    same = welch([1.0, 1.0], [1.0, 1.0])
    apart = welch([1.0, 1.0], [2.0, 2.0])
    assert not same.is_shown
    assert apart.is_shown


@pytest.mark.parametrize("df", [1.0, 2.7, 8.0, 120.0])
@pytest.mark.parametrize("groups", [3, 6, 20])
def test_the_quick_studentized_range_is_that_of_scipy(groups: int, df: float) -> None:
    from scipy.stats import studentized_range

    for q in (0.5, 2.0, 4.0, 9.0, 30.0):
        theirs = float(studentized_range.sf(q, groups, df))
        assert range_beyond(q, groups, df) == pytest.approx(theirs, abs=1e-4)


def test_repeats_of_two_machines_are_tested_by_welch_and_of_more_by_games_and_howell() -> None:
    from scipy.stats import tukey_hsd

    rng = np.random.default_rng(2)
    groups = [tuple(rng.normal(m, s, n).tolist()) for m, s, n in ((1, 1, 5), (2, 3, 7), (4, 0.5, 4))]
    theirs = tukey_hsd(*groups, equal_var=False).pvalue
    for i, k in ((0, 1), (0, 2), (1, 2)):
        assert repeats_p(groups[i], groups[k], 2) == welch(groups[i], groups[k]).p
        assert repeats_p(groups[i], groups[k], 3) == pytest.approx(theirs[i, k], abs=1e-4)
        assert repeats_p(groups[i], groups[k], 3) > repeats_p(groups[i], groups[k], 2)


def test_repeats_without_any_spread_are_certain() -> None:
    assert repeats_p((1.0, 1.0), (2.0, 2.0), 3) == 0.0
    assert repeats_p((1.0, 1.0), (1.0, 1.0), 3) == 1.0


def test_many_machines_that_do_not_differ_are_called_different_one_time_in_twenty() -> None:
    rng = np.random.default_rng(8)
    shown = 0
    for _ in range(300):
        groups = [tuple(rng.normal(100, s, 4)) for s in (1, 1, 3, 2, 1)]
        pairs = [(a, b) for i, a in enumerate(groups) for b in groups[i + 1 :]]
        shown += any(repeats_p(a, b, 5) < 0.05 for a, b in pairs)
    assert 3 <= shown <= 27
