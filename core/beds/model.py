"""Watts of one machine's bed at any difference from the room, and what makes several such values err alike.

Rules: between held temperatures the fit of the holds tells; beyond them, and where one temperature alone was
held, the nearest known watts are scaled by the plate law (`core.beds.plate.loss_ratio`), and the value
says so. A value keeps what each source gives it, so that a difference of two values of one bed is as sure
as it is: what moves both alike cancels by itself.
"""

import math
from collections.abc import Sequence
from typing import Literal

import numpy as np
from attrs import field, frozen

from core.beds.from_holds import APART_K, DIFFERENCE_U_K, EXPONENT_DOUBT
from core.beds.hold_fit import Fit, Point, line_or_curve
from core.beds.plate import exponent, loss_ratio
from core.traces import F64
from core.uncertainty import coverage_factor

How = Literal["held", "fit", "scaled"]
#: sources beside the holds: gain and offset of the meter, the plate law's exponent, the temperatures
_GAIN, _OFFSET, _EXPONENT, _TEMPERATURE = -4, -3, -2, -1
#: a difference this near to the only one that was held is that one [K]
SAME_K = 0.5
#: an ordinary room, for the ratio of losses, which hardly depends on it [degC]
_ROOM_C = 20.0


@frozen
class Watts:
    """Watts of a bed, with what one standard uncertainty of each source gives them. [W]

    Parameters
    ----------
    power_w : float
    parts : ndarray, shape (sources,)
        Of one machine all values have the same sources in the same order. [W]
    df : tuple of float
        Degrees of freedom of the sources.
    how : {"held", "fit", "scaled"}
        By one hold, between holds, or beyond what was held.
    """

    power_w: float
    parts: F64 = field(eq=False, repr=False)
    df: tuple[float, ...]
    how: How

    @property
    def u95_w(self) -> float:
        """Half-width of the 95 % interval. [W]"""
        return half_width(self.parts, self.df)

    @property
    def u_w(self) -> float:
        """Standard uncertainty. [W]"""
        return float(np.linalg.norm(self.parts))

    @property
    def u_own_w(self) -> float:
        """The same without the meter's gain, which machines on one meter share. [W]"""
        own = self.parts.copy()
        own[_GAIN] = 0.0
        return float(np.linalg.norm(own))


@frozen
class BedModel:
    """The bed of one machine as its holds show it.

    Parameters
    ----------
    points : tuple of Point
        Held temperatures with their watts, one at least.
    gain_u : float
        Relative standard uncertainty that the meter's gain gives all of them alike.
    fit : Fit or None
        Where temperatures far enough apart were held.
    """

    points: tuple[Point, ...]
    gain_u: float
    fit: Fit | None

    @classmethod
    def of(cls, points: Sequence[Point], gain_u: float) -> "BedModel":
        """The model of these holds; a fit where they lie at least `APART_K` apart.

        Raises
        ------
        ValueError
            If there is no hold, or one of a bed no warmer than the room: the caller's mistake.
        """
        if not points or any(p.difference_k <= 0 for p in points):
            raise ValueError("a bed is known by holds above room temperature")
        reach = [p.difference_k for p in points]
        fits = max(reach) - min(reach) >= APART_K
        return cls(tuple(points), gain_u, line_or_curve(points, gain_u=gain_u) if fits else None)

    @property
    def lowest_k(self) -> float:
        """Smallest held difference from the room. [K]"""
        return min(p.difference_k for p in self.points)

    @property
    def highest_k(self) -> float:
        """Largest held difference from the room. [K]"""
        return max(p.difference_k for p in self.points)

    def at(self, difference_k: float) -> Watts:
        """Watts that hold the bed at a difference from the room.

        Parameters
        ----------
        difference_k : float
            Above 0. [K]

        Raises
        ------
        ValueError
            If it is not above 0.
        """
        if difference_k <= 0:
            raise ValueError("a bed is held above room temperature")
        known = self._known(difference_k)
        from_k = (
            min(max(difference_k, self.lowest_k), self.highest_k)
            if self.fit
            else self._nearest_k(difference_k)
        )
        far = abs(difference_k - from_k)
        if far == 0.0:
            return known
        ratio = loss_ratio(_ROOM_C + from_k, _ROOM_C + difference_k, _ROOM_C)
        value_w = known.power_w * ratio
        parts = known.parts * ratio
        parts[_EXPONENT] = EXPONENT_DOUBT / math.sqrt(3) * math.log(difference_k / from_k) * value_w
        is_held = self.fit is None and far <= SAME_K
        return Watts(value_w, parts, known.df, "held" if is_held else "scaled")

    def _known(self, difference_k: float) -> Watts:
        """Watts where the holds themselves tell: within the fit, or at the nearest hold."""
        df = (*(p.df for p in self.points), math.inf, math.inf, math.inf, math.inf)
        if self.fit is not None:
            at_k = min(max(difference_k, self.lowest_k), self.highest_k)
            powers = np.power(at_k, np.arange(len(self.fit.coefficients)))
            parts = np.append(powers @ self.fit.gives, (0.0, 0.0))
            if self.fit.pooled_df is not None:
                df = (*(self.fit.pooled_df for _ in self.points), *df[len(self.points) :])
            return Watts(float(powers @ np.asarray(self.fit.coefficients)), parts, df, "fit")
        number, nearest = min(enumerate(self.points), key=lambda p: abs(p[1].difference_k - difference_k))
        parts = np.zeros(len(self.points) + 4)
        parts[number] = nearest.u_w or 0.0
        parts[_GAIN] = self.gain_u * nearest.power_w
        per_k = exponent(40, 70, _ROOM_C) / nearest.difference_k
        parts[_TEMPERATURE] = per_k * DIFFERENCE_U_K * nearest.power_w
        return Watts(nearest.power_w, parts, df, "held")

    def _nearest_k(self, difference_k: float) -> float:
        return min((p.difference_k for p in self.points), key=lambda k: abs(k - difference_k))


def half_width(parts: F64, df: Sequence[float]) -> float:
    """Half-width of the 95 % interval of a sum of sources (JCGM 100:2008, G.4.1).

    Parameters
    ----------
    parts : ndarray
        What one standard uncertainty of each source gives the sum.
    df : sequence of float
        Their degrees of freedom.
    """
    squares = (parts**2).tolist()
    below = sum(s**2 / d for s, d in zip(squares, df, strict=True))
    whole = sum(squares)
    effective = whole**2 / below if below > 0 else math.inf
    return coverage_factor(effective) * math.sqrt(whole)
