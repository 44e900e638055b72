"""Statistics against NIST reference data and published tests.

The NIST Statistical Reference Datasets are read from the files that scipy carries (certified values at their
top).
"""

import re
from collections.abc import Sequence
from pathlib import Path

import numpy as np
import pytest

from core.plan.power import Spread, power, runs_for_any, runs_needed, student_power
from core.stats import ALPHA, range_beyond, t_interval, welch
from core.traces import F64


def strd(folder: str, name: str) -> F64:
    """Data of one NIST StRD file: everything from line 61 on."""
    import scipy.stats

    path = Path(scipy.stats.__file__).parent / "tests" / "data" / folder / f"{name}.dat"
    if not path.exists():
        pytest.skip("this scipy was installed without its reference data")
    lines = path.read_text("utf-8").splitlines()[60:]
    return np.array([[float(v) for v in re.split(r"\s+", line.strip())] for line in lines if line.strip()])


def one_way(groups: Sequence[F64]) -> tuple[float, float, float]:
    """Sums of squares between and within groups, and F, from the means and spreads that the program finds."""
    found = [t_interval(group.tolist()) for group in groups]
    grand = float(np.concatenate(groups).mean())
    between = sum(len(g) * (f.mean - grand) ** 2 for g, f in zip(groups, found, strict=True))
    within = sum(f.df * f.standard_deviation**2 for f in found)
    return between, within, between / (len(groups) - 1) / (within / sum(f.df for f in found))


def by_group(data: F64) -> list[F64]:
    """Column 0 is the group, column 1 the value."""
    return [data[data[:, 0] == number, 1] for number in np.unique(data[:, 0])]


def test_sirstv() -> None:
    # NIST StRD, analysis of variance, SiRstv: certified values
    groups = by_group(strd("nist_anova", "SiRstv"))
    between, within, f = one_way(groups)
    assert between == pytest.approx(5.11462616e-2, rel=1e-6)
    assert within == pytest.approx(2.1663656e-1, rel=1e-6)
    assert f == pytest.approx(1.18046237440255, rel=1e-6)
    assert between / (between + within) == pytest.approx(1.90999039051129e-1, rel=1e-6)
    assert np.sqrt(within / 20) == pytest.approx(1.04076068334656e-1, rel=1e-6)


def test_atmwtag() -> None:
    # NIST StRD, analysis of variance, AtmWtAg (7 constant leading digits): certified values, data less its
    # smallest
    data = strd("nist_anova", "AtmWtAg")
    data[:, 1] -= data[:, 1].min()
    groups = by_group(data)
    between, within, f = one_way(groups)
    assert between == pytest.approx(3.638341875e-9, rel=1e-6)
    assert within == pytest.approx(1.04951729166667e-8, rel=1e-6)
    assert f == pytest.approx(1.59467335677930e1, rel=1e-6)
    assert between / (between + within) == pytest.approx(2.57426544538321e-1, rel=1e-6)
    assert np.sqrt(within / 46) == pytest.approx(1.51048314446410e-5, rel=1e-6)
    # two groups of one size: F is the square of Welch's t
    assert welch(*(g.tolist() for g in groups)).statistic ** 2 == pytest.approx(1.59467335677930e1, rel=1e-6)


# NIST/SEMATECH e-Handbook of Statistical Methods, 7.4.7.1; read in scipy's own test of this procedure
HANDBOOK = (
    (6.9, 5.4, 5.8, 4.6, 4.0),
    (8.3, 6.8, 7.8, 9.2, 6.5),
    (8.0, 10.5, 8.1, 6.9, 9.3),
    (5.8, 3.8, 6.1, 5.6, 6.2),
)


def test_tukey() -> None:
    # the intervals that the handbook prints for the differences, 95 % for all together: where the chance of
    # the range that the program finds falls to 5 %
    found = [t_interval(group) for group in HANDBOOK]
    u = np.sqrt(np.mean([f.standard_deviation**2 for f in found]) / 5)
    published = {
        (2, 1): (0.29, 4.47),
        (3, 1): (1.13, 5.31),
        (1, 4): (-2.25, 1.93),
        (2, 3): (-2.93, 1.25),
        (2, 4): (0.13, 4.31),
        (3, 4): (0.97, 5.15),
    }
    alike = set()
    for (i, k), (low, high) in published.items():
        difference = found[i - 1].mean - found[k - 1].mean
        assert difference == pytest.approx((low + high) / 2, abs=1e-2)
        # the studentized range of 4 groups and 16 degrees of freedom: 4.05
        assert (high - low) / 2 / u == pytest.approx(4.046093, abs=1e-2)
        assert range_beyond((high - low) / 2 / u, 4, 16.0) == pytest.approx(ALPHA, abs=5e-4)
        if range_beyond(abs(difference) / u, 4, 16.0) >= ALPHA:
            alike.add((i, k))
    assert alike == {(1, 4), (2, 3)}
    assert range_beyond(4.046093, 4, 16.0) == pytest.approx(ALPHA, abs=1e-5)


def test_welch_sleep() -> None:
    # Student (1908), sleep data; output in the documentation of R's t.test (from memory)
    first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0]
    second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4]
    test = welch(first, second)
    assert test.statistic == pytest.approx(-1.8608, abs=5e-5)
    assert test.df == pytest.approx(17.776, abs=5e-4)
    assert test.p == pytest.approx(0.07939, abs=5e-6)
    assert (test.low, test.high) == pytest.approx((-3.3654832, 0.2054832), abs=5e-8)


def test_welch_small() -> None:
    # read in the tests of statsmodels, checked there against R
    test = welch([1, 2, 3], [1.1, 2.9, 4.2])
    assert test.statistic == pytest.approx(-0.68649512735572582, abs=1e-12)
    assert test.p == pytest.approx(0.53619490753126731, abs=1e-12)


@pytest.mark.parametrize(("effect", "runs"), [(0.2, 393), (0.5, 64), (0.8, 26), (1.0, 17), (1.2, 12)])
def test_repeats_of_two_groups(effect: float, runs: int) -> None:
    # J. Cohen, Statistical Power Analysis (1988), tables 2.3; rounding "at least" gives 394 for 0.2
    by_student = next(n for n in range(2, 500) if student_power(effect, n) >= 0.80)
    assert abs(by_student - runs) <= 1
    # Welch's test estimates its degrees of freedom and needs as many, or one more
    needed = runs_needed(effect, Spread(1.0, 1.0))
    assert needed is not None
    assert by_student <= needed <= by_student + 1
    assert abs(needed - runs) <= 1


def test_power_of_two_groups() -> None:
    # read in the tests of statsmodels (R package pwr)
    assert student_power(1.0, 30) == pytest.approx(0.967708258242517, abs=1e-9)
    assert power(1.0, Spread(1.0, 1.0), 30, 30) == pytest.approx(0.967708, abs=2e-4)


def test_repeats_of_four_groups() -> None:
    # J. Cohen, "A power primer", Psychological Bulletin 112 (1992), table 2 (from memory): 18 in each of
    # four groups at f = 0.40; unrounded 18.04
    needed = runs_for_any(0.40, 4)
    assert needed is not None
    assert abs(needed - 18) <= 1


def test_interval_of_three_repeats() -> None:
    # JCGM 100:2008, Table G.2: t95(2) = 4.303
    interval = t_interval([10.0, 12.0, 11.0])
    assert interval.half_width == pytest.approx(4.303 * 1.0 / np.sqrt(3), abs=1e-3)
