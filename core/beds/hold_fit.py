"""Watts of a held bed against its difference from the room: a weighted line, a curve where data demand it.

Rules: the watts of a plate grow faster than in proportion (`core.beds.plate.exponent`), so a line is a local
description: a negative intercept is physics and no fault, and a value outside the held temperatures is marked
as extrapolated. Every coefficient remembers what each point's uncertainty gives it, so that the covariance is
never lost between fit and prediction.

References
----------
.. [1] JCGM 100:2008, annex H.3: a straight line and what is predicted from it.
.. [2] ISO/TS 28037:2010, clause 6: weighted straight line with known variances, and the chi-squared test.
"""

import math
from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from attrs import field, frozen

from core.traces import F64
from core.uncertainty import coverage_factor

#: level of the chi-squared test above which the points do not lie on the line
CONSISTENT = 0.95
#: this far outside the held temperatures a value still counts as inside them [K]
EDGE_K = 0.5
#: temperatures that a curve takes: one more than it has coefficients
FEWEST_FOR_CURVE = 4


@frozen
class Point:
    """Steady watts of the bed at one temperature.

    Parameters
    ----------
    difference_k : float
        Bed minus room. [K]
    power_w : float
        Of the bed alone, at the plug. [W]
    u_w : float or None
        Standard uncertainty of `power_w` without what the meter gives all points alike; None where it is not
        known (then the scatter of the points tells it). [W]
    df : float
        Degrees of freedom of `u_w`.
    u_k : float
        Standard uncertainty of `difference_k`. [K]
    """

    difference_k: float
    power_w: float
    u_w: float | None = None
    df: float = math.inf
    u_k: float = 0.0


@frozen
class Predicted:
    """Watts by a fit, with the 95 % interval; `is_extrapolated` outside the held temperatures."""

    power_w: float
    u_w: float
    low_w: float
    high_w: float
    is_extrapolated: bool


@frozen
class Fit:
    """``P = c0 + c1 d (+ c2 d^2)``, d the difference of the bed from the room.

    Parameters
    ----------
    coefficients : tuple of float
        By power of d: the intercept [W], the slope [W/K], for a curve the bend [W/K2].
    gives : ndarray, shape (coefficients, sources)
        What one standard uncertainty of each point, and of the meter, gives each coefficient.
    source_df : tuple of float
        Degrees of freedom of these uncertainties.
    pooled_df : float or None
        Set where one scatter was estimated for all points.
    residuals_w : tuple of float
        Measured minus fitted, by point. [W]
    chi_squared : float
        Sum of squared residuals over their uncertainties; of the plain residuals where none are known. [1]
        or [W2]
    df : int
        Points minus coefficients.
    is_consistent : bool
        Whether the points lie on the line as well as their uncertainties say. Where they do not, the
        uncertainties were widened until they do.
    lowest_k, highest_k : float
        Held differences. [K]
    """

    coefficients: tuple[float, ...]
    gives: F64 = field(eq=False, repr=False)
    source_df: tuple[float, ...]
    pooled_df: float | None
    residuals_w: tuple[float, ...]
    chi_squared: float
    df: int
    is_consistent: bool
    lowest_k: float
    highest_k: float

    @property
    def is_curve(self) -> bool:
        """Whether it has a bend."""
        return len(self.coefficients) > 2

    @property
    def covariance(self) -> F64:
        """Of the coefficients, shape (n, n)."""
        return np.asarray(self.gives @ self.gives.T, dtype=np.float64)

    def u(self, number: int) -> float:
        """Standard uncertainty of a coefficient."""
        return math.sqrt(float(self.covariance[number, number]))

    def u95(self, number: int) -> float:
        """Half-width of the 95 % interval of a coefficient."""
        parts = self.gives[number]
        return coverage_factor(self._effective_df(parts)) * self.u(number)

    def at(self, difference_k: float, new_u_w: float = 0.0) -> Predicted:
        """Watts at a difference from the room.

        Parameters
        ----------
        difference_k : float
            [K]
        new_u_w : float
            What one more measurement there would be unsure by: with it the interval is that of a new
            measurement, without it that of the fitted watts. [W]
        """
        powers = np.power(float(difference_k), np.arange(len(self.coefficients)))
        power_w = float(powers @ np.asarray(self.coefficients))
        parts = powers @ self.gives
        u_w = math.hypot(float(np.linalg.norm(parts)), new_u_w)
        half_w = coverage_factor(self._effective_df(parts, new_u_w)) * u_w
        outside = not self.lowest_k - EDGE_K <= difference_k <= self.highest_k + EDGE_K
        return Predicted(power_w, u_w, power_w - half_w, power_w + half_w, outside)

    def difference_at(self, power_w: float, u_w: float = 0.0) -> tuple[float, float]:
        """The difference at which the line has `power_w`, and its standard uncertainty. [K], [K]

        Raises
        ------
        ValueError
            For a curve, or a line that does not rise or fall.
        """
        if self.is_curve or self.coefficients[1] == 0:
            raise ValueError("only a line with a slope can be read backwards")
        intercept_w, slope = self.coefficients
        difference_k = (power_w - intercept_w) / slope
        parts = np.array([1.0, difference_k]) @ self.gives
        return difference_k, math.hypot(float(np.linalg.norm(parts)), u_w) / abs(slope)

    def _effective_df(self, parts: F64, new_u_w: float = 0.0) -> float:
        """Degrees of freedom of a sum of the sources by Welch and Satterthwaite (JCGM 100:2008, G.4.1)."""
        if self.pooled_df is not None:
            return self.pooled_df
        squares = parts**2
        below = sum(s**2 / df for s, df in zip(squares.tolist(), self.source_df, strict=True))
        whole = (float(squares.sum()) + new_u_w**2) ** 2
        return whole / below if below > 0 else math.inf


def fit(points: Sequence[Point], *, degree: int = 1, gain_u: float = 0.0, offset_u_w: float = 0.0) -> Fit:
    """Weighted least squares through held temperatures.

    Parameters
    ----------
    points : sequence of Point
        More than `degree` of them, at as many temperatures.
    degree : {1, 2}
    gain_u : float
        Relative standard uncertainty that the meter's gain gives all points alike.
    offset_u_w : float
        The same of its offset. [W]

    Returns
    -------
    Fit

    Raises
    ------
    ValueError
        If there are too few points: the caller's mistake.

    Examples
    --------
    >>> line = fit([Point(20, 24), Point(30, 37), Point(40, 50)])
    >>> [round(c, 3) for c in line.coefficients]
    [-2.0, 1.3]
    """
    if len({p.difference_k for p in points}) <= degree:
        raise ValueError("a fit needs more temperatures than its degree")
    x = np.array([p.difference_k for p in points], dtype=np.float64)
    y = np.array([p.power_w for p in points], dtype=np.float64)
    known = all(p.u_w is not None for p in points)
    own_u = np.array([p.u_w if known and p.u_w is not None else 1.0 for p in points], dtype=np.float64)
    u = own_u
    for _ in range(4 if known and any(p.u_k > 0 for p in points) else 1):
        coefficients, per_y = _least_squares(x, y, u, degree)
        slope = np.polyval(np.polyder(coefficients[::-1]), x)
        u = np.hypot(own_u, slope * np.array([p.u_k for p in points])) if known else own_u
    residuals = y - np.polyval(coefficients[::-1], x)
    df = len(points) - degree - 1
    chi_squared = float(np.sum((residuals / u) ** 2))
    is_consistent = not known or df == 0 or chi_squared <= _chi_squared_limit(df)
    widened = 1.0 if (known and is_consistent) or df == 0 else math.sqrt(chi_squared / df)
    gives = [per_y * (u * widened), gain_u * coefficients[:, None], np.zeros((degree + 1, 1))]
    gives[2][0] = offset_u_w
    return Fit(
        coefficients=tuple(coefficients.tolist()),
        gives=np.hstack(gives),
        source_df=(*(p.df for p in points), math.inf, math.inf),
        pooled_df=None if known and is_consistent else max(float(df), 1.0),
        residuals_w=tuple(residuals.tolist()),
        chi_squared=chi_squared,
        df=df,
        is_consistent=is_consistent,
        lowest_k=float(x.min()),
        highest_k=float(x.max()),
    )


def line_or_curve(points: Sequence[Point], *, gain_u: float = 0.0, offset_u_w: float = 0.0) -> Fit:
    """The line, or a curve where the line fails and the bend is shown.

    Parameters
    ----------
    points : sequence of Point
        At two temperatures or more.
    gain_u, offset_u_w : float
        As for `fit`.
    """
    line = fit(points, gain_u=gain_u, offset_u_w=offset_u_w)
    fails = not line.is_consistent or line.pooled_df is not None
    if not fails or len({p.difference_k for p in points}) < FEWEST_FOR_CURVE:
        return line
    curve = fit(points, degree=2, gain_u=gain_u, offset_u_w=offset_u_w)
    return curve if abs(curve.coefficients[2]) > curve.u95(2) else line


def _least_squares(x: F64, y: F64, u: F64, degree: int) -> tuple[F64, F64]:
    """Coefficients by power of x, shape (m,), and how each answers to each y, shape (m, n).

    Solved about the middle of x, because powers of x alone are nearly parallel.
    """
    middle, reach = float(x.mean()), max(float(np.ptp(x)), 1e-300) / 2
    z = (x - middle) / reach
    design = np.vander(z, degree + 1, increasing=True)
    q, r = np.linalg.qr(design / u[:, None])
    in_z = np.linalg.solve(r, q.T / u)
    to_x = _expansion(middle, reach, degree)
    per_y = to_x @ in_z
    # the sum over small numbers first: y about its mean
    level = float(y.mean())
    coefficients = to_x @ (in_z @ (y - level))
    coefficients[0] += level
    return coefficients, per_y


def _expansion(middle: float, reach: float, degree: int) -> F64:
    """Matrix from coefficients in ``z = (x - middle) / reach`` to those in x."""
    to_x = np.zeros((degree + 1, degree + 1))
    to_x[0, 0] = 1.0
    for below, power in pairwise(range(degree + 1)):
        # z^n = z^(n-1) (x - middle) / reach
        to_x[:, power] -= to_x[:, below] * middle / reach
        to_x[1:, power] += to_x[:-1, below] / reach
    return to_x


def _chi_squared_limit(df: int) -> float:
    from scipy.special import chdtri

    return float(chdtri(df, 1 - CONSISTENT))
