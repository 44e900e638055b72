"""What a run used that is not the bed's, from the level of its trace with the bed's heater off.

Theory. From the end of warm-up on, the rows with the heater off show what is not the bed, and it is followed
from one few minutes to the next. Before, it is made up: standby all the time; the hot end's holding from when
it is on, which shows as what the low level of the warm-up's plateau has above standby and above the step of
the bed's heater; and once the heat that the hot end itself takes up. Rows between the plateau and
processing show what was drawn then, with the heat of a hot end that is heated last.
"""

import math

import numpy as np
from attrs import frozen

from core.averages import average, median
from core.beds.heater import FEWEST_WAITING, Levels
from core.language import mark
from core.results.values import Influence
from core.traces import F64
from core.units import J_PER_WH

#: the level with the heater off is followed in windows of this length [s]
WINDOW_S = 240.0
#: part of what processing adds to standby that a hot end and its fan hold, motors still, and the half-width
#: of a rectangle around it; judgement, no source
HELD_PART, HELD_DOUBT = 0.7, 0.3
#: what heating a hot end takes beyond holding it, at the plug, and the half-width of a rectangle around it:
#: 5 to 17 J/K heated by 150 to 230 K over a supply of 0.85 to 0.9, or one still warm from the run before;
#: judgement, no source [Wh]
HOT_END_WH, HOT_END_DOUBT_WH = 0.55, 0.5
#: how well a plateau and the step of the heater agree, as part of the step: a heater's watts fall as it
#: warms; judgement, no source
STEP_DOUBT = 0.03
#: and how well the low level stands for the whole plateau, as part of what processing adds to standby
PLATEAU_DOUBT = 0.12
#: rows this soon after the plateau show what was on when it ended [s]
SOON_S = 20.0
#: how well the off rows of a window stand for the whole window, as part of what processing adds to standby
OFF_ROWS_DOUBT = 0.012
#: how well rows lifted by a pulsing hot end are told from pieces of the bed's pulses; judgement, no source
PIECES_DOUBT = 0.25


@frozen
class Rest:
    """Energy of a run that is not the bed's, and its doubts by name. [Wh]"""

    energy_wh: float
    doubts: tuple[Influence, ...]


def rest(
    found: Levels, start_s: float, end_s: float, standby_w: float | None, *, is_averaged: bool = False
) -> Rest:
    """What a run used that is not the bed's.

    Parameters
    ----------
    found : Levels
        Of the run.
    start_s, end_s : float
        Start of the run and end of processing. [s]
    standby_w : float or None
        Level of the machine doing nothing; None where the log shows none. [W]
    is_averaged : bool
        Whether the values are means: then a step may be a piece of the heater's.
    """
    middles, means, u_level_w = followed(found)
    is_after = found.is_off & (found.time_s > found.plateau_end_s)
    off_from_s = float(found.time_s[np.argmax(is_after)]) if is_after.any() else float(found.time_s[0])
    grid = np.linspace(off_from_s, end_s, 400)
    processing_wh = float(np.trapezoid(np.interp(grid, middles, means), grid)) / J_PER_WH
    before = _warm_up(found, start_s, off_from_s, standby_w or 0.0, is_averaged=is_averaged)
    rest_w = found.off_w - (standby_w or 0.0)
    hours = (end_s - off_from_s) / J_PER_WH
    doubts = (
        *before.doubts,
        Influence(mark("level with the heater off"), math.hypot(u_level_w, found.off_u_w) * hours),
        Influence(mark("between the pulses"), OFF_ROWS_DOUBT * abs(rest_w) * hours),
        Influence(mark("pulsing hot end"), PIECES_DOUBT / math.sqrt(3) * abs(found.hot_end_w) * hours),
    )
    return Rest(processing_wh + before.energy_wh, tuple(d for d in doubts if d.u_wh > 0))


def followed(found: Levels) -> tuple[F64, F64, float]:
    """The level with the heater off through the processing part, by the rows that are off.

    Parameters
    ----------
    found : Levels
        With a row that is off, at least.

    Returns
    -------
    tuple of (ndarray, ndarray, float)
        Times [s], levels [W], and the standard uncertainty of their mean [W].
    """
    time, power = found.time_s[found.is_off], found.power_w[found.is_off]
    windows = np.floor((time - time[0]) / WINDOW_S).astype(np.int64)
    counts = np.bincount(windows)
    used = counts > 0
    middles = np.bincount(windows, time)[used] / counts[used]
    means = np.bincount(windows, power)[used] / counts[used]
    squares = np.bincount(windows, power**2)[used] / counts[used]
    variance = np.maximum(squares - means**2, 0) / counts[used]
    # windows with few off rows say little of their mean, and the line between windows less than its ends
    jumps = np.diff(means) ** 2 / 12 if means.size > 1 else np.zeros(1)
    u_w = math.sqrt((average(variance) + average(jumps)) / middles.size)
    return middles, means, u_w


def _warm_up(
    found: Levels, start_s: float, off_from_s: float, standby_w: float, *, is_averaged: bool
) -> Rest:
    """What is not the bed's until the heater is first seen off in processing."""
    rest_w = found.off_w - standby_w
    is_cold = found.plateau_w is not None
    plateau_h = max(min(found.plateau_end_s, off_from_s) - start_s, 0.0) / J_PER_WH
    held, held_u = _held_in_plateau(found, standby_w, is_averaged=is_averaged)
    waiting = _waiting(found, off_from_s, standby_w)
    # a hot end that held nothing in the plateau took up its heat later, where it is seen as it is
    heat_part = min(held / HELD_PART, 1.0) if waiting.is_seen else 1.0
    doubts = (
        Influence(mark("warm-up"), math.hypot(abs(rest_w) * held_u * plateau_h, waiting.u_wh)),
        Influence(mark("heat of the hot end"), HOT_END_DOUBT_WH / math.sqrt(3) if is_cold else 0.0),
    )
    plateau_wh = (standby_w + rest_w * held) * plateau_h + (HOT_END_WH * heat_part if is_cold else 0.0)
    return Rest(plateau_wh + waiting.energy_wh, doubts)


def _held_in_plateau(found: Levels, standby_w: float, *, is_averaged: bool) -> tuple[float, float]:
    """What holds through the warm-up's plateau, as part of what processing adds to standby, and its u."""
    rest_w = found.off_w - standby_w
    # a hot end heated last holds nothing during the plateau, one heated with the bed as much as later
    held, held_u = HELD_PART / 2, (HELD_PART / 2 + HELD_DOUBT / 2) / math.sqrt(3)
    if found.plateau_w is None or rest_w <= 0:
        return held, held_u
    if not is_averaged:
        step_u_w = math.hypot(STEP_DOUBT * found.step_w, found.spread_w)
        seen = min(max((found.plateau_low_w - found.step_w - standby_w) / rest_w, 0.0), 1.0)
        seen_u = math.hypot(step_u_w / rest_w, PLATEAU_DOUBT)
        # both say something of the same thing
        weight = held_u**2 / (held_u**2 + seen_u**2)
        held, held_u = held + weight * (seen - held), held_u * seen_u / math.hypot(held_u, seen_u)
    is_soon = found.waiting_s <= found.plateau_end_s + SOON_S
    if is_soon.any():
        # what is on right after the plateau is no less than what was on in it
        most = max((median(found.waiting_w[is_soon]) - standby_w) / rest_w, 0.0)
        held, held_u = min(held, most), min(held_u, max(most, PLATEAU_DOUBT))
    return held, held_u


@frozen
class _Waiting:
    """Energy between the plateau and processing that is not the bed's, and whether rows show it. [Wh]"""

    energy_wh: float
    u_wh: float
    is_seen: bool


def _waiting(found: Levels, off_from_s: float, standby_w: float) -> _Waiting:
    """What is not the bed's while the machine waits for its bed or heats its hot end."""
    seconds = max(off_from_s - found.plateau_end_s, 0.0)
    hours = seconds / J_PER_WH
    rest_w = found.off_w - standby_w
    rows = found.waiting_w.size
    if rows < FEWEST_WAITING:
        u_wh = HELD_DOUBT / math.sqrt(3) * abs(rest_w) * hours
        return _Waiting((standby_w + HELD_PART * rest_w) * hours, u_wh, False)
    grid = np.linspace(found.plateau_end_s, off_from_s, 200)
    mean_w = average(np.interp(grid, found.waiting_s, found.waiting_w))
    # pieces of pulses in them even out over many
    return _Waiting(mean_w * hours, float(found.waiting_w.std(ddof=1)) / math.sqrt(rows) * hours, True)
