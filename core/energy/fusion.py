"""The counter's ticks and the power column joined into one energy.

Theory. The counter is a quantity that grows by what the power column says, give or take what the column may
have missed, and that is seen at its ticks, give or take what a tick leaves open. Both doubts are known, so
the best linear estimate of what it grew between the run's edges follows by generalized least squares: where
the counter is fine, the ticks beside the edges decide; where it is coarse and the power well sampled, the
power does; where neither is good, every tick helps. What the counter started from, and what a reset lost,
are unknowns of their own.

With increments d (means m, variances V), readings y = H d + F b + noise (variances R), free unknowns b, and
the energy E = c'd + f'b, the estimate is c'm + k'(y - H m) where k = T (t + F g), T the inverse of H V H' +
R, t = H V c, and g such that k'F = f. Its error is (c - H'k)'(d - m) - k'noise, which shares the variance
out to the doubts.

References
----------
.. [1] N. Cressie, *Statistics for Spatial Data*, rev. ed., Wiley, 1993, sec. 3.4 (universal kriging; from
memory).
"""

import math
from collections.abc import Sequence

import numpy as np
from attrs import field, frozen

from core.averages import total
from core.language import mark
from core.results.values import Influence
from core.traces import F64

#: a free increment is told by the counter when no more than this part of it is left untold
UNTOLD = 1e-6
#: name of the doubt that the counter's readings bring
COUNTER_STEP = mark("counter step")


@frozen
class Increment:
    """What the power column says was used between two nodes: energy, and its doubts by name. [Wh]

    ``is_known`` False leaves it to the counter: then its energy is only a place to start from.
    """

    energy_wh: float
    doubts: tuple[Influence, ...]
    is_known: bool = True
    #: all doubts together [Wh2]
    variance: float = field(init=False)

    @variance.default
    def _all_doubts(self) -> float:
        return sum(d.u_wh**2 for d in self.doubts) if self.is_known else 0.0


@frozen
class Seen:
    """The counter seen at a node: reading and u [Wh]; readings of one segment share an offset."""

    node: int
    counter_wh: float
    u_wh: float
    segment: int


@frozen
class Fused:
    """Energy between two nodes, and its doubts by name. [Wh]"""

    energy_wh: float
    influences: tuple[Influence, ...]

    @property
    def u_wh(self) -> float:
        """All doubts together. [Wh]"""
        return math.sqrt(sum(i.u_wh**2 for i in self.influences))


def fuse(increments: Sequence[Increment], seen: Sequence[Seen], first: int, last: int) -> Fused | None:
    """Energy between the nodes `first` and `last`.

    Parameters
    ----------
    increments : sequence of Increment
        Increment i lies between node i and node i + 1.
    seen : sequence of Seen
        May be empty: then the power column alone decides.
    first, last : int
        Nodes of the run's edges, ``first < last``.

    Returns
    -------
    Fused or None
        None where something between the nodes is left to the counter and the counter does not tell.

    Examples
    --------
    >>> steps = (Increment(10.0, (Influence("sampling", 1.0),)),)
    >>> sure = (Seen(0, 100.0, 0.01, 0), Seen(1, 111.0, 0.01, 0))
    >>> joined = fuse(steps, sure, 0, 1)
    >>> round(joined.energy_wh, 3)
    11.0
    """
    count = len(increments)
    means = np.array([i.energy_wh for i in increments])
    wanted = np.array([float(first <= i < last) for i in range(count)])
    energy_wh, left, weights = float(wanted @ means), wanted, np.zeros(len(seen))
    if seen:
        passed = (np.arange(count) < np.array([[s.node] for s in seen])).astype(np.float64)
        weights = _weights(passed, increments, seen, wanted)
        # differences from the first reading: a counter stands at hundreds of kWh
        readings = np.array([s.counter_wh - seen[0].counter_wh for s in seen])
        energy_wh += float(weights @ (readings - passed @ means))
        left = wanted - passed.T @ weights
    by_name: dict[str, float] = {}
    for share, increment in zip(left, increments, strict=True):
        if not increment.is_known:
            if abs(share) > UNTOLD:
                return None
            continue
        for doubt in increment.doubts:
            by_name[doubt.name] = by_name.get(doubt.name, 0.0) + (share * doubt.u_wh) ** 2
    noise = np.array([s.u_wh for s in seen])
    by_name[COUNTER_STEP] = total((weights * noise) ** 2)
    return Fused(energy_wh, tuple(Influence(name, math.sqrt(v)) for name, v in by_name.items() if v > 0))


def _weights(passed: F64, increments: Sequence[Increment], seen: Sequence[Seen], wanted: F64) -> F64:
    """What each reading moves the energy by, per watt-hour that it is off."""
    variances = np.array([i.variance for i in increments])
    is_free = np.array([not i.is_known for i in increments])
    segments = sorted({s.segment for s in seen})
    offsets = np.array([[float(s.segment == segment) for segment in segments] for s in seen])
    free = np.hstack((offsets, passed[:, is_free]))
    target = np.concatenate((np.zeros(len(segments)), wanted[is_free]))
    noise = np.array([s.u_wh for s in seen])
    # a floor far below any doubt that matters keeps two readings that say the same from being infinitely sure
    floor = 1e-6 * max(float(np.max(noise)), 1e-6)
    spread = passed * variances @ passed.T + np.diag(noise**2 + floor**2)
    towards = passed @ (variances * wanted)
    inverse = np.linalg.solve(spread, np.column_stack((free, towards)))
    inverse_free, inverse_towards = inverse[:, :-1], inverse[:, -1]
    bound, missing = free.T @ inverse_free, target - free.T @ inverse_towards
    # mostly the one offset of the counter is all that is free
    gain = missing / bound[0] if bound.size == 1 else np.linalg.lstsq(bound, missing, rcond=None)[0]
    return np.asarray(inverse_towards + inverse_free @ gain)
