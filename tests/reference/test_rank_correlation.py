"""Exact p of Spearman's rank correlation against a published table of its critical values.

Source: table "Upper Critical Values of Spearman's Rank Correlation Coefficient Rs", whose note says that each
gives the significance level as close as possible to the nominal one without exceeding it; read in a stored
copy of a two-page hand-out with that title. For n = 4 to 9 it agrees with P. H. Ramsey, "Critical values for
Spearman's rank order correlation", Journal of Educational Statistics 14 (1989) (from memory).
"""

import itertools

import numpy as np
import pytest
from scipy import stats

from core.properties.rank_correlation import group_difference, ranks_of, spearman

LEVELS = (0.10, 0.05, 0.025, 0.01, 0.005, 0.001)
CRITICAL = {
    4: (1.000, 1.000, None, None, None, None),
    5: (0.800, 0.900, 1.000, 1.000, None, None),
    6: (0.657, 0.829, 0.886, 0.943, 1.000, None),
    7: (0.571, 0.714, 0.786, 0.893, 0.929, 1.000),
    8: (0.524, 0.643, 0.738, 0.833, 0.881, 0.952),
    9: (0.483, 0.600, 0.700, 0.783, 0.833, 0.917),
}


def order_with(n: int, rho: float) -> tuple[int, ...]:
    """Some order of 1..n with this coefficient to three digits."""
    wanted = round((1 - rho) * n * (n * n - 1) / 6)
    for order in itertools.permutations(range(1, n + 1)):
        if sum((a - b) ** 2 for a, b in enumerate(order, start=1)) == wanted:
            return order
    raise AssertionError(f"no order of {n} has {rho}")


@pytest.mark.parametrize("n", CRITICAL)
def test_p_falls_below_each_level_at_the_published_value_and_not_before(n: int) -> None:
    step = 12 / (n * (n * n - 1))  # the next smaller coefficient: squared differences change by two
    for level, critical in zip(LEVELS, CRITICAL[n], strict=True):
        if critical is None:
            best = spearman(range(n), range(n))
            assert best is not None
            assert best.p / 2 > level
            continue
        found = spearman(range(n), order_with(n, critical))
        assert found is not None
        assert found.rho == pytest.approx(critical, abs=5e-4)
        assert found.is_exact
        assert found.p / 2 <= level  # the table is of one side
        if critical - step > 0:
            before = spearman(range(n), order_with(n, found.rho - step))
            assert before is not None
            assert before.p / 2 > level


def test_the_critical_order_of_five_is_one_of_a_hundred_and_twenty_each_way() -> None:
    found = spearman([1, 2, 3, 4, 5], [1, 2, 3, 4, 5])
    assert found is not None
    assert found.p == pytest.approx(2 / 120, rel=1e-12)
    assert found.least_p == found.p


def test_ties_count_every_order_of_the_tied_rows_as_scipy_s_own_permutations_do() -> None:
    a, b = [1.0, 2.0, 2.0, 3.0, 4.0, 4.0], [10.0, 12.0, 11.0, 11.0, 15.0, 14.0]

    def rho(values: np.ndarray) -> float:
        return float(stats.spearmanr(values, b).statistic)

    theirs = stats.permutation_test(
        (a,), rho, permutation_type="pairings", n_resamples=10_000, alternative="two-sided"
    )
    found = spearman(a, b)
    assert found is not None
    assert found.rho == pytest.approx(float(theirs.statistic), abs=1e-12)
    # an uneven distribution: as far from none on either side, not twice the smaller side
    far = abs(theirs.null_distribution) >= abs(theirs.statistic) - 1e-9
    assert found.p == pytest.approx(float(np.mean(far)), rel=1e-12)


def test_more_values_are_tested_by_t_as_scipy_does() -> None:
    rng = np.random.default_rng(5)
    a = rng.standard_normal(24)
    b = a + 2 * rng.standard_normal(24)
    theirs = stats.spearmanr(a, b)
    found = spearman(a.tolist(), b.tolist())
    assert found is not None
    assert not found.is_exact
    assert (found.rho, found.p) == pytest.approx((theirs.statistic, theirs.pvalue), rel=1e-9)


def test_ranks_are_scipy_s_ranks() -> None:
    values = [3.0, 1.0, 3.0, 3.0, -2.0, 8.0, 8.0]
    assert ranks_of(values).tolist() == stats.rankdata(values).tolist()


def test_two_groups_against_scipy_s_permutations() -> None:
    one, other = [21.0, 24.5, 25.5], [30.0, 24.0, 33.0, 35.0]
    theirs = stats.permutation_test(
        (one, other), lambda a, b: np.mean(a) - np.mean(b), permutation_type="independent", n_resamples=10_000
    )
    found = group_difference(one, other)
    assert found is not None
    assert found.ways == 35
    assert found.difference == pytest.approx(float(theirs.statistic))
    # both sides counted at once, and twice the smaller side, differ for unlike groups
    assert found.p == pytest.approx(
        float(np.mean(abs(theirs.null_distribution) >= abs(theirs.statistic) - 1e-9))
    )


def test_what_cannot_be_ranked_is_no_correlation() -> None:
    assert spearman([1, 1, 1, 1], [1, 2, 3, 4]) is None
    assert spearman([1, 2], [1, 2]) is None
    assert group_difference([], [1.0]) is None
    with pytest.raises(ValueError, match="pair"):
        spearman([1], [1, 2])


def test_by_chance_alone_a_link_is_claimed_in_no_more_than_five_of_a_hundred() -> None:
    rng = np.random.default_rng(17)
    for n in (5, 7):
        claimed = 0
        for _ in range(400):
            found = spearman(rng.standard_normal(n).tolist(), rng.standard_normal(n).tolist())
            assert found is not None
            claimed += found.p < 0.05
        assert claimed <= 400 * 0.05 + 3 * (400 * 0.05 * 0.95) ** 0.5
