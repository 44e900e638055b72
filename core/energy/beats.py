"""Slow samples of a switching heater as beats: how surely a run of them tells the heater's share of the time.

Theory. A heater whose cycle is near a sampling interval, or a simple part or multiple of one, meets the
samples at a phase that drifts: on and off come in beats of many samples that look like a slow cycle, well
resolved. Each edge of a beat is seen to a sample, and whether these roundings even out over the run is the
question. Two ways they do not:

*In step*: beats of a strictly regular cycle of a whole number of samples round every edge the same way, so
many of them know no more than one. The places where the edges fall between two samples are i P for the i-th
beat of P samples, from an unknown start; the mean rounding over all starts has the spread that is left.

*By chance*: the cycle is a little irregular, so each beat is a lottery of its own. What the beats' shares
scatter by is then what their sum is unsure by (renewal reward: the variance of on - share x beat). Of a true
slow cycle the same scatter is real and no error; from the samples alone the two cannot be told apart.

References
----------
.. [1] S. M. Ross, *Introduction to Probability Models*: renewal reward processes (from memory).
.. [2] H. Weyl, "Ueber die Gleichverteilung von Zahlen mod. Eins", Math. Ann. 77 (1916): i P mod 1 evens out
   unless P is close to a simple fraction (from memory).
"""

import math

import numpy as np
from numpy.typing import NDArray

from core.averages import average, part_of, variance
from core.traces import F64, steps_of

#: fewer beats than this do not tell how regular they are
FEWEST_BEATS = 4
#: places between two samples at which the first edge is tried
STARTS = (np.arange(24) + 0.5) / 24
#: edges that keep to a line as closely as this are those of a strictly regular cycle; rounding alone leaves
#: 0.29, and what wanders further evens out by itself [samples]
REGULAR = 0.45
#: how far the length of a beat may be off that many beats give, in samples over all of them
LINE_ENDS = (-0.5, -0.25, 0.0, 0.25, 0.5)


def in_step_rows(is_on: NDArray[np.bool_]) -> float:
    """Standard uncertainty of how many rows the heater was on, by beats that all round alike. [rows]

    Parameters
    ----------
    is_on : ndarray of bool, shape (n,)
        Whether each sample meets the heater on.

    Returns
    -------
    float
        0 where the beats are not regular, or even out.

    Examples
    --------
    >>> locked = np.arange(190) % 19 < 8
    >>> round(in_step_rows(locked), 1)
    3.9
    """
    rises, falls = _rises(is_on), _rises(~is_on)
    return math.sqrt(_alike(rises) ** 2 + _alike(falls) ** 2)


def by_chance_rows(is_on: NDArray[np.bool_]) -> float:
    """Standard uncertainty of how many rows the heater was on, by how unlike the beats are. [rows]

    Neighbouring beats are compared, so that a slow drift of the heater's share counts little. What lies
    before the first whole beat and after the last is unlike the others by what it shows. `FEWEST_BEATS`
    or fewer tell nothing: 0.
    """
    begins = _rises(is_on) + 1
    if begins.size <= FEWEST_BEATS:
        return 0.0
    on = np.add.reduceat(is_on[: begins[-1]], begins[:-1]).astype(np.float64)
    beat = (begins[1:] - begins[:-1]).astype(np.float64)
    share = on.sum() / beat.sum()
    apart = on - share * beat
    variance = average(steps_of(apart) ** 2) / 2
    more = np.count_nonzero(is_on) - share * is_on.size
    return float(np.hypot(np.sqrt(variance * is_on.size / average(beat)), more))


def few_beats_rows(is_on: NDArray[np.bool_]) -> float:
    """Standard uncertainty of how many rows the heater was on, if neighbours alike err together. [rows]"""
    flips = np.count_nonzero(is_on[1:] != is_on[:-1])
    share = part_of(is_on)
    return is_on.size * float(np.sqrt(share * (1 - share) / (1 + flips)))


def _rises(is_on: NDArray[np.bool_]) -> NDArray[np.intp]:
    """Rows after which the heater is first met on."""
    return np.flatnonzero(is_on[1:] & ~is_on[:-1])


def _alike(rows: NDArray[np.intp]) -> float:
    """Standard uncertainty of the sum of the roundings of regular edges, 0 where they are not. [rows]"""
    if rows.size < FEWEST_BEATS:
        return 0.0
    number = np.arange(rows.size, dtype=np.float64)
    from_middle = number - (rows.size - 1) / 2
    beat = float(from_middle @ rows) / float(from_middle @ from_middle)
    if math.sqrt(variance(rows - beat * number)) > REGULAR:
        return 0.0
    means = (_mean_rounding(number * (beat + off / rows.size)) for off in LINE_ENDS)
    return float(rows.size) * max(math.sqrt(average(mean**2)) for mean in means)


def _mean_rounding(places: F64) -> F64:
    """Mean of the roundings of edges at these places, 0 or later, for each start. [rows]"""
    at = places[:, None] + STARTS
    roundings: F64 = at - np.floor(at) - 0.5
    means: F64 = np.add.reduce(roundings) / places.size
    return means
