"""Curves cut at the edges of a box by their own numbers.

A clip that a painter keeps is lost in SVG of the plain kind, so that a curve which leaves its chart would run
over the title of a saved picture. What is cut here is cut everywhere alike.
"""

import numpy as np

from core.figures.placing import Box
from core.traces import F64


def inside(xs: F64, ys: F64, box: Box) -> tuple[F64, F64]:
    """The parts of a curve that lie within a box, NaN between them (Liang and Barsky's way).

    Parameters
    ----------
    xs, ys : ndarray, shape (n,)
        NaN lifts the pen.
    box : Box

    Returns
    -------
    tuple of ndarray

    References
    ----------
    .. [1] Y.-D. Liang and B. A. Barsky, "A new concept and method for line clipping", ACM Transactions on
       Graphics 3 (1984) 1-22 (from memory).
    """
    is_within = (xs >= box.x) & (xs <= box.right) & (ys >= box.y) & (ys <= box.bottom)
    if is_within.size > 1 and is_within.all():  # most curves of a whole view
        return np.asarray(xs, dtype=np.float64), np.asarray(ys, dtype=np.float64)
    x, y = np.asarray(xs[:-1], dtype=np.float64), np.asarray(ys[:-1], dtype=np.float64)
    dx, dy = np.diff(xs), np.diff(ys)
    enters, leaves = np.zeros(x.size), np.ones(x.size)
    seen = np.isfinite(dx) & np.isfinite(dy)
    for along, room in ((-dx, x - box.x), (dx, box.right - x), (-dy, y - box.y), (dy, box.bottom - y)):
        with np.errstate(divide="ignore", invalid="ignore", over="ignore"):
            at = room / along
        enters = np.where(along < 0, np.fmax(enters, at), enters)
        leaves = np.where(along > 0, np.fmin(leaves, at), leaves)
        seen &= (along != 0) | (room >= 0)
    seen &= enters <= leaves
    kept = np.flatnonzero(seen)
    if not kept.size:
        return np.empty(0), np.empty(0)
    enters, leaves = enters[kept], leaves[kept]
    goes_on = np.zeros(kept.size, dtype=bool)
    goes_on[1:] = (np.diff(kept) == 1) & (leaves[:-1] == 1) & (enters[1:] == 0)
    is_first = np.arange(kept.size) == 0
    wanted = np.column_stack((~goes_on & ~is_first, ~goes_on, np.ones(kept.size, dtype=bool))).ravel()
    lifted = np.full(kept.size, np.nan)
    cut = [
        np.column_stack((lifted, v[kept] + enters * d[kept], v[kept] + leaves * d[kept])).ravel()[wanted]
        for v, d in ((x, dx), (y, dy))
    ]
    return cut[0], cut[1]


def area_inside(xs: F64, tops: F64, bottoms: F64, box: Box) -> tuple[F64, F64, F64]:
    """What lies between two curves, cut at the sides of a box and held within its height.

    Parameters
    ----------
    xs, tops, bottoms : ndarray, shape (n,)
        ``xs`` never falls.
    box : Box
    """
    if xs.size < 2 or xs[-1] <= box.x or xs[0] >= box.right:
        return xs[:0], tops[:0], bottoms[:0]
    within = (xs > box.x) & (xs < box.right)
    ends = np.clip(xs[[0, -1]], box.x, box.right)
    places = np.concatenate((ends[:1], xs[within], ends[1:]))
    high, low = (
        np.concatenate(([np.interp(ends[0], xs, ys)], ys[within], [np.interp(ends[1], xs, ys)]))
        for ys in (tops, bottoms)
    )
    return places, np.clip(high, box.y, box.bottom), np.clip(low, box.y, box.bottom)
