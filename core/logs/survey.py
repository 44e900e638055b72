"""What has to be known of whole columns, found in one pass over them.

Rules: nothing is decided here. A long column costs more to bring into the processor than to compute with, so
every extreme and sum is taken while a stretch of rows is at hand, and stretches are shared out among threads.
"""

from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor

import numpy as np
from attrs import frozen

from core.logs.source import PARSERS
from core.traces import F64

#: rows at hand at a time: their columns and what is computed of them fit into a processor's own memory
STRETCH = 1 << 16
#: fewer rows than this for each thread are not worth sharing out
_SHARED_ROWS = 1 << 18


@frozen
class Survey:
    """Extremes of columns and of the steps between neighbouring rows, and the power summed over time.

    Anything missing or infinite in a column makes its figures NaN or infinite. With no counter, or with fewer
    than two rows, steps are (inf, -inf) and sums 0.

    Parameters
    ----------
    shortest_s, longest_s : float
        Smallest and largest step in time. [s]
    lowest, highest : float
        Extremes of the values.
    least_gain, most_gain : float
        Smallest and largest step of the counter.
    by_first, by_last : float
        The values times the steps: each interval with the value at its beginning, and with that at its end.
        [unit of the values x s]
    """

    shortest_s: float
    longest_s: float
    lowest: float
    highest: float
    least_gain: float
    most_gain: float
    by_first: float
    by_last: float

    @property
    def is_whole(self) -> bool:
        """Whether all times and values are finite numbers."""
        return bool(np.isfinite((self.shortest_s, self.longest_s, self.lowest, self.highest)).all())

    @property
    def largest(self) -> float:
        """The largest magnitude of the values."""
        return max(self.highest, -self.lowest)


def survey(seconds: F64, values: F64, counter: F64 | None = None) -> Survey:
    """Go through columns of one length once.

    Parameters
    ----------
    seconds : ndarray, shape (n,)
        Times, in the order of the file. [s]
    values : ndarray, shape (n,)
        Powers, in whatever unit.
    counter : ndarray, shape (n,), optional
        Counter, in whatever unit.

    Examples
    --------
    >>> found = survey(np.array([0.0, 10.0, 30.0]), np.array([5.0, 7.0, 6.0]))
    >>> found.shortest_s, found.longest_s, found.highest, found.by_first, found.by_last
    (10.0, 20.0, 7.0, 190.0, 190.0)
    """
    threads = max(1, min(PARSERS, seconds.size // _SHARED_ROWS))
    starts = [seconds.size * i // threads for i in range(threads)]
    ends = [*starts[1:], seconds.size]
    if threads == 1:
        return _stretches(seconds, values, counter, 0, seconds.size)
    with ThreadPoolExecutor(threads, "survey") as pool:
        parts = pool.map(lambda a, b: _stretches(seconds, values, counter, a, b), starts, ends)
    return _together(list(parts))


def _stretches(seconds: F64, values: F64, counter: F64 | None, start: int, end: int) -> Survey:
    """The rows from `start` to `end`, and the step to the row that follows them."""
    with np.errstate(over="ignore", invalid="ignore"):
        return _together(
            [
                _stretch(
                    seconds[at : min(at + STRETCH, end) + 1],
                    values[at : min(at + STRETCH, end) + 1],
                    None if counter is None else counter[at : min(at + STRETCH, end) + 1],
                )
                for at in range(start, end, STRETCH)
            ]
        )


def _stretch(seconds: F64, values: F64, counter: F64 | None) -> Survey:
    steps = np.diff(seconds)
    if not steps.size:
        return Survey(np.inf, -np.inf, float(values.min()), float(values.max()), np.inf, -np.inf, 0.0, 0.0)
    gains = None if counter is None else np.diff(counter)
    # not np.dot: for so short a product its threads cost more than they save
    return Survey(
        float(steps.min()), float(steps.max()), float(values.min()), float(values.max()),
        np.inf if gains is None else float(gains.min()), -np.inf if gains is None else float(gains.max()),
        float(np.einsum("i,i->", values[:-1], steps)), float(np.einsum("i,i->", values[1:], steps)),
    )  # fmt: skip


def _together(parts: Sequence[Survey]) -> Survey:
    if not parts:
        return Survey(np.inf, -np.inf, np.nan, np.nan, np.inf, -np.inf, 0.0, 0.0)
    # numpy's extremes, unlike Python's own, keep a NaN
    return Survey(
        float(np.min([p.shortest_s for p in parts])), float(np.max([p.longest_s for p in parts])),
        float(np.min([p.lowest for p in parts])), float(np.max([p.highest for p in parts])),
        float(np.min([p.least_gain for p in parts])), float(np.max([p.most_gain for p in parts])),
        sum(p.by_first for p in parts), sum(p.by_last for p in parts),
    )  # fmt: skip
