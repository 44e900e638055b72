"""Steady power: from when on a trace is settled, its mean there, and how sure that is.

Theory of operation. The time is cut into windows of some minutes, from one switching on of the heater to
another where that is seen, so that no window holds a piece of a cycle. The watts are settled from the first
window on from which no window stands out and the means of the two halves agree; their scatter gives the
uncertainty of the mean.
"""

import math
from itertools import pairwise

import numpy as np
from attrs import frozen

from core.beds.heater import rows_between
from core.energy.integral import mean_w
from core.energy.total import between
from core.study import Meter
from core.traces import F64, Trace
from core.units import J_PER_WH

#: length of a window [s]; shorter where a test is too short for so many of them
WINDOW_S = 300.0
USUAL_WINDOWS = 8
#: fewest windows that can be called settled
FEWEST_WINDOWS = 5
SHORTEST_WINDOW_S = 60.0
#: by this part a window may be shorter to begin with a cycle
WINDOW_GIVE = 0.1
#: window means agree when they are this near: part of the mean, or standard uncertainties if that is more
AGREE_PART = 0.01
AGREE_U = 2.0
#: a window stands out by so many standard deviations of the others
STANDS_OUT = 4.0
#: the theory of sampling counts as much as the scatter of this many windows more; judgement, no source
THEORY_DF = 3.0


@frozen(cache_hash=True)
class Steady:
    """Mean power of a steady state.

    Parameters
    ----------
    start_s, end_s : float
        Of the settled part; of the whole where nothing settled. [s]
    mean_w, u_w : float
        Mean, and its standard uncertainty without the meter's gain and offset. [W]
    df : float
        Degrees of freedom of `u_w`.
    is_settled : bool
    windows_w : tuple of float
        Means of all windows from the end of the warm-up on. [W]
    window_s : float
        Length of a window. [s]
    """

    start_s: float
    end_s: float
    mean_w: float
    u_w: float
    df: float
    is_settled: bool
    windows_w: tuple[float, ...]
    window_s: float


def steady(trace: Trace, start_s: float, end_s: float, meter: Meter) -> Steady | None:
    """Settled mean power of an interval that ends in a steady state.

    Parameters
    ----------
    trace : Trace
    start_s, end_s : float
        From the end of the warm-up to the end. [s]
    meter : Meter

    Returns
    -------
    Steady or None
        None where not even short windows fit in.
    """
    window_s = min(WINDOW_S, max((end_s - start_s) / USUAL_WINDOWS, SHORTEST_WINDOW_S))
    window_s = min(window_s, (end_s - start_s) / FEWEST_WINDOWS)
    if window_s < max(SHORTEST_WINDOW_S, 3 * trace.median_s):
        return None
    edges = _window_edges_s(trace, start_s, end_s, window_s)
    count = edges.size - 1
    end_s = float(edges[-1])
    means = np.array([mean_w(trace, a, b) for a, b in pairwise(edges.tolist())])
    first = next((i for i in range(count - FEWEST_WINDOWS + 1) if _agree(means[i:])), None)
    is_settled = first is not None
    kept = means[first or 0 :]
    from_s = float(edges[first or 0])
    used = between(trace, from_s, end_s, meter, rising_edges=False)
    per_hour = J_PER_WH / (end_s - from_s)
    own_w = math.sqrt(sum(i.u_wh**2 for i in used.influences if i.shared is None)) * per_hour
    scatter_w = u_of_mean(kept)
    # Two estimates of one variance: what the windows show, which may agree by luck, and what theory says of
    # the sampling of a switching heater, which knows nothing of a temperature that is held.
    own_df, df = (THEORY_DF if own_w > scatter_w else 0.0), kept.size - 1.0
    u_w = math.sqrt((df * scatter_w**2 + own_df * own_w**2) / (df + own_df))
    return Steady(
        start_s=from_s,
        end_s=end_s,
        mean_w=used.energy_wh * per_hour,
        u_w=u_w,
        df=df + own_df,
        is_settled=is_settled,
        windows_w=tuple(means.tolist()),
        window_s=window_s,
    )


def _window_edges_s(trace: Trace, start_s: float, end_s: float, window_s: float) -> F64:
    """Edges of the windows: where the heater comes on, at least `window_s` apart, or evenly spaced. [s]"""
    time, power = rows_between(trace, start_s, end_s)
    low_w, high_w = np.percentile(power, [1, 99]) if power.size else (0.0, 0.0)
    high = power > (low_w + high_w) / 2
    rises = np.flatnonzero(high[1:] & ~high[:-1])
    on_s = (time[rises] + time[rises + 1]) / 2 if trace.kind == "sampled" else time[rises]
    edges = list(on_s[:1])
    for at_s in on_s[1:]:
        if at_s - edges[-1] >= window_s * (1 - WINDOW_GIVE):
            edges.append(at_s)
    enough = len(edges) > FEWEST_WINDOWS - 1 and edges[-1] - edges[0] > (1 - WINDOW_GIVE) * (end_s - start_s)
    if enough and rises.size >= 2 * len(edges):
        return np.asarray(edges, dtype=np.float64)
    # from the end on, so that what is left over lies beside the warm-up
    count = int((end_s - start_s) / window_s + 1e-9)
    return np.asarray(end_s - window_s * np.arange(count, -1, -1), dtype=np.float64)


def _agree(means_w: F64) -> bool:
    """Whether no window stands out at the start and the halves have one mean."""
    early, late = means_w[: means_w.size // 2], means_w[means_w.size // 2 :]
    # windows that stand out together would hide behind a spread that holds them
    others = late if late.size >= FEWEST_WINDOWS - 1 else means_w[1:]
    margin_w = AGREE_PART * abs(float(others.mean()))
    if abs(means_w[0] - others.mean()) > max(STANDS_OUT * others.std(ddof=1), margin_w):
        return False
    u_w = math.hypot(u_of_mean(early), u_of_mean(late))
    return abs(float(early.mean() - late.mean())) <= max(AGREE_U * u_w, margin_w)


def u_of_mean(values: F64) -> float:
    """Standard uncertainty of a mean by the scatter of its values; 0 of one value."""
    return float(values.std(ddof=1)) / math.sqrt(values.size) if values.size > 1 else 0.0
