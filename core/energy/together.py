"""The counter at one tick, from that tick and its neighbours together.

Theory. At a tick the counter lies above the step just reached by no more than was used since the row before.
Its neighbours say the same of their own moments, and the power column carries what they say from row to row.
Under a steady load all of them may say just the same: with 4 Wh from row to row and ticks of 12 Wh each tick
falls at the same place between two rows, and the mean of many is no better than one. So they are not
averaged: each shuts out where the counter cannot have been, as softly as the power column and what was used
are unsure, and what is left, none of it likelier than the rest, gives the mean and its doubt.
"""

import math
from collections.abc import Sequence

import numpy as np
from attrs import frozen

from core.energy.ticks import Used
from core.traces import F64

#: places between two steps of the counter that are looked at
PLACES = 200
#: what was used may exceed its estimate by this many standard uncertainties
FAR = 3.0
#: how likely a counter that begins at 0 was set to it at that moment, before anything else is known
SET_TO_0 = 0.5
#: a normal distribution function is nearly a logistic one of this times the argument (from memory)
LOGISTIC = 1.702
#: the softest bound that is still as good as sharp [Wh]
SHARP_WH = 1e-9


@frozen
class Told:
    """What one tick tells.

    Parameters
    ----------
    counter_wh : float
        Step that the counter has just reached. [Wh]
    used : Used
        Since the row before.
    on_wh, on_u_wh : float
        What was used from this tick on to the one that is asked for, below 0 for a later tick; and its u.
        [Wh]
    """

    counter_wh: float
    used: Used
    on_wh: float
    on_u_wh: float


def together(asked: Told, others: Sequence[Told], q: float) -> tuple[float, float]:
    """The counter at the tick `asked`, and its standard uncertainty. [Wh], [Wh]

    Parameters
    ----------
    asked : Told
        With nothing on from it.
    others : sequence of Told
    q : float
        Step of the counter. [Wh]

    Examples
    --------
    >>> reading, u = together(Told(10.0, Used(0.6, 0.0), 0.0, 0.0), (), 1.0)
    >>> round(reading, 2), round(u, 2)
    (10.3, 0.17)
    """
    most_wh = min(q, max(asked.used.energy_wh, 0.0) + FAR * asked.used.u_wh) or q / PLACES
    place_wh = (np.arange(PLACES) + 0.5) / PLACES * most_wh
    # above 0 by none but a neighbour's word, and below what was used by every tick's: all in one pass
    base_wh, used_wh, low_u_wh, high_u_wh = np.array(
        [
            (
                asked.counter_wh - tick.on_wh - tick.counter_wh,
                min(max(tick.used.energy_wh, 0.0), q),
                max(tick.on_u_wh, SHARP_WH),
                max(math.hypot(tick.used.u_wh, tick.on_u_wh), SHARP_WH),
            )
            for tick in (asked, *others)
        ]
    ).T[:, :, None]
    above_wh = base_wh + place_wh
    within = np.concatenate(((used_wh - above_wh) / high_u_wh, above_wh[1:] / low_u_wh[1:]))
    likely = np.multiply.reduce(_soft(within))
    total = float(likely.sum())
    if total < 1e-12:  # neighbours that cannot all be right tell nothing
        return together(asked, (), q) if others else (asked.counter_wh + q / 2, q / math.sqrt(12))
    mean_wh = float(likely @ place_wh) / total
    variance = float(likely @ (place_wh - mean_wh) ** 2) / total
    return asked.counter_wh + mean_wh, math.sqrt(variance)


def begun_at_0(first: Told, q: float) -> tuple[float, float]:
    """The counter at the row where it begins at 0, and its standard uncertainty. [Wh], [Wh]

    It was set to 0 there, or it stands anywhere in its first step: either is as likely, until the first tick
    says whether that much can have been used by then.

    Parameters
    ----------
    first : Told
        The first tick, with what was used from it on to the row asked for, so below 0.
    q : float
        Step of the counter. [Wh]

    Examples
    --------
    >>> [round(x, 2) for x in begun_at_0(Told(10.0, Used(0.6, 0.0), -10.5, 0.1), 10.0)]
    [0.0, 0.01]
    >>> [round(x, 1) for x in begun_at_0(Told(10.0, Used(0.6, 0.0), -4.0, 0.1), 10.0)]
    [6.3, 0.2]
    """
    place_wh = np.concatenate(([0.0], (np.arange(PLACES) + 0.5) / PLACES * q))
    before = np.concatenate(([SET_TO_0], np.full(PLACES, (1 - SET_TO_0) / PLACES)))
    above_wh = place_wh - first.on_wh - first.counter_wh
    used_wh = min(max(first.used.energy_wh, 0.0), q)
    likely = before * _soft(above_wh / max(first.on_u_wh, SHARP_WH))
    likely *= _soft((used_wh - above_wh) / max(math.hypot(first.used.u_wh, first.on_u_wh), SHARP_WH))
    total = float(likely.sum())
    if total < 1e-12:
        return q / 2, q / math.sqrt(12)
    mean_wh = float(likely @ place_wh) / total
    return mean_wh, math.sqrt(float(likely @ (place_wh - mean_wh) ** 2) / total)


def _soft(z: F64) -> F64:
    """0 far below 0 and 1 far above."""
    return 1 / (1 + np.exp(np.minimum(np.maximum(-LOGISTIC * z, -60), 60)))
