"""The course of a run: the energy it has used up to any moment, exact, plain or smoothed.

Theory of operation: the power between two rows is a straight line or a constant (`core.energy.integral`),
so the running energy E is a polynomial between rows, and so is its own integral G. A moving mean of the
power over a width w is (E(t + w/2) - E(t - w/2)) / w. Beyond the ends of the run the power is mirrored, so
that E and G are known there too and smoothing keeps the run's energy to the last digit: no watt is moved
out of the run.
"""

import numpy as np
from attrs import field, frozen

from core.energy.integral import Pieces
from core.traces import F64
from core.units import J_PER_WH

#: a narrower moving mean changes nothing that a meter shows, and would drown in rounding [s]
_NARROWEST_S = 0.01


@frozen
class Course:
    """Running energy of one run.

    Parameters
    ----------
    seconds : float
        Length of the run. [s]
    starts_s : ndarray, shape (n,)
        Where each piece starts, counted from the start of the run. [s]
    power_w, slope_w_per_s : ndarray, shape (n,)
        Power at the start of each piece, and how it moves within. [W], [W/s]
    energy_j, area_js : ndarray, shape (n + 1,)
        Energy used up to the start of each piece, and the integral of that. [J], [J s]
    """

    seconds: float
    starts_s: F64 = field(eq=False, repr=False)
    power_w: F64 = field(eq=False, repr=False)
    slope_w_per_s: F64 = field(eq=False, repr=False)
    energy_j: F64 = field(eq=False, repr=False)
    area_js: F64 = field(eq=False, repr=False)

    @classmethod
    def of(cls, pieces: Pieces) -> "Course":
        """The course of an interval cut at its rows.

        Raises
        ------
        ValueError
            If the interval is empty.
        """
        if not pieces.seconds.size:
            raise ValueError("a course needs a length")
        length = pieces.seconds
        power = pieces.mean_w - pieces.step_w / 2
        slope = pieces.step_w / length
        energy = np.concatenate(([0.0], np.cumsum(pieces.mean_w * length)))
        inner = energy[:-1] * length + power * length**2 / 2 + slope * length**3 / 6
        starts = pieces.start_s - pieces.start_s[0]
        return cls(
            seconds=float(starts[-1] + length[-1]),
            starts_s=starts,
            power_w=power,
            slope_w_per_s=slope,
            energy_j=energy,
            area_js=np.concatenate(([0.0], np.cumsum(inner))),
        )

    @property
    def energy_wh(self) -> float:
        """All of it, by the power column. [Wh]"""
        return float(self.energy_j[-1]) / J_PER_WH

    def used_wh(self, at_s: F64) -> F64:
        """Energy used up to moments within the run. [Wh]"""
        return self._energy_j(np.clip(at_s, 0.0, self.seconds)) / J_PER_WH

    def mean_w(self, edges_s: F64, smooth_s: float = 0.0) -> F64:
        """Mean power between neighbouring edges, of the power itself or of its moving mean.

        Parameters
        ----------
        edges_s : ndarray, shape (k + 1,)
            Strictly increasing, within the run. [s]
        smooth_s : float
            Width of the moving mean; a run is never smoothed over more than its own length. [s]

        Returns
        -------
        ndarray, shape (k,)
            From the run's start to its end they add up to its energy, smoothed or not. [W]

        Examples
        --------
        >>> from core.energy.integral import pieces
        >>> from core.traces import Trace
        >>> course = Course.of(pieces(Trace.of([0, 10, 20], [0.0, 60.0, 60.0]), 0, 20))
        >>> course.mean_w(np.array([0.0, 10.0, 20.0])).tolist()
        [30.0, 60.0]
        >>> round(float(course.mean_w(np.array([0.0, 10.0, 20.0]), smooth_s=8.0).mean()), 9)
        45.0
        """
        width = min(smooth_s, self.seconds)
        if width < _NARROWEST_S:
            energy = self._energy_j(edges_s)
        else:
            energy = (self._area_js(edges_s + width / 2) - self._area_js(edges_s - width / 2)) / width
        return np.asarray(np.diff(energy) / np.diff(edges_s))

    def _inside(self, at_s: F64) -> tuple[F64, F64]:
        """Energy and its integral at moments within the run. [J], [J s]"""
        rows = np.clip(np.searchsorted(self.starts_s, at_s, side="right") - 1, 0, self.starts_s.size - 1)
        x = at_s - self.starts_s[rows]
        power, slope = self.power_w[rows], self.slope_w_per_s[rows]
        energy = self.energy_j[rows] + x * (power + x * slope / 2)
        area = self.area_js[rows] + x * (self.energy_j[rows] + x * (power / 2 + x * slope / 6))
        return energy, area

    def _energy_j(self, at_s: F64) -> F64:
        return self._inside(at_s)[0]

    def _area_js(self, at_s: F64) -> F64:
        """The integral of the energy, with the power mirrored at both ends of the run."""
        end = self.seconds
        beyond = np.maximum(at_s - end, 0.0)
        mirrored = np.where(at_s > end, 2 * end - at_s, np.abs(at_s))
        return np.asarray(self._inside(mirrored)[1] + 2 * self.energy_j[-1] * beyond)
