"""Logs as their meters would have written them without the errors that same-load checks have shown.

Watts of standby, of held beds and of loads are made of logs, so the log itself is corrected, once, and the
meter's stated accuracy is replaced by what the checks left of it; whatever is made of both is then corrected
and narrowed alike. Energies of runs are corrected as a whole by the same factor (`core.loads.same_load`).
"""

import math
from collections.abc import Mapping
from functools import lru_cache

from attrs import evolve

from core.activity import Activity
from core.loads.same_load import Calibration
from core.results.checked_meters import calibration
from core.results.runs import Seen
from core.study import Meter, Study
from core.traces import Trace


def checked_log(log: Seen, meter: Meter, checked: Calibration | None) -> tuple[Seen, Meter]:
    """A log and its meter as checks correct and narrow them; both as they are where no check tells of it.

    Parameters
    ----------
    log : Seen
    meter : Meter
        That wrote it.
    checked : Calibration or None
    """
    if checked is None or not checked.tells_of(meter.id):
        return log, meter
    factor = checked.factor(meter.id)
    return Seen(_trace(log.trace, factor), _activity(log.activity, factor)), _meter(meter, checked)


def checked_logs(study: Study, traces: Mapping[str, Trace]) -> tuple[Study, Mapping[str, Trace]]:
    """A study and its traces with all that its checks tell of the meters put into both.

    Parameters
    ----------
    study : Study
    traces : mapping of log id to Trace

    Returns
    -------
    tuple of (Study, mapping of log id to Trace)
        The same objects where no meter was checked. The study is for reading only: an edit belongs to the
        user's own.
    """
    checked = calibration(study.meters, study.checks)
    if checked is None:
        return study, traces
    factors = {m.id: checked.factor(m.id) for m in study.meters if checked.tells_of(m.id)}
    by_log = {log.id: factors[log.meter_id] for log in study.logs if log.meter_id in factors}
    made = {key: _trace(trace, by_log[key]) if key in by_log else trace for key, trace in traces.items()}
    meters = tuple(_meter(m, checked) if m.id in factors else m for m in study.meters)
    return evolve(study, meters=meters), made


def checked_meter(study: Study, meter_id: str) -> Meter:
    """A meter of a study with the accuracy that its checks leave it."""
    meter, checked = study.meter(meter_id), calibration(study.meters, study.checks)
    return meter if checked is None or not checked.tells_of(meter_id) else _meter(meter, checked)


def factor_of(study: Study, meter_id: str) -> float | None:
    """What the readings of a meter are multiplied by; None where no check tells of it."""
    checked = calibration(study.meters, study.checks)
    return None if checked is None or not checked.tells_of(meter_id) else checked.factor(meter_id)


def forget() -> None:
    """Let go of every corrected log."""
    _trace.cache_clear()


def _meter(meter: Meter, checked: Calibration) -> Meter:
    return evolve(meter, gain_percent=100 * math.sqrt(3) * checked.u_relative(meter.id))


@lru_cache(maxsize=256)
def _trace(trace: Trace, factor: float) -> Trace:
    return evolve(
        trace,
        key=f"{trace.key}:times {factor!r}",
        power_w=trace.power_w * factor,
        counter_wh=None if trace.counter_wh is None else trace.counter_wh * factor,
        counter_step_wh=trace.counter_step_wh * factor,
        resolution_w=trace.resolution_w * factor,
    )


def _activity(activity: Activity, factor: float) -> Activity:
    def times(watts: float | None) -> float | None:
        return None if watts is None else watts * factor

    return evolve(
        activity,
        standby_w=times(activity.standby_w),
        idle_w=times(activity.idle_w),
        threshold_w=activity.threshold_w * factor,
        processing_floor_w=activity.processing_floor_w * factor,
        quiet_w=activity.quiet_w * factor,
    )
