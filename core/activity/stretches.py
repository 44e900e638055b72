"""Stretches of heating: power above the threshold, dips bridged that are too short for a person's hands."""

import numpy as np
from numpy.typing import NDArray

from core.activity.levels import Levels, tolerance_w
from core.activity.rows import Rows, quantile, spans

Spans = NDArray[np.intp]

#: in less time nobody takes a part off and starts the next [s]
HANDS_S = 120.0
#: a homing move takes no longer [s]
HOMING_S = 90.0
#: a heater that warms up draws more than this above idle, the second where processing draws more too [W]
WARMING_W = (15.0, 20.0)
#: a dip at rest is bridged when it stays above idle by this many times what rest may wander
HELD_TIMES = 2.0
#: no power at all is a cut when it is seen in less than this part of the log, and when it lasts
RARE_PART = 0.02
#: an averaged row that comes later than so many intervals says nothing of the time before its own
HOLE = 1.5
#: a dip that is longer is bridged when this part of it, at most, is at rest
REST_PART = 0.25
#: and when its level is lifted from idle by this part of the way to the threshold
LIFTED_PART = 0.15


def above(rows: Rows, levels: Levels) -> Spans:
    """First and last row of every stretch above the threshold, bridged: shape (k, 2)."""
    atoms = spans(rows.power_w > levels.threshold_w)
    joined: list[list[int]] = []
    for first, last in atoms.tolist():
        if joined and _bridged(rows, levels, joined[-1][1], first):
            joined[-1][1] = last
        else:
            joined.append([first, last])
    return np.array(joined, dtype=np.intp).reshape(-1, 2)


def _bridged(rows: Rows, levels: Levels, last: int, first: int) -> bool:
    """Whether the dip between rows `last` and `first` belongs to one stretch."""
    dip_w = rows.power_w[last + 1 : first]
    if levels.standby_w and (dip_w <= 0).any():
        dark_s = float(rows.weight_s[last + 1 : first][dip_w <= 0].sum())
        if levels.dark_part < RARE_PART or dark_s > HANDS_S / 2:
            return False  # the power was cut
    if rows.time_s[first] - rows.time_s[last] < HANDS_S + rows.interval_s:
        return True
    if levels.idle_w is None:
        return False
    if levels.quiet[last + 1 : first].mean() > REST_PART:
        # a hot end that is held draws more than idle ever does, all the time
        return bool(np.percentile(dip_w, 5) > levels.idle_w + HELD_TIMES * tolerance_w(rows))
    return float(np.median(dip_w)) > levels.idle_w + LIFTED_PART * (levels.threshold_w - levels.idle_w)


def first_heating(rows: Rows, levels: Levels, first: int, last: int) -> int:
    """First row of the stretch `first` to `last` that heats: a homing move before it stays lower."""
    if levels.idle_w is None or first == 0:
        return first
    power_w = rows.power_w[first : last + 1]
    typical_w = quantile(power_w, rows.weight_s[first : last + 1], 0.3)
    level_w = levels.idle_w + float(np.clip((typical_w - levels.idle_w) / 2, *WARMING_W))
    head = int(np.searchsorted(rows.time_s, rows.time_s[first] + HOMING_S, side="right")) - first
    heats = np.flatnonzero(power_w[: max(head, 1)] >= level_w)
    return first + int(heats[0]) if heats.size else first


def edges(rows: Rows, first: int, last: int) -> tuple[float, float]:
    """Times at which the stretch of rows `first` to `last` begins and ends. [s]

    Sampled: half-way between the rows on either side. Averaged: the row that holds the edge is split by its
    level. On-change: the row itself.
    """
    time_s, power_w = rows.time_s, rows.power_w
    start_s, end_s = float(time_s[first]), float(time_s[last])
    if rows.kind == "averaged":
        if first > 0:
            length = time_s[first] - time_s[first - 1]
            inside_w = power_w[min(first + 1, last)]
            before_w = power_w[max(first - 2, 0)]
            part = _part(power_w[first], before_w, inside_w)
            start_s = max(float(time_s[first] - part * length), float(time_s[first - 1]))
            if part >= 1 and first > 1 and length < HOLE * rows.interval_s:
                # the row before may hold a little of the first heating, too little to pass the threshold
                length = time_s[first - 1] - time_s[first - 2]
                part = _part(power_w[first - 1], power_w[max(first - 3, 0)], power_w[first])
                start_s = max(float(time_s[first - 1] - part * length), float(time_s[first - 2]))
        if last + 1 < time_s.size:
            length = time_s[last + 1] - time_s[last]
            after_w = power_w[min(last + 2, time_s.size - 1)]
            part = _part(power_w[last + 1], after_w, power_w[last])
            end_s = min(float(time_s[last] + part * length), float(time_s[last + 1]))
    elif rows.kind == "sampled":
        if first > 0:
            start_s = float(time_s[first - 1] + time_s[first]) / 2
        if last + 1 < time_s.size:
            end_s = float(time_s[last] + time_s[last + 1]) / 2
    elif last + 1 < time_s.size:
        end_s = float(time_s[last + 1])
    return start_s, end_s


def _part(level_w: float, outside_w: float, inside_w: float) -> float:
    """Part of an averaged row spent inside, between 0 and 1."""
    if inside_w <= outside_w:
        return 1.0
    return float(np.clip((level_w - outside_w) / (inside_w - outside_w), 0.0, 1.0))
