"""How large a difference so many runs show, and how many runs a difference takes.

Theory. A difference counts as shown where two tests say so (`core.results.compare`): that of the repeats
alone (Welch's [1]_, or Games and Howell's [2]_ where machines are more than two), and that of the ratio with
what the meters leave open, adjusted for the number of pairs. Each asks that the difference be more than a
limit, which is worked out from the spreads as the runs happen to show them; the larger limit decides. The
difference found scatters by the repeats and by the meters' gains, independently of the spreads found, so the
chance of passing both is the mean, over the chi-squared distributions of the two spreads found, of a normal
probability: a double integral, done on fixed points. The usual noncentral t [3]_ takes the degrees of freedom
for known, which for three runs promises 0.80 where Welch's test gives 0.67; here it gives the first guess.
The Holm adjustment is taken at its hardest, for the first of all pairs.

More runs lessen the repeats' part alone. What is left is the floor: the difference that is shown four times
in five however many runs are made.

References
----------
.. [1] B. L. Welch, Biometrika 34 (1947) 28-35.
.. [2] P. A. Games, J. F. Howell, Journal of Educational Statistics 1 (1976) 113-125.
.. [3] J. Cohen, *Statistical Power Analysis for the Behavioral Sciences*, 2nd ed., 1988, chapters 2, 8, 12.
"""

import math
from collections.abc import Callable
from functools import lru_cache

import numpy as np
from attrs import frozen

from core.stats import ALPHA, MOST_RUNS, POWER, range_beyond
from core.traces import F64

#: standard normal quantiles of the level (two-sided) and of the power
NORMAL_LEVEL, NORMAL_POWER = 1.959963984540054, 0.8416212335729143
#: a difference of so many standard uncertainties is shown for certain
_CERTAIN = 30.0
#: points of each of the two integrals over spreads found; places at which critical values are worked out
_POINTS, _NODES = 32, 41
_MOST_DF = 1e6


@frozen
class Spread:
    """What is known of a pair of machines, as shares of their energy.

    Parameters
    ----------
    first, other : float
        Standard deviations between runs of each.
    shared_u : float
        Standard uncertainty of their ratio that no repeat lessens.
    groups, pairs : int
        Machines that are compared, these two among them, and pairs of them that are tested.
    """

    first: float
    other: float
    shared_u: float = 0.0
    groups: int = 2
    pairs: int = 1


def power(difference: float, spread: Spread, runs: int, other_runs: int) -> float:
    """Chance that a difference is shown by so many runs of each.

    Parameters
    ----------
    difference : float
        As a share of the energy.
    spread : Spread
    runs, other_runs : int
        At least 2.

    Examples
    --------
    >>> round(power(1.0, Spread(1.0, 1.0), 17, 17), 3)
    0.806
    """
    return float(_power(np.array([abs(difference)]), spread, runs, other_runs)[0])


def smallest_shown(spread: Spread, runs: int, other_runs: int) -> float:
    """The difference that is shown four times in five by so many runs of each.

    Examples
    --------
    >>> round(smallest_shown(Spread(1.0, 1.0), 17, 17), 3)
    0.993
    """
    u = math.hypot(_u_repeats(spread, runs, other_runs), spread.shared_u)
    if u <= 0:
        return 0.0
    low, high = 0.0, _CERTAIN * u
    while _power(np.array([high]), spread, runs, other_runs)[0] < POWER:
        low, high = high, 4 * high  # few degrees of freedom and many machines
    # twenty points at a time: six rounds give eight digits
    for _ in range(6):
        at = np.linspace(low, high, 20)
        first = int(np.argmax(_power(at, spread, runs, other_runs) >= POWER))
        low, high = float(at[max(first - 1, 0)]), float(at[first])
    return high


def floor(spread: Spread) -> float:
    """The difference that is shown four times in five with runs without end.

    Examples
    --------
    >>> round(floor(Spread(1.0, 1.0, shared_u=0.01)), 4)
    0.028
    """
    from scipy.special import ndtri

    level = NORMAL_LEVEL if spread.pairs < 2 else float(-ndtri(ALPHA / 2 / spread.pairs))
    return (level + NORMAL_POWER) * spread.shared_u


@lru_cache(maxsize=8192)
def runs_needed(
    difference: float, spread: Spread, so_far: tuple[int, int] = (0, 0), most: int = MOST_RUNS
) -> int | None:
    """How many more runs of each show a difference four times in five.

    Parameters
    ----------
    difference : float
        As a share of the energy.
    spread : Spread
    so_far : tuple of int
        Runs that there are of each.
    most : int
        More runs than this are too many.

    Returns
    -------
    int or None
        Beside those that there are; None where no number of runs shows it, or it would take too many.

    Examples
    --------
    >>> runs_needed(1.0, Spread(1.0, 1.0)), runs_needed(1.0, Spread(1.0, 1.0), (10, 10))
    (17, 7)
    """
    if abs(difference) <= floor(spread) or difference == 0:
        return None
    first, other = so_far
    least = max(2 - first, 2 - other, 0)

    def is_enough(more: int) -> bool:
        return power(difference, spread, first + more, other + more) >= POWER

    return fewest(is_enough, least, most, _guess(abs(difference), spread) - min(so_far))


def _guess(difference: float, spread: Spread) -> int:
    """Runs by the normal approximation, which are near enough to begin the search with."""
    left = (difference / (floor(Spread(0.0, 0.0, 1.0, spread.groups, spread.pairs)))) ** 2
    variance = max(left - spread.shared_u**2, 1e-12)
    return min(math.ceil((spread.first**2 + spread.other**2) / variance), 2 * MOST_RUNS)


def runs_for_any(effect: float, groups: int) -> int | None:
    """Runs of each machine that show, four times in five, that not all are alike (analysis of variance).

    Parameters
    ----------
    effect : float
        Cohen's f: standard deviation of the machines' means over that between runs.
    groups : int
        Machines, at least 2.

    Examples
    --------
    >>> runs_for_any(0.40, 4)
    19
    """
    from statsmodels.stats.power import FTestAnovaPower

    if effect <= 0:
        return None
    test = FTestAnovaPower()

    def is_enough(runs: int) -> bool:
        return float(test.power(min(effect, 10.0), runs * groups, ALPHA, groups)) >= POWER

    return fewest(is_enough, 2, MOST_RUNS, 2)


def fewest(is_enough: Callable[[int], bool], least: int, most: int, guess: int) -> int | None:
    """The smallest number from `least` to `most` that is enough, sought from a guess in growing steps.

    Parameters
    ----------
    is_enough : callable
        True of every number from some one on.
    least, most : int
    guess : int
        Where to begin.

    Returns
    -------
    int or None
        None where none is enough.
    """
    high, step = min(max(guess, least), most), 1
    while not is_enough(high):
        if high >= most:
            return None
        high, step = min(high + step, most), 2 * step
    low, step = high - 1, 1
    while low >= least and is_enough(low):
        high, low, step = low, low - step, 2 * step
    low = max(low, least - 1)
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if is_enough(middle) else (middle, high)
    return high


def spread_interval(spread: float, df: float) -> tuple[float, float]:
    """95 % interval of a standard deviation that was found with `df` degrees of freedom (chi squared).

    Examples
    --------
    >>> low, high = spread_interval(1.0, 9)
    >>> round(low, 3), round(high, 3)
    (0.688, 1.826)
    """
    from scipy.special import chdtri

    return spread * math.sqrt(df / chdtri(df, ALPHA / 2)), spread * math.sqrt(df / chdtri(df, 1 - ALPHA / 2))


def student_power(effect: float, runs: int) -> float:
    """Chance that Student's test of two groups with one spread shows an effect.

    Parameters
    ----------
    effect : float
        Difference over the standard deviation between runs (Cohen's d).
    runs : int
        Of each group, at least 2.

    Examples
    --------
    >>> round(student_power(1.0, 30), 6)
    0.967708
    """
    from scipy.special import nctdtr, stdtrit

    df = 2.0 * runs - 2
    # far out the distribution's own code gives up; nothing is left inside there
    far = min(abs(effect) * math.sqrt(runs / 2), _CERTAIN)
    limit = float(stdtrit(df, 1 - ALPHA / 2))
    return 1.0 - float(nctdtr(df, far, limit) - nctdtr(df, far, -limit))


def _u_repeats(spread: Spread, runs: int, other_runs: int) -> float:
    """Standard uncertainty of the difference by the repeats."""
    if runs < 2 or other_runs < 2:
        raise ValueError("a test needs two runs of each machine")
    return math.sqrt(spread.first**2 / runs + spread.other**2 / other_runs)


def _power(differences: F64, spread: Spread, runs: int, other_runs: int) -> F64:
    """Chance of each difference to be shown."""
    from scipy.special import ndtr

    u = math.hypot(_u_repeats(spread, runs, other_runs), spread.shared_u)
    if u <= 0:
        return np.where(differences > 0, 1.0, 0.0)
    limits, weights = _limits(spread, runs, other_runs)
    far = limits[None, :] / u
    near = differences[:, None] / u
    return np.asarray((ndtr(near - far) + ndtr(-near - far)) @ weights)


@lru_cache(maxsize=512)
def _limits(spread: Spread, runs: int, other_runs: int) -> tuple[F64, F64]:
    """What a difference must be more than, for spreads as they may be found, with the weight of each."""
    first, first_weight = _found_variances(runs - 1)
    other, other_weight = _found_variances(other_runs - 1)
    a = (first * spread.first**2 / runs)[:, None]
    b = (other * spread.other**2 / other_runs)[None, :]
    repeats, shared = a + b, spread.shared_u**2
    lost = a**2 / (runs - 1) + b**2 / (other_runs - 1)
    with np.errstate(divide="ignore", invalid="ignore"):
        df = np.where(lost > 0, repeats**2 / lost, runs + other_runs - 2.0)
        ratio_df = np.where(lost > 0, (repeats + shared) ** 2 / lost, _MOST_DF)
    by_repeats = _critical(spread.groups, 1, df) * np.sqrt(repeats)
    by_ratio = _critical(2, spread.pairs, ratio_df) * np.sqrt(repeats + shared)
    return np.maximum(by_repeats, by_ratio).ravel(), np.outer(first_weight, other_weight).ravel()


@lru_cache(maxsize=256)
def _found_variances(df: int) -> tuple[F64, F64]:
    """Variances as `df` degrees of freedom find them, over the true one, with the weight of each."""
    from scipy.special import gammaincinv

    points, weights = np.polynomial.legendre.leggauss(_POINTS)
    at = (points + 1) / 2
    # the square keeps points near 0, where the variance of few degrees of freedom changes most
    return gammaincinv(df / 2, at**2) * 2 / df, weights * at


def _critical(groups: int, pairs: int, df: F64) -> F64:
    """The difference over its standard uncertainty that a test asks for."""
    at, logs = _table(groups, pairs)
    return np.asarray(np.exp(np.interp(1 / np.clip(df, 1.0, _MOST_DF), at, logs)))


@lru_cache(maxsize=64)
def _table(groups: int, pairs: int) -> tuple[F64, F64]:
    """Logarithms of the critical values against 1 / df: smooth, so that they are worked out at few places."""
    from scipy.special import stdtrit

    at = np.linspace(0.0, 1.0, _NODES) ** 2
    dfs = 1 / np.maximum(at, 1 / _MOST_DF)
    if groups <= 2:
        return at, np.log(stdtrit(dfs, 1 - ALPHA / 2 / pairs))
    return at, np.log([_range_limit(groups, df) / math.sqrt(2) for df in dfs.tolist()])


def _range_limit(groups: int, df: float) -> float:
    """The studentized range that chance exceeds one time in twenty."""
    low, high = 1.0, 4.0
    while range_beyond(high, groups, df) > ALPHA:
        low, high = high, 2 * high
    for _ in range(24):
        middle = (low + high) / 2
        low, high = (middle, high) if range_beyond(middle, groups, df) > ALPHA else (low, middle)
    return high
