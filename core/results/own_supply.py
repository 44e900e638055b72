"""What the supply of a bed loses, where the bed has a meter of its own during a hold test.

Rules: the bed's own watts over the settled part of the hold are divided by the watts that the bed takes at
the plug in the same time, both logs set on their clocks. The offset of the plug's meter cancels in what the
bed takes; the gains of two meters err each for itself, those of one meter together. Nobody is asked to build
such a meter in: it is used only where one is there.
"""

import math
from collections.abc import Mapping, Sequence
from itertools import pairwise

import numpy as np
from attrs import frozen

from core.beds.hold import Hold
from core.beds.steady import u_of_mean
from core.energy.integral import mean_w
from core.results.values import Measured
from core.study import Log, Study
from core.traces import Trace
from core.uncertainty import coverage_factor

#: of less time both logs tell too little [s]
LEAST_S = 300.0
#: the settled part is cut into so many
_PARTS = 8


@frozen
class OwnSupply:
    """What a supply lets through, and what that was made of.

    Parameters
    ----------
    value : Measured
        Watts of the bed by its own meter over those that it takes at the plug. [1]
    own_w, bed_w : float
        Both, over the settled part. [W]
    seconds : float
        Length of that part. [s]
    base_w : float
        What was taken off at the plug. [W]
    log_ids : tuple of str
        The log at the plug, and that of the bed alone.
    parts : tuple of (str, float)
        Relative standard uncertainties by their names; those of gains by ``gain:`` and the meter's id. [1]
    """

    value: Measured
    own_w: float
    bed_w: float
    seconds: float
    base_w: float
    log_ids: tuple[str, str]
    parts: tuple[tuple[str, float], ...]


def own_supply(
    study: Study, machine_id: str, held: Sequence[tuple[Hold, Log]], traces: Mapping[str, Trace]
) -> OwnSupply | None:
    """Watts of the bed by its own meter over those at the plug, in the longest hold that has both.

    Parameters
    ----------
    study : Study
    machine_id : str
    held : sequence of (Hold, Log)
        Holds at the plug, each with its log.
    traces : mapping of log id to Trace

    Returns
    -------
    OwnSupply or None
        None where no log of the bed alone covers a hold.
    """
    found = [
        value
        for hold, log in held
        for own in study.logs_of(machine_id)
        if own.of_bed and own.id in traces and log.id in traces
        for value in [_ratio(study, hold, log, own, traces)]
        if value is not None
    ]
    return max(found, key=lambda f: f.seconds, default=None)


def _ratio(study: Study, hold: Hold, log: Log, own: Log, traces: Mapping[str, Trace]) -> OwnSupply | None:
    here, there = traces[log.id], traces[own.id]
    start_s, end_s = hold.steady.start_s, hold.steady.end_s
    shift_s = _shift_s(here, there)
    if shift_s is None or end_s - start_s < LEAST_S or not hold.bed_w or hold.base_u_w is None:
        return None
    if start_s + shift_s < 0 or end_s + shift_s > there.end_s:
        return None
    edges_s = np.linspace(start_s, end_s, _PARTS + 1)
    own_w = np.array([mean_w(there, a + shift_s, b + shift_s) for a, b in pairwise(edges_s)])
    bed_w = np.array([mean_w(here, a, b) - (hold.base_w or 0.0) for a, b in pairwise(edges_s)])
    if own_w.mean() <= 0 or bed_w.min() <= 0:
        return None
    ratio = float(own_w.mean() / bed_w.mean())
    # a heater's pulses are in both logs: what is left to scatter is the ratio of each part
    scatter = u_of_mean(own_w / bed_w) / ratio
    meter, own_meter = study.meter(log.meter_id), study.meter(own.meter_id)
    apart = () if own_meter.id == meter.id else (meter, own_meter)
    parts = (
        ("scatter", scatter),
        ("baseline of the hold", (hold.base_u_w or 0.0) / float(bed_w.mean())),
        ("meter offset", own_meter.offset_w / math.sqrt(3) / float(own_w.mean())),
        *((f"gain:{m.id}", m.gain_percent / 100 / math.sqrt(3)) for m in apart),
    )
    u = math.hypot(*(part for _, part in parts))
    df = (_PARTS - 1) * (u / scatter) ** 4 if scatter > 0 else math.inf
    return OwnSupply(
        value=Measured(ratio, coverage_factor(df) * u * ratio),
        own_w=float(own_w.mean()),
        bed_w=float(bed_w.mean()),
        seconds=end_s - start_s,
        base_w=hold.base_w or 0.0,
        log_ids=(log.id, own.id),
        parts=parts,
    )


def _shift_s(here: Trace, there: Trace) -> float | None:
    """What is added to a time of the one log to find it in the other; None without clocks of one kind. [s]"""
    one, other = here.clock, there.clock
    if one.start_s is None or other.start_s is None or one.kind != other.kind:
        return None
    return one.start_s - other.start_s
