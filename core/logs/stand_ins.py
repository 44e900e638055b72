"""Numbers that loggers write where they measured nothing, such as -999.9: no power, but no empty cell either.

Rules: only a number of nines below zero, or the largest of 15 or 16 bits, is one, and only where it comes
again exactly and every other value is nowhere near; what was taken out is told. Common practice, no source.
"""

import numpy as np

from core.traces import F64

#: the end of a 16-bit number, signed or not, in whole units or in tenths
_ENDS = frozenset({-32768.0, -3276.8, 32767.0, 65535.0, 6553.5})
#: all other values are smaller than this share of it
_NEAREST = 0.5
#: fewest rows that show it, and the largest share of the rows
_FEWEST, _MOST = 2, 0.5


def stand_in(power: F64, lowest: float, highest: float) -> float | None:
    """The number that stands for no value in a power column; None where there is none.

    Parameters
    ----------
    power : ndarray, shape (n,)
        In the unit of the file, NaN where missing.
    lowest, highest : float
        Its extremes.

    Examples
    --------
    >>> stand_in(np.array([5.0, 60.2, -999.9, 61.0, -999.9, 4.8]), -999.9, 61.0)
    -999.9
    >>> stand_in(np.array([5.0, 60.2, -9.0, 61.0, -9.0, 4.8]), -9.0, 61.0) is None
    True
    """
    for found in (lowest, highest):
        digits = f"{abs(found):g}".replace(".", "")
        if found not in _ENDS and not (found < 0 and len(digits) >= 3 and set(digits) == {"9"}):
            continue
        shows = power == found
        count, known = int(shows.sum()), int(np.isfinite(power).sum())
        others = power[~shows & np.isfinite(power)]
        if (
            _FEWEST <= count <= _MOST * known
            and others.size
            and float(np.abs(others).max()) < _NEAREST * abs(found)
        ):
            return found
    return None
